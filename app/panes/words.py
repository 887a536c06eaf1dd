"""Words for kinds, ratings, wires and certainty, as they stand in the panes."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from app.panes.figures import exact_text
from core.catalogue.types import Status
from core.sheet import AnyPart, Frame, Lamp, Note, RectifiedSupply, Switch, Thermistor, Tube, Winding, Wire
from core.units import FIELD_DIMENSIONS, THIN_SPACE, Dimension, format_number

_NO_BREAK = "\u202f"  # as narrow as the thin space


def unbroken(text: str) -> str:
    """A text that is broken into lines nowhere between a figure and its unit."""
    return text.replace(THIN_SPACE, _NO_BREAK)


def choice_word(choice: str) -> str:
    """A choice of a form in words; figures and what has no other word stand as they are."""
    return {
        "constant-current": QCoreApplication.translate("choices", "constant-current"),
        "hiccup": QCoreApplication.translate("choices", "hiccup"),
        "foldback": QCoreApplication.translate("choices", "foldback"),
        "latch-off": QCoreApplication.translate("choices", "latch-off"),
        "bridge": QCoreApplication.translate("choices", "bridge"),
        "centre-tap": QCoreApplication.translate("choices", "centre-tap"),
        "quick": QCoreApplication.translate("choices", "quick"),
        "time-lag": QCoreApplication.translate("choices", "time-lag"),
    }.get(choice, choice)


def certainty_words(status: Status) -> str:
    """How sure a catalogue value is, in plain words."""
    return {
        "seen": QCoreApplication.translate("parts", "seen in its source"),
        "second-hand": QCoreApplication.translate("parts", "second hand"),
        "disputed": QCoreApplication.translate("parts", "sources disagree"),
        "memory": QCoreApplication.translate("parts", "unverified"),
    }[status]


_RATINGS: dict[str, tuple[str, ...]] = {
    "lamp": ("rated_v", "rated_a"),
    "winding": ("rated_v", "rated_a"),
    "rectified_supply": ("rated_v", "rated_a"),
    "dc_supply": ("set_v", "limit_a"),
    "battery": ("emf_v",),
    "resistor": ("ohm", "rated_w"),
    "thermistor": ("r25_ohm",),
    "relay": ("coil_v", "coil_ohm"),
    "fuse": ("rated_a",),
    "capacitor": ("farad",),
    "diode": ("forward_v",),
    "balance": ("ohm",),
    "elevation": ("volts",),
}


def rating_text(part: AnyPart) -> str:
    """The type or the main figures of a part in a few characters; empty where it has none."""
    if isinstance(part, Tube | Lamp | Thermistor) and part.type:
        return part.type
    if isinstance(part, Switch):
        if part.closed:
            return QCoreApplication.translate("parts", "closed")
        return QCoreApplication.translate("parts", "open")
    if isinstance(part, Note | Frame):
        return " ".join((part.text if isinstance(part, Note) else part.title).split())
    values = ((name, getattr(part, name)) for name in _RATINGS.get(part.kind, ()))
    words = [exact_text(value, FIELD_DIMENSIONS[name]) for name, value in values if value is not None]
    if isinstance(part, Winding | RectifiedSupply) and part.centre_tap:
        words.append(QCoreApplication.translate("parts", "centre tap"))
    return " ".join(words)


def pulled_text(part: AnyPart) -> str:
    """The word for a tube out of its socket; empty for everything else."""
    is_pulled = isinstance(part, Tube) and part.pulled
    return QCoreApplication.translate("parts", "pulled") if is_pulled else ""


def gauge_text(wire: Wire) -> str:
    """A wire's size as it can be typed: ``20 AWG`` or ``0.5 mm²``; empty for an ideal strap."""
    if wire.awg is not None:
        return f"{wire.awg}{THIN_SPACE}AWG"
    return "" if wire.area_mm2 is None else exact_text(wire.area_mm2, Dimension.MM2)


def length_text(wire: Wire) -> str:
    """A wire's length in metres, as on the drawing; empty where none is given."""
    if wire.length_m is None:
        return ""
    texts = (format_number(wire.length_m, decimals) for decimals in range(2, 7))
    exact = next((text for text in texts if float(text) == wire.length_m), None)
    if exact is None:
        return exact_text(wire.length_m, Dimension.METRES)
    return f"{exact}{THIN_SPACE}m"
