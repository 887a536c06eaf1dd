"""Choosing more than what was clicked: what is connected, what shares a string."""

from __future__ import annotations

from typing import TYPE_CHECKING

from core.edits.reaching import connected, same_string

if TYPE_CHECKING:
    from app.canvas.view import SheetView


def has_selection(view: SheetView) -> bool:
    """Whether anything is selected."""
    return bool(view.selection.ids)


def choose_connected(view: SheetView) -> None:
    """Select everything that wires join to what is selected."""
    view.cancel_gesture()
    view.selection.set(connected(view.document.sheet, view.selection.ids))


def can_choose_string(view: SheetView) -> bool:
    """Whether a tube or lamp is selected and the sheet is solved."""
    parts = view.document.sheet.part_by_id
    chosen = (parts.get(item_id) for item_id in view.selection.ids)
    solved = view.document.assessment is not None
    return solved and any(part is not None and part.kind in ("tube", "lamp") for part in chosen)


def choose_string(view: SheetView) -> None:
    """Select the tubes and lamps that carry the same current as the selected ones."""
    view.cancel_gesture()
    assessment = view.document.assessment
    if assessment is not None:
        parts = view.document.sheet.part_by_id
        chosen = [item_id for item_id in view.selection.ids if item_id in parts]
        found = same_string(chosen, assessment.strings)
        view.selection.set(part_id for part_id in found if part_id in parts)
