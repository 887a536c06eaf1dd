"""Heat capacities by warm-up time: what a heater of one watt and one joule per kelvin would take.

All times of a heater grow with its heat capacity and fall with its rated power, so one computation for each cold
ratio serves every type. The standard test circuit is four times the rated volts through three times the hot
resistance; the warm-up time ends at 80 % of the rated volts, which is where the resistance is 75 % of the hot one.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import partial
from typing import NamedTuple

import numpy as np

from core.elements.heater import CATHODE_K, HeaterLaw, heater_law
from core.elements.ntc import NtcLaw
from core.elements.tungsten import TUNGSTEN, Array, RatioCurve
from core.warmup.results import READY_SHARE

CATHODE_SHARE = 3.0
"""Heat capacity of the cathode over that of its heater (geometry of a double triode, from memory)."""
TEST_AMBIENT_K = 298.15
TEST_VOLTS, TEST_OHM = 4.0, 3.0
TEST_END = 0.75
_RTOL, _ATOL_K = 1e-8, 1e-6
_MOST_TIMES = 1e5

Kind = tuple[float, bool]


class UnitTimes(NamedTuple):
    """Seconds for each joule per kelvin and watt: in the standard test circuit, and to ready at rated volts."""

    warmup: float
    ready: float


_known: dict[tuple[Kind, int], UnitTimes] = {}


def unit_times(kinds: Iterable[Kind], curve: RatioCurve = TUNGSTEN) -> dict[Kind, UnitTimes]:
    """The times of heaters by cold ratio and whether they have a cathode; computed once for each."""
    wanted = dict.fromkeys(kinds)
    missing = [kind for kind in wanted if (kind, id(curve)) not in _known]
    if missing:
        for kind, times in zip(missing, _compute(missing, curve), strict=True):
            _known[kind, id(curve)] = times
    return {kind: _known[kind, id(curve)] for kind in wanted}


def _compute(kinds: list[Kind], curve: RatioCurve) -> list[UnitTimes]:
    one = np.ones(len(kinds))
    ratio = np.array([kind[0] for kind in kinds])
    has_cathode = np.array([kind[1] for kind in kinds])
    law = heater_law(one, one, ratio, has_cathode, TEST_AMBIENT_K, curve)
    end_k = curve.temperature((TEST_END - law.fixed_ohm) / law.swing_ohm)
    warmup = _crossings(law, TEST_VOLTS, TEST_OHM, end_k, of_cathode=False)
    ready_k = ready_kelvin(law)
    return [UnitTimes(*times) for times in zip(warmup, _crossings(law, 1.0, 0.0, ready_k, True), strict=True)]


def ready_kelvin(law: HeaterLaw) -> Array:
    """Temperature of the cathode, or of a filament that is its own, at which it counts as ready, kelvin."""
    ambient_k = law.ambient_k4**0.25
    working_k = np.where(law.has_cathode, CATHODE_K, law.working_k4**0.25)
    return np.asarray(ambient_k + READY_SHARE * (working_k - ambient_k))


def _crossings(law: HeaterLaw, volts: float, ohm: float, wanted_k: Array, of_cathode: bool) -> list[float]:
    """When each of some uncoupled unit heaters behind a resistance first reaches a temperature."""
    # only here, as those modules stand on this one
    from core.warmup.bodies import bodies_from  # noqa: PLC0415
    from core.warmup.ports import Ports  # noqa: PLC0415
    from core.warmup.system import System, steps  # noqa: PLC0415

    count = len(law.rated_v)
    none = np.zeros(0)
    bodies = bodies_from(law, NtcLaw(none, none, none, TEST_AMBIENT_K), np.ones(count), none)
    ports = Ports(ohm * np.eye(count), np.full((count, 1), volts), np.zeros(count))
    system = System(bodies, ports)

    def at(y: Array) -> Array:
        return (bodies.cathodes(y) if of_cathode else bodies.split(y)[0]) - wanted_k

    found: dict[int, float] = {}
    for step in steps(system, bodies.start(), _RTOL, _ATOL_K):
        for index in np.flatnonzero((at(step.end) >= 0) & (at(step.start) < 0)).tolist():
            reached = partial(_component, at, step.at, index)
            found.setdefault(index, bisect(reached, step.t0, step.t0 + step.h))
        if len(found) == count or step.t0 > _MOST_TIMES:
            break
    return [found.get(index, np.inf) for index in range(count)]


def _component(at: Callable[[Array], Array], state: Callable[[float], Array], index: int, t: float) -> float:
    return float(at(state(t))[index])


def bisect(below: Callable[[float], float], low: float, high: float, tries: int = 60) -> float:
    """Where a function that is below zero at ``low`` gets to zero; the upper side of the last bracket."""
    for _ in range(tries):
        middle = (low + high) / 2
        if middle in (low, high):
            break
        if below(middle) < 0:
            low = middle
        else:
            high = middle
    return high
