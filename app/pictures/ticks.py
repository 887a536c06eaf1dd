"""Where the ticks of an axis stand."""

from __future__ import annotations

import math

_STEPS = (1.0, 2.0, 2.5, 5.0, 10.0)


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
