"""Edits that are checked before they count: what the loader would refuse cannot be entered either."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from app.document import Document
from app.selection import Selection
from core import edits
from core.checks import find_problems
from core.edits import Edit
from core.errors import EditError
from core.sheet import Sheet


def checked(edit: Edit) -> Edit:
    """The same edit; raises EditError with the first thing wrong that was not wrong before."""

    def guarded(sheet: Sheet) -> Sheet:
        after = edit(sheet)
        found = find_problems(after)
        if found:
            before = {problem.message for problem in find_problems(sheet)}
            fresh = [problem.message for problem in found if problem.message not in before]
            if fresh:
                raise EditError(f"{fresh[0][:1].upper()}{fresh[0][1:]}.")
        return after

    return guarded


def apply_checked(document: Document, text: str, edit: Edit) -> None:
    """Carry out a checked edit as one undoable step; an edit that raises leaves the sheet as it was."""
    document.apply(text, checked(edit))


def rename_checked(document: Document, selection: Selection, old: str, new: str) -> None:
    """Give a part or wire another id as one undoable step; it stays selected under its new id."""
    selected = selection.ids
    text = QCoreApplication.translate("fields", "Rename {id}").format(id=old)
    apply_checked(document, text, edits.rename(old, new))
    if old in selected:
        selection.set((selected - {old}) | {new})
