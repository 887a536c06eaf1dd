"""Fuses, thermistors, balance controls and relay coils against what they are made for."""

from __future__ import annotations

import math
from collections.abc import Iterator

from core.elements.branch import Coil
from core.overloads import is_blown
from core.preferred import nearest, next_wattage
from core.results import ROUNDING, Finding, OperatingPoint, sentence
from core.rules.basis import Case, Mend
from core.rules.mends import next_fuse_a, supply_rating_a
from core.rules.offers import set_fields
from core.rules.words import amps, apart, mains_words, ohms, rating, volts, watts
from core.sheet import Balance, Fuse, Relay, Thermistor
from core.units import Dimension

FUSE_SHARE = 0.8
BALANCE_W = 1.0
MOST_COIL_SHARE = 1.2  # common practice: a coil bears a fifth more than its volts
_LEAST_SHARE = 0.01  # of its coil volts: with less than that a coil is simply off


def fuse_overload(case: Case) -> Iterator[Finding]:
    """Fuses that carry more than their rating, or almost as much."""
    for part in case.kinds.get(Fuse, ()):
        if not isinstance(part, Fuse):
            continue
        found = [(point, point.branches[part.id].a) for point in case.points if part.id in point.branches]
        over = [(point, a) for point, a in found if is_blown(part, point.branches[part.id])]
        most = max((a for _, a in found), default=0.0)
        for point, a in over:
            yield _fuse(part, point, a, part.rated_a, most)
        if found and not over and found[0][1] > part.rated_a * FUSE_SHARE * (1 + ROUNDING):
            yield _fuse(part, *found[0], part.rated_a * FUSE_SHARE, most, fault=False)


def _fuse(
    part: Fuse, point: OperatingPoint, a: float, limit: float, most: float, fault: bool = True
) -> Finding:
    """The finding for a fuse that carries ``a`` here and ``most`` at some other mains."""
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
    wanted, _ = apart(most / FUSE_SHARE, part.rated_a, Dimension.AMPS)
    mend = _larger_fuse(part, most / FUSE_SHARE, wanted)
    return Finding(
        rule="fuse-overload",
        severity="fault" if fault else "caution",
        where=(part.id,),
        title=sentence("{id} is too small" if fault else "{id} runs near its rating", id=part.id),
        says=says,
        mend=mend.says,
        condition=point.condition.name,
        value=a,
        limit=limit,
        unit="A",
        source=sentence(
            "common practice: a fuse is rated for its full current (IEC 60127), and runs cool at four fifths of it"
        ),
        remedies=mend.remedies,
    )


def _larger_fuse(part: Fuse, wanted_a: float, wanted: str) -> Mend:
    rated_a = next_fuse_a(wanted_a)
    if rated_a is None:
        return Mend(sentence("Fit the next fuse of at least {wanted}, or share the load.", wanted=wanted))
    fuse = amps(rated_a)
    says = sentence(
        "Fit the next fuse of at least {wanted}, which is {fuse}, or share the load.",
        wanted=wanted,
        fuse=fuse,
    )
    title = sentence("Fit {fuse}", fuse=fuse)
    return Mend(says, (set_fields(title, part.id, rated_a=rated_a, cold_ohm=None, melting_i2t_a2s=None),))


def thermistor_rating(case: Case) -> Iterator[Finding]:
    """Thermistors that carry more than they may for ever."""
    for part in case.kinds.get(Thermistor, ()):
        if not isinstance(part, Thermistor):
            continue
        known = case.catalogue.thermistor(part.type) if part.type else None
        limit = part.max_a or (known.max_a if known else None)
        carried = [(point, point.branches[part.id]) for point in case.points if part.id in point.branches]
        mend = None
        for point, at_work in carried if limit else ():
            if limit is None or at_work.a <= limit * (1 + ROUNDING):
                continue
            mend = mend or _larger_thermistor(case, part, max(branch.a for _, branch in carried))
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
                mend=mend.says,
                condition=point.condition.name,
                value=at_work.a,
                limit=limit,
                unit="A",
                source=sentence("the rating of the thermistor"),
                remedies=mend.remedies,
            )


def _larger_thermistor(case: Case, part: Thermistor, most_a: float) -> Mend:
    """The type of the catalogue that bears the current and is nearest in ohms, or the same one rated for more."""
    known = case.catalogue.thermistor(part.type) if part.type else None
    says = sentence("Take a thermistor for {a} or more.", a=amps(most_a))
    r25_ohm = part.r25_ohm or (known.r25_ohm if known else None)
    if r25_ohm is None:
        return Mend(says)
    if part.type is None:
        rated_a = supply_rating_a(most_a)
        title = sentence("Take one for {a}", a=amps(rated_a))
        return Mend(says, (set_fields(title, part.id, max_a=rated_a),))
    fit = [one for one in case.catalogue.thermistors.values() if one.max_a >= most_a]
    fit.sort(key=lambda one: abs(math.log(one.r25_ohm / r25_ohm)))
    own = dict.fromkeys(("r25_ohm", "beta_k", "dissipation_w_per_k", "tau_s", "max_a"))
    return Mend(
        says,
        tuple(
            set_fields(sentence("Take {type}", type=one.designation), part.id, type=one.designation, **own)
            for one in fit[:1]
        ),
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
        mend = _larger_control(part, w)
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
            mend=mend.says,
            condition=point.condition.name,
            value=w,
            limit=BALANCE_W,
            unit="W",
            source=sentence("common practice: balance controls are small"),
            remedies=mend.remedies,
        )


def _larger_control(part: Balance, w: float) -> Mend:
    """A control of so many ohms more that the same volts make less than a watt in it."""
    fit = next_wattage(2 * w)
    ohm = nearest(part.ohm * w / BALANCE_W * (1 + ROUNDING), "E3", "up")
    says = sentence(
        "Take a control of {ohm}, or one rated for {w}.",
        ohm=ohms(ohm),
        w=rating(fit) if fit else watts(2 * w),
    )
    return Mend(says, (set_fields(sentence("Take {ohm}", ohm=ohms(ohm)), part.id, ohm=ohm),))


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
        mend = _weaker_coil(case, part, coil.v)
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
            mend=mend.says,
            condition=case.nominal.condition.name,
            value=coil.v,
            limit=law.pull_in_v,
            unit="V",
            source=sentence("the pull-in volts of the relay"),
            remedies=mend.remedies,
        )


def _weaker_coil(case: Case, part: Relay, v: float) -> Mend:
    """The relay of the catalogue whose coil volts are nearest to what there is, of those that pull in at it."""
    fit = [
        one for one in case.catalogue.relays.values() if one.pull_in_v <= v <= one.coil_v * MOST_COIL_SHARE
    ]
    if not fit:
        return Mend(sentence("Give the coil its {v}, or take a relay for fewer volts.", v=volts(part.coil_v)))
    best = min(fit, key=lambda one: abs(one.coil_v - v))
    says = sentence(
        "Give the coil its {v}, or take a relay for {less}, such as {type}.",
        v=volts(part.coil_v),
        less=volts(best.coil_v),
        type=best.designation,
    )
    figures = {name: getattr(best, name) for name in ("coil_v", "coil_ohm", "pull_in_v", "drop_out_v")}
    title = sentence("Take {type}", type=best.designation)
    return Mend(says, (set_fields(title, part.id, **figures),))
