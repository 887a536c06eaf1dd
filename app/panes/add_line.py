"""The line below a table where a part or a wire is typed to be added."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QLineEdit, QWidget

from app.canvas.telling import announce
from app.guard import guarded
from app.panes.completing import Completer
from app.panes.offering import Offering
from app.theme import Theme


@guarded
class AddLine(QLineEdit):
    """``wanted`` carries what Return was pressed on; the text stays until it was taken. ``left`` comes for Escape."""

    wanted = Signal(str)
    left = Signal()

    def __init__(
        self, name: str, example: str, offering: Offering, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._is_refused = False
        self.setAccessibleName(name)
        self.setPlaceholderText(example)
        self.setMaxLength(80)
        self.completer_ = Completer(offering, self)
        self.textEdited.connect(self._on_edited)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.setFont(theme.font(12))
        self._show_border()

    def _show_border(self) -> None:
        theme = self._theme
        line = theme.over if self._is_refused else theme.edge
        self.setStyleSheet(
            f"QLineEdit {{ background: {theme.surface}; color: {theme.ink}; border: 1px solid {line};"
            f" border-radius: 4px; padding: 2px 6px; }}"
            f"QLineEdit:focus {{ border: 2px solid {theme.over if self._is_refused else theme.accent};"
            " padding: 1px 5px; }"
        )

    def _on_edited(self) -> None:
        self._mark(refused=False)

    def _mark(self, refused: bool) -> None:
        if refused != self._is_refused:
            self._is_refused = refused
            self._show_border()

    def refuse(self, sentence: str) -> None:
        """Mark the text as not understood and keep it; a screen reader says why."""
        self._mark(refused=True)
        self.setAccessibleDescription(sentence)
        announce(self, sentence)

    def take(self) -> None:
        """The text was carried out: make room for the next."""
        self._mark(refused=False)
        self.setAccessibleDescription("")
        self.setText("")  # unlike clear(), this leaves nothing to undo in the line

    def event(self, event: QEvent) -> bool:
        """Undo with nothing typed to take back is for the window."""
        if (
            isinstance(event, QKeyEvent)
            and event.type() == QEvent.Type.ShortcutOverride
            and event.matches(QKeySequence.StandardKey.Undo)
            and not self.isUndoAvailable()
        ):
            event.ignore()
            return False
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return hands the text on, Escape gives it up."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self.text().strip():
                self.wanted.emit(self.text().strip())
        elif event.key() == Qt.Key.Key_Escape:
            self.take()
            self.left.emit()
        else:
            super().keyPressEvent(event)
            return
        event.accept()
