"""From a solved island to named values, and from those to the operating point of a sheet."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from core.circuit import Island
from core.circuit.network import Network, compile_island
from core.circuit.straps import strap_currents
from core.elements.branch import GROUND, Branch, Coil, Hot, Ntc, Resistive, Source
from core.elements.tungsten import Array
from core.errors import UnsolvableError
from core.limiting import BLOCKING
from core.results import (
    BranchPoint,
    Condition,
    HeaterPoint,
    OperatingPoint,
    SupplyPoint,
    Unsolved,
    Volts,
)
from core.sentences import sentence
from core.sheet import Sheet, Tube
from core.steady import Solution, magnitude, solve, without_limits

_LEAST_BACK = 1e-9  # volts and watts by which a supply must be driven back to count as such


@dataclass
class IslandPoint:
    """One island at one condition; the fields are as in :class:`core.results.OperatingPoint`."""

    nodes: dict[str, Volts] = field(default_factory=dict)
    bias: dict[str, float] = field(default_factory=dict)
    heaters: list[HeaterPoint] = field(default_factory=list)
    supplies: dict[str, SupplyPoint] = field(default_factory=dict)
    branches: dict[str, BranchPoint] = field(default_factory=dict)
    residual_a: float = 0.0
    power_in_w: float = 0.0
    power_out_w: float = 0.0


Answer = IslandPoint | Unsolved


def solve_island(
    island: Island, conditions: tuple[Condition, ...], pulled: frozenset[str], ambient_k: float
) -> tuple[Answer, ...]:
    """Solve one island at every condition, with the relays ``pulled`` in; :class:`Unsolved` where it has no answer."""
    mains_v = np.array([condition.mains_v for condition in conditions])
    cold = np.array([condition.cold for condition in conditions])
    try:
        with np.errstate(divide="raise", over="raise", invalid="raise"):
            network = compile_island(island, pulled, ambient_k)
            solution = solve(network, mains_v, cold)
            driven = _driven_back(solution)
            demand = np.where(driven, np.nan, _demands(solution, mains_v, cold))
            return points_of(solution, pulled, demand, driven)
    except UnsolvableError as error:
        reason, ids = error.reason, error.ids
    except FloatingPointError:
        reason, ids = sentence("the numbers run out of range"), island.owners
    if len(conditions) > 1:
        # one condition may be at fault and the others not
        return tuple(solve_island(island, (one,), pulled, ambient_k)[0] for one in conditions)
    return (Unsolved(reason, ids, island.terminals),)


def _demands(solution: Solution, mains_v: Array, cold: Array) -> Array:
    """What limiting supplies are asked for, ``(b, stiff sources)``; infinite for a short circuit."""
    demand = np.full(solution.limiting.shape, np.nan)
    network = solution.network
    if solution.limiting.any():
        demand[:, :] = np.inf
        if not network.shorted.any():
            stiff = network.extra.at[: len(network.stiff)]
            try:
                free = solve(without_limits(network), mains_v, cold.astype(bool))
            except (UnsolvableError, FloatingPointError):
                # all that is known then is that it is more than the limit
                demand[:, :] = [source.limit_a or np.inf for source in network.stiff]
            else:
                demand = np.abs(free.currents[:, stiff, -1])
    return np.where(solution.limiting, demand, np.nan)


def _driven_back(solution: Solution) -> NDArray[np.bool_]:
    """Which supplies without resistance or with a limit another source holds up or turns round, ``(b, k)``."""
    network = solution.network
    stiff = network.extra.at[: len(network.stiff)]
    u, v = network.u[stiff], network.v[stiff]
    volts = solution.potentials[:, u, -1] - solution.potentials[:, v, -1]
    limited = np.array([source.limit_a is not None for source in network.stiff], dtype=bool)
    return np.asarray((solution.modes == BLOCKING) | (limited & (volts < -_LEAST_BACK)))


def points_of(
    solution: Solution, pulled: frozenset[str], demand: Array, driven: NDArray[np.bool_]
) -> tuple[IslandPoint, ...]:
    """The points of a batch: relays ``pulled`` in, what limited supplies are asked for, which are driven ``(b, k)``."""
    network = solution.network
    potentials, currents = solution.potentials, solution.currents
    if network.ideal:
        places = [at for at, _, _ in network.ideal]
        currents[:, places] = np.moveaxis(strap_currents(network, np.moveaxis(currents, 1, 0)), 0, 1)
    across = potentials[:, network.u] - potentials[:, network.v]
    taken = (across * currents).sum(axis=-1)
    volts, amps = magnitude(across), magnitude(currents)
    limits = np.where(np.isnan(demand), -1.0, demand)
    columns = (
        potentials,
        volts,
        amps,
        taken,
        solution.heater_k,
        solution.cathode_k,
        solution.ntc_k,
        limits,
        driven,
        solution.residual_a,
    )
    figures = zip(*(column.tolist() for column in columns), strict=True)
    named = [(terminal, at) for terminal, at in network.terminals.items() if terminal != GROUND]
    tied = [(terminal, at) for terminal, at in named if terminal in network.grounded]
    return tuple(_point(network, pulled, named, tied, _Figures(*items)) for items in figures)


class _Figures(NamedTuple):
    """One condition's figures as plain lists: by node, by branch, by heater, by thermistor, by stiff source."""

    potentials: list[list[float]]
    volts: list[float]
    amps: list[float]
    taken: list[float]
    heater_k: list[float]
    cathode_k: list[float]
    ntc_k: list[float]
    demand: list[float]
    driven: list[bool]
    residual_a: float


def _point(
    network: Network,
    pulled: frozenset[str],
    named: list[tuple[str, int]],
    tied: list[tuple[str, int]],
    found: _Figures,
) -> IslandPoint:
    potentials = found.potentials
    point = IslandPoint(
        nodes={terminal: potentials[at][0] for terminal, at in named},
        bias={terminal: potentials[at][-1] if network.has_dc else 0.0 for terminal, at in tied},
        residual_a=found.residual_a,
    )
    hot = zip(found.heater_k, found.cathode_k, strict=True)
    bodies = iter(found.ntc_k)
    stiff = network.extra.at[: len(network.stiff)].tolist()
    asked = dict(zip(stiff, zip(found.demand, found.driven, strict=True), strict=True))
    rows = zip(network.branches, found.volts, found.amps, found.taken, strict=True)
    branches, power_out = point.branches, 0.0
    for at, (branch, v, a, w) in enumerate(rows):
        law = branch.law
        if isinstance(law, Resistive):
            branches[branch.key] = BranchPoint(v, a, w)
        elif isinstance(law, Hot):
            point.heaters.append(
                HeaterPoint(branch.owner, law.pins, v, a, w, law.rated_v, law.rated_a, *next(hot))
            )
        elif isinstance(law, Source):
            _add_source(point, branch, law, v, a, w, *asked.get(at, (-1.0, False)))
            continue
        else:
            kelvin = next(bodies) if isinstance(law, Ntc) else None
            relay = branch.owner in pulled if isinstance(law, Coil) else None
            branches[branch.key] = BranchPoint(v, a, w, kelvin, relay)
        power_out += w
    point.power_out_w += power_out
    return point


def _add_source(
    point: IslandPoint,
    branch: Branch,
    law: Source,
    v: float,
    a: float,
    w: float,
    demand: float,
    driven: bool,
) -> None:
    """Add a supply; the halves of a centre-tapped winding become one."""
    loss = a * a * law.ohm
    point.power_in_w += loss - w
    point.power_out_w += loss
    if law.bias:
        point.branches[branch.key] = BranchPoint(v, a, -w)
        return
    limiting = demand >= 0
    driven = driven or w > _LEAST_BACK
    new = SupplyPoint(v, a, -w, law.rated_a, limiting, demand if limiting else None, driven)
    old = point.supplies.get(branch.owner)
    if old is not None:
        given = old.w - w
        new = SupplyPoint(old.v + v, max(old.a, a), given, law.rated_a, driven_back=given < -_LEAST_BACK)
    point.supplies[branch.owner] = new


def merge(sheet: Sheet, condition: Condition, answers: list[Answer]) -> OperatingPoint:
    """One operating point from the islands' answers; every socket and lamp has an entry."""
    point = OperatingPoint(condition)
    heaters: dict[str, list[HeaterPoint]] = {part.id: [] for part in sheet.parts if isinstance(part, Tube)}
    unsolved: list[Unsolved] = []
    residual = power_in = power_out = 0.0
    for answer in answers:
        if isinstance(answer, Unsolved):
            unsolved.append(answer)
            continue
        point.nodes.update(answer.nodes)
        point.bias.update(answer.bias)
        point.supplies.update(answer.supplies)
        point.branches.update(answer.branches)
        for heater in answer.heaters:
            heaters.setdefault(heater.owner, []).append(heater)
        residual = max(residual, answer.residual_a)
        power_in += answer.power_in_w
        power_out += answer.power_out_w
    for part in sheet.parts:
        if part.kind == "chassis":
            point.nodes[f"{part.id}.e"] = 0.0
            point.bias[f"{part.id}.e"] = 0.0
    return OperatingPoint(
        condition,
        point.nodes,
        point.bias,
        {owner: tuple(sections) for owner, sections in heaters.items()},
        point.supplies,
        point.branches,
        tuple(unsolved),
        residual,
        power_in,
        power_out,
    )
