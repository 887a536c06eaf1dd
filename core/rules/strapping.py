"""Sockets wired for the wrong volts, straps that short a heater, and wires on pins that are no heater pins."""

from __future__ import annotations

from collections.abc import Iterator

from core.catalogue.bases import BASES
from core.catalogue.types import TubeType
from core.elements.branch import GROUND
from core.limits import owner_of
from core.results import ROUNDING, Finding, HeaterPoint, Sentence, sentence
from core.rules.basis import Case
from core.rules.nets import shortest_path
from core.rules.shorts import shorted_nets
from core.rules.words import listed, pin_list, volts
from core.sentences import Text
from core.sheet import Tube

LEAST_HALF, MOST_HALF = 0.3, 0.7
LEAST_DOUBLE, MOST_DOUBLE = 1.5, 2.5


def has_halves(kind: TubeType) -> bool:
    """Whether a heater is two equal halves that can be fed in series or side by side."""
    sections = kind.sections
    return len(sections) == 2 and sections[0].rated_v == sections[1].rated_v and kind.tap_role != "lamp"


def wrong_strap(case: Case) -> Iterator[Finding]:
    """Tubes strapped for other volts than they get, and straps that short a heater or half of one."""
    for tube, kind in case.tubes:
        if has_halves(kind):
            yield from wrong_halves(case, tube, kind)
        yield from shorted_heater(case, tube, kind)


def wrong_halves(case: Case, tube: Tube, kind: TubeType) -> Iterator[Finding]:
    """What is wrong where the two halves of a heater are wired for other volts than they get."""
    sections = case.nominal.heaters[tube.id]
    if len(sections) != 2:
        return
    one, other = sections
    ratios = (one.v / one.rated_v, other.v / other.rated_v)
    if min(ratios) >= LEAST_HALF * (1 - ROUNDING) and max(ratios) <= MOST_HALF * (1 + ROUNDING):
        group = case.topology.series_of.get(one.key, ())
        if other.key in group and {owner_of(key) for key in group} == {tube.id}:
            yield _series_on_half(tube, kind, one, other)
    elif min(ratios) >= LEAST_DOUBLE * (1 - ROUNDING) and max(ratios) <= MOST_DOUBLE * (1 + ROUNDING):
        tap, ends = _tap_and_ends(kind)
        nets = case.wire_nets
        if nets.joined(f"{tube.id}.{ends[0]}", f"{tube.id}.{ends[1]}"):
            yield _parallel_on_double(case, tube, kind, one, tap, ends)


def _tap_and_ends(kind: TubeType) -> tuple[str, tuple[str, str]]:
    first, second = (section.pins for section in kind.sections)
    tap = next((pin for pin in first if pin in second), first[1])
    ends = [pin for pin in (*first, *second) if pin != tap]
    return tap, (ends[0], ends[-1])


def _series_on_half(tube: Tube, kind: TubeType, one: HeaterPoint, other: HeaterPoint) -> Finding:
    tap, ends = _tap_and_ends(kind)
    whole = one.rated_v + other.rated_v
    return Finding(
        rule="wrong-strap",
        severity="fault",
        where=(tube.id,),
        title=sentence(
            "{id} wired for {whole}, fed {v}", id=tube.id, whole=volts(whole), v=volts(one.v + other.v)
        ),
        says=sentence(
            "{id} ({type}) is wired for {whole} (pin {a} to pin {b}, pin {tap} open) but fed {v}:"
            " each half gets {half} where {rated} is wanted.",
            id=tube.id,
            type=tube.type,
            whole=volts(whole),
            a=ends[0],
            b=ends[1],
            tap=tap,
            v=volts(one.v + other.v),
            half=volts(min(one.v, other.v)),
            rated=volts(one.rated_v),
        ),
        mend=sentence(
            "Strap pin {a} to pin {b}, and feed between that strap and pin {tap}.",
            a=ends[0],
            b=ends[1],
            tap=tap,
        ),
        value=one.v + other.v,
        limit=whole,
        unit="V",
        source=_pin_source(kind),
    )


def _parallel_on_double(
    case: Case, tube: Tube, kind: TubeType, one: HeaterPoint, tap: str, ends: tuple[str, str]
) -> Finding:
    straps = shortest_path(case.wire_ways, f"{tube.id}.{ends[0]}", f"{tube.id}.{ends[1]}")
    return Finding(
        rule="wrong-strap",
        severity="fault",
        where=(tube.id, *straps),
        title=sentence(
            "{id} strapped for {rated}, fed {v}", id=tube.id, rated=volts(one.rated_v), v=volts(one.v)
        ),
        says=sentence(
            "{id} ({type}) is strapped for {rated} (pins {a} and {b} joined, fed against pin {tap}) but fed {v}.",
            id=tube.id,
            type=tube.type,
            rated=volts(one.rated_v),
            a=ends[0],
            b=ends[1],
            tap=tap,
            v=volts(one.v),
        ),
        mend=sentence(
            "Separate pins {a} and {b} (joined by {straps}), feed pin {a} against pin {b}, and leave pin {tap} open.",
            straps=listed(straps),
            a=ends[0],
            b=ends[1],
            tap=tap,
        ),
        value=one.v,
        limit=one.rated_v,
        unit="V",
        source=_pin_source(kind),
    )


def _pin_source(kind: TubeType) -> Text:
    return kind.source_of(f"{kind.sections[0].name} pins") or sentence("the heater pins of the type")


def shorted_heater(case: Case, tube: Tube, kind: TubeType) -> Iterator[Finding]:
    """The finding where something joins the ends of a heater or of a part of it."""
    nets = case.ideal_nets
    bad = [
        section
        for section in kind.sections
        if nets.joined(f"{tube.id}.{section.pins[0]}", f"{tube.id}.{section.pins[1]}")
    ]
    if not bad:
        return
    pins = bad[0].pins
    straps = shorting_straps(case, f"{tube.id}.{pins[0]}", f"{tube.id}.{pins[1]}")
    if not straps:
        return  # the supply itself is shorted elsewhere: that is another finding
    whole = len(bad) == len(kind.sections)
    says = sentence(
        "The heater of {id} ({type}) is shorted: its {pins} are joined by {straps}."
        if whole
        else "A part of the heater of {id} ({type}) is shorted: its {pins} are joined by {straps}.",
        straps=listed(straps),
        id=tube.id,
        type=tube.type,
        pins=pin_list(pins),
    )
    if len(kind.sections) == 1 and set(pins) == {"4", "5"} and "9" in case.wired_pins.get(tube.id, ()):
        says = sentence(
            "{shorted} The socket is strapped for a tube with a heater tap on pin 9; this one has none.",
            shorted=says,
        )
    yield Finding(
        rule="wrong-strap",
        severity="fault",
        where=(tube.id, *straps),
        title=sentence("A strap shorts the heater of {id}", id=tube.id),
        says=says,
        mend=_short_mend(case, tube, straps, kind),
        source=_pin_source(kind),
    )


def shorting_straps(case: Case, one: str, other: str) -> tuple[str, ...]:
    """What joins the ends of a heater section, by no fault of a supply shorted elsewhere."""
    nets = case.ideal_nets
    if not nets.joined(one, other):
        return ()
    at = case.circuit.wires_at
    direct = tuple(wire_id for wire_id in at.get(one, ()) if wire_id in at.get(other, ()))
    if direct:
        return direct[:1]
    return () if nets.net(one) in shorted_nets(case) else shortest_path(case.ideal_ways, one, other)


def _short_mend(case: Case, tube: Tube, straps: tuple[str, ...], kind: TubeType) -> Sentence:
    pins = kind.heater_pins
    own = [
        one
        for one in straps
        if (wire := case.sheet.wire_by_id.get(one)) is not None
        and owner_at(wire.start) == owner_at(wire.end) == tube.id
    ]
    return sentence(
        "Take out {straps} and feed the heater between {pins}.",
        straps=listed(own or straps),
        pins=pin_list((pins[0], pins[-1])),
    )


def owner_at(terminal: str) -> str:
    """The part of a terminal."""
    return terminal.rpartition(".")[0]


def pin_not_heater(case: Case) -> Iterator[Finding]:
    """Heater wires on pins that belong to no heater of the type."""
    wired_pins = case.wired_pins
    for tube, kind in case.tubes:
        wired = wired_pins.get(tube.id)
        if wired is None:
            continue
        pins = kind.heater_pins
        wrong = [pin for pin in wired if pin not in pins]
        screens = [pin for pin in wrong if _is_screen(case, tube, kind, pin)]
        if wrong and len(screens) == len(wrong):
            yield _screen_pins(case, tube, kind, screens)
        elif wrong:
            wrong = [pin for pin in wrong if pin not in screens]
            yield _wrong_pins(case, tube, kind, wired, wrong)


def _is_screen(case: Case, tube: Tube, kind: TubeType, pin: str) -> bool:
    """Whether a pin that the base has is wired straight to the chassis and to nothing else."""
    base = BASES.get(kind.base)
    wires = case.circuit.wires_at.get(f"{tube.id}.{pin}", ())
    ends = [case.circuit.branches[wire] for wire in wires]
    return (base is None or base.has(pin)) and all(GROUND in (one.u, one.v) for one in ends)


def _screen_pins(case: Case, tube: Tube, kind: TubeType, pins: list[str]) -> Finding:
    values: dict[str, Text] = {
        "id": tube.id,
        "type": tube.type,
        "pins": pin_list(pins),
        "heater": pin_list(kind.heater_pins),
    }
    wires = [wire_id for pin in pins for wire_id in case.circuit.wires_at.get(f"{tube.id}.{pin}", ())]
    return Finding(
        rule="pin-not-heater",
        severity="note",
        where=(tube.id, *dict.fromkeys(wires)),
        title=sentence("{id}: {pins} on the chassis", **values),
        says=sentence(
            "On {id} ({type}) {pins} is no heater pin but wired to the chassis, as a screen may be."
            if len(pins) == 1
            else "On {id} ({type}) {pins} are no heater pins but wired to the chassis, as a screen may be.",
            **values,
        ),
        mend=sentence("If the heater was meant, it is on {heater}.", **values),
        source=_pin_source(kind),
    )


def _wrong_pins(case: Case, tube: Tube, kind: TubeType, wired: tuple[str, ...], wrong: list[str]) -> Finding:
    wires = [wire_id for pin in wrong for wire_id in case.circuit.wires_at.get(f"{tube.id}.{pin}", ())]
    says, mend = _pin_words(tube, kind, wired, wrong)
    return Finding(
        rule="pin-not-heater",
        severity="fault",
        where=(tube.id, *dict.fromkeys(wires)),
        title=sentence("{id}: wire on {pins}", id=tube.id, pins=pin_list(wrong)),
        says=says,
        mend=mend,
        source=_pin_source(kind),
    )


def _pin_words(
    tube: Tube, kind: TubeType, wired: tuple[str, ...], wrong: list[str]
) -> tuple[Sentence, Sentence]:
    values: dict[str, Text] = {
        "id": tube.id,
        "type": tube.type,
        "wrong": pin_list(wrong),
        "pins": pin_list(kind.heater_pins),
    }
    base = BASES.get(kind.base)
    meant = _mirrored(kind, wired)
    if meant:
        return (
            sentence(
                "The wires of {id} ({type}) end on {wrong}, the mirror image of its heater {pins}:"
                " pins are counted clockwise seen from below.",
                **values,
            ),
            sentence(
                "Move them: {moves}.",
                moves=listed([sentence("pin {a} to pin {b}", a=a, b=b) for a, b in meant], 8),
            ),
        )
    if base is not None and not all(base.has(pin) for pin in wrong):
        return (
            sentence(
                "A wire ends on {wrong} of {id} ({type}), but its base {base} has no such pin.",
                base=base.title,
                **values,
            ),
            sentence("Its heater is on {pins}.", **values),
        )
    if wrong == ["9"] and kind.base == "B9A" and len(kind.sections) == 1:
        return (
            sentence(
                "A wire ends on pin 9 of {id} ({type}), which is no heater tap there: the heater is on {pins}.",
                **values,
            ),
            sentence(
                "Take the wire off pin 9; only tubes with a tapped heater, such as the 12AX7, are fed there."
            ),
        )
    return (
        sentence("A heater wire ends on {wrong} of {id} ({type}), whose heater is on {pins}.", **values),
        sentence("Move it to {pins}, or take it off.", **values),
    )


def _mirrored(kind: TubeType, wired: tuple[str, ...]) -> list[tuple[str, str]]:
    """Moves from wired pins to meant ones, if the wired pins are the heater pins counted from the wrong side."""
    base = BASES.get(kind.base)
    count = len(base.pins) if base else 0
    if len(wired) < 2 or not count or not all(pin.isdigit() for pin in wired):
        return []
    moves = [(pin, str(count + 1 - int(pin))) for pin in wired]
    if not all(meant in kind.heater_pins for _, meant in moves):
        return []
    return [(pin, meant) for pin, meant in moves if pin != meant]
