"""Currents in ideal connections, which the node equations leave open.

In a tree of straps Kirchhoff's current law alone decides. Where straps form a loop the split is a matter of
their unknown small resistances: equal ones are assumed.
"""

from __future__ import annotations

import numpy as np

from core.circuit.network import Network
from core.elements.branch import GROUND
from core.elements.tungsten import Array


def strap_currents(network: Network, currents: Array) -> Array:
    """Currents from ``u`` to ``v`` in ``network.ideal``, shape ``(k, ...)``.

    ``currents`` are those of all branches, shape ``(branches, ...)``, zero for the ideal ones.
    """
    numbers: dict[str, int] = {}
    for _, u, v in network.ideal:
        numbers.setdefault(u, len(numbers))
        numbers.setdefault(v, len(numbers))
    needed = np.zeros((len(numbers) + 1, *currents.shape[1:]))  # the last for ends without straps
    np.subtract.at(needed, [numbers.get(branch.u, -1) for branch in network.branches], currents)
    np.add.at(needed, [numbers.get(branch.v, -1) for branch in network.branches], currents)
    ends = [(numbers[u], numbers[v]) for _, u, v in network.ideal]
    answer = np.zeros((len(ends), *currents.shape[1:]))
    for edges, nodes in _components(ends, len(numbers)):
        root = numbers.get(GROUND, -1)
        if len(edges) == len(nodes) - 1:
            _peel(edges, ends, root if root in nodes else nodes[0], needed, answer)
        else:
            _share(edges, ends, nodes, needed, answer)
    return answer


def _components(ends: list[tuple[int, int]], count: int) -> list[tuple[list[int], list[int]]]:
    """Edges and nodes of each connected group."""
    at: list[list[int]] = [[] for _ in range(count)]
    for edge, (u, v) in enumerate(ends):
        at[u].append(edge)
        at[v].append(edge)
    seen = [False] * count
    groups = []
    for seed in range(count):
        if seen[seed]:
            continue
        seen[seed] = True
        nodes = [seed]
        edges: dict[int, None] = {}
        for node in nodes:
            for edge in at[node]:
                edges.setdefault(edge)
                for end in ends[edge]:
                    if not seen[end]:
                        seen[end] = True
                        nodes.append(end)
        groups.append((list(edges), nodes))
    return groups


def _peel(edges: list[int], ends: list[tuple[int, int]], root: int, needed: Array, answer: Array) -> None:
    """A tree: each strap carries what the side away from the root needs."""
    at: dict[int, list[int]] = {}
    for edge in edges:
        for end in ends[edge]:
            at.setdefault(end, []).append(edge)
    order: list[tuple[int, int, int]] = []
    walk = [(root, -1)]
    for node, through in walk:
        for edge in at.get(node, ()):
            if edge != through:
                u, v = ends[edge]
                far = v if u == node else u
                order.append((edge, node, far))
                walk.append((far, edge))
    total = needed.copy()
    for edge, near, far in reversed(order):
        # ``needed`` is the current that must leave a node through its straps
        answer[edge] = total[far] if ends[edge][0] == far else -total[far]
        total[near] = total[near] + total[far]


def _share(
    edges: list[int], ends: list[tuple[int, int]], nodes: list[int], needed: Array, answer: Array
) -> None:
    """Loops: the solution with equal conductances, which is the one of least squares."""
    place = {node: at for at, node in enumerate(nodes)}
    incidence = np.zeros((len(nodes), len(edges)))
    for column, edge in enumerate(edges):
        u, v = ends[edge]
        incidence[place[u], column] += 1
        incidence[place[v], column] -= 1
    right = needed[nodes].reshape(len(nodes), -1)
    keep = [at for at, node in enumerate(nodes) if at > 0]  # one equation follows from the others
    split = np.linalg.lstsq(incidence[keep], right[keep], rcond=None)[0]
    answer[edges] = split.reshape(len(edges), *needed.shape[1:])
