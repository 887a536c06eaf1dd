"""Mirroring, lining up, numbering and swapping, as entries."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.actions import Entry
from core.edits.arranging import Side

if TYPE_CHECKING:
    from app.canvas.view import SheetView

ALIGNING = ("align left", "align centre", "align right", "align top", "align middle", "align bottom")
DISTRIBUTING = ("distribute across", "distribute down")


def arrange_entries(view: SheetView) -> dict[str, Entry]:
    """Every entry that arranges what is selected, and the two switches of the grid, by its name."""
    return {
        **_turn_entries(view),
        **_align_entries(view),
        **_order_entries(view),
        **_grid_entries(view),
    }


def _turn_entries(view: SheetView) -> dict[str, Entry]:
    arranger = view.tools.arranger
    translate = QCoreApplication.translate
    several = partial(arranger.has_parts, 2)
    return {
        "turn as one": Entry(
            translate("actions", "Turn right &as one"),
            partial(arranger.rotate, 90),
            ("Ctrl+R",),
            translate("actions", "All selected parts about their common middle."),
            heard=True,
            enabled=several,
        ),
        "turn left as one": Entry(
            translate("actions", "Turn left as &one"),
            partial(arranger.rotate, -90),
            ("Ctrl+Shift+R",),
            translate("actions", "All selected parts about their common middle."),
            heard=True,
            enabled=several,
        ),
        "mirror": Entry(
            translate("actions", "&Mirror left to right"),
            arranger.mirror,
            ("M",),
            translate("actions", "A socket is only moved: its pins cannot change sides."),
            heard=True,
            enabled=arranger.can_mirror,
        ),
        "mirror upright": Entry(
            translate("actions", "Mirror &upside down"),
            partial(arranger.mirror, True),
            ("Shift+M",),
            translate("actions", "A socket is only moved: its pins cannot change sides."),
            heard=True,
            enabled=arranger.can_mirror,
        ),
    }


def _align_entries(view: SheetView) -> dict[str, Entry]:
    arranger = view.tools.arranger
    translate = QCoreApplication.translate

    def entry(text: str, side: Side, *keys: str) -> Entry:
        several = partial(arranger.has_parts, 2)
        return Entry(text, partial(arranger.align, side), keys, heard=bool(keys), enabled=several)

    three = partial(arranger.has_parts, 3)
    return {
        "align left": entry(translate("actions", "&Left edges"), "left", "Ctrl+Shift+Left"),
        "align centre": entry(translate("actions", "&Centres"), "centre"),
        "align right": entry(translate("actions", "&Right edges"), "right", "Ctrl+Shift+Right"),
        "align top": entry(translate("actions", "&Top edges"), "top", "Ctrl+Shift+Up"),
        "align middle": entry(translate("actions", "&Middles"), "middle"),
        "align bottom": entry(translate("actions", "&Bottom edges"), "bottom", "Ctrl+Shift+Down"),
        "distribute across": Entry(
            translate("actions", "Even gaps &across"), partial(arranger.distribute, "across"), enabled=three
        ),
        "distribute down": Entry(
            translate("actions", "Even gaps &down"), partial(arranger.distribute, "down"), enabled=three
        ),
    }


def _order_entries(view: SheetView) -> dict[str, Entry]:
    arranger = view.tools.arranger
    translate = QCoreApplication.translate
    return {
        "put on grid": Entry(
            translate("actions", "Put on the &grid"), arranger.snap, enabled=arranger.has_parts
        ),
        "number tubes": Entry(
            translate("actions", "&Number the tubes"),
            arranger.renumber,
            status=translate("actions", "V1, V2\u2026 from the supply along the heater wiring."),
            enabled=arranger.has_tubes,
        ),
        "number selected": Entry(
            translate("actions", "Number the &selected tubes"),
            partial(arranger.renumber, True),
            status=translate("actions", "Along the heater wiring; all other ids stay."),
            enabled=lambda: bool(arranger.tubes()),
        ),
        "swap tubes": Entry(
            translate("actions", "S&wap the tubes of two sockets"),
            arranger.swap_tubes,
            status=translate("actions", "The wires stay; where pins differ you are told."),
            enabled=arranger.can_swap_tubes,
        ),
        "swap places": Entry(
            translate("actions", "Swap the &places of two parts"),
            arranger.swap_places,
            status=translate("actions", "The wires follow their parts."),
            enabled=arranger.can_swap_places,
        ),
    }


def _grid_entries(view: SheetView) -> dict[str, Entry]:
    paper = view.paper
    translate = QCoreApplication.translate
    return {
        "show grid": Entry(
            translate("actions", "Show the &grid"),
            paper.toggle_grid,
            ("G",),
            heard=True,
            checked=lambda: paper.shows_grid,
        ),
        "snap to grid": Entry(
            translate("actions", "&Keep to the grid"),
            paper.toggle_snap,
            ("Shift+G",),
            translate("actions", "Alt, held while dragging, does the opposite."),
            heard=True,
            checked=lambda: paper.snaps,
        ),
    }
