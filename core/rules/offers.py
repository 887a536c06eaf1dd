"""What would mend a finding, in words and as remedies: both are made of the same figures."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from core.remedy import InSeries, Join, MoveEnds, Remedy, SetFields, Step, TakeOut, Value
from core.results import Sentence, sentence
from core.rules.basis import Case
from core.rules.mends import Fitted
from core.rules.words import listed, ohms, rating
from core.sentences import Text

CARRIES_A = 1e-9  # less is what rounding leaves


def remedy(title: Sentence, *steps: Step) -> Remedy:
    """A remedy by its name and steps."""
    return Remedy(title, steps)


def set_fields(title: Sentence, part_id: str, **fields: Value) -> Remedy:
    """Set fields of a part or wire."""
    return Remedy(title, (SetFields(part_id, tuple(fields.items())),))


def take_out(ids: Sequence[str]) -> Remedy:
    """Take out parts or wires."""
    return Remedy(sentence("Take out {ids}", ids=listed(ids)), (TakeOut(tuple(ids)),))


def ends_at(case: Case, old: str, new: str) -> tuple[tuple[str, str, str], ...]:
    """The moves of every wire on one terminal to another."""
    return tuple((wire, old, new) for wire in case.circuit.wires_at.get(old, ()))


def strap(tube_id: str, one: str, other: str) -> Join:
    """A wire between two pins of a socket."""
    return Join(f"{tube_id}.{one}", f"{tube_id}.{other}")


def in_series(case: Case, terminal: str, fitted: Fitted) -> InSeries | None:
    """A resistor between a terminal and the wires on it that carry current; None where there are none."""
    wires = carrying(case, terminal)
    if not wires or fitted.rated_w is None:
        return None
    return InSeries(terminal, wires, "resistor", (("ohm", fitted.ohm), ("rated_w", fitted.rated_w)))


def carrying(case: Case, terminal: str) -> tuple[str, ...]:
    """The wires on a terminal in which current flows at nominal mains."""
    branches = case.nominal.branches
    return tuple(
        one
        for one in case.circuit.wires_at.get(terminal, ())
        if one in branches and branches[one].a > CARRIES_A
    )


def fit_series(case: Case, fitted: Fitted, terminals: Sequence[str]) -> tuple[Remedy, ...]:
    """A resistor at each of some terminals."""
    steps = [in_series(case, terminal, fitted) for terminal in terminals]
    made = [step for step in steps if step is not None]
    if len(made) < len(terminals):
        return ()
    values: dict[str, Text] = {"ohm": ohms(fitted.ohm), "w": rating(fitted.rated_w or 0.0)}
    title = (
        sentence("Fit {ohm} {w} at {terminal}", terminal=terminals[0], **values)
        if len(terminals) == 1
        else sentence("Fit {ohm} {w} in each leg", **values)
    )
    return (Remedy(title, tuple(made)),)


def moved(title: Sentence, moves: Iterable[tuple[str, str, str]], *more: Step) -> Remedy:
    """Wire ends moved, and what else it takes."""
    return Remedy(title, (MoveEnds(tuple(moves)), *more))
