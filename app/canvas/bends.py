"""Corners that the user sets: which pieces of a route can be moved, and which corners are set once one has moved.

Pure geometry. The bones of a route are its corners, with the points at the terminals where a wire is free to turn.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from app.canvas.routing import Point, Port, Route

_SAME = 0.01
_SHORTEST = 6.0  # a piece shorter than this has no handle of its own


class Piece(NamedTuple):
    """A straight piece between two bones, the first of them number ``at``."""

    at: int
    start: Point
    end: Point

    @property
    def is_level(self) -> bool:
        """Whether it runs along x; it moves across that."""
        return abs(self.end[0] - self.start[0]) >= abs(self.end[1] - self.start[1])

    @property
    def middle(self) -> Point:
        """Where its handle sits."""
        return (self.start[0] + self.end[0]) / 2, (self.start[1] + self.end[1]) / 2


def bones_of(line: Route, start: Port, end: Port) -> tuple[Point, ...]:
    """The corners of a route and the points where it leaves its two parts."""
    bones = list(line)
    if len(bones) < 2:
        return line
    head, tail = _exit_on(bones[0], bones[1], start), _exit_on(bones[-1], bones[-2], end)
    if head is not None:
        bones.insert(1, head)
    if tail is not None and not (
        head is not None and len(line) == 2 and not _is_between(bones[1], tail, bones[-1])
    ):
        bones.insert(-1, tail)
    return tuple(bones)


def _exit_on(terminal: Point, corner: Point, port: Port) -> Point | None:
    """The exit of a port if it lies inside the piece from the terminal to a corner."""
    on_way = _is_between(terminal, port.exit, corner)
    return port.exit if on_way and not _near(port.exit, corner) and not _near(port.exit, terminal) else None


def _is_between(a: Point, point: Point, b: Point) -> bool:
    return abs(math.dist(a, point) + math.dist(point, b) - math.dist(a, b)) < _SAME


def _near(a: Point, b: Point) -> bool:
    return math.dist(a, b) < _SAME


def pieces_of(bones: Sequence[Point]) -> list[Piece]:
    """The pieces that can be moved: all but those at the terminals, and none too short to grasp."""
    inner = list(enumerate(pairwise(bones)))[1:-1]
    return [Piece(at, a, b) for at, (a, b) in inner if math.dist(a, b) >= _SHORTEST]


def corners_of(bones: Sequence[Point]) -> list[Point]:
    """The corners that can be moved: where the line really turns."""
    return [
        bone
        for before, bone, after in zip(bones, bones[1:], bones[2:], strict=False)
        if not _is_between(before, bone, after)
    ]


def with_piece_moved(
    bones: Sequence[Point], via: Sequence[Point], piece: Piece, by: float
) -> tuple[Point, ...]:
    """The corners that are set after a piece has moved across its way: its two ends, and those set elsewhere."""
    shift = (0.0, by) if piece.is_level else (by, 0.0)
    moved = [(x + shift[0], y + shift[1]) for x, y in (piece.start, piece.end)]
    return _in_order(bones, via, (piece.start, piece.end), moved)


def with_corner_moved(
    bones: Sequence[Point], via: Sequence[Point], corner: Point, to: Point
) -> tuple[Point, ...]:
    """The corners that are set after one has moved."""
    return _in_order(bones, via, (corner, corner), [to])


def _in_order(
    bones: Sequence[Point], via: Sequence[Point], gone: tuple[Point, Point], new: Sequence[Point]
) -> tuple[Point, ...]:
    """Corners set before, without those between the two ``gone``, with the new ones in their place."""
    first, last = (_way_to(bones, point) for point in gone)
    before: list[Point] = []
    after: list[Point] = []
    for corner in via:
        way = _way_to(bones, corner)
        if way is not None and first is not None and last is not None:
            if way < first - _SAME:
                before.append(corner)
            elif way > last + _SAME:
                after.append(corner)
    return (*before, *new, *after)


def _way_to(bones: Sequence[Point], point: Point) -> float | None:
    """How far along the line a point lies; None for one beside it."""
    gone = 0.0
    for a, b in pairwise(bones):
        if _is_between(a, point, b):
            return gone + math.dist(a, point)
        gone += math.dist(a, b)
    return None


class Spot(NamedTuple):
    """A point on a line: where, which share of the line lies before it, and whether the line is level there."""

    point: Point
    share: float
    is_level: bool


def spot_on(line: Sequence[Point], to: Point, step: float) -> Spot:
    """The point of a line nearest to another, on a multiple of ``step`` along its piece where that lies inside it."""
    best, least, share, level = line[0], math.inf, 0.0, True
    whole = sum(math.dist(a, b) for a, b in pairwise(line)) or 1.0
    gone = 0.0
    for a, b in pairwise(line):
        is_level = Piece(0, a, b).is_level
        found = _nearest(a, b, to)
        if math.dist(found, to) < least:
            best, least = _snapped(a, b, found, is_level, step), math.dist(found, to)
            share, level = (gone + math.dist(a, best)) / whole, is_level
        gone += math.dist(a, b)
    return Spot(best, share, level)


def _snapped(a: Point, b: Point, point: Point, is_level: bool, step: float) -> Point:
    x, y = point
    on_grid = (round(x / step) * step, y) if is_level else (x, round(y / step) * step)
    return on_grid if _is_between(a, on_grid, b) else point


def middle_of(line: Sequence[Point]) -> Point:
    """The middle of the longest piece of a line."""
    a, b = max(pairwise(line), key=lambda ends: math.dist(*ends))
    return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2


def _nearest(a: Point, b: Point, to: Point) -> Point:
    length = math.dist(a, b)
    if length == 0:
        return a
    along = ((to[0] - a[0]) * (b[0] - a[0]) + (to[1] - a[1]) * (b[1] - a[1])) / length**2
    along = min(max(along, 0.0), 1.0)
    return a[0] + (b[0] - a[0]) * along, a[1] + (b[1] - a[1]) * along


def corners_before(line: Sequence[Point], via: Sequence[Point], share: float) -> int:
    """How many of the corners that are set lie before a share of the line."""
    whole = sum(math.dist(a, b) for a, b in pairwise(line))
    ways = (_way_to(line, corner) for corner in via)
    return sum(way is not None and way < share * whole for way in ways)
