"""The tube socket from its wiring side: outline, pins, numbers, and the heater between its pins."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen

from app.canvas.look import PartLook
from app.canvas.symbols.bases import OUTLINE, Base, Mark, Pin, angle_of, place, socket_for
from app.canvas.symbols.drawing import circle, draw_text, joined, path, rectangle
from app.canvas.symbols.geometry import Box, Point, Terminal, turn_point
from app.canvas.symbols.glow import glow
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
PAINT_VALUES_FROM = 1.3


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


@lru_cache(maxsize=1024)
def heater_paths(base: Base, sections: tuple[tuple[str, str], ...], direct: bool) -> HeaterPaths:
    """The heater of an unturned socket: one path a section, and the leads of taps."""
    if len(sections) == 2:
        shared = set(sections[0]) & set(sections[1])
        if len(shared) == 1:
            return _tapped(base, sections, shared.pop())
    paths = []
    for first, second in sections:
        a, b = base.pin(first), base.pin(second)
        if a is not None and b is not None:
            paths.append(_hairpin((a.x, a.y), (b.x, b.y), direct))
    return HeaterPaths(tuple(paths), QPainterPath(), None)


@dataclass(frozen=True, eq=False)
class HeaterPaths:
    """A path for each section in turn, the lead of the tap, and the point where the tap joins."""

    sections: tuple[QPainterPath, ...]
    tap: QPainterPath
    joint: Point | None


def _hairpin(a: Point, b: Point, direct: bool) -> QPainterPath:
    """The heater between two pins: in from the one, round a narrow bend, out to the other."""
    inward = -(a[0] + b[0]), -(a[1] + b[1])
    length = math.hypot(*inward)
    across = b[0] - a[0], b[1] - a[1]
    span = math.hypot(*across) or 1.0
    if length < 8.0:
        inward, length = (-across[1], across[0]), span
    inward = inward[0] / length, inward[1] / length
    across = across[0] / span, across[1] / span
    middle = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2
    deep = max(15.0, min(34.0, 1.05 * math.hypot(*middle) + 6.0))
    apex = middle[0] + inward[0] * deep, middle[1] + inward[1] * deep
    result = QPainterPath(QPointF(*a))
    if direct:
        result.lineTo(*apex)
        result.lineTo(*b)
        return result
    half = min(5.0, span / 4)
    neck = apex[0] - inward[0] * half, apex[1] - inward[1] * half
    left = neck[0] - across[0] * half, neck[1] - across[1] * half
    right = neck[0] + across[0] * half, neck[1] + across[1] * half
    result.lineTo(*left)
    bend = inward[0] * half * 1.33, inward[1] * half * 1.33
    result.cubicTo(left[0] + bend[0], left[1] + bend[1], right[0] + bend[0], right[1] + bend[1], *right)
    result.lineTo(*b)
    return result


def _tapped(base: Base, sections: tuple[tuple[str, str], ...], tap: str) -> HeaterPaths:
    """Two sections that meet at a tap: each runs from its own pin to one joint, the tap lead to the third."""
    tap_pin = base.pin(tap)
    ends = [base.pin(a if b == tap else b) for a, b in sections]
    if tap_pin is None or None in ends:
        return HeaterPaths((), QPainterPath(), None)
    joint = tap_pin.x * 0.34, tap_pin.y * 0.34
    others = [(end.x, end.y) for end in ends if end is not None]
    paths = tuple(_bowed(end, joint, others[1 - index]) for index, end in enumerate(others))
    return HeaterPaths(paths, path((joint, (tap_pin.x, tap_pin.y))), joint)


def _bowed(start: Point, end: Point, other: Point) -> QPainterPath:
    """A curve from ``start`` to ``end`` that bows away from ``other``."""
    middle = (start[0] + end[0]) / 2, (start[1] + end[1]) / 2
    side = end[1] - start[1], start[0] - end[0]
    length = math.hypot(*side) or 1.0
    away = (middle[0] - other[0]) * side[0] + (middle[1] - other[1]) * side[1]
    bow = math.copysign(9.0, away) / length
    result = QPainterPath(QPointF(*start))
    result.quadTo(middle[0] + side[0] * bow, middle[1] + side[1] * bow, *end)
    return result


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
    in_line = socket_of(kind).is_line
    ends = tube_terminals(part, kind)
    for terminal, number in zip(ends, number_places(ends, in_line), strict=True):
        if terminal.heater:
            draw_text(painter, theme, number, terminal.name, 9, bold=True)
        else:
            draw_text(painter, theme, number, terminal.name, 8, role="soft")
        value = look.pin_values.get(terminal.name)
        if value and with_values:
            at, align = _value_place(terminal, number, in_line)
            draw_text(painter, theme, at, value, 7, role="soft", align=align)


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
