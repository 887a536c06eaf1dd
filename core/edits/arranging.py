"""Putting parts in line, at even distances and on the grid. Boxes are (left, top, right, bottom) by part id."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Literal

import msgspec

from core.checks import FARTHEST
from core.edits.basic import Edit
from core.edits.bodily import Box, Point
from core.errors import EditError
from core.sheet import AnyPart, Sheet, Wire, split_terminal

Side = Literal["left", "centre", "right", "top", "middle", "bottom"]
Way = Literal["across", "down"]

_NOWHERE = (0.0, 0.0)


def align(boxes: Mapping[str, Box], side: Side) -> Edit:
    """Bring one edge, or the middle, of all boxes in line with that of the rectangle around them."""
    axis = 0 if side in ("left", "centre", "right") else 1

    def mark(box: Box) -> float:
        low, high = box[axis], box[axis + 2]
        if side in ("left", "top"):
            return low
        return high if side in ("right", "bottom") else (low + high) / 2

    if not boxes:
        return lambda sheet: sheet
    line = mark(_around(boxes.values()))
    return shift({part_id: _along(axis, line - mark(box)) for part_id, box in boxes.items()})


def distribute(boxes: Mapping[str, Box], way: Way) -> Edit:
    """Make the gaps between boxes equal, from left to right or from the top; the outermost stay."""
    axis = 0 if way == "across" else 1
    order = sorted(boxes.items(), key=lambda item: (item[1][axis] + item[1][axis + 2], item[0]))
    if len(order) < 3:
        return lambda sheet: sheet
    first, last = order[0][1], order[-1][1]
    filled = sum(box[axis + 2] - box[axis] for _, box in order[1:-1])
    gap = (last[axis] - first[axis + 2] - filled) / (len(order) - 1)
    shifts: dict[str, Point] = {}
    place = first[axis + 2] + gap
    for part_id, box in order[1:-1]:
        shifts[part_id] = _along(axis, place - box[axis])
        place += box[axis + 2] - box[axis] + gap
    return shift(shifts)


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
        what = f"A corner of {wire.id}"
        return msgspec.structs.replace(wire, via=tuple(_moved(corner, by, what) for corner in wire.via))

    def edit(sheet: Sheet) -> Sheet:
        return msgspec.structs.replace(
            sheet, parts=tuple(map(move, sheet.parts)), wires=tuple(map(follow, sheet.wires))
        )

    return edit


def _moved(at: Point, by: Point, what: str) -> Point:
    x, y = at[0] + by[0], at[1] + by[1]
    if max(abs(x), abs(y)) > FARTHEST:
        raise EditError(f"{what} would lie beyond the sheet: places go to ±{FARTHEST:g}.")
    return x, y


def _along(axis: int, distance: float) -> Point:
    return (distance + 0.0, 0.0) if axis == 0 else (0.0, distance + 0.0)


def _to_grid(value: float, grid: float) -> float:
    return round(value / grid) * grid - value + 0.0


def _around(boxes: Iterable[Box]) -> Box:
    lefts, tops, rights, bottoms = zip(*boxes, strict=True)
    return min(lefts), min(tops), max(rights), max(bottoms)
