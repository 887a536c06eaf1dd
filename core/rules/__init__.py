"""The rules: one small function each, from the solved sheet to findings."""

from __future__ import annotations

from core.results import Finding
from core.rules.basis import Case, Rule

RULES: tuple[Rule, ...] = ()

_ORDER = {"fault": 0, "caution": 1, "note": 2}


def run_rules(case: Case) -> tuple[Finding, ...]:
    """All findings, the gravest first, each rule's in the order of the sheet."""
    found = [finding for rule in RULES for finding in rule(case)]
    return tuple(sorted(found, key=lambda finding: _ORDER[finding.severity]))
