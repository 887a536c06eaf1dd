"""The type or rating that stands beside a part's id, in a few words."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from PySide6.QtCore import QCoreApplication

from core import sheet
from core.catalogue.types import TubeType
from core.units import THIN_SPACE, Dimension, format_quantity

_LONGEST_NOTE = 40


class TypeSource(Protocol):
    """What a symbol asks of the catalogue."""

    def tube(self, name: str) -> TubeType | None:
        """The tube type of a name; None where it is not known."""
        ...


def _plain(value: float, dimension: Dimension) -> str:
    """A rated value: up to four digits, without zeros that say nothing (``6.3 V``, not ``6.300 V``).

    Ohms below one stay in ohms, as they are printed on the part: ``0.22 Ω``.
    """
    if dimension is Dimension.OHMS and 0.001 <= abs(value) < 1:
        return f"{value:.4g}{THIN_SPACE}Ω"
    text = format_quantity(value, dimension, digits=4)
    number, space, unit = text.partition(THIN_SPACE)
    if "." in number and "e" not in number:
        number = number.rstrip("0").rstrip(".")
    return f"{number}{space}{unit}"


def _volts_amps(volts: float, amps: float) -> str:
    return f"{_plain(volts, Dimension.VOLTS)} {_plain(amps, Dimension.AMPS)}"


def _tube(part: sheet.Tube) -> str:
    return part.type


def _lamp(part: sheet.Lamp) -> str:
    if part.type:
        return part.type
    known = part.rated_v is not None and part.rated_a is not None
    return _volts_amps(part.rated_v or 0.0, part.rated_a or 0.0) if known else ""


def _winding(part: sheet.Winding | sheet.RectifiedSupply) -> str:
    return _volts_amps(part.rated_v, part.rated_a)


def _rectified(part: sheet.RectifiedSupply) -> str:
    if part.regulator_v is not None:
        return _volts_amps(part.regulator_v, part.rated_a)
    return _winding(part)


def _dc_supply(part: sheet.DcSupply) -> str:
    return _volts_amps(part.set_v, part.limit_a)


def _battery(part: sheet.Battery) -> str:
    return _plain(part.emf_v, Dimension.VOLTS)


def _mains(part: sheet.MainsFeed) -> str:  # noqa: ARG001 - its volts are the sheet's, not the part's
    return QCoreApplication.translate("parts", "mains")


def _resistor(part: sheet.Resistor) -> str:
    watts = "" if part.rated_w is None else f" {_plain(part.rated_w, Dimension.WATTS)}"
    return f"{_plain(part.ohm, Dimension.OHMS)}{watts}"


def _thermistor(part: sheet.Thermistor) -> str:
    if part.type:
        return part.type
    return "" if part.r25_ohm is None else _plain(part.r25_ohm, Dimension.OHMS)


def _relay(part: sheet.Relay) -> str:
    return f"{_plain(part.coil_v, Dimension.VOLTS)} {_plain(part.coil_ohm, Dimension.OHMS)}"


def _fuse(part: sheet.Fuse) -> str:
    return _plain(part.rated_a, Dimension.AMPS)


def _capacitor(part: sheet.Capacitor) -> str:
    return _plain(part.farad, Dimension.FARADS)


def _balance(part: sheet.Balance) -> str:
    return _plain(part.ohm, Dimension.OHMS)


def _elevation(part: sheet.Elevation) -> str:
    return _plain(part.volts, Dimension.VOLTS)


def _note(part: sheet.Note) -> str:
    """The beginning of its words."""
    line = " ".join(part.text.split())
    return line if len(line) <= _LONGEST_NOTE else f"{line[:_LONGEST_NOTE].rstrip()}…"


def _frame(part: sheet.Frame) -> str:
    return part.title


_RATINGS: dict[str, Callable[..., str]] = {
    "tube": _tube,
    "lamp": _lamp,
    "winding": _winding,
    "dc_supply": _dc_supply,
    "battery": _battery,
    "mains_feed": _mains,
    "rectified_supply": _rectified,
    "resistor": _resistor,
    "thermistor": _thermistor,
    "relay": _relay,
    "fuse": _fuse,
    "capacitor": _capacitor,
    "balance": _balance,
    "elevation": _elevation,
    "note": _note,
    "frame": _frame,
}


def rating_text(part: sheet.AnyPart, catalogue: TypeSource) -> str:
    """The type or rating of a part as its label shows it: ``EL84``, ``6.3 V 3 A``, ``0.22 Ω 2 W``.

    A tube's type is written as the catalogue spells it. Kinds that have nothing to say give an empty text.
    """
    if isinstance(part, sheet.Tube):
        known = catalogue.tube(part.type)
        same = known is not None and known.designation.casefold() == part.type.casefold()
        return known.designation if known is not None and same else part.type
    write = _RATINGS.get(part.kind)
    return write(part) if write is not None else ""
