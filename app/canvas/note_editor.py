"""Writing a note where it stands on the sheet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QRect, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QTextOption
from PySide6.QtWidgets import QFrame, QPlainTextEdit

from app.canvas import words
from app.canvas.symbols.remarks import TEXT_PX, lines_of
from app.guard import guarded
from core.checks import LONGEST_NOTE
from core.edits import remove, set_part
from core.sheet import Note

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_LEAST_HEIGHT = 56
_BORDER = 2


@guarded
class NoteEditor(QPlainTextEdit):
    """A field over a note. Ctrl+Enter, or leaving it, keeps what is written; Escape keeps what was there.

    A note that is left without words is taken off the sheet.
    """

    def __init__(self, view: SheetView, note: Note) -> None:
        super().__init__(view.viewport())
        self._view = view
        self._note = note
        self._is_over = False
        theme = view.sheet_scene.theme
        self.setPlainText(note.text)
        self.setFont(theme.font(max(TEXT_PX * view.scale_, TEXT_PX)))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWordWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.document().setDocumentMargin(0)
        self.setTabChangesFocus(True)
        self.setAccessibleName(words.tr("Note"))
        self.setToolTip(words.tr("Ctrl+Enter keeps it, Escape keeps what was there."))
        self.setStyleSheet(
            f"QPlainTextEdit {{ background: {theme.surface}; color: {theme.ink};"
            f" border: {_BORDER}px solid {theme.accent}; border-radius: 3px;"
            f" selection-background-color: {theme.selection}; selection-color: {theme.ink}; }}"
        )
        self.textChanged.connect(self._fit)
        view.document.replaced.connect(self._give_up)
        view.zoomed.connect(self.finish)
        view.horizontalScrollBar().valueChanged.connect(self.finish)
        view.verticalScrollBar().valueChanged.connect(self.finish)
        self._fit()
        self.show()
        self.selectAll()
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def _fit(self) -> None:
        """As wide as the note, as high as what is written."""
        corner = self._view.mapFromScene(*self._note.at)
        share = self.font().pixelSize() / TEXT_PX
        lines = len(lines_of(self.toPlainText(), self._note.width)) + 1  # room for the next
        width = round(self._note.width * share) + 2 * _BORDER + self.cursorWidth() + 1
        height = max(lines * self.fontMetrics().lineSpacing() + 2 * _BORDER, _LEAST_HEIGHT)
        self.setGeometry(QRect(corner.x() - _BORDER, corner.y() - _BORDER, width, height))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Ctrl+Enter and Escape end it; anything else is writing."""
        is_enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if event.key() == Qt.Key.Key_Escape:
            self._give_up()
        elif is_enter and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.finish()
        else:
            super().keyPressEvent(event)
        event.accept()  # what means nothing here must not mean something to the drawing below

    def event(self, event: QEvent) -> bool:
        """While a note is written, keys are for it and not for the window's actions."""
        if event.type() == QEvent.Type.ShortcutOverride:
            event.accept()
        return super().event(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Leaving the field keeps what is written; its own menu is no leaving."""
        super().focusOutEvent(event)
        if event.reason() not in (Qt.FocusReason.PopupFocusReason, Qt.FocusReason.ActiveWindowFocusReason):
            self.finish()

    def finish(self) -> None:
        """Keep what is written."""
        if not self._is_over:
            text = self.toPlainText().rstrip()[:LONGEST_NOTE]
            self._close()
            keep_text(self._view, self._note.id, text)

    def _give_up(self) -> None:
        if not self._is_over:
            self._close()
            keep_text(self._view, self._note.id, self._note.text)

    def _close(self) -> None:
        self._is_over = True
        if self.hasFocus():
            # first, as a field that is hidden with the keyboard in it hands it on as Tab would
            self._view.setFocus(Qt.FocusReason.OtherFocusReason)
        self.hide()
        self.deleteLater()


def keep_text(view: SheetView, note_id: str, text: str) -> None:
    """Give a note its words; one without any is taken off the sheet."""
    note = view.document.sheet.part_by_id.get(note_id)
    if not isinstance(note, Note):
        return
    if not text.strip():
        view.document.apply(words.tr("Delete {what}").format(what=note_id), remove((note_id,)))
    elif text != note.text:
        view.document.apply(words.tr("Write {what}").format(what=note_id), set_part(note_id, text=text))
