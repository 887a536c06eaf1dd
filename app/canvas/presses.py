"""What a left press on the drawing begins, by what lies under it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.canvas import resizing
from app.canvas.gestures import BandGesture, Gesture, MoveGesture, Pointer, SelectGesture, WireGesture
from app.canvas.handles import Grip
from app.canvas.wire_gestures import BendGesture, PairGesture
from core.sheet import split_terminal

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_GRASP = 6.0  # screen pixels around a handle


def gesture_for(view: SheetView, pointer: Pointer) -> Gesture:
    """The gesture for what is there: terminal, handle, part, wire, edge of a frame, paper."""
    terminal = view.terminal_under(pointer)
    if terminal is not None and not _is_handle(view, terminal):
        return (PairGesture if pointer.ctrl != view.wires.in_pairs else WireGesture)(view, pointer, terminal)
    grip = grip_under(view, pointer)
    if grip is not None:
        return BendGesture(view, pointer, grip)
    part_id = view.sheet_scene.part_at(pointer.x, pointer.y)
    if part_id is not None:
        return resizing.note_edge_at(view, pointer, part_id) or MoveGesture(view, pointer, part_id)
    wire_id = view.sheet_scene.wire_at(pointer.x, pointer.y, view.on_sheet(2.0))
    if wire_id is not None:
        return SelectGesture(view, pointer, wire_id)
    return resizing.gesture_at(view, pointer) or BandGesture(view, pointer)


def grip_under(view: SheetView, pointer: Pointer) -> Grip | None:
    """The handle of a selected wire that a press would take hold of."""
    return view.handles.at(pointer.x, pointer.y, view.on_sheet(_GRASP))


def _is_handle(view: SheetView, terminal: str) -> bool:
    """Whether a terminal moves its part: a joint is all terminal, so a selected one is for moving."""
    part_id = split_terminal(terminal)[0]
    part = view.document.sheet.part_by_id.get(part_id)
    return part is not None and part.kind == "joint" and part_id in view.selection.ids
