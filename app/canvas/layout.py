"""The layout: where every part, terminal and wire of a sheet lies, kept in step with the sheet.

It knows geometry only. All of it follows from the sheet alone: a sheet that is opened again, or drawn into a file,
looks as it did on the screen. Where something changes, only what looked at that place is laid again.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from app.canvas import symbols
from app.canvas.board import STRAP_CLEAR, Board, Kept, port_at
from app.canvas.cells import touching
from app.canvas.pairs import Sides, sides_of
from app.canvas.places import Place, place_of
from app.canvas.routing import CLEAR, Point, Port, Rect
from app.canvas.settling import settle
from app.theme import Theme
from core.catalogue import Catalogue
from core.edits import Change
from core.sheet import AnyPart, Sheet, Wire, split_terminal

__all__ = ["Layout", "Place", "place_of"]

_BESIDE = 100.0  # within so much the joints of a twisted pair lie side by side
_FEW = 80  # up to so many wires a move shows at once how all others make room


@dataclass
class _Preview:
    """What a running move has to put back: where the parts were, and the wires laid since."""

    places: dict[str, Place]
    moved: set[str]
    shift: Point = (0.0, 0.0)
    kept: dict[str, Kept] = field(default_factory=dict)


class Layout:
    """Places of parts by id and routes of wires by id (in ``board``).

    ``ends`` counts the wires on each terminal; ``followers`` names the leading wire of each second wire of a
    twisted pair; ``ranks`` says in which place each wire is laid; ``disturbed`` are the places that the last
    update left or took.
    """

    def __init__(self, sheet: Sheet, catalogue: Catalogue, theme: Theme) -> None:
        self.board = Board()
        self.places: dict[str, Place] = {}
        self.ends: dict[str, int] = {}
        self.followers: dict[str, str] = {}
        self.ranks: dict[str, int] = {}
        self.disturbed: list[Rect] = []
        self._theme = theme
        self._catalogue = catalogue
        self._sheet = sheet
        self._wires_on: defaultdict[str, set[str]] = defaultdict(set)
        self._leaders: dict[str, str] = {}
        self._seconds: dict[str, str] = {}
        self._apart_pairs: set[str] = set()
        self._preview: _Preview | None = None
        for part in sheet.parts:
            self._put(place_of(part, catalogue, theme))
        self._index_wires()
        self._lay(wire.id for wire in sheet.wires)

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
        return {wire_id for part_id in part_ids for wire_id in self._wires_on.get(part_id, ())}

    def is_free(self, rect: Rect) -> bool:
        """Whether no part lies in a rectangle."""
        return not self.board.parts_near(rect)

    # following the sheet

    def update(self, sheet: Sheet, catalogue: Catalogue, change: Change) -> set[str]:
        """Follow the sheet; answers the wires that lie elsewhere now (or are new)."""
        self.end_preview()
        old, self._sheet, self._catalogue = self._sheet, sheet, catalogue
        self.disturbed = []
        touched = set(change.parts)
        if change.sheet:
            touched |= {part.id for part in sheet.parts if part.kind == "tube"}
        moved = {
            part_id
            for part_id in sorted(touched)
            if self._replace(part_id, self._place_of(sheet.part_by_id.get(part_id)))
        }
        stale = self._follow_wires(old, change.wires) | self._pair_again(moved)
        return self._settle((stale | self.wires_on(moved)) & self.ranks.keys())

    def _place_of(self, part: AnyPart | None) -> Place | None:
        return None if part is None else place_of(part, self._catalogue, self._theme)

    def _is_reordered(self, old: Sheet) -> bool:
        """Whether wires that stay have changed places in the sheet, and so are laid in another order."""
        now, before = self._sheet.wire_by_id, old.wire_by_id
        both = now.keys() & before.keys()
        return [one for one in now if one in both] != [one for one in before if one in both]

    def _follow_wires(self, old: Sheet, changed: Iterable[str]) -> set[str]:
        """Take wires off the board that go elsewhere now, and index the rest; answers what must be laid."""
        elsewhere = {
            wire_id
            for wire_id in changed
            if _course(old.wire_by_id.get(wire_id)) != _course(self._sheet.wire_by_id.get(wire_id))
        }
        if self._is_reordered(old):
            elsewhere = old.wire_by_id.keys() | self._sheet.wire_by_id.keys()
        if not elsewhere:
            return elsewhere
        stale = self._with_partners(elsewhere)
        for wire_id in elsewhere:
            self._lift(wire_id)
        self._index_wires()
        return stale | self._with_partners(elsewhere)

    def _pair_again(self, moved: set[str]) -> set[str]:
        """See after a move which wires still run side by side; answers those that found or lost their partner."""
        if not self._apart_pairs & self.wires_on(moved):
            return set()
        before = set(self._seconds.items())
        self._index_wires()
        changed = {one for pair in before ^ set(self._seconds.items()) for one in pair}
        self._remember(changed)
        for wire_id in changed:
            self._lift(wire_id)
        return changed

    def _lift(self, wire_id: str) -> None:
        self.disturbed += self.board.boxes(wire_id)
        self.board.lift(wire_id)
        self.followers.pop(wire_id, None)

    def _replace(self, part_id: str, place: Place | None) -> bool:
        """Put, move or remove one part; answers whether wires on it must be laid again."""
        before, taken = self.places.get(part_id), self.board.taken_by(part_id)
        if place is None:
            self.places.pop(part_id, None)
            self.board.remove_part(part_id)
        else:
            self._put(place)
        now = self.board.taken_by(part_id)
        if now != taken:
            self.disturbed += taken ^ now
        if before is None or place is None:
            return True
        return (before.part.at, before.body, before.terminals) != (place.part.at, place.body, place.terminals)

    def _put(self, place: Place) -> None:
        self.places[place.part.id] = place
        if place.part.kind == "note":
            self.board.place_words(place.part.id, place.body)
        elif place.part.kind != "frame":
            self.board.place(place.part.id, place.body, place.label)

    # moving on trial

    def preview(self, part_ids: Iterable[str], dx: float, dy: float) -> set[str]:
        """Show parts shifted from where the sheet has them; answers the wires that lie elsewhere than before."""
        moved = [part_id for part_id in part_ids if part_id in self.places]
        preview = self._preview
        if preview is None:
            preview = self._preview = _Preview(
                {part_id: self.places[part_id] for part_id in moved}, set(moved)
            )
        preview.shift = (dx, dy)
        self.disturbed = []
        for part_id in moved:
            self._replace(part_id, preview.places[part_id].shifted(dx, dy))
        attached = self.wires_on(moved)
        if len(self.ranks) <= _FEW:
            return self._settle(attached | self._pair_again(set(moved)))
        # a large sheet settles when the parts are let go; until then only their own wires follow
        return self._lay_moved(self._with_partners(attached))

    def _lay_moved(self, wire_ids: set[str]) -> set[str]:
        """Lay the wires of parts that are being moved; one whose both ends move only moves along."""
        preview = self._preview
        assert preview is not None
        for leader in sorted(set(map(self._leader_of, wire_ids)), key=self.ranks.__getitem__):
            group = self._group(leader)
            self._remember(group)
            if _sockets(self._sheet.wire_by_id[leader]) <= preview.moved:
                for wire_id in group:
                    self.board.keep_shifted(wire_id, preview.kept[wire_id], *preview.shift)
            else:
                self._lay_group(leader)
        return wire_ids

    def end_preview(self) -> set[str]:
        """Put everything back where the sheet has it; answers the wires that were put back."""
        preview, self._preview = self._preview, None
        if preview is None:
            return set()
        self.disturbed = []
        for part_id, place in preview.places.items():
            self._replace(part_id, place)
        self._pair_again(preview.moved)
        for wire_id, kept in preview.kept.items():
            self.disturbed += self.board.boxes(wire_id)
            self.board.keep_shifted(wire_id, kept, 0.0, 0.0)
            self.disturbed += self.board.boxes(wire_id)
            self.followers.pop(wire_id, None)
        for wire_id in preview.kept:
            self._note_follower(wire_id)
        return set(preview.kept)

    def _remember(self, wire_ids: Iterable[str]) -> None:
        if self._preview is not None:
            for wire_id in wire_ids:
                if wire_id not in self._preview.kept:
                    self._preview.kept[wire_id] = self.board.kept(wire_id)

    # laying

    def _settle(self, wire_ids: Iterable[str]) -> set[str]:
        """Lay wires, and whatever looked at the places that were disturbed; answers what lies elsewhere now."""
        stale = {self._leader_of(wire_id) for wire_id in wire_ids}
        for rect in self.disturbed:
            stale |= self._looked_at(rect)
        laid: set[str] = set()

        def redo(leader: str) -> list[Rect]:
            group = self._group(leader)
            before = [(self.board.routes.get(one), self.board.trunks.get(one)) for one in group]
            boxes = [rect for one in group for rect in self.board.boxes(one)]
            self._lay_group(leader)
            if before == [(self.board.routes[one], self.board.trunks.get(one)) for one in group]:
                return []
            laid.update(group)
            boxes += [rect for one in group for rect in self.board.boxes(one)]
            self.disturbed += boxes
            return boxes

        settle(stale, self.ranks, redo, self._looked_at)
        return laid

    def _looked_at(self, rect: Rect) -> set[str]:
        return {self._leader_of(wire_id) for wire_id in self.board.zones.near(rect)}

    def _lay(self, wire_ids: Iterable[str]) -> None:
        """Lay wires that are not on the board yet."""
        leaders = {self._leader_of(wire_id) for wire_id in wire_ids}
        for leader in sorted(leaders, key=self.ranks.__getitem__):
            self._lay_group(leader)

    def _group(self, leader: str) -> tuple[str, ...]:
        second = self._seconds.get(leader)
        return (leader,) if second is None else (leader, second)

    def _leader_of(self, wire_id: str) -> str:
        return self._leaders.get(wire_id, wire_id)

    def _lay_group(self, leader: str) -> None:
        """Lay a wire, and the second one of its pair along it."""
        group = self._group(leader)
        self._remember(group)
        for wire_id in group:
            self.board.lift(wire_id)
            self.followers.pop(wire_id, None)
        wire = self._sheet.wire_by_id[leader]
        self._lay_alone(wire)
        if len(group) == 1:
            return
        second = self._sheet.wire_by_id[group[1]]
        first, last = self._ends_beside(wire, second)
        self.board.lay_pair(
            second.id,
            leader,
            self.port(first, towards=self.terminal_point(last)),
            self.port(last, towards=self.terminal_point(first)),
        )
        self._note_follower(second.id)

    def _ends_beside(self, wire: Wire, second: Wire) -> tuple[str, str]:
        """The ends of the second wire of a pair: that beside the first one's start, and the other."""
        parts, others = _part_ids(wire), _part_ids(second)
        if parts[0] == others[0] or parts[1] == others[1]:
            return second.start, second.end
        if parts[0] == others[1] or parts[1] == others[0]:
            return second.end, second.start
        straight = self._apart(wire.start, second.start) + self._apart(wire.end, second.end)
        crossed = self._apart(wire.start, second.end) + self._apart(wire.end, second.start)
        return (second.start, second.end) if straight <= crossed else (second.end, second.start)

    def _run_together(self, wire: Wire, second: Wire) -> bool:
        """Whether two wires that share a twist are drawn twisted: their ends lie on the same parts, or side by side."""
        if len(_sockets(wire)) == 1 or len(_sockets(second)) == 1:
            return False
        first, last = self._ends_beside(wire, second)
        return all(
            split_terminal(one)[0] == split_terminal(other)[0] or self._apart(one, other) <= _BESIDE
            for one, other in ((wire.start, first), (wire.end, last))
        )

    def _apart(self, terminal: str, other: str) -> float:
        (ax, ay), (bx, by) = self.port(terminal).point, self.port(other).point
        return math.dist((ax, ay), (bx, by))

    def _note_follower(self, wire_id: str) -> None:
        if wire_id in self._leaders and wire_id in self.board.trunks:
            self.followers[wire_id] = self._leaders[wire_id]

    def _lay_alone(self, wire: Wire) -> None:
        via = self._via(wire)
        clear = STRAP_CLEAR if len(_sockets(wire)) == 1 else CLEAR
        start, end = (
            self.port(wire.start, clear, via[0] if via else self.terminal_point(wire.end)),
            self.port(wire.end, clear, via[-1] if via else self.terminal_point(wire.start)),
        )
        self.board.lay(wire.id, start, end, clear, via)

    def _via(self, wire: Wire) -> tuple[Point, ...]:
        """The corners that are set for a wire; they go along while both its ends are being moved."""
        preview = self._preview
        if not wire.via or preview is None or not _sockets(wire) <= preview.moved:
            return wire.via
        dx, dy = preview.shift
        return tuple((x + dx, y + dy) for x, y in wire.via)

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

    def _with_partners(self, wire_ids: Iterable[str]) -> set[str]:
        return {one for wire_id in wire_ids for one in self._group(self._leader_of(wire_id))}

    def _index_wires(self) -> None:
        """Note what is on each terminal, which wires are pairs, and in which order they are laid.

        Straps come first, as they have the least choice, then the order of the sheet; the two wires of a pair go
        together. A twist of three or more wires is drawn untwisted.
        """
        self._wires_on.clear()
        self.ends = {}
        for wire in self._sheet.wires:
            for terminal in (wire.start, wire.end):
                self._wires_on[split_terminal(terminal)[0]].add(wire.id)
                self.ends[terminal] = self.ends.get(terminal, 0) + 1
        twisted = list(_twisted(self._sheet))
        self._seconds = {
            first.id: second.id for first, second in twisted if self._run_together(first, second)
        }
        self._apart_pairs = {
            wire.id for pair in twisted if _sockets(pair[0]) != _sockets(pair[1]) for wire in pair
        }
        self._leaders = {second: leader for leader, second in self._seconds.items()}
        leaders = [wire for wire in self._sheet.wires if wire.id not in self._leaders]
        ordered = sorted(leaders, key=lambda wire: len(_sockets(wire)))
        self.ranks = {
            one: rank for rank, one in enumerate(one for wire in ordered for one in self._group(wire.id))
        }
        self.board.ranks = self.ranks

    def bounds(self) -> Rect | None:
        """The rectangle around all parts, labels and wires; None for an empty sheet."""
        rects = [rect for place in self.places.values() for rect in (place.body, place.label)]
        points = [point for line in self.board.routes.values() for point in line]
        if not rects:
            return None
        rects += self.board.text_rects()
        xs = [x for rect in rects for x in (rect[0], rect[2])] + [x for x, _ in points]
        ys = [y for rect in rects for y in (rect[1], rect[3])] + [y for _, y in points]
        return min(xs), min(ys), max(xs), max(ys)

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


def _part_ids(wire: Wire) -> tuple[str, str]:
    return split_terminal(wire.start)[0], split_terminal(wire.end)[0]


def _sockets(wire: Wire) -> frozenset[str]:
    return frozenset(_part_ids(wire))


def _course(wire: Wire | None) -> tuple[object, ...] | None:
    """What decides where a wire lies."""
    return None if wire is None else (wire.start, wire.end, wire.twist, wire.via)


def _twisted(sheet: Sheet) -> Iterator[tuple[Wire, Wire]]:
    """Wires that share a twist, two by two, in the order of the sheet."""
    twisted: defaultdict[str, list[Wire]] = defaultdict(list)
    for wire in sheet.wires:
        if wire.twist:
            twisted[wire.twist].append(wire)
    for group in twisted.values():
        if len(group) == 2:
            yield group[0], group[1]
