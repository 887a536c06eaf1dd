"""The heater law: exact at its rating, cold at ambient, monotone, one law for arrays of any shape."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.elements.heater import (
    CATHODE_K,
    MIN_WORKING_K,
    HeaterLaw,
    cathode_k,
    heater_k,
    heater_law,
    resistance_at,
    steady_resistance,
)
from core.elements.tungsten import TUNGSTEN

AMBIENT_K = 298.15


def law(volts: float = 6.3, amps: float = 0.3, ratio: float = 7.0, *, cathode: bool = True) -> HeaterLaw:
    return heater_law(np.array([volts]), np.array([amps]), np.array([ratio]), np.array([cathode]), AMBIENT_K)


RATIOS = st.floats(1.05, 15.0)
VOLTS = st.floats(0.1, 300.0)
AMPS = st.floats(0.01, 20.0)


@given(VOLTS, AMPS, RATIOS, st.booleans())
def test_rated_power_is_rated_volts_and_amperes(
    volts: float, amps: float, ratio: float, cathode: bool
) -> None:
    """Whatever the ratio, alloy or tungsten: at rated power R is V/I, to rounding."""
    one = law(volts, amps, ratio, cathode=cathode)
    ohm, _ = steady_resistance(one, one.rated_w)
    assert ohm[0] == pytest.approx(volts / amps, rel=1e-9)


@given(VOLTS, AMPS, RATIOS)
def test_cold_is_the_hot_resistance_over_the_ratio(volts: float, amps: float, ratio: float) -> None:
    cold = resistance_at(law(volts, amps, ratio), np.array([293.15]))[0]
    assert cold == pytest.approx(volts / amps / ratio, rel=1e-12)


def test_without_power_everything_is_at_ambient() -> None:
    nothing = np.zeros(1)
    assert heater_k(law(), nothing)[0] == pytest.approx(AMBIENT_K, rel=1e-12)
    assert cathode_k(law(), nothing)[0] == pytest.approx(AMBIENT_K, rel=1e-12)


def test_temperatures_at_rating() -> None:
    """The heater where tungsten has the ratio, the cathode at 1050 K; a filament is its own cathode."""
    one = law()
    assert TUNGSTEN.ratio(heater_k(one, one.rated_w))[0][0] == pytest.approx(7.0, rel=1e-12)
    assert cathode_k(one, one.rated_w)[0] == pytest.approx(CATHODE_K, rel=1e-12)
    filament = law(cathode=False)
    assert cathode_k(filament, filament.rated_w)[0] == heater_k(filament, filament.rated_w)[0]


@pytest.mark.parametrize("ratio", [1.05, 2.7, 4.0, 4.85])
def test_a_heater_of_low_ratio_is_still_hotter_than_its_cathode(ratio: float) -> None:
    one = law(ratio=ratio)
    assert heater_k(one, one.rated_w)[0] == pytest.approx(MIN_WORKING_K)
    for share in (0.1, 0.5, 1.0, 1.5):
        assert heater_k(one, share * one.rated_w)[0] > cathode_k(one, share * one.rated_w)[0]


@given(RATIOS, st.floats(1e-6, 20.0), st.floats(1.001, 3.0))
def test_resistance_rises_with_power_but_slower(ratio: float, share: float, factor: float) -> None:
    """Volts and amperes both rise with power: the steady state of any network of heaters is then unique."""
    one = law(ratio=ratio)
    less, more = (steady_resistance(one, share * f * one.rated_w)[0][0] for f in (1.0, factor))
    assert less < more < less * factor


@given(RATIOS, st.floats(1e-4, 10.0))
def test_elasticity_is_the_logarithmic_derivative(ratio: float, share: float) -> None:
    """Central differences over 2e-6; 1e-4 covers the jumps of the curve's second derivative."""
    one = law(ratio=ratio)
    step = 1e-6
    low, high = (steady_resistance(one, share * one.rated_w * np.exp(s))[0][0] for s in (-step, step))
    found = steady_resistance(one, share * one.rated_w)[1][0]
    assert 0 <= found < 1
    assert found == pytest.approx(np.log(high / low) / (2 * step), abs=1e-4)


def test_current_exponent_near_rating() -> None:
    """I ~ V^n: 0.54 is what radiation and tungsten give; 0.49 to 0.64 is published."""
    one = law()
    watts = np.array([0.9, 1.1])[:, None] * one.rated_w
    ohm = steady_resistance(one, watts)[0]
    volts, amps = np.sqrt(watts * ohm)[:, 0], np.sqrt(watts / ohm)[:, 0]
    assert np.log(amps[1] / amps[0]) / np.log(volts[1] / volts[0]) == pytest.approx(0.54, abs=0.01)


def test_arrays_give_what_single_heaters_give() -> None:
    """Shape (items, heaters): the same figures element by element, and ``take`` picks heaters."""
    volts, amps, ratio = np.array([6.3, 12.6, 35.0]), np.array([0.3, 0.15, 0.15]), np.array([4.0, 7.0, 8.5])
    many = heater_law(volts, amps, ratio, np.array([True, False, True]), AMBIENT_K)
    watts = np.array([[0.5], [1.0], [1.2]]) * many.rated_w
    together = steady_resistance(many, watts)
    for at in range(3):
        alone = steady_resistance(many.take(np.array([at])), watts[:, [at]])
        np.testing.assert_array_equal(together[0][:, at], alone[0][:, 0])
        np.testing.assert_array_equal(together[1][:, at], alone[1][:, 0])


def test_a_warm_room_changes_the_cold_end_only() -> None:
    """At 60 °C the rating still holds exactly and the switch-on resistance is higher."""
    warm = heater_law(np.array([6.3]), np.array([0.3]), np.array([7.0]), np.array([True]), 333.15)
    assert steady_resistance(warm, warm.rated_w)[0][0] == pytest.approx(21.0, rel=1e-12)
    assert steady_resistance(warm, np.zeros(1))[0][0] > 1.1 * steady_resistance(law(), np.zeros(1))[0][0]
