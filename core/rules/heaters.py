"""Heaters too hot or too cold: by volts, and by current where they stand in a string."""

from __future__ import annotations

from collections.abc import Iterator

from core.catalogue.types import TubeType
from core.limits import current_tolerance, volt_limits
from core.results import DEFAULT_V_PCT, Finding, HeaterPoint, Limits, OperatingPoint, sentence
from core.rules.basis import STRING_SOURCE, Case, Mend
from core.rules.remedies import current_mend, over_mend, under_mend
from core.rules.words import amps, band, mains_words, percent, volts
from core.sheet import Tube

VOLTS_SOURCE = sentence("usual practice for receiving tubes: M. J. Darby, The Radio Constructor, April 1962")


def heater_voltage(case: Case) -> Iterator[Finding]:
    """Heaters outside the volts of their type, and lamps above theirs."""
    for tube, kind in case.tubes:
        mends: dict[bool, Mend] = {}
        for point, outside in _outside(case, tube.id, by_current=False):
            worst = max(outside, key=lambda section: abs(section.deviation_pct))
            over = worst.v > worst.rated_v
            if over not in mends:
                high = volt_limits(kind)[1]
                mends[over] = over_mend(case, tube.id, high) if over else under_mend(case, tube.id)
            yield _volts_finding(tube, kind, point, worst, mends[over])
    yield from _lamps(case)


def _outside(
    case: Case, part_id: str, by_current: bool
) -> Iterator[tuple[OperatingPoint, list[HeaterPoint]]]:
    """Points at which sections are harmfully outside their limits, of those judged by current or by volts."""
    windows: list[Limits] = []
    for point in case.points:
        sections = point.heaters[part_id]
        # the sections of a part stand in the same order at every point that is solved
        windows = windows or [case.limits[one.key] for one in sections]
        bad = [
            one
            for one, window in zip(sections, windows, strict=False)
            if window.by_current is by_current and window.is_harmful(one)
        ]
        if bad:
            yield point, bad


def _volts_finding(
    tube: Tube, kind: TubeType, point: OperatingPoint, section: HeaterPoint, mend: Mend
) -> Finding:
    low, high = volt_limits(kind)
    over = section.v > section.rated_v
    limit_pct = high if over else low
    field = "high_v_pct" if over else "low_v_pct"
    title = sentence(
        "{id} above {limit}" if over else "{id} below {limit}", id=tube.id, limit=percent(limit_pct)
    )
    says = sentence(
        "The heater of {id} ({type}) gets {v} at {condition}, {off} off its {rated}; {band} is allowed.",
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
        mend=mend.says,
        remedies=mend.remedies,
        condition=point.condition.name,
        value=section.v,
        limit=section.rated_v * (1 + limit_pct / 100),
        unit="V",
        source=kind.source_of(field) or VOLTS_SOURCE,
    )


def _lamps(case: Case) -> Iterator[Finding]:
    for lamp in case.lamps:
        mend = None
        for point in case.points:
            for section in point.heaters.get(lamp.id, ()):
                if case.limits[section.key].is_harmful(section):
                    mend = mend or over_mend(case, lamp.id, DEFAULT_V_PCT)
                    yield Finding(
                        rule="heater-voltage",
                        severity="caution",
                        where=(lamp.id,),
                        title=sentence("Lamp {id} above {limit}", id=lamp.id, limit=percent(DEFAULT_V_PCT)),
                        says=sentence(
                            "Lamp {id} gets {v} at {condition}, {off} off its {rated}: it will not last.",
                            id=lamp.id,
                            v=volts(section.v),
                            condition=mains_words(point.condition.name),
                            off=percent(section.deviation_pct),
                            rated=volts(section.rated_v),
                        ),
                        mend=mend.says,
                        remedies=mend.remedies,
                        condition=point.condition.name,
                        value=section.v,
                        limit=section.rated_v * (1 + DEFAULT_V_PCT / 100),
                        unit="V",
                        source=sentence(
                            "common practice: the life of a lamp falls with the 12th power of its volts"
                        ),
                    )


def heater_current(case: Case) -> Iterator[Finding]:
    """String heaters whose current is outside their tolerance."""
    if not case.strung:
        return
    for tube, kind in case.tubes:
        mends: dict[str, Mend] = {}
        for point, outside in _outside(case, tube.id, by_current=True):
            worst = max(outside, key=lambda section: abs(section.deviation_a_pct))
            if worst.key not in mends:
                mends[worst.key] = current_mend(case, tube.id, worst.key)
            yield _amps_finding(tube, kind, point, worst, mends[worst.key])


def _amps_finding(
    tube: Tube, kind: TubeType, point: OperatingPoint, section: HeaterPoint, mend: Mend
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
            "The string sends {a} through {id} ({type}) at {condition}, {off} off its {rated};"
            " {band} is allowed in a string.",
            a=amps(section.a),
            id=tube.id,
            type=tube.type,
            condition=mains_words(point.condition.name),
            off=percent(section.deviation_a_pct),
            rated=amps(section.rated_a),
            band=band(-tolerance, tolerance),
        ),
        mend=mend.says,
        remedies=mend.remedies,
        condition=point.condition.name,
        value=section.a,
        limit=section.rated_a * (1 + side / 100),
        unit="A",
        source=kind.source_of("tolerance_a_pct") or STRING_SOURCE,
    )
