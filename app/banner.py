"""A strip of text across the window that asks for nothing and blocks nothing."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QWidget


class Banner(QFrame):
    """Shows one message with an optional action; hidden until there is something to say."""

    acted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("Banner")
        self.label = QLabel(self)
        self.label.setTextFormat(Qt.TextFormat.PlainText)
        self.label.setWordWrap(True)
        self.action = QPushButton(self)
        self.close_button = QPushButton(self.tr("Close"), self)
        row = QHBoxLayout(self)
        row.setContentsMargins(16, 6, 12, 6)
        row.addWidget(self.label, 1)
        row.addWidget(self.action)
        row.addWidget(self.close_button)
        self.action.clicked.connect(self.acted)
        self.close_button.clicked.connect(self.hide)
        self.hide()

    def show_message(self, text: str, action: str = "") -> None:
        """Show a message; a second one takes the place of the first."""
        self.label.setText(text)
        self.setAccessibleName(text)
        self.action.setText(action)
        self.action.setVisible(bool(action))
        self.show()
