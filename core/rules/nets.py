"""Terminals joined by conductors: which are the same piece of metal, and along which wires."""

from __future__ import annotations

from collections.abc import Iterable

from core.elements.branch import Branch


class Nets:
    """Terminals merged by conductors; every terminal is at least a net of its own."""

    def __init__(self, conductors: Iterable[Branch]) -> None:
        parent: dict[str, str] = {}
        for branch in conductors:
            one, other = _root(parent, branch.u), _root(parent, branch.v)
            if one != other:
                parent[one] = other
        self._net = {terminal: _root(parent, terminal) for terminal in parent}

    def net(self, terminal: str) -> str:
        """The terminal that stands for the net of ``terminal``."""
        return self._net.get(terminal, terminal)

    def joined(self, one: str, other: str) -> bool:
        """Whether metal joins two terminals."""
        return self.net(one) == self.net(other)


def _root(parent: dict[str, str], terminal: str) -> str:
    """The terminal at the head of a net; what led to it is led straight there."""
    root = terminal
    while (above := parent.get(root)) is not None:
        root = above
    while terminal != root:
        following = parent[terminal]
        parent[terminal], terminal = root, following
    return root


Ways = dict[str, list[tuple[str, str]]]


def ways(conductors: Iterable[Branch]) -> Ways:
    """From each terminal, the conductors that leave it and the terminals they lead to."""
    at: Ways = {}
    for branch in conductors:
        at.setdefault(branch.u, []).append((branch.owner, branch.v))
        at.setdefault(branch.v, []).append((branch.owner, branch.u))
    return at


def shortest_path(at: Ways, start: str, end: str) -> tuple[str, ...]:
    """Owners of the conductors on a shortest way between two terminals; empty where there is none."""
    came: dict[str, tuple[str, str]] = {start: ("", "")}
    walk = [start]
    for node in walk:
        if node == end:
            break
        for owner, far in at.get(node, ()):
            if far not in came:
                came[far] = (owner, node)
                walk.append(far)
    if end not in came:
        return ()
    found: list[str] = []
    node = end
    while node != start:
        owner, node = came[node]
        found.append(owner)
    return tuple(dict.fromkeys(reversed(found)))
