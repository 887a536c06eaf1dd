"""Sheet to MultiGraph to islands."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

import networkx as nx

from core.catalogue import Catalogue
from core.elements import branches_of
from core.elements.branch import GROUND, Branch, Contact, Context, Reactive, Resistive, Source
from core.elements.passive import wire_ohm
from core.sheet import Chassis, Joint, Sheet, split_terminal


@dataclass(frozen=True)
class Island:
    """Branches that influence each other: connected otherwise than through the chassis.

    Equal islands have equal solutions, which is what makes them a key for remembering solutions.
    """

    branches: tuple[Branch, ...]
    terminals: tuple[str, ...]

    @cached_property
    def _hash(self) -> int:
        return hash((self.branches, self.terminals))

    def __hash__(self) -> int:
        return self._hash

    @cached_property
    def sources(self) -> tuple[Branch, ...]:
        """The branches with an EMF."""
        return tuple(branch for branch in self.branches if isinstance(branch.law, Source))

    @property
    def owners(self) -> tuple[str, ...]:
        """Ids of the parts and wires in it."""
        return tuple(dict.fromkeys(branch.owner for branch in self.branches))


@dataclass(frozen=True)
class Circuit:
    """The sheet as a circuit. Edges of ``graph`` are keyed by branch key and carry the branch."""

    sheet: Sheet
    context: Context
    branches: dict[str, Branch]
    graph: nx.MultiGraph
    islands: tuple[Island, ...]

    @cached_property
    def branches_by_owner(self) -> dict[str, tuple[Branch, ...]]:
        """Branches of each part or wire."""
        found: dict[str, list[Branch]] = {}
        for branch in self.branches.values():
            found.setdefault(branch.owner, []).append(branch)
        return {owner: tuple(branches) for owner, branches in found.items()}

    @cached_property
    def wires_at(self) -> dict[str, tuple[str, ...]]:
        """Ids of the wires that end on each terminal."""
        found: dict[str, list[str]] = {}
        for wire in self.sheet.wires:
            found.setdefault(wire.start, []).append(wire.id)
            found.setdefault(wire.end, []).append(wire.id)
        return {terminal: tuple(ids) for terminal, ids in found.items()}

    def node(self, terminal: str) -> str:
        """The graph's node for a terminal: every chassis terminal is the same node."""
        return GROUND if terminal.rpartition(".")[0] in self._chassis else terminal

    @cached_property
    def _chassis(self) -> frozenset[str]:
        return frozenset(part.id for part in self.sheet.parts if isinstance(part, Chassis))


def is_open(branch: Branch, pulled_in: frozenset[str]) -> bool:
    """Whether a branch carries nothing by itself: an open contact, or a capacitor under DC."""
    law = branch.law
    if isinstance(law, Contact):
        return law.closed_when_pulled != (law.relay in pulled_in)
    return isinstance(law, Reactive)


def build(sheet: Sheet, catalogue: Catalogue) -> Circuit:
    """Turn a sheet into its circuit."""
    context = Context(sheet.mains, sheet.ambient_c, catalogue)
    branches: list[Branch] = []
    graph = nx.MultiGraph()
    chassis = set()
    for part in sheet.parts:
        if isinstance(part, Chassis):
            chassis.add(part.id)
            graph.add_node(GROUND)
        elif isinstance(part, Joint):
            graph.add_node(f"{part.id}.j")
        else:
            branches.extend(branches_of(part, context))
    for wire in sheet.wires:
        ends = (
            GROUND if split_terminal(terminal)[0] in chassis else terminal for terminal in (wire.start, wire.end)
        )
        branches.append(Branch(wire.id, wire.id, *ends, Resistive(wire_ohm(wire, sheet.ambient_c))))
    graph.add_edges_from((branch.u, branch.v, branch.key, {"branch": branch}) for branch in branches)
    return Circuit(sheet, context, {b.key: b for b in branches}, graph, _islands(graph, branches))


def _islands(graph: nx.MultiGraph, branches: Iterable[Branch]) -> tuple[Island, ...]:
    """Components of the graph once the chassis node is taken out; what ties only chassis to itself is last."""
    number: dict[str, int] = {}
    members: list[list[str]] = []
    adjacency = graph.adj
    for seed in graph:
        if seed in number or seed == GROUND:
            continue
        number[seed] = len(members)
        found = [seed]
        for node in found:  # grows while it is walked
            for neighbour in adjacency[node]:
                if neighbour not in number and neighbour != GROUND:
                    number[neighbour] = len(members)
                    found.append(neighbour)
        members.append(found)
    sorted_branches: list[list[Branch]] = [[] for _ in members]
    for branch in branches:
        end = branch.v if branch.u == GROUND else branch.u
        if end != GROUND:
            sorted_branches[number[end]].append(branch)
    return tuple(
        Island(tuple(own), tuple(terminals))
        for own, terminals in zip(sorted_branches, members, strict=True)
    )
