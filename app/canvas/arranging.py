"""Putting what is selected in order: mirrored, turned as one, in line, on the grid, numbered, swapped."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from app.canvas import operations, words
from app.canvas.frames import carried
from app.canvas.routing import Point, Rect
from app.speech import spoken, told
from core.edits import Edit
from core.edits.arranging import Side, Way, aligning, distributing, shift, snap
from core.edits.bodily import mirror, rotate
from core.edits.numbering import rename_all, tube_names
from core.edits.swapping import swap_places, swap_tubes
from core.errors import HeaterloomError
from core.sheet import REMARK_KINDS, Sheet, Tube

if TYPE_CHECKING:
    from app.canvas.view import SheetView


class Arranger:
    """Arranges the selected parts of a view's document, each time as one step of the history."""

    def __init__(self, view: SheetView) -> None:
        self._view = view
        self._pivot: tuple[Sheet, frozenset[str], Point] | None = None

    # what is selected

    @property
    def _sheet(self) -> Sheet:
        return self._view.document.sheet

    def parts(self) -> list[str]:
        """The selected parts, in the order of the sheet."""
        return [part.id for part in self._sheet.parts if part.id in self._view.selection.ids]

    def tubes(self) -> list[str]:
        """The selected tubes, in the order of the sheet."""
        return [part_id for part_id in self.parts() if isinstance(self._sheet.part_by_id[part_id], Tube)]

    def has_parts(self, least: int = 1) -> bool:
        """Whether so many parts are selected."""
        return len(self.parts()) >= least

    def can_mirror(self) -> bool:
        """Whether a mirror would change anything: a socket by itself has no other side."""
        parts = self.parts()
        return len(parts) > 1 or (len(parts) == 1 and parts != self.tubes() and not self._is_remark(parts[0]))

    def can_swap_tubes(self) -> bool:
        """Whether just two parts are selected, both of them tubes."""
        return len(self.parts()) == 2 == len(self.tubes())

    def can_swap_places(self) -> bool:
        """Whether just two parts of the wiring are selected."""
        return len(self.parts()) == 2 and not any(map(self._is_remark, self.parts()))

    def has_tubes(self) -> bool:
        """Whether the sheet has a tube."""
        return any(isinstance(part, Tube) for part in self._sheet.parts)

    def _is_remark(self, part_id: str) -> bool:
        return self._sheet.part_by_id[part_id].kind in REMARK_KINDS

    def _boxes(self, ids: Iterable[str]) -> dict[str, Rect]:
        places = self._view.sheet_scene.layout_.places
        return {part_id: places[part_id].body for part_id in ids}

    def _carried(self) -> list[str]:
        moved = carried(self._view.sheet_scene.layout_, self.parts())
        return [part.id for part in self._sheet.parts if part.id in moved]

    # arranging

    def mirror(self, upright: bool = False) -> None:
        """Mirror the selected parts about their middle, from left to right or upside down."""
        self._view.cancel_gesture()
        ids = self._carried()
        if ids:
            boxes = self._boxes(ids)
            x, y = self._middle(ids)
            half = operations.GRID / 2
            middle = round(x / half) * half, round(y / half) * half
            self._apply(words.tr("Mirror {what}"), mirror(ids, middle, boxes, upright=upright))

    def rotate(self, degrees: int) -> None:
        """Turn the selected parts clockwise about their middle, as one body.

        The middle is kept from one turn to the next, so that four quarters lead back exactly.
        """
        self._view.cancel_gesture()
        ids = self._carried()
        if not ids:
            return
        chosen = frozenset(ids)
        if self._pivot is None or self._pivot[0] is not self._sheet or self._pivot[1] != chosen:
            self._pivot = (self._sheet, chosen, operations.snapped(*self._middle(ids)))
        pivot = self._pivot[2]
        if self._apply(words.tr("Turn {what} as one"), rotate(ids, pivot, self._boxes(ids), degrees)):
            self._pivot = (self._sheet, chosen, pivot)

    def _middle(self, ids: list[str]) -> Point:
        """The middle of the rectangle around all; of one part its own place, about which it turns."""
        if len(ids) == 1 and not self._is_remark(ids[0]):
            return self._sheet.part_by_id[ids[0]].at
        lefts, tops, rights, bottoms = zip(*self._boxes(ids).values(), strict=True)
        return (min(lefts) + max(rights)) / 2, (min(tops) + max(bottoms)) / 2

    def align(self, side: Side) -> None:
        """Bring edges or middles of the selected parts in line."""
        self._shift(words.tr("Align {what}"), aligning(self._boxes(self.parts()), side))

    def distribute(self, way: Way) -> None:
        """Make the gaps between the selected parts equal."""
        self._shift(words.tr("Distribute {what}"), distributing(self._boxes(self.parts()), way))

    def _shift(self, text: str, shifts: dict[str, Point]) -> None:
        """Move parts each by its own distance, frames with what is in them."""
        self._view.cancel_gesture()
        layout = self._view.sheet_scene.layout_
        for part_id, by in tuple(shifts.items()):
            for inside in carried(layout, (part_id,)) - shifts.keys():
                shifts[inside] = by
        self._apply(text, shift(shifts))

    def snap(self) -> None:
        """Put the selected parts on the grid."""
        self._view.cancel_gesture()
        self._apply(words.tr("Put {what} on the grid"), snap(self.parts(), operations.GRID))

    def renumber(self, chosen_only: bool = False) -> None:
        """Number the tubes, or the selected ones, along the heater wiring; they stay selected."""
        self._view.cancel_gesture()
        names = tube_names(self._sheet, self.tubes() if chosen_only else None)
        selected = self._view.selection.ids
        text = words.tr("Number the selected tubes") if chosen_only else words.tr("Number the tubes")
        if self._apply(text, rename_all(names)):
            self._view.selection.set(names.get(item_id, item_id) for item_id in selected)

    def swap_tubes(self) -> None:
        """Let two sockets change tubes; where their pins differ, say what must be wired anew."""
        self._view.cancel_gesture()
        if not self.can_swap_tubes():
            return
        first, second = self.tubes()
        said = self._pins_of(first, second) + self._pins_of(second, first)
        if self._apply(words.tr("Swap the tubes of {what}"), swap_tubes(first, second)) and said:
            self._view.told.emit(" ".join(said))

    def swap_places(self) -> None:
        """Let two parts change places; their wires follow."""
        self._view.cancel_gesture()
        if self.can_swap_places():
            self._apply(words.tr("Swap the places of {what}"), swap_places(*self.parts()))

    def _pins_of(self, socket_id: str, other_id: str) -> list[str]:
        """What the socket of one tube needs for the other tube; empty where its wires fit."""
        from core.rewiring import rewiring_for  # noqa: PLC0415 - it brings the circuit along

        socket, other = self._sheet.part_by_id[socket_id], self._sheet.part_by_id[other_id]
        assert isinstance(socket, Tube)
        assert isinstance(other, Tube)
        tube = self._view.document.catalogue.tube
        found = rewiring_for(self._sheet, socket, tube(socket.type), tube(other.type), other.type)
        moved = any(pin != to for pin, to in (found.moves or {}).items())
        if found.is_plain and not moved and found.strap is None:
            return []
        lines = [spoken(line) for line in found.sentences]
        return [f"{socket_id}: {' '.join(lines)}"]

    def _apply(self, text: str, edit: Edit) -> bool:
        """Carry out an edit; says whether it changed anything. One that cannot be done is told."""
        what = words.joined(self.parts(), self._sheet)
        try:
            return not self._view.document.apply(text.format(what=what), edit).is_empty
        except HeaterloomError as error:
            self._view.told.emit(told(error))
            return False
