"""Wiring without the pointer: two terminals typed into the add field, and laying the wire between them."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from app.canvas import operations, words
from app.canvas.adding import Offer
from app.canvas.bends import spot_on
from app.canvas.partners import partner_of
from app.canvas.routing import CLEAR, Point, Port, length_of
from app.canvas.wire_editing import STEP
from core.edits import Edit, fresh_id, in_turn, set_wire
from core.edits.pairs import fresh_twist
from core.sheet import Sheet
from core.terminals import has_terminal, terminal_names

if TYPE_CHECKING:
    from app.canvas.view import SheetView

METRES_PER_UNIT = 0.001  # a sheet unit stands for a millimetre

_TWO = re.compile(
    r"(?:wire\s+|strap\s+)?(\S+?\.\S+?)(?:\s+to\s+|\s*[-–→,]\s*|\s+)(?:(\S+?\.\S+)|([^\s.]+))", re.I
)
_BEGUN = re.compile(r"(?:wire\s+|strap\s+)?(\S+?\.[^\s.]+?)(?:\s+to|\s*[-–→,])?(?:\s*[^\s.]+\.)?", re.I)


def wire_offer(text: str, sheet: Sheet) -> Offer | None:
    """The wire that a text such as ``T1.a V1.4``, or ``V1.4-5`` for a strap, asks for; None where it asks for none."""
    match = _TWO.fullmatch(text.strip())
    if match is None:
        return None
    start = terminal_named(match[1], sheet)
    end = terminal_named(_other_end(match), sheet)
    if start is None or end is None or start == end:
        return None
    return Offer(
        words.wire_text(start, end),
        words.tr("a wire along its route"),
        {"kind": "wire", "ends": [start, end]},
    )


def why_no_offer(text: str, sheet: Sheet) -> str:
    """Why nothing is offered for a text: which of two terminals does not exist, or what is still to be typed."""
    match = _TWO.fullmatch(text.strip())
    one = _BEGUN.fullmatch(text.strip()) if match is None else None
    start = match[1] if match else one[1] if one else ""
    if not start[:1].isalpha():
        return words.tr("Nothing is called that.")
    if match is not None and not _is_unfinished(match[3], sheet):
        ends = (start, _other_end(match))
        missing = [why_missing(end, sheet) for end in ends if terminal_named(end, sheet) is None]
        return missing[0] if missing else words.tr("A wire needs two different terminals.")
    known = terminal_named(start, sheet)
    if known is None:
        return why_missing(start, sheet)
    return words.tr("Type the terminal where the wire from {start} ends.").format(start=known)


def _is_unfinished(text: str | None, sheet: Sheet) -> bool:
    """Whether the second terminal is still being typed: its part without the dot, or the word before it."""
    begun = (text or "").casefold()
    return bool(begun) and any(word.startswith(begun) for word in ("to", *_ids(sheet)))


def _ids(sheet: Sheet) -> tuple[str, ...]:
    return tuple(part.id.casefold() for part in sheet.parts)


def why_missing(text: str, sheet: Sheet) -> str:
    """Why a text names no terminal: its part does not exist, or has none of that name."""
    part_text, _, name = text.rpartition(".")
    part_id = next((part.id for part in sheet.parts if part.id.casefold() == part_text.casefold()), None)
    if part_id is None:
        return words.tr("There is no part {id}.").format(id=part_text)
    return words.tr("{id} has no terminal {name}.").format(id=part_id, name=name)


def _other_end(match: re.Match[str]) -> str:
    """The second terminal as it was typed; a bare name is one of the first terminal's part."""
    return match[2] or f"{match[1].rpartition('.')[0]}.{match[3]}"


def terminal_named(text: str, sheet: Sheet) -> str | None:
    """The terminal that a text names, in any case; a tube has every pin."""
    part_text, _, name = text.rpartition(".")
    for part in sheet.parts:
        if part.id.casefold() == part_text.casefold():
            names = terminal_names(part) or (name,)
            found = [
                each for each in names if each.casefold() == name.casefold() and has_terminal(part, each)
            ]
            return f"{part.id}.{found[0]}" if found else None
    return None


def lay_wire(view: SheetView, start: str, end: str) -> None:
    """Wire two terminals with the last used gauge, as long as the route, and select the wire."""
    wire_id = operations.connect(view.document, start, end, view.editor.gauge, _length_m(view, start, end))
    view.selection.set((wire_id,))


def lay_pair(view: SheetView, first: tuple[str, str], second: tuple[str, str]) -> None:
    """Lay two wires as a twisted pair in one step, both as long as the route of the first, and select them."""
    before = view.document.sheet.wire_by_id.keys()
    view.document.apply(*pair_step(view, first, second))
    view.selection.set(view.document.sheet.wire_by_id.keys() - before)


def pair_step(view: SheetView, first: tuple[str, str], second: tuple[str, str]) -> tuple[str, Edit]:
    """The name and the edit of laying a twisted pair."""
    sheet, gauge = view.document.sheet, view.editor.gauge
    length_m = _length_m(view, *first)
    ids = fresh_id(sheet, "w"), fresh_id(sheet, "w", (fresh_id(sheet, "w"),))
    name = fresh_twist(sheet)
    edits = [
        in_turn(operations.wiring(*ends, gauge, length_m, one), set_wire(one, twist=name))
        for ends, one in zip((first, second), ids, strict=True)
    ]
    text = words.tr("Wire a pair from {start} to {end}").format(start=first[0], end=first[1])
    return text, in_turn(*edits)


def second_ends(view: SheetView, start: str, end: str) -> tuple[str, str] | None:
    """Where the second wire of a pair runs whose first runs between two terminals; None where one has no partner."""
    sheet, catalogue = view.document.sheet, view.document.catalogue
    first, last = partner_of(sheet, catalogue, start), partner_of(sheet, catalogue, end)
    if first is None or last is None or {start, first} & {end, last}:
        return None
    return first, last


def lay(view: SheetView, start: str, end: str, in_pair: bool) -> None:
    """Lay one wire, or a twisted pair where that is asked for and both terminals have a partner."""
    second = second_ends(view, start, end) if in_pair else None
    if second is None:
        lay_wire(view, start, end)
    else:
        lay_pair(view, (start, end), second)


def tap_step(view: SheetView, start: str, wire_id: str, at: Point, fine: bool = False) -> tuple[str, Edit]:
    """The name and the edit of cutting a wire with a joint near a place and wiring a terminal to it."""
    layout = view.sheet_scene.layout_
    joints, cutting = view.wires.splitting(wire_id, at, fine)
    spot = spot_on(layout.board.routes[wire_id], at, 1.0 if fine else STEP).point
    line = layout.board.find(layout.port(start), Port(*spot, 0.0, -1.0, 0.0, free=True))
    end = f"{joints[0]}.j"

    def edit(before: Sheet) -> Sheet:
        after = cutting(before)
        new = fresh_id(after, "w")
        return operations.wiring(start, end, view.editor.gauge, length_of(line) * METRES_PER_UNIT, new)(after)

    return words.wire_text(start, end), edit


def wire_step(view: SheetView, start: str, end: str) -> tuple[str, Edit]:
    """The name and the edit of laying that wire, for what considers it first."""
    wire_id = fresh_id(view.document.sheet, "w")
    edit = operations.wiring(start, end, view.editor.gauge, _length_m(view, start, end), wire_id)
    return words.wire_text(start, end), edit


def joint_step(view: SheetView, start: str, at: Point) -> tuple[str, Edit] | None:
    """The name and the edit of wiring a terminal to a new joint; None where a terminal is there already."""
    layout = view.sheet_scene.layout_
    if layout.terminal_near(*at, 1.0) is not None:
        return None
    line = layout.board.find(layout.port(start), Port(*at, 0.0, -1.0, CLEAR))
    length_m = length_of(line) * METRES_PER_UNIT
    return operations.wiring_to_joint(view.document.sheet, start, at, view.editor.gauge, length_m)


def _length_m(view: SheetView, start: str, end: str) -> float:
    layout = view.sheet_scene.layout_
    return length_of(layout.board.find(layout.port(start), layout.port(end))) * METRES_PER_UNIT
