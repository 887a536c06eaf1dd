"""Tube bases: which pins a base has and what it is called on screen. Pin places are drawn elsewhere."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Base:
    """A base: its pins by number, and a short name. ``pins`` is empty where any pin name is allowed."""

    title: str
    pins: tuple[str, ...]

    def has(self, pin: str) -> bool:
        """Whether ``pin`` can be a pin of this base."""
        return not self.pins or pin in self.pins


def _numbered(count: int) -> tuple[str, ...]:
    return tuple(str(number) for number in range(1, count + 1))


BASES: dict[str, Base] = {
    "B9A": Base("B9A", _numbered(9)),
    "B7G": Base("B7G", _numbered(7)),
    "octal": Base("octal", _numbered(8)),
    "loctal": Base("loctal", _numbered(8)),
    "UX4": Base("UX4", _numbered(4)),
    "UY5": Base("UY5", _numbered(5)),
    "UX5": Base("UX5", _numbered(5)),
    "UX6": Base("UX6", _numbered(6)),
    "UX7": Base("UX7", _numbered(7)),
    "jumbo4": Base("jumbo 4-pin", _numbered(4)),
    "giant7": Base("giant 7-pin", _numbered(7)),
    "B4": Base("B4", _numbered(4)),
    "magnoval": Base("magnoval B9D", _numbered(9)),
    "novar": Base("novar B9E", _numbered(9)),
    "rimlock": Base("rimlock B8A", _numbered(8)),
    # the twelve positions of the nuvistor base are numbered, triodes carry only these five
    "nuvistor": Base("nuvistor", ("2", "4", "8", "10", "12")),
    "compactron": Base("compactron", _numbered(12)),
    "P8A": Base("side contact P8A", _numbered(8)),
    "leads8": Base("8 leads", _numbered(8)),
    "leads5": Base("5 leads", _numbered(5)),
    "generic": Base("other base", ()),
}
