"""The routing board: where bodies, labels and wires lie, and where the next wire goes.

The board remembers every route, so that laying one wire again leaves all others where they are.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

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
    crosses,
    grown,
    length_of,
    plain_route,
    route,
    tracks_of,
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


class Board:
    """Bodies and labels of parts by part id, routes by wire id."""

    def __init__(self) -> None:
        self.routes: dict[str, Route] = {}
        self.trunks: dict[str, Route] = {}
        self._tracks: dict[str, list[Track]] = {}
        self._bodies = Cells()
        self._labels = Cells()
        self._wires = Cells()
        self._texts = Cells()

    def place(self, part_id: str, body: Rect, label: Rect) -> None:
        """Put a part, or move it."""
        self._bodies.put(part_id, (body,))
        self._labels.put(part_id, (label,))

    def place_words(self, part_id: str, rect: Rect) -> None:
        """Put a note: words that wires go round as they do round labels."""
        self._bodies.drop(part_id)
        self._labels.put(part_id, (rect,))

    def remove_part(self, part_id: str) -> None:
        """Take a part away."""
        self._bodies.drop(part_id)
        self._labels.drop(part_id)

    def body(self, part_id: str) -> Rect:
        """The body of a part that was placed."""
        return self._bodies.rects(part_id)[0]

    def parts_near(self, rect: Rect) -> list[str]:
        """Parts whose body or label shares area with a rectangle."""
        return sorted({*self._bodies.near(rect), *self._labels.near(rect)})

    def lay(self, wire_id: str, start: Port, end: Port, clear: float = CLEAR) -> Route:
        """Find a route for a wire, and keep it; the wire's own old route is no obstacle."""
        self.lift(wire_id)
        return self.keep(wire_id, self.find(start, end, clear))

    def lay_pair(self, wire_id: str, partner_id: str, start: Port, end: Port) -> Route:
        """Lay a wire along its partner's route, which runs between the same parts, as a twisted pair."""
        self.lift(wire_id)
        trunk = trunk_of(self.routes[partner_id], start.reach, end.reach)
        if trunk is None:
            return self.keep(wire_id, self.find(start, end))
        first, last = follow(trunk)
        own = shadow(trunk)
        head, trunk = parted(self.find(start, first, shun=own), trunk)
        tail, backwards = parted(self.find(end, last, shun=own), tuple(reversed(trunk)))
        trunk = tuple(reversed(backwards))
        if length_of(trunk) < SHORTEST:
            return self.keep(wire_id, self.find(start, end))
        line = (*head, *trunk[1:-1], *reversed(tail))
        self.trunks[partner_id] = trunk
        return self.keep(wire_id, line, trunk)

    def lift(self, wire_id: str) -> None:
        """Take a wire off the board; unknown wires are ignored."""
        self.routes.pop(wire_id, None)
        self.trunks.pop(wire_id, None)
        self._tracks.pop(wire_id, None)
        self._wires.drop(wire_id)
        self._texts.drop(wire_id)

    def find(self, start: Port, end: Port, clear: float = CLEAR, shun: tuple[Rect, ...] = ()) -> Route:
        """The best route between two ports as the board stands; nothing is kept.

        ``shun`` are further places that it may not run through.
        """
        (ax, ay), (bx, by) = start.exit, end.exit
        span = (min(ax, bx), min(ay, by), max(ax, bx), max(ay, by))
        for reach in _REGIONS:
            region = grown(span, reach)
            around = self.around(region, clear, (start.point, end.point))
            around = replace(around, bodies=[*around.bodies, *shun]) if shun else around
            found = route(start, end, around, region)
            if found is not None:
                return in_lanes(found, around)
        return plain_route(start, end)

    def around(self, region: Rect, clear: float = CLEAR, ends: tuple[Point, ...] = ()) -> Surroundings:
        """What lies in a region; wires that end on one of the points ``ends`` are kin."""
        near = grown(region, clear)
        strangers: list[Track] = []
        kin: list[Track] = []
        for name in self._wires.near(region):
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
        """A free place (its top left corner) for a wire's text, beside its longest piece if it can be, or None."""
        self._texts.drop(wire_id)
        line = self.trunks.get(wire_id) or self.routes[wire_id]
        gap = 6.0 if wire_id in self.trunks else 3.0
        for piece in sorted(tracks_of(line), key=lambda track: track.low - track.high):
            for rect in _text_places(piece, width, height, gap):
                if self._is_free(rect):
                    self._texts.put(wire_id, (rect,))
                    return rect[0], rect[1]
        return None

    def drop_text(self, wire_id: str) -> None:
        """Free the place that a wire's text takes."""
        self._texts.drop(wire_id)

    def text_rects(self) -> list[Rect]:
        """Where texts of wires stand."""
        return self._texts.all()

    def texts_near(self, rect: Rect) -> list[str]:
        """Wires whose text shares area with a rectangle."""
        return self._texts.near(rect)

    def shift(self, wire_id: str, dx: float, dy: float) -> None:
        """Move a wire along with the parts at both its ends."""
        line = tuple((x + dx, y + dy) for x, y in self.routes[wire_id])
        trunk = self.trunks.get(wire_id)
        self.keep(wire_id, line, None if trunk is None else tuple((x + dx, y + dy) for x, y in trunk))

    def keep(self, wire_id: str, line: Route, trunk: Route | None = None) -> Route:
        """Put a wire on a route that is known already."""
        self._texts.drop(wire_id)
        self.routes[wire_id] = line
        self.trunks.pop(wire_id, None)
        if trunk is not None:
            self.trunks[wire_id] = trunk
        self._tracks[wire_id] = tracks_of(line)
        self._wires.put(wire_id, (_box_of(track) for track in self._tracks[wire_id]))
        return line

    def _is_free(self, rect: Rect) -> bool:
        return not (
            self._bodies.near(rect)
            or self._labels.near(rect)
            or self._texts.near(rect)
            or self._wires.near(rect)
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
