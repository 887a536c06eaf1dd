"""What stores heat: heaters and their cathodes, filaments, thermistors; their temperatures are the state.

The state ``y`` is ``(..., n)`` kelvin: heaters and filaments in the order of the network, then the cathodes of those
that have one, then the thermistors. ``p`` is the electrical power of the ports, heaters then thermistors.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from core.circuit.network import Indices, Network
from core.elements.branch import Hot, Ntc
from core.elements.heater import CATHODE_K, HeaterLaw
from core.elements.ntc import REFERENCE_K, NtcLaw
from core.elements.tungsten import Array
from core.warmup.capacity import CATHODE_SHARE, unit_times


@dataclass(frozen=True)
class Bodies:
    """Constants: heat capacities in joules per kelvin, and watts per kelvin to the fourth.

    ``heater_c``, ``out_w_k4`` are ``(h,)``, ``cathode_c`` and ``cathode_w_k4`` ``(k,)`` for the heaters ``own``
    that have a cathode, ``ntc_c`` ``(t,)``.
    """

    heaters: HeaterLaw
    ntc: NtcLaw
    own: Indices
    heater_c: Array
    cathode_c: Array
    ntc_c: Array
    out_w_k4: Array
    cathode_w_k4: Array

    @property
    def sizes(self) -> tuple[int, int, int]:
        """How many heaters, cathodes and thermistors."""
        return len(self.heater_c), len(self.cathode_c), len(self.ntc_c)

    def start(self) -> Array:
        """Everything at the temperature of the room."""
        return np.full(sum(self.sizes), self.ntc.ambient_k)

    def split(self, y: Array) -> tuple[Array, Array, Array]:
        """Heater, cathode and thermistor temperatures of a state."""
        h, k, _ = self.sizes
        return y[..., :h], y[..., h : h + k], y[..., h + k :]

    def cathodes(self, y: Array) -> Array:
        """Cathode temperatures ``(..., h)``; the filament's own where it is its own cathode."""
        heater_k, cathode_k, _ = self.split(y)
        full = heater_k.copy()
        full[..., self.own] = cathode_k
        return full

    def siemens(self, y: Array) -> Array:
        """Port conductances at a state."""
        heater_k, _, ntc_k = self.split(y)
        law = self.heaters
        hot = 1 / (law.fixed_ohm + law.swing_ohm * law.curve.ratio(heater_k)[0])
        if not ntc_k.shape[-1]:
            return np.asarray(hot)
        return np.concatenate((hot, self._ntc_siemens(ntc_k)), axis=-1)

    def _ntc_siemens(self, kelvin: Array) -> Array:
        law = self.ntc
        return np.asarray(np.exp(law.beta_k * (1 / REFERENCE_K - 1 / kelvin)) / law.r25_ohm)

    def siemens_and_slopes(self, y: Array) -> tuple[Array, Array]:
        """Port conductances and their slopes per kelvin at a state ``(n,)``."""
        heater_k, _, ntc_k = self.split(y)
        law = self.heaters
        ratio, slope = law.curve.ratio(heater_k)
        hot = 1 / (law.fixed_ohm + law.swing_ohm * ratio)
        cold = self._ntc_siemens(ntc_k)
        return (
            np.concatenate((hot, cold)),
            np.concatenate((-hot * hot * law.swing_ohm * slope, cold * self.ntc.beta_k / ntc_k**2)),
        )

    def lost_w(self, y: Array) -> tuple[Array, Array, Array]:
        """Heat in watts that leaves heaters (to their cathode or the room), cathodes and thermistors."""
        heater_k, cathode_k, ntc_k = self.split(y)
        ambient_k4 = self.heaters.ambient_k4
        square = heater_k * heater_k
        rise = square * square - ambient_k4
        square = cathode_k * cathode_k
        cathode_rise = square * square - ambient_k4
        if cathode_k.shape[-1] == heater_k.shape[-1]:
            rise = rise - cathode_rise
        else:
            rise[..., self.own] -= cathode_rise
        law = self.ntc
        return (
            self.out_w_k4 * rise,
            self.cathode_w_k4 * cathode_rise,
            law.dissipation_w_per_k * (ntc_k - law.ambient_k),
        )

    def rates(self, y: Array, watts: Array) -> Array:
        """Kelvin per second of every body at a state ``(n,)`` and port powers."""
        h, k, t = self.sizes
        out, cathode_out, ntc_out = self.lost_w(y)
        found = np.empty(h + k + t)
        found[:h] = (watts[:h] - out) / self.heater_c
        if k:
            found[h : h + k] = (out[self.own] - cathode_out) / self.cathode_c
        if t:
            found[h + k :] = (watts[h:] - ntc_out) / self.ntc_c
        return found

    def add_heat_slopes(self, matrix: Array, y: Array, by_kelvin: Array) -> None:
        """Fill the matrix of the rates ``(n, n)`` from ``by_kelvin`` ``(ports, ports)``, watts by kelvin of a port."""
        h, k, t = self.sizes
        heater_k, cathode_k, _ = self.split(y)
        ports = np.concatenate((np.arange(h), np.arange(h + k, h + k + t)))
        matrix[np.ix_(ports, ports)] = by_kelvin / np.concatenate((self.heater_c, self.ntc_c))[:, None]
        diagonal = np.arange(h)
        out = 4 * self.out_w_k4 * heater_k**3
        matrix[diagonal, diagonal] -= out / self.heater_c
        if k:
            cathodes = h + np.arange(k)
            back = 4 * self.out_w_k4[self.own] * cathode_k**3
            matrix[self.own, cathodes] = back / self.heater_c[self.own]
            matrix[cathodes, self.own] = out[self.own] / self.cathode_c
            matrix[cathodes, cathodes] = -(back + 4 * self.cathode_w_k4 * cathode_k**3) / self.cathode_c
        if t:
            own = h + k + np.arange(t)
            matrix[own, own] -= self.ntc.dissipation_w_per_k / self.ntc_c

    def stored_j(self, y: Array) -> Array:
        """Heat stored above the temperature of the room, joules ``(...)``."""
        heater_k, cathode_k, ntc_k = self.split(y)
        ambient_k = self.ntc.ambient_k
        return np.asarray(
            (self.heater_c * (heater_k - ambient_k)).sum(axis=-1)
            + (self.cathode_c * (cathode_k - ambient_k)).sum(axis=-1)
            + (self.ntc_c * (ntc_k - ambient_k)).sum(axis=-1)
        )


def bodies_from(heaters: HeaterLaw, ntc: NtcLaw, heater_c: Array, ntc_c: Array) -> Bodies:
    """Constants of bodies from the laws and the heat capacities of heaters ``(h,)`` and thermistors ``(t,)``."""
    own = np.flatnonzero(heaters.has_cathode)
    lower_k4 = np.where(heaters.has_cathode, CATHODE_K**4, heaters.ambient_k4)
    return Bodies(
        heaters,
        ntc,
        own,
        heater_c,
        CATHODE_SHARE * heater_c[own],
        ntc_c,
        heaters.rated_w / (heaters.working_k4 - lower_k4),
        heaters.rated_w[own] / (CATHODE_K**4 - heaters.ambient_k4),
    )


def bodies_of(network: Network) -> Bodies:
    """The bodies of a network, their heat capacities from warm-up times and time constants."""
    hot = [law for branch in network.branches if isinstance(law := branch.law, Hot)]
    ntc = [law for branch in network.branches if isinstance(law := branch.law, Ntc)]
    return bodies_from(network.heaters, network.ntc, heater_capacities(hot), _ntc_capacities(ntc))


def heater_capacities(laws: Sequence[Hot]) -> Array:
    """Joules per kelvin of each heater, so that its warm-up time in the standard test circuit comes out right."""
    times = unit_times((law.cold_ratio, law.has_cathode) for law in laws)
    seconds = [law.warmup_s / times[law.cold_ratio, law.has_cathode].warmup for law in laws]
    return np.array([s * law.rated_v * law.rated_a for s, law in zip(seconds, laws, strict=True)])


def _ntc_capacities(laws: Sequence[Ntc]) -> Array:
    return np.array([law.dissipation_w_per_k * law.tau_s for law in laws])
