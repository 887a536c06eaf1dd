"""The words in the conditions strip while an instant of the warm-up is on show."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from app.panes.controls import TextButton
from app.theme import Theme
from app.warmup.moments import after_switching_on

_WIDEST = (0.88, 88.8, 8888.0)


class InstantNote(QWidget):
    """Says that an instant of the warm-up is on show, and leads back."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.label = QLabel(self)
        self.label.setTextFormat(Qt.TextFormat.PlainText)
        self.label.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.leave_button = TextButton(self.tr("back to the steady state"), theme, 11, self)
        self.leave_button.setToolTip(self.tr("Leave the instant (Shift+F8)"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        for widget in (self.label, self.leave_button):
            column.addWidget(widget, 0, Qt.AlignmentFlag.AlignHCenter)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.label.setFont(theme.font(13, bold=True))
        self.label.setStyleSheet(f"color: {theme.accent_text};")
        metrics = QFontMetrics(theme.font(13, bold=True))
        # of one width, so that nothing beside it moves while the time goes on
        widest = max(metrics.horizontalAdvance(after_switching_on(t_s)) for t_s in _WIDEST)
        self.label.setMinimumWidth(widest + 2)
        self.leave_button.set_theme(theme)

    def show_instant(self, t_s: float) -> None:
        """Show an instant's time."""
        self.label.setText(after_switching_on(t_s))
        self.show()
