"""How numbers stand in tables and in fields: one rounding for all of them."""

from __future__ import annotations

import math

from app.canvas.looks import amps_text, volts_text, watts_text
from core.errors import QuantityError
from core.units import MINUS, THIN_SPACE, Dimension, format_number, format_quantity, parse

UNKNOWN = "…"
NOTHING = "–"
_MOST_DECIMALS = 3


def volts_figure(volts: float) -> str:
    """Volts for a column, rounded as on the drawing."""
    return _bare(volts_text(volts))


def amps_figure(amps: float) -> str:
    """Amperes for a column, rounded as on the drawing."""
    return _bare(amps_text(amps))


def watts_figure(watts: float) -> str:
    """Watts for a column, rounded as on the drawing."""
    return _bare(watts_text(watts))


def _bare(text: str) -> str:
    return text.partition(THIN_SPACE)[0]


def figure(value: float | None, digits: int = 3) -> str:
    """A number for a column whose heading names the unit: three significant digits, at most three decimals.

    Whole digits are always kept; None is a dash; what rounds to nothing is ``0``.
    """
    if value is None:
        return NOTHING
    if not math.isfinite(value) or value == 0:
        return format_number(value, 0)
    exponent = math.floor(math.log10(abs(float(f"{value:.{digits - 1}e}"))))
    text = format_number(value, min(max(digits - 1 - exponent, 0), _MOST_DECIMALS))
    return text if text.strip(f"{MINUS}0.") else "0"


def signed_percent(value: float) -> str:
    """A deviation in per cent with its sign and one decimal, without the unit; whole from 100 on."""
    text = format_number(value, 0 if abs(value) >= 99.95 else 1)
    plus = "+" if value > 0 and text.strip("0.") else ""
    return f"{plus}{text}"


def exact_text(value: float, dimension: Dimension) -> str:
    """The shortest engineering notation that is read back as the very same number: ``6.3 V``, ``4.7 kΩ``."""
    for digits in range(1, 18):
        text = format_quantity(value, dimension, digits)
        try:
            if parse(text, dimension) == value:
                return text
        except QuantityError:
            continue
    return f"{value!r}{dimension.unit and ' ' + dimension.unit}".replace("-", MINUS)
