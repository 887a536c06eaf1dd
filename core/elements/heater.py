"""The law of a heater, filament or lamp: resistance from temperature, temperature from power.

Resistance: R(T) = R_cold (1 + (c - 1) (r(T) - 1) / (r(T0) - 1)) with r the tungsten resistivity ratio to
293.15 K, c the type's hot over cold resistance, and T0 the working temperature, at which r(T0) = c. For
c below 4.87 pure tungsten would put the heater colder than 1060 K, below its own cathode: such heaters are
alloys or have long leads, so T0 stays at 1060 K and the ratio is still met exactly at both ends.

Heat, indirectly heated: heater to cathode q_hk = P0 (Th^4 - Tk^4) / (T0^4 - Tk0^4), cathode to surroundings
q_ka = P0 (Tk^4 - Ta^4) / (Tk0^4 - Ta^4), Tk0 = 1050 K. In the steady state both equal the electrical power,
hence Th^4 = Ta^4 + (P/P0) (T0^4 - Ta^4): the same as for one body. Steady volts and amperes are therefore
explicit functions of the power, which is the variable that the solver works with.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from core.elements.tungsten import TUNGSTEN, Array, RatioCurve

CATHODE_K = 1050.0
DEFAULT_COLD_RATIO = 7.0
MIN_WORKING_K = 1060.0


@dataclass(frozen=True)
class HeaterLaw:
    """Constants of ``n`` heaters, arrays of shape ``(n,)``: watts, ohms, kelvin to the fourth, kelvin."""

    rated_v: Array
    rated_w: Array
    cold_ohm: Array
    rise: Array  # (c - 1) / (r(T0) - 1)
    working_k4: Array
    ambient_k4: float
    has_cathode: Array
    curve: RatioCurve

    @cached_property
    def swing_ohm(self) -> Array:
        """Ohms for each unit of the curve's ratio."""
        return self.cold_ohm * self.rise

    @cached_property
    def fixed_ohm(self) -> Array:
        """Ohms that do not follow the curve; below zero where the curve is stretched."""
        return self.cold_ohm - self.swing_ohm

    @cached_property
    def k4_per_watt(self) -> Array:
        """Fourth power of the temperature above ambient for each watt."""
        return (self.working_k4 - self.ambient_k4) / self.rated_w

    def take(self, index: Array) -> HeaterLaw:
        """The law of some of the heaters."""
        picked = {name: getattr(self, name)[index] for name in _ARRAYS}
        return HeaterLaw(**picked, ambient_k4=self.ambient_k4, curve=self.curve)


_ARRAYS = ("rated_v", "rated_w", "cold_ohm", "rise", "working_k4", "has_cathode")


def heater_law(
    rated_v: Array,
    rated_a: Array,
    cold_ratio: Array,
    has_cathode: Array,
    ambient_k: float,
    curve: RatioCurve = TUNGSTEN,
) -> HeaterLaw:
    """Constants from ratings: volts, amperes, hot/cold ratio; all arrays of shape ``(n,)``."""
    rated_v, rated_a, cold_ratio = (np.asarray(x, dtype=float) for x in (rated_v, rated_a, cold_ratio))
    working_k = np.maximum(curve.temperature(cold_ratio), MIN_WORKING_K)
    at_work = curve.ratio(working_k)[0]
    return HeaterLaw(
        rated_v=rated_v,
        rated_w=rated_v * rated_a,
        cold_ohm=rated_v / rated_a / cold_ratio,
        rise=(cold_ratio - 1) / (at_work - 1),
        working_k4=working_k**4,
        ambient_k4=ambient_k**4,
        has_cathode=np.asarray(has_cathode, dtype=bool),
        curve=curve,
    )


def heater_k(law: HeaterLaw, watts: Array) -> Array:
    """Steady heater temperature at a power, kelvin; ``watts`` of shape ``(..., n)``."""
    return np.asarray(np.sqrt(np.sqrt(law.ambient_k4 + watts * law.k4_per_watt)))


def cathode_k(law: HeaterLaw, watts: Array) -> Array:
    """Steady cathode temperature, kelvin; the filament's own where it is its own cathode."""
    k4 = law.ambient_k4 + watts / law.rated_w * (CATHODE_K**4 - law.ambient_k4)
    return np.where(law.has_cathode, np.sqrt(np.sqrt(k4)), heater_k(law, watts))


def resistance_at(law: HeaterLaw, kelvin: Array) -> Array:
    """Resistance in ohms at a heater temperature of shape ``(..., n)``."""
    return np.asarray(law.fixed_ohm + law.swing_ohm * law.curve.ratio(kelvin)[0])


def steady_resistance(law: HeaterLaw, watts: Array) -> tuple[Array, Array]:
    """Resistance in ohms at a steady power, and its elasticity d ln R / d ln P; shape ``(..., n)``."""
    above = watts * law.k4_per_watt
    k4 = law.ambient_k4 + above
    kelvin = np.sqrt(np.sqrt(k4))
    ratio, slope = law.curve.ratio(kelvin)
    swing = law.swing_ohm
    ohm = law.fixed_ohm + swing * ratio
    elasticity = swing * slope * kelvin * above / (4 * k4 * ohm)
    return ohm, elasticity
