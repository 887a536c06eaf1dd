"""The document: the one sheet that is open, its undo history, and the answers that belong to it."""

from __future__ import annotations

import weakref
from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoStack

from app.commands import SheetCommand
from app.speech import spoken
from core.catalogue import Catalogue, load_builtin
from core.checks import find_problems
from core.edits import Change, change_between
from core.errors import EditError
from core.own_types import with_own_types
from core.results import Assessment, Finding
from core.sheet import Sheet

if TYPE_CHECKING:
    from core.switch_on import SwitchOn


class Document(QObject):
    """Holds the sheet. Only :meth:`apply` alters it, and every alteration can be undone.

    ``changed`` carries a :class:`core.edits.Change`; ``assessed`` an :class:`core.assess.Assessment` whose
    ``sheet`` is the very sheet it was computed for. ``switched_on`` comes with the answers of its warm-up.
    ``replaced`` comes when another sheet is opened.
    """

    changed = Signal(object)
    assessed = Signal(object)
    switched_on = Signal(object)
    replaced = Signal()

    def __init__(self, sheet: Sheet, catalogue: Catalogue, parent: QObject | None = None) -> None:
        super().__init__(parent)
        # no child of the document, and kept alive from outside until the document is gone: where the collector takes
        # a document apart, it would else delete the commands before the stack that still lists them
        self.undo_stack = QUndoStack()
        self.undo_stack.setUndoLimit(500)
        weakref.finalize(self, _retire, self.undo_stack)
        self._sheet = sheet
        self._base = catalogue
        self._catalogue = catalogue.with_types(sheet.types)
        self._assessment: Assessment | None = None
        self._switched: SwitchOn | None = None

    @property
    def sheet(self) -> Sheet:
        """The sheet as it is now."""
        return self._sheet

    @property
    def catalogue(self) -> Catalogue:
        """The catalogue with the sheet's own types laid over it."""
        return self._catalogue

    def catalogue_for(self, sheet: Sheet) -> Catalogue:
        """The catalogue that another sheet, such as one that is only considered, is to be solved with."""
        return self._catalogue if sheet.types == self._sheet.types else self._base.with_types(sheet.types)

    @property
    def assessment(self) -> Assessment | None:
        """The answers for the present sheet, or None while they are being computed."""
        current = self._assessment
        return current if current is not None and current.sheet is self._sheet else None

    @property
    def switched(self) -> SwitchOn | None:
        """The warm-up of the present sheet, or None where it has not been switched on."""
        current = self._switched
        return current if current is not None and current.sheet is self._sheet else None

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What is found in the steady state and, where that is known, on the way to it; nothing twice."""
        steady = self.assessment.findings if self.assessment is not None else ()
        switched = self.switched
        if switched is None or self.assessment is None:
            return steady
        known = {(finding.rule, finding.where) for finding in steady}
        return (*steady, *(one for one in switched.findings if (one.rule, one.where) not in known))

    def apply(self, text: str, edit: Callable[[Sheet], Sheet], merge_key: str = "") -> Change:
        """Carry out an edit as one undoable step named ``text``.

        The edit runs before anything is pushed, so one that raises leaves everything as it was. Steps with the
        same non-empty ``merge_key`` that follow each other become one.

        Raises
        ------
        core.errors.EditError
            When the result would not be a sheet that can be saved and opened again.
        """
        before = self._sheet
        after = edit(before)
        change = change_between(before, after)
        if not change.is_empty:
            problems = find_problems(after)
            if problems:
                message = spoken(problems[0].said)
                raise EditError(f"{message[:1].upper()}{message[1:]}.")
            self.undo_stack.push(SheetCommand(self, text, before, after, merge_key))
        return change

    def to_save(self) -> Sheet:
        """The sheet as it goes into a file: with the types it uses that are not built in."""
        return with_own_types(self._sheet, self._catalogue, load_builtin())

    def open(self, sheet: Sheet) -> None:
        """Show another sheet; the history starts afresh."""
        self.undo_stack.clear()
        self._sheet = sheet
        self._catalogue = self._base.with_types(sheet.types)
        self._assessment = None
        self.replaced.emit()

    def show_state(self, sheet: Sheet) -> None:
        """Make ``sheet`` the present one; called by the undo commands only."""
        change = change_between(self._sheet, sheet)
        if sheet.types != self._sheet.types:
            self._catalogue = self._base.with_types(sheet.types)
        self._sheet = sheet
        if not change.is_empty:
            self.changed.emit(change)

    def take_assessment(self, assessment: Assessment) -> None:
        """Accept answers; late ones, of a sheet that is no longer shown, are dropped."""
        if assessment.sheet is self._sheet:
            self._assessment = assessment
            self.assessed.emit(assessment)

    def take_switched(self, answer: SwitchOn) -> None:
        """Accept the answers of a warm-up; late ones, of a sheet that is no longer shown, are dropped."""
        if answer.sheet is self._sheet:
            self._switched = answer
            self.switched_on.emit(answer)


def _retire(stack: QUndoStack) -> None:
    """Empty the history of a document that is gone, telling nobody."""
    stack.blockSignals(True)
    stack.clear()
