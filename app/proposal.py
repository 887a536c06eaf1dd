"""What the sheet would be if what is under way were done: solved and shown as a ghost, never kept.

Gestures, mends under the pointer and the chain builder put their edit here while they are being considered, and
take it back. Only :meth:`app.document.Document.apply` keeps one.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from app.document import Document
from app.viewpoint import Viewpoint
from core.checks import find_problems
from core.edits import Change, Edit, change_between
from core.errors import HeaterloomError
from core.results import Assessment, Finding
from core.sheet import Sheet

if TYPE_CHECKING:
    from core.assess import Memory


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


class Proposal(QObject):
    """Holds what is being considered, if anything. ``changed`` carries a :class:`Proposed`, or None."""

    changed = Signal(object)

    def __init__(self, document: Document, viewpoint: Viewpoint, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._viewpoint = viewpoint
        self._memory: Memory | None = None
        self._current: Proposed | None = None
        document.changed.connect(self.withdraw)
        document.replaced.connect(self.withdraw)

    @property
    def current(self) -> Proposed | None:
        """What is being considered."""
        return self._current

    def consider(self, text: str, edit: Edit) -> Proposed | None:
        """Solve the sheet as it would be and announce it; an edit that cannot be carried out withdraws what was."""
        before = self._document.sheet
        try:
            after = edit(before)
        except HeaterloomError:
            after = before
        change = change_between(before, after)
        if change.is_empty or find_problems(after):
            self.withdraw()
            return None
        self._current = self._solve(text, after, change)
        self.changed.emit(self._current)
        return self._current

    def withdraw(self) -> None:
        """Forget it: everything shows the sheet as it is."""
        if self._current is not None:
            self._current = None
            self.changed.emit(None)

    def _solve(self, text: str, sheet: Sheet, change: Change) -> Proposed:
        from core.assess import Memory, assess  # noqa: PLC0415 - numerics are loaded with the first question

        memory = self._memory = self._memory or Memory()
        found = assess(sheet, self._document.catalogue, self._viewpoint.condition, memory)
        present = self._document.assessment
        before = set() if present is None else {_key(one) for one in present.findings}
        after = {_key(one) for one in found.findings}
        return Proposed(
            text,
            sheet,
            change,
            found,
            () if present is None else tuple(one for one in found.findings if _key(one) not in before),
            () if present is None else tuple(one for one in present.findings if _key(one) not in after),
        )


def _key(finding: Finding) -> tuple[object, ...]:
    """What makes two findings the same although their figures differ."""
    return finding.rule, finding.severity, finding.where, finding.condition
