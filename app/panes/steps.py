"""By which steps a number is dragged or stepped: a table of the fields that a designer tunes."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Protocol

from core.preferred import nearest

_SAME = 1e-6  # a value this near to a step stands on it


class Steps(Protocol):
    """Goes from a value to one some steps away."""

    def moved(self, value: float, count: int) -> float:
        """The value ``count`` steps up, or down where it is negative; within the steps' ends."""


@dataclass(frozen=True)
class Even:
    """Multiples of a step between two ends. A value between two multiples goes to the next one first."""

    step: float
    low: float = -math.inf
    high: float = math.inf

    def moved(self, value: float, count: int) -> float:
        """The multiple so many steps away."""
        if count == 0:
            return value
        exact = value / self.step
        first = math.floor(exact + _SAME) if count > 0 else math.ceil(exact - _SAME)
        return min(max(round((first + count) * self.step, 9) + 0.0, self.low), self.high)


@dataclass(frozen=True)
class Preferred:
    """The E24 series (IEC 60063) between two ends."""

    low: float = 0.01
    high: float = 1e7

    def moved(self, value: float, count: int) -> float:
        """The preferred value so many steps away."""
        for _ in range(abs(count)):
            value = min(max(value, self.low), self.high)
            value = (
                nearest(value * (1 + _SAME), "E24", "up")
                if count > 0
                else nearest(value * (1 - _SAME), "E24", "down")
            )
        return min(max(value, self.low), self.high) if count else value


_TENTHS = Even(0.1, low=0.1)

STEPS: dict[tuple[str, str], Steps] = {
    ("resistor", "ohm"): Preferred(),
    ("balance", "ohm"): Preferred(),
    ("balance", "wiper"): Even(0.01, 0.0, 1.0),
    ("winding", "rated_v"): _TENTHS,
    ("rectified_supply", "rated_v"): _TENTHS,
    ("dc_supply", "set_v"): _TENTHS,
    ("elevation", "volts"): Even(1.0),
    ("wire", "length_m"): Even(0.01, low=0.01),
    ("sheet", "low_pct"): Even(1.0, -50.0, 0.0),
    ("sheet", "high_pct"): Even(1.0, 0.0, 50.0),
}
"""By kind of part, ``wire`` or ``sheet``, and field."""
