"""How a heater stands at an instant of the warm-up. On its way it is not judged by the window it works in later."""

from __future__ import annotations

import math
from typing import Literal

from core.elements.heater import CATHODE_K
from core.results import COLD_SHARE, GLOWS_FROM_K, HeaterPoint, Limits
from core.warmup.results import READY_SHARE

Standing = Literal["no volts", "cold", "warming", "far over", "ok", "over", "under"]
"""It gets no volts to speak of; it does not glow yet; it glows and gets hotter still; it gets far more than its volts
while it does; it has settled, and its volts or amperes are within its window, over or under."""

FAR_OVER = 1.5
"""While others are cold a heater may get more than its volts; from so many times on that is worth a mark.

Common practice, the limit of the rule ``warmup-overvoltage`` as well.
"""

OHM_EXPONENT = 0.3
"""Near its rating the resistance of a filament goes with about this power of its watts.

It follows from amperes that go with the volts to the power of 0.54, as those of gas-filled lamps do (IES Lighting
Handbook, from memory): (1 - 0.54) / (1 + 0.54). A rough figure is enough, as filaments settle within a second.
"""


def is_settled(heater: HeaterPoint, ambient_k: float) -> bool:
    """Whether a heater is about as hot as its present watts make it in the long run, or hotter.

    A tube's cathode has then made ``READY_SHARE`` of the rise from the room to that temperature; at rated watts that
    is when it is ready. A filament that is its own cathode, and a lamp, has that share of the resistance.
    """
    if heater.a <= 0 or heater.v <= 0:
        return False
    share = heater.w / (heater.rated_v * heater.rated_a)
    if heater.cathode_k == heater.heater_k:
        hot_ohm = heater.rated_v / heater.rated_a
        return heater.v / heater.a >= READY_SHARE * hot_ohm * math.pow(share, OHM_EXPONENT)
    room = ambient_k**4
    end_k = math.pow(room + share * (CATHODE_K**4 - room), 0.25)
    return heater.cathode_k >= ambient_k + READY_SHARE * (end_k - ambient_k)


def standing(heater: HeaterPoint, limits: Limits, ambient_k: float) -> Standing:
    """How a heater section or lamp stands at an instant; ``ambient_k`` is the room."""
    if heater.v < COLD_SHARE * heater.rated_v:
        return "no volts"
    if is_settled(heater, ambient_k):
        state = limits.state(heater)
        return "no volts" if state == "cold" else state
    if heater.v > FAR_OVER * heater.rated_v:
        return "far over"
    return "cold" if heater.heater_k < GLOWS_FROM_K else "warming"
