"""The view: shows the scene, and turns pointer, keys and drops into gestures and operations."""

from __future__ import annotations

from functools import cached_property

from PySide6.QtCore import QEvent, QPoint, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QFocusEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QWheelEvent,
)
from PySide6.QtWidgets import QFrame, QGraphicsView, QToolTip, QWidget

from app.actions import Entry
from app.canvas import frames, grid, keys, operations, telling, words
from app.canvas.dropping import Drop
from app.canvas.editor import Editor
from app.canvas.gestures import Gesture, PanGesture, Pointer
from app.canvas.handles import Handles
from app.canvas.hint import Hint
from app.canvas.outlook_corner import OutlookCorner
from app.canvas.overlays import AddField
from app.canvas.paper import Paper
from app.canvas.placing import Placing
from app.canvas.preview import HoverRing
from app.canvas.scene import SheetScene
from app.canvas.tools import Tools
from app.canvas.walk import Walk
from app.canvas.wire_editing import WireEditing
from app.canvas.zoom import ZoomView
from app.guard import guarded
from app.proposal import Proposed
from app.selection import Selection
from app.theme import Theme
from core.edits import Change

_PICK = 8.0  # screen pixels around a terminal from which a wire is drawn
_LARGEST_PICK = 9.0  # the same in sheet units, so that small sockets can still be dragged
_WIRES_FROM = 0.35


@guarded
class SheetView(ZoomView):
    """The canvas.

    ``edit_requested`` carries the id of a part or wire whose properties are wanted; ``chain_requested`` asks for the
    chain builder; ``seen`` comes once, when the drawing has been painted for the first time; ``told`` carries a
    sentence for the user.
    """

    edit_requested = Signal(str)
    chain_requested = Signal()
    seen = Signal()
    told = Signal(str)

    def __init__(self, scene: SheetScene, parent: QWidget | None = None) -> None:
        super().__init__(scene, parent)
        self.document = scene.document
        self.selection: Selection = scene.selection
        self.editor = Editor(self)
        self.paper = Paper(self)
        self.tools = Tools(self)
        self.pointer_at: QPoint | None = None
        self._gesture: Gesture | None = None
        self._hover = HoverRing(scene)
        self._drop = Drop(scene)
        self.outlook = OutlookCorner(self)
        self.walk = Walk(self)
        self.placing = Placing(self, self._drop)
        self.handles = Handles(self)
        self.wires = WireEditing(self)
        self.is_space_held = False
        self.is_seen = False
        # a viewport made here is known to the binding; for Qt's own it would search all kinds of widget
        self.setViewport(QWidget())
        self.add_field: AddField = AddField(self, scene.theme, self.editor.offers, self.editor.why_no_offer)
        self.hint = Hint(self)
        self._set_up()
        self.document.changed.connect(self._on_changed)
        self.document.replaced.connect(self._on_replaced)
        self.document.assessed.connect(self._describe)
        scene.proposal.changed.connect(self._show_outlook)
        self.selection.changed.connect(self._describe)
        self.selection.reveal.connect(self.reveal)
        self.paper.changed.connect(self.viewport().update)
        self.add_field.chosen.connect(self.editor.take_offer)
        self.add_field.considered.connect(self.editor.consider_offer)
        self.add_field.left.connect(self.setFocus)
        self._describe()

    def _set_up(self) -> None:
        self.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.SmartViewportUpdate)
        # every item sets the pen and brush that it paints with
        self.setOptimizationFlag(QGraphicsView.OptimizationFlag.DontSavePainterState)
        self.setTransformationAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setResizeAnchor(QGraphicsView.ViewportAnchor.AnchorViewCenter)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAcceptDrops(True)
        self.setMinimumSize(320, 240)
        self.setAccessibleName(words.tr("Sheet"))
        self.viewport().setAccessibleName(words.tr("Sheet"))

    def set_theme(self, theme: Theme) -> None:
        """Show the drawing in another theme."""
        self.cancel_gesture()
        self._hover.remove()
        self.sheet_scene.set_theme(theme)
        self.walk.refresh()
        self.handles.refresh()
        self.add_field.set_theme(theme)
        self.outlook.set_theme(theme)
        self.resetCachedContent()
        self.viewport().update()

    @cached_property
    def entries(self) -> dict[str, Entry]:
        """What can be done to the drawing, by name; made when first asked for."""
        from app.canvas.actions import drawing_entries  # noqa: PLC0415 - after the first painting

        return drawing_entries(self)

    # gestures

    def cancel_gesture(self) -> None:
        """Give up what the pointer is doing."""
        gesture, self._gesture = self._gesture, None
        if gesture is not None:
            gesture.cancel()
        self.walk.cancel_wire()
        self.placing.end()

    @property
    def is_busy(self) -> bool:
        """Whether a gesture is under way."""
        return self._gesture is not None

    def terminal_under(self, pointer: Pointer) -> str | None:
        """The terminal from which a press would draw a wire."""
        if self.scale_ < _WIRES_FROM:
            return None
        radius = min(self.on_sheet(_PICK), _LARGEST_PICK)
        return self.sheet_scene.layout_.terminal_near(pointer.x, pointer.y, radius)

    def _pointer(self, event: QMouseEvent) -> Pointer:
        self.pointer_at = event.position().toPoint()
        at = self.mapToScene(self.pointer_at)
        return Pointer(at.x(), at.y(), self.pointer_at, event.modifiers(), not self.paper.snaps)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin a gesture."""
        event.accept()
        if self._gesture is not None:
            return
        self.walk.leave()
        self._hover.remove()
        pointer = self._pointer(event)
        button = event.button()
        if self.placing.press(button, pointer):
            return
        if button == Qt.MouseButton.MiddleButton or (
            button == Qt.MouseButton.LeftButton and self.is_space_held
        ):
            self._gesture = PanGesture(self, pointer)
        elif button == Qt.MouseButton.LeftButton:
            from app.canvas import presses  # noqa: PLC0415 - after the first painting

            self._gesture = presses.gesture_for(self, pointer)
        elif button == Qt.MouseButton.RightButton:
            found = self._id_under(pointer)
            if found is not None and found not in self.selection.ids:
                self.selection.set((found,))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Carry on with the gesture, or show what a press would begin."""
        pointer = self._pointer(event)
        if self._gesture is not None:
            self._gesture.move(pointer)
            return
        if self.placing.move(pointer):
            return
        from app.canvas import resizing  # noqa: PLC0415 - after the first painting

        resizing.show_cursor(self, pointer)
        terminal = None if self.is_space_held else self.terminal_under(pointer)
        self._hover.show_at(None if terminal is None else self.sheet_scene.layout_.terminal_point(terminal))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """End the gesture once no button is held."""
        if self._gesture is None or event.buttons() & (
            Qt.MouseButton.LeftButton | Qt.MouseButton.MiddleButton
        ):
            return
        # taken off first: its own change of the document must not count as one from elsewhere
        gesture, self._gesture = self._gesture, None
        gesture.release(self._pointer(event))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Ask for the properties of what lies under the pointer."""
        event.accept()
        pointer = self._pointer(event)
        if event.button() != Qt.MouseButton.LeftButton or self._gesture is not None:
            return
        from app.canvas import presses  # noqa: PLC0415 - after the first painting

        if presses.grip_under(self, pointer) is not None:
            self.wires.find_way()
            return
        found = self._id_under(pointer)
        if found in self.document.sheet.wire_by_id and pointer.ctrl:
            self.selection.set((found,))
            self.wires.split((pointer.x, pointer.y), pointer.alt)
        elif found is not None:
            self.selection.set((found,))
            self.editor.edit(found)

    def id_at(self, at: QPoint) -> str | None:
        """What lies at a point of the screen."""
        point = self.mapToScene(at)
        return self._id_under(Pointer(point.x(), point.y(), at))

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """The menu of what is there."""
        event.accept()
        if self._gesture is None and not self.placing.was_put_down:
            from app.canvas import context_menu  # noqa: PLC0415 - loaded when first asked for

            context_menu.show(self, event)

    def _id_under(self, pointer: Pointer) -> str | None:
        scene, x, y = self.sheet_scene, pointer.x, pointer.y
        found = scene.part_at(x, y) or scene.wire_at(x, y, self.on_sheet(2.0))
        from app.canvas import resizing  # noqa: PLC0415 - after the first painting

        return found or frames.frame_at(scene.layout_, x, y, resizing.reach(self))

    def leaveEvent(self, event: QEvent) -> None:
        """Hide the hint at the pointer."""
        self._hover.remove()
        self.placing.hide()
        self.pointer_at = None
        super().leaveEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show again where the keyboard is."""
        super().focusInEvent(event)
        self.walk.refresh()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """A gesture does not outlive the keyboard focus."""
        self.cancel_gesture()
        self.is_space_held = False
        super().focusOutEvent(event)
        self.walk.refresh()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Scroll, or with Ctrl zoom about the pointer."""
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoom_by(1.0015 ** event.angleDelta().y(), event.position().toPoint())
        else:
            pixels = event.pixelDelta()
            turned = event.angleDelta()
            self.scroll_by(-pixels if not pixels.isNull() else QPoint(-turned.x() // 2, -turned.y() // 2))
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Keys: see :mod:`app.canvas.keys`."""
        if self._gesture is not None:
            self._gesture.key(event)
        elif not keys.press(self, event):
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        """Space let go ends its hand."""
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self.is_space_held = False
        super().keyReleaseEvent(event)

    def focusNextPrevChild(self, forward: bool) -> bool:
        """Tab and Shift+Tab walk the parts, and leave the drawing after the last one."""
        return self.walk.step(1 if forward else -1) or super().focusNextPrevChild(forward)

    # drops

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Show the part that would be dropped."""
        self.cancel_gesture()
        if not self._drop.begin(event.mimeData()):
            event.ignore()
            return
        self.dragMoveEvent(event)

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """Keep the part at the pointer."""
        self._drop.drag(self, event)

    def dragLeaveEvent(self, _event: QDragLeaveEvent) -> None:
        """Forget the part."""
        self._drop.end()

    def dropEvent(self, event: QDropEvent) -> None:
        """Add the part where it was dropped."""
        self._drop.let_fall(self, event)

    # observing

    def _on_changed(self, change: Change) -> None:
        self.cancel_gesture()
        self._hover.remove()
        sheet = self.document.sheet
        wires = [sheet.wire_by_id[wire_id] for wire_id in change.wires if wire_id in sheet.wire_by_id]
        if len(wires) == 1:
            self.editor.gauge = operations.Gauge.of(wires[0]) or self.editor.gauge
        self.walk.refresh()
        self._describe()

    def _on_replaced(self) -> None:
        self.cancel_gesture()
        self.walk.leave()
        self._hover.remove()
        self.fit()

    def _show_outlook(self, proposed: Proposed | None) -> None:
        self.outlook.show(proposed)

    def _describe(self, _: object = None) -> None:
        """Tell a screen reader what is selected, and at which pin the keyboard is."""
        self.walk.on_selection()
        self.handles.refresh()
        self.setAccessibleDescription(self.walk.text())

    def tooltip_at(self, at: QPoint) -> str:
        """What the tooltip at a point of the screen says; empty where there is nothing."""
        point, found = self.mapToScene(at), self.id_at(at)
        if found is None:
            return ""
        terminal = self.sheet_scene.layout_.terminal_near(point.x(), point.y(), _LARGEST_PICK)
        return telling.tooltip(self.sheet_scene, found, terminal)

    def viewportEvent(self, event: QEvent) -> bool:
        """Tooltips are made when they are asked for; the first painting is told."""
        if not self.is_seen and event.type() == QEvent.Type.Paint:
            self.is_seen = True
            QTimer.singleShot(0, self.seen.emit)
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            text = self.tooltip_at(event.pos())
            if text and self._gesture is None:
                QToolTip.showText(event.globalPos(), text, self.viewport())
            else:
                QToolTip.hideText()
            return True
        return super().viewportEvent(event)

    def drawBackground(self, painter: QPainter, rect: QRectF | object) -> None:
        """Paper and dots."""
        assert isinstance(rect, QRectF)
        grid.paint(painter, rect, self.sheet_scene.theme, self.scale_, self.paper.shows_grid)
