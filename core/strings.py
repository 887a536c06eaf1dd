"""Which heaters are in series and which in parallel, from the graph alone.

Two branches are in series, carrying the same current whatever the values are, when taking both out cuts the
circuit and taking one out does not. Labels find these classes exactly: every branch outside a spanning tree
gets a bit of its own, a tree branch the exclusive or of the bits that pass it; equal labels are in series and
label zero is a bridge, which carries nothing. (Cycle space labelling, Pritchard & Thurimella, ACM Trans.
Algorithms 7, 2011, with exact labels in place of random ones.)
"""

from __future__ import annotations

from collections.abc import Hashable, Iterable
from dataclasses import dataclass, field

from core.circuit import Circuit, Island
from core.circuit.build import is_ideal
from core.circuit.merging import Merging
from core.elements.branch import Hot

Edge = tuple[str, Hashable, Hashable]


@dataclass(frozen=True)
class Topology:
    """What the wiring decides without any value.

    ``series`` and ``parallel`` group two or more heater sections by key; ``bridges`` are branches that carry
    nothing, ``shorted`` those whose ends are joined by straps.
    """

    series: tuple[tuple[str, ...], ...] = ()
    parallel: tuple[tuple[str, ...], ...] = ()
    bridges: frozenset[str] = frozenset()
    shorted: frozenset[str] = frozenset()
    series_of: dict[str, tuple[str, ...]] = field(default_factory=dict)


def cycle_labels(edges: Iterable[Edge]) -> dict[str, int]:
    """A label for each edge ``(key, u, v)``; parallel edges are distinct, self-loops get a label of their own."""
    edges = list(edges)
    at: dict[Hashable, list[int]] = {}
    for number, (_, u, v) in enumerate(edges):
        at.setdefault(u, []).append(number)
        at.setdefault(v, []).append(number)
    through: dict[Hashable, int | None] = {}
    order: list[Hashable] = []
    for seed in at:
        if seed in through:
            continue
        through[seed] = None
        walk = [seed]
        for node in walk:
            for number in at[node]:
                _, u, v = edges[number]
                far = v if u == node else u
                if far not in through:
                    through[far] = number
                    walk.append(far)
        order.extend(walk)
    tree = {number for number in through.values() if number is not None}
    labels = [0] * len(edges)
    passing: dict[Hashable, int] = dict.fromkeys(at, 0)
    for bit, number in enumerate(number for number in range(len(edges)) if number not in tree):
        _, u, v = edges[number]
        labels[number] = 1 << bit
        if u != v:
            passing[u] ^= 1 << bit
            passing[v] ^= 1 << bit
    for node in reversed(order):
        number_in = through[node]
        if number_in is not None:
            labels[number_in] = passing[node]
            _, u, v = edges[number_in]
            passing[v if u == node else u] ^= passing[node]
    return {key: label for (key, _, _), label in zip(edges, labels, strict=True)}


def topology(circuit: Circuit, pulled_in: frozenset[str] = frozenset()) -> Topology:
    """Series and parallel groups of the whole circuit, with the given relays pulled in."""
    found = [_island_topology(island, circuit, pulled_in) for island in circuit.islands if island.branches]
    return Topology(
        series=tuple(group for one in found for group in one.series),
        parallel=tuple(group for one in found for group in one.parallel),
        bridges=frozenset().union(*(one.bridges for one in found)),
        shorted=frozenset().union(*(one.shorted for one in found)),
        series_of={key: group for one in found for group in one.series for key in group},
    )


def _island_topology(island: Island, circuit: Circuit, pulled_in: frozenset[str]) -> Topology:
    closed, node_of = island.closed(pulled_in)
    edges = []
    shorted = set()
    for branch in closed:
        if not is_ideal(branch):
            u, v = node_of[branch.u], node_of[branch.v]
            if u == v:
                shorted.add(branch.key)
            else:
                edges.append((branch.key, u, v))
    labels = cycle_labels(edges)
    hot = [branch for branch in closed if isinstance(branch.law, Hot)]
    series = _grouped((labels[branch.key], branch.key) for branch in hot if labels.get(branch.key))
    wires = circuit.sheet.wire_by_id
    joined: Merging[str] = Merging()
    for branch in closed:
        if branch.owner in wires:
            joined.join(node_of[branch.u], node_of[branch.v])
    pairs = [
        (frozenset((joined.find(node_of[branch.u]), joined.find(node_of[branch.v]))), branch.key)
        for branch in hot
    ]
    return Topology(
        series=series,
        parallel=_grouped((pair, key) for pair, key in pairs if len(pair) == 2),
        bridges=frozenset(key for key, label in labels.items() if not label),
        shorted=frozenset(shorted),
    )


def _grouped(pairs: Iterable[tuple[Hashable, str]]) -> tuple[tuple[str, ...], ...]:
    groups: dict[Hashable, list[str]] = {}
    for group, key in pairs:
        groups.setdefault(group, []).append(key)
    return tuple(tuple(keys) for keys in groups.values() if len(keys) > 1)
