"""Steady state of an island: nodal analysis with the non-linear heater law, for a batch of conditions at once.

Every heater is carried by the power it turns into heat: its steady volts and amperes are explicit functions of
that power. Each step replaces the heaters by their tangents at the present powers, solves the linear network,
and moves every power along the heater's own (almost straight) curve of ln V against ln P to the volts found.
Resistance always rises slower than power, so chord steps (R = V/I instead of the tangent) converge from
anywhere; they are used first, and again wherever tangents fail to gain. A supply that folds back is followed
the same way, and from cold: of several answers the first on the way up is the one that a real start reaches.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np
from msgspec import structs
from numpy.typing import NDArray

from core.circuit.network import Network
from core.elements import heater, ntc
from core.elements.tungsten import Array
from core.errors import UnsolvableError
from core.limiting import LIMITING, TRIPPED, Modes, stiff_law
from core.linear import LinearSystem, scatter, stamp
from core.sentences import sentence

MAX_STEPS = 400
TOLERANCE = 1e-11  # volts of mismatch over rated volts; the last step usually lands below 1e-14
ROUNDING = 1e-7  # below this a step that gains nothing has met the rounding of an ill-conditioned network
_LEAST_SHARE = 1e-30  # of rated power: keeps logarithms finite in a heater that carries nothing
_LEAST_A = 1e-3  # thermistor currents are compared on this scale at least: what carries nothing is left alone
_LEAKAGE_S = 1e-9  # a blocking diode leaks nanoamperes per volt, which also keeps what hangs on it defined
_DIODE_OHM = 1e-4  # a conducting diode has some resistance, so that parallel ones share
_NOISE = 1e-9  # amperes and volts by which a diode must be on the wrong side before it changes
_FOLDING_TRUST = 0.02  # tangents that start farther off might miss the first answer on the way up
_ALL_AT_ONCE = 4  # times that every diode and supply may change its state together

Flags = NDArray[np.bool_]


@dataclass(frozen=True)
class Solution:
    """A solved batch of ``b`` conditions with ``c`` components (AC before DC where both are present).

    ``potentials`` is ``(b, size + 1, c)`` volts, ``currents`` ``(b, branches, c)`` amperes from ``u`` to ``v``
    (ideal connections still zero), ``heater_k`` and ``cathode_k`` ``(b, heaters)``, ``ntc_k`` ``(b, thermistors)``,
    ``modes`` ``(b, stiff sources)`` of :mod:`core.limiting`, ``residual_a`` ``(b,)``, ``steps`` the number of linear
    solves.
    """

    network: Network
    potentials: Array
    currents: Array
    heater_k: Array
    cathode_k: Array
    ntc_k: Array
    modes: Modes
    residual_a: Array
    steps: int

    @property
    def limiting(self) -> Flags:
        """Which supplies without resistance or with a limit are in overload, ``(b, stiff sources)``."""
        return np.isin(self.modes, (LIMITING, TRIPPED))


@dataclass
class _State:
    """What changes from step to step; resistances and elasticities are those at the powers beside them."""

    heater_w: Array
    heater_ohm: Array
    heater_elasticity: Array
    ntc_w: Array
    polarity: Array
    ntc_polarity: Array
    tangent: Flags
    modes: Modes
    line_v: Array
    conducting: Flags
    switches: int = 0


def solve(network: Network, mains_v: Array, cold: Flags) -> Solution:
    """Solve a batch: ``mains_v`` and ``cold`` of shape ``(b,)``.

    Raises
    ------
    UnsolvableError
        When the equations have no unique solution or do not settle; carries the ids of the island.
    """
    step = Stepper(network, mains_v, cold)
    state = step.start()
    previous = np.full(len(mains_v), np.inf)
    trust = np.full(len(mains_v), _FOLDING_TRUST if step.folds else 0.5)
    for count in range(1, MAX_STEPS + 1):
        potentials = step.solve_linear(state)
        mismatch = step.advance(state, potentials)
        gains = mismatch < 0.9 * previous
        # a tangent step that gains nothing has left its region of trust: go on by chords until well inside it
        lost = state.tangent & ~gains
        if lost.any():
            trust = np.where(lost, np.minimum(trust, previous) / 2, trust)
        state.tangent = (mismatch < trust) & gains & step.may_use_tangents
        settled = mismatch < np.where(gains, TOLERANCE, ROUNDING)
        previous = mismatch
        if settled.all() and not step.switch(state, potentials):
            return step.finish(state, potentials, count)
    raise UnsolvableError(sentence("the steady state does not settle"), network.owners)


def _log_ratio(found: Array, law: Array) -> Array:
    return np.log(np.maximum(found, 1e-300)) - np.log(np.maximum(law, 1e-300))


class Stepper:
    """The constant data of one solve, and the operations of one step."""

    def __init__(self, network: Network, mains_v: Array, cold: Flags) -> None:
        self.network = network
        self.cold = cold
        self.hot = ~cold
        self.items = len(mains_v)
        self.width = network.size + 1
        self.mixed = network.has_ac and network.has_dc
        self.may_use_tangents = self.hot & (not self.mixed)
        self.soft_emf = self.emf(network.ac_per_mains, network.dc_v, mains_v)
        self.soft_siemens = network.siemens[..., len(network.linear) - self.soft_emf.shape[1] :]
        self.injected = self._inject_soft()
        self.system = self._constant_part()
        heaters = network.heaters
        self.least_w = _LEAST_SHARE * heaters.rated_w
        # no heater can take more than its volts drive through it when cold, give or take a very cold room; the
        # heaters of cold conditions stay as they are, and are never off
        self.most_siemens = self.hot[:, None] * 3 / heaters.cold_ohm
        self.off_per_v = self.hot[:, None] / heaters.rated_v
        self.hot_nodes = (
            np.concatenate((network.hot.u, network.hot.v)) + self.width * np.arange(self.items)[:, None]
        ).ravel()
        ac, dc, ohm = np.array([(x.ac_per_mains, x.dc_v, x.ohm) for x in network.stiff]).reshape(-1, 3).T
        self.stiff = stiff_law(network.stiff, self.emf(ac, dc, mains_v), ohm, network.shorted)
        self.folds = bool(self.stiff.folds.any())
        self.stiff_at = slice(0, len(ohm))
        self.ntc_at = slice(len(ohm), len(ohm) + len(network.ntc.r25_ohm))

    def emf(self, ac_per_mains: Array, dc_v: Array, mains_v: Array) -> Array:
        """EMF of shape ``(b, k, c)``."""
        ac = mains_v[:, None] * ac_per_mains
        if self.mixed:
            return np.stack((ac, np.broadcast_to(dc_v, ac.shape)), axis=-1)
        return (ac if self.network.has_ac else np.broadcast_to(dc_v, ac.shape))[..., None]

    def _constant_part(self) -> LinearSystem:
        """The part of the equations that no step changes."""
        net = self.network
        places, signs = stamp(net.linear.u, net.linear.v, self.width)
        values = np.concatenate((net.siemens,) * 4, axis=-1) * signs
        varying, self.hot_signs = stamp(net.hot.u, net.hot.v, self.width)
        if len(net.extra):
            unknown = net.first_extra + np.arange(len(net.extra))
            rows = unknown * self.width
            places = np.concatenate(
                (places, net.extra.u * self.width + unknown, net.extra.v * self.width + unknown)
            )
            ones = np.ones((*values.shape[:-1], len(unknown)))
            values = np.concatenate((values, ones, -ones), axis=-1)
            varying = np.concatenate((varying, rows + net.extra.u, rows + net.extra.v, rows + unknown))
        return LinearSystem(self.width, self.items, places, values, varying)

    def _inject_soft(self) -> Array:
        """Currents that sources with resistance push into their upper nodes, ``(b, width, c)``."""
        net = self.network
        soft = slice(len(net.linear) - self.soft_emf.shape[1], None)
        pushed = self.soft_emf * self.soft_siemens[..., None]
        return scatter(net.linear.u[soft], pushed, self.width) - scatter(
            net.linear.v[soft], pushed, self.width
        )

    def start(self) -> _State:
        """Heaters at rated power, or cold where it matters how the amplifier started.

        It does with a thermistor, a relay, or a supply that folds back.
        """
        net = self.network
        shape = (self.items, len(net.hot))
        from_cold = bool(len(net.ntc.r25_ohm) or net.coils or self.folds)
        share = np.where(self.cold | from_cold, _LEAST_SHARE, 1.0)
        heater_w = share[:, None] * net.heaters.rated_w
        ntc_shape = (self.items, len(net.ntc.r25_ohm))
        state = _State(
            heater_w,
            *heater.steady_resistance(net.heaters, heater_w),
            ntc_w=np.zeros(ntc_shape),
            polarity=np.ones(shape),
            ntc_polarity=np.ones(ntc_shape),
            tangent=np.zeros(self.items, dtype=bool),
            modes=self.stiff.start(self.cold),
            line_v=np.zeros((self.items, len(net.stiff))),
            conducting=np.ones((self.items, len(net.diodes)), dtype=bool),
        )
        if self.folds:
            given_a, _ = self._at_stiff(self.solve_linear(state))
            folding = self.stiff.folds & (given_a > self.stiff.limit_a)
            state.modes[folding] = LIMITING
        return state

    def _at_stiff(self, potentials: Array) -> tuple[Array, Array]:
        """DC amperes given and DC volts at the terminals of the stiff sources, ``(b, k)``."""
        net = self.network
        given_a = -potentials[:, net.first_extra : net.size, -1][:, self.stiff_at]
        u, v = net.extra.u[self.stiff_at], net.extra.v[self.stiff_at]
        return given_a, potentials[:, u, -1] - potentials[:, v, -1]

    def solve_linear(self, state: _State) -> Array:
        """Potentials and extra currents at the present tangents or chords, ``(b, width, c)``."""
        net = self.network
        siemens = 1 / state.heater_ohm
        push = self.injected.copy()
        if len(net.hot) and state.tangent.any():
            elasticity = state.heater_elasticity
            exponent = np.where(state.tangent[:, None], (1 - elasticity) / (1 + elasticity), 1.0)
            offset = state.polarity * np.sqrt(state.heater_w * siemens) * (1 - exponent)
            offsets = np.concatenate((-offset, offset), axis=1)
            push += np.bincount(self.hot_nodes, offsets.ravel(), push.size).reshape(push.shape)
            siemens = siemens * exponent
        values = np.concatenate((siemens,) * 4, axis=1) * self.hot_signs
        if len(net.extra):
            across, own, push[:, net.first_extra : net.size] = self._extra_rows(state)
            values = np.concatenate((values, across, -across, own), axis=1)
        try:
            return self.system.solve(values, push)
        except np.linalg.LinAlgError as error:
            raise UnsolvableError(sentence("the circuit has no unique solution"), net.owners) from error

    def _extra_rows(self, state: _State) -> tuple[Array, Array, Array]:
        """Equations of the branches with a current unknown: factors of volts and of amperes, right sides."""
        ohm, elasticity = ntc.steady_resistance(self.network.ntc, state.ntc_w)
        gain = np.where(state.tangent[:, None], (1 + elasticity) / (1 - elasticity), 1.0)
        return self._rows_of_all(
            self.stiff.rows(state.modes, state.line_v, state.tangent),
            state.conducting,
            gain * ohm,
            state.ntc_polarity * np.sqrt(state.ntc_w * ohm) * (1 - gain),
        )

    def extra_rows(self, modes: Modes, conducting: Flags, ntc_ohm: Array) -> tuple[Array, Array, Array]:
        """The same equations at given resistances of the thermistors ``(b, thermistors)``, by tangents."""
        nothing, always = np.zeros(modes.shape), np.ones(len(modes), dtype=bool)
        rows = self.stiff.rows(modes, nothing, always)
        return self._rows_of_all(rows, conducting, ntc_ohm, np.zeros(ntc_ohm.shape))

    def _rows_of_all(
        self, stiff: tuple[Array, Array, Array], on: Flags, ntc_ohm: Array, ntc_v: Array
    ) -> tuple[Array, Array, Array]:
        """Rows of the stiff sources, of thermistors of so many ohms and volts, and of diodes, put together."""
        stiff_across, stiff_own, stiff_right = stiff
        ntc_right = ntc_v[..., None]
        parts = stiff_right.shape[-1]
        diode_right = np.zeros((*on.shape, parts))
        diode_right[..., -1] = np.where(on, self.network.diodes, 0.0)  # there is none in a line with AC
        return (
            np.concatenate((stiff_across, np.ones_like(ntc_ohm), np.where(on, 1.0, -_LEAKAGE_S)), axis=1),
            np.concatenate((stiff_own, -ntc_ohm, np.where(on, -_DIODE_OHM, 1.0)), axis=1),
            np.concatenate(
                (
                    stiff_right,
                    np.broadcast_to(ntc_right, (*ntc_ohm.shape, parts)),
                    diode_right,
                ),
                axis=1,
            ),
        )

    def advance(self, state: _State, potentials: Array) -> Array:
        """Move the powers to the volts and amperes found; returns the largest mismatch by item, ``(b,)``."""
        net = self.network
        mismatch = np.zeros(self.items)
        if len(net.hot):
            mismatch = self._advance_heaters(state, potentials)
        if len(net.ntc.r25_ohm):
            mismatch = np.maximum(mismatch, self._advance_thermistors(state, potentials))
        if self.folds:
            given_a, state.line_v = self._at_stiff(potentials)
            mismatch = np.maximum(mismatch, self.stiff.mismatch(state.modes, given_a, state.line_v))
        return mismatch

    def _advance_heaters(self, state: _State, potentials: Array) -> Array:
        net = self.network
        across = potentials[:, net.hot.u] - potentials[:, net.hot.v]
        volts = magnitude(across)
        law_v = np.sqrt(state.heater_w * state.heater_ohm)
        off = np.abs(volts - law_v) * self.off_per_v
        step = 2 / (1 + state.heater_elasticity) * np.log(np.maximum(volts, 1e-300) / law_v)
        moved = state.heater_w * np.exp(np.minimum(np.maximum(step, -200.0), 3.0))
        state.heater_w = np.maximum(np.minimum(moved, volts * volts * self.most_siemens), self.least_w)
        state.heater_ohm, state.heater_elasticity = heater.steady_resistance(net.heaters, state.heater_w)
        state.polarity = np.copysign(1.0, across[..., 0])
        return np.asarray(off.max(axis=1))

    def _advance_thermistors(self, state: _State, potentials: Array) -> Array:
        net = self.network
        amps = potentials[:, net.first_extra : net.size][:, self.ntc_at]
        found = magnitude(amps)
        ohm, elasticity = ntc.steady_resistance(net.ntc, state.ntc_w)
        law_a = np.sqrt(state.ntc_w / ohm)
        off = np.abs(found - law_a) / np.maximum(found.max(axis=1, keepdims=True), _LEAST_A)
        step = np.clip(2 / (1 - elasticity) * _log_ratio(found, law_a), -200.0, 3.0)
        moved = np.where(state.ntc_w > 0, state.ntc_w * np.exp(step), found**2 * ohm)
        state.ntc_w = np.where(self.hot[:, None], moved, state.ntc_w)
        state.ntc_polarity = np.where(amps[..., 0] < 0, -1.0, 1.0)
        return np.where(self.hot, off.max(axis=1), 0.0)

    def switch(self, state: _State, potentials: Array) -> bool:
        """Let supplies limit, block or regulate and diodes block or conduct; says whether any did.

        After a few rounds only the first that is wrong changes, which cannot go round in circles
        (least-index rule; Murty, Opsearch 11, 1974). No supply switches off while anything else still changes.
        """
        net = self.network
        if not (len(net.stiff) or len(net.diodes)):
            return False
        amps = potentials[:, net.first_extra : net.size, -1]
        volts = (potentials[:, net.extra.u] - potentials[:, net.extra.v])[..., -1]
        at = self.stiff_at
        after = self.stiff.after(state.modes, -amps[:, at], volts[:, at], self.cold)
        diode = slice(len(net.extra) - len(net.diodes), None)
        conducting = np.where(
            state.conducting, amps[:, diode] >= -_NOISE, volts[:, diode] > net.diodes + _NOISE
        )
        flips = np.concatenate((after != state.modes, conducting != state.conducting), axis=1)
        trips = np.zeros_like(flips)
        trips[:, at] = flips[:, at] & (after == TRIPPED)
        flips &= ~trips | ~(flips & ~trips).any(axis=1, keepdims=True)
        if not flips.any():
            return False
        state.switches += 1
        if state.switches > _ALL_AT_ONCE:
            flips &= np.cumsum(flips, axis=1) == 1
        state.modes = np.where(flips[:, at], after, state.modes)
        state.conducting = state.conducting ^ flips[:, len(net.stiff) :]
        state.tangent = np.zeros(self.items, dtype=bool)
        return True

    def finish(self, state: _State, potentials: Array, steps: int) -> Solution:
        """Branch currents by each law at the final powers, temperatures, and the Kirchhoff residual."""
        net = self.network
        currents = self.currents(potentials, 1 / state.heater_ohm)
        heat_w = np.where(self.cold[:, None], 0.0, state.heater_w)
        return Solution(
            network=net,
            potentials=potentials,
            currents=currents,
            heater_k=heater.heater_k(net.heaters, heat_w),
            cathode_k=heater.cathode_k(net.heaters, heat_w),
            ntc_k=ntc.thermistor_k(net.ntc, state.ntc_w),
            modes=state.modes,
            residual_a=residual_a(net, currents),
            steps=steps,
        )

    def currents(self, potentials: Array, heater_siemens: Array) -> Array:
        """Branch currents from ``u`` to ``v`` by each law, ``(b, branches, c)``; ideal connections are left zero."""
        net = self.network
        currents = np.zeros((len(potentials), len(net.branches), potentials.shape[-1]))
        across = potentials[:, net.linear.u] - potentials[:, net.linear.v]
        count = self.soft_emf.shape[1]
        if count:
            across[:, -count:] -= self.soft_emf
        currents[:, net.linear.at] = across * net.siemens[..., None]
        if len(net.hot):
            hot_v = potentials[:, net.hot.u] - potentials[:, net.hot.v]
            currents[:, net.hot.at] = hot_v * heater_siemens[..., None]
        if len(net.extra):
            currents[:, net.extra.at] = potentials[:, net.first_extra : net.size]
        return currents


def residual_a(network: Network, currents: Array) -> Array:
    """The largest Kirchhoff error of branch currents ``(b, branches, c)``, ``(b,)`` amperes."""
    width = network.size + 1
    leaving = scatter(network.u, currents, width) - scatter(network.v, currents, width)
    return np.asarray(np.abs(leaving[:, : network.first_extra]).max(axis=(1, 2), initial=0.0))


def magnitude(parts: Array) -> Array:
    """Rms over the components, the last axis."""
    if parts.shape[-1] == 1:
        return np.abs(parts[..., 0])
    return np.asarray(np.sqrt((parts**2).sum(axis=-1)))


def without_limits(network: Network) -> Network:
    """The same network with supplies that could give any current, to learn what is asked of them.

    They still take none.
    """
    return replace(
        network,
        stiff=tuple(
            source if source.limit_a is None else structs.replace(source, limit_a=math.inf)
            for source in network.stiff
        ),
    )
