"""The clipboard, choosing, finding and replacing, as entries."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.actions import Entry
from app.canvas import choosing, context_menu

if TYPE_CHECKING:
    from app.canvas.view import SheetView


def edit_entries(view: SheetView) -> dict[str, Entry]:
    """Every entry that copies, chooses, finds or replaces, by its name.

    The clipboard's keys are for the drawing only: in a text field they keep their usual meaning.
    """
    return {**_clipboard_entries(view), **_choosing_entries(view)}


def _clipboard_entries(view: SheetView) -> dict[str, Entry]:
    pasting = view.tools.pasting
    translate = QCoreApplication.translate
    return {
        "cut": Entry(
            translate("actions", "Cu&t"), pasting.cut, ("Ctrl+X",), heard=True, enabled=pasting.can_copy
        ),
        "copy": Entry(
            translate("actions", "&Copy"),
            pasting.copy,
            ("Ctrl+C",),
            translate("actions", "The parts and the wires between them, as the text of a sheet file."),
            heard=True,
            enabled=pasting.can_copy,
        ),
        "paste": Entry(
            translate("actions", "&Paste"),
            pasting.paste,
            ("Ctrl+V",),
            translate("actions", "At the pointer; otherwise beside where it was copied."),
            heard=True,
        ),
        "duplicate": Entry(
            translate("actions", "D&uplicate"),
            pasting.duplicate,
            ("Ctrl+D",),
            heard=True,
            enabled=pasting.can_duplicate,
        ),
    }


def _choosing_entries(view: SheetView) -> dict[str, Entry]:
    translate = QCoreApplication.translate
    return {
        "select connected": Entry(
            translate("actions", "Select what is co&nnected"),
            partial(choosing.choose_connected, view),
            ("Ctrl+Shift+A",),
            translate("actions", "Everything that wires join to what is selected."),
            enabled=partial(choosing.has_selection, view),
        ),
        "select string": Entry(
            translate("actions", "Select the same strin&g"),
            partial(choosing.choose_string, view),
            ("Ctrl+Alt+A",),
            translate("actions", "All heaters that carry the same current."),
            enabled=partial(choosing.can_choose_string, view),
        ),
        "find": Entry(
            translate("actions", "&Find\u2026"),
            view.tools.find,
            ("Ctrl+F",),
            translate("actions", "By id, type, rating, or words of a note."),
        ),
        "menu": Entry(
            translate("actions", "Menu of what is selected"),
            partial(context_menu.open_by_key, view),
            ("Menu", "Shift+F10"),
            heard=True,
        ),
        "replace type": Entry(
            translate("actions", "&Replace the type\u2026"),
            view.tools.replace_type,
            ("Ctrl+T",),
            translate("actions", "Another tube type, with what it means for the wires."),
            enabled=lambda: bool(view.tools.arranger.tubes()),
        ),
    }
