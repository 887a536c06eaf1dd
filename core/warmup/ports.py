"""The electrical network between two switching instants, seen from what changes with temperature.

Heaters, lamps and thermistors are ports; all else is linear as long as nothing switches. With the ports at reference
conductances the network is solved once; any other conductances are then exact by a system of the ports alone::

    v = v_ref - Z (G - G_ref) v            x = x_ref - W (G - G_ref) v

with ``Z`` the volts at each port for an ampere out of each, ``W`` the same for every unknown ``x``.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from core.circuit.network import Network
from core.elements.tungsten import Array
from core.errors import UnsolvableError
from core.limiting import Modes
from core.sentences import sentence
from core.steady import Flags, Stepper


@dataclass(frozen=True)
class Ports:
    """Linear relation of port volts to port conductances; ``n`` ports, ``c`` components.

    ``z`` is ``(n, n)`` ohms, ``v_ref`` ``(n, c)`` volts at the conductances ``g_ref`` ``(n,)``.
    """

    z: Array
    v_ref: Array
    g_ref: Array

    @cached_property
    def _eye(self) -> Array:
        return np.eye(len(self.g_ref))

    @cached_property
    def _both(self) -> Array:
        return np.concatenate((self.v_ref, self.z), axis=1)

    def volts(self, siemens: Array) -> Array:
        """Port volts ``(..., n, c)`` at port conductances ``(..., n)``."""
        matrix = self._eye + self.z * (siemens - self.g_ref)[..., None, :]
        return np.asarray(
            np.linalg.solve(matrix, np.broadcast_to(self.v_ref, (*siemens.shape, self.v_ref.shape[1])))
        )

    def volts_and_ohms(self, siemens: Array) -> tuple[Array, Array]:
        """Port volts ``(n, c)``, and how much each falls for an ampere out of each port, ``(n, n)``."""
        matrix = self._eye + self.z * (siemens - self.g_ref)
        found = np.asarray(np.linalg.solve(matrix, self._both), dtype=float)
        parts = self.v_ref.shape[1]
        return found[:, :parts], found[:, parts:]


@dataclass(frozen=True)
class PortModel(Ports):
    """The network of one set of switch positions and supply modes.

    ``x_ref`` is ``(size + 1, c)``, ``w`` ``(size + 1, n)``: all unknowns and a zero for the reference. ``modes`` are
    those of the supplies, ``conducting`` those of the diodes.
    """

    x_ref: Array
    w: Array
    stepper: Stepper
    modes: Modes
    conducting: Flags

    @property
    def network(self) -> Network:
        """The index arrays it was made from."""
        return self.stepper.network

    def unknowns(self, siemens: Array, volts: Array) -> Array:
        """All unknowns ``(..., size + 1, c)`` at port conductances ``(..., n)`` and port volts ``(..., n, c)``."""
        drawn = (siemens - self.g_ref)[..., None] * volts
        found = self.x_ref - self.w @ drawn
        ntc = self.network.ntc_at
        if ntc.stop > ntc.start:
            # what their reference resistance takes is an unknown of its own; this is all that they take
            count = ntc.stop - ntc.start
            found[..., ntc, :] = siemens[..., -count:, None] * volts[..., -count:, :]
        return np.asarray(found)


def port_model(network: Network, mains_v: float, modes: Modes, conducting: Flags, g_ref: Array) -> PortModel:
    """Solve a network once for given modes ``(k,)`` and conducting diodes ``(d,)``.

    Ports are the heaters and lamps, then the thermistors, at conductances ``g_ref`` ``(n,)``.

    Raises
    ------
    UnsolvableError
        When the equations have no unique solution.
    """
    stepper = Stepper(network, np.array([mains_v]), np.array([True]))
    hot = len(network.hot)
    u = np.concatenate((network.hot.u, network.ntc_ends.u))
    v = np.concatenate((network.hot.v, network.ntc_ends.v))
    parts = stepper.injected.shape[-1]
    right = np.zeros((1, stepper.width, parts + len(u)))
    right[..., :parts] = stepper.injected
    columns = parts + np.arange(len(u))
    np.add.at(right[0], (u, columns), 1.0)
    np.add.at(right[0], (v, columns), -1.0)
    values = np.concatenate((g_ref[None, :hot],) * 4, axis=1) * stepper.hot_signs
    if len(network.extra):
        across, own, rows = stepper.extra_rows(modes[None], conducting[None], 1 / g_ref[None, hot:])
        right[:, network.first_extra : network.size, :parts] = rows
        values = np.concatenate((values, across, -across, own), axis=1)
    try:
        found = stepper.system.solve(values, right)[0]
    except np.linalg.LinAlgError as error:
        raise UnsolvableError(sentence("the circuit has no unique solution"), network.owners) from error
    w = found[:, parts:]
    x_ref = found[:, :parts]
    return PortModel(w[u] - w[v], x_ref[u] - x_ref[v], g_ref, x_ref, w, stepper, modes, conducting)
