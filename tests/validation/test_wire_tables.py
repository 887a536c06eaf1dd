"""Copper wire against published tables.

AWG: ohms per 1000 ft of solid copper at 20 °C, Handbook of Electronic Tables and Formulas; diameters by
ASTM B258. Metric: IEC 60228 class 5 plain, and the small sizes of DIN VDE 0295.
Temperature: IEC 60028, 0.00393 per kelvin at 20 °C.
"""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.catalogue import wire

METRES_PER_KFT = 304.8


@pytest.mark.parametrize(
    ("awg", "diameter_mm", "area_mm2"),
    [(10, 2.588, 5.261), (14, 1.628, 2.081), (18, 1.024, 0.8230), (22, 0.6438, 0.3255), (30, 0.2546, 0.0509)],
)
def test_awg_sizes(awg: int, diameter_mm: float, area_mm2: float) -> None:
    """ASTM B258 table; within 0.1 %, the rounding of four printed figures."""
    assert wire.awg_diameter_mm(awg) == pytest.approx(diameter_mm, rel=1e-3)
    assert wire.awg_area_mm2(awg) == pytest.approx(area_mm2, rel=1e-3)


def test_awg_is_exact_where_the_scale_is_defined() -> None:
    """ASTM B258: gauge 36 is 0.005 in, gauge 0000 (−3) is 0.46 in."""
    assert wire.awg_diameter_mm(36) == pytest.approx(0.005 * 25.4, rel=1e-12)
    assert wire.awg_diameter_mm(-3) == pytest.approx(0.46 * 25.4, rel=1e-12)


@pytest.mark.parametrize(
    ("awg", "ohm_per_kft"),
    [(10, 0.9989), (12, 1.588), (16, 4.016), (18, 6.385), (20, 10.15), (22, 16.14), (24, 25.67), (26, 40.81)],
)
def test_awg_resistance(awg: int, ohm_per_kft: float) -> None:
    """Published ohms per 1000 ft; within 0.1 %, which covers their rounding to four figures."""
    assert wire.awg_ohm_per_m(awg) * METRES_PER_KFT == pytest.approx(ohm_per_kft, rel=1e-3)


@pytest.mark.parametrize(
    ("area_mm2", "ohm_per_km"),
    [
        *((0.14, 134), (0.22, 96), (0.25, 76), (0.34, 53)),
        *((0.5, 39.0), (0.75, 26.0), (1.0, 19.5), (1.5, 13.3), (2.5, 7.98), (4.0, 4.95), (6.0, 3.30)),
    ],
)
def test_tabulated_metric_sizes_are_exact(area_mm2: float, ohm_per_km: float) -> None:
    """IEC 60228 class 5 plain; DIN VDE 0295 below 0.5 mm²."""
    assert wire.iec60228_ohm_per_m(area_mm2) == ohm_per_km / 1000


def test_between_and_beyond_the_metric_sizes() -> None:
    middle = math.sqrt(0.5 * 0.75)
    assert wire.iec60228_ohm_per_m(middle) == pytest.approx(math.sqrt(39.0 * 26.0) / 1000)
    assert wire.iec60228_ohm_per_m(10.0) == pytest.approx(3.30e-3 * 6.0 / 10.0)
    assert wire.iec60228_ohm_per_m(0.05) == pytest.approx(0.134 * 0.14 / 0.05)


@given(st.floats(0.01, 50.0), st.floats(1.001, 3.0))
def test_a_thicker_wire_never_has_more_ohms_nor_a_lower_limit(area_mm2: float, factor: float) -> None:
    assert wire.iec60228_ohm_per_m(area_mm2 * factor) < wire.iec60228_ohm_per_m(area_mm2)
    assert wire.chassis_limit_a(area_mm2=area_mm2 * factor) > wire.chassis_limit_a(area_mm2=area_mm2)


@pytest.mark.parametrize(
    ("temp_c", "factor"), [(20.0, 1.0), (50.0, 1.1179), (70.0, 1.1965), (75.0, 1.2162), (90.0, 1.2751)]
)
def test_copper_warms(temp_c: float, factor: float) -> None:
    """1 + 0.00393 (t − 20), to the four decimals of the table."""
    cold = wire.ohm_per_m(awg=20)
    assert wire.ohm_per_m(awg=20, temp_c=temp_c) / cold == pytest.approx(factor, abs=6e-5)


@pytest.mark.parametrize(
    ("awg", "area_mm2", "volts"),
    [
        *((18, None, 0.1257), (20, None, 0.1998), (22, None, 0.3178), (24, None, 0.5053)),
        *((None, 0.5, 0.2340), (None, 0.75, 0.1560), (None, 1.0, 0.1170), (None, 2.5, 0.0479)),
    ],
)
def test_drop_of_a_metre_out_and_back_at_three_amps(
    awg: int | None, area_mm2: float | None, volts: float
) -> None:
    """Hand calculation from the two tables: 3 A through 2 m at 20 °C, to its four decimals."""
    assert 3.0 * 2.0 * wire.ohm_per_m(awg=awg, area_mm2=area_mm2) == pytest.approx(volts, abs=6e-5)


@pytest.mark.parametrize(("awg", "amps"), [(10, 55), (18, 16), (20, 11), (22, 7), (24, 3.5), (30, 0.86)])
def test_chassis_column(awg: int, amps: float) -> None:
    """Handbook of Electronic Tables and Formulas, chassis wiring, single wire in free air."""
    assert wire.chassis_limit_a(awg=awg) == pytest.approx(amps)


def test_chassis_limit_between_sizes() -> None:
    """The same handbook prints 14 A for gauge 19 and 9 A for 21; a smooth curve must come near."""
    assert wire.chassis_limit_a(awg=19) == pytest.approx(14, rel=0.06)
    assert wire.chassis_limit_a(awg=21) == pytest.approx(9, rel=0.06)
    assert 7.0 < wire.chassis_limit_a(area_mm2=0.5) < 11.0


@pytest.mark.parametrize("function", [wire.ohm_per_m, wire.chassis_limit_a])
def test_exactly_one_size_is_wanted(function: object) -> None:
    assert callable(function)
    for sizes in ({}, {"awg": 20, "area_mm2": 0.5}, {"area_mm2": 0.0}, {"area_mm2": -1.0}):
        with pytest.raises(ValueError, match=r"awg or area_mm2|above zero"):
            function(**sizes)
