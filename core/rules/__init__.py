"""The rules: one small function each, from the solved sheet to findings."""

from __future__ import annotations

from core.results import SEVERITIES, Finding
from core.rules.balance import string_balance
from core.rules.basis import Case, Rule
from core.rules.cold import half_heated, not_heated
from core.rules.heaters import heater_current, heater_voltage
from core.rules.insulation import heater_cathode_voltage, shared_rectifier
from core.rules.references import live_chassis, no_chassis_reference, second_reference
from core.rules.shorts import short_circuit
from core.rules.strapping import pin_not_heater, wrong_strap
from core.rules.supplies import not_solved, supply_light_load, supply_margin, supply_overload
from core.rules.types import override_unused, rating_unverified, type_unknown
from core.rules.wiring import open_end, resistor_power, wire_current, wire_drop

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
    wire_current,
    resistor_power,
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
    found = [finding for rule in RULES for finding in rule(case)]
    return tuple(sorted(found, key=lambda finding: SEVERITIES.index(finding.severity)))
