"""The sheet's title, edited where it stands."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QFontMetrics,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QLineEdit, QSizePolicy, QWidget

from app.guard import guarded
from app.panes.controls import paint_focus_ring
from app.theme import Theme

_HEIGHT = 22


@guarded
class _TitleEditor(QLineEdit):
    """A line that keeps Return to itself, so that the title behind it does not open for editing again."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        super().keyPressEvent(event)
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            event.accept()


@guarded
class TitleLine(QWidget):
    """Shows a title in bold; a double click, Return or F2 opens it for editing, Escape gives it back.

    ``renamed`` carries the new title.
    """

    renamed = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._title = ""
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Sheet title"))
        self.editor = _TitleEditor(self)
        self.editor.setMaxLength(120)
        self.editor.setAccessibleName(self.tr("Sheet title"))
        self.editor.hide()
        self.editor.editingFinished.connect(self._finish)
        self.set_theme(theme)

    @property
    def title(self) -> str:
        """The title on show."""
        return self._title

    @property
    def shown(self) -> str:
        """What stands for the title on screen: a sheet without one is untitled."""
        return self._title.strip() or self.tr("Untitled")

    def set_title(self, title: str) -> None:
        """Show another title."""
        self._title = title
        self.setToolTip(self.tr("Double click or F2 renames the sheet"))
        self.setAccessibleDescription(self.shown)
        self.update()

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.editor.setFont(theme.font(14, bold=True))
        self.update()

    def sizeHint(self) -> QSize:
        """One line of bold text."""
        return QSize(200, _HEIGHT)

    def edit(self) -> None:
        """Open the title for editing, all of it selected."""
        self.editor.setText(self._title)
        self.editor.selectAll()
        self.editor.show()
        self.editor.setFocus()

    def _finish(self) -> None:
        if self.editor.isHidden():
            return
        text = self.editor.text().strip()
        self.editor.hide()
        if text and text != self._title:
            self.renamed.emit(text)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return and F2 edit; Escape in the editor gives the title back."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_F2) and self.editor.isHidden():
            self.edit()
        elif event.key() == Qt.Key.Key_Escape and not self.editor.isHidden():
            self.editor.setText(self._title)
            self.editor.hide()
            self.setFocus()
        else:
            super().keyPressEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A double click edits."""
        self.edit()
        event.accept()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show where the keyboard is."""
        super().focusInEvent(event)
        self.update()

    def resizeEvent(self, _event: QResizeEvent) -> None:
        """The editor covers the title."""
        self.editor.setGeometry(self.rect())

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the title, shortened with an ellipsis where there is no room for all of it."""
        painter = QPainter(self)
        font = self._theme.font(14, bold=True)
        painter.setFont(font)
        painter.setPen(self._theme.colour("ink"))
        text = QFontMetrics(font).elidedText(self.shown, Qt.TextElideMode.ElideRight, self.width() - 6)
        painter.drawText(self.rect().adjusted(2, 0, 0, 0), int(Qt.AlignmentFlag.AlignVCenter), text)
        if self.hasFocus():
            paint_focus_ring(painter, QRectF(self.rect()), self._theme)
        painter.end()
