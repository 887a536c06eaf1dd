"""The ghost of what is considered: would-be figures at their parts, and what would come, go or move.

Nothing of the drawing is moved for it, and it is gone as soon as nothing is considered any more.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath
from PySide6.QtWidgets import QGraphicsItem, QGraphicsPathItem

from app.canvas import symbols
from app.canvas.board import port_at
from app.canvas.items import PREVIEW_LAYER
from app.canvas.look import PartLook
from app.canvas.looks import part_looks
from app.canvas.places import Place, place_of
from app.canvas.preview import PartGhost
from app.canvas.routing import Point, Port, Rect, Route
from app.proposal import Proposed
from core.sheet import AnyPart, Sheet, Wire, split_terminal

if TYPE_CHECKING:
    from app.canvas.scene import SheetScene

_DASH = (3.0, 3.0)
_CROSS = 9.0  # half a cross on a wire
_MOST_ROUTED = 24  # from more new wires on they are drawn straight, so that the pointer is never kept waiting


class Ghosts:
    """Shows what is considered on a scene.

    While anybody holds it, what would come is drawn by those who do, such as the wire on the pointer.
    """

    def __init__(self, scene: SheetScene) -> None:
        self._scene = scene
        self._shown: Proposed | None = None
        self._items: list[QGraphicsItem] = []
        self._holders = 0

    @property
    def is_held(self) -> bool:
        """Whether somebody else draws what would come."""
        return self._holders > 0

    def hold(self) -> None:
        """Leave it to the caller to draw what would come."""
        self._holders += 1

    def let_go(self) -> None:
        """The caller draws it no more."""
        self._holders -= 1

    @property
    def part_ids(self) -> frozenset[str]:
        """Parts that show would-be figures now."""
        return frozenset(key for key, item in self._scene.part_items.items() if item.ghost is not None)

    @property
    def count(self) -> int:
        """How many things are drawn of what would come or go."""
        return len(self._items)

    def show(self, proposed: Proposed | None) -> None:
        """Show what is considered, or nothing."""
        self._shown = proposed
        self.refresh()

    def refresh(self) -> None:
        """Bring the ghost up to date with the items and their present looks."""
        self._clear()
        proposed = self._shown
        looks = {} if proposed is None else self._looks(proposed)
        changed = []
        for part_id, item in self._scene.part_items.items():
            ghost = looks.get(part_id)
            if ghost is not None and _reads_alike(ghost, item.look):
                ghost = None
            if ghost != item.ghost:
                item.ghost = ghost
                changed.append(item)
        self._scene.repaint_parts(changed)
        if proposed is not None:
            self._draw(proposed, looks)

    def _looks(self, proposed: Proposed) -> dict[str, PartLook]:
        scene = self._scene
        point = scene.viewpoint.point(proposed.assessment)
        if (
            point is None or scene.viewpoint.instant is not None
        ):  # what would be is known of the steady state only
            return {}
        catalogue = scene.document.catalogue_for(proposed.sheet)
        return part_looks(proposed.sheet, catalogue, proposed.assessment, point)

    def _clear(self) -> None:
        for item in self._items:
            self._scene.removeItem(item)
        self._items = []

    # what would come and go

    def _draw(self, proposed: Proposed, looks: dict[str, PartLook]) -> None:
        before, after = self._scene.document.sheet, proposed.sheet
        coming = [
            part
            for part_id in sorted(proposed.change.parts & after.part_by_id.keys())
            if _stance(part := after.part_by_id[part_id]) != _stance(before.part_by_id.get(part_id))
        ]
        going = [part_id for part_id in proposed.change.parts if part_id not in after.part_by_id]
        new_wires, old_wires = _wires_of(before, after, proposed.change.wires)
        if self.is_held:
            # a wire that is only cut, where the one under way is joined to it, does not go
            old_wires = [wire_id for wire_id in old_wires if wire_id not in after.wire_by_id]
        self._draw_crosses(going, old_wires)
        if not self.is_held:
            self._draw_parts(coming, proposed, looks)
            self._draw_wires(new_wires, coming)

    def _add(self, item: QGraphicsItem) -> None:
        item.setZValue(PREVIEW_LAYER)
        self._scene.addItem(item)
        self._items.append(item)

    def _draw_parts(self, parts: Iterable[AnyPart], proposed: Proposed, looks: dict[str, PartLook]) -> None:
        catalogue = self._scene.document.catalogue_for(proposed.sheet)
        for part in parts:
            item = PartGhost(part, catalogue, self._scene.theme, looks.get(part.id, PartLook()))
            item.setPos(*part.at)
            self._add(item)

    def _draw_wires(self, wires: list[Wire], coming: Iterable[AnyPart]) -> None:
        if not wires:
            return
        scene = self._scene
        places = {part.id: place_of(part, scene.document.catalogue, scene.theme) for part in coming}
        path = QPainterPath()
        for number, wire in enumerate(wires):
            start, end = self._port(wire.start, places), self._port(wire.end, places)
            if start is not None and end is not None:
                _add_line(path, self._line(start, end, number < _MOST_ROUTED))
        item = QGraphicsPathItem(path)
        item.setPen(scene.theme.pen("accent", scene.theme.heavy_width, _DASH))
        self._add(item)

    def _line(self, start: Port, end: Port, is_routed: bool) -> Route:
        if is_routed:
            return self._scene.layout_.board.find(start, end)
        return (start.x, start.y), (end.x, end.y)

    def _port(self, terminal: str, places: dict[str, Place]) -> Port | None:
        part_id, name = split_terminal(terminal)
        place = places.get(part_id)
        if place is None:
            layout = self._scene.layout_
            return layout.port(terminal) if part_id in layout.places else None
        found = place.terminals.get(name) or symbols.terminal(
            place.part, self._scene.document.catalogue, name
        )
        x, y = place.part.at[0] + found.x, place.part.at[1] + found.y
        return port_at(x, y, (found.dx, found.dy), place.body)

    def _draw_crosses(self, part_ids: Iterable[str], wire_ids: Iterable[str]) -> None:
        layout, path = self._scene.layout_, QPainterPath()
        for part_id in part_ids:
            if part_id in layout.places:
                _add_cross(path, layout.places[part_id].body)
        for wire_id in wire_ids:
            if wire_id in layout.board.routes:
                x, y = _middle(layout.board.routes[wire_id])
                _add_cross(path, (x - _CROSS, y - _CROSS, x + _CROSS, y + _CROSS))
        if not path.isEmpty():
            item = QGraphicsPathItem(path)
            item.setPen(self._scene.theme.pen("accent", self._scene.theme.heavy_width))
            self._add(item)


def _reads_alike(one: PartLook, other: PartLook) -> bool:
    """Whether two looks say the same; glows that differ where the figures do not cannot be told apart."""
    return (one.state, one.values, one.pulled_in) == (other.state, other.values, other.pulled_in)


def _stance(part: AnyPart | None) -> tuple[object, ...] | None:
    """What decides where and as what a part is drawn."""
    return None if part is None else (part.kind, part.at, part.turn, part.mirror)


def _wires_of(before: Sheet, after: Sheet, changed: Iterable[str]) -> tuple[list[Wire], list[str]]:
    """Wires that would run anew, and ids of those that would not run as they do any more."""
    new, old = [], []
    for wire_id in sorted(changed):
        was, is_now = before.wire_by_id.get(wire_id), after.wire_by_id.get(wire_id)
        if was is not None and is_now is not None and (was.start, was.end) == (is_now.start, is_now.end):
            continue
        if is_now is not None:
            new.append(is_now)
        if was is not None:
            old.append(wire_id)
    return new, old


def _add_line(path: QPainterPath, line: Route) -> None:
    path.moveTo(QPointF(*line[0]))
    for point in line[1:]:
        path.lineTo(QPointF(*point))


def _add_cross(path: QPainterPath, rect: Rect) -> None:
    left, top, right, bottom = rect
    path.moveTo(left, top)
    path.lineTo(right, bottom)
    path.moveTo(left, bottom)
    path.lineTo(right, top)


def _middle(line: Route) -> Point:
    """The point half way along a route."""
    left = sum(math.dist(a, b) for a, b in itertools.pairwise(line)) / 2
    for a, b in itertools.pairwise(line):
        far = math.dist(a, b)
        if far >= left and far > 0:
            share = left / far
            return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share
        left -= far
    return line[-1]
