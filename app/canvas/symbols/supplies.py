"""Symbols of what feeds the heaters: winding, DC supply, battery, mains feed, rectified supply, elevation."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainterPath

from app.canvas.symbols.drawing import Drawing, Text, circle, joined, path, rectangle
from app.canvas.symbols.geometry import Box, Terminal
from core.sheet import AnyPart, Winding

_COIL = 10.0  # radius of a half turn


def winding(part: AnyPart) -> Drawing:
    """Core bars and half turns; the centre tap leaves from the middle."""
    return _winding(isinstance(part, Winding) and part.centre_tap)


@lru_cache(maxsize=2)
def _winding(centre_tap: bool) -> Drawing:
    coil = QPainterPath()
    coil.moveTo(20, -40)
    coil.lineTo(0, -40)
    for index in range(4):
        coil.arcTo(QRectF(-_COIL, -40 + index * 20, 2 * _COIL, 2 * _COIL), 90, -180)
    coil.lineTo(20, 40)
    core = path(((-12, -40), (-12, 40)), ((-17, -40), (-17, 40)))
    ends = [Terminal("a", 20, -40, 1, 0), Terminal("b", 20, 40, 1, 0)]
    lines = joined(coil, core)
    if centre_tap:
        ends.append(Terminal("ct", 20, 0, 1, 0))
        lines.addPath(path(((0, 0), (20, 0))))
    texts = tuple(Text(16, end.y - 6, end.name, 8, "soft") for end in ends)
    body = Box(-18, -50, 20, 42)
    return Drawing(tuple(ends), body, lines, rectangle(-18, -40, 12, 40), texts=texts)


def _boxed(names: tuple[str, str], texts: tuple[Text, ...], extra: QPainterPath | None = None) -> Drawing:
    """A square with two leads on its right."""
    box = rectangle(-40, -30, 20, 30, 2)
    leads = path(((20, -20), (40, -20)), ((20, 20), (40, 20)))
    ends = (Terminal(names[0], 40, -20, 1, 0), Terminal(names[1], 40, 20, 1, 0))
    shown = {"-": "−"}
    signs = tuple(
        Text(11, y, shown.get(name, name), 11, bold=True) for name, y in zip(names, (-20, 20), strict=True)
    )
    lines = joined(box, leads, extra or QPainterPath())
    return Drawing(ends, Box(-40, -30, 40, 30), lines, box, ground=box, texts=(*signs, *texts))


def _wave(x: float, y: float, half: float) -> QPainterPath:
    """One period of the sign of alternating current."""
    result = QPainterPath()
    result.moveTo(x - half, y)
    result.cubicTo(x - half * 0.5, y - half * 0.95, x - half * 0.25, y - half * 0.75, x, y)
    result.cubicTo(x + half * 0.25, y + half * 0.75, x + half * 0.5, y + half * 0.95, x + half, y)
    return result


def _even(x: float, y: float, half: float) -> QPainterPath:
    """The sign of direct current: a full stroke over a broken one."""
    gap = half * 0.22
    third = (2 * half - 2 * gap) / 3
    strokes = [((x - half, y - 3), (x + half, y - 3))]
    for index in range(3):
        left = x - half + index * (third + gap)
        strokes.append(((left, y + 3), (left + third, y + 3)))
    return path(*strokes)


@lru_cache(maxsize=1)
def dc_supply() -> Drawing:
    """A box with the sign of direct current."""
    return _boxed(("+", "-"), (), _even(-14, 0, 13))


@lru_cache(maxsize=1)
def mains_feed() -> Drawing:
    """A box with the sign of alternating current."""
    return _boxed(("L", "N"), (), _wave(-14, 0, 14))


@lru_cache(maxsize=1)
def rectified_supply() -> Drawing:
    """A box divided by a slant: alternating in, direct out."""
    slash = path(((-40, 30), (4, -30)))
    return _boxed(("+", "-"), (), joined(slash, _wave(-29, -18, 7), _even(-9, 16, 8)))


@lru_cache(maxsize=1)
def battery() -> Drawing:
    """Two cells: the long plate is positive."""
    plates = path(((-18, -9), (18, -9)), ((-18, 5), (18, 5)))
    short = joined(rectangle(-9, -4, 9, -1), rectangle(-9, 10, 9, 13))
    leads = path(((0, -40), (0, -9)), ((0, 13), (0, 40)))
    ends = (Terminal("+", 0, -40, 0, -1), Terminal("-", 0, 40, 0, 1))
    texts = (Text(-13, -19, "+", 12, bold=True), Text(-13, 23, "−", 12, bold=True))
    lines = joined(plates, leads)
    return Drawing(ends, Box(-20, -40, 20, 40), lines, rectangle(-18, -12, 18, 14), solid=short, texts=texts)


@lru_cache(maxsize=1)
def elevation() -> Drawing:
    """A rail arrow: the heater circuit is lifted to these volts."""
    lines = joined(path(((0, 20), (0, -12)), ((-6, -4), (0, -13), (6, -4))))
    dot = circle(0, 6, 2.5)
    texts = (Text(0, -22, "+V", 11, bold=True),)
    shape = path(((-8, 10), (0, -13), (8, 10), (-8, 10)))
    return Drawing((Terminal("e", 0, 20, 0, 1),), Box(-14, -30, 14, 20), lines, shape, solid=dot, texts=texts)
