"""What a number can measure, and how each of these is spelled."""

from __future__ import annotations

from enum import Enum
from typing import NamedTuple

from core.sentences import Sentence, Text, sentence


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

    NUMBER = ("", sentence("a plain number"), "0.5", Spelling())
    VOLTS = ("V", sentence("volts"), "6.3 V", Spelling(("V",), ("volt", "volts"), _ALL, _ALL))
    AMPS = (
        "A",
        sentence("amperes"),
        "150 mA",
        Spelling(("A",), ("amp", "amps", "ampere", "amperes"), _ALL, _ALL),
    )
    OHMS = (
        "\u03a9",
        sentence("ohms"),
        sentence("{one} or {other}", one="4.7 k\u03a9", other="4k7"),
        Spelling(("\u03a9", "R"), ("ohm", "ohms"), _ALL, _ALL),
    )
    WATTS = ("W", sentence("watts"), "5 W", Spelling(("W",), ("watt", "watts"), _ALL, _ALL))
    FARADS = ("F", sentence("farads"), "4.7 \u00b5F", Spelling(("F",), ("farad", "farads"), _ALL, _ALL))
    METRES = (
        "m",
        sentence("metres"),
        "30 cm",
        Spelling(("m",), ("metre", "metres", "meter", "meters"), "n\u00b5mck"),
    )
    MM2 = ("mm²", sentence("square millimetres"), "0.5 mm²", Spelling(("mm²", "mm2", "mm^2"), ("sq mm",)))
    SECONDS = ("s", sentence("seconds"), "11 s", Spelling(("s",), ("sec", "second", "seconds"), "pn\u00b5mk"))
    HERTZ = ("Hz", sentence("hertz"), "50 Hz", Spelling(("Hz",), ("hertz",), "mkMG", "kMG"))
    CELSIUS = (
        "°C",
        sentence("degrees Celsius"),
        "25 °C",
        Spelling(("°C", "C", "℃"), ("degc", "deg c", "celsius")),
    )
    KELVIN = ("K", sentence("kelvins"), "3000 K", Spelling(("K",), ("kelvin", "kelvins")))
    PERCENT = ("%", sentence("per cent"), "10 %", Spelling(("%",), ("percent", "per cent", "pct")))
    W_PER_K = ("W/K", sentence("watts per kelvin"), "17 mW/K", Spelling(("W/K",), (), "\u00b5mk"))
    KELVIN_PER_W = ("K/W", sentence("kelvins per watt"), "40 K/W", Spelling(("K/W",), (), "mk"))
    A2S = ("A²s", sentence("ampere-squared seconds"), "4 A²s", Spelling(("A²s", "A2s", "A^2s", "A²·s")))

    def __init__(self, unit: str, noun: Sentence, example: Text, spelling: Spelling) -> None:
        self.unit = unit
        self.noun = noun
        self.example = example
        self.spelling = spelling

    @property
    def expectation(self) -> Sentence:
        """The clause that ends every refusal: what belongs here, with an example."""
        return sentence(
            "{what} is expected here, such as {example}"
            if self is Dimension.NUMBER
            else "{what} are expected here, such as {example}",
            what=self.noun,
            example=self.example,
        )
