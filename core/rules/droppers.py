"""Resistors in series with heaters, volts of supplies and heavier wires: sized, said and carried as remedies."""

from __future__ import annotations

from typing import NamedTuple

from core.catalogue.wire import ohm_per_m
from core.elements.branch import Source
from core.remedy import Remedy, SetFields
from core.results import HeaterPoint, sentence
from core.rules.basis import Case, Line, Mend
from core.rules.feeds import Feed, Need, feed_of, is_evenly_loaded, own_ohm, own_parts, string_of
from core.rules.mends import leg_resistor, resistor_for, size_for_share
from core.rules.offers import fit_series, set_fields
from core.rules.words import ohms, rating, set_volts, wire_size
from core.sentences import Text
from core.sheet import DcSupply, Resistor, Winding
from core.terminals import terminal_names

SAME_CURRENT = 0.01


class Change(NamedTuple):
    """What a string needs: so many ohms more or less than those there are, for so many amperes."""

    ohm: float
    now: float
    amps: float


def set_to(supply: str, v: float) -> Mend:
    """A DC supply set to other volts."""
    shown = set_volts(v)
    digits = 4 if abs(v) >= 100 else 3
    fields = {"set_v": float(f"{v:.{digits}g}")}
    title = sentence("Set {id} to {v}", id=supply, v=shown)
    return Mend(sentence("Set {id} to {v}.", id=supply, v=shown), (set_fields(title, supply, **fields),))


def own_resistor(case: Case, line: Line, part_id: str, section: HeaterPoint) -> Mend | None:
    """The resistor for one heater that wants less than all others on its line."""
    if len(case.nominal.heaters[part_id]) != 1 or section.key in case.strung:
        return None
    there = own_ohm(case, line, section.key)
    more = (section.v + there * section.a - section.rated_v) / section.rated_a - there
    fitted = resistor_for(more, section.rated_a)
    if fitted is None or fitted.rated_w is None:
        return None
    says = sentence(
        "{ohm} {w} in series with {id} alone brings it to its rated volts at nominal mains.",
        ohm=ohms(fitted.ohm),
        w=rating(fitted.rated_w),
        id=part_id,
    )
    pin = section.pins.partition("-")[0]
    is_there = bool(own_parts(case, line, section.key))
    return Mend(
        says,
        resized(case, line, section, there + more)
        if is_there
        else fit_series(case, fitted, (f"{part_id}.{pin}",)),
    )


def resized(case: Case, line: Line, section: HeaterPoint, ohm: float) -> tuple[Remedy, ...]:
    """The one resistor in series with a heater changed so that all in series with it is ``ohm``."""
    own = own_parts(case, line, section.key)
    resistors = [one for one in own if isinstance(case.sheet.part_by_id[one], Resistor)]
    if not resistors:
        return ()
    largest = max(resistors, key=lambda one: own[one])
    wanted = ohm - sum(own.values()) + own[largest]
    fitted = resistor_for(wanted, section.rated_a)
    if fitted is None or fitted.rated_w is None:
        return ()
    title = sentence("Make {id} {ohm} {w}", id=largest, ohm=ohms(fitted.ohm), w=rating(fitted.rated_w))
    return (set_fields(title, largest, ohm=fitted.ohm, rated_w=fitted.rated_w),)


def single_supply_mend(case: Case, feed: Feed, wanted: Need, heaters: Text) -> Mend:
    """What to set or to fit at the one supply of a line."""
    branches = case.circuit.branches_by_owner[feed.supply]
    part = case.sheet.part_by_id[feed.supply]
    amps = feed.a * wanted.factor
    values: dict[str, Text] = {"id": feed.supply, "heaters": heaters, "leg": feed.leg}
    if isinstance(part, DcSupply):
        return set_to(feed.supply, wanted.v)
    shown = set_volts(wanted.v)
    if any(isinstance(branch.law, Source) and branch.law.limit_a is not None for branch in branches):
        return Mend(sentence("Set {id} to {v}.", v=shown, **values))
    even = is_evenly_loaded(case, feed.supply)
    spare_v = feed.emf - amps * feed.ohm - wanted.v
    is_single = bool(feed.leg) or not isinstance(part, Winding)
    if is_single:
        fitted = resistor_for(spare_v / amps, amps)
    elif even:
        fitted = leg_resistor(feed.emf, feed.ohm, wanted.v, amps)
    else:
        return Mend(
            sentence(
                "The halves of {id} are loaded unequally: share the heaters evenly between them first.",
                **values,
            )
        )
    if fitted is None or fitted.rated_w is None:
        return Mend(sentence("Use a supply of {v}.", v=shown, **values))
    says = sentence(
        "{ohm} {w} in series with {id} brings the heater to its rated volts at nominal mains."
        if is_single and not feed.leg
        else "{ohm} {w} in each leg of {id} brings its heaters to their rated volts at nominal mains."
        if even
        else "{ohm} {w} in the leg at {leg} brings {heaters} to rated volts at nominal mains.",
        ohm=ohms(fitted.ohm),
        w=rating(fitted.rated_w),
        **values,
    )
    legs = [f"{feed.supply}.{name}" for name in (terminal_names(part) or ())[:2]]
    if is_single and not (feed.leg and even):
        legs = [feed.leg or legs[0]]
    return Mend(says, fit_series(case, fitted, legs))


def dropper_mend(case: Case, line: Line, section: HeaterPoint) -> Mend:
    """What to change in a line fed straight from the mains, which themselves are as they are."""
    feed = feed_of(case, line, section)
    if feed is None:
        return Mend(sentence("Size the dropper so that rated current flows at nominal mains."))
    string = string_of(case, section)
    now = (feed.v - sum(one.v for one in string)) / section.a
    change = (feed.v - sum(one.rated_v for one in string)) / section.rated_a - now
    return dropper_of(case, line, section, Change(change, now, section.rated_a))


def dropper_of(case: Case, line: Line, section: HeaterPoint, change: Change) -> Mend:
    """More or fewer ohms in series with a string: its own resistor changed, or one fitted where there is none."""
    fitted = resistor_for(abs(change.ohm), change.amps)
    if fitted is None or fitted.rated_w is None or -change.ohm > change.now:
        return Mend(
            sentence(
                "The heaters of the string want more volts than the mains give, or less than a dropper can take:"
                " change what stands in the string."
            )
        )
    own = own_parts(case, line, section.key)
    remedies = resized(case, line, section, sum(own.values()) + change.ohm)
    if change.ohm > 0:
        says = sentence(
            "{ohm} {w} more in series brings rated current at nominal mains.",
            ohm=ohms(fitted.ohm),
            w=rating(fitted.rated_w),
        )
        terminal = (
            f"{line.supplies[0]}.{(terminal_names(case.sheet.part_by_id[line.supplies[0]]) or ('',))[0]}"
        )
        given = case.nominal.supplies[line.supplies[0]].a
        if not own and abs(given / section.a - 1) < SAME_CURRENT:
            remedies = fit_series(case, fitted, (terminal,))
        return Mend(says, remedies)
    says = sentence(
        "{ohm} less in series with the string brings rated current at nominal mains.", ohm=ohms(fitted.ohm)
    )
    return Mend(says, remedies)


def heavier_wires(case: Case, line: Line, share: float) -> tuple[Remedy, ...]:
    """Every wire of a line that carries current made so heavy that only ``share`` of its resistance is left."""
    wires = [
        wire
        for one in line.island.owners
        if (wire := case.sheet.wire_by_id.get(one)) is not None and not wire.is_strap
    ]
    sizes = {wire.id: size_for_share(wire, share) for wire in wires}
    if not sizes or (None, None) in sizes.values():
        return ()
    heaviest = min(sizes.values(), key=lambda size: ohm_per_m(*size))
    title = (
        sentence("{size} throughout", size=wire_size(*heaviest))
        if len(set(sizes.values())) == 1
        else sentence("Heavier wire, up to {size}", size=wire_size(*heaviest))
    )
    steps = (SetFields(one, (("awg", size[0]), ("area_mm2", size[1]))) for one, size in sizes.items())
    return (Remedy(title, tuple(steps)),)
