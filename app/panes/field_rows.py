"""One field of a form on screen: a line to type in, a choice, or a tick box, with room for a complaint."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QSizePolicy,
    QWidget,
)

from app.guard import guarded
from app.panes.completing import Completer
from app.panes.controls import FlatCombo
from app.panes.fields import Field
from app.panes.marks import SeverityMark
from app.panes.offering import Offering
from app.panes.words import choice_word, unbroken
from app.theme import Theme

LABEL_WIDTH = 136


@guarded
class FieldRow(QWidget):
    """One field. ``committed`` carries the field's name and the input once the user is done with it.

    ``considered`` carries the field's name and an input that is only tried, or None when that is over.

    A refused input stays where it was typed, marked by a shape, a border and the sentence that says why;
    Escape puts the value of the sheet back.
    """

    committed = Signal(str, object)
    considered = Signal(str, object)

    def __init__(self, field: Field, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.field = field
        self._theme = theme
        self._refused = False
        self._is_considering = False
        self.label = QLabel(field.label, self)
        self.label.setTextFormat(Qt.TextFormat.PlainText)
        self.label.setWordWrap(True)
        self.label.setFixedWidth(LABEL_WIDTH)
        self.label.setProperty("role", "soft")
        self.editor = self._make_editor()
        self.editor.setAccessibleName(field.label)
        self.label.setBuddy(self.editor)
        self._complaint = QWidget(self)
        self._mark = SeverityMark("fault", theme, self._complaint)
        self.sentence = QLabel(self._complaint)
        self.sentence.setTextFormat(Qt.TextFormat.PlainText)
        self.sentence.setWordWrap(True)
        self._arrange()
        self.set_theme(theme)
        self.show_field(field)

    def _make_editor(self) -> QWidget:
        if self.field.role == "flag":
            box = QCheckBox(self)
            box.toggled.connect(lambda ticked: self.committed.emit(self.field.name, ticked))
            return box
        if self.field.role == "choice":
            combo = FlatCombo(self._theme, self)
            combo.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
            for choice in self.field.choices:
                combo.addItem(choice_word(choice), choice)
            combo.activated.connect(lambda at: self.committed.emit(self.field.name, combo.itemData(at)))
            return combo
        line = QLineEdit(self)
        line.editingFinished.connect(self.commit)
        line.installEventFilter(self)
        return line

    def _arrange(self) -> None:
        below = QHBoxLayout(self._complaint)
        below.setContentsMargins(0, 1, 0, 3)
        below.setSpacing(4)
        below.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        below.addWidget(self.sentence, 1)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(8)
        grid.setVerticalSpacing(0)
        grid.setColumnStretch(1, 1)
        grid.addWidget(self.label, 0, 0)
        grid.addWidget(self.editor, 0, 1)
        grid.addWidget(self._complaint, 1, 1)
        self._grid = grid
        self._complaint.hide()

    def add_mark(self, mark: QWidget, room: int) -> None:
        """Put a mark at the end of the name, which keeps so many pixels clear of it."""
        self.label.setContentsMargins(0, 0, room, 0)
        self._grid.addWidget(mark, 0, 0, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        for widget in (self.label, self.editor, self.sentence):
            widget.setFont(theme.font(12))
        if isinstance(self.editor, FlatCombo):
            self.editor.set_theme(theme)
        self._mark.set_theme(theme)
        self.sentence.setStyleSheet(f"color: {theme.over};")
        self._show_border()

    def _show_border(self) -> None:
        if isinstance(self.editor, QLineEdit):
            theme = self._theme
            still, busy = (theme.over, theme.over) if self._refused else (theme.edge, theme.accent)
            width = 2 if self._refused else 1
            self.editor.setStyleSheet(
                f"QLineEdit {{ background: {theme.surface}; color: {theme.ink}; border-radius: 4px;"
                f" border: {width}px solid {still}; padding: {3 - width}px {6 - width}px; }}"
                f"QLineEdit:focus {{ border: 2px solid {busy}; padding: 1px 4px; }}"
            )

    def complete_from(self, offering: Offering) -> None:
        """Offer while typing what fits the text so far."""
        if isinstance(self.editor, QLineEdit):
            Completer(offering, self.editor)

    @property
    def text(self) -> str:
        """What stands in the editor now."""
        if isinstance(self.editor, QLineEdit):
            return self.editor.text()
        return str(self.editor.currentData()) if isinstance(self.editor, QComboBox) else ""

    @property
    def is_pending(self) -> bool:
        """Whether something is typed that the sheet does not hold."""
        return isinstance(self.editor, QLineEdit) and self.editor.text() != self.field.text

    @property
    def is_refused(self) -> bool:
        """Whether the field is marked as not understood."""
        return self._refused

    def show_field(self, field: Field) -> None:
        """Show the sheet's value; what is being typed or was refused stays while the value is the same."""
        same = field.text == self.field.text
        busy = self.is_pending and (self.editor.hasFocus() or self._refused)
        self.field = field
        if isinstance(self.editor, QLineEdit):
            self.editor.setPlaceholderText(field.placeholder)
            if not (same and busy):
                self.restore()
        elif isinstance(self.editor, QComboBox):
            self.editor.setCurrentIndex(self.editor.findData(field.text))
        elif isinstance(self.editor, QCheckBox):
            self.editor.blockSignals(True)
            self.editor.setChecked(field.checked)
            self.editor.blockSignals(False)

    def consider(self, text: str) -> None:
        """Show an input that is tried, and announce it."""
        if isinstance(self.editor, QLineEdit):
            self._is_considering = True
            self.editor.setText(text)
            self.considered.emit(self.field.name, text)

    def end_considering(self) -> None:
        """Take back what is tried; what stands in the editor stays."""
        if self._is_considering:
            self._is_considering = False
            self.considered.emit(self.field.name, None)

    def commit(self) -> None:
        """Hand on what is typed, if it is not what the sheet holds already."""
        self.end_considering()
        if self.is_pending:
            self.committed.emit(self.field.name, self.text)
        elif self._refused:
            self.restore()

    def restore(self) -> None:
        """Put the sheet's value back and take the complaint away."""
        self.end_considering()
        if isinstance(self.editor, QLineEdit):
            self.editor.setText(self.field.text)
        self._refused = False
        self._complaint.hide()
        self._show_border()

    def refuse(self, sentence: str) -> None:
        """Mark the field and say below it why its input cannot be used."""
        self._refused = True
        self.sentence.setText(unbroken(sentence))
        self.editor.setAccessibleDescription(sentence)
        self._complaint.show()
        self._show_border()
        if not isinstance(self.editor, QLineEdit):
            self.show_field(self.field)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Escape puts the value back instead of reaching the window."""
        if (
            watched is self.editor
            and isinstance(event, QKeyEvent)
            and event.type() in (QEvent.Type.KeyPress, QEvent.Type.ShortcutOverride)
            and event.key() == Qt.Key.Key_Escape
            and (self.is_pending or self._refused)
        ):
            if event.type() == QEvent.Type.KeyPress:
                self.restore()
            event.accept()
            return True
        return super().eventFilter(watched, event)
