"""A warm-up drawn over time, for files and paper: the same lines in SVG, PNG and PDF."""

from __future__ import annotations

from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QApplication

from app.files import write_atomically
from app.pictures.files import png_bytes, svg_bytes
from app.pictures.options import PictureOptions
from app.pictures.ticks import ticks, time_ticks
from app.pictures.warmup_panels import Curve, Panel, panels
from app.speech import spoken
from app.theme import DARK, LIGHT, Theme, searchable
from core.elements.tungsten import Array
from core.switch_on import SwitchOn
from core.warmup_report import verdict

WIDTH = 960.0
_HEAD, _PANEL, _STRIP, _FOOT = 84.0, 170.0, 26.0, 44.0
_LEFT, _RIGHT, _GAP = 64.0, 150.0, 30.0
_LABEL = 13.0
_DPI, _PDF_DPI = 96, 1200


class WarmupPlot:
    """One condition of a warm-up as a picture; ``width`` and ``height`` in pixels at its actual size."""

    def __init__(self, answer: SwitchOn, condition: str, dark: bool = False) -> None:
        self.theme: Theme = DARK if dark else LIGHT
        self.options = PictureOptions(dark=dark)
        self.title = answer.sheet.title
        self._run = answer.runs[condition]
        self._says = spoken(verdict(self._run.summary, self._run.end_s))
        self._panels = panels(self._run)
        self._t_s: Array = self._run.traces().t_s
        self._end_s = max(self._run.end_s, float(self._t_s[-1]), 1e-9)

    @property
    def width(self) -> float:
        """Pixels from left to right."""
        return WIDTH

    @property
    def height(self) -> float:
        """Pixels from top to bottom."""
        return _HEAD + sum(self._height(panel) + _GAP for panel in self._panels) + _FOOT

    @staticmethod
    def _height(panel: Panel) -> float:
        return _STRIP * len(panel.curves) if panel.is_strip else _PANEL

    def paint(self, painter: QPainter, tinted: bool = True) -> None:
        """Paint it with its corner at the painter's origin; ``tinted`` lays the colour of the sheet below."""
        painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
        if tinted:
            painter.fillRect(QRectF(0, 0, self.width, self.height), self.theme.brush("paper"))
        self._paint_head(painter)
        top = _HEAD
        for panel in self._panels:
            area = QRectF(_LEFT, top + 18, WIDTH - _LEFT - _RIGHT, self._height(panel) - 8)
            self._paint_panel(painter, panel, area)
            top += self._height(panel) + _GAP
        self._paint_time(painter, top)

    def _paint_head(self, painter: QPainter) -> None:
        self._text(painter, 24, 32, self._fitting(self.title, 18, bold=True), 18, bold=True)
        self._text(painter, 24, 56, self._fitting(self._says, 13), 13, "soft")

    def _fitting(self, text: str, px: float, bold: bool = False) -> str:
        """The text, cut at its end where it is wider than the picture."""
        metrics = QFontMetricsF(self._font(px, bold))
        return metrics.elidedText(text, Qt.TextElideMode.ElideRight, WIDTH - 48)

    def _font(self, px: float, bold: bool = False) -> QFont:
        # the letters that files have, in every kind of picture: names keep their places
        return searchable(self.theme.font(px, bold))

    def _text(
        self,
        painter: QPainter,
        x: float,
        y: float,
        text: str,
        px: float,
        role: str = "ink",
        bold: bool = False,
    ) -> None:
        painter.setFont(self._font(px, bold))
        painter.setPen(self.theme.colour(role))
        painter.drawText(QPointF(x, y), text)

    def _x(self, area: QRectF, t_s: float) -> float:
        return area.left() + area.width() * t_s / self._end_s

    def _paint_panel(self, painter: QPainter, panel: Panel, area: QRectF) -> None:
        unit = f" ({panel.unit})" if panel.unit else ""
        self._text(painter, _LEFT, area.top() - 7, panel.title + unit, 12, bold=True)
        self._paint_events(painter, area)
        if panel.is_strip:
            self._paint_strip(painter, panel, area)
            return
        self._paint_grid(painter, panel, area)
        painter.save()
        painter.setClipRect(area.adjusted(0, -2, 0, 2))
        for index, curve in enumerate(panel.curves):
            painter.setPen(self._pen(index))
            painter.drawPolyline(self._line(curve, panel.top, area))
        painter.restore()
        self._paint_names(painter, panel, area)

    def _pen(self, index: int) -> QPen:
        pen = QPen(self._colour(index), self.theme.line_width)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        return pen

    def _colour(self, index: int) -> QColor:
        return QColor(self.theme.curves[index % len(self.theme.curves)])

    def _line(self, curve: Curve, top: float, area: QRectF) -> QPolygonF:
        x = area.left() + area.width() * self._t_s / self._end_s
        y = area.bottom() - area.height() * curve.values / top
        keep = _worth_drawing(x, y)
        return QPolygonF([QPointF(*point) for point in zip(x[keep].tolist(), y[keep].tolist(), strict=True)])

    def _paint_grid(self, painter: QPainter, panel: Panel, area: QRectF) -> None:
        metrics = QFontMetricsF(self._font(11))
        for value in ticks(0.0, panel.top, 5):
            y = area.bottom() - area.height() * value / panel.top
            painter.setPen(self.theme.pen("line", 0.5))
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y))
            text = f"{value:g}"
            self._text(painter, area.left() - 8 - metrics.horizontalAdvance(text), y + 4, text, 11, "soft")
        self._paint_marks(painter, panel, area)

    def _paint_marks(self, painter: QPainter, panel: Panel, area: QRectF) -> None:
        """Levels as broken lines; their names above them, moved apart where they would meet."""
        metrics = QFontMetricsF(self._font(11))
        marks = [mark for mark in panel.marks if mark.value <= panel.top]
        levels = [area.bottom() - area.height() * mark.value / panel.top for mark in marks]
        for y in levels:
            painter.setPen(self.theme.pen("over", 1.0, (5.0, 3.0)))
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y))
        for index, y in spread(levels, _LABEL, area.top(), area.bottom()).items():
            name = marks[index].name
            at = area.right() - metrics.horizontalAdvance(name) - 4
            self._text(painter, at, y - 4, name, 11, "over")

    def _paint_names(self, painter: QPainter, panel: Panel, area: QRectF) -> None:
        """Each curve's name at its end, moved apart where they would meet."""
        ends = [area.bottom() - area.height() * float(curve.values[-1]) / panel.top for curve in panel.curves]
        for index, y in spread(ends, _LABEL, area.top(), area.bottom() + 6).items():
            painter.setFont(self._font(11))
            name = QFontMetricsF(self._font(11)).elidedText(
                panel.curves[index].name, Qt.TextElideMode.ElideRight, _RIGHT - 40
            )
            painter.setPen(self._pen(index))
            painter.drawLine(QPointF(area.right() + 4, ends[index]), QPointF(area.right() + 16, y))
            self._text(painter, area.right() + 20, y + 4, name, 11)

    def _paint_strip(self, painter: QPainter, panel: Panel, area: QRectF) -> None:
        for index, curve in enumerate(panel.curves):
            y = area.top() + _STRIP * index
            painter.setPen(self.theme.pen("line", 0.5))
            painter.drawLine(QPointF(area.left(), y + 16), QPointF(area.right(), y + 16))
            for begin, end in _spans(curve.values > 0.5, self._t_s):
                left, right = self._x(area, begin), self._x(area, end)
                painter.fillRect(QRectF(left, y + 4, max(right - left, 1.0), 12), self._colour(index))
            self._text(painter, area.right() + 20, y + 14, curve.name, 11)

    def _paint_events(self, painter: QPainter, area: QRectF) -> None:
        painter.setPen(self.theme.pen("faint", 0.5))
        for t_s in sorted({event.t_s for event in self._run.summary.events}):
            x = self._x(area, t_s)
            painter.drawLine(QPointF(x, area.bottom()), QPointF(x, area.bottom() + 5))

    def _paint_time(self, painter: QPainter, top: float) -> None:
        area = QRectF(_LEFT, top, WIDTH - _LEFT - _RIGHT, 1)
        metrics = QFontMetricsF(self._font(11))
        for value, text in time_ticks(self._end_s):
            x = self._x(area, value)
            self._text(painter, x - metrics.horizontalAdvance(text) / 2, top + 4, text, 11, "soft")


def _worth_drawing(x: Array, y: Array) -> NDArray[np.intp]:
    """Places of the points that a line at a tenth of a pixel needs; ends and jumps are always among them."""
    near = (np.abs(np.diff(x)) < 0.1) & (np.abs(np.diff(y)) < 0.1)
    keep = np.ones(len(x), dtype=bool)
    keep[1:-1] = ~(near[:-1] & near[1:])
    return np.flatnonzero(keep)


def _spans(on: NDArray[np.bool_], t_s: Array) -> list[tuple[float, float]]:
    """From when to when something is on."""
    edges = np.flatnonzero(np.diff(np.concatenate(([0], np.asarray(on, dtype=int), [0]))))
    last = len(t_s) - 1
    return [
        (float(t_s[begin]), float(t_s[min(end, last)]))
        for begin, end in zip(edges[::2], edges[1::2], strict=True)
    ]


def spread(wanted: list[float], apart: float, top: float, bottom: float) -> dict[int, float]:
    """Heights near those wanted that are at least ``apart``, between ``top`` and ``bottom``, by index.

    Where there are more than fit, the last ones are left out.
    """
    most = max(1, int((bottom - top) / apart))
    order = sorted(range(min(len(wanted), most)), key=lambda index: wanted[index])
    placed: dict[int, float] = {}
    floor = top
    for index in order:
        placed[index] = max(wanted[index], floor)
        floor = placed[index] + apart
    ceiling = bottom
    for index in reversed(order):
        placed[index] = min(placed[index], ceiling)
        ceiling = placed[index] - apart
    return placed


def plot_bytes(plot: WarmupPlot, kind: str) -> bytes:
    """A plot as the bytes of a ``.svg``, ``.png`` or ``.pdf`` file."""
    return {".svg": svg_bytes, ".png": png_bytes, ".pdf": _pdf}[kind](plot)


def write_warmup_picture(answer: SwitchOn, condition: str, target: Path, dark: bool = False) -> None:
    """Draw one condition of a warm-up into a file; its ending decides the kind.

    Raises
    ------
    app.files.WriteError
        When the file cannot be written.
    """
    application = QApplication.instance() or QApplication(["heaterloom"])
    write_atomically(target, plot_bytes(WarmupPlot(answer, condition, dark), target.suffix.lower()))
    del application


def _pdf(plot: WarmupPlot) -> bytes:
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setTitle(plot.title)
    writer.setCreator("Heaterloom")
    writer.setResolution(_PDF_DPI)
    points = QSizeF(plot.width * 72 / _DPI, plot.height * 72 / _DPI)
    page = QPageSize(points, QPageSize.Unit.Point, "", QPageSize.SizeMatchPolicy.ExactMatch)
    upright = QPageLayout.Orientation.Portrait
    writer.setPageLayout(QPageLayout(page, upright, QMarginsF(0, 0, 0, 0)))
    painter = QPainter(writer)
    painter.scale(_PDF_DPI / _DPI, _PDF_DPI / _DPI)
    plot.paint(painter)
    painter.end()
    buffer.close()
    return bytes(data.data())
