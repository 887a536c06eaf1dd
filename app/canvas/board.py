"""The routing board: where bodies, labels and wires lie, and where the next wire goes.

The board remembers every route. A wire minds those of lower rank only, so that where it lies follows from the sheet
and not from the order in which things were done; ``zones`` says what each wire looked at when it was laid.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from typing import NamedTuple

from app.canvas.cells import Cells, touching
from app.canvas.lanes import in_lanes
from app.canvas.pairs import SHORTEST, follow, parted, shadow, trunk_of
from app.canvas.routing import (
    CLEAR,
    Point,
    Port,
    Rect,
    Route,
    Surroundings,
    Track,
    across,
    crosses,
    grown,
    length_of,
    plain_route,
    route,
    simplified,
    tracks_of,
    turns_back,
)

STRAP_CLEAR = 4.0  # a strap on one socket stays inside the first lane of the wires
_REGIONS = (100.0, 300.0, 1000.0)
_MARGIN = 2.0
_SAME = 0.01  # closer than this two terminals are one


def port_at(x: float, y: float, way: tuple[float, float], body: Rect, clear: float = CLEAR) -> Port:
    """The port of a terminal that leaves its own body in direction ``way``."""
    dx, dy = way
    far, near = (body[2], body[0]) if abs(dx) > abs(dy) else (body[3], body[1])
    place = x if abs(dx) > abs(dy) else y
    edge = far - place if dx + dy > 0 else place - near
    return Port(x, y, dx, dy, max(edge, 0.0) + clear)


class Kept(NamedTuple):
    """Where a wire lies and what it looked at when it was laid."""

    line: Route
    trunk: Route | None
    zone: tuple[Rect, ...]


class Board:
    """Bodies and labels of parts by part id, routes by wire id.

    ``ranks`` says for each wire in which place it is laid; without a rank it comes last.
    """

    def __init__(self) -> None:
        self.routes: dict[str, Route] = {}
        self.trunks: dict[str, Route] = {}
        self.ranks: Mapping[str, float] = {}
        self.zones = Cells()
        self._looked: list[Rect] = []
        self._tracks: dict[str, list[Track]] = {}
        self._bodies = Cells()
        self._labels = Cells()
        self._wires = Cells()
        self._texts = Cells()

    def place(self, part_id: str, body: Rect, *labels: Rect) -> None:
        """Put a part with its labels, or move it."""
        self._bodies.put(part_id, (body,))
        self._labels.put(part_id, labels)

    def place_words(self, part_id: str, rect: Rect) -> None:
        """Put a note: words that wires go round as they do round labels."""
        self._bodies.drop(part_id)
        self._labels.put(part_id, (rect,))

    def remove_part(self, part_id: str) -> None:
        """Take a part away."""
        self._bodies.drop(part_id)
        self._labels.drop(part_id)

    def taken_by(self, part_id: str) -> set[Rect]:
        """What body and labels of a part take; empty for a part that is not on the board."""
        return {*self._bodies.rects(part_id), *self._labels.rects(part_id)}

    def parts_near(self, rect: Rect) -> list[str]:
        """Parts whose body or label shares area with a rectangle."""
        return sorted({*self._bodies.near(rect), *self._labels.near(rect)})

    def lay(
        self, wire_id: str, start: Port, end: Port, clear: float = CLEAR, via: Sequence[Point] = ()
    ) -> Route:
        """Find a route for a wire through corners that are set, and keep it; its own old route is no obstacle."""
        self.lift(wire_id)
        self._looked.clear()
        rank, ends = self._rank(wire_id), (start.point, end.point)
        stops = [start, *(Port(x, y, 0.0, 1.0, 0.0, free=True) for x, y in via), end]

        def leg(number: int) -> Route:
            return self.find(stops[number], stops[number + 1], clear, before=rank, ends=ends)

        legs = [leg(number) for number in range(len(stops) - 1)]
        for number in range(1, len(stops) - 1):
            if turns_back(legs[number - 1], legs[number]):
                # go through the corner across, so that it is not the tip of a way there and back
                stops[number] = across(stops[number], legs[number])
                again = number if number == len(legs) - 1 > 1 else number - 1
                legs[again] = leg(again)
        self._note_zone(wire_id)
        return self.keep(wire_id, simplified(point for line in legs for point in line))

    def lay_pair(self, wire_id: str, partner_id: str, start: Port, end: Port) -> Route:
        """Lay a wire along its partner's route, which runs between the same parts, as a twisted pair."""
        self.lift(wire_id)
        self._looked.clear()
        rank = self._rank(wire_id)
        line, trunk = self._along(self.routes[partner_id], start, end, rank)
        self._note_zone(wire_id)
        if trunk is not None:
            self.trunks[partner_id] = trunk
        return self.keep(wire_id, line, trunk)

    def _along(self, partner: Route, start: Port, end: Port, rank: float) -> tuple[Route, Route | None]:
        """A route that joins a partner's, and the trunk that they share; alone where they share too little."""
        trunk = trunk_of(partner, start.reach, end.reach)
        if trunk is None:
            return self.find(start, end, before=rank), None
        first, last = follow(trunk)
        own = shadow(trunk)
        head, trunk = parted(self.find(start, first, shun=own, before=rank), trunk)
        tail, backwards = parted(self.find(end, last, shun=own, before=rank), tuple(reversed(trunk)))
        trunk = tuple(reversed(backwards))
        if length_of(trunk) < SHORTEST:
            return self.find(start, end, before=rank), None
        return (*head, *trunk[1:-1], *reversed(tail)), trunk

    def _rank(self, wire_id: str) -> float:
        return self.ranks.get(wire_id, math.inf)

    def _note_zone(self, wire_id: str) -> None:
        self.zones.put(wire_id, self._looked)

    def lift(self, wire_id: str) -> None:
        """Take a wire off the board; unknown wires are ignored."""
        self.routes.pop(wire_id, None)
        self.trunks.pop(wire_id, None)
        self._tracks.pop(wire_id, None)
        self._wires.drop(wire_id)
        self.zones.drop(wire_id)

    def find(
        self,
        start: Port,
        end: Port,
        clear: float = CLEAR,
        shun: tuple[Rect, ...] = (),
        before: float = math.inf,
        ends: tuple[Point, ...] = (),
    ) -> Route:
        """The best route between two ports as the board stands; nothing is kept.

        ``shun`` are further places that it may not run through; wires from rank ``before`` on are not minded. Wires
        on ``ends``, the two ports where not given, are kin.
        """
        (ax, ay), (bx, by) = start.exit, end.exit
        span = (min(ax, bx), min(ay, by), max(ax, bx), max(ay, by))
        ends = ends or (start.point, end.point)
        found = None
        for reach in _REGIONS:
            region = grown(span, reach)
            around = self.around(region, clear, ends, before)
            around = replace(around, bodies=[*around.bodies, *shun]) if shun else around
            found = route(start, end, around, region)
            if found is not None:
                break
        self._looked.append(grown(region, clear))
        return plain_route(start, end) if found is None else in_lanes(found, around)

    def around(
        self, region: Rect, clear: float = CLEAR, ends: tuple[Point, ...] = (), before: float = math.inf
    ) -> Surroundings:
        """What lies in a region; wires that end on one of the points ``ends`` are kin."""
        near = grown(region, clear)
        strangers: list[Track] = []
        kin: list[Track] = []
        for name in self._wires.near(region):
            if self._rank(name) >= before < math.inf:
                continue
            line = self.routes[name]
            group = kin if any(_same(end, own) for end in ends for own in (line[0], line[-1])) else strangers
            group.extend(track for track in self._tracks[name] if touching(_box_of(track), region))
        return Surroundings(
            bodies=[rect for name in self._bodies.near(near) for rect in self._bodies.rects(name)],
            labels=[rect for name in self._labels.near(region) for rect in self._labels.rects(name)],
            tracks=strangers,
            kin=kin,
            clear=clear,
        )

    def through(self, rect: Rect) -> set[str]:
        """Wires that run through a rectangle."""
        return {
            name
            for name in self._wires.near(rect)
            if any(crosses(track, rect) for track in self._tracks[name])
        }

    def text_spot(self, wire_id: str, width: float, height: float) -> Point | None:
        """A free place (its top left corner) for a wire's text, beside its longest piece if it can be, or None.

        Texts of wires of higher rank make room.
        """
        self._texts.drop(wire_id)
        line = self.trunks.get(wire_id) or self.routes[wire_id]
        gap = 6.0 if wire_id in self.trunks else 3.0
        rank = self._rank(wire_id)
        for piece in sorted(tracks_of(line), key=lambda track: track.low - track.high):
            for rect in _text_places(piece, width, height, gap):
                if self._is_free(rect, rank):
                    self._texts.put(wire_id, (rect,))
                    return rect[0], rect[1]
        return None

    def drop_text(self, wire_id: str) -> None:
        """Free the place that a wire's text takes."""
        self._texts.drop(wire_id)

    def text_rect(self, wire_id: str) -> Rect | None:
        """Where the text of a wire stands, if it has one."""
        return next(iter(self._texts.rects(wire_id)), None)

    def text_rects(self) -> list[Rect]:
        """Where texts of wires stand."""
        return self._texts.all()

    def boxes(self, wire_id: str) -> list[Rect]:
        """The places that the pieces of a wire take; empty for a wire that is not on the board."""
        return [_box_of(track) for track in self._tracks.get(wire_id, ())]

    def kept(self, wire_id: str) -> Kept:
        """Where a wire lies, so that it can be put back."""
        return Kept(self.routes[wire_id], self.trunks.get(wire_id), self.zones.rects(wire_id))

    def keep_shifted(self, wire_id: str, kept: Kept, dx: float, dy: float) -> None:
        """Put a wire where it lay, or shifted from there."""

        def moved(line: Route) -> Route:
            return tuple((x + dx, y + dy) for x, y in line) if dx or dy else line

        self.keep(wire_id, moved(kept.line), None if kept.trunk is None else moved(kept.trunk))
        self.zones.put(wire_id, kept.zone)

    def keep(self, wire_id: str, line: Route, trunk: Route | None = None) -> Route:
        """Put a wire on a route that is known already."""
        self.routes[wire_id] = line
        self.trunks.pop(wire_id, None)
        if trunk is not None:
            self.trunks[wire_id] = trunk
        self._tracks[wire_id] = tracks_of(line)
        self._wires.put(wire_id, (_box_of(track) for track in self._tracks[wire_id]))
        return line

    def _is_free(self, rect: Rect, rank: float) -> bool:
        return not (
            self._bodies.near(rect)
            or self._labels.near(rect)
            or self._wires.near(rect)
            or any(self._rank(name) < rank for name in self._texts.near(rect))
        )


def _same(a: Point, b: Point) -> bool:
    return abs(a[0] - b[0]) < _SAME and abs(a[1] - b[1]) < _SAME


def _box_of(track: Track) -> Rect:
    low, high, at = track.low, track.high, track.at
    if track.level:
        return low - _MARGIN, at - _MARGIN, high + _MARGIN, at + _MARGIN
    return at - _MARGIN, low - _MARGIN, at + _MARGIN, high + _MARGIN


def _text_places(piece: Track, width: float, height: float, gap: float) -> Iterator[Rect]:
    """Rectangles beside a straight piece: its middle first, then its quarters; above and right first."""
    for share in (0.5, 0.3, 0.7):
        centre = piece.low + (piece.high - piece.low) * share
        if piece.level:
            left = centre - width / 2
            if left < piece.low + 2 or left + width > piece.high - 2:
                continue
            for top in (piece.at - gap - height, piece.at + gap):
                yield left, top, left + width, top + height
        elif piece.high - piece.low >= height + 8:
            top = centre - height / 2
            for left in (piece.at + gap + 2, piece.at - gap - 2 - width):
                yield left, top, left + width, top + height
