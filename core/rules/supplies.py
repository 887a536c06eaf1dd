"""Supplies asked for too much, for almost too much, or for too little, and what could not be solved."""

from __future__ import annotations

import math
from collections.abc import Iterator

from core.overloads import is_overloaded
from core.preferred import nearest, next_wattage
from core.remedy import Across, Remedy
from core.results import ROUNDING, Finding, OperatingPoint, Sentence, SupplyPoint, Unsolved, sentence
from core.rules.basis import Case, Mend
from core.rules.mends import supply_rating_a
from core.rules.offers import remedy, set_fields
from core.rules.words import amps, apart, listed, mains_words, ohms, percent, rating, share, volts
from core.sentences import Text
from core.sheet import DcSupply, Winding
from core.units import Dimension, format_number, format_quantity

FULL_PCT = 100.0
MARGIN_PCT = 80.0
SHORT_PCT = 500.0
TIMES_PCT = 200.0  # from here on a load is told in multiples
LIGHT_PCT = 50.0
IDLE_PCT = 0.1  # nothing is wired to it yet: that is an open end
LIGHT_OVER_PCT = 5.0


def supply_overload(case: Case) -> Iterator[Finding]:
    """Supplies asked for more than they may give."""
    for point in case.points:
        for supply, at_work in point.supplies.items():
            load = at_work.load_pct
            if load is not None and is_overloaded(at_work):
                yield _overload(case, point, supply, at_work, load)
            elif at_work.limiting:
                yield _held_back(point, supply, at_work)


def _overload(case: Case, point: OperatingPoint, supply: str, at_work: SupplyPoint, load: float) -> Finding:
    asked = at_work.a if at_work.demand_a is None else at_work.demand_a
    limit = at_work.rated_a or 0.0
    values: dict[str, Text] = {
        "id": supply,
        "a": apart(asked, limit, Dimension.AMPS)[0],
        "limit": amps(limit),
        "load": share(load) if math.isfinite(load) else "∞",
        "times": format_number(load / 100, 1) if math.isfinite(load) else "∞",
        "condition": mains_words(point.condition.name),
    }
    part, mend = case.sheet.part_by_id[supply], _overload_mend(case, supply, load)
    if isinstance(part, DcSupply):
        says = _dc_overload(part, at_work, values)
    else:
        is_many = math.isfinite(load) and load > TIMES_PCT
        says = sentence(
            "{id} is asked for {a} at {condition}, {times} times the {limit} it may give."
            if is_many
            else "{id} is asked for {a} at {condition}, {load} of the {limit} it may give.",
            **values,
        )
    return Finding(
        rule="supply-overload",
        severity="fault",
        where=(supply,),
        title=sentence("{id} is overloaded", id=supply),
        says=says,
        mend=mend.says,
        condition=point.condition.name,
        value=asked if math.isfinite(asked) else at_work.a,
        limit=limit,
        unit="A",
        source=sentence("the rating of the supply"),
        remedies=mend.remedies,
    )


def _overload_mend(case: Case, supply: str, load: float) -> Mend:
    """A supply that gives what is asked at any mains, with a quarter in hand."""
    if load > SHORT_PCT:
        return Mend(sentence("Look for a short circuit first: that is no load for a supply of this size."))
    at_work = [point.supplies[supply] for point in case.points if supply in point.supplies]
    most = max(one.a if one.demand_a is None else one.demand_a for one in at_work)
    if not math.isfinite(most):
        return Mend(sentence("Mend the short circuit of {id} first.", id=supply))
    rated_a = supply_rating_a(most)
    says = sentence(
        "Fit a supply of {rating}, or feed some of the heaters from a second one.", rating=amps(rated_a)
    )
    return Mend(says, _of_rating(case, supply, rated_a))


def _of_rating(case: Case, supply: str, rated_a: float) -> tuple[Remedy, ...]:
    """Another winding or supply for so many amperes; none for a supply without a rating."""
    part, a = case.sheet.part_by_id[supply], amps(rated_a)
    if isinstance(part, DcSupply):
        return (set_fields(sentence("Take a {a} supply", a=a), supply, limit_a=rated_a),)
    if isinstance(part, Winding):
        return (set_fields(sentence("Take a {a} winding", a=a), supply, rated_a=rated_a),)
    return ()


def _dc_overload(part: DcSupply, at_work: SupplyPoint, values: dict[str, Text]) -> Sentence:
    given = _dc_outcome(part, at_work)
    if math.isfinite(at_work.demand_a or 0.0):
        return sentence(
            "{id} is asked for {a} at {condition}, more than its limit of {limit}: {outcome}.",
            outcome=given,
            **values,
        )
    return sentence(
        "{id}, with a limit of {limit}, is shorted at {condition}: {outcome}.", outcome=given, **values
    )


def _dc_outcome(part: DcSupply, at_work: SupplyPoint) -> Sentence:
    """What a DC supply does in overload, as it stands after a colon."""
    v, trip = volts(at_work.v), format_quantity(part.trip_s, Dimension.SECONDS)
    if part.overload == "constant-current":
        return sentence("it holds at its limit and its volts fall to {v}", v=v)
    if part.overload == "hiccup":
        retry = format_quantity(part.retry_s, Dimension.SECONDS)
        return sentence(
            "it cuts out after {trip} and tries again every {retry}, so nothing stays on",
            trip=trip,
            retry=retry,
        )
    if part.overload == "foldback":
        return sentence("it folds back to {given} at {v}", given=amps(at_work.a), v=v)
    return sentence("it switches off after {trip} and stays off until it is reset", trip=trip)


def _held_back(point: OperatingPoint, supply: str, at_work: SupplyPoint) -> Finding:
    """A supply that folds back never gets cold heaters warm, though warm ones would not overload it."""
    limit = at_work.rated_a or 0.0
    return Finding(
        rule="supply-overload",
        severity="fault",
        where=(supply,),
        title=sentence("{id} does not get its load going", id=supply),
        says=sentence(
            "At {condition} cold heaters hold {id} folded back to {given} at {v}; "
            "warm they would take {a} of the {limit} it may give.",
            id=supply,
            condition=mains_words(point.condition.name),
            given=amps(at_work.a),
            v=volts(at_work.v),
            a=amps(at_work.demand_a or 0.0),
            limit=amps(limit),
        ),
        mend=sentence("Take a supply that holds at its limit instead of folding back, or a larger one."),
        condition=point.condition.name,
        source=sentence("the overload behaviour of the supply"),
        remedies=(set_fields(sentence("Let it hold at its limit"), supply, overload="constant-current"),),
    )


def supply_margin(case: Case) -> Iterator[Finding]:
    """Supplies with less than a quarter in hand at nominal mains."""
    for supply, at_work in case.nominal.supplies.items():
        load = at_work.load_pct
        if load is None or not MARGIN_PCT * (1 + ROUNDING) < load <= FULL_PCT * (1 + ROUNDING):
            continue
        limit = (at_work.rated_a or 0.0) * MARGIN_PCT / 100
        yield Finding(
            rule="supply-margin",
            severity="caution",
            where=(supply,),
            title=sentence("{id} has little in hand", id=supply),
            says=sentence(
                "{id} gives {a}, {load} of its {rated}: {most} leaves a quarter in hand.",
                id=supply,
                a=amps(at_work.a),
                load=share(load),
                rated=amps(at_work.rated_a or 0.0),
                most=amps(limit),
            ),
            mend=sentence("A supply of {rating} would run cooler.", rating=amps(supply_rating_a(at_work.a))),
            condition=case.nominal.condition.name,
            value=at_work.a,
            limit=limit,
            unit="A",
            source=sentence("common practice: 25 % in hand"),
            remedies=_of_rating(case, supply, supply_rating_a(at_work.a)),
        )


def supply_light_load(case: Case) -> Iterator[Finding]:
    """Supplies with so little load that their volts are not to be relied on."""
    for supply, at_work in case.nominal.supplies.items():
        part = case.sheet.part_by_id[supply]
        if isinstance(part, DcSupply):
            if at_work.a < part.min_load_a * (1 - ROUNDING):
                yield _below_minimum(case, part, at_work)
        elif isinstance(part, Winding):
            load = at_work.load_pct or 0.0
            over = (at_work.v / part.rated_v - 1) * 100
            if IDLE_PCT < load < LIGHT_PCT and over > LIGHT_OVER_PCT + ROUNDING:
                yield _light_winding(case, part, at_work, over, load)


def _below_minimum(case: Case, part: DcSupply, at_work: SupplyPoint) -> Finding:
    more = part.min_load_a - at_work.a
    return Finding(
        rule="supply-light-load",
        severity="caution",
        where=(part.id,),
        title=sentence("{id} has too little load", id=part.id),
        says=sentence(
            "{id} gives {a}, but needs a load of {least} to hold its volts.",
            id=part.id,
            a=amps(at_work.a),
            least=amps(part.min_load_a),
        ),
        mend=sentence(
            "Load it with another {more}, or take a supply without a minimum load.",
            more=amps(more),
        ),
        condition=case.nominal.condition.name,
        value=at_work.a,
        limit=part.min_load_a,
        unit="A",
        source=sentence("the minimum load of the supply"),
        remedies=_bleeder(part, more),
    )


def _bleeder(part: DcSupply, more: float) -> tuple[Remedy, ...]:
    """A resistor across a supply that takes at least ``more`` amperes."""
    ohm = nearest(part.set_v / more, side="down")
    rated_w = next_wattage(2 * part.set_v**2 / ohm)
    if rated_w is None:
        return ()
    title = sentence("Fit {ohm} {w} across {id}", ohm=ohms(ohm), w=rating(rated_w), id=part.id)
    return (remedy(title, Across(f"{part.id}.+", f"{part.id}.-", ohm, rated_w)),)


def _light_winding(case: Case, part: Winding, at_work: SupplyPoint, over: float, load: float) -> Finding:
    return Finding(
        rule="supply-light-load",
        severity="note",
        where=(part.id,),
        title=sentence("{id} is lightly loaded", id=part.id),
        says=sentence(
            "{id} carries only {load} of its rated current, so it gives {v} where {rated} is rated ({over}).",
            id=part.id,
            load=share(load),
            v=volts(at_work.v),
            rated=volts(part.rated_v),
            over=percent(over),
        ),
        mend=sentence("A winding of {a} would come closer.", a=amps(supply_rating_a(at_work.a))),
        condition=case.nominal.condition.name,
        value=at_work.v,
        limit=part.rated_v * (1 + LIGHT_OVER_PCT / 100),
        unit="V",
        source=sentence("common practice: within 5 % at the winding"),
        remedies=_of_rating(case, part.id, supply_rating_a(at_work.a)),
    )


def not_solved(case: Case) -> Iterator[Finding]:
    """What has no solution, with the reason and the parts to blame."""
    seen: set[tuple[Sentence, tuple[str, ...]]] = set()
    for point in case.points:
        for miss in point.unsolved:
            if (miss.reason, miss.ids) not in seen:
                seen.add((miss.reason, miss.ids))
                yield _unsolved(case, point, miss)


def _unsolved(case: Case, point: OperatingPoint, miss: Unsolved) -> Finding:
    later = miss.reason.template.endswith("not computed yet")
    values: dict[str, Text] = {"ids": listed(miss.ids) or sentence("this part"), "reason": miss.reason}
    return Finding(
        rule="not-solved",
        severity="caution" if later else "fault",
        where=miss.ids,
        title=sentence("No figures around {ids}", **values),
        says=sentence("Nothing on the line of {ids} is solved: {reason}. Other lines are.", **values),
        mend=sentence("Judge this part by hand for now.")
        if later
        else sentence("Change the wiring or the values of {ids}.", **values),
        condition=None if point is case.nominal else point.condition.name,
        source=sentence("the circuit itself"),
    )
