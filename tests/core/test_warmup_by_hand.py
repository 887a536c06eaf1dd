"""The warm-up against a second integrator: scipy's Radau on equations written out by hand.

One supply, something in series, then heaters, filaments and lamps all in parallel or all in series: Ohm's law is
enough. Heat capacities and the resistivity table are the program's; how they move in time is not.
"""

from __future__ import annotations

import os
from dataclasses import dataclass
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from core.catalogue import load_builtin
from core.elements.tungsten import TUNGSTEN, Array
from core.sheet import AnyPart, Battery, DcSupply, Lamp, Resistor, Sheet, Thermistor, Tube, Winding
from core.warmup import WarmupRun, warm_up
from core.warmup.capacity import unit_times
from core.warmup.results import Start
from tests.core.circuits import wired

EXAMPLES = settings(max_examples=int(os.environ.get("HEATERLOOM_EXAMPLES", "200")) // 20, deadline=None)
ROOM_K = 298.15
CATHODE_K, CATHODE_SHARE = 1050.0, 3.0
PINS = {"EL84": "45", "300B": "14", "lamp": "12"}
LAMP_RATIO = 12.0
SECONDS = 40.0
MAINS_V = 230.0


@dataclass(frozen=True)
class Heater:
    """A heater by its kind, ratings, cold ratio and warm-up time."""

    kind: str
    volts: float
    amps: float
    ratio: float
    seconds: float

    def part(self, part_id: str) -> AnyPart:
        if self.kind == "lamp":
            return Lamp(id=part_id, rated_v=self.volts, rated_a=self.amps)
        return Tube(
            id=part_id,
            type=self.kind,
            rated_v=self.volts,
            rated_a=self.amps,
            cold_ratio=self.ratio,
            warmup_s=self.seconds,
        )


@dataclass(frozen=True)
class Case:
    """A circuit: EMF and resistance of what is before the heaters, the highest current, and a thermistor."""

    supply: AnyPart
    emf_v: float
    ohm: float
    limit_a: float
    before: tuple[AnyPart, ...]
    thermistor: Thermistor | None
    heaters: tuple[Heater, ...]
    in_series: bool

    def sheet(self) -> Sheet:
        plus, minus = ("T1.a", "T1.b") if isinstance(self.supply, Winding) else ("U1.+", "U1.-")
        parts: list[AnyPart] = [self.supply, *self.before]
        straps, end = [], plus
        for part in self.before:
            straps.append(f"{end}={part.id}.1")
            end = f"{part.id}.2"
        for n, heater in enumerate(self.heaters):
            parts.append(heater.part(f"V{n}"))
            first, second = (f"V{n}.{pin}" for pin in PINS[heater.kind])
            straps.append(f"{end}={first}")
            if self.in_series:
                end = second
            else:
                straps.append(f"{second}={minus}")
        if self.in_series:
            straps.append(f"{end}={minus}")
        return wired(parts, " ".join(straps))


class ByHand:
    """The balance of every body; the state is heaters, the cathodes of those that have one, the thermistor."""

    def __init__(self, case: Case) -> None:
        self.case = case
        heaters = case.heaters
        volts, amps, ratio, seconds = (
            np.array([getattr(one, name) for one in heaters])
            for name in ("volts", "amps", "ratio", "seconds")
        )
        self.indirect = np.array([one.kind == "EL84" for one in heaters])
        self.watts = volts * amps
        working_k = np.maximum(TUNGSTEN.temperature(ratio), 1060.0)
        self.cold_ohm = volts / amps / ratio
        self.rise = (ratio - 1) / (TUNGSTEN.ratio(working_k)[0] - 1)
        units = unit_times([(one.ratio, one.kind == "EL84") for one in heaters])
        unit_s = np.array([units[one.ratio, one.kind == "EL84"].warmup for one in heaters])
        self.heater_c = seconds / unit_s * self.watts
        lower_k = np.where(self.indirect, CATHODE_K, ROOM_K)
        self.out = self.watts / (working_k**4 - lower_k**4)
        self.cathode_out = self.watts / (CATHODE_K**4 - ROOM_K**4)

    def ohms(self, y: Array) -> tuple[Array, float]:
        """Of the heaters, and of all before them."""
        n = len(self.case.heaters)
        hot = self.cold_ohm * (1 + self.rise * (TUNGSTEN.ratio(y[:n])[0] - 1))
        ohm, ntc = self.case.ohm, self.case.thermistor
        if ntc is not None:
            ohm += self.ntc_ohm(y[-1])
        return hot, ohm

    def ntc_ohm(self, kelvin: float) -> float:
        ntc = self.case.thermistor
        assert ntc is not None
        assert ntc.r25_ohm is not None
        assert ntc.beta_k is not None
        return float(ntc.r25_ohm * np.exp(ntc.beta_k * (1 / kelvin - 1 / 298.15)))

    def asked(self, y: Array) -> float:
        """Amperes that the whole takes without a limit."""
        hot, ohm = self.ohms(y)
        return float(self.case.emf_v / (ohm + (hot.sum() if self.case.in_series else 1 / (1 / hot).sum())))

    def amps(self, y: Array) -> Array:
        """Through each heater."""
        hot, _ = self.ohms(y)
        total = min(self.asked(y), self.case.limit_a)
        return np.full(len(hot), total) if self.case.in_series else total / (1 / hot).sum() / hot

    def cathodes(self, y: Array) -> Array:
        """Of all heaters; a filament is its own."""
        n = len(self.case.heaters)
        found = y[:n].copy()
        found[self.indirect] = y[n : n + int(self.indirect.sum())]
        return found

    def rates(self, _: float, y: Array) -> Array:
        heater, cathode = y[: len(self.case.heaters)], self.cathodes(y)
        hot, _ohm = self.ohms(y)
        amps = self.amps(y)
        out = self.out * (heater**4 - np.where(self.indirect, cathode, ROOM_K) ** 4)
        lost = self.cathode_out * (cathode**4 - ROOM_K**4)
        found = [(amps**2 * hot - out) / self.heater_c]
        found.append(((out - lost) / (CATHODE_SHARE * self.heater_c))[self.indirect])
        ntc = self.case.thermistor
        if ntc is not None:
            assert ntc.dissipation_w_per_k is not None
            assert ntc.tau_s is not None
            total = min(self.asked(y), self.case.limit_a)
            gain = total**2 * self.ntc_ohm(y[-1]) - ntc.dissipation_w_per_k * (y[-1] - ROOM_K)
            found.append(np.array([gain / (ntc.dissipation_w_per_k * ntc.tau_s)]))
        return np.concatenate(found)

    def excess(self, y: Array) -> float:
        """What is asked for above the limit, as a share of it; below zero where less is asked for."""
        return self.asked(y) / self.case.limit_a - 1

    def run(self) -> Any:
        """The path of scipy, with its times and states where the supply reaches or leaves its limit."""
        size = len(self.case.heaters) + int(self.indirect.sum()) + (self.case.thermistor is not None)
        room = np.full(size, ROOM_K)

        def at_limit(_: float, y: Array) -> float:
            return self.excess(y)

        events = at_limit if np.isfinite(self.case.limit_a) else None
        return solve_ivp(
            self.rates,
            (0.0, SECONDS),
            room,
            "Radau",
            dense_output=True,
            events=events,
            rtol=1e-8,
            atol=1e-6,
        )


@st.composite
def heaters(draw: st.DrawFn, in_series: bool) -> tuple[Heater, ...]:
    """Two to six that stand the same volts in parallel, or the same amperes in series, within a tenth."""
    same = draw(st.floats(0.1, 2.0)) if in_series else draw(st.floats(2.0, 30.0))
    found = []
    for _ in range(draw(st.integers(2, 6))):
        kind = draw(st.sampled_from(["EL84", "EL84", "300B", "lamp"]))
        shared = same * draw(st.floats(0.9, 1.1))
        other = draw(st.floats(2.0, 30.0)) if in_series else draw(st.floats(0.1, 2.0))
        volts, amps = (other, shared) if in_series else (shared, other)
        ratio = LAMP_RATIO if kind == "lamp" else draw(st.floats(4.0, 8.5))
        seconds = draw(st.floats(2.0, 25.0))
        if kind == "lamp":
            seconds = 0.17 * (amps / 0.15) ** (2 / 3)
        found.append(Heater(kind, volts, amps, ratio, seconds))
    return tuple(found)


@st.composite
def cases(draw: st.DrawFn, supplies: tuple[str, ...]) -> Case:
    in_series = draw(st.booleans())
    hot = draw(heaters(in_series))
    volts = sum(one.volts for one in hot) if in_series else hot[0].volts
    amps = hot[0].amps if in_series else sum(one.amps for one in hot)
    before: list[AnyPart] = []
    ohm = 0.0
    if draw(st.booleans()):
        ohm = draw(st.floats(0.05, 1.0)) * volts / amps
        before.append(Resistor(id="R1", ohm=ohm))
    thermistor = None
    if draw(st.booleans()):
        thermistor = Thermistor(
            id="N1",
            r25_ohm=draw(st.floats(0.2, 1.0)) * volts / amps,
            beta_k=draw(st.floats(2600.0, 3300.0)),
            dissipation_w_per_k=draw(st.floats(0.1, 0.3)) * volts * amps / 200,
            tau_s=draw(st.floats(20.0, 90.0)),
        )
        before.append(thermistor)
    wanted = volts + amps * ohm
    kind = draw(st.sampled_from(supplies))
    supply, emf, inner, limit = _supply(draw, kind, wanted, amps)
    return Case(supply, emf, ohm + inner, limit, tuple(before), thermistor, hot, in_series)


def _supply(draw: st.DrawFn, kind: str, volts: float, amps: float) -> tuple[AnyPart, float, float, float]:
    """The part, its EMF, resistance and limit."""
    if kind == "battery":
        return Battery(id="U1", emf_v=volts), volts, 0.0, np.inf
    if kind == "winding":
        pct = draw(st.floats(2.0, 25.0))
        part = Winding(id="T1", rated_v=volts, rated_a=amps, regulation_pct=pct)
        return part, volts * (1 + pct / 100), pct / 100 * volts / amps, np.inf
    limit = draw(st.floats(1.1, 4.0)) * amps
    return DcSupply(id="U1", set_v=volts, limit_a=limit), volts, 0.0, limit


def _compare(case: Case) -> tuple[WarmupRun, ByHand, Any]:
    """Temperatures and currents within 1e-4; the program's own steps allow themselves 1e-6 each."""
    run = warm_up(case.sheet(), load_builtin(), Start(mains_v=MAINS_V, seconds=SECONDS))
    assert not run.summary.unsolved
    assert not run.summary.bounds
    by_hand = ByHand(case)
    path = by_hand.run()
    for t in (0.0, *np.geomspace(0.01, SECONDS, 14).tolist()):
        y = path.sol(t)
        point = run.at(t)
        for n in range(len(case.heaters)):
            section = point.heaters[f"V{n}"][0]
            assert section.heater_k == pytest.approx(y[n], rel=1e-4)
            assert section.cathode_k == pytest.approx(by_hand.cathodes(y)[n], rel=1e-4)
            assert section.a == pytest.approx(by_hand.amps(y)[n], rel=2e-4)
        if case.thermistor is not None:
            assert point.branches["N1"].kelvin == pytest.approx(y[-1], rel=1e-4)
    return run, by_hand, path


@given(case=cases(("battery", "winding")))
@EXAMPLES
def test_without_a_limit(case: Case) -> None:
    run, _, _ = _compare(case)
    assert not run.summary.events


@given(case=cases(("supply",)))
@EXAMPLES
def test_with_a_limit_and_its_switching_instants(case: Case) -> None:
    """The supply comes to its limit and off it when the second integrator says so.

    An instant is as certain as what is asked for (2e-4 of the limit) over how fast that changes; where it hardly
    changes, the two may differ over whether the limit is passed at all.
    """
    run, by_hand, path = _compare(case)
    told = {what: [e.t_s for e in run.summary.events if e.what == what] for what in _WORDS}
    for what, times in told.items():
        for t in times:
            assert by_hand.excess(path.sol(t)) == pytest.approx(0.0, abs=2e-4), what
    for t in path.t_events[0].tolist():
        if t < 1e-3 or t > SECONDS - 1e-3:
            continue
        slope = (by_hand.excess(path.sol(t + 1e-4)) - by_hand.excess(path.sol(t - 1e-4))) / 2e-4
        if abs(slope) > 1e-3:
            near = np.array(told["at its limit" if slope > 0 else "regulates"])
            assert np.abs(near - t).min(initial=np.inf) < 2e-4 / abs(slope) + 1e-6


_WORDS = ("at its limit", "regulates")
