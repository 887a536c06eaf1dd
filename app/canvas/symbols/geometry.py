"""Terminals and boxes of a symbol, and what a turn does to them. Sheet units, x to the right, y down."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

Point = tuple[float, float]


@dataclass(frozen=True)
class Terminal:
    """A point where a wire may end, relative to its part's place.

    ``dx``, ``dy`` is the axis-parallel unit vector along which a wire leaves. ``heater`` is False for socket
    pins that are no heater pins of the type.
    """

    name: str
    x: float
    y: float
    dx: float
    dy: float
    heater: bool = True


@dataclass(frozen=True)
class Box:
    """An upright rectangle."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        """Its width."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Its height."""
        return self.bottom - self.top

    def moved(self, dx: float, dy: float) -> Box:
        """The box shifted."""
        return Box(self.left + dx, self.top + dy, self.right + dx, self.bottom + dy)

    def united(self, other: Box) -> Box:
        """The smallest box around both."""
        return Box(
            min(self.left, other.left),
            min(self.top, other.top),
            max(self.right, other.right),
            max(self.bottom, other.bottom),
        )

    def contains(self, x: float, y: float, slack: float = 1e-6) -> bool:
        """Whether a point lies within the box or on its edge."""
        return self.left - slack <= x <= self.right + slack and self.top - slack <= y <= self.bottom + slack


def turn_point(x: float, y: float, turn: int) -> Point:
    """A point turned clockwise (as seen on the screen) about the origin by 0, 90, 180 or 270 degrees."""
    quarter = turn % 360 // 90
    return ((x, y), (-y, x), (-x, -y), (y, -x))[quarter]


def turn_terminal(terminal: Terminal, turn: int) -> Terminal:
    """A terminal turned with its part."""
    x, y = turn_point(terminal.x, terminal.y, turn)
    dx, dy = turn_point(terminal.dx, terminal.dy, turn)
    return Terminal(terminal.name, x + 0.0, y + 0.0, dx + 0.0, dy + 0.0, terminal.heater)


def flip_terminal(terminal: Terminal) -> Terminal:
    """A terminal flipped left to right with its symbol."""
    return Terminal(
        terminal.name, 0.0 - terminal.x, terminal.y, 0.0 - terminal.dx, terminal.dy, terminal.heater
    )


def flip_box(box: Box) -> Box:
    """A box flipped left to right."""
    return Box(0.0 - box.right, box.top, 0.0 - box.left, box.bottom)


def stray_terminal(name: str, around: Box) -> Terminal:
    """A place on the left edge of a box for a terminal that the symbol does not have."""
    middle = (around.top + around.bottom) / 2
    offset = (int(name) * 7 % 5 - 2) * 8.0 if name.isdecimal() and name.isascii() else 0.0
    return Terminal(name, around.left, middle + offset, -1.0, 0.0, heater=False)


def turn_box(box: Box, turn: int) -> Box:
    """The box around a turned box."""
    return box_around((turn_point(box.left, box.top, turn), turn_point(box.right, box.bottom, turn)))


def box_around(points: Iterable[Point], margin: float = 0.0) -> Box:
    """The smallest box around some points, with a margin."""
    xs, ys = zip(*points, strict=True)
    return Box(min(xs) - margin, min(ys) - margin, max(xs) + margin, max(ys) + margin)
