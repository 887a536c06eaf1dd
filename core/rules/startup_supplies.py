"""Supplies that do not start, or not yet; regulators that get hot on the way; runs that were ended early."""

from __future__ import annotations

import math
from collections.abc import Iterator

from core.results import Finding, Sentence, sentence
from core.rules.mends import supply_rating_a
from core.rules.startup_basis import StartupCase
from core.rules.words import amps, listed, mains_words, seconds, volts, watts
from core.sentences import Text
from core.sheet import DcSupply
from core.warmup.results import CHATTERS, SupplyWarmup, WarmupSummary

UNCERTAIN = 1.5
"""Overload protection acts somewhere between 105 and 150 % of the rating: below that a start is possible."""
HOT_TIMES = 3.0
_SOURCE = sentence("the limit of the supply and its behaviour in overload; cold heaters by their cold ratio")
_UNCERTAIN_SOURCE = sentence(
    "common practice: overload protection acts between 105 and 150 % of the rating (from memory)"
)


def supply_will_not_start(case: StartupCase) -> Iterator[Finding]:
    """Supplies that never get to their volts, or only after the time shown."""
    for summary in case.summaries:
        for supply, found in summary.supplies.items():
            if not found.starts:
                yield _not_started(case, summary, supply, found)


def _not_started(case: StartupCase, summary: WarmupSummary, supply: str, found: SupplyWarmup) -> Finding:
    limit = found.limit_a or 0.0
    part = case.case.sheet.part_by_id[supply]
    trips = isinstance(part, DcSupply) and part.overload in ("hiccup", "latch-off")
    uncertain = trips and found.asked_a < UNCERTAIN * limit
    sure = found.decided and found.outcome != "slow" and not uncertain
    finite = math.isfinite(found.asked_a)
    return Finding(
        rule="supply-will-not-start",
        severity="fault" if sure else "caution",
        where=(supply,),
        title=_title(supply, found, uncertain),
        says=_says(summary, supply, found, uncertain),
        mend=_mend(found, trips),
        condition=summary.start.name,
        value=found.asked_a if finite else None,
        limit=limit,
        unit="A",
        source=_UNCERTAIN_SOURCE if uncertain else _SOURCE,
    )


def _title(supply: str, found: SupplyWarmup, uncertain: bool) -> Sentence:
    if found.outcome == "slow":
        return sentence("{id} starts late", id=supply)
    if uncertain or not found.decided:
        return sentence("{id} may not start", id=supply)
    return sentence("{id} does not start", id=supply)


def _says(summary: WarmupSummary, supply: str, found: SupplyWarmup, uncertain: bool) -> Sentence:
    values: dict[str, Text] = {
        "id": supply,
        "asked": amps(found.asked_a) if math.isfinite(found.asked_a) else "∞",
        "limit": amps(found.limit_a or 0.0),
        "condition": mains_words(summary.start.name),
        "time": seconds(summary.start.seconds),
        "times": str(found.restarts),
        "v": volts(found.end_v),
        "a": amps(found.end_a),
    }
    if found.outcome == "slow":
        later = seconds(found.regulates_s or summary.start.seconds)
        return sentence(
            "The cold heaters ask {id} for {asked}, and it holds at its limit of {limit}: "
            "only after {later} does it reach its volts at {condition}.",
            later=later,
            **values,
        )
    if uncertain:
        return sentence(
            "The cold heaters ask {id} for {asked} at {condition}, its limit is {limit}: "
            "whether its protection lets that pass is not known.",
            **values,
        )
    if found.outcome == "retries":
        return sentence(
            "The cold heaters ask {id} for {asked}, its limit is {limit}: at {condition} it cuts out and tries "
            "again, {times} times in {time}, and the heaters never get warm enough.",
            **values,
        )
    if found.outcome == "latched":
        return sentence(
            "The cold heaters ask {id} for {asked}, its limit is {limit}: at {condition} it switches itself off "
            "and stays off.",
            **values,
        )
    return sentence(
        "The cold heaters ask {id} for {asked}; at {condition} it stays at {v} and {a} for ever.", **values
    )


def _mend(found: SupplyWarmup, trips: bool) -> Sentence:
    wanted = amps(supply_rating_a(found.asked_a)) if math.isfinite(found.asked_a) else ""
    if not wanted:
        return sentence("Mend the short circuit first.")
    if found.outcome == "slow":
        return sentence("Take a supply for more than {a} if that is too long to wait.", a=amps(found.peak_a))
    if trips:
        return sentence(
            "Add a soft start, take a supply that holds at its limit in place of this one, or one for {a}.",
            a=wanted,
        )
    return sentence("Add a soft start, or take a supply that holds its current at any volts.")


def regulator_heat(case: StartupCase) -> Iterator[Finding]:
    """Linear regulators that turn far more into heat while the heaters are cold than later."""
    for summary in case.summaries:
        for supply, found in summary.supplies.items():
            most, later = found.peak_loss_w, found.end_loss_w
            if most is None or later is None or most <= HOT_TIMES * max(later, 0.1):
                continue
            yield Finding(
                rule="regulator-heat",
                severity="caution",
                where=(supply,),
                title=sentence("{id} gets hot at switch-on", id=supply),
                says=sentence(
                    "While the heaters are cold the regulator of {id} turns {most} into heat at {condition}, "
                    "and {later} later.",
                    id=supply,
                    most=watts(most),
                    later=watts(later),
                    condition=mains_words(summary.start.name),
                ),
                mend=sentence(
                    "Give it a heat sink for {most}, fewer volts at its input, or a soft start.",
                    most=watts(most),
                ),
                condition=summary.start.name,
                value=most,
                limit=HOT_TIMES * max(later, 0.1),
                unit="W",
                source=sentence("common practice: heat sinks are chosen for the steady state"),
            )


def ended_early(case: StartupCase) -> Iterator[Finding]:
    """Runs that met their bound, with what switched all the time."""
    for summary in case.summaries:
        for bound in summary.bounds:
            yield Finding(
                rule="not-solved",
                severity="fault",
                where=bound.ids,
                title=sentence("{ids} switches without end", ids=listed(bound.ids))
                if bound.reason == CHATTERS
                else sentence("The warm-up around {ids} ends early", ids=listed(bound.ids)),
                says=sentence(
                    "The warm-up at {condition} was ended after {t}: {reason}.",
                    condition=mains_words(summary.start.name),
                    t=seconds(bound.t_s),
                    reason=bound.reason,
                ),
                mend=sentence("Change the wiring or the values of {ids}.", ids=listed(bound.ids)),
                condition=summary.start.name,
                value=bound.t_s,
                limit=summary.start.seconds,
                unit="s",
                source=sentence("the circuit itself"),
            )
