"""Twisted pairs: two wires that share a twist."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from core.edits.basic import Edit, in_turn, set_wire
from core.errors import EditError
from core.sentences import sentence
from core.sheet import Sheet, Wire, split_terminal


def parts_of(wire: Wire) -> frozenset[str]:
    """The parts at the two ends of a wire; one for a strap on a socket."""
    return frozenset((split_terminal(wire.start)[0], split_terminal(wire.end)[0]))


def twin_of(sheet: Sheet, wire_id: str) -> str | None:
    """The other wire of a twisted pair; None for a wire alone, or where three or more share a twist."""
    wire = sheet.wire_by_id.get(wire_id)
    if wire is None or not wire.twist:
        return None
    others = [each.id for each in sheet.wires if each.twist == wire.twist and each.id != wire_id]
    return others[0] if len(others) == 1 else None


def with_twins(sheet: Sheet, ids: Iterable[str]) -> frozenset[str]:
    """The ids, with the other wire of every twisted pair."""
    given = frozenset(ids)
    return given | {twin for one in given if (twin := twin_of(sheet, one)) is not None}


def fresh_twist(sheet: Sheet, taken: Iterable[str] = ()) -> str:
    """The lowest free name for a pair: ``p3`` after ``p1`` and ``p2``."""
    return next(_fresh_twists(sheet, taken))


def _fresh_twists(sheet: Sheet, taken: Iterable[str]) -> Iterator[str]:
    used = {wire.twist for wire in sheet.wires} | set(taken)
    number = 1
    while True:
        if f"p{number}" not in used:
            yield f"p{number}"
        number += 1


def twist(first: str, second: str) -> Edit:
    """Twist two wires between the same two parts; either leaves the pair that it was in.

    The pair follows the corners that are set for the wire that comes first in the sheet.
    """

    def edit(sheet: Sheet) -> Sheet:
        wires = [wire for wire in sheet.wires if wire.id in (first, second)]
        if len(wires) != 2:
            raise EditError(sentence("A pair is twisted of two wires."))
        if parts_of(wires[0]) != parts_of(wires[1]) or len(parts_of(wires[0])) != 2:
            raise EditError(
                sentence(
                    "{first} and {second} do not run between the same two parts.",
                    first=wires[0].id,
                    second=wires[1].id,
                )
            )
        if twin_of(sheet, first) == second:
            return sheet
        name = fresh_twist(sheet)
        alone = untwist((first, second))(sheet)
        return in_turn(set_wire(wires[0].id, twist=name), set_wire(wires[1].id, twist=name, via=()))(alone)

    return edit


def untwist(ids: Iterable[str]) -> Edit:
    """Let wires, and the other wires of their pairs, run for themselves."""
    given = frozenset(ids)

    def edit(sheet: Sheet) -> Sheet:
        names = {wire.twist for wire in sheet.wires if wire.id in given and wire.twist}
        loose = [wire.id for wire in sheet.wires if wire.twist in names]
        return in_turn(*(set_wire(wire_id, twist=None) for wire_id in loose))(sheet)

    return edit


def pair_in(sheet: Sheet, ids: Iterable[str]) -> tuple[str, str] | None:
    """The two wires, in the order of the sheet, where ids are those of one twisted pair and nothing else."""
    given = frozenset(ids)
    if len(given) != 2 or with_twins(sheet, tuple(given)[:1]) != given:
        return None
    first, second = (wire.id for wire in sheet.wires if wire.id in given)
    return first, second


def set_pair(wire_id: str, **fields: object) -> Edit:
    """Set fields of a wire, and the same of the other wire of its pair."""
    return lambda sheet: set_wires(with_twins(sheet, (wire_id,)), **fields)(sheet)


def set_wires(ids: Iterable[str], **fields: object) -> Edit:
    """Set fields of several wires, such as the two of a pair."""
    return in_turn(*(set_wire(wire_id, **fields) for wire_id in sorted(ids)))
