"""The columns of the tables."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from app.panes import offering
from app.panes.cell_edits import CellEdits
from app.panes.models import Column

translate = QCoreApplication.translate


def _figures(title: str, long_name: str, sample: str) -> Column:
    return Column(title, long_name, numeric=True, sample=sample)


def _volts(long_name: str) -> Column:
    return _figures(translate("tables", "volts"), long_name, "12.60")


def _amps() -> Column:
    return _figures(translate("tables", "amps"), translate("tables", "amperes"), "0.150")


def _watts(long_name: str) -> Column:
    return _figures(translate("tables", "watts"), long_name, "10.7")


def heater_columns() -> tuple[Column, ...]:
    """The columns of the heater table."""
    return (
        Column("", translate("tables", "state")),
        Column(translate("tables", "id")),
        Column(translate("tables", "type")),
        Column(translate("tables", "pins"), translate("tables", "section between pins")),
        _volts(translate("tables", "volts across the section")),
        _figures(translate("tables", "%"), translate("tables", "volts off the rating, per cent"), "+10.5"),
        _amps(),
        _watts(translate("tables", "watts of heat")),
        _figures(translate("tables", "htr K"), translate("tables", "heater temperature, kelvin"), "1450"),
        _figures(translate("tables", "cath K"), translate("tables", "cathode temperature, kelvin"), "1050"),
    )


def supply_columns() -> tuple[Column, ...]:
    """The columns of the supply table."""
    return (
        Column(translate("tables", "id")),
        Column(translate("tables", "kind")),
        _volts(translate("tables", "volts at the terminals")),
        _amps(),
        _figures(translate("tables", "load %"), translate("tables", "load in per cent of rating"), "95.4"),
        _watts(translate("tables", "watts given")),
    )


def pin_columns() -> tuple[Column, ...]:
    """The columns of the pin table."""
    return (
        Column(translate("tables", "part")),
        Column(translate("tables", "pin")),
        _volts(translate("tables", "volts above the reference, rms for AC")),
        _figures(translate("tables", "DC volts"), translate("tables", "DC volts above the chassis"), "101.0"),
    )


def part_columns(cells: CellEdits) -> tuple[Column, ...]:
    """The columns of the part table."""
    turned = translate("tables", "turned by, degrees")
    return (
        Column(translate("tables", "id"), edit=cells.rename),
        Column(translate("tables", "kind")),
        Column(translate("tables", "type or rating"), edit=cells.set_rating, offers=cells.ratings),
        Column(translate("tables", "at"), translate("tables", "place on the sheet"), edit=cells.set_place),
        Column(translate("tables", "turn"), turned, numeric=True, edit=cells.set_turn, offers=_turns),
        Column(
            translate("tables", "out"),
            translate("tables", "pulled out of its socket"),
            edit=cells.set_pulled,
            offers=_pulled,
        ),
    )


def wire_columns(cells: CellEdits) -> tuple[Column, ...]:
    """The columns of the wire table."""
    twisted = translate("tables", "twisted pair, by its name")
    return (
        Column(translate("tables", "id"), edit=cells.rename),
        Column(translate("tables", "from"), edit=cells.set_start, offers=cells.terminals),
        Column(translate("tables", "to"), edit=cells.set_end, offers=cells.terminals),
        Column(translate("tables", "gauge"), edit=cells.set_gauge, offers=_gauges),
        Column(translate("tables", "length"), numeric=True, edit=cells.set_length),
        Column(translate("tables", "colour"), edit=cells.set_colour, offers=_colours),
        Column(translate("tables", "pair"), twisted, edit=cells.set_pair, offers=cells.pairs),
        _amps(),
        _figures(translate("tables", "mV"), translate("tables", "millivolts dropped"), "17.1"),
        _watts(translate("tables", "watts of heat")),
    )


def _turns(_owner: str, _text: str) -> list[str]:
    return ["0", "90", "180", "270"]


def _pulled(_owner: str, _text: str) -> list[str]:
    return [translate("parts", "pulled")]


def _gauges(_owner: str, text: str) -> list[str]:
    return offering.gauges(text)


def _colours(_owner: str, text: str) -> list[str]:
    return offering.colours(text)
