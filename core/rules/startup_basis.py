"""What every rule of the warm-up is given."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

from core.results import Finding
from core.rules import run_rules
from core.rules.basis import Case
from core.warmup.results import WarmupSummary


@dataclass(frozen=True)
class StartupCase:
    """A sheet before the rules of the warm-up: its steady case and the figures of its runs, nominal mains first."""

    case: Case
    summaries: tuple[WarmupSummary, ...]

    @cached_property
    def steady(self) -> frozenset[tuple[str, tuple[str, ...]]]:
        """Rules and places of what is found in the steady state: not to be said twice."""
        return frozenset((finding.rule, finding.where) for finding in self._findings)

    @cached_property
    def _findings(self) -> tuple[Finding, ...]:
        return run_rules(self.case)

    def fresh(self, findings: Iterator[Finding]) -> Iterator[Finding]:
        """Those of some findings that the steady state has not."""
        return (finding for finding in findings if (finding.rule, finding.where) not in self.steady)
