"""How a heater that is not wired, or only at one end, would be joined to the supply that it can only belong to."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from core.catalogue.types import TubeType
from core.remedy import Join, Remedy
from core.results import sentence
from core.rules.basis import Case
from core.rules.offers import remedy, strap
from core.rules.strapping import has_halves, tap_and_ends
from core.rules.words import listed
from core.sheet import AnyPart, MainsFeed, Tube
from core.terminals import terminal_names

NEAR_VOLTS = 0.3  # a heater belongs to a supply whose volts are this close to its own


class _Way(NamedTuple):
    """Which pins of a heater are to be fed, and which are to be strapped first."""

    fed: tuple[str, str]
    strapped: tuple[str, str] | None = None


def joins(case: Case, part_id: str, pins: tuple[str, ...], wired: Sequence[str]) -> tuple[Remedy, ...]:
    """Wires for the bare ends of a heater with at most one pin wired; none where it is not plain where they go.

    It is plain where there is one supply that is not the mains, whose volts are those of the heater.
    """
    supply = _supply(case, part_id, wired)
    if supply is None:
        return ()
    way = _way(case, part_id, pins, case.supply_volts[supply])
    if way is None:
        return ()
    sides = _sides(case, supply)
    if not wired:
        ends = list(zip(way.fed, sides, strict=True))
    else:
        pin = wired[0]
        own = next((at for at in (0, 1) if case.wire_nets.joined(f"{part_id}.{pin}", sides[at])), None)
        held = way.fed[0] if way.strapped and pin in way.strapped else pin
        if own is None or held not in way.fed:
            return ()
        ends = [(next(one for one in way.fed if one != held), sides[1 - own])]
    return (_joined(case, part_id, ends, way),)


def _supply(case: Case, part_id: str, wired: Sequence[str]) -> str | None:
    """The one supply that the heater may belong to."""
    known = case.line_of[part_id].supplies if wired else tuple(case.supply_volts)
    if len(known) != 1 or isinstance(case.sheet.part_by_id[known[0]], MainsFeed):
        return None
    return known[0]


def _sides(case: Case, supply: str) -> tuple[str, str]:
    names = terminal_names(case.sheet.part_by_id[supply]) or ()
    return f"{supply}.{names[0]}", f"{supply}.{names[1]}"


def _way(case: Case, part_id: str, pins: tuple[str, ...], supply_v: float) -> _Way | None:
    """How a heater is fed from a supply of these volts; None where it wants other volts."""
    kind = case.tube_types.get(part_id)
    rated_v = [one.rated_v for one in case.nominal.heaters[part_id]]
    if abs(supply_v / sum(rated_v) - 1) <= NEAR_VOLTS:
        return _Way(_ends(kind, pins))
    if kind is not None and has_halves(kind) and abs(supply_v / rated_v[0] - 1) <= NEAR_VOLTS:
        tap, ends = tap_and_ends(kind)
        return _Way((ends[0], tap), ends)
    return None


def _ends(kind: TubeType | None, pins: tuple[str, ...]) -> tuple[str, str]:
    if kind is not None and len(kind.sections) == 2:
        return tap_and_ends(kind)[1]
    return pins[0], pins[-1]


def _joined(case: Case, part_id: str, ends: list[tuple[str, str]], way: _Way) -> Remedy:
    steps = [strap(part_id, *way.strapped)] if way.strapped else []
    to = [(pin, _nearest(case, part_id, side)) for pin, side in ends]
    steps += [Join(f"{part_id}.{pin}", terminal) for pin, terminal in to]
    title = sentence(
        "Strap {a} to {b}, wire {pins}" if way.strapped else "Wire {pins}",
        pins=listed(
            [sentence("pin {pin} to {terminal}", pin=pin, terminal=terminal) for pin, terminal in to]
        ),
        **(dict(zip("ab", way.strapped, strict=True)) if way.strapped else {}),
    )
    return remedy(title, *steps)


def _nearest(case: Case, part_id: str, side: str) -> str:
    """The terminal nearest to a part that wires join to one side of a supply: the side itself, or a heater pin."""
    parts = case.sheet.part_by_id
    x, y = parts[part_id].at
    found = [side]
    for one, names in case.wired_pins.items():
        pins = _heater_pins(case, parts[one]) if one != part_id else ()
        found += [
            f"{one}.{name}" for name in names if name in pins and case.wire_nets.joined(f"{one}.{name}", side)
        ]

    def way(terminal: str) -> float:
        at = parts[terminal.rpartition(".")[0]].at
        return abs(at[0] - x) + abs(at[1] - y)

    return min(found, key=way)


def _heater_pins(case: Case, part: AnyPart) -> tuple[str, ...]:
    kind = case.tube_types.get(part.id) if isinstance(part, Tube) else None
    return kind.heater_pins if kind is not None else ()
