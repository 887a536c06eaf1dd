"""Switching on, made up by hand: what the reports say is held against figures that are plain to see."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

import numpy as np

from core.results import Finding, sentence
from core.sheet import Sheet
from core.warmup.results import (
    BranchTrace,
    Event,
    FuseWarmup,
    HeaterTrace,
    HeaterWarmup,
    RelayWarmup,
    ResistorWarmup,
    Start,
    SupplyTrace,
    SupplyWarmup,
    ThermistorWarmup,
    Traces,
    WarmupSummary,
)

GRID = np.concatenate([[0.0], np.geomspace(0.001, 60.0, 200)])


@dataclass(frozen=True)
class MadeUpRun:
    """What the reports ask of a run."""

    sheet: Sheet
    start: Start
    summary: WarmupSummary
    end_s: float
    shown: Traces

    def traces(self, t_s: np.ndarray | None = None) -> Traces:
        assert t_s is None
        return self.shown


@dataclass(frozen=True)
class MadeUpAnswer:
    """What the reports ask of the answer."""

    sheet: Sheet
    runs: dict[str, MadeUpRun]
    findings: tuple[Finding, ...] = field(default=())


def rise(t_s: np.ndarray, tau_s: float, low: float, high: float) -> np.ndarray:
    """A plain exponential from low to high."""
    return high + (low - high) * np.exp(-t_s / tau_s)


def heater_trace(t_s: np.ndarray, tau_s: float = 5.0, rated_v: float = 6.3, peak: float = 1.0) -> HeaterTrace:
    volts = rated_v * (1 + (peak - 1) * np.exp(-t_s / tau_s))
    return HeaterTrace(
        volts, rise(t_s, tau_s / 3, 2.1, 0.3), rise(t_s, tau_s / 3, 298.15, 1500), rise(t_s, tau_s, 298.15, 1050)
    )  # fmt: skip


def heater(
    owner: str, pins: str = "4-5", ready_s: float | None = 12.5, peak: float = 1.0, **other
) -> HeaterWarmup:
    usual = {
        "rated_v": 6.3, "rated_a": 0.3, "warmup_s": 11.0, "estimated": False, "peak_at_s": 0.0,
        "own_ready_s": 12.0, "has_cathode": True,
    }  # fmt: skip
    return HeaterWarmup(owner=owner, pins=pins, ready_s=ready_s, peak_v=6.3 * peak, **{**usual, **other})


def supply(**other) -> SupplyWarmup:
    usual = {
        "asked_a": 14.9, "peak_a": 3.0, "peak_at_s": 0.25, "limit_a": 3.0, "rated_a": 3.0, "restarts": 0,
        "outcome": "starts", "decided": True, "energy_j": 812.0, "regulates_s": 4.2, "end_v": 6.3, "end_a": 2.1,
    }  # fmt: skip
    return SupplyWarmup(**{**usual, **other})


def made_up(
    tubes: dict[str, tuple[float, float]],
    supplies: dict[str, SupplyWarmup] | None = None,
    events: tuple[Event, ...] = (),
    findings: tuple[Finding, ...] = (),
    t_s: np.ndarray = GRID,
    title: str = "Made up",
    **summary,
) -> MadeUpAnswer:
    """An answer with one heater a tube, each by its time constant and its peak over its rating."""
    sheet = Sheet(title=title)
    given = {"T1": supply()} if supplies is None else supplies
    start = Start(230.0, seconds=60.0)
    shown = Traces(
        t_s,
        {f"{owner}:4-5": heater_trace(t_s, tau, peak=peak) for owner, (tau, peak) in tubes.items()},
        {
            owner: SupplyTrace(rise(t_s, 2.0, 1.0, one.end_v), rise(t_s, 2.0, one.peak_a, one.end_a))
            for owner, one in given.items()
        },
        {},
        {},
    )
    found = WarmupSummary(
        start=start,
        heaters={owner: (heater(owner, peak=peak),) for owner, (_, peak) in tubes.items()},
        supplies=given,
        **{"thermistors": {}, "relays": {}, "fuses": {}, "resistors": {}, **summary},
        events=events,
    )
    return MadeUpAnswer(sheet, {"nominal": MadeUpRun(sheet, start, found, 60.0, shown)}, findings)


def with_parts(answer: MadeUpAnswer) -> MadeUpAnswer:
    """The answer with a thermistor, a relay, a fuse and a resistor in its nominal run."""
    run = answer.runs["nominal"]
    t_s = run.shown.t_s
    amps = rise(t_s, 2.0, 3.0, 1.0)
    branches = {
        "RT1": BranchTrace(amps * 2, amps, amps**2 * 2, rise(t_s, 10.0, 298.15, 420.0)),
        "K1": BranchTrace(t_s * 0 + 6.0, t_s * 0 + 0.05, t_s * 0 + 0.3),
        "F1": BranchTrace(amps * 0.01, amps, amps**2 * 0.01),
        "R1": BranchTrace(amps, amps, amps**2),
    }
    summary = WarmupSummary(
        run.summary.start,
        run.summary.heaters,
        run.summary.supplies,
        {"RT1": ThermistorWarmup(3.0, 420.0, 5.0, 5.0, 0.4)},
        {"K1": RelayWarmup(3.0, 3.01, 1, 6.0, 2.5, None)},
        {"F1": FuseWarmup(3.0, 1.0, 70.0, float("inf"), None, ((2.0, 0.5),))},
        {"R1": ResistorWarmup(9.0, 5.0, 120.0, None)},
        run.summary.events,
        run.summary.bounds,
        run.summary.unsolved,
    )
    shown = run.shown._replace(branches=branches, relays={"K1": t_s >= 3.0})
    return replace(answer, runs={"nominal": replace(run, summary=summary, shown=shown)})


FAULT = Finding(
    "supply-will-not-start", "fault", ("T1",), sentence("T1 does not start"), sentence("It cuts out."),
    sentence("Use a thermistor."), "nominal", float("inf"), 3.0, "A", "the sheet",
)  # fmt: skip
