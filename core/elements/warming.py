"""Warm-up times in the standard test circuit: the type's own where one is published, else an estimate by class.

The standard test circuit puts four times the rated volts across the heater in series with three times its hot
resistance; the warm-up time ends when the heater has 80 % of its rated volts. Types of controlled warm-up take
11 s (EIA; from memory).
"""

from __future__ import annotations

CONTROLLED_S = 11.0

# Receiving tubes take 10 to 30 s to conduct (from memory); larger heaters sit in larger cathodes.
_INDIRECT_S = ((3.0, 11.0), (7.0, 14.0), (float("inf"), 18.0))
# A coated filament is its own cathode and thin: two to three seconds (from memory).
_DIRECT_S = 2.5

_LAMP_S = 0.17
_LAMP_A = 0.15


def indirect_s(watts: float) -> float:
    """Estimated warm-up time in seconds of an indirectly heated tube by its heater's watts."""
    return next(seconds for most_w, seconds in _INDIRECT_S if watts <= most_w)


def direct_s() -> float:
    """Estimated warm-up time in seconds of a directly heated tube."""
    return _DIRECT_S


def lamp_s(rated_a: float) -> float:
    """Estimated warm-up time in seconds of a vacuum panel lamp.

    At one temperature the ratio of heat capacity to radiating surface goes as the wire's diameter, and that as the
    current to two thirds. The figure for 0.15 A follows from resistivity and radiation of tungsten at 2250 K
    (Forsythe & Worthing; Jones & Langmuir) and its heat capacity (NIST-JANAF).
    """
    return float(_LAMP_S * (rated_a / _LAMP_A) ** (2 / 3))
