"""Where the ticks of an axis stand."""

from __future__ import annotations

import math

from core.units import THIN_SPACE

_STEPS = (1.0, 2.0, 2.5, 5.0, 10.0)
_MINUTES_FROM_S = 600.0


def ticks(low: float, high: float, most: int = 6) -> tuple[float, ...]:
    """Round values from ``low`` to ``high``, at most ``most`` of them, 1, 2, 2.5 or 5 apart in some decade."""
    span = high - low
    if not span > 0 or most < 2:
        return (low,)
    rough = span / (most - 1)
    decade = 10.0 ** math.floor(math.log10(rough))
    step = next(one * decade for one in _STEPS if one * decade >= rough * (1 - 1e-9))
    first = math.ceil(low / step - 1e-9)
    last = math.floor(high / step + 1e-9)
    return tuple(round(number * step, 12) for number in range(first, last + 1))


def time_ticks(end_s: float, most: int = 11) -> tuple[tuple[float, str], ...]:
    """Seconds from 0 to ``end_s`` to be marked and what to write there: minutes where it takes ten or more."""
    unit_s, unit = (60.0, "min") if end_s >= _MINUTES_FROM_S else (1.0, "s")
    return tuple(
        (value * unit_s, f"{value:g}{THIN_SPACE}{unit}") for value in ticks(0.0, end_s / unit_s, most)
    )
