"""What the canvas tells in words: tooltips, and the description that a screen reader reads."""

from __future__ import annotations

from app.canvas import words
from app.canvas.looks import amps_text
from app.canvas.scene import SheetScene
from core.sheet import split_terminal

_MOST = 20


def selection_text(scene: SheetScene) -> str:
    """The selected parts and wires, each with its figures."""
    lines = [line_of(scene, item_id) for item_id in sorted(scene.selection.ids)[:_MOST]]
    return words.listed(lines) if lines else words.tr("Nothing selected")


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
    lines = [line_of(scene, item_id)]
    item = scene.part_items.get(item_id)
    if item is not None and item.place.part.kind == "tube":
        lines.append(words.tr("Seen from the wiring side."))
    if item is not None and terminal is not None:
        volts = item.look.pin_values.get(split_terminal(terminal)[1], "")
        lines.append(f"{terminal} {volts}".strip())
    return words.tooltip(lines)
