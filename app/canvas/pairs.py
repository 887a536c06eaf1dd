"""Twisted pairs: the stretch that two wires share, and the waves that show it."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import pairwise

from app.canvas.routing import Point, Port, Route, length_of, simplified

AMPLITUDE = 3.5
PITCH = 26.0  # length of one full twist on the sheet
_LEAD = 16.0  # what stays untwisted beyond the first and last corner
_SHORTEST = 60.0
_STEPS = 8  # straight pieces in half a twist


def trunk_of(line: Route, first_reach: float, last_reach: float) -> Route | None:
    """The part of a wire's route along which its partner is twisted, or None where there is too little of it.

    What lies within reach of the two terminals stays out of it, and a short lead beyond.
    """
    headless = _without_start(line, first_reach + _LEAD)
    shortened = _without_start(tuple(reversed(headless)), last_reach + _LEAD)
    trunk = simplified(reversed(shortened))
    return trunk if len(trunk) >= 2 and length_of(trunk) >= _SHORTEST else None


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


def waves(trunk: Route, sign: int) -> list[Point]:
    """One conductor of the pair along its trunk; ``sign`` +1 or -1 tells the two apart.

    Every straight piece takes a whole number of half twists, so both conductors meet at each corner.
    """
    points: list[Point] = [trunk[0]]
    for a, b in pairwise(trunk):
        halves = max(round(math.dist(a, b) / (PITCH / 2)), 1)
        points.extend(_wave(a, b, halves, sign))
        if halves % 2:
            sign = -sign
    return points


def _wave(a: Point, b: Point, halves: int, sign: int) -> Iterator[Point]:
    length = math.dist(a, b)
    along = ((b[0] - a[0]) / length, (b[1] - a[1]) / length)
    count = halves * _STEPS
    for step in range(1, count + 1):
        off = sign * AMPLITUDE * math.sin(math.pi * halves * step / count)
        far = length * step / count
        yield a[0] + along[0] * far - along[1] * off, a[1] + along[1] * far + along[0] * off
