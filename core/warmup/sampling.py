"""A line's run at any times: temperatures from the steps, then the circuit solved at those temperatures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from core.circuit.straps import strap_currents
from core.elements.branch import Contact
from core.elements.tungsten import Array
from core.errors import UnsolvableError
from core.limiting import LIMITING, REGULATING, TRIPPED
from core.solution import IslandPoint, points_of
from core.steady import Solution, magnitude, without_limits
from core.warmup.line import LineRun, Segment
from core.warmup.ports import PortModel, port_model

_MOST_NUMBERS = 2_000_000  # in one batch of port systems


@dataclass(frozen=True)
class Samples:
    """A line on a grid, ``n`` times. Arrays are ``(n, branches)``; ``kelvin`` and ``cathode_k`` ``(n, heaters)``.

    ``weights`` ``(n,)`` integrate over time (Simpson's rule, three points a step). Order of the branches is that
    of the island.
    """

    t_s: Array
    volts: Array
    amps: Array
    watts: Array
    heater_k: Array
    cathode_k: Array
    ntc_k: Array
    weights: Array


def solve_at(run: LineRun, segment: Segment, t_s: Array) -> Solution:
    """The circuit at times within a segment, as a batch of ``(t,)`` conditions."""
    bodies, model = run.bodies, segment.model
    y = segment.temperatures(t_s)
    siemens = bodies.siemens(y)
    volts = model.volts(siemens)
    unknowns = model.unknowns(siemens, volts)
    heater_k, _, ntc_k = bodies.split(y)
    return Solution(
        network=model.network,
        potentials=unknowns,
        currents=model.stepper.currents(unknowns, siemens[:, : heater_k.shape[1]]),
        heater_k=heater_k,
        cathode_k=bodies.cathodes(y),
        ntc_k=ntc_k,
        modes=np.broadcast_to(model.modes, (len(t_s), len(model.modes))),
        residual_a=np.zeros(len(t_s)),
        steps=1,
    )


def with_straps(solution: Solution) -> Array:
    """Branch currents with those of ideal connections, ``(t, branches, c)``."""
    network, currents = solution.network, solution.currents
    if network.ideal:
        places = [at for at, _, _ in network.ideal]
        currents[:, places] = np.moveaxis(strap_currents(network, np.moveaxis(currents, 1, 0)), 0, 1)
    return currents


class Sampled:
    """A line's run on its own grid: the ends and the middle of every step, twice where something switches."""

    def __init__(self, run: LineRun) -> None:
        self.run = run
        self.keys = tuple(branch.key for branch in run.island.branches)
        self.place = {key: at for at, key in enumerate(self.keys)}

    @cached_property
    def own(self) -> Samples:
        """The grid of the steps themselves."""
        return _joined([self._segment(segment, *grid) for segment, grid in self._grids()])

    def _grids(self) -> Iterator[tuple[Segment, tuple[Array, Array]]]:
        for segment in self.run.segments:
            yield segment, _grid(segment)

    def at_times(self, t_s: Array) -> Samples:
        """The run at given rising times; where something switches, a time given twice is before and after."""
        edges = [segment.t0 for segment in self.run.segments[1:]]
        found = np.searchsorted(edges, t_s, side="right")
        # the first of two equal times at an edge still belongs to what was before
        twice = np.zeros(len(t_s), dtype=bool)
        twice[:-1] = (t_s[:-1] == t_s[1:]) & (np.isin(t_s[:-1], edges))
        found = np.where(twice, np.searchsorted(edges, t_s, side="left"), found)
        pieces = []
        for at in np.unique(found).tolist():
            times = t_s[found == at]
            pieces.append(self._segment(self.run.segments[at], times, np.zeros(len(times))))
        return _joined(pieces)

    def _segment(self, segment: Segment, t_s: Array, weights: Array) -> Samples:
        ports = max(len(segment.model.g_ref), 1)
        size = max(1, _MOST_NUMBERS // (ports * ports))
        pieces = [
            self._piece(segment, t_s[at : at + size], weights[at : at + size])
            for at in range(0, len(t_s), size)
        ]
        return pieces[0] if len(pieces) == 1 else _joined(pieces)

    def _piece(self, segment: Segment, t_s: Array, weights: Array) -> Samples:
        solution = solve_at(self.run, segment, t_s)
        network = solution.network
        currents = with_straps(solution) if Contact in self.run.island.kinds else solution.currents
        across = solution.potentials[:, network.u] - solution.potentials[:, network.v]
        columns = [self.place[branch.key] for branch in network.branches]
        shape = (len(t_s), len(self.keys))
        volts, amps, watts = np.zeros(shape), np.zeros(shape), np.zeros(shape)
        volts[:, columns] = magnitude(across)
        amps[:, columns] = magnitude(currents)
        watts[:, columns] = (across * currents).sum(axis=-1)
        return Samples(
            t_s, volts, amps, watts, solution.heater_k, solution.cathode_k, solution.ntc_k, weights
        )

    def point(self, t_s: float) -> IslandPoint:
        """The line at one instant; after what switches at it."""
        segment = next((one for one in reversed(self.run.segments) if one.t0 <= t_s), self.run.segments[0])
        solution = solve_at(self.run, segment, np.array([t_s]))
        demand = _demand(self.run, segment, t_s)
        driven = np.zeros((1, len(segment.model.modes)), dtype=bool)
        pulled = segment.contacts.pulled - segment.contacts.moving
        return points_of(solution, pulled, demand, driven)[0]


def _demand(run: LineRun, segment: Segment, t_s: float) -> Array:
    """What supplies at their limit or cut out would be asked for without one, ``(1, k)``."""
    model = segment.model
    limited = np.isin(model.modes, (LIMITING, TRIPPED))
    demand = np.full((1, len(limited)), np.nan)
    if not limited.any():
        return demand
    free = free_model(run, model)
    if free is None:
        demand[:, limited] = np.inf
        return demand
    siemens = run.bodies.siemens(segment.temperatures(np.array([t_s]))[0])
    x = free.unknowns(siemens, free.volts(siemens))
    first = model.network.first_extra
    given = np.abs(x[first : first + len(limited), -1])
    demand[0, limited] = given[limited]
    return demand


def free_model(run: LineRun, model: PortModel) -> PortModel | None:
    """The same network with supplies that give any current; None where it has no answer."""
    network = model.network
    if network.shorted.any():
        return None
    modes = np.where(np.isin(model.modes, (LIMITING, TRIPPED)), REGULATING, model.modes).astype(np.int8)
    mains_v = run.board.mains_v
    try:
        return port_model(without_limits(network), mains_v, modes, model.conducting, model.g_ref)
    except UnsolvableError:
        return None


def _grid(segment: Segment) -> tuple[Array, Array]:
    """Times of a segment and their weights by Simpson's rule."""
    if not len(segment.starts):
        # nothing warms on this line: all is constant
        length = segment.t1 - segment.t0
        return np.array([segment.t0, segment.t1]), np.array([length / 2, length / 2])
    starts, lengths = segment.starts, segment.lengths
    count = 2 * len(starts) + 1
    t_s, weights = np.empty(count), np.zeros(count)
    t_s[0:-1:2], t_s[1::2], t_s[-1] = starts, starts + lengths / 2, segment.t1
    weights[0:-1:2] += lengths / 6
    weights[1::2] += lengths * (4 / 6)
    weights[2::2] += lengths / 6
    return t_s, weights


def _joined(pieces: list[Samples]) -> Samples:
    if len(pieces) == 1:
        return pieces[0]
    names = ("t_s", "volts", "amps", "watts", "heater_k", "cathode_k", "ntc_k", "weights")
    return Samples(*(np.concatenate([getattr(one, name) for one in pieces]) for name in names))
