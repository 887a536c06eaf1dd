"""A part that is dragged onto the drawing from elsewhere: shown at the pointer, added where it is dropped."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QMimeData, Qt
from PySide6.QtGui import QDragMoveEvent, QDropEvent

from app.canvas import operations
from app.canvas.adding import Template
from app.canvas.preview import PartGhost
from app.canvas.routing import Point
from app.canvas.scene import SheetScene

if TYPE_CHECKING:
    from app.canvas.view import SheetView


class Drop:
    """The part under way, if any."""

    def __init__(self, scene: SheetScene) -> None:
        self._scene = scene
        self._template: Template | None = None
        self._preview: PartGhost | None = None

    @property
    def is_active(self) -> bool:
        """Whether a part hangs on the pointer."""
        return self._template is not None

    def begin(self, data: QMimeData) -> bool:
        """Take up what is dragged in; False for anything that is no part."""
        self.end()
        found = None
        if data.hasFormat(operations.MIME):
            found = operations.template_from(bytes(data.data(operations.MIME).data()))
        if found is None:
            return False
        self.take(found)
        return True

    def take(self, template: Template) -> None:
        """Hang a part on the pointer."""
        self.end()
        self._template = template
        part = operations.part_from(template, "•", (0.0, 0.0))
        self._preview = PartGhost(part, self._scene.document.catalogue, self._scene.theme)
        self._scene.addItem(self._preview)
        self._scene.ghosts.hold()

    def move(self, at: Point) -> None:
        """Show the part at a place, and have the sheet solved as if it were there."""
        if self._preview is not None and self._template is not None:
            self._preview.setPos(*at)
            text, edit, _ = operations.placing(self._scene.document.sheet, self._template, at)
            self._scene.proposal.consider(text, edit)

    def end(self) -> Template | None:
        """Take the part off the pointer; answers what it was."""
        template, self._template = self._template, None
        if self._preview is not None:
            self._scene.proposal.withdraw()
            self._scene.ghosts.let_go()
            self._scene.removeItem(self._preview)
            self._preview = None
        return template

    def drag(self, view: SheetView, event: QDragMoveEvent) -> None:
        """Keep the part at the pointer while it is dragged over a view."""
        if not self.is_active:
            event.ignore()
            return
        self.move(_place(view, event))
        event.acceptProposedAction()

    def let_fall(self, view: SheetView, event: QDropEvent) -> None:
        """Add the part where it was dropped on a view."""
        template = self.end()
        if template is None:
            event.ignore()
            return
        view.editor.add(template, _place(view, event))
        event.acceptProposedAction()
        view.setFocus(Qt.FocusReason.OtherFocusReason)


def _place(view: SheetView, event: QDropEvent) -> Point:
    at = view.mapToScene(event.position().toPoint())
    alt = bool(event.modifiers() & Qt.KeyboardModifier.AltModifier)
    return operations.snapped(at.x(), at.y(), alt == view.paper.snaps)
