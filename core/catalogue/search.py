"""Finding a type by what was typed so far: exact names, then beginnings, then parts."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal, NamedTuple

from core.catalogue.names import key
from core.sentences import Text

_DIGITS = re.compile(r"([0-9]+)")

Kind = Literal["tube", "lamp", "thermistor", "relay"]


@dataclass(frozen=True)
class SearchHit:
    """One answer: a type of the catalogue, the name that matched, and a line that describes it."""

    kind: Kind
    designation: str
    name: str
    summary: Text


class Name(NamedTuple):
    """One name a type answers to. ``rank`` 0 for the designation, 1 for other names, 2 for descriptions."""

    key: str
    rank: int
    kind: Kind
    designation: str
    name: str


def in_order(names: Iterable[Name]) -> tuple[Name, ...]:
    """The names in the order people expect: 6AQ5 before 12AX7, ECC83 before ECC801S, descriptions last."""
    return tuple(sorted(names, key=lambda name: (name.rank == 2, _natural(name.key), name.rank)))


def ranked(names: tuple[Name, ...], text: str, limit: int) -> list[Name]:
    """The best name of each type that matches ``text``, best first, at most ``limit``; none for no text.

    ``names`` come from ``in_order``; names that fit equally well keep that order.
    """
    wanted = key(text)
    if not wanted:
        return []
    found = [(_fit(name, wanted, text), name) for name in names if wanted in name.key]
    found.sort(key=lambda pair: pair[0])
    best: dict[tuple[Kind, str], Name] = {}
    for _, name in found:
        best.setdefault((name.kind, name.designation), name)
        if len(best) == limit:
            break
    return list(best.values())


def _natural(name: str) -> list[tuple[int, int, str]]:
    parts = _DIGITS.split(name)
    return [(0, int(part), "") if part.isdecimal() else (1, 0, part) for part in parts if part]


def _fit(name: Name, wanted: str, text: str) -> int:
    if name.rank == 2:
        return 4
    if name.key == wanted:
        # the tube 47 and the lamp #47 share a key: the one written as typed comes first
        return 0 if name.name.casefold() == text.strip().casefold() else 1
    return 2 if name.key.startswith(wanted) else 3
