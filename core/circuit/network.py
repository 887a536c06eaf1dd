"""An island as index arrays: the one place where ids become indices.

Unknowns are the potentials of the nodes, then the currents of the branches that need an equation of their own
(sources without resistance or with a limit, thermistors, diodes). Ideal connections are merged into one node
beforehand, and the reference node is the last index, whose row and column are struck out: nothing is grounded
by a large conductance.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.circuit.build import Island, is_ideal
from core.circuit.merging import Merging
from core.elements.branch import (
    GROUND,
    Beyond,
    Branch,
    Coil,
    Hot,
    Ntc,
    Reactive,
    Rectifying,
    Resistive,
    Source,
)
from core.elements.heater import HeaterLaw, heater_law
from core.elements.ntc import NtcLaw
from core.elements.tungsten import Array
from core.errors import UnsolvableError
from core.sentences import sentence

Indices = NDArray[np.intp]


@dataclass(frozen=True)
class Ends:
    """End nodes of some branches, and their places among all branches of the island; arrays ``(k,)``."""

    at: Indices
    u: Indices
    v: Indices

    def __len__(self) -> int:
        return len(self.at)


@dataclass(frozen=True)
class Network:
    """An island ready to be solved. ``size`` counts the unknowns and is also the index of the reference.

    ``linear`` have conductances ``siemens``, ``(k,)`` or a row for each variation; of these the last
    ``len(ac_per_mains)`` also have an EMF. ``extra`` are the branches with a current unknown, in the order stiff
    sources, thermistors, diodes; ``first_extra`` is the index of the first such unknown. ``ideal`` are the merged
    connections.
    """

    branches: tuple[Branch, ...]
    terminals: dict[str, int]
    size: int
    u: Indices
    v: Indices
    linear: Ends
    siemens: Array
    ac_per_mains: Array
    dc_v: Array
    hot: Ends
    heaters: HeaterLaw
    extra: Ends
    first_extra: int
    stiff: tuple[Source, ...]
    shorted: NDArray[np.bool_]
    ntc: NtcLaw
    diodes: Array
    ideal: tuple[tuple[int, str, str], ...]
    coils: tuple[tuple[str, int, Coil], ...]
    has_ac: bool
    has_dc: bool
    grounded: frozenset[str]

    @property
    def owners(self) -> tuple[str, ...]:
        """Ids of the parts and wires in it."""
        return tuple(dict.fromkeys(branch.owner for branch in self.branches))

    @property
    def ntc_at(self) -> slice:
        """Where the currents of the thermistors stand among the unknowns."""
        first = self.first_extra + len(self.stiff)
        return slice(first, first + len(self.ntc.r25_ohm))

    @property
    def ntc_ends(self) -> Ends:
        """The thermistors among the branches with a current unknown."""
        own = slice(len(self.stiff), len(self.stiff) + len(self.ntc.r25_ohm))
        return Ends(self.extra.at[own], self.extra.u[own], self.extra.v[own])


def compile_island(
    island: Island, pulled_in: frozenset[str], ambient_k: float, moving: frozenset[str] = frozenset()
) -> Network:
    """Index arrays of an island with the given relays pulled in, and the contacts of others on their way.

    Raises
    ------
    UnsolvableError
        Where sources without resistance contradict each other, or the island holds what is not computed.
    """
    for member in island.members:
        _refuse_beyond(member)
    branches, node_of = island.closed(pulled_in, moving)
    terminals, node_count, grounded = _number_nodes(island, branches, node_of)
    return _arrays(branches, terminals, node_count, grounded, island.has_ac, ambient_k)


def _refuse_beyond(island: Island) -> None:
    if not island.kinds & {Beyond, Reactive, Rectifying}:
        return
    has_ac = island.has_ac
    for branch in island.branches:
        law = branch.law
        if isinstance(law, Beyond):
            raise UnsolvableError(law.reason, (branch.owner,))
        if has_ac and isinstance(law, Reactive):
            raise UnsolvableError(
                sentence("a capacitor in an AC circuit is not computed yet"), (branch.owner,)
            )
        if has_ac and isinstance(law, Rectifying):
            raise UnsolvableError(sentence("a diode in an AC circuit is not computed yet"), (branch.owner,))


def _number_nodes(
    island: Island, branches: tuple[Branch, ...], node_of: dict[str, str]
) -> tuple[dict[str, int], int, frozenset[str]]:
    """Number the merged nodes; the reference of each connected piece gets -1.

    Returns the number of each terminal, how many numbers there are, and the terminals that reach the chassis.

    The reference is the chassis where the piece has it, else the lower end of its first source, else its first
    terminal.
    """
    pieces: Merging[str] = Merging()
    for branch in branches:
        u, v = node_of[branch.u], node_of[branch.v]
        if u != v:
            pieces.join(u, v)
    piece_of = {node: pieces.find(node) for node in dict.fromkeys(node_of.values())}
    lower_ends = [branch.v for branch in branches if isinstance(branch.law, Source)]
    reference: dict[str, str] = {}
    for terminal in (GROUND, *lower_ends, *island.terminals):
        node = node_of[terminal]
        reference.setdefault(piece_of[node], node)
    number: dict[str, int] = dict.fromkeys(reference.values(), -1)
    count = 0
    for node in piece_of:
        if node not in number:
            number[node] = count
            count += 1
    terminals = {terminal: number[node] for terminal, node in node_of.items()}
    chassis = piece_of[node_of[GROUND]]
    grounded = frozenset(t for t in island.terminals if piece_of[node_of[t]] == chassis)
    return terminals, count, grounded


def varied(network: Network, ohm_factor: Array | None = None, heater_factor: Array | None = None) -> Network:
    """A batch of variations of a network, for :func:`core.steady.solve` with as many conditions.

    ``ohm_factor`` ``(b, linear)`` multiplies the resistances of ``network.linear``, ``heater_factor``
    ``(b, heaters)`` the rated currents of ``network.hot``.
    """
    siemens, heaters = network.siemens, network.heaters
    if ohm_factor is not None:
        siemens = siemens / ohm_factor
    if heater_factor is not None:
        heaters = replace(
            heaters, rated_w=heaters.rated_w * heater_factor, cold_ohm=heaters.cold_ohm / heater_factor
        )
    return replace(network, siemens=siemens, heaters=heaters)


class _Sorted:
    """Places of the branches by how they enter the equations."""

    def __init__(self, branches: tuple[Branch, ...]) -> None:
        self.plain: list[int] = []
        self.soft: list[int] = []
        self.stiff: list[int] = []
        self.hot: list[int] = []
        self.ntc: list[int] = []
        self.diode: list[int] = []
        self.ideal: list[tuple[int, str, str]] = []
        self.coils: list[tuple[str, int, Coil]] = []
        for at, branch in enumerate(branches):
            law = branch.law
            if is_ideal(branch):
                self.ideal.append((at, branch.u, branch.v))
            elif isinstance(law, Resistive):
                self.plain.append(at)
            elif isinstance(law, Hot):
                self.hot.append(at)
            elif isinstance(law, Source):
                (self.stiff if law.ohm == 0.0 or law.limit_a is not None else self.soft).append(at)
            elif isinstance(law, Coil):
                self.plain.append(at)
                self.coils.append((branch.owner, at, law))
            elif isinstance(law, Ntc):
                self.ntc.append(at)
            elif isinstance(law, Rectifying):
                self.diode.append(at)


def _ends(at: list[int], u: Indices, v: Indices) -> Ends:
    places = np.array(at, dtype=np.intp)
    return Ends(places, u[places], v[places])


def _arrays(
    branches: tuple[Branch, ...],
    terminals: dict[str, int],
    nodes: int,
    grounded: frozenset[str],
    has_ac: bool,
    ambient_k: float,
) -> Network:
    by_law = _Sorted(branches)
    extra = [*by_law.stiff, *by_law.ntc, *by_law.diode]
    size = nodes + len(extra)
    u = np.array([terminals[branch.u] for branch in branches], dtype=np.intp)
    v = np.array([terminals[branch.v] for branch in branches], dtype=np.intp)
    u[u < 0] = size
    v[v < 0] = size
    laws = [branch.law for branch in branches]
    resistances = [law for at in by_law.plain if isinstance(law := laws[at], (Resistive, Coil))]
    soft = [law for at in by_law.soft if isinstance(law := laws[at], Source)]
    stiff = tuple(law for at in by_law.stiff if isinstance(law := laws[at], Source))
    stiff_ends = _ends(by_law.stiff, u, v)
    _refuse_contradictions([branches[at] for at in by_law.stiff], terminals)
    return Network(
        branches=branches,
        terminals=terminals,
        size=size,
        u=u,
        v=v,
        linear=_ends(by_law.plain + by_law.soft, u, v),
        siemens=np.array([1 / law.ohm for law in (*resistances, *soft)]),
        ac_per_mains=np.array([law.ac_per_mains for law in soft]),
        dc_v=np.array([law.dc_v for law in soft]),
        hot=_ends(by_law.hot, u, v),
        heaters=_heaters([laws[at] for at in by_law.hot], ambient_k),
        extra=_ends(extra, u, v),
        first_extra=nodes,
        stiff=stiff,
        shorted=stiff_ends.u == stiff_ends.v,
        ntc=_ntc([laws[at] for at in by_law.ntc], ambient_k),
        diodes=np.array([law.forward_v for at in by_law.diode if isinstance(law := laws[at], Rectifying)]),
        ideal=tuple(by_law.ideal),
        coils=tuple(by_law.coils),
        has_ac=has_ac,
        has_dc=any(source.dc_v != 0.0 for source in (*soft, *stiff)),
        grounded=grounded,
    )


def _refuse_contradictions(stiff: list[Branch], terminals: dict[str, int]) -> None:
    """Sources without resistance may not form a loop; one with a limit may be shorted, as it then limits."""
    joined: Merging[int] = Merging()
    for branch in stiff:
        law = branch.law
        shorted = terminals[branch.u] == terminals[branch.v]
        if isinstance(law, Source) and law.limit_a is not None and shorted:
            continue
        if shorted:
            raise UnsolvableError(
                sentence("a supply without internal resistance is short-circuited"), (branch.owner,)
            )
        if not joined.join(terminals[branch.u], terminals[branch.v]):
            ids = tuple(dict.fromkeys(other.owner for other in stiff))
            raise UnsolvableError(sentence("supplies without internal resistance are in parallel"), ids)


def _heaters(laws: Iterable[object], ambient_k: float) -> HeaterLaw:
    hot = [law for law in laws if isinstance(law, Hot)]
    table = np.array([(x.rated_v, x.rated_a, x.cold_ratio, x.has_cathode) for x in hot]).reshape(-1, 4)
    return heater_law(table[:, 0], table[:, 1], table[:, 2], table[:, 3], ambient_k)


def _ntc(laws: Iterable[object], ambient_k: float) -> NtcLaw:
    found = [law for law in laws if isinstance(law, Ntc)]
    table = np.array([(x.r25_ohm, x.beta_k, x.dissipation_w_per_k) for x in found]).reshape(-1, 3)
    return NtcLaw(table[:, 0], table[:, 1], table[:, 2], ambient_k)
