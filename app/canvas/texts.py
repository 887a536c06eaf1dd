"""The texts of wires, gauge and length: what each says and where it stands, so that it covers nothing."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from app.canvas.cells import Cells
from app.canvas.items import text_size
from app.canvas.layout import Layout
from app.canvas.looks import wire_text
from app.canvas.routing import Point, Rect, grown
from app.canvas.settling import settle
from app.theme import Theme
from core.sheet import Sheet

_MARGIN = 12.0  # how far beyond its own size a text looks for what is in its way


class WireText(NamedTuple):
    """What a wire says and the top left corner of it; None where there is no room."""

    text: str
    at: Point | None


_SILENT = WireText("", None)


class WireTexts:
    """The texts of all wires of a layout, each placed after those of the wires laid before it."""

    def __init__(self, layout: Layout, theme: Theme) -> None:
        self._layout = layout
        self._theme = theme
        self._zones = Cells()
        self._shown: dict[str, WireText] = {}

    def of(self, wire_id: str) -> WireText:
        """The text of a wire."""
        return self._shown.get(wire_id, _SILENT)

    def follow(self, sheet: Sheet, wire_ids: Iterable[str], disturbed: Iterable[Rect]) -> set[str]:
        """Place the texts of wires, and of those near what was disturbed; answers the wires whose text changed."""
        ranks = self._layout.ranks
        stale, places = set(wire_ids) & ranks.keys(), list(disturbed)
        for wire_id in self._shown.keys() - ranks.keys():
            places += self._forget(wire_id)
        for rect in places:
            stale.update(self._zones.near(rect))

        def redo(wire_id: str) -> list[Rect]:
            before, had = self.of(wire_id), self._layout.board.text_rect(wire_id)
            self._shown[wire_id] = self._place(sheet, wire_id)
            if self._shown[wire_id] == before:
                return []
            has = self._layout.board.text_rect(wire_id)
            changed.add(wire_id)
            return [rect for rect in (had, has) if rect is not None and had != has]

        changed: set[str] = set()
        settle(stale, ranks, redo, self._zones.near)
        return changed

    def _forget(self, wire_id: str) -> list[Rect]:
        rect = self._layout.board.text_rect(wire_id)
        self._layout.board.drop_text(wire_id)
        self._zones.drop(wire_id)
        del self._shown[wire_id]
        return [] if rect is None else [rect]

    def _place(self, sheet: Sheet, wire_id: str) -> WireText:
        """One text in its place; the second wire of a pair keeps quiet where it would say the same."""
        text = wire_text(sheet.wire_by_id[wire_id])
        leader = sheet.wire_by_id.get(self._layout.followers.get(wire_id, ""))
        if not text or (leader is not None and text == wire_text(leader)):
            self._layout.board.drop_text(wire_id)
            self._zones.drop(wire_id)
            return WireText(text, None)
        width, height = text_size(text, self._theme)
        line = self._layout.board.routes[wire_id]
        xs, ys = [x for x, _ in line], [y for _, y in line]
        around = grown((min(xs), min(ys), max(xs), max(ys)), _MARGIN)
        self._zones.put(
            wire_id, ((around[0] - width, around[1] - height, around[2] + width, around[3] + height),)
        )
        return WireText(text, self._layout.board.text_spot(wire_id, width, height))
