"""The routing board: where bodies, labels and wires lie, and where the next wire goes.

The board remembers every route. A wire minds those of lower rank only, so that where it lies follows from the sheet
and not from the order in which things were done; ``zones`` says what each wire looked at when it was laid.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import partial

from app.canvas.cells import touching
from app.canvas.lanes import Profile, in_lanes, overlap
from app.canvas.legs import across, plain_route, turns_back
from app.canvas.occupancy import Occupancy
from app.canvas.pairs import (
    SHORTEST,
    cut_backs,
    follow,
    parted,
    past_crossings,
    reversed_,
    shadow,
    tracks_of_pair,
    trunk_of,
)
from app.canvas.routing import (
    CLEAR,
    Point,
    Port,
    Rect,
    Route,
    Surroundings,
    Track,
    crosses,
    crossing_cost,
    grown,
    length_of,
    route,
    simplified,
    tracks_of,
)

STRAP_CLEAR = 4.0  # a strap on one socket stays inside the first lane of the wires
_REGIONS = (100.0, 300.0, 1000.0)
_MARGIN = 2.0
_LEADS = 20.0  # room between a pair and a part for the leads of this pair and the next
_SAME = 0.01  # nearer than this two places are one
_BEND = 50.0  # what a bend counts where two ways are compared, in units of length
_TOUCH = 0.5
_LOOSE = 0.5  # what a unit of a pair counts that is left untwisted
_SHARED = 3.0  # what a unit counts that lies on a wire of another terminal
_HIT = 1000.0


def port_at(x: float, y: float, way: tuple[float, float], body: Rect, clear: float = CLEAR) -> Port:
    """The port of a terminal that leaves its own body in direction ``way``."""
    dx, dy = way
    far, near = (body[2], body[0]) if abs(dx) > abs(dy) else (body[3], body[1])
    place = x if abs(dx) > abs(dy) else y
    edge = far - place if dx + dy > 0 else place - near
    return Port(x, y, dx, dy, max(edge, 0.0) + clear)


class Board(Occupancy):
    """Lays wires where there is room; ``zones`` says what each looked at."""

    def __init__(self) -> None:
        super().__init__()
        self._looked: list[Rect] = []

    def lay(
        self,
        wire_id: str,
        start: Port,
        end: Port,
        clear: float = CLEAR,
        via: Sequence[Point] = (),
        wide: bool = False,
    ) -> Route:
        """Find a route for a wire through corners that are set, and keep it; its own old route is no obstacle.

        A ``wide`` one will be twisted with another.
        """
        self.lift(wire_id)
        self._looked.clear()
        rank, ends = self._rank(wire_id), (start.point, end.point)
        if wide:
            start, end = self._farther(start), self._farther(end)
        stops = [start, *(Port(x, y, 0.0, 1.0, 0.0, free=True) for x, y in via), end]

        def leg(number: int) -> Route:
            return self.find(stops[number], stops[number + 1], clear, before=rank, ends=ends, wide=wide)

        legs = [leg(number) for number in range(len(stops) - 1)]
        for number in range(1, len(stops) - 1):
            if turns_back(legs[number - 1], legs[number]):
                # go through the corner across, so that it is not the tip of a way there and back
                stops[number] = across(stops[number], legs[number])
                again = number if number == len(legs) - 1 > 1 else number - 1
                legs[again] = leg(again)
        self._note_zone(wire_id)
        return self.keep(wire_id, simplified(point for line in legs for point in line))

    def _farther(self, port: Port) -> Port:
        """The port of a pair, which turns farther out so that leads find room below it, unless a part stands there."""
        far = replace(port, reach=port.reach + _LEADS)
        (ax, ay), (bx, by) = port.exit, far.exit
        way = grown((min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)), CLEAR - 1.0)
        own = port.x, port.y
        taken = [rect for name in self._bodies.near(way) for rect in self._bodies.rects(name)]
        return port if any(touching(rect, way) and not _within(own, rect) for rect in taken) else far

    def lay_pair(self, wire_id: str, partner_id: str, start: Port, end: Port) -> Route:
        """Lay a wire along its partner's route, which runs between the same parts, as a twisted pair."""
        self.lift(wire_id)
        self._looked.clear()
        rank = self._rank(wire_id)
        line, trunk = self._along(self.routes[partner_id], start, end, rank)
        self._note_zone(wire_id)
        if trunk is not None:
            self.keep(partner_id, self.routes[partner_id], trunk)
        return self.keep(wire_id, line, trunk)

    def _along(self, partner: Route, start: Port, end: Port, rank: float) -> tuple[Route, Route | None]:
        """A route that joins a partner's, and the trunk that they share; alone where they share too little."""
        trunk = trunk_of(partner, start.reach + _LEADS, end.reach + _LEADS)
        if trunk is None:
            return self.find(start, end, before=rank), None
        crossing = self._tracks_near(trunk, (), rank)
        trunk = past_crossings(reversed_(past_crossings(trunk, crossing)), crossing)
        if length_of(trunk) < SHORTEST:
            return self.find(start, end, before=rank), None
        tail, trunk = self._leave(end, reversed_(trunk), partner, rank)
        head, backwards = self._leave(start, reversed_(trunk), reversed_(partner), rank)
        trunk = reversed_(backwards)
        if length_of(trunk) < SHORTEST:
            return self.find(start, end, before=rank), None
        return (*head, *trunk[1:-1], *reversed(tail)), trunk

    def _leave(self, end: Port, trunk: Route, partner: Route, rank: float) -> tuple[Route, Route]:
        """The lead from a terminal to the end of a trunk, which is cut back where that makes the lead plainer.

        It keeps off the trunk and does not run along the partner, which goes on from there.
        """
        best: tuple[Route, Route] | None = None
        least = (math.inf, 0)
        # the most promising first, so that most of the others need not be looked for; equal ones count in their order
        for bound, number, shorter in sorted(self._cuts(trunk, end.point)):
            if (bound, number) > least:
                break
            lead = self.find(end, follow(shorter)[1], shun=shadow(shorter, partner), before=rank)
            loose = length_of(trunk) - length_of(shorter)
            wires = self._in_the_way(lead, end.point, rank)
            cost = length_of(lead) + _BEND * len(lead) + _LOOSE * loose + wires
            if (cost, number) < least:
                best, least = (lead, shorter), (cost, number)
        assert best is not None
        lead, backwards = parted(best[0], reversed_(best[1]))
        return lead, reversed_(backwards)

    @staticmethod
    def _cuts(trunk: Route, end: Point) -> Iterator[tuple[float, int, Route]]:
        """The ways to cut a trunk back, each with what its lead costs at the least: on free paper."""
        whole = length_of(trunk)
        for number, shorter in enumerate(cut_backs(trunk, end)):
            across, down = abs(shorter[-1][0] - end[0]), abs(shorter[-1][1] - end[1])
            points = 3 if min(across, down) > _SAME else 2
            yield across + down + _BEND * points + _LOOSE * (whole - length_of(shorter)), number, shorter

    def _in_the_way(self, line: Route, end: Point, rank: float) -> float:
        """What it costs that a line lies on or crosses wires laid before it, but for those on its own terminal."""
        tracks = self._tracks_near(line, (end,), rank)
        pieces = tracks_of(line)
        return _SHARED * _shared(pieces, tracks) + _crossings(pieces, tracks)

    def _tracks_near(self, line: Route, ends: tuple[Point, ...], rank: float) -> Sequence[Track]:
        """Pieces of the wires laid before one, where a line runs, but for those on its own terminals."""
        xs, ys = [x for x, _ in line], [y for _, y in line]
        region = grown((min(xs), min(ys), max(xs), max(ys)), _MARGIN)
        return self.around(region, 0.0, ends, rank).tracks

    def _note_zone(self, wire_id: str) -> None:
        self.zones.put(wire_id, self._looked)

    def find(
        self,
        start: Port,
        end: Port,
        clear: float = CLEAR,
        shun: tuple[Rect, ...] = (),
        before: float = math.inf,
        ends: tuple[Point, ...] = (),
        wide: bool = False,
    ) -> Route:
        """The best route between two ports as the board stands; nothing is kept.

        ``shun`` are further places that it may not run through; wires from rank ``before`` on are not minded. Wires
        on ``ends``, the two ports where not given, are kin. A ``wide`` one will be twisted with another.
        """
        (ax, ay), (bx, by) = start.exit, end.exit
        span = (min(ax, bx), min(ay, by), max(ax, bx), max(ay, by))
        ends = ends or (start.point, end.point)
        found = None
        for reach in _REGIONS:
            region = grown(span, reach)
            around = self.around(region, clear, ends, before, wide)
            around = replace(around, walls=shun) if shun else around
            found = route(start, end, around, region)
            if found is not None:
                break
        self._looked.append(grown(region, clear))
        if found is None:
            return plain_route(start, end)
        profile = partial(_twisted, start.reach, end.reach) if wide else tracks_of
        line = in_lanes(found, around, profile)
        if _shared(profile(line), around.tracks) <= _TOUCH:
            return line
        other = route(start, end, around, region, lanes=True)
        return (
            line
            if other is None
            else min(line, in_lanes(other, around, profile), key=partial(_cost, around, profile))
        )


def _twisted(first_reach: float, last_reach: float, line: Route) -> list[Track]:
    """The pieces of a wire that will be twisted with another."""
    return tracks_of_pair(line, trunk_of(line, first_reach, last_reach))


def _shared(pieces: Sequence[Track], tracks: Sequence[Track]) -> float:
    """Over which length a line lies on, or close beside, wires."""
    return sum(overlap(piece, tracks) for piece in pieces)


def _crossings(pieces: Sequence[Track], tracks: Sequence[Track]) -> float:
    """What it costs that a line crosses wires."""
    return sum(
        crossing_cost(piece.half, track.half)
        for piece in pieces
        for track in tracks
        if piece.level != track.level
        and piece.low + _TOUCH < track.at < piece.high - _TOUCH
        and track.low + _TOUCH < piece.at < track.high - _TOUCH
    )


def _cost(around: Surroundings, profile: Profile, line: Route) -> float:
    """What speaks against a way: its length, its bends, texts and bodies that it crosses, wires that it lies on."""
    pieces = tracks_of(line)
    texts = sum(crosses(piece, label) for piece in pieces for label in around.labels)
    bodies = sum(crosses(piece, body) for piece in pieces[1:-1] for body in (*around.bodies, *around.walls))
    bends = _BEND * len(line)
    wires = _SHARED * _shared(profile(line), around.tracks) + _crossings(profile(line), around.tracks)
    return length_of(line) + bends + wires + _HIT * (texts + 10 * bodies)


def _within(point: Point, rect: Rect) -> bool:
    return rect[0] <= point[0] <= rect[2] and rect[1] <= point[1] <= rect[3]
