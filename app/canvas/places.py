"""Places: where one part lies on the sheet, with its body, its label and its terminals."""

from __future__ import annotations

from dataclasses import dataclass

import msgspec

from app.canvas import symbols
from app.canvas.look import PartLook
from app.canvas.looks import SILENT
from app.canvas.routing import Point, Rect
from app.canvas.symbols import Terminal
from app.theme import Theme
from core.catalogue import Catalogue
from core.sheet import SUPPLY_KINDS, AnyPart

# the figures a label must leave room for, whatever the numbers are at the moment
_HEATER_ROOM = PartLook(state="ok", values="12.60 V  −10.0 %  0.300 A")
_SUPPLY_ROOM = PartLook(state="ok", values="12.60 V  10.00 A  100 %")
_OTHER_ROOM = PartLook(values="12.60 V  10.00 W")


def _room(kind: str) -> PartLook:
    """A look whose figures are as long as those of a part of this kind get."""
    if kind in SILENT:
        return PartLook()
    if kind in ("tube", "lamp"):
        return _HEATER_ROOM
    return _SUPPLY_ROOM if kind in SUPPLY_KINDS else _OTHER_ROOM


@dataclass(frozen=True)
class Place:
    """Where one part lies on the sheet: its body, its label, and its terminals by name."""

    part: AnyPart
    body: Rect
    label: Rect
    terminals: dict[str, Terminal]

    def point(self, name: str) -> Point | None:
        """The place of a terminal on the sheet, or None if the part has no such terminal."""
        terminal = self.terminals.get(name)
        return None if terminal is None else (self.part.at[0] + terminal.x, self.part.at[1] + terminal.y)

    def shifted(self, dx: float, dy: float) -> Place:
        """The same part elsewhere."""
        return Place(
            _at(self.part, dx, dy), _moved(self.body, dx, dy), _moved(self.label, dx, dy), self.terminals
        )


def _at(part: AnyPart, dx: float, dy: float) -> AnyPart:
    return msgspec.structs.replace(part, at=(part.at[0] + dx, part.at[1] + dy))


def _moved(rect: Rect, dx: float, dy: float) -> Rect:
    return rect[0] + dx, rect[1] + dy, rect[2] + dx, rect[3] + dy


def place_of(part: AnyPart, catalogue: Catalogue, theme: Theme) -> Place:
    """Measure one part."""
    x, y = part.at
    body = symbols.body(part, catalogue)
    label = symbols.label_box(part, catalogue, _room(part.kind), theme)
    return Place(
        part,
        _moved((body.left, body.top, body.right, body.bottom), x, y),
        _moved((label.left, label.top, label.right, label.bottom), x, y),
        {terminal.name: terminal for terminal in symbols.terminals(part, catalogue)},
    )
