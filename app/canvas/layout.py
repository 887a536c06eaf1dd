"""The layout: where every part, terminal and wire of a sheet lies, kept in step with the sheet.

It knows geometry only. All of it follows from the sheet alone: a sheet that is opened again, or drawn into a file,
looks as it did on the screen. Where something changes, only what looked at that place is laid again.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace

from app.canvas.board import STRAP_CLEAR
from app.canvas.cells import Cells
from app.canvas.laid_out import LaidOut
from app.canvas.occupancy import Kept
from app.canvas.places import Place, place_of
from app.canvas.routing import CLEAR, Point, Rect
from app.canvas.settling import settle
from app.canvas.wire_order import WireOrder, part_ids
from app.theme import Theme
from core.catalogue import Catalogue
from core.edits import Change
from core.sheet import AnyPart, Sheet, Wire

__all__ = ["Layout", "Place", "place_of"]

_FEW = 80  # up to so many wires a move shows at once how all others make room


@dataclass
class _Preview:
    """What a running move has to put back: where the parts were, and the wires laid since."""

    places: dict[str, Place]
    moved: set[str]
    shift: Point = (0.0, 0.0)
    via: dict[str, tuple[Point, ...]] = field(default_factory=dict)
    kept: dict[str, Kept] = field(default_factory=dict)


class Layout(LaidOut):
    """What is laid out, kept in step with the sheet.

    ``disturbed`` are the places that the last update left or took, ``relabelled`` the parts whose label changed sides
    in it.
    """

    def __init__(self, sheet: Sheet, catalogue: Catalogue, theme: Theme) -> None:
        super().__init__(catalogue)
        self.disturbed: list[Rect] = []
        self.relabelled: set[str] = set()
        self._theme = theme
        self._sheet = sheet
        self._preview: _Preview | None = None
        self._label_zones = Cells()
        for part in sheet.parts:
            self._put(place_of(part, catalogue, theme))
        self._rank_parts()
        self._settle_labels(self.places)
        self.order = self._ordered()
        self._lay(wire.id for wire in sheet.wires)

    def _ordered(self) -> WireOrder:
        order = WireOrder(self._sheet, lambda terminal: self.port(terminal).point)
        self.board.ranks = order.ranks
        return order

    # following the sheet

    def update(self, sheet: Sheet, catalogue: Catalogue, change: Change) -> set[str]:
        """Follow the sheet; answers the wires that lie elsewhere now (or are new)."""
        self.end_preview()
        old, self._sheet, self._catalogue = self._sheet, sheet, catalogue
        self.disturbed, self.relabelled = [], set()
        touched = set(change.parts)
        if change.sheet:
            touched |= {part.id for part in sheet.parts if part.kind == "tube"}
        moved = {
            part_id
            for part_id in sorted(touched)
            if self._replace(part_id, self._place_of(sheet.part_by_id.get(part_id)))
        }
        self._settle_labels(sheet.part_by_id if self._rank_parts() else touched & sheet.part_by_id.keys())
        stale = self._follow_wires(old, change.wires) | self._pair_again(moved)
        return self._settle((stale | self.wires_on(moved)) & self.ranks.keys())

    def _place_of(self, part: AnyPart | None) -> Place | None:
        return None if part is None else place_of(part, self._catalogue, self._theme)

    def _rank_parts(self) -> bool:
        """Note in which order labels find their sides, notes first; answers whether parts that stay changed places."""
        before = self.board.part_ranks
        self.board.part_ranks = {
            part.id: -1 if part.kind == "note" else rank for rank, part in enumerate(self._sheet.parts)
        }
        both = [one for one in self.board.part_ranks if one in before]
        return both != [one for one in before if one in self.board.part_ranks]

    def _settle_labels(self, part_ids: Iterable[str]) -> None:
        """Let the labels of parts, and those near what was disturbed, take their first free sides."""
        stale = set(part_ids)
        for rect in self.disturbed:
            stale.update(self._label_zones.near(rect))

        def redo(part_id: str) -> list[Rect]:
            place = self.places[part_id]
            free = (side for side, rect in enumerate(place.labels) if self.board.is_label_free(part_id, rect))
            side = next(free, 0)
            if side == place.side:
                return []
            self._put(replace(place, side=side))
            self.relabelled.add(part_id)
            moved = [place.label, place.labels[side]]
            self.disturbed += moved
            return moved

        settle(stale, self.board.part_ranks, redo, self._label_zones.near)

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
        stale = self.order.with_partners(elsewhere)
        for wire_id in elsewhere:
            self._lift(wire_id)
        self.order = self._ordered()
        return stale | self.order.with_partners(elsewhere)

    def _pair_again(self, moved: set[str]) -> set[str]:
        """See after a move which wires still run side by side; answers those that found or lost their partner."""
        if not self.order.movable_pairs & self.wires_on(moved):
            return set()
        before = set(self.order.seconds.items())
        self.order = self._ordered()
        changed = {one for pair in before ^ set(self.order.seconds.items()) for one in pair}
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
            self._label_zones.drop(part_id)
            self.board.remove_part(part_id)
        else:
            self._put(
                place if before is None else replace(place, side=min(before.side, len(place.labels) - 1))
            )
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
            self.board.place(place.part.id, place.body, place.label, place.volts, place.wide_volts)
            self._label_zones.put(place.part.id, place.labels)

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
        self.disturbed, self.relabelled = [], set()
        is_small = len(self.ranks) <= _FEW
        for part_id in moved:
            place = preview.places[part_id].shifted(dx, dy)
            # measured afresh, so that not even the last figure differs once the parts are let go
            self._replace(part_id, self._place_of(place.part) if is_small else place)
        attached = self.wires_on(moved)
        if is_small:
            self._settle_labels(moved)
            return self._settle(attached | self._pair_again(set(moved)))
        # a large sheet settles when the parts are let go; until then only their own wires follow
        return self._lay_moved(self.order.with_partners(attached))

    def preview_bends(self, wire_id: str, via: tuple[Point, ...]) -> set[str]:
        """Show a wire through other corners; answers the wires that lie elsewhere than before."""
        if self._preview is None:
            self._preview = _Preview({}, set())
        self._preview.via = {wire_id: via}
        self.disturbed, self.relabelled = [], set()
        if len(self.ranks) <= _FEW:
            return self._settle((wire_id,))
        self._lay_group(self.order.leader_of(wire_id))
        return self.order.with_partners((wire_id,))

    def _lay_moved(self, wire_ids: set[str]) -> set[str]:
        """Lay the wires of parts that are being moved; one whose both ends move only moves along."""
        preview = self._preview
        assert preview is not None
        for leader in sorted(set(map(self.order.leader_of, wire_ids)), key=self.ranks.__getitem__):
            group = self.order.group(leader)
            self._remember(group)
            if part_ids(self._sheet.wire_by_id[leader]) <= preview.moved:
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
        self.disturbed, self.relabelled = [], set()
        for part_id, place in preview.places.items():
            self._replace(part_id, place)
        if len(self.ranks) <= _FEW:
            self._settle_labels(preview.places)
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
        stale = {self.order.leader_of(wire_id) for wire_id in wire_ids}
        for rect in self.disturbed:
            stale |= self._looked_at(rect)
        laid: set[str] = set()

        def redo(leader: str) -> list[Rect]:
            group = self.order.group(leader)
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
        return {self.order.leader_of(wire_id) for wire_id in self.board.zones.near(rect)}

    def _lay(self, wire_ids: Iterable[str]) -> None:
        """Lay wires that are not on the board yet."""
        leaders = {self.order.leader_of(wire_id) for wire_id in wire_ids}
        for leader in sorted(leaders, key=self.ranks.__getitem__):
            self._lay_group(leader)

    def _lay_group(self, leader: str) -> None:
        """Lay a wire, and the second one of its pair along it."""
        group = self.order.group(leader)
        self._remember(group)
        for wire_id in group:
            self.board.lift(wire_id)
            self.followers.pop(wire_id, None)
        wire = self._sheet.wire_by_id[leader]
        self._lay_alone(wire, wide=len(group) == 2)
        if len(group) == 1:
            return
        second = self._sheet.wire_by_id[group[1]]
        first, last = self.order.ends_beside(wire, second)
        self.board.lay_pair(
            second.id,
            leader,
            self.port(first, towards=self.terminal_point(last)),
            self.port(last, towards=self.terminal_point(first)),
        )
        self._note_follower(second.id)

    def _note_follower(self, wire_id: str) -> None:
        if wire_id in self.order.leaders and wire_id in self.board.trunks:
            self.followers[wire_id] = self.order.leaders[wire_id]

    def _lay_alone(self, wire: Wire, wide: bool) -> None:
        via = self._via(wire)
        clear = STRAP_CLEAR if len(part_ids(wire)) == 1 else CLEAR
        start, end = (
            self.port(wire.start, clear, via[0] if via else self.terminal_point(wire.end)),
            self.port(wire.end, clear, via[-1] if via else self.terminal_point(wire.start)),
        )
        self.board.lay(wire.id, start, end, clear, via, wide)

    def _via(self, wire: Wire) -> tuple[Point, ...]:
        """The corners that are set for a wire; they go along while both its ends are being moved."""
        preview = self._preview
        if preview is not None and wire.id in preview.via:
            return preview.via[wire.id]
        if not wire.via or preview is None or not part_ids(wire) <= preview.moved:
            return wire.via
        dx, dy = preview.shift
        return tuple((x + dx, y + dy) for x, y in wire.via)


def _course(wire: Wire | None) -> tuple[object, ...] | None:
    """What decides where a wire lies."""
    return None if wire is None else (wire.start, wire.end, wire.twist, wire.via)
