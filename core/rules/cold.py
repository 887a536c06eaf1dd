"""Heaters that get nothing, or of which only a part is heated, with the reason."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from core.circuit.build import is_open
from core.elements.branch import Contact
from core.results import COLD_SHARE, Finding, HeaterPoint, Sentence, sentence
from core.rules.basis import COMMON, Case, Line
from core.rules.strapping import shorting_straps
from core.rules.words import listed, pin_list, volts
from core.sheet import Switch, Tube

COLD_SOURCE = f"{COMMON}: below a twentieth of its rated volts a heater does not glow"


class _Reason(NamedTuple):
    says: Sentence
    mend: Sentence


def not_heated(case: Case) -> Iterator[Finding]:
    """Tubes and lamps in which nothing glows at nominal mains."""
    heaters = case.nominal.heaters
    for tube, kind in case.tubes:
        sections = heaters[tube.id]
        if sections and all(one.v < COLD_SHARE * one.rated_v for one in sections):
            yield _cold(case, tube.id, kind.heater_pins, sections, f"{tube.id} ({tube.type})")
    for lamp in case.lamps:
        sections = heaters.get(lamp.id, ())
        if sections and sections[0].v < COLD_SHARE * sections[0].rated_v:
            yield _cold(case, lamp.id, ("1", "2"), sections, f"Lamp {lamp.id}")


def _cold(
    case: Case, part_id: str, pins: tuple[str, ...], sections: tuple[HeaterPoint, ...], name: str
) -> Finding:
    reason = _reason(case, part_id, pins, sections, name)
    return Finding(
        rule="not-heated",
        severity="fault" if part_id in case.tube_types else "caution",
        where=(part_id,),
        title=sentence("{id} is not heated", id=part_id),
        says=reason.says,
        mend=reason.mend,
        value=max(one.v for one in sections),
        limit=COLD_SHARE * sections[0].rated_v,
        unit="V",
        source=COLD_SOURCE,
    )


def _reason(
    case: Case, part_id: str, pins: tuple[str, ...], sections: tuple[HeaterPoint, ...], name: str
) -> _Reason:
    wired = [pin for pin in pins if pin in case.wired_pins.get(part_id, ())]
    line = case.line_of[part_id]
    if not wired:
        return _Reason(
            sentence("{name} stays cold: no wire ends on its heater {pins}.", name=name, pins=pin_list(pins)),
            sentence("Wire {pins} to the heater supply.", pins=pin_list(_ends(pins))),
        )
    if len(wired) == 1:
        bare = [pin for pin in pins if pin not in wired]
        return _Reason(
            sentence(
                "{name} stays cold: only {pin} is wired, so no current can flow.",
                name=name,
                pin=pin_list(wired),
            ),
            sentence("Wire {pins} to the other side of the supply.", pins=pin_list(bare[:1])),
        )
    if all(shorting_straps(case, *_terminals(part_id, one)) for one in sections):
        return _Reason(
            sentence(
                "{name} stays cold: a wire joins {pins} of its heater.", name=name, pins=pin_list(wired)
            ),
            sentence("Take out the wire that joins the ends of the heater."),
        )
    return _from_the_line(case, line, name)


def _ends(pins: tuple[str, ...]) -> tuple[str, ...]:
    return (pins[0], pins[-1])


def _terminals(part_id: str, section: HeaterPoint) -> tuple[str, str]:
    one, _, other = section.pins.partition("-")
    return f"{part_id}.{one}", f"{part_id}.{other}"


def _from_the_line(case: Case, line: Line, name: str) -> _Reason:
    """Why a heater with both ends wired gets nothing."""
    opened = case.open_contacts.get(line)
    if opened is None:
        opened = case.open_contacts[line] = _open_at(case, line)
    if opened:
        return _Reason(
            sentence("{name} stays cold: {open} stands open.", name=name, open=listed(opened)),
            sentence("Close {open}.", open=listed(opened)),
        )
    if not line.supplies:
        return _Reason(
            sentence("{name} stays cold: no supply feeds its heater.", name=name),
            sentence("Wire the line to a winding or another heater supply."),
        )
    weak = [one for one in line.supplies if _is_down(case, one)]
    if weak:
        return _Reason(
            sentence("{name} stays cold: {ids} gives next to nothing.", name=name, ids=listed(weak)),
            sentence("Look for the short circuit or overload of {ids} first.", ids=listed(weak)),
        )
    return _Reason(
        sentence("{name} stays cold: its wires lead to no two sides of a supply.", name=name),
        sentence("Wire its heater between the two sides of {ids}.", ids=listed(line.supplies)),
    )


def _is_down(case: Case, supply: str) -> bool:
    point = case.nominal.supplies.get(supply)
    return point is not None and point.v < COLD_SHARE * case.supply_volts[supply]


def _open_at(case: Case, line: Line) -> tuple[str, ...]:
    """Open switches and relay contacts on a line."""
    terminals = set(line.island.terminals)
    found = [
        part.id
        for part in case.kinds.get(Switch, ())
        if isinstance(part, Switch)
        and not part.closed
        and (f"{part.id}.1" in terminals or f"{part.id}.2" in terminals)
    ]
    pulled = frozenset(key for key, branch in case.nominal.branches.items() if branch.pulled_in)
    wired = case.wired_pins
    for branch in line.island.branches:
        law = branch.law
        if isinstance(law, Contact) and is_open(branch, pulled):
            pins = (branch.u.rpartition(".")[2], branch.v.rpartition(".")[2])
            if all(pin in wired.get(branch.owner, ()) for pin in pins):
                found.append(branch.owner)
    return tuple(dict.fromkeys(found))


def half_heated(case: Case) -> Iterator[Finding]:
    """Tubes of which one heater section glows and another stays cold."""
    for tube, _ in case.tubes:
        sections = case.nominal.heaters[tube.id]
        if len(sections) < 2:
            continue
        cold = [one for one in sections if one.v < COLD_SHARE * one.rated_v]
        if cold and len(cold) < len(sections):
            yield _half(case, tube, cold, [one for one in sections if one not in cold])


def _half(case: Case, tube: Tube, cold: list[HeaterPoint], warm: list[HeaterPoint]) -> Finding:
    dead = cold[0]
    pins = dead.pins.split("-")
    says = sentence(
        "Only a part of {id} ({type}) is heated: its section {warm} gets {v}, but section {dead}"
        " ({pins}) gets {none}.",
        id=tube.id,
        type=tube.type,
        warm=listed([one.pins for one in warm]),
        v=volts(warm[0].v),
        dead=dead.pins,
        pins=pin_list(pins),
        none=volts(dead.v),
    )
    return Finding(
        rule="half-heated",
        severity="fault",
        where=(tube.id,),
        title=sentence("{id} is only half heated", id=tube.id),
        says=says,
        mend=_half_mend(case, tube, dead, warm[0]),
        value=dead.v,
        limit=COLD_SHARE * dead.rated_v,
        unit="V",
        source=COLD_SOURCE,
    )


def _half_mend(case: Case, tube: Tube, dead: HeaterPoint, warm: HeaterPoint) -> Sentence:
    if case.wire_nets.joined(*_terminals(tube.id, dead)):
        return sentence("Take out the wire that joins {pins}.", pins=pin_list(dead.pins.split("-")))
    common = set(dead.pins.split("-")) & set(warm.pins.split("-"))
    ends = [pin for one in (warm, dead) for pin in one.pins.split("-") if pin not in common]
    if len(ends) == 2 and dead.rated_v == warm.rated_v and warm.v < 1.5 * warm.rated_v:
        return sentence(
            "Strap pin {one} to pin {other}, so that both halves lie between that strap and {tap}.",
            one=ends[0],
            other=ends[1],
            tap=pin_list(sorted(common)),
        )
    return sentence("Feed the whole heater between {pins}.", pins=pin_list(ends or dead.pins.split("-")))
