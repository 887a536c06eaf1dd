"""Whether a remedy really mends its finding: it is carried out on a sheet that nobody sees, and that is assessed.

Only the heater lines that the remedy touches are assessed, as others do not feel it. For a finding of the warm-up these
lines are switched on as well, once nothing is wrong with them in the steady state.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from core.assess import Memory, assess
from core.catalogue import Catalogue
from core.checks import find_problems
from core.edits import change_between
from core.errors import EditError
from core.mending import edit_of
from core.nearby import around
from core.remedy import Remedy
from core.results import SEVERITIES, Assessment, Finding
from core.sheet import Sheet

if TYPE_CHECKING:
    from core.switch_on import SwitchOn, Wish

Effect = Literal["mends", "helps", "none"]

HELPS_SHARE = 0.5
"""What is left of the excess of heaters must be less than this for a remedy to count as a help."""
_HEATERS = frozenset(("heater-voltage", "heater-current"))
# what was wrong with such a part could not be seen before
_UNJUDGED = frozenset(("type-unknown",))


@dataclass(frozen=True)
class _Trial:
    """What the lines that a remedy touches report before and after it, what of that is a new fault, and the lines."""

    was: tuple[Finding, ...]
    now: tuple[Finding, ...]
    new: tuple[Finding, ...]
    after: Sheet


class Proof:
    """Tries remedies on the sheet of an assessment, each but once. ``catalogue`` has the sheet's own types.

    ``switched`` is what switching that sheet on showed, as ``wish`` had it.
    """

    def __init__(
        self,
        assessment: Assessment,
        catalogue: Catalogue,
        switched: SwitchOn | None = None,
        wish: Wish | None = None,
    ) -> None:
        self.assessment = assessment
        self.switched = switched
        self._wish = wish
        self._catalogue = catalogue
        self._memory = Memory()
        self._trials: dict[Remedy, _Trial | None] = {}
        self._warm_trials: dict[Remedy, _Trial] = {}

    def effect(self, finding: Finding, remedy: Remedy) -> Effect:
        """What a remedy does for its finding.

        It mends where the finding is gone under every condition and no fault has appeared. It helps where heaters
        stay outside their limits, but by less than half of what it was in all, and nothing else has gone wrong.
        """
        if remedy not in self._trials:
            self._trials[remedy] = self._try(remedy)
        trial = self._trials[remedy]
        if trial is not None and self.switched is not None and finding in self.switched.findings:
            return "none" if trial.new else self._warm_effect(finding, remedy, trial.after, self.switched)
        if trial is None or not any(is_same(one, finding) for one in trial.was):
            return "none"
        new = trial.new
        if finding.rule in _UNJUDGED:
            new = tuple(one for one in new if one.where[:1] != finding.where[:1])
        if not new and not any(is_same(one, finding) for one in trial.now):
            return "mends"
        is_about_heaters = finding.rule in _HEATERS and all(one.rule in _HEATERS for one in new)
        is_less = _excess(trial.now) < HELPS_SHARE * _excess(trial.was)
        return "helps" if is_about_heaters and is_less else "none"

    def _try(self, remedy: Remedy) -> _Trial | None:
        sheet = self.assessment.sheet
        try:
            whole = edit_of(remedy)(sheet)
        except EditError:
            return None
        change = change_between(sheet, whole)
        if change.is_empty or find_problems(whole):
            return None
        touched = {*change.parts, *change.wires}
        before = around(sheet, touched | around(whole, touched).part_by_id.keys())
        after = around(whole, touched | before.part_by_id.keys())
        there = {*before.part_by_id, *before.wire_by_id}
        was = tuple(one for one in self.assessment.findings if not there.isdisjoint(one.where))
        now = assess(after, self._catalogue, memory=self._memory).findings
        return _Trial(was, now, _new(was, now), after)

    def _warm_effect(self, finding: Finding, remedy: Remedy, after: Sheet, switched: SwitchOn) -> Effect:
        """What a remedy does for a finding of the warm-up: the lines it touches are switched on."""
        from core.switch_on import switch_on  # noqa: PLC0415 - seldom asked for, and it loads the engine

        if remedy not in self._warm_trials:
            there = {*after.part_by_id, *after.wire_by_id}
            was = tuple(one for one in switched.findings if not there.isdisjoint(one.where))
            now = switch_on(after, self._catalogue, self._wish, memory=self._memory).findings
            self._warm_trials[remedy] = _Trial(was, now, _new(was, now), after)
        trial = self._warm_trials[remedy]
        return "none" if trial.new or any(is_same(one, finding) for one in trial.now) else "mends"


def _new(was: tuple[Finding, ...], now: tuple[Finding, ...]) -> tuple[Finding, ...]:
    """The faults that were not there before."""
    known = {_key(one) for one in was if one.severity == "fault"}
    return tuple(one for one in now if one.severity == "fault" and _key(one) not in known)


def is_same(one: Finding, finding: Finding) -> bool:
    """Whether a finding is what another was: the same rule at the same place, and no less grave."""
    return (
        one.rule == finding.rule
        and one.where[:1] == finding.where[:1]
        and SEVERITIES.index(one.severity) <= SEVERITIES.index(finding.severity)
    )


def _key(finding: Finding) -> tuple[object, ...]:
    """What makes a fault one that was there before; a heater's volts and its current are one matter."""
    rule = "heater" if finding.rule in _HEATERS else finding.rule
    return rule, finding.where[:1], finding.condition


def _excess(findings: Iterable[Finding]) -> float:
    """By what share of their limits all heaters together are outside them."""
    return sum(
        abs(one.value / one.limit - 1)
        for one in findings
        if one.rule in _HEATERS and one.value is not None and one.limit
    )
