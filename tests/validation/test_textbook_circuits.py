"""Printed exercises in direct current, each run as a sheet through the whole program.

Grob, Basic Electronics, 11th ed., examples 3-1, 3-8, 3-9 (textbook companion); OpenStax College Physics, example
20.6; US Army subcourses OD1633 and IT0334. Answers are exact unless a tolerance says why not.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from core.assess import Assessment
from core.elements.tungsten import TUNGSTEN
from core.sheet import Battery, DcSupply, Lamp, Resistor


def test_grob_3_1(solved: Callable[..., Assessment]) -> None:
    """A heater of 8 ohm across 120 V takes 15 A."""
    point = solved([Battery(id="B1", emf_v=120.0), Resistor(id="R1", ohm=8.0)], "B1.+=R1.1 R1.2=B1.-")
    assert point.points["nominal"].branches["R1"].a == pytest.approx(15.0, rel=1e-12)


@pytest.mark.parametrize(("watts", "amps"), [(300.0, 2.5), (60.0, 0.5)])
def test_grob_3_8_and_3_9(watts: float, amps: float, solved: Callable[..., Assessment]) -> None:
    """Bulbs of 300 W and 60 W on 120 V take 2.5 A and 0.5 A."""
    parts = [Battery(id="B1", emf_v=120.0), Lamp(id="H1", rated_v=120.0, rated_a=amps)]
    lamp = solved(parts, "B1.+=H1.1 H1.2=B1.-").points["nominal"].heaters["H1"][0]
    assert lamp.w == pytest.approx(watts, rel=1e-12)
    assert lamp.a == pytest.approx(amps, rel=1e-12)


def test_openstax_20_6_is_a_known_bad_model() -> None:
    """0.350 ohm at 20 °C is said to be 4.8 ohm at 2850 °C, by a straight line with 0.0045 per kelvin.

    The line gives the printed answer; tungsten itself is then at 6.2 ohm, 28 % more (within the 4 % to which its
    hot over cold ratio is known).
    """
    straight = 0.350 * (1 + 4.5e-3 * (2850 - 20))
    assert straight == pytest.approx(4.8, abs=0.05)
    ours = 0.350 * float(TUNGSTEN.ratio(np.array(2850 + 273.15))[0])
    assert ours / straight == pytest.approx(6.2 / 4.8, rel=0.04)


def test_army_od1633(solved: Callable[..., Assessment]) -> None:
    """0.5 A through 45 ohm drops 22.5 V."""
    parts = [DcSupply(id="U1", set_v=100.0, limit_a=0.5), Resistor(id="R1", ohm=45.0)]
    branch = solved(parts, "U1.+=R1.1 R1.2=U1.-").points["nominal"].branches["R1"]
    assert branch.v == pytest.approx(22.5, rel=1e-9)


def test_army_it0334(solved: Callable[..., Assessment]) -> None:
    """A series-parallel circuit that comes to 150 ohm takes 2 A from 300 V: 100 ohm, then two of 100 ohm."""
    resistors = [Resistor(id=f"R{n}", ohm=100.0) for n in (1, 2, 3)]
    point = solved(
        [Battery(id="B1", emf_v=300.0), *resistors], "B1.+=R1.1 R1.2=R2.1 R1.2=R3.1 R2.2=B1.- R3.2=B1.-"
    ).points["nominal"]
    assert point.supplies["B1"].a == pytest.approx(2.0, rel=1e-12)
    assert [point.branches[f"R{n}"].a for n in (1, 2, 3)] == pytest.approx([2.0, 1.0, 1.0], rel=1e-12)
    assert point.power_out_w == pytest.approx(600.0, rel=1e-12)
