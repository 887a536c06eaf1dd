"""The one selection that the drawing and the tables share."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QObject, Signal


class Selection(QObject):
    """Ids of the selected parts and wires.

    ``changed`` carries the new set; ``reveal`` asks the drawing to bring ids into view.
    """

    changed = Signal(object)
    reveal = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._ids: frozenset[str] = frozenset()

    @property
    def ids(self) -> frozenset[str]:
        """What is selected."""
        return self._ids

    def set(self, ids: Iterable[str]) -> None:
        """Select exactly these."""
        new = frozenset(ids)
        if new != self._ids:
            self._ids = new
            self.changed.emit(new)

    def toggle(self, ids: Iterable[str]) -> None:
        """Add those that are not selected and drop those that are."""
        self.set(self._ids.symmetric_difference(ids))

    def clear(self) -> None:
        """Select nothing."""
        self.set(())

    def show(self, ids: Iterable[str]) -> None:
        """Select these and bring them into view."""
        self.set(ids)
        self.reveal.emit(self._ids)
