"""Mends for heaters behind droppers, at the ends of the mains band, and on halves of a winding."""

from __future__ import annotations

import pytest

from core.sheet import Balance, Chassis, Fuse, Mains, MainsFeed, Relay, Resistor, Thermistor, Tube
from tests.core.rule_sheets import findings, on_dc, rules, sheet, winding

EL84 = Tube(id="V1", type="EL84")
E1 = Chassis(id="E1")
FED = "T1.a V1.4, T1.b V1.5, T1.b E1.e"
BEHIND = "P1.- E1.e, P1.+ R1.1, R1.2 V1.4, V1.5 P1.-"


@pytest.mark.parametrize(("ohm", "volts"), [(155.0, "124.1"), (105.0, "86.1")])
def test_the_dropper_counts_in_the_volts_to_set(ohm: float, volts: str) -> None:
    one = sheet(*on_dc(100.0, EL84, wires="").parts, Resistor(id="R1", ohm=ohm, rated_w=200), wires=BEHIND)
    assert str(findings(one, "heater-voltage")[0].mend) == f"Set P1 to {volts}\u2009V."


def test_the_dropper_counts_in_the_legs_to_add() -> None:
    wires = "T1.a R1.1, R1.2 V1.4, T1.b V1.5, T1.b E1.e"
    one = sheet(winding(60.0, 2.0, 0.0), EL84, Resistor(id="R1", ohm=63.0, rated_w=100), E1, wires=wires)
    # (60 − 6.3) / 0.76 − 63 = 7.66 Ω in two legs
    assert "3.90\u2009Ω" in str(findings(one, "heater-voltage")[0].mend)


def test_a_band_wider_than_the_window_is_said() -> None:
    one = sheet(winding(6.3, 2.0, 0.0), EL84, E1, wires=FED, mains=Mains(low_pct=-12, high_pct=12))
    found = findings(one, "heater-voltage")
    assert {str(f.mend).split(",")[0] for f in found} == {
        "The mains band moves the heaters by −12\u2009% to +12\u2009%"
    }


def test_a_heater_off_its_rating_is_set_right_before_the_band_is_blamed() -> None:
    """A winding of 5 A at 0.76 A gives too much at nominal mains already."""
    found = findings(sheet(winding(6.3, 5.0, 10.0), EL84, E1, wires=FED, mains=Mains()), "heater-voltage")
    assert found
    assert all("in each leg of T1" in str(f.mend) or "in series" in str(f.mend) for f in found)


def test_nobody_is_told_to_change_the_mains() -> None:
    tube = Tube(id="V1", type="EL84")
    parts = (MainsFeed(id="M1"), Resistor(id="R1", ohm=320.0, rated_w=300), tube)
    found = findings(sheet(*parts, wires="M1.L R1.1, R1.2 V1.4, V1.5 M1.N"), "heater-voltage")
    assert "less in series" in str(found[0].mend)


def test_an_unequally_loaded_half_gets_its_own_resistor() -> None:
    wires = "T1.a V1.4, T1.ct V1.5, T1.ct E1.e"
    one = sheet(winding(16.0, 1.0, 0.0, centre_tap=True), EL84, E1, wires=wires)
    assert "in the leg at T1.a" in str(findings(one, "heater-voltage")[0].mend)


def test_a_half_heated_tube_is_to_be_strapped_first() -> None:
    one = on_dc(12.6, Tube(id="V1", type="ECC83"), wires="P1.+ V1.4, P1.- V1.5, V1.4 V1.9")
    assert str(findings(one, "heater-voltage")[0].mend).startswith("Mend the strap first")


@pytest.mark.parametrize(("rated", "severity"), [(0.7, "fault"), (0.8, "caution"), (1.0, None)])
def test_fuses_by_their_rating(rated: float, severity: str | None) -> None:
    fuse = Fuse(id="R1", rated_a=rated, cold_ohm=0.001)
    found = findings(sheet(*on_dc(6.3, EL84, wires="").parts, fuse, wires=BEHIND), "fuse-overload")
    assert {f.severity for f in found} == ({severity} if severity else set())


def test_a_thermistor_beyond_its_amperes() -> None:
    part = Thermistor(id="R1", r25_ohm=5.0, beta_k=3000.0, dissipation_w_per_k=0.02, max_a=0.5)
    one = sheet(*on_dc(6.9, EL84, wires="").parts, part, wires=BEHIND)
    assert "thermistor-rating" in rules(one)


@pytest.mark.parametrize(("ohm", "fires"), [(20.0, True), (100.0, False)])
def test_a_balance_control_that_gets_hot(ohm: float, fires: bool) -> None:
    wires = "T1.a V1.4, T1.b V1.5, T1.a H1.1, T1.b H1.2, H1.w E1.e"
    one = sheet(winding(), EL84, Balance(id="H1", ohm=ohm), E1, wires=wires)
    assert bool(findings(one, "resistor-power")) is fires


@pytest.mark.parametrize(("coil", "fires"), [(6.0, False), (12.0, True)])
def test_a_relay_that_never_pulls_in(coil: float, fires: bool) -> None:
    relay = Relay(id="K1", coil_v=coil, coil_ohm=100.0)
    wires = "P1.- E1.e, P1.+ V1.4, P1.- V1.5, P1.+ K1.c1, P1.- K1.c2"
    one = sheet(*on_dc(6.3, EL84, wires="").parts, relay, wires=wires)
    assert bool(findings(one, "relay-never-pulls-in")) is fires


def test_a_screen_pin_on_the_chassis_is_a_note() -> None:
    one = on_dc(6.3, Tube(id="V1", type="ECC88"), wires="P1.+ V1.4, P1.- V1.5, V1.9 E1.e")
    assert [f.severity for f in findings(one, "pin-not-heater")] == ["note"]
