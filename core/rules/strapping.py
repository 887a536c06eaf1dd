"""Sockets wired for the wrong volts, and straps that short a heater."""

from __future__ import annotations

from collections.abc import Iterator

from core.catalogue.types import TubeType
from core.limits import owner_of
from core.remedy import MoveEnds, Remedy, TakeOut
from core.results import ROUNDING, Finding, HeaterPoint, sentence
from core.rules.basis import Case, Mend
from core.rules.nets import shortest_path
from core.rules.offers import ends_at, moved, remedy, strap, take_out
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
            yield _series_on_half(case, tube, kind, one, other)
    elif min(ratios) >= LEAST_DOUBLE * (1 - ROUNDING) and max(ratios) <= MOST_DOUBLE * (1 + ROUNDING):
        tap, ends = tap_and_ends(kind)
        nets = case.wire_nets
        if nets.joined(f"{tube.id}.{ends[0]}", f"{tube.id}.{ends[1]}"):
            yield _parallel_on_double(case, tube, kind, one, tap, ends)


def tap_and_ends(kind: TubeType) -> tuple[str, tuple[str, str]]:
    """The tap of a heater of two sections, and its ends."""
    first, second = (section.pins for section in kind.sections)
    tap = next((pin for pin in first if pin in second), first[1])
    ends = [pin for pin in (*first, *second) if pin != tap]
    return tap, (ends[0], ends[-1])


def _series_on_half(case: Case, tube: Tube, kind: TubeType, one: HeaterPoint, other: HeaterPoint) -> Finding:
    tap, ends = tap_and_ends(kind)
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
        source=pin_source(kind),
        remedies=_strapped(case, tube.id, tap, ends),
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
        source=pin_source(kind),
        remedies=_separated(case, tube.id, straps, tap, ends),
    )


def _strapped(case: Case, tube_id: str, tap: str, ends: tuple[str, str]) -> tuple[Remedy, ...]:
    """The ends of a heater joined, and what was on one of them moved to the tap, which must be free."""
    if tap in case.wired_pins.get(tube_id, ()):
        return ()
    moves = ends_at(case, f"{tube_id}.{ends[1]}", f"{tube_id}.{tap}")
    title = sentence("Strap {a} to {b}, feed pin {tap}", a=ends[0], b=ends[1], tap=tap)
    return (moved(title, moves, strap(tube_id, *ends)),)


def _separated(
    case: Case, tube_id: str, straps: tuple[str, ...], tap: str, ends: tuple[str, str]
) -> tuple[Remedy, ...]:
    """The strap between the ends of a heater taken out, and what was on the tap moved to the end left bare."""
    for free, fed in ((ends[1], ends[0]), (ends[0], ends[1])):
        wires = case.circuit.wires_at.get(f"{tube_id}.{free}", ())
        if len(wires) == 1 and wires[0] in straps:
            moves = ends_at(case, f"{tube_id}.{tap}", f"{tube_id}.{free}")
            title = sentence("Feed pins {a} and {b}, open pin {tap}", a=fed, b=free, tap=tap)
            return (remedy(title, TakeOut(wires), MoveEnds(moves)),)
    return ()


def pin_source(kind: TubeType) -> Text:
    """Where the heater pins of a type are known from."""
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
    mend = _short_mend(case, tube, straps, kind)
    yield Finding(
        rule="wrong-strap",
        severity="fault",
        where=(tube.id, *straps),
        title=sentence("A strap shorts the heater of {id}", id=tube.id),
        says=says,
        mend=mend.says,
        source=pin_source(kind),
        remedies=mend.remedies,
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


def _short_mend(case: Case, tube: Tube, straps: tuple[str, ...], kind: TubeType) -> Mend:
    pins = kind.heater_pins
    own = [
        one
        for one in straps
        if (wire := case.sheet.wire_by_id.get(one)) is not None
        and owner_at(wire.start) == owner_at(wire.end) == tube.id
    ]
    says = sentence(
        "Take out {straps} and feed the heater between {pins}.",
        straps=listed(own or straps),
        pins=pin_list((pins[0], pins[-1])),
    )
    return Mend(says, tuple(take_out((one,)) for one in own or straps if one in case.sheet.wire_by_id))


def owner_at(terminal: str) -> str:
    """The part of a terminal."""
    return terminal.rpartition(".")[0]
