"""What the sheet would be if what is under way were done: solved and shown as a ghost, never kept.

Gestures, mends under the pointer and the chain builder put their edit here while they are being considered, and
take it back. Only :meth:`app.document.Document.apply` keeps one.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal

from app.document import Document
from app.solver import Solver
from app.viewpoint import Viewpoint
from core.checks import find_problems
from core.edits import Change, Edit, change_between
from core.errors import HeaterloomError
from core.results import Assessment, Finding, alike, side_of, worst_of
from core.sheet import Sheet

ASKER = "proposal"
_Key = tuple[object, ...]


@dataclass(frozen=True)
class Proposed:
    """The sheet as it would be, what that changes, and its answers.

    ``new`` are the findings that would appear, ``gone`` those that would vanish; both are empty while the present
    sheet is not solved.
    """

    text: str
    sheet: Sheet
    change: Change
    assessment: Assessment
    new: tuple[Finding, ...]
    gone: tuple[Finding, ...]


@dataclass(frozen=True)
class _Sought:
    """A sheet that is to be solved, and what it differs in."""

    text: str
    sheet: Sheet
    change: Change


class Proposal(QObject):
    """Holds what is being considered, if anything. ``changed`` carries a :class:`Proposed`, or None.

    Of a large sheet the answers come later: what was considered before is shown until then, and only the newest
    edit is solved.
    """

    changed = Signal(object)

    def __init__(
        self,
        document: Document,
        viewpoint: Viewpoint,
        solver: Solver | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._viewpoint = viewpoint
        self.solver = solver or Solver()
        self._sought: _Sought | None = None
        self._current: Proposed | None = None
        self._grouped: tuple[tuple[Finding, ...], dict[_Key, list[Finding]]] | None = None
        document.changed.connect(self.withdraw)
        document.replaced.connect(self.withdraw)
        document.assessed.connect(self._compare)
        viewpoint.condition_changed.connect(self._ask)

    @property
    def current(self) -> Proposed | None:
        """What is being considered, once it is solved."""
        return self._current

    def consider(self, text: str, edit: Edit) -> Proposed | None:
        """Solve the sheet as it would be and announce it; an edit that cannot be carried out withdraws what was.

        Answers what is announced, or None where there is nothing to solve or the answers come later.
        """
        before = self._document.sheet
        try:
            after = edit(before)
        except HeaterloomError:
            after = before
        if self._sought is not None and after == self._sought.sheet:
            return self._answer()
        change = change_between(before, after)
        if change.is_empty or find_problems(after, before):
            self.withdraw()
            return None
        self._sought = _Sought(text, after, change)
        self._ask()
        return self._answer()

    def withdraw(self) -> None:
        """Forget it: everything shows the sheet as it is."""
        self._sought = None
        self.solver.forget(ASKER)
        if self._current is not None:
            self._current = None
            self.changed.emit(None)

    def _answer(self) -> Proposed | None:
        """The present answer if it is the one to what is sought."""
        current, sought = self._current, self._sought
        return (
            current if current is not None and sought is not None and current.sheet is sought.sheet else None
        )

    def _ask(self) -> None:
        sought = self._sought
        if sought is None:
            return
        # numerics are loaded with the first question
        from core.assess import assess  # noqa: PLC0415

        sheet, catalogue = sought.sheet, self._document.catalogue_for(sought.sheet)
        chosen = self._viewpoint.condition
        self.solver.ask(
            ASKER,
            len(sheet.parts) + len(sheet.wires),
            lambda memory: assess(sheet, catalogue, chosen, memory, trial=True),
            self._take,
        )

    def _take(self, found: Assessment) -> None:
        sought = self._sought
        if sought is not None and found.sheet is sought.sheet:
            self.solver.tried = found
            new, gone = self._difference(found)
            self._current = Proposed(sought.text, sought.sheet, sought.change, found, new, gone)
            self.changed.emit(self._current)

    def _compare(self) -> None:
        """Hold what is considered against the answers for the present sheet, which came after it."""
        if self._answer() is not None and self._current is not None:
            self._take(self._current.assessment)

    def _difference(self, found: Assessment) -> tuple[tuple[Finding, ...], tuple[Finding, ...]]:
        present = self._document.assessment
        if present is None:
            return (), ()
        before, after = self._present(present.findings), _by_key(found.findings)
        new = (one for key, group in after.items() if key not in before for one in group)
        gone = (one for key, group in before.items() if key not in after for one in group)
        return tuple(new), tuple(gone)

    def _present(self, findings: tuple[Finding, ...]) -> dict[_Key, list[Finding]]:
        """The present findings by what they say, put in order once however many edits are considered."""
        if self._grouped is None or self._grouped[0] is not findings:
            self._grouped = (findings, _by_key(findings))
        return self._grouped[1]


def _by_key(findings: Iterable[Finding]) -> dict[_Key, list[Finding]]:
    """Findings that say the same thing, be it under other conditions or with other figures, by what that is."""
    groups = alike(findings)
    return {
        (group[0].rule, group[0].where, side_of(group[0]), worst_of(group).severity): group
        for group in groups
    }
