"""How a heater stands at an instant of the warm-up. On its way it is not judged by the window it works in later."""

from __future__ import annotations

from typing import Literal

from core.elements.heater import CATHODE_K
from core.results import COLD_SHARE, GLOWS_FROM_K, HeaterPoint, Limits
from core.warmup.results import READY_SHARE

Standing = Literal["no volts", "cold", "warming", "far over", "ok", "over", "under"]
"""It gets no volts to speak of; it does not glow yet; it glows but is not ready; it gets far more than its volts
while it warms up; it is ready, and its volts or amperes are within its window, over or under."""

FAR_OVER = 1.5
"""While others are cold a heater may get more than its volts; from so many times on that is worth a mark.

Common practice, the limit of the rule ``warmup-overvoltage`` as well.
"""


def is_ready(heater: HeaterPoint, ambient_k: float) -> bool:
    """Whether a tube's cathode has made ``READY_SHARE`` of the rise from the room to its rated temperature.

    A filament that is its own cathode, and a lamp, is ready when its resistance has reached that share of the
    resistance it has at its rating.
    """
    if heater.cathode_k != heater.heater_k:
        return heater.cathode_k >= ambient_k + READY_SHARE * (CATHODE_K - ambient_k)
    return heater.a > 0 and heater.v / heater.a >= READY_SHARE * heater.rated_v / heater.rated_a


def standing(heater: HeaterPoint, limits: Limits, ambient_k: float) -> Standing:
    """How a heater section or lamp stands at an instant; ``ambient_k`` is the room."""
    if heater.v > FAR_OVER * heater.rated_v:
        return "far over"
    if is_ready(heater, ambient_k):
        state = limits.state(heater)
        return "no volts" if state == "cold" else state
    if heater.v < COLD_SHARE * heater.rated_v:
        return "no volts"
    return "cold" if heater.heater_k < GLOWS_FROM_K else "warming"
