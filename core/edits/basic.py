"""The everyday edits, and what an edit touched."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Any

import msgspec

from core.edits.places import corner_of, on_sheet
from core.errors import EditError
from core.sentences import Text, sentence
from core.sheet import AnyPart, Mains, Sheet, Tube, Turn, Wire, split_terminal
from core.terminals import has_terminal, is_id

Edit = Callable[[Sheet], Sheet]
Corner = tuple[float, float]

PREFIXES: dict[str, str] = {
    "tube": "V",
    "lamp": "H",
    "winding": "T",
    "dc_supply": "U",
    "battery": "B",
    "mains_feed": "M",
    "rectified_supply": "G",
    "resistor": "R",
    "thermistor": "RT",
    "relay": "K",
    "fuse": "F",
    "capacitor": "C",
    "diode": "D",
    "switch": "S",
    "balance": "RV",
    "elevation": "EL",
    "chassis": "E",
    "joint": "J",
    "note": "N",
    "frame": "FR",
}


class Change(msgspec.Struct, frozen=True):
    """What differs between two sheets: ids added, removed or altered, and whether sheet-wide data did."""

    parts: frozenset[str] = frozenset()
    wires: frozenset[str] = frozenset()
    sheet: bool = False

    @property
    def is_empty(self) -> bool:
        """Whether nothing changed at all."""
        return not (self.parts or self.wires or self.sheet)


def change_between(before: Sheet, after: Sheet) -> Change:
    """Say which parts and wires differ between two sheets."""
    if before is after:
        return Change()
    return Change(
        parts=_differing(before.part_by_id, after.part_by_id),
        wires=_differing(before.wire_by_id, after.wire_by_id),
        sheet=(before.title, before.mains, before.ambient_c, before.types)
        != (after.title, after.mains, after.ambient_c, after.types),
    )


def _differing(before: Mapping[str, Any], after: Mapping[str, Any]) -> frozenset[str]:
    if before is after:
        return frozenset()
    missing = object()
    changed = {
        key for key, value in after.items() if (old := before.get(key, missing)) is not value and old != value
    }
    return frozenset(changed | (before.keys() - after.keys()))


def fresh_id(sheet: Sheet, prefix: str, taken: Iterable[str] = ()) -> str:
    """The lowest free id with this prefix: ``V3`` after ``V1`` and ``V2``."""
    used = sheet.part_by_id.keys() | sheet.wire_by_id.keys() | set(taken)
    number = 1
    while f"{prefix}{number}" in used:
        number += 1
    return f"{prefix}{number}"


def add_part(part: AnyPart) -> Edit:
    """Add one part; its id must be free."""

    def edit(sheet: Sheet) -> Sheet:
        if part.id in sheet.part_by_id or part.id in sheet.wire_by_id:
            raise EditError(sentence("The id {id} is already in use.", id=part.id))
        return msgspec.structs.replace(sheet, parts=(*sheet.parts, part))

    return edit


def add_wire(start: str, end: str, **fields: Any) -> Edit:
    """Add a wire between two terminals, with a fresh id unless one is given."""

    def edit(sheet: Sheet) -> Sheet:
        if start == end:
            raise EditError(sentence("A wire needs two different terminals."))
        for terminal in (start, end):
            part_id, name = split_terminal(terminal)
            if part_id not in sheet.part_by_id or not has_terminal(sheet.part_by_id[part_id], name):
                raise EditError(sentence("There is no terminal {terminal} on this sheet.", terminal=terminal))
        wire_id = fields.get("id") or fresh_id(sheet, "w")
        if wire_id in sheet.part_by_id or wire_id in sheet.wire_by_id:
            raise EditError(sentence("The id {id} is already in use.", id=wire_id))
        rest = {key: value for key, value in fields.items() if key != "id"}
        return msgspec.structs.replace(
            sheet, wires=(*sheet.wires, Wire(id=wire_id, start=start, end=end, **rest))
        )

    return edit


def remove(ids: Iterable[str]) -> Edit:
    """Remove parts and wires; wires on a removed part go with it."""
    gone = frozenset(ids)

    def edit(sheet: Sheet) -> Sheet:
        parts = tuple(part for part in sheet.parts if part.id not in gone)
        left = {part.id for part in parts}
        wires = tuple(
            wire
            for wire in sheet.wires
            if wire.id not in gone
            and split_terminal(wire.start)[0] in left
            and split_terminal(wire.end)[0] in left
        )
        return msgspec.structs.replace(sheet, parts=parts, wires=wires)

    return edit


def _map_parts(sheet: Sheet, ids: frozenset[str], alter: Callable[[AnyPart], AnyPart]) -> Sheet:
    parts = tuple(alter(part) if part.id in ids else part for part in sheet.parts)
    return msgspec.structs.replace(sheet, parts=parts)


def move_parts(ids: Iterable[str], dx: float, dy: float) -> Edit:
    """Move parts by a distance in sheet units; none may leave the sheet.

    A wire whose two ends both move takes the corners that were set for it along.
    """
    moved = frozenset(ids)

    def shifted(at: Corner, what: Text) -> Corner:
        return on_sheet((at[0] + dx, at[1] + dy), what)

    def edit(sheet: Sheet) -> Sheet:
        parts = tuple(
            msgspec.structs.replace(part, at=shifted(part.at, part.id)) if part.id in moved else part
            for part in sheet.parts
        )
        wires = tuple(
            msgspec.structs.replace(wire, via=tuple(shifted(corner, corner_of(wire)) for corner in wire.via))
            if wire.via and _part_ids(wire) <= moved
            else wire
            for wire in sheet.wires
        )
        return msgspec.structs.replace(sheet, parts=parts, wires=wires)

    return edit


def _part_ids(wire: Wire) -> frozenset[str]:
    """The parts at the two ends of a wire."""
    return frozenset((split_terminal(wire.start)[0], split_terminal(wire.end)[0]))


def turn_parts(ids: Iterable[str], degrees: int = 90) -> Edit:
    """Turn parts clockwise, each about its own centre, by a multiple of 90 degrees."""
    turned = frozenset(ids)

    def turn(part: AnyPart) -> AnyPart:
        angle: Turn = (part.turn + degrees) % 360  # type: ignore[assignment]
        return msgspec.structs.replace(part, turn=angle)

    return lambda sheet: _map_parts(sheet, turned, turn)


def set_part(part_id: str, **fields: Any) -> Edit:
    """Set fields of one part."""

    def edit(sheet: Sheet) -> Sheet:
        if part_id not in sheet.part_by_id:
            raise EditError(sentence("There is no part {id}.", id=part_id))
        return _map_parts(sheet, frozenset((part_id,)), lambda part: msgspec.structs.replace(part, **fields))

    return edit


def set_wire(wire_id: str, **fields: Any) -> Edit:
    """Set fields of one wire; setting one kind of size clears the other."""
    if fields.get("awg") is not None:
        fields.setdefault("area_mm2", None)
    if fields.get("area_mm2") is not None:
        fields.setdefault("awg", None)

    def edit(sheet: Sheet) -> Sheet:
        if wire_id not in sheet.wire_by_id:
            raise EditError(sentence("There is no wire {id}.", id=wire_id))
        wires = tuple(
            msgspec.structs.replace(wire, **fields) if wire.id == wire_id else wire for wire in sheet.wires
        )
        return msgspec.structs.replace(sheet, wires=wires)

    return edit


def set_sheet(
    *, title: str | None = None, mains: Mains | None = None, ambient_c: float | None = None
) -> Edit:
    """Set the title, the mains or the ambient temperature."""

    def edit(sheet: Sheet) -> Sheet:
        given = {"title": title, "mains": mains, "ambient_c": ambient_c}
        return msgspec.structs.replace(
            sheet, **{key: value for key, value in given.items() if value is not None}
        )

    return edit


def rename(old: str, new: str) -> Edit:
    """Give a part or wire a new id; wires follow their parts."""

    def edit(sheet: Sheet) -> Sheet:
        if new == old:
            return sheet
        if old not in sheet.part_by_id and old not in sheet.wire_by_id:
            raise EditError(sentence("There is nothing called {id} on this sheet.", id=old))
        if not is_id(new):
            raise EditError(
                sentence(
                    "'{id}' cannot be an id: use 1 to 40 characters without spaces or dots, such as V1.",
                    id=new,
                )
            )
        if new in sheet.part_by_id or new in sheet.wire_by_id:
            raise EditError(sentence("The id {id} is already in use.", id=new))

        def follow(terminal: str) -> str:
            part_id, name = split_terminal(terminal)
            return f"{new}.{name}" if part_id == old else terminal

        parts = tuple(
            msgspec.structs.replace(part, id=new) if part.id == old else part for part in sheet.parts
        )
        wires = tuple(
            msgspec.structs.replace(
                wire, id=new if wire.id == old else wire.id, start=follow(wire.start), end=follow(wire.end)
            )
            for wire in sheet.wires
        )
        return msgspec.structs.replace(sheet, parts=parts, wires=wires)

    return edit


def replace_type(tube_id: str, designation: str) -> Edit:
    """Put another tube type into a socket, forgetting overrides that belonged to the old type."""

    def edit(sheet: Sheet) -> Sheet:
        part = sheet.part_by_id.get(tube_id)
        if not isinstance(part, Tube):
            raise EditError(sentence("{id} is not a tube.", id=tube_id))
        return set_part(
            tube_id, type=designation, rated_v=None, rated_a=None, cold_ratio=None, warmup_s=None
        )(sheet)

    return edit


def in_turn(*edits: Edit) -> Edit:
    """Several edits as one."""

    def edit(sheet: Sheet) -> Sheet:
        for step in edits:
            sheet = step(sheet)
        return sheet

    return edit
