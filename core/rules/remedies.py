"""Sentences for what would bring a heater to its rating, with figures where there is an exact remedy."""

from __future__ import annotations

from core.results import COLD_SHARE, HeaterPoint, Sentence, sentence
from core.rules.balance import is_unbalanced
from core.rules.basis import Case, Line, Mend
from core.rules.droppers import (
    Change,
    dropper_mend,
    dropper_of,
    heavier_wires,
    own_resistor,
    resized,
    set_to,
    single_supply_mend,
)
from core.rules.feeds import Feed, Need, feed_of, need, own_ohm, string_of, warm_section
from core.rules.mends import EXPONENT, resistor_for
from core.rules.strapping import has_halves, shorted_heater, wrong_halves
from core.rules.words import band, listed, ohms, percent, rating, set_volts, share, volts
from core.sentences import Text
from core.sheet import Tube, Winding

DROP_SHARE = 0.02
RIGHT_RATIO = 1.005
NEARLY_RIGHT = 0.02  # off its rating at nominal mains: the steps of resistors set it no closer
ALIKE = 1.06  # heaters this close in volts over rating are mended together
BALANCE_FIRST = sentence("Balance the string first: its heaters want different currents.")


def over_mend(case: Case, part_id: str, high_pct: float) -> Mend:
    """What would lower a heater that gets more volts than ``high_pct`` over its rating."""
    section = warm_section(case, part_id, over=True)
    first = _deferred(case, part_id, section) or _band_mend(case, part_id, section)
    if first is not None or section is None:
        return first or Mend(sentence("A supply with fewer volts is needed."))
    line = case.line_of[part_id]
    ratio = section.v / section.rated_v
    if ratio <= RIGHT_RATIO:
        mains = case.sheet.mains.high_pct
        worst = max(one.v / one.rated_v for point in case.points for one in point.heaters[part_id])
        held = mains * (1 + high_pct / 100 - ratio) / (worst - ratio) if worst > ratio else mains
        return Mend(
            sentence(
                "At nominal mains it is not over: mains held to {mains}, or a regulated supply, would mend it.",
                mains=percent(held),
            )
        )
    low, high, mend = case.line_mends.get(line) or _line_mend(case, line)
    if not line.has_mains and high > low * ALIKE and ratio > low * ALIKE:
        own = own_resistor(case, line, part_id, section)
        return own or Mend(
            sentence(
                "It wants fewer volts than the other heaters of its line: feed it from a supply of its own."
            )
        )
    return mend


def _deferred(case: Case, part_id: str, section: HeaterPoint | None) -> Mend | None:
    """What has to be mended before the volts or the current of a heater mean anything."""
    kind, tube = case.tube_types.get(part_id), case.sheet.part_by_id[part_id]
    if kind is not None and isinstance(tube, Tube):
        if has_halves(kind):
            strapped = next(iter(wrong_halves(case, tube, kind)), None)
            if strapped is not None:
                return Mend(strapped.mend, strapped.remedies)
        if any(shorted_heater(case, tube, kind)):
            return Mend(sentence("Mend the strap first: it shorts a part of the heater."))
    if any(one.v < COLD_SHARE * one.rated_v for one in case.nominal.heaters[part_id]) and section is not None:
        return Mend(sentence("Mend the strap first: only a part of the heater is heated."))
    line = case.line_of[part_id]
    shorted = [one for one in line.supplies if one in case.shorted]
    if shorted:
        return Mend(sentence("Mend the short circuit of {id} first.", id=listed(shorted)))
    is_strung = section is not None and section.key in case.topology.series_of
    if section is not None and is_strung and is_unbalanced(one.rated_a for one in string_of(case, section)):
        return Mend(BALANCE_FIRST)
    return None


def _band_mend(case: Case, part_id: str, section: HeaterPoint | None) -> Mend | None:
    """What to do where the heater is right at nominal mains and the mains band alone is wider than its window."""
    if section is None or abs(section.v / section.rated_v - 1) > NEARLY_RIGHT:
        return None
    at = [one for point in case.points for one in point.heaters[part_id] if one.key == section.key]
    low, high = min(one.v for one in at), max(one.v for one in at)
    limits = case.limits[section.key]
    if (
        limits.by_current
        or limits.low_is_harmless
        or high * (100 + limits.low_pct) <= low * (100 + limits.high_pct)
    ):
        return None
    return Mend(
        sentence(
            "The mains band moves the heaters by {low} to {high}, more than the {window} that is allowed: regulate the"
            " supply, or narrow the band.",
            low=percent((low / section.v - 1) * 100),
            high=percent((high / section.v - 1) * 100),
            window=band(limits.low_pct, limits.high_pct),
        )
    )


def _line_mend(case: Case, line: Line) -> tuple[float, float, Mend]:
    """Least and most volts over rated volts among the warm heaters of a line, and what would lower the line.

    One heater that wants less than all others does not count for the mend.
    """
    warm = [one for part_id in line.heaters if (one := warm_section(case, part_id, over=True)) is not None]
    warm.sort(key=lambda one: one.v / one.rated_v)
    ratios = [one.v / one.rated_v for one in warm]
    alike = [one for one in warm if one.v / one.rated_v <= ratios[0] * ALIKE]
    case.line_mends[line] = (ratios[0], ratios[-1], _lower(case, line, alike))
    return case.line_mends[line]


def _lower(case: Case, line: Line, alike: list[HeaterPoint]) -> Mend:
    """What would bring heaters that are over by about the same to their rating."""
    if line.has_mains:
        return dropper_mend(case, line, alike[-1])
    feeds = _feeds(case, line, alike)
    if not feeds:
        return Mend(_several_supplies(line, alike[-1]))
    feed = feeds[0][0]
    same = [(one, section) for one, section in feeds if one.leg == feed.leg]
    low, high = need(case, *same[0]), need(case, *same[-1])
    wanted = Need((low.v + high.v) / 2, (low.factor + high.factor) / 2)
    return single_supply_mend(case, feed, wanted, listed([section.owner for _, section in same]))


def _feeds(case: Case, line: Line, sections: list[HeaterPoint]) -> list[tuple[Feed, HeaterPoint]]:
    """Each of some heaters of a line with what feeds it; only halves of a winding differ from heater to heater."""
    first = feed_of(case, line, sections[0])
    if first is None:
        return []
    part = case.sheet.part_by_id[first.supply]
    if not isinstance(part, Winding) or not part.centre_tap:
        return [(first, section) for section in sections]
    found = ((feed_of(case, line, section), section) for section in sections)
    return [(feed, section) for feed, section in found if feed is not None]


def _several_supplies(line: Line, section: HeaterPoint) -> Sentence:
    if line.has_resistors:
        return sentence(
            "Change the supplies or the resistors of this line until {id} gets {v}.",
            id=section.owner,
            v=volts(section.rated_v),
        )
    return sentence(
        "Use supplies that give {share} of the present volts.", share=share(section.rated_v / section.v * 100)
    )


def under_mend(case: Case, part_id: str) -> Mend:
    """What would raise a heater that gets too few volts."""
    section = warm_section(case, part_id, over=False)
    first = _deferred(case, part_id, section)
    if first is not None or section is None:
        return first or Mend(sentence("A supply with more volts is needed."))
    line = case.line_of[part_id]
    feed = feed_of(case, line, section)
    choked = _choked(case, line, part_id, feed) or _band_mend(case, part_id, section)
    if choked is not None:
        return choked
    if section.v / section.rated_v >= 1 / RIGHT_RATIO:
        return Mend(
            sentence(
                "At nominal mains it is not under: steadier mains, or a regulated supply, would mend it."
            )
        )
    if line.has_mains:
        return dropper_mend(case, line, section)
    if feed is None:
        return Mend(sentence("A supply with more volts is needed."))
    return _raise(case, line, feed, section)


def _choked(case: Case, line: Line, part_id: str, feed: Feed | None) -> Mend | None:
    """The words for a supply at its limit, or for wires that take the volts."""
    if feed is None:
        return None
    if case.nominal.supplies[feed.supply].limiting:
        return Mend(sentence("{id} is at its limit: relieve it, or fit one that gives more.", id=feed.supply))
    lost = _lost_in_wires(case, line, part_id, feed.v)
    if lost <= DROP_SHARE * feed.v:
        return None
    says = sentence(
        "The wires lose {drop} on the way from {id}: heavier or shorter wire would mend it.",
        drop=volts(lost),
        id=feed.supply,
    )
    return Mend(says, heavier_wires(case, line, DROP_SHARE / 2 * feed.v / lost))


def _raise(case: Case, line: Line, feed: Feed, section: HeaterPoint) -> Mend:
    """What would raise a heater: less resistance of its own, or more volts where that does no other harm."""
    ratio = section.v / section.rated_v
    others = [
        one.owner
        for part_id in line.heaters
        if part_id != section.owner and (one := warm_section(case, part_id, over=True)) is not None
        if one.v / one.rated_v > ratio * ALIKE
    ]
    values: dict[str, Text] = {"id": feed.supply, "heater": section.owner, "others": listed(others)}
    if others:
        there = own_ohm(case, line, section.key)
        wanted = (section.v + there * section.a - section.rated_v) / section.rated_a
        fitted = resistor_for(wanted, section.rated_a) if wanted < there else None
        if fitted is not None and fitted.rated_w is not None:
            says = sentence(
                "{ohm} {w} in series with {heater}, in place of {there}, brings it to its rated volts.",
                ohm=ohms(fitted.ohm),
                w=rating(fitted.rated_w),
                there=ohms(there),
                **values,
            )
            return Mend(says, resized(case, line, section, fitted.ohm))
        return Mend(
            sentence(
                "More volts from {id} would be too many for {others}: feed {heater} from a supply of its own.",
                **values,
            )
        )
    wanted_v = need(case, feed, section).v
    part = case.sheet.part_by_id[feed.supply]
    if part.kind == "dc_supply":
        return set_to(feed.supply, wanted_v)
    says = sentence(
        "A supply with more volts is needed: about {v} at this load where the half of {id} at {leg} now gives {now}."
        if feed.leg
        else "A supply with more volts is needed: about {v} at this load where {id} now gives {now}.",
        v=set_volts(wanted_v),
        now=set_volts(feed.v),
        leg=feed.leg,
        **values,
    )
    return Mend(says)


def _lost_in_wires(case: Case, line: Line, part_id: str, supply_v: float) -> float:
    """Volts between a supply and a heater right across it, where nothing but wires lies between."""
    if line.has_resistors:
        return 0.0
    if any(section.key in case.strung for section in case.nominal.heaters[part_id]):
        return 0.0
    at = [case.nominal.nodes[pin] for pin in _pins(case, part_id)]
    return max(0.0, supply_v - max(abs(one - other) for one in at for other in at))


def _pins(case: Case, part_id: str) -> list[str]:
    kind = case.tube_types.get(part_id)
    return [f"{part_id}.{pin}" for pin in (kind.heater_pins if kind else ("1", "2"))]


def current_mend(case: Case, part_id: str, key: str) -> Mend:
    """What would bring the current of a string to the rating of one of its heaters."""
    section = case.sections.get(key)
    first = _deferred(case, part_id, section)
    if first is not None:
        return first
    line = case.line_of[part_id]
    feed = None if section is None or section.a <= 0 else feed_of(case, line, section)
    if feed is None or section is None:
        return Mend(sentence("Size the dropper so that rated current flows at nominal mains."))
    wanted, flows = section.rated_a, section.a
    if abs(flows / wanted - 1) < RIGHT_RATIO - 1:
        return Mend(sentence("At nominal mains the current is right: steadier mains would mend it."))
    string = string_of(case, section)
    rest = (feed.v - sum(one.v for one in string)) / flows
    rated = sum(one.rated_v * (wanted / one.rated_a) ** (1 / EXPONENT) for one in string)
    change = (feed.v - rated) / wanted - rest
    if line.has_mains or (-rest <= change and resistor_for(abs(change), wanted) is not None):
        return dropper_of(case, line, section, Change(change, rest, wanted))
    says = sentence(
        "The heaters want {v} in all; {id} gives {now}.",
        v=set_volts(rated),
        id=feed.supply,
        now=set_volts(feed.v),
    )
    part = case.sheet.part_by_id[feed.supply]
    return Mend(says, set_to(feed.supply, rated + rest * wanted).remedies if part.kind == "dc_supply" else ())
