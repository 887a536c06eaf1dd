"""The time slider: the seconds of a run as a line, what switched as ticks on it, and a handle at the instant."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QHelpEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QSlider, QToolTip, QWidget

from app.guard import guarded
from app.panes.controls import paint_focus_ring
from app.theme import Theme
from app.warmup.moments import after_switching_on, event_text, seconds_text

if TYPE_CHECKING:
    from core.warmup.results import Event

_PER_SECOND = 1000  # the slider counts milliseconds
_FINE_UNTIL = 10.0
_FINE, _COARSE, _PAGE = 0.1, 1.0, 10.0
_ROUNDING = 1e-6
_MARGIN = 10
_TRACK_Y = 12.0
_RADIUS = 6.0
_HIT = 5.0  # pixels around a tick in which its tool tip comes, and to which the handle snaps
_MOST_TOLD = 4


def step_s(t_s: float, forward: bool) -> float:
    """The next instant on or back: whole tenths of a second up to ten seconds, whole seconds from there on."""
    fine = t_s < _FINE_UNTIL - _ROUNDING if forward else t_s <= _FINE_UNTIL + _ROUNDING
    step = _FINE if fine else _COARSE
    steps = t_s / step
    number = math.floor(steps + _ROUNDING) + 1 if forward else math.ceil(steps - _ROUNDING) - 1
    return max(0.0, round(number * step, 1))


@guarded
class TimeSlider(QSlider):
    """Chooses an instant. ``chosen`` carries the seconds that the user chose; setting them from outside is silent."""

    chosen = Signal(float)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._theme = theme
        self._events: Sequence[Event] = ()
        self._t_s: float | None = None
        self._end_s = 0.0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Seconds after switch-on"))
        self.valueChanged.connect(self._on_value)

    def show_span(self, end_s: float, events: Sequence[Event]) -> None:
        """Show another run: how long it is and what switched in it."""
        self._end_s, self._events = end_s, events
        blocked = self.blockSignals(True)
        self.setRange(0, round(end_s * _PER_SECOND))
        self.blockSignals(blocked)
        self.update()

    def show_instant(self, t_s: float | None) -> None:
        """Put the handle at an instant; None shows that none is on show."""
        self._t_s = t_s
        blocked = self.blockSignals(True)
        self.setValue(round((t_s or 0.0) * _PER_SECOND))
        self.blockSignals(blocked)
        self.setAccessibleDescription("" if t_s is None else after_switching_on(t_s))
        self.update()

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.update()

    def _on_value(self, milliseconds: int) -> None:
        self._choose(milliseconds / _PER_SECOND)

    def _choose(self, t_s: float) -> None:
        t_s = min(max(t_s, 0.0), self._end_s)
        if t_s != self._t_s:
            self.show_instant(t_s)
            self.chosen.emit(t_s)

    def sizeHint(self) -> QSize:
        """A line with its seconds below."""
        return QSize(300, 34)

    def minimumSizeHint(self) -> QSize:
        """Short, but long enough to be dragged."""
        return QSize(120, 34)

    def x_of(self, t_s: float) -> float:
        """Where an instant lies, in pixels from the left."""
        share = t_s / self._end_s if self._end_s > 0 else 0.0
        return _MARGIN + share * (self.width() - 2 * _MARGIN)

    def _t_at(self, x: float) -> float:
        """The instant at a place, rounded to what a pixel can tell apart; exactly an event's at its tick."""
        near = min(self._events, key=lambda event: abs(self.x_of(event.t_s) - x), default=None)
        if near is not None and abs(self.x_of(near.t_s) - x) < 1.0:
            return near.t_s
        share = (x - _MARGIN) / max(self.width() - 2 * _MARGIN, 1)
        return round(share * self._end_s, 2 if self._end_s < _FINE_UNTIL else 1)

    def tip_at(self, x: float) -> str:
        """What switched near a place, in words; empty where nothing did."""
        near = [event for event in self._events if abs(self.x_of(event.t_s) - x) <= _HIT]
        lines = [event_text(event) for event in near[:_MOST_TOLD]]
        if len(near) > _MOST_TOLD:
            lines.append(self.tr("and {count} more").format(count=len(near) - _MOST_TOLD))
        return "\n".join(lines)

    def event(self, event: QEvent) -> bool:
        """The tool tip says what the tick under the pointer stands for."""
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            text = self.tip_at(event.pos().x())
            if text:
                QToolTip.showText(event.globalPos(), text, self)
            else:
                QToolTip.hideText()
            return True
        return super().event(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """The handle comes to the pointer."""
        if event.button() == Qt.MouseButton.LeftButton:
            self.setSliderDown(True)
            self._choose(self._t_at(event.position().x()))
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """The handle follows the pointer."""
        if self.isSliderDown():
            self._choose(self._t_at(event.position().x()))
        event.accept()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """The handle stays."""
        self.setSliderDown(False)
        event.accept()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """The wheel acts only where the keyboard does, so that scrolling past changes nothing."""
        if self.hasFocus() and event.angleDelta().y():
            self._choose(step_s(self._t_s or 0.0, event.angleDelta().y() > 0))
            event.accept()
        else:
            event.ignore()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows go on by a step and Page keys by ten seconds; Home and End go to the ends of the run."""
        keys, now, key = Qt.Key, self._t_s or 0.0, event.key()
        if key in (keys.Key_Right, keys.Key_Up, keys.Key_Left, keys.Key_Down):
            self._choose(step_s(now, key in (keys.Key_Right, keys.Key_Up)))
        elif key in (keys.Key_PageUp, keys.Key_PageDown):
            self._choose(now + (_PAGE if key == keys.Key_PageUp else -_PAGE))
        elif key in (keys.Key_Home, keys.Key_End):
            self._choose(0.0 if key == keys.Key_Home else self._end_s)
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the line, the seconds at its ends, what switched, and the handle."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme = self._theme
        left, right = self.x_of(0.0), self.x_of(self._end_s) if self._end_s else self.width() - _MARGIN
        painter.setPen(theme.pen("faint", 2.0))
        painter.drawLine(QPointF(left, _TRACK_Y), QPointF(right, _TRACK_Y))
        painter.setPen(theme.pen("soft", 1.2))
        ticks = {round(self.x_of(event.t_s)) for event in self._events}
        painter.drawLines([QLineF(x, _TRACK_Y - 5, x, _TRACK_Y + 5) for x in sorted(ticks)])
        self._paint_ends(painter, right)
        if self._t_s is not None:
            painter.setPen(theme.pen("accent", 2.5))
            painter.drawLine(QPointF(left, _TRACK_Y), QPointF(self.x_of(self._t_s), _TRACK_Y))
        self._paint_handle(painter)
        painter.end()

    def _paint_ends(self, painter: QPainter, right: float) -> None:
        font = self._theme.font(10)
        painter.setFont(font)
        painter.setPen(self._theme.colour("soft"))
        metrics, text = QFontMetrics(font), seconds_text(self._end_s)
        low = _TRACK_Y + _RADIUS + metrics.ascent() + 2
        painter.drawText(QPointF(_MARGIN - 3, low), "0")
        painter.drawText(QPointF(right + 6 - metrics.horizontalAdvance(text), low), text)

    def _paint_handle(self, painter: QPainter) -> None:
        theme, centre = self._theme, QPointF(self.x_of(self._t_s or 0.0), _TRACK_Y)
        painter.setPen(theme.pen("faint" if self._t_s is None else "accent", 2.5))
        painter.setBrush(theme.brush("surface"))
        painter.drawEllipse(centre, _RADIUS, _RADIUS)
        if self.hasFocus():
            paint_focus_ring(painter, QRectF(centre.x() - 10, _TRACK_Y - 10, 20, 20), theme, 9)
