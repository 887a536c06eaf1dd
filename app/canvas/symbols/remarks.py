"""Notes and frames: words on the paper and titled outlines. They are never turned, and no wire ends on them."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from app.canvas.symbols.drawing import draw_text, keeps_words
from app.canvas.symbols.geometry import Box
from app.canvas.symbols.labels import SHOW_FROM
from app.theme import LIGHT, Theme, searchable
from core.sheet import Frame, Note

TEXT_PX = 12.0
_LINE = 17.0
_ROUND = 6.0
_TITLE_AT = 14.0
_TITLE_HALF = 9.0
_GAP = 5.0
_FAR_WIDTH = 3.0


def note_body(note: Note) -> Box:
    """The box of a note: as wide as it says, as high as its lines."""
    return Box(0.0, 0.0, note.width, _LINE * len(lines_of(note.text, note.width)))


def frame_body(frame: Frame) -> Box:
    """The outline of a frame."""
    return Box(0.0, 0.0, frame.width, frame.height)


def title_of(frame: Frame) -> str:
    """What stands on the upper edge: the title, or the id where there is none."""
    return frame.title or frame.id


def title_box(frame: Frame) -> Box:
    """Where the title stands on the upper edge; by it a frame is taken hold of."""
    # the font is the same in both looks
    width = QFontMetricsF(LIGHT.font(TEXT_PX, bold=bool(frame.title))).horizontalAdvance(title_of(frame))
    right = min(_TITLE_AT + width + 2 * _GAP, max(frame.width, _TITLE_AT + 2 * _GAP))
    return Box(_TITLE_AT, -_TITLE_HALF, right, _TITLE_HALF)


@lru_cache(maxsize=1024)
def lines_of(text: str, width: float) -> tuple[str, ...]:
    """The lines of a text broken at a width; a word that is too long is broken where it must be."""
    from PySide6.QtGui import QTextLayout, QTextOption  # noqa: PLC0415 - few sheets hold notes

    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    layout = QTextLayout(text.replace("\n", "\u2028"), LIGHT.font(TEXT_PX))
    layout.setTextOption(option)
    # Qt counts in halves of UTF-16
    halves = text.replace("\n", "\u2028").encode("utf-16-le")
    found = []
    layout.beginLayout()
    while (line := layout.createLine()).isValid():
        line.setLineWidth(width)
        begin, end = 2 * line.textStart(), 2 * (line.textStart() + line.textLength())
        found.append(halves[begin:end].decode("utf-16-le").rstrip("\u2028 "))
    layout.endLayout()
    return tuple(found) or ("",)


def paint_note(painter: QPainter, note: Note, theme: Theme, scale: float) -> None:
    """Paint the words on plain paper; from afar a stroke for each line."""
    body = note_body(note)
    painter.fillRect(QRectF(0, 0, body.width, body.height), theme.brush("paper"))
    text = note.text or QCoreApplication.translate("canvas", "empty note")
    font = theme.font(TEXT_PX)
    metrics = QFontMetricsF(font)
    painter.setFont(searchable(font) if keeps_words(painter) else font)
    painter.setPen(theme.colour("ink" if note.text else "soft"))
    for number, line in enumerate(lines_of(text, note.width)):
        middle = _LINE * (number + 0.5)
        if scale >= SHOW_FROM:
            base = middle + (metrics.ascent() - metrics.descent()) / 2
            painter.drawText(QPointF(0.0, base), line)
        elif line:
            painter.setPen(theme.pen("faint", _FAR_WIDTH))
            painter.drawLine(QPointF(0.0, middle), QPointF(metrics.horizontalAdvance(line), middle))


def paint_frame(painter: QPainter, frame: Frame, theme: Theme, scale: float) -> None:
    """Paint the outline with its title on the upper edge."""
    painter.setPen(theme.pen("edge", 1.0 if scale >= SHOW_FROM else theme.heavy_width))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(QRectF(0, 0, frame.width, frame.height), _ROUND, _ROUND)
    if scale < SHOW_FROM:
        return
    box = title_box(frame)
    painter.fillRect(QRectF(box.left, box.top, box.width, box.height), theme.brush("paper"))
    painter.save()
    painter.setClipRect(QRectF(box.left, box.top, box.width, box.height), Qt.ClipOperation.IntersectClip)
    role = "ink" if frame.title else "soft"
    at = (box.left + _GAP, 0.0)
    draw_text(painter, theme, at, title_of(frame), TEXT_PX, role=role, bold=bool(frame.title), align=0.0)
    painter.restore()
