"""Replacing a type: which wires move where, what is said, and what is left to the user."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.assess import assess
from core.catalogue import load_builtin
from core.checks import find_problems
from core.rewiring import Rewiring, replace_and_rewire, rewiring_for
from core.sheet import Resistor, Sheet, Tube, Winding
from tests.core.circuits import wired

CATALOGUE = load_builtin()
SUPPLY = Winding(id="T1", rated_v=6.3, rated_a=5.0)


def check(sheet: Sheet, designation: str) -> Rewiring:
    tube = sheet.part_by_id["V1"]
    assert isinstance(tube, Tube)
    return rewiring_for(sheet, tube, CATALOGUE.tube(tube.type), CATALOGUE.tube(designation), designation)


def socket(kind: str, straps: str) -> Sheet:
    return wired([SUPPLY, Tube(id="V1", type=kind)], straps)


def ends(sheet: Sheet) -> set[tuple[str, str]]:
    return {(wire.start, wire.end) for wire in sheet.wires}


PLAIN = socket("EL84", "T1.a=V1.4 T1.b=V1.5")
SERIES = socket("ECC83", "T1.a=V1.4 T1.b=V1.5")
BESIDE = socket("ECC83", "T1.a=V1.4 V1.4=V1.5 T1.b=V1.9")


def words(found: Rewiring) -> list[str]:
    return [str(line).replace("\u2009", " ") for line in found.sentences]


def test_same_pins_need_nothing() -> None:
    found = check(PLAIN, "6BQ5")
    assert found.is_plain
    assert words(found) == ["The heater pins stay as they are."]
    assert replace_and_rewire(found)(PLAIN).wires == PLAIN.wires


def test_one_heater_to_one_on_another_base() -> None:
    found = check(PLAIN, "6V6GT")
    assert found.moves == {"4": "2", "5": "7"}
    assert words(found) == [
        "The base changes from B9A to octal: another socket.",
        "The heater takes 450 mA instead of 760 mA.",
        "The wires on pin 4 go to pin 2.",
        "The wires on pin 5 go to pin 7.",
    ]
    after = replace_and_rewire(found)(PLAIN)
    assert ends(after) == {("T1.a", "V1.2"), ("T1.b", "V1.7")}
    assert after.part_by_id["V1"].type == "6V6GT"


def test_a_pin_of_both_types_keeps_its_wires() -> None:
    sheet = socket("6V6GT", "T1.a=V1.2 T1.b=V1.7")
    found = check(sheet, "6SN7GT")
    assert found.moves == {"2": "8", "7": "7"}


def test_halves_side_by_side_to_a_plain_heater() -> None:
    found = check(BESIDE, "EL84")
    assert found.is_plain
    after = replace_and_rewire(found)(BESIDE)
    assert ends(after) == {("T1.a", "V1.4"), ("T1.b", "V1.5")}
    assert "Pins 4 and 5 become one pin." in words(found)


def test_halves_in_series_to_a_plain_heater_of_their_volts() -> None:
    assert check(SERIES, "12SL7GT").is_plain
    found = check(SERIES, "EL84")
    assert not found.is_plain
    assert "It is wired for 12.6 V; EL84 needs other volts." in words(found)
    assert replace_and_rewire(found)(SERIES).wires == SERIES.wires


def test_a_plain_heater_to_halves_side_by_side() -> None:
    found = check(PLAIN, "ECC83")
    assert found.strap == ("4", "5")
    after = replace_and_rewire(found)(PLAIN)
    assert ends(after) == {("T1.a", "V1.4"), ("T1.b", "V1.9"), ("V1.4", "V1.5")}
    heaters = assess(after, CATALOGUE).points["nominal"].heaters["V1"]
    assert [heater.v for heater in heaters] == pytest.approx([6.8, 6.8], rel=0.02)


def test_a_plain_heater_to_halves_in_series() -> None:
    sheet = socket("12SL7GT", "T1.a=V1.7 T1.b=V1.8")
    after = replace_and_rewire(check(sheet, "ECC83"))(sheet)
    assert ends(after) == {("T1.a", "V1.4"), ("T1.b", "V1.5")}


def test_tapped_to_tapped_keeps_roles() -> None:
    found = check(BESIDE, "12BH7A")
    assert found.is_plain
    assert replace_and_rewire(found)(BESIDE).wires == BESIDE.wires


def test_half_of_a_tapped_heater_is_left_to_the_user() -> None:
    sheet = socket("ECC83", "T1.a=V1.4 T1.b=V1.9")
    found = check(sheet, "EL84")
    assert not found.is_plain
    assert words(found)[-1] == "The wires of V1 stay where they are: move them by hand."


def test_unknown_types() -> None:
    assert not check(PLAIN, "nonsense").is_plain
    unknown = socket("nonsense", "T1.a=V1.4 T1.b=V1.5")
    assert not check(unknown, "EL84").is_plain
    assert check(socket("nonsense", ""), "EL84").is_plain


def test_a_stray_wire_that_would_become_a_heater_wire() -> None:
    sheet = wired(
        [SUPPLY, Resistor(id="R1", ohm=1.0), Tube(id="V1", type="EL84")],
        "T1.a=V1.4 T1.b=V1.5 R1.1=V1.7",
    )
    found = check(sheet, "6V6GT")
    assert not found.is_plain
    assert "Pin 7 carries a wire and would become a heater pin." in words(found)
    other = wired(
        [SUPPLY, Resistor(id="R1", ohm=1.0), Tube(id="V1", type="EL84")],
        "T1.a=V1.4 T1.b=V1.5 R1.1=V1.9",
    )
    assert "Pin 9 carries a wire; octal has no such pin." in words(check(other, "6V6GT"))


TYPES = ("EL84", "ECC83", "6V6GT", "6SN7GT", "12SL7GT", "300B", "35W4", "12BH7A", "ECC88")
PINS = st.sampled_from(("4", "5", "9", "2", "7", "8"))


@given(
    st.sampled_from(TYPES),
    st.sampled_from(TYPES),
    st.lists(st.tuples(st.sampled_from(("T1.a", "T1.b", "V1")), PINS, PINS), max_size=5),
)
def test_whatever_is_wired_the_result_is_a_sheet(old: str, new: str, straps) -> None:
    pairs = [
        (f"V1.{one}" if start == "V1" else start, f"V1.{other}")
        for start, one, other in straps
        if start != "V1" or one != other
    ]
    sheet = socket(old, " ".join(f"{a}={b}" for a, b in pairs))
    found = check(sheet, new)
    after = replace_and_rewire(found)(sheet)
    assert not find_problems(after)
    assert found.sentences
    if not found.is_plain:
        assert after.wires == sheet.wires
    kind = CATALOGUE.tube(new)
    assert kind is not None
    if found.strap:
        assert set(found.strap) <= set(kind.heater_pins)
    assert all(to in kind.heater_pins for to in (found.moves or {}).values())
