"""A line at the foot of the drawing that says what the gesture under way will do."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QWidget

_LEFT, _UP = 16, 14


class Hint(QLabel):
    """Shown while there is something to say; it never takes the pointer."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._parent = parent
        self.setObjectName("Card")
        self.setContentsMargins(8, 4, 8, 4)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.hide()

    def show_text(self, text: str) -> None:
        """Say a text until hidden."""
        if text == self.text() and self.isVisible():
            return
        self.setText(text)
        self.adjustSize()
        self.move(_LEFT, self._parent.height() - self.height() - _UP)
        self.show()
