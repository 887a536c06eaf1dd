"""Tubes and lamps as branches."""

from __future__ import annotations

from core.catalogue.types import Section, TubeType
from core.elements.branch import Branch, Context, Hot
from core.elements.heater import DEFAULT_COLD_RATIO
from core.elements.warming import direct_s, indirect_s, lamp_s
from core.sheet import Lamp, Tube

# A vacuum panel lamp works near 2250 K; hot over cold resistance there is 12 by the tungsten table (from memory:
# no maker's figure for panel lamps was found).
LAMP_COLD_RATIO = 12.0


def sections(tube: Tube, tube_type: TubeType) -> tuple[Section, ...]:
    """The heater sections of a tube with the overrides of the part applied.

    Rated volts and amperes can be overridden on types with one section only: on a tapped heater it would not
    be known which section is meant.
    """
    if len(tube_type.sections) != 1 or (tube.rated_v is None and tube.rated_a is None):
        return tube_type.sections
    only = tube_type.sections[0]
    return (Section(only.pins, tube.rated_v or only.rated_v, tube.rated_a or only.rated_a),)


def tube_branches(tube: Tube, context: Context) -> tuple[Branch, ...]:
    """One branch a heater section; none for a pulled tube or an unknown type."""
    tube_type = context.catalogue.tube(tube.type)
    if tube.pulled or tube_type is None:
        return ()
    ratio = tube.cold_ratio or tube_type.cold_ratio or DEFAULT_COLD_RATIO
    has_cathode = tube_type.heating == "indirect"
    found = sections(tube, tube_type)
    seconds = warmup_s(tube, tube_type) or estimated_warmup_s(tube, tube_type)
    return tuple(
        Branch(
            f"{tube.id}:{section.name}",
            tube.id,
            f"{tube.id}.{section.pins[0]}",
            f"{tube.id}.{section.pins[1]}",
            Hot(section.rated_v, section.rated_a, ratio, has_cathode, section.name, seconds),
        )
        for section in found
    )


def warmup_s(tube: Tube, tube_type: TubeType) -> float | None:
    """Warm-up time in the standard test circuit as the part or its type gives it; None where neither does."""
    return tube.warmup_s or tube_type.warmup_s


def estimated_warmup_s(tube: Tube, tube_type: TubeType) -> float:
    """Warm-up time by the class of the tube, seconds."""
    if tube_type.heating == "direct":
        return direct_s()
    return indirect_s(sum(section.rated_v * section.rated_a for section in sections(tube, tube_type)))


def lamp_rating(lamp: Lamp, context: Context) -> tuple[float, float] | None:
    """Rated volts and amperes of a lamp, or None if its type is not known."""
    lamp_type = context.catalogue.lamp(lamp.type) if lamp.type else None
    rated_v = lamp.rated_v or (lamp_type.rated_v if lamp_type else None)
    rated_a = lamp.rated_a or (lamp_type.rated_a if lamp_type else None)
    return (rated_v, rated_a) if rated_v and rated_a else None


def lamp_branches(lamp: Lamp, context: Context) -> tuple[Branch, ...]:
    """A lamp is a filament without a cathode; none if its type is not known."""
    rating = lamp_rating(lamp, context)
    if rating is None:
        return ()
    law = Hot(*rating, LAMP_COLD_RATIO, False, "1-2", lamp_s(rating[1]))
    return (Branch(f"{lamp.id}:1-2", lamp.id, f"{lamp.id}.1", f"{lamp.id}.2", law),)
