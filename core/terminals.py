"""The terminals of each kind of part, and the spelling of ids."""

from __future__ import annotations

import re

from core.sheet import Part, Winding

LARGEST_PIN = 20

_TWO = ("1", "2")

TERMINALS: dict[str, tuple[str, ...] | None] = {
    "tube": None,
    "lamp": _TWO,
    "winding": ("a", "b"),
    "dc_supply": ("+", "-"),
    "battery": ("+", "-"),
    "mains_feed": ("L", "N"),
    "rectified_supply": ("+", "-"),
    "resistor": _TWO,
    "thermistor": _TWO,
    "relay": ("c1", "c2", "com", "no", "nc"),
    "fuse": _TWO,
    "capacitor": _TWO,
    "diode": ("a", "k"),
    "switch": _TWO,
    "balance": ("1", "2", "w"),
    "elevation": ("e",),
    "chassis": ("e",),
    "joint": ("j",),
    "note": (),
    "frame": (),
}
"""Terminal names by kind; None for a tube, whose terminals are its pin numbers."""

_ID = re.compile(r"[^\s.\x00-\x1f\x7f-\x9f\ud800-\udfff]{1,40}")
_PIN = re.compile(r"[1-9][0-9]?")


def terminal_names(part: Part) -> tuple[str, ...] | None:
    """The terminals of a part; None for a tube, which has pins 1 to 20 whatever its type."""
    names = TERMINALS[part.kind]
    if isinstance(part, Winding) and part.centre_tap:
        return (*(names or ()), "ct")
    return names


def has_terminal(part: Part, name: str) -> bool:
    """Whether a wire may end at this terminal of the part."""
    names = terminal_names(part)
    return is_pin(name) if names is None else name in names


def is_pin(name: str) -> bool:
    """Whether this is a pin number: 1 to 20, written plainly."""
    return _PIN.fullmatch(name) is not None and int(name) <= LARGEST_PIN


def is_id(text: str) -> bool:
    """Whether this may be an id: 1 to 40 characters without spaces, dots or control characters."""
    return _ID.fullmatch(text) is not None
