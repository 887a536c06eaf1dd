"""The paper's grid: whether its dots are shown, and whether parts keep to it."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal


class Paper(QObject):
    """Two switches; ``changed`` tells that one of them was turned."""

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._shows_grid = True
        self._snaps = True

    @property
    def shows_grid(self) -> bool:
        """Whether the dots of the grid are drawn."""
        return self._shows_grid

    @property
    def snaps(self) -> bool:
        """Whether parts that are dragged or dropped land on the grid."""
        return self._snaps

    def set(self, *, shows_grid: bool | None = None, snaps: bool | None = None) -> None:
        """Turn one switch or both."""
        before = self._shows_grid, self._snaps
        if shows_grid is not None:
            self._shows_grid = shows_grid
        if snaps is not None:
            self._snaps = snaps
        if before != (self._shows_grid, self._snaps):
            self.changed.emit()

    def toggle_grid(self) -> None:
        """Show the dots, or hide them."""
        self.set(shows_grid=not self._shows_grid)

    def toggle_snap(self) -> None:
        """Keep parts to the grid, or not."""
        self.set(snaps=not self._snaps)
