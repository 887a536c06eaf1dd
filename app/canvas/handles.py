"""The handles of the selected wire: small squares on its corners, small bars on its pieces."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from app.canvas.bends import Piece, bones_of, corners_of, pieces_of
from app.canvas.board import STRAP_CLEAR
from app.canvas.items import PREVIEW_LAYER
from app.canvas.routing import CLEAR, Point
from app.canvas.wire_order import part_ids
from app.guard import guarded
from app.theme import Theme

if TYPE_CHECKING:
    from app.canvas.scene import SheetScene
    from app.canvas.view import SheetView

_LONG, _SHORT = 10.0, 5.0  # screen pixels of a bar
_SQUARE = 6.0
_ROOM = 30.0


class Grip(NamedTuple):
    """What was grasped: a piece, or a corner."""

    piece: Piece | None
    corner: Point


@guarded
class HandlesItem(QGraphicsItem):
    """The handles as they are painted, of one size on the screen whatever the scale."""

    def __init__(self, pieces: list[Piece], corners: list[Point], current: int | None, theme: Theme) -> None:
        super().__init__()
        self._pieces, self._corners, self._current, self._theme = pieces, corners, current, theme
        points = [piece.middle for piece in pieces] + corners
        xs, ys = [x for x, _ in points], [y for _, y in points]
        self._bounds = QRectF(QPointF(min(xs), min(ys)), QPointF(max(xs), max(ys)))
        self._bounds.adjust(-_ROOM, -_ROOM, _ROOM, _ROOM)
        self.setZValue(PREVIEW_LAYER)

    def boundingRect(self) -> QRectF:
        """All handles."""
        return self._bounds

    def paint(
        self, painter: QPainter, _option: QStyleOptionGraphicsItem, _widget: QWidget | None = None
    ) -> None:
        """Paint them; the piece that the arrows move is filled."""
        unit = 1.0 / max(painter.worldTransform().m11(), 0.1)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(self._theme.pen("accent", 1.4 * unit))
        painter.setBrush(self._theme.brush("paper"))
        for x, y in self._corners:
            painter.drawRect(_about(x, y, _SQUARE * unit, _SQUARE * unit))
        for number, piece in enumerate(self._pieces):
            is_current = number == self._current
            painter.setBrush(self._theme.brush("accent" if is_current else "paper"))
            long, short = (_LONG, _SHORT) if not is_current else (_LONG + 4, _SHORT + 2)
            wide, high = (long, short) if piece.is_level else (short, long)
            painter.drawRoundedRect(_about(*piece.middle, wide * unit, high * unit), 2 * unit, 2 * unit)
        painter.setBrush(Qt.BrushStyle.NoBrush)


def _about(x: float, y: float, wide: float, high: float) -> QRectF:
    return QRectF(x - wide / 2, y - high / 2, wide, high)


class Handles:
    """Keeps the handles where the route of the selected wire is; ``current`` is the piece that the arrows move."""

    def __init__(self, view: SheetView) -> None:
        self._view = view
        self._scene = view.sheet_scene
        self._item: HandlesItem | None = None
        self.wire_id = ""
        self.current: int | None = None
        self.bones: tuple[Point, ...] = ()

    def refresh(self) -> None:
        """Show the handles of the one wire, or pair, that is selected, or none."""
        wire_id = leading_wire(self._scene, self._view.selection.ids)
        if wire_id != self.wire_id:
            self.current = None
        self.wire_id = wire_id
        self.bones = _bones(self._scene, wire_id) if wire_id else ()
        if self.current is not None:
            self.current = min(self.current, len(self.pieces) - 1) if self.pieces else None
        if self._item is not None:
            self._scene.removeItem(self._item)
            self._item = None
        if self.pieces or self.corners:
            self._item = HandlesItem(self.pieces, self.corners, self.current, self._scene.theme)
            self._scene.addItem(self._item)

    def hold(self, piece: Piece, at: float) -> None:
        """Make current again the piece that was moved across its way to ``at``."""

        def away(number: int) -> tuple[float, float]:
            other = self.pieces[number]
            across = 1 if other.is_level else 0
            beside = abs(other.start[across] - at) if other.is_level == piece.is_level else math.inf
            return beside, abs(other.middle[1 - across] - piece.middle[1 - across])

        self.current = min(range(len(self.pieces)), key=away) if self.pieces else None
        self.refresh()

    def leave(self) -> bool:
        """Step out of the pieces; False where no piece was current."""
        if self.current is None:
            return False
        self.current = None
        self.refresh()
        return True

    @property
    def pieces(self) -> list[Piece]:
        """The pieces that can be moved."""
        return pieces_of(self.bones)

    @property
    def corners(self) -> list[Point]:
        """The corners that can be moved."""
        return corners_of(self.bones)

    def at(self, x: float, y: float, radius: float) -> Grip | None:
        """The handle at a point; a corner goes before a piece."""
        for corner in self.corners:
            if max(abs(corner[0] - x), abs(corner[1] - y)) <= radius:
                return Grip(None, corner)
        for piece in self.pieces:
            if max(abs(piece.middle[0] - x), abs(piece.middle[1] - y)) <= radius:
                return Grip(piece, piece.middle)
        return None


def leading_wire(scene: SheetScene, ids: frozenset[str]) -> str:
    """The wire whose route is meant by a selection: a wire alone, or the first of a pair; else empty."""
    layout = scene.layout_
    leaders = {layout.followers.get(item_id, item_id) for item_id in ids}
    only = next(iter(leaders)) if len(leaders) == 1 else ""
    return only if only in layout.board.routes and only in scene.document.sheet.wire_by_id else ""


def _bones(scene: SheetScene, wire_id: str) -> tuple[Point, ...]:
    layout, wire = scene.layout_, scene.document.sheet.wire_by_id[wire_id]
    clear = STRAP_CLEAR if len(part_ids(wire)) == 1 else CLEAR
    line = layout.board.routes[wire_id]
    start = layout.port(wire.start, clear, line[1] if len(line) > 1 else None)
    end = layout.port(wire.end, clear, line[-2] if len(line) > 1 else None)
    return bones_of(line, start, end)
