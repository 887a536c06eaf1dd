"""Twisted pairs: the stretch that two wires share, and the waves that show it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from itertools import pairwise

from app.canvas.routing import Point, Port, Rect, Route, Track, grown, length_of, simplified, tracks_of

AMPLITUDE = 4.0
PITCH = 26.0  # length of one full twist on the sheet
_LEAD = 16.0  # what stays untwisted beyond the first and last corner
SHORTEST = 60.0
_STUMP = 20.0
_CUTS = 2
_STEPS = 8  # straight pieces in half a twist
_END, _GUARD = (
    12.0,
    10.0,
)  # how much of a trunk's ends is free for its leads, and how far they keep off the rest
_THIN = 1.0
_JOG = 6.0  # length over which a conductor leaves the axis of its trunk


def trunk_of(line: Route, first_reach: float, last_reach: float) -> Route | None:
    """The part of a wire's route along which its partner is twisted, or None where there is too little of it.

    What lies within reach of the two terminals stays out of it, and a short lead beyond.
    """
    headless = _without_lead(line, first_reach)
    trunk = simplified(reversed(_without_lead(reversed_(headless), last_reach)))
    return trunk if len(trunk) >= 2 and length_of(trunk) >= SHORTEST else None


def _without_lead(line: Route, reach: float) -> Route:
    """A line without its start; it begins well beyond a corner, so that everybody sees that it is twisted."""
    start, corner = reach + _LEAD, 0.0
    for a, b in pairwise(line[:-1]):
        corner += math.dist(a, b)
        if start - _LEAD < corner < start + _STUMP:
            start = corner + _LEAD
    return _without_start(line, start)


def past_crossings(trunk: Route, tracks: Iterable[Track]) -> Route:
    """A trunk that does not begin right where a wire crosses it."""
    if len(trunk) < 2:
        return trunk
    (ax, ay), first = trunk[0], tracks_of(trunk[:2])[0]
    start = ax if first.level else ay
    found = [
        abs(track.at - start)
        for track in tracks
        if track.level != first.level
        and track.low < first.at < track.high
        and first.low <= track.at <= first.high
    ]
    near = [far for far in found if far <= _END]
    return past_crossings(_without_start(trunk, max(near) + _LEAD), tracks) if near else trunk


def reversed_(line: Route) -> Route:
    """A line from its other end."""
    return tuple(reversed(line))


def cut_backs(trunk: Route, end: Point) -> list[Route]:
    """The trunk, and what its partner may leave of it: straight opposite its own end, or before the last corners."""
    found = [trunk]
    level = abs(trunk[-1][0] - trunk[-2][0]) > abs(trunk[-1][1] - trunk[-2][1])
    opposite = (end[0], trunk[-1][1]) if level else (trunk[-1][0], end[1])
    straight = (*trunk[:-1], opposite)
    if (
        _lies_on(opposite, trunk[-2], trunk[-1])
        and math.dist(opposite, trunk[-1]) <= _STUMP < math.dist(opposite, trunk[-2])
        and length_of(straight) >= SHORTEST
    ):
        found.append(straight)
    backwards = reversed_(trunk)
    for _ in range(_CUTS):
        if len(backwards) < 3:
            break
        backwards = _without_start(backwards, math.dist(backwards[0], backwards[1]) + _LEAD)
        shorter = reversed_(backwards)
        if len(shorter) >= 2 and length_of(shorter) >= SHORTEST:
            found.append(shorter)
    return found


def _without_start(line: Route, length: float) -> Route:
    for at, (a, b) in enumerate(pairwise(line)):
        piece = math.dist(a, b)
        if piece > length:
            share = length / piece
            return (a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share), *line[at + 1 :]
        length -= piece
    return ()


def follow(trunk: Route) -> tuple[Port, Port]:
    """Ports at the two ends of a trunk for the partner's leads, which join it from the side."""
    return _side_port(trunk[0], trunk[1]), _side_port(trunk[-1], trunk[-2])


def _side_port(end: Point, inner: Point) -> Port:
    level = abs(inner[0] - end[0]) > abs(inner[1] - end[1])
    return Port(*end, 0.0 if level else 1.0, 1.0 if level else 0.0, 0.0)


def parted(lead: Route, trunk: Route) -> tuple[Route, Route]:
    """A lead and the trunk that it joins at its start, cut back to where the lead leaves the trunk's line."""
    while len(lead) > 2 and len(trunk) >= 2 and _lies_on(lead[-2], trunk[0], trunk[1]):
        trunk = (lead[-2], *trunk[1:])
        lead = lead[:-1]
    return lead, trunk


def _lies_on(point: Point, a: Point, b: Point) -> bool:
    return abs(math.dist(a, point) + math.dist(point, b) - math.dist(a, b)) < 1e-6 and point != b


Sides = tuple[int, int]


def sides_of(follower: Route, trunk: Route) -> Sides:
    """On which side of the trunk, +1 or -1, the second wire of a pair joins it at its start and at its end.

    The first wire takes the other side, so that their leads nowhere touch.
    """
    first = _side(_before(follower, trunk[0]), trunk[0], trunk[1])
    last = _side(_before(reversed_(follower), trunk[-1]), trunk[-1], trunk[-2])
    return first, -last  # seen from the end, left and right change places


def _before(line: Route, until: Point) -> Point:
    """The corner of a line before it comes to a point that lies on it."""
    return _lead(line, until)[-1]


def lead_to(end: Point, inner: Point, line: Route) -> list[Point]:
    """The lead of a conductor to the end of its trunk; one that comes along the trunk's axis leaves it just there."""
    points = _lead(line, end)
    far = math.dist(points[-1], end)
    normal = _normal(end, inner)
    across = (points[-1][0] - end[0]) * normal[0] + (points[-1][1] - end[1]) * normal[1]
    if abs(across) < 1e-6 and far > _JOG:
        points.append(_towards(end, points[-1], _JOG))
    return points


def _lead(line: Route, until: Point) -> list[Point]:
    """The points of a line before it comes to a point that lies on it."""
    points = [line[0]]
    for a, b in pairwise(line):
        if until == b or _lies_on(until, a, b):
            break
        points.append(b)
    return points


def tracks_of_pair(line: Route, trunk: Route | None) -> list[Track]:
    """The straight pieces of a wire; those where it is twisted are as wide as the waves."""
    if trunk is None:
        return tracks_of(line)
    head = (*_lead(line, trunk[0]), trunk[0])
    tail = (*_lead(reversed_(line), trunk[-1]), trunk[-1])
    return [*tracks_of(head), *tracks_of(trunk, AMPLITUDE), *tracks_of(tail)]


def _side(came_from: Point, end: Point, inner: Point) -> int:
    normal = _normal(end, inner)
    across = (came_from[0] - end[0]) * normal[0] + (came_from[1] - end[1]) * normal[1]
    return -1 if across < 0 else 1


def _normal(a: Point, b: Point) -> Point:
    length = math.dist(a, b)
    return -(b[1] - a[1]) / length, (b[0] - a[0]) / length


def waves(trunk: Route, sides: Sides) -> list[Point]:
    """One conductor of the pair along its trunk, from one side of it at the start to one at the end.

    The other conductor has the opposite sides. Both cross in the middle of every half twist and keep their sides
    around corners.
    """
    halves = _half_twists(trunk, crosses=sides[0] != sides[1])
    points: list[Point] = []
    side = sides[0]
    for (a, b), count in zip(pairwise(trunk), halves, strict=True):
        piece = list(_wave(a, b, count, side))
        side = -side if count % 2 else side
        if points:
            points[-1] = _mitre(points[-1], piece[0], a)
            piece = piece[1:]
        points.extend(piece)
    return points


def _half_twists(trunk: Route, crosses: bool) -> list[int]:
    """Half twists of each straight piece; odd in all where the conductors are to change sides."""
    lengths = [math.dist(a, b) for a, b in pairwise(trunk)]
    halves = [max(round(length / (PITCH / 2)), 1) for length in lengths]
    if sum(halves) % 2 != crosses:
        longest = lengths.index(max(lengths))
        halves[longest] += 1
    return halves


def _mitre(end: Point, start: Point, corner: Point) -> Point:
    """Where a conductor turns that runs beside a corner: as far from both legs as before."""
    return end[0] + start[0] - corner[0], end[1] + start[1] - corner[1]


def _wave(a: Point, b: Point, halves: int, side: int) -> Iterator[Point]:
    length = math.dist(a, b)
    along = ((b[0] - a[0]) / length, (b[1] - a[1]) / length)
    normal = _normal(a, b)
    count = halves * _STEPS
    for step in range(count + 1):
        off = side * AMPLITUDE * math.cos(math.pi * halves * step / count)
        far = length * step / count
        yield a[0] + along[0] * far + normal[0] * off, a[1] + along[1] * far + normal[1] * off


def shadow(trunk: Route, partner: Route) -> tuple[Rect, ...]:
    """What leads keep off: the trunk but for its ends, and where the partner goes on from its last one."""
    pieces = []
    for number, (a, b) in enumerate(pairwise(trunk)):
        along = _towards(a, b, _END) if number == 0 else a
        to = _towards(b, a, _END) if number == len(trunk) - 2 else b
        pieces.append(grown(_span(along, to), _GUARD))
    onward = _lead(reversed_(partner), trunk[-1])[-1]
    far = math.dist(onward, trunk[-1])
    if far > 2 * _THIN:
        pieces.append(grown(_span(_towards(trunk[-1], onward, 2 * _THIN), onward), _THIN))
    return tuple(pieces)


def _span(a: Point, b: Point) -> Rect:
    return min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1])


def _towards(a: Point, b: Point, far: float) -> Point:
    share = min(far / math.dist(a, b), 0.5)
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share
