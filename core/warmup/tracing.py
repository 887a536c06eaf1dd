"""The runs of all lines on one grid of times."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np

from core.elements.branch import Coil, Hot, Ntc, Source
from core.elements.tungsten import Array
from core.warmup.results import BranchTrace, HeaterTrace, SupplyTrace, Traces
from core.warmup.sampling import Sampled, Samples


def joint_grid(lines: Sequence[Sampled]) -> Array:
    """The times of all lines, rising; those at which something switches stand twice."""
    if not lines:
        return np.zeros(1)
    times = np.unique(np.concatenate([line.own.t_s for line in lines]))
    edges = np.unique(np.concatenate([_edges(line) for line in lines]))
    return np.sort(np.concatenate((times, edges[np.isin(edges, times)])))


def _edges(line: Sampled) -> Array:
    return np.array([segment.t0 for segment in line.run.segments[1:]])


def traces_of(lines: Iterable[Sampled], t_s: Array) -> Traces:
    """Everything on a grid of rising times."""
    found = Traces(t_s, {}, {}, {}, {})
    wires_left_out = (Hot, Source)
    for line in lines:
        samples = line.at_times(np.minimum(t_s, line.run.end_s))
        _add_heaters(found, line, samples)
        ntc = iter(range(samples.ntc_k.shape[1]))
        for at, branch in enumerate(line.run.island.branches):
            law = branch.law
            if isinstance(law, Source) and not law.bias:
                _add_supply(found, branch.owner, samples, at)
            elif (not isinstance(law, wires_left_out) and branch.owner == branch.key) or isinstance(law, Ntc):
                kelvin = samples.ntc_k[:, next(ntc)] if isinstance(law, Ntc) else None
                found.branches[branch.key] = BranchTrace(
                    samples.volts[:, at], samples.amps[:, at], samples.watts[:, at], kelvin
                )
            if isinstance(law, Coil):
                found.relays[branch.owner] = _pulled(line, branch.owner, t_s)
    return found


def _add_heaters(found: Traces, line: Sampled, samples: Samples) -> None:
    hot = [(at, branch) for at, branch in enumerate(line.run.island.branches) if isinstance(branch.law, Hot)]
    for column, (at, branch) in enumerate(hot):
        found.heaters[branch.key] = HeaterTrace(
            samples.volts[:, at],
            samples.amps[:, at],
            samples.heater_k[:, column],
            samples.cathode_k[:, column],
        )


def _add_supply(found: Traces, owner: str, samples: Samples, at: int) -> None:
    """The halves of a centre-tapped winding become one, as in the steady state."""
    volts, amps = samples.volts[:, at], samples.amps[:, at]
    old = found.supplies.get(owner)
    found.supplies[owner] = (
        SupplyTrace(volts, amps) if old is None else SupplyTrace(old.v + volts, np.maximum(old.a, amps))
    )


def _pulled(line: Sampled, relay: str, t_s: Array) -> Array:
    """Whether a relay's contact stands pulled in, at each time."""
    edges = [segment.t0 for segment in line.run.segments[1:]]
    states = np.array(
        [relay in one.contacts.pulled and relay not in one.contacts.moving for one in line.run.segments]
    )
    return states[np.searchsorted(edges, t_s, side="right")]
