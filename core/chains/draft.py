"""What is being laid: fresh ids, the size and length of every wire, and the pins that keep wires short."""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import Any, NamedTuple

from core.catalogue.wire import chassis_limit_a, ohm_per_m
from core.chains.model import LEAST, Load, Options, Places, Point, Size, Way
from core.checks import FARTHEST
from core.edits import PREFIXES, fresh_id
from core.rules.mends import size_for_current, size_for_drop
from core.sheet import AnyPart, Sheet, Wire, split_terminal

METRES_PER_UNIT = 0.001
BUNDLED = 0.5
"""Of what a single wire in free air may carry, the share taken for one that is twisted or bundled: common practice."""
DROP_SHARE = 0.01
"""What both wires of one stretch may lose of the line's volts: common practice, so five stay within 5 %."""

_ONE_BELOW: dict[str, dict[str, Any]] = {"mm2": {"area_mm2": 0.25}, "awg": {"awg": 22}}
_TRIES = 60
_CLEAR = 90.0  # sheet units that a new part keeps from every other
_GRID = 20.0


class _Laid(NamedTuple):
    wire_id: str
    amps: float
    size: Size


class Draft:
    """Collects parts and wires for one plan."""

    def __init__(self, sheet: Sheet, options: Options, places: Places | None = None) -> None:
        self.sheet = sheet
        self.options = options
        self.parts: list[AnyPart] = []
        self.wires: list[Wire] = []
        self._laid: list[_Laid] = []
        self._places = places
        self._ids: list[str] = []
        self._used = {*sheet.part_by_id, *sheet.wire_by_id}
        self._next_wire = self._next_twist = 1
        self._twists = {wire.twist for wire in sheet.wires}

    # ids

    def part_id(self, kind: str) -> str:
        """A fresh id for a part of this kind."""
        made = fresh_id(self.sheet, PREFIXES[kind], self._ids)
        self._ids.append(made)
        self._used.add(made)
        return made

    def _wire_id(self) -> str:
        while f"w{self._next_wire}" in self._used:
            self._next_wire += 1
        self._next_wire += 1
        return f"w{self._next_wire - 1}"

    def _twist(self) -> str:
        while f"p{self._next_twist}" in self._twists:
            self._next_twist += 1
        self._next_twist += 1
        return f"p{self._next_twist - 1}"

    # laying

    def strap(self, part_id: str, pins: tuple[str, str]) -> None:
        """Strap two pins of one part."""
        self.wires.append(Wire(id=self._wire_id(), start=f"{part_id}.{pins[0]}", end=f"{part_id}.{pins[1]}"))

    def wire(self, start: str, end: str, amps: float, volts: float, ways: int = 1) -> float:
        """Lay one wire that carries ``amps`` on a line of ``volts``, one of ``ways`` alike; answers its ohms."""
        size = self.size_for(amps, self.length_m(start, end), volts, ways)
        return self._lay(start, end, amps, size, None)

    def stretch(self, first: tuple[str, str], second: tuple[str, str], amps: float, volts: float) -> float:
        """Lay the two wires of one stretch, twisted where they run side by side; answers the ohms of both."""
        long = max(self.length_m(*first), self.length_m(*second))
        size = self.size_for(amps, long, volts)
        twist = self._twist() if _sockets(first) == _sockets(second) else None
        return self._lay(*first, amps, size, twist) + self._lay(*second, amps, size, twist)

    def _lay(self, start: str, end: str, amps: float, size: Size, twist: str | None) -> float:
        length = self.length_m(start, end)
        wire_id = self._wire_id()
        self.wires.append(
            Wire(
                id=wire_id,
                start=start,
                end=end,
                awg=size.awg,
                area_mm2=size.area_mm2,
                length_m=length,
                twist=twist,
            )
        )
        self._laid.append(_Laid(wire_id, amps, size))
        return ohm_per_m(size.awg, size.area_mm2, self.sheet.ambient_c) * length

    def too_hot(self) -> tuple[str, ...]:
        """The wires that would carry more than their size should."""
        return tuple(one.wire_id for one in self._laid if one.amps > chassis_limit_a(*one.size))

    def length_m(self, start: str, end: str) -> float:
        """Along the axes from part to part, and the allowance; full centimetres."""
        a, b = self.part_at(start), self.part_at(end)
        metres = (abs(a[0] - b[0]) + abs(a[1] - b[1])) * METRES_PER_UNIT + self.options.allowance_m
        return max(math.ceil(round(metres * 100, 6)) / 100, 0.01)

    def size_for(self, amps: float, length_m: float, volts: float, ways: int = 2) -> Size:
        """The size for this current and length, by heat and by drop; the one that was chosen if one was."""
        if self.options.size is not None:
            return self.options.size
        system = self.options.system
        wire = Wire(id="x", start="a.1", end="b.1", length_m=length_m, **_ONE_BELOW[system])
        sizes = [LEAST[system], Size(*size_for_current(wire, amps / BUNDLED))]
        if amps > 0:
            drop_v = DROP_SHARE * volts / ways
            sizes.append(Size(*size_for_drop(wire, amps, drop_v, self.sheet.ambient_c)))
        return _thickest(sizes, system)

    # places

    def orient(self, load: Load, way: Way, first: str, second: str) -> tuple[str, str]:
        """The terminals of a load that the two leads from ``first`` and ``second`` reach by the shortest way."""

        def far(feed: tuple[str, str]) -> float:
            return self._far(first, f"{load.id}.{feed[0]}") + self._far(second, f"{load.id}.{feed[1]}")

        chosen = min(way.feeds, key=far)
        return f"{load.id}.{chosen[0]}", f"{load.id}.{chosen[1]}"

    def _far(self, start: str, end: str) -> float:
        a, b = self._place(start), self._place(end)
        return abs(a[0] - b[0]) + abs(a[1] - b[1])

    def _place(self, terminal: str) -> Point:
        found = self._places(terminal) if self._places is not None else None
        return found or self.part_at(terminal)

    def part_at(self, terminal: str) -> Point:
        """The place of the part of a terminal, on the sheet or among those to be added."""
        part_id = split_terminal(terminal)[0]
        part = self.sheet.part_by_id.get(part_id)
        return part.at if part is not None else next(one.at for one in self.parts if one.id == part_id)

    def free_place(self, x: float, y: float, step: tuple[float, float]) -> Point:
        """The first place on the grid, from ``x``, ``y`` on in steps, that no part is near."""
        at = (round(x / _GRID) * _GRID, round(y / _GRID) * _GRID)
        taken = [part.at for part in (*self.sheet.parts, *self.parts)]
        for _ in range(_TRIES):
            if not any(abs(at[0] - x0) < _CLEAR and abs(at[1] - y0) < _CLEAR for x0, y0 in taken):
                break
            at = (at[0] + step[0], at[1] + step[1])
        return _inside(at[0]), _inside(at[1])


def _inside(value: float) -> float:
    return max(-FARTHEST, min(value, FARTHEST))


def _sockets(ends: tuple[str, str]) -> tuple[str, ...]:
    return tuple(split_terminal(end)[0] for end in ends)


def _thickest(sizes: Iterable[Size], system: str) -> Size:
    known = [size for size in sizes if size != Size()]
    if system == "awg":
        return min(known, key=lambda size: 99 if size.awg is None else size.awg)
    return max(known, key=lambda size: size.area_mm2 or 0.0)
