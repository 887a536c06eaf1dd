"""The picture of a warm-up: ticks, names, labels apart, and the same in every kind of file."""

import itertools
import re
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec import structs
from PySide6.QtGui import QGuiApplication, QImage

from app.pictures.ticks import ticks, time_ticks
from app.pictures.warmup_panels import named, panels
from app.pictures.warmup_plot import WarmupPlot, plot_bytes, spread, write_warmup_picture
from app.sources import load_catalogue
from app.tables import write_warmup_csv
from core.samples import sample_bytes
from core.storage import load
from core.switch_on import SwitchOn, Wish, switch_on
from core.warmup_report import warmup_csv
from tests.app.test_pictures import MOST, array_of, from_pdf, from_svg, share_of_difference, words_of_pdf


@pytest.fixture(scope="module")
def relay() -> SwitchOn:
    sheet = load(sample_bytes("cold-start-relay"))
    return switch_on(sheet, load_catalogue()[0].with_types(sheet.types), Wish(20.0, 5.0))


@given(st.floats(1e-3, 1e5), st.integers(2, 12))
def test_ticks_are_few_round_and_within(high: float, most: int) -> None:
    found = ticks(0.0, high, most)
    assert found[0] == 0.0 and len(found) <= most and found[-1] <= high * (1 + 1e-6)
    if len(found) > 2:
        assert np.diff(found) == pytest.approx(found[1])
    if len(found) > 1:
        assert f"{found[1]:.6e}".split("e")[0].rstrip("0").rstrip(".") in {"1", "2", "2.5", "5"}


@pytest.mark.parametrize(
    ("high", "most", "expected"),
    [
        (60.0, 7, (0, 10, 20, 30, 40, 50, 60)),
        (820.0, 5, (0, 250, 500, 750)),
        (3.7, 5, (0, 1, 2, 3)),
        (0.1, 6, (0, 0.02, 0.04, 0.06, 0.08, 0.1)),
    ],
)
def test_ticks_one_would_choose_by_hand(high: float, most: int, expected: tuple[float, ...]) -> None:
    assert ticks(0.0, high, most) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("end_s", "first", "last"),
    [
        (0.1, (0.01, "0.01\u2009s"), (0.1, "0.1\u2009s")),
        (60.0, (10.0, "10\u2009s"), (60.0, "60\u2009s")),
        (599.0, (100.0, "100\u2009s"), (500.0, "500\u2009s")),
        (600.0, (60.0, "1\u2009min"), (600.0, "10\u2009min")),
        (3600.0, (600.0, "10\u2009min"), (3600.0, "60\u2009min")),
    ],
)
def test_times_are_told_in_seconds_or_minutes(
    end_s: float, first: tuple[float, str], last: tuple[float, str]
) -> None:
    found = time_ticks(end_s)
    assert [text for _, text in (found[1], found[-1])] == [first[1], last[1]]
    assert [t_s for t_s, _ in (found[1], found[-1])] == pytest.approx([first[0], last[0]])


def test_an_axis_without_length_has_one_tick() -> None:
    assert ticks(0.0, 0.0) == (0.0,)


@pytest.mark.parametrize(
    ("names", "expected"),
    [
        (["V1"], "V1"),
        (["V2", "V1"], "V1, V2"),
        (["V4", "V3", "V1", "V2"], "V1–V4"),
        (["V1", "V2", "V3", "V10"], "V1–V3, V10"),
        (["V9", "V10", "V11"], "V9–V11"),
        (["V1", "V2", "V3", "L1", "V5"], "L1, V1–V3, V5"),
        (["A", "B", "C", "D"], "A, B and 2 more"),
        (["V1", "V3", "V5", "V6", "V7"], "V1, V3, V5–V7"),
        (["K1", "L1", "V1", "V2", "V3"], "K1, L1, V1–V3"),
        (["K1", "L1", "R1", "V1", "V2", "V3"], "K1, L1 and 4 more"),
        (["V01", "V02", "V03"], "V01, V02, V03"),
    ],
)
def test_curves_that_are_the_same_share_a_name(names: list[str], expected: str) -> None:
    assert named(names) == expected


@given(st.lists(st.floats(-50, 300), min_size=1, max_size=30))
def test_labels_stay_apart_and_inside(wanted: list[float]) -> None:
    placed = sorted(spread(wanted, 13.0, 0.0, 170.0).values())
    assert len(placed) == min(len(wanted), 13)
    assert all(second - first >= 13.0 - 1e-9 for first, second in itertools.pairwise(placed))
    assert placed[0] >= -1e-9 and placed[-1] <= 170.0 + 1e-9


def test_the_panels_of_a_thermistor_bypassed_by_a_relay(relay: SwitchOn) -> None:
    found = panels(relay.runs["nominal"])
    assert [panel.title for panel in found] == [
        "Supply current",
        "Supply volts",
        "Heater volts",
        "Cathodes",
        "Thermistors",
        "Relays pulled in",
    ]
    assert [mark.name for mark in found[0].marks] == ["limit of U1"]
    for panel in found[:-1]:
        assert max(float(curve.values.max()) for curve in panel.curves) <= panel.top
    # every tube is named once in a panel, whichever curve it shares
    assert [curve.name for curve in found[2].curves] == ["V1–V6"]


@pytest.mark.parametrize("dark", [False, True])
def test_every_kind_of_file_shows_the_same(relay: SwitchOn, dark: bool, qapp: QGuiApplication) -> None:
    plot = WarmupPlot(relay, "nominal", dark)
    own = array_of(QImage.fromData(plot_bytes(plot, ".png")))
    assert own.std() > 0.02  # something is drawn
    assert share_of_difference(own, from_svg(plot_bytes(plot, ".svg"))) <= MOST
    assert share_of_difference(own, from_pdf(plot_bytes(plot, ".pdf"), 2 * 96 / 72)[0]) <= MOST


@pytest.mark.parametrize("kind", [".svg", ".pdf"])
def test_text_stays_text(relay: SwitchOn, kind: str, qapp: QGuiApplication) -> None:
    data = plot_bytes(WarmupPlot(relay, "nominal"), kind)
    words = words_of_pdf(data) if kind == ".pdf" else re.sub(r"[\s\u2009]+", " ", data.decode())
    for wanted in (relay.sheet.title, "It starts", "limit of U1", "V1–V6", "RT1", "K1", "20 s"):
        assert wanted in words, wanted


def test_files_are_written_for_a_menu(relay: SwitchOn, tmp_path: Path, qapp: QGuiApplication) -> None:
    write_warmup_picture(relay, "after a dip", tmp_path / "run.SVG", dark=True)
    assert (tmp_path / "run.SVG").read_bytes().startswith(b"<?xml")
    write_warmup_csv(relay, "after a dip", tmp_path / "run.csv")
    assert (tmp_path / "run.csv").read_bytes().decode() == warmup_csv(relay, "after a dip")
    with pytest.raises(KeyError):
        write_warmup_csv(relay, "no such", tmp_path / "none.csv")
    assert not (tmp_path / "none.csv").exists()


def test_a_long_title_is_cut_at_the_edge(relay: SwitchOn, qapp: QGuiApplication) -> None:
    named_long = replace(relay, sheet=structs.replace(relay.sheet, title="Amplifier " * 30))
    drawn = array_of(QImage.fromData(plot_bytes(WarmupPlot(named_long, "nominal"), ".png")))
    assert np.ptp(drawn[:, -40:]) < np.ptp(drawn[:80]) / 4  # the right margin is bare paper
