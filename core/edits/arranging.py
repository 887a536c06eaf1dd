"""Putting parts in line, at even distances and on the grid. Boxes are (left, top, right, bottom) by part id."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Literal

import msgspec

from core.edits.basic import Edit
from core.edits.places import Box, Point, corner_of, on_sheet
from core.sentences import Text
from core.sheet import AnyPart, Sheet, Wire, split_terminal

Side = Literal["left", "centre", "right", "top", "middle", "bottom"]
Way = Literal["across", "down"]

_NOWHERE = (0.0, 0.0)


def align(boxes: Mapping[str, Box], side: Side) -> Edit:
    """Bring one edge, or the middle, of all boxes in line with that of the rectangle around them."""
    return shift(aligning(boxes, side))


def aligning(boxes: Mapping[str, Box], side: Side) -> dict[str, Point]:
    """How far each part must move to be in line."""
    axis = 0 if side in ("left", "centre", "right") else 1

    def mark(box: Box) -> float:
        low, high = box[axis], box[axis + 2]
        if side in ("left", "top"):
            return low
        return high if side in ("right", "bottom") else (low + high) / 2

    if not boxes:
        return {}
    line = mark(_around(boxes.values()))
    return {part_id: _along(axis, line - mark(box)) for part_id, box in boxes.items()}


def distribute(boxes: Mapping[str, Box], way: Way) -> Edit:
    """Make the gaps between boxes equal, from left to right or from the top; the outermost stay."""
    return shift(distributing(boxes, way))


def distributing(boxes: Mapping[str, Box], way: Way) -> dict[str, Point]:
    """How far each part must move for equal gaps; nothing for fewer than three."""
    axis = 0 if way == "across" else 1
    order = sorted(boxes.items(), key=lambda item: (item[1][axis] + item[1][axis + 2], item[0]))
    if len(order) < 3:
        return {}
    first, last = order[0][1], order[-1][1]
    filled = sum(box[axis + 2] - box[axis] for _, box in order[1:-1])
    gap = (last[axis] - first[axis + 2] - filled) / (len(order) - 1)
    shifts: dict[str, Point] = {}
    place = first[axis + 2] + gap
    for part_id, box in order[1:-1]:
        shifts[part_id] = _along(axis, place - box[axis])
        place += box[axis + 2] - box[axis] + gap
    return shifts


def snap(ids: Iterable[str], grid: float) -> Edit:
    """Put parts on the nearest points of the grid."""
    chosen = frozenset(ids)

    def edit(sheet: Sheet) -> Sheet:
        shifts = {
            part.id: (_to_grid(part.at[0], grid), _to_grid(part.at[1], grid))
            for part in sheet.parts
            if part.id in chosen
        }
        return shift(shifts)(sheet)

    return edit


def shift(shifts: Mapping[str, Point]) -> Edit:
    """Move each part by its own distance; a wire between parts that move alike takes its set corners along."""

    def move(part: AnyPart) -> AnyPart:
        by = shifts.get(part.id, _NOWHERE)
        return part if by == _NOWHERE else msgspec.structs.replace(part, at=_moved(part.at, by, part.id))

    def follow(wire: Wire) -> Wire:
        by = shifts.get(split_terminal(wire.start)[0], _NOWHERE)
        if not wire.via or by == _NOWHERE or by != shifts.get(split_terminal(wire.end)[0], _NOWHERE):
            return wire
        via = tuple(_moved(corner, by, corner_of(wire)) for corner in wire.via)
        return msgspec.structs.replace(wire, via=via)

    def edit(sheet: Sheet) -> Sheet:
        return msgspec.structs.replace(
            sheet, parts=tuple(map(move, sheet.parts)), wires=tuple(map(follow, sheet.wires))
        )

    return edit


def _moved(at: Point, by: Point, what: Text) -> Point:
    return on_sheet((at[0] + by[0], at[1] + by[1]), what)


def _along(axis: int, distance: float) -> Point:
    return (distance + 0.0, 0.0) if axis == 0 else (0.0, distance + 0.0)


def _to_grid(value: float, grid: float) -> float:
    return round(value / grid) * grid - value + 0.0


def _around(boxes: Iterable[Box]) -> Box:
    lefts, tops, rights, bottoms = zip(*boxes, strict=True)
    return min(lefts), min(tops), max(rights), max(bottoms)
