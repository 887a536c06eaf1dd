"""The scene: items for the parts and wires of the document, kept in step with document, selection, condition.

It observes and never writes. The two maps from id to item are the only owners of items.
"""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QObject, QRectF
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene

from app.canvas import frames
from app.canvas.ghosts import Ghosts
from app.canvas.items import DotItem, PartItem, WireItem
from app.canvas.layout import Layout
from app.canvas.look import PartLook
from app.canvas.looks import part_looks
from app.canvas.meetings import Meetings
from app.canvas.routing import Point
from app.canvas.texts import WireTexts
from app.canvas.wire_order import WireOrder
from app.document import Document
from app.proposal import Proposal, Proposed
from app.selection import Selection
from app.solver import Solver
from app.theme import Theme
from app.viewpoint import Viewpoint
from core.edits import Change

_ROOM = 10_000.0  # a fixed scene rectangle keeps Qt's index from being rebuilt
_MOST_ROOM = 1_000_000.0
_FEW = 60  # up to so many changed looks items are updated one by one, beyond it the whole view at once


class SheetScene(QGraphicsScene):
    """The drawing of one document."""

    def __init__(
        self,
        document: Document,
        selection: Selection,
        viewpoint: Viewpoint,
        theme: Theme,
        parent: QObject | None = None,
        solver: Solver | None = None,
    ) -> None:
        super().__init__(parent)
        self.document = document
        self.selection = selection
        self.viewpoint = viewpoint
        self.theme = theme
        self.proposal = Proposal(document, viewpoint, solver)
        self.ghosts = Ghosts(self)
        self.part_items: dict[str, PartItem] = {}
        self.wire_items: dict[str, WireItem] = {}
        self.dots: dict[str | Point, DotItem] = {}
        self._joining: tuple[WireOrder | None, tuple[str, ...]] = (None, ())
        self.layout_: Layout
        self.setItemIndexMethod(QGraphicsScene.ItemIndexMethod.BspTreeIndex)
        self.rebuild()
        document.changed.connect(self._on_changed)
        document.assessed.connect(self._on_assessed)
        document.replaced.connect(self.rebuild)
        selection.changed.connect(self._on_selected)
        viewpoint.changed.connect(self.refresh_looks)
        self.proposal.changed.connect(self._on_considered)

    def set_theme(self, theme: Theme) -> None:
        """Show everything in another theme."""
        self.theme = theme
        self.rebuild()

    def rebuild(self) -> None:
        """Make everything anew for the sheet as it is."""
        for items in (self.part_items, self.wire_items, self.dots):
            for item in items.values():
                self.removeItem(item)
        self.dots.clear()
        self.part_items.clear()
        self.wire_items.clear()
        sheet = self.document.sheet
        self.layout_ = Layout(sheet, self.document.catalogue, self.theme)
        self._texts = WireTexts(self.layout_, self.theme)
        self._meetings = Meetings(self.layout_)
        self._fix_rect()
        for part in sheet.parts:
            self._add_part(part.id)
        for wire in sheet.wires:
            self._add_wire(wire.id)
        self._show_routes(sheet.wire_by_id)
        self._show_texts(sheet.wire_by_id)
        self._show_dots()
        self.refresh_looks()
        self._on_selected(self.selection.ids)

    def _fix_rect(self) -> None:
        rect = QRectF(-_ROOM, -_ROOM, 2 * _ROOM, 2 * _ROOM)
        bounds = self.layout_.bounds()
        if bounds is not None:
            left, top, right, bottom = (max(-_MOST_ROOM, min(value, _MOST_ROOM)) for value in bounds)
            rect = rect.united(QRectF(left - 2000, top - 2000, right - left + 4000, bottom - top + 4000))
        self.setSceneRect(rect)

    def _add_part(self, part_id: str) -> None:
        item = PartItem(self.layout_.places[part_id], self.document.catalogue, self.theme)
        item.is_selected = part_id in self.selection.ids
        self.part_items[part_id] = item
        self.addItem(item)

    def _add_wire(self, wire_id: str) -> None:
        item = WireItem(self.document.sheet.wire_by_id[wire_id], self.theme)
        item.is_selected = wire_id in self.selection.ids
        self.wire_items[wire_id] = item
        self.addItem(item)

    def _on_changed(self, change: Change) -> None:
        sheet, catalogue = self.document.sheet, self.document.catalogue
        moved = self.layout_.end_preview()
        put_back, relabelled = (self.layout_.disturbed, self.layout_.relabelled) if moved else ([], set())
        laid = self.layout_.update(sheet, catalogue, change)
        self.layout_.disturbed += put_back
        self.layout_.relabelled |= relabelled
        touched = set(change.parts) | self.layout_.relabelled
        touched |= self.part_items.keys() if change.sheet else set()
        for part_id in sorted(touched):
            if part_id not in sheet.part_by_id:
                self.removeItem(self.part_items.pop(part_id))
            elif part_id in self.part_items:
                self.part_items[part_id].show_place(self.layout_.places[part_id], catalogue)
            else:
                self._add_part(part_id)
        for wire_id in sorted(change.wires):
            if wire_id not in sheet.wire_by_id:
                self.removeItem(self.wire_items.pop(wire_id))
            elif wire_id not in self.wire_items:
                self._add_wire(wire_id)
        shown = (moved | laid | change.wires) & sheet.wire_by_id.keys()
        self._show_routes(shown)
        self._show_texts(shown)
        if change.wires or change.parts:
            self._show_dots()
        self.refresh_looks()
        self.selection.set(self.selection.ids & (sheet.part_by_id.keys() | sheet.wire_by_id.keys()))

    def _on_assessed(self, _: object) -> None:
        self.refresh_looks()

    def _on_considered(self, proposed: Proposed | None) -> None:
        self.ghosts.show(proposed)

    def refresh_looks(self) -> None:
        """Show the figures of the condition or instant on view; without answers for this very sheet, none."""
        document, instant = self.document, self.viewpoint.instant
        assessment = document.assessment
        point = self.viewpoint.point(assessment)
        doing = None if instant is None else instant.doing
        looks = part_looks(document.sheet, document.catalogue, assessment, point, doing)
        changed = [
            item for part_id, item in self.part_items.items() if item.look != looks.get(part_id, PartLook())
        ]
        for item in changed:
            item.look = looks.get(item.place.part.id, PartLook())
        self.repaint_parts(changed)
        self.ghosts.refresh()

    def repaint_parts(self, items: list[PartItem]) -> None:
        """Have items painted anew; of many, the whole view at once."""
        if len(items) > _FEW:
            self.update()
            return
        for item in items:
            item.update()

    def _on_selected(self, ids: object) -> None:
        assert isinstance(ids, frozenset)
        for items in (self.part_items, self.wire_items):
            for item_id, item in items.items():
                if item.is_selected != (item_id in ids):
                    item.is_selected = not item.is_selected
                    item.update()

    def _show_routes(self, wire_ids: Iterable[str]) -> None:
        """Show wires where the layout has them, and those that now cross them otherwise."""
        board, sheet = self.layout_.board, self.document.sheet
        laid = set(wire_ids)
        shown = sorted(laid | self._meetings.follow(sheet, laid))
        sides = self.layout_.sides(shown)
        for wire_id in shown:
            trunk = board.trunks.get(wire_id) if wire_id in sides else None
            self.wire_items[wire_id].show_route(
                sheet.wire_by_id[wire_id],
                board.routes[wire_id],
                trunk,
                sides.get(wire_id, (1, 1)),
                self._meetings.hops(wire_id),
            )

    def wire_text_at(self, wire_id: str) -> Point | None:
        """The top left corner of a wire's text; None where it has none, or there was no room."""
        return self._texts.of(wire_id).at

    def _show_texts(self, wire_ids: Iterable[str]) -> None:
        for wire_id in self._texts.follow(self.document.sheet, wire_ids, self.layout_.disturbed):
            self.wire_items[wire_id].show_text(*self._texts.of(wire_id))

    def _show_dots(self) -> None:
        """Put a dot on every terminal where three or more wires meet, and where wires of one net part."""
        points: dict[str | Point, Point] = {point: point for point in self._meetings.partings()}
        for terminal in self._joining_terminals():
            point = self.layout_.terminal_point(terminal)
            if point is not None:
                points[terminal] = point
        for place in self.dots.keys() - points.keys():
            self.removeItem(self.dots.pop(place))
        for place, point in points.items():
            if place not in self.dots:
                self.dots[place] = DotItem(point, self.theme)
                self.addItem(self.dots[place])
            elif place != point:
                self.dots[place].setPos(*point)

    def _joining_terminals(self) -> tuple[str, ...]:
        """Terminals of three or more wires; looked for again only when the wires are others."""
        order, found = self._joining
        if order is not self.layout_.order:
            found = tuple(terminal for terminal, count in self.layout_.ends.items() if count >= 3)
            self._joining = (self.layout_.order, found)
        return found

    def preview_move(self, part_ids: Iterable[str], dx: float, dy: float) -> None:
        """Show parts shifted, with their wires laid again; the sheet stays as it is."""
        moved = list(part_ids)
        laid = self.layout_.preview(moved, dx, dy)
        self._show_preview(moved, laid)

    def preview_bends(self, wire_id: str, via: tuple[Point, ...]) -> None:
        """Show a wire through other corners; the sheet stays as it is."""
        self._show_preview([], self.layout_.preview_bends(wire_id, via))

    def end_preview(self, part_ids: Iterable[str]) -> None:
        """Show the sheet as it is again."""
        self._show_preview(list(part_ids), self.layout_.end_preview())

    def _show_preview(self, part_ids: list[str], laid: set[str]) -> None:
        for part_id in {*part_ids, *self.layout_.relabelled}:
            if part_id in self.part_items:
                self.part_items[part_id].show_place(self.layout_.places[part_id], self.document.catalogue)
        self._show_routes(laid)
        self._show_texts(laid)
        self._show_dots()

    def part_at(self, x: float, y: float) -> str | None:
        """The uppermost part whose body holds a point."""
        found = self.layout_.parts_within((x - 0.5, y - 0.5, x + 0.5, y + 0.5))
        order = list(self.part_items)
        return max(found, key=order.index) if found else None

    def wire_at(self, x: float, y: float, radius: float) -> str | None:
        """A wire within ``radius`` of a point."""
        area = QRectF(x - radius, y - radius, 2 * radius, 2 * radius)
        for item in self.items(area):
            if isinstance(item, WireItem):
                return item.wire.id
        return None

    def ids_within(self, area: QRectF) -> set[str]:
        """Parts that a rectangle touches, and wires and frames that lie wholly inside it."""
        rect = (area.left(), area.top(), area.right(), area.bottom())
        found = self.layout_.parts_within(rect) | frames.within(self.layout_, rect)
        for wire_id, line in self.layout_.board.routes.items():
            if all(area.contains(x, y) for x, y in line):
                found.add(wire_id)
        return found

    def item_of(self, item_id: str) -> QGraphicsItem | None:
        """The item of a part or wire."""
        return self.part_items.get(item_id) or self.wire_items.get(item_id)
