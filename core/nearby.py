"""The part of a sheet that can feel a change of some of its parts and wires."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable

from msgspec.structs import replace

from core.sheet import Chassis, Sheet, split_terminal


def around(sheet: Sheet, ids: Iterable[str]) -> Sheet:
    """The part of a sheet that hangs together with some parts and wires otherwise than through the chassis."""
    ids = set(ids)
    at: dict[str, list[tuple[str, str]]] = {}
    for wire in sheet.wires:
        one, other = (split_terminal(end)[0] for end in (wire.start, wire.end))
        at.setdefault(one, []).append((wire.id, other))
        at.setdefault(other, []).append((wire.id, one))
        if wire.id in ids:
            ids = {*ids, one, other}
    chassis = {part.id for part in sheet.parts if isinstance(part, Chassis)}
    parts = {part.id for part in sheet.parts if part.id in ids} | chassis
    wires: set[str] = set()
    walk = deque(parts - chassis)
    while walk:
        for wire_id, far in at.get(walk.popleft(), ()):
            wires.add(wire_id)
            if far not in parts:
                parts.add(far)
                walk.append(far)
    return replace(
        sheet,
        parts=tuple(part for part in sheet.parts if part.id in parts),
        wires=tuple(wire for wire in sheet.wires if wire.id in wires),
    )
