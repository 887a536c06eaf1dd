"""The façade: everything the program knows about a sheet, in one call."""

from __future__ import annotations

from collections import deque
from collections.abc import Hashable

from msgspec.structs import replace

from core.catalogue import Catalogue
from core.circuit import Circuit, Island, build
from core.limits import limits_of
from core.relays import Answers, solve_cluster
from core.results import (
    CHOSEN,
    COLD,
    HIGH,
    LOW,
    NOMINAL,
    Assessment,
    Condition,
    OperatingPoint,
)
from core.rules import run_rules
from core.rules.basis import Case
from core.sheet import Mains, Sheet
from core.solution import Answer, merge
from core.strings import topology
from core.units import CELSIUS_TO_K


class Memory:
    """Solutions of clusters seen before, so that an edit solves only the one it touched, and an undo none.

    Holds those of the present and the last few assessments, and of the last trial: a trial is of a sheet that is
    only considered, so that however many there are they push out nothing but each other. ``solved`` counts the
    clusters solved in the present one.
    """

    GENERATIONS = 4

    def __init__(self) -> None:
        self._past: deque[dict[Hashable, Answers]] = deque(maxlen=self.GENERATIONS)
        self._tried: dict[Hashable, Answers] = {}
        self._used: dict[Hashable, Answers] = {}
        self._is_trial = False
        self.solved = 0

    def begin(self, trial: bool = False) -> None:
        """Begin another assessment, forgetting the oldest one, or the last trial after a trial."""
        if self._used and self._is_trial:
            self._tried = self._used
        elif self._used:
            self._past.appendleft(self._used)
        self._used = {}
        self._is_trial = trial
        self.solved = 0

    def solve(
        self, cluster: Island, conditions: tuple[Condition, ...], ambient_k: float
    ) -> tuple[Answers, ...]:
        """The answers for a cluster; only conditions that are not in memory are solved, as one batch."""
        keys = [(cluster, condition, ambient_k) for condition in conditions]
        for key in keys:
            if key not in self._used:
                known = next((past[key] for past in (*self._past, self._tried) if key in past), None)
                if known is not None:
                    self._used[key] = known
        missing = [key for key in keys if key not in self._used]
        if missing:
            fresh = solve_cluster(cluster, tuple(condition for _, condition, _ in missing), ambient_k)
            self._used.update(zip(missing, fresh, strict=True))
            self.solved += 1
        return tuple(self._used[key] for key in keys)


def conditions_of(mains: Mains, chosen: Condition | None = None) -> tuple[Condition, ...]:
    """Nominal, low and high mains, the cold instant at nominal mains, and another one if it differs."""
    usual = (
        Condition(NOMINAL, mains.nominal_v),
        Condition(LOW, mains.low_v),
        Condition(HIGH, mains.high_v),
        Condition(COLD, mains.nominal_v, cold=True),
    )
    if chosen is None or any((c.mains_v, c.cold) == (chosen.mains_v, chosen.cold) for c in usual):
        return usual
    return (*usual, Condition(CHOSEN, chosen.mains_v, chosen.cold))


def assess(
    sheet: Sheet,
    catalogue: Catalogue,
    chosen: Condition | None = None,
    memory: Memory | None = None,
    *,
    trial: bool = False,
) -> Assessment:
    """Solve a sheet at every condition and hold it against the rules; ``trial`` for one that is only considered.

    What cannot be solved is listed in each point's ``unsolved``; the rest of the sheet has its answers. The
    sheet's own types must already be laid over ``catalogue``.
    """
    circuit = build(sheet, catalogue)
    memory = Memory() if memory is None else memory
    memory.begin(trial)
    points = _points(circuit, conditions_of(sheet.mains, chosen), memory)
    case = case_of(circuit, points)
    return Assessment(sheet, points, case.topology.series, run_rules(case), case.limits)


def case_of(circuit: Circuit, points: dict[str, OperatingPoint]) -> Case:
    """What the rules look at: the circuit of a sheet with its operating points by condition."""
    sheet, catalogue = circuit.sheet, circuit.context.catalogue
    nominal = points[NOMINAL]
    pulled_in = frozenset(key for key, branch in nominal.branches.items() if branch.pulled_in)
    wiring = topology(circuit, pulled_in)
    hot = (nominal, points[LOW], points[HIGH])
    return Case(sheet, catalogue, circuit, wiring, hot, limits_of(sheet, catalogue, wiring))


def look_at(assessment: Assessment, catalogue: Catalogue, chosen: Condition, memory: Memory) -> Assessment:
    """The same assessment with the operating point of another chosen condition."""
    conditions = conditions_of(assessment.sheet.mains, chosen)
    points = {name: point for name, point in assessment.points.items() if name != CHOSEN}
    extra = tuple(condition for condition in conditions if condition.name == CHOSEN)
    return replace(
        assessment, points={**points, **_points(build(assessment.sheet, catalogue), extra, memory)}
    )


def _points(circuit: Circuit, conditions: tuple[Condition, ...], memory: Memory) -> dict[str, OperatingPoint]:
    ambient_k = circuit.sheet.ambient_c + CELSIUS_TO_K
    found: list[dict[Island, Answer]] = [{} for _ in conditions]
    for cluster in circuit.clusters:
        if cluster.branches:
            for at, answers in enumerate(memory.solve(cluster, conditions, ambient_k)):
                found[at].update(zip(cluster.members, answers, strict=True))
    wired = [island for island in circuit.islands if island.branches]
    return {
        condition.name: merge(circuit.sheet, condition, [found[at][island] for island in wired])
        for at, condition in enumerate(conditions)
    }


__all__ = [
    "CHOSEN",
    "COLD",
    "HIGH",
    "LOW",
    "NOMINAL",
    "Assessment",
    "Memory",
    "assess",
    "conditions_of",
    "look_at",
]
