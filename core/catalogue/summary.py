"""One line about a type: what it is called, where it fits, what it draws."""

from __future__ import annotations

import math

from core.catalogue.bases import BASES
from core.catalogue.types import LampType, RelayType, ThermistorType, TubeType
from core.sentences import Text, sentence

_THIN = "\u2009"


def whole_rating(tube: TubeType) -> tuple[float, float]:
    """Volts and amperes of the whole heater, its sections in series: (V, A)."""
    volts = sum(section.rated_v for section in tube.sections)
    return volts, max((section.rated_a for section in tube.sections), default=0.0)


def parallel_rating(tube: TubeType) -> tuple[float, float] | None:
    """Volts and amperes with the halves of a centre-tapped heater side by side, else None: (V, A)."""
    volts = [section.rated_v for section in tube.sections]
    if tube.tap_role != "centre" or not volts or not math.isclose(min(volts), max(volts), rel_tol=1e-6):
        return None
    return volts[0], sum(section.rated_a for section in tube.sections)


def rating_text(tube: TubeType) -> Text:
    """The heater in words and figures: ``6.3 V 0.3 A / 12.6 V 0.15 A``."""
    ratings = [rating for rating in (parallel_rating(tube), whole_rating(tube)) if rating is not None]
    text = " / ".join(_volts_amps(volts, amps) for volts, amps in ratings)
    if tube.tap_role == "lamp":
        return sentence("{rating}, lamp tap at {v}", rating=text, v=f"{tube.sections[0].rated_v:g}{_THIN}V")
    return text


def tube_line(tube: TubeType, matched: str = "") -> Text:
    """``12AX7 = ECC83 · B9A · 6.3 V 0.3 A / 12.6 V 0.15 A``; ``matched`` is the other name to show."""
    other = matched if matched and matched != tube.designation else next(iter(tube.equivalents), "")
    name = f"{tube.designation} = {other}" if other else tube.designation
    base = BASES[tube.base].title if tube.base in BASES else tube.base
    return _points(name, base, rating_text(tube))


def lamp_line(lamp: LampType) -> str:
    """``#47 · BA9s bayonet · 6.3 V 0.15 A``."""
    parts = (lamp.designation, lamp.base, _volts_amps(lamp.rated_v, lamp.rated_a))
    return " · ".join(part for part in parts if part)


def thermistor_line(thermistor: ThermistorType) -> Text:
    """``S237 5 ohm · 5 Ω at 25 °C · up to 5 A``."""
    cold = sentence("{ohm} at {c}", ohm=f"{thermistor.r25_ohm:g}{_THIN}Ω", c=f"25{_THIN}°C")
    most = sentence("up to {a}", a=f"{thermistor.max_a:g}{_THIN}A")
    return _points(thermistor.designation, cold, most)


def relay_line(relay: RelayType) -> Text:
    """``DG05 6 V · coil 6 V 80 Ω · contact 10 A``."""
    coil = sentence("coil {rating}", rating=f"{relay.coil_v:g}{_THIN}V {relay.coil_ohm:g}{_THIN}Ω")
    if relay.contact_a is None:
        return _points(relay.designation, coil)
    return _points(relay.designation, coil, sentence("contact {a}", a=f"{relay.contact_a:g}{_THIN}A"))


def _points(*items: Text) -> Text:
    """Items with points between them; a sentence only where one of them is."""
    found = items[0]
    for item in items[1:]:
        plain = isinstance(found, str) and isinstance(item, str)
        found = f"{found} · {item}" if plain else sentence("{items} · {last}", items=found, last=item)
    return found


def _volts_amps(volts: float, amps: float) -> str:
    return f"{volts:.4g}{_THIN}V {amps:.4g}{_THIN}A"
