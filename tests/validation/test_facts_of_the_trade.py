"""Facts that everybody in the trade knows; common practice, without a page to cite. Each is run as a sheet."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from core.assess import Assessment
from core.sheet import Battery, DcSupply, Resistor, Tube, Winding


def on_battery(volts: float, tube: Tube, solved: Callable[..., Assessment]) -> Assessment:
    return solved([Battery(id="B1", emf_v=volts), tube], "B1.+=V1.4 V1.5=B1.-")


def test_twelve_volt_heater_hot_and_cold(solved: Callable[..., Assessment]) -> None:
    """12.6 V at 0.15 A is 84 ohm hot (exact), and cold "as little as 10 ohm".

    By the default ratio of 7 it is 12 ohm, by the highest in use, 8.5, it is 9.9 ohm: 10 lies in that range.
    """
    answer = on_battery(12.6, Tube(id="V1", type="ECC83"), solved)
    hot, cold = answer.points["nominal"].heaters["V1"], answer.points["cold"].heaters["V1"]
    assert sum(s.v / s.a for s in hot) == pytest.approx(84.0, rel=1e-12)
    assert sum(s.v / s.a for s in cold) == pytest.approx(12.0, rel=0.03)  # at 25 instead of 20 °C
    keen = on_battery(12.6, Tube(id="V1", type="ECC83", cold_ratio=8.5), solved).points["cold"].heaters["V1"]
    assert sum(s.v / s.a for s in keen) <= 10.2


def test_switch_on_current(solved: Callable[..., Assessment]) -> None:
    """From a stiff supply the first current is over six times the rated one, and below nine times."""
    answer = on_battery(6.3, Tube(id="V1", type="EL84"), solved)
    ratio = answer.points["cold"].supplies["B1"].a / answer.points["nominal"].supplies["B1"].a
    assert 6.0 < ratio < 9.0


def test_ten_per_cent_of_six_volts(solved: Callable[..., Assessment]) -> None:
    """5.7 to 6.9 V is within 10 % of 6.3 V, to the rounding of the two figures."""
    for volts, expected in ((5.7, -10.0), (6.9, 10.0)):
        heater = on_battery(volts, Tube(id="V1", type="EL84"), solved).points["nominal"].heaters["V1"][0]
        assert heater.deviation_pct == pytest.approx(expected, abs=0.6)


def test_twelve_volts_will_do(solved: Callable[..., Assessment]) -> None:
    """12 V instead of 12.6 V is about 5 % low, in tolerance, and the cathode is only about 20 K colder."""
    for section in on_battery(12.0, Tube(id="V1", type="ECC83"), solved).points["nominal"].heaters["V1"]:
        assert section.deviation_pct == pytest.approx(-4.8, abs=0.05)
        assert 1050 - 25 < section.cathode_k < 1050 - 15


def test_half_an_ohm(solved: Callable[..., Assessment]) -> None:
    """0.5 ohm that carries 1 A drops 0.5 V and burns 0.5 W; exact."""
    parts = [DcSupply(id="U1", set_v=6.3, limit_a=1.0), Resistor(id="R1", ohm=0.5)]
    branch = solved(parts, "U1.+=R1.1 R1.2=U1.-").points["nominal"].branches["R1"]
    assert (branch.v, branch.w) == pytest.approx((0.5, 0.5), rel=1e-9)


def test_heaters_of_a_small_amplifier(solved: Callable[..., Assessment]) -> None:
    """Two small double triodes and an output pentode or two take about 10 W: 8 to 14 W."""
    tubes = [Tube(id="V1", type="ECC83"), Tube(id="V2", type="EL84"), Tube(id="V3", type="EL84")]
    parts = [Winding(id="T1", rated_v=6.3, rated_a=2.0), *tubes]
    straps = "T1.a=V1.4 V1.4=V1.5 T1.b=V1.9 T1.a=V2.4 T1.b=V2.5 T1.a=V3.4 T1.b=V3.5"
    point = solved(parts, straps).points["nominal"]
    assert 8.0 < sum(s.w for sections in point.heaters.values() for s in sections) < 14.0


def test_ten_per_cent_is_about_forty_kelvin(solved: Callable[..., Assessment]) -> None:
    """10 % in heater volts moves an oxide cathode by 30 to 45 K."""
    for volts in (6.3 * 0.9, 6.3 * 1.1):
        heater = on_battery(volts, Tube(id="V1", type="EL84"), solved).points["nominal"].heaters["V1"][0]
        assert 30 < abs(heater.cathode_k - 1050.0) < 45


def test_five_per_cent_volts_three_per_cent_amperes(solved: Callable[..., Assessment]) -> None:
    """A maker's note: 5 % more volts, about 3 % more current (exponent 0.6; 0.5 to 0.64 published)."""
    heater = on_battery(6.3 * 1.05, Tube(id="V1", type="EL84"), solved).points["nominal"].heaters["V1"][0]
    assert heater.deviation_a_pct == pytest.approx(3.0, abs=0.5)
