"""Walking the drawing by keyboard: from part to part, into the pins of one, along its wires, and wiring pin to pin.

Where the keyboard is, is the selected part or wire, or one pin of the selected part. A ring shows it and a screen
reader is told. The pointer takes the keyboard's place away; so does a change of the selection from elsewhere.
"""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from app.canvas import paths, telling, words
from app.canvas.focus_ring import FocusRing, ring_path
from app.canvas.handles import leading_wire
from app.canvas.preview import WirePreview
from app.canvas.wiring import lay, pair_step, second_ends, wire_step
from core.sheet import split_terminal

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_K = Qt.Key
_STEPS = {_K.Key_Left: -1, _K.Key_Up: -1, _K.Key_Right: 1, _K.Key_Down: 1}
_NO_MODIFIERS, _CTRL = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ControlModifier
LEFT, RIGHT, UP, DOWN = (-1.0, 0.0), (1.0, 0.0), (0.0, -1.0), (0.0, 1.0)


class Walk:
    """Where the keyboard is on one drawing.

    ``pin`` is the terminal it is at, if any; ``start`` the terminal from which a wire is being laid, if one is.
    """

    def __init__(self, view: SheetView) -> None:
        self._view = view
        self._scene = view.sheet_scene
        self.pin = ""
        self.start = ""
        self._home = ""  # the part or terminal whose wires are being walked
        self._preview: WirePreview | None = None
        self._ring: FocusRing | None = None
        self._is_moving = False
        self.is_by_keys = False

    # where it is

    @property
    def part_id(self) -> str:
        """The one part that the keyboard is at, empty where it is at none or at several."""
        ids = self._view.selection.ids
        only = next(iter(ids)) if len(ids) == 1 else ""
        return only if only in self._scene.layout_.places else ""

    @property
    def focus(self) -> str:
        """The terminal, part or wire that the keyboard is at."""
        ids = self._view.selection.ids
        return self.pin or (next(iter(ids)) if len(ids) == 1 else leading_wire(self._scene, ids))

    def text(self) -> str:
        """What a screen reader is told about it."""
        return telling.focus_text(self._scene, self.pin, self.start)

    # going elsewhere

    def step(self, by: int) -> bool:
        """Go to the next or the previous part in reading order; False past either end."""
        places = self._scene.layout_.places
        ids = self._view.selection.ids
        if self._home and not ids & places.keys():
            ids = frozenset((split_terminal(self._home)[0] if "." in self._home else self._home,))
        found = paths.next_in(paths.reading_order(places), ids, by)
        if found is None and self.start:
            found = paths.next_in(paths.reading_order(places), (), by)
        if found is None:
            return False
        self._go_to_part(found)
        return True

    def towards(self, way: tuple[float, float]) -> None:
        """Go to the nearest part in a direction."""
        places = self._scene.layout_.places
        if not self.part_id:
            self.step(1)
            return
        found = paths.nearest(places, self.part_id, way)
        if found is not None:
            self._go_to_part(found)

    def _go_to_part(self, part_id: str) -> None:
        pin = ""
        if self.pin:
            pin = self._likely(part_id)
        self._show((part_id,), pin)

    def enter_pins(self) -> None:
        """Step into the pins of the part, or out of them."""
        if self.pin and not self.start:
            self._show((self.part_id,), "")
        elif self.part_id and not self.start:
            self._show((self.part_id,), self._likely(self.part_id))

    def wires(self, by: int) -> None:
        """Go to the next wire on the part or pin, round and round; a pair counts as one, as it does for a click."""
        ids = self._view.selection.ids
        sheet = self._view.document.sheet
        if not leading_wire(self._scene, ids):
            self._home = self.focus
        found = paths.wires_at(sheet, self._home) if self._home else []
        if not found or self.start:
            self._say(words.tr("No wires here."))
            return
        current = next((number for number, each in enumerate(found) if ids & each), -1 if by > 0 else 0)
        self._show(found[(current + by) % len(found)], "")

    def _likely(self, part_id: str) -> str:
        layout = self._scene.layout_
        catalogue = self._view.document.catalogue
        name = paths.likely_pin(layout.places[part_id], catalogue, layout.ends, self.start)
        return f"{part_id}.{name}" if name is not None else ""

    def _show(self, ids: Collection[str], pin: str) -> None:
        """Be at a part, one of its pins, a wire, or a pair of wires."""
        self._is_moving = True
        try:
            self._view.selection.show(ids)
        finally:
            self._is_moving = False
        self.pin = pin
        self.is_by_keys = True
        self._consider()
        self.refresh()
        self._view.setAccessibleDescription(self.text())
        self._say(self.text())

    def _say(self, text: str) -> None:
        telling.announce(self._view, text)

    # keys

    def press(self, event: QKeyEvent) -> bool:
        """Carry out a key that means something where the keyboard is; False for any other."""
        held = event.modifiers() & ~(Qt.KeyboardModifier.KeypadModifier | Qt.KeyboardModifier.ShiftModifier)
        self.is_by_keys = True
        self.refresh()
        if held == _CTRL and self.start and event.key() in (_K.Key_Return, _K.Key_Enter):
            self._begin_or_lay(in_pair=not self._view.wires.in_pairs)
            return True
        if held != _NO_MODIFIERS:
            return False
        if not self.pin:
            return event.key() == _K.Key_Escape and self._go_home()
        return self._press_at_pin(event)

    def _press_at_pin(self, event: QKeyEvent) -> bool:
        key = _K(event.key())
        if key in _STEPS:
            self._step_pin(_STEPS[key])
        elif key in (_K.Key_Return, _K.Key_Enter):
            self._begin_or_lay(in_pair=self._view.wires.in_pairs)
        elif key == _K.Key_Escape:
            self._step_out()
        elif key == _K.Key_Slash and self.start:
            self._type_target()
        else:
            return self._type_pin(event.text())
        return True

    def _step_pin(self, by: int) -> None:
        part_id, name = split_terminal(self.pin)
        names = paths.pins_in_turn(self._scene.layout_.places[part_id])
        at = names.index(name) if name in names else 0
        self._show((part_id,), f"{part_id}.{names[(at + by) % len(names)]}")

    def _type_pin(self, text: str) -> bool:
        part_id, name = split_terminal(self.pin)
        found = paths.named_pin(self._scene.layout_.places[part_id], name, text)
        if found is None:
            return False
        self._show((part_id,), f"{part_id}.{found}")
        return True

    def _begin_or_lay(self, in_pair: bool) -> None:
        """Begin a wire at the pin; with one begun, lay it to here."""
        if not self.start:
            self.start = self.pin
            self._show((self.part_id,), self.pin)
            return
        start, end = self.start, self.pin
        if start == end:
            self._say(words.tr("A wire needs two different terminals."))
            return
        self.cancel_wire()
        part_id = split_terminal(end)[0]
        self._is_moving = True
        try:
            lay(self._view, start, end, in_pair)
        finally:
            self._is_moving = False
        self._show((part_id,), end)

    def _step_out(self) -> None:
        """Give up the wire and be where it began; without one step out of the pins."""
        if self.start:
            start = self.start
            self.cancel_wire()
            self._show((split_terminal(start)[0],), start)
        else:
            self._show((self.part_id,), "")

    def _go_home(self) -> bool:
        """From a wire back to the part or pin whose wires were walked."""
        home, self._home = self._home, ""
        part_id = split_terminal(home)[0] if "." in home else home
        if part_id not in self._scene.layout_.places:
            return False
        self._show((part_id,), home if "." in home else "")
        return True

    def _type_target(self) -> None:
        """Go on in the add field, where the other end can be typed."""
        start, field = self.start, self._view.add_field
        self.cancel_wire()
        field.enter()
        field.begin_with(f"{start} ")

    # the wire under way

    def _consider(self) -> None:
        """Show the wire as it would run, and have it solved as if it were there."""
        if not self.start:
            return
        if self._preview is None:
            self._preview = WirePreview(self._scene, self.start)
        target = self.pin if self.pin != self.start else None
        point = self._scene.layout_.terminal_point(self.pin) or (0.0, 0.0)
        self._preview.show_line(target, point, joint=False)
        if target is None:
            self._scene.proposal.withdraw()
            return
        in_pairs = self._view.wires.in_pairs
        second = second_ends(self._view, self.start, target) if in_pairs else None
        ends = self.start, target
        step = wire_step(self._view, *ends) if second is None else pair_step(self._view, ends, second)
        self._scene.proposal.consider(*step)

    def cancel_wire(self) -> None:
        """Give up the wire under way, if any; the keyboard stays where it is."""
        if self.start:
            self.start = ""
            self._scene.proposal.withdraw()
        if self._preview is not None:
            self._preview.remove()
            self._preview = None

    # keeping in step

    def leave(self) -> None:
        """Be nowhere: the pointer or another sheet took over."""
        self.cancel_wire()
        self.pin = self._home = ""
        self.is_by_keys = False
        self.refresh()

    def on_selection(self) -> None:
        """Something was selected from elsewhere: a pin of another part is left."""
        if self._is_moving:
            return
        if self.pin and self._view.selection.ids != {split_terminal(self.pin)[0]}:
            self.cancel_wire()
            self.pin = ""
        self.refresh()

    def refresh(self) -> None:
        """Put the ring where the keyboard is, or hide it while the drawing does not have the keyboard."""
        if self.pin and self._scene.layout_.terminal_point(self.pin) is None:
            self.pin = ""
        if self._ring is not None:
            self._scene.removeItem(self._ring)
            self._ring = None
        if not (self.is_by_keys and self._view.hasFocus()):
            return
        path = ring_path(self._scene, self.focus)
        if path is not None:
            self._ring = FocusRing(path, self._scene.theme)
            self._scene.addItem(self._ring)

    @property
    def ring(self) -> FocusRing | None:
        """The ring on the drawing, if it shows one."""
        return self._ring
