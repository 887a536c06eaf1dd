"""What is to be heated: the ways in which each type can be wired, and which of them fits."""

from __future__ import annotations

from core.catalogue import Catalogue
from core.catalogue.types import Section, TubeType
from core.chains.model import LeftOut, Load, Way
from core.elements.branch import Context
from core.elements.loads import lamp_rating, sections
from core.limits import current_tolerance, volt_limits
from core.results import DEFAULT_V_PCT, ROUNDING, sentence
from core.rules.insulation import stress_limits
from core.sheet import Lamp, Sheet, Tube

FIT_PCT = 5.0
"""A heater suits a line whose volts are within this much of its rating: common practice, half of what it bears."""

# From the end of a string that stands high above the chassis to the end at the chassis: rectifiers, power stages,
# everything else, and small triodes and tone stages last, where hum is heard most. Common practice.
_DUTIES = (("rectifier", "damper", "booster"), ("power", "output", "sweep"), (), ("triode", "AF", "low hum"))
_ORDINARY = 2


def loads_of(sheet: Sheet, catalogue: Catalogue, ids: tuple[str, ...]) -> tuple[list[Load], list[LeftOut]]:
    """The sockets and lamps among ``ids`` in that order, and those whose type is not known."""
    found: list[Load] = []
    unknown: list[LeftOut] = []
    context = Context(sheet.mains, sheet.ambient_c, catalogue)
    for part_id in dict.fromkeys(ids):
        part = sheet.part_by_id.get(part_id)
        if isinstance(part, Tube):
            kind = catalogue.tube(part.type)
            load = None if kind is None else _tube_load(part, kind)
        elif isinstance(part, Lamp):
            load = _lamp_load(part, lamp_rating(part, context))
        else:
            continue
        if load is None:
            name = part.type or part.id
            says = sentence("The type {type} of {id} is not known.", id=part_id, type=name)
            unknown.append(LeftOut(part_id, says))
        else:
            found.append(load)
    return found, unknown


def _tube_load(tube: Tube, kind: TubeType) -> Load:
    low, high = volt_limits(kind)
    limits = stress_limits(kind)
    is_judged = kind.heating == "indirect" and not kind.cathode_joined
    owns = kind.cathode_joined or kind.heating == "direct"
    return Load(
        id=tube.id,
        type=tube.type,
        at=tube.at,
        pins=kind.heater_pins,
        ways=_ways(sections(tube, kind), kind.tap_role == "centre"),
        low_pct=low,
        high_pct=high,
        tolerance_a_pct=None if kind.rating_class == "voltage" else current_tolerance(kind),
        cathode_v=tube.cathode_v if is_judged else None,
        above_v=(limits.above_peak, limits.above_dc),
        below_v=(limits.below_peak, limits.below_dc),
        is_direct=kind.heating == "direct",
        owns_cathode=owns and "rectifier" in kind.description,
        is_pulled=tube.pulled,
        duty=duty_of(kind.description),
    )


def _lamp_load(lamp: Lamp, rating: tuple[float, float] | None) -> Load | None:
    if rating is None:
        return None
    way = Way((("1", "2"), ("2", "1")), (), *rating)
    return Load(
        id=lamp.id,
        type=lamp.type or lamp.id,
        at=lamp.at,
        pins=("1", "2"),
        ways=(way,),
        low_pct=-DEFAULT_V_PCT,
        high_pct=DEFAULT_V_PCT,
        is_lamp=True,
        duty=_ORDINARY,
    )


def duty_of(description: str) -> int:
    """Where a tube belongs in a string by what it does: 0 at the supply's end, 3 at the chassis end."""
    for rank, words in enumerate(_DUTIES):
        if any(word in description for word in words):
            return rank
    return _ORDINARY


def _ways(parts: tuple[Section, ...], has_centre: bool) -> tuple[Way, ...]:
    """End to end, taps left open; and for a centre tap the two halves side by side, the ends strapped."""
    first, last = parts[0].pins[0], parts[-1].pins[1]
    whole = Way(
        ((first, last), (last, first)),
        (),
        sum(part.rated_v for part in parts),
        min(part.rated_a for part in parts),
    )
    if not has_centre or len(parts) != 2:
        return (whole,)
    tap = parts[0].pins[1]
    feeds = ((first, tap), (last, tap), (tap, first), (tap, last))
    return whole, Way(feeds, ((first, last),), parts[0].rated_v, sum(part.rated_a for part in parts))


def way_for_volts(load: Load, volts: float) -> Way | None:
    """The way in which a load suits a line of so many volts, or None."""
    fitting = [way for way in load.ways if _suits(load, way, volts)]
    return min(fitting, key=lambda way: abs(volts / way.rated_v - 1), default=None)


def _suits(load: Load, way: Way, volts: float) -> bool:
    off = (volts / way.rated_v - 1) * 100
    slack = 100 * ROUNDING
    return max(load.low_pct, -FIT_PCT) - slack <= off <= min(load.high_pct, FIT_PCT) + slack


def way_for_amps(load: Load, amps: float, tolerance_pct: float) -> Way | None:
    """The way in which a load carries so many amperes by itself, or None."""
    fitting = [way for way in load.ways if abs(amps / way.rated_a - 1) * 100 <= tolerance_pct]
    return min(fitting, key=lambda way: abs(amps / way.rated_a - 1), default=None)
