"""Orders in which a chain may run. All of them are common practice; the user may choose another."""

from __future__ import annotations

import re
from collections.abc import Iterable

from core.chains.model import Arrangement, Load, Point

_RUNS = re.compile(r"\d+|\D+")
_SAME_W = 0.05  # loads whose watts differ by less than this share count as equally heavy


def usual_order(arrangement: Arrangement, loads: Iterable[Load], start: Point) -> tuple[str, ...]:
    """The order that is offered first: a string by its cathodes, anything else with the heaviest first."""
    if arrangement == "series":
        return by_cathode(loads)
    return heaviest_first(loads, start)


def heaviest_first(loads: Iterable[Load], start: Point) -> tuple[str, ...]:
    """The heaviest nearest to the supply, so that thin wire will do further on; equals as they come on the way."""
    left = sorted(loads, key=lambda load: (-load.watts, natural(load.id)))
    order: list[str] = []
    at = start
    while left:
        least = left[0].watts * (1 - _SAME_W)
        count = next((number for number, load in enumerate(left) if load.watts < least), len(left))
        chosen = _nearest(left[:count], at)
        left.remove(chosen)
        order.append(chosen.id)
        at = chosen.at
    return tuple(order)


def nearest_first(loads: Iterable[Load], start: Point) -> tuple[str, ...]:
    """From each socket to the nearest that is left, beginning at the supply."""
    left = sorted(loads, key=lambda load: natural(load.id))
    order: list[str] = []
    at = start
    while left:
        chosen = _nearest(left, at)
        left.remove(chosen)
        order.append(chosen.id)
        at = chosen.at
    return tuple(order)


def by_number(loads: Iterable[Load]) -> tuple[str, ...]:
    """As they are numbered: V1, V2, V10."""
    return tuple(sorted((load.id for load in loads), key=natural))


def by_cathode(loads: Iterable[Load]) -> tuple[str, ...]:
    """For a string whose far end is at the chassis: high cathodes and power tubes first.

    The last one, next to the chassis, is the stage that hears hum most and whose cathode is lowest.
    """

    def rank(load: Load) -> tuple[object, ...]:
        return load.duty, -(load.cathode_v or 0.0), -load.watts, natural(load.id)

    return tuple(load.id for load in sorted(loads, key=rank))


def natural(name: str) -> tuple[tuple[int, int, str], ...]:
    """A key that sorts V2 before V10."""
    return tuple((0, int(run), "") if run.isdecimal() else (1, 0, run) for run in _RUNS.findall(name))


def _nearest(loads: list[Load], at: Point) -> Load:
    return min(loads, key=lambda load: abs(load.at[0] - at[0]) + abs(load.at[1] - at[1]))
