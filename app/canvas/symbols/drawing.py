"""What a symbol is made of: paths and short texts that are built once and painted often.

A drawing knows no colour. It is built unturned; the painter turns its lines, while its texts are only moved.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPaintEngine, QPainter, QPainterPath, QStaticText, QTransform

from app.canvas.symbols.geometry import Box, Point, Terminal, turn_point
from app.theme import Theme, searchable


@dataclass(frozen=True)
class Text:
    """A short text centred on a point of the drawing, ``px`` high."""

    x: float
    y: float
    text: str
    px: float = 11.0
    role: str = "ink"
    bold: bool = False


@dataclass(frozen=True, eq=False)
class Drawing:
    """The unturned picture of one variant of a symbol.

    ``ground`` is filled with the surface colour, ``lines`` and ``thin`` are stroked, ``solid`` is filled with
    ink. ``shape`` is the outline that stands for the symbol when it is too small to read.
    """

    terminals: tuple[Terminal, ...]
    body: Box
    lines: QPainterPath
    shape: QPainterPath
    ground: QPainterPath = field(default_factory=QPainterPath)
    thin: QPainterPath = field(default_factory=QPainterPath)
    solid: QPainterPath = field(default_factory=QPainterPath)
    texts: tuple[Text, ...] = ()


def path(*strokes: tuple[Point, ...]) -> QPainterPath:
    """A path of straight strokes; one that ends where it began is closed."""
    result = QPainterPath()
    for stroke in strokes:
        result.moveTo(*stroke[0])
        for point in stroke[1:]:
            result.lineTo(*point)
        if stroke[0] == stroke[-1] and len(stroke) > 2:
            result.closeSubpath()
    return result


def rectangle(left: float, top: float, right: float, bottom: float, radius: float = 0.0) -> QPainterPath:
    """The path of a rectangle."""
    result = QPainterPath()
    area = QRectF(left, top, right - left, bottom - top)
    if radius:
        result.addRoundedRect(area, radius, radius)
    else:
        result.addRect(area)
    return result


def circle(x: float, y: float, radius: float) -> QPainterPath:
    """The path of a circle."""
    result = QPainterPath()
    result.addEllipse(QPointF(x, y), radius, radius)
    return result


def joined(*paths: QPainterPath) -> QPainterPath:
    """Several paths as one."""
    result = QPainterPath()
    for each in paths:
        result.addPath(each)
    return result


@lru_cache(maxsize=4096)
def static_text(text: str, px: float, bold: bool, theme: Theme) -> tuple[QStaticText, float, float]:
    """A text laid out once, with its width and height."""
    font = theme.font(px, bold)
    laid = QStaticText(text)
    laid.setTextFormat(Qt.TextFormat.PlainText)
    laid.setPerformanceHint(QStaticText.PerformanceHint.AggressiveCaching)
    laid.prepare(QTransform(), font)
    metrics = QFontMetricsF(font)
    return laid, metrics.horizontalAdvance(text), metrics.height()


def keeps_words(painter: QPainter) -> bool:
    """Whether the painter writes a file whose text shall stay text that can be searched and copied."""
    return painter.paintEngine().type() in (QPaintEngine.Type.SVG, QPaintEngine.Type.Pdf)


def draw_laid(painter: QPainter, corner: QPointF, laid: QStaticText, as_words: bool) -> None:
    """Draw a laid-out text with its top left corner at ``corner``, in the painter's font.

    ``as_words`` draws it anew and with plain figures: in a PDF file a text drawn from stored glyphs, or with
    figures of equal width, cannot be searched.
    """
    if as_words:
        font = searchable(painter.font())
        painter.setFont(font)
        ascent = QFontMetricsF(font).ascent()
        painter.drawText(QPointF(corner.x(), corner.y() + ascent), laid.text())
    else:
        painter.drawStaticText(corner, laid)


def draw_text(
    painter: QPainter,
    theme: Theme,
    at: Point,
    text: str,
    px: float,
    *,
    role: str = "ink",
    bold: bool = False,
    align: float = 0.5,
) -> float:
    """Draw a text whose middle line runs through ``at``; ``align`` 0 starts there, 1 ends there.

    Answers the width drawn.
    """
    if not text:
        return 0.0
    laid, width, height = static_text(text, px, bold, theme)
    painter.setFont(theme.font(px, bold))
    painter.setPen(theme.colour(role))
    corner = QPointF(at[0] - width * align, at[1] - height / 2)
    draw_laid(painter, corner, laid, keeps_words(painter))
    return width


def paint_drawing(
    painter: QPainter, drawing: Drawing, turn: int, theme: Theme, letters: bool, mirror: bool = False
) -> None:
    """Paint a drawing, flipped if need be and turned about the origin; its texts stay upright and need ``letters``."""
    if turn or mirror:
        painter.save()
        painter.rotate(turn)
        painter.scale(-1.0 if mirror else 1.0, 1.0)
    painter.fillPath(drawing.ground, theme.brush("surface"))
    if not drawing.solid.isEmpty():
        painter.fillPath(drawing.solid, theme.brush("ink"))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(theme.pen("ink"))
    painter.drawPath(drawing.lines)
    if not drawing.thin.isEmpty():
        painter.setPen(theme.pen("ink", 1.0, (3.0, 2.5)))
        painter.drawPath(drawing.thin)
    if turn or mirror:
        painter.restore()
    if letters:
        for text in drawing.texts:
            at = turn_point(-text.x if mirror else text.x, text.y, turn)
            draw_text(painter, theme, at, text.text, text.px, role=text.role, bold=text.bold)


def paint_shape(painter: QPainter, drawing: Drawing, turn: int, theme: Theme, mirror: bool = False) -> None:
    """Paint only the filled outline, for a part too small to read."""
    painter.save()
    painter.rotate(turn)
    painter.scale(-1.0 if mirror else 1.0, 1.0)
    painter.setPen(theme.pen("ink", theme.heavy_width))
    painter.setBrush(theme.brush("surface"))
    painter.drawPath(drawing.shape)
    painter.restore()
