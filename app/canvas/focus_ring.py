"""The ring around what the keyboard is at on the drawing: a part, a pin or a wire."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from app.canvas.items import PREVIEW_LAYER
from app.canvas.places import Place
from app.canvas.scene import SheetScene
from app.guard import guarded
from app.theme import Theme
from core.sheet import split_terminal

_PIN = 9.0
_WIDTH = 2.0
_AWAY = 11.0  # from the body of a part: outside the halo of the selection
_ROUNDER = 9.0  # a socket keeps its pin numbers inside its body, and its label close below
_ROOM = 4.0


@guarded
class FocusRing(QGraphicsItem):
    """A thin line in the accent colour, with a second one in the paper's so that it shows on anything."""

    def __init__(self, path: QPainterPath, theme: Theme) -> None:
        super().__init__()
        self._path = path
        self._theme = theme
        self.setZValue(PREVIEW_LAYER)

    def boundingRect(self) -> QRectF:
        """The line and its edge."""
        return self._path.boundingRect().adjusted(-_ROOM, -_ROOM, _ROOM, _ROOM)

    def paint(
        self, painter: QPainter, _option: QStyleOptionGraphicsItem, _widget: QWidget | None = None
    ) -> None:
        """Paint the ring, on the screen at least as heavy as at one to one."""
        width = _WIDTH * max(1.0, min(1.0 / max(painter.worldTransform().m11(), 0.01), 4.0))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for role, line in (("paper", width + 2.0), ("accent", width)):
            painter.setPen(self._theme.pen(role, line))
            painter.drawPath(self._path)


def ring_path(scene: SheetScene, focus: str) -> QPainterPath | None:
    """The line around a terminal (``V1.4``), a part or a wire; None where there is nothing of that name."""
    path = QPainterPath()
    if focus in scene.wire_items:
        return scene.wire_items[focus].shape().simplified()
    if focus in scene.layout_.places:
        _around_part(path, scene.layout_.places[focus])
        return path
    point = scene.layout_.terminal_point(focus) if "." in focus else None
    if point is None or split_terminal(focus)[0] not in scene.layout_.places:
        return None
    path.addEllipse(QPointF(*point), _PIN, _PIN)
    return path


def _around_part(path: QPainterPath, place: Place) -> None:
    left, top, right, bottom = place.body
    rect = QRectF(left, top, right - left, bottom - top).adjusted(-_AWAY, -_AWAY, _AWAY, _AWAY)
    if place.part.kind == "tube" and rect.width() == rect.height():
        path.addEllipse(rect.adjusted(_ROUNDER, _ROUNDER, -_ROUNDER, -_ROUNDER))
    else:
        path.addRoundedRect(rect, 8, 8)
