"""Gestures at wires: dragging a handle of the selected one, and laying two at once."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.canvas import words
from app.canvas.bends import with_corner_moved, with_piece_moved
from app.canvas.gestures import Gesture, Pointer, WireGesture
from app.canvas.handles import Grip
from app.canvas.partners import partner_of
from app.canvas.preview import WirePreview
from app.canvas.routing import Point
from app.canvas.wire_editing import STEP
from app.canvas.wiring import pair_step, second_ends
from core.edits import Edit

if TYPE_CHECKING:
    from app.canvas.view import SheetView


class BendGesture(Gesture):
    """Drags a piece or a corner of the selected wire; with Alt off the grid. A click makes the piece current."""

    def __init__(self, view: SheetView, start: Pointer, grip: Grip) -> None:
        super().__init__(view, start)
        self._grip = grip
        self._wire_id = view.handles.wire_id
        self._bones = view.handles.bones
        self._via_before = view.document.sheet.wire_by_id[self._wire_id].via
        self._via = self._via_before
        self._to = 0.0
        if grip.piece is not None:
            view.handles.current = view.handles.pieces.index(grip.piece)
            view.handles.refresh()

    def drag(self, pointer: Pointer) -> None:
        """Show the wire as it would run."""
        step = 1.0 if pointer.alt else STEP
        dx, dy = pointer.x - self.start.x, pointer.y - self.start.y
        via = (
            self._with_piece(dx, dy, step)
            if self._grip.piece is not None
            else self._with_corner(dx, dy, step)
        )
        if via != self._via:
            self._via = via
            self.view.sheet_scene.preview_bends(self._wire_id, via)
            self.view.handles.refresh()

    def _with_piece(self, dx: float, dy: float, step: float) -> tuple[Point, ...]:
        piece = self._grip.piece
        assert piece is not None
        at, by = (piece.start[1], dy) if piece.is_level else (piece.start[0], dx)
        shift = _on_grid(at + by, step) - at if abs(by) >= step / 2 else 0.0
        self._to = at + shift
        return (
            self._via_before if not shift else with_piece_moved(self._bones, self._via_before, piece, shift)
        )

    def _with_corner(self, dx: float, dy: float, step: float) -> tuple[Point, ...]:
        corner = self._grip.corner
        to = _on_grid(corner[0] + dx, step), _on_grid(corner[1] + dy, step)
        return with_corner_moved(self._bones, self._via_before, corner, to)

    def release(self, _pointer: Pointer) -> None:
        """Set the corners."""
        self._end_preview()
        piece = self._grip.piece
        if self._via != self._via_before:
            self.view.wires.bend(self._wire_id, self._via)
            if piece is not None:
                self.view.handles.hold(piece, self._to)

    def _end_preview(self) -> None:
        self.view.sheet_scene.end_preview(())
        self.view.handles.refresh()

    def cancel(self) -> None:
        """Put the wire back."""
        self._via = self._via_before
        self._end_preview()


def _on_grid(value: float, step: float) -> float:
    return round(value / step) * step + 0.0


class PairGesture(WireGesture):
    """Draws two wires at once as a twisted pair, from both ends of one heater or supply to those of another."""

    def __init__(self, view: SheetView, start: Pointer, terminal: str) -> None:
        super().__init__(view, start, terminal)
        self._second: WirePreview | None = None
        self._say()

    def _partner(self, terminal: str) -> str | None:
        return partner_of(self.view.document.sheet, self.view.document.catalogue, terminal)

    def _say(self) -> None:
        first = self._partner(self.terminal)
        if first is None:
            text = words.tr("{start} has no second end: one wire is drawn.").format(start=self.terminal)
        else:
            text = words.tr("Twisted pair from {start} and {second}").format(
                start=self.terminal, second=first
            )
            if self.target is not None:
                text = self._words_to(text, self.target)
        self.view.hint.show_text(text)

    def _words_to(self, text: str, target: str) -> str:
        second = self._partner(target)
        if second is None:
            return words.tr("{end} has no second end: one wire is drawn.").format(end=target)
        return words.tr("{pair} to {end} and {second}").format(pair=text, end=target, second=second)

    def drag(self, pointer: Pointer) -> None:
        """Show both wires as they would run."""
        super().drag(pointer)
        self._say()
        first, second = (
            self._partner(self.terminal),
            None if self.target is None else self._partner(self.target),
        )
        if first is None or second is None:
            self._end_second()
            return
        if self._second is None:
            self._second = WirePreview(self.view.sheet_scene, first)
        self._second.show_line(second, (pointer.x, pointer.y), joint=False)

    def _end_second(self) -> None:
        if self._second is not None:
            self._second.remove()
            self._second = None

    def step_to(self, target: str) -> tuple[str, Edit]:
        """The name and the edit of laying both wires, or one where either terminal has no second end."""
        second = second_ends(self.view, self.terminal, target)
        if second is None:
            return super().step_to(target)
        return pair_step(self.view, (self.terminal, target), second)

    def release(self, pointer: Pointer) -> None:
        """Make the pair."""
        self._end_second()
        self.view.hint.hide()
        super().release(pointer)

    def cancel(self) -> None:
        """Forget both wires."""
        self._end_second()
        self.view.hint.hide()
        super().cancel()
