"""Where the pins of each base are, seen from the wiring side (the pins pointing at the eye).

Pins are numbered clockwise from the key, gap or large pins, which stand at the bottom. All outlines have one
radius: what counts for wiring is the place of each pin on its circle, not the size of the tube.

Sources of the angles: IEC 60067 and its British (BS 448) and American (EIA RS-209) counterparts as commonly
tabulated: B9A 36° pitch, B7G, octal, loctal and B8A 45° pitch, magnoval and novar 36° pitch. B4 is a kite,
numbered 1 anode, 2 grid, 3 and 4 filament. The five-pin angles (60° between the heater pins, 75° elsewhere),
the 13-place circle of the twelve-pin base, the nuvistor and the side-contact base follow general knowledge
without a sheet at hand; order and sense of the pins are right, angles within a few degrees.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

OUTLINE = 40.0  # radius of a socket's outline
CIRCLE = 28.8  # radius of the circle on which most pins stand
RING = 3.4  # radius of a pin's ring
LARGE_RING = 4.8

Mark = Literal["", "gap", "key", "groove", "bump", "side", "lugs", "leads"]


@dataclass(frozen=True)
class Pin:
    """A pin: its name, place, and the radius of its ring."""

    name: str
    x: float
    y: float
    ring: float = RING


@dataclass(frozen=True, eq=False)
class Base:
    """A socket: its pins in clockwise order and the mark that shows which way round it is.

    ``is_known`` is False for the generic circle, whose pins stand in no true place. A base equals only
    itself: there is one object for each.
    """

    name: str
    pins: tuple[Pin, ...]
    mark: Mark = ""
    is_known: bool = True
    is_line: bool = False

    def pin(self, name: str) -> Pin | None:
        """The pin of a name."""
        return next((pin for pin in self.pins if pin.name == name), None)


def angle_of(x: float, y: float) -> float:
    """Degrees clockwise from the bottom of the socket, 0 to 360."""
    return math.degrees(math.atan2(-x, y)) % 360


def place(degrees: float, radius: float = CIRCLE) -> tuple[float, float]:
    """The point ``degrees`` clockwise from the bottom at ``radius``."""
    turn = math.radians(degrees)
    return -radius * math.sin(turn), radius * math.cos(turn)


def _ring(name: str, count: int, pitch: float, mark: Mark, large: tuple[int, ...] = ()) -> Base:
    """A base whose pins stand ``pitch`` degrees apart, with the gap of what is left at the bottom."""
    first = (360 - (count - 1) * pitch) / 2
    angles = tuple(first + index * pitch for index in range(count))
    return _at_angles(name, angles, mark, large)


def _at_angles(name: str, angles: tuple[float, ...], mark: Mark, large: tuple[int, ...] = ()) -> Base:
    pins = tuple(
        Pin(str(number), *place(angle), LARGE_RING if number in large else RING)
        for number, angle in enumerate(angles, 1)
    )
    return Base(name, pins, mark)


def _b4() -> Base:
    """The kite of four: anode at the bottom, set apart, grid opposite to it, filament left and right.

    Its trade numbers (1 anode, 2 grid, 3 and 4 filament) do not run round the circle.
    """
    places = (("1", 0.0, 30.0), ("2", 180.0, 21.0), ("3", 90.0, 21.0), ("4", 270.0, 21.0))
    return Base("B4", tuple(Pin(name, *place(a, r), LARGE_RING) for name, a, r in places))


def _nuvistor() -> Base:
    """Twelve places on two three-sided rings of which a triode uses five: 2, 4, 8, 10, 12."""
    used = (2, 4, 8, 10, 12)
    pins = tuple(Pin(str(n), *place(n * 30 - 15, 24.0 if n % 4 == 0 else CIRCLE)) for n in used)
    return Base("nuvistor", pins, "lugs")


def _side_contact() -> Base:
    """Eight contacts on the rim, three on one side and five on the other."""
    angles = (35.0, 70.0, 105.0, 140.0, 180.0, 235.0, 270.0, 305.0)
    return Base("P8A", tuple(Pin(str(n), *place(a, 34.0)) for n, a in enumerate(angles, 1)), "side")


def leads(count: int) -> Base:
    """Flying leads in one row, numbered from the marked end."""
    pitch = min(10.0, 64.0 / max(1, count - 1))
    left = -pitch * (count - 1) / 2
    pins = tuple(Pin(str(index + 1), left + index * pitch, 6.0, 2.6) for index in range(count))
    return Base(f"leads{count}", pins, "leads", is_line=True)


@lru_cache(maxsize=256)
def generic(pins: tuple[str, ...]) -> Base:
    """An honest circle for a base that is not known: the heater pins, evenly placed."""
    step = 360 / max(1, len(pins))
    placed = tuple(
        Pin(name, *place(180 + (index - (len(pins) - 1) / 2) * min(step, 72)))
        for index, name in enumerate(pins)
    )
    return Base("generic", placed, is_known=False)


BASES: dict[str, Base] = {
    base.name: base
    for base in (
        _ring("B9A", 9, 36, "gap"),
        _ring("B7G", 7, 45, "gap"),
        _ring("octal", 8, 45, "key"),
        _ring("loctal", 8, 45, "groove"),
        _ring("rimlock", 8, 45, "bump"),
        _ring("magnoval", 9, 36, "gap"),
        _ring("novar", 9, 36, "gap"),
        _ring("compactron", 12, 360 / 13, "gap"),
        _ring("UX4", 4, 90, "", large=(1, 4)),
        _at_angles("UX5", (30, 105, 180, 255, 330), ""),
        _ring("UX6", 6, 60, "", large=(1, 6)),
        _ring("UX7", 7, 360 / 7, "", large=(1, 7)),
        _ring("jumbo4", 4, 90, ""),
        _ring("giant7", 7, 360 / 7, ""),
        _b4(),
        _nuvistor(),
        _side_contact(),
    )
}

_OTHER_NAMES = {
    "noval": "B9A",
    "miniature": "B7G",
    "b8g": "loctal",
    "b8a": "rimlock",
    "b9d": "magnoval",
    "b9e": "novar",
    "b12c": "compactron",
    "uy5": "UX5",
    "uy4": "UX4",
    "k8a": "octal",
}
_BY_NAME = {name.lower(): base for name, base in BASES.items()}


@lru_cache(maxsize=128)
def base_named(name: str) -> Base | None:
    """The base of a catalogue name, in any case and with its usual second names; None where not known."""
    key = name.strip().lower()
    known = _BY_NAME.get(_OTHER_NAMES.get(key, key).lower())
    if known is not None:
        return known
    count = key.removeprefix("leads")
    return leads(int(count)) if count != key and count.isdecimal() and 2 <= int(count) <= 12 else None


@lru_cache(maxsize=512)
def socket_for(base: str, heater_pins: tuple[str, ...]) -> Base:
    """The socket to draw for a type: its base, if that has all its heater pins, else the generic circle."""
    known = base_named(base)
    if known is not None and all(known.pin(name) is not None for name in heater_pins):
        return known
    return generic(heater_pins)
