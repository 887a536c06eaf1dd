"""The order of a chain as a list that can be dragged, or moved with Alt and the arrows."""

from __future__ import annotations

from typing import NamedTuple

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QFrame, QListWidget, QListWidgetItem, QWidget

from app.guard import guarded
from app.panes.about import plain_tip
from app.panes.controls import scroll_bar_style
from app.theme import Theme

_ID_ROLE = Qt.ItemDataRole.UserRole + 1
_ROW = 22
_FEWEST, _MOST = 3, 7


class OrderRow(NamedTuple):
    """One socket in the order: its id, what is said of it, and why it is left out if it is."""

    id: str
    text: str
    left_out: str = ""


@guarded
class OrderList(QListWidget):
    """Sockets in the order of the chain. ``reordered`` comes when the user has moved one."""

    reordered = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setUniformItemSizes(True)
        self._is_dragged = False
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.setFont(theme.font(12))
        self.setStyleSheet(
            f"QListWidget {{ background: {theme.surface}; color: {theme.ink}; border: 1px solid {theme.edge};"
            f" border-radius: 4px; padding: 2px; }}"
            f"QListWidget:focus {{ border: 2px solid {theme.accent}; padding: 1px; }}"
            f"QListWidget::item {{ padding: 0 4px; }}"
            f"QListWidget::item:selected {{ background: {theme.selection}; color: {theme.ink}; }}"
            + scroll_bar_style(theme)
        )
        for row in range(self.count()):
            self._colour(self.item(row))

    def ids(self) -> tuple[str, ...]:
        """The sockets from the supply on."""
        return tuple(str(self.item(row).data(_ID_ROLE)) for row in range(self.count()))

    def show_rows(self, rows: list[OrderRow]) -> None:
        """Show sockets in this order; the current one stays the current one."""
        current = self.currentItem()
        kept = None if current is None else current.data(_ID_ROLE)
        self.blockSignals(True)
        while self.count() > len(rows):
            self.takeItem(self.count() - 1)
        while self.count() < len(rows):
            item = QListWidgetItem()
            item.setSizeHint(QSize(0, _ROW))
            self.addItem(item)
        for number, row in enumerate(rows):
            item = self.item(number)
            item.setData(_ID_ROLE, row.id)
            item.setData(Qt.ItemDataRole.UserRole, row.left_out)
            item.setText(row.text)
            item.setToolTip(plain_tip(row.left_out))
            self._colour(item)
        ids = self.ids()
        self.setCurrentRow(ids.index(kept) if kept in ids else 0 if ids else -1)
        self.blockSignals(False)
        self.updateGeometry()

    def _colour(self, item: QListWidgetItem) -> None:
        role = "edge" if item.data(Qt.ItemDataRole.UserRole) else "ink"
        item.setForeground(self._theme.brush(role))

    def sizeHint(self) -> QSize:
        """As high as its rows, within limits."""
        rows = max(_FEWEST, min(self.count(), _MOST))
        return QSize(200, rows * _ROW + 8)

    def minimumSizeHint(self) -> QSize:
        """No row is cut while few are there."""
        return self.sizeHint()

    def move_current(self, by: int) -> bool:
        """Move the current socket up or down the chain; False past either end."""
        row = self.currentRow()
        to = row + by
        if row < 0 or not 0 <= to < self.count():
            return False
        self.blockSignals(True)
        self.insertItem(to, self.takeItem(row))
        self.setCurrentRow(to)
        self.blockSignals(False)
        return True

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """A row that is dragged goes along with the pointer."""
        over = self.indexAt(event.position().toPoint()).row()
        if event.buttons() & Qt.MouseButton.LeftButton and over >= 0 and over != self.currentRow():
            self._is_dragged = self.move_current(over - self.currentRow()) or self._is_dragged

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """What was dragged stays where it is let go."""
        super().mouseReleaseEvent(event)
        if self._is_dragged:
            self._is_dragged = False
            self.reordered.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Alt with an arrow moves the current socket; Return and Escape are for the pane."""
        steps = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
        key = Qt.Key(event.key())
        if event.modifiers() & Qt.KeyboardModifier.AltModifier and key in steps:
            if self.move_current(steps[key]):
                self.reordered.emit()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Escape):
            event.ignore()
        else:
            super().keyPressEvent(event)
