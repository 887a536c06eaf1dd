"""Zoom and pan of the canvas."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRectF, Signal
from PySide6.QtWidgets import QGraphicsView, QWidget

from app.canvas.scene import SheetScene

SMALLEST, LARGEST, STEP = 0.1, 6.0, 1.25
_LARGEST_FIT = 1.25
_TOP_ROOM = 56.0  # screen pixels kept free for the add field when fitting
_SIDE_ROOM = 28.0
_EDGE = 16  # screen pixels around what is brought into view


class ZoomView(QGraphicsView):
    """A view of the sheet that can be zoomed about a point and moved. ``zoomed`` carries the scale."""

    zoomed = Signal(float)

    def __init__(self, scene: SheetScene, parent: QWidget | None = None) -> None:
        super().__init__(scene, parent)
        self.sheet_scene = scene

    def on_sheet(self, pixels: float) -> float:
        """A distance on the screen in units of the sheet."""
        return pixels / self.scale_

    def fit(self) -> None:
        """Show the whole sheet."""
        bounds = self.sheet_scene.layout_.bounds()
        if bounds is None:
            self._show_at(1.0, QPointF(0.0, 0.0))
            return
        left, top, right, bottom = bounds
        width = max(self.width() - 2 * _SIDE_ROOM, 50.0)
        height = max(self.height() - _TOP_ROOM - _SIDE_ROOM, 50.0)
        scale = min(width / max(right - left, 1.0), height / max(bottom - top, 1.0), _LARGEST_FIT)
        scale = max(scale, SMALLEST)
        middle = QPointF((left + right) / 2, (top + bottom) / 2 - (_TOP_ROOM - _SIDE_ROOM) / 2 / scale)
        self._show_at(scale, middle)

    def zoom_in(self) -> None:
        """Show everything larger."""
        self.zoom_by(STEP, self.viewport().rect().center())

    def zoom_out(self) -> None:
        """Show everything smaller."""
        self.zoom_by(1 / STEP, self.viewport().rect().center())

    def zoom_reset(self) -> None:
        """Show the sheet one to one."""
        self.zoom_by(1 / self.scale_, self.viewport().rect().center())

    def zoom_by(self, factor: float, about: QPoint) -> None:
        """Zoom while the point of the sheet under ``about`` (on the screen) stays there."""
        scale = min(max(self.scale_ * factor, SMALLEST), LARGEST)
        before = self.mapToScene(about)
        self._set_scale(scale)
        moved = self.mapFromScene(before) - about
        self.scroll_by(moved)

    @property
    def scale_(self) -> float:
        """Screen pixels per unit of the sheet."""
        return self.transform().m11()

    def _set_scale(self, scale: float) -> None:
        transform = self.transform()
        transform.reset()
        transform.scale(scale, scale)
        self.setTransform(transform)
        self.zoomed.emit(scale)

    def _show_at(self, scale: float, middle: QPointF) -> None:
        self._set_scale(scale)
        self.centerOn(middle)

    def scroll_by(self, pixels: QPoint) -> None:
        """Scroll by screen pixels."""
        across, down = self.horizontalScrollBar(), self.verticalScrollBar()
        across.setValue(across.value() + pixels.x())
        down.setValue(down.value() + pixels.y())

    def reveal(self, ids: object) -> None:
        """Bring parts and wires into view, scrolling no further than that takes."""
        assert isinstance(ids, frozenset)
        items = [item for item_id in ids if (item := self.sheet_scene.item_of(item_id)) is not None]
        area = QRectF()
        for item in items:
            area = area.united(item.sceneBoundingRect())
        seen = self.mapToScene(self.viewport().rect()).boundingRect()
        if area.isNull() or seen.contains(area):
            return
        if area.width() > seen.width() or area.height() > seen.height():
            self.centerOn(area.center())
        else:
            self.ensureVisible(area, _EDGE, _EDGE)
