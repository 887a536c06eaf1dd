"""Heaters that get too much while others are still cold, or get warm too late."""

from __future__ import annotations

from collections.abc import Iterator

from core.results import Finding, sentence
from core.rules.startup_basis import StartupCase
from core.rules.words import mains_words, seconds, share, volts
from core.sheet import Lamp
from core.warmup.results import AFTER_DIP, HeaterWarmup, WarmupSummary
from core.warmup.standing import FAR_OVER as MOST_RATIO

SLOW_TIMES = 2.5
SLOW_FROM_S = 30.0


def warmup_overvoltage(case: StartupCase) -> Iterator[Finding]:
    """Heaters above one and a half times their rated volts on the way."""
    for summary in case.summaries:
        for sections in summary.heaters.values():
            for one in sections:
                if one.peak_v_ratio > MOST_RATIO:
                    yield _over(case, summary, one)


def _over(case: StartupCase, summary: WarmupSummary, one: HeaterWarmup) -> Finding:
    limit = MOST_RATIO * one.rated_v
    is_lamp = isinstance(case.case.sheet.part_by_id[one.owner], Lamp)
    return Finding(
        rule="warmup-overvoltage",
        severity="fault",
        where=(one.owner,),
        title=sentence("{id} gets too much while others are cold", id=one.owner),
        says=sentence(
            "{id} gets {v} for a moment at {condition}, {share} of its {rated}: it warms faster than the others.",
            id=one.owner,
            v=volts(one.peak_v),
            share=share(100 * one.peak_v_ratio),
            rated=volts(one.rated_v),
            condition=mains_words(summary.start.name),
        ),
        mend=sentence("Put a shunt across it that carries the surge, or a thermistor in the string.")
        if is_lamp
        else sentence("Put a thermistor in the string, or a type that warms as fast as the others."),
        condition=summary.start.name,
        value=one.peak_v,
        limit=limit,
        unit="V",
        source=sentence("common practice: half as much again at switch-on")
        if is_lamp
        else sentence(
            "Mullard Outlook vol. 12 no. 9, February 1963: up to 50 % over while a series chain warms up"
        ),
    )


def slow_warmup(case: StartupCase) -> Iterator[Finding]:
    """Tubes that are not ready in the time shown, or far later than on their own."""
    for summary in case.summaries:
        if summary.start.name == AFTER_DIP or any(not one.starts for one in summary.supplies.values()):
            continue
        for owner, sections in summary.heaters.items():
            late = [one for one in sections if one.has_cathode and _is_late(one, case)]
            if late:
                yield _slow(summary, owner, max(late, key=lambda one: one.ready_s or float("inf")))


def _is_late(one: HeaterWarmup, case: StartupCase) -> bool:
    if one.ready_s is None:
        # a heater that stays short of its volts is told of in the steady state
        known = ("heater-voltage", "heater-current", "not-heated", "half-heated")
        return not any((rule, (one.owner,)) in case.steady for rule in known)
    return one.ready_s > max(SLOW_TIMES * one.own_ready_s, SLOW_FROM_S)


def _slow(summary: WarmupSummary, owner: str, one: HeaterWarmup) -> Finding:
    limit = max(SLOW_TIMES * one.own_ready_s, SLOW_FROM_S)
    says = (
        sentence(
            "The cathode of {id} is not ready after {time} at {condition}; alone at its rated volts it takes {own}.",
            id=owner,
            time=seconds(summary.start.seconds),
            own=seconds(one.own_ready_s),
            condition=mains_words(summary.start.name),
        )
        if one.ready_s is None
        else sentence(
            "The cathode of {id} is ready after {time} at {condition}; alone at its rated volts it takes {own}.",
            id=owner,
            time=seconds(one.ready_s),
            own=seconds(one.own_ready_s),
            condition=mains_words(summary.start.name),
        )
    )
    return Finding(
        rule="slow-warmup",
        severity="caution",
        where=(owner,),
        title=sentence("{id} warms up slowly", id=owner),
        says=says,
        mend=sentence(
            "Bypass the soft start once the inrush is over, lower its resistance, or let high tension wait."
        ),
        condition=summary.start.name,
        value=one.ready_s,
        limit=limit,
        unit="s",
        source=sentence(
            "common practice: on a constant current a tube takes about twice as long as at constant volts"
        ),
    )
