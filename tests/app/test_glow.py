"""The colour of heat against published chromaticities."""

from __future__ import annotations

import itertools

import pytest
from PySide6.QtGui import QColor

from app.canvas.symbols.glow import chromaticity, full_glow, glow
from app.theme import DARK, LIGHT, Theme


def test_illuminant_a():
    # CIE 15, illuminant A: x 0.4476, y 0.4074. The fit of the matching functions is good to a few
    # thousandths; the temperature of 2856 K is exact for the present value of the second radiation constant.
    assert chromaticity(2856.0) == pytest.approx((0.4476, 0.4074), abs=0.003)


def test_a_hotter_body_is_less_red():
    # Planckian locus at 2000 K and 6500 K: x 0.5267 and 0.3135 (Wyszecki and Stiles, Color Science, 1982)
    assert chromaticity(2000.0)[0] == pytest.approx(0.5267, abs=0.004)
    assert chromaticity(6500.0)[0] == pytest.approx(0.3135, abs=0.004)


def test_hue_and_lightness_rise_with_temperature():
    colours = [QColor.fromRgbF(*full_glow(kelvin)) for kelvin in range(850, 3001, 50)]
    hues = [colour.hueF() for colour in colours]
    assert hues == sorted(hues)
    assert hues[0] < hues[-1] < 1 / 6
    greens = [colour.greenF() for colour in colours]
    assert greens == sorted(greens)


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
def test_cold_is_ink_and_the_change_has_no_jump(theme: Theme):
    assert glow(298.15, theme) == theme.colour("ink")
    assert glow(800.0, theme) == theme.colour("ink")
    colours = [glow(kelvin, theme) for kelvin in range(790, 1101, 5)]
    for one, other in itertools.pairwise(colours):
        step = max(abs(a - b) for a, b in zip(one.getRgbF()[:3], other.getRgbF()[:3], strict=True))
        assert step < 0.06


def test_a_heater_at_its_rating_is_orange():
    colour = glow(1440.0, LIGHT)
    assert colour.redF() == pytest.approx(1.0)
    assert 0.25 < colour.greenF() < 0.6
    assert colour.blueF() < 0.1
