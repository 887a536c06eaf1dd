"""Free places on the sheet for parts that are added without the pointer."""

from __future__ import annotations

from collections.abc import Iterator

from core.checks import FARTHEST
from core.sheet import SUPPLY_KINDS, AnyPart, Frame, Note, Sheet

GRID = 20.0
_RINGS = 60
_LINE = 20.0  # height that a line of a note takes

Point = tuple[float, float]

HALVES: dict[str, Point] = {
    "tube": (70.0, 80.0),
    "joint": (10.0, 10.0),
    "chassis": (20.0, 30.0),
    "elevation": (20.0, 30.0),
}
"""Half the room that a part takes with its label, across and down, whichever way it is turned."""
FIGURES: Point = (110.0, 120.0)
"""Half the room that a tube takes with its figures and a lane for wires."""
ROOMY = 200.0
_SUPPLY = (70.0, 70.0)
_USUAL = (50.0, 50.0)


def half_of(kind: str) -> Point:
    """Half the room that a part of a kind takes."""
    if kind.endswith(("supply", "feed")) or kind in {"winding", "battery", "relay"}:
        return _SUPPLY
    return HALVES.get(kind, _USUAL)


_LEADS: dict[str, float] = {"+": -20.0, "-": 20.0, "L": -20.0, "N": 20.0, "a": -40.0, "b": 40.0}


def lead_of(part: AnyPart, terminal: str) -> float:
    """How far below the middle of a supply one of its leads leaves it; 0 for other parts and for turned ones."""
    return 0.0 if part.turn or part.kind not in SUPPLY_KINDS else _LEADS.get(terminal, 0.0)


def is_free(sheet: Sheet, at: Point, kind: str) -> bool:
    """Whether a part of a kind has room at a place."""
    return _has_room(at, half_of(kind), _rooms(sheet))


def roomy_place(sheet: Sheet, near: Point, kind: str) -> Point:
    """A free point where wires may pass between a part and the figures of tubes; any free one if that is far off."""
    at = free_place(sheet, near, kind, FIGURES)
    is_near = max(abs(at[0] - near[0]), abs(at[1] - near[1])) <= ROOMY
    return at if is_near else free_place(sheet, near, kind)


def free_place(sheet: Sheet, near: Point, kind: str, tube: Point | None = None) -> Point:
    """The free point of the grid nearest to a place; the place itself where all is full for far around.

    ``tube`` is half the room that tubes take, where it is not the usual.
    """
    x, y = (round(value / GRID) * GRID + 0.0 for value in near)
    rooms, half = _rooms(sheet, tube), half_of(kind)
    around = ((x + dx, y + dy) for dx, dy in _ring_points())
    return next((at for at in around if _has_room(at, half, rooms)), (_inside(x), _inside(y)))


def _rooms(sheet: Sheet, tube: Point | None = None) -> list[tuple[Point, Point]]:
    rooms = [(part, room) for part in sheet.parts if (room := _room(part)) is not None]
    return [(room[0], tube) if tube and part.kind == "tube" else room for part, room in rooms]


def _has_room(at: Point, half: Point, rooms: list[tuple[Point, Point]]) -> bool:
    within = max(abs(at[0]), abs(at[1])) <= FARTHEST
    return within and not any(_meet(at, half, *room) for room in rooms)


def _inside(value: float) -> float:
    return max(-FARTHEST, min(FARTHEST, value))


def _room(part: AnyPart) -> tuple[Point, Point] | None:
    """Middle and half the size of what a part covers; None for a frame, which stands around others."""
    if isinstance(part, Frame):
        return None
    if isinstance(part, Note):
        half = (part.width / 2, _LINE * (1 + part.text.count("\n")) / 2)
        return (part.at[0] + half[0], part.at[1] + half[1]), half
    return part.at, half_of(part.kind)


def _meet(at: Point, half: Point, other: Point, other_half: Point) -> bool:
    return all(abs(at[axis] - other[axis]) < half[axis] + other_half[axis] for axis in (0, 1))


def _ring_points() -> Iterator[Point]:
    """Offsets on the grid, the nearest first, ring by ring."""
    for ring in range(_RINGS):
        edge = [
            (dx * GRID, dy * GRID)
            for dx in range(-ring, ring + 1)
            for dy in range(-ring, ring + 1)
            if max(abs(dx), abs(dy)) == ring
        ]
        yield from sorted(edge, key=lambda one: (abs(one[0]) + abs(one[1]), one[1] < 0, one[0] < 0))
