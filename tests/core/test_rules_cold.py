"""Heaters that get nothing, with the reason."""

from __future__ import annotations

import pytest

from core.sheet import Capacitor, Chassis, Diode, Fuse, Lamp, Relay, Resistor, Sheet, Switch, Tube
from tests.core.rule_sheets import findings, on_dc, rules, sheet, winding

EL84 = Tube(id="V1", type="EL84")
OTHER = Tube(id="V2", type="EL84")


def reason(one: Sheet) -> str:
    found = findings(one, "not-heated")
    assert [(f.where, f.severity, f.condition) for f in found] == [(("V1",), "fault", None)]
    return str(found[0].says)


def test_a_tube_without_wires() -> None:
    assert "no wire ends" in reason(on_dc(6.3, EL84, OTHER, wires="P1.+ V2.4, P1.- V2.5"))


def test_a_tube_with_one_end_open() -> None:
    assert "only pin 4 is wired" in reason(on_dc(6.3, EL84, OTHER, wires="P1.+ V2.4, P1.- V2.5, V2.4 V1.4"))


def test_a_tube_whose_heater_is_shorted_by_a_strap() -> None:
    one = on_dc(6.3, EL84, OTHER, wires="P1.+ V2.4, P1.- V2.5, V2.4 V1.4, V1.4 V1.5")
    assert "a wire joins pins 4 and 5" in reason(one)
    assert "wrong-strap" in rules(one)


def test_a_tube_without_a_supply() -> None:
    assert "no supply feeds" in reason(
        sheet(EL84, Tube(id="V2", type="EL84", pulled=True), wires="V1.4 V2.4, V1.5 V2.5")
    )


def test_a_tube_behind_an_open_switch() -> None:
    switch = Switch(id="S1", closed=False)
    one = on_dc(6.3, EL84, wires="P1.- V1.5")
    one = sheet(*one.parts, switch, wires="P1.- E1.e, P1.- V1.5, P1.+ S1.1, S1.2 V1.4")
    assert "S1 stands open" in reason(one)
    closed = Switch(id="S1", closed=True)
    assert rules(sheet(*one.parts[:-1], closed, wires="P1.- E1.e, P1.- V1.5, P1.+ S1.1, S1.2 V1.4")) == set()


def test_a_tube_behind_a_relay_contact_that_is_open() -> None:
    relay = Relay(id="K1", coil_v=6.0, coil_ohm=100.0)
    base = on_dc(6.3, EL84, wires="").parts
    wires = "P1.- E1.e, P1.- V1.5, P1.+ K1.com, K1.no V1.4"
    assert "K1 stands open" in reason(sheet(*base, relay, wires=wires))
    assert rules(sheet(*base, relay, wires=f"{wires}, K1.c1 P1.+, K1.c2 P1.-")) == set()


def test_a_tube_whose_supply_is_shorted_elsewhere() -> None:
    one = sheet(winding(), EL84, Chassis(id="E1"), wires="T1.a V1.4, T1.b V1.5, T1.a E1.e, T1.b E1.e")
    assert "T1 gives next to nothing" in reason(one)


def test_a_tube_with_both_ends_on_one_side() -> None:
    one = on_dc(6.3, EL84, OTHER, wires="P1.+ V2.4, P1.- V2.5")
    ends = "P1.- E1.e, P1.+ V2.4, P1.- V2.5, P1.+ V1.4, P1.+ R1.1, R1.2 V1.5"
    assert "no two sides" in reason(sheet(*one.parts, Resistor(id="R1", ohm=1.0), wires=ends))


@pytest.mark.parametrize(
    "part", [Switch(id="S1"), Resistor(id="S1", ohm=0.0), Fuse(id="S1", rated_a=1, cold_ohm=0)]
)
def test_a_tube_bypassed_by_something_without_resistance(part: Switch) -> None:
    base = on_dc(12.6, EL84, OTHER, wires="").parts
    one = sheet(*base, part, wires="P1.- E1.e, P1.+ V1.4, V1.5 V2.4, V2.5 P1.-, S1.1 V1.4, S1.2 V1.5")
    assert "S1 joins pins 4 and 5" in reason(one)
    assert "S1" in findings(one, "wrong-strap")[0].where


STRING = "P1.- E1.e, P1.+ V1.4, V1.5 V2.4, V2.5 P1.-"


@pytest.mark.parametrize(
    ("mate", "words"),
    [
        (Tube(id="V2", type="EL84", pulled=True), "V2 in its string is pulled"),
        (Tube(id="V2", type="no such"), "V2, of unknown type"),
    ],
)
def test_a_tube_whose_string_mate_is_missing(mate: Tube, words: str) -> None:
    assert words in reason(sheet(*on_dc(12.6, EL84, mate, wires="").parts, wires=STRING))


@pytest.mark.parametrize(
    ("part", "ends", "words"),
    [
        (Diode(id="D1"), ("D1.k", "D1.a"), "D1 blocks"),
        (Capacitor(id="D1", farad=1e-6), ("D1.1", "D1.2"), "D1 in its loop"),
    ],
)
def test_a_tube_behind_what_does_not_conduct(part: Diode, ends: tuple[str, str], words: str) -> None:
    wires = f"P1.- E1.e, P1.+ {ends[0]}, {ends[1]} V1.4, V1.5 P1.-"
    assert words in reason(sheet(*on_dc(6.3, EL84, wires="").parts, part, wires=wires))


def test_a_relay_below_pull_in_is_told_its_volts() -> None:
    relay = Relay(id="K1", coil_v=12.0, coil_ohm=100.0)
    wires = "P1.- E1.e, P1.- V1.5, P1.+ K1.com, K1.no V1.4, K1.c1 P1.+, K1.c2 P1.-"
    text = reason(sheet(*on_dc(6.3, EL84, wires="").parts, relay, wires=wires))
    assert "coil gets 6.30\u2009V and pulls in at 9.00\u2009V" in text


def test_a_pulled_tube_is_not_reported() -> None:
    pulled = Tube(id="V1", type="EL84", pulled=True)
    assert rules(on_dc(6.3, pulled, OTHER, wires="P1.+ V2.4, P1.- V2.5, V2.4 V1.4, V2.5 V1.5")) == set()


def test_a_cold_lamp_is_a_caution() -> None:
    base = on_dc(6.3, OTHER, wires="").parts
    one = sheet(*base, Lamp(id="L1", type="#47"), wires="P1.- E1.e, P1.+ V2.4, P1.- V2.5, P1.+ L1.1")
    assert [(f.rule, f.severity) for f in findings(one)] == [("not-heated", "caution")]


@pytest.mark.parametrize(("share", "cold"), [(0.05, False), (0.049, True)])
def test_a_twentieth_of_the_rated_volts_divides_cold_from_warm(share: float, cold: bool) -> None:
    assert bool(findings(on_dc(6.3 * share, EL84, wires="P1.+ V1.4, P1.- V1.5"), "not-heated")) is cold


def test_one_half_on_4_and_9() -> None:
    one = on_dc(6.3, Tube(id="V1", type="ECC83"), wires="P1.+ V1.4, P1.- V1.9")
    assert rules(one) == {"half-heated"}
    found = findings(one, "half-heated")[0]
    assert "9-5" in str(found.says)
    assert "Strap pin 4 to pin 5" in str(found.mend)


def test_one_half_shorted_by_a_strap() -> None:
    one = on_dc(6.3, Tube(id="V1", type="ECC83"), wires="P1.+ V1.4, P1.- V1.9, V1.9 V1.5")
    assert rules(one) == {"half-heated", "wrong-strap"}
    assert "Take out" in str(findings(one, "half-heated")[0].mend)


def test_both_halves_are_not_half_heated() -> None:
    assert rules(on_dc(6.3, Tube(id="V1", type="ECC83"), wires="P1.+ V1.4, V1.4 V1.5, P1.- V1.9")) == set()
