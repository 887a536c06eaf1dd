"""What a number can measure, and how each of these is spelled."""

from __future__ import annotations

from enum import Enum
from typing import NamedTuple


class Spelling(NamedTuple):
    """How a unit may be typed.

    ``symbols`` keep their case when first looked up; ``words`` are read in any case. ``prefixes`` are the SI
    prefixes that make sense, ``bare`` those that may stand alone after a number, as in ``4k``.
    """

    symbols: tuple[str, ...] = ()
    words: tuple[str, ...] = ()
    prefixes: str = ""
    bare: str = ""


_ALL = "pn\u00b5mkMG"


class Dimension(Enum):
    """What a number measures: the base unit on screen, its name in words, an example, and its spellings."""

    NUMBER = ("", "a plain number", "0.5", Spelling())
    VOLTS = ("V", "volts", "6.3 V", Spelling(("V",), ("volt", "volts"), _ALL, _ALL))
    AMPS = ("A", "amperes", "150 mA", Spelling(("A",), ("amp", "amps", "ampere", "amperes"), _ALL, _ALL))
    OHMS = ("\u03a9", "ohms", "4.7 k\u03a9 or 4k7", Spelling(("\u03a9", "R"), ("ohm", "ohms"), _ALL, _ALL))
    WATTS = ("W", "watts", "5 W", Spelling(("W",), ("watt", "watts"), _ALL, _ALL))
    FARADS = ("F", "farads", "4.7 \u00b5F", Spelling(("F",), ("farad", "farads"), _ALL, _ALL))
    METRES = ("m", "metres", "30 cm", Spelling(("m",), ("metre", "metres", "meter", "meters"), "n\u00b5mck"))
    MM2 = ("mm²", "square millimetres", "0.5 mm²", Spelling(("mm²", "mm2", "mm^2"), ("sq mm",)))
    SECONDS = ("s", "seconds", "11 s", Spelling(("s",), ("sec", "second", "seconds"), "pn\u00b5mk"))
    HERTZ = ("Hz", "hertz", "50 Hz", Spelling(("Hz",), ("hertz",), "mkMG", "kMG"))
    CELSIUS = ("°C", "degrees Celsius", "25 °C", Spelling(("°C", "C", "℃"), ("degc", "deg c", "celsius")))
    KELVIN = ("K", "kelvins", "3000 K", Spelling(("K",), ("kelvin", "kelvins")))
    PERCENT = ("%", "per cent", "10 %", Spelling(("%",), ("percent", "per cent", "pct")))
    W_PER_K = ("W/K", "watts per kelvin", "17 mW/K", Spelling(("W/K",), (), "\u00b5mk"))
    KELVIN_PER_W = ("K/W", "kelvins per watt", "40 K/W", Spelling(("K/W",), (), "mk"))
    A2S = ("A²s", "ampere-squared seconds", "4 A²s", Spelling(("A²s", "A2s", "A^2s", "A²·s")))

    def __init__(self, unit: str, noun: str, example: str, spelling: Spelling) -> None:
        self.unit = unit
        self.noun = noun
        self.example = example
        self.spelling = spelling

    @property
    def expectation(self) -> str:
        """The clause that ends every refusal: what belongs here, with an example."""
        verb = "is" if self is Dimension.NUMBER else "are"
        return f"{self.noun} {verb} expected here, such as {self.example}"
