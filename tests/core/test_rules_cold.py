"""Heaters that get nothing, with the reason."""

from __future__ import annotations

import pytest

from core.sheet import Chassis, Lamp, Relay, Sheet, Switch, Tube
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
    tied = sheet(
        *one.parts, Switch(id="S1"), wires="P1.- E1.e, P1.+ V2.4, P1.- V2.5, P1.+ V1.4, P1.+ S1.1, S1.2 V1.5"
    )
    assert "no two sides" in reason(tied)


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
