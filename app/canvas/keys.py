"""The keys of the drawing: everything the pointer does for parts can be done from here as well."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from app.actions import by_key
from app.canvas.operations import GRID
from app.canvas.wire_editing import STEP

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_K = Qt.Key
_ARROWS = {
    _K.Key_Left: (-1, 0),
    _K.Key_Right: (1, 0),
    _K.Key_Up: (0, -1),
    _K.Key_Down: (0, 1),
}
_STRIDE = 5.0  # how many steps one with Shift counts for
_SHIFT = Qt.KeyboardModifier.ShiftModifier


def press(view: SheetView, event: QKeyEvent) -> bool:
    """Carry out a key; False for a key that means nothing here."""
    if event.key() == _K.Key_Escape and (view.placing.end() or view.handles.leave()):
        return True
    if view.walk.press(event):
        return True
    key, modifiers = event.key(), event.modifiers()
    held = modifiers & ~(Qt.KeyboardModifier.KeypadModifier | _SHIFT)
    if key in _ARROWS and held in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.AltModifier):
        return _nudge(view, event)
    if key == _K.Key_Escape and not held:
        if view.selection.ids:
            view.selection.clear()
        else:
            view.sheet_scene.viewpoint.leave_instant()
        return True
    if key == _K.Key_Space and not held:
        view.is_space_held = True
        return True
    return _carry_out(view, event)


def _carry_out(view: SheetView, event: QKeyEvent) -> bool:
    """Do what an entry of the drawing says for a key; signs that need Shift on some keyboards are found without it."""
    known = by_key(view.entries.values())
    pressed = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
    tried = (pressed,) if _K.Key_A <= event.key() <= _K.Key_Z else (pressed, pressed & ~_SHIFT)
    for modifiers in tried:
        entry = known.get(int(modifiers.value) | int(event.key()))
        if entry is not None:
            if entry.is_possible:
                entry.action()
            return True
    return False


def _nudge(view: SheetView, event: QKeyEvent) -> bool:
    """Move what is selected: by a step, with Shift by five, with Alt by one unit; without a selection scroll."""
    across, down = _ARROWS[Qt.Key(event.key())]
    fine = bool(event.modifiers() & Qt.KeyboardModifier.AltModifier)
    if view.handles.current is not None:
        step = 1.0 if fine else STEP
        return view.wires.move_piece(across * step, down * step)
    if not view.selection.ids & view.document.sheet.part_by_id.keys():
        return False
    step = (1.0 if fine else GRID) * (_STRIDE if event.modifiers() & _SHIFT else 1.0)
    view.editor.nudge(across * step, down * step, alone=fine)
    return True
