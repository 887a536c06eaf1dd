"""Numbers in ids: their natural order, many new ids at once, and tubes numbered along the heater wiring."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable, Mapping
from itertools import count

import msgspec

from core.edits.basic import PREFIXES, Edit
from core.errors import EditError
from core.sentences import sentence
from core.sheet import SUPPLY_KINDS, AnyPart, Sheet, Wire, split_terminal
from core.terminals import is_id

_DIGITS = re.compile(r"([0-9]+)")


def natural(name: str) -> tuple[tuple[int, int, str], ...]:
    """A key that puts ``V2`` before ``V10``."""
    return tuple(
        (0, int(piece), piece) if piece[:1] in "0123456789" else (1, 0, piece)
        for piece in _DIGITS.split(name)
        if piece
    )


def rename_all(names: Mapping[str, str]) -> Edit:
    """Give several parts new ids at once, so that two may change names; wires follow their parts."""

    def edit(sheet: Sheet) -> Sheet:
        new = {old: name for old, name in names.items() if old != name}
        missing = [old for old in new if old not in sheet.part_by_id]
        if missing:
            raise EditError(sentence("There is no part {id}.", id=missing[0]))
        taken = (sheet.part_by_id.keys() | sheet.wire_by_id.keys()) - new.keys()
        for name in new.values():
            if not is_id(name) or name in taken:
                raise EditError(sentence("{id} cannot be used as an id here.", id=name))
            taken.add(name)
        if not new:
            return sheet

        parts = tuple(
            msgspec.structs.replace(part, id=new[part.id]) if part.id in new else part for part in sheet.parts
        )
        wires = tuple(_followed(wire, new) for wire in sheet.wires)
        return msgspec.structs.replace(sheet, parts=parts, wires=wires)

    return edit


def _followed(wire: Wire, new: Mapping[str, str]) -> Wire:
    """A wire on the parts' new ids."""
    (first, start), (last, end) = split_terminal(wire.start), split_terminal(wire.end)
    if first not in new and last not in new:
        return wire
    return msgspec.structs.replace(
        wire, start=f"{new.get(first, first)}.{start}", end=f"{new.get(last, last)}.{end}"
    )


def tube_names(sheet: Sheet, ids: Iterable[str] | None = None) -> dict[str, str]:
    """New ids for the tubes (or the chosen ones): V1, V2 … from the supply along the heater wiring.

    What is not chosen keeps its id, and the numbers go round it.
    """
    chosen = sheet.part_by_id.keys() if ids is None else frozenset(ids)
    tubes = [part_id for part_id in chain_order(sheet) if sheet.part_by_id[part_id].kind == "tube"]
    renamed = [part_id for part_id in tubes if part_id in chosen]
    kept = (sheet.part_by_id.keys() | sheet.wire_by_id.keys()) - set(renamed)
    prefix = PREFIXES["tube"]
    free = (name for number in count(1) if (name := f"{prefix}{number}") not in kept)
    return dict(zip(renamed, free, strict=False))


def renumber(ids: Iterable[str] | None = None) -> Edit:
    """Number the tubes, or the chosen ones, along the heater wiring."""
    chosen = None if ids is None else frozenset(ids)
    return lambda sheet: rename_all(tube_names(sheet, chosen))(sheet)


def chain_order(sheet: Sheet) -> list[str]:
    """All parts in the order in which the wiring reaches them from the supplies, breadth first.

    Equally far ones come in reading order: from the top, then from the left. The chassis is not walked through.
    Parts that no supply reaches come last, those wired to each other together.
    """
    neighbours: defaultdict[str, set[str]] = defaultdict(set)
    for wire in sheet.wires:
        start, end = split_terminal(wire.start)[0], split_terminal(wire.end)[0]
        neighbours[start].add(end)
        neighbours[end].add(start)
    parts = sheet.part_by_id
    order: dict[str, None] = {}
    supplies = [part for part in sheet.parts if part.kind in SUPPLY_KINDS]
    seeds = [[part.id for part in sorted(supplies, key=_reading)]]
    seeds += [[part.id] for part in sorted(sheet.parts, key=_reading)]
    for seed in seeds:
        level = [part_id for part_id in seed if part_id not in order]
        while level:
            order.update(dict.fromkeys(level))
            through = (part_id for part_id in level if parts[part_id].kind != "chassis")
            reached = {far for part_id in through for far in neighbours[part_id]} - order.keys()
            level = sorted(reached, key=lambda part_id: _reading(parts[part_id]))
    return list(order)


def _reading(part: AnyPart) -> tuple[float, float, tuple[tuple[int, int, str], ...]]:
    return part.at[1], part.at[0], natural(part.id)
