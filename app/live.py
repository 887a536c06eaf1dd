"""Keeping the answers in step with the drawing.

Small sheets are solved at once, in the same event as the edit; large ones in a worker, of which one runs at a
time and only the newest request waits. Answers to an older drawing are dropped by the document.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QRunnable, Qt, QThreadPool, Signal

from app.document import Document
from app.viewpoint import Viewpoint
from core.results import Assessment

if TYPE_CHECKING:
    from core.assess import Memory

SMALL = 150  # parts and wires: about 10 ms, well inside one frame


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


class Live(QObject):
    """Assesses the document after every change of it or of the viewpoint."""

    def __init__(
        self, document: Document, viewpoint: Viewpoint, small: int = SMALL, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._viewpoint = viewpoint
        self._small = small
        self._memory: Memory | None = None
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._carrier = _Carrier(self)
        self._carrier.done.connect(self._on_done, Qt.ConnectionType.QueuedConnection)
        self._busy = False
        self._waiting = False
        document.changed.connect(self.refresh)
        document.replaced.connect(self.refresh)
        viewpoint.changed.connect(self.refresh)

    def refresh(self) -> None:
        """Bring the answers up to date."""
        work = self._work()
        if self._busy:
            self._waiting = True
        elif len(self._document.sheet.parts) + len(self._document.sheet.wires) <= self._small:
            self._document.take_assessment(work())
        else:
            self._busy = True
            self._pool.start(_Task(work, self._carrier))

    def _work(self) -> Callable[[], Assessment]:
        # numerics are loaded with the first question, not with the window
        from core.assess import Memory, assess, look_at  # noqa: PLC0415

        document = self._document
        memory = self._memory = self._memory or Memory()
        present, chosen = document.assessment, self._viewpoint.condition
        sheet, catalogue = document.sheet, document.catalogue
        if present is not None:
            return lambda: look_at(present, catalogue, chosen, memory)
        return lambda: assess(sheet, catalogue, chosen, memory)

    def _on_done(self, assessment: Assessment | None, error: Exception | None) -> None:
        self._busy = False
        if assessment is not None:
            self._document.take_assessment(assessment)
        if self._waiting:
            self._waiting = False
            self.refresh()
        if error is not None:
            raise error

    def finish(self) -> None:
        """Wait for a running worker; for closing."""
        self._pool.waitForDone()
