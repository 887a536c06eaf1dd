"""The mains slider: the band of the sheet's mains drawn as a scale, with a handle that says its volts."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QSlider, QWidget

from app.guard import guarded
from app.panes.controls import paint_focus_ring
from app.panes.figures import exact_text
from app.theme import Theme
from core.sheet import Mains
from core.units import Dimension

_TENTHS = 10  # the slider counts tenths of a volt
_SNAP_PX = 6
_MARGIN = 40
_TRACK_Y = 25
_RADIUS = 7


def volts_text(volts: float) -> str:
    """Mains volts to a tenth: ``248 V``, ``103.5 V``."""
    return exact_text(round(volts, 1), Dimension.VOLTS)


@guarded
class MainsSlider(QSlider):
    """Chooses mains volts within the sheet's band: dragged in whole volts, held at low, nominal and high.

    ``chosen`` carries the volts that the user chose; setting them from outside is silent.
    """

    chosen = Signal(float)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._theme = theme
        self._mains = Mains()
        self._volts = self._mains.nominal_v
        self._before: float | None = None  # where the handle stood when it was taken up
        self.setSingleStep(_TENTHS)
        self.setPageStep(5 * _TENTHS)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Mains volts"))
        self.valueChanged.connect(self._on_value)
        self.set_mains(self._mains, self._volts)

    @property
    def volts(self) -> float:
        """The volts at which the handle stands."""
        return self._volts

    @property
    def mains(self) -> Mains:
        """The mains whose band is shown."""
        return self._mains

    @property
    def stops(self) -> tuple[float, float, float]:
        """Low, nominal and high mains volts."""
        return self._mains.low_v, self._mains.nominal_v, self._mains.high_v

    def set_mains(self, mains: Mains, volts: float) -> None:
        """Show another band, with the handle at ``volts``."""
        self._mains = mains
        self._volts = volts
        blocked = self.blockSignals(True)
        self.setRange(round(mains.low_v * _TENTHS), round(mains.high_v * _TENTHS))
        self.setValue(round(volts * _TENTHS))
        self.blockSignals(blocked)
        self.setAccessibleDescription(volts_text(volts))
        self.update()

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.update()

    def _on_value(self, tenths: int) -> None:
        """Turn tenths back into volts; a stop gives its exact volts, whatever its fractions."""
        volts = tenths / _TENTHS
        for stop in self.stops:
            if round(stop * _TENTHS) == tenths:
                volts = stop
        if volts != self._volts:
            self._volts = volts
            self.setAccessibleDescription(volts_text(volts))
            self.update()
            self.chosen.emit(volts)

    def choose(self, volts: float) -> None:
        """Move the handle to ``volts`` and announce it."""
        self.setValue(round(volts * _TENTHS))

    def sizeHint(self) -> QSize:
        """Wide enough to tell single volts apart."""
        return QSize(330, 36)

    def minimumSizeHint(self) -> QSize:
        """Wide enough for the three labels below."""
        return QSize(230, 36)

    def x_of(self, volts: float) -> float:
        """Where a number of volts lies on the scale, in pixels from the left."""
        low, _, high = self.stops
        share = 0.5 if high <= low else (volts - low) / (high - low)
        return _MARGIN + share * (self.width() - 2 * _MARGIN)

    def _volts_at(self, x: float) -> float:
        for stop in (self._mains.nominal_v, self._mains.low_v, self._mains.high_v):
            if abs(self.x_of(stop) - x) <= _SNAP_PX:
                return stop
        low, _, high = self.stops
        span = max(self.width() - 2 * _MARGIN, 1)
        return float(round(min(max(low + (x - _MARGIN) / span * (high - low), low), high)))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """The handle comes to the pointer."""
        if event.button() == Qt.MouseButton.LeftButton:
            self.setSliderDown(True)
            self._before = self._volts
            self.choose(self._volts_at(event.position().x()))
            event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """The handle follows the pointer."""
        if self.isSliderDown():
            self.choose(self._volts_at(event.position().x()))
            event.accept()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """The handle stays."""
        self._end_drag()
        event.accept()

    def _end_drag(self) -> None:
        self.setSliderDown(False)
        self._before = None
        self.update()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A double click goes back to nominal mains."""
        self.choose(self._mains.nominal_v)
        event.accept()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """The wheel acts only where the keyboard does, so that scrolling past changes nothing."""
        if self.hasFocus():
            super().wheelEvent(event)
        else:
            event.ignore()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows move by a volt and Page keys by five; Home and End go to the ends of the band.

        Escape puts a handle that is being dragged back where it stood.
        """
        up, down = (Qt.Key.Key_Up, Qt.Key.Key_Right), (Qt.Key.Key_Down, Qt.Key.Key_Left)
        key = event.key()
        steps = {
            **dict.fromkeys(up, 1),
            **dict.fromkeys(down, -1),
            Qt.Key.Key_PageUp: 5,
            Qt.Key.Key_PageDown: -5,
        }
        low, _, high = self.stops
        if key in steps:
            self.choose(min(max(self._volts + steps[Qt.Key(key)], low), high))
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            self.choose(low if key == Qt.Key.Key_Home else high)
        elif key == Qt.Key.Key_Escape and self._before is not None:
            self.choose(self._before)
            self._end_drag()
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the band, its three stops, the handle and the handle's volts."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme, (low, nominal, high) = self._theme, self.stops
        left, right = self.x_of(low), self.x_of(high)
        painter.setPen(theme.pen("faint", 1.5))
        painter.drawLine(QPointF(left - 20, _TRACK_Y), QPointF(right + 20, _TRACK_Y))
        painter.setPen(theme.pen("ink", 3))
        painter.drawLine(QPointF(left, _TRACK_Y), QPointF(right, _TRACK_Y))
        painter.setPen(theme.pen("ink", 1.5))
        for stop in (low, nominal, high):
            x = self.x_of(stop)
            painter.drawLine(QPointF(x, _TRACK_Y - 6), QPointF(x, _TRACK_Y + 6))
        if self._before is not None and self._before != self._volts:
            painter.setPen(theme.pen("accent", 1.5, (2.0, 1.5)))
            painter.drawEllipse(QPointF(self.x_of(self._before), _TRACK_Y), _RADIUS, _RADIUS)
        self._paint_handle(painter)
        painter.end()

    def _paint_handle(self, painter: QPainter) -> None:
        theme, centre = self._theme, QPointF(self.x_of(self._volts), _TRACK_Y)
        painter.setPen(theme.pen("accent", 2.5))
        painter.setBrush(theme.brush("surface"))
        painter.drawEllipse(centre, _RADIUS, _RADIUS)
        if self.hasFocus():
            ring = QRectF(centre.x() - 11, _TRACK_Y - 11, 22, 22)
            paint_focus_ring(painter, ring, theme, 10)
        font = theme.font(12, bold=True)
        text = self.tr("mains {volts}").format(volts=volts_text(self._volts))
        width = QFontMetrics(font).horizontalAdvance(text)
        x = min(max(centre.x() - width / 2, 0), self.width() - width)
        painter.setFont(font)
        painter.setPen(theme.colour("accent_text"))
        painter.drawText(QPointF(x, 12), text)
