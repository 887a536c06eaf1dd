"""Walking the drawing by keyboard, as entries."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.actions import Entry
from app.canvas.walk import DOWN, LEFT, RIGHT, UP

if TYPE_CHECKING:
    from app.canvas.view import SheetView


def walk_entries(view: SheetView) -> dict[str, Entry]:
    """Every entry that goes somewhere on the drawing, by its name."""
    walk = view.walk
    translate = QCoreApplication.translate
    pins = translate("actions", "Arrows, or a pin's name, choose one; Enter begins a wire there.")
    return {
        "pins": Entry(translate("actions", "&Pins of the part"), walk.enter_pins, ("P",), pins, heard=True),
        "next wire": Entry(
            translate("actions", "Next &wire on the part or pin"), partial(walk.wires, 1), ("W",), heard=True
        ),
        "previous wire": Entry(
            translate("actions", "Previous w&ire on the part or pin"),
            partial(walk.wires, -1),
            ("Shift+W",),
            heard=True,
        ),
        "part to the left": Entry(
            translate("actions", "Part to the &left"), partial(walk.towards, LEFT), ("Ctrl+Left",), heard=True
        ),
        "part to the right": Entry(
            translate("actions", "Part to the &right"),
            partial(walk.towards, RIGHT),
            ("Ctrl+Right",),
            heard=True,
        ),
        "part above": Entry(
            translate("actions", "Part &above"), partial(walk.towards, UP), ("Ctrl+Up",), heard=True
        ),
        "part below": Entry(
            translate("actions", "Part &below"), partial(walk.towards, DOWN), ("Ctrl+Down",), heard=True
        ),
    }
