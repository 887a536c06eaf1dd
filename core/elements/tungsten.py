"""Electrical resistivity of tungsten against temperature.

Table: Forsythe & Worthing (1925), 300 to 3600 K in steps of 100 K, in micro-ohm centimetres; the value at
293.15 K (5.49) is Jones & Langmuir (1927), Table I, R' x pi/4. Between the rows a monotone cubic (Fritsch and
Carlson, SIAM J. Numer. Anal. 17, 1980) with Brodlie's weighted harmonic mean of the neighbouring slopes.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

REFERENCE_K = 293.15

_TABLE = (
    (293.15, 5.49), (300, 5.65), (400, 8.06), (500, 10.56), (600, 13.23), (700, 16.09), (800, 19.00),
    (900, 21.94), (1000, 24.93), (1100, 27.94), (1200, 30.98), (1300, 34.08), (1400, 37.19), (1500, 40.36),
    (1600, 43.55), (1700, 46.78), (1800, 50.05), (1900, 53.35), (2000, 56.67), (2100, 60.06), (2200, 63.48),
    (2300, 66.91), (2400, 70.39), (2500, 73.91), (2600, 77.49), (2700, 81.04), (2800, 84.70), (2900, 88.33),
    (3000, 92.04), (3100, 95.76), (3200, 99.54), (3300, 103.3), (3400, 107.2), (3500, 111.1), (3600, 115.0),
)  # fmt: skip


class RatioCurve(Protocol):
    """Resistance over its value at 293.15 K, as a function of temperature."""

    def ratio(self, kelvin: Array) -> tuple[Array, Array]:
        """Ratio and its slope per kelvin, elementwise."""

    def temperature(self, ratio: Array) -> Array:
        """The temperature in kelvin at which a ratio is reached, elementwise."""


@dataclass(frozen=True)
class MonotoneCubic:
    """A rising piecewise cubic through given knots, continued as straight lines at both ends."""

    knots: Array
    coefficients: Array  # (4, n - 1): constant, linear, quadratic, cubic in the distance from the left knot
    values: Array

    def ratio(self, kelvin: Array) -> tuple[Array, Array]:
        """Value and slope at ``kelvin``, any shape."""
        index = self.knots[1:-1].searchsorted(kelvin, side="right")
        d = kelvin - self.knots[index]
        c0, c1, c2, c3 = self.coefficients.take(index, axis=1)
        value = c0 + d * (c1 + d * (c2 + d * c3))
        slope = c1 + d * (2 * c2 + d * 3 * c3)
        return value, slope

    def temperature(self, ratio: Array) -> Array:
        """Inverse of :meth:`ratio` by Newton steps from a straight-line guess."""
        ratio = np.asarray(ratio, dtype=float)
        kelvin = np.interp(ratio, self.values, self.knots)
        for _ in range(2):  # the guess is within a kelvin, and each step squares the error
            value, slope = self.ratio(kelvin)
            kelvin = kelvin - (value - ratio) / slope
        return np.asarray(kelvin)


def monotone_cubic(knots: Array, values: Array) -> MonotoneCubic:
    """Build the curve; ``values`` must rise. Ends are continued with zero curvature."""
    h = np.diff(knots)
    delta = np.diff(values) / h
    w1, w2 = 2 * h[1:] + h[:-1], h[1:] + 2 * h[:-1]
    inner = (w1 + w2) / (w1 / delta[:-1] + w2 / delta[1:])
    slope = np.concatenate((delta[:1], inner, delta[-1:]))
    quadratic = (3 * delta - 2 * slope[:-1] - slope[1:]) / h
    cubic = (slope[:-1] + slope[1:] - 2 * delta) / h**2
    inside = np.stack((values[:-1], slope[:-1], quadratic, cubic))
    # one straight piece beyond each end, so that ambient below 293 K and over-driven lamps stay sensible
    low = np.array([[values[0] - slope[0] * 400], [slope[0]], [0.0], [0.0]])
    high = np.array([[values[-1]], [slope[-1]], [0.0], [0.0]])
    return MonotoneCubic(
        np.concatenate(([knots[0] - 400], knots, [knots[-1] + 5000])),
        np.concatenate((low, inside, high), axis=1),
        np.concatenate(([values[0] - slope[0] * 400], values, [values[-1] + slope[-1] * 5000])),
    )


def _tungsten() -> MonotoneCubic:
    table = np.array(_TABLE)
    return monotone_cubic(table[:, 0], table[:, 1] / _TABLE[0][1])


TUNGSTEN = _tungsten()


def resistivity_uohm_cm(kelvin: Array) -> Array:
    """Resistivity of tungsten in micro-ohm centimetres."""
    return TUNGSTEN.ratio(np.asarray(kelvin, dtype=float))[0] * _TABLE[0][1]
