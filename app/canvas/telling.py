"""What the canvas tells in words: tooltips, and the description that a screen reader reads."""

from __future__ import annotations

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QWidget

from app.canvas import words
from app.canvas.looks import amps_text
from app.canvas.paths import heater_pins
from app.canvas.scene import SheetScene
from core.sheet import split_terminal

_MOST = 20


def selection_text(scene: SheetScene) -> str:
    """The selected parts and wires, each with its figures."""
    lines = [line_of(scene, item_id) for item_id in sorted(scene.selection.ids)[:_MOST]]
    return words.listed(lines) if lines else words.tr("Nothing selected")


def focus_text(scene: SheetScene, pin: str, start: str) -> str:
    """Where the keyboard is: a pin, with the wire that is being laid to it, or else what is selected."""
    if not pin:
        return selection_text(scene)
    if not start:
        return pin_text(scene, pin)
    if start == pin:
        return words.tr("Wire from {start}: go to where it ends.").format(start=start)
    return words.tr("Wire from {start} to {pin}").format(start=start, pin=pin_text(scene, pin))


def pin_text(scene: SheetScene, terminal: str) -> str:
    """One pin in a line: its name, what it is for, its volts, and the wires on it."""
    part_id, name = split_terminal(terminal)
    place, item = scene.layout_.places.get(part_id), scene.part_items.get(part_id)
    if place is None or item is None:
        return terminal
    is_heater = place.part.kind == "tube" and name in heater_pins(place, scene.document.catalogue)
    wires = [wire.id for wire in scene.document.sheet.wires if terminal in (wire.start, wire.end)]
    said = (
        words.tr("{pin}, heater").format(pin=terminal) if is_heater else terminal,
        item.look.pin_values.get(name, ""),
        words.tr("wires: {ids}").format(ids=", ".join(wires)) if wires else words.tr("no wire"),
    )
    return ", ".join(filter(None, said))


def announce(widget: QWidget, text: str) -> None:
    """Have a screen reader say a text now; without one nothing happens."""
    QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(widget, text))


def line_of(scene: SheetScene, item_id: str) -> str:
    """One part or wire in a line."""
    sheet = scene.document.sheet
    if item_id in scene.part_items and item_id in sheet.part_by_id:
        part, look = sheet.part_by_id[item_id], scene.part_items[item_id].look
        return words.describe_part(part, scene.document.catalogue, look)
    wire = sheet.wire_by_id.get(item_id)
    if wire is None:
        return item_id
    point = scene.viewpoint.point(scene.document.assessment)
    branch = point.branches.get(item_id) if point is not None else None
    text = scene.wire_items[item_id].text if item_id in scene.wire_items else ""
    return words.describe_wire(wire, text, "" if branch is None else amps_text(branch.a))


def tooltip(scene: SheetScene, item_id: str, terminal: str | None) -> str:
    """The tooltip of a part or wire; ``terminal`` is the one under the pointer."""
    item = scene.part_items.get(item_id)
    remark = "" if item is None else item.look.remark
    # how it stands takes a line of its own, as it may be long
    lines = [line_of(scene, item_id).removesuffix(f", {remark}"), *filter(None, (remark,))]
    if item is not None and item.place.part.kind == "tube":
        lines.append(words.tr("Seen from the wiring side."))
    if item is not None and terminal is not None:
        volts = item.look.pin_values.get(split_terminal(terminal)[1], "")
        lines.append(f"{terminal} {volts}".strip())
    return words.tooltip(lines)
