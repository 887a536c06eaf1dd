"""An assessment as plain data for the ``check`` command: one JSON object, or lines to read."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from core.assess import COLD, Assessment
from core.dimension import Dimension
from core.results import (
    BranchPoint,
    Finding,
    HeaterPoint,
    OperatingPoint,
    SupplyPoint,
    Volts,
    alike,
    worst_of,
)
from core.units import format_percent, format_quantity

FORMAT = "heaterloom-check"
VERSION = 1

_DECIMALS = 9  # below any meter, above the noise of the last bits


def check_report(assessment: Assessment) -> dict[str, Any]:
    """The whole answer as one object; amperes, volts, watts, kelvin and per cent."""
    hot = [point for point in assessment.points.values() if not point.condition.cold]
    return {
        "format": FORMAT,
        "version": VERSION,
        "title": assessment.sheet.title,
        "conditions": [_condition(point) for point in hot],
        "strings": [list(group) for group in assessment.strings],
        "findings": [finding_data(finding) for finding in assessment.findings],
    }


def _condition(point: OperatingPoint) -> dict[str, Any]:
    return {
        "name": point.condition.name,
        "mains_v": point.condition.mains_v,
        "nodes": {terminal: _volts(value) for terminal, value in point.nodes.items()},
        "bias": {terminal: _round(value) for terminal, value in point.bias.items()},
        "heaters": {owner: [_heater(h) for h in sections] for owner, sections in point.heaters.items()},
        "supplies": {owner: _supply(supply) for owner, supply in point.supplies.items()},
        "branches": {key: _branch(branch) for key, branch in point.branches.items()},
    }


def _round(value: float) -> float:
    return round(value, _DECIMALS) + 0.0  # no negative zero


def _volts(value: Volts) -> float | list[float]:
    if isinstance(value, complex):
        return [_round(value.real), _round(value.imag)]
    return _round(value)


def _heater(heater: HeaterPoint) -> dict[str, Any]:
    numbers = {
        "v": heater.v,
        "a": heater.a,
        "w": heater.w,
        "rated_v": heater.rated_v,
        "rated_a": heater.rated_a,
        "deviation_pct": heater.deviation_pct,
        "heater_k": heater.heater_k,
        "cathode_k": heater.cathode_k,
    }
    return {"pins": heater.pins, **{name: _round(value) for name, value in numbers.items()}}


def _supply(supply: SupplyPoint) -> dict[str, Any]:
    load = supply.load_pct
    finite = load is not None and load != float("inf")
    return {
        "v": _round(supply.v),
        "a": _round(supply.a),
        "w": _round(supply.w),
        "load_pct": _round(load) if finite and load is not None else None,
    }


def _branch(branch: BranchPoint) -> dict[str, Any]:
    found: dict[str, Any] = {"v": _round(branch.v), "a": _round(branch.a), "w": _round(branch.w)}
    if branch.kelvin is not None:
        found["kelvin"] = _round(branch.kelvin)
    if branch.pulled_in is not None:
        found["pulled_in"] = branch.pulled_in
    return found


def finding_data(finding: Finding) -> dict[str, Any]:
    """A finding as plain data; values that are infinite become None."""
    finite = finding.value is not None and abs(finding.value) != float("inf")
    return {
        "rule": finding.rule,
        "severity": finding.severity,
        "where": list(finding.where),
        "condition": finding.condition,
        "value": finding.value if finite else None,
        "limit": finding.limit,
        "unit": finding.unit,
        "says": str(finding.says),
        "mend": str(finding.mend),
        "source": str(finding.source),
    }


def report_lines(assessment: Assessment) -> Iterator[str]:
    """The answer as lines of text: heaters and supplies at nominal mains, then the findings."""
    yield assessment.sheet.title
    for point in assessment.points.values():
        if point.condition.name == COLD:
            continue
        yield ""
        yield f"{point.condition.name}, {format_quantity(point.condition.mains_v, Dimension.VOLTS)}"
        for owner, supply in point.supplies.items():
            load = "" if supply.load_pct is None else f"  {supply.load_pct:.0f} % of its rating"
            yield f"  {owner:<6} {_figures(supply.v, supply.a, supply.w)}{load}"
        for owner, sections in point.heaters.items():
            for heater in sections:
                name = f"{owner} {heater.pins}"
                figures = _figures(heater.v, heater.a, heater.w)
                yield f"  {name:<10} {figures}  {format_percent(heater.deviation_pct)}  {heater.heater_k:.0f} K"
    yield ""
    yield from finding_lines(assessment.findings)


def finding_lines(findings: tuple[Finding, ...]) -> Iterator[str]:
    """Findings as lines of text, those that are alike together; a line that says so where there are none."""
    if not findings:
        yield "No findings."
    for group in alike(findings):
        worst = worst_of(group)
        when = " at " + ", ".join(f.condition for f in group if f.condition) if worst.condition else ""
        yield f"{worst.severity}: {worst.rule}: {worst.title}{when}"
        yield f"    {worst.says} {worst.mend}"


def _figures(volts: float, amps: float, watts: float) -> str:
    parts = (
        (volts, Dimension.VOLTS),
        (amps, Dimension.AMPS),
        (watts, Dimension.WATTS),
    )
    return "  ".join(format_quantity(_round(value), name, digits=4) for value, name in parts)
