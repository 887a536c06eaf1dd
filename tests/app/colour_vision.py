"""Colours as they are seen, and how far apart: simulation of colour-vision deficiencies, and CIEDE2000.

Simulation: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A physiologically-based model for simulation of
color vision deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009), matrices for
severity 1.0, for linear RGB. Difference: CIE 142-2001; its formula as written out and tested in G. Sharma,
W. Wu, E. N. Dalal, "The CIEDE2000 color-difference formula", Color Research and Application 30 (2005).
sRGB to XYZ: IEC 61966-2-1, white point D65.
"""

from __future__ import annotations

import math

import numpy as np

VISION = {
    "usual": np.eye(3),
    "protanopia": np.array(
        [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]]
    ),
    "deuteranopia": np.array(
        [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]]
    ),
    "tritanopia": np.array(
        [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]]
    ),
}
_XYZ = np.array(
    [
        [0.4124564, 0.3575761, 0.1804375],
        [0.2126729, 0.7151522, 0.0721750],
        [0.0193339, 0.1191920, 0.9503041],
    ]
)
_WHITE = np.array([0.95047, 1.0, 1.08883])

Lab = tuple[float, float, float]


def lab_of(colour: str, vision: str = "usual") -> Lab:
    """CIELAB of a ``#rrggbb`` colour as someone with a kind of colour vision sees it."""
    channels = np.array([int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)])
    linear = np.where(channels <= 0.04045, channels / 12.92, ((channels + 0.055) / 1.055) ** 2.4)
    ratio = _XYZ @ np.clip(VISION[vision] @ linear, 0, 1) / _WHITE
    edge = 6 / 29
    x, y, z = np.where(ratio > edge**3, np.cbrt(ratio), ratio / (3 * edge**2) + 4 / 29)
    return float(116 * y - 16), float(500 * (x - y)), float(200 * (y - z))


def difference(first: Lab, second: Lab) -> float:
    """CIEDE2000 of two colours; about 1 is what can just be told apart side by side."""
    (l1, a1, b1), (l2, a2, b2) = first, second
    mean_c = (math.hypot(a1, b1) + math.hypot(a2, b2)) / 2
    stretch = 1.5 - 0.5 * math.sqrt(mean_c**7 / (mean_c**7 + 25**7))
    c1, c2 = math.hypot(a1 * stretch, b1), math.hypot(a2 * stretch, b2)
    h1, h2 = (math.degrees(math.atan2(b, a * stretch)) % 360 for a, b in ((a1, b1), (a2, b2)))
    turn = (h2 - h1 + 180) % 360 - 180 if c1 * c2 else 0.0
    hue = 2 * math.sqrt(c1 * c2) * math.sin(math.radians(turn) / 2)
    middle = h1 + h2 if c1 * c2 == 0 else (h1 + turn / 2) % 360
    light, chroma = (l1 + l2) / 2, (c1 + c2) / 2
    wave = (
        1
        - 0.17 * math.cos(math.radians(middle - 30))
        + 0.24 * math.cos(math.radians(2 * middle))
        + 0.32 * math.cos(math.radians(3 * middle + 6))
        - 0.20 * math.cos(math.radians(4 * middle - 63))
    )
    by_light = (l2 - l1) / (1 + 0.015 * (light - 50) ** 2 / math.sqrt(20 + (light - 50) ** 2))
    by_chroma = (c2 - c1) / (1 + 0.045 * chroma)
    by_hue = hue / (1 + 0.015 * chroma * wave)
    swing = 30 * math.exp(-(((middle - 275) / 25) ** 2))
    crossed = -2 * math.sqrt(chroma**7 / (chroma**7 + 25**7)) * math.sin(math.radians(2 * swing))
    return math.sqrt(by_light**2 + by_chroma**2 + by_hue**2 + crossed * by_chroma * by_hue)
