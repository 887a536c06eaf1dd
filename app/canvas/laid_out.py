"""What is laid out, to be asked: where parts, terminals and wires lie. It changes nothing."""

from __future__ import annotations

import math
from collections.abc import Iterable

from app.canvas import symbols
from app.canvas.board import Board, port_at
from app.canvas.cells import touching
from app.canvas.pairs import Sides, sides_of
from app.canvas.places import Place
from app.canvas.routing import CLEAR, Point, Port, Rect
from app.canvas.wire_order import WireOrder
from core.catalogue import Catalogue
from core.sheet import split_terminal


class LaidOut:
    """Places of parts by id and routes of wires by id (in ``board``).

    ``order`` says in which order wires are laid; ``followers`` names the leading wire of each second wire of a pair
    that is drawn twisted.
    """

    order: WireOrder

    def __init__(self, catalogue: Catalogue) -> None:
        self.board = Board()
        self.places: dict[str, Place] = {}
        self.followers: dict[str, str] = {}
        self._catalogue = catalogue

    @property
    def ranks(self) -> dict[str, int]:
        """In which place each wire is laid."""
        return self.order.ranks

    @property
    def ends(self) -> dict[str, int]:
        """How many wires end on each terminal."""
        return self.order.ends

    def terminal_point(self, terminal: str) -> Point | None:
        """The place of ``V1.4`` on the sheet; None if there is no such terminal."""
        part_id, name = split_terminal(terminal)
        place = self.places.get(part_id)
        return None if place is None else place.point(name)

    def terminal_near(self, x: float, y: float, radius: float) -> str | None:
        """The terminal nearest to a point within ``radius``, or None."""
        best, least = None, radius
        for part_id in self.board.parts_near((x - radius, y - radius, x + radius, y + radius)):
            place = self.places[part_id]
            for name, terminal in place.terminals.items():
                far = (
                    (place.part.at[0] + terminal.x - x) ** 2 + (place.part.at[1] + terminal.y - y) ** 2
                ) ** 0.5
                if far <= least:
                    best, least = f"{part_id}.{name}", far
        return best

    def port(self, terminal: str, clear: float = CLEAR, towards: Point | None = None) -> Port:
        """The port at which a wire to ``V1.4`` ends; from a joint it leaves towards the point where it goes."""
        part_id, name = split_terminal(terminal)
        place = self.places[part_id]
        found = place.terminals.get(name) or symbols.terminal(place.part, self._catalogue, name)
        x, y = place.part.at[0] + found.x, place.part.at[1] + found.y
        way = found.dx, found.dy
        if towards is not None and place.part.kind == "joint":
            way = _way_to(towards[0] - x, towards[1] - y)
        return port_at(x, y, way, place.body, clear)

    def wires_on(self, part_ids: Iterable[str]) -> set[str]:
        """Wires that end on any of these parts."""
        return self.order.wires_on(part_ids)

    def is_free(self, rect: Rect) -> bool:
        """Whether no part lies in a rectangle."""
        return not self.board.parts_near(rect)

    def sides(self, wire_ids: Iterable[str]) -> dict[str, Sides]:
        """On which sides of their trunk the wires of twisted pairs begin and end."""
        second = {leader: follower for follower, leader in self.followers.items()}
        found: dict[str, Sides] = {}
        for wire_id in wire_ids:
            trunk = self.board.trunks.get(wire_id)
            follower = wire_id if wire_id in self.followers else second.get(wire_id)
            if trunk is not None and follower is not None:
                first, last = sides_of(self.board.routes[follower], trunk)
                found[wire_id] = (first, last) if follower == wire_id else (-first, -last)
        return found

    def bounds(self) -> Rect | None:
        """The rectangle around all parts, labels and wires in whole units; None for an empty sheet."""
        rects = [rect for place in self.places.values() for rect in (place.body, place.label)]
        points = [point for line in self.board.routes.values() for point in line]
        if not rects:
            return None
        rects += self.board.text_rects()
        xs = [x for rect in rects for x in (rect[0], rect[2])] + [x for x, _ in points]
        ys = [y for rect in rects for y in (rect[1], rect[3])] + [y for _, y in points]
        return math.floor(min(xs)), math.floor(min(ys)), math.ceil(max(xs)), math.ceil(max(ys))

    def parts_within(self, rect: Rect) -> set[str]:
        """Parts whose body touches a rectangle."""
        return {
            part_id for part_id in self.board.parts_near(rect) if touching(self.places[part_id].body, rect)
        }


def _way_to(dx: float, dy: float) -> Point:
    """The axis-parallel way that leads most nearly in a direction."""
    if abs(dx) > abs(dy):
        return (1.0, 0.0) if dx > 0 else (-1.0, 0.0)
    return (0.0, 1.0) if dy > 0 else (0.0, -1.0)
