"""The rules of the warm-up: one small function each, from the runs of a sheet to findings."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from msgspec.structs import replace

from core.results import SEVERITIES, Finding
from core.rules.startup_basis import StartupCase
from core.rules.startup_heaters import slow_warmup, warmup_overvoltage
from core.rules.startup_parts import (
    fuse_inrush,
    relay_contact,
    relay_early,
    relay_never_pulls_in_at_start,
    resistor_pulse,
    thermistor_at_start,
)
from core.rules.startup_supplies import ended_early, regulator_heat, supply_will_not_start

_DECIMALS = 9

STARTUP_RULES: tuple[Callable[[StartupCase], Iterable[Finding]], ...] = (
    supply_will_not_start,
    ended_early,
    warmup_overvoltage,
    fuse_inrush,
    thermistor_at_start,
    relay_never_pulls_in_at_start,
    relay_early,
    relay_contact,
    resistor_pulse,
    regulator_heat,
    slow_warmup,
)
"""Causes stand before what follows from them."""


def run_startup_rules(case: StartupCase) -> tuple[Finding, ...]:
    """All findings of the warm-up, the gravest first, each rule's in the order of the runs and the sheet."""
    found = [_rounded(finding) for rule in STARTUP_RULES for finding in rule(case)]
    return tuple(sorted(found, key=lambda finding: SEVERITIES.index(finding.severity)))


def _rounded(finding: Finding) -> Finding:
    """The finding without the last digits of its figures, which are rounding errors."""
    value, limit = (None if one is None else round(one, _DECIMALS) for one in (finding.value, finding.limit))
    return replace(finding, value=value, limit=limit)


__all__ = ["STARTUP_RULES", "StartupCase", "run_startup_rules"]
