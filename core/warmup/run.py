"""A sheet switched on: every line in time, and the whole in figures."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from core.catalogue import Catalogue
from core.circuit import Circuit, Island, build
from core.circuit.network import compile_island
from core.elements.tungsten import Array
from core.errors import UnsolvableError
from core.results import INSTANT, Condition, OperatingPoint, Unsolved
from core.sheet import Sheet
from core.solution import IslandPoint, merge
from core.units import CELSIUS_TO_K
from core.warmup.line import Progress, run_line
from core.warmup.results import Start, Traces, WarmupSummary
from core.warmup.sampling import Sampled
from core.warmup.summary import summarise
from core.warmup.tracing import joint_grid, traces_of


@dataclass(frozen=True, eq=False)
class WarmupRun:
    """One run. ``end_s`` is how far it was computed: what was asked for, unless a bound was met."""

    sheet: Sheet
    start: Start
    lines: tuple[Sampled, ...]
    summary: WarmupSummary
    end_s: float

    def at(self, t_s: float) -> OperatingPoint:
        """The whole sheet at one instant; at one where something switches what holds after it."""
        answers: list[IslandPoint | Unsolved] = [line.point(min(t_s, line.run.end_s)) for line in self.lines]
        condition = Condition(INSTANT, self.start.mains_v)
        return merge(self.sheet, condition, [*answers, *self.summary.unsolved])

    def traces(self, t_s: Array | None = None) -> Traces:
        """Everything over time: at the times given, rising, or on the run's own grid."""
        if t_s is None:
            return self._own_traces
        return traces_of(self.lines, np.asarray(t_s, dtype=float))

    @cached_property
    def _own_traces(self) -> Traces:
        return traces_of(self.lines, joint_grid(self.lines))


def warm_up(sheet: Sheet, catalogue: Catalogue, start: Start, progress: Progress | None = None) -> WarmupRun:
    """Switch a sheet on. The sheet's own types must already be laid over ``catalogue``.

    ``progress`` is told the share that is done, 0 to 1, and answers whether to go on.

    Raises
    ------
    core.errors.Cancelled
        When ``progress`` answers False.
    """
    circuit = build(sheet, catalogue)
    ambient_k = sheet.ambient_c + CELSIUS_TO_K
    unsolved: list[Unsolved] = []
    sound = [_sound(circuit, cluster, ambient_k, unsolved) for cluster in circuit.clusters]
    islands = [island for island in sound if island.sources]
    lines: list[Sampled] = []
    with np.errstate(all="ignore"):
        for number, island in enumerate(islands):
            part = None if progress is None else _share(progress, number, len(islands))
            try:
                lines.append(Sampled(run_line(island, ambient_k, start, part)))
            except UnsolvableError as error:
                unsolved.append(Unsolved(error.reason, error.ids, island.terminals))
        summary = summarise(sheet, catalogue, start, tuple(lines), tuple(unsolved))
    end_s = min([start.seconds, *(line.run.end_s for line in lines)])
    return WarmupRun(sheet, start, tuple(lines), summary, end_s)


def _sound(circuit: Circuit, cluster: Island, ambient_k: float, unsolved: list[Unsolved]) -> Island:
    """A cluster without the lines that cannot be computed; the relays of those stay released."""
    if not cluster.joined:
        return cluster
    sound = []
    for member in cluster.joined:
        try:
            compile_island(member, frozenset(), ambient_k)
        except UnsolvableError as error:
            unsolved.append(Unsolved(error.reason, error.ids, member.terminals))
        else:
            sound.append(member)
    return circuit.join(sound)


def _share(progress: Progress, number: int, count: int) -> Callable[[float], bool]:
    return lambda done: progress((number + done) / count)
