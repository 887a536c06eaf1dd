"""The instant of a warm-up that is looked at: one value for the plot, the time slider and the drawing."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal


class Playhead(QObject):
    """Seconds after switching on; None where no instant is looked at. ``changed`` carries the new value."""

    changed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._t_s: float | None = None

    @property
    def t_s(self) -> float | None:
        """The instant, in seconds."""
        return self._t_s

    def set(self, t_s: float | None) -> None:
        """Look at another instant; nothing happens when it is the same."""
        if t_s != self._t_s:
            self._t_s = t_s
            self.changed.emit(t_s)
