"""The colour of a hot wire: a black body at the solved temperature, without any invented scale.

Method: Planck's law from 380 to 780 nm in steps of 5 nm, weighed with the analytic fit of the CIE 1931
two-degree colour matching functions by Wyman, Sloan and Shirley ("Simple Analytic Approximations to the CIE
XYZ Color Matching Functions", Journal of Computer Graphics Techniques 2 (2), 2013, multi-lobe form), then
taken to sRGB with the matrix of IEC 61966-2-1, clipped to its gamut and brought to full brightness.
"""

from __future__ import annotations

import math
from functools import lru_cache

from PySide6.QtGui import QColor

from app.theme import Theme
from core.results import GLOWS_FROM_K

SECOND_RADIATION = 1.438776877e-2  # m·K, CODATA 2018
BRIGHT_K = 1000.0  # from it on the colour is shown in full

_STEP_NM = 5
_WAVELENGTHS_NM = range(380, 781, _STEP_NM)

# height, peak (nm) and the two inverse widths (1/nm) of each lobe
_LOBES = (
    ((0.362, 442.0, 0.0624, 0.0374), (1.056, 599.8, 0.0264, 0.0323), (-0.065, 501.1, 0.0490, 0.0382)),
    ((0.821, 568.8, 0.0213, 0.0247), (0.286, 530.9, 0.0613, 0.0322)),
    ((1.217, 437.0, 0.0845, 0.0278), (0.681, 459.0, 0.0385, 0.0725)),
)
_TO_SRGB = (
    (3.2406, -1.5372, -0.4986),
    (-0.9689, 1.8758, 0.0415),
    (0.0557, -0.2040, 1.0570),
)


@lru_cache(maxsize=len(_WAVELENGTHS_NM))
def _matching(wavelength_nm: float) -> tuple[float, float, float]:
    """The three colour matching functions at a wavelength."""
    x, y, z = (
        sum(
            height
            * math.exp(-0.5 * ((wavelength_nm - peak) * (left if wavelength_nm < peak else right)) ** 2)
            for height, peak, left, right in lobes
        )
        for lobes in _LOBES
    )
    return x, y, z


@lru_cache(maxsize=512)
def _tristimulus(kelvin: float) -> tuple[float, float, float]:
    """CIE XYZ of a black body, scaled so that they add up to one.

    The exponent is taken relative to that of the longest wavelength, so that a cold body gives no underflow.
    """
    total = [0.0, 0.0, 0.0]
    least = SECOND_RADIATION / (_WAVELENGTHS_NM[-1] * 1e-9 * kelvin)
    for nm in _WAVELENGTHS_NM:
        exponent = SECOND_RADIATION / (nm * 1e-9 * kelvin)
        radiance = math.exp(least - exponent) / (1 - math.exp(-exponent)) / nm**5
        for index, weight in enumerate(_matching(nm)):
            total[index] += radiance * weight
    scale = sum(total)
    return total[0] / scale, total[1] / scale, total[2] / scale


def chromaticity(kelvin: float) -> tuple[float, float]:
    """CIE 1931 x and y of a black body at ``kelvin`` (any temperature above 300 K)."""
    x, y, _ = _tristimulus(kelvin)
    return x, y


def full_glow(kelvin: float) -> tuple[float, float, float]:
    """Linear sRGB of a black body at ``kelvin``, each 0 to 1, the largest being 1."""
    xyz = _tristimulus(kelvin)
    rgb = [max(0.0, sum(a * b for a, b in zip(row, xyz, strict=True))) for row in _TO_SRGB]
    top = max(rgb)
    return rgb[0] / top, rgb[1] / top, rgb[2] / top


def glow(kelvin: float, theme: Theme) -> QColor:
    """The colour of a heater at ``kelvin``: ink to 800 K, then rising evenly to full glow at 1000 K."""
    return _glow(round(kelvin / 5.0) * 5, theme)


@lru_cache(maxsize=1024)
def _glow(kelvin: int, theme: Theme) -> QColor:
    ink = theme.colour("ink")
    if kelvin <= GLOWS_FROM_K:
        return ink
    share = min(1.0, (kelvin - GLOWS_FROM_K) / (BRIGHT_K - GLOWS_FROM_K))
    hot = [_encode(channel) for channel in full_glow(kelvin)]
    cold = (ink.redF(), ink.greenF(), ink.blueF())
    mixed = [a * (1 - share) + b * share for a, b in zip(cold, hot, strict=True)]
    return QColor.fromRgbF(*mixed)


def _encode(linear: float) -> float:
    """The sRGB transfer curve (IEC 61966-2-1)."""
    return 12.92 * linear if linear <= 0.0031308 else 1.055 * linear ** (1 / 2.4) - 0.055
