"""Stress between heater and cathode, and rectifiers whose cathode is their heater."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import NamedTuple

from core.catalogue.types import TubeType
from core.remedy import Lift, OwnWinding, Remedy
from core.results import Finding, OperatingPoint, Sentence, sentence
from core.rules.basis import Case, Line, Mend
from core.rules.mends import lift_window, supply_rating_a
from core.rules.offers import set_fields
from core.rules.references import is_joined_rectifier, ties
from core.rules.words import amps, apart, listed, mains_words, volts
from core.sentences import Text
from core.sheet import Elevation, Tube

UNPUBLISHED_V = 90.0
# a bias through 10 kΩ into milliohms is solved to fewer digits than the volts across heaters
BIAS_ROUNDING = 1e-6
_LIFT_DECIMALS = 1
_ROOT_TWO = math.sqrt(2)


class StressLimits(NamedTuple):
    """Highest volts of the heater above its cathode and below it, peak and DC part."""

    above_peak: float
    above_dc: float
    below_peak: float
    below_dc: float


class _Stress(NamedTuple):
    value: float
    limit: float
    field: str
    positive: bool
    published: bool


def stress_limits(kind: TubeType) -> StressLimits:
    """The published limits; infinite where one of the pair is not given, 90 V where neither is."""

    def pair(peak: float | None, dc: float | None) -> tuple[float, float]:
        if peak is None and dc is None:
            return UNPUBLISHED_V, math.inf
        return math.inf if peak is None else peak, math.inf if dc is None else dc

    above = pair(kind.hk_positive_peak_v, kind.hk_positive_dc_v)
    return StressLimits(*above, *pair(kind.hk_negative_peak_v, kind.hk_negative_dc_v))


def heater_cathode_voltage(case: Case) -> Iterator[Finding]:
    """Tubes whose cathode is too far from their heater."""
    known: dict[str, StressLimits] = {}
    mends: dict[Line, Mend] = {}
    for tube, kind in case.tubes:
        cathode_v = tube.cathode_v
        if cathode_v is None or not _is_judged(tube, kind):
            continue
        limits = known.get(tube.type)
        if limits is None:
            limits = known[tube.type] = stress_limits(kind)
        terminals = [f"{tube.id}.{pin}" for pin in kind.heater_pins]
        line = case.line_of[tube.id]
        for point in case.points:
            pins = _pins(terminals, line.has_ac, point)
            if any(_is_beyond(limits, bias - cathode_v, peak) for bias, peak in pins):
                if line not in mends:
                    mends[line] = _lift_mend(case, line)
                worst = _worst(cathode_v, kind, pins)
                yield _finding(tube, kind, point, worst, mends[line], line.has_ac)


def _is_judged(tube: Tube, kind: TubeType) -> bool:
    return tube.cathode_v is not None and kind.heating == "indirect" and not kind.cathode_joined


def _is_beyond(limits: StressLimits, dc: float, peak: float) -> bool:
    room = 1 + BIAS_ROUNDING
    return (
        dc + peak > limits.above_peak * room
        or peak - dc > limits.below_peak * room
        or dc > limits.above_dc * room
        or -dc > limits.below_dc * room
    )


def _pins(terminals: list[str], ac: bool, point: OperatingPoint) -> list[tuple[float, float]]:
    """DC volts above chassis and AC peak of each heater pin."""
    bias, nodes = point.bias, point.nodes
    return [(bias[t], _ROOT_TWO * abs(nodes[t]) if ac else 0.0) for t in terminals if t in bias]


def _worst(cathode_v: float, kind: TubeType, pins: list[tuple[float, float]]) -> _Stress:
    """The stress that passes its limit furthest."""
    limits = stress_limits(kind)
    above = kind.hk_positive_peak_v is not None or kind.hk_positive_dc_v is not None
    below = kind.hk_negative_peak_v is not None or kind.hk_negative_dc_v is not None
    stresses = []
    for bias, peak in pins:
        dc = bias - cathode_v
        stresses += [
            _Stress(dc + peak, limits.above_peak, "hk_positive_peak_v", True, above),
            _Stress(dc, limits.above_dc, "hk_positive_dc_v", True, above),
            _Stress(peak - dc, limits.below_peak, "hk_negative_peak_v", False, below),
            _Stress(-dc, limits.below_dc, "hk_negative_dc_v", False, below),
        ]
    return max(stresses, key=lambda one: one.value / one.limit if one.limit else one.value)


def _finding(
    tube: Tube, kind: TubeType, point: OperatingPoint, worst: _Stress, mend: Mend, has_ac: bool
) -> Finding:
    got, told = apart(worst.value, worst.limit)
    values: dict[str, Text] = {
        "id": tube.id,
        "type": tube.type,
        "v": _kind_of_volts(got, worst, has_ac),
        "cathode": volts(tube.cathode_v or 0.0),
        "limit": told,
        "condition": mains_words(point.condition.name),
    }
    return Finding(
        rule="heater-cathode-voltage",
        severity="fault" if worst.published else "caution",
        where=(tube.id,),
        title=sentence("Heater of {id} too far from its cathode", id=tube.id),
        says=_stress_says(worst, values),
        mend=mend.says,
        remedies=mend.remedies,
        condition=point.condition.name,
        value=worst.value,
        limit=worst.limit,
        unit="V",
        source=_stress_source(kind, worst),
    )


def _kind_of_volts(shown: str, worst: _Stress, has_ac: bool) -> Text:
    if not has_ac:
        return shown
    if worst.field.endswith("peak_v"):
        return sentence("{v} peak", v=shown)
    return sentence("{v} DC", v=shown)


def _stress_says(worst: _Stress, values: dict[str, Text]) -> Sentence:
    if worst.published:
        return sentence(
            "The heater of {id} ({type}) is {v} above its cathode, which stands at {cathode}"
            " (at {condition}); {limit} is allowed."
            if worst.positive
            else "The heater of {id} ({type}) is {v} below its cathode, which stands at {cathode}"
            " (at {condition}); {limit} is allowed.",
            **values,
        )
    return sentence(
        "The heater of {id} ({type}) is {v} above its cathode (at {condition}); no limit is"
        " published for the type, and more than {limit} is asking for trouble."
        if worst.positive
        else "The heater of {id} ({type}) is {v} below its cathode (at {condition}); no limit is"
        " published for the type, and more than {limit} is asking for trouble.",
        **values,
    )


def _stress_source(kind: TubeType, worst: _Stress) -> Text:
    if not worst.published:
        return sentence("common practice: 90 V, the lowest limit of ordinary types")
    return kind.source_of(worst.field) or sentence("the limits of the type")


def _lift_mend(case: Case, line: Line) -> Mend:
    """The lift above chassis that satisfies every tube of the line at every mains, if there is one."""
    tubes = _with_cathodes(case, line)
    bounds: list[tuple[float, float]] = []
    # nominal mains may be unsolved where low or high mains is not
    at = next(
        one for one in (case.nominal, *case.points) if any(_pins_of(line, *tube, one) for tube in tubes)
    )
    base = min(bias for one in tubes for bias, _ in _pins_of(line, *one, at))
    for point in case.points:
        for tube, kind in tubes:
            bounds.extend(_bounds(tube, kind, pin, base) for pin in _pins_of(line, tube, kind, point))
    if line.has_mains:
        high = _high_cathodes(tubes)
        return Mend(sentence("Move {ids} towards the chassis end of the string.", ids=listed(high)))
    window = lift_window(bounds)
    if window is None:
        return Mend(_no_lift(tubes))
    best = _best_of(*window)
    says = sentence(
        "Lift the heater line to between {low} and {high} above the chassis; {best} is best.",
        low=volts(window[0]),
        high=volts(window[1]),
        best=volts(best),
    )
    return Mend(says, _lifted(case, line, best - base))


def _best_of(low: float, high: float) -> float:
    """The middle of a window of lifts, in whole volts where the window is wide enough for that."""
    middle = (low + high) / 2
    return float(round(middle)) if low <= round(middle) <= high else middle


def _lifted(case: Case, line: Line, more: float) -> tuple[Remedy, ...]:
    """A lift in place of the chassis, or ``more`` volts at the lift that is there already."""
    hard, soft = ties(case, line)
    lifts = [one for one in (*hard, *soft) if isinstance(case.sheet.part_by_id.get(one), Elevation)]
    if not lifts and len(hard) + bool(soft) == 1 and all(o in case.sheet.wire_by_id for o in (*hard, *soft)):
        v = round(more, _LIFT_DECIMALS)
        return (Remedy(sentence("Lift it to {v}", v=volts(v)), (Lift((*hard, *soft), v),)),)
    lift = case.sheet.part_by_id.get(lifts[0]) if lifts else None
    if not isinstance(lift, Elevation) or len(hard) + len(soft) != 1:
        return ()
    v = round(lift.volts + more, _LIFT_DECIMALS)
    return (set_fields(sentence("Lift it to {v}", v=volts(v)), lift.id, volts=v),)


def _no_lift(tubes: list[tuple[Tube, TubeType]]) -> Sentence:
    high = _high_cathodes(tubes)
    if len(high) == len(tubes):
        return sentence(
            "No lift suits {ids}: the heater volts themselves are more than the limits allow.",
            ids=listed(high),
        )
    return sentence(
        "No single lift suits every cathode of this line: use two supplies, one of them for {ids}.",
        ids=listed(high),
    )


def _pins_of(line: Line, tube: Tube, kind: TubeType, point: OperatingPoint) -> list[tuple[float, float]]:
    return _pins([f"{tube.id}.{pin}" for pin in kind.heater_pins], line.has_ac, point)


def _with_cathodes(case: Case, line: Line) -> list[tuple[Tube, TubeType]]:
    """Tubes of a line that are judged for their cathodes."""
    found = []
    for one in line.heaters:
        kind, tube = case.tube_types.get(one), case.sheet.part_by_id[one]
        if kind is not None and isinstance(tube, Tube) and _is_judged(tube, kind):
            found.append((tube, kind))
    return found


def _bounds(tube: Tube, kind: TubeType, pin: tuple[float, float], base: float) -> tuple[float, float]:
    """Lowest and highest volts of the line that suit one heater pin (DC volts, AC peak) of a tube.

    The volts of the line are those of its lowest pin, now at ``base``.
    """
    limits, cathode_v = stress_limits(kind), tube.cathode_v or 0.0
    bias, peak = pin
    low = cathode_v - min(limits.below_peak - peak, limits.below_dc)
    high = cathode_v + min(limits.above_peak - peak, limits.above_dc)
    return low - bias + base, high - bias + base


def _high_cathodes(tubes: list[tuple[Tube, TubeType]]) -> list[str]:
    known = [(tube.cathode_v or 0.0, tube.id) for tube, _ in tubes]
    middle = (min(known)[0] + max(known)[0]) / 2
    return [one for v, one in known if v >= middle]


def shared_rectifier(case: Case) -> Iterator[Finding]:
    """Rectifiers whose heater stands at the high tension, on a line with something else."""
    for line in case.lines:
        joined = [one for one in line.heaters if is_joined_rectifier(case, one)]
        if not joined:
            continue
        others = [one for one in line.heaters if one not in joined and one in case.tube_types]
        grounded = case.is_grounded(line)
        for one in joined if others or grounded else ():
            yield _shared(case, one, others)


def _shared(case: Case, one: str, others: list[str]) -> Finding:
    values: dict[str, Text] = {"id": one, "type": _name(case, one), "others": listed(others)}
    if others:
        says = sentence(
            "The cathode of {id} ({type}) is its heater or joined to it, so the line it shares with {others}"
            " would stand at the high tension.",
            **values,
        )
    else:
        says = sentence(
            "The cathode of {id} ({type}) is its heater or joined to it, and the line is tied to the chassis:"
            " that shorts the high tension.",
            **values,
        )
    return Finding(
        rule="shared-rectifier",
        severity="fault",
        where=(one,),
        title=sentence("{id} needs a heater winding of its own", id=one),
        says=says,
        mend=sentence("Give {id} a winding of its own that is tied to nothing else.", **values),
        source=sentence("common practice"),
        remedies=_own_winding(case, one),
    )


def _own_winding(case: Case, one: str) -> tuple[Remedy, ...]:
    """A winding of its own for a heater of one section that no other is fed through."""
    kind = case.tube_types[one]
    if len(kind.sections) != 1:
        return ()
    section, ends = kind.sections[0], tuple(f"{one}.{pin}" for pin in kind.sections[0].pins)
    if any(len(case.circuit.wires_at.get(end, ())) > 1 for end in ends):
        return ()
    rated_a = supply_rating_a(section.rated_a)
    title = sentence("Fit a winding of {v}, {a}", v=volts(section.rated_v), a=amps(rated_a))
    return (Remedy(title, (OwnWinding((ends[0], ends[1]), section.rated_v, rated_a),)),)


def _name(case: Case, one: str) -> str:
    part = case.sheet.part_by_id[one]
    return part.type if isinstance(part, Tube) else one
