"""How heater lines stand against the chassis."""

from __future__ import annotations

import pytest

from core.rules.mends import reference_pair_w
from core.sheet import Balance, Chassis, Elevation, Lamp, MainsFeed, Resistor, Tube
from tests.core.rule_sheets import findings, on_dc, rules, sheet, winding

EL84 = Tube(id="V1", type="EL84")
E1 = Chassis(id="E1")
FED = "T1.a V1.4, T1.b V1.5"
PAIR = (Resistor(id="R1", ohm=100, rated_w=0.5), Resistor(id="R2", ohm=100, rated_w=0.5))
PAIRED = "R1.1 V1.4, R2.1 V1.5, R1.2 E1.e, R2.2 E1.e"


def test_a_floating_line_gets_two_resistors() -> None:
    found = findings(sheet(winding(), EL84, wires=FED), "no-chassis-reference")
    assert [(f.severity, f.where) for f in found] == [("caution", ("T1",))]
    mend = str(found[0].mend)
    assert "100\u2009Ω" in mend and "99.2\u2009mW" in mend and "0.25\u2009W" in mend


@pytest.mark.parametrize(
    ("volts", "ohm", "watts"),
    [(6.3, 100, 0.0992), (6.3, 47, 0.211), (12.6, 100, 0.397), (25.2, 100, 1.59), (5.0, 22, 0.284)],
)
def test_watts_of_a_reference_pair(volts: float, ohm: float, watts: float) -> None:
    # three figures, as printed in the source of these cases
    assert reference_pair_w(volts, ohm) == pytest.approx(watts, rel=3e-3)


def test_half_watt_resistors_across_25_volts_burn() -> None:
    tubes = tuple(Tube(id=f"V{n}", type="EL84") for n in range(1, 5))
    wires = (
        "T1.a V1.4, V1.5 V2.4, V2.5 V3.4, V3.5 V4.4, V4.5 T1.b, R1.1 T1.a, R2.1 T1.b, R1.2 E1.e, R2.2 E1.e"
    )
    one = sheet(winding(25.2, 2.0), *tubes, E1, *PAIR, wires=wires)
    found = [f for f in findings(one, "resistor-power") if f.condition == "nominal"]
    assert [(f.where, f.severity) for f in found] == [(("R1",), "fault"), (("R2",), "fault")]
    assert found[0].value == pytest.approx(1.59, rel=1e-2)


def test_a_centre_tap_and_a_negative_side_are_proposed_where_there_are() -> None:
    tapped = findings(sheet(winding(centre_tap=True), EL84, wires=FED), "no-chassis-reference")
    assert "T1.ct" in str(tapped[0].mend)
    dc = sheet(*on_dc(6.3, EL84, wires="").parts, wires="P1.+ V1.4, P1.- V1.5")
    assert "P1.-" in str(findings(dc, "no-chassis-reference")[0].mend)


@pytest.mark.parametrize(
    ("parts", "wires"),
    [
        ((), "T1.b E1.e"),
        (PAIR, PAIRED),
        ((Balance(id="B1", ohm=100),), "B1.1 V1.4, B1.2 V1.5, B1.w E1.e"),
        ((Elevation(id="L1", volts=40.0),), "T1.b L1.e"),
        ((*PAIR, Elevation(id="L1", volts=40.0)), "R1.1 V1.4, R2.1 V1.5, R1.2 L1.e, R2.2 L1.e"),
    ],
)
def test_one_reference_of_any_kind_is_right(parts: tuple[Resistor, ...], wires: str) -> None:
    assert rules(sheet(winding(), EL84, E1, *parts, wires=f"{FED}, {wires}")) == set()


@pytest.mark.parametrize(
    ("parts", "wires", "ties"),
    [
        ((), "T1.b E1.e, V1.5 E1.e", ("w3", "w4")),
        (PAIR, f"{PAIRED}, T1.b E1.e", ("w7", "w5", "w6")),
        ((Elevation(id="L1", volts=40.0),), "T1.b L1.e, T1.b E1.e", ("w4", "L1")),
    ],
)
def test_two_references_are_a_loop(parts: tuple[Resistor, ...], wires: str, ties: tuple[str, ...]) -> None:
    one = sheet(winding(), EL84, E1, *parts, wires=f"{FED}, {wires}")
    found = findings(one, "second-reference")
    assert len(found) == 1
    assert set(found[0].where) == set(ties)
    assert found[0].severity == "caution" and found[0].value == 2.0


def test_every_chassis_symbol_is_the_same_chassis() -> None:
    one = sheet(winding(), EL84, E1, Chassis(id="E2"), wires=f"{FED}, T1.b E1.e, V1.5 E2.e")
    assert rules(one) == {"second-reference"}


def test_two_lines_have_a_reference_each() -> None:
    other = winding()
    other = type(other)(id="T2", rated_v=6.3, rated_a=2.0, regulation_pct=0.001)
    wires = f"{FED}, T1.b E1.e, T2.a V2.4, T2.b V2.5"
    one = sheet(winding(), other, EL84, Tube(id="V2", type="EL84"), E1, wires=wires)
    assert [(f.rule, f.where) for f in findings(one)] == [("no-chassis-reference", ("T2",))]
    assert rules(sheet(*one.parts, wires=f"{wires}, T2.b E1.e")) == set()


def test_a_line_with_lamps_only_may_float() -> None:
    assert rules(sheet(winding(), Lamp(id="L1", type="#47"), wires="T1.a L1.1, T1.b L1.2")) == set()


STRING = (MainsFeed(id="M1"), Tube(id="V1", type="12BA6"), Resistor(id="R1", ohm=1450.0, rated_w=100))


def test_a_mains_fed_string_has_the_usual_cautions_and_no_advice_to_ground_it() -> None:
    found = findings(sheet(*STRING, wires="M1.L R1.1, R1.2 V1.3, V1.4 M1.N"))
    found = [f for f in found if f.rule != "rating-unverified"]
    assert [(f.rule, f.severity) for f in found] == [("live-chassis", "caution")]
    assert "isolating transformer" in str(found[0].mend) and "licensed" in str(found[0].mend)


def test_a_mains_fed_string_on_the_chassis_makes_it_live() -> None:
    found = findings(sheet(*STRING, E1, wires="M1.L R1.1, R1.2 V1.3, V1.4 M1.N, M1.N E1.e"))
    assert [(f.rule, f.severity) for f in found if f.rule == "live-chassis"] == [("live-chassis", "fault")]
    assert "no-chassis-reference" not in {f.rule for f in found}
