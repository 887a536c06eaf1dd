"""Shunts, droppers and lifts of the mends against a computation of their own.

The heaters are computed here from the published power law of heater currents, I ~ V^n with n = 0.54 near the
rating (the solver's own law comes out there; published figures are 0.49 to 0.64), and the networks by root finding
with scipy. Tolerances: half the step of the E24 series (5 %) for the resistors, and 1 % of the rated volts for what
heaters get, which is what the power law is off within 10 % of the rating.
"""

from __future__ import annotations

import math

import pytest
from scipy.optimize import brentq

from core.mending import edit_of
from core.remedy import Across, InSeries, Lift
from core.results import Finding
from core.sheet import Elevation, Resistor, Sheet
from tests.core.mending_sheets import SHEETS
from tests.core.rule_sheets import assessed

EXPONENT = 0.54
HALF_STEP = 0.05


def first(name: str) -> tuple[Sheet, Finding]:
    rule, title, one = SHEETS[name]
    found = [f for f in assessed(one).findings if f.rule == rule]
    titles = [[str(r.title).replace("\u2009", " ") for r in f.remedies] for f in found]
    return one, next(f for f, offered in zip(found, titles, strict=True) if title in offered)


def mended(one: Sheet, finding: Finding) -> Sheet:
    return edit_of(finding.remedies[0])(one)


def heater_a(v: float, rated_v: float, rated_a: float) -> float:
    return float(rated_a * (v / rated_v) ** EXPONENT)


def test_a_shunt_takes_what_the_other_heater_wants_more() -> None:
    """12.6 V 0.15 A beside 12.6 V 0.3 A: the shunt carries 0.15 A at 12.6 V, 84 Ω, and 1.9 W."""
    one, finding = first("unbalanced")
    (step,) = finding.remedies[0].steps
    assert isinstance(step, Across)
    assert step.ohm == pytest.approx(12.6 / (0.3 - 0.15), rel=HALF_STEP)
    assert step.rated_w >= 2 * 12.6**2 / step.ohm
    # the string by itself: both in series on 25.2 V, the shunt across the first
    v = brentq(lambda v: heater_a(v, 12.6, 0.15) + v / step.ohm - heater_a(25.2 - v, 12.6, 0.3), 1.0, 24.0)
    at_work = assessed(mended(one, finding)).points["nominal"].heaters
    assert at_work["V1"][0].v == pytest.approx(v, abs=0.01 * 12.6)
    assert at_work["V2"][0].v == pytest.approx(25.2 - v, abs=0.01 * 12.6)
    assert v == pytest.approx(12.6, rel=0.06)


def test_a_resistor_in_each_leg_leaves_the_rated_volts() -> None:
    """8 V and an EL84 of 6.3 V 0.76 A: 1.7 V at 0.76 A are shared by two resistors of 1.12 Ω."""
    one, finding = first("resistor in each leg")
    steps = finding.remedies[0].steps
    assert [type(step) for step in steps] == [InSeries, InSeries]
    ohm = dict(steps[0].fields)["ohm"]  # type: ignore[union-attr]
    assert ohm == pytest.approx((8.0 - 6.3) / 2 / 0.76, rel=HALF_STEP)
    v = brentq(lambda v: v + 2 * ohm * heater_a(v, 6.3, 0.76) - 8.0, 1.0, 8.0)
    # 0.1 m of AWG 20 in each leg drop five millivolts
    assert assessed(mended(one, finding)).points["nominal"].heaters["V1"][0].v == pytest.approx(v, abs=0.063)


def test_a_dropper_is_changed_by_what_the_string_wants() -> None:
    """63 V 0.1 A from 230 V: 1670 Ω, of which 1.6 kΩ is the nearest that is sold."""
    one, finding = first("dropper of a mains string")
    after = mended(one, finding).part_by_id["R1"]
    assert isinstance(after, Resistor) and after.rated_w is not None
    assert after.ohm == pytest.approx((230.0 - 63.0) / 0.1, rel=HALF_STEP)
    v = brentq(lambda v: v + after.ohm * heater_a(v, 63.0, 0.1) - 230.0, 1.0, 200.0)
    assert assessed(mended(one, finding)).points["nominal"].heaters["V1"][0].v == pytest.approx(v, abs=0.63)
    assert after.rated_w >= 2 * heater_a(v, 63.0, 0.1) ** 2 * after.ohm


def test_the_string_current_comes_back() -> None:
    """12.6 V and 32 V, both 0.3 A, from 63 V: 18.4 V at 0.3 A are 61 Ω."""
    one, finding = first("string current")
    after = mended(one, finding).part_by_id["R1"]
    assert isinstance(after, Resistor)
    assert after.ohm == pytest.approx((63.0 - 12.6 - 32.0) / 0.3, rel=HALF_STEP)
    a = brentq(
        lambda a: (12.6 + 32.0) * (a / 0.3) ** (1 / EXPONENT) + after.ohm * a - 63.0,
        0.05,
        1.0,
    )
    section = assessed(mended(one, finding)).points["nominal"].heaters["V1"][0]
    assert section.a == pytest.approx(a, rel=0.01)


def test_a_lift_is_the_middle_of_what_every_pin_allows() -> None:
    """Heater between 6.3 V rms and 0 about a lift L, cathode at 100 V, 50 V allowed either way.

    The pin on the lift stands at L and the other at L with a peak of 8.9 V: L + 8.9 - 100 <= 50 and
    100 - L + 8.9 <= 50, so L lies between 58.9 V and 141.1 V, and 100 V is its middle.
    """
    one, finding = first("cathode far above")
    (step,) = finding.remedies[0].steps
    assert isinstance(step, Lift)
    peak = 6.3 * math.sqrt(2)
    low, high = 100.0 - (50.0 - peak), 100.0 + (50.0 - peak)
    assert step.volts == pytest.approx((low + high) / 2, abs=0.5)
    for volts, is_within in ((low - 1, False), (low + 1, True), (high - 1, True), (high + 1, False)):
        lifted = mended(one, finding)
        parts = tuple(
            Elevation(id=part.id, volts=volts, at=part.at) if isinstance(part, Elevation) else part
            for part in lifted.parts
        )
        tried = Sheet(parts=parts, wires=lifted.wires, mains=lifted.mains, types=lifted.types)
        assert ("heater-cathode-voltage" not in {f.rule for f in assessed(tried).findings}) is is_within


def test_a_bleeder_takes_the_rest_of_the_minimum_load() -> None:
    """A supply of 6.3 V that wants 1 A and feeds 0.76 A: 0.24 A at 6.3 V are 26.25 Ω, so 24 Ω and 1.65 W."""
    _, finding = first("below the minimum load")
    (step,) = finding.remedies[0].steps
    assert isinstance(step, Across)
    assert step.ohm <= 6.3 / (1.0 - 0.76) and 6.3 / step.ohm + 0.76 >= 1.0
    assert step.rated_w >= 2 * 6.3**2 / step.ohm
