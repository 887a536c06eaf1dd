"""The title block of a picture: what the sheet is, for which mains, what is shown, and a line for the date."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, QLineF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from app.canvas.symbols.drawing import draw_text
from app.panes.mains_slider import volts_text
from app.theme import Theme
from app.viewpoint import Instant
from app.warmup.moments import after_switching_on
from core.results import Condition
from core.sheet import Sheet
from core.units import THIN_SPACE, format_number, format_percent

WIDTH, HEIGHT = 480.0, 74.0
_ROWS = (0.0, 28.0, 51.0, HEIGHT)
_SPLIT = 300.0
_PAD = 9.0


def _tr(text: str) -> str:
    return QCoreApplication.translate("title block", text)


@dataclass(frozen=True)
class TitleBlock:
    """The words of a title block."""

    title: str
    mains: str
    shown: str
    date: str
    program: str


def title_block(sheet: Sheet, condition: Condition | None, instant: Instant | None = None) -> TitleBlock:
    """The words for a sheet at a condition, or at an instant of a warm-up; without a condition no figures are shown.

    The date is left to the user's pen.
    """
    mains = sheet.mains
    band = _tr("Mains {volts}, {hertz}, {low} to {high}").format(
        volts=volts_text(mains.nominal_v),
        hertz=f"{format_number(mains.hz, 0)}{THIN_SPACE}Hz",
        low=format_percent(mains.low_pct, 0),
        high=format_percent(mains.high_pct, 0),
    )
    if condition is None:
        shown = _tr("Wiring only")
    elif instant is not None:
        shown = f"{after_switching_on(instant.t_s)}, {volts_text(instant.mains_v)}"
    elif condition.cold:
        shown = _tr("At switch-on, {volts}").format(volts=volts_text(condition.mains_v))
    else:
        shown = _tr("Hot, at {volts}").format(volts=volts_text(condition.mains_v))
    return TitleBlock(
        sheet.title.strip() or _tr("Untitled"), band, shown, _tr("Date"), _tr("Drawn with Heaterloom")
    )


def paint_title_block(
    painter: QPainter, block: TitleBlock, corner: tuple[float, float], theme: Theme
) -> None:
    """Paint a block with its upper left corner at a point."""
    left, top = corner
    painter.setPen(theme.pen("ink", 1.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(QRectF(left, top, WIDTH, HEIGHT))
    for y in _ROWS[1:-1]:
        painter.drawLine(QLineF(left, top + y, left + WIDTH, top + y))
    painter.drawLine(QLineF(left + _SPLIT, top + _ROWS[1], left + _SPLIT, top + HEIGHT))
    room = WIDTH - 2 * _PAD
    title = QFontMetricsF(theme.font(14, bold=True)).elidedText(
        block.title, Qt.TextElideMode.ElideRight, room
    )
    cells = (
        (title, left, 0, 14.0, "ink", True),
        (block.mains, left, 1, 11.0, "ink", False),
        (block.shown, left + _SPLIT, 1, 11.0, "ink", False),
        (block.date, left, 2, 11.0, "soft", False),
        (block.program, left + _SPLIT, 2, 11.0, "soft", False),
    )
    for text, x, row, px, role, bold in cells:
        middle = top + (_ROWS[row] + _ROWS[row + 1]) / 2
        draw_text(painter, theme, (x + _PAD, middle), text, px, role=role, bold=bold, align=0.0)
