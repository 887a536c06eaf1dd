"""Wiring without the pointer: two terminals typed into the add field, and laying the wire between them."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from app.canvas import operations, words
from app.canvas.adding import Offer
from app.canvas.routing import length_of
from core.sheet import Sheet
from core.terminals import terminal_names

if TYPE_CHECKING:
    from app.canvas.view import SheetView

METRES_PER_UNIT = 0.001  # a sheet unit stands for a millimetre

_TWO = re.compile(
    r"(?:wire\s+|strap\s+)?(\S+?\.\S+?)(?:\s+to\s+|\s*[-–→,]\s*|\s+)(?:(\S+?\.\S+)|([^\s.]+))", re.I
)


def wire_offer(text: str, sheet: Sheet) -> Offer | None:
    """The wire that a text such as ``T1.a V1.4``, or ``V1.4-5`` for a strap, asks for; None where it asks for none."""
    match = _TWO.fullmatch(text.strip())
    if match is None:
        return None
    start = _terminal(match[1], sheet)
    other = match[2] or f"{match[1].rpartition('.')[0]}.{match[3]}"
    end = _terminal(other, sheet)
    if start is None or end is None or start == end:
        return None
    return Offer(
        words.wire_text(start, end),
        words.tr("a wire along its route"),
        {"kind": "wire", "ends": [start, end]},
    )


def _terminal(text: str, sheet: Sheet) -> str | None:
    """The terminal that a text names, in any case; a tube has every pin."""
    part_text, _, name = text.rpartition(".")
    for part in sheet.parts:
        if part.id.casefold() == part_text.casefold():
            names = terminal_names(part)
            if names is None:
                return f"{part.id}.{name}" if name.isdecimal() and 1 <= int(name) <= 20 else None
            found = [each for each in names if each.casefold() == name.casefold()]
            return f"{part.id}.{found[0]}" if found else None
    return None


def lay_wire(view: SheetView, start: str, end: str) -> None:
    """Wire two terminals with the last used gauge, as long as the route, and select the wire."""
    layout = view.sheet_scene.layout_
    line = layout.board.find(layout.port(start), layout.port(end))
    wire_id = operations.connect(view.document, start, end, view.gauge, length_of(line) * METRES_PER_UNIT)
    view.selection.set((wire_id,))
