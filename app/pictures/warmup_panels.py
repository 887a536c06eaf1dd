"""What a picture of a warm-up shows: panels over one time axis, as plain values."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

import numpy as np
from PySide6.QtCore import QCoreApplication

from core.elements.tungsten import Array
from core.units import CELSIUS_TO_K, THIN_SPACE
from core.warmup import WarmupRun
from core.warmup.results import Traces
from core.warmup.standing import FAR_OVER

_ALIKE = 0.004  # of the panel's height: curves nearer than that all along are drawn as one
_SHOWN = 3


class Curve(NamedTuple):
    """One line of a panel, or several that are the same: its name and values ``(n,)``."""

    name: str
    values: Array


class Mark(NamedTuple):
    """A level worth a line of its own."""

    name: str
    value: float


class Panel(NamedTuple):
    """One quantity over time; ``is_strip`` for what is only on or off."""

    title: str
    unit: str
    curves: tuple[Curve, ...]
    marks: tuple[Mark, ...] = ()
    is_strip: bool = False

    @property
    def top(self) -> float:
        """The upper end of the axis; the lower one is zero."""
        if self.is_strip:
            return 1.0
        values = [float(curve.values.max(initial=0.0)) for curve in self.curves]
        highest = max([*values, 1e-9])
        near = [mark.value for mark in self.marks if mark.value < 1.6 * highest]
        return 1.08 * max([highest, *near])


def panels(run: WarmupRun) -> tuple[Panel, ...]:
    """The panels of a run, those without a curve left out."""
    traces = run.traces()
    found = (
        _supplies(run, traces),
        _volts(run, traces),
        _temperatures(run, traces),
        _thermistors(run, traces),
        _relays(traces),
    )
    return tuple(panel for panel in found if panel.curves)


def _supplies(run: WarmupRun, traces: Traces) -> Panel:
    curves = [Curve(owner, trace.a) for owner, trace in traces.supplies.items()]
    limits = {one.limit_a: owner for owner, one in run.summary.supplies.items() if one.limit_a is not None}
    limit = QCoreApplication.translate("WarmupPlot", "limit of {id}")
    marks = tuple(Mark(limit.format(id=owner), value) for value, owner in limits.items())
    title = QCoreApplication.translate("WarmupPlot", "Supply current")
    return Panel(title, "A", _grouped(curves), marks)


def _volts(run: WarmupRun, traces: Traces) -> Panel:
    rated = {one.key: one.rated_v for sections in run.summary.heaters.values() for one in sections}
    curves = [Curve(_short(key), 100 * trace.v / rated[key]) for key, trace in traces.heaters.items()]
    title = QCoreApplication.translate("WarmupPlot", "Heater volts")
    mark = Mark(QCoreApplication.translate("WarmupPlot", "1.5 × rated"), 100 * FAR_OVER)
    return Panel(title, "%", _grouped(curves), (mark,))


def _temperatures(run: WarmupRun, traces: Traces) -> Panel:
    own = {one.key for sections in run.summary.heaters.values() for one in sections if one.has_cathode}
    curves = [
        Curve(_short(key), trace.cathode_k - CELSIUS_TO_K)
        for key, trace in traces.heaters.items()
        if key in own
    ]
    title = QCoreApplication.translate("WarmupPlot", "Cathodes")
    return Panel(title, "°C", _grouped(curves))


def _thermistors(run: WarmupRun, traces: Traces) -> Panel:
    curves = [
        Curve(owner, kelvin - CELSIUS_TO_K)
        for owner in run.summary.thermistors
        if (kelvin := traces.branches[owner].kelvin) is not None
    ]
    return Panel(QCoreApplication.translate("WarmupPlot", "Thermistors"), "°C", _grouped(curves))


def _relays(traces: Traces) -> Panel:
    curves = tuple(Curve(owner, np.asarray(pulled, dtype=float)) for owner, pulled in traces.relays.items())
    return Panel(QCoreApplication.translate("WarmupPlot", "Relays pulled in"), "", curves, is_strip=True)


def _short(key: str) -> str:
    return key.replace(":", THIN_SPACE)


def _grouped(curves: Iterable[Curve]) -> tuple[Curve, ...]:
    """Curves that are the same all along as one, named after the first few of them."""
    curves = list(curves)
    room = _ALIKE * max([float(curve.values.max(initial=0.0)) for curve in curves], default=0.0)
    groups: list[list[Curve]] = []
    for curve in curves:
        for group in groups:
            if np.all(np.abs(group[0].values - curve.values) <= room):
                group.append(curve)
                break
        else:
            groups.append([curve])
    return tuple(Curve(_name([one.name for one in group]), group[0].values) for group in groups)


def _name(names: list[str]) -> str:
    # both sections of a tube are the tube
    tubes = list(dict.fromkeys(name.split(THIN_SPACE)[0] for name in names))
    if len(names) == 1:
        return names[0]
    if len(tubes) <= _SHOWN:
        return ", ".join(tubes)
    more = QCoreApplication.translate("WarmupPlot", "{names} and {count} more")
    return more.format(names=", ".join(tubes[:2]), count=len(tubes) - 2)
