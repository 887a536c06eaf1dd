"""Panel lamps against the exponents of rerating: I ~ V^0.55, W ~ V^1.6.

Fink & Beaty, Standard Handbook for Electrical Engineers, 11th ed. (1978), p. 22-8, and Welch Allyn (2007), as
cited in an encyclopaedia; the IES Lighting Handbook's table for gas-filled and vacuum lamps gives amperes 0.541 and
0.580, watts 1.541 and 1.580.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from core.assess import Assessment
from core.sheet import Battery, Lamp


@pytest.fixture(scope="module")
def amps(solved: Callable[..., Assessment]) -> Callable[[float], float]:
    def at(volts: float) -> float:
        answer = solved([Battery(id="B1", emf_v=volts), Lamp(id="H1", type="#47")], "B1.+=H1.1 H1.2=B1.-")
        return answer.points["nominal"].heaters["H1"][0].a

    return at


@pytest.mark.parametrize(("low", "high"), [(0.9, 1.1), (0.8, 1.0), (1.0, 1.2), (0.7, 1.3)])
def test_exponents(low: float, high: float, amps: Callable[[float], float]) -> None:
    """Amperes 0.52 to 0.59, watts 1.52 to 1.61: the published pairs with 0.02 on either side.

    The law has the radiation of a grey body and no conduction; both are within what the makers' lamps differ by.
    """
    ends = [(6.3 * share, amps(6.3 * share)) for share in (low, high)]
    span = np.log(high / low)
    current = np.log(ends[1][1] / ends[0][1]) / span
    power = np.log(ends[1][1] * ends[1][0] / (ends[0][1] * ends[0][0])) / span
    assert 0.541 - 0.02 < current < 0.580 + 0.01
    assert 1.541 - 0.02 < power < 1.6 + 0.01


def test_rating(amps: Callable[[float], float]) -> None:
    """A #47 is rated 150 mA at 6.3 V."""
    assert amps(6.3) == pytest.approx(0.15, rel=1e-12)
