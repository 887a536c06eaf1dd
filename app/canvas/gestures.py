"""Gestures: what the pointer does between press and release.

A gesture shows a preview and ends in exactly one step of the history, or in none. Cancelling costs nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtGui import QKeyEvent

from app.canvas import operations
from app.canvas.bends import spot_on
from app.canvas.frames import carried
from app.canvas.preview import BandPreview, GhostPreview, WirePreview
from app.canvas.routing import Point
from app.canvas.wire_editing import STEP
from app.canvas.wiring import joint_step, tap_step, wire_step
from core.edits import Edit
from core.edits.pairs import with_twins
from core.sheet import split_terminal

if TYPE_CHECKING:
    from app.canvas.view import SheetView

DRAG_FROM = 4  # screen pixels a press must move before it is a drag
SNAP = 14.0  # screen pixels within which a wire finds its terminal
_GHOST_FROM = 200  # from so many parts on a move shows one outline instead of every part


@dataclass(frozen=True)
class Pointer:
    """Where the pointer is: on the sheet, on the screen, and the keys held with it; ``free`` of the grid or not."""

    x: float
    y: float
    screen: QPoint
    modifiers: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier
    free: bool = False

    @property
    def fine(self) -> bool:
        """Whether things land on whole units and not on the grid: Alt says the opposite of what is set."""
        return self.alt != self.free

    @property
    def shift(self) -> bool:
        """Whether Shift is held."""
        return bool(self.modifiers & Qt.KeyboardModifier.ShiftModifier)

    @property
    def ctrl(self) -> bool:
        """Whether Ctrl is held."""
        return bool(self.modifiers & Qt.KeyboardModifier.ControlModifier)

    @property
    def alt(self) -> bool:
        """Whether Alt is held."""
        return bool(self.modifiers & Qt.KeyboardModifier.AltModifier)


class Gesture:
    """The base: remembers where it began and whether the pointer has moved enough to be a drag."""

    def __init__(self, view: SheetView, start: Pointer) -> None:
        self.view = view
        self.start = start
        self.is_drag = False

    def move(self, pointer: Pointer) -> None:
        """The pointer moved."""
        if not self.is_drag:
            self.is_drag = (pointer.screen - self.start.screen).manhattanLength() >= DRAG_FROM
        if self.is_drag:
            self.drag(pointer)

    def drag(self, pointer: Pointer) -> None:
        """The pointer moved as a drag."""

    def release(self, pointer: Pointer) -> None:
        """The button was released: carry it out."""

    def cancel(self) -> None:
        """Leave everything as it was before the press."""

    def key(self, event: QKeyEvent) -> bool:
        """A key was pressed; Escape cancels, anything else waits until the gesture is over."""
        if event.key() == Qt.Key.Key_Escape:
            self.view.cancel_gesture()
        return True


class PanGesture(Gesture):
    """Drags the paper."""

    def __init__(self, view: SheetView, start: Pointer) -> None:
        super().__init__(view, start)
        self._last = start.screen
        view.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def move(self, pointer: Pointer) -> None:
        """Scroll by what the pointer moved."""
        self.view.scroll_by(self._last - pointer.screen)
        self._last = pointer.screen

    def release(self, _pointer: Pointer) -> None:
        """Nothing is left to do."""
        self.view.viewport().unsetCursor()

    def cancel(self) -> None:
        """The paper stays where it was dragged to."""
        self.view.viewport().unsetCursor()


class SelectGesture(Gesture):
    """A press on a part or wire: selects it, a pair as a whole but with Alt; Shift adds or takes away."""

    def __init__(self, view: SheetView, start: Pointer, item_id: str) -> None:
        super().__init__(view, start)
        self.item_id = item_id
        self._ids = frozenset((item_id,)) if start.alt else with_twins(view.document.sheet, (item_id,))
        self._selected_before = view.selection.ids
        if not start.shift and item_id not in view.selection.ids:
            view.selection.set(self._ids)

    def release(self, _pointer: Pointer) -> None:
        """Without a drag this was a click."""
        if self.is_drag:
            return
        if self.start.shift:
            self.view.selection.toggle(self._ids)
        else:
            self.view.selection.set(self._ids)

    def cancel(self) -> None:
        """Select again what was selected."""
        self.view.selection.set(self._selected_before)


class MoveGesture(SelectGesture):
    """Drags the selected parts; the grabbed one lands on the grid, with Alt on whole units."""

    def __init__(self, view: SheetView, start: Pointer, part_id: str) -> None:
        super().__init__(view, start, part_id)
        self._parts: list[str] = []
        self._shift: Point = (0.0, 0.0)
        self._ghost: GhostPreview | None = None

    def drag(self, pointer: Pointer) -> None:
        """Show the parts where they would land."""
        sheet = self.view.document.sheet
        if not self._parts:
            if self.start.shift and self.item_id not in self.view.selection.ids:
                self.view.selection.toggle((self.item_id,))
            ids = self.view.selection.ids | {self.item_id}
            self._parts = sorted(carried(self.view.sheet_scene.layout_, ids, alone=self.start.alt))
        x, y = sheet.part_by_id[self.item_id].at
        to = operations.snapped(x + pointer.x - self.start.x, y + pointer.y - self.start.y, pointer.fine)
        shift = to[0] - x, to[1] - y
        if shift == self._shift:
            return
        self._shift = shift
        if len(self._parts) >= _GHOST_FROM:
            self._show_ghost()
        else:
            self.view.sheet_scene.preview_move(self._parts, *shift)

    def _show_ghost(self) -> None:
        if self._ghost is None:
            self._ghost = GhostPreview(self.view.sheet_scene, self._parts)
        self._ghost.show_at(*self._shift)

    def _end_preview(self) -> None:
        if self._ghost is not None:
            self._ghost.remove()
        elif self._parts:
            self.view.sheet_scene.end_preview(self._parts)

    def release(self, pointer: Pointer) -> None:
        """Move the parts on the sheet."""
        super().release(pointer)
        self._end_preview()
        operations.move(self.view.document, self._parts, *self._shift)

    def cancel(self) -> None:
        """Put the parts back."""
        self._end_preview()
        super().cancel()


class WireGesture(Gesture):
    """Draws a wire from a terminal to another; a click without a drag selects the part."""

    def __init__(self, view: SheetView, start: Pointer, terminal: str) -> None:
        super().__init__(view, start)
        self.terminal = terminal
        self.target: str | None = None
        self.wire_id: str | None = None
        self._preview: WirePreview | None = None

    def drag(self, pointer: Pointer) -> None:
        """Show the wire as it would run."""
        layout = self.view.sheet_scene.layout_
        self.target = layout.terminal_near(pointer.x, pointer.y, self.view.on_sheet(SNAP))
        if self.target == self.terminal:
            self.target = None
        self.wire_id = self._wire_under(pointer) if self.target is None else None
        if self._preview is None:
            self._preview = WirePreview(self.view.sheet_scene, self.terminal)
        at = pointer.x, pointer.y
        if self.wire_id is not None:
            at = spot_on(layout.board.routes[self.wire_id], at, 1.0 if pointer.alt else STEP).point
        self._preview.show_line(self.target, at, joint=pointer.shift or self.wire_id is not None)
        self._consider(pointer)

    def _wire_under(self, pointer: Pointer) -> str | None:
        """The wire onto whose middle this one would be joined; none that ends where this one begins, nor on a part."""
        found = self.view.sheet_scene.wire_at(pointer.x, pointer.y, self.view.on_sheet(2.0))
        if found is None or self.view.sheet_scene.part_at(pointer.x, pointer.y) is not None:
            return None
        wire = self.view.document.sheet.wire_by_id[found]
        return None if self.terminal in (wire.start, wire.end) else found

    def _consider(self, pointer: Pointer) -> None:
        """Have the sheet solved as if the wire were there."""
        step = self._step(pointer)
        proposal = self.view.sheet_scene.proposal
        if step is None:
            proposal.withdraw()
        else:
            proposal.consider(*step)

    def _step(self, pointer: Pointer) -> tuple[str, Edit] | None:
        """What a release here would do: a wire to a terminal, to a wire, with Shift to a new joint, or nothing."""
        if self.target is not None:
            return self.step_to(self.target)
        if self.wire_id is not None:
            return tap_step(self.view, self.terminal, self.wire_id, (pointer.x, pointer.y), pointer.alt)
        if not pointer.shift:
            return None
        return joint_step(self.view, self.terminal, operations.snapped(pointer.x, pointer.y, pointer.fine))

    def step_to(self, target: str) -> tuple[str, Edit]:
        """The name and the edit of laying the wire to a terminal."""
        return wire_step(self.view, self.terminal, target)

    def _end_preview(self) -> None:
        self.view.sheet_scene.proposal.withdraw()
        if self._preview is not None:
            self._preview.remove()
            self._preview = None

    def release(self, pointer: Pointer) -> None:
        """Make the wire if it has found a terminal; with Shift a joint in the open."""
        self._end_preview()
        if not self.is_drag:
            part_id = split_terminal(self.terminal)[0]
            select = self.view.selection.toggle if self.start.shift else self.view.selection.set
            select((part_id,))
            return
        step = self._step(pointer)
        if step is not None:
            document = self.view.document
            made = document.apply(*step).wires
            joint = split_terminal(document.sheet.wires[-1].end)[0]
            self.view.selection.set(made if self.target is not None else (joint,))

    def cancel(self) -> None:
        """Forget the wire."""
        self._end_preview()


class BandGesture(Gesture):
    """A rubber band around what is to be selected; Shift adds to the selection. A click clears it."""

    def __init__(self, view: SheetView, start: Pointer) -> None:
        super().__init__(view, start)
        self._before = view.selection.ids
        self._band: BandPreview | None = None

    def drag(self, pointer: Pointer) -> None:
        """Select what the band touches so far."""
        area = QRectF(
            min(self.start.x, pointer.x),
            min(self.start.y, pointer.y),
            abs(pointer.x - self.start.x),
            abs(pointer.y - self.start.y),
        )
        if self._band is None:
            self._band = BandPreview(self.view.sheet_scene)
        self._band.show_area(area)
        inside = self.view.sheet_scene.ids_within(area)
        self.view.selection.set(self._before | inside if self.start.shift else inside)

    def release(self, _pointer: Pointer) -> None:
        """Keep the selection."""
        if self._band is not None:
            self._band.remove()
        if not self.is_drag and not self.start.shift:
            self.view.selection.clear()

    def cancel(self) -> None:
        """Select again what was selected."""
        if self._band is not None:
            self._band.remove()
        self.view.selection.set(self._before)
