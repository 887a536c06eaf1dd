"""The law of an NTC thermistor: beta law with self-heating.

R = R25 exp(B (1/T - 1/298.15 K)); steady state P = delta (T - Ta). Heat capacity is delta times tau.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.elements.tungsten import Array

REFERENCE_K = 298.15


@dataclass(frozen=True)
class NtcLaw:
    """Constants of ``n`` thermistors, arrays of shape ``(n,)``: ohms, kelvin, watts per kelvin."""

    r25_ohm: Array
    beta_k: Array
    dissipation_w_per_k: Array
    ambient_k: float


def thermistor_k(law: NtcLaw, watts: Array) -> Array:
    """Steady body temperature at a power, kelvin; ``watts`` of shape ``(..., n)``."""
    return np.asarray(law.ambient_k + watts / law.dissipation_w_per_k)


def steady_resistance(law: NtcLaw, watts: Array) -> tuple[Array, Array]:
    """Resistance in ohms at a steady power, and d ln R / d ln P (never positive); shape ``(..., n)``."""
    kelvin = thermistor_k(law, watts)
    ohm = law.r25_ohm * np.exp(law.beta_k * (1 / kelvin - 1 / REFERENCE_K))
    elasticity = -law.beta_k / kelvin**2 * watts / law.dissipation_w_per_k
    return ohm, elasticity
