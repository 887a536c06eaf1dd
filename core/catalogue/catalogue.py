"""The catalogue: types by name, search as one types, and a user's own types laid over the built-in ones."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from functools import cache, cached_property
from itertools import pairwise
from pathlib import Path
from typing import TypeVar

from core.catalogue import summary
from core.catalogue.load import load_fuses, load_lamps, load_relays, load_thermistors, load_tubes
from core.catalogue.names import key
from core.catalogue.search import Kind, Name, SearchHit, in_order, ranked
from core.catalogue.types import FuseType, LampType, Provenance, RelayType, ThermistorType, TubeType
from core.errors import CatalogueError, Problem
from core.sentences import Text, sentence
from resources import read_bytes

USER_FILE = "tubes.csv"

_Simple = TypeVar("_Simple", LampType, ThermistorType, RelayType)


@dataclass(frozen=True)
class Catalogue:
    """Every type the program knows. ``tubes``, ``lamps``, ``thermistors``, ``relays`` are by designation."""

    tubes: Mapping[str, TubeType]
    lamps: Mapping[str, LampType] = field(default_factory=dict)
    thermistors: Mapping[str, ThermistorType] = field(default_factory=dict)
    relays: Mapping[str, RelayType] = field(default_factory=dict)
    fuses: tuple[FuseType, ...] = ()

    @cached_property
    def _tube_by_key(self) -> dict[str, TubeType]:
        by_key: dict[str, TubeType] = {}
        for tube in self.tubes.values():
            by_key.update((key(name), tube) for name in (*tube.equivalents, tube.designation))
        return by_key

    @cached_property
    def _names(self) -> tuple[Name, ...]:
        names: list[Name] = []
        for tube in self.tubes.values():
            names += _names_of("tube", tube.designation, tube.equivalents, tube.description)
        for lamp in self.lamps.values():
            names += _names_of("lamp", lamp.designation, lamp.equivalents, "panel lamp")
        names += [
            name for one in self.thermistors for name in _names_of("thermistor", one, (), "thermistor NTC")
        ]
        names += [name for one in self.relays for name in _names_of("relay", one, (), "relay")]
        return in_order(names)

    def tube(self, name: str) -> TubeType | None:
        """The tube type of this designation or equivalent, however it is written; None if unknown."""
        return self._tube_by_key.get(key(name))

    def lamp(self, name: str) -> LampType | None:
        """The panel lamp of this name (``#47`` or ``47``); None if unknown."""
        return _find(self.lamps, name)

    def thermistor(self, name: str) -> ThermistorType | None:
        """The thermistor of this name; None if unknown."""
        return _find(self.thermistors, name)

    def relay(self, name: str) -> RelayType | None:
        """The relay of this name; None if unknown."""
        return _find(self.relays, name)

    def fuse(self, rated_a: float, speed: str = "time-lag") -> FuseType | None:
        """The fuse link of ``rated_a`` amperes: tabulated, or read off between two tabulated ratings.

        None for a speed that is not tabulated or a rating outside the table. Between ratings the logarithms
        of resistance and melting I²t are taken as straight lines over the logarithm of the rating.
        """
        links = sorted((fuse for fuse in self.fuses if fuse.speed == speed), key=lambda fuse: fuse.rated_a)
        for link in links:
            if math.isclose(link.rated_a, rated_a, rel_tol=0.01):
                return link
        for low, high in pairwise(links):
            if low.rated_a < rated_a < high.rated_a:
                return _between(low, high, rated_a)
        return None

    def search(self, text: str, limit: int = 20) -> list[SearchHit]:
        """Types whose names or description contain ``text``: exact first, then beginnings, then parts."""
        return [
            SearchHit(name.kind, name.designation, name.name, self._line(name))
            for name in ranked(self._names, text, limit)
        ]

    def _line(self, name: Name) -> Text:
        if name.kind == "tube":
            return summary.tube_line(self.tubes[name.designation], name.name)
        if name.kind == "lamp":
            return summary.lamp_line(self.lamps[name.designation])
        if name.kind == "thermistor":
            return summary.thermistor_line(self.thermistors[name.designation])
        return summary.relay_line(self.relays[name.designation])

    def with_types(self, extra: Iterable[TubeType]) -> Catalogue:
        """This catalogue with ``extra`` tube types laid over it; they win where names meet."""
        added = tuple(extra)
        if not added:
            return self
        hidden = {key(tube.designation) for tube in added}
        tubes = {name: tube for name, tube in self.tubes.items() if key(name) not in hidden}
        tubes.update((tube.designation, tube) for tube in added)
        return replace(self, tubes=tubes)


def _names_of(kind: Kind, designation: str, others: Iterable[str], description: str) -> list[Name]:
    names = [Name(key(designation), 0, kind, designation, designation)]
    names += [Name(key(other), 1, kind, designation, other) for other in others]
    if description:
        names.append(Name(key(description), 2, kind, designation, designation))
    return names


def _find(types: Mapping[str, _Simple], name: str) -> _Simple | None:
    wanted = key(name)
    for found in types.values():
        if key(found.designation) == wanted:
            return found
    return None


def _between(low: FuseType, high: FuseType, rated_a: float) -> FuseType:
    share = math.log(rated_a / low.rated_a) / math.log(high.rated_a / low.rated_a)
    ohm = low.cold_ohm * (high.cold_ohm / low.cold_ohm) ** share
    i2t = low.melting_i2t_a2s * (high.melting_i2t_a2s / low.melting_i2t_a2s) ** share
    note = f"read off between {low.designation} and {high.designation}"
    provenance = tuple(
        Provenance(name, low.provenance[0].source if low.provenance else "", "second-hand", note)
        for name in ("cold_ohm", "melting_i2t_a2s")
    )
    return FuseType(
        designation=f"{rated_a:g} A {low.speed}",
        rated_a=rated_a,
        cold_ohm=ohm,
        melting_i2t_a2s=i2t,
        speed=low.speed,
        provenance=provenance,
    )


@cache
def load_builtin() -> Catalogue:
    """The catalogue that comes with the program, read once."""

    def text(name: str) -> str:
        return read_bytes("catalogue", name).decode()

    return Catalogue(
        tubes={one.designation: one for one in load_tubes(text("tubes.csv"), "tubes.csv")},
        lamps={one.designation: one for one in load_lamps(text("lamps.csv"), "lamps.csv")},
        thermistors={
            one.designation: one for one in load_thermistors(text("thermistors.csv"), "thermistors.csv")
        },
        relays={one.designation: one for one in load_relays(text("relays.csv"), "relays.csv")},
        fuses=load_fuses(text("fuses.csv"), "fuses.csv"),
    )


def load_user(folder: Path) -> tuple[tuple[TubeType, ...], tuple[Problem, ...]]:
    """The user's own tube types from ``tubes.csv`` in ``folder``, and what is wrong with that file.

    No file means no types and no problems. A file with mistakes gives no types and every problem found.
    """
    path = folder / USER_FILE
    try:
        return load_tubes(path.read_text(encoding="utf-8"), USER_FILE), ()
    except FileNotFoundError:
        return (), ()
    except CatalogueError as error:
        return (), error.problems
    except UnicodeDecodeError:
        return (), (Problem(USER_FILE, sentence("is not UTF-8 text")),)
    except OSError as error:
        return (), (Problem(USER_FILE, sentence("cannot be read: {why}", why=error.strerror)),)
