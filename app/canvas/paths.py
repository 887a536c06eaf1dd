"""Ways through the drawing for the keyboard: parts in order, the nearest in a direction, pins and wires in turn.

Pure functions of places; the order is the one a page is read in, left to right and then down.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

from app.canvas.places import Place
from app.canvas.routing import Point
from core.catalogue import Catalogue
from core.edits.pairs import with_twins
from core.sheet import Sheet, Tube, split_terminal

ROW = 80.0  # parts whose places differ by less than this in height stand in one row


def reading_order(places: Mapping[str, Place]) -> list[str]:
    """Ids of parts row by row from the top, each row from the left."""
    left = sorted(places.values(), key=lambda place: (place.part.at[1], place.part.at[0], place.part.id))
    order: list[str] = []
    while left:
        top = left[0].part.at[1]
        row = [place for place in left if place.part.at[1] < top + ROW]
        left = left[len(row) :]
        order += [place.part.id for place in sorted(row, key=lambda place: (*place.part.at, place.part.id))]
    return order


def next_in(order: Sequence[str], ids: Collection[str], step: int) -> str | None:
    """The one after (or before) those chosen; the first (or last) where none is chosen; None past either end."""
    if not order:
        return None
    chosen = [number for number, each in enumerate(order) if each in ids]
    if not chosen:
        return order[0 if step > 0 else -1]
    following = (max(chosen) if step > 0 else min(chosen)) + step
    return order[following] if 0 <= following < len(order) else None


def nearest(places: Mapping[str, Place], start: str, way: Point) -> str | None:
    """The nearest part from ``start`` in a direction (a unit vector along an axis); None where none lies there.

    A part counts as lying there if it is further along the direction than beside it; being beside it weighs double.
    """
    x, y = places[start].part.at
    best, least = None, float("inf")
    for part_id, place in places.items():
        across, down = place.part.at[0] - x, place.part.at[1] - y
        along = across * way[0] + down * way[1]
        beside = abs(across * way[1]) + abs(down * way[0])
        if part_id != start and along > 0 and beside <= along and along + 2 * beside < least:
            best, least = part_id, along + 2 * beside
    return best


def pins_in_turn(place: Place) -> list[str]:
    """The terminals of a part in the order the arrows walk them: pins by number, others as they lie."""
    if isinstance(place.part, Tube):
        return sorted(place.terminals, key=lambda name: (int(name) if name.isdigit() else 0, name))
    return sorted(place.terminals, key=lambda name: (place.terminals[name].y, place.terminals[name].x, name))


def heater_pins(place: Place, catalogue: Catalogue) -> list[str]:
    """Pins of a tube that its heater is on, by number; for other parts every terminal."""
    known = catalogue.tube(place.part.type) if isinstance(place.part, Tube) else None
    if known is None:
        return pins_in_turn(place)
    pins = {pin for section in known.sections for pin in section.pins}
    return [name for name in pins_in_turn(place) if name in pins]


def likely_pin(
    place: Place, catalogue: Catalogue, ends: Mapping[str, int], coming_from: str = ""
) -> str | None:
    """The terminal wanted most likely: from a like pin the same one, else the first heater pin without a wire."""
    heaters = heater_pins(place, catalogue)
    names = heaters or pins_in_turn(place)
    if not names:
        return None
    part_id, name = split_terminal(coming_from) if coming_from else ("", "")
    if name.isdigit() and name in names and part_id != place.part.id:
        return name
    open_ = [each for each in names if not ends.get(f"{place.part.id}.{each}")]
    return (open_ or names)[0]


def named_pin(place: Place, current: str, text: str) -> str | None:
    """The terminal that a typed character means: its name, or the next one after ``current`` that begins so."""
    names = pins_in_turn(place)
    begun = text.casefold()
    if not begun:
        return None
    at = names.index(current) if current in names else -1
    turned = [*names[at + 1 :], *names[: at + 1]]
    exact = [name for name in names if name.casefold() == begun]
    fitting = exact or [name for name in turned if name.casefold().startswith(begun)]
    return fitting[0] if fitting else None


def wires_at(sheet: Sheet, home: str) -> list[frozenset[str]]:
    """Wires on a part, or on one terminal of it, in the order of the sheet; the two of a twisted pair together."""
    found = (
        with_twins(sheet, (wire.id,))
        for wire in sheet.wires
        if home in (wire.start, wire.end, split_terminal(wire.start)[0], split_terminal(wire.end)[0])
    )
    return list(dict.fromkeys(found))
