"""Figures and names as they stand in findings."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from core.sentences import Sentence, Text, sentence
from core.sheet import Tube
from core.units import THIN_SPACE, Dimension, format_percent, format_quantity

_SHOWN = 4
_NOTHING = 1e-9  # what rounding leaves of zero volts or amperes


@lru_cache(maxsize=1024)
def volts(value: float) -> str:
    """``6.30 V``."""
    return format_quantity(value if abs(value) > _NOTHING else 0.0, Dimension.VOLTS)


def set_volts(value: float) -> str:
    """Volts as a supply is set to: ``6.30 V``, ``124.1 V``."""
    return format_quantity(value, Dimension.VOLTS, 4 if abs(value) >= 100 else 3)


def apart(value: float, limit: float, dimension: Dimension = Dimension.VOLTS) -> tuple[str, str]:
    """A figure and its limit with as many digits as it takes to tell them apart: ``100.1 V``, ``100 V``."""
    told = format_quantity(limit, dimension)
    for digits in range(3, 9):
        shown = format_quantity(value, dimension, digits)
        if shown != told and shown != format_quantity(limit, dimension, digits):
            return shown, told
    return format_quantity(value, dimension), told


def amps(value: float) -> str:
    """``150 mA``."""
    return format_quantity(value if abs(value) > _NOTHING else 0.0, Dimension.AMPS)


def watts(value: float) -> str:
    """``99.2 mW``."""
    return format_quantity(value, Dimension.WATTS)


def ohms(value: float) -> str:
    """``47.0 Ω``; a fraction of an ohm as resistors are sold, ``0.082 Ω``."""
    if 0.001 <= value < 1:
        return f"{value:.3g}{THIN_SPACE}Ω"
    return format_quantity(value, Dimension.OHMS)


def rating(value: float) -> str:
    """A wattage as it is sold: ``2 W``, ``0.25 W``."""
    return f"{value:g}{THIN_SPACE}W"


def seconds(value: float) -> str:
    """``24.3 s``."""
    return format_quantity(value, Dimension.SECONDS)


@lru_cache(maxsize=1024)
def percent(value: float) -> str:
    """A deviation with its sign: ``+10 %``, ``−9.5 %``."""
    return format_percent(value, 0 if abs(value - round(value)) < 0.05 else 1)


def share(value: float) -> str:
    """A part of a whole, without sign: ``83 %``."""
    return percent(value).removeprefix("+")


@lru_cache(maxsize=256)
def band(low: float, high: float) -> Text:
    """The limits of a deviation: ``±10 %`` or ``−12.7 % to +11.1 %``."""
    if abs(low + high) < 0.05:
        return f"±{share(high)}"
    return sentence("{low} to {high}", low=percent(low), high=percent(high))


_MAINS = {
    "nominal": sentence("nominal mains"),
    "low mains": sentence("low mains"),
    "high mains": sentence("high mains"),
    "after a dip": sentence("the second start, after a dip"),
}


def mains_words(condition: str) -> Text:
    """A hot condition as it stands after *at*: ``nominal mains``, ``low mains``."""
    return _MAINS.get(condition, condition)


def listed(items: Sequence[Text], shown: int = _SHOWN) -> Text:
    """``V1``, ``V1 and V2``, ``V1, V2, V3, V4 and 6 more``."""
    if len(items) < 2:
        return items[0] if items else ""
    if len(items) > shown + 1:
        return sentence(
            "{items} and {count} more", items=_with_commas(items[:shown]), count=len(items) - shown
        )
    return sentence("{items} and {last}", items=_with_commas(items[:-1]), last=items[-1])


def _with_commas(items: Sequence[Text]) -> Text:
    plain = [item for item in items if isinstance(item, str)]
    if len(plain) == len(items):
        return ", ".join(plain)
    found = items[0]
    for item in items[1:]:
        found = sentence("{items}, {last}", items=found, last=item)
    return found


def pin_list(pins: Sequence[str]) -> Sentence:
    """``pin 9`` or ``pins 4 and 5``."""
    return (
        sentence("pin {pin}", pin=pins[0])
        if len(pins) == 1
        else sentence("pins {pins}", pins=listed(pins, 8))
    )


def tube_name(tube: Tube) -> str:
    """A tube with its type: ``V1 (ECC83)``."""
    return f"{tube.id} ({tube.type})"


def wire_size(awg: int | None, area_mm2: float | None) -> str:
    """``AWG 20`` or ``0.5 mm²``."""
    return f"AWG {awg}" if awg is not None else f"{area_mm2 or 0:g}{THIN_SPACE}mm²"
