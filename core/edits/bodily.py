"""Turning and mirroring several parts as one body, about a point. Boxes are (left, top, right, bottom) by part id."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping

import msgspec

from core.edits.basic import Edit
from core.edits.places import Box, Point, corner_of, on_sheet
from core.sheet import REMARK_KINDS, AnyPart, Frame, Sheet, Tube, Turn, Wire, split_terminal


def mirror(ids: Iterable[str], middle: Point, boxes: Mapping[str, Box], *, upright: bool = False) -> Edit:
    """Mirror parts about a vertical line through ``middle``, or with ``upright`` about a level one.

    Symbols are flipped; a socket is only moved, as the order of its pins cannot be turned round. ``boxes`` are
    needed of notes and frames, which are mirrored as boxes.
    """
    axis = 1 if upright else 0

    def flipped(at: Point) -> Point:
        put = list(at)
        put[axis] = 2 * middle[axis] - at[axis] + 0.0
        return put[0], put[1]

    def flip(part: AnyPart) -> AnyPart:
        if part.kind in REMARK_KINDS:
            left, top, right, bottom = boxes[part.id]
            corner = (left, bottom) if upright else (right, top)
            return msgspec.structs.replace(part, at=on_sheet(flipped(corner), part.id))
        at = on_sheet(flipped(part.at), part.id)
        if isinstance(part, Tube):
            return msgspec.structs.replace(part, at=at)
        turn: Turn = ((180 if upright else 0) - part.turn) % 360  # type: ignore[assignment]
        return msgspec.structs.replace(part, at=at, turn=turn, mirror=not part.mirror)

    return _as_body(ids, flip, flipped)


def rotate(ids: Iterable[str], middle: Point, boxes: Mapping[str, Box], degrees: int = 90) -> Edit:
    """Turn parts clockwise as one body about ``middle`` by a multiple of 90 degrees.

    Frames swap width and height in a quarter turn; notes stay upright, only their middles go round.
    """
    quarters = degrees % 360 // 90

    def turned(at: Point) -> Point:
        x, y = at[0] - middle[0], at[1] - middle[1]
        for _ in range(quarters):
            x, y = -y, x
        return middle[0] + x + 0.0, middle[1] + y + 0.0

    def turn(part: AnyPart) -> AnyPart:
        if part.kind in REMARK_KINDS:
            return _turned_remark(part, boxes[part.id], turned, quarters)
        angle: Turn = (part.turn + degrees) % 360  # type: ignore[assignment]
        return msgspec.structs.replace(part, at=on_sheet(turned(part.at), part.id), turn=angle)

    return _as_body(ids, turn, turned)


def _turned_remark(part: AnyPart, box: Box, turned: Callable[[Point], Point], quarters: int) -> AnyPart:
    left, top, right, bottom = box
    x, y = turned(((left + right) / 2, (top + bottom) / 2))
    width, height = right - left, bottom - top
    if isinstance(part, Frame):
        if quarters % 2:
            width, height = part.height, part.width
        at = on_sheet((x - width / 2, y - height / 2), part.id)
        return msgspec.structs.replace(part, at=at, width=width, height=height)
    return msgspec.structs.replace(part, at=on_sheet((x - width / 2, y - height / 2), part.id))


def _as_body(
    ids: Iterable[str], alter: Callable[[AnyPart], AnyPart], carry: Callable[[Point], Point]
) -> Edit:
    """Alter parts, and carry along the corners that were set for wires between them."""
    chosen = frozenset(ids)

    def follow(wire: Wire) -> Wire:
        inside = {split_terminal(wire.start)[0], split_terminal(wire.end)[0]} <= chosen
        if not inside or not wire.via:
            return wire
        return msgspec.structs.replace(
            wire, via=tuple(on_sheet(carry(corner), corner_of(wire)) for corner in wire.via)
        )

    def edit(sheet: Sheet) -> Sheet:
        parts = tuple(alter(part) if part.id in chosen else part for part in sheet.parts)
        return msgspec.structs.replace(sheet, parts=parts, wires=tuple(map(follow, sheet.wires)))

    return edit
