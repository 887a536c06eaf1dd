"""Where the loop from a heater through a supply and back is broken."""

from __future__ import annotations

import heapq
from itertools import combinations

from core.circuit.build import is_open
from core.elements.branch import Rectifying, Source
from core.rules.basis import Case
from core.sheet import Switch

_BLOCKED_A = 1e-6  # a blocking diode leaks nanoamperes

Edge = tuple[str, str, bool, bool]
"""Owner, far node, whether it is a supply, whether it is broken here."""
Place = tuple[str, bool]
"""A node, and whether a supply has been passed on the way to it."""


def breaks(case: Case, start: str, end: str, own: str) -> tuple[str, ...]:
    """Ids of what breaks the loop of a heater between two terminals; empty where nothing does or none is there.

    Of all ways from one end through a supply to the other, that with the fewest breaks is taken.
    """
    if not case.loop_ways:
        case.loop_ways.update(_ways(case))
    nets = case.ideal_nets
    first, last = nets.net(start), nets.net(end)
    came: dict[Place, tuple[Place, Edge]] = {}
    best: dict[Place, tuple[int, int]] = {(first, False): (0, 0)}
    queue: list[tuple[int, int, Place]] = [(0, 0, (first, False))]
    while queue:
        broken, length, place = heapq.heappop(queue)
        node, passed = place
        if place == (last, True):
            return _broken_on(came, place)
        if best[place] < (broken, length):
            continue
        for edge in case.loop_ways.get(node, ()):
            owner, far, is_supply, is_broken = edge
            there = (far, passed or is_supply)
            cost = (broken + is_broken, length + 1)
            if owner == own or far == first or cost >= best.get(there, (1 << 30, 0)):
                continue
            best[there] = cost
            came[there] = (place, edge)
            heapq.heappush(queue, (*cost, there))
    return ()


def _broken_on(came: dict[Place, tuple[Place, Edge]], place: Place) -> tuple[str, ...]:
    found = []
    while place in came:
        place, (owner, _, _, is_broken) = came[place]
        if is_broken:
            found.append(owner)
    return tuple(dict.fromkeys(reversed(found)))


def _ways(case: Case) -> dict[str, list[Edge]]:
    """From each piece of metal, the branches and the gaps that leave it."""
    nets = case.ideal_nets
    at: dict[str, list[Edge]] = {}

    def add(owner: str, one: str, other: str, is_supply: bool, is_broken: bool) -> None:
        u, v = nets.net(one), nets.net(other)
        if u != v:
            at.setdefault(u, []).append((owner, v, is_supply, is_broken))
            at.setdefault(v, []).append((owner, u, is_supply, is_broken))

    nominal = case.nominal.branches
    pulled = frozenset(key for key, branch in nominal.items() if branch.pulled_in)
    for branch in case.circuit.branches.values():
        is_supply = branch.owner in case.supply_volts
        law = branch.law
        if isinstance(law, Source) and law.bias:
            continue
        at_work = nominal.get(branch.key)
        blocks = isinstance(law, Rectifying) and at_work is not None and at_work.a < _BLOCKED_A
        add(branch.owner, branch.u, branch.v, is_supply, blocks or is_open(branch, pulled))
    for part_id, pins in case.wired_pins.items():
        part = case.sheet.part_by_id[part_id]
        if part_id in case.circuit.branches_by_owner or part.kind in {"chassis", "joint"}:
            continue
        names = ("1", "2") if isinstance(part, Switch) else pins
        for one, other in combinations(names, 2):
            add(part_id, f"{part_id}.{one}", f"{part_id}.{other}", False, True)
    return at
