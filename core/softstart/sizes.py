"""Sizes of what lets a supply start softly: plain arithmetic and a look into the catalogue."""

from __future__ import annotations

import math

import numpy as np

from core.catalogue import Catalogue
from core.catalogue.types import RelayType, ThermistorType
from core.elements.ntc import REFERENCE_K, NtcLaw, steady_resistance
from core.preferred import nearest, next_wattage

TRIM = 1.10
"""How far up the volts of a supply can be set, over what it is rated for: common practice."""

RESISTOR_TOLERANCE = 0.05
THERMISTOR_TOLERANCE = 0.20  # EPCOS S235 and S237; S238 is ±15 %
FULL_TO_C, NOTHING_AT_C = 65.0, 170.0  # EPCOS B57464S: full current up to 65 °C, none at 170 °C

PULSE_TIMES = 5.0  # common practice: a wire-wound resistor bears five times its rating for five seconds
SURE_SHARE = 0.95  # of the volts that there will be must be enough for a relay to pull in
MOST_COIL_SHARE = 1.1  # of its volts, where a data sheet gives no highest: common practice
LEAST_SPARE = 0.03  # of a coil's volts: for less a resistor before it is not worth fitting
CELSIUS_TO_K = 273.15


def ohm_wanted(open_v: float, cold_ohm: float, limit_a: float) -> float:
    """Ohms in series that keep the first current at ``limit_a``; zero or less where none are wanted."""
    return open_v / limit_a - cold_ohm


def first_a(open_v: float, cold_ohm: float, series_ohm: float) -> float:
    """The first current with so many ohms in series, amperes."""
    return open_v / (cold_ohm + series_ohm)


def resistor_ohm(wanted_ohm: float) -> float | None:
    """The next E24 value whose lower tolerance is enough; None where the ohms are no resistor's."""
    if not 1e-3 <= wanted_ohm <= 1e6:
        return None
    return nearest(wanted_ohm / (1 - RESISTOR_TOLERANCE), side="up")


def resistor_w(warm_w: float, first_w: float) -> float | None:
    """The usual rating for twice the steady heat and for the first heat, a few seconds of it; None beyond them."""
    return next_wattage(max(2 * warm_w, first_w / PULSE_TIMES))


def cold_thermistor_ohm(kind: ThermistorType, ambient_c: float) -> float:
    """The least that a thermistor may have when it is as cold as the room, its tolerance taken off."""
    kelvin = ambient_c + CELSIUS_TO_K
    ohm = kind.r25_ohm * math.exp(kind.beta_k * (1 / kelvin - 1 / REFERENCE_K))
    return ohm * (1 - THERMISTOR_TOLERANCE)


def most_thermistor_a(kind: ThermistorType, ambient_c: float) -> float:
    """What a thermistor bears for ever at a room temperature, amperes."""
    share = (NOTHING_AT_C - ambient_c) / (NOTHING_AT_C - FULL_TO_C)
    return kind.max_a * min(1.0, max(0.0, share))


def hot_thermistor_ohm(kind: ThermistorType, amps: float, ambient_c: float) -> float:
    """Ohms of a thermistor that has warmed itself up with a steady current.

    The power is what it takes for I²R(P) = P; R falls as P grows, so there is one answer.
    """
    ambient_k = ambient_c + CELSIUS_TO_K
    law = NtcLaw(
        np.array([kind.r25_ohm]), np.array([kind.beta_k]), np.array([kind.dissipation_w_per_k]), ambient_k
    )
    low, high = 0.0, amps**2 * float(steady_resistance(law, np.zeros(1))[0][0])
    for _ in range(60):
        watts = (low + high) / 2
        ohm = float(steady_resistance(law, np.array([watts]))[0][0])
        low, high = (watts, high) if amps**2 * ohm > watts else (low, watts)
    return float(steady_resistance(law, np.array([high]))[0][0])


def thermistors(
    catalogue: Catalogue, wanted_ohm: float, warm_a: float, ambient_c: float
) -> tuple[ThermistorType, ...]:
    """Those of the catalogue that are cold enough ohms and bear the steady current, the least loss first."""
    fit = (
        one
        for one in catalogue.thermistors.values()
        if cold_thermistor_ohm(one, ambient_c) >= wanted_ohm and most_thermistor_a(one, ambient_c) >= warm_a
    )
    return tuple(
        sorted(fit, key=lambda one: (hot_thermistor_ohm(one, warm_a, ambient_c), one.max_a, one.designation))
    )


def is_slower(one: ThermistorType, other: ThermistorType) -> bool:
    """Whether a thermistor keeps the current down for longer than another: more ohms or more to be heated."""
    return one.r25_ohm > other.r25_ohm or _joule_per_k(one) > _joule_per_k(other)


def _joule_per_k(kind: ThermistorType) -> float:
    return kind.dissipation_w_per_k * kind.tau_s


def relays(catalogue: Catalogue, line_v: float, behind_v: float, contact_a: float) -> tuple[RelayType, ...]:
    """Those of the catalogue that pull in at ``behind_v`` volts for sure, bear ``line_v`` and switch ``contact_a``.

    The latest to pull in comes first, of equally late ones that which takes least.
    """
    fit = (
        one
        for one in catalogue.relays.values()
        if one.pull_in_v <= SURE_SHARE * behind_v
        and line_v <= (one.max_v or MOST_COIL_SHARE * one.coil_v)
        and (one.contact_a or 0.0) >= contact_a
    )
    return tuple(sorted(fit, key=lambda one: (-one.pull_in_v, -one.coil_ohm, one.designation)))


def pull_in_v(relay: RelayType, before_ohm: float | None) -> float:
    """Volts at which a relay pulls in with so many ohms before its coil."""
    return relay.pull_in_v * (1 + (before_ohm or 0.0) / relay.coil_ohm)


def coil_ohm(relay: RelayType, behind_v: float) -> float | None:
    """The resistor before a coil with which it pulls in as late as is sure, of E24; None where none is worth it."""
    spare = SURE_SHARE * behind_v / relay.pull_in_v - 1
    return nearest(spare * relay.coil_ohm, side="down") if spare > LEAST_SPARE else None


def trimmed_v(set_v: float, wanted_v: float) -> float:
    """Volts to set a supply to, in tenths and no more than it can be set to."""
    steps = 100.0 if set_v < 10 else 10.0
    most = math.floor(set_v * TRIM * steps + 1e-9) / steps
    return min(math.ceil(wanted_v * steps - 1e-9) / steps, most)
