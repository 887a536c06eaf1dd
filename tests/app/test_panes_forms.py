from __future__ import annotations

import msgspec
import pytest

from app.panes.fields import SHEET as THE_SHEET
from app.panes.fields import form_of
from app.panes.figures import exact_text, figure, signed_percent
from app.panes.gauge import parse_gauge
from app.panes.tube_facts import facts_of
from core import sheet as kinds
from core.catalogue import load_builtin
from core.catalogue.types import Provenance, Section, TubeType
from core.errors import QuantityError
from core.sheet import Sheet
from core.units import Dimension, parse
from tests.app.panes_sample import SHEET


@pytest.mark.parametrize(
    ("text", "awg", "area"),
    [("20 AWG", 20, None), ("awg 20", 20, None), ("0,5 mm²", None, 0.5), ("", None, None)],
)
def test_wire_sizes(text: str, awg: int | None, area: float | None) -> None:
    assert parse_gauge(text) == {"awg": awg, "area_mm2": area}


@pytest.mark.parametrize("text", ["20", "0.5", "twenty", "5 V", "20 AWG 3"])
def test_wire_sizes_that_are_none(text: str) -> None:
    with pytest.raises(QuantityError, match="a wire size is expected here, such as 20 AWG"):
        parse_gauge(text)


def test_every_kind_has_a_form_and_labels() -> None:
    made = {
        "lamp": kinds.Lamp(id="P", type="#47"),
        "winding": kinds.Winding(id="P", rated_v=6.3, rated_a=1),
        "dc_supply": kinds.DcSupply(id="P", set_v=6.3, limit_a=1),
        "battery": kinds.Battery(id="P", emf_v=6),
        "mains_feed": kinds.MainsFeed(id="P"),
        "rectified_supply": kinds.RectifiedSupply(id="P", rated_v=9, rated_a=1),
        "thermistor": kinds.Thermistor(id="P", r25_ohm=10, beta_k=3000, dissipation_w_per_k=0.01),
        "relay": kinds.Relay(id="P", coil_v=6, coil_ohm=60),
        "fuse": kinds.Fuse(id="P", rated_a=1),
        "capacitor": kinds.Capacitor(id="P", farad=1e-6),
        "diode": kinds.Diode(id="P"),
        "switch": kinds.Switch(id="P"),
        "balance": kinds.Balance(id="P", ohm=100),
        "elevation": kinds.Elevation(id="P", volts=40),
        "chassis": kinds.Chassis(id="P"),
        "joint": kinds.Joint(id="P"),
    }
    for kind, part in made.items():
        form = form_of(Sheet(parts=(part,)), load_builtin(), "P")
        assert form is not None
        expected = {field.name for field in msgspec.structs.fields(part)}
        assert {field.name for field in form.fields} == expected, kind
        assert all(field.label and "_" not in field.label for field in form.fields), kind
        assert all(field.text or field.placeholder or field.role == "flag" for field in form.fields), kind
    assert form_of(SHEET, load_builtin(), "nobody") is None
    sheet_form = form_of(SHEET, load_builtin(), THE_SHEET)
    assert sheet_form is not None
    assert len(sheet_form.fields) == 6


def test_facts_say_how_sure_they_are() -> None:
    found = TubeType(
        designation="X1",
        sections=(Section(("4", "5"), 6.3, 0.3),),
        hk_positive_peak_v=90.0,
        low_v_pct=5.0,
        high_v_pct=5.0,
        provenance=(
            Provenance("4-5 volts", "a data sheet, 1960", "seen"),
            Provenance("4-5 amps", "a list", "second-hand"),
            Provenance("low_v_pct", "a data sheet, 1960", "seen"),
            Provenance("high_v_pct", "a data sheet, 1960", "seen"),
        ),
    )
    facts = {fact.label: fact for fact in facts_of(found)}
    section = facts["section 4-5"]
    assert (section.value, section.certainty) == ("6.3\u2009V 300\u2009mA", "second hand")
    assert section.source == "a data sheet, 1960; a list"
    assert facts["heater above cathode, peak"].certainty == "unverified"
    assert facts["volts may be off by"].value == "\u22125\u2009% / +5\u2009%"
    assert facts["volts may be off by"].certainty == "seen in its source"


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (17.1, "17.1"),
        (5.0, "5.00"),
        (0.0996, "0.100"),
        (0.00001, "0"),
        (1234.4, "1234"),
        (-6.304, "\u22126.30"),
        (None, "–"),
    ],
)
def test_three_digits_in_tables(value: float | None, text: str) -> None:
    assert figure(value) == text


@pytest.mark.parametrize(
    ("value", "text"),
    [(9.54, "+9.5"), (0.04, "0.0"), (-0.04, "0.0"), (-100.0, "\u2212100"), (-9.96, "\u221210.0")],
)
def test_deviations_carry_their_sign(value: float, text: str) -> None:
    assert signed_percent(value) == text


@pytest.mark.parametrize("value", [6.3, 0.082, 4700.0, 1 / 3, 230.0, -10.0, 1e-6, 123456.789])
def test_what_a_field_shows_is_the_very_value(value: float) -> None:
    assert parse(exact_text(value, Dimension.OHMS), Dimension.OHMS) == value
