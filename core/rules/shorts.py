"""Supplies whose terminals are joined by metal."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations

from core.results import Finding, sentence
from core.rules.basis import Case
from core.rules.nets import Nets, Ways, shortest_path, ways
from core.rules.words import amps, listed
from core.terminals import terminal_names


def shorted_supplies(case: Case, nets: Nets) -> Iterator[tuple[str, str, str]]:
    """Supply and two of its terminals that conductors join; the first such pair of each supply."""
    for supply in case.supply_volts:
        names = terminal_names(case.sheet.part_by_id[supply]) or ()
        ends = [f"{supply}.{name}" for name in names]
        pair = next((pair for pair in combinations(ends, 2) if nets.joined(*pair)), None)
        if pair is not None:
            yield (supply, *pair)


def shorted_nets(case: Case) -> frozenset[str]:
    """Nets of ideal connections that join the terminals of a supply."""
    nets = case.ideal_nets
    return frozenset(nets.net(one) for _, one, _ in shorted_supplies(case, nets))


def short_circuit(case: Case) -> Iterator[Finding]:
    """Supplies whose terminals are joined by wires, fuses and closed contacts only."""
    conductors = case.conductors
    plain = len(conductors) == len(case.sheet.wires)
    nets = case.wire_nets if plain else case.metal_nets
    leading: Ways = {}
    for supply, one, other in shorted_supplies(case, nets):
        leading = leading or ways(conductors)
        path = shortest_path(leading, one, other)
        names = [one.rpartition(".")[2], other.rpartition(".")[2]]
        point = case.nominal.supplies.get(supply)
        values = {"id": supply, "ends": listed(names), "path": listed(path)}
        amount = None if point is None else point.a if point.demand_a is None else point.demand_a
        if amount is None or not math.isfinite(amount):
            says = sentence(
                "Terminals {ends} of {id} are joined by {path} with no heater between: a short circuit.",
                **values,
            )
        else:
            says = sentence(
                "Terminals {ends} of {id} are joined by {path} with no heater between: a short circuit of {a}.",
                a=amps(amount),
                **values,
            )
        yield Finding(
            rule="short-circuit",
            severity="fault",
            where=(supply, *path),
            title=sentence("{id} is short-circuited", id=supply),
            says=says,
            mend=sentence("Take out {one}, or move one of its ends.", one=_suspect(case, path)),
            value=None if point is None else point.a,
            limit=None if point is None else point.rated_a,
            unit="" if point is None else "A",
            source="a supply feeds heaters, not a wire",
        )


def _suspect(case: Case, path: tuple[str, ...]) -> str:
    """The wire to take out first: a strap within one part, else the last wire of the path."""
    wires = [wire for one in path if (wire := case.sheet.wire_by_id.get(one)) is not None]
    within = [w.id for w in wires if w.start.rpartition(".")[0] == w.end.rpartition(".")[0]]
    straps = [w.id for w in wires if w.is_strap]
    return next(iter([*within, *straps, *(w.id for w in reversed(wires)), *path]), "the joining wire")
