"""What can be done to the drawing, each as one undo step. No pointer, no painting."""

from __future__ import annotations

import json
from collections.abc import Collection, Iterator
from dataclasses import dataclass

import msgspec

from app.canvas import words
from app.canvas.adding import Template
from app.canvas.routing import Point, Rect
from app.document import Document
from app.selection import Selection
from core.checks import find_problems
from core.edits import PREFIXES, Edit, add_part, add_wire, fresh_id, in_turn, move_parts, remove, turn_parts
from core.sheet import AnyPart, Joint, Sheet, Wire, split_terminal

MIME = "application/x-heaterloom-part"
GRID = 20.0
_LARGEST_DROP = 20_000  # bytes of JSON; a part takes a few hundred
_FARTHEST = 60  # rings of the grid that are searched for a free place


@dataclass(frozen=True)
class Gauge:
    """The conductor that new wires get."""

    awg: int | None = 20
    area_mm2: float | None = None

    @staticmethod
    def of(wire: Wire) -> Gauge | None:
        """The conductor of a wire that has one."""
        if wire.awg is None and wire.area_mm2 is None:
            return None
        return Gauge(wire.awg, wire.area_mm2)


def part_from(template: Template, part_id: str, at: Point) -> AnyPart:
    """A part from its fields; raises msgspec.ValidationError for fields that no part can have."""
    part: AnyPart = msgspec.convert({**template, "id": part_id, "at": list(at)}, AnyPart)
    return part


def template_from(data: bytes) -> Template | None:
    """The part that dropped data describes; None for anything that is not the description of one part."""
    if len(data) > _LARGEST_DROP:
        return None
    try:
        template = json.loads(data.decode("utf-8"))
        if not isinstance(template, dict):
            return None
        part = part_from(template, "X", (0.0, 0.0))
    except (ValueError, RecursionError, msgspec.ValidationError):
        return None
    if find_problems(Sheet(parts=(part,))):
        return None
    return {key: value for key, value in template.items() if key not in ("id", "at")}


def snapped(x: float, y: float, fine: bool = False) -> Point:
    """The nearest point of the grid, or of the fine grid of whole units."""
    step = 1.0 if fine else GRID
    return round(x / step) * step + 0.0, round(y / step) * step + 0.0


def placing(sheet: Sheet, template: Template, at: Point) -> tuple[str, Edit, str]:
    """The name and the edit of adding a part at a place, and the part's id."""
    part_id = fresh_id(sheet, PREFIXES.get(str(template["kind"]), "X"))
    part = part_from(template, part_id, at)
    return words.add_text(part), add_part(part), part_id


def place(document: Document, selection: Selection, template: Template, at: Point) -> str:
    """Add a part at a place and select it; answers its id."""
    text, edit, part_id = placing(document.sheet, template, at)
    document.apply(text, edit)
    selection.set((part_id,))
    return part_id


def rows_after(at: Point, left: float, right: float, pitch: float, rows: int = 12) -> Iterator[Point]:
    """Places to the right of one on a sheet, as far as ``right``, then along rows below it that begin at ``left``."""
    x, y = at[0] + pitch, at[1]
    for _ in range(rows):
        while x <= right:
            yield snapped(x, y)
            x += pitch
        x, y = left, y + pitch


def spiral(centre: Point) -> Iterator[Point]:
    """Points of the grid from the centre outwards, ring by ring, always in the same order."""
    x, y = snapped(*centre)
    yield x, y
    for ring in range(1, _FARTHEST):
        far = ring * 2
        steps = [(step, -far) for step in range(-far, far, 2)] + [(far, step) for step in range(-far, far, 2)]
        steps += [(-step, far) for step in range(-far, far, 2)] + [
            (-far, -step) for step in range(-far, far, 2)
        ]
        for across, down in sorted(steps, key=lambda step: (abs(step[0]) + abs(step[1]), step)):
            yield x + across * GRID, y + down * GRID


def move(document: Document, ids: Collection[str], dx: float, dy: float, merge_key: str = "") -> None:
    """Move parts."""
    parts = [part_id for part_id in ids if part_id in document.sheet.part_by_id]
    if parts and (dx or dy):
        document.apply(words.move_text(parts, document.sheet), move_parts(parts, dx, dy), merge_key)


def turn(document: Document, ids: Collection[str], degrees: int) -> None:
    """Turn parts clockwise, each about its own place."""
    parts = [part_id for part_id in ids if part_id in document.sheet.part_by_id]
    if parts and degrees % 360:
        document.apply(words.turn_text(parts, document.sheet), turn_parts(parts, degrees))


def delete(document: Document, ids: Collection[str]) -> None:
    """Delete parts and wires, and the wires on deleted parts."""
    if ids:
        document.apply(words.delete_text(ids, document.sheet), remove(ids))


def connect(document: Document, start: str, end: str, gauge: Gauge, length_m: float) -> str:
    """Wire two terminals, or strap them if they are on one part; answers the wire's id."""
    wire_id = fresh_id(document.sheet, "w")
    document.apply(words.wire_text(start, end), wiring(start, end, gauge, length_m, wire_id))
    return wire_id


def wiring(start: str, end: str, gauge: Gauge, length_m: float, wire_id: str) -> Edit:
    """The edit that wires two terminals, or straps them if they are on one part."""
    return add_wire(start, end, id=wire_id, **_fields(start, end, gauge, length_m))


def wiring_to_joint(sheet: Sheet, start: str, at: Point, gauge: Gauge, length_m: float) -> tuple[str, Edit]:
    """The name and the edit of making a joint and wiring a terminal to it."""
    joint = Joint(id=fresh_id(sheet, PREFIXES["joint"]), at=at)
    end = f"{joint.id}.j"
    wire_id = fresh_id(sheet, "w", (joint.id,))
    return words.wire_text(start, end), in_turn(add_part(joint), wiring(start, end, gauge, length_m, wire_id))


def _fields(start: str, end: str, gauge: Gauge, length_m: float) -> dict[str, float | int]:
    if split_terminal(start)[0] == split_terminal(end)[0]:
        return {}
    fields: dict[str, float | int] = {"length_m": max(round(length_m, 2), 0.01)}
    if gauge.area_mm2 is not None:
        fields["area_mm2"] = gauge.area_mm2
    elif gauge.awg is not None:
        fields["awg"] = gauge.awg
    return fields


def everything(sheet: Sheet) -> list[str]:
    """Ids of all parts and wires."""
    return [*sheet.part_by_id, *sheet.wire_by_id]


def around(rect: Rect, at: Point) -> Rect:
    """A rectangle that was measured about the origin, at a place."""
    return rect[0] + at[0], rect[1] + at[1], rect[2] + at[0], rect[3] + at[1]
