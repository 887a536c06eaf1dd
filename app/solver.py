"""Who solves: at once what is small, in one worker what is large, all with one memory of islands seen before.

The sheet as it is and the sheet as it would be are asked for by different askers. Each asker has one question: a
newer one takes the place of one that waits, and the answer to one that was taken back is dropped.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QRunnable, Qt, QThreadPool, Signal

from core.results import Assessment

if TYPE_CHECKING:
    from core.assess import Memory

SMALL = 150  # parts and wires: about 10 ms, well inside one frame

Work = Callable[["Memory"], Assessment]


@dataclass(frozen=True, eq=False)
class _Question:
    asker: str
    work: Work
    done: Callable[[Assessment], None]


class _Carrier(QObject):
    """Brings a worker's result into the window's thread."""

    done = Signal(object, object)


class _Task(QRunnable):
    def __init__(self, work: Callable[[], Assessment], carrier: _Carrier) -> None:
        super().__init__()
        self._work = work
        self._carrier = carrier

    def run(self) -> None:
        """Compute, and hand over the answer or what went wrong."""
        try:
            self._carrier.done.emit(self._work(), None)
        except Exception as error:
            self._carrier.done.emit(None, error)


class Solver(QObject):
    """Answers questions one at a time, so that the memory is never used by two threads at once.

    ``tried`` is the newest answer about a sheet that was only considered: worth a look when that sheet is made.
    """

    def __init__(self, small: int = SMALL, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.tried: Assessment | None = None
        self._small = small
        self._memory: Memory | None = None
        # both are made for the first large sheet
        self._pool: QThreadPool | None = None
        self._carrier: _Carrier | None = None
        self._running: _Question | None = None
        self._is_wanted = False
        self._waiting: dict[str, _Question] = {}

    def ask(self, asker: str, size: int, work: Work, done: Callable[[Assessment], None]) -> None:
        """Have ``work`` done for a sheet of so many parts and wires, and its answer given to ``done``.

        That is before this returns where the sheet is small and no worker runs. What the asker asked for before
        and did not get is forgotten.
        """
        self.forget(asker)
        if self._running is None and size <= self._small:
            done(work(self.memory))
            return
        self._waiting[asker] = _Question(asker, work, done)
        self._next()

    def forget(self, asker: str) -> None:
        """Take back the question of an asker, if it is not answered yet."""
        self._waiting.pop(asker, None)
        if self._running is not None and self._running.asker == asker:
            self._is_wanted = False

    @property
    def is_idle(self) -> bool:
        """Whether no question is open."""
        return self._running is None and not self._waiting

    @property
    def memory(self) -> Memory:
        """What was solved before."""
        # numerics are loaded with the first question, not with the window
        from core.assess import Memory  # noqa: PLC0415

        self._memory = self._memory or Memory()
        return self._memory

    def _next(self) -> None:
        if self._running is not None or not self._waiting:
            return
        # who has waited longest comes first, so that none starves
        question = self._waiting.pop(next(iter(self._waiting)))
        memory, work = self.memory, question.work
        self._running, self._is_wanted = question, True
        if self._pool is None or self._carrier is None:
            self._carrier = _Carrier(self)
            self._carrier.done.connect(self._on_done, Qt.ConnectionType.QueuedConnection)
            self._pool = QThreadPool(self)
            self._pool.setMaxThreadCount(1)
        self._pool.start(_Task(lambda: work(memory), self._carrier))

    def _on_done(self, assessment: Assessment | None, error: Exception | None) -> None:
        question, self._running = self._running, None
        try:
            if assessment is not None and question is not None and self._is_wanted:
                question.done(assessment)
        finally:
            self._next()
        if error is not None:
            raise error

    def finish(self) -> None:
        """Wait for a running worker; for closing."""
        if self._pool is not None:
            self._pool.waitForDone()
