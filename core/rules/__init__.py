"""The rules: one small function each, from the solved sheet to findings."""

from __future__ import annotations

from msgspec.structs import replace

from core.results import SEVERITIES, Finding
from core.rules.balance import string_balance
from core.rules.basis import Case, Rule
from core.rules.cold import half_heated, not_heated
from core.rules.heaters import heater_current, heater_voltage
from core.rules.insulation import heater_cathode_voltage, shared_rectifier
from core.rules.pins import pin_not_heater
from core.rules.ratings import balance_power, fuse_overload, relay_never_pulls_in, thermistor_rating
from core.rules.references import live_chassis, no_chassis_reference, second_reference
from core.rules.shorts import short_circuit
from core.rules.strapping import wrong_strap
from core.rules.supplies import not_solved, supply_light_load, supply_margin, supply_overload
from core.rules.types import override_unused, rating_unverified, type_unknown
from core.rules.wiring import open_end, resistor_power, wire_current, wire_drop

_DECIMALS = 9

RULES: tuple[Rule, ...] = (
    short_circuit,
    not_solved,
    type_unknown,
    wrong_strap,
    half_heated,
    not_heated,
    pin_not_heater,
    string_balance,
    heater_voltage,
    heater_current,
    heater_cathode_voltage,
    shared_rectifier,
    supply_overload,
    fuse_overload,
    thermistor_rating,
    wire_current,
    resistor_power,
    balance_power,
    relay_never_pulls_in,
    live_chassis,
    no_chassis_reference,
    second_reference,
    supply_margin,
    supply_light_load,
    wire_drop,
    rating_unverified,
    override_unused,
    open_end,
)
"""Causes stand before what follows from them."""


def run_rules(case: Case) -> tuple[Finding, ...]:
    """All findings, the gravest first, each rule's in the order of the sheet."""
    found = [_rounded(finding) for rule in RULES for finding in rule(case)]
    return tuple(sorted(found, key=lambda finding: SEVERITIES.index(finding.severity)))


def _rounded(finding: Finding) -> Finding:
    """The finding without the last digits of its figures, which are rounding errors."""
    if finding.value is None and finding.limit is None:
        return finding
    value, limit = (None if one is None else round(one, _DECIMALS) for one in (finding.value, finding.limit))
    return replace(finding, value=value, limit=limit)
