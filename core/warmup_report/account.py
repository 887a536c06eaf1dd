"""Switching on as lines to read: whether it starts, how hard on its heaters, what happened when, what is wrong."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from core.dimension import Dimension
from core.report import finding_lines
from core.results import NOMINAL
from core.units import THIN_SPACE, format_quantity
from core.warmup.results import Event, HeaterWarmup, SupplyWarmup, WarmupSummary
from core.warmup_report.verdict import remarks, verdict

if TYPE_CHECKING:
    from core.switch_on import SwitchOn

MOST_EVENTS = 20
"""So many events are written out; of the rest only the number is told."""

_ENDS = {
    "starts": "starts",
    "slow": "still at its limit",
    "limits": "stays at its limit",
    "retries": "cuts out and tries again",
    "latched": "has latched off",
}


def account_lines(answer: SwitchOn, condition: str = NOMINAL) -> Iterator[str]:
    """One condition in words and figures, the others in a line each, then the findings of all.

    Raises KeyError for a condition that was not computed.
    """
    run = answer.runs[condition]
    summary = run.summary
    yield answer.sheet.title
    yield f"switched on cold, {condition}, {_volts(run.start.mains_v)}, {_seconds(run.end_s)}"
    yield ""
    yield str(verdict(summary, run.end_s))
    yield from (f"  {one}" for one in remarks(summary))
    yield from _block("supplies", _supply_lines(summary))
    yield from _block("heaters", _heater_lines(summary))
    yield from _block("parts", _part_lines(summary))
    yield from _block("events", _event_lines(summary.events))
    others = ((name, each) for name, each in answer.runs.items() if name != condition)
    yield from _block(
        "other conditions",
        (
            f"{name + ',':<13} {_volts(each.start.mains_v):>6}  {verdict(each.summary, each.end_s)}"
            for name, each in others
        ),
    )
    yield ""
    yield from finding_lines(answer.findings)


def _block(heading: str, lines: Iterator[str]) -> Iterator[str]:
    """Lines under a heading, nothing where there are none."""
    first = next(lines, None)
    if first is None:
        return
    yield ""
    yield heading
    yield f"  {first}"
    yield from (f"  {line}" for line in lines)


def _supply_lines(summary: WarmupSummary) -> Iterator[str]:
    for owner, supply in summary.supplies.items():
        yield f"{owner:<6} {_ENDS[supply.outcome]}{_tries(supply)}: {', '.join(_supply_figures(supply))}"


def _tries(supply: SupplyWarmup) -> str:
    if not supply.restarts:
        return ""
    if supply.outcome == "retries":
        return ", once" if supply.restarts == 1 else f", {supply.restarts} times"
    return " after one try more" if supply.restarts == 1 else f" after {supply.restarts} tries more"


def _supply_figures(supply: SupplyWarmup) -> Iterator[str]:
    yield f"asked for {_amps(supply.asked_a)}"
    yield f"peak {_amps(supply.peak_a)} at {_seconds(supply.peak_at_s)}"
    if supply.limit_a is not None:
        yield f"limit {_amps(supply.limit_a)}"
    elif supply.rated_a is not None:
        yield f"rated {_amps(supply.rated_a)}"
    if supply.regulates_s is not None and supply.limit_a is not None:
        yield f"regulates from {_seconds(supply.regulates_s)}"
    if supply.peak_loss_w is not None:
        yield f"peak heat {_watts(supply.peak_loss_w)}"
    yield f"{_joules(supply.energy_j)} given"
    yield f"ends at {_volts(supply.end_v)} {_amps(supply.end_a)}"


def _heater_lines(summary: WarmupSummary) -> Iterator[str]:
    for owner, sections in summary.heaters.items():
        for one in sections:
            name = f"{owner} {one.pins}"
            yield f"{name:<10} {_peak(one)}{_ready(one)}"


def _peak(one: HeaterWarmup) -> str:
    share = format_quantity(one.peak_v_ratio * 100, Dimension.PERCENT)
    return f"peak {_volts(one.peak_v)}, {share} of its rating, at {_seconds(one.peak_at_s)}"


def _ready(one: HeaterWarmup) -> str:
    if not one.has_cathode:
        return ""
    if one.ready_s is None:
        return "; does not get ready"
    return f"; ready after {_seconds(one.ready_s)}{' (estimated)' if one.estimated else ''}"


def _part_lines(summary: WarmupSummary) -> Iterator[str]:
    for owner, ntc in summary.thermistors.items():
        ohms = f"{_ohms(ntc.first_ohm)} cold, {_ohms(ntc.end_ohm)} at the end"
        again = "" if ntc.restart_ohm is None else f", {_ohms(ntc.restart_ohm)} when switched on again"
        yield f"{owner:<6} thermistor: peak {_amps(ntc.peak_a)} and {_kelvin(ntc.peak_k)}, {ohms}{again}"
    for owner, relay in summary.relays.items():
        moves = "never pulls in"
        if relay.pulls_in_s is not None:
            moves = f"pulls in at {_seconds(relay.pulls_in_s)}"
        if relay.closes_s is not None:
            moves += f", its contact closes at {_seconds(relay.closes_s)}"
        yield f"{owner:<6} relay: {moves}, peak {_amps(relay.contact_peak_a)} through its contact"
    for owner, fuse in summary.fuses.items():
        yield f"{owner:<6} fuse: peak {_amps(fuse.peak_a)}, {_a2s(fuse.excess_i2t)} more than at work"
    for owner, resistor in summary.resistors.items():
        yield f"{owner:<6} resistor: peak {_watts(resistor.peak_w)}, {_joules(resistor.energy_j)} in all"


def _event_lines(events: tuple[Event, ...]) -> Iterator[str]:
    for event in events[:MOST_EVENTS]:
        part = f"{event.part} " if event.part else ""
        yield f"{_seconds(event.t_s):>8}  {part}{event.what}"
    if len(events) > MOST_EVENTS:
        yield f"and {len(events) - MOST_EVENTS} more"


def _volts(value: float) -> str:
    return format_quantity(value, Dimension.VOLTS)


def _amps(value: float) -> str:
    return format_quantity(value, Dimension.AMPS)


def _watts(value: float) -> str:
    return format_quantity(value, Dimension.WATTS)


def _seconds(value: float) -> str:
    return format_quantity(value, Dimension.SECONDS)


def _ohms(value: float) -> str:
    return format_quantity(value, Dimension.OHMS)


def _kelvin(value: float) -> str:
    return format_quantity(value, Dimension.KELVIN, 4)


def _a2s(value: float) -> str:
    return format_quantity(value, Dimension.A2S)


def _joules(value: float) -> str:
    return f"{format_quantity(value, Dimension.NUMBER)}{THIN_SPACE}J"
