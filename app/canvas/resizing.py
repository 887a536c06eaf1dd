"""Dragging the edges of frames and notes."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QRectF, Qt

from app.canvas import frames, operations, words
from app.canvas.frames import Edge, Grip
from app.canvas.gestures import Gesture, MoveGesture, Pointer, SelectGesture
from app.canvas.preview import BandPreview
from app.canvas.routing import Rect
from core.checks import RANGES
from core.edits import set_part

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_PICK = 5.0  # screen pixels around an edge from which it is dragged
_SLANTS = {
    frozenset(("left", "top")): Qt.CursorShape.SizeFDiagCursor,
    frozenset(("right", "bottom")): Qt.CursorShape.SizeFDiagCursor,
    frozenset(("right", "top")): Qt.CursorShape.SizeBDiagCursor,
    frozenset(("left", "bottom")): Qt.CursorShape.SizeBDiagCursor,
}


def reach(view: SheetView) -> float:
    """How near an edge a press must be, in units of the sheet."""
    return view.on_sheet(_PICK)


def gesture_at(view: SheetView, pointer: Pointer) -> Gesture | None:
    """What a press on a frame begins, or just beside a note; None elsewhere."""
    layout = view.sheet_scene.layout_
    grip = frames.grip_at(layout, view.selection.ids, pointer.x, pointer.y, reach(view))
    if grip is not None:
        return ResizeGesture(view, pointer, grip)
    frame_id = frames.title_at(layout, pointer.x, pointer.y)
    return MoveGesture(view, pointer, frame_id) if frame_id is not None else None


def note_edge_at(view: SheetView, pointer: Pointer, part_id: str) -> Gesture | None:
    """What a press on the edge of the selected note begins; None on anything else."""
    grip = frames.grip_at(view.sheet_scene.layout_, view.selection.ids, pointer.x, pointer.y, reach(view))
    return ResizeGesture(view, pointer, grip) if grip is not None and grip[0] == part_id else None


def show_cursor(view: SheetView, pointer: Pointer) -> None:
    """Let the pointer say which way an edge under it can be dragged."""
    scene = view.sheet_scene
    x, y, ids = pointer.x, pointer.y, scene.selection.ids
    covered = scene.part_at(x, y) not in (None, *ids)
    grip = None if covered else frames.grip_at(scene.layout_, ids, x, y, reach(view))
    if grip is not None:
        view.viewport().setCursor(_cursor(grip[1]))
    elif view.viewport().cursor().shape() in _SHAPES:
        view.viewport().unsetCursor()


def _cursor(edges: frozenset[Edge]) -> Qt.CursorShape:
    if edges in _SLANTS:
        return _SLANTS[edges]
    level = edges & {"left", "right"}
    return Qt.CursorShape.SizeHorCursor if level else Qt.CursorShape.SizeVerCursor


_SHAPES = {*_SLANTS.values(), Qt.CursorShape.SizeHorCursor, Qt.CursorShape.SizeVerCursor}


class ResizeGesture(SelectGesture):
    """Drags edges of a frame or note; a click without a drag selects it."""

    def __init__(self, view: SheetView, start: Pointer, grip: Grip) -> None:
        super().__init__(view, start, grip[0])
        self._edges = grip[1]
        self._before: Rect = view.sheet_scene.layout_.places[grip[0]].body
        self._after = self._before
        self._outline: BandPreview | None = None

    def drag(self, pointer: Pointer) -> None:
        """Show the outline as it would be."""
        to = operations.snapped(pointer.x, pointer.y, pointer.fine)
        self._after = _dragged(self._before, self._edges, to)
        if self._outline is None:
            self._outline = BandPreview(self.view.sheet_scene)
        left, top, right, bottom = self._after
        self._outline.show_area(QRectF(left, top, right - left, bottom - top))

    def release(self, pointer: Pointer) -> None:
        """Set the new size."""
        super().release(pointer)
        self._end_preview()
        if self._after != self._before:
            text = words.tr("Resize {what}").format(what=self.item_id)
            self.view.document.apply(text, set_part(self.item_id, **self._fields()))

    def _fields(self) -> dict[str, Any]:
        left, top, right, bottom = self._after
        fields: dict[str, Any] = {"at": (left, top), "width": right - left}
        is_frame = self.view.document.sheet.part_by_id[self.item_id].kind == "frame"
        return fields | ({"height": bottom - top} if is_frame else {})

    def cancel(self) -> None:
        """Leave the size as it was."""
        self._end_preview()
        super().cancel()

    def _end_preview(self) -> None:
        if self._outline is not None:
            self._outline.remove()
            self._outline = None


def _dragged(rect: Rect, edges: frozenset[Edge], to: tuple[float, float]) -> Rect:
    """A rectangle whose edges were dragged to a point; it never gets smaller than a file may hold."""
    left, top, right, bottom = rect
    least = RANGES["width"].low
    if "left" in edges:
        left = min(to[0], right - least)
    if "right" in edges:
        right = max(to[0], left + least)
    if "top" in edges:
        top = min(to[1], bottom - least)
    if "bottom" in edges:
        bottom = max(to[1], top + least)
    return left, top, right, bottom
