"""Carries out remedies: each is one edit of the sheet.

New parts get fresh ids and a free place near what they are joined to. A wire that gives up a piece of its way for a
part in series shares its length with the new lead; added wires have the size of their neighbours.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

import msgspec
from msgspec.structs import replace

from core.catalogue.wire import ohm_per_m
from core.edits import PREFIXES, Edit, add_part, add_wire, fresh_id, in_turn, remove, set_part, set_wire
from core.errors import EditError
from core.placing import Point, free_place, is_free, lead_of, roomy_place
from core.remedy import (
    Across,
    Bypass,
    InSeries,
    Join,
    Lift,
    MoveEnds,
    OwnWinding,
    Remedy,
    SetFields,
    Step,
    TakeOut,
    TieToChassis,
    Value,
)
from core.sentences import sentence
from core.sheet import AnyPart, Chassis, Elevation, Sheet, Turn, Winding, Wire, split_terminal
from core.terminals import terminal_names

NEAR = 240.0  # sheet units within which an existing chassis symbol is used
BELOW = 120.0
BESIDE = 160.0
ASIDE = 240.0  # from an upright part, whose label is beside it
LABEL = 40.0
METRES_PER_UNIT = 0.001
LEAST_M = 0.02
DEFAULT_AWG = 20


def edit_of(remedy: Remedy) -> Edit:
    """The edit that a remedy stands for.

    The edit raises EditError on a sheet that lacks what the remedy speaks of.
    """
    return in_turn(*(_edit(step) for step in remedy.steps))


def _edit(step: Step) -> Edit:
    return _EDITS[type(step)](step)


def _set_fields(step: SetFields) -> Edit:
    fields = dict(step.fields)

    def edit(sheet: Sheet) -> Sheet:
        make = set_wire if step.id in sheet.wire_by_id else set_part
        return make(step.id, **fields)(sheet)

    return edit


def _take_out(step: TakeOut) -> Edit:
    return remove(step.ids)


def _move_ends(step: MoveEnds) -> Edit:
    def edit(sheet: Sheet) -> Sheet:
        to: dict[str, dict[str, str]] = {}
        for wire_id, old, new in step.moves:
            wire = _wire(sheet, wire_id)
            if old not in (wire.start, wire.end):
                raise EditError(sentence("{id} does not end on {terminal}.", id=wire_id, terminal=old))
            to.setdefault(wire_id, {})[old] = new
        moved = (_moved(wire, to.get(wire.id, {})) for wire in sheet.wires)
        return replace(sheet, wires=tuple(wire for wire in moved if wire.start != wire.end))

    return edit


def _moved(wire: Wire, to: dict[str, str]) -> Wire:
    if not to:
        return wire
    return replace(wire, start=to.get(wire.start, wire.start), end=to.get(wire.end, wire.end))


def _join(step: Join) -> Edit:
    return lambda sheet: add_wire(step.start, step.end, **_lead(sheet, step.start, step.end))(sheet)


def _in_series(step: InSeries) -> Edit:
    def edit(sheet: Sheet) -> Sheet:
        wires = [_wire(sheet, one) for one in step.wires]
        others = [wire.end if wire.start == step.terminal else wire.start for wire in wires]
        if not wires:
            raise EditError(sentence("No wire ends on {terminal}.", terminal=step.terminal))
        at, turn = _between(sheet, step.terminal, others)
        part = _made(sheet, step.kind, step.fields, at, turn, step.id)
        near, far = _ends_of(part)
        share = _shared_length(wires)
        size = _thickest(wires)
        edits = [
            add_part(part),
            _move_ends(MoveEnds(tuple((wire.id, step.terminal, far) for wire in wires))),
            # corners were set for a way that began elsewhere
            *(set_wire(wire.id, via=()) for wire in wires if wire.via),
            *(set_wire(w.id, length_m=round(w.length_m - share, 4)) for w in wires if share and w.length_m),
            add_wire(step.terminal, near, **(size | {"length_m": share} if share else {})),
        ]
        return in_turn(*edits)(sheet)

    return edit


def _bypass(step: Bypass) -> Edit:
    def edit(sheet: Sheet) -> Sheet:
        bridged = sheet.part_by_id.get(step.part)
        if bridged is None:
            raise EditError(sentence("There is no part {id}.", id=step.part))
        ends = _ends_of(bridged)
        at, turn = _beside(sheet, bridged)
        relay = _made(sheet, "relay", step.fields, at, turn)
        contact, coil = _FACING[turn]
        pairs = (*_facing(bridged, contact, ends), *_facing(bridged, coil, step.coil))
        sheet = add_part(relay)(sheet)
        for name, end in pairs:
            sheet = _join(Join(end, f"{relay.id}.{name}"))(sheet)
        return sheet

    return edit


def _facing(bridged: AnyPart, names: tuple[str, str], ends: tuple[str, str]) -> Iterable[tuple[str, str]]:
    """Terminals of a relay, what is left or on top first, each with the end that lies towards it."""
    own = _ends_of(bridged)
    known = next((one for one in ends if one in own), None)
    is_turned = bridged.turn in (180, 270)
    is_first = known is None or (known == own[bridged.mirror != is_turned])
    return zip(names, ends if is_first == (known in (None, ends[0])) else ends[::-1], strict=True)


def _across(step: Across) -> Edit:
    def edit(sheet: Sheet) -> Sheet:
        others = [step.other] if step.other else []
        at, turn = _between(sheet, step.one, others)
        fields = (("ohm", step.ohm), ("rated_w", step.rated_w))
        part = _made(sheet, "resistor", fields, at, turn)
        near, far = _ends_of(part)
        sheet = add_part(part)(sheet)
        sheet = _join(Join(step.one, near))(sheet)
        if step.other:
            return _join(Join(step.other, far))(sheet)
        return _tie(TieToChassis(far))(sheet)

    return edit


def _tie(step: TieToChassis) -> Edit:
    def edit(sheet: Sheet) -> Sheet:
        part = _part_at(sheet, step.terminal)
        near = [one for one in sheet.parts if isinstance(one, Chassis) and _way(one.at, part.at) <= NEAR]
        if near:
            chassis_id = min(near, key=lambda one: _way(one.at, part.at)).id
        else:
            chassis_id = fresh_id(sheet, PREFIXES["chassis"])
            at = free_place(sheet, (part.at[0], part.at[1] + BELOW), "chassis")
            sheet = add_part(Chassis(id=chassis_id, at=at))(sheet)
        return _join(Join(step.terminal, f"{chassis_id}.e"))(sheet)

    return edit


def _lift(step: Lift) -> Edit:
    def edit(sheet: Sheet) -> Sheet:
        wires = [_wire(sheet, one) for one in step.wires]
        moves, chassis = [], []
        for wire in wires:
            end = next((end for end in (wire.start, wire.end) if _is_chassis(sheet, end)), None)
            if end is None:
                raise EditError(sentence("{id} does not end on the chassis.", id=wire.id))
            moves.append((wire.id, end))
            chassis.append(_part_at(sheet, end))
        lift_id = fresh_id(sheet, PREFIXES["elevation"])
        left = _without_wires(sheet, {one.id for one in chassis}, {wire.id for wire in wires})
        rest = replace(sheet, parts=tuple(part for part in sheet.parts if part.id not in left))
        at = free_place(rest, chassis[0].at, "elevation")
        lift = Elevation(id=lift_id, volts=step.volts, at=at)
        ends = MoveEnds(tuple((wire, end, f"{lift_id}.e") for wire, end in moves))
        return in_turn(add_part(lift), _move_ends(ends), remove(left))(sheet)

    return edit


def _own_winding(step: OwnWinding) -> Edit:
    def edit(sheet: Sheet) -> Sheet:
        part = _part_at(sheet, step.terminals[0])
        gone = [w.id for w in sheet.wires if {w.start, w.end} & set(step.terminals)]
        sizes = _thickest([_wire(sheet, one) for one in gone])
        part_id = fresh_id(sheet, PREFIXES["winding"])

        def made(at: Point) -> AnyPart:
            return Winding(id=part_id, rated_v=step.rated_v, rated_a=step.rated_a, at=at)

        sheet = _with_part(remove(gone)(sheet), made, (part.at[0] - BESIDE, part.at[1]))
        for name, terminal in zip("ab", step.terminals, strict=True):
            start = f"{part_id}.{name}"
            fields = sizes | {"length_m": _length(sheet, start, terminal)} if sizes else {}
            sheet = add_wire(start, terminal, **fields)(sheet)
        return sheet

    return edit


_FACING: dict[Turn, tuple[tuple[str, str], tuple[str, str]]] = {
    0: (("no", "com"), ("c1", "c2")),
    90: (("com", "no"), ("c2", "c1")),
    180: (("com", "no"), ("c2", "c1")),
    270: (("no", "com"), ("c1", "c2")),
}
"""Contact and coil of a relay by its turn, whose contact faces a part: first what is to the left or on top."""

_EDITS: dict[type[Step], Callable[[Any], Edit]] = {
    SetFields: _set_fields,
    TakeOut: _take_out,
    MoveEnds: _move_ends,
    Join: _join,
    InSeries: _in_series,
    Bypass: _bypass,
    Across: _across,
    TieToChassis: _tie,
    Lift: _lift,
    OwnWinding: _own_winding,
}


def _with_part(sheet: Sheet, made: Callable[[Point], AnyPart], near: Point) -> Sheet:
    kind = made(near).kind
    return add_part(made(free_place(sheet, near, kind)))(sheet)


def _without_wires(sheet: Sheet, parts: set[str], gone: set[str]) -> set[str]:
    """Those of the parts on which no wire ends but those that go."""
    left = [end for wire in sheet.wires if wire.id not in gone for end in (wire.start, wire.end)]
    return parts - {split_terminal(end)[0] for end in left}


def _part_at(sheet: Sheet, terminal: str) -> AnyPart:
    part = sheet.part_by_id.get(split_terminal(terminal)[0])
    if part is None:
        raise EditError(sentence("There is no terminal {terminal} on this sheet.", terminal=terminal))
    return part


def _is_chassis(sheet: Sheet, terminal: str) -> bool:
    return isinstance(_part_at(sheet, terminal), Chassis)


def _wire(sheet: Sheet, wire_id: str) -> Wire:
    wire = sheet.wire_by_id.get(wire_id)
    if wire is None:
        raise EditError(sentence("There is no wire {id}.", id=wire_id))
    return wire


def _way(one: Point, other: Point) -> float:
    return abs(one[0] - other[0]) + abs(one[1] - other[1])


def _made(
    sheet: Sheet,
    kind: str,
    fields: tuple[tuple[str, Value], ...],
    at: Point,
    turn: Turn,
    part_id: str = "",
) -> AnyPart:
    """A new part of a kind that stands somewhere, with an id of its own."""
    if kind not in PREFIXES:
        raise EditError(sentence("There is no kind of part called {kind}.", kind=kind))
    given = {**dict(fields), "kind": kind, "id": part_id or fresh_id(sheet, PREFIXES[kind])}
    try:
        part: AnyPart = msgspec.convert({**given, "at": at, "turn": turn}, AnyPart)
    except msgspec.ValidationError as error:
        raise EditError(sentence("{id} cannot be made: {why}.", id=given["id"], why=error)) from None
    return part


def _ends_of(part: AnyPart) -> tuple[str, str]:
    """The two terminals of a part."""
    names = terminal_names(part)
    if names is None or len(names) != 2:
        raise EditError(sentence("{id} is no part of two terminals.", id=part.id))
    return f"{part.id}.{names[0]}", f"{part.id}.{names[1]}"


def _between(sheet: Sheet, terminal: str, others: Iterable[str]) -> tuple[Point, Turn]:
    """Where a part goes between a terminal and others, turned so that its first end is towards the terminal."""
    part = _part_at(sheet, terminal)
    x, y = part.at
    ends = [far.at for end in others if (far := _part_at(sheet, end)).at != (x, y)]
    to_x, to_y = min(ends, key=lambda at: _way(at, (x, y))) if ends else (x, y + 2 * BELOW)
    dx, dy = ((max(-BESIDE, min(BESIDE, way / 2))) for way in (to_x - x, to_y - y))
    if abs(to_y - y) > abs(to_x - x):
        at = roomy_place(sheet, (x + dx, y + dy), "resistor")
        return at, 90 if at[1] >= y else 270
    lead = lead_of(part, split_terminal(terminal)[1])
    level = dy or (lead - LABEL if lead < 0 else lead)  # the label below it is to clear the other lead
    at = roomy_place(sheet, (x + dx, y + level), "resistor")
    return at, 0 if at[0] >= x else 180


def _beside(sheet: Sheet, part: AnyPart) -> tuple[Point, Turn]:
    """Where a relay goes whose contact bridges a part, turned so that its contact is towards the part."""
    x, y = part.at
    is_upright = part.turn in (90, 270)
    sides = ((x - ASIDE, y), (x + ASIDE, y)) if is_upright else ((x, y - BELOW), (x, y + BELOW))
    at = next((side for side in sides if is_free(sheet, side, "relay")), None)
    at = at or roomy_place(sheet, sides[0], "relay")
    if abs(at[0] - x) > abs(at[1] - y):
        return at, 0 if at[0] < x else 180
    return at, 90 if at[1] < y else 270


def _shared_length(wires: Iterable[Wire]) -> float:
    """Half the shortest of the wires; zero where one of them is a strap."""
    lengths = [0.0 if wire.is_strap else wire.length_m or 0.0 for wire in wires]
    return round(min(lengths) / 2, 4)


def _thickest(wires: Iterable[Wire]) -> dict[str, Any]:
    """Size of the thickest of some wires, as fields; empty where none has a size."""
    sized = [wire for wire in wires if wire.awg is not None or wire.area_mm2 is not None]
    if not sized:
        return {}
    best = min(sized, key=lambda wire: ohm_per_m(wire.awg, wire.area_mm2))
    return {"awg": best.awg} if best.awg is not None else {"area_mm2": best.area_mm2}


def _lead(sheet: Sheet, start: str, end: str) -> dict[str, Any]:
    """Size and length of a new wire: as those on its ends have, else as the others of the sheet, else AWG 20."""
    there = [wire for wire in sheet.wires if {wire.start, wire.end} & {start, end}]
    size = _thickest(there) or ({} if there else _thickest(sheet.wires))
    if not size and sheet.wires:
        return {}
    return (size or {"awg": DEFAULT_AWG}) | {"length_m": _length(sheet, start, end)}


def _length(sheet: Sheet, start: str, end: str) -> float:
    """Metres along the grid between the parts of two terminals."""
    way = _way(_part_at(sheet, start).at, _part_at(sheet, end).at)
    return max(round(way * METRES_PER_UNIT, 2), LEAST_M)
