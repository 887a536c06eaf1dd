"""Sentences for what would bring a heater to its rating, with figures where there is an exact remedy."""

from __future__ import annotations

from core.elements.branch import Source
from core.results import COLD_SHARE, Sentence, sentence
from core.rules.balance import is_unbalanced
from core.rules.basis import Case, Line
from core.rules.mends import EXPONENT, leg_resistor, resistor_for
from core.rules.strapping import has_halves, wrong_halves
from core.rules.words import ohms, percent, rating, volts
from core.sheet import Tube, Winding

DROP_SHARE = 0.02
RIGHT_RATIO = 1.005
ALIKE = 1.06  # heaters this close in volts over rating are mended together


def _nominal_ratio(case: Case, part_id: str) -> float:
    """Volts over rated volts of the heater's most loaded section at nominal mains; 0 where cold."""
    return max((one.v / one.rated_v for one in case.nominal.heaters.get(part_id, ())), default=0.0)


def over_mend(case: Case, part_id: str, high_pct: float) -> Sentence:
    """What would lower a heater that gets more volts than ``high_pct`` over its rating."""
    strapped = _strapping_mend(case, part_id)
    if strapped is not None:
        return strapped
    line = case.line_of[part_id]
    ratio = _nominal_ratio(case, part_id)
    if ratio <= RIGHT_RATIO:
        mains = case.sheet.mains.high_pct
        worst = max(one.v / one.rated_v for point in case.points for one in point.heaters[part_id])
        return sentence(
            "At nominal mains it is not over: mains held to {mains}, or a regulated supply, would mend it.",
            mains=percent(mains * high_pct / 100 / (worst - 1)),
        )
    if len(line.supplies) != 1:
        return sentence("Use supplies that give {share} of the present volts.", share=_share(1 / ratio))
    low, high, mend = case.line_mends.get(line) or _line_mend(case, line)
    if high > low * ALIKE and ratio > low * ALIKE:
        return _own_resistor(case, part_id, ratio) or _single_supply_mend(case, line, ratio)
    return mend


def _line_mend(case: Case, line: Line) -> tuple[float, float, Sentence]:
    """Least and most volts over rated volts among the warm heaters of a line, and what would mend the line.

    One heater that wants less than all others does not count for the mend.
    """
    ratios = sorted(ratio for one in line.heaters if (ratio := _nominal_ratio(case, one)) > COLD_SHARE)
    alike = [ratio for ratio in ratios if ratio <= ratios[0] * ALIKE]
    mend = _single_supply_mend(case, line, (alike[0] + alike[-1]) / 2)
    case.line_mends[line] = (ratios[0], ratios[-1], mend)
    return case.line_mends[line]


def _own_resistor(case: Case, part_id: str, ratio: float) -> Sentence | None:
    """The resistor for one heater that wants less than all others on its line."""
    sections = case.nominal.heaters[part_id]
    if len(sections) != 1 or sections[0].key in case.strung:
        return None
    at_rating = sections[0].rated_a
    fitted = resistor_for((ratio - 1) * sections[0].rated_v / at_rating, at_rating)
    if fitted is None or fitted.rated_w is None:
        return None
    return sentence(
        "{ohm} {w} in series with {id} alone brings it to its rated volts at nominal mains.",
        ohm=ohms(fitted.ohm),
        w=rating(fitted.rated_w),
        id=part_id,
    )


def _strapping_mend(case: Case, part_id: str) -> Sentence | None:
    """The other strapping of a heater with two halves, if that is what is wrong."""
    kind, tube = case.tube_types.get(part_id), case.sheet.part_by_id[part_id]
    if kind is None or not isinstance(tube, Tube) or not has_halves(kind):
        return None
    return next((finding.mend for finding in wrong_halves(case, tube, kind)), None)


def _share(value: float) -> str:
    return percent(value * 100).removeprefix("+")


def _single_supply_mend(case: Case, line: Line, ratio: float) -> Sentence:
    supply = line.supplies[0]
    point = case.nominal.supplies.get(supply)
    branches = case.circuit.branches_by_owner.get(supply, ())
    laws = [branch.law for branch in branches if isinstance(branch.law, Source)]
    if point is None or not laws or point.a <= 0:
        return sentence("Use a supply with {share} of the present volts.", share=_share(1 / ratio))
    if laws[0].limit_a is not None:
        return sentence("Set {id} to {v}.", id=supply, v=volts(point.v / ratio))
    source_ohm = sum(law.ohm for law in laws)
    if isinstance(case.sheet.part_by_id[supply], Winding):
        fitted = leg_resistor(point.v + point.a * source_ohm, source_ohm, point.v, point.a, ratio)
        if fitted is not None and fitted.rated_w is not None:
            return sentence(
                "{ohm} {w} in each leg of {id} brings its heaters to their rated volts at nominal mains.",
                ohm=ohms(fitted.ohm),
                w=rating(fitted.rated_w),
                id=supply,
            )
    amps = point.a / ratio**EXPONENT
    fitted = resistor_for(point.v * (1 - 1 / ratio) / amps, amps)
    if fitted is not None and fitted.rated_w is not None:
        return sentence(
            "{ohm} {w} in series with {id} brings the heater to its rated volts at nominal mains.",
            ohm=ohms(fitted.ohm),
            w=rating(fitted.rated_w),
            id=supply,
        )
    return sentence("Use a supply of {v}.", v=volts(point.v / ratio))


def under_mend(case: Case, part_id: str) -> Sentence:
    """What would raise a heater that gets too few volts."""
    strapped = _strapping_mend(case, part_id)
    if strapped is not None:
        return strapped
    line = case.line_of[part_id]
    ratio = _nominal_ratio(case, part_id)
    points = [case.nominal.supplies[one] for one in line.supplies if one in case.nominal.supplies]
    if len(points) != 1 or ratio <= 0:
        return sentence("A supply with more volts is needed.")
    if points[0].limiting:
        return sentence("{id} is at its limit: relieve it, or fit one that gives more.", id=line.supplies[0])
    lost = _lost_in_wires(case, line, part_id, points[0].v)
    if lost > DROP_SHARE * points[0].v:
        return sentence(
            "The wires lose {drop} on the way from {id}: heavier or shorter wire would mend it.",
            drop=volts(lost),
            id=line.supplies[0],
        )
    if ratio >= 1:
        return sentence(
            "At nominal mains it is not under: steadier mains, or a regulated supply, would mend it."
        )
    return sentence(
        "A supply with more volts is needed: about {v} at this load where {id} now gives {now}.",
        v=volts(points[0].v / ratio),
        id=line.supplies[0],
        now=volts(points[0].v),
    )


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


def current_mend(case: Case, part_id: str, key: str) -> Sentence:
    """What would bring the current of a string to the rating of one of its heaters."""
    group = case.topology.series_of.get(key, (key,))
    sections = case.sections
    string = [sections[one] for one in group if one in sections]
    line = case.line_of[part_id]
    points = [case.nominal.supplies[one] for one in line.supplies if one in case.nominal.supplies]
    if len(points) != 1 or not string or string[0].a <= 0:
        return sentence("Size the dropper so that rated current flows at nominal mains.")
    if is_unbalanced(one.rated_a for one in string):
        return sentence("Balance the string first: its heaters want different currents.")
    wanted, flows = sections[key].rated_a, string[0].a
    if abs(flows / wanted - 1) < RIGHT_RATIO - 1:
        return sentence("At nominal mains the current is right: steadier mains would mend it.")
    heated = sum(one.v for one in string)
    rest = (points[0].v - heated) / flows
    rated = sum(one.rated_v * (wanted / one.rated_a) ** (1 / EXPONENT) for one in string)
    change = (points[0].v - rated) / wanted - rest
    fitted = resistor_for(abs(change), wanted)
    if fitted is None or fitted.rated_w is None or (change < 0 and -change > rest):
        return sentence(
            "The heaters want {v} in all; {id} gives {now}.",
            v=volts(rated),
            id=line.supplies[0],
            now=volts(points[0].v),
        )
    if change > 0:
        return sentence(
            "{ohm} {w} more in series brings rated current at nominal mains.",
            ohm=ohms(fitted.ohm),
            w=rating(fitted.rated_w),
        )
    return sentence(
        "{ohm} less in series with the string brings rated current at nominal mains.", ohm=ohms(fitted.ohm)
    )
