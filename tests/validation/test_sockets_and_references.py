"""Straps on a socket, and what ties a heater circuit to the chassis; each run as a sheet through the whole program.

Pin assignments of the 9A and 9AJ bases (a designer's book site; a board manual of 2008); frihu.com on balance
resistors; an amplifier builders' forum (el34world.com, thread 17745) on heater-cathode stress; next.gr (2014) on a
melted hum control. Watts and volts are hand calculations from those circuits.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from core.assess import Assessment
from core.sheet import Balance, Battery, Chassis, Elevation, Resistor, Tube, Winding


class TestStraps:
    """ECC83 (9A: sections 4-9 and 9-5) and 6DJ8 (9AJ: 4-5). The figures are for exponent 0.60, ours is 0.54.

    At half and at double volts that is 2^0.06, 4.3 % in current and in power, hence 4.5 %.
    """

    def run(
        self, volts: float, straps: str, solved: Callable[..., Assessment], tube: str = "ECC83"
    ) -> Assessment:
        return solved([Battery(id="B1", emf_v=volts), Tube(id="V1", type=tube)], straps)

    def test_six_volts_on_the_ends(self, solved: Callable[..., Assessment]) -> None:
        """6.3 V on 4 and 5, 9 open: 3.15 V, 0.0990 A and a third of the power in each section."""
        answer = self.run(6.3, "B1.+=V1.4 V1.5=B1.-", solved)
        for section in answer.points["nominal"].heaters["V1"]:
            assert section.v == pytest.approx(3.15, rel=1e-12)
            assert section.a == pytest.approx(0.0990, rel=0.045)
            assert section.w / 0.945 == pytest.approx(0.33, rel=0.045)
        assert answer.strings == (("V1:4-9", "V1:9-5"),)

    def test_six_volts_on_one_half(self, solved: Callable[..., Assessment]) -> None:
        """6.3 V on 4 and 9 only: one section right, the other dark."""
        lit, dark = self.run(6.3, "B1.+=V1.4 V1.9=B1.-", solved).points["nominal"].heaters["V1"]
        assert (lit.v, lit.a) == pytest.approx((6.3, 0.15), rel=1e-12)
        assert (dark.v, dark.a) == pytest.approx((0.0, 0.0), abs=1e-12)
        assert dark.heater_k == pytest.approx(298.15, abs=1e-6)

    def test_twelve_volts_on_paralleled_sections(self, solved: Callable[..., Assessment]) -> None:
        """12.6 V on 4+5 and 9: 0.455 A in all, 3.03 times the power."""
        answer = self.run(12.6, "B1.+=V1.4 V1.4=V1.5 V1.9=B1.-", solved)
        sections = answer.points["nominal"].heaters["V1"]
        assert sum(s.a for s in sections) == pytest.approx(0.455, rel=0.045)
        assert sum(s.w for s in sections) / 1.89 == pytest.approx(3.03, rel=0.045)
        assert answer.strings == ()

    def test_6dj8_in_a_9a_socket(self, solved: Callable[..., Assessment]) -> None:
        """Wired for 4+5 and 9: its heater is shorted by the strap and its screen, pin 9, is on the heater line."""
        answer = self.run(6.3, "B1.+=V1.4 V1.4=V1.5 V1.9=B1.-", solved, "6DJ8")
        heater = answer.points["nominal"].heaters["V1"][0]
        assert (heater.v, heater.a) == (0.0, 0.0)
        nodes = answer.points["nominal"].nodes
        assert nodes["V1.9"] == nodes["B1.-"]

    def test_9a_tube_in_a_9aj_socket(self, solved: Callable[..., Assessment]) -> None:
        """6.3 V on 4 and 5 is a third of the power."""
        sections = self.run(6.3, "B1.+=V1.4 V1.5=B1.-", solved).points["nominal"].heaters["V1"]
        assert sum(s.w for s in sections) / 1.89 == pytest.approx(0.33, rel=0.045)


@pytest.mark.parametrize(
    ("volts", "ohm", "watts"),
    [(6.3, 100.0, 0.0992), (6.3, 47.0, 0.211), (12.6, 100.0, 0.397), (25.2, 100.0, 1.59), (5.0, 22.0, 0.284)],
)
def test_reference_pair(volts: float, ohm: float, watts: float, solved: Callable[..., Assessment]) -> None:
    """Watts in each of two resistors across the winding with their middle on the chassis; to the figures given."""
    parts = [
        Winding(id="T1", rated_v=volts, rated_a=1.0, regulation_pct=0.0),
        Resistor(id="R1", ohm=ohm),
        Resistor(id="R2", ohm=ohm),
        Chassis(id="E1"),
    ]
    point = solved(parts, "T1.a=R1.1 R1.2=E1.e E1.e=R2.1 R2.2=T1.b").points["nominal"]
    for name in ("R1", "R2"):
        assert point.branches[name].w == pytest.approx(watts, rel=3e-3)
    assert point.nodes["T1.a"] == pytest.approx(volts / 2, rel=1e-12)
    assert point.nodes["T1.b"] == pytest.approx(-volts / 2, rel=1e-12)


def test_hum_control_across_four_heaters(solved: Callable[..., Assessment]) -> None:
    """4 x 6.3 V in series with a 1 kilohm control, its wiper on the chassis: 0.635 W; exact."""
    tubes = [Tube(id=f"V{n}", type="EL34") for n in range(4)]
    parts = [Battery(id="B1", emf_v=25.2), *tubes, Balance(id="P1", ohm=1000.0), Chassis(id="E1")]
    straps = "B1.+=V0.2 V0.7=V1.2 V1.7=V2.2 V2.7=V3.2 V3.7=B1.- P1.1=B1.+ P1.2=B1.- P1.w=E1.e"
    point = solved(parts, straps).points["nominal"]
    assert sum(b.w for key, b in point.branches.items() if key.startswith("P1")) == pytest.approx(
        0.635, abs=5e-4
    )
    assert point.bias["B1.+"] == pytest.approx(12.6, rel=1e-12)
    assert point.bias["V1.7"] == pytest.approx(0.0, abs=1e-12)


@pytest.mark.parametrize(
    ("bias", "mains", "peak"), [(0.0, 1.0, 719.8), (280.0, 1.0, 439.8), (280.0, 1.1, 483.8)]
)
def test_rectifier_on_a_lifted_winding(
    bias: float, mains: float, peak: float, solved: Callable[..., Assessment]
) -> None:
    """6X5 with its cathode at +280 V and 311 V rms on each side: 719.8 V peak to a grounded heater, 439.8 V to one
    tied to 280 V (printed 715 and 435 V), 483.8 V at 10 % more mains. Here the DC part: what the heater pins stand at.
    """
    tie = Elevation(id="L1", volts=bias) if bias else Chassis(id="E1")
    parts = [Winding(id="T1", rated_v=6.3, rated_a=1.0, centre_tap=True), Tube(id="V1", type="6X5"), tie]
    straps = f"T1.a=V1.2 T1.b=V1.7 T1.ct={'L1' if bias else 'E1'}.e"
    pins = solved(parts, straps).points["nominal"].bias
    for pin in ("V1.2", "V1.7"):
        assert pins[pin] == pytest.approx(bias, abs=1e-6)
        assert (280.0 - pins[pin]) + 311.0 * math.sqrt(2) * mains == pytest.approx(peak, abs=1.0)


def test_lift_between_two_cathodes(solved: Callable[..., Assessment]) -> None:
    """Cathodes at 2 and 200 V: lifted by 101 V, each is 99 V from its heater; exact."""
    parts = [
        Winding(id="T1", rated_v=6.3, rated_a=1.0),
        Tube(id="V1", type="ECC83", cathode_v=2.0),
        Tube(id="V2", type="ECC83", cathode_v=200.0),
        Elevation(id="L1", volts=101.0),
    ]
    straps = "T1.a=V1.4 V1.4=V1.5 T1.b=V1.9 T1.a=V2.4 V2.4=V2.5 T1.b=V2.9 T1.b=L1.e"
    pins = solved(parts, straps).points["nominal"].bias
    assert pins["V1.4"] - 2.0 == pytest.approx(99.0, abs=1e-6)
    assert 200.0 - pins["V2.9"] == pytest.approx(99.0, abs=1e-6)
