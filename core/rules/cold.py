"""Heaters that get nothing, or of which only a part is heated, with the reason."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from core.elements.branch import Coil
from core.remedy import Join, MoveEnds, Remedy, SetFields, Step
from core.results import COLD_SHARE, Finding, HeaterPoint, Sentence, sentence
from core.rules.basis import Case, Line, Mend
from core.rules.joining import joins
from core.rules.loops import breaks
from core.rules.offers import ends_at, moved, remedy, set_fields, strap, take_out
from core.rules.strapping import shorting_straps
from core.rules.words import apart, listed, pin_list, tube_name, volts
from core.sentences import Text
from core.sheet import Relay, Switch, Tube

COLD_SOURCE = sentence("common practice: below a twentieth of its rated volts a heater does not glow")


class _Reason(NamedTuple):
    says: Sentence
    mend: Sentence
    remedies: tuple[Remedy, ...] = ()


def not_heated(case: Case) -> Iterator[Finding]:
    """Tubes and lamps in which nothing glows at nominal mains."""
    heaters = case.nominal.heaters
    for tube, kind in case.tubes:
        sections = heaters[tube.id]
        if sections and all(one.v < COLD_SHARE * one.rated_v for one in sections):
            yield _cold(case, tube.id, kind.heater_pins, sections, tube_name(tube))
    for lamp in case.lamps:
        sections = heaters.get(lamp.id, ())
        if sections and sections[0].v < COLD_SHARE * sections[0].rated_v:
            yield _cold(case, lamp.id, ("1", "2"), sections, sentence("Lamp {id}", id=lamp.id))


def _cold(
    case: Case, part_id: str, pins: tuple[str, ...], sections: tuple[HeaterPoint, ...], name: Text
) -> Finding:
    reason = _reason(case, part_id, pins, sections, name)
    return Finding(
        rule="not-heated",
        severity="fault" if part_id in case.tube_types else "caution",
        where=(part_id,),
        title=sentence("{id} is not heated", id=part_id),
        says=reason.says,
        mend=reason.mend,
        remedies=reason.remedies,
        value=max(one.v for one in sections),
        limit=COLD_SHARE * sections[0].rated_v,
        unit="V",
        source=COLD_SOURCE,
    )


def _reason(
    case: Case, part_id: str, pins: tuple[str, ...], sections: tuple[HeaterPoint, ...], name: Text
) -> _Reason:
    wired = [pin for pin in pins if pin in case.wired_pins.get(part_id, ())]
    line = case.line_of[part_id]
    if not wired:
        return _Reason(
            sentence("{name} stays cold: no wire ends on its heater {pins}.", name=name, pins=pin_list(pins)),
            sentence("Wire {pins} to the heater supply.", pins=pin_list(_ends(pins))),
            joins(case, part_id, pins, wired),
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
            joins(case, part_id, pins, wired),
        )
    straps = [shorting_straps(case, *_terminals(part_id, one)) for one in sections]
    if all(straps):
        return _bypassed(case, straps[0], wired, name)
    ends = (f"{part_id}.{wired[0]}", f"{part_id}.{wired[-1]}")
    broken = breaks(case, *ends, part_id)
    return _broken(case, line, broken, name) if broken else _from_the_line(case, line, name)


def _bypassed(case: Case, straps: tuple[str, ...], wired: list[str], name: Text) -> _Reason:
    """A heater whose ends are joined by wires, or by something else without resistance."""
    others = [one for one in straps if one not in case.sheet.wire_by_id]
    if not others:
        return _Reason(
            sentence(
                "{name} stays cold: a wire joins {pins} of its heater.", name=name, pins=pin_list(wired)
            ),
            sentence("Take out the wire that joins the ends of the heater."),
            tuple(take_out((one,)) for one in straps),
        )
    return _Reason(
        sentence(
            "{name} stays cold: {part} joins {pins} of its heater.",
            name=name,
            part=listed(others),
            pins=pin_list(wired),
        ),
        sentence("Open {part}, or take it off the heater.", part=listed(others)),
        tuple(
            set_fields(sentence("Open {id}", id=one), one, closed=False)
            for one in others
            if isinstance(case.sheet.part_by_id[one], Switch)
        ),
    )


def _ends(pins: tuple[str, ...]) -> tuple[str, ...]:
    return (pins[0], pins[-1])


def _terminals(part_id: str, section: HeaterPoint) -> tuple[str, str]:
    one, _, other = section.pins.partition("-")
    return f"{part_id}.{one}", f"{part_id}.{other}"


def _from_the_line(case: Case, line: Line, name: Text) -> _Reason:
    """Why a heater with both ends wired gets nothing."""
    if not line.supplies:
        return _Reason(
            sentence("{name} stays cold: no supply feeds its heater.", name=name),
            sentence("Wire the line to a winding or another heater supply."),
        )
    weak = [one for one in line.supplies if _is_down(case, one)]
    if weak:
        return _Reason(
            sentence(
                "{name} stays cold: {ids} gives next to nothing."
                if len(weak) == 1
                else "{name} stays cold: {ids} give next to nothing.",
                name=name,
                ids=listed(weak),
            ),
            sentence("Look for the short circuit or overload of {ids} first.", ids=listed(weak)),
        )
    return _Reason(
        sentence("{name} stays cold: its wires lead to no two sides of a supply.", name=name),
        sentence("Wire its heater between the two sides of {ids}.", ids=listed(line.supplies)),
    )


def _is_down(case: Case, supply: str) -> bool:
    point = case.nominal.supplies.get(supply)
    return point is not None and point.v < COLD_SHARE * case.supply_volts[supply]


def _broken(case: Case, line: Line, broken: tuple[str, ...], name: Text) -> _Reason:
    """A heater whose loop is broken by something in it: the first break, and its like, are named."""
    kind = _break_of(case, broken[0])
    alike = [one for one in broken if _break_of(case, one) == kind]
    values: dict[str, Text] = {"name": name, "ids": listed(alike), "id": broken[0]}
    remedies = () if line.has_mains and kind != "pulled" else _unbroken(case, kind, alike)
    if kind == "pulled":
        return _Reason(
            sentence("{name} stays cold: {ids} in its string is pulled, so no current flows.", **values),
            sentence("Put {ids} back: one tube out of a string cools them all.", **values),
            remedies,
        )
    if kind == "unknown":
        return _Reason(
            sentence("{name} stays cold: its current would flow through {ids}, of unknown type.", **values),
            sentence("Choose a type for {ids} that the catalogue has.", **values),
        )
    if kind == "diode":
        return _Reason(
            sentence("{name} stays cold: {ids} blocks its current.", **values),
            sentence("Turn {ids} round.", **values),
            remedies,
        )
    if kind == "capacitor":
        return _Reason(
            sentence("{name} stays cold: {ids} in its loop passes no heater current.", **values),
            sentence("Bridge {ids} by a wire.", **values),
            remedies,
        )
    part = case.sheet.part_by_id[broken[0]]
    if isinstance(part, Relay):
        return _relay(case, part, name)
    return _Reason(
        sentence("{name} stays cold: {ids} stands open.", **values),
        sentence("Close {ids}.", **values),
        remedies,
    )


def _unbroken(case: Case, kind: str, ids: list[str]) -> tuple[Remedy, ...]:
    """Everything of one kind that breaks the loop put right; a loop to the mains is never closed like this."""
    steps: list[Step] = []
    for one in ids:
        if kind == "pulled":
            steps.append(SetFields(one, (("pulled", False),)))
        elif kind == "switch":
            steps.append(SetFields(one, (("closed", True),)))
        elif kind == "capacitor":
            steps.append(Join(f"{one}.1", f"{one}.2"))
        elif kind == "diode":
            a, k = f"{one}.a", f"{one}.k"
            steps.append(MoveEnds((*ends_at(case, a, k), *ends_at(case, k, a))))
    if not steps:
        return ()
    shown = listed(ids)
    title = {
        "pulled": sentence("Put {ids} back", ids=shown),
        "switch": sentence("Close {ids}", ids=shown),
        "capacitor": sentence("Bridge {ids}", ids=shown),
        "diode": sentence("Turn {ids} round", ids=shown),
    }[kind]
    return (Remedy(title, tuple(steps)),)


def _break_of(case: Case, part_id: str) -> str:
    part = case.sheet.part_by_id[part_id]
    if isinstance(part, Tube):
        return "pulled" if part.pulled else "unknown"
    return "unknown" if part.kind in {"lamp", "thermistor"} else part.kind


def _relay(case: Case, relay: Relay, name: Text) -> _Reason:
    """A heater behind a relay contact, with what the coil gets against what it needs."""
    coil, law = case.nominal.branches.get(relay.id), case.circuit.branches[relay.id].law
    values: dict[str, Text] = {"name": name, "id": relay.id}
    if coil is None:
        return _Reason(
            sentence("{name} stays cold: {id} stands open, as the line of its coil is not solved.", **values),
            sentence("Put the line of the coil of {id} right first.", **values),
        )
    if not isinstance(law, Coil) or coil.pulled_in:
        return _Reason(
            sentence("{name} stays cold: {id} stands open while it is pulled in.", **values),
            sentence("Move the heater to the other contact of {id}.", **values),
            _other_contact(case, relay),
        )
    got, wanted = apart(coil.v, law.pull_in_v)
    return _Reason(
        sentence(
            "{name} stays cold: {id} stands open, because its coil gets {v} and pulls in at {pull_in}.",
            v=got,
            pull_in=wanted,
            **values,
        ),
        sentence("Give the coil of {id} its {coil}.", coil=volts(relay.coil_v), **values),
    )


def _other_contact(case: Case, relay: Relay) -> tuple[Remedy, ...]:
    """What is on the one contact moved to the other, which must be free."""
    wired = [name for name in ("no", "nc") if name in case.wired_pins.get(relay.id, ())]
    if len(wired) != 1:
        return ()
    other = "nc" if wired[0] == "no" else "no"
    moves = ends_at(case, f"{relay.id}.{wired[0]}", f"{relay.id}.{other}")
    title = sentence("Move {old} to {new}", old=f"{relay.id}.{wired[0]}", new=f"{relay.id}.{other}")
    return (moved(title, moves),)


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
        "Only a part of {id} ({type}) is heated: its section {warm} gets {v}, but section {dead} ({pins}) gets {none}."
        if len(warm) == 1
        else "Only a part of {id} ({type}) is heated: its sections {warm} get {v},"
        " but section {dead} ({pins}) gets {none}.",
        id=tube.id,
        type=tube.type,
        warm=listed([one.pins for one in warm]),
        v=volts(warm[0].v),
        dead=dead.pins,
        pins=pin_list(pins),
        none=volts(dead.v),
    )
    mend = _half_mend(case, tube, dead, warm[0])
    return Finding(
        rule="half-heated",
        severity="fault",
        where=(tube.id,),
        title=sentence("{id} is only half heated", id=tube.id),
        says=says,
        mend=mend.says,
        remedies=mend.remedies,
        value=dead.v,
        limit=COLD_SHARE * dead.rated_v,
        unit="V",
        source=COLD_SOURCE,
    )


def _half_mend(case: Case, tube: Tube, dead: HeaterPoint, warm: HeaterPoint) -> Mend:
    if case.wire_nets.joined(*_terminals(tube.id, dead)):
        straps = shorting_straps(case, *_terminals(tube.id, dead))
        return Mend(
            sentence("Take out the wire that joins {pins}.", pins=pin_list(dead.pins.split("-"))),
            tuple(take_out((one,)) for one in straps if one in case.sheet.wire_by_id),
        )
    common = sorted(set(dead.pins.split("-")) & set(warm.pins.split("-")))
    ends = [pin for one in (warm, dead) for pin in one.pins.split("-") if pin not in common]
    if len(ends) == 2 and dead.rated_v == warm.rated_v and warm.v < 1.5 * warm.rated_v:
        says = sentence(
            "Strap pin {one} to pin {other}, so that both halves lie between that strap and {tap}.",
            one=ends[0],
            other=ends[1],
            tap=pin_list(common),
        )
        title = sentence("Strap {a} to {b}", a=ends[0], b=ends[1])
        return Mend(says, (remedy(title, strap(tube.id, ends[0], ends[1])),))
    says = sentence("Feed the whole heater between {pins}.", pins=pin_list(ends or dead.pins.split("-")))
    if len(ends) != 2 or len(common) != 1 or ends[1] in case.wired_pins.get(tube.id, ()):
        return Mend(says)
    moves = ends_at(case, f"{tube.id}.{common[0]}", f"{tube.id}.{ends[1]}")
    title = sentence("Move pin {a} to pin {b}", a=common[0], b=ends[1])
    return Mend(says, (moved(title, moves),))
