"""Resistivity of tungsten.

Forsythe & Worthing (1925), the constants that the interpolation goes through; Jones & Langmuir, General Electric
Review 30 (1927), Table I, the independent table of the same years; a metal supplier's property page and White &
Minges' polynomial (as given by Tolias, 2017) as a second scale.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy.interpolate import PchipInterpolator

from core.elements.tungsten import TUNGSTEN, resistivity_uohm_cm

KELVIN = np.array([293.15, *range(300, 3700, 100)], dtype=float)
UOHM_CM = np.array(
    [5.49, 5.65, 8.06, 10.56, 13.23, 16.09, 19.00, 21.94, 24.93, 27.94, 30.98, 34.08, 37.19, 40.36, 43.55, 46.78,
     50.05, 53.35, 56.67, 60.06, 63.48, 66.91, 70.39, 73.91, 77.49, 81.04, 84.70, 88.33, 92.04, 95.76, 99.54,
     103.3, 107.2, 111.1, 115.0]
)  # fmt: skip


def test_the_rows_come_back() -> None:
    """The table itself, to rounding."""
    np.testing.assert_allclose(resistivity_uohm_cm(KELVIN), UOHM_CM, rtol=1e-13)


def test_between_the_rows_as_scipy_interpolates() -> None:
    """The same monotone cubic from another hand; the end pieces differ by their end slope and are left out."""
    kelvin = np.linspace(300.0, 3500.0, 3201)
    expected = PchipInterpolator(KELVIN, UOHM_CM)(kelvin)
    np.testing.assert_allclose(resistivity_uohm_cm(kelvin), expected, rtol=1e-13)


def test_the_slope_is_the_derivative() -> None:
    """Central differences over 0.02 K; 1e-4 is their error where the second derivative jumps."""
    kelvin = np.linspace(260.0, 3900.0, 997)
    step = 0.01
    numerical = (TUNGSTEN.ratio(kelvin + step)[0] - TUNGSTEN.ratio(kelvin - step)[0]) / (2 * step)
    np.testing.assert_allclose(TUNGSTEN.ratio(kelvin)[1], numerical, rtol=1e-4)


def test_it_rises_everywhere_also_beyond_the_table() -> None:
    kelvin = np.linspace(173.0, 6000.0, 5000)
    ratio, slope = TUNGSTEN.ratio(kelvin)
    assert (np.diff(ratio) > 0).all()
    assert (slope > 0).all()
    assert (ratio > 0).all()


def test_temperature_is_the_inverse() -> None:
    kelvin = np.linspace(200.0, 4500.0, 2000)
    np.testing.assert_allclose(TUNGSTEN.temperature(TUNGSTEN.ratio(kelvin)[0]), kelvin, rtol=1e-12)


@pytest.mark.parametrize(
    ("kelvin", "uohm_cm"), [(500, 10.5), (1000, 24.3), (2000, 55.7), (3000, 90.4), (3500, 108.5)]
)
def test_a_second_scale(kelvin: float, uohm_cm: float) -> None:
    """Supplier's page (tungsten.com); 3 % is what the two scales differ by at most."""
    assert resistivity_uohm_cm(np.array(kelvin)) == pytest.approx(uohm_cm, rel=0.03)


@pytest.mark.parametrize("kelvin", [300.0, 1000.0, 1300.0, 1500.0, 1600.0, 2000.0])
def test_a_published_polynomial(kelvin: float) -> None:
    """White & Minges; within 3.5 %: at 300 K it is based on purer metal, 5.47 against 5.65."""
    terms = (-0.9680, 1.9274e-2, 7.8260e-6, -1.8517e-9, 2.0790e-13)
    expected = sum(term * kelvin**power for power, term in enumerate(terms))
    assert resistivity_uohm_cm(np.array(kelvin)) == pytest.approx(expected, rel=0.035)


@pytest.mark.parametrize(
    ("kelvin", "ratio"),
    [(1000, 4.54), (1200, 5.64), (1300, 6.21), (1400, 6.77), (1500, 7.35), (1600, 7.93), (2400, 12.82)],
)
def test_hot_over_cold(kelvin: float, ratio: float) -> None:
    """Hand division of the table by its 293 K value, to the figures given.

    Other scales put the cold value at 5.28 to 5.49, so that the ratio itself is only known to 4 %.
    """
    found = float(TUNGSTEN.ratio(np.array(kelvin))[0])
    assert found == pytest.approx(ratio, abs=0.006)
    on_the_other_scale = {1000: 24.3 / 5.5, 2000: 55.7 / 5.5}
    if kelvin in on_the_other_scale:
        assert found == pytest.approx(on_the_other_scale[kelvin], rel=0.04)


@pytest.mark.parametrize(
    ("low", "high", "exponent"), [(800, 1000, 1.217), (1200, 1600, 1.183), (2000, 2400, 1.188)]
)
def test_local_exponent_of_resistance(low: float, high: float, exponent: float) -> None:
    """Logarithmic slopes between rows of the table; 0.002 is what the rounding of its rows leaves open."""
    ends = TUNGSTEN.ratio(np.array([low, high], dtype=float))[0]
    assert np.log(ends[1] / ends[0]) / np.log(high / low) == pytest.approx(exponent, abs=0.002)
