"""Where wires meet: dots where conductors of one net join and part, hops where those of different nets only cross."""

from __future__ import annotations

import itertools
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator
from typing import NamedTuple

from app.canvas.layout import Layout
from app.canvas.routing import Point, Route, Track, tracks_of
from core.sheet import Sheet

RADIUS = 4.5
_WIDE = 8.0  # over a twisted pair
_ROOM = 8.0  # between a hop and the corner beside it; nearer it would look like a loop
_TOUCH = 0.5
_SHARED = 2.0  # wires that run together for less do not part, they meet at a corner


class Hop(NamedTuple):
    """A small bridge in a wire, or a gap where another one passes over it: where, along x or y, and how wide."""

    at: Point
    is_level: bool
    radius: float
    is_gap: bool = False


class _Meeting(NamedTuple):
    """What two wires have to do with each other."""

    hops: tuple[tuple[str, Hop], ...]
    partings: tuple[Point, ...]


class Meetings:
    """The hops and partings of all wires of a layout, kept in step with their routes."""

    def __init__(self, layout: Layout) -> None:
        self._layout = layout
        self._sheet: Sheet | None = None
        self._nets: dict[str, str] = {}
        self._met: defaultdict[str, dict[str, _Meeting]] = defaultdict(dict)
        self._partings: Counter[Point] = Counter()  # how many pairs of wires part at a point

    def follow(self, sheet: Sheet, wire_ids: Iterable[str]) -> set[str]:
        """See where wires meet that lie elsewhere now, or are gone; answers those whose hops changed."""
        board = self._layout.board
        stale = set(wire_ids)
        if sheet is not self._sheet:
            stale |= self._follow_nets(sheet)
        before = {one: self.hops(one) for one in stale | {other for one in stale for other in self._met[one]}}
        for one in stale:
            for other, meeting in self._met.pop(one, {}).items():
                self._met[other].pop(one, None)
                self._partings.subtract(meeting.partings)
                for at in meeting.partings:
                    if not self._partings[at]:
                        del self._partings[at]
        for one in sorted(stale & board.routes.keys()):
            near = {other for box in board.boxes(one) for other in board.wires_near(box)}
            for other in near - {one} - self._met[one].keys():
                meeting = self._meeting(*sorted((one, other)))
                if meeting.hops or meeting.partings:
                    before.setdefault(other, self.hops(other))
                    self._met[one][other] = self._met[other][one] = meeting
                    self._partings.update(meeting.partings)
        return {one for one, hops in before.items() if one in board.routes and self.hops(one) != hops}

    def _follow_nets(self, sheet: Sheet) -> set[str]:
        """Find the nets of another sheet; answers the wires that are on another one, or are gone."""
        before, self._sheet, self._nets = self._nets, sheet, nets_of(sheet)
        changed = {one for one in before.keys() | self._nets.keys() if before.get(one) != self._nets.get(one)}
        return changed & (self._met.keys() | self._nets.keys())

    def hops(self, wire_id: str) -> tuple[Hop, ...]:
        """The bridges of a wire, in no particular order but always the same."""
        met = self._met.get(wire_id, {})
        found = {hop for meeting in met.values() for name, hop in meeting.hops if name == wire_id}
        return tuple(sorted(found))

    def partings(self) -> set[Point]:
        """Every point where wires of one net part that have run together."""
        return set(self._partings)

    def _meeting(self, one: str, other: str) -> _Meeting:
        board = self._layout.board
        lines = board.routes[one], board.routes[other]
        trunks = board.trunks.get(one, ()), board.trunks.get(other, ())
        if self._nets.get(one) == self._nets.get(other):
            found = _partings(lines[0], lines[1])
            return _Meeting((), tuple(at for at in found if not (_on(trunks[0], at) or _on(trunks[1], at))))
        hops = [
            *_hops_over((one, other), lines, trunks),
            *_hops_over((other, one), lines[::-1], trunks[::-1]),
        ]
        return _Meeting(tuple(hops), ())


def _hops_over(
    names: tuple[str, str], lines: tuple[Route, Route], trunks: tuple[Route, Route]
) -> Iterator[tuple[str, Hop]]:
    """Hops where a level piece of the first line crosses an upright one of the second: level goes over upright.

    A twisted pair makes no hop: what crosses it goes over it. Where there is no room for a hop, and where two pairs
    cross, the other one has a gap instead.
    """
    for level, upright in itertools.product(tracks_of(lines[0]), tracks_of(lines[1])):
        at = upright.at, level.at
        if not level.level or upright.level or not _is_crossing(level, upright):
            continue
        twisted = _on(trunks[0], at), _on(trunks[1], at)
        over, is_level = (upright, False) if twisted[0] and not twisted[1] else (level, True)
        place = at[0] if is_level else at[1]
        radius = _WIDE if any(twisted) else RADIUS
        if not all(twisted) and min(place - over.low, over.high - place) >= radius + _ROOM:
            yield names[0] if is_level else names[1], Hop(at, is_level, radius)
        else:
            yield names[1] if is_level else names[0], Hop(at, not is_level, radius, True)


def _is_crossing(level: Track, upright: Track) -> bool:
    return (
        level.low + _TOUCH < upright.at < level.high - _TOUCH
        and upright.low + _TOUCH < level.at < upright.high - _TOUCH
    )


def _on(trunk: Route, at: Point) -> bool:
    """Whether a point lies on a twisted stretch."""
    return any(
        abs((at[1] if piece.level else at[0]) - piece.at) < _TOUCH
        and piece.low - _TOUCH <= (at[0] if piece.level else at[1]) <= piece.high + _TOUCH
        for piece in tracks_of(trunk)
    )


def _partings(one: Route, other: Route) -> set[Point]:
    """Points where two lines that run together part, other than their own ends."""
    ends = (one[0], one[-1], other[0], other[-1])
    found: set[Point] = set()
    for a, b in itertools.product(tracks_of(one), tracks_of(other)):
        low, high = max(a.low, b.low), min(a.high, b.high)
        if a.level != b.level or abs(a.at - b.at) > _TOUCH or high - low < _SHARED:
            continue
        for place in (low, high):
            at = (place, a.at) if a.level else (a.at, place)
            is_end = any(abs(at[0] - x) < _TOUCH and abs(at[1] - y) < _TOUCH for x, y in ends)
            if not is_end and _ways(one, at) != _ways(other, at):
                found.add(at)
    return found


def _ways(line: Route, at: Point) -> frozenset[tuple[bool, bool]]:
    """In which directions a line goes on from a point on it: (along x, towards more)."""
    ways: set[tuple[bool, bool]] = set()
    for track in tracks_of(line):
        place, across = (at[0], at[1]) if track.level else (at[1], at[0])
        if abs(across - track.at) < _TOUCH and track.low - _TOUCH <= place <= track.high + _TOUCH:
            if place > track.low + _TOUCH:
                ways.add((track.level, False))
            if place < track.high - _TOUCH:
                ways.add((track.level, True))
    return frozenset(ways)


def nets_of(sheet: Sheet) -> dict[str, str]:
    """The net of every wire, named by its first wire: wires that share a terminal are one net."""
    parent: dict[str, str] = {}

    def root(name: str) -> str:
        while parent.setdefault(name, name) != name:
            parent[name] = parent[parent[name]]
            name = parent[name]
        return name

    first: dict[str, str] = {}
    for wire in sheet.wires:
        for end in (wire.start, wire.end):
            parent[root(end)] = root(wire.start)
    for wire in sheet.wires:
        first.setdefault(root(wire.start), wire.id)
    return {wire.id: first[root(wire.start)] for wire in sheet.wires}
