"""Sheets of sockets to be wired, for the tests of the chain builder."""

from __future__ import annotations

from typing import Any

from core.assess import assess
from core.catalogue import load_builtin
from core.chains import ChainPlan, Options, edit_of, loads_of, plan, usual_order
from core.checks import find_problems
from core.results import Assessment, Finding
from core.sheet import AnyPart, Mains, Sheet, Tube

CATALOGUE = load_builtin()
START = (-200.0, 0.0)


def sockets(*types: str, extra: tuple[AnyPart, ...] = (), band: float = 5.0, **fields: Any) -> Sheet:
    """Sockets V1, V2 ... in a row, 200 units apart, and other parts."""
    tubes = tuple(Tube(id=f"V{n}", type=each, at=(n * 200.0, 0.0)) for n, each in enumerate(types, 1))
    return Sheet(parts=(*extra, *tubes), mains=Mains(low_pct=-band, high_pct=band), **fields)


def ids_of(sheet: Sheet) -> tuple[str, ...]:
    return tuple(part.id for part in sheet.parts if part.kind in ("tube", "lamp"))


def planned(sheet: Sheet, ids: tuple[str, ...] | None = None, **options: Any) -> ChainPlan:
    """A plan over all sockets in the usual order, or over some in the order given."""
    chosen = Options(**options)
    if ids is None:
        loads, _ = loads_of(sheet, CATALOGUE, ids_of(sheet))
        ids = usual_order(chosen.arrangement, loads, START)
    return plan(sheet, CATALOGUE, ids, chosen)


def built(sheet: Sheet, made: ChainPlan) -> Sheet:
    after = edit_of(made)(sheet)
    assert find_problems(after) == ()
    return after


def solved(sheet: Sheet) -> Assessment:
    return assess(sheet, CATALOGUE)


def faults(assessment: Assessment) -> list[Finding]:
    return [finding for finding in assessment.findings if finding.severity == "fault"]


def unwarned(before: Sheet, made: ChainPlan) -> list[Finding]:
    """Faults of the built sheet that were not there before and that the plan did not warn of."""
    old = {(one.rule, where, one.condition) for one in faults(solved(before)) for where in one.where}
    warned = {(rule, where) for one in made.cautions for rule in one.rules for where in one.where}
    left_out = {one.id for one in made.left_out}
    return [
        one
        for one in faults(solved(built(before, made)))
        if not all((one.rule, where, one.condition) in old or where in left_out for where in one.where)
        and not any((one.rule, where) in warned for where in one.where)
    ]


def ends(made: ChainPlan) -> list[str]:
    """The wires of a plan as ``T1.a V1.4``."""
    return [f"{wire.start} {wire.end}" for wire in made.wires]
