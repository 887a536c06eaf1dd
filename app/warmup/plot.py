"""The plot of a warm-up: curves over time, limits, events, a cursor, and the instant that is looked at."""

from __future__ import annotations

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QWidget

from app.guard import guarded
from app.theme import Theme
from app.warmup.curves import Chart, Curve
from app.warmup.playhead import Playhead
from core.elements.tungsten import Array

_FAINT = 60  # of 255: curves that are not brought out
_FEW = 12  # so many curves can be told apart without bringing some out
_STEP = 1 / 100


@guarded
class Plot(pg.PlotWidget):  # type: ignore[misc]  # it comes without types
    """Shows a chart. ``pointed`` carries the time under the pointer, or None when it leaves."""

    pointed = Signal(object)

    def __init__(self, playhead: Playhead, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent, background=None)
        self._playhead = playhead
        self._theme = theme
        self._chart = Chart("", ())
        self._lines: list[pg.PlotDataItem] = []
        self._marks: list[pg.InfiniteLine] = []
        self._times: tuple[float, ...] = ()
        self._end_s = 1.0
        self._chosen: frozenset[str] = frozenset()
        self.setMenuEnabled(False)
        self.hideButtons()
        self.setMouseEnabled(x=False, y=False)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Warm-up over time"))
        self.setFrameShape(self.Shape.NoFrame)
        self.getPlotItem().getViewBox().setDefaultPadding(0.0)
        self._head = pg.InfiniteLine(angle=90, movable=True)
        self._head.hide()
        self._head.sigDragged.connect(self._on_dragged)
        self.addItem(self._head, ignoreBounds=True)
        playhead.changed.connect(self._show_head)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.setBackground(theme.colour("paper"))
        for side in ("left", "bottom"):
            axis = self.getAxis(side)
            axis.setPen(pg.mkPen(theme.faint, width=1))
            axis.setTextPen(theme.colour("soft"))
            axis.setTickFont(theme.font(11))
            axis.enableAutoSIPrefix(False)
            axis.setStyle(tickLength=-4)
        self.getAxis("left").setWidth(52)
        self._head.setPen(pg.mkPen(theme.accent, width=1))
        self._head.setHoverPen(pg.mkPen(theme.accent, width=2))
        self.show_chart(self._chart, self._end_s, self._times)

    def show_chart(self, chart: Chart, end_s: float, times: tuple[float, ...] = ()) -> None:
        """Show a chart up to ``end_s``, with marks at the times at which something switches."""
        self._chart, self._end_s, self._times = chart, end_s, times
        for item in (*self._lines, *self._marks):
            self.removeItem(item)
        self._marks = [self._event(t_s) for t_s in dict.fromkeys(times)][:400]
        self._marks += [self._level(level.name, level.value) for level in chart.levels]
        self._lines = [self._line(number, curve) for number, curve in enumerate(chart.curves)]
        for item in (*self._marks, *self._lines):
            self.addItem(item)
        for line in self._lines:
            # only once it has its place: before that it would ask the wrong one for the view
            line.setDownsampling(auto=True, method="peak")
        self._bring_out()
        self.setXRange(0.0, end_s, padding=0.0)
        self.setYRange(0.0, _top(chart), padding=0.0)

    def _line(self, number: int, curve: Curve) -> pg.PlotDataItem:
        pen = pg.mkPen(self.colour(number), width=1)
        return pg.PlotDataItem(curve.t_s, curve.values, pen=pen, connect="finite")

    def colour(self, number: int) -> QColor:
        """The colour of a curve by its number."""
        curves = self._theme.curves
        return QColor(curves[number % len(curves)])

    def _event(self, t_s: float) -> pg.InfiniteLine:
        colour = self._theme.colour("faint")
        colour.setAlpha(70)
        return pg.InfiniteLine(pos=t_s, angle=90, pen=pg.mkPen(colour, width=1))

    def _level(self, name: str, value: float) -> pg.InfiniteLine:
        options = {"position": 0.9, "color": self._theme.colour("over"), "anchors": [(0.5, 1), (0.5, 1)]}
        line = pg.InfiniteLine(
            pos=value, angle=0, pen=pg.mkPen(self._theme.over, width=1, style=Qt.PenStyle.DashLine),
            label=name, labelOpts=options,
        )  # fmt: skip
        line.label.setFont(self._theme.font(11))
        return line

    # what is brought out

    def bring_out(self, owners: frozenset[str]) -> None:
        """Bring out the curves of some parts; all of them where none belongs to any."""
        self._chosen = owners
        self._bring_out()

    def _bring_out(self) -> None:
        out = [curve.owner in self._chosen for curve in self._chart.curves]
        for number, line in enumerate(self._lines):
            colour = self.colour(number)
            if any(out) and not out[number]:
                colour.setAlpha(_FAINT)
            line.setPen(pg.mkPen(colour, width=1))
            line.setZValue(2 if out[number] else 1)

    # the instant

    def _show_head(self, t_s: float | None) -> None:
        self._head.setVisible(t_s is not None)
        if t_s is not None and not self._head.moving:
            self._head.setPos(t_s)

    def _on_dragged(self) -> None:
        self._playhead.set(min(max(float(self._head.value()), 0.0), self._end_s))

    def _time_at(self, event: QMouseEvent) -> float:
        at = self.getPlotItem().getViewBox().mapSceneToView(self.mapToScene(event.position().toPoint()))
        return min(max(float(at.x()), 0.0), self._end_s)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A press on the plot looks at that instant."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._playhead.set(self._time_at(event))
        super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Tell the time under the pointer; a drag moves the instant along."""
        t_s = self._time_at(event)
        self.pointed.emit(t_s)
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._playhead.set(t_s)
        super().mouseMoveEvent(event)

    def leaveEvent(self, event: object) -> None:
        """The pointer is gone."""
        self.pointed.emit(None)
        super().leaveEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Left and right move the instant by a hundredth of what is shown, with Shift by a tenth."""
        steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
        if event.key() in steps:
            large = 10 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1
            now = self._playhead.t_s or 0.0
            by = steps[Qt.Key(event.key())] * large * _STEP * self._end_s
            self._playhead.set(min(max(now + by, 0.0), self._end_s))
            event.accept()
            return
        super().keyPressEvent(event)

    def values_at(self, t_s: float) -> list[float]:
        """The value of every curve at a time."""
        return [_value(curve.t_s, curve.values, t_s) for curve in self._chart.curves]


def _value(times: Array, values: Array, t_s: float) -> float:
    """Between two points on a straight line; where something switches what holds after it."""
    after = int(np.searchsorted(times, t_s, side="right"))
    if after == 0:
        return float(values[0])
    if after >= len(times):
        return float(values[-1])
    t0, t1 = float(times[after - 1]), float(times[after])
    share = (t_s - t0) / (t1 - t0) if t1 > t0 else 0.0
    return float(values[after - 1] + share * (values[after] - values[after - 1]))


def _top(chart: Chart) -> float:
    highest = max((float(np.nanmax(curve.values, initial=0.0)) for curve in chart.curves), default=0.0)
    near = [level.value for level in chart.levels if level.value < 1.6 * max(highest, 1e-9)]
    return 1.15 * max([highest, *near, 1e-3])
