"""What gestures show while they run: a wire to be, a ghost of many parts, a rubber band, a part to drop."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath
from PySide6.QtWidgets import (
    QGraphicsEllipseItem,
    QGraphicsItem,
    QGraphicsPathItem,
    QGraphicsRectItem,
    QStyleOptionGraphicsItem,
    QWidget,
)

from app.canvas import operations, symbols
from app.canvas.items import PREVIEW_LAYER
from app.canvas.look import PartLook
from app.canvas.routing import CLEAR, Point, Port, Route
from app.guard import guarded
from app.theme import Theme
from core.catalogue import Catalogue
from core.sheet import AnyPart

if TYPE_CHECKING:
    from app.canvas.scene import SheetScene

_TARGET = 7.0
_SMALL = (3.0, 3.0)


class WirePreview:
    """A dashed line from a terminal to the pointer, and a ring around the terminal it has found."""

    def __init__(self, scene: SheetScene, terminal: str) -> None:
        self._scene = scene
        self._terminal = terminal
        scene.ghosts.hold()
        theme = scene.theme
        self._line = QGraphicsPathItem()
        self._line.setPen(theme.pen("accent", theme.heavy_width, _SMALL))
        self._ring = _ring(theme)
        self._start = _ring(theme)
        start = scene.layout_.terminal_point(terminal)
        if start is not None:
            self._start.setPos(*start)
        self._ring.hide()
        for item in (self._line, self._ring, self._start):
            item.setZValue(PREVIEW_LAYER)
            scene.addItem(item)

    def show_line(self, target: str | None, pointer: Point, joint: bool) -> None:
        """Show the wire: routed to a terminal it has found, or to a joint, else straight to the pointer."""
        layout = self._scene.layout_
        found = layout.terminal_point(target) if target is not None else None
        self._ring.setVisible(found is not None or joint)
        if target is not None and found is not None:
            self._ring.setPos(*found)
            self._show(layout.board.find(layout.port(self._terminal), layout.port(target)))
        elif joint:
            at = operations.snapped(*pointer)
            self._ring.setPos(*at)
            self._show(layout.board.find(layout.port(self._terminal), Port(*at, 0.0, -1.0, CLEAR)))
        else:
            start = layout.terminal_point(self._terminal)
            self._show((start or pointer, pointer))

    def _show(self, line: Route) -> None:
        path = QPainterPath(QPointF(*line[0]))
        for x, y in line[1:]:
            path.lineTo(x, y)
        self._line.setPath(path)

    def remove(self) -> None:
        """Take it off the scene."""
        self._scene.ghosts.let_go()
        for item in (self._line, self._ring, self._start):
            self._scene.removeItem(item)


def _ring(theme: Theme) -> QGraphicsEllipseItem:
    ring = QGraphicsEllipseItem(-_TARGET, -_TARGET, 2 * _TARGET, 2 * _TARGET)
    ring.setPen(theme.pen("accent", theme.heavy_width))
    return ring


class HoverRing:
    """A ring around the terminal under the pointer: a wire can be drawn from here."""

    def __init__(self, scene: SheetScene) -> None:
        self._scene = scene
        self._ring: QGraphicsEllipseItem | None = None

    def show_at(self, point: Point | None) -> None:
        """Show the ring at a point, or hide it."""
        if point is None:
            self.remove()
            return
        if self._ring is None:
            self._ring = _ring(self._scene.theme)
            self._ring.setZValue(PREVIEW_LAYER)
            self._scene.addItem(self._ring)
        self._ring.setPos(*point)

    def remove(self) -> None:
        """Take it off the scene."""
        if self._ring is not None:
            self._scene.removeItem(self._ring)
            self._ring = None


class BandPreview:
    """A rubber band."""

    def __init__(self, scene: SheetScene) -> None:
        self._scene = scene
        self._item = QGraphicsRectItem()
        pen = scene.theme.pen("accent", 1.0, (4.0, 3.0))
        pen.setCosmetic(True)
        self._item.setPen(pen)
        self._item.setZValue(PREVIEW_LAYER)
        scene.addItem(self._item)

    def show_area(self, area: QRectF) -> None:
        """Show the band around an area."""
        self._item.setRect(area)

    def remove(self) -> None:
        """Take it off the scene."""
        self._scene.removeItem(self._item)


class GhostPreview:
    """One outline for a move of very many parts."""

    def __init__(self, scene: SheetScene, part_ids: list[str]) -> None:
        self._scene = scene
        path = QPainterPath()
        for part_id in part_ids:
            left, top, right, bottom = scene.layout_.places[part_id].body
            path.addRect(left, top, right - left, bottom - top)
        self._item = QGraphicsPathItem(path)
        pen = scene.theme.pen("accent", 1.0)
        pen.setCosmetic(True)
        self._item.setPen(pen)
        self._item.setZValue(PREVIEW_LAYER)
        scene.addItem(self._item)

    def show_at(self, dx: float, dy: float) -> None:
        """Show the outline shifted."""
        self._item.setPos(dx, dy)

    def remove(self) -> None:
        """Take it off the scene."""
        self._scene.removeItem(self._item)


@guarded
class PartGhost(QGraphicsItem):
    """A part that is not on the sheet yet: it hangs on the pointer, or is only considered."""

    def __init__(
        self, part: AnyPart, catalogue: Catalogue, theme: Theme, look: PartLook | None = None
    ) -> None:
        super().__init__()
        self._part = part
        self._look = look or PartLook()
        self._catalogue = catalogue
        self._theme = theme
        box = symbols.body(part, catalogue)
        self._bounds = QRectF(box.left, box.top, box.width, box.height).adjusted(-90, -8, 90, 60)
        self.setZValue(PREVIEW_LAYER)
        self.setOpacity(0.6)

    def boundingRect(self) -> QRectF:
        """The symbol and its label."""
        return self._bounds

    def paint(
        self, painter: QPainter, _option: QStyleOptionGraphicsItem, _widget: QWidget | None = None
    ) -> None:
        """Paint the part as it would look."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        try:
            scale = painter.worldTransform().m11()
            symbols.paint_part(painter, self._part, self._catalogue, self._look, self._theme, scale)
        except Exception:  # Qt aborts or repeats for ever on an exception from paint()
            painter.setPen(self._theme.pen("over", 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(self._bounds)
