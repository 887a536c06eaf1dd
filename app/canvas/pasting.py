"""Cut, copy, paste and duplicate on the drawing."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

import msgspec

from app import clipboard
from app.canvas import operations, words
from app.canvas.frames import carried
from app.canvas.routing import Point
from app.speech import told
from core.catalogue import load_builtin
from core.edits import remove
from core.edits.copying import extract, paste
from core.errors import HeaterloomError
from core.own_types import with_own_types
from core.sheet import Sheet

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_NOWHERE = (0.0, 0.0)


class Pasting:
    """What goes to the clipboard and comes from it. Whatever cannot be done is told, and nothing is lost."""

    def __init__(self, view: SheetView) -> None:
        self._view = view
        self._last: tuple[Sheet, Point] | None = None
        self._steps = 0

    def copy(self) -> bool:
        """Lay what is selected on the clipboard; says whether there was anything."""
        piece = self._piece()
        if piece is None:
            self._view.told.emit(
                words.tr("Wires are copied together with the parts at both ends: choose the parts as well.")
            )
            return False
        return self._tried(lambda: clipboard.put(piece))

    def cut(self) -> None:
        """Copy, and take it off the sheet."""
        document = self._view.document
        ids = self._chosen() | (self._view.selection.ids & document.sheet.wire_by_id.keys())
        if self.copy():
            document.apply(
                words.tr("Cut {what}").format(what=words.counted(ids, document.sheet)), remove(ids)
            )

    def paste(self, at: Point | None = None) -> None:
        """Put what lies on the clipboard at a place, at the pointer, or beside where it came from, and select it.

        Pasted again at once it steps on by the grid.
        """
        self._view.cancel_gesture()
        found: list[Sheet] = []
        if self._tried(lambda: found.append(clipboard.take())):
            piece = self._without_known_types(found[0])
            target = at or self._pointer()
            shift = _NOWHERE if target is None else self._shift_to(piece, target)
            again = self._last == (piece, shift)
            self._steps = self._steps + 1 if again else (1 if target is None else 0)
            self._last = (piece, shift)
            step = self._steps * operations.GRID
            self._put(piece, (shift[0] + step, shift[1] + step), words.tr("Paste {what}"))

    def duplicate(self) -> None:
        """A second one of what is selected beside it, without the clipboard."""
        piece = self._piece()
        if piece is not None:
            self._view.cancel_gesture()
            self._put(piece, (operations.GRID, operations.GRID), words.tr("Duplicate {what}"))

    def can_copy(self) -> bool:
        """Whether a part or wire is selected."""
        return bool(self._view.selection.ids)

    def can_duplicate(self) -> bool:
        """Whether a part is selected."""
        return bool(self._chosen())

    def _chosen(self) -> set[str]:
        return carried(self._view.sheet_scene.layout_, self._view.selection.ids)

    def _piece(self) -> Sheet | None:
        """What is selected, frames with what is in them, together with every type that is not built in."""
        document = self._view.document
        piece = extract(document.sheet, self._chosen())
        return with_own_types(piece, document.catalogue, load_builtin()) if piece.parts else None

    def _without_known_types(self, piece: Sheet) -> Sheet:
        """A name that means something here already goes on meaning that."""
        known = self._view.document.catalogue
        types = tuple(own for own in piece.types if known.tube(own.designation) is None)
        return msgspec.structs.replace(piece, types=types)

    def _pointer(self) -> Point | None:
        at = self._view.pointer_at
        if at is None or not self._view.viewport().rect().contains(at):
            return None
        point = self._view.mapToScene(at)
        return point.x(), point.y()

    def _shift_to(self, piece: Sheet, to: Point) -> Point:
        """The way, in whole steps of the grid, that brings the middle of a piece nearest to a place."""
        xs, ys = [part.at[0] for part in piece.parts], [part.at[1] for part in piece.parts]
        return operations.snapped(to[0] - (min(xs) + max(xs)) / 2, to[1] - (min(ys) + max(ys)) / 2)

    def _put(self, piece: Sheet, shift: Point, text: str) -> None:
        document = self._view.document
        what = words.counted([*piece.part_by_id, *piece.wire_by_id], piece)
        before = document.sheet.part_by_id.keys()
        if self._tried(lambda: document.apply(text.format(what=what), paste(piece, *shift))):
            self._view.selection.set(document.sheet.part_by_id.keys() - before)

    def _tried(self, job: Callable[[], object]) -> bool:
        try:
            job()
        except HeaterloomError as error:
            self._view.told.emit(told(error))
            return False
        return True
