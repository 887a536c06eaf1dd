"""Wiring a chain of sockets, as an entry."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.actions import Entry

if TYPE_CHECKING:
    from app.canvas.view import SheetView


def chain_entries(view: SheetView) -> dict[str, Entry]:
    """The entry that opens the chain builder, by its name."""
    translate = QCoreApplication.translate
    status = translate(
        "actions", "The selected sockets, or all that are not wired, in parallel or in series."
    )
    return {
        "chain": Entry(
            translate("actions", "&Wire a chain…"), view.chain_requested.emit, ("C",), status, heard=True
        )
    }
