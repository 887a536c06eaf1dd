"""The label of a part: id and rating, then its state by shape and its figures. It is never turned."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath

from app.canvas.look import PartLook, State
from app.canvas.symbols.drawing import draw_text, path, static_text
from app.canvas.symbols.geometry import Box, Terminal
from app.theme import Theme

TITLE_PX = 12.0
VALUE_PX = 11.0
_TITLE_HEIGHT = 16.0
_VALUE_HEIGHT = 15.0
_GAP = 4.0
_MARK = 8.0  # width of a state mark
_MARK_GAP = 6.0
_WORD_GAP = 5.0
_NOTHING = "–"

SHOW_FROM = 0.45


@dataclass(frozen=True)
class Label:
    """What a label says. ``title`` is the id, ``rating`` what follows it."""

    title: str
    rating: str
    state: State
    values: str

    @property
    def has_values(self) -> bool:
        """Whether there is a second line."""
        return bool(self.values) or self.state != "none"


def label_of(part_id: str, rating: str, look: PartLook) -> Label:
    """The label of a part."""
    return Label(part_id, rating, look.state, look.values)


def _title_width(label: Label, theme: Theme) -> float:
    bold = static_text(label.title, TITLE_PX, True, theme)[1]
    plain = static_text(label.rating, TITLE_PX, False, theme)[1] + _WORD_GAP if label.rating else 0.0
    return bold + plain


def _value_width(label: Label, theme: Theme) -> float:
    if not label.has_values:
        return 0.0
    mark = _MARK if label.state != "none" else 0.0
    text = static_text(label.values, VALUE_PX, False, theme)[1] if label.values else 0.0
    return mark + text + (_MARK_GAP if mark and text else 0.0)


SIDES = 4  # how many places a label can be asked for


def place_label(
    label: Label, body: Box, ends: Sequence[Terminal], theme: Theme, side: int = 0
) -> tuple[Box, float]:
    """The label's box, and how its lines are aligned in it: 0 left, 0.5 centred, 1 right.

    It stands under the symbol, or, where a wire leaves downwards, right, above or left of it; the first side
    without a wire is taken. ``side`` asks for the next best instead, up to ``SIDES``.
    """
    width = max(_title_width(label, theme), _value_width(label, theme))
    height = _TITLE_HEIGHT + (_VALUE_HEIGHT if label.has_values else 0.0)
    if body.width < 12:
        return _beside_a_dot(body, width, height, side)
    taken = {(round(end.dx), round(end.dy)) for end in ends if end.heater}
    ways = sorted(((0, 1), (1, 0), (0, -1), (-1, 0)), key=lambda way: way in taken)
    if len(taken) == SIDES:
        ways.insert(0, ways.pop())  # with wires on all sides left disturbs the least
    return _on_side(body, width, height, ways[side % SIDES])


def _on_side(body: Box, width: float, height: float, way: tuple[int, int]) -> tuple[Box, float]:
    centre_x, centre_y = (body.left + body.right) / 2, (body.top + body.bottom) / 2
    if way[1]:
        left = centre_x - width / 2
        top = body.bottom + _GAP if way[1] > 0 else body.top - _GAP - height
        return Box(left, top, left + width, top + height), 0.5
    top = centre_y - height / 2
    left = body.right + 2 * _GAP if way[0] > 0 else body.left - 2 * _GAP - width
    return Box(left, top, left + width, top + height), 0.0 if way[0] > 0 else 1.0


def _beside_a_dot(body: Box, width: float, height: float, side: int) -> tuple[Box, float]:
    """The corners around a joint: below or above, right or left."""
    is_left, is_above = side % SIDES in (1, 3), side % SIDES >= 2
    left = body.left - 2 - width if is_left else body.right + 2
    top = body.top - height if is_above else body.bottom
    return Box(left, top, left + width, top + height), float(is_left)


def paint_label(
    painter: QPainter,
    label: Label,
    box: Box,
    align: float,
    theme: Theme,
    ghost: Label | None = None,
    upwards: bool = False,
) -> None:
    """Paint a label into its box.

    The figures of a ghost stand in place of the present ones, in the accent's colour over a dashed line. Where
    there are none to stand in place of, they keep beyond the title: below it, or ``upwards`` of it.
    """
    y = box.top + _TITLE_HEIGHT / 2
    x = box.left + (box.width - _title_width(label, theme)) * align
    x += draw_text(painter, theme, (x, y), label.title, TITLE_PX, bold=True, align=0.0)
    draw_text(painter, theme, (x + _WORD_GAP, y), label.rating, TITLE_PX, align=0.0)
    y = box.top + _TITLE_HEIGHT + _VALUE_HEIGHT / 2
    if ghost is not None:
        if upwards and not label.has_values:
            y = box.top - _VALUE_HEIGHT / 2
        _paint_ghost(painter, ghost, label.has_values, box, align, y, theme)
    elif label.has_values:
        quiet = label.state in ("ok", "none", "stale")
        role = "soft" if quiet else theme.state_role(label.state)
        _paint_values(painter, label, _left(label, box, align, theme), y, role, theme)


def _left(label: Label, box: Box, align: float, theme: Theme) -> float:
    return box.left + (box.width - _value_width(label, theme)) * align


def _paint_values(painter: QPainter, label: Label, x: float, y: float, role: str, theme: Theme) -> None:
    if label.state != "none":
        paint_mark(painter, label.state, (x + _MARK / 2, y), theme)
        x += _MARK + _MARK_GAP
    draw_text(painter, theme, (x, y), label.values, VALUE_PX, role=role, align=0.0)


def _paint_ghost(
    painter: QPainter, ghost: Label, stands_in: bool, box: Box, align: float, y: float, theme: Theme
) -> None:
    """The figures that would be; a dash where there would be none any more."""
    shown = ghost if ghost.has_values or not stands_in else Label(ghost.title, ghost.rating, "none", _NOTHING)
    x = _left(shown, box, align, theme)
    _paint_values(painter, shown, x, y, "accent_text", theme)
    if shown.has_values:
        painter.setPen(theme.pen("accent", 1.0, (3.0, 2.0)))
        low = y + _VALUE_HEIGHT / 2
        painter.drawLine(QPointF(x, low), QPointF(x + _value_width(shown, theme), low))


def _triangle(up: bool) -> QPainterPath:
    y = 4.0 if up else -4.0
    return path(((-4.6, y), (4.6, y), (0.0, -y), (-4.6, y)))


_UP, _DOWN = _triangle(True), _triangle(False)


def paint_mark(painter: QPainter, state: State, at: tuple[float, float], theme: Theme) -> None:
    """Paint the mark of a state, 8 units wide, centred on ``at``.

    Ring = within tolerance, triangle up = over, triangle down = under, bar = cold or open, dotted ring = not
    yet solved; nothing where there is nothing to say.
    """
    role = theme.state_role(state)
    painter.save()
    painter.translate(QPointF(*at))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if state in ("ok", "stale"):
        painter.setPen(theme.pen(role, 1.6, (1.0, 1.15) if state == "stale" else ()))
        painter.drawEllipse(QPointF(0, 0), 3.4, 3.4)
    elif state in ("over", "under"):
        painter.fillPath(_UP if state == "over" else _DOWN, theme.brush(role))
    elif state == "cold":
        painter.fillRect(QRectF(-4.5, -1.6, 9, 3.2), theme.brush(role))
    painter.restore()
