"""What is typed into cells is read as it is shown, and refused where it says nothing."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.panes.offering import fitting, gauges, terminals_of, wires_to_add
from app.panes.reading import rating_edit, read_colour, read_pulled, read_turn
from app.panes.words import rating_text
from core.catalogue import load_builtin
from core.errors import QuantityError
from core.sheet import (
    AnyPart,
    Balance,
    Battery,
    Capacitor,
    Chassis,
    DcSupply,
    Diode,
    Elevation,
    Frame,
    Fuse,
    Lamp,
    Note,
    RectifiedSupply,
    Relay,
    Resistor,
    Sheet,
    Switch,
    Thermistor,
    Tube,
    Winding,
)
from tests.app.panes_sample import SHEET

_PARTS: tuple[AnyPart, ...] = (
    Tube(id="X", type="EL84"),
    Lamp(id="X", type="#47"),
    Lamp(id="X", rated_v=6.3, rated_a=0.15),
    Winding(id="X", rated_v=6.3, rated_a=2),
    Winding(id="X", rated_v=12.6, rated_a=0.5, centre_tap=True),
    DcSupply(id="X", set_v=12.6, limit_a=2),
    Battery(id="X", emf_v=6),
    RectifiedSupply(id="X", rated_v=9, rated_a=2, centre_tap=True),
    Resistor(id="X", ohm=4700),
    Resistor(id="X", ohm=0.082, rated_w=2),
    Thermistor(id="X", r25_ohm=10, beta_k=3000, dissipation_w_per_k=0.017, tau_s=60, max_a=3),
    Relay(id="X", coil_v=6, coil_ohm=90),
    Fuse(id="X", rated_a=2),
    Capacitor(id="X", farad=4.7e-6),
    Diode(id="X"),
    Switch(id="X", closed=False),
    Balance(id="X", ohm=100),
    Elevation(id="X", volts=40),
    Note(id="X", text="Twist the leads"),
    Frame(id="X", title="Driver"),
)


def _edited(part: AnyPart, text: str) -> AnyPart:
    sheet = Sheet(parts=(part,))
    return rating_edit(part, text, load_builtin())(sheet).part_by_id[part.id]


@pytest.mark.parametrize("part", _PARTS, ids=lambda part: f"{part.kind} {rating_text(part)}")
def test_a_shown_rating_is_read_as_itself(part: AnyPart) -> None:
    assert _edited(part, rating_text(part)) == part


@given(
    st.floats(0.5, 500).map(lambda volts: round(volts, 3)),
    st.floats(0.01, 90).map(lambda amps: round(amps, 4)),
    st.booleans(),
)
def test_any_winding_is_read_as_it_is_shown(volts: float, amps: float, tapped: bool) -> None:
    part = Winding(id="T1", rated_v=volts, rated_a=amps, centre_tap=tapped)
    assert _edited(Winding(id="T1", rated_v=1, rated_a=1), rating_text(part)) == part


@pytest.mark.parametrize(
    ("part", "typed", "field", "value"),
    [
        (_PARTS[8], "47R 5 W", "ohm", 47),
        (_PARTS[8], "47", "ohm", 47),
        (_PARTS[3], "12,6 V", "rated_v", 12.6),
        (_PARTS[1], "6.3 V 150 mA", "type", None),
        (_PARTS[2], "#47", "rated_v", None),
        (_PARTS[12], "500 mA", "rated_a", 0.5),
    ],
)
def test_what_is_typed_is_set_and_the_rest_stays(
    part: AnyPart, typed: str, field: str, value: object
) -> None:
    assert getattr(_edited(part, typed), field) == value


def test_figures_that_are_not_typed_stay() -> None:
    assert getattr(_edited(_PARTS[9], "47R"), "rated_w") == 2  # noqa: B009
    assert getattr(_edited(_PARTS[4], "12.6 V"), "rated_a") == 0.5  # noqa: B009


@pytest.mark.parametrize(
    ("part", "typed"),
    [
        (_PARTS[0], ""),
        (_PARTS[3], ""),
        (_PARTS[3], "6.3 V 2 A 3 W"),
        (_PARTS[3], "6.3 V of it"),
        (_PARTS[8], "2 A"),
        (_PARTS[15], "ajar"),
        (Chassis(id="X"), "5 V"),
        (Note(id="X", text="one\ntwo"), "three"),
    ],
)
def test_what_says_nothing_is_refused(part: AnyPart, typed: str) -> None:
    with pytest.raises(QuantityError):
        _edited(part, typed)


def test_turns_colours_and_pulled() -> None:
    assert [read_turn(text) for text in ("", "0", "90°", "270")] == [0, 0, 90, 270]
    assert [read_colour(text) for text in ("", " Red ", "gray", "Green-Yellow", "#0A0b0c")] == [
        None,
        "red",
        "grey",
        "green-yellow",
        "#0a0b0c",
    ]
    assert [read_pulled(text) for text in ("", "Pulled")] == [False, True]
    for refused, read in (
        ("45", read_turn),
        ("mauve", read_colour),
        ("#12", read_colour),
        ("in", read_pulled),
    ):
        with pytest.raises(QuantityError):
            read(refused)  # type: ignore[operator]


def test_offers_begin_with_the_text_first() -> None:
    assert fitting(["green", "grey", "blue", "light green"], "gr") == ["green", "grey", "light green"]
    assert "20 AWG" in gauges("")
    assert "0.5 mm²" in gauges("0.5")
    catalogue = load_builtin()
    assert terminals_of(SHEET, catalogue, "v1") == ["V1.4", "V1.5", "V10.4", "V10.5", "V10.9"]
    assert wires_to_add(SHEET, catalogue, "t1.a v2") == ["t1.a V2.4", "t1.a V2.5"]
