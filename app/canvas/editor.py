"""What can be done to the drawing by key, menu or pane: each is one step of the history."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from app.canvas import operations
from app.canvas.adding import Offer, Template, offers
from app.canvas.frames import around, carried
from app.canvas.places import place_of
from app.canvas.routing import Point, grown
from app.canvas.wiring import lay_wire, why_no_offer, wire_offer, wire_step
from core.edits.pairs import pair_in
from core.sheet import Note

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_PITCH = 200.0  # from socket to socket along a row: room for a label and its figures


class Editor:
    """Edits the document of a view by what is selected. Whatever the pointer is doing is given up first."""

    def __init__(self, view: SheetView) -> None:
        self._view = view
        self.document = view.document
        self.selection = view.selection
        self.gauge = operations.Gauge()

    def delete(self) -> None:
        """Delete what is selected."""
        self._view.cancel_gesture()
        operations.delete(self.document, self.selection.ids)

    def turn(self, degrees: int) -> None:
        """Turn the selected parts clockwise."""
        self._view.cancel_gesture()
        operations.turn(self.document, self.selection.ids, degrees)

    def nudge(self, dx: float, dy: float, alone: bool = False) -> None:
        """Move the selected parts, frames with what is in them unless ``alone``; repeated strokes are one step."""
        self._view.cancel_gesture()
        key = "nudge " + " ".join(sorted(self.selection.ids))
        moved = carried(self._view.sheet_scene.layout_, self.selection.ids, alone)
        operations.move(self.document, moved, dx, dy, merge_key=key)

    def select_all(self) -> None:
        """Select every part and wire."""
        self._view.cancel_gesture()
        self.selection.set(operations.everything(self.document.sheet))

    def edit_selected(self) -> None:
        """Ask for the properties of the one thing that is selected; a twisted pair counts as one."""
        if self.can_edit:
            self.edit(min(self.selection.ids))

    @property
    def can_edit(self) -> bool:
        """Whether one thing is selected."""
        ids = self.selection.ids
        return len(ids) == 1 or pair_in(self.document.sheet, ids) is not None

    def edit(self, item_id: str) -> None:
        """Write a note where it stands; ask for the properties of anything else."""
        part = self.document.sheet.part_by_id.get(item_id)
        if not isinstance(part, Note):
            self._view.edit_requested.emit(item_id)
            return
        from app.canvas.note_editor import NoteEditor  # noqa: PLC0415 - few sheets hold notes

        self._view.cancel_gesture()
        NoteEditor(self._view, part)

    def add(self, template: Template, at: Point | None = None) -> str:
        """Add a part and select it: at a place, or at a free one near the middle of the view."""
        self._view.cancel_gesture()
        return operations.place(self.document, self.selection, template, at or self._free_place(template))

    def take_offer(self, offer: Offer) -> None:
        """Add the part, or lay the wire, that was chosen in the add field."""
        template = offer.part_template
        if template["kind"] == "wire":
            lay_wire(self._view, *template["ends"])
            return
        if template["kind"] == "frame":
            template, at = self._framing(template)
        else:
            at = None
        part_id = self.add(template, at)
        self.selection.show((part_id,))
        if template["kind"] == "note" and not template["text"]:
            self.edit(part_id)

    def _framing(self, template: Template) -> tuple[Template, Point | None]:
        """A frame for what is selected; with nothing selected a frame of the usual size."""
        rect = around(self._view.sheet_scene.layout_, self.selection.ids)
        if rect is None:
            return template, None
        return {**template, "width": rect[2] - rect[0], "height": rect[3] - rect[1]}, (rect[0], rect[1])

    def consider_offer(self, offer: Offer | None) -> None:
        """Have the sheet solved as if an offer were taken; None takes that back."""
        proposal, sheet = self._view.sheet_scene.proposal, self.document.sheet
        if offer is None:
            proposal.withdraw()
        elif offer.part_template["kind"] == "wire":
            proposal.consider(*wire_step(self._view, *offer.part_template["ends"]))
        else:
            template, at = offer.part_template, None
            if template["kind"] == "frame":
                template, at = self._framing(template)
            text, edit, _ = operations.placing(sheet, template, at or self._free_place(template))
            proposal.consider(text, edit)

    def offers(self, text: str) -> list[Offer]:
        """What a text in the add field may mean."""
        wire = wire_offer(text, self.document.sheet)
        found = offers(text, self.document.catalogue)
        return found if wire is None else [wire, *found]

    def why_no_offer(self, text: str) -> str:
        """Why nothing is offered for a text."""
        return why_no_offer(text, self.document.sheet)

    def _free_place(self, template: Template) -> Point:
        view, scene = self._view, self._view.sheet_scene
        part = operations.part_from(template, "X", (0.0, 0.0))
        place = place_of(part, self.document.catalogue, scene.theme)
        room = [grown(rect, 8.0) for rect in (place.body, place.label)]
        middle = view.mapToScene(view.viewport().rect().center())
        for at in (*self._places_in_rows(), *operations.spiral((middle.x(), middle.y()))):
            if all(scene.layout_.is_free(operations.around(rect, at)) for rect in room):
                return at
        return operations.snapped(middle.x(), middle.y())

    def _places_in_rows(self) -> Iterator[Point]:
        """Where the next part may stand: at the upper left of an empty sheet, else in rows after the selected one."""
        view, parts = self._view, self.document.sheet.parts
        seen = view.mapToScene(view.viewport().rect()).boundingRect()
        chosen = [part.at for part in parts if part.id in self.selection.ids]
        if not parts:
            yield operations.snapped(seen.left() + _PITCH * 0.75, seen.top() + seen.height() / 3)
        elif len(chosen) == 1:
            leftmost = min(part.at[0] for part in parts)
            yield from operations.rows_after(chosen[0], leftmost, seen.right() - _PITCH / 2, _PITCH)
