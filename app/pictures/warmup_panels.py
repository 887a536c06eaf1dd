"""What a picture of a warm-up shows: panels over one time axis, as plain values."""

from __future__ import annotations

import itertools
import re
from collections.abc import Iterable
from typing import NamedTuple

import numpy as np
from PySide6.QtCore import QCoreApplication

from core.elements.tungsten import Array
from core.units import CELSIUS_TO_K, THIN_SPACE
from core.warmup import WarmupRun
from core.warmup.results import Traces
from core.warmup.standing import FAR_OVER

_ALIKE = 0.009  # of the panel's height, a line's width: curves nearer than that all along are drawn as one
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
        _supply_volts(traces),
        _volts(run, traces),
        _temperatures(run, traces),
        _thermistors(run, traces),
        _relays(traces),
    )
    return tuple(panel for panel in found if panel.curves)


def _supplies(run: WarmupRun, traces: Traces) -> Panel:
    curves = [Curve(owner, trace.a) for owner, trace in traces.supplies.items()]
    limits: dict[float, list[str]] = {}
    for owner, one in run.summary.supplies.items():
        if one.limit_a is not None:
            limits.setdefault(one.limit_a, []).append(owner)
    limit = QCoreApplication.translate("WarmupPlot", "limit of {id}")
    marks = tuple(Mark(limit.format(id=named(owners)), value) for value, owners in limits.items())
    title = QCoreApplication.translate("WarmupPlot", "Supply current")
    return Panel(title, "A", _grouped(curves), marks)


def _supply_volts(traces: Traces) -> Panel:
    title = QCoreApplication.translate("WarmupPlot", "Supply volts")
    return Panel(
        title, "V", _grouped(Curve(owner, np.abs(trace.v)) for owner, trace in traces.supplies.items())
    )


def _volts(run: WarmupRun, traces: Traces) -> Panel:
    rated = {one.key: one.rated_v for sections in run.summary.heaters.values() for one in sections}
    curves = [Curve(key, 100 * trace.v / rated[key]) for key, trace in traces.heaters.items()]
    title = QCoreApplication.translate("WarmupPlot", "Heater volts")
    mark = Mark(QCoreApplication.translate("WarmupPlot", "1.5 × rated"), 100 * FAR_OVER)
    return Panel(title, "%", _grouped(curves), (mark,))


def _temperatures(run: WarmupRun, traces: Traces) -> Panel:
    own = {one.key for sections in run.summary.heaters.values() for one in sections if one.has_cathode}
    curves = [
        Curve(key, trace.cathode_k - CELSIUS_TO_K) for key, trace in traces.heaters.items() if key in own
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
    sections: dict[str, int] = {}
    for curve in curves:
        owner = curve.name.partition(":")[0]
        sections[owner] = sections.get(owner, 0) + 1
    return tuple(Curve(_name([one.name for one in group], sections), group[0].values) for group in groups)


def _name(keys: list[str], sections: dict[str, int]) -> str:
    """Tubes whose sections all are among the keys by their names alone, other sections with their pins."""
    owners = [key.partition(":")[0] for key in keys]
    names = [
        owner if owners.count(owner) == sections[owner] else key.replace(":", THIN_SPACE)
        for owner, key in zip(owners, keys, strict=True)
    ]
    return named(dict.fromkeys(names))


def named(names: Iterable[str]) -> str:
    """Names in their order of counting, three or more in a row as a range: ``V1–V4, V6``; at most three shown."""
    counted = sorted(names, key=_counting)
    found: list[tuple[str, int]] = []
    for _, group in itertools.groupby(enumerate(counted), lambda one: _in_a_row(*one)):
        row = [name for _, name in group]
        found.extend([(f"{row[0]}–{row[-1]}", len(row))] if len(row) > 2 else [(name, 1) for name in row])
    if len(found) <= _SHOWN:
        return ", ".join(text for text, _ in found)
    more = QCoreApplication.translate("WarmupPlot", "{names} and {count} more")
    shown, hidden = found[: _SHOWN - 1], found[_SHOWN - 1 :]
    return more.format(
        names=", ".join(text for text, _ in shown), count=sum(standing for _, standing in hidden)
    )


def _counting(name: str) -> tuple[str, int, str]:
    match = re.fullmatch(r"(\D*)(\d{1,9})(.*)", name)
    return (match[1], int(match[2]), match[3]) if match else (name, 0, "")


def _in_a_row(place: int, name: str) -> tuple[str, int, str]:
    """The same for names that follow each other."""
    letters, number, rest = _counting(name)
    is_plain = name == f"{letters}{number}"
    return (letters, number - place, rest) if is_plain else (name, -1, rest)
