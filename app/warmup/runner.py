"""Who switches the sheet on: one worker off the window's thread, with progress and a way to call it off.

Answers to an older drawing are dropped. While it is wanted the sheet is switched on again after every edit.
"""

from __future__ import annotations

import time
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QObject, QRunnable, Qt, QThreadPool, QTimer, Signal

from app.document import Document
from core.catalogue import Catalogue
from core.errors import Cancelled, HeaterloomError
from core.mending import edit_of
from core.results import NOMINAL
from core.sheet import Sheet

if TYPE_CHECKING:
    from core.softstart.results import Variant
    from core.switch_on import SwitchOn, Wish
    from core.warmup import WarmupRun

SETTLE_MS = 300
_TELL_S = 0.05  # how often the progress is told


class Tried(NamedTuple):
    """A soft start and what the warm-up is with it."""

    variant: Variant
    run: WarmupRun


class _Carrier(QObject):
    """Brings what a worker tells into the window's thread."""

    told = Signal(object, float)
    done = Signal(object, object, object)
    varied = Signal(object, object)


class _Task(QRunnable):
    """One switching on; ``is_wanted`` is cleared to call it off."""

    def __init__(self, sheet: Sheet, catalogue: Catalogue, wish: Wish, carrier: _Carrier) -> None:
        super().__init__()
        self.setAutoDelete(False)
        self.sheet = sheet
        self.is_wanted = True
        self._catalogue = catalogue
        self._wish = wish
        self._carrier = carrier
        self._last = 0.0

    def run(self) -> None:
        """Compute, and hand over the answer or what went wrong."""
        from core.switch_on import switch_on  # noqa: PLC0415 - numerics where they are needed

        try:
            answer = switch_on(self.sheet, self._catalogue, self._wish, self._progress)
        except Cancelled:
            self._carrier.done.emit(self, None, None)
        except Exception as error:
            self._carrier.done.emit(self, None, error)
        else:
            self._carrier.done.emit(self, answer, None)
            self._carrier.varied.emit(self, self._varied(answer))

    def _varied(self, answer: SwitchOn) -> tuple[Tried, ...]:
        """Soft starts of the first supply that does not start, each tried."""
        from core.softstart.variants import variants  # noqa: PLC0415
        from core.warmup import warm_up  # noqa: PLC0415

        supply = next((one.where[0] for one in answer.findings if one.rule == "supply-will-not-start"), None)
        if supply is None or not self.is_wanted:
            return ()
        start = answer.runs[NOMINAL].start
        try:
            found = variants(self.sheet, self._catalogue, supply, progress=self._goes_on)
            return tuple(
                Tried(one, warm_up(edit_of(one.remedy)(self.sheet), self._catalogue, start, self._goes_on))
                for one in found
                if one.remedy is not None
            )
        except HeaterloomError:
            return ()

    def _goes_on(self, _share: float) -> bool:
        return self.is_wanted

    def _progress(self, share: float) -> bool:
        now = time.monotonic()
        if now - self._last > _TELL_S:
            self._last = now
            self._carrier.told.emit(self, share)
        return self.is_wanted


class Runner(QObject):
    """Switches the document's sheet on when asked to, and after every edit for as long as it ``is_watching``.

    ``progressed`` carries the share that is done, ``ended`` comes when an answer is there, was called off or failed.
    ``varied`` comes when soft starts have been looked for, which are ``variants``.
    """

    started = Signal()
    progressed = Signal(float)
    ended = Signal()
    varied = Signal()

    def __init__(self, document: Document, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._wish: Wish | None = None
        self._task: _Task | None = None
        self._varying: _Task | None = None
        self.variants: tuple[Tried, ...] = ()
        self.failure = ""
        self.is_watching = False
        self._carrier = _Carrier(self)
        self._carrier.told.connect(self._on_told, Qt.ConnectionType.QueuedConnection)
        self._carrier.done.connect(self._on_done, Qt.ConnectionType.QueuedConnection)
        self._carrier.varied.connect(self._on_varied, Qt.ConnectionType.QueuedConnection)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._settle = QTimer(self, singleShot=True, interval=SETTLE_MS)
        self._settle.timeout.connect(self.run)
        document.changed.connect(self._on_changed)
        document.replaced.connect(self._on_changed)

    @property
    def is_running(self) -> bool:
        """Whether an answer is on its way."""
        return self._task is not None

    @property
    def is_varying(self) -> bool:
        """Whether soft starts are being tried."""
        return self._varying is not None

    @property
    def answer(self) -> SwitchOn | None:
        """The answer for the present sheet, or None."""
        return self._document.switched

    def ask(self, wish: Wish) -> None:
        """Switch on with another wish."""
        self._wish = wish
        self.run()

    def run(self) -> None:
        """Switch the present sheet on; what runs is called off."""
        self._settle.stop()
        if self._wish is None:
            return
        self._call_off()
        document = self._document
        self._task = _Task(document.sheet, document.catalogue, self._wish, self._carrier)
        self.failure = ""
        self.started.emit()
        self._pool.start(self._task)

    def cancel(self) -> None:
        """Call off what runs."""
        self._settle.stop()
        if self._task is not None:
            self._call_off()
            self.ended.emit()

    def _call_off(self) -> None:
        for task in (self._task, self._varying):
            if task is not None:
                task.is_wanted = False
        self._task = self._varying = None
        self.variants = ()

    def _on_changed(self) -> None:
        self._call_off()
        if self.is_watching:
            self._settle.start()

    def _on_told(self, task: _Task, share: float) -> None:
        if task is self._task:
            self.progressed.emit(share)

    def _on_done(self, task: _Task, answer: SwitchOn | None, error: Exception | None) -> None:
        if task is not self._task:
            return
        self._task = None
        if answer is not None:
            self._varying = task
            self._document.take_switched(answer)
        elif isinstance(error, HeaterloomError):
            self.failure = str(error)
        self.ended.emit()
        if error is not None and not isinstance(error, HeaterloomError):
            raise error

    def _on_varied(self, task: _Task, found: tuple[Tried, ...]) -> None:
        if task is self._varying:
            self._varying = None
            self.variants = found
            self.varied.emit()

    def finish(self) -> None:
        """Call off what runs and wait for it; for closing."""
        self._settle.stop()
        self._call_off()
        self._pool.waitForDone()
