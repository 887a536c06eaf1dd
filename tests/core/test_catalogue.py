"""The catalogue: lookup however a name is written, search, overlays, and that every built-in row holds."""

from __future__ import annotations

import csv
import importlib.resources

import pytest

from core.catalogue import Catalogue, load_builtin
from core.catalogue.bases import BASES
from core.catalogue.names import key
from core.catalogue.summary import parallel_rating, rating_text, whole_rating
from core.catalogue.types import Section, TubeType


@pytest.fixture(scope="module")
def catalogue() -> Catalogue:
    return load_builtin()


def own(designation: str, volts: float = 6.3, equivalents: tuple[str, ...] = ()) -> TubeType:
    return TubeType(
        designation=designation, sections=(Section(("4", "5"), volts, 0.3),), equivalents=equivalents
    )


@pytest.mark.parametrize("name", ["ECC83", "ecc83", "ECC-83", " ecc 83 ", "12ax7", "12AX7A", "7025"])
def test_lookup_forgives_writing_and_knows_equivalents(catalogue: Catalogue, name: str) -> None:
    tube = catalogue.tube(name)
    assert tube is not None
    assert tube.designation == "12AX7"


@pytest.mark.parametrize("name", ["", "   ", "-", "ECC", "ECC8", "12AX7ECC83", "no such tube"])
def test_an_unknown_name_is_none(catalogue: Catalogue, name: str) -> None:
    assert catalogue.tube(name) is None


def test_slashes_and_hashes_do_not_matter_but_the_point_does(catalogue: Catalogue) -> None:
    assert catalogue.tube("5b250m") is catalogue.tube("807")
    assert catalogue.lamp("47") is catalogue.lamp("#47")
    assert key("S237 2.5 ohm") != key("S237 25 ohm")
    assert catalogue.thermistor("s237-5-ohm") is catalogue.thermistors["S237 5 ohm"]
    assert catalogue.relay("dg05 6v") is catalogue.relays["DG05 6 V"]
    assert catalogue.lamp("nothing") is None


def test_the_whole_heater_of_an_ecc83_is_12_6_volts(catalogue: Catalogue) -> None:
    tube = catalogue.tube("ECC83")
    assert tube is not None
    assert [(section.name, section.rated_v, section.rated_a) for section in tube.sections] == [
        ("4-9", 6.3, 0.15),
        ("9-5", 6.3, 0.15),
    ]
    assert whole_rating(tube) == pytest.approx((12.6, 0.15))
    assert parallel_rating(tube) == pytest.approx((6.3, 0.3))


@pytest.mark.parametrize(
    ("name", "pins", "volts"),
    [
        ("35Z5GT", ("2-3", "3-7"), (7.5, 27.5)),
        ("35W4", ("4-6", "6-3"), (7.5, 27.5)),
        ("5687", ("4-8", "8-5"), (6.3, 6.3)),
        ("12BY7A", ("4-6", "6-5"), (6.3, 6.3)),
        ("3S4", ("1-5", "5-7"), (1.4, 1.4)),
        ("3Q5GT", ("2-8", "8-7"), (1.4, 1.4)),
        ("EL34", ("2-7",), (6.3,)),
    ],
)
def test_sections_of_tapped_heaters(
    catalogue: Catalogue, name: str, pins: tuple[str, ...], volts: tuple[float, ...]
) -> None:
    tube = catalogue.tubes[name]
    assert tuple(section.name for section in tube.sections) == pins
    assert tuple(section.rated_v for section in tube.sections) == volts


def test_limits_checked_against_their_sheets(catalogue: Catalogue) -> None:
    """RCA 12AX7-A 10-60; Philips E88CC Dec 1968; Philips EL84 1955; RCA 6550 5-62."""
    first = catalogue.tubes["12AX7"]
    assert (first.low_v_pct, first.high_v_pct, first.tolerance_a_pct) == (-10, 10, 6)
    assert (first.hk_positive_peak_v, first.hk_positive_dc_v, first.hk_negative_peak_v) == (200, 100, 200)
    e88cc = catalogue.tubes["6922"]
    assert e88cc.low_v_pct is not None
    assert 6.3 * (1 + e88cc.low_v_pct / 100) == pytest.approx(6.0, abs=0.001)
    assert (e88cc.hk_positive_peak_v, e88cc.hk_negative_peak_v) == (100, 150)
    assert catalogue.tubes["EL84"].hk_max_ohm == 20_000
    assert catalogue.tubes["6550"].hk_negative_dc_v == 300
    assert catalogue.tubes["PCL86"].status_of("4-5 volts") == "disputed"
    assert catalogue.tubes["EM84"].status_of("4-5 amps") == "disputed"


def test_no_two_types_answer_to_one_name(catalogue: Catalogue) -> None:
    names = [key(name) for tube in catalogue.tubes.values() for name in (tube.designation, *tube.equivalents)]
    assert len(names) == len(set(names))
    assert len(catalogue.tubes) > 290


@pytest.mark.parametrize(
    "name", ["tubes", "lamps", "thermistors", "relays", "fuses", "wire_awg", "wire_iec60228"]
)
def test_every_row_of_every_file_has_a_source(name: str) -> None:
    path = importlib.resources.files("resources").joinpath("catalogue", f"{name}.csv")
    rows = list(csv.DictReader(path.read_text(encoding="utf-8").splitlines()))
    assert rows
    assert [row for row in rows if not row["source"].strip()] == []


def test_every_value_of_every_tube_is_on_record(catalogue: Catalogue) -> None:
    for tube in catalogue.tubes.values():
        recorded = {entry.field for entry in tube.provenance}
        for section in tube.sections:
            assert {f"{section.name} {field}" for field in ("volts", "amps", "pins")} <= recorded
            assert all(BASES[tube.base].has(pin) for pin in section.pins)
        assert {"description", "base", "rating_class"} <= recorded


def test_taps_say_what_they_are_for(catalogue: Catalogue) -> None:
    for tube in catalogue.tubes.values():
        assert bool(tube.tap_role) == (len(tube.sections) > 1), tube.designation
        if tube.tap_role == "centre":
            assert parallel_rating(tube) is not None, tube.designation


def test_filaments_have_no_heater_cathode_limit(catalogue: Catalogue) -> None:
    for tube in catalogue.tubes.values():
        if tube.heating == "direct" or tube.cathode_joined:
            limits = (tube.hk_positive_peak_v, tube.hk_negative_peak_v, tube.hk_max_ohm)
            assert limits == (None, None, None), tube.designation


def test_search_puts_exact_before_beginnings_before_parts(catalogue: Catalogue) -> None:
    hits = catalogue.search("ecc83")
    assert [hit.name for hit in hits] == ["ECC83", "ECC832"]
    assert hits[0].designation == "12AX7"
    assert str(hits[0].summary).replace("\u2009", " ") == "12AX7 = ECC83 · B9A · 6.3 V 0.3 A / 12.6 V 0.15 A"
    names = [hit.name for hit in catalogue.search("47")]
    assert names.index("47") < names.index("#1847")
    assert names.index("#47") < names.index("7247")


def test_search_finds_all_kinds_and_descriptions(catalogue: Catalogue) -> None:
    assert {hit.kind for hit in catalogue.search("5", limit=500)} >= {"tube", "lamp", "thermistor", "relay"}
    assert {"80", "GZ34"} <= {hit.designation for hit in catalogue.search("rectifier", limit=50)}
    assert str(catalogue.search("#47")[0].summary).startswith("#47 · BA9s")
    assert "5\u2009Ω" in str(catalogue.search("S237 5 ohm")[0].summary)
    assert "80\u2009Ω" in str(catalogue.search("DG05 6 V")[0].summary)


def test_search_limits_and_empty_text(catalogue: Catalogue) -> None:
    assert catalogue.search("") == []
    assert catalogue.search(" - ") == []
    assert catalogue.search("zzzz") == []
    assert len(catalogue.search("1", limit=7)) == 7
    hits = catalogue.search("12", limit=500)
    assert len({(hit.kind, hit.designation) for hit in hits}) == len(hits)


def test_summary_of_a_lamp_tap(catalogue: Catalogue) -> None:
    text = str(rating_text(catalogue.tubes["35Z5GT"])).replace("\u2009", " ")
    assert text == "35 V 0.15 A, lamp tap at 7.5 V"


def test_added_types_win_over_built_in_ones(catalogue: Catalogue) -> None:
    overlaid = catalogue.with_types([own("12-ax7", 5.0), own("MY1", 4.0, ("ECC82",))])
    mine = overlaid.tube("12AX7")
    assert mine is not None
    assert mine.sections[0].rated_v == 5.0
    assert overlaid.tube("ECC83") is None
    assert overlaid.tube("ECC82") is overlaid.tubes["MY1"]
    builtin = overlaid.tube("12AU7")
    assert builtin is not None
    assert builtin.designation == "12AU7"
    assert overlaid.search("my1")[0].designation == "MY1"
    assert catalogue.tube("MY1") is None
    assert catalogue.with_types([]) is catalogue
    assert overlaid.lamps is catalogue.lamps


def test_fuses_are_tabulated_or_read_off_between(catalogue: Catalogue) -> None:
    link = catalogue.fuse(1.0)
    assert link is not None
    assert (link.cold_ohm, link.melting_i2t_a2s) == (0.1165, 19.2)
    between = catalogue.fuse(0.7)
    assert between is not None
    assert 0.1635 < between.cold_ohm < 0.275
    assert 4.80 < between.melting_i2t_a2s < 9.42
    assert all("read off between" in entry.note for entry in between.provenance)
    assert catalogue.fuse(0.1) is None
    assert catalogue.fuse(10.0) is None
    assert catalogue.fuse(1.0, "quick") is None


def test_the_built_in_catalogue_is_read_once() -> None:
    assert load_builtin() is load_builtin()


def test_parts_of_the_other_tables_are_plausible(catalogue: Catalogue) -> None:
    for relay in catalogue.relays.values():
        assert relay.drop_out_v < relay.pull_in_v < relay.coil_v
    for lamp in catalogue.lamps.values():
        assert 1.0 < lamp.rated_v / lamp.rated_a < 120.0
    ratings = [fuse.rated_a for fuse in catalogue.fuses]
    assert ratings == sorted(ratings)
    assert [fuse.cold_ohm for fuse in catalogue.fuses] == sorted(
        (fuse.cold_ohm for fuse in catalogue.fuses), reverse=True
    )
