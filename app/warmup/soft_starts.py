"""The soft starts that have been tried: each with its reason, and a button that puts it on the sheet."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from app.guard import guarded
from app.panes.controls import TextButton, ground_style, scroll_bar_style
from app.speech import spoken
from app.theme import Theme
from app.warmup.runner import Tried


@guarded
class SoftStarts(QScrollArea):
    """One entry a soft start. ``considered`` carries one that has the pointer or the keyboard, or None."""

    taken = Signal(object)
    considered = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._offers: dict[QObject, Tried] = {}
        self.setWidgetResizable(True)
        self.setFrameShape(self.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFixedWidth(330)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.setStyleSheet(ground_style("QScrollArea", theme) + scroll_bar_style(theme))

    def show_tried(self, tried: tuple[Tried, ...], colours: list[QColor], waiting: bool) -> None:
        """List other soft starts, or say that they are being looked for, or that none is needed."""
        self._offers = {}
        body = QWidget(self)
        column = QVBoxLayout(body)
        column.setContentsMargins(8, 0, 8, 4)
        column.setSpacing(2)
        if not tried:
            text = (
                self.tr("Soft starts are being tried…")
                if waiting
                else self.tr("No soft start is needed, or none can be proposed for this supply.")
            )
            column.addWidget(self._label(text, "soft"))
        for one, colour in zip(tried, colours, strict=False):
            column.addLayout(self._entry(one, colour, body))
        column.addStretch(1)
        self.setWidget(body)

    def _entry(self, one: Tried, colour: QColor, body: QWidget) -> QVBoxLayout:
        head = QHBoxLayout()
        head.setSpacing(6)
        swatch = QLabel(body)
        swatch.setFixedSize(12, 3)
        swatch.setStyleSheet(f"background: {colour.name()};")
        head.addWidget(swatch)
        name = self._label(spoken(one.variant.name), "ink", bold=True)
        head.addWidget(name, 1)
        button = TextButton(self.tr("Put it on the sheet"), self._theme, 12, body)
        button.setToolTip(spoken(one.variant.reason))
        button.clicked.connect(lambda: self.taken.emit(one))
        button.installEventFilter(self)
        self._offers[button] = one
        head.addWidget(button)
        entry = QVBoxLayout()
        entry.setSpacing(0)
        entry.addLayout(head)
        entry.addWidget(self._label(spoken(one.variant.reason), "soft"))
        return entry

    def _label(self, text: str, role: str, bold: bool = False) -> QLabel:
        label = QLabel(text)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        label.setFont(self._theme.font(12, bold))
        label.setStyleSheet(f"color: {self._theme.colour(role).name()};")
        return label

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """What has the pointer or the keyboard is being considered."""
        if watched in self._offers:
            if event.type() in (QEvent.Type.Enter, QEvent.Type.FocusIn):
                self.considered.emit(self._offers[watched])
            elif event.type() in (QEvent.Type.Leave, QEvent.Type.FocusOut):
                self.considered.emit(None)
        return super().eventFilter(watched, event)
