"""Side-by-side lanes: moves the inner pieces of a route so that it does not lie on other wires."""

from __future__ import annotations

from collections.abc import Callable, Sequence
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
    lane_between,
    simplified,
    tracks_of,
)

Profile = Callable[[Route], list[Track]]  # the pieces of a route with how wide they are

_SHIFTS = tuple(sign * step * LANE for step in range(1, 7) for sign in (1, -1))
_TOUCH = 3.0  # so much may be shared at a corner
_BODY, _LABEL, _KIN = 1e4, 1e3, 0.2


class _Hurdles(NamedTuple):
    """What a piece must not be shifted onto."""

    bodies: Sequence[Rect]
    labels: Sequence[Rect]
    tracks: Sequence[Track]
    kin: Sequence[Track]
    profile: Profile


def overlap(piece: Track, others: Sequence[Track]) -> float:
    """Length over which a straight piece lies on, or too close beside, other wires."""
    total = 0.0
    for other in others:
        if (
            other.level == piece.level
            and abs(other.at - piece.at) < lane_between(other.half, piece.half) - 1.0
        ):
            shared = min(piece.high, other.high) - max(piece.low, other.low)
            if shared > _TOUCH:
                total += shared
    return total


def in_lanes(route: Route, around: Surroundings, profile: Profile = tracks_of) -> Route:
    """The route with its inner pieces moved into free lanes; the pieces at the terminals keep their place.

    ``profile`` answers the pieces of a route with how wide they are.
    """
    points = list(route)
    hurdles = _Hurdles(
        [*(grown(body, max(around.clear - 2, 0.0)) for body in around.bodies), *around.walls],
        [grown(label, 1.0) for label in around.labels],
        around.tracks,
        around.kin,
        profile,
    )
    for at in range(1, len(points) - 2):
        piece = tracks_of(points[at : at + 2])[0]
        own = [one for one in profile(simplified(points)) if (one.level, one.at) == (piece.level, piece.at)]
        if any(overlap(one, around.tracks) or overlap(one, around.kin) for one in own):
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
    """Overlap with other wires, more for a label that a piece or its neighbours cross, most of all for a body."""
    pieces = hurdles.profile(simplified(points))
    total = sum(overlap(piece, hurdles.tracks) + overlap(piece, hurdles.kin) * _KIN for piece in pieces)
    last = len(points) - 2
    for number, piece in enumerate(tracks_of(points[at - 1 : at + 3]), at - 1):
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
