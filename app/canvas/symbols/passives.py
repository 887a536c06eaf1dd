"""Symbols of the parts in a heater line, after the usual IEC 60617 forms, and of chassis, joint and lamp."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtGui import QPainterPath

from app.canvas.symbols.drawing import Drawing, Text, circle, joined, path, rectangle
from app.canvas.symbols.geometry import Box, Terminal
from core.sheet import AnyPart, Balance, Relay, Switch

_REACH = 40.0  # half the distance between the two ends


def _line_part(
    half: float,
    inside: QPainterPath,
    body: Box,
    names: tuple[str, str] = ("1", "2"),
    **more: object,
) -> Drawing:
    """A part lying along x, its leads running from ``half`` to the ends."""
    leads = path(((-_REACH, 0), (-half, 0)), ((half, 0), (_REACH, 0)))
    ends = (Terminal(names[0], -_REACH, 0, -1, 0), Terminal(names[1], _REACH, 0, 1, 0))
    shape = rectangle(-half, body.top, half, body.bottom)
    return Drawing(ends, body, joined(leads, inside), shape, **more)  # type: ignore[arg-type]


_BLOCK = (-22.0, -8.0, 22.0, 8.0)


@lru_cache(maxsize=1)
def resistor() -> Drawing:
    """A rectangle."""
    block = rectangle(*_BLOCK)
    return _line_part(22, block, Box(-40, -8, 40, 8), ground=block)


@lru_cache(maxsize=1)
def thermistor() -> Drawing:
    """A rectangle with a slanted line: its resistance falls with heat."""
    block = rectangle(*_BLOCK)
    slant = path(((-26, 15), (-17, 15), (17, -15)))
    texts = (Text(13, 16, "−t°", 9),)
    return _line_part(22, joined(block, slant), Box(-40, -16, 40, 22), ground=block, texts=texts)


@lru_cache(maxsize=1)
def fuse() -> Drawing:
    """A rectangle with its line running through."""
    block = rectangle(*_BLOCK)
    return _line_part(22, joined(block, path(((-22, 0), (22, 0)))), Box(-40, -8, 40, 8), ground=block)


@lru_cache(maxsize=1)
def capacitor() -> Drawing:
    """Two plates."""
    plates = path(((-4, -15), (-4, 15)), ((4, -15), (4, 15)))
    return _line_part(4, plates, Box(-40, -16, 40, 16))


@lru_cache(maxsize=1)
def diode() -> Drawing:
    """A triangle from anode to the bar of the cathode."""
    arrow = path(((-10, -11), (10, 0), (-10, 11), (-10, -11)))
    bar = path(((10, -11), (10, 11)))
    return _line_part(10, joined(arrow, bar), Box(-40, -12, 40, 12), ("a", "k"), ground=arrow)


@lru_cache(maxsize=2)
def _switch(closed: bool) -> Drawing:
    tip = (20, -1.5) if closed else (17, -17)
    blade = path(((-18, 0), tip))
    dots = joined(circle(-20, 0, 2.4), circle(20, 0, 2.4))
    leads = path(((-_REACH, 0), (-22.4, 0)), ((22.4, 0), (_REACH, 0)))
    ends = (Terminal("1", -_REACH, 0, -1, 0), Terminal("2", _REACH, 0, 1, 0))
    shape = rectangle(-20, -6, 20, 6)
    return Drawing(ends, Box(-40, -18, 40, 6), joined(leads, blade, dots), shape, ground=dots)


def switch(part: AnyPart) -> Drawing:
    """A contact, open or closed."""
    return _switch(isinstance(part, Switch) and part.closed)


def balance(part: AnyPart) -> Drawing:
    """A resistor with the arrow of its wiper at its true place."""
    return _balance(round(min(1.0, max(0.0, part.wiper)), 2) if isinstance(part, Balance) else 0.5)


@lru_cache(maxsize=101)
def _balance(wiper: float) -> Drawing:
    block = rectangle(*_BLOCK)
    x = -18 + 36 * wiper
    arrow = path(((0, -40), (0, -26), (x, -26), (x, -10)), ((x - 4, -16), (x, -9), (x + 4, -16)))
    base = _line_part(22, joined(block, arrow), Box(-40, -40, 40, 8), ground=block)
    ends = (*base.terminals, Terminal("w", 0, -40, 0, -1))
    return Drawing(ends, base.body, base.lines, rectangle(*_BLOCK), ground=base.ground)


def relay(part: AnyPart, pulled_in: bool = False) -> Drawing:
    """Coil and change-over contact; the blade lies where the coil has drawn it."""
    return _relay(isinstance(part, Relay) and pulled_in)


@lru_cache(maxsize=2)
def _relay(pulled_in: bool) -> Drawing:
    coil = rectangle(-56, -11, -24, 11)
    leads = path(((-40, -40), (-40, -11)), ((-40, 11), (-40, 40)), ((20, 40), (20, 20)))
    fixed = path(((0, -40), (0, -14), (6, -14)), ((40, -40), (40, -14), (34, -14)))
    tip = (34.0, -15.5) if pulled_in else (6.0, -15.5)
    blade = path(((20, 20), tip))
    middle = (20 + (tip[0] - 20) * 0.57, 0.0)
    link = path(((-24, 0), middle))
    ends = (
        Terminal("c1", -40, -40, 0, -1),
        Terminal("c2", -40, 40, 0, 1),
        Terminal("com", 20, 40, 0, 1),
        Terminal("no", 40, -40, 0, -1),
        Terminal("nc", 0, -40, 0, -1),
    )
    texts = (
        Text(-51, -32, "c1", 8, "soft"),
        Text(-51, 32, "c2", 8, "soft"),
        Text(-10, -32, "nc", 8, "soft"),
        Text(50, -32, "no", 8, "soft"),
        Text(35, 32, "com", 8, "soft"),
    )
    lines = joined(coil, leads, fixed, blade)
    shape = rectangle(-56, -16, 42, 20)
    return Drawing(ends, Box(-58, -40, 58, 40), lines, shape, ground=coil, thin=link, texts=texts)


@lru_cache(maxsize=1)
def chassis() -> Drawing:
    """The frame: a bar with three slanted strokes."""
    frame = path(((0, -20), (0, 0)), ((-16, 0), (16, 0)))
    rays = path(*(((x, 0), (x - 7, 10)) for x in (-14, 0, 14)))
    shape = rectangle(-16, -2, 16, 8)
    return Drawing((Terminal("e", 0, -20, 0, -1),), Box(-22, -20, 17, 10), joined(frame, rays), shape)


@lru_cache(maxsize=1)
def joint() -> Drawing:
    """A dot."""
    dot = circle(0, 0, 3.5)
    return Drawing((Terminal("j", 0, 0, 0, -1),), Box(-4, -4, 4, 4), dot, circle(0, 0, 4), solid=dot)


LAMP_RADIUS = 16.0


@lru_cache(maxsize=1)
def lamp() -> Drawing:
    """A circle; its cross is painted in the colour of its filament."""
    bulb = circle(0, 0, LAMP_RADIUS)
    return _line_part(LAMP_RADIUS, bulb, Box(-40, -16, 40, 16), ground=bulb)


@lru_cache(maxsize=1)
def lamp_cross() -> QPainterPath:
    """The cross in a lamp's circle."""
    reach = LAMP_RADIUS * 0.7071
    return path(((-reach, -reach), (reach, reach)), ((-reach, reach), (reach, -reach)))


@lru_cache(maxsize=64)
def labelled_box(kind: str, names: tuple[str, ...]) -> Drawing:
    """An honest box with the kind's name, for a kind that has no symbol of its own."""
    half = max(20.0, 10.0 * len(names))
    box = rectangle(-30, -half, 30, half, 2)
    ends = tuple(Terminal(name, -40, -half + 20 * index + 10, -1, 0) for index, name in enumerate(names))
    leads = path(*(((-40, end.y), (-30, end.y)) for end in ends)) if ends else QPainterPath()
    texts = (Text(0, 0, kind, 9), *(Text(-24, end.y, end.name, 8, "soft") for end in ends))
    return Drawing(ends, Box(-40, -half, 30, half), joined(box, leads), box, ground=box, texts=texts)
