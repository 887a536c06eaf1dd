"""What the plot of a warm-up can show: one quantity at a time, as named curves with their owners."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import NamedTuple

import numpy as np
from PySide6.QtCore import QCoreApplication

from core.elements.tungsten import Array
from core.units import CELSIUS_TO_K, THIN_SPACE
from core.warmup import WarmupRun
from core.warmup.results import Traces
from core.warmup.standing import FAR_OVER


class Curve(NamedTuple):
    """One line of the plot: its name, the part it belongs to, times and values ``(n,)``."""

    name: str
    owner: str
    t_s: Array
    values: Array


class Level(NamedTuple):
    """A line across the plot: a limit."""

    name: str
    value: float


class Chart(NamedTuple):
    """One quantity over time."""

    unit: str
    curves: tuple[Curve, ...]
    levels: tuple[Level, ...] = ()


def quantities() -> dict[str, str]:
    """What can be shown, by key, in words."""
    translate = QCoreApplication.translate
    return {
        "amps": translate("Warmup", "supply current"),
        "volts": translate("Warmup", "supply volts"),
        "heaters": translate("Warmup", "heater volts"),
        "cathodes": translate("Warmup", "cathodes"),
        "hot": translate("Warmup", "heaters"),
        "thermistors": translate("Warmup", "thermistors"),
        "ohms": translate("Warmup", "thermistor ohms"),
        "relays": translate("Warmup", "relays"),
    }


def chart(run: WarmupRun, quantity: str) -> Chart:
    """One quantity of a run."""
    traces = run.traces()
    return _CHARTS[quantity](run, traces)


def has_curves(run: WarmupRun, quantity: str) -> bool:
    """Whether there is anything of a quantity on the sheet."""
    summary = run.summary
    needed = {"thermistors": summary.thermistors, "ohms": summary.thermistors, "relays": summary.relays}
    return bool(needed.get(quantity, True))


def _amps(run: WarmupRun, traces: Traces) -> Chart:
    curves = [Curve(owner, owner, traces.t_s, trace.a) for owner, trace in traces.supplies.items()]
    limit = QCoreApplication.translate("Warmup", "limit of {id}")
    levels = [
        Level(limit.format(id=owner), one.limit_a)
        for owner, one in run.summary.supplies.items()
        if one.limit_a is not None
    ]
    return Chart("A", tuple(curves), tuple(levels))


def _volts(_run: WarmupRun, traces: Traces) -> Chart:
    return Chart(
        "V", tuple(Curve(owner, owner, traces.t_s, trace.v) for owner, trace in traces.supplies.items())
    )


def _heaters(run: WarmupRun, traces: Traces) -> Chart:
    rated = {one.key: one.rated_v for sections in run.summary.heaters.values() for one in sections}
    curves = (
        Curve(_named(key), _owner(key), traces.t_s, 100 * trace.v / rated[key])
        for key, trace in traces.heaters.items()
    )
    far = Level(QCoreApplication.translate("Warmup", "1.5 × rated"), 100 * FAR_OVER)
    return Chart("%", tuple(curves), (far,))


def _cathodes(run: WarmupRun, traces: Traces) -> Chart:
    own = {one.key for sections in run.summary.heaters.values() for one in sections if one.has_cathode}
    return _celsius(traces, ((key, trace.cathode_k) for key, trace in traces.heaters.items() if key in own))


def _hot(_run: WarmupRun, traces: Traces) -> Chart:
    return _celsius(traces, ((key, trace.heater_k) for key, trace in traces.heaters.items()))


def _thermistors(run: WarmupRun, traces: Traces) -> Chart:
    found = ((owner, traces.branches[owner].kelvin) for owner in run.summary.thermistors)
    return _celsius(traces, ((owner, kelvin) for owner, kelvin in found if kelvin is not None))


def _ohms(run: WarmupRun, traces: Traces) -> Chart:
    curves = []
    for owner in run.summary.thermistors:
        trace = traces.branches[owner]
        # without current the ratio says nothing: the gap stays open
        with np.errstate(divide="ignore", invalid="ignore"):
            ohm = np.where(trace.a > 1e-9, trace.v / trace.a, np.nan)
        curves.append(Curve(owner, owner, traces.t_s, ohm))
    return Chart("Ω", tuple(curves))


def _relays(_run: WarmupRun, traces: Traces) -> Chart:
    return Chart(
        "",
        tuple(
            Curve(owner, owner, traces.t_s, np.asarray(pulled, dtype=float))
            for owner, pulled in traces.relays.items()
        ),
    )


def _celsius(traces: Traces, found: Iterable[tuple[str, Array]]) -> Chart:
    return Chart(
        "°C",
        tuple(Curve(_named(key), _owner(key), traces.t_s, kelvin - CELSIUS_TO_K) for key, kelvin in found),
    )


def _named(key: str) -> str:
    return key.replace(":", THIN_SPACE)


def _owner(key: str) -> str:
    return key.rpartition(":")[0] or key


_CHARTS: dict[str, Callable[[WarmupRun, Traces], Chart]] = {
    "amps": _amps,
    "volts": _volts,
    "heaters": _heaters,
    "cathodes": _cathodes,
    "hot": _hot,
    "thermistors": _thermistors,
    "ohms": _ohms,
    "relays": _relays,
}


def compared(runs: Iterable[tuple[str, WarmupRun]], quantity: str) -> Chart:
    """One quantity of several variants: the first supply, or the heater that is worst off at each instant."""
    curves: list[Curve] = []
    levels: tuple[Level, ...] = ()
    unit = ""
    for title, run in runs:
        found = chart(run, quantity)
        unit = found.unit
        levels = levels or found.levels
        if found.curves:
            values = found.curves[0].values
            if quantity not in ("amps", "volts"):
                values = np.min([curve.values for curve in found.curves], axis=0)
            curves.append(Curve(title, "", found.curves[0].t_s, values))
    return Chart(unit, tuple(curves), levels)
