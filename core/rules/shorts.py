"""Supplies whose terminals are joined by metal."""

from __future__ import annotations

import math
from collections.abc import Iterator

from core.results import Finding, Sentence, sentence
from core.rules.basis import Case, shorted_supplies
from core.rules.nets import Ways, shortest_path, ways
from core.rules.offers import take_out
from core.rules.words import amps, listed
from core.sentences import Text


def shorted_nets(case: Case) -> frozenset[str]:
    """Nets of ideal connections that join the terminals of a supply."""
    nets = case.ideal_nets
    return frozenset(nets.net(one) for one, _ in shorted_supplies(case, nets).values())


def short_circuit(case: Case) -> Iterator[Finding]:
    """Supplies whose terminals are joined by wires, fuses and closed contacts only."""
    leading: Ways = {}
    for supply, (one, other) in case.shorted.items():
        leading = leading or ways(case.conductors)
        path = shortest_path(leading, one, other)
        names = [one.rpartition(".")[2], other.rpartition(".")[2]]
        point = case.nominal.supplies.get(supply)
        values: dict[str, Text] = {"id": supply, "ends": listed(names), "path": listed(path)}
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
        suspect, wires = _suspect(case, supply, path), case.sheet.wire_by_id
        yield Finding(
            rule="short-circuit",
            severity="fault",
            where=(supply, *path),
            title=sentence("{id} is short-circuited", id=supply),
            says=says,
            mend=sentence("Take out {one}, or move one of its ends.", one=suspect),
            value=None if point is None else point.a,
            limit=None if point is None else point.rated_a,
            unit="" if point is None else "A",
            source=sentence("a supply feeds heaters, not a wire"),
            remedies=(take_out((suspect,)),) if isinstance(suspect, str) and suspect in wires else (),
        )


def _suspect(case: Case, supply: str, path: tuple[str, ...]) -> str | Sentence:
    """The wire to take out first: a strap within one part, else the last wire of the path, but not at the supply."""
    wires = [wire for one in path if (wire := case.sheet.wire_by_id.get(one)) is not None]
    away = [w for w in wires if not {w.start.rpartition(".")[0], w.end.rpartition(".")[0]} & {supply}]
    within = [w.id for w in wires if w.start.rpartition(".")[0] == w.end.rpartition(".")[0]]
    straps = [w.id for some in (away, wires) for w in some if w.is_strap]
    last = [w.id for some in (away, wires) for w in reversed(some)]
    return next(iter([*within, *straps, *last, *path]), sentence("the joining wire"))
