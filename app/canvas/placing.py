"""A part in hand: taken in the parts list, shown at the pointer, put on the sheet by a click."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from app.canvas import operations
from app.canvas.adding import Template
from app.canvas.dropping import Drop

if TYPE_CHECKING:
    from app.canvas.gestures import Pointer
    from app.canvas.view import SheetView


class Placing:
    """The part in hand, if any. Whatever else is begun on the drawing puts it down."""

    def __init__(self, view: SheetView, drop: Drop) -> None:
        self._view = view
        self._drop = drop
        self._template: Template | None = None
        self.was_put_down = False  # by the last press of the right button, which then means nothing else

    @property
    def is_active(self) -> bool:
        """Whether a part is in hand."""
        return self._template is not None

    def take(self, template: Template) -> None:
        """Take a part in hand; it is shown once the pointer is over the sheet."""
        self._view.cancel_gesture()
        self._template = template

    def move(self, pointer: Pointer) -> bool:
        """Show the part at the pointer; False without one in hand."""
        if self._template is None:
            return False
        if not self._view.hasFocus():
            self._view.setFocus(Qt.FocusReason.MouseFocusReason)  # so that Escape is heard
        if not self._drop.is_active:
            self._drop.take(self._template)
        self._drop.move(operations.snapped(pointer.x, pointer.y, pointer.fine))
        return True

    def press(self, button: Qt.MouseButton, pointer: Pointer) -> bool:
        """Place the part, with Shift keeping it for another, or put it down; False without one in hand."""
        template = self._template
        self.was_put_down = template is not None and button == Qt.MouseButton.RightButton
        if template is None or button == Qt.MouseButton.MiddleButton:
            return False
        self.end()
        if button == Qt.MouseButton.LeftButton:
            self._view.editor.add(template, operations.snapped(pointer.x, pointer.y, pointer.fine))
            self._view.setFocus(Qt.FocusReason.MouseFocusReason)
            if pointer.shift:
                self._template = template
        return True

    def hide(self) -> None:
        """The pointer left the sheet: the part stays in hand, out of sight."""
        if self._template is not None:
            self._drop.end()

    def end(self) -> bool:
        """Put the part down; False without one in hand."""
        if self._template is None:
            return False
        self._template = None
        self._drop.end()
        return True
