"""What the tables show: pure functions from a sheet and an operating point to rows.

Where the point is None the numbers are an ellipsis: figures of an older drawing are never shown as current.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from functools import lru_cache

from app.canvas.look import State
from app.canvas.looks import heater_state
from app.kinds import kind_word
from app.panes.figures import (
    NOTHING,
    UNKNOWN,
    amps_figure,
    exact_text,
    figure,
    signed_percent,
    volts_figure,
    watts_figure,
)
from app.panes.models import Cell, Row, SortKey
from app.panes.words import gauge_text, length_text, pulled_text, rating_text
from core.catalogue import Catalogue
from core.results import Assessment, HeaterPoint, OperatingPoint
from core.sheet import SUPPLY_KINDS, AnyPart, Lamp, Sheet, Tube, split_terminal
from core.units import Dimension, format_number

_PLACES = ("chassis", "joint")  # parts that are no more than one place in the circuit

STATE_ORDER: tuple[State, ...] = ("over", "under", "cold", "ok", "none", "stale")


@lru_cache(maxsize=4096)
def text_cell(text: str) -> Cell:
    """A cell of words, sorted so that V2 comes before V10."""
    return Cell(text, natural(text))


def natural(text: str) -> SortKey:
    """A sort key under which numbers inside a text count as numbers."""
    padded = re.sub(r"\d+", lambda match: match[0].zfill(9), text.casefold())
    return (0, 0.0, padded) if text else (1, 0.0, "")


def number_cell(value: float | None, text: str | None = None) -> Cell:
    """A cell with a number; None is a dash and sorts after every number."""
    if value is None or not math.isfinite(value):
        return Cell(NOTHING, (1, 0.0, ""))
    return Cell(figure(value) if text is None else text, (0, value, ""))


def _pending(count: int) -> tuple[Cell, ...]:
    return (Cell(UNKNOWN, (1, 0.0, "")),) * count


def _state_cell(state: State) -> Cell:
    return Cell("", (0, float(STATE_ORDER.index(state)), ""), state)


def heater_rows(
    sheet: Sheet,
    catalogue: Catalogue,
    point: OperatingPoint | None,
    assessment: Assessment | None = None,
) -> tuple[Row, ...]:
    """One row a heater section: mark, id, type, section, volts, per cent, amps, watts, temperatures."""
    rows: list[Row] = []
    for part in sheet.parts:
        if isinstance(part, Tube | Lamp):
            solved = {heater.pins: heater for heater in point.heaters.get(part.id, ())} if point else {}
            for pins in _sections(part, catalogue, tuple(solved)):
                heater = solved.get(pins)
                state: State = "stale" if point is None else "none"
                if point is not None and assessment is not None and heater is not None:
                    state = heater_state(heater, assessment, point, sheet.ambient_c)
                rows.append(_heater_row(part, pins, heater, state))
    return tuple(rows)


def _sections(part: Tube | Lamp, catalogue: Catalogue, solved: tuple[str, ...]) -> tuple[str, ...]:
    if solved:
        return solved
    if isinstance(part, Lamp):
        return ("1-2",)
    found = catalogue.tube(part.type)
    return tuple(section.name for section in found.sections) if found is not None else ("",)


def _heater_row(part: Tube | Lamp, pins: str, heater: HeaterPoint | None, state: State) -> Row:
    head = (_state_cell(state), text_cell(part.id), text_cell(rating_text(part)), text_cell(pins))
    if state == "stale":
        cells = _pending(6)
    elif heater is None:
        cells = (number_cell(None),) * 6
    else:
        cells = _heater_cells(heater)
    return Row(f"{part.id}:{pins}", part.id, (*head, *cells))


def _heater_cells(heater: HeaterPoint) -> tuple[Cell, ...]:
    return (
        number_cell(heater.v, volts_figure(heater.v)),
        number_cell(heater.deviation_pct, signed_percent(heater.deviation_pct)),
        number_cell(heater.a, amps_figure(heater.a)),
        number_cell(heater.w, watts_figure(heater.w)),
        number_cell(heater.heater_k, format_number(heater.heater_k, 0)),
        number_cell(heater.cathode_k, format_number(heater.cathode_k, 0)),
    )


def supply_rows(sheet: Sheet, point: OperatingPoint | None) -> tuple[Row, ...]:
    """One row for each supply: id, kind, volts, amps, load in per cent of its rating, watts."""
    rows = []
    for part in sheet.parts:
        if part.kind not in SUPPLY_KINDS:
            continue
        head = (text_cell(part.id), text_cell(kind_word(part.kind)))
        supply = point.supplies.get(part.id) if point is not None else None
        if point is None:
            cells = _pending(4)
        elif supply is None:
            cells = (number_cell(None),) * 4
        else:
            load = supply.load_pct
            shown = None if load is None else figure(load)
            cells = (
                number_cell(supply.v, volts_figure(supply.v)),
                number_cell(supply.a, amps_figure(supply.a)),
                number_cell(load, shown),
                number_cell(supply.w, watts_figure(supply.w)),
            )
        rows.append(Row(part.id, part.id, (*head, *cells)))
    return tuple(rows)


def pin_rows(sheet: Sheet, point: OperatingPoint | None) -> tuple[Row, ...]:
    """One row for each terminal that a wire ends on: part, terminal, volts, and DC volts above the chassis."""
    wired: dict[str, dict[str, None]] = {part.id: {} for part in sheet.parts if part.kind not in _PLACES}
    for wire in sheet.wires:
        for terminal in (wire.start, wire.end):
            part_id, name = split_terminal(terminal)
            if part_id in wired:
                wired[part_id][name] = None
    rows = []
    for part_id, names in wired.items():
        for name in sorted(names, key=natural):
            terminal = f"{part_id}.{name}"
            cells = _pending(2) if point is None else _pin_cells(terminal, point)
            rows.append(Row(terminal, part_id, (text_cell(part_id), text_cell(name), *cells)))
    return tuple(rows)


def _pin_cells(terminal: str, point: OperatingPoint) -> tuple[Cell, Cell]:
    volts, lift = point.nodes.get(terminal), point.bias.get(terminal)
    size = abs(volts) if isinstance(volts, complex) else volts
    return (
        number_cell(size, None if size is None else volts_figure(size)),
        number_cell(lift, None if lift is None else volts_figure(lift)),
    )


def part_rows(parts: Iterable[AnyPart]) -> tuple[Row, ...]:
    """One row for each part: id, kind, type or rating, where it stands, by how much it is turned, if it is pulled."""
    return tuple(
        Row(
            part.id,
            part.id,
            (
                text_cell(part.id),
                text_cell(kind_word(part.kind)),
                text_cell(rating_text(part)),
                text_cell(", ".join(exact_text(number, Dimension.NUMBER) for number in part.at)),
                number_cell(part.turn, str(part.turn)),
                text_cell(pulled_text(part)),
            ),
        )
        for part in parts
    )


def wire_rows(sheet: Sheet, point: OperatingPoint | None) -> tuple[Row, ...]:
    """One row for each wire: id, from, to, gauge, length, colour, pair, amps, millivolts dropped, watts."""
    rows = []
    for wire in sheet.wires:
        head = (
            text_cell(wire.id),
            text_cell(wire.start),
            text_cell(wire.end),
            text_cell(gauge_text(wire)),
            Cell(length_text(wire), (0, wire.length_m, "") if wire.length_m is not None else (1, 0.0, "")),
            text_cell(wire.colour or ""),
            text_cell(wire.twist or ""),
        )
        branch = point.branches.get(wire.id) if point is not None else None
        if point is None:
            cells = _pending(3)
        elif branch is None:
            cells = (number_cell(None),) * 3
        else:
            drop_mv = 1000 * abs(branch.v)
            cells = (
                number_cell(branch.a, amps_figure(branch.a)),
                number_cell(drop_mv),
                number_cell(branch.w, watts_figure(branch.w)),
            )
        rows.append(Row(wire.id, wire.id, (*head, *cells)))
    return tuple(rows)
