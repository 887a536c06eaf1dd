"""The layout: where every part, terminal and wire of a sheet lies, kept in step with the sheet.

It knows geometry only. Moving one part lays again the wires on it and those its body newly covers, nothing
else.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

import msgspec

from app.canvas import symbols
from app.canvas.board import STRAP_CLEAR, Board, port_at
from app.canvas.cells import touching
from app.canvas.look import PartLook
from app.canvas.looks import SILENT
from app.canvas.pairs import Sides, sides_of
from app.canvas.routing import CLEAR, Point, Port, Rect, Route, grown
from app.canvas.symbols import Terminal
from app.theme import Theme
from core.catalogue import Catalogue
from core.edits import Change
from core.sheet import SUPPLY_KINDS, AnyPart, Sheet, Wire, split_terminal

# the figures a label must leave room for, whatever the numbers are at the moment
_HEATER_ROOM = PartLook(state="ok", values="12.60 V  −10.0 %  0.300 A")
_SUPPLY_ROOM = PartLook(state="ok", values="12.60 V  10.00 A  100 %")
_OTHER_ROOM = PartLook(values="12.60 V  10.00 W")


def _room(kind: str) -> PartLook:
    """A look whose figures are as long as those of a part of this kind get."""
    if kind in SILENT:
        return PartLook()
    if kind in ("tube", "lamp"):
        return _HEATER_ROOM
    return _SUPPLY_ROOM if kind in SUPPLY_KINDS else _OTHER_ROOM


@dataclass(frozen=True)
class Place:
    """Where one part lies on the sheet: its body, its label, and its terminals by name."""

    part: AnyPart
    body: Rect
    label: Rect
    terminals: dict[str, Terminal]

    def point(self, name: str) -> Point | None:
        """The place of a terminal on the sheet, or None if the part has no such terminal."""
        terminal = self.terminals.get(name)
        return None if terminal is None else (self.part.at[0] + terminal.x, self.part.at[1] + terminal.y)

    def shifted(self, dx: float, dy: float) -> Place:
        """The same part elsewhere."""
        return Place(
            _at(self.part, dx, dy), _moved(self.body, dx, dy), _moved(self.label, dx, dy), self.terminals
        )


def _at(part: AnyPart, dx: float, dy: float) -> AnyPart:
    return msgspec.structs.replace(part, at=(part.at[0] + dx, part.at[1] + dy))


def _moved(rect: Rect, dx: float, dy: float) -> Rect:
    return rect[0] + dx, rect[1] + dy, rect[2] + dx, rect[3] + dy


def place_of(part: AnyPart, catalogue: Catalogue, theme: Theme) -> Place:
    """Measure one part."""
    x, y = part.at
    body = symbols.body(part, catalogue)
    label = symbols.label_box(part, catalogue, _room(part.kind), theme)
    return Place(
        part,
        _moved((body.left, body.top, body.right, body.bottom), x, y),
        _moved((label.left, label.top, label.right, label.bottom), x, y),
        {terminal.name: terminal for terminal in symbols.terminals(part, catalogue)},
    )


@dataclass
class _Preview:
    """What a running move has to put back."""

    places: dict[str, Place]
    routes: dict[str, Route]
    trunks: dict[str, Route]


class Layout:
    """Places of parts by id and routes of wires by id (in ``board``).

    ``ends`` counts the wires on each terminal; ``followers`` names the leading wire of each second wire of a
    twisted pair.
    """

    def __init__(self, sheet: Sheet, catalogue: Catalogue, theme: Theme) -> None:
        self.board = Board()
        self.places: dict[str, Place] = {}
        self.ends: dict[str, int] = {}
        self.followers: dict[str, str] = {}
        self._theme = theme
        self._catalogue = catalogue
        self._sheet = sheet
        self._wires_on: defaultdict[str, set[str]] = defaultdict(set)
        self._twisted: defaultdict[str, set[str]] = defaultdict(set)
        self._preview: _Preview | None = None
        for part in sheet.parts:
            self._put(place_of(part, catalogue, theme))
        self._index_wires()
        self.lay(wire.id for wire in sheet.wires)

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

    def port(self, terminal: str, clear: float = CLEAR, towards: str = "") -> Port:
        """The port at which a wire to ``V1.4`` ends; from a joint it leaves towards its other end."""
        part_id, name = split_terminal(terminal)
        place = self.places[part_id]
        found = place.terminals.get(name) or symbols.terminal(place.part, self._catalogue, name)
        x, y = place.part.at[0] + found.x, place.part.at[1] + found.y
        way = found.dx, found.dy
        other = self.terminal_point(towards) if towards and place.part.kind == "joint" else None
        if other is not None:
            way = _way_to(other[0] - x, other[1] - y)
        return port_at(x, y, way, place.body, clear)

    def wires_on(self, part_ids: Iterable[str]) -> set[str]:
        """Wires that end on any of these parts."""
        return {wire_id for part_id in part_ids for wire_id in self._wires_on.get(part_id, ())}

    def is_free(self, rect: Rect) -> bool:
        """Whether no part lies in a rectangle."""
        return not self.board.parts_near(rect)

    def update(self, sheet: Sheet, catalogue: Catalogue, change: Change) -> set[str]:
        """Follow the sheet; answers the wires that lie elsewhere now (or are new)."""
        self.end_preview()
        before, old = self.places, self._sheet
        self._sheet, self._catalogue, self.places = sheet, catalogue, dict(before)
        touched = set(change.parts)
        if change.sheet:
            touched |= {part.id for part in sheet.parts if part.kind == "tube"}
        shifts = {part_id: self._follow_part(part_id, before.get(part_id)) for part_id in touched}
        moved = {part_id for part_id, shift in shifts.items() if shift != (0.0, 0.0)}
        stale = self._follow_wires(old, change.wires) | self.wires_on(moved)
        known = {part_id: shift for part_id, shift in shifts.items() if shift is not None}
        laid = self._lay_moved(stale & sheet.wire_by_id.keys(), known)
        return laid | self.lay(self._covered(moved) - laid)

    def _follow_wires(self, old: Sheet, changed: Iterable[str]) -> set[str]:
        """Take wires off the board that go elsewhere now, and index the rest; answers what must be laid."""
        elsewhere = {
            wire_id
            for wire_id in changed
            if _course(old.wire_by_id.get(wire_id)) != _course(self._sheet.wire_by_id.get(wire_id))
        }
        if not elsewhere:
            return elsewhere
        for wire_id in elsewhere:
            self.board.lift(wire_id)
            self.followers.pop(wire_id, None)
        left_alone = {wire_id for group in self._twisted.values() if group & elsewhere for wire_id in group}
        self._index_wires()
        return elsewhere | left_alone

    def _follow_part(self, part_id: str, before: Place | None) -> Point | None:
        """Put, move or remove one part; answers its shift where it only moved."""
        part = self._sheet.part_by_id.get(part_id)
        if part is None:
            self.places.pop(part_id, None)
            self.board.remove_part(part_id)
            return None
        place = place_of(part, self._catalogue, self._theme)
        self._put(place)
        if before is None or before.terminals != place.terminals:
            return None
        shift = part.at[0] - before.part.at[0], part.at[1] - before.part.at[1]
        return shift if _moved(before.body, *shift) == place.body else None

    def _put(self, place: Place) -> None:
        self.places[place.part.id] = place
        if place.part.kind == "note":
            self.board.place_words(place.part.id, place.body)
        elif place.part.kind != "frame":
            self.board.place(place.part.id, place.body, place.label)

    def _covered(self, part_ids: Iterable[str]) -> set[str]:
        """Wires of other parts that run through the bodies of these parts."""
        covered: set[str] = set()
        for part_id in part_ids:
            if part_id in self.places and self.places[part_id].part.kind != "frame":
                covered |= self.board.through(grown(self.places[part_id].body, -1.0)) - self.wires_on(
                    (part_id,)
                )
        return covered

    def preview(self, part_ids: Iterable[str], dx: float, dy: float) -> set[str]:
        """Show parts shifted from where the sheet has them; answers the wires laid again."""
        moved = [part_id for part_id in part_ids if part_id in self.places]
        attached = self._with_partners(self.wires_on(moved))
        if self._preview is None:
            self._preview = _Preview(
                {part_id: self.places[part_id] for part_id in moved},
                {wire_id: self.board.routes[wire_id] for wire_id in attached},
                {wire_id: self.board.trunks[wire_id] for wire_id in attached if wire_id in self.board.trunks},
            )
        for wire_id in attached:
            self._restore(wire_id)
        for part_id in moved:
            self._put(self._preview.places[part_id].shifted(dx, dy))
        return self._lay_moved(attached, dict.fromkeys(moved, (dx, dy)))

    def end_preview(self) -> set[str]:
        """Put everything back where the sheet has it; answers the wires that were put back."""
        preview = self._preview
        if preview is None:
            return set()
        for place in preview.places.values():
            self._put(place)
        for wire_id in preview.routes:
            self._restore(wire_id)
        self._preview = None
        return set(preview.routes)

    def _restore(self, wire_id: str) -> None:
        if self._preview is not None:
            trunk = self._preview.trunks.get(wire_id)
            self.board.keep(wire_id, self._preview.routes[wire_id], trunk)

    def _lay_moved(self, wire_ids: Iterable[str], shifts: dict[str, Point]) -> set[str]:
        """Lay wires after parts moved; a wire whose both ends moved alike only moves along."""
        stale = self._with_partners(wire_ids)
        kept: set[str] = set()
        for wire_id in stale:
            shift = self._common_shift(self._sheet.wire_by_id[wire_id], shifts)
            if shift is not None and wire_id in self.board.routes:
                self.board.shift(wire_id, *shift)
                kept.add(wire_id)
        kept -= self._with_partners(stale - kept)
        return kept | self.lay(stale - kept)

    def _common_shift(self, wire: Wire, shifts: dict[str, Point]) -> Point | None:
        first = shifts.get(split_terminal(wire.start)[0])
        return first if first is not None and first == shifts.get(split_terminal(wire.end)[0]) else None

    def lay(self, wire_ids: Iterable[str]) -> set[str]:
        """Lay wires, all others staying where they are; answers what was laid.

        Straps come first, as they have the least choice, then the order of the sheet.
        """
        wanted = self._with_partners(wire_ids)
        if not wanted:
            return wanted
        for wire_id in wanted:
            self.board.lift(wire_id)
            self.followers.pop(wire_id, None)
        for wire in self._in_order(wanted):
            self._lay_one(wire)
        return wanted

    def _in_order(self, wire_ids: set[str]) -> list[Wire]:
        order = {wire_id: number for number, wire_id in enumerate(self._sheet.wire_by_id)}
        wires = [self._sheet.wire_by_id[wire_id] for wire_id in sorted(wire_ids, key=order.__getitem__)]
        return sorted(wires, key=lambda wire: len(_sockets(wire)))

    def _lay_one(self, wire: Wire) -> None:
        if split_terminal(wire.start)[0] == split_terminal(wire.end)[0]:
            start, end = self.port(wire.start, STRAP_CLEAR), self.port(wire.end, STRAP_CLEAR)
            self.board.lay(wire.id, start, end, STRAP_CLEAR)
            return
        leader = self._leader(wire)
        if leader is None:
            self.board.lay(
                wire.id, self.port(wire.start, towards=wire.end), self.port(wire.end, towards=wire.start)
            )
            return
        same_way = split_terminal(wire.start)[0] == split_terminal(leader.start)[0]
        first, last = (wire.start, wire.end) if same_way else (wire.end, wire.start)
        self.board.lay_pair(
            wire.id, leader.id, self.port(first, towards=last), self.port(last, towards=first)
        )
        if wire.id in self.board.trunks:
            self.followers[wire.id] = leader.id

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

    def _leader(self, wire: Wire) -> Wire | None:
        """The wire of a twisted pair that is laid first, for the one that follows it."""
        for partner_id in self._partners((wire.id,)):
            partner = self._sheet.wire_by_id[partner_id]
            if partner_id in self.board.routes and _sockets(partner) == _sockets(wire):
                return partner
        return None

    def _partners(self, wire_ids: Iterable[str]) -> set[str]:
        """The other halves of twisted pairs; a twist of three or more wires is drawn untwisted."""
        partners: set[str] = set()
        for wire_id in wire_ids:
            wire = self._sheet.wire_by_id.get(wire_id)
            group = self._twisted.get(wire.twist, set()) if wire is not None and wire.twist else set()
            if len(group) == 2:
                partners |= group - {wire_id}
        return {wire_id for wire_id in partners if wire_id in self._sheet.wire_by_id}

    def _with_partners(self, wire_ids: Iterable[str]) -> set[str]:
        wanted = set(wire_ids)
        return wanted | self._partners(wanted)

    def _index_wires(self) -> None:
        self._wires_on.clear()
        self._twisted.clear()
        self.ends = {}
        for wire in self._sheet.wires:
            for terminal in (wire.start, wire.end):
                self._wires_on[split_terminal(terminal)[0]].add(wire.id)
                self.ends[terminal] = self.ends.get(terminal, 0) + 1
            if wire.twist:
                self._twisted[wire.twist].add(wire.id)

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


def _sockets(wire: Wire) -> frozenset[str]:
    return frozenset((split_terminal(wire.start)[0], split_terminal(wire.end)[0]))


def _course(wire: Wire | None) -> tuple[str, str, str | None] | None:
    """What decides where a wire lies."""
    return None if wire is None else (wire.start, wire.end, wire.twist)
