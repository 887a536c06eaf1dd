"""Frames and notes as things to take hold of: what lies under the pointer, and what a frame holds."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from app.canvas.layout import Layout
from app.canvas.places import Place
from app.canvas.routing import Point, Rect
from app.canvas.symbols.remarks import title_box
from core.sheet import Frame

Edge = Literal["left", "top", "right", "bottom"]
Grip = tuple[str, frozenset[Edge]]

_ROOM = 40.0  # between what a new frame encloses and its outline
_GRID = 20.0


def frame_at(layout: Layout, x: float, y: float, radius: float) -> str | None:
    """The uppermost frame whose title or outline is at a point; what it encloses is none of it."""
    found = None
    for place in _frames(layout):
        if _is_on_title(place, x, y) or _edges_at(place.body, x, y, radius):
            found = place.part.id
    return found


def title_at(layout: Layout, x: float, y: float) -> str | None:
    """The uppermost frame whose title is at a point."""
    return next(
        (place.part.id for place in reversed(_frames(layout)) if _is_on_title(place, x, y)),
        None,
    )


def grip_at(layout: Layout, selected: Iterable[str], x: float, y: float, radius: float) -> Grip | None:
    """The edges of a frame, or the right edge of the selected note, that a drag at a point would move."""
    for place in reversed(_frames(layout)):
        edges = _edges_at(place.body, x, y, radius)
        if edges and not _is_on_title(place, x, y):
            return place.part.id, edges
    for part_id in selected:
        held = layout.places.get(part_id)
        if held is not None and held.part.kind == "note":
            _, top, right, bottom = held.body
            if abs(x - right) <= radius and top <= y <= bottom:
                return part_id, frozenset(("right",))
    return None


def within(layout: Layout, rect: Rect) -> set[str]:
    """Frames that lie wholly in a rectangle."""
    return {place.part.id for place in _frames(layout) if _holds(rect, place.body)}


def carried(layout: Layout, ids: Iterable[str], alone: bool = False) -> set[str]:
    """Parts that move together: the chosen ones and, unless ``alone``, what stands inside chosen frames."""
    places = layout.places
    moved = {part_id for part_id in ids if part_id in places}
    if alone:
        return moved
    waiting = [part_id for part_id in moved if places[part_id].part.kind == "frame"]
    while waiting:
        inside = {
            place.part.id
            for place in places.values()
            if place.part.id not in moved and _is_inside(places[waiting[-1]].body, place)
        }
        waiting.pop()
        waiting += [part_id for part_id in inside if places[part_id].part.kind == "frame"]
        moved |= inside
    return moved


def around(layout: Layout, ids: Iterable[str]) -> Rect | None:
    """The outline of a frame around parts and their labels, on the grid; None where there are none."""
    places = [layout.places[part_id] for part_id in ids if part_id in layout.places]
    if not places:
        return None
    rects = [rect for place in places for rect in (place.body, place.label)]
    left, top = (min(rect[side] for rect in rects) - _ROOM for side in (0, 1))
    right, bottom = (max(rect[side] for rect in rects) + _ROOM for side in (2, 3))
    return tuple(round(value / _GRID) * _GRID for value in (left, top, right, bottom))  # type: ignore[return-value]


def _frames(layout: Layout) -> list[Place]:
    return [place for place in layout.places.values() if place.part.kind == "frame"]


def _is_on_title(place: Place, x: float, y: float) -> bool:
    assert isinstance(place.part, Frame)
    left, top = place.part.at
    return title_box(place.part).contains(x - left, y - top)


def _edges_at(body: Rect, x: float, y: float, radius: float) -> frozenset[Edge]:
    left, top, right, bottom = body
    if not (left - radius <= x <= right + radius and top - radius <= y <= bottom + radius):
        return frozenset()
    near: dict[Edge, float] = {
        "left": abs(x - left),
        "top": abs(y - top),
        "right": abs(x - right),
        "bottom": abs(y - bottom),
    }
    return frozenset(edge for edge, far in near.items() if far <= radius)


def _holds(outer: Rect, inner: Rect) -> bool:
    return outer[0] <= inner[0] and outer[1] <= inner[1] and inner[2] <= outer[2] and inner[3] <= outer[3]


def _is_inside(frame: Rect, place: Place) -> bool:
    """Whether a part stands in a frame: the middle of its symbol does; another frame must lie wholly inside."""
    if place.part.kind == "frame":
        return _holds(frame, place.body)
    x, y = _middle(place.body)
    return frame[0] <= x <= frame[2] and frame[1] <= y <= frame[3]


def _middle(rect: Rect) -> Point:
    return (rect[0] + rect[2]) / 2, (rect[1] + rect[3]) / 2
