"""A heater whose resistance is an exact power of its temperature: R ~ T^1.2, ambient 300 K.

6.3 V 0.3 A, heater 1400 K, cathode 1050 K; reference figures from an independent solution of the two-body balance by a
stiff integrator (relative tolerance 1e-11) run to its end. With radiation alone I ~ V^n, n = (4 - m) / (4 + m).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from core.catalogue import Catalogue
from core.circuit import build
from core.circuit.network import compile_island
from core.elements.heater import heater_law
from core.sheet import Battery, Sheet, Tube
from core.steady import Solution, solve
from tests.validation.heaters_in_time import PowerCurve

AMBIENT_K = 300.0
M = 1.2


@pytest.fixture(scope="module")
def at(wired: Callable[..., Sheet], catalogue: Catalogue) -> Callable[[float], Solution]:
    """The solver's answer for this heater on a battery, hot and cold."""

    def run(volts: float) -> Solution:
        sheet = wired([Battery(id="B1", emf_v=volts), Tube(id="V1", type="6SN7GT")], "B1.+=V1.7 V1.8=B1.-")
        network = compile_island(build(sheet, catalogue).islands[0], frozenset(), AMBIENT_K)
        ratio = np.array([(1400 / AMBIENT_K) ** M])
        law = heater_law(
            np.array([6.3]), np.array([0.3]), ratio, np.array([True]), AMBIENT_K, PowerCurve(M, AMBIENT_K)
        )
        return solve(replace(network, heaters=law), np.array([230.0, 230.0]), np.array([False, True]))

    return run


@pytest.mark.parametrize(
    ("volts", "amps", "heater", "cathode"),
    [
        (5.04, 0.26598, 1285.1, 964.3),
        (5.67, 0.28343, 1344.5, 1008.6),
        (6.0, 0.29221, 1374.0, 1030.6),
        (6.3, 0.30000, 1400.0, 1050.0),
        (6.6, 0.30762, 1425.2, 1068.8),
        (6.93, 0.31582, 1452.2, 1089.0),
        (7.56, 0.33099, 1501.5, 1125.8),
    ],
)
def test_steady_sweep(
    volts: float, amps: float, heater: float, cathode: float, at: Callable[[float], Solution]
) -> None:
    """Within 0.05 %; the figures are printed to five digits."""
    answer = at(volts)
    assert np.abs(answer.currents[0, answer.network.hot.at[0], 0]) == pytest.approx(amps, rel=5e-4)
    assert answer.heater_k[0, 0] == pytest.approx(heater, rel=5e-4)
    assert answer.cathode_k[0, 0] == pytest.approx(cathode, rel=5e-4)


def test_effective_exponent(at: Callable[[float], Solution]) -> None:
    """0.539 over the sweep; 0.53846 in the limit of a cold ambient."""
    amps = [abs(at(volts).currents[0, at(volts).network.hot.at[0], 0]) for volts in (5.04, 7.56)]
    assert np.log(amps[1] / amps[0]) / np.log(1.5) == pytest.approx(0.539, abs=5e-4)


def test_switch_on_surge(at: Callable[[float], Solution]) -> None:
    """1.90515 A from an ideal source, 6.3505 times the rating, to the figures given."""
    answer = at(6.3)
    amps = abs(answer.currents[1, answer.network.hot.at[0], 0])
    assert amps == pytest.approx(1.90515, rel=5e-6)
    assert amps / 0.3 == pytest.approx(6.3505, rel=1e-5)
