"""The menu under the right button and the Menu key: what can be done with what is there."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtWidgets import QMenu

from app.actions import Entry, fill, set_apart
from app.canvas import words
from app.canvas.arrange_actions import ALIGNING, DISTRIBUTING
from app.canvas.routing import Point
from app.mends import mend_entries
from core.sheet import REMARK_KINDS, Tube

if TYPE_CHECKING:
    from app.canvas.view import SheetView

Rows = list[Entry | None]

_COPYING = ("cut", "copy", "duplicate", "delete")
_TURNING = ("turn right", "turn left", "mirror", "mirror upright")


def open_by_key(view: SheetView) -> None:
    """Open the menu of what is selected; a window system that has opened it already is left to it."""
    if not any(menu.isVisible() for menu in view.findChildren(QMenu)):
        at = _middle_of_selection(view)
        reason = QContextMenuEvent.Reason.Keyboard
        show(view, QContextMenuEvent(reason, at, view.viewport().mapToGlobal(at)))


def show(view: SheetView, event: QContextMenuEvent) -> QMenu:
    """Open the menu for what lies under the pointer, or, by the key, for what is selected."""
    by_key = event.reason() == QContextMenuEvent.Reason.Keyboard
    at = _middle_of_selection(view) if by_key else event.pos()
    point = view.mapToScene(at)
    found = bool(view.selection.ids) if by_key else view.id_at(at) is not None
    menu = QMenu(view)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    menu.setToolTipsVisible(True)
    menu.setFont(view.sheet_scene.theme.font(12))
    fill(menu, rows_for(view) if found else paper_rows(view, (point.x(), point.y())))
    if found and view.tools.arranger.has_parts(2):
        lining = menu.addMenu(words.tr("Line &up"))
        fill(lining, _named(view, *ALIGNING, None, *DISTRIBUTING))
    set_apart(menu.actions())
    menu.popup(view.viewport().mapToGlobal(at))
    return menu


def rows_for(view: SheetView) -> Rows:
    """What can be done with a part, a wire, or several things, whichever is selected."""
    parts = view.document.sheet.part_by_id
    chosen = [parts[item_id] for item_id in view.selection.ids if item_id in parts]
    if not chosen:
        pairing = [name for name in ("twist", "untwist", "find way") if view.entries[name].is_possible]
        splitting = ["properties", "split"] if len(view.selection.ids) == 1 else []
        rows = _named(view, *splitting, *pairing, "delete", None, "select connected")
        return [*_mends(view), *rows]
    turning = [] if all(part.kind in REMARK_KINDS for part in chosen) else [*_TURNING, None]
    tubes = [part for part in chosen if isinstance(part, Tube)]
    if len(view.selection.ids) == 1:
        of_tube = ["chain", "replace type", None] if tubes else []
        reaching = [] if chosen[0].kind in REMARK_KINDS else [None, "select connected"]
        string = ["select string"] if tubes else []
        of_tube += ["take out", None] if chosen[0].kind == "joint" else []
        rows = _named(view, "properties", None, *of_tube, *turning, *_COPYING, *reaching, *string)
        return [*_mends(view), *rows]
    as_one = ["turn as one", "turn left as one", None]
    swapping = [name for name in ("swap tubes", "swap places") if view.entries[name].is_possible]
    numbering = ["number selected", "replace type"] if tubes else []
    tail = [None, *swapping, *numbering] if swapping or numbering else []
    wiring = ["chain", None] if tubes else []
    return _named(view, *wiring, *_COPYING, None, *turning, *as_one, "select connected", "put on grid", *tail)


def _mends(view: SheetView) -> Rows:
    """What would mend the findings at the one thing that is selected."""
    if len(view.selection.ids) != 1:
        return []
    entries = mend_entries(view.document, next(iter(view.selection.ids)))
    return [*entries, None] if entries else []


def paper_rows(view: SheetView, at: Point) -> Rows:
    """What can be done on the bare paper; what is pasted comes to the point of the click."""
    paste = view.entries["paste"]
    here = Entry(paste.text, partial(view.tools.pasting.paste, at), paste.keys, paste.status, heard=True)
    rest = _named(view, None, "select all", "find", "number tubes", None, "fit", "show grid", "snap to grid")
    return [*_named(view, "add"), here, *rest]


def _named(view: SheetView, *names: str | None) -> Rows:
    return [None if name is None else _quiet(view.entries[name]) for name in names]


def _quiet(entry: Entry) -> Entry:
    """An entry whose key is only a hint: the window's menu holds the shortcut already."""
    return Entry(
        entry.text,
        entry.action,
        entry.keys,
        entry.status,
        heard=True,
        enabled=entry.enabled,
        checked=entry.checked,
    )


def _middle_of_selection(view: SheetView) -> QPoint:
    scene = view.sheet_scene
    area = QRectF()
    for item_id in view.selection.ids:
        item = scene.item_of(item_id)
        if item is not None:
            area = area.united(item.sceneBoundingRect())
    shown = view.viewport().rect()
    at = shown.center() if area.isNull() else view.mapFromScene(area.center())
    return at if shown.contains(at) else shown.center()
