"""What can be done to wires, as entries."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.actions import Entry

if TYPE_CHECKING:
    from app.canvas.view import SheetView


def wire_entries(view: SheetView) -> dict[str, Entry]:
    """Every entry for wires by its name."""
    return {**_corner_entries(view), **_pair_entries(view), **_joint_entries(view)}


def _corner_entries(view: SheetView) -> dict[str, Entry]:
    translate, wires = QCoreApplication.translate, view.wires
    pieces = translate("actions", "The arrows then move this piece of the selected wire.")
    return {
        "next piece": Entry(
            translate("actions", "Next piece of the &wire"),
            partial(wires.step_piece, 1),
            ("B",),
            pieces,
            heard=True,
            enabled=lambda: bool(wires.wire_id),
        ),
        "previous piece": Entry(
            translate("actions", "Previous piece of the w&ire"),
            partial(wires.step_piece, -1),
            ("Shift+B",),
            pieces,
            heard=True,
            enabled=lambda: bool(wires.wire_id),
        ),
        "find way": Entry(
            translate("actions", "Let the route &find its way"),
            wires.find_way,
            ("Ctrl+B",),
            translate("actions", "Forgets the corners that were set for the selected wires."),
            heard=True,
            enabled=lambda: wires.is_bent,
        ),
    }


def _pair_entries(view: SheetView) -> dict[str, Entry]:
    translate, wires = QCoreApplication.translate, view.wires
    return {
        "in pairs": Entry(
            translate("actions", "Draw wires in &pairs"),
            wires.toggle_pairs,
            ("Shift+P",),
            translate(
                "actions", "A wire brings the one from the other end of the heater along, twisted with it."
            ),
            heard=True,
            checked=lambda: wires.in_pairs,
        ),
        "twist": Entry(
            translate("actions", "T&wist"),
            wires.twist,
            ("T",),
            translate("actions", "Twists two selected wires between the same two parts."),
            heard=True,
            enabled=lambda: wires.can_twist,
        ),
        "untwist": Entry(
            translate("actions", "&Untwist"),
            wires.untwist,
            ("Shift+T",),
            heard=True,
            enabled=lambda: wires.can_untwist,
        ),
    }


def _joint_entries(view: SheetView) -> dict[str, Entry]:
    translate, wires = QCoreApplication.translate, view.wires
    return {
        "split": Entry(
            translate("actions", "Split the wire with a &joint"),
            wires.split,
            ("J",),
            heard=True,
            enabled=lambda: bool(wires.wire_id),
        ),
        "take out": Entry(
            translate("actions", "Take the joint &out"),
            wires.take_out,
            ("Shift+J",),
            translate("actions", "Its two wires become one."),
            heard=True,
            enabled=lambda: wires.can_take_out,
        ),
    }
