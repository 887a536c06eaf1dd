"""Wrong straps and wires on the wrong pins: every case that a nine-pin socket offers."""

from __future__ import annotations

import pytest

from core.sheet import Joint, Resistor, Tube
from tests.core.rule_sheets import assessed, findings, on_dc, rules, sheet, tube_type

ECC83 = Tube(id="V1", type="ECC83")


def power_share(volts: float, tube: Tube, wires: str) -> float:
    sections = assessed(on_dc(volts, tube, wires=wires)).points["nominal"].heaters["V1"]
    return sum(one.w for one in sections) / sum(one.rated_v * one.rated_a for one in sections)


def test_twelve_volt_wiring_on_six_volts() -> None:
    one = on_dc(6.3, ECC83, wires="P1.+ V1.4, P1.- V1.5")
    found = findings(one, "wrong-strap")
    assert [finding.where for finding in found] == [("V1",)]
    assert "wired for 12.6" in str(found[0].says) and "fed 6.30" in str(found[0].says)
    assert "Strap pin 4 to pin 5" in str(found[0].mend)
    # a third of the power, by the law of the heater itself
    assert power_share(6.3, ECC83, "P1.+ V1.4, P1.- V1.5") == pytest.approx(0.33, rel=0.06)


def test_six_volt_strapping_on_twelve_volts() -> None:
    wires = "P1.+ V1.4, V1.4 V1.5, P1.- V1.9"
    found = findings(on_dc(12.6, ECC83, wires=wires), "wrong-strap")
    assert [finding.where for finding in found] == [("V1", "w3")]
    assert "strapped for 6.30" in str(found[0].says) and "fed 12.6" in str(found[0].says)
    assert power_share(12.6, ECC83, wires) == pytest.approx(3.03, rel=0.06)


@pytest.mark.parametrize(
    ("volts", "wires"), [(12.6, "P1.+ V1.4, P1.- V1.5"), (6.3, "P1.+ V1.4, V1.4 V1.5, P1.- V1.9")]
)
def test_the_two_right_ways_raise_nothing(volts: float, wires: str) -> None:
    assert rules(on_dc(volts, ECC83, wires=wires)) == set()


@pytest.mark.parametrize(("share", "fires"), [(0.3, True), (0.29, False), (0.7, True), (0.71, False)])
def test_about_half_the_volts_means_30_to_70_per_cent(share: float, fires: bool) -> None:
    one = on_dc(12.6 * share, ECC83, wires="P1.+ V1.4, P1.- V1.5")
    assert bool(findings(one, "wrong-strap")) is fires


def test_the_mend_of_the_volts_is_that_of_the_strap() -> None:
    one = on_dc(6.3, ECC83, wires="P1.+ V1.4, P1.- V1.5")
    assert findings(one, "heater-voltage")[0].mend == findings(one, "wrong-strap")[0].mend


def test_an_untapped_tube_in_a_socket_for_a_tapped_one() -> None:
    one = on_dc(6.3, Tube(id="V1", type="6DJ8"), wires="P1.+ V1.4, V1.4 V1.5, P1.- V1.9")
    assert rules(one) == {"wrong-strap", "not-heated", "pin-not-heater"}
    strap = findings(one, "wrong-strap")[0]
    assert strap.where == ("V1", "w3")
    assert "this one has none" in str(strap.says)
    pin = findings(one, "pin-not-heater")[0]
    assert "pin 9" in str(pin.says) and "no heater tap" in str(pin.says)


def test_a_tapped_tube_in_a_socket_for_an_untapped_one() -> None:
    assert "wrong-strap" in rules(on_dc(6.3, ECC83, wires="P1.+ V1.4, P1.- V1.5"))


def test_a_resistor_across_a_heater_is_no_strap() -> None:
    one = on_dc(6.3, Tube(id="V1", type="EL84"), wires="")
    fed = "P1.- E1.e, P1.+ V1.4, P1.- V1.5, R1.1 V1.4, R1.2 V1.5"
    assert rules(sheet(*one.parts, Resistor(id="R1", ohm=100.0, rated_w=1.0), wires=fed)) == set()


def test_a_strap_by_way_of_a_joint_is_named_with_all_its_wires() -> None:
    one = on_dc(6.3, Tube(id="V1", type="EL84"), Tube(id="V2", type="EL84"), wires="")
    fed = "P1.- E1.e, P1.+ V2.4, P1.- V2.5, V2.4 V1.4, V1.4 J1.j, J1.j V1.5"
    found = findings(sheet(*one.parts, Joint(id="J1"), wires=fed), "wrong-strap")
    assert [finding.where for finding in found] == [("V1", "w5", "w6")]


def test_pins_counted_from_the_wrong_side() -> None:
    one = on_dc(6.3, Tube(id="V1", type="6SN7GT"), wires="P1.+ V1.2, P1.- V1.1")
    found = findings(one, "pin-not-heater")
    assert [finding.where for finding in found] == [("V1", "w2", "w3")]
    assert "clockwise seen from below" in str(found[0].says)
    assert "pin 2 to pin 7" in str(found[0].mend) and "pin 1 to pin 8" in str(found[0].mend)


def test_mirrored_pins_of_which_one_is_right_by_chance() -> None:
    found = findings(on_dc(6.3, Tube(id="V1", type="EL84"), wires="P1.+ V1.6, P1.- V1.5"), "pin-not-heater")
    assert "clockwise" in str(found[0].says)
    assert str(found[0].mend) == "Move them: pin 6 to pin 4."


def test_a_pin_that_the_base_does_not_have() -> None:
    one = on_dc(6.3, Tube(id="V1", type="6SN7GT"), wires="P1.+ V1.7, P1.- V1.8, V1.8 V1.9")
    assert "no such pin" in str(findings(one, "pin-not-heater")[0].says)


def test_wires_on_heater_pins_only_raise_nothing() -> None:
    assert rules(on_dc(6.3, Tube(id="V1", type="6SN7GT"), wires="P1.+ V1.7, P1.- V1.8")) == set()


def test_two_equal_halves_without_a_tap_role_are_halves_too() -> None:
    kind = tube_type(sections="4-9 9-5")
    one = on_dc(6.3, Tube(id="V1", type="X1"), wires="P1.+ V1.4, P1.- V1.5", types=(kind,))
    assert "wrong-strap" in rules(one)
