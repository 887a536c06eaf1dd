"""Side-by-side lanes: moves the inner pieces of a route so that it does not lie on other wires."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from app.canvas.routing import (
    LANE,
    Point,
    Rect,
    Route,
    Surroundings,
    Track,
    crosses,
    grown,
    simplified,
    tracks_of,
)

_SHIFTS = tuple(sign * step * LANE for step in range(1, 7) for sign in (1, -1))
_SIDE = LANE - 1.0
_TOUCH = 0.5
_BODY, _LABEL, _KIN = 1e4, 1e3, 0.2


class _Hurdles(NamedTuple):
    """What a piece must not be shifted onto."""

    bodies: Sequence[Rect]
    labels: Sequence[Rect]
    tracks: Sequence[Track]
    kin: Sequence[Track]


def overlap(piece: Track, others: Sequence[Track]) -> float:
    """Length over which a straight piece lies on, or too close beside, other wires."""
    total = 0.0
    for other in others:
        if other.level == piece.level and abs(other.at - piece.at) < _SIDE:
            shared = min(piece.high, other.high) - max(piece.low, other.low)
            if shared > _TOUCH:
                total += shared
    return total


def in_lanes(route: Route, around: Surroundings) -> Route:
    """The route with its inner pieces moved into free lanes; the pieces at the terminals keep their place."""
    points = list(route)
    hurdles = _Hurdles(
        [*(grown(body, max(around.clear - 2, 0.0)) for body in around.bodies), *around.walls],
        [grown(label, 1.0) for label in around.labels],
        around.tracks,
        around.kin,
    )
    for at in range(1, len(points) - 2):
        piece = tracks_of(points[at : at + 2])[0]
        if overlap(piece, around.tracks) or overlap(piece, around.kin):
            points = _best_shift(points, at, hurdles)
    return simplified(points)


def _best_shift(points: list[Point], at: int, hurdles: _Hurdles) -> list[Point]:
    level = tracks_of(points[at : at + 2])[0].level
    best, least = points, _badness(points, at, hurdles)
    for shift in _SHIFTS:
        moved = list(points)
        for corner in (at, at + 1):
            x, y = points[corner]
            moved[corner] = (x, y + shift) if level else (x + shift, y)
        if _doubles_back(points, moved, at):
            continue
        badness = _badness(moved, at, hurdles) + abs(shift) * 0.01
        if badness < least - 1e-9:
            best, least = moved, badness
            if least < 1.0:
                break
    return best


def _badness(points: list[Point], at: int, hurdles: _Hurdles) -> float:
    """Overlap of a piece and its neighbours with other wires, more for a label, most of all for a body."""
    total = 0.0
    last = len(points) - 2
    for number, piece in enumerate(tracks_of(points[at - 1 : at + 3]), at - 1):
        total += overlap(piece, hurdles.tracks) + overlap(piece, hurdles.kin) * _KIN
        if 0 < number < last:  # the pieces at the terminals start inside their own body
            total += _BODY * sum(crosses(piece, body) for body in hurdles.bodies)
        total += _LABEL * sum(crosses(piece, label) for label in hurdles.labels)
    return total


def _doubles_back(before: list[Point], after: list[Point], at: int) -> bool:
    """Whether a shift turned a neighbouring piece round, so that it would run back over its terminal."""
    for first in (at - 1, at + 1):
        (ax, ay), (bx, by) = before[first], before[first + 1]
        (cx, cy), (dx, dy) = after[first], after[first + 1]
        if (bx - ax) * (dx - cx) + (by - ay) * (dy - cy) <= 0:
            return True
    return False
