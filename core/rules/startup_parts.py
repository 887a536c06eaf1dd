"""Fuses, thermistors, relays and resistors at switch-on."""

from __future__ import annotations

from collections.abc import Iterator

from core.circuit import Island
from core.elements.branch import Hot, Ntc, Source
from core.results import ROUNDING, Finding, sentence
from core.rules.startup_basis import StartupCase
from core.rules.words import amps, mains_words, ohms, seconds, share, volts, watts
from core.sheet import Capacitor, Relay, Thermistor, Winding
from core.strings import cycle_labels
from core.units import Dimension, format_number, format_quantity
from core.warmup.results import AFTER_DIP, FuseWarmup, RelayWarmup, ThermistorWarmup, WarmupSummary

REPEATED_SHARE = 0.3
EARLIEST_S = ((2.1, 120.0), (2.75, 0.6), (4.0, 0.15), (10.0, 0.02))
"""Earliest melting times of time-lag links by multiples of their rating: IEC 60127-2, sheet 3."""
EARLY_S = 0.1
PULSE_TIMES = 5.0
WARM_SHARE = 1 / 3
AGAIN_TIMES = 1.5
_LEAST_COIL = 0.01


def fuse_inrush(case: StartupCase) -> Iterator[Finding]:
    """Fuses that may blow at switch-on."""
    for summary in case.summaries:
        for fuse, found in summary.fuses.items():
            over = [(many, s) for many, s in found.seconds_over if s > dict(EARLIEST_S).get(many, s)]
            melting = found.melting_i2t
            if over:
                yield _fuse_too_long(summary, fuse, *over[-1])
            elif melting is not None and found.excess_i2t > REPEATED_SHARE * melting:
                yield _fuse_i2t(summary, fuse, found, melting)


def _fuse_too_long(summary: WarmupSummary, fuse: str, many: float, lasting_s: float) -> Finding:
    earliest = dict(EARLIEST_S)[many]
    return Finding(
        rule="fuse-inrush",
        severity="fault",
        where=(fuse,),
        title=sentence("{id} may blow at switch-on", id=fuse),
        says=sentence(
            "{id} carries more than {many} times its rating for {time} at {condition}; it may melt after {earliest}.",
            id=fuse,
            many=format_number(many, 3),
            time=seconds(lasting_s),
            earliest=seconds(earliest),
            condition=mains_words(summary.start.name),
        ),
        mend=sentence("Limit the inrush with a soft start; take no larger fuse than the wiring bears."),
        condition=summary.start.name,
        value=lasting_s,
        limit=earliest,
        unit="s",
        source=sentence("IEC 60127-2, sheet 3: earliest melting times of time-lag links"),
    )


def _fuse_i2t(summary: WarmupSummary, fuse: str, found: FuseWarmup, melting: float) -> Finding:
    melts = found.excess_i2t > melting
    return Finding(
        rule="fuse-inrush",
        severity="fault" if melts else "caution",
        where=(fuse,),
        title=sentence("{id} may blow at switch-on", id=fuse)
        if melts
        else sentence("{id} ages at every switch-on", id=fuse),
        says=sentence(
            "The inrush through {id} has an I²t of {found} at {condition}, {share} of the {melting} at which it melts.",
            id=fuse,
            found=format_quantity(found.excess_i2t, Dimension.A2S),
            melting=format_quantity(melting, Dimension.A2S),
            share=share(100 * found.excess_i2t / melting),
            condition=mains_words(summary.start.name),
        ),
        mend=sentence("Limit the inrush with a soft start; take no larger fuse than the wiring bears."),
        condition=summary.start.name,
        value=found.excess_i2t,
        limit=melting if melts else REPEATED_SHARE * melting,
        unit="A²s",
        source=sentence("the melting I²t of the fuse; for repeated pulses 30 % of it (from memory)"),
    )


def thermistor_at_start(case: StartupCase) -> Iterator[Finding]:
    """Thermistors beyond their rating on the way, charging too much, or too hot to help a second time."""
    first = case.summaries[0] if case.summaries else None
    for summary in case.summaries:
        for thermistor, found in summary.thermistors.items():
            yield from case.fresh(_too_much(summary, thermistor, found))
            if summary.start.name == AFTER_DIP and first is not None:
                yield from _hot_restart(case, first, summary, thermistor, found)
    yield from _too_many_farads(case)


def _too_much(summary: WarmupSummary, thermistor: str, found: ThermistorWarmup) -> Iterator[Finding]:
    if found.max_a is None or found.peak_a <= found.max_a * (1 + ROUNDING):
        return
    yield Finding(
        rule="thermistor-rating",
        severity="caution",
        where=(thermistor,),
        title=sentence("{id} carries too much at switch-on", id=thermistor),
        says=sentence(
            "{id} carries up to {a} at {condition}; {limit} is the most that it may for long.",
            id=thermistor,
            a=amps(found.peak_a),
            limit=amps(found.max_a),
            condition=mains_words(summary.start.name),
        ),
        mend=sentence("Take one of more ohms, or one for {a}.", a=amps(found.peak_a)),
        condition=summary.start.name,
        value=found.peak_a,
        limit=found.max_a,
        unit="A",
        source=sentence("the rating of the thermistor"),
    )


def _hot_restart(
    case: StartupCase, first: WarmupSummary, summary: WarmupSummary, thermistor: str, found: ThermistorWarmup
) -> Iterator[Finding]:
    """A thermistor that is still warm after a dip lets the second inrush through."""
    ohm = found.restart_ohm
    if ohm is None or ohm > WARM_SHARE * found.first_ohm:
        return
    line = case.case.line_with.get(thermistor)
    for supply in line.supplies if line else ():
        again, once = summary.supplies.get(supply), first.supplies.get(supply)
        if again is None or once is None or not once.starts:
            continue
        at_limit = any(
            event.part == supply
            and event.what == "at its limit"
            and event.t_s >= (summary.start.off_at_s or 0.0)
            for event in summary.events
        )
        is_winding = isinstance(case.case.sheet.part_by_id[supply], Winding)
        if not again.starts or at_limit or (is_winding and again.peak_a > AGAIN_TIMES * once.peak_a):
            yield _still_warm(summary, thermistor, ohm, found.first_ohm, again.peak_a)
            return


def _still_warm(
    summary: WarmupSummary, thermistor: str, ohm: float, first_ohm: float, peak_a: float
) -> Finding:
    return Finding(
        rule="thermistor-rating",
        severity="caution",
        where=(thermistor,),
        title=sentence("{id} is still hot after a dip", id=thermistor),
        says=sentence(
            "After {dip} without mains {id} has {ohm} in place of {first}: the second inrush is {a}.",
            id=thermistor,
            dip=seconds(summary.start.off_for_s),
            ohm=ohms(ohm),
            first=ohms(first_ohm),
            a=amps(peak_a),
        ),
        mend=sentence("Bypass it with a relay, so that it is cold when it is needed again."),
        condition=summary.start.name,
        value=ohm,
        limit=WARM_SHARE * first_ohm,
        unit="Ω",
        source=sentence("common practice: a thermistor protects only once it has cooled"),
    )


def _too_many_farads(case: StartupCase) -> Iterator[Finding]:
    for part in case.case.kinds.get(Thermistor, ()):
        if not isinstance(part, Thermistor) or part.max_farad is None:
            continue
        line = case.case.line_with.get(part.id)
        farad = sum(_charged_through(line.island, part.id, case)) if line else 0.0
        if farad > part.max_farad * (1 + ROUNDING):
            got = format_quantity(farad, Dimension.FARADS)
            limit = format_quantity(part.max_farad, Dimension.FARADS)
            yield Finding(
                rule="thermistor-rating",
                severity="fault",
                where=(part.id,),
                title=sentence("{id} charges too much", id=part.id),
                says=sentence(
                    "{id} charges {got}; {limit} is the most that it may.", id=part.id, got=got, limit=limit
                ),
                mend=sentence("Take a thermistor for {got}, or less capacitance.", got=got),
                value=farad,
                limit=part.max_farad,
                unit="F",
                source=sentence("the rating of the thermistor"),
            )


def _charged_through(island: Island, thermistor: str, case: StartupCase) -> Iterator[float]:
    """Farads of the capacitors that only the thermistor connects to a supply."""
    kept = [branch for branch in island.branches if not isinstance(branch.law, Hot)]
    with_it = cycle_labels((branch.key, branch.u, branch.v) for branch in kept)
    others = [b for b in kept if not (isinstance(b.law, Ntc) and b.owner == thermistor)]
    without = cycle_labels((branch.key, branch.u, branch.v) for branch in others)
    fed = any(isinstance(branch.law, Source) for branch in kept)
    for branch in kept:
        part = case.case.sheet.part_by_id.get(branch.owner)
        if not (fed and isinstance(part, Capacitor)):
            continue
        if with_it[branch.key] and not without[branch.key]:
            yield part.farad


def relay_never_pulls_in_at_start(case: StartupCase) -> Iterator[Finding]:
    """Relays whose coil gets volts on the way, but never enough."""
    for summary in case.summaries:
        yield from case.fresh(_never(case, summary))


def _never(case: StartupCase, summary: WarmupSummary) -> Iterator[Finding]:
    for relay, found in summary.relays.items():
        part = case.case.sheet.part_by_id[relay]
        if not isinstance(part, Relay) or found.pulls_in_s is not None:
            continue
        if found.coil_peak_v <= _LEAST_COIL * part.coil_v:
            continue
        yield Finding(
            rule="relay-never-pulls-in",
            severity="caution",
            where=(relay,),
            title=sentence("{id} never pulls in", id=relay),
            says=sentence(
                "The coil of {id} gets {v} at most at {condition}, too few to pull in.",
                id=relay,
                v=volts(found.coil_peak_v),
                condition=mains_words(summary.start.name),
            ),
            mend=sentence("Let the supply start first, or take a relay for fewer volts."),
            condition=summary.start.name,
            value=found.coil_peak_v,
            limit=part.pull_in_v or 0.75 * part.coil_v,
            unit="V",
            source=sentence("the pull-in volts of the relay"),
        )


def relay_early(case: StartupCase) -> Iterator[Finding]:
    """Contacts that close while the inrush is still above the limit of a supply."""
    for summary in case.summaries:
        told = set()
        for event in summary.events:
            pushed = _pushed(summary, event.t_s) if event.what == "closes" else None
            if pushed is not None and event.part not in told:
                told.add(event.part)
                yield _early(summary, event.part, event.t_s, *pushed)


def _pushed(summary: WarmupSummary, t_s: float) -> tuple[str, float] | None:
    """The supply that goes to its limit because of a contact that closed, and that limit."""
    for event in summary.events:
        found = summary.supplies.get(event.part)
        if event.what == "at its limit" and 0 <= event.t_s - t_s <= EARLY_S and found and found.limit_a:
            return event.part, found.limit_a
    return None


def _early(summary: WarmupSummary, relay: str, t_s: float, supply: str, limit_a: float) -> Finding:
    return Finding(
        rule="relay-early",
        severity="fault",
        where=(relay,),
        title=sentence("{id} closes too early", id=relay),
        says=sentence(
            "{id} closes after {t} at {condition}, while the heaters still ask {supply} for more than its {limit}.",
            id=relay,
            t=seconds(t_s),
            supply=supply,
            limit=amps(limit_a),
            condition=mains_words(summary.start.name),
        ),
        mend=sentence("Let it pull in at more volts, or later."),
        condition=summary.start.name,
        value=t_s,
        unit="s",
        source=sentence("the limit of the supply"),
    )


def relay_contact(case: StartupCase) -> Iterator[Finding]:
    """Contacts that carry more than they are rated for."""
    for summary in case.summaries:
        for relay, found in summary.relays.items():
            if found.contact_a is not None and found.contact_peak_a > found.contact_a * (1 + ROUNDING):
                yield _contact(summary, relay, found, found.contact_a)


def _contact(summary: WarmupSummary, relay: str, found: RelayWarmup, limit: float) -> Finding:
    return Finding(
        rule="relay-contact",
        severity="caution",
        where=(relay,),
        title=sentence("The contact of {id} is too small", id=relay),
        says=sentence(
            "The contact of {id} carries up to {a} at {condition}; it is rated for {limit}.",
            id=relay,
            a=amps(found.contact_peak_a),
            limit=amps(limit),
            condition=mains_words(summary.start.name),
        ),
        mend=sentence("Take a relay for {a}, or let it close later.", a=amps(found.contact_peak_a)),
        condition=summary.start.name,
        value=found.contact_peak_a,
        limit=limit,
        unit="A",
        source=sentence("the rating of the contact; cold heaters wear contacts like lamps do"),
    )


def resistor_pulse(case: StartupCase) -> Iterator[Finding]:
    """Resistors that take too much heat at switch-on."""
    for summary in case.summaries:
        for resistor, found in summary.resistors.items():
            if found.rated_w is None or found.pulse_w <= PULSE_TIMES * found.rated_w:
                continue
            yield Finding(
                rule="resistor-power",
                severity="caution",
                where=(resistor,),
                title=sentence("{id} takes a pulse at switch-on", id=resistor),
                says=sentence(
                    "{id} turns {w} into heat over the first five seconds at {condition}, {times} times its {rated}.",
                    id=resistor,
                    w=watts(found.pulse_w),
                    times=format_number(found.pulse_w / found.rated_w, 2),
                    rated=watts(found.rated_w),
                    condition=mains_words(summary.start.name),
                ),
                mend=sentence("Take a wire-wound resistor for {w}.", w=watts(found.pulse_w / PULSE_TIMES)),
                condition=summary.start.name,
                value=found.pulse_w,
                limit=PULSE_TIMES * found.rated_w,
                unit="W",
                source=sentence(
                    "common practice: wire-wound resistors bear five times their rating for five seconds"
                ),
            )
