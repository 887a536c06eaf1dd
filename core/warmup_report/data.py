"""Switching on as plain data for the ``warmup`` command: one JSON object."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

import msgspec
import numpy as np

from core.elements.tungsten import Array
from core.report import finding_data
from core.results import NOMINAL
from core.warmup.results import HeaterTrace, HeaterWarmup, SupplyWarmup, Traces, WarmupSummary
from core.warmup_report.verdict import remarks, verdict

if TYPE_CHECKING:
    from core.switch_on import SwitchOn
    from core.warmup import WarmupRun

FORMAT = "heaterloom-warmup"
VERSION = 1

DECIMALS = 9  # below any meter, above the noise of the last bits


def warmup_report(answer: SwitchOn, condition: str = NOMINAL) -> dict[str, Any]:
    """The whole answer as one object: one condition in time, all of them in figures.

    Seconds, volts, amperes, kelvin, watts, joules and ohms; what is not finite is None. Raises KeyError for a
    condition that was not computed.
    """
    run = answer.runs[condition]
    traces = run.traces()
    summary = run.summary
    return {
        "format": FORMAT,
        "version": VERSION,
        "title": answer.sheet.title,
        "condition": condition,
        "mains_v": number(run.start.mains_v),
        "seconds": number(run.start.seconds),
        "end_s": number(run.end_s),
        "says": str(verdict(summary, run.end_s)),
        "remarks": [str(one) for one in remarks(summary)],
        "ready_s": number(summary.ready_s),
        "t_s": numbers(traces.t_s),
        "heaters": {
            owner: [_heater(one, traces.heaters[one.key]) for one in sections]
            for owner, sections in summary.heaters.items()
        },
        "supplies": {
            owner: {
                "v": numbers(traces.supplies[owner].v),
                "a": numbers(traces.supplies[owner].a),
                **_supply(supply),
            }
            for owner, supply in summary.supplies.items()
        },
        "branches": _branches(summary, traces),
        "events": [
            {"t_s": number(event.t_s), "part": event.part, "what": event.what} for event in summary.events
        ],
        "conditions": [_condition(name, each) for name, each in answer.runs.items()],
        "findings": [finding_data(finding) for finding in answer.findings],
    }


def number(value: float | None) -> float | None:
    """A number rounded for output; None for none and for what is not finite."""
    if value is None or not math.isfinite(value):
        return None
    return round(value, DECIMALS) + 0.0  # no negative zero


def numbers(values: Array) -> list[float | None]:
    """Numbers ``(n,)`` rounded for output, None for what is not finite."""
    return [number(value) for value in values.tolist()]


def _heater(one: HeaterWarmup, trace: HeaterTrace) -> dict[str, Any]:
    return {
        "pins": one.pins,
        "v": numbers(trace.v),
        "a": numbers(trace.a),
        "heater_k": numbers(trace.heater_k),
        "cathode_k": numbers(trace.cathode_k),
        **_heater_figures(one),
    }


def _heater_figures(one: HeaterWarmup) -> dict[str, Any]:
    return {
        "rated_v": number(one.rated_v),
        "rated_a": number(one.rated_a),
        "peak_v": number(one.peak_v),
        "peak_v_ratio": number(one.peak_v_ratio),
        "peak_at_s": number(one.peak_at_s),
        "ready_s": number(one.ready_s),
        "own_ready_s": number(one.own_ready_s),
        "warmup_s": number(one.warmup_s),
        "estimated": one.estimated,
    }


def _supply(supply: SupplyWarmup) -> dict[str, Any]:
    return {**_figures(supply), "starts": supply.starts}


def _figures(struct: msgspec.Struct) -> dict[str, Any]:
    """The fields of a struct of figures by name; pairs become lists."""
    return {name: _plain(getattr(struct, name)) for name in struct.__struct_fields__}


def _plain(value: Any) -> Any:
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    return number(value) if isinstance(value, float) else value


def _branches(summary: WarmupSummary, traces: Traces) -> dict[str, Any]:
    """Thermistors, relays, fuses and resistors in time, with their figures."""
    kinds: tuple[tuple[str, dict[str, Any]], ...] = (
        ("thermistor", summary.thermistors),
        ("relay", summary.relays),
        ("fuse", summary.fuses),
        ("resistor", summary.resistors),
    )
    found: dict[str, Any] = {}
    for kind, parts in kinds:
        for owner, figures in parts.items():
            trace = traces.branches[owner]
            found[owner] = {"kind": kind, "v": numbers(trace.v), "a": numbers(trace.a)}
            if trace.kelvin is not None:
                found[owner]["kelvin"] = numbers(trace.kelvin)
            if owner in traces.relays:
                found[owner]["pulled_in"] = np.asarray(traces.relays[owner], dtype=bool).tolist()
            found[owner].update(_figures(figures))
    return found


def _condition(name: str, run: WarmupRun) -> dict[str, Any]:
    summary = run.summary
    return {
        "name": name,
        "mains_v": number(run.start.mains_v),
        "off_at_s": number(run.start.off_at_s),
        "off_for_s": number(run.start.off_for_s),
        "end_s": number(run.end_s),
        "says": str(verdict(summary, run.end_s)),
        "ready_s": number(summary.ready_s),
        "heaters": {
            owner: [{"pins": one.pins, **_heater_figures(one)} for one in sections]
            for owner, sections in summary.heaters.items()
        },
        "supplies": {owner: _supply(supply) for owner, supply in summary.supplies.items()},
        "events": len(summary.events),
    }
