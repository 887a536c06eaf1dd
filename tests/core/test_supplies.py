"""DC supplies with a limit: what they take from others, and what each kind does when asked for too much."""

from __future__ import annotations

import itertools
import math
from typing import Any

import numpy as np
import pytest
from scipy.optimize import brentq

from core.elements.heater import heater_law, steady_resistance
from core.results import OperatingPoint
from core.sheet import AnyPart, Battery, Chassis, DcSupply, Diode, Resistor, Thermistor, Tube, Winding
from tests.core.rule_sheets import assessed, findings, sheet

FED = "P1.+ V1.4, P1.- V1.5, P1.- E1.e"
KINDS = ("constant-current", "foldback", "hiccup", "latch-off")


def point_of(*parts: AnyPart, wires: str, condition: str = "nominal") -> OperatingPoint:
    point = assessed(sheet(*parts, wires=wires)).points[condition]
    assert not point.unsolved
    assert point.power_in_w == pytest.approx(point.power_out_w, rel=1e-8, abs=1e-8)
    return point


def tube(rated_a: float = 0.76, name: str = "V1", ratio: float | None = None) -> Tube:
    return Tube(id=name, type="EL84", rated_a=rated_a, cold_ratio=ratio)


def supply(set_v: float = 6.3, limit_a: float = 1.0, name: str = "P1", **more: Any) -> DcSupply:
    return DcSupply(id=name, set_v=set_v, limit_a=limit_a, **more)


class TestDrivenBack:
    def test_a_battery_holds_a_supply_up(self) -> None:
        """12 V behind 0.5 ohm in parallel with 5 V: the supply takes nothing, and the heater is far too hot."""
        point = point_of(
            supply(5.0, 5.0),
            Battery(id="B1", emf_v=12.0, internal_ohm=0.5),
            tube(),
            Chassis(id="E1"),
            wires=f"{FED}, B1.+ P1.+, B1.- P1.-",
        )
        found = point.supplies["P1"]
        assert found.a < 1e-9
        assert found.driven_back
        assert not found.limiting
        assert found.load_pct == pytest.approx(0.0, abs=1e-6)
        heater = point.heaters["V1"][0]
        assert heater.deviation_pct > 50
        assert heater.v == pytest.approx(12.0 - 0.5 * heater.a, rel=1e-8)
        assert not point.supplies["B1"].driven_back

    def test_a_weak_battery_does_not(self) -> None:
        point = point_of(
            supply(5.0, 5.0),
            Battery(id="B1", emf_v=5.1, internal_ohm=0.5),
            tube(),
            Chassis(id="E1"),
            wires=f"{FED}, B1.+ P1.+, B1.- P1.-",
        )
        found = point.supplies["P1"]
        assert found.v == pytest.approx(5.0, rel=1e-9)
        assert found.a + 0.2 == pytest.approx(point.heaters["V1"][0].a, rel=1e-9)
        assert not found.driven_back

    def test_a_battery_that_is_charged(self) -> None:
        point = point_of(
            Battery(id="B1", emf_v=14.0, internal_ohm=1.0),
            Battery(id="B2", emf_v=12.0, internal_ohm=1.0),
            wires="B1.+ B2.+, B1.- B2.-",
        )
        assert (point.supplies["B1"].driven_back, point.supplies["B2"].driven_back) == (False, True)

    def test_turned_round_by_a_stronger_one_in_series(self) -> None:
        """12 V and 5 V in series into 2 ohm would be 8.5 A: at its limit of 1 A the weak one stands at -10 V."""
        point = point_of(
            supply(5.0, 1.0),
            Battery(id="B1", emf_v=12.0),
            Resistor(id="R1", ohm=2.0),
            wires="B1.- P1.+, B1.+ R1.1, R1.2 P1.-",
        )
        found = point.supplies["P1"]
        assert (found.v, found.a) == pytest.approx((10.0, 1.0))
        assert (found.driven_back, found.limiting, found.demand_a) == (True, False, None)

    @pytest.mark.parametrize("order", list(itertools.permutations((11.0, 12.0, 13.0))))
    def test_the_highest_of_three_behind_resistors(self, order: tuple[float, ...]) -> None:
        """Behind 0.1 ohm each into 12 ohm: only the highest gives, in whatever order they stand."""
        parts: list[AnyPart] = [Resistor(id="R9", ohm=12.0)]
        wires = []
        for n, volts in enumerate(order):
            parts += [supply(volts, 5.0, name=f"P{n}"), Resistor(id=f"R{n}", ohm=0.1)]
            wires.append(f"P{n}.+ R{n}.1, R{n}.2 R9.1, P{n}.- R9.2")
        point = point_of(*parts, wires=", ".join(wires))
        for n, volts in enumerate(order):
            found = point.supplies[f"P{n}"]
            assert found.a == pytest.approx(13.0 / 12.1 if volts == 13.0 else 0.0, abs=1e-8)
            assert found.driven_back is (volts < 13.0)

    def test_the_next_one_helps_out(self) -> None:
        """13 V limited to 1 A and 12 V, behind 0.1 ohm each, into 4 ohm: the second gives what is missing."""
        point = point_of(
            supply(13.0, 1.0),
            supply(12.0, 5.0, name="P2"),
            *(Resistor(id="R1", ohm=0.1), Resistor(id="R2", ohm=0.1), Resistor(id="R3", ohm=4.0)),
            wires="P1.+ R1.1, P2.+ R2.1, R1.2 R3.1, R2.2 R3.1, P1.- R3.2, P2.- R3.2",
        )
        assert point.supplies["P1"].limiting
        assert point.supplies["P1"].a == pytest.approx(1.0, rel=1e-9)
        assert point.branches["R3"].v == pytest.approx((12.0 + 0.1) * 4.0 / 4.1, rel=1e-9)


@pytest.mark.parametrize("kind", KINDS)
class TestEveryKind:
    def test_regulates_within_its_limit(self, kind: Any) -> None:
        """2 A for a heater of 0.76 A, which asks for 5.3 A while cold."""
        parts = (supply(limit_a=2.0, overload=kind, foldback_a=1.9), tube(), Chassis(id="E1"))
        found = point_of(*parts, wires=FED).supplies["P1"]
        assert (found.v, found.a) == pytest.approx((6.3, 0.76))
        assert (found.limiting, found.demand_a) == (False, None)

    def test_holds_at_the_cold_instant(self, kind: Any) -> None:
        parts = (supply(limit_a=2.0, overload=kind), tube(), Chassis(id="E1"))
        found = point_of(*parts, wires=FED, condition="cold").supplies["P1"]
        cold_ohm = 6.3 / (found.demand_a or 0.0)
        line_a = 0.4 / (1 - 1.6 / 6.3 * cold_ohm)  # I = 0.4 + 1.6 V / 6.3 with V = I R
        assert found.a == pytest.approx(line_a if kind == "foldback" else 2.0, rel=1e-9)
        assert found.limiting
        assert found.v == pytest.approx(found.a * cold_ohm, rel=1e-9)

    def test_shorted(self, kind: Any) -> None:
        one = point_of(supply(limit_a=2.0, overload=kind), wires="P1.+ P1.-").supplies["P1"]
        given = {"constant-current": 2.0, "foldback": 0.4}.get(kind, 0.0)
        assert one.a == pytest.approx(given, abs=1e-9)
        assert (one.limiting, one.demand_a) == (True, math.inf)

    def test_overloaded_when_hot(self, kind: Any) -> None:
        """5 ohm on 10 V of 1 A ask for 2 A: 5 V; or I = 0.2 + 0.08 V = 1/3 A; or nothing."""
        parts = (supply(10.0, 1.0, overload=kind), Resistor(id="R1", ohm=5.0))
        found = point_of(*parts, wires="P1.+ R1.1, P1.- R1.2").supplies["P1"]
        given = {"constant-current": 1.0, "foldback": 1 / 3}.get(kind, 0.0)
        assert (found.a, found.v) == pytest.approx((given, 5 * given), abs=1e-9)
        assert found.limiting
        assert found.demand_a == pytest.approx(2.0)
        assert found.load_pct == pytest.approx(200.0)

    def test_the_limit_exactly_met_is_met(self, kind: Any) -> None:
        parts = (supply(10.0, 2.0, overload=kind), Resistor(id="R1", ohm=5.0))
        found = point_of(*parts, wires="P1.+ R1.1, P1.- R1.2").supplies["P1"]
        assert (found.v, found.a) == pytest.approx((10.0, 2.0))
        assert not found.limiting

    def test_says_what_the_figures_say(self, kind: Any) -> None:
        one = sheet(supply(limit_a=0.5, overload=kind), tube(), Chassis(id="E1"), wires=FED)
        (found,) = (f for f in findings(one, "supply-overload") if f.condition == "nominal")
        at_work = assessed(one).points["nominal"].supplies["P1"]
        words = {
            "constant-current": f"volts fall to {at_work.v:.3g}",
            "foldback": f"folds back to {at_work.a * 1000:.3g}",
            "hiccup": "cuts out after",
            "latch-off": "switches off after",
        }
        assert words[kind] in str(found.says)
        assert found.value == pytest.approx(0.76, rel=1e-6)


@pytest.mark.parametrize("limit_a", [0.5, 0.7, 0.8, 1.0, 1.5, 2.5, 3.5, 6.0])
@pytest.mark.parametrize("share", [0.0, 0.2, 0.5, 0.9])
def test_folding_back_stops_at_the_first_answer_from_cold(limit_a: float, share: float) -> None:
    """Found apart from the solver: scan the heater's own curve upwards for the first crossing with the line."""
    law = heater_law(np.array([6.3]), np.array([0.76]), np.array([7.0]), np.array([True]), 298.15)

    def lack_a(log_w: float) -> float:
        """Amperes that the line gives less than the heater takes at a power."""
        watts = np.exp([log_w])
        ohm = steady_resistance(law, watts)[0]
        volts, amps = float(np.sqrt(watts * ohm)[0]), float(np.sqrt(watts / ohm)[0])
        return amps - (share + (1 - share) * min(volts / 6.3, 1.0)) * limit_a

    grid = np.linspace(np.log(1e-9), np.log(6.3 * 0.76), 3000)
    first = next((n for n, x in enumerate(grid) if lack_a(x) > 0), None)
    parts = (
        supply(limit_a=limit_a, overload="foldback", foldback_a=share * limit_a),
        tube(ratio=7.0),
        Chassis(id="E1"),
    )
    heater = point_of(*parts, wires=FED).heaters["V1"][0]
    if first is None:
        assert heater.v == pytest.approx(6.3, rel=1e-9)
    elif first == 0:
        assert heater.v < 1e-3, "a line through nothing has nothing as its first answer"
    else:
        assert heater.w == pytest.approx(math.exp(brentq(lack_a, grid[first - 1], grid[first])), rel=1e-6)


def test_a_supply_held_back_by_cold_heaters_is_reported() -> None:
    """0.76 A of 0.8 A when warm, but from cold it gets no farther than its line lets it."""
    one = sheet(supply(limit_a=0.8, overload="foldback"), tube(), Chassis(id="E1"), wires=FED)
    at_work = assessed(one).points["nominal"].supplies["P1"]
    assert at_work.limiting
    assert at_work.demand_a == pytest.approx(0.76, rel=1e-6)
    found = findings(one, "supply-overload")
    assert "cold heaters hold P1 folded back" in str(found[0].says)
    larger = sheet(supply(limit_a=20.0, overload="foldback"), tube(), Chassis(id="E1"), wires=FED)
    assert findings(larger, "supply-overload") == []


def test_folding_back_beside_a_winding_in_series() -> None:
    """The line is one of DC: 6 V rms in series add no AC, and 1/3 A flows as without them."""
    point = point_of(
        supply(10.0, 1.0, overload="foldback"),
        Winding(id="T1", rated_v=6.0, rated_a=1.0, regulation_pct=0.0),
        Resistor(id="R1", ohm=5.0),
        wires="P1.+ T1.a, T1.b R1.1, R1.2 P1.-",
    )
    assert point.branches["R1"].a == pytest.approx(1 / 3, rel=1e-6)


def test_folding_back_driven_by_another_in_series() -> None:
    """12 V of battery help 10 V into 5 ohm: 0.2 A need 1 V only, so the supply stands at -11 V, its line's low end."""
    point = point_of(
        supply(10.0, 1.0, overload="foldback"),
        Battery(id="B1", emf_v=12.0),
        Resistor(id="R1", ohm=5.0),
        wires="P1.+ R1.1, R1.2 B1.-, B1.+ P1.-",
    )
    assert point.branches["R1"].a == pytest.approx(0.2, rel=1e-6)
    assert point.supplies["P1"].driven_back


def test_one_that_has_cut_out_leaves_the_load_to_the_other() -> None:
    """12 V that cuts out at 1 A, and a battery of 11 V, each behind a diode, into 6 ohm."""
    point = point_of(
        supply(12.0, 1.0, overload="hiccup"),
        Battery(id="B1", emf_v=11.0),
        Diode(id="D1", forward_v=0.5),
        Diode(id="D2", forward_v=0.5),
        Resistor(id="R1", ohm=6.0),
        wires="P1.+ D1.a, B1.+ D2.a, D1.k R1.1, D2.k R1.1, R1.2 P1.-, R1.2 B1.-",
    )
    assert point.branches["R1"].v == pytest.approx(10.5, rel=1e-4)
    assert point.supplies["P1"].limiting
    assert point.supplies["P1"].a < 1e-7


def test_the_smaller_limit_keeps_the_other_from_cutting_out() -> None:
    """In series, 1 A constant and 2 A that would cut out, asked for 2.25 A: 1 A flows."""
    point = point_of(
        supply(6.0, 2.0, overload="hiccup"),
        supply(12.0, 1.0, name="P2"),
        Resistor(id="R1", ohm=8.0),
        wires="P1.- P2.+, P1.+ R1.1, R1.2 P2.-",
    )
    assert point.branches["R1"].a == pytest.approx(1.0, rel=1e-9)
    assert (point.supplies["P1"].limiting, point.supplies["P2"].limiting) == (False, True)


def test_a_thermistor_that_lets_too_much_through_cuts_the_supply_out() -> None:
    """Hot demand decides: cold the thermistor keeps it below the limit, hot it does not."""
    parts = (
        supply(12.0, 1.0, overload="latch-off"),
        Thermistor(id="N1", type="S237 5 ohm"),
        Resistor(id="R1", ohm=9.0),
    )
    wires = "P1.+ N1.1, N1.2 R1.1, R1.2 P1.-"
    assert point_of(*parts, wires=wires, condition="cold").supplies["P1"].a == pytest.approx(
        12 / 14, rel=1e-2
    )
    hot = point_of(*parts, wires=wires).supplies["P1"]
    assert hot.limiting
    assert hot.a < 1e-9
