"""Renaming what is selected, so that it stays selected."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from app.document import Document
from app.selection import Selection
from core import edits


def rename_kept(document: Document, selection: Selection, old: str, new: str) -> None:
    """Give a part or wire another id as one undoable step; it stays selected under its new id."""
    selected = selection.ids
    text = QCoreApplication.translate("fields", "Rename {id}").format(id=old)
    document.apply(text, edits.rename(old, new))
    if old in selected:
        selection.set((selected - {old}) | {new})
