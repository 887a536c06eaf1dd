"""Where every switch stands: contacts of relays, modes of supplies, diodes, the mains; and what waits to happen."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

import numpy as np

from core.circuit import Island
from core.circuit.network import Network, compile_island
from core.elements.branch import Coil
from core.elements.tungsten import Array
from core.errors import UnsolvableError
from core.limiting import BLOCKING, LEAST_BACK_A, LIMITING, REGULATING, TRIPPED, Modes
from core.sentences import sentence
from core.steady import Flags
from core.warmup.bodies import Bodies
from core.warmup.ports import PortModel, port_model
from core.warmup.results import What

_BEYOND = 1e-7  # share of a limit by which a quantity is beyond it when something switches
_ALL_AT_ONCE = 4
_MOST_ROUNDS = 80
_DIODE_A = 1e-9


@dataclass(frozen=True)
class Contacts:
    """Relays that are pulled in, and relays whose contact is on its way and closed on neither side."""

    pulled: frozenset[str] = frozenset()
    moving: frozenset[str] = frozenset()


@dataclass
class Positions:
    """All switch positions of one line; times are when something is due, infinite where nothing is."""

    contacts: Contacts
    mains_on: bool
    modes: Modes
    conducting: Flags
    trip_due: Array
    retry_due: Array
    travel_due: dict[str, float] = field(default_factory=dict)
    log: list[tuple[str, What]] = field(default_factory=list)

    def next_due(self) -> float:
        """When the next thing is due."""
        times = [*self.trip_due.tolist(), *self.retry_due.tolist(), *self.travel_due.values()]
        return min(times, default=np.inf)

    def take_log(self) -> Iterator[tuple[str, What]]:
        """What has happened since it was asked last."""
        happened, self.log = self.log, []
        return iter(happened)


class Switchboard:
    """The networks of one line by their switch positions, each made once, and how the positions change."""

    def __init__(
        self, island: Island, ambient_k: float, mains_v: float, bodies: Bodies, first: Network
    ) -> None:
        self._island = island
        self._ambient_k = ambient_k
        self.mains_v = mains_v
        self._bodies = bodies
        self._networks = {Contacts(): first}
        self._models: dict[tuple[Contacts, bool, bytes, bytes], PortModel] = {}
        self._g_ref = bodies.siemens(bodies.start()) / 5
        self.stiff = first.stiff
        self.owners = [first.branches[at].owner for at in first.extra.at[: len(first.stiff)]]
        self.coils = {branch.owner: law for branch in island.branches if isinstance(law := branch.law, Coil)}

    def start(self) -> Positions:
        """Everything at rest, and the mains just switched on."""
        count = len(self.stiff)
        never = np.full(count, np.inf)
        modes = np.full(count, REGULATING, dtype=np.int8)
        diodes = len(self._networks[Contacts()].diodes)
        return Positions(Contacts(), True, modes, np.ones(diodes, dtype=bool), never, never.copy())

    def network(self, contacts: Contacts) -> Network:
        """The index arrays with the contacts as they stand."""
        if contacts not in self._networks:
            self._networks[contacts] = compile_island(
                self._island, contacts.pulled, self._ambient_k, contacts.moving
            )
        return self._networks[contacts]

    def model(self, at: Positions) -> PortModel:
        """The linear network at these positions."""
        key = (at.contacts, at.mains_on, at.modes.tobytes(), at.conducting.tobytes())
        if key not in self._models:
            mains_v = self.mains_v if at.mains_on else 0.0
            self._models[key] = port_model(
                self.network(at.contacts), mains_v, at.modes.copy(), at.conducting.copy(), self._g_ref
            )
        return self._models[key]

    # how positions change

    def settle(self, at: Positions, y: Array, t: float) -> PortModel:
        """Let supplies, diodes and relays act at given temperatures until none would; answers the network then.

        Raises
        ------
        UnsolvableError
            When they do not come to rest.
        """
        siemens = self._bodies.siemens(y)
        for count in range(_MOST_ROUNDS):
            model = self.model(at)
            x = model.unknowns(siemens, model.volts(siemens))
            if not self._flip(at, model, x, count) and not self._move_relays(at, model, x, t):
                self._set_timers(at, t)
                return model
        raise UnsolvableError(sentence("supplies and switches do not come to rest"), self._first.owners)

    @property
    def _first(self) -> Network:
        return self._networks[Contacts()]

    def _flip(self, at: Positions, model: PortModel, x: Array, count: int) -> bool:
        """Change modes of supplies and diodes that are wrong; after a few rounds the first only."""
        if not (len(at.modes) or len(at.conducting)):
            return False
        given, volts = _stiff_of(model, x)
        law = model.stepper.stiff
        always = np.array([True])
        after = law.after(at.modes[None], given[None], volts[None], always)[0]
        if law.shorted.any():
            off = at.modes == TRIPPED
            after = np.where(law.shorted & ~off, LIMITING, after).astype(np.int8)
        # a supply that folds back has no answer with its terminals turned round
        after = np.where((at.modes == LIMITING) & law.folds & (volts < -1e-6), REGULATING, after).astype(
            np.int8
        )
        diode_a, diode_v = _diodes_of(model, x)
        net = model.network
        conducting = np.where(at.conducting, diode_a >= -_DIODE_A, diode_v > net.diodes + _DIODE_A)
        flips = np.concatenate((after != at.modes, conducting != at.conducting))
        if not flips.any():
            return False
        if count > _ALL_AT_ONCE:
            flips &= np.cumsum(flips) == 1
        self._change_modes(at, np.where(flips[: len(after)], after, at.modes).astype(np.int8))
        at.conducting = at.conducting ^ flips[len(after) :]
        return True

    def _change_modes(self, at: Positions, modes: Modes) -> None:
        for index in np.flatnonzero(modes != at.modes).tolist():
            words: dict[int, What] = {LIMITING: "at its limit", REGULATING: "regulates"}
            if modes[index] in words and at.modes[index] in words:
                at.log.append((self.owners[index], words[int(modes[index])]))
        at.modes = modes

    def _set_timers(self, at: Positions, t: float) -> None:
        """A supply at its limit cuts out after a while, unless it leaves its limit before."""
        trips = np.array([source.overload in ("hiccup", "latch-off") for source in self.stiff], dtype=bool)
        holding = trips & (at.modes == LIMITING)
        begins = holding & ~np.isfinite(at.trip_due)
        hold_s = np.array([source.trip_s for source in self.stiff])
        at.trip_due = np.where(holding, np.where(begins, t + hold_s, at.trip_due), np.inf)

    def _move_relays(self, at: Positions, model: PortModel, x: Array, t: float) -> bool:
        """Set relays in motion whose coil has passed its volts; says whether any did."""
        for owner, volts in self._coil_volts(model, x).items():
            law = self.coils[owner]
            wants = self._wants(at, owner, volts)
            if wants is None:
                continue
            moving, pulled = at.contacts.moving, at.contacts.pulled
            at.contacts = Contacts(pulled | {owner} if wants else pulled - {owner}, moving | {owner})
            at.travel_due[owner] = t + law.travel_s
            at.log.append((owner, "pulls in" if wants else "drops out"))
            return True
        return False

    def _wants(self, at: Positions, owner: str, volts: float) -> bool | None:
        """Where a relay is set in motion to: pulled in, released, or nowhere (None)."""
        law = self.coils[owner]
        if owner in at.contacts.pulled:
            return False if volts < law.drop_out_v * (1 - _BEYOND) else None
        return True if volts >= law.pull_in_v * (1 - _BEYOND) else None

    def _coil_volts(self, model: PortModel, x: Array) -> dict[str, float]:
        net = model.network
        found = {}
        for owner, place, _ in net.coils:
            across = x[net.u[place]] - x[net.v[place]]
            found[owner] = float(np.sqrt((across * across).sum()))
        return found

    def act(self, at: Positions, t: float) -> int:
        """Carry out what is due at ``t``; answers how many things were."""
        done = 0
        for index in np.flatnonzero(at.trip_due <= t).tolist():
            source = self.stiff[index]
            at.modes[index] = TRIPPED
            at.trip_due[index] = np.inf
            is_hiccup = source.overload == "hiccup"
            at.retry_due[index] = t + source.retry_s if is_hiccup else np.inf
            at.log.append((self.owners[index], "cuts out" if is_hiccup else "latches off"))
            done += 1
        for index in np.flatnonzero(at.retry_due <= t).tolist():
            at.modes[index] = REGULATING
            at.retry_due[index] = np.inf
            at.log.append((self.owners[index], "tries again"))
            done += 1
        for owner in [owner for owner, due in at.travel_due.items() if due <= t]:
            del at.travel_due[owner]
            pulled = owner in at.contacts.pulled
            at.contacts = Contacts(at.contacts.pulled, at.contacts.moving - {owner})
            at.log.append((owner, "closes" if pulled else "releases"))
            done += 1
        return done

    def set_mains(self, at: Positions, on: bool) -> None:
        """Switch the mains off or on; what runs from it goes with it and starts afresh."""
        at.mains_on = on
        at.log.append(("", "mains on" if on else "mains off"))
        for index, source in enumerate(self.stiff):
            if source.on_mains and source.dc_v:
                at.modes[index] = REGULATING if on else TRIPPED
        at.trip_due[:] = np.inf
        at.retry_due[:] = np.inf

    # when they change

    def guards(self, at: Positions, model: PortModel, y: Array) -> Array:
        """What keeps everything where it stands at a state, ``(m,)``: something switches where one falls below zero."""
        siemens = self._bodies.siemens(y)
        x = model.unknowns(siemens, model.volts(siemens))
        found = []
        if len(at.modes):
            found.append(self._supply_guards(at, model, x))
        if len(at.conducting):
            amps, volts = _diodes_of(model, x)
            found.append(
                np.where(at.conducting, amps + 2 * _DIODE_A, model.network.diodes - volts + 2 * _DIODE_A)
            )
        if self.coils:
            found.append(self._coil_guards(at, model, x))
        return np.concatenate(found) if found else np.zeros(0)

    @property
    def has_guards(self) -> bool:
        """Whether anything on this line can switch by itself."""
        limited = any(source.limit_a is not None for source in self.stiff)
        return limited or bool(self.coils) or bool(len(self._first.diodes))

    def _supply_guards(self, at: Positions, model: PortModel, x: Array) -> Array:
        given, volts = _stiff_of(model, x)
        law = model.stepper.stiff
        set_v = law.dc_v[0]
        limited = np.isfinite(law.limit_a)
        limit = np.where(limited, law.limit_a, 1.0)
        scale_v = np.maximum(np.abs(set_v), 1e-9)
        regulating = np.minimum(1 - given / limit, (given + LEAST_BACK_A) / limit) + _BEYOND
        held = np.where(law.shorted, 1.0, (set_v - volts) / scale_v + _BEYOND)
        blocked = (volts - set_v) / scale_v + _BEYOND
        return np.select(
            [~limited, at.modes == REGULATING, at.modes == LIMITING, at.modes == BLOCKING],
            [np.ones(len(given)), regulating, held, blocked],
            1.0,
        )

    def _coil_guards(self, at: Positions, model: PortModel, x: Array) -> Array:
        guards = []
        for owner, volts in self._coil_volts(model, x).items():
            law = self.coils[owner]
            if owner in at.contacts.pulled:
                guards.append(volts - law.drop_out_v * (1 - 2 * _BEYOND) if law.drop_out_v else 1.0)
            else:
                guards.append(law.pull_in_v - volts)
        return np.array(guards)


def _stiff_of(model: PortModel, x: Array) -> tuple[Array, Array]:
    """Amperes given by supplies and volts at their terminals, ``(k,)``: their DC part where there is one."""
    net = model.network
    count = len(net.stiff)
    at = slice(net.first_extra, net.first_extra + count)
    return -x[at, -1], x[net.extra.u[:count], -1] - x[net.extra.v[:count], -1]


def _diodes_of(model: PortModel, x: Array) -> tuple[Array, Array]:
    net = model.network
    count = len(net.diodes)
    first = len(net.extra) - count
    at = slice(net.size - count, net.size)
    return x[at, -1], x[net.extra.u[first:], -1] - x[net.extra.v[first:], -1]
