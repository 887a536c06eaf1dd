"""Sheet to MultiGraph to islands."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING

from core.catalogue import Catalogue
from core.circuit.merging import Merging
from core.elements import branches_of
from core.elements.branch import GROUND, Branch, Coil, Contact, Context, Reactive, Resistive, Source
from core.elements.passive import wire_ohm
from core.sheet import Chassis, Joint, Sheet, split_terminal

if TYPE_CHECKING:
    from networkx import MultiGraph


@dataclass(frozen=True)
class Island:
    """Branches that influence each other: connected otherwise than through the chassis.

    Equal islands have equal solutions, which is what makes them a key for remembering solutions. A cluster is an
    island too: ``joined`` are the islands that relays couple in it, none where it is only one.
    """

    branches: tuple[Branch, ...]
    terminals: tuple[str, ...]
    joined: tuple[Island, ...] = field(default=(), compare=False, repr=False)

    @cached_property
    def _hash(self) -> int:
        return hash((self.branches, self.terminals))

    def __hash__(self) -> int:
        return self._hash

    @cached_property
    def sources(self) -> tuple[Branch, ...]:
        """The branches with an EMF."""
        return tuple(branch for branch in self.branches if isinstance(branch.law, Source))

    @cached_property
    def has_ac(self) -> bool:
        """Whether any source in it follows the mains."""
        return any(isinstance(b.law, Source) and b.law.ac_per_mains != 0.0 for b in self.branches)

    @cached_property
    def kinds(self) -> frozenset[type]:
        """The kinds of law in it."""
        return frozenset(type(branch.law) for branch in self.branches)

    @cached_property
    def relays(self) -> frozenset[str]:
        """Ids of the relays that have their coil or a contact in it."""
        if not self.kinds & {Coil, Contact}:
            return frozenset()
        coils = (branch.owner for branch in self.branches if isinstance(branch.law, Coil))
        return frozenset((*coils, *(b.law.relay for b in self.branches if isinstance(b.law, Contact))))

    @property
    def members(self) -> tuple[Island, ...]:
        """The islands of a cluster; of any other the island itself."""
        return self.joined or (self,)

    @cached_property
    def _closed(
        self,
    ) -> dict[tuple[frozenset[str], frozenset[str]], tuple[tuple[Branch, ...], dict[str, str]]]:
        return {}

    def closed(
        self, pulled_in: frozenset[str], moving: frozenset[str] = frozenset()
    ) -> tuple[tuple[Branch, ...], dict[str, str]]:
        """Branches that are not open while these relays are pulled in, and the node of each terminal.

        Contacts of ``moving`` relays are on their way and closed on neither side. Terminals that ideal connections
        join are one node; the chassis is among the terminals.
        """
        if (pulled_in, moving) not in self._closed:
            branches = self.branches
            if self.kinds & {Contact, Reactive}:
                branches = tuple(branch for branch in branches if not is_open(branch, pulled_in, moving))
            merged: Merging[str] = Merging()
            for branch in branches:
                if is_ideal(branch):
                    merged.join(branch.u, branch.v)
            node_of = {terminal: merged.find(terminal) for terminal in (*self.terminals, GROUND)}
            self._closed[pulled_in, moving] = branches, node_of
        return self._closed[pulled_in, moving]

    @property
    def owners(self) -> tuple[str, ...]:
        """Ids of the parts and wires in it."""
        return tuple(dict.fromkeys(branch.owner for branch in self.branches))


@dataclass(frozen=True)
class Circuit:
    """The sheet as a circuit."""

    sheet: Sheet
    context: Context
    branches: dict[str, Branch]
    islands: tuple[Island, ...]

    @cached_property
    def clusters(self) -> tuple[Island, ...]:
        """Islands, those joined that a relay couples: its coil in one of them works its contact in another."""
        first: dict[str, int] = {}
        merged: Merging[int] = Merging()
        joined = False
        for at, island in enumerate(self.islands):
            for relay in island.relays:
                joined = merged.join(first.setdefault(relay, at), at) or joined
        if not joined:
            return self.islands
        groups: dict[int, list[Island]] = {}
        for at, island in enumerate(self.islands):
            groups.setdefault(merged.find(at), []).append(island)
        return tuple(self.join(group) for group in groups.values())

    def join(self, islands: Sequence[Island]) -> Island:
        """Some islands as one, in the order of the sheet; a single one as it is."""
        if len(islands) == 1:
            return islands[0]
        keys = {branch.key for island in islands for branch in island.branches}
        return Island(
            tuple(branch for key, branch in self.branches.items() if key in keys),
            tuple(terminal for island in islands for terminal in island.terminals),
            tuple(islands),
        )

    @cached_property
    def graph(self) -> MultiGraph:
        """Terminals and branches as a MultiGraph; edges are keyed by branch key and carry the branch.

        Built when first asked for: importing networkx takes longer than solving a sheet.
        """
        from networkx import MultiGraph  # noqa: PLC0415

        graph = MultiGraph()
        graph.add_nodes_from(terminal for island in self.islands for terminal in island.terminals)
        graph.add_edges_from((b.u, b.v, b.key, {"branch": b}) for b in self.branches.values())
        return graph

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


def is_open(branch: Branch, pulled_in: frozenset[str], moving: frozenset[str] = frozenset()) -> bool:
    """Whether a branch carries nothing by itself: an open contact, or a capacitor under DC."""
    law = branch.law
    if isinstance(law, Contact):
        return law.relay in moving or law.closed_when_pulled != (law.relay in pulled_in)
    return isinstance(law, Reactive)


def is_ideal(branch: Branch) -> bool:
    """Whether a closed branch connects without resistance."""
    law = branch.law
    return law.ohm == 0.0 if isinstance(law, Resistive) else isinstance(law, Contact)


def build(sheet: Sheet, catalogue: Catalogue) -> Circuit:
    """Turn a sheet into its circuit."""
    context = Context(sheet.mains, sheet.ambient_c, catalogue)
    branches: list[Branch] = []
    neighbours: dict[str, list[str]] = {}
    chassis = set()
    for part in sheet.parts:
        if isinstance(part, Chassis):
            chassis.add(part.id)
        elif isinstance(part, Joint):
            neighbours[f"{part.id}.j"] = []
        else:
            branches.extend(branches_of(part, context))
    for wire in sheet.wires:
        u = GROUND if split_terminal(wire.start)[0] in chassis else wire.start
        v = GROUND if split_terminal(wire.end)[0] in chassis else wire.end
        branches.append(Branch(wire.id, wire.id, u, v, Resistive(wire_ohm(wire, sheet.ambient_c))))
    for branch in branches:
        neighbours.setdefault(branch.u, []).append(branch.v)
        neighbours.setdefault(branch.v, []).append(branch.u)
    neighbours.pop(GROUND, None)
    return Circuit(sheet, context, {b.key: b for b in branches}, _islands(neighbours, branches))


def _islands(neighbours: dict[str, list[str]], branches: Iterable[Branch]) -> tuple[Island, ...]:
    """Components of the circuit once the chassis node is taken out."""
    number: dict[str, int] = {}
    members: list[list[str]] = []
    for seed in neighbours:
        if seed in number:
            continue
        number[seed] = len(members)
        found = [seed]
        for node in found:  # grows while it is walked
            for neighbour in neighbours[node]:
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
        Island(tuple(own), tuple(terminals)) for own, terminals in zip(sorted_branches, members, strict=True)
    )
