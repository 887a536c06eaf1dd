"""A small panel on the drawing beside the add field: a question, a field and a line about it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QLineEdit, QVBoxLayout

from app.guard import guarded

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_PLACE = QPoint(262, 14)  # beside the add field
_BELOW = 50
_MARGIN = 16


@guarded
class PanelField(QLineEdit):
    """A field that has every key for itself while it is written in."""

    def event(self, event: QEvent) -> bool:
        """Keys are for the field and not for the window's actions."""
        if event.type() == QEvent.Type.ShortcutOverride:
            event.accept()
        return super().event(event)


@guarded
class Panel(QFrame):
    """The base: what it shows and where it stands. Escape goes back to the drawing."""

    def __init__(self, view: SheetView, width: int, below: bool) -> None:
        super().__init__(view)
        self.view = view
        self._width = width
        self._is_high = below
        self.setObjectName("CanvasPanel")
        self.question = QLabel(self)
        self.field = PanelField(self)
        self.question.setBuddy(self.field)
        self.answer = QLabel(self)
        for label in (self.question, self.answer):
            label.setTextFormat(Qt.TextFormat.PlainText)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.question)
        row.addWidget(self.field, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 4, 10, 6)
        column.setSpacing(4)
        column.addLayout(row)
        if below:
            self.answer.setWordWrap(True)
            column.addWidget(self.answer)
        else:
            row.addWidget(self.answer)
        self._dress()
        self.hide()

    def _dress(self) -> None:
        theme = self.view.sheet_scene.theme
        for label in (self.question, self.answer):
            label.setFont(theme.font(12))
        self.field.setFont(theme.font(13))
        self.setStyleSheet(
            f"QFrame#CanvasPanel {{ background: {theme.chrome}; border: 1px solid {theme.edge};"
            " border-radius: 5px; }"
            f" QLabel {{ color: {theme.ink}; }}"
            f" QLineEdit {{ background: {theme.surface}; color: {theme.ink}; border: 1px solid {theme.edge};"
            f" border-radius: 4px; padding: 2px 6px; selection-background-color: {theme.selection};"
            f" selection-color: {theme.ink}; }}"
            f" QLineEdit:focus {{ border: 2px solid {theme.accent}; padding: 1px 5px; }}"
        )

    def enter(self) -> None:
        """Show the panel and take the keyboard."""
        self._dress()
        self.fit()
        self.show()
        self.raise_()
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.field.selectAll()

    def fit(self) -> None:
        """As high as what it says; one line beside the add field if there is room, anything else below it."""
        room = self.view.width() - 2 * _MARGIN
        width = min(self._width, room)
        beside = not self._is_high and _PLACE.x() + width <= self.view.width() - _MARGIN
        layout = self.layout()
        # in all: with the border of the panel
        wanted = (
            0 if layout is None else max(layout.totalHeightForWidth(width), layout.totalSizeHint().height())
        )
        height = max(wanted, 30)
        self.setGeometry(_PLACE.x() if beside else _MARGIN, _PLACE.y() if beside else _BELOW, width, height)

    def leave(self) -> None:
        """Back to the drawing."""
        # first, as a field that is hidden with the keyboard in it hands it on as Tab would
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)
        self.hide()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape, Enter and the arrows; nothing reaches the drawing below."""
        if event.key() == Qt.Key.Key_Escape:
            self.leave()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.take(backwards=bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Up):
            self.step(1 if event.key() == Qt.Key.Key_Down else -1)
        event.accept()

    def take(self, backwards: bool) -> None:
        """Enter was pressed, with Shift ``backwards``."""

    def step(self, by: int) -> None:
        """Down or Up was pressed."""
