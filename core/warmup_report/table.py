"""Switching on as a table for a spreadsheet: one row a time."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from typing import TYPE_CHECKING

import numpy as np

from core.elements.tungsten import Array
from core.results import NOMINAL
from core.warmup.results import Traces
from core.warmup_report.data import numbers

if TYPE_CHECKING:
    from core.switch_on import SwitchOn

Column = tuple[str, list[float | None] | list[int]]


def warmup_csv(answer: SwitchOn, condition: str = NOMINAL) -> str:
    """One condition as comma-separated values after RFC 4180, with a heading that names the units.

    A row for each time of the run; where something switches there are two of the same time, before and after.
    What is not finite is left empty. Raises KeyError for a condition that was not computed.
    """
    columns = list(_columns(answer.runs[condition].traces()))
    text = io.StringIO()
    writer = csv.writer(text)  # its usual form is that of the RFC, line ends included
    writer.writerow([heading for heading, _ in columns])
    writer.writerows(zip(*(values for _, values in columns), strict=True))
    return text.getvalue()


def _columns(traces: Traces) -> Iterator[Column]:
    yield "t_s", numbers(traces.t_s)
    for owner, supply in traces.supplies.items():
        yield from _pair(owner, supply.v, supply.a)
    for key, heater in traces.heaters.items():
        name = key.replace(":", " ")
        yield from _pair(name, heater.v, heater.a)
        yield f"{name} heater (K)", numbers(heater.heater_k)
        yield f"{name} cathode (K)", numbers(heater.cathode_k)
    for key, branch in traces.branches.items():
        yield from _pair(key, branch.v, branch.a)
        if branch.kelvin is not None:
            yield f"{key} (K)", numbers(branch.kelvin)
    for owner, pulled in traces.relays.items():
        yield f"{owner} pulled in (0/1)", np.asarray(pulled, dtype=int).tolist()


def _pair(name: str, volts: Array, amps: Array) -> Iterator[Column]:
    yield f"{name} (V)", numbers(volts)
    yield f"{name} (A)", numbers(amps)
