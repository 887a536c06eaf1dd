"""Whether the amplifier starts, in one sentence, and what is to be known about a run besides."""

from __future__ import annotations

from core.dimension import Dimension
from core.rules.words import amps, listed
from core.sentences import Sentence, sentence
from core.units import format_quantity
from core.warmup.results import Outcome, SupplyWarmup, WarmupSummary


def verdict(summary: WarmupSummary, end_s: float) -> Sentence:
    """How a run ends: it starts, or which supply does not and why, or which tubes are not ready by its end."""
    if not summary.heaters:
        return sentence("There is no heater to warm up.")
    if not summary.supplies:
        return sentence("No supply feeds the heaters.")
    failing = [(owner, supply) for owner, supply in summary.supplies.items() if not supply.starts]
    if failing:
        said = _failure(*failing[0], end_s)
        if len(failing) == 1:
            return said
        if len(failing) == 2:
            return sentence("{said} One more supply does not start.", said=said)
        return sentence("{said} {count} more supplies do not start.", said=said, count=len(failing) - 1)
    return _readiness(summary, end_s)


def _failure(owner: str, supply: SupplyWarmup, end_s: float) -> Sentence:
    """Why a supply does not start."""
    outcome: Outcome = supply.outcome
    if outcome == "retries":
        return sentence(
            "{id} does not start: it cuts out and tries again, {count} times in {time}.",
            id=owner,
            count=supply.restarts,
            time=_time(end_s),
        )
    if outcome == "latched":
        return sentence("{id} does not start: it has latched off.", id=owner)
    if outcome == "slow":
        return sentence("{id} is still at its limit after {time}.", id=owner, time=_time(end_s))
    return sentence(
        "{id} does not start: it stays at its limit, at {amps}.", id=owner, amps=amps(supply.end_a)
    )


def _readiness(summary: WarmupSummary, end_s: float) -> Sentence:
    if not any(one.has_cathode for sections in summary.heaters.values() for one in sections):
        return sentence("It starts.")
    if summary.ready_s is not None:
        return sentence("It starts; the last tube is ready after {time}.", time=_time(summary.ready_s))
    waiting = [
        owner
        for owner, sections in summary.heaters.items()
        if any(one.has_cathode and one.ready_s is None for one in sections)
    ]
    if len(waiting) == 1:
        return sentence("It starts, but {id} is not ready after {time}.", id=waiting[0], time=_time(end_s))
    return sentence(
        "It starts, but {ids} are not ready after {time}.", ids=listed(waiting), time=_time(end_s)
    )


def remarks(summary: WarmupSummary) -> tuple[Sentence, ...]:
    """What limits the answer: lines whose run was ended early, parts of the circuit without an answer."""
    early = [
        sentence(
            "At {time}: {reason} ({ids}).",
            time=_time(bound.t_s),
            reason=bound.reason,
            ids=", ".join(bound.ids),
        )
        for bound in summary.bounds
    ]
    unknown = [
        sentence("Not computed: {reason} ({ids}).", reason=one.reason, ids=", ".join(one.ids))
        for one in summary.unsolved
    ]
    return (*early, *unknown)


def _time(seconds: float) -> str:
    return format_quantity(seconds, Dimension.SECONDS)
