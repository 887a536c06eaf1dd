"""Supplies asked for too much or too little, short circuits, and what is not solved."""

from __future__ import annotations

from typing import Any

import pytest

from core.sheet import (
    Battery,
    Capacitor,
    Chassis,
    DcSupply,
    Fuse,
    Mains,
    RectifiedSupply,
    Relay,
    Sheet,
    Switch,
    Tube,
    Wire,
)
from tests.core.rule_sheets import findings, on_dc, rules, sheet, tube_type, winding

TUBE = Tube(id="V1", type="X1")
ONE = "P1.+ V1.4, P1.- V1.5"
FED = "T1.a V1.4, T1.b V1.5, T1.b E1.e"


def loaded(a: float, rated_a: float) -> Sheet:
    return on_dc(6.3, TUBE, wires=ONE, limit_a=rated_a, types=(tube_type(a=a),))


@pytest.mark.parametrize(("rated_a", "expected"), [(1.0, set()), (1.25, set()), (0.99, {"supply-margin"})])
def test_a_quarter_in_hand_exactly_met_is_met(rated_a: float, expected: set[str]) -> None:
    assert rules(loaded(0.8, rated_a)) == expected


def test_the_margin_names_its_limit() -> None:
    found = findings(loaded(0.8, 0.9), "supply-margin")
    assert [(f.severity, f.where, f.condition) for f in found] == [("caution", ("P1",), "nominal")]
    assert found[0].value == pytest.approx(0.8)
    assert found[0].limit == pytest.approx(0.72)
    assert "88.9" in str(found[0].says)


def test_a_full_load_is_no_overload() -> None:
    assert rules(loaded(1.0, 1.0)) == {"supply-margin"}


def test_a_substitution_that_overloads_its_winding() -> None:
    tubes = (Tube(id="V1", type="6V6GT"), Tube(id="V2", type="6V6GT"))
    bigger = (Tube(id="V1", type="EL34"), Tube(id="V2", type="EL34"))
    wires = "T1.a V1.2, T1.b V1.7, T1.a V2.2, T1.b V2.7, T1.b E1.e"
    assert rules(sheet(winding(6.3, 1.5, 4), *tubes, Chassis(id="E1"), wires=wires)) == set()
    found = findings(sheet(winding(6.3, 1.5, 4), *bigger, Chassis(id="E1"), wires=wires), "supply-overload")
    assert [f.condition for f in found] == ["nominal", "low mains", "high mains"]
    assert found[0].limit == 1.5 and found[0].value is not None and found[0].value > 2.9
    assert "4.00\u2009A" in str(found[0].mend)


@pytest.mark.parametrize(
    ("rated_a", "words"), [(0.6, "% of the"), (0.2, " times the 200\u2009mA it may give")]
)
def test_a_large_overload_is_told_in_multiples(rated_a: float, words: str) -> None:
    tube = Tube(id="V1", type="EL84")
    one = sheet(winding(6.3, rated_a, 0), tube, Chassis(id="E1"), wires=FED)
    says = str(findings(one, "supply-overload")[0].says)
    assert words in says
    assert ("%" in says) is (rated_a > 0.5)


@pytest.mark.parametrize(
    ("overload", "words"),
    [
        ("constant-current", "volts fall to"),
        ("hiccup", "tries again every"),
        ("foldback", "folds back"),
        ("latch-off", "stays off"),
    ],
)
def test_each_dc_supply_says_what_it_does_in_overload(overload: Any, words: str) -> None:
    supply = DcSupply(id="P1", set_v=6.3, limit_a=0.5, overload=overload)
    one = sheet(supply, Tube(id="V1", type="EL84"), Chassis(id="E1"), wires=f"{ONE}, P1.- E1.e")
    found = findings(one, "supply-overload")
    assert len(found) == 3
    assert words in str(found[0].says)
    assert found[0].value == pytest.approx(0.76, rel=1e-6)


def test_a_supply_below_its_minimum_load() -> None:
    def made(least: float) -> Sheet:
        supply = DcSupply(id="P1", set_v=6.3, limit_a=2.0, min_load_a=least)
        return sheet(
            supply,
            Tube(id="V1", type="X1"),
            Chassis(id="E1"),
            wires=f"{ONE}, P1.- E1.e",
            types=(tube_type(),),
        )

    assert rules(made(0.3)) == set()
    found = findings(made(0.4), "supply-light-load")
    assert [(f.severity, f.value, f.limit) for f in found] == [("caution", pytest.approx(0.3), 0.4)]


def test_a_lightly_loaded_winding_reads_high() -> None:
    one = sheet(winding(6.3, 5.0, 8.0), Tube(id="V1", type="EL84"), Chassis(id="E1"), wires=FED)
    found = findings(one, "supply-light-load")
    assert [(f.severity, f.where) for f in found] == [("note", ("T1",))]
    assert (
        rules(sheet(winding(6.3, 5.0, 4.0), Tube(id="V1", type="EL84"), Chassis(id="E1"), wires=FED)) == set()
    )


def test_a_supply_joined_by_wires() -> None:
    one = sheet(
        winding(6.3, 1.0, 10), Tube(id="V1", type="EL84"), Chassis(id="E1"), wires=f"{FED}, V1.4 V1.5"
    )
    found = findings(one, "short-circuit")
    assert [(f.severity, f.where) for f in found] == [("fault", ("T1", "w1", "w4", "w2"))]
    assert "11.0\u2009A" in str(found[0].says)
    assert "Take out w4" in str(found[0].mend)


def test_a_supply_joined_through_the_chassis() -> None:
    one = sheet(winding(6.3, 1.0, 10), Tube(id="V1", type="EL84"), Chassis(id="E1"), Chassis(id="E2"),
                wires="T1.a V1.4, T1.b V1.5, T1.a E1.e, T1.b E2.e")  # fmt: skip
    assert findings(one, "short-circuit")[0].where == ("T1", "w3", "w4")


def test_half_of_a_winding_joined_through_its_tap() -> None:
    one = sheet(
        winding(centre_tap=True), Tube(id="V1", type="EL84"), Chassis(id="E1"), wires=f"{FED}, T1.ct E1.e"
    )
    assert "Terminals b and ct" in str(findings(one, "short-circuit")[0].says)


@pytest.mark.parametrize(
    ("part", "ends", "shorted"),
    [
        (Fuse(id="F1", rated_a=1.0), ("F1.1", "F1.2"), True),
        (Switch(id="F1"), ("F1.1", "F1.2"), True),
        (Switch(id="F1", closed=False), ("F1.1", "F1.2"), False),
        (Relay(id="F1", coil_v=6, coil_ohm=100), ("F1.com", "F1.nc"), True),
        (Relay(id="F1", coil_v=6, coil_ohm=100), ("F1.com", "F1.no"), False),
    ],
)
def test_fuses_and_closed_contacts_conduct(part: Any, ends: tuple[str, str], shorted: bool) -> None:
    wires = f"{FED}, V1.4 {ends[0]}, V1.5 {ends[1]}"
    one = sheet(winding(6.3, 1.0, 10), Tube(id="V1", type="EL84"), Chassis(id="E1"), part, wires=wires)
    assert bool(findings(one, "short-circuit")) is shorted


def test_a_stiff_supply_that_is_shorted_is_named_though_nothing_is_solved() -> None:
    one = sheet(Battery(id="B1", emf_v=6.0), Tube(id="V1", type="EL84"), Chassis(id="E1"),
                wires="B1.+ V1.4, B1.- V1.5, V1.4 V1.5, B1.- E1.e")  # fmt: skip
    found = findings(one)
    assert {"short-circuit", "not-solved", "wrong-strap"} <= {f.rule for f in found}
    assert [f.severity for f in found if f.rule == "not-solved"] == ["fault"]


def test_what_is_not_computed_yet_is_a_caution_once() -> None:
    rectified = RectifiedSupply(id="D1", rated_v=6.3, rated_a=1.0)
    one = sheet(rectified, Tube(id="V1", type="EL84"), Chassis(id="E1"), wires="D1.+ V1.4, D1.- V1.5, D1.- E1.e",
                mains=Mains())  # fmt: skip
    found = findings(one)
    assert [(f.rule, f.severity, f.where) for f in found] == [("not-solved", "caution", ("D1",))]


def test_a_capacitor_under_dc_is_solved() -> None:
    base = on_dc(6.3, Tube(id="V1", type="EL84"), wires="").parts
    one = sheet(*base, Capacitor(id="C1", farad=1e-3), wires=f"{ONE}, P1.- E1.e, C1.1 P1.+, C1.2 P1.-")
    assert rules(one) == set()


def test_a_limiting_supply_that_is_shorted_has_finite_figures() -> None:
    one = on_dc(6.3, Tube(id="V1", type="EL84"), wires=f"{ONE}, V1.4 V1.5", limit_a=2.0)
    found = [f for f in findings(one) if f.rule in {"short-circuit", "supply-overload"}]
    assert len(found) == 4
    assert all(f.value is not None and f.value == pytest.approx(2.0) for f in found)
    assert not any("∞" in str(f.says) for f in found)
    assert "is shorted at nominal mains" in str(found[1].says)


def test_a_supply_without_volts_is_no_error() -> None:
    wire = Wire(id="x", start="P1.+", end="V1.4", awg=24, length_m=1.0)
    base = on_dc(0.0, Tube(id="V1", type="EL84"), wires="P1.- V1.5")
    assert rules(sheet(*base.parts, wires=(*base.wires, wire))) == {"not-heated"}
