"""Heaters of different currents in one string."""

from __future__ import annotations

import re

import pytest

from core.sheet import Resistor, Tube
from tests.core.rule_sheets import assessed, findings, on_dc, rules, sheet, tube_type

SERIES = "P1.+ V1.4, V1.5 V2.4, V2.5 P1.-"


def test_two_equal_looking_types() -> None:
    one = on_dc(25.2, Tube(id="V1", type="ECC82"), Tube(id="V2", type="5814"), wires=SERIES)
    found = findings(one, "string-balance")
    assert [finding.where for finding in found] == [("V1", "V2")]
    says = str(found[0].says)
    assert "V1 (ECC82)" in says and "V2 (5814)" in says and "150" in says and "175" in says
    assert (found[0].value, found[0].unit) == (0.175, "A")
    assert found[0].limit == pytest.approx(0.159)


def test_the_shunt_mends_it() -> None:
    low, high = tube_type("LOW", a=0.3), tube_type("HIGH", a=0.45)
    tubes = (Tube(id="V1", type="LOW"), Tube(id="V2", type="HIGH"))
    one = on_dc(12.6, *tubes, wires=SERIES, types=(low, high))
    assert rules(one) == {"string-balance", "heater-voltage"}
    match = re.search(
        r"shunt of ([\d.]+)\u2009Ω ([\d.]+)\u2009W across V1", str(findings(one, "string-balance")[0].mend)
    )
    assert match is not None
    assert float(match[1]) == 43.0  # 6.3 V / 0.15 A = 42 Ω, the nearest E24 value
    shunt = Resistor(id="R1", ohm=float(match[1]), rated_w=float(match[2]))
    mended = sheet(
        *one.parts, shunt, types=one.types, wires=f"P1.- E1.e, {SERIES}, R1.1 V1.4, R1.2 V1.5"
    )  # fmt: skip
    assert rules(mended) == set()
    assert assessed(mended).points["nominal"].heaters["V1"][0].deviation_pct == pytest.approx(0, abs=2.0)


@pytest.mark.parametrize(("second", "fires"), [(0.318, False), (0.319, True)])
def test_six_per_cent_exactly_met_is_met(second: float, fires: bool) -> None:
    types = (tube_type("A", a=0.3), tube_type("B", a=second))
    one = on_dc(12.6, Tube(id="V1", type="A"), Tube(id="V2", type="B"), wires=SERIES, types=types)
    assert bool(findings(one, "string-balance")) is fires


def test_heaters_in_parallel_may_differ() -> None:
    types = (tube_type("A", a=0.3), tube_type("B", a=0.6))
    wires = "P1.+ V1.4, P1.- V1.5, P1.+ V2.4, P1.- V2.5"
    assert (
        rules(on_dc(6.3, Tube(id="V1", type="A"), Tube(id="V2", type="B"), wires=wires, types=types)) == set()
    )


def test_an_unbalanced_string_is_to_be_balanced_before_its_current_is_set() -> None:
    one = on_dc(25.2, Tube(id="V1", type="ECC82"), Tube(id="V2", type="5814"), wires=SERIES)
    assert all("Balance the string first" in str(f.mend) for f in findings(one, "heater-current"))


def test_several_low_heaters_each_want_a_shunt() -> None:
    types = (tube_type("A", a=0.3), tube_type("B", a=0.6))
    tubes = (Tube(id="V1", type="A"), Tube(id="V2", type="A"), Tube(id="V3", type="B"))
    one = on_dc(18.9, *tubes, wires="P1.+ V1.4, V1.5 V2.4, V2.5 V3.4, V3.5 P1.-", types=types)
    mend = str(findings(one, "string-balance")[0].mend)
    assert "across V1" in mend and "V2" in mend
