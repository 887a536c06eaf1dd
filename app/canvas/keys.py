"""The keys of the drawing: everything the pointer does for parts can be done from here as well."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QKeySequence

from app.canvas.operations import GRID

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_K = Qt.Key
_ARROWS = {
    _K.Key_Left: (-1, 0),
    _K.Key_Right: (1, 0),
    _K.Key_Up: (0, -1),
    _K.Key_Down: (0, 1),
}
_PLAIN: dict[int, Callable[[SheetView], None]] = {
    _K.Key_Delete: lambda view: view.delete_selected(),
    _K.Key_Backspace: lambda view: view.delete_selected(),
    _K.Key_Escape: lambda view: view.selection.clear(),
    _K.Key_Return: lambda view: view.edit_selected(),
    _K.Key_Enter: lambda view: view.edit_selected(),
    _K.Key_F: lambda view: view.fit(),
    _K.Key_Plus: lambda view: view.zoom_in(),
    _K.Key_Equal: lambda view: view.zoom_in(),
    _K.Key_Minus: lambda view: view.zoom_out(),
    _K.Key_0: lambda view: view.zoom_reset(),
    _K.Key_Slash: lambda view: view.add_field.enter(),
}


def press(view: SheetView, event: QKeyEvent) -> bool:
    """Carry out a key; False for a key that means nothing here."""
    key, modifiers = event.key(), event.modifiers()
    held = modifiers & ~(Qt.KeyboardModifier.KeypadModifier | Qt.KeyboardModifier.ShiftModifier)
    if event.matches(QKeySequence.StandardKey.SelectAll):
        view.select_all()
        return True
    if held == Qt.KeyboardModifier.ControlModifier:
        return _with_control(view, key)
    if key in _ARROWS and held in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.AltModifier):
        return _nudge(view, key, fine=bool(held))
    if held:
        return False
    if key == _K.Key_R:
        view.turn_selected(-90 if modifiers & Qt.KeyboardModifier.ShiftModifier else 90)
    elif key == _K.Key_Space:
        view.is_space_held = True
    elif key in _PLAIN:
        _PLAIN[key](view)
    else:
        return False
    return True


def _with_control(view: SheetView, key: int) -> bool:
    actions: dict[int, Callable[[], None]] = {
        _K.Key_K: view.add_field.enter,
        _K.Key_Plus: view.zoom_in,
        _K.Key_Equal: view.zoom_in,
        _K.Key_Minus: view.zoom_out,
        _K.Key_0: view.zoom_reset,
    }
    if key not in actions:
        return False
    actions[key]()
    return True


def _nudge(view: SheetView, key: int, fine: bool) -> bool:
    """Move what is selected; with nothing selected the arrows scroll."""
    if not view.selection.ids & view.document.sheet.part_by_id.keys():
        return False
    across, down = _ARROWS[Qt.Key(key)]
    step = 1.0 if fine else GRID
    view.nudge_selected(across * step, down * step)
    return True
