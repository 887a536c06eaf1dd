"""What belongs together: parts and wires joined by wires, and the tubes of one string. Nothing is altered here."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable

from core.sheet import Sheet, split_terminal


def connected(sheet: Sheet, ids: Iterable[str]) -> frozenset[str]:
    """The chosen things and every part and wire that can be reached from them along wires."""
    wires_on: defaultdict[str, set[str]] = defaultdict(set)
    ends: dict[str, tuple[str, str]] = {}
    for wire in sheet.wires:
        ends[wire.id] = split_terminal(wire.start)[0], split_terminal(wire.end)[0]
        for part_id in ends[wire.id]:
            wires_on[part_id].add(wire.id)
    found: set[str] = set()
    waiting = [item for item in ids if item in sheet.part_by_id or item in ends]
    while waiting:
        item = waiting.pop()
        if item not in found:
            found.add(item)
            waiting.extend(ends[item] if item in ends else wires_on[item])
    return frozenset(found)


def same_string(ids: Iterable[str], strings: Iterable[Iterable[str]]) -> frozenset[str]:
    """The chosen tubes and all that share a string with one of them; strings are of section keys ``V1:4-9``."""
    chosen = frozenset(ids)
    found = set(chosen)
    for string in strings:
        owners = {section.rpartition(":")[0] for section in string}
        if owners & chosen:
            found |= owners
    return frozenset(found)
