"""The arithmetic of remedies: resistor values, lifts, wire sizes and ratings that would mend a finding."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from typing import NamedTuple

from core.catalogue.wire import chassis_limit_a, ohm_per_m
from core.preferred import nearest, next_wattage
from core.sheet import Wire

# Current goes as this power of the volts: published figures lie between 0.49 and 0.64.
EXPONENT = 0.55
REFERENCE_OHM = 100.0

_RATINGS = (
    0.1,
    0.2,
    0.3,
    0.5,
    0.75,
    1.0,
    1.5,
    2.0,
    2.5,
    3.0,
    4.0,
    5.0,
    6.0,
    8.0,
    10.0,
    12.0,
    15.0,
    20.0,
    25.0,
)
# ISO 3, series R10, as fuse links to IEC 60127 are made
_FUSES = (1.0, 1.25, 1.6, 2.0, 2.5, 3.15, 4.0, 5.0, 6.3, 8.0)
_AREAS = (0.14, 0.25, 0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0)
_THICKEST_AWG = 10


class Fitted(NamedTuple):
    """A resistor to fit: preferred ohms, watts that it turns into heat, usual rating of twice that."""

    ohm: float
    watts: float
    rated_w: float | None


def resistor_for(ohm: float, amps: float) -> Fitted | None:
    """The E24 resistor nearest to ``ohm`` that carries ``amps``; None where no resistance is wanted."""
    if not 1e-3 <= ohm <= 1e7:
        return None
    preferred = nearest(ohm)
    heat = amps * amps * preferred
    return Fitted(preferred, heat, next_wattage(2 * heat))


def leg_resistor(emf_v: float, source_ohm: float, wanted_v: float, amps: float) -> Fitted | None:
    """A resistor for each of two legs, so that ``wanted_v`` is left at ``amps`` of an EMF behind a resistance."""
    return resistor_for((emf_v - amps * source_ohm - wanted_v) / (2 * amps), amps) if amps > 0 else None


def shunt_for(v: float, high_a: float, low_a: float) -> Fitted | None:
    """The resistor across a heater of ``v`` volts and ``low_a`` amperes in a string that carries ``high_a``."""
    spare = high_a - low_a
    if spare <= 0:
        return None
    fitted = resistor_for(v / spare, spare)
    if fitted is None:
        return None
    heat = v * v / fitted.ohm
    return Fitted(fitted.ohm, heat, next_wattage(2 * heat))


def reference_pair_w(v: float, ohm: float) -> float:
    """Watts in each of two equal resistors from the sides of a heater line of ``v`` volts to the chassis."""
    return v * v / (4 * ohm)


def lift_window(bounds: Iterable[tuple[float, float]]) -> tuple[float, float] | None:
    """The lifts that satisfy every tube, from each tube's lowest and highest; None where there is none."""
    lows, highs = zip(*bounds, strict=True)
    low, high = max(lows), min(highs)
    return (low, high) if low <= high else None


def supply_rating_a(amps: float) -> float:
    """The next usual rating that leaves a quarter in hand."""
    wanted = 1.25 * amps
    return next((one for one in _RATINGS if one >= wanted), math.ceil(wanted / 5) * 5.0)


def ratings_between(low_a: float, high_a: float) -> tuple[float, ...]:
    """The usual ratings of supplies above ``low_a``, up to the first that leaves a quarter in hand of ``high_a``."""
    most = supply_rating_a(high_a)
    usual = [one for one in _RATINGS if low_a < one <= most]
    more = [] if most in usual or most <= low_a else [most]
    return (*usual, *more)


def next_fuse_a(amps: float) -> float | None:
    """The smallest usual fuse rating of at least ``amps``, from 32 mA to 10 A; None where there is none."""
    usual = sorted(round(one * decade, 4) for decade in (0.01, 0.1, 1.0) for one in _FUSES)
    return next((one for one in (*usual, 10.0) if one >= max(amps, 0.032)), None)


def size_for_current(wire: Wire, amps: float) -> tuple[int | None, float | None]:
    """The next size, AWG or mm² as the wire has it, that carries ``amps``; (None, None) where none does."""
    return _size(wire, lambda awg, area: chassis_limit_a(awg, area) >= amps)


def size_for_drop(
    wire: Wire, amps: float, drop_v: float, temp_c: float = 20.0
) -> tuple[int | None, float | None]:
    """The next size with which the wire drops less than ``drop_v`` at ``temp_c`` °C; (None, None) where none does."""
    ohm = drop_v / amps / (wire.length_m or 1.0)
    return _size(wire, lambda awg, area: ohm_per_m(awg, area, temp_c) < ohm)


def size_for_share(wire: Wire, share: float) -> tuple[int | None, float | None]:
    """The next size with at most this share of the wire's resistance; (None, None) where none has so little."""
    most = share * ohm_per_m(wire.awg, wire.area_mm2)
    return _size(wire, lambda awg, area: ohm_per_m(awg, area) <= most)


def _size(wire: Wire, fits: Callable[[int | None, float | None], bool]) -> tuple[int | None, float | None]:
    if wire.awg is not None:
        sizes = range(wire.awg - 1 - (wire.awg - 1) % 2, _THICKEST_AWG - 1, -2)
        return next((awg for awg in sizes if fits(awg, None)), None), None
    thicker = (area for area in _AREAS if area > (wire.area_mm2 or 0.0))
    return None, next((area for area in thicker if fits(None, area)), None)
