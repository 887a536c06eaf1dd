"""Heaters too hot or too cold: by volts, and by current where they stand in a string."""

from __future__ import annotations

from collections.abc import Iterator

from core.catalogue.types import TubeType
from core.results import Finding, HeaterPoint, OperatingPoint, Sentence, sentence
from core.rules.basis import COLD_SHARE, ROUNDING, STRING_SOURCE, STRING_TOLERANCE_PCT, Case
from core.rules.remedies import current_mend, over_mend, under_mend
from core.rules.words import amps, band, mains_words, percent, volts
from core.sheet import Tube

DEFAULT_PCT = 10.0
VOLTS_SOURCE = "usual practice for receiving tubes: M. J. Darby, The Radio Constructor, April 1962"


def volt_limits(kind: TubeType) -> tuple[float, float]:
    """Lowest and highest working volts of a type, in per cent off its rating."""
    low = -DEFAULT_PCT if kind.low_v_pct is None else kind.low_v_pct
    high = DEFAULT_PCT if kind.high_v_pct is None else kind.high_v_pct
    return low, high


def current_tolerance(kind: TubeType) -> float:
    """By how many per cent the current of a string heater may be off."""
    return STRING_TOLERANCE_PCT if kind.tolerance_a_pct is None else kind.tolerance_a_pct


def heater_voltage(case: Case) -> Iterator[Finding]:
    """Heaters outside the volts of their type, and lamps above theirs."""
    strung, lit = case.strung, case.lamp_lit
    for tube, kind in case.tubes:
        low, high = volt_limits(kind)
        least, most = 1 + low / 100 - ROUNDING, 1 + high / 100 + ROUNDING
        by_current = kind.rating_class != "voltage"
        mends: dict[bool, Sentence] = {}
        for point in case.points:
            worst = None
            for section in point.heaters[tube.id]:
                ratio = section.v / section.rated_v
                if least <= ratio <= most or ratio < COLD_SHARE:
                    continue
                if by_current and section.key in strung:
                    continue
                if ratio < 1 and section.key in lit:
                    continue  # a lamp across the tap takes its share of the current, as it is meant to
                if worst is None or abs(ratio - 1) > abs(worst.v / worst.rated_v - 1):
                    worst = section
            if worst is not None:
                over = worst.v > worst.rated_v
                if over not in mends:
                    mends[over] = over_mend(case, tube.id, high) if over else under_mend(case, tube.id)
                yield _volts_finding(tube, kind, point, worst, mends[over])
    yield from _lamps(case)


def _volts_finding(
    tube: Tube, kind: TubeType, point: OperatingPoint, section: HeaterPoint, mend: Sentence
) -> Finding:
    low, high = volt_limits(kind)
    over = section.v > section.rated_v
    limit_pct = high if over else low
    field = "high_v_pct" if over else "low_v_pct"
    title = sentence(
        "{id} above {limit}" if over else "{id} below {limit}", id=tube.id, limit=percent(limit_pct)
    )
    says = sentence(
        "The heater of {id} ({type}) gets {v} at {condition}, {off} of its {rated}; {band} is allowed.",
        id=tube.id,
        type=tube.type,
        v=volts(section.v),
        condition=mains_words(point.condition.name),
        off=percent(section.deviation_pct),
        rated=volts(section.rated_v),
        band=band(low, high),
    )
    return Finding(
        rule="heater-voltage",
        severity="fault",
        where=(tube.id,),
        title=title,
        says=says,
        mend=mend,
        condition=point.condition.name,
        value=section.v,
        limit=section.rated_v * (1 + limit_pct / 100),
        unit="V",
        source=kind.source_of(field) or VOLTS_SOURCE,
    )


def _lamps(case: Case) -> Iterator[Finding]:
    for lamp in case.lamps:
        for point in case.points:
            for section in point.heaters.get(lamp.id, ()):
                if section.v > section.rated_v * (1 + DEFAULT_PCT / 100 + ROUNDING):
                    yield Finding(
                        rule="heater-voltage",
                        severity="caution",
                        where=(lamp.id,),
                        title=sentence("Lamp {id} above {limit}", id=lamp.id, limit=percent(DEFAULT_PCT)),
                        says=sentence(
                            "Lamp {id} gets {v} at {condition}, {off} of its {rated}: it will not last.",
                            id=lamp.id,
                            v=volts(section.v),
                            condition=mains_words(point.condition.name),
                            off=percent(section.deviation_pct),
                            rated=volts(section.rated_v),
                        ),
                        mend=over_mend(case, lamp.id, DEFAULT_PCT),
                        condition=point.condition.name,
                        value=section.v,
                        limit=section.rated_v * (1 + DEFAULT_PCT / 100),
                        unit="V",
                        source="common practice: the life of a lamp falls with the 12th power of its volts",
                    )


def heater_current(case: Case) -> Iterator[Finding]:
    """String heaters whose current is outside their tolerance."""
    strung = case.strung
    if not strung:
        return
    for tube, kind in case.tubes:
        if kind.rating_class == "voltage":
            continue
        tolerance = current_tolerance(kind) / 100
        mends: dict[str, Sentence] = {}
        for point in case.points:
            outside = [
                section
                for section in point.heaters[tube.id]
                if abs(section.a / section.rated_a - 1) > tolerance + ROUNDING
                and section.key in strung
                and section.v >= COLD_SHARE * section.rated_v
            ]
            if outside:
                worst = max(outside, key=lambda section: abs(section.a / section.rated_a - 1))
                if worst.key not in mends:
                    mends[worst.key] = current_mend(case, tube.id, worst.key)
                yield _amps_finding(tube, kind, point, worst, mends[worst.key])


def _amps_finding(
    tube: Tube, kind: TubeType, point: OperatingPoint, section: HeaterPoint, mend: Sentence
) -> Finding:
    tolerance = current_tolerance(kind)
    over = section.a > section.rated_a
    side = tolerance if over else -tolerance
    return Finding(
        rule="heater-current",
        severity="fault",
        where=(tube.id,),
        title=sentence(
            "String current of {id} above {limit}" if over else "String current of {id} below {limit}",
            id=tube.id,
            limit=percent(side),
        ),
        says=sentence(
            "The string sends {a} through {id} ({type}) at {condition}, {off} of its {rated};"
            " {band} is allowed in a string.",
            a=amps(section.a),
            id=tube.id,
            type=tube.type,
            condition=mains_words(point.condition.name),
            off=percent(section.deviation_a_pct),
            rated=amps(section.rated_a),
            band=band(-tolerance, tolerance),
        ),
        mend=mend,
        condition=point.condition.name,
        value=section.a,
        limit=section.rated_a * (1 + side / 100),
        unit="A",
        source=kind.source_of("tolerance_a_pct") or STRING_SOURCE,
    )
