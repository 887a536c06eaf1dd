"""One line in time: from switching on to the end, through everything that switches.

Steps end exactly where something switches: what is due by the clock ends a step, and where a guard falls below zero
within a step the instant is found by bisection and the step taken again up to it.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

from core.circuit import Island
from core.circuit.network import compile_island
from core.elements.tungsten import Array
from core.errors import Cancelled, UnsolvableError
from core.limiting import BLOCKING, LIMITING, REGULATING, TRIPPED, Modes
from core.sentences import sentence
from core.warmup.bodies import Bodies, bodies_of
from core.warmup.capacity import bisect
from core.warmup.ports import PortModel
from core.warmup.positions import Contacts, Positions, Switchboard
from core.warmup.results import CHATTERS, TOO_MANY, Bound, Event, Start
from core.warmup.rosenbrock import Rosenbrock, Step, next_h
from core.warmup.system import System

MOST_EVENTS = 1000
MOST_STEPS = 60_000
LATEST_S = 7200.0
"""A supply still at its limit at the end is followed this far to learn whether it starts at all."""
_MOST_RETRIES = 400
_MOST_LEAPS = 40
_LEAP = 8.0
_SAME_K = 0.01  # a supply that finds everything this near to where it was at its last try will never start
_LEAST_H = 1e-12

Progress = Callable[[float], bool]


@dataclass(frozen=True)
class Segment:
    """A stretch in which nothing switches, ``t0`` to ``t1``; arrays over its steps ``(s,)`` and ``(s, n)``."""

    t0: float
    t1: float
    model: PortModel
    contacts: Contacts
    starts: Array
    lengths: Array
    before: Array
    after: Array
    dense: Array
    y0: Array

    def temperatures(self, t_s: Array) -> Array:
        """The state at times within it, ``(t, n)``."""
        if not len(self.starts):
            return np.broadcast_to(self.y0, (len(t_s), len(self.y0)))
        at = np.clip(np.searchsorted(self.starts, t_s, side="right") - 1, 0, len(self.starts) - 1)
        s = np.clip((t_s - self.starts[at]) / self.lengths[at], 0.0, 1.0)[:, None]
        r = 1 - s
        dense = self.dense[at]
        return np.asarray(self.before[at] * r + s * (self.after[at] + r * (dense[:, 0] + s * dense[:, 1])))


@dataclass(frozen=True)
class LineRun:
    """A line from switching on to ``end_s``. ``modes`` are those of its supplies in the end.

    ``later`` says for each supply when it regulates at last though it did not by then, ``repeats`` which cut out
    and try again for ever.
    """

    island: Island
    bodies: Bodies
    board: Switchboard
    segments: tuple[Segment, ...]
    events: tuple[Event, ...]
    restarts: dict[str, int]
    outcomes: dict[str, tuple[str, bool, float | None]]
    end_s: float
    bound: Bound | None = None


@dataclass
class _Course:
    """What is gathered on the way."""

    segments: list[Segment] = field(default_factory=list)
    events: list[Event] = field(default_factory=list)
    steps: list[Step] = field(default_factory=list)
    restarts: dict[str, int] = field(default_factory=dict)
    at_retry: dict[str, Array] = field(default_factory=dict)
    regulates: dict[str, float] = field(default_factory=dict)
    repeats: set[str] = field(default_factory=set)
    end_modes: Modes | None = None
    count: int = 0


def run_line(island: Island, ambient_k: float, start: Start, progress: Progress | None = None) -> LineRun:
    """Run one line.

    Raises
    ------
    UnsolvableError
        When it has no unique solution at the first instant.
    core.errors.Cancelled
        When ``progress`` answers False.
    """
    network = compile_island(island, frozenset(), ambient_k)
    bodies = bodies_of(network)
    board = Switchboard(island, ambient_k, start.mains_v, bodies, network)
    return _Runner(island, bodies, board, start, progress).run()


class _Runner:
    def __init__(
        self, island: Island, bodies: Bodies, board: Switchboard, start: Start, progress: Progress | None
    ) -> None:
        self.island, self.bodies, self.board, self.start = island, bodies, board, start
        self.progress = progress
        self.at = board.start()
        self.y = bodies.start()
        self.t = 0.0
        self.h: float | None = None
        self.course = _Course()
        off_at = np.inf if start.off_at_s is None else start.off_at_s
        self.clock = [(off_at, False), (off_at + start.off_for_s, True)] if np.isfinite(off_at) else []
        self.segment_from = (0.0, self.y)
        self.is_decided = False

    def run(self) -> LineRun:
        self.model = self.board.settle(self.at, self.y, 0.0)
        self.at.log.clear()
        self._note_modes()
        bound = None
        try:
            self._follow(self.start.seconds)
        except UnsolvableError as error:
            bound = Bound(self.t, error.reason, error.ids)
        except _Ended as ended:
            chatters = any(one in self.board.coils for one in ended.ids)
            bound = Bound(self.t, CHATTERS if chatters else TOO_MANY, ended.ids)
        end_s = self.t
        self._close()
        recorded = len(self.course.segments), len(self.course.events)
        if bound is None:
            self._look_ahead()
        course = self.course
        return LineRun(
            self.island,
            self.bodies,
            self.board,
            tuple(course.segments[: recorded[0]]),
            tuple(course.events[: recorded[1]]),
            course.restarts,
            {owner: self._outcome(index, owner, bound) for index, owner in enumerate(self.board.owners)},
            end_s,
            bound,
        )

    def _look_ahead(self) -> None:
        """Go on where it is not decided yet whether a supply starts."""
        self.course.end_modes = self.at.modes.copy()
        restarts_then = dict(self.course.restarts)
        quiet, self.progress = self.progress, None
        if self._never_starts():
            self.is_decided = True
            return
        try:
            while self._undecided() and self.t < LATEST_S + self.start.seconds:
                if quiet is not None and not quiet(1.0):
                    raise Cancelled
                self._follow(self.t + max(5.0, self.t / 4))
        except (UnsolvableError, _Ended):
            pass
        self.is_decided = not self._undecided() or self.t >= LATEST_S
        self.course.restarts = restarts_then

    def _never_starts(self) -> bool:
        """Whether a line whose one supply cuts out and tries again does so for ever.

        From one try to the next all temperatures go up the further, the higher they were: so they never pass a
        state that a try does not raise. Such a state is looked for ahead of the present one, in leaps.
        """
        if len(self.board.stiff) != 1 or self.board.coils or self.clock or not len(self.y):
            return False
        y = self.course.at_retry.get(self.board.owners[0])
        if y is None or self.at.modes[0] not in (TRIPPED, LIMITING):
            return False
        leap = _LEAP
        for _ in range(_MOST_LEAPS):
            after = self._after_a_try(y)
            if after is None:
                return False
            if np.max(np.abs(after - y)) < _SAME_K:
                return True
            ahead = after + leap * (after - y)
            found = self._after_a_try(ahead)
            if found is not None and np.all(found <= ahead):
                return True
            goes_on = found is not None and bool(np.all(found >= ahead))
            y = found if found is not None and goes_on else after
            leap = leap * 1.5 if goes_on else leap / 2
        return False

    def _after_a_try(self, y: Array) -> Array | None:
        """The state at the next try after one that begins at ``y``; None where the supply starts."""
        source = self.board.stiff[0]
        seconds = source.trip_s + source.retry_s
        once = Start(self.start.mains_v, seconds=seconds)
        runner = _Runner(self.island, self.bodies, self.board, once, None)
        runner.y, runner.segment_from = y, (0.0, y)
        runner.model = self.board.settle(runner.at, y, 0.0)
        runner._follow(seconds)
        return runner.y if any(event.what == "tries again" for event in runner.course.events) else None

    def _undecided(self) -> bool:
        for index, owner in enumerate(self.board.owners):
            mode, source = self.at.modes[index], self.board.stiff[index]
            if (
                source.limit_a is None
                or mode in (REGULATING, BLOCKING)
                or self.model.stepper.stiff.shorted[index]
            ):
                continue
            if source.overload == "hiccup":
                many = self.course.restarts.get(owner, 0) > _MOST_RETRIES
                if owner not in self.course.repeats and not many:
                    return True
            elif mode == LIMITING and not self._is_still():
                return True
        return False

    def _is_still(self) -> bool:
        """Whether no temperature changes any more."""
        rates, _ = System(self.bodies, self.model).linearised(self.y)
        return bool(np.all(np.abs(rates) < 1e-3))

    def _outcome(self, index: int, owner: str, bound: Bound | None) -> tuple[str, bool, float | None]:
        """How a supply ends, whether that is certain, and when it regulates for good."""
        course, source = self.course, self.board.stiff[index]
        regulates = course.regulates.get(owner)
        then = int((self.at.modes if course.end_modes is None else course.end_modes)[index])
        now = int(self.at.modes[index])
        if source.limit_a is None or then in (REGULATING, BLOCKING):
            return "starts", bound is None, regulates
        if now in (REGULATING, BLOCKING):
            return "slow", True, regulates
        if source.overload == "latch-off":
            return "latched", bound is None, None
        if source.overload == "hiccup":
            return "retries", self.is_decided, None
        return "limits", self.is_decided, None

    # the course of time

    def _follow(self, end: float) -> None:
        """Go on to ``end``."""
        method: Rosenbrock | None = None
        while self.t < end:
            system = System(self.bodies, self.model)
            method = Rosenbrock(system.rates, system.linearised)
            self._stretch(method, end)
            self._switch()

    def _stretch(self, method: Rosenbrock, end: float) -> None:
        """Take steps until something switches or the end is reached."""
        due = min(self.at.next_due(), self.clock[0][0] if self.clock else np.inf, end)
        if not len(self.y):
            self.t = due
            return
        linear = method.linearise(self.y)
        h = method.first_h(linear[0], self.y) if self.h is None else self.h
        watched = self.board.has_guards
        while self.t < due:
            self._count()
            step, error = method.step(self.t, min(h, due - self.t), self.y, linear)
            if error > 1:
                h = next_h(step.h, error)
                if h < _LEAST_H:
                    raise UnsolvableError(sentence("the numbers run out of range"), self.island.owners)
                continue
            crossing = self._crossing(step) if watched else None
            if crossing is not None:
                step = self._up_to(method, crossing, linear)
            reached_due = crossing is None and step.t0 + step.h >= due - 1e-12 * max(1.0, due)
            self._accept(step, due if reached_due else step.t0 + step.h)
            if crossing is not None:
                self.h = None
                return
            h = max(next_h(step.h, error), h) if reached_due and step.h < h else next_h(step.h, error)
            linear = method.linearise(self.y)
        self.h = h

    def _crossing(self, step: Step) -> float | None:
        """When the first guard falls below zero within a step, or None."""

        def fallen(t: float) -> float:
            return float(-np.min(self.board.guards(self.at, self.model, step.at(t)), initial=1.0))

        low = step.t0
        for share in (0.25, 0.5, 0.75, 1.0):
            high = step.t0 + share * step.h
            if fallen(high) > 0:
                return bisect(fallen, low, high, 50)
            low = high
        return None

    def _up_to(self, method: Rosenbrock, t: float, linear: tuple[Array, Array]) -> Step:
        """The same step again, but only as far as ``t``."""
        h = max(t - self.t, 1e-13 * max(1.0, self.t))
        step, _ = method.step(self.t, h, self.y, linear)
        return step

    def _accept(self, step: Step, t: float) -> None:
        self.course.steps.append(step)
        self.t, self.y = t, step.end
        if self.progress is not None and not self.progress(min(1.0, t / self.start.seconds)):
            raise Cancelled

    def _count(self) -> None:
        self.course.count += 1
        if self.course.count > MOST_STEPS:
            raise _Ended(self.island.owners)

    def _switch(self) -> None:
        """Let everything act that is due or has passed its limit, and begin a new stretch if anything did."""
        at, before = self.at, self.model
        while self.clock and self.clock[0][0] <= self.t:
            self.board.set_mains(at, self.clock.pop(0)[1])
        self.board.act(at, self.t)
        self.model = self.board.settle(at, self.y, self.t)
        for owner, what in at.take_log():
            self.course.events.append(Event(self.t, owner, what))
            if what == "tries again":
                self._note_retry(owner)
        self._note_modes()
        if self.model is not before:
            self._close(before)
            self.h = None
        if len(self.course.events) > MOST_EVENTS:
            raise _Ended(self._busiest())

    def _busiest(self) -> tuple[str, ...]:
        """The part that has switched most."""
        parts = [event.part for event in self.course.events if event.part]
        return (max(dict.fromkeys(parts), key=parts.count),) if parts else ()

    def _note_retry(self, owner: str) -> None:
        course = self.course
        course.restarts[owner] = course.restarts.get(owner, 0) + 1
        was = course.at_retry.get(owner)
        if was is not None and np.max(np.abs(was - self.y), initial=0.0) < _SAME_K:
            course.repeats.add(owner)
        course.at_retry[owner] = self.y.copy()

    def _note_modes(self) -> None:
        for index, owner in enumerate(self.board.owners):
            if self.at.modes[index] in (REGULATING, BLOCKING):
                self.course.regulates.setdefault(owner, self.t)
            elif self.at.modes[index] in (LIMITING, TRIPPED):
                self.course.regulates.pop(owner, None)

    def _close(self, model: PortModel | None = None) -> None:
        """End the present stretch."""
        steps, size = self.course.steps, len(self.y)
        t0, y0 = self.segment_from
        rows = [(s.start, s.end) for s in steps]
        self.course.segments.append(
            Segment(
                t0,
                self.t,
                model or self.model,
                self.contacts_before,
                np.array([s.t0 for s in steps]),
                np.array([s.h for s in steps]),
                np.array([row[0] for row in rows]).reshape(len(rows), size),
                np.array([row[1] for row in rows]).reshape(len(rows), size),
                np.array([s.dense for s in steps]).reshape(len(rows), 2, size),
                y0,
            )
        )
        self.course.steps = []
        self.segment_from = (self.t, self.y)
        self.contacts_before = self.at.contacts

    contacts_before: Contacts = Contacts()


class _Ended(Exception):  # noqa: N818 - nothing went wrong
    """Too much switched."""

    def __init__(self, ids: tuple[str, ...]) -> None:
        super().__init__(ids)
        self.ids = ids


__all__ = ["LineRun", "Positions", "Progress", "Segment", "run_line"]
