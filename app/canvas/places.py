"""Places: where one part lies on the sheet, with its body, its label and its terminals."""

from __future__ import annotations

from dataclasses import dataclass, replace

import msgspec

from app.canvas import symbols
from app.canvas.look import PartLook
from app.canvas.looks import SILENT
from app.canvas.routing import Point, Rect
from app.canvas.symbols import Terminal
from app.theme import Theme
from core.catalogue import Catalogue
from core.sheet import REMARK_KINDS, SUPPLY_KINDS, AnyPart

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


_WAVES = 5.0  # from the line of a twisted pair to the outside of its waves


@dataclass(frozen=True)
class Place:
    """Where one part lies on the sheet: its body, its terminals by name, its label and the volts at its pins.

    ``labels`` are the places where the label may stand, best first; it stands on the one numbered ``side``. A twisted
    pair that passes by keeps off ``wide_volts``, as it is wider than a wire.
    """

    part: AnyPart
    body: Rect
    terminals: dict[str, Terminal]
    labels: tuple[Rect, ...]
    volts: tuple[Rect, ...] = ()
    wide_volts: tuple[Rect, ...] = ()
    side: int = 0

    @property
    def label(self) -> Rect:
        """Where the label stands."""
        return self.labels[self.side]

    def point(self, name: str) -> Point | None:
        """The place of a terminal on the sheet, or None if the part has no such terminal."""
        terminal = self.terminals.get(name)
        return None if terminal is None else (self.part.at[0] + terminal.x, self.part.at[1] + terminal.y)

    def shifted(self, dx: float, dy: float) -> Place:
        """The same part elsewhere."""
        return replace(
            self,
            part=_at(self.part, dx, dy),
            body=_moved(self.body, dx, dy),
            labels=tuple(_moved(label, dx, dy) for label in self.labels),
            volts=tuple(_moved(rect, dx, dy) for rect in self.volts),
            wide_volts=tuple(_moved(rect, dx, dy) for rect in self.wide_volts),
        )


def _at(part: AnyPart, dx: float, dy: float) -> AnyPart:
    return msgspec.structs.replace(part, at=(part.at[0] + dx, part.at[1] + dy))


def _moved(rect: Rect, dx: float, dy: float) -> Rect:
    return rect[0] + dx, rect[1] + dy, rect[2] + dx, rect[3] + dy


def place_of(part: AnyPart, catalogue: Catalogue, theme: Theme) -> Place:
    """Measure one part."""

    def laid(box: symbols.Box) -> Rect:
        return _moved((box.left, box.top, box.right, box.bottom), *part.at)

    room = _room(part.kind)
    sides = range(1 if part.kind in REMARK_KINDS else symbols.SIDES)
    return Place(
        part,
        laid(symbols.body(part, catalogue)),
        {terminal.name: terminal for terminal in symbols.terminals(part, catalogue)},
        tuple(laid(symbols.label_box(part, catalogue, room, theme, side)) for side in sides),
        tuple(laid(box) for box in symbols.volts_boxes(part, catalogue, theme)),
        tuple(laid(box) for box in symbols.volts_boxes(part, catalogue, theme, _WAVES)),
    )
