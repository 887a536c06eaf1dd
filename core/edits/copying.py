"""Copying: a piece of a sheet as a sheet of its own, and putting such a piece onto a sheet."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import count

import msgspec

from core.catalogue.names import key
from core.edits.basic import PREFIXES, Edit
from core.edits.numbering import natural
from core.edits.places import on_sheet
from core.sentences import sentence
from core.sheet import AnyPart, Sheet, Tube, Wire, split_terminal


def extract(sheet: Sheet, ids: Iterable[str]) -> Sheet:
    """The chosen parts, the wires whose both ends are on chosen parts, and those own types that they need."""
    chosen = frozenset(ids)
    parts = tuple(part for part in sheet.parts if part.id in chosen)
    left = {part.id for part in parts}
    wires = tuple(
        wire
        for wire in sheet.wires
        if split_terminal(wire.start)[0] in left and split_terminal(wire.end)[0] in left
    )
    needed = {key(part.type) for part in parts if isinstance(part, Tube)}
    types = tuple(
        own for own in sheet.types if needed & {key(name) for name in (own.designation, *own.equivalents)}
    )
    return msgspec.structs.replace(sheet, parts=parts, wires=wires, types=types)


def paste(fragment: Sheet, dx: float, dy: float) -> Edit:
    """Put a piece of a sheet onto a sheet, shifted by a distance in sheet units.

    Everything gets the lowest free id of its kind, in the order of the ids it had; a twisted pair becomes a pair of
    its own, and one wire of a pair is a single wire. An own type comes along unless the sheet has one of that name.
    """

    def edit(sheet: Sheet) -> Sheet:
        ids = _fresh_ids(sheet, fragment)
        twists = _fresh_twists(sheet, fragment)
        parts = tuple(_moved(part, ids[part.id], dx, dy) for part in fragment.parts)
        wires = tuple(_carried(wire, ids, twists, dx, dy) for wire in fragment.wires)
        known = {own.designation for own in sheet.types}
        types = tuple(own for own in fragment.types if own.designation not in known)
        return msgspec.structs.replace(
            sheet,
            parts=(*sheet.parts, *parts),
            wires=(*sheet.wires, *wires),
            types=(*sheet.types, *types),
        )

    return edit


def _fresh_ids(sheet: Sheet, fragment: Sheet) -> dict[str, str]:
    """A free id for everything in a piece, by the id it has there."""
    used = sheet.part_by_id.keys() | sheet.wire_by_id.keys()
    groups: dict[str, list[str]] = {}
    for part in fragment.parts:
        groups.setdefault(PREFIXES[part.kind], []).append(part.id)
    groups.setdefault("w", []).extend(fragment.wire_by_id)
    fresh: dict[str, str] = {}
    for prefix, old in groups.items():
        free = (name for number in count(1) if (name := f"{prefix}{number}") not in used)
        fresh.update(zip(sorted(old, key=natural), free, strict=False))
    return fresh


def _fresh_twists(sheet: Sheet, fragment: Sheet) -> dict[str, str]:
    """A free name for every twist of two or more wires in a piece."""
    used = {wire.twist for wire in sheet.wires}
    wires = Counter(wire.twist for wire in fragment.wires if wire.twist)
    free = (name for number in count(1) if (name := f"p{number}") not in used)
    return dict(zip((twist for twist, size in wires.items() if size > 1), free, strict=False))


def _moved(part: AnyPart, part_id: str, dx: float, dy: float) -> AnyPart:
    return msgspec.structs.replace(part, id=part_id, at=_shifted(part.at, dx, dy))


def _carried(wire: Wire, ids: dict[str, str], twists: dict[str, str], dx: float, dy: float) -> Wire:
    start, end = (f"{ids[part_id]}.{name}" for part_id, name in map(split_terminal, (wire.start, wire.end)))
    return msgspec.structs.replace(
        wire,
        id=ids[wire.id],
        start=start,
        end=end,
        twist=twists.get(wire.twist) if wire.twist else None,
        via=tuple(_shifted(corner, dx, dy) for corner in wire.via),
    )


def _shifted(at: Sequence[float], dx: float, dy: float) -> tuple[float, float]:
    return on_sheet((at[0] + dx, at[1] + dy), sentence("What is pasted"))
