"""What can be done to the drawing, by name: the menus, the context menu and the drawing's keys are made from this."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.actions import Entry
from app.canvas.arrange_actions import arrange_entries
from app.canvas.chain_actions import chain_entries
from app.canvas.edit_actions import edit_entries
from app.canvas.walk_actions import walk_entries
from app.canvas.wire_actions import wire_entries

if TYPE_CHECKING:
    from app.canvas.view import SheetView


def drawing_entries(view: SheetView) -> dict[str, Entry]:
    """Every entry of the drawing by its name."""
    return {
        **_edit_entries(view),
        **_view_entries(view),
        **walk_entries(view),
        **wire_entries(view),
        **chain_entries(view),
        **edit_entries(view),
        **arrange_entries(view),
    }


def _edit_entries(view: SheetView) -> dict[str, Entry]:
    editor = view.editor
    translate = QCoreApplication.translate

    def chosen() -> bool:
        return bool(view.selection.ids)

    return {
        "add": Entry(translate("actions", "&Add a part"), view.add_field.enter, ("Ctrl+K",)),
        "add by slash": Entry(translate("actions", "Add a part"), view.add_field.enter, ("/",), heard=True),
        "delete": Entry(
            translate("actions", "&Delete"),
            editor.delete,
            ("Del", "Backspace"),
            heard=True,
            enabled=lambda: bool(view.selection.ids),
        ),
        "turn right": Entry(translate("actions", "&Turn right"), lambda: editor.turn(90), ("R",), heard=True),
        "turn left": Entry(
            translate("actions", "Turn &left"), lambda: editor.turn(-90), ("Shift+R",), heard=True
        ),
        "select all": Entry(translate("actions", "&Select all"), editor.select_all, ("Ctrl+A",)),
        "properties": Entry(
            translate("actions", "&Properties"),
            editor.edit_selected,
            ("Return", "Enter"),
            heard=True,
            enabled=lambda: editor.can_edit,
        ),
    }


def _view_entries(view: SheetView) -> dict[str, Entry]:
    translate = QCoreApplication.translate
    return {
        "fit": Entry(translate("actions", "&Fit the sheet"), view.fit, ("Ctrl+0",)),
        "fit by letter": Entry(translate("actions", "Fit the sheet"), view.fit, ("F",), heard=True),
        "zoom in": Entry(translate("actions", "Zoom &in"), view.zoom_in, ("Ctrl++", "Ctrl+=")),
        "zoom out": Entry(translate("actions", "Zoom &out"), view.zoom_out, ("Ctrl+-",)),
        "zoom in by sign": Entry(translate("actions", "Zoom in"), view.zoom_in, ("+", "="), heard=True),
        "zoom out by sign": Entry(translate("actions", "Zoom out"), view.zoom_out, ("-",), heard=True),
        "actual size": Entry(translate("actions", "&Actual size"), view.zoom_reset, ("Ctrl+1",)),
        "actual size by digit": Entry(
            translate("actions", "Actual size"), view.zoom_reset, ("0",), heard=True
        ),
    }
