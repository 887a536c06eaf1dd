"""The arithmetic of remedies."""

from __future__ import annotations

import pytest

from core.catalogue.wire import chassis_limit_a
from core.rules.mends import (
    leg_resistor,
    lift_window,
    resistor_for,
    shunt_for,
    size_for_current,
    size_for_drop,
    supply_rating_a,
)
from core.sheet import Wire


def wire(**size: float) -> Wire:
    return Wire(id="w1", start="A.1", end="B.1", **size)  # type: ignore[arg-type]


def test_a_shunt_carries_the_difference() -> None:
    fitted = shunt_for(12.6, 0.3, 0.15)
    assert fitted is not None
    # 84 Ω wanted, 82 Ω sold: 12.6² / 82 = 1.94 W, so 5 W
    assert (fitted.ohm, fitted.rated_w) == (82.0, 5.0)
    assert fitted.watts == pytest.approx(1.936, rel=1e-3)
    assert shunt_for(12.6, 0.15, 0.15) is None


def test_a_resistor_for_each_leg() -> None:
    # 6.93 V behind nothing: 0.63 V at 2.85 A is shared by two legs
    fitted = leg_resistor(6.93, 0.0, 6.3, 2.85)
    assert fitted is not None
    assert fitted.ohm == pytest.approx(0.63 / 2 / 2.85, rel=0.05)
    assert fitted.rated_w == 2.0
    # what is behind the supply already counts
    assert leg_resistor(6.93, 0.63 / 2.85, 6.3, 2.85) is None
    assert leg_resistor(6.3, 0.0, 6.3, 3.0) is None
    assert leg_resistor(6.93, 0.0, 6.3, 0.0) is None


def test_resistances_that_nobody_sells() -> None:
    assert resistor_for(0.0, 1.0) is None
    assert resistor_for(-1.0, 1.0) is None
    assert resistor_for(1e9, 1.0) is None


@pytest.mark.parametrize(("amps", "rating"), [(2.4, 3.0), (1.6, 2.0), (3.3, 5.0), (100.0, 125.0)])
def test_supplies_get_a_quarter_in_hand(amps: float, rating: float) -> None:
    assert supply_rating_a(amps) == rating


def test_wire_sizes_keep_their_system() -> None:
    assert size_for_current(wire(awg=24), chassis_limit_a(awg=20))[0] == 20
    assert size_for_current(wire(awg=23), chassis_limit_a(awg=22))[0] == 22
    assert size_for_current(wire(area_mm2=0.25), chassis_limit_a(area_mm2=0.5)) == (None, 0.5)
    assert size_for_current(wire(awg=24), 1000.0) == (None, None)
    assert size_for_drop(wire(area_mm2=0.5, length_m=1.0), 5.0, 0.063) == (None, 2.5)


def test_one_tube_has_a_window_of_its_own_limits() -> None:
    assert lift_window([(-50.0, 150.0)]) == (-50.0, 150.0)
    assert lift_window([(0.0, 10.0), (10.0, 20.0)]) == (10.0, 10.0)
