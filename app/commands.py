"""The undo command: a sheet before and a sheet after. Undo and redo only assign, so they cannot fail."""

from __future__ import annotations

import weakref
from typing import TYPE_CHECKING

from PySide6.QtGui import QUndoCommand

from core.sheet import Sheet

if TYPE_CHECKING:
    from app.document import Document

_MERGING_ID = 1
_NEVER_MERGE = -1


class SheetCommand(QUndoCommand):
    """One step of the history, named as the menu shows it after the word Undo."""

    def __init__(self, document: Document, text: str, before: Sheet, after: Sheet, merge_key: str) -> None:
        super().__init__(text)
        # the stack that owns this command belongs to the document: a strong reference back would be a cycle
        # through C++, which the garbage collector may take apart in the wrong order
        self._document = weakref.ref(document)
        self._before = before
        self._after = after
        self._merge_key = merge_key

    def id(self) -> int:
        """Only steps with a merge key are offered for merging."""
        return _MERGING_ID if self._merge_key else _NEVER_MERGE

    def mergeWith(self, other: QUndoCommand) -> bool:
        """Join a following step of the same gesture."""
        if not isinstance(other, SheetCommand) or other._merge_key != self._merge_key:
            return False
        self._after = other._after
        if self._after == self._before:
            self.setObsolete(True)
        return True

    def undo(self) -> None:
        """Go back to the sheet before."""
        self._show(self._before)

    def redo(self) -> None:
        """Go forward to the sheet after."""
        self._show(self._after)

    def _show(self, sheet: Sheet) -> None:
        document = self._document()
        if document is not None:
            document.show_state(sheet)
