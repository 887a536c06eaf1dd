"""A run in figures: peaks, times, energies, and how each supply ends."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import cast

import numpy as np
from msgspec.structs import replace
from numpy.typing import NDArray

from core.catalogue import Catalogue
from core.elements.branch import Branch, Coil, Contact, Hot, Ntc, Source
from core.elements.loads import warmup_s
from core.elements.passive import fuse_melting_i2t
from core.elements.tungsten import Array
from core.results import Unsolved
from core.sheet import DcSupply, Fuse, Relay, Resistor, Sheet, Thermistor, Tube
from core.warmup.capacity import ready_kelvin, unit_times
from core.warmup.results import (
    Event,
    FuseWarmup,
    HeaterWarmup,
    Outcome,
    RelayWarmup,
    ResistorWarmup,
    Start,
    SupplyWarmup,
    ThermistorWarmup,
    WarmupSummary,
)
from core.warmup.sampling import Sampled, free_model

PULSE_S = 5.0
FUSE_MULTIPLES = (1.5, 2.1, 2.75, 4.0, 10.0)


@dataclass
class _Draft:
    heaters: dict[str, list[HeaterWarmup]] = field(default_factory=dict)
    supplies: dict[str, SupplyWarmup] = field(default_factory=dict)
    thermistors: dict[str, ThermistorWarmup] = field(default_factory=dict)
    relays: dict[str, RelayWarmup] = field(default_factory=dict)
    fuses: dict[str, FuseWarmup] = field(default_factory=dict)
    resistors: dict[str, ResistorWarmup] = field(default_factory=dict)


def summarise(
    sheet: Sheet,
    catalogue: Catalogue,
    start: Start,
    lines: tuple[Sampled, ...],
    unsolved: tuple[Unsolved, ...],
) -> WarmupSummary:
    """The figures of a run of all lines."""
    draft = _Draft()
    for line in lines:
        _Line(sheet, catalogue, start, line, draft).add()
    events = sorted((event for line in lines for event in line.run.events), key=lambda event: event.t_s)
    mains = dict.fromkeys(event for event in events if not event.part)
    bounds = tuple(line.run.bound for line in lines if line.run.bound is not None)
    return WarmupSummary(
        start,
        {owner: tuple(sections) for owner, sections in draft.heaters.items()},
        draft.supplies,
        draft.thermistors,
        draft.relays,
        draft.fuses,
        draft.resistors,
        tuple(_merged(events, list(mains))),
        bounds,
        unsolved,
    )


def _merged(events: list[Event], mains: list[Event]) -> list[Event]:
    """All events in order; the mains switches every line but is told once."""
    return sorted([*mains, *(event for event in events if event.part)], key=lambda event: event.t_s)


class _Line:
    """The figures of one line."""

    def __init__(
        self, sheet: Sheet, catalogue: Catalogue, start: Start, line: Sampled, draft: _Draft
    ) -> None:
        self.sheet, self.catalogue, self.start, self.line, self.draft = sheet, catalogue, start, line, draft
        self.samples = line.own
        self.run = line.run

    def add(self) -> None:
        """Put the figures of the line into the draft."""
        hot = ntc = 0
        for at, branch in enumerate(self.run.island.branches):
            law, part = branch.law, self.sheet.part_by_id.get(branch.owner)
            if isinstance(law, Hot):
                self._heater(at, branch, law, hot)
                hot += 1
            elif isinstance(law, Ntc) and isinstance(part, Thermistor):
                self._thermistor(at, part, ntc)
                ntc += 1
            elif isinstance(law, Source) and not law.bias:
                self._supply(at, branch, law)
            elif isinstance(law, Coil) and isinstance(part, Relay):
                self._relay(at, part)
            elif isinstance(part, Fuse):
                self._fuse(at, part)
            elif isinstance(part, Resistor):
                self._resistor(at, part)

    def _over_time(self, values: Array) -> float:
        return float((values * self.samples.weights).sum())

    def _heater(self, at: int, branch: Branch, law: Hot, column: int) -> None:
        volts = self.samples.volts[:, at]
        peak = int(np.argmax(volts))
        times = unit_times([(law.cold_ratio, law.has_cathode)])[law.cold_ratio, law.has_cathode]
        part = self.sheet.part_by_id[branch.owner]
        found = HeaterWarmup(
            owner=branch.owner,
            pins=law.pins,
            rated_v=law.rated_v,
            rated_a=law.rated_a,
            warmup_s=law.warmup_s,
            estimated=self._is_estimate(part),
            peak_v=float(volts[peak]),
            peak_at_s=float(self.samples.t_s[peak]),
            ready_s=self._ready_s(column),
            own_ready_s=law.warmup_s * times.ready / times.warmup,
            has_cathode=law.has_cathode,
        )
        self.draft.heaters.setdefault(branch.owner, []).append(found)
        if self._has_lamp_tap(part):
            self._share_cathode(branch.owner)

    def _has_lamp_tap(self, part: object) -> bool:
        kind = self.catalogue.tube(part.type) if isinstance(part, Tube) else None
        return kind is not None and kind.tap_role == "lamp"

    def _share_cathode(self, owner: str) -> None:
        """The sections of a heater tapped for a lamp heat one cathode: it is ready with the one that heats most."""
        sections = self.draft.heaters[owner]
        times = [one.ready_s for one in sections if one.ready_s is not None]
        first = min(times, default=None)
        self.draft.heaters[owner] = [replace(one, ready_s=first) for one in sections]

    def _is_estimate(self, part: object) -> bool:
        kind = self.catalogue.tube(part.type) if isinstance(part, Tube) else None
        return not (isinstance(part, Tube) and kind is not None and warmup_s(part, kind) is not None)

    def _ready_s(self, column: int) -> float | None:
        """When a cathode, or a filament that is its own, first reaches the temperature at which it is ready."""
        wanted = float(ready_kelvin(self.run.bodies.heaters)[column])
        kelvin = self.samples.cathode_k[:, column]
        reached = np.flatnonzero(kelvin >= wanted)
        if not len(reached):
            return None
        last = int(reached[0])
        if last == 0:
            return float(self.samples.t_s[0])
        times, around = self.samples.t_s[last - 1 : last + 1], kelvin[last - 1 : last + 1]
        fine = np.linspace(times[0], times[1], 33)
        finer = self.line.at_times(fine).cathode_k[:, column] if times[1] > times[0] else around
        return float(np.interp(wanted, finer, fine if len(finer) == len(fine) else times))

    def _supply(self, at: int, branch: Branch, law: Source) -> None:
        samples = self.samples
        amps = samples.amps[:, at]
        peak = int(np.argmax(amps))
        outcome, decided, regulates = self.run.outcomes.get(branch.owner, ("starts", True, 0.0))
        part = self.sheet.part_by_id[branch.owner]
        input_v = part.input_v if isinstance(part, DcSupply) else None
        loss = None if input_v is None else np.maximum(input_v - samples.volts[:, at], 0.0) * amps
        new = SupplyWarmup(
            asked_a=self._asked_a(branch, at),
            peak_a=float(amps[peak]),
            peak_at_s=float(samples.t_s[peak]),
            limit_a=law.limit_a,
            rated_a=law.rated_a,
            restarts=self.run.restarts.get(branch.owner, 0),
            outcome=cast(Outcome, outcome),
            decided=decided and self.run.bound is None,
            energy_j=self._over_time(-samples.watts[:, at]),
            regulates_s=regulates,
            end_v=float(samples.volts[-1, at]),
            end_a=float(amps[-1]),
            peak_loss_w=None if loss is None else float(loss.max()),
            end_loss_w=None if loss is None else float(loss[-1]),
        )
        old = self.draft.supplies.get(branch.owner)
        if old is not None:
            # the halves of a centre-tapped winding are one supply
            worst = max(old, new, key=lambda half: half.peak_a)
            new = replace(worst, end_v=old.end_v + new.end_v, energy_j=old.energy_j + new.energy_j)
        self.draft.supplies[branch.owner] = new

    def _asked_a(self, branch: Branch, at: int) -> float:
        """What the cold line asks of a supply at the first instant, infinite where it is shorted."""
        first = self.run.segments[0]
        law = branch.law
        network = first.model.network
        places = network.extra.at[: len(network.stiff)].tolist()
        stiff = {network.branches[place].key: index for index, place in enumerate(places)}
        if not isinstance(law, Source) or law.limit_a is None or branch.key not in stiff:
            return float(self.samples.amps[0, at])
        free = free_model(self.run, first.model)
        if free is None:
            return float("inf")
        siemens = self.run.bodies.siemens(self.run.bodies.start())
        x = free.unknowns(siemens, free.volts(siemens))
        return float(abs(x[network.first_extra + stiff[branch.key], -1]))

    def _thermistor(self, at: int, part: Thermistor, column: int) -> None:
        samples = self.samples
        known = self.catalogue.thermistor(part.type) if part.type else None
        law = self.run.bodies.ntc
        kelvin = samples.ntc_k[:, column]
        ohm = law.r25_ohm[column] * np.exp(law.beta_k[column] * (1 / kelvin - 1 / 298.15))
        restart = None
        if self.start.off_at_s is not None:
            again = self.start.off_at_s + self.start.off_for_s
            restart = float(ohm[min(int(np.searchsorted(samples.t_s, again)), len(ohm) - 1)])
        self.draft.thermistors[part.id] = ThermistorWarmup(
            peak_a=float(samples.amps[:, at].max()),
            peak_k=float(kelvin.max()),
            max_a=part.max_a or (known.max_a if known else None),
            first_ohm=float(ohm[0]),
            end_ohm=float(ohm[-1]),
            restart_ohm=restart,
        )

    def _relay(self, at: int, part: Relay) -> None:
        own = [event for event in self.run.events if event.part == part.id]
        when = {what: next((e.t_s for e in own if e.what == what), None) for what in ("pulls in", "closes")}
        contacts = [
            place
            for place, branch in enumerate(self.run.island.branches)
            if isinstance(branch.law, Contact) and branch.law.relay == part.id
        ]
        most = max((float(self.samples.amps[:, place].max()) for place in contacts), default=0.0)
        self.draft.relays[part.id] = RelayWarmup(
            pulls_in_s=when["pulls in"],
            closes_s=when["closes"],
            moves=sum(event.what in ("pulls in", "drops out") for event in own),
            coil_peak_v=float(self.samples.volts[:, at].max()),
            contact_peak_a=most,
            contact_a=part.contact_a,
        )

    def _fuse(self, at: int, part: Fuse) -> None:
        samples = self.samples
        amps = samples.amps[:, at]
        square = amps * amps
        excess = np.maximum(square - square[-1], 0.0)
        over = tuple((one, self._longest(amps > one * part.rated_a)) for one in FUSE_MULTIPLES)
        self.draft.fuses[part.id] = FuseWarmup(
            peak_a=float(amps.max()),
            end_a=float(amps[-1]),
            i2t=self._over_time(square),
            excess_i2t=self._over_time(excess),
            melting_i2t=fuse_melting_i2t(part, self.catalogue),
            seconds_over=tuple((multiple, seconds) for multiple, seconds in over if seconds > 0),
        )

    def _longest(self, over: NDArray[np.bool_]) -> float:
        """Seconds of the longest stretch of samples in which something holds."""
        t_s = self.samples.t_s
        edges = np.flatnonzero(np.diff(np.concatenate(([0], over.astype(int), [0]))))
        spans = [
            t_s[min(end, len(t_s) - 1)] - t_s[begin]
            for begin, end in zip(edges[::2], edges[1::2], strict=True)
        ]
        return float(max(spans, default=0.0))

    def _resistor(self, at: int, part: Resistor) -> None:
        watts = self.samples.watts[:, at]
        energy = np.cumsum(watts * self.samples.weights)
        t_s = self.samples.t_s
        before = np.interp(t_s - PULSE_S, t_s, energy, left=0.0)
        span = min(PULSE_S, max(float(t_s[-1]), 1e-9))
        self.draft.resistors[part.id] = ResistorWarmup(
            peak_w=float(watts.max()),
            pulse_w=float((energy - before).max()) / span,
            energy_j=float(energy[-1]),
            rated_w=part.rated_w,
        )
