"""The instant of the playhead on the drawing: one look into the run for each, and no solving."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject

from app.document import Document
from app.viewpoint import Instant, Viewpoint
from app.warmup.moments import done_by
from app.warmup.playhead import Playhead
from core.results import OperatingPoint
from core.sheet import Sheet

if TYPE_CHECKING:
    from core.warmup.results import Start, WarmupSummary


class Run(Protocol):
    """What is asked of a run of the warm-up: see :class:`core.warmup.WarmupRun`."""

    @property
    def sheet(self) -> Sheet:
        """The sheet it is of."""
        ...

    @property
    def start(self) -> Start:
        """How it was switched on."""
        ...

    @property
    def summary(self) -> WarmupSummary:
        """What happened."""
        ...

    @property
    def end_s(self) -> float:
        """How far it goes, in seconds."""
        ...

    def at(self, t_s: float) -> OperatingPoint:
        """The whole sheet at an instant."""
        ...


class Instants(QObject):
    """Shows the sheet at the playhead's instant, and takes the playhead away when something else is on show.

    An edit, another sheet, other mains or heaters hot or cold leave the instant.
    """

    def __init__(
        self, document: Document, viewpoint: Viewpoint, playhead: Playhead, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._viewpoint = viewpoint
        self._playhead = playhead
        self._run: Run | None = None
        playhead.changed.connect(self._show)
        viewpoint.changed.connect(self._on_viewpoint)
        document.changed.connect(self.leave)
        document.replaced.connect(self.leave)

    @property
    def run(self) -> Run | None:
        """The run whose instants are shown."""
        return self._run

    def show_run(self, run: Run | None) -> None:
        """Look into another run, at the same instant if one is on show; without a run none can be."""
        self._run = run
        t_s = self._playhead.t_s
        if t_s is None:
            return
        if run is None:
            self.leave()
        elif t_s > run.end_s:
            self._playhead.set(run.end_s)
        else:
            self._show(t_s)

    def leave(self) -> None:
        """Show the condition that was on show before."""
        self._playhead.set(None)

    def _show(self, t_s: float | None) -> None:
        run = self._run
        if t_s is None:
            self._viewpoint.leave_instant()
        elif run is None or run.sheet != self._document.sheet:
            self.leave()
        else:
            done = done_by(run.summary.events, t_s)
            self._viewpoint.show_instant(
                Instant(t_s, run.start.mains_v, self._document.sheet, run.at(t_s), done)
            )

    def _on_viewpoint(self) -> None:
        if self._viewpoint.instant is None:
            self.leave()
