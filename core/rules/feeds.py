"""What feeds a heater, and what its supply would have to give for rated volts."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from core.elements.branch import Ntc, Resistive, Source
from core.results import COLD_SHARE, HeaterPoint
from core.rules.basis import Case, Line
from core.sheet import Winding
from core.strings import cycle_labels

SAME_LOAD = 0.05  # halves of a winding this close in current count as equally loaded


class Feed(NamedTuple):
    """The supply of a heater at nominal mains, or that half of a winding which feeds it.

    ``v`` and ``a`` are what it gives, ``emf`` and ``ohm`` what is behind them; ``leg`` is the terminal of a half.
    """

    supply: str
    v: float
    a: float
    emf: float
    ohm: float
    leg: str = ""


class Need(NamedTuple):
    """What a feed must give for rated volts at the heater: volts, and its current over the present one."""

    v: float
    factor: float


def warm_section(case: Case, part_id: str, over: bool) -> HeaterPoint | None:
    """The section of a heater that is furthest over, or under, its rating at nominal mains; None where cold."""
    warm = [one for one in case.nominal.heaters.get(part_id, ()) if one.v > COLD_SHARE * one.rated_v]
    if len(warm) < 2:
        return warm[0] if warm else None
    ranked = sorted(warm, key=lambda one: one.v / one.rated_v)
    return ranked[-1 if over else 0]


def string_of(case: Case, section: HeaterPoint) -> list[HeaterPoint]:
    """The section and all heaters in series with it."""
    group = case.topology.series_of.get(section.key, (section.key,))
    return [case.sections[key] for key in group if key in case.sections]


def need(case: Case, feed: Feed, section: HeaterPoint) -> Need:
    """Volts and load of the feed with the string of a section at its rating.

    What lies between supply and heaters drops volts in proportion to the current.
    """
    string = string_of(case, section)
    factor = section.rated_a / section.a
    lost = max(0.0, feed.v - sum(one.v for one in string))
    return Need(sum(one.rated_v for one in string) + lost * factor, factor)


def feed_of(case: Case, line: Line, section: HeaterPoint) -> Feed | None:
    """The one supply of a line as a heater on it sees it; None where it has none or several."""
    if len(line.supplies) != 1:
        return None
    supply = line.supplies[0]
    point = case.nominal.supplies.get(supply)
    laws = [b.law for b in case.circuit.branches_by_owner.get(supply, ()) if isinstance(b.law, Source)]
    if point is None or not laws or point.a <= 0:
        return None
    mains_v = case.nominal.condition.mains_v
    emf = sum(law.dc_v + law.ac_per_mains * mains_v for law in laws)
    ohm = sum(law.ohm for law in laws)
    side = _half_of(case, supply, section)
    if not side:
        return Feed(supply, point.v, point.a, emf, ohm)
    leg, tap = f"{supply}.{side}", f"{supply}.ct"
    nodes = case.nominal.nodes
    return Feed(supply, abs(nodes[leg] - nodes[tap]), leg_a(case, leg), emf / 2, ohm / 2, leg)


def _half_of(case: Case, supply: str, section: HeaterPoint) -> str:
    """The side of a centre-tapped winding that feeds a heater wired to its tap; empty for any other heater."""
    part = case.sheet.part_by_id[supply]
    tap = f"{supply}.ct"
    if not isinstance(part, Winding) or not part.centre_tap:
        return ""
    ends = [f"{one.owner}.{pin}" for one in string_of(case, section) for pin in one.pins.split("-")]
    if not any(case.wire_nets.joined(end, tap) for end in ends):
        return ""
    nodes = case.nominal.nodes
    offsets = [(nodes[end] - nodes[tap]).real for end in ends]
    least = COLD_SHARE * section.rated_v
    if min(offsets) < -least and max(offsets) > least:
        return ""  # the tap is in the middle of the string
    is_up = max(offsets, key=abs) > 0
    return "a" if is_up == ((nodes[f"{supply}.a"] - nodes[tap]).real > 0) else "b"


def leg_a(case: Case, terminal: str) -> float:
    """Amperes that leave a supply by the wires on one of its terminals."""
    wires = case.circuit.wires_at.get(terminal, ())
    return sum(case.nominal.branches[one].a for one in wires if one in case.nominal.branches)


def is_evenly_loaded(case: Case, supply: str) -> bool:
    """Whether both halves of a winding carry about the same; so do those of one without a tap."""
    part = case.sheet.part_by_id[supply]
    if not isinstance(part, Winding) or not part.centre_tap:
        return True
    one, other = leg_a(case, f"{supply}.a"), leg_a(case, f"{supply}.b")
    return abs(one - other) <= SAME_LOAD * max(one, other)


def own_ohm(case: Case, line: Line, key: str) -> float:
    """Resistance in series with one heater section and with nothing that bypasses it, without wires."""
    return sum(own_parts(case, line, key).values())


def own_parts(case: Case, line: Line, key: str) -> dict[str, float]:
    """Ohms at work of each part in series with one heater section and with nothing that bypasses it."""
    pulled = frozenset(one for one, branch in case.nominal.branches.items() if branch.pulled_in)
    closed, node_of = line.island.closed(pulled)
    edges = [
        (branch.key, node_of[branch.u], node_of[branch.v])
        for branch in closed
        if node_of[branch.u] != node_of[branch.v]
    ]
    labels = cycle_labels(edges)
    label = labels.get(key)
    wires: Mapping[str, object] = case.sheet.wire_by_id
    found: dict[str, float] = {}
    for branch in closed:
        passive = isinstance(branch.law, Resistive | Ntc) and branch.owner not in wires
        if label and passive and labels.get(branch.key) == label:
            at_work = case.nominal.branches[branch.key]
            found[branch.owner] = at_work.v / at_work.a if at_work.a > 0 else 0.0
    return found
