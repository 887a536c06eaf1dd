"""Tuning a number: its name is dragged left or right, or keys step it, and what it would do is seen meanwhile.

A drag is one step of the history, made when it is released. Stepped by keys a value is like a typed one: Enter or
leaving the field commits it, Escape puts the sheet's value back.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QPointF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QLineEdit, QSizePolicy, QWidget

from app.guard import guarded
from app.panes.field_rows import FieldRow
from app.panes.figures import exact_text
from app.panes.steps import Steps
from app.theme import Theme
from core.errors import QuantityError
from core.units import Dimension, parse

PIXELS = 8  # of dragging a step
_PAGE = 5  # steps of a Page key, as at the mains
_MARK_ROOM = 18
_KEYS = {Qt.Key.Key_PageUp: _PAGE, Qt.Key.Key_PageDown: -_PAGE}
_ALT_KEYS = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}


@guarded
class ScrubMark(QWidget):
    """Two small arrows that say that a name can be dragged. They take no clicks from it."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Room for both arrows."""
        return QSize(14, 12)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the arrows."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._theme.brush("accent"))
        for tip, back in ((0.5, 5.0), (13.5, 9.0)):
            painter.drawPolygon(QPolygonF([QPointF(tip, 6), QPointF(back, 2.5), QPointF(back, 9.5)]))
        painter.end()


@guarded
class Scrub(QObject):
    """Makes one field of a form tunable."""

    def __init__(self, row: FieldRow, steps: Steps, theme: Theme) -> None:
        super().__init__(row)
        self._row = row
        self._steps = steps
        self._from: tuple[float, float] | None = None  # where the drag began, and at which value
        label, editor = row.label, row.editor
        assert isinstance(editor, QLineEdit)
        self._editor = editor
        row.add_mark(ScrubMark(theme, row), _MARK_ROOM)
        label.setCursor(Qt.CursorShape.SizeHorCursor)
        tip = QCoreApplication.translate("fields", "Drag left or right, or press Alt+Up and Alt+Down.")
        label.setToolTip(tip)
        editor.setToolTip(tip)
        label.installEventFilter(self)
        editor.installEventFilter(self)
        editor.textEdited.connect(row.end_considering)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Drags of the name, and keys in the editor."""
        if isinstance(event, QMouseEvent) and watched is self._row.label:
            return self._on_mouse(event)
        if isinstance(event, QKeyEvent) and watched is self._editor:
            return self._on_key(event)
        if event.type() == QEvent.Type.FocusOut and watched is self._editor and self._from is not None:
            self._give_up()
        return super().eventFilter(watched, event)

    def _on_mouse(self, event: QMouseEvent) -> bool:
        kind, x = event.type(), event.globalPosition().x()
        if kind == QEvent.Type.MouseButtonPress and event.button() == Qt.MouseButton.LeftButton:
            value = self._value()
            if value is not None:
                self._editor.setFocus(Qt.FocusReason.MouseFocusReason)
                self._from = x, value
        elif kind == QEvent.Type.MouseMove and self._from is not None:
            began, value = self._from
            self._consider(self._steps.moved(value, round((x - began) / PIXELS)))
        elif kind == QEvent.Type.MouseButtonRelease and self._from is not None:
            self._from = None
            self._row.commit()
        else:
            return False
        return True

    def _on_key(self, event: QKeyEvent) -> bool:
        if event.type() not in (QEvent.Type.KeyPress, QEvent.Type.ShortcutOverride):
            return False
        if event.key() == Qt.Key.Key_Escape and self._from is not None:
            if event.type() == QEvent.Type.KeyPress:
                self._give_up()
            event.accept()
            return True
        has_alt = bool(event.modifiers() & Qt.KeyboardModifier.AltModifier)
        count = _ALT_KEYS.get(Qt.Key(event.key())) if has_alt else _KEYS.get(Qt.Key(event.key()))
        value = None if count is None else self._value()
        if count is None or value is None:
            return False
        if event.type() == QEvent.Type.KeyPress:
            self._consider(self._steps.moved(value, count))
        event.accept()
        return True

    def _value(self) -> float | None:
        """The value that stands in the editor, else that of the sheet; None where there is none at all."""
        field = self._row.field
        dimension = field.dimension or Dimension.NUMBER
        for text in (self._row.text, field.text):
            try:
                return parse(text, dimension)
            except QuantityError:
                continue
        return None if field.default is None else float(field.default)

    def _consider(self, value: float) -> None:
        text = exact_text(value, self._row.field.dimension or Dimension.NUMBER)
        if text != self._row.text:
            self._row.consider(text)

    def _give_up(self) -> None:
        self._from = None
        self._row.restore()
