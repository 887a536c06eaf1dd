"""The heater between the pins of a socket: a hairpin, an inverted V for a filament, or a tapped pair."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath

from app.canvas.symbols.bases import Base
from app.canvas.symbols.drawing import path
from app.canvas.symbols.geometry import Point


@dataclass(frozen=True, eq=False)
class HeaterPaths:
    """A path for each section in turn, the lead of the tap, and the point where the tap joins."""

    sections: tuple[QPainterPath, ...]
    tap: QPainterPath
    joint: Point | None


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
