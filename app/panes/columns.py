"""The columns of the tables, and what editing a cell does to the sheet."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from app.document import Document
from app.panes.gauge import parse_gauge
from app.panes.models import Column
from app.panes.renaming import rename_kept
from app.selection import Selection
from core import edits
from core.errors import EditError
from core.sheet import Tube
from core.units import Dimension, parse

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


class CellEdits:
    """What an edit of a table cell does to the sheet; each raises where it cannot be done."""

    def __init__(self, document: Document, selection: Selection) -> None:
        self._document = document
        self._selection = selection

    def rename(self, owner: str, text: str) -> None:
        """Give a part or wire another id."""
        rename_kept(self._document, self._selection, owner, text)

    def set_type(self, owner: str, text: str) -> None:
        """Put another tube type into a socket."""
        if not isinstance(self._document.sheet.part_by_id.get(owner), Tube):
            raise EditError(
                translate("tables", "The figures of {id} are set under Properties.").format(id=owner)
            )
        if not text:
            raise EditError(translate("tables", "A tube needs a type, such as ECC83."))
        label = translate("tables", "Set {id} type").format(id=owner)
        self._document.apply(label, edits.replace_type(owner, text))

    def set_gauge(self, owner: str, text: str) -> None:
        """Give a wire another size."""
        size = parse_gauge(text)
        label = translate("tables", "Set {id} gauge").format(id=owner)
        self._document.apply(label, edits.set_wire(owner, **size))

    def set_length(self, owner: str, text: str) -> None:
        """Give a wire another length; an empty text makes it an ideal strap."""
        length = parse(text, Dimension.METRES) if text else None
        label = translate("tables", "Set {id} length").format(id=owner)
        self._document.apply(label, edits.set_wire(owner, length_m=length))


def part_columns(cells: CellEdits) -> tuple[Column, ...]:
    """The columns of the part table."""
    return (
        Column(translate("tables", "id"), edit=cells.rename),
        Column(translate("tables", "kind")),
        Column(
            translate("tables", "type or rating"), translate("tables", "type or rating"), edit=cells.set_type
        ),
        Column(translate("tables", "at"), translate("tables", "place on the sheet")),
    )


def wire_columns(cells: CellEdits) -> tuple[Column, ...]:
    """The columns of the wire table."""
    return (
        Column(translate("tables", "id"), edit=cells.rename),
        Column(translate("tables", "from")),
        Column(translate("tables", "to")),
        Column(translate("tables", "gauge"), edit=cells.set_gauge),
        Column(translate("tables", "length"), numeric=True, edit=cells.set_length),
        _amps(),
        _figures(translate("tables", "mV"), translate("tables", "millivolts dropped"), "17.1"),
        _watts(translate("tables", "watts of heat")),
    )
