"""Preferred values: the IEC 60063 series of resistors and capacitors, and the usual resistor wattages."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Literal

from core.errors import QuantityError
from core.sentences import sentence

SeriesName = Literal["E3", "E6", "E12", "E24", "E48", "E96", "E192"]
Side = Literal["any", "up", "down"]

_E24 = (10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91)

# a wanted value that came out of arithmetic may miss a preferred one by rounding only
_SAME_VALUE = 1e-9
_LARGEST = 1e100


def _rounded_powers(count: int) -> tuple[int, ...]:
    values = (round(100 * 10 ** (step / count)) for step in range(count))
    # the standard rounds this single term up
    return tuple(920 if value == 919 else value for value in values)


SERIES: dict[SeriesName, tuple[int, ...]] = {
    "E3": _E24[::8],
    "E6": _E24[::4],
    "E12": _E24[::2],
    "E24": _E24,
    "E48": _rounded_powers(48),
    "E96": _rounded_powers(96),
    "E192": _rounded_powers(192),
}
"""One decade of each series: two figures up to E24, three from E48 (IEC 60063:2015)."""

WATTAGES: tuple[float, ...] = (0.25, 0.5, 1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 15.0, 20.0, 25.0, 50.0, 100.0)
"""Ratings in watts in which resistors are commonly sold."""


def nearest(value: float, series: SeriesName = "E24", side: Side = "any") -> float:
    """The preferred value nearest to ``value``, or the next one up or down; itself where it is preferred.

    Nearest is by plain difference; of two equally near the lower is taken.
    Raises QuantityError for values that are not above zero.
    """
    if not (1 / _LARGEST < value < _LARGEST):
        raise QuantityError(sentence("Preferred values exist only for numbers above zero, such as 47."))
    for below, above in pairwise(_around(value, series)):
        if math.isclose(value, below, rel_tol=_SAME_VALUE):
            return below
        if below < value < above and not math.isclose(value, above, rel_tol=_SAME_VALUE):
            upward = side == "up" or (side == "any" and above - value < value - below)
            return above if upward else below
    raise QuantityError(sentence("No preferred value is near {value}.", value=value))


def _around(value: float, series: SeriesName) -> list[float]:
    """The series over the decade of ``value`` and its neighbours, ascending."""
    table = SERIES[series]
    decade = math.floor(math.log10(value)) - (1 if table[0] == 10 else 2)
    return [float(f"{figure}e{power}") for power in range(decade - 1, decade + 2) for figure in table]


def next_wattage(watts: float) -> float | None:
    """The smallest usual rating in watts that is at least ``watts``; None where no single resistor does.

    Raises QuantityError for a negative power and for what is not a number.
    """
    if not watts >= 0:
        raise QuantityError(sentence("A power in watts is expected, zero or more, such as 2.5."))
    return next((rating for rating in WATTAGES if watts <= rating * (1 + _SAME_VALUE)), None)
