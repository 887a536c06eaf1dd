"""Orthogonal routes for wires: few bends, clear of sockets, off other wires where that can be had.

Pure geometry in sheet units, y down. A route is a tuple of points whose neighbours share an x or a y. The
search runs over the few lines worth using (edges of bodies, the two ends, the middle between them), not over
a fine grid, so its cost depends on how much stands between the two ends and not on the size of the sheet.
"""

from __future__ import annotations

import heapq
import math
from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

Point = tuple[float, float]
Route = tuple[Point, ...]
Rect = tuple[float, float, float, float]  # left, top, right, bottom

CLEAR = 10.0  # distance that a wire keeps from a body
LANE = 10.0  # distance between wires that run side by side
_BEND = 60.0  # what a bend costs, in units of length
_CROSS = 12.0
_CROSS_WIDE = 5.0  # more for every unit by which either is wider than a line; a pair counts twice
_OVERLAP = 1.2  # extra cost per unit on top of another wire; the lanes afterwards mend most of it
_OVERLAP_KIN = 0.15
_PAIR_ON_PAIR = 4.0  # so much more where both are twisted pairs
_UNTWISTED = 30.0
_LABEL = 15.0  # extra cost per unit across a label
_BESIDE_LABEL = 7.0
_BESIDE_WALL = 4.0
_CROWD = 24  # with more bodies around than this the lines beside labels are left out
_SNAP = 10.0
_TOUCH = 0.5


@dataclass(frozen=True, slots=True)
class Port:
    """Where a wire ends: a terminal, the axis-parallel way out of it and how far it must go that way.

    From a ``free`` one, a corner that the user has set, it may leave any way.
    """

    x: float
    y: float
    dx: float
    dy: float
    reach: float = CLEAR
    free: bool = False

    @property
    def point(self) -> Point:
        """The terminal itself."""
        return self.x, self.y

    @property
    def exit(self) -> Point:
        """The point at which the wire is free to turn."""
        return self.x + self.dx * self.reach, self.y + self.dy * self.reach

    @property
    def is_level(self) -> bool:
        """Whether the way out runs along x."""
        return abs(self.dx) > abs(self.dy)


class Track(NamedTuple):
    """One straight piece of a wire: level (along x) or upright, at a coordinate, from ``low`` to ``high``.

    ``half`` is how far the waves of a twisted pair reach to either side of it; 0 for a plain line.
    """

    level: bool
    at: float
    low: float
    high: float
    half: float = 0.0

    @property
    def length(self) -> float:
        """Length in sheet units."""
        return self.high - self.low


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What a route must mind: bodies (never crossed), labels and other wires (avoided where possible).

    ``kin`` are wires on the same terminal: to lie on them for a while does little harm. ``clear`` is the
    distance that is kept from bodies. ``walls`` are no more crossed than bodies, but need no distance. ``half``
    is how far the wire that is to be laid reaches to either side of its line.
    """

    bodies: Sequence[Rect] = ()
    labels: Sequence[Rect] = ()
    tracks: Sequence[Track] = ()
    kin: Sequence[Track] = ()
    clear: float = CLEAR
    walls: Sequence[Rect] = ()
    half: float = 0.0


def tracks_of(route: Sequence[Point], half: float = 0.0) -> list[Track]:
    """The straight pieces of a route."""
    pieces = []
    for (ax, ay), (bx, by) in pairwise(route):
        if abs(ay - by) <= abs(ax - bx):
            pieces.append(Track(True, ay, min(ax, bx), max(ax, bx), half))
        else:
            pieces.append(Track(False, ax, min(ay, by), max(ay, by), half))
    return pieces


def length_of(route: Sequence[Point]) -> float:
    """Length of a route in sheet units."""
    return sum(math.dist(a, b) for a, b in pairwise(route))


def grown(rect: Rect, by: float) -> Rect:
    """A rectangle larger by ``by`` on every side."""
    return rect[0] - by, rect[1] - by, rect[2] + by, rect[3] + by


def crosses(track: Track, rect: Rect) -> bool:
    """Whether a straight piece runs through the inside of a rectangle."""
    left, top, right, bottom = rect
    if track.level:
        return (
            top + _TOUCH < track.at < bottom - _TOUCH
            and track.low < right - _TOUCH
            and track.high > left + _TOUCH
        )
    return (
        left + _TOUCH < track.at < right - _TOUCH
        and track.low < bottom - _TOUCH
        and track.high > top + _TOUCH
    )


def simplified(points: Iterable[Point]) -> Route:
    """The same line without repeated points and without points in the middle of a straight piece."""
    kept: list[Point] = []
    for point in points:
        if kept and math.dist(kept[-1], point) < 1e-6:
            continue
        while len(kept) >= 2 and _in_line(kept[-2], kept[-1], point):
            kept.pop()
        kept.append(point)
    return tuple(kept)


def _in_line(a: Point, b: Point, c: Point) -> bool:
    return (abs(a[0] - b[0]) < 1e-6 and abs(b[0] - c[0]) < 1e-6) or (
        abs(a[1] - b[1]) < 1e-6 and abs(b[1] - c[1]) < 1e-6
    )


def route(
    start: Port, end: Port, around: Surroundings, within: Rect | None = None, lanes: bool = False
) -> Route | None:
    """The route from one terminal to another, or None if bodies shut it off inside ``within``.

    With ``lanes`` the search takes longer and looks at the places beside other wires, too.
    """
    bodies = [box for body in around.bodies if _is_outside(box := grown(body, around.clear), start, end)]
    boxes = [*bodies, *(grown(wall, _BESIDE_WALL) for wall in around.walls)]
    if len(bodies) <= _CROWD:
        boxes += [grown(label, _BESIDE_LABEL) for label in around.labels]
    if lanes:
        boxes += [_beside(track, lane_between(track.half, around.half)) for track in around.tracks[:_CROWD]]
    grid = _Grid(_lines(start, end, boxes, within, 0), _lines(start, end, boxes, within, 1))
    for track in around.tracks:
        grid.mind_track(track, _OVERLAP, around.half, (start.exit, end.exit))
    for track in around.kin:
        grid.mind_track(track, _OVERLAP_KIN, around.half, (start.exit, end.exit))
    for label in around.labels:
        grid.mark(label, _LABEL)
    for box in (*bodies, *around.walls):
        grid.mark(box, math.inf)
    for port, other in ((start, end), (end, start)):
        way = _way_out(port)
        if not _holds(grown(way, around.clear), other.exit):
            grid.mark(way, math.inf)  # or a route might come from behind, along its own last piece
    found = grid.search(start, end)
    if found is None:
        return None
    return simplified((start.point, *found, end.point))


def _is_outside(box: Rect, start: Port, end: Port) -> bool:
    """Whether both exits are outside a body: one that another part lies on cannot be kept clear of."""
    return not any(_holds(box, port.exit) for port in (start, end))


def _holds(box: Rect, point: Point) -> bool:
    x, y = point
    return box[0] + _TOUCH < x < box[2] - _TOUCH and box[1] + _TOUCH < y < box[3] - _TOUCH


def _way_out(port: Port) -> Rect:
    """A thin rectangle from a terminal to its exit."""
    (ax, ay), (bx, by) = port.point, port.exit
    left, top, right, bottom = min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)
    return (left, top - 1, right, bottom + 1) if port.is_level else (left - 1, top, right + 1, bottom)


def lane_between(half: float, other: float) -> float:
    """How far the lines of two wires stay apart that reach so far to either side."""
    return LANE + half + other


def crossing_cost(half: float, other: float) -> float:
    """What it costs to cross a wire, in units of length."""
    return _CROSS + _CROSS_WIDE * (half + other)


def _beside(track: Track, lane: float) -> Rect:
    """A rectangle whose sides are the lanes beside a wire, and whose ends are where one may turn round it."""
    if track.level:
        return track.low - lane, track.at - lane, track.high + lane, track.at + lane
    return track.at - lane, track.low - lane, track.at + lane, track.high + lane


def _lines(start: Port, end: Port, boxes: Sequence[Rect], within: Rect | None, axis: int) -> list[float]:
    """The coordinates worth using along one axis, sorted; lines closer than 2 units count once."""
    ends = (start.exit[axis], end.exit[axis])
    middle = math.floor(sum(ends) / 2 / _SNAP + 0.5) * _SNAP
    wanted = {middle, *(box[axis] for box in boxes), *(box[axis + 2] for box in boxes)}
    if within is not None:
        wanted = {value for value in wanted if within[axis] <= value <= within[axis + 2]}
    kept = sorted(set(ends))
    for value in sorted(wanted):
        at = bisect_left(kept, value)
        near = kept[max(at - 1, 0) : at + 1]
        if all(abs(value - other) >= 2.0 for other in near):
            kept.insert(at, value)
    return kept


class _Grid:
    """The lines of one search with the cost of every piece of line between two crossings."""

    def __init__(self, xs: list[float], ys: list[float]) -> None:
        self.xs = xs
        self.ys = ys
        # rates are what a unit of length costs beyond itself, tolls what passing costs
        self.level = [[b - a for a, b in pairwise(xs)] for _ in ys]
        self.upright = [[b - a for a, b in pairwise(ys)] for _ in xs]

    def mark(self, rect: Rect, rate: float) -> None:
        """Make every piece inside a rectangle dearer by ``rate`` per unit."""
        left, top, right, bottom = rect
        _mark(self.level, (self.ys, self.xs), (top, bottom), (left, right), rate)
        _mark(self.upright, (self.xs, self.ys), (left, right), (top, bottom), rate)

    def mind_track(self, track: Track, rate: float, half: float, exits: tuple[Point, Point]) -> None:
        """Make it dear to lie on another wire and a little dear to cross it; near its exits a pair is untwisted."""
        along, over = (self.level, self.upright) if track.level else (self.upright, self.level)
        rows, columns = (self.ys, self.xs) if track.level else (self.xs, self.ys)
        lane = lane_between(track.half, half) - 1
        near = (track.at - lane, track.at + lane)
        rate *= _PAIR_ON_PAIR if half and track.half else 1.0
        _mark(along, (rows, columns), near, (track.low, track.high), rate)
        row = bisect_left(rows, track.at)
        on_line = row < len(rows) and rows[row] == track.at
        # where a line runs on the wire itself, one pays half for coming to it and half for going on
        cells = [at for at in ((row - 1, row) if on_line else (row - 1,)) if 0 <= at < len(rows) - 1]
        slim, wide = (
            crossing_cost(track.half, 0.0) / (1 + on_line),
            crossing_cost(track.half, half) / (1 + on_line),
        )
        for at in range(bisect_right(columns, track.low), bisect_left(columns, track.high)):
            place = (columns[at], track.at) if track.level else (track.at, columns[at])
            near_exit = half and any(math.dist(place, one) < _UNTWISTED for one in exits)
            for cell in cells:
                over[at][cell] += slim if near_exit else wide

    def search(self, start: Port, end: Port) -> list[Point] | None:
        """The cheapest line from exit to exit (A*), or None; states are crossings with the way of arrival.

        Of states that promise the same, the one farthest on its way comes first.
        """
        width = len(self.xs)
        (first_x, first_y), (goal_x, goal_y) = self._crossing(start.exit), self._crossing(end.exit)
        goals = _arrivals(goal_y * width + goal_x, end)
        guesses = self._guesses(goal_x, goal_y, None if end.free else end.is_level)
        best = [math.inf] * (2 * width * len(self.ys))
        came: dict[int, int] = {}
        done: set[int] = set()
        queue: list[tuple[float, float, int]] = []
        for first in _arrivals(first_y * width + first_x, start):
            best[first] = 0.0
            queue.append((0.0, 0.0, first))
        while queue:
            _, cost, state = heapq.heappop(queue)
            if state in goals:
                return self._line(state, came)
            if state in done:
                continue
            done.add(state)
            for following, step in self._steps(state, goals):
                total = step - cost  # costs stand negated in the queue
                if total < best[following]:
                    best[following] = total
                    came[following] = state
                    heapq.heappush(queue, (total + guesses[following], -total, following))
        return None

    def _crossing(self, point: Point) -> tuple[int, int]:
        return bisect_left(self.xs, point[0]), bisect_left(self.ys, point[1])

    def _steps(self, state: int, goals: tuple[int, ...]) -> list[tuple[int, float]]:
        """States one piece of line away, with what it costs to go there; blocked ones are left out."""
        width = len(self.xs)
        node = state >> 1
        y, x = divmod(node, width)
        turn_level, turn_upright = (0.0, _BEND) if state & 1 else (_BEND, 0.0)
        row, column = self.level[y], self.upright[x]
        steps = []
        if x + 1 < width and row[x] < math.inf:
            steps.append(((node + 1) << 1 | 1, row[x] + turn_level))
        if x and row[x - 1] < math.inf:
            steps.append(((node - 1) << 1 | 1, row[x - 1] + turn_level))
        if y + 1 < len(self.ys) and column[y] < math.inf:
            steps.append(((node + width) << 1, column[y] + turn_upright))
        if y and column[y - 1] < math.inf:
            steps.append(((node - width) << 1, column[y - 1] + turn_upright))
        if state ^ 1 in goals:
            steps.append((state ^ 1, _BEND))
        return steps

    def _guesses(self, goal_x: int, goal_y: int, goal_level: bool | None) -> list[float]:
        """For every state what is left at the least: the distance, and the bends that cannot be spared."""
        across = [abs(x - self.xs[goal_x]) for x in self.xs]
        guesses: list[float] = []
        for y in self.ys:
            down = abs(y - self.ys[goal_y])
            for far in across:
                upright, level = _least_bends(far > 0, down > 0, goal_level)
                guesses += (far + down + upright * _BEND, far + down + level * _BEND)
        return guesses

    def _line(self, state: int, came: dict[int, int]) -> list[Point]:
        states = [state]
        while state in came:
            state = came[state]
            states.append(state)
        width = len(self.xs)
        return [(self.xs[(s >> 1) % width], self.ys[(s >> 1) // width]) for s in reversed(states)]


def _arrivals(node: int, port: Port) -> tuple[int, ...]:
    """The states of a crossing in which a route may begin or end at a port."""
    return (node << 1, node << 1 | 1) if port.free else (node << 1 | port.is_level,)


def _least_bends(across: bool, down: bool, goal_level: bool | None) -> tuple[int, int]:
    """Bends that are left at the least after an upright and after a level arrival; None is a goal of any way."""
    if goal_level is None:
        return (1, 1) if across and down else (int(across), int(down))
    if across and down:
        return (1, 2) if goal_level else (2, 1)
    if across:
        return 1 + (not goal_level), int(not goal_level)
    if down:
        return int(goal_level), 1 + goal_level
    return int(goal_level), int(not goal_level)


def _mark(
    costs: list[list[float]],
    lines: tuple[list[float], list[float]],
    across: tuple[float, float],
    along: tuple[float, float],
    rate: float,
) -> None:
    """Raise the cost of pieces whose row is inside ``across`` and which overlap ``along``."""
    rows, columns = lines
    first = max(bisect_right(columns, along[0] + _TOUCH) - 1, 0)
    last = min(bisect_left(columns, along[1] - _TOUCH), len(columns) - 1)
    low, high = along
    dearer = [
        (cell, (min(columns[cell + 1], high) - max(columns[cell], low)) * rate) for cell in range(first, last)
    ]
    for row in range(bisect_right(rows, across[0] + _TOUCH), bisect_left(rows, across[1] - _TOUCH)):
        cells = costs[row]
        for cell, more in dearer:
            cells[cell] += more
