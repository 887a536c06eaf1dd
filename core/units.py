"""Engineering quantities in and out: strict reading and plain writing.

Reading follows three rules. A text has one reading or it is refused with a sentence that says what to
write. The case of a prefix is never altered (``M`` is mega, ``m`` is milli). A bare number is in the field's
base unit.
"""

from __future__ import annotations

import math
import re

from core.dimension import Dimension
from core.errors import QuantityError
from core.fields import FIELD_DIMENSIONS, FIELD_LABELS, field_label
from core.sentences import sentence

__all__ = [
    "CELSIUS_TO_K",
    "FIELD_DIMENSIONS",
    "FIELD_LABELS",
    "MINUS",
    "THIN_SPACE",
    "Dimension",
    "field_label",
    "format_number",
    "format_percent",
    "format_quantity",
    "parse",
]

THIN_SPACE = "\u2009"
MINUS = "\u2212"
CELSIUS_TO_K = 273.15

_PREFIX_POWERS = {"p": -12, "n": -9, "\u00b5": -6, "m": -3, "k": 3, "M": 6, "G": 9}
_POWER_PREFIXES = {0: "", **{power: prefix for prefix, power in _PREFIX_POWERS.items()}}
_LONGEST_INPUT = 60


# look-alikes: Greek mu for micro, the ohm sign for omega, the true minus, and every space of fixed width
_SAME = str.maketrans(
    {
        "\u03bc": "\u00b5",
        "\u2126": "\u03a9",
        MINUS: "-",
        **dict.fromkeys("\u00a0\u2007\u2008\u2009\u200a\u202f\t", " "),
    }
)
_NUMBER = re.compile(
    r"(?P<sign>[+-]? ?)(?P<digits>[1-9][0-9]{0,2}(?: [0-9]{3})+(?![0-9])(?:[.,][0-9]+)?"
    r"|[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)(?P<power>[eE][+-]?[0-9]+)?"
)
_LETTER_POINT = re.compile(
    r"(?P<sign>[+-]? ?)(?P<whole>[0-9]*)(?P<letter>[A-Za-z\u00b5\u03a9])(?P<part>[0-9]+)(?P<unit>.*)"
)
_POINT_UNITS = {
    Dimension.VOLTS: "V",
    Dimension.AMPS: "A",
    Dimension.OHMS: "Rr\u03a9",
    Dimension.WATTS: "W",
    Dimension.FARADS: "F",
}


def parse(text: str, dimension: Dimension) -> float:
    """Read a quantity of the given dimension, in its base unit (SI, but mm², °C and per cent as they stand).

    Understands prefixes (``150 mA``), the letter as decimal point (``4k7``, ``0R5``, ``6V3``), a decimal
    comma where it cannot be a thousands comma, groups of three set off by spaces, and exponents.

    Raises QuantityError with a sentence that says what was expected.
    """
    plain = text.translate(_SAME).strip()
    if not plain:
        raise QuantityError(sentence("Nothing is entered; {expected}.", expected=dimension.expectation))
    if len(plain) > _LONGEST_INPUT:
        raise QuantityError(
            sentence("That is too long for a number; {expected}.", expected=dimension.expectation)
        )
    value = _letter_point(plain, dimension)
    return value if value is not None else _number_and_unit(plain, dimension)


def _letter_point(plain: str, dimension: Dimension) -> float | None:
    """Read ``4k7``, ``R5`` or ``6V3``; None where the text is not of that form."""
    match = _LETTER_POINT.fullmatch(plain)
    if match is None or match["letter"] in "eE":
        return None
    letter, unit = match["letter"], match["unit"].strip()
    power = 0 if letter in _POINT_UNITS.get(dimension, "") else _bare_power(letter, dimension)
    if power is None:
        return None
    if unit and _reading(unit, dimension) != 0:
        raise _wrong_unit(plain, unit, dimension)
    return _assemble(plain, match["sign"], f"{match['whole'] or '0'}.{match['part']}", power, dimension)


def _number_and_unit(plain: str, dimension: Dimension) -> float:
    match = _NUMBER.match(plain)
    if match is None:
        raise _refusal(plain, dimension)
    rest = plain[match.end() :]
    unit = rest.strip()
    if unit[:1] in tuple("0123456789.,+-"):
        raise _refusal(plain, dimension)
    digits = _decimal_point(plain, match["digits"], dimension)
    power = _unit_power(plain, unit, rest.startswith(" "), dimension)
    power += int(match["power"][1:]) if match["power"] else 0
    return _assemble(plain, match["sign"], digits, power, dimension)


def _decimal_point(plain: str, digits: str, dimension: Dimension) -> str:
    """The digits with a dot as decimal point and no group spaces; refuses a comma with two readings."""
    whole, comma, part = digits.partition(",")
    grouped = " " in whole
    if comma and not grouped and len(part) == 3 and 1 <= len(whole) <= 3 and not whole.startswith("0"):
        raise QuantityError(
            sentence(
                "'{text}' has two readings: write {thousands} for thousands, or {fraction} with a dot; {expected}.",
                text=plain,
                thousands=f"{whole}{part}",
                fraction=f"{whole}.{part}",
                expected=dimension.expectation,
            )
        )
    if comma and not (whole and part):
        raise _refusal(plain, dimension)
    return digits.replace(",", ".").replace(" ", "")


def _unit_power(plain: str, unit: str, spaced: bool, dimension: Dimension) -> int:
    """The power of ten of a unit's prefix; 0 where no unit stands."""
    if not unit:
        return 0
    power = _reading(unit, dimension)
    if power is not None:
        return power
    bare = _bare_power(unit, dimension)
    if bare is None or (spaced and _foreign(unit, dimension)):
        raise _wrong_unit(plain, unit, dimension)
    return bare


def _bare_power(prefix: str, dimension: Dimension) -> int | None:
    if prefix == "u":
        prefix = "\u00b5"
    if prefix == "K" and dimension is Dimension.OHMS:
        prefix = "k"
    return _PREFIX_POWERS[prefix] if len(prefix) == 1 and prefix in dimension.spelling.bare else None


def _reading(unit: str, dimension: Dimension) -> int | None:
    """The power of ten that a unit stands for in a dimension; None where it is no unit of that dimension."""
    exact = _exact_reading(unit, dimension)
    if exact is not None:
        return exact
    if any(_exact_reading(unit, other) is not None for other in Dimension):
        return None
    return _any_case_reading(unit, dimension)


def _exact_reading(unit: str, dimension: Dimension) -> int | None:
    if unit in dimension.spelling.symbols:
        return 0
    for prefix, power in _prefixes(dimension):
        if unit.startswith(prefix):
            rest = unit.removeprefix(prefix).strip()
            if rest in dimension.spelling.symbols or rest.lower() in dimension.spelling.words:
                return power
    return None


def _any_case_reading(unit: str, dimension: Dimension) -> int | None:
    """Read ``300 ma`` or ``6.3 v``: only the unit may change its case, never its prefix."""
    if dimension in (Dimension.SECONDS, Dimension.METRES, Dimension.KELVIN, Dimension.CELSIUS, Dimension.A2S):
        return None
    lowered = tuple(symbol.lower() for symbol in dimension.spelling.symbols)
    for prefix, power in _prefixes(dimension):
        if unit.startswith(prefix) and unit.removeprefix(prefix).lower() in lowered:
            return power
    return None


def _prefixes(dimension: Dimension) -> tuple[tuple[str, int], ...]:
    """Prefixes of a dimension as typed, with their powers; the empty one first."""
    powers = {**_PREFIX_POWERS, "c": -2}
    pairs = [("", 0), *((prefix, powers[prefix]) for prefix in dimension.spelling.prefixes)]
    if "\u00b5" in dimension.spelling.prefixes:
        pairs.append(("u", -6))
    if dimension is Dimension.OHMS:
        pairs.append(("K", 3))
    return tuple(pairs)


def _foreign(unit: str, dimension: Dimension) -> Dimension | None:
    """The other dimension that a unit belongs to, if any."""
    for other in Dimension:
        if other is not dimension and _exact_reading(unit, other) is not None:
            return other
    for other in Dimension:
        if other is not dimension and _any_case_reading(unit, other) is not None:
            return other
    return None


def _assemble(plain: str, sign: str, digits: str, power: int, dimension: Dimension) -> float:
    """The number nearest to the decimal text, so that 4k7 is exactly 4700."""
    value = float(f"{sign.strip()}{digits}e{power}")
    if math.isinf(value) or (value == 0 and digits.strip("0.")):
        raise QuantityError(
            sentence(
                "'{text}' is too large to be meant; {expected}."
                if math.isinf(value)
                else "'{text}' is too small to be meant; {expected}.",
                text=plain,
                expected=dimension.expectation,
            )
        )
    return value + 0.0


def _refusal(plain: str, dimension: Dimension) -> QuantityError:
    return QuantityError(
        sentence("'{text}' is not understood; {expected}.", text=plain, expected=dimension.expectation)
    )


def _wrong_unit(plain: str, unit: str, dimension: Dimension) -> QuantityError:
    other = _foreign(unit, dimension)
    if other is not None:
        return QuantityError(
            sentence(
                "'{text}' is {what}; {expected}.", text=plain, what=other.noun, expected=dimension.expectation
            )
        )
    return QuantityError(
        sentence(
            "The unit '{unit}' in '{text}' is not known; {expected}.",
            unit=unit,
            text=plain,
            expected=dimension.expectation,
        )
    )


def format_quantity(value: float, dimension: Dimension, digits: int = 3) -> str:
    """A quantity for the screen in engineering notation: ``4.70 kΩ``, ``150 mA``, ``0 V``.

    ``digits`` significant digits are kept (whole digits always); a thin space stands before the unit. What is
    not a number is a dash, what is infinite is ``∞``.
    """
    if not math.isfinite(value) or value == 0:
        return _signed(value, _odd_number(value), dimension.unit)
    mantissa, exponent = _rounded(abs(value), digits)
    step = _step(exponent, dimension)
    prefix = "" if not dimension.spelling.bare and dimension not in _SHORTENED else _POWER_PREFIXES[step]
    place = exponent - step
    if not -9 <= place < 9 or (prefix and not -3 <= place < 6):
        return _signed(value, f"{mantissa}e{exponent}".replace("-", MINUS), dimension.unit)
    text = f"{abs(value) / 10**step:.0f}" if place >= digits else _shift(mantissa, place)
    return _signed(value, text, prefix + dimension.unit)


# lengths and times read better as 5000 m and 5000 s; below one they take milli and smaller
_SHORTENED = (Dimension.METRES, Dimension.SECONDS, Dimension.W_PER_K)


def _odd_number(value: float) -> str:
    if value == 0:
        return "0"
    return "—" if math.isnan(value) else "∞"


def _signed(value: float, digits: str, unit: str) -> str:
    sign = MINUS if value < 0 else ""
    return f"{sign}{digits}{THIN_SPACE}{unit}" if unit else f"{sign}{digits}"


def _rounded(size: float, digits: int) -> tuple[str, int]:
    """Mantissa text ``d.ddd`` and power of ten after rounding, so that 0.9996 becomes 1.00 and not 1000 m."""
    mantissa, _, exponent = f"{size:.{max(digits, 1) - 1}e}".partition("e")
    return mantissa, int(exponent)


def _step(exponent: int, dimension: Dimension) -> int:
    """The power of the prefix, a multiple of three within p to G; 0 for units that take no prefix."""
    if dimension in _SHORTENED:
        return min(max(exponent // 3 * 3, -6), 0)
    if not dimension.spelling.bare:
        return 0
    lowest = 0 if dimension is Dimension.HERTZ else -12
    return min(max(exponent // 3 * 3, lowest), 9)


def _shift(mantissa: str, place: int) -> str:
    """Move the decimal point of ``d.ddd`` by ``place`` digits."""
    figures = mantissa.replace(".", "")
    if place < 0:
        return f"0.{'0' * (-place - 1)}{figures}"
    figures = figures.ljust(place + 1, "0")
    whole, part = figures[: place + 1], figures[place + 1 :]
    return f"{whole}.{part}" if part else whole


def format_number(value: float, decimals: int) -> str:
    """A number with a fixed count of decimals and a true minus; never a negative zero."""
    if not math.isfinite(value):
        return _signed(value, _odd_number(value), "")
    text = f"{abs(value):.{decimals}f}"
    return f"{MINUS}{text}" if value < 0 and text.strip("0.") else text


def format_percent(value: float, decimals: int = 1) -> str:
    """A deviation in per cent with its sign: ``+9.5 %``; zero carries none."""
    text = format_number(value, decimals)
    plus = "+" if value > 0 and text.strip("0.") else ""
    return f"{plus}{text}{THIN_SPACE}%"
