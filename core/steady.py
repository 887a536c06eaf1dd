"""Steady state of an island: nodal analysis with the non-linear heater law, for a batch of conditions at once.

Every heater is carried by the power it turns into heat: its steady volts and amperes are explicit functions of
that power. Each step replaces the heaters by their tangents at the present powers, solves the linear network,
and moves every power along the heater's own (almost straight) curve of ln V against ln P to the volts found.
Resistance always rises slower than power, so chord steps (R = V/I instead of the tangent) converge from
anywhere; they are used first, and again wherever tangents fail to gain.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from msgspec import structs
from numpy.typing import NDArray

from core.circuit.network import Network
from core.elements import heater, ntc
from core.elements.tungsten import Array
from core.errors import UnsolvableError
from core.linear import LinearSystem, scatter, stamp

MAX_STEPS = 200
TOLERANCE = 1e-11  # volts of mismatch over rated volts; the last step usually lands below 1e-14
ROUNDING = 1e-7  # below this a step that gains nothing has met the rounding of an ill-conditioned network
_LEAST_SHARE = 1e-30  # of rated power: keeps logarithms finite in a heater that carries nothing
_LEAKAGE_S = 1e-9  # a blocking diode leaks nanoamperes per volt, which also keeps what hangs on it defined

Flags = NDArray[np.bool_]


@dataclass(frozen=True)
class Solution:
    """A solved batch of ``b`` conditions with ``c`` components (AC before DC where both are present).

    ``potentials`` is ``(b, size + 1, c)`` volts, ``currents`` ``(b, branches, c)`` amperes from ``u`` to ``v``
    (ideal connections still zero), ``heater_w`` ``(b, heaters)``, ``ntc_w`` ``(b, thermistors)``, ``limiting``
    ``(b, stiff sources)``, ``residual_a`` ``(b,)``, ``steps`` the number of linear solves.
    """

    network: Network
    potentials: Array
    currents: Array
    heater_w: Array
    ntc_w: Array
    limiting: Flags
    residual_a: Array
    cold: Flags
    steps: int


@dataclass
class _State:
    """What changes from step to step."""

    heater_w: Array
    ntc_w: Array
    polarity: Array
    ntc_polarity: Array
    tangent: Flags
    limiting: Flags
    conducting: Flags


def solve(network: Network, mains_v: Array, cold: Flags) -> Solution:
    """Solve a batch: ``mains_v`` and ``cold`` of shape ``(b,)``.

    Raises
    ------
    UnsolvableError
        When the equations have no unique solution or do not settle; carries the ids of the island.
    """
    step = _Stepper(network, mains_v, cold)
    state = step.start()
    previous = np.full(len(mains_v), np.inf)
    for count in range(1, MAX_STEPS + 1):
        potentials = step.solve_linear(state)
        mismatch = step.advance(state, potentials)
        gains = mismatch < 0.9 * previous
        # a tangent step that gains nothing has left its region of trust: go back to chords for a while
        state.tangent = (mismatch < 0.5) & gains & step.may_use_tangents
        settled = (mismatch < TOLERANCE) | ((mismatch < ROUNDING) & ~gains)
        previous = mismatch
        if settled.all() and not step.switch(state, potentials):
            return step.finish(state, potentials, count)
    raise UnsolvableError("the steady state does not settle", _owners(network))


def _owners(network: Network) -> tuple[str, ...]:
    return tuple(dict.fromkeys(branch.owner for branch in network.branches))


def _log_ratio(found: Array, law: Array) -> Array:
    return np.log(np.maximum(found, 1e-300) / np.maximum(law, 1e-300))


class _Stepper:
    """The constant data of one solve, and the operations of one step."""

    def __init__(self, network: Network, mains_v: Array, cold: Flags) -> None:
        self.network = network
        self.cold = cold
        self.items = len(mains_v)
        self.width = network.size + 1
        self.mixed = network.has_ac and network.has_dc
        self.may_use_tangents = ~cold & (not self.mixed)
        self.soft_emf = self._emf(network.ac_per_mains, network.dc_v, mains_v)
        stiff_ac = np.array([source.ac_per_mains for source in network.stiff])
        stiff_dc = np.array([source.dc_v for source in network.stiff])
        self.stiff_emf = self._emf(stiff_ac, stiff_dc, mains_v)
        self.limit = np.array([np.inf if s.limit_a is None else s.limit_a for s in network.stiff])
        self.ntc_at = slice(len(network.stiff), len(network.stiff) + len(network.ntc.r25_ohm))
        self.system = self._constant_part()

    def _emf(self, ac_per_mains: Array, dc_v: Array, mains_v: Array) -> Array:
        """EMF of shape ``(b, k, c)``."""
        ac = mains_v[:, None] * ac_per_mains
        dc = np.broadcast_to(dc_v, ac.shape)
        if self.mixed:
            return np.stack((ac, dc), axis=-1)
        return (ac if self.network.has_ac else dc)[..., None]

    def _constant_part(self) -> LinearSystem:
        """The part of the equations that no step changes."""
        net = self.network
        places, signs = stamp(net.linear.u, net.linear.v, self.width)
        unknown = net.first_extra + np.arange(len(net.extra))
        kcl = np.concatenate((net.extra.u * self.width + unknown, net.extra.v * self.width + unknown))
        kcl_values = np.concatenate((np.ones(len(unknown)), -np.ones(len(unknown))))
        siemens = np.broadcast_to(net.siemens, (self.items, len(net.linear)))
        values = np.concatenate(
            (np.tile(siemens, 4) * signs, np.broadcast_to(kcl_values, (self.items, len(kcl)))), axis=1
        )
        hot_places, self.hot_signs = stamp(net.hot.u, net.hot.v, self.width)
        rows = unknown * self.width
        extra_places = np.concatenate((rows + net.extra.u, rows + net.extra.v, rows + unknown))
        self.injected = self._inject_soft()
        return LinearSystem(
            self.width, np.concatenate((places, kcl)), values, np.concatenate((hot_places, extra_places))
        )

    def _inject_soft(self) -> Array:
        """Currents that sources with resistance push into their upper nodes, ``(b, width, c)``."""
        net = self.network
        count = self.soft_emf.shape[1]
        soft = slice(len(net.linear) - count, len(net.linear))
        pushed = self.soft_emf * np.broadcast_to(net.siemens, (self.items, len(net.linear)))[:, soft, None]
        return scatter(net.linear.u[soft], pushed, self.width) - scatter(
            net.linear.v[soft], pushed, self.width
        )

    def start(self) -> _State:
        """Heaters at rated power, or cold where a thermistor or relay remembers how the amplifier started."""
        net = self.network
        shape = (self.items, len(net.hot))
        from_cold = bool(len(net.ntc.r25_ohm) or net.coils)
        share = np.where(self.cold | from_cold, _LEAST_SHARE, 1.0)
        ntc_shape = (self.items, len(net.ntc.r25_ohm))
        return _State(
            heater_w=share[:, None] * net.heaters.rated_w,
            ntc_w=np.zeros(ntc_shape),
            polarity=np.ones(shape),
            ntc_polarity=np.ones(ntc_shape),
            tangent=np.zeros(self.items, dtype=bool),
            limiting=np.broadcast_to(net.shorted, (self.items, len(net.stiff))).copy(),
            conducting=np.ones((self.items, len(net.diodes)), dtype=bool),
        )

    def solve_linear(self, state: _State) -> Array:
        """Potentials and extra currents at the present tangents or chords, ``(b, width, c)``."""
        net = self.network
        ohm, elasticity = heater.steady_resistance(net.heaters, state.heater_w)
        exponent = np.where(state.tangent[:, None], (1 - elasticity) / (1 + elasticity), 1.0)
        siemens = exponent / ohm
        offset = state.polarity * np.sqrt(state.heater_w / ohm) * (1 - exponent)
        across, own, right = self._extra_rows(state)
        values = np.concatenate((np.tile(siemens, 4) * self.hot_signs, across, -across, own), axis=1)
        push = self.injected.copy()
        if len(net.hot):
            push -= scatter(net.hot.u, offset[..., None], self.width)
            push += scatter(net.hot.v, offset[..., None], self.width)
        push[:, net.first_extra : net.size] = right
        try:
            return self.system.solve(values, push)
        except np.linalg.LinAlgError as error:
            raise UnsolvableError("the circuit has no unique solution", _owners(net)) from error

    def _extra_rows(self, state: _State) -> tuple[Array, Array, Array]:
        """Equations of the branches with a current unknown: factors of volts and of amperes, right sides."""
        net = self.network
        stiff_ohm = np.array([source.ohm for source in net.stiff])
        stiff_across = np.where(state.limiting, 0.0, 1.0)
        stiff_own = np.where(state.limiting, 1.0, -stiff_ohm)
        limited = np.where(state.limiting, -np.where(np.isinf(self.limit), 0.0, self.limit), 0.0)[..., None]
        stiff_right = np.where(state.limiting[..., None], limited, self.stiff_emf)
        ohm, elasticity = ntc.steady_resistance(net.ntc, state.ntc_w)
        gain = np.where(state.tangent[:, None], (1 + elasticity) / (1 - elasticity), 1.0)
        ntc_right = (state.ntc_polarity * np.sqrt(state.ntc_w * ohm) * (1 - gain))[..., None]
        on = state.conducting
        diode_across = np.where(on, 1.0, -_LEAKAGE_S)
        diode_own = np.where(on, 0.0, 1.0)
        diode_right = np.where(on, net.diodes, 0.0)[..., None]
        parts = self.injected.shape[-1]
        return (
            np.concatenate((stiff_across, np.ones_like(ohm), diode_across), axis=1),
            np.concatenate((stiff_own, -gain * ohm, diode_own), axis=1),
            np.concatenate(
                (stiff_right, np.broadcast_to(ntc_right, (*ohm.shape, parts)),
                 np.broadcast_to(diode_right, (*on.shape, parts))), axis=1
            ),
        )  # fmt: skip

    def advance(self, state: _State, potentials: Array) -> Array:
        """Move the powers to the volts and amperes found; returns the largest mismatch by item, ``(b,)``."""
        net = self.network
        hot_k = ~self.cold
        mismatch = np.zeros(self.items)
        if len(net.hot):
            across = potentials[:, net.hot.u] - potentials[:, net.hot.v]
            volts = _magnitude(across)
            ohm, elasticity = heater.steady_resistance(net.heaters, state.heater_w)
            law_v = np.sqrt(state.heater_w * ohm)
            off = np.abs(volts - law_v) / net.heaters.rated_v
            mismatch = np.where(hot_k, off.max(axis=1), 0.0)
            step = np.clip(2 / (1 + elasticity) * _log_ratio(volts, law_v), -200.0, 3.0)
            # no heater can take more than its volts drive through its resistance at ambient
            ceiling = volts**2 / heater.steady_resistance(net.heaters, np.zeros(len(net.hot)))[0]
            moved = np.minimum(state.heater_w * np.exp(step), ceiling)
            moved = np.maximum(moved, _LEAST_SHARE * net.heaters.rated_w)
            state.heater_w = np.where(hot_k[:, None], moved, state.heater_w)
            state.polarity = np.where(across[..., 0] < 0, -1.0, 1.0)
        if len(net.ntc.r25_ohm):
            amps = potentials[:, net.first_extra : net.size][:, self.ntc_at]
            found = _magnitude(amps)
            ohm, elasticity = ntc.steady_resistance(net.ntc, state.ntc_w)
            law_a = np.sqrt(state.ntc_w / ohm)
            off = np.abs(found - law_a) / np.maximum(found.max(axis=1, keepdims=True), 1e-12)
            mismatch = np.maximum(mismatch, np.where(hot_k, off.max(axis=1), 0.0))
            moved = np.where(
                state.ntc_w > 0,
                state.ntc_w * np.exp(np.clip(2 / (1 - elasticity) * _log_ratio(found, law_a), -200.0, 3.0)),
                found**2 * ohm,
            )
            state.ntc_w = np.where(hot_k[:, None], moved, state.ntc_w)
            state.ntc_polarity = np.where(amps[..., 0] < 0, -1.0, 1.0)
        if not np.isfinite(mismatch).all():
            raise UnsolvableError("the numbers run out of range", _owners(net))
        return mismatch

    def switch(self, state: _State, potentials: Array) -> bool:
        """Let supplies reach or leave their limit and diodes block or conduct; says whether any did."""
        net = self.network
        if not len(net.extra):
            return False
        amps = potentials[:, net.first_extra : net.size, -1]
        volts = (potentials[:, net.extra.u] - potentials[:, net.extra.v])[..., -1]
        stiff = slice(0, len(net.stiff))
        given = -amps[:, stiff]
        over = given > self.limit * (1 + 1e-9)
        above = volts[:, stiff] > self.stiff_emf[..., -1] * (1 + 1e-9)
        limiting = np.where(state.limiting, ~above, over) | net.shorted
        diode = slice(len(net.extra) - len(net.diodes), None)
        conducting = np.where(state.conducting, amps[:, diode] >= 0, volts[:, diode] > net.diodes)
        changed = not (
            np.array_equal(limiting, state.limiting) and np.array_equal(conducting, state.conducting)
        )
        state.limiting, state.conducting = limiting, conducting
        if changed:
            state.tangent = np.zeros(self.items, dtype=bool)
        return changed

    def finish(self, state: _State, potentials: Array, steps: int) -> Solution:
        """Branch currents by each law at the final powers, and the Kirchhoff residual."""
        net = self.network
        parts = potentials.shape[-1]
        currents = np.zeros((self.items, len(net.branches), parts))
        across = potentials[:, net.linear.u] - potentials[:, net.linear.v]
        count = self.soft_emf.shape[1]
        if count:
            across[:, -count:] -= self.soft_emf
        currents[:, net.linear.at] = across * np.broadcast_to(net.siemens, across.shape[:2])[..., None]
        if len(net.hot):
            ohm = heater.steady_resistance(net.heaters, state.heater_w)[0]
            hot_v = potentials[:, net.hot.u] - potentials[:, net.hot.v]
            currents[:, net.hot.at] = hot_v / ohm[..., None]
            state.heater_w = np.where(self.cold[:, None], (hot_v**2).sum(axis=-1) / ohm, state.heater_w)
        currents[:, net.extra.at] = potentials[:, net.first_extra : net.size]
        leaving = scatter(net.u, currents, self.width) - scatter(net.v, currents, self.width)
        residual = np.abs(leaving[:, : net.first_extra]).max(axis=(1, 2), initial=0.0)
        return Solution(
            net, potentials, currents, state.heater_w, state.ntc_w, state.limiting, residual, self.cold, steps
        )


def _magnitude(parts: Array) -> Array:
    """Rms over the components, the last axis."""
    if parts.shape[-1] == 1:
        return np.abs(parts[..., 0])
    return np.asarray(np.sqrt((parts**2).sum(axis=-1)))


def without_limits(network: Network) -> Network:
    """The same network with supplies that could give any current, to learn what is asked of them."""
    return replace(network, stiff=tuple(structs.replace(source, limit_a=None) for source in network.stiff))
