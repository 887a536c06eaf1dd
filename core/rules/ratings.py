"""Fuses, thermistors, balance controls and relay coils against what they are made for."""

from __future__ import annotations

from collections.abc import Iterator

from core.elements.branch import Coil
from core.overloads import is_blown
from core.preferred import next_wattage
from core.results import ROUNDING, Finding, OperatingPoint, sentence
from core.rules.basis import Case
from core.rules.words import apart, mains_words, rating, volts, watts
from core.sheet import Balance, Fuse, Relay, Thermistor
from core.units import Dimension

FUSE_SHARE = 0.8
BALANCE_W = 1.0
_LEAST_SHARE = 0.01  # of its coil volts: with less than that a coil is simply off


def fuse_overload(case: Case) -> Iterator[Finding]:
    """Fuses that carry more than their rating, or almost as much."""
    for part in case.kinds.get(Fuse, ()):
        if not isinstance(part, Fuse):
            continue
        found = [(point, point.branches[part.id].a) for point in case.points if part.id in point.branches]
        over = [(point, a) for point, a in found if is_blown(part, point.branches[part.id])]
        for point, a in over:
            yield _fuse(part, point, a, part.rated_a, True)
        if found and not over and found[0][1] > part.rated_a * FUSE_SHARE * (1 + ROUNDING):
            yield _fuse(part, *found[0], part.rated_a * FUSE_SHARE, False)


def _fuse(part: Fuse, point: OperatingPoint, a: float, limit: float, fault: bool) -> Finding:
    got, told = apart(a, part.rated_a, Dimension.AMPS)
    says = sentence(
        "{id} carries {a} at {condition}, more than the {limit} it is made for: it will blow sooner or later."
        if fault
        else "{id} carries {a} at {condition}, more than four fifths of its {limit}: it ages fast.",
        id=part.id,
        a=got,
        limit=told,
        condition=mains_words(point.condition.name),
    )
    wanted, _ = apart(a / FUSE_SHARE, part.rated_a, Dimension.AMPS)
    return Finding(
        rule="fuse-overload",
        severity="fault" if fault else "caution",
        where=(part.id,),
        title=sentence("{id} is too small" if fault else "{id} runs near its rating", id=part.id),
        says=says,
        mend=sentence("Fit the next fuse of at least {wanted}, or share the load.", wanted=wanted),
        condition=point.condition.name,
        value=a,
        limit=limit,
        unit="A",
        source=sentence(
            "common practice: a fuse is rated for its full current (IEC 60127), and runs cool at four fifths of it"
        ),
    )


def thermistor_rating(case: Case) -> Iterator[Finding]:
    """Thermistors that carry more than they may for ever."""
    for part in case.kinds.get(Thermistor, ()):
        if not isinstance(part, Thermistor):
            continue
        known = case.catalogue.thermistor(part.type) if part.type else None
        limit = part.max_a or (known.max_a if known else None)
        for point in case.points if limit else ():
            at_work = point.branches.get(part.id)
            if limit is None or at_work is None or at_work.a <= limit * (1 + ROUNDING):
                continue
            got, told = apart(at_work.a, limit, Dimension.AMPS)
            yield Finding(
                rule="thermistor-rating",
                severity="fault",
                where=(part.id,),
                title=sentence("{id} carries too much", id=part.id),
                says=sentence(
                    "{id} carries {a} at {condition}; {limit} is the most that it may.",
                    id=part.id,
                    a=got,
                    limit=told,
                    condition=mains_words(point.condition.name),
                ),
                mend=sentence("Take a thermistor for {a} or more.", a=got),
                condition=point.condition.name,
                value=at_work.a,
                limit=limit,
                unit="A",
                source=sentence("the rating of the thermistor"),
            )


def balance_power(case: Case) -> Iterator[Finding]:
    """Hum-balance controls that get hot."""
    for part in case.kinds.get(Balance, ()):
        if not isinstance(part, Balance):
            continue
        keys = (f"{part.id}:1-w", f"{part.id}:w-2")
        found = [(sum(p.branches[key].w for key in keys if key in p.branches), p) for p in case.points]
        w, point = max(found, key=lambda pair: pair[0])
        if w <= BALANCE_W * (1 + ROUNDING):
            continue
        got, told = apart(w, BALANCE_W, Dimension.WATTS)
        fit = next_wattage(2 * w)
        yield Finding(
            rule="resistor-power",
            severity="caution",
            where=(part.id,),
            title=sentence("{id} runs hot", id=part.id),
            says=sentence(
                "{id} turns {w} into heat at {condition}; more than {limit} is much for such a control.",
                id=part.id,
                w=got,
                limit=told,
                condition=mains_words(point.condition.name),
            ),
            mend=sentence(
                "Take a control of more ohms, or one rated for {w}.", w=rating(fit) if fit else watts(2 * w)
            ),
            condition=point.condition.name,
            value=w,
            limit=BALANCE_W,
            unit="W",
            source=sentence("common practice: balance controls are small"),
        )


def relay_never_pulls_in(case: Case) -> Iterator[Finding]:
    """Relays whose coil gets volts, but too few to pull in."""
    for part in case.kinds.get(Relay, ()):
        coil = case.nominal.branches.get(part.id)
        law = case.circuit.branches[part.id].law
        if not isinstance(part, Relay) or not isinstance(law, Coil) or coil is None or coil.pulled_in:
            continue
        if coil.v < _LEAST_SHARE * part.coil_v:
            continue
        got, told = apart(coil.v, law.pull_in_v)
        yield Finding(
            rule="relay-never-pulls-in",
            severity="caution",
            where=(part.id,),
            title=sentence("{id} never pulls in", id=part.id),
            says=sentence(
                "The coil of {id} gets {v}, less than the {limit} at which it pulls in.",
                id=part.id,
                v=got,
                limit=told,
            ),
            mend=sentence("Give the coil its {v}, or take a relay for fewer volts.", v=volts(part.coil_v)),
            condition=case.nominal.condition.name,
            value=coil.v,
            limit=law.pull_in_v,
            unit="V",
            source=sentence("the pull-in volts of the relay"),
        )
