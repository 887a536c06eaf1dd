"""In which order the wires of a sheet are laid, which of them run as twisted pairs, and what is on each terminal."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator

from app.canvas.routing import Point
from core.sheet import Sheet, Wire, split_terminal

_BESIDE = 100.0  # within so much the joints of a twisted pair lie side by side


def part_ids(wire: Wire) -> frozenset[str]:
    """The parts at the ends of a wire: two, or one for a strap."""
    return frozenset(_ends(wire))


def _ends(wire: Wire) -> tuple[str, str]:
    return split_terminal(wire.start)[0], split_terminal(wire.end)[0]


class WireOrder:
    """The order of one sheet; ``place`` says where a terminal lies.

    Straps come first, as they have the least choice, then the order of the sheet; the second wire of a pair follows
    the first. A twist of three or more wires is laid untwisted. ``movable_pairs`` are the wires that may become or
    cease to be a pair when parts move, as their ends lie on different ones.
    """

    def __init__(self, sheet: Sheet, place: Callable[[str], Point]) -> None:
        self._place = place
        self.ends: dict[str, int] = {}
        self._wires_on: defaultdict[str, set[str]] = defaultdict(set)
        for wire in sheet.wires:
            for terminal in (wire.start, wire.end):
                self._wires_on[split_terminal(terminal)[0]].add(wire.id)
                self.ends[terminal] = self.ends.get(terminal, 0) + 1
        twisted = list(_twisted(sheet))
        self.seconds = {one.id: other.id for one, other in twisted if self._run_together(one, other)}
        self.leaders = {second: leader for leader, second in self.seconds.items()}
        self.movable_pairs = {
            wire.id for pair in twisted if part_ids(pair[0]) != part_ids(pair[1]) for wire in pair
        }
        leaders = [wire for wire in sheet.wires if wire.id not in self.leaders]
        ordered = sorted(leaders, key=lambda wire: len(part_ids(wire)))
        names = [one for wire in ordered for one in self.group(wire.id)]
        self.ranks = {name: rank for rank, name in enumerate(names)}

    def wires_on(self, parts: Iterable[str]) -> set[str]:
        """Wires that end on any of these parts."""
        return {wire_id for part_id in parts for wire_id in self._wires_on.get(part_id, ())}

    def group(self, leader: str) -> tuple[str, ...]:
        """A wire, and the second one of its pair."""
        second = self.seconds.get(leader)
        return (leader,) if second is None else (leader, second)

    def leader_of(self, wire_id: str) -> str:
        """The wire of a pair that is laid first; a wire alone is its own."""
        return self.leaders.get(wire_id, wire_id)

    def with_partners(self, wire_ids: Iterable[str]) -> set[str]:
        """Wires with the others of their pairs."""
        return {one for wire_id in wire_ids for one in self.group(self.leader_of(wire_id))}

    def ends_beside(self, wire: Wire, second: Wire) -> tuple[str, str]:
        """The ends of the second wire of a pair: that beside the first one's start, and the other."""
        parts, others = _ends(wire), _ends(second)
        if parts[0] == others[0] or parts[1] == others[1]:
            return second.start, second.end
        if parts[0] == others[1] or parts[1] == others[0]:
            return second.end, second.start
        straight = self._apart(wire.start, second.start) + self._apart(wire.end, second.end)
        crossed = self._apart(wire.start, second.end) + self._apart(wire.end, second.start)
        return (second.start, second.end) if straight <= crossed else (second.end, second.start)

    def _run_together(self, wire: Wire, second: Wire) -> bool:
        """Whether two wires that share a twist are laid twisted: their ends lie on the same parts, or side by side."""
        if len(part_ids(wire)) == 1 or len(part_ids(second)) == 1:
            return False
        first, last = self.ends_beside(wire, second)
        return all(
            split_terminal(one)[0] == split_terminal(other)[0] or self._apart(one, other) <= _BESIDE
            for one, other in ((wire.start, first), (wire.end, last))
        )

    def _apart(self, terminal: str, other: str) -> float:
        return math.dist(self._place(terminal), self._place(other))


def _twisted(sheet: Sheet) -> Iterator[tuple[Wire, Wire]]:
    """Wires that share a twist, two by two, in the order of the sheet."""
    twisted: defaultdict[str, list[Wire]] = defaultdict(list)
    for wire in sheet.wires:
        if wire.twist:
            twisted[wire.twist].append(wire)
    for group in twisted.values():
        if len(group) == 2:
            yield group[0], group[1]
