"""Reading what is typed into a cell or a field: ratings, places, turns, terminals, colours.

Everything here is pure. What is not understood raises a QuantityError that says what is expected.
"""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QColor

from app.canvas.adding import values_of
from app.canvas.wiring import terminal_named, why_missing
from app.theme import INSULATIONS
from core import edits
from core.catalogue import Catalogue
from core.edits import Edit
from core.errors import QuantityError
from core.sheet import AnyPart, Frame, Lamp, Note, RectifiedSupply, Sheet, Switch, Thermistor, Tube, Winding
from core.units import Dimension, parse

translate = QCoreApplication.translate
_V, _A, _W, _OHM, _F = Dimension.VOLTS, Dimension.AMPS, Dimension.WATTS, Dimension.OHMS, Dimension.FARADS

# which field of a kind a figure with this unit is for; the first may be typed without its unit
_FIGURES: dict[str, dict[Dimension, str]] = {
    "winding": {_V: "rated_v", _A: "rated_a"},
    "rectified_supply": {_V: "rated_v", _A: "rated_a"},
    "dc_supply": {_V: "set_v", _A: "limit_a"},
    "battery": {_V: "emf_v", _OHM: "internal_ohm"},
    "lamp": {_V: "rated_v", _A: "rated_a"},
    "resistor": {_OHM: "ohm", _W: "rated_w"},
    "thermistor": {_OHM: "r25_ohm", _A: "max_a"},
    "relay": {_V: "coil_v", _OHM: "coil_ohm"},
    "fuse": {_A: "rated_a"},
    "capacitor": {_F: "farad"},
    "diode": {_V: "forward_v"},
    "balance": {_OHM: "ohm"},
    "elevation": {_V: "volts", _OHM: "source_ohm"},
}
_EXAMPLES = {
    "winding": "6.3 V 2 A",
    "rectified_supply": "9 V 2 A",
    "dc_supply": "12.6 V 2 A",
    "battery": "6 V",
    "lamp": "6.3 V 150 mA",
    "resistor": "47R 5 W",
    "thermistor": "10R",
    "relay": "6 V 90R",
    "fuse": "2 A",
    "capacitor": "4.7 µF",
    "diode": "0.7 V",
    "balance": "100R",
    "elevation": "40 V",
}
_TAP_WORDS = frozenset(("ct", "centre", "center", "tap", "tapped", "centre-tap", "centre-tapped"))


def rating_edit(part: AnyPart, text: str, catalogue: Catalogue) -> Edit:
    """The edit that gives a part the type or the figures that are typed: ``EL84``, ``6.3 V 2 A``, ``47R 5 W``.

    Figures that are not typed stay as they are, except that a winding has a centre tap only if the text says so.
    """
    if isinstance(part, Tube):
        if not text:
            raise QuantityError(translate("reading", "A tube needs a type, such as ECC83."))
        return edits.replace_type(part.id, text)
    if isinstance(part, Note | Frame):
        if isinstance(part, Note) and "\n" in part.text:
            raise QuantityError(
                translate("reading", "This note has several lines; it is edited on the drawing.")
            )
        name = "text" if isinstance(part, Note) else "title"
        return edits.set_part(part.id, **{name: text})
    if isinstance(part, Switch):
        return edits.set_part(part.id, closed=_is_closed(text))
    known = _catalogue_type(part, text, catalogue)
    if known is not None:
        cleared = dict.fromkeys(_FIGURES[part.kind].values())
        return edits.set_part(part.id, **cleared, type=known)
    return edits.set_part(part.id, **_figures(part, text))


def _is_closed(text: str) -> bool:
    words = {
        "closed": True,
        "open": False,
        translate("parts", "closed").casefold(): True,
        translate("parts", "open").casefold(): False,
    }
    if text.casefold() not in words:
        raise QuantityError(translate("reading", "A switch is open or closed."))
    return words[text.casefold()]


def _catalogue_type(part: AnyPart, text: str, catalogue: Catalogue) -> str | None:
    if isinstance(part, Lamp):
        lamp = catalogue.lamp(text)
        return None if lamp is None else lamp.designation
    if isinstance(part, Thermistor):
        thermistor = catalogue.thermistor(text)
        return None if thermistor is None else thermistor.designation
    return None


def _figures(part: AnyPart, text: str) -> dict[str, Any]:
    fields = _FIGURES.get(part.kind)
    if fields is None:
        raise QuantityError(translate("reading", "{id} has no rating.").format(id=part.id))
    values, rest = _values(text, tuple(fields))
    found: dict[str, Any] = {}
    if isinstance(part, Winding | RectifiedSupply):
        found["centre_tap"] = any(word in _tap_words() for word in rest)
        rest = [word for word in rest if word not in _tap_words()]
    if rest or not values or values.keys() - fields.keys():
        raise QuantityError(_expected(part.kind, text))
    if isinstance(part, Lamp | Thermistor):
        found["type"] = None
    return {**found, **{fields[dimension]: value for dimension, value in values.items()}}


def _values(text: str, dimensions: tuple[Dimension, ...]) -> tuple[dict[Dimension, float], list[str]]:
    """Figures by dimension and the words that are left; a bare number is in the first dimension's unit."""
    values, rest = values_of(text.split())
    rest = [word.casefold() for word in rest]
    if not values and len(rest) == 1:
        try:
            return {dimensions[0]: parse(text, dimensions[0])}, []
        except QuantityError:
            pass
    return values, rest


def _tap_words() -> frozenset[str]:
    return _TAP_WORDS | frozenset(translate("parts", "centre tap").casefold().split())


def _expected(kind: str, text: str) -> str:
    says = translate("reading", "'{text}' is not understood; expected is something like {example}.")
    return says.format(text=text, example=_EXAMPLES[kind])


def read_place(text: str) -> tuple[float, float]:
    """Two numbers: across and down."""
    halves = text.replace(";", ",").split(",")
    if len(halves) != 2:
        raise QuantityError(translate("fields", "Two numbers are expected here, such as 120, 40."))
    return parse(halves[0], Dimension.NUMBER), parse(halves[1], Dimension.NUMBER)


def read_turn(text: str) -> int:
    """A quarter turn in degrees: 0, 90, 180 or 270."""
    plain = text.replace("°", "").strip() or "0"
    if plain not in ("0", "90", "180", "270"):
        raise QuantityError(translate("reading", "A part is turned by 0, 90, 180 or 270 degrees."))
    return int(plain)


def read_pulled(text: str) -> bool:
    """Whether a tube is out of its socket: the word ``pulled``, or nothing for one that is in."""
    if not text:
        return False
    if text.casefold() in ("pulled", translate("parts", "pulled").casefold()):
        return True
    raise QuantityError(translate("reading", "Either the word pulled, or nothing for a tube in its socket."))


def read_terminal(text: str, sheet: Sheet) -> str:
    """A terminal of the sheet in its own spelling: ``V1.4`` for ``v1.4``."""
    found = terminal_named(text, sheet)
    if found is not None:
        return found
    if "." in text:
        raise QuantityError(why_missing(text, sheet))
    says = translate("reading", "'{text}' is no terminal; expected is a part and its pin, such as V1.4.")
    raise QuantityError(says.format(text=text))


def read_colour(text: str) -> str | None:
    """A colour of insulation by its name or as #rrggbb; None for an empty text."""
    plain = " ".join(text.casefold().split()).replace("gray", "grey")
    if not plain:
        return None
    if plain in INSULATIONS or (plain.startswith("#") and len(plain) == 7 and QColor.isValidColorName(plain)):
        return plain
    says = translate("reading", "'{text}' is no colour known here; expected is one of {names}, or #rrggbb.")
    raise QuantityError(says.format(text=text, names=", ".join(INSULATIONS)))
