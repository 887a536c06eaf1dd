"""The tube socket from its wiring side: outline, pins, numbers, and the heater between its pins."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPainterPath, QPen, QStaticText

from app.canvas.look import PartLook
from app.canvas.symbols.bases import OUTLINE, Base, Mark, Pin, angle_of, place, socket_for
from app.canvas.symbols.drawing import (
    circle,
    draw_laid,
    draw_text,
    joined,
    keeps_words,
    path,
    rectangle,
    static_text,
)
from app.canvas.symbols.geometry import Box, Point, Terminal, turn_point
from app.canvas.symbols.glow import glow
from app.canvas.symbols.heater import heater_paths
from app.theme import Theme
from core.catalogue.types import TubeType
from core.sheet import Tube

_NUMBER_RADIUS = 48.5
_CLEAR_OF_WIRE = 7.0
_LINE_NUMBER = 18.0
REACH = 53.0  # from the middle to beyond the numbers
_UNKNOWN = Base(
    "unknown", tuple(Pin(str(number), *place(number * 36.0)) for number in range(1, 10)), is_known=False
)

PAINT_NUMBERS_FROM = 0.6
PAINT_VALUES_FROM = 1.0


def socket_of(kind: TubeType | None) -> Base:
    """The socket of a type; nine pins in no true place for a type that is not known."""
    return _UNKNOWN if kind is None else socket_for(kind.base, kind.heater_pins)


def _way_out(x: float, y: float) -> Point:
    """Where a wire leaves a pin: up in the upper half where it is steep, else sideways.

    Nothing leaves downwards, as the label stands there.
    """
    if y < 0 and abs(y) >= abs(x) * 0.95:
        return 0.0, -1.0
    return (1.0, 0.0) if x > 0 else (-1.0, 0.0)


@lru_cache(maxsize=512)
def socket_terminals(base: Base, heater_pins: tuple[str, ...], turn: int) -> tuple[Terminal, ...]:
    """Every pin of a turned socket as a terminal."""
    result = []
    for pin in base.pins:
        x, y = turn_point(pin.x, pin.y, turn)
        dx, dy = turn_point(0.0, -1.0, turn) if base.is_line else _way_out(x, y)
        result.append(Terminal(pin.name, x, y, dx, dy, pin.name in heater_pins))
    return tuple(result)


def tube_terminals(part: Tube, kind: TubeType | None) -> tuple[Terminal, ...]:
    """The terminals of a tube: all pins of its base."""
    heater_pins = () if kind is None else kind.heater_pins
    return socket_terminals(socket_of(kind), heater_pins, part.turn)


def _number_place(terminal: Terminal) -> Point:
    """Where a pin's number stands: outside the outline and beside its own wire, not under it."""
    distance = math.hypot(terminal.x, terminal.y) or 1.0
    x, y = terminal.x / distance * _NUMBER_RADIUS, terminal.y / distance * _NUMBER_RADIUS
    if terminal.dy:
        side = 1.0 if x - terminal.x > -0.5 else -1.0
        if abs(x - terminal.x) < _CLEAR_OF_WIRE:
            x = terminal.x + side * _CLEAR_OF_WIRE
    elif abs(y - terminal.y) < _CLEAR_OF_WIRE:
        side = 1.0 if y - terminal.y > 0.5 else -1.0
        y = terminal.y + side * _CLEAR_OF_WIRE
    return x, y


@lru_cache(maxsize=512)
def number_places(terminals: tuple[Terminal, ...], in_line: bool = False) -> tuple[Point, ...]:
    """Where the numbers of all pins stand, in their order, clear of the wires of the heater pins."""
    if in_line:
        return tuple((t.x - t.dx * _LINE_NUMBER, t.y - t.dy * _LINE_NUMBER) for t in terminals)
    return tuple(_dodge(_number_place(terminal), terminals) for terminal in terminals)


def _dodge(number: Point, terminals: tuple[Terminal, ...]) -> Point:
    """Move a number off a heater wire that leaves sideways under it."""
    x, y = number
    for end in terminals:
        if end.heater and end.dx * x > 0 and abs(y - end.y) < _CLEAR_OF_WIRE - 1:
            y = end.y + math.copysign(_CLEAR_OF_WIRE - 1, y - end.y)
    return x, y


def socket_body(base: Base) -> Box:
    """The box of a socket with its numbers."""
    if base.is_line:
        return Box(-OUTLINE, -18.0, OUTLINE, 29.0)
    return Box(-REACH, -REACH, REACH, REACH)


@lru_cache(maxsize=64)
def outline(base: Base) -> QPainterPath:
    """The outline of an unturned socket."""
    if base.is_line:
        return rectangle(-OUTLINE, -16, OUTLINE, 16, 9)
    if base.mark == "side":
        return circle(0, 0, OUTLINE - 4)
    return circle(0, 0, OUTLINE)


def _key() -> QPainterPath:
    ring = QPainterPath()
    ring.arcMoveTo(QRectF(-9, -9, 18, 18), -75)
    ring.arcTo(QRectF(-9, -9, 18, 18), -75, 330)
    ring.lineTo(-2.4, 12)
    ring.lineTo(2.4, 12)
    ring.closeSubpath()
    return ring


def _groove() -> QPainterPath:
    return joined(circle(0, 0, 9), rectangle(-2.4, 5.5, 2.4, 9.5))


def _lugs() -> QPainterPath:
    (x1, y1), (x2, y2) = place(75, OUTLINE - 3), place(255, OUTLINE - 3)
    return joined(rectangle(x1 - 2, y1 - 5, x1 + 2, y1 + 5), rectangle(x2 - 2, y2 - 3, x2 + 2, y2 + 3))


_MARKS: dict[Mark, Callable[[], QPainterPath]] = {
    "key": _key,
    "groove": _groove,
    "bump": lambda: rectangle(-3, OUTLINE - 1.5, 3, OUTLINE + 3.5, 2),
    "gap": lambda: path(((-3, OUTLINE), (0, OUTLINE - 4), (3, OUTLINE))),
    "lugs": _lugs,
    "leads": lambda: circle(-OUTLINE + 7, -9, 1.8),
}


@lru_cache(maxsize=16)
def index_mark(mark: Mark) -> QPainterPath:
    """What shows which way round an unturned socket is; stroked thin."""
    build = _MARKS.get(mark)
    return build() if build is not None else QPainterPath()


@dataclass(frozen=True, eq=False)
class SocketPaths:
    """The paths of an unturned socket, split by the pen that draws them."""

    outline: QPainterPath
    mark: QPainterPath
    heater_pins: QPainterPath
    other_pins: QPainterPath


@lru_cache(maxsize=512)
def socket_paths(base: Base, heater_pins: tuple[str, ...]) -> SocketPaths:
    """Outline and pins of an unturned socket."""

    def rings(pins: list[Pin]) -> QPainterPath:
        return joined(*(_pin_shape(base, pin) for pin in pins))

    hot = [pin for pin in base.pins if pin.name in heater_pins]
    rest = [pin for pin in base.pins if pin.name not in heater_pins]
    return SocketPaths(outline(base), index_mark(base.mark), rings(hot), rings(rest))


def _pin_shape(base: Base, pin: Pin) -> QPainterPath:
    if base.mark != "side":
        return circle(pin.x, pin.y, pin.ring)
    inner, outer = place(angle_of(pin.x, pin.y), 32.0), place(angle_of(pin.x, pin.y), OUTLINE)
    dx, dy = (outer[1] - inner[1]) / 8 * 2.6, -(outer[0] - inner[0]) / 8 * 2.6
    return path(
        (
            (inner[0] - dx, inner[1] - dy),
            (outer[0] - dx, outer[1] - dy),
            (outer[0] + dx, outer[1] + dy),
            (inner[0] + dx, inner[1] + dy),
            (inner[0] - dx, inner[1] - dy),
        )
    )


def paint_socket(
    painter: QPainter, part: Tube, kind: TubeType | None, look: PartLook, theme: Theme, scale: float
) -> None:
    """Paint a tube's socket about the origin, without its label."""
    base = socket_of(kind)
    heater_pins = () if kind is None else kind.heater_pins
    paths = socket_paths(base, heater_pins)
    painter.save()
    painter.rotate(part.turn)
    painter.setBrush(theme.brush("surface"))
    painter.setPen(theme.pen("ink", dash=(4.0, 3.0)) if part.pulled else theme.pen("ink"))
    painter.drawPath(paths.outline)
    painter.setBrush(theme.brush("surface") if base.mark == "bump" else Qt.BrushStyle.NoBrush)
    painter.setPen(theme.pen("faint", 1.2))
    painter.drawPath(paths.mark)
    painter.setBrush(theme.brush("paper"))
    painter.setPen(theme.pen("faint", 1.0))
    painter.drawPath(paths.other_pins)
    if kind is not None and not part.pulled:
        _paint_heater(painter, base, kind, look, theme)
    painter.setBrush(theme.brush("paper"))
    painter.setPen(theme.pen("ink", 1.8))
    painter.drawPath(paths.heater_pins)
    painter.restore()
    if kind is None:
        draw_text(painter, theme, (0.0, 0.0), "?", 28, role="soft")
    elif not base.is_known and scale >= PAINT_NUMBERS_FROM:
        draw_text(
            painter, theme, (0.0, 24.0), kind.base if kind.base != "generic" else "base?", 8, role="soft"
        )
    if scale >= PAINT_NUMBERS_FROM:
        _paint_numbers(painter, part, kind, look, theme, with_values=scale >= PAINT_VALUES_FROM)


def _paint_heater(painter: QPainter, base: Base, kind: TubeType, look: PartLook, theme: Theme) -> None:
    pairs = tuple(section.pins for section in kind.sections)
    heater = heater_paths(base, pairs, kind.heating == "direct")
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(theme.pen("ink", 1.2))
    painter.drawPath(heater.tap)
    for section, line in zip(kind.sections, heater.sections, strict=False):
        kelvin = look.kelvin.get(section.name, 0.0)
        pen = QPen(theme.pen("ink", theme.heater_width))
        pen.setColor(glow(kelvin, theme))
        painter.setPen(pen)
        painter.drawPath(line)
    if heater.joint is not None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.brush("ink"))
        painter.drawEllipse(QPointF(*heater.joint), 2.6, 2.6)


def _paint_numbers(
    painter: QPainter,
    part: Tube,
    kind: TubeType | None,
    look: PartLook,
    theme: Theme,
    *,
    with_values: bool,
) -> None:
    base, heater_pins = socket_of(kind), () if kind is None else kind.heater_pins
    as_words = keeps_words(painter)
    for group in _number_texts(base, heater_pins, part.turn, theme):
        painter.setFont(group.font)
        painter.setPen(group.colour)
        for corner, laid in group.texts:
            draw_laid(painter, corner, laid, as_words)
    if not (with_values and look.pin_values):
        return
    ends = socket_terminals(base, heater_pins, part.turn)
    for terminal, number in zip(ends, number_places(ends, base.is_line), strict=True):
        value = look.pin_values.get(terminal.name, "")
        at, align = _value_place(terminal, number, base.is_line)
        draw_text(painter, theme, at, value, 7, role="soft", align=align)


_LONGEST_VOLTS = "−104.5 V"


@lru_cache(maxsize=512)
def _volts_boxes(
    base: Base, heater_pins: tuple[str, ...], turn: int, theme: Theme, beyond: float
) -> tuple[Box, ...]:
    _, width, height = static_text(_LONGEST_VOLTS, 7, False, theme)
    ends = socket_terminals(base, heater_pins, turn)
    boxes = []
    for terminal, number in zip(ends, number_places(ends, base.is_line), strict=True):
        if terminal.heater:
            (x, y), align = _value_place(terminal, number, base.is_line)
            left = x - width * align
            box = Box(left, y - height / 2, left + width, y + height / 2)
            boxes.append(box.united(box.moved(beyond * terminal.dx, beyond * terminal.dy)))
    return tuple(boxes)


def pin_volts_boxes(part: Tube, kind: TubeType | None, theme: Theme, beyond: float) -> tuple[Box, ...]:
    """Where the volts of the heater pins stand, with room for the longest and so much ``beyond``."""
    return _volts_boxes(socket_of(kind), () if kind is None else kind.heater_pins, part.turn, theme, beyond)


@dataclass(frozen=True, eq=False)
class _Numbers:
    """Numbers of one font and colour, laid out, with the corners where they start."""

    font: QFont
    colour: QColor
    texts: tuple[tuple[QPointF, QStaticText], ...]


@lru_cache(maxsize=512)
def _number_texts(
    base: Base, heater_pins: tuple[str, ...], turn: int, theme: Theme
) -> tuple[_Numbers, _Numbers]:
    """The numbers of the heater pins and those of the other pins."""
    ends = socket_terminals(base, heater_pins, turn)
    placed = tuple(zip(ends, number_places(ends, base.is_line), strict=True))

    def group(hot: bool, px: float, role: str) -> _Numbers:
        texts = []
        for terminal, (x, y) in placed:
            if terminal.heater is hot:
                laid, width, height = static_text(terminal.name, px, hot, theme)
                texts.append((QPointF(x - width / 2, y - height / 2), laid))
        return _Numbers(theme.font(px, hot), theme.colour(role), tuple(texts))

    return group(True, 9, "ink"), group(False, 8, "soft")


def _value_place(terminal: Terminal, number: Point, in_line: bool) -> tuple[Point, float]:
    """Where a pin's volts stand, and whether they start (0) or end (1) there."""
    if in_line:
        beyond = 28.0
        return (terminal.x + terminal.dx * beyond + 4.0, terminal.y + terminal.dy * beyond), 0.0
    if terminal.dy:
        leftwards = number[0] < terminal.x
        return (terminal.x + (-4.0 if leftwards else 4.0), number[1] - 9.0), float(leftwards)
    leftwards = terminal.dx < 0
    aside = 3.0 + 3.2 * len(terminal.name)
    return (number[0] + (-aside if leftwards else aside), number[1]), float(leftwards)
