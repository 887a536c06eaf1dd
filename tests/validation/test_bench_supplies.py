"""Heater supplies of amplifiers and test benches, each run as a sheet through the whole program.

A web journal on tube circuits, July 2000, p. 8 (one socket for 6SN7, 12SN7 and 8SN7); a designer's page (total of
parallel heaters); nebulan.net (wire drop); a builder's blog, April 2013 (a 12 V 3 A switching supply and its boards);
mixonline.com, Tech's Files (a 7812 and four 12.6 V tubes). Watts and volts without a source are hand calculations.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from core.assess import Assessment
from core.sheet import Battery, DcSupply, Resistor, Tube, Wire


class TestOneSocketForThreeTubes:
    """18.9 V through 21 ohm into an octal socket."""

    def run(self, tube_type: str, solved: Callable[..., Assessment]) -> Assessment:
        parts = [Battery(id="B1", emf_v=18.9), Resistor(id="R1", ohm=21.0), Tube(id="V1", type=tube_type)]
        return solved(parts, "B1.+=R1.1 R1.2=V1.7 V1.8=B1.-")

    def test_6sn7(self, solved: Callable[..., Assessment]) -> None:
        """6.3 V; the resistor takes 7.56 W, printed as 7.5 W."""
        point = self.run("6SN7", solved).points["nominal"]
        assert point.heaters["V1"][0].v == pytest.approx(6.3, rel=1e-12)
        assert point.branches["R1"].w == pytest.approx(7.56, rel=1e-12)

    def test_12sn7_and_a_printed_mistake(self, solved: Callable[..., Assessment]) -> None:
        """12.6 V; 0.3 A squared times 21 ohm is 1.89 W. The 3.75 W in print is wrong (half of the 7.5 W)."""
        point = self.run("12SN7", solved).points["nominal"]
        assert point.heaters["V1"][0].v == pytest.approx(12.6, rel=1e-12)
        assert point.branches["R1"].w == pytest.approx(1.89, rel=1e-12)
        assert point.branches["R1"].w < 0.6 * 3.75

    def test_8sn7(self, solved: Callable[..., Assessment]) -> None:
        """Printed: 476 mA, 10 V dropped, 8.9 V, with the heater as a resistor.

        A heater takes less more current than its volts rise: 9.08 V and 0.468 A with exponent 0.5, 9.03 V and 0.470 A
        with 0.6. Ours must lie between those two, and within 2 % of the print.
        """
        heater = self.run("8SN7", solved).points["nominal"].heaters["V1"][0]
        assert 9.031 < heater.v < 9.08
        assert 0.468 < heater.a < 0.46997
        assert heater.v == pytest.approx(8.9, rel=0.02)
        assert heater.a == pytest.approx(0.476, rel=0.02)


def test_three_small_tubes_and_a_pair(solved: Callable[..., Assessment]) -> None:
    """3 x ECC83 take 0.9 A at 6.3 V, with a pair of EL34 3.9 A: exact."""
    small = [Tube(id=f"V{n}", type="ECC83") for n in (1, 2, 3)]
    straps = " ".join(f"B1.+=V{n}.4 V{n}.4=V{n}.5 V{n}.9=B1.-" for n in (1, 2, 3))
    answer = solved([Battery(id="B1", emf_v=6.3), *small], straps)
    assert answer.points["nominal"].supplies["B1"].a == pytest.approx(0.9, rel=1e-12)
    pair = [Tube(id=f"V{n}", type="EL34") for n in (4, 5)]
    straps += " B1.+=V4.2 V4.7=B1.- B1.+=V5.2 V5.7=B1.-"
    answer = solved([Battery(id="B1", emf_v=6.3), *small, *pair], straps)
    assert answer.points["nominal"].supplies["B1"].a == pytest.approx(3.9, rel=1e-12)
    assert answer.strings == ()


def test_long_pair_of_wires(solved: Callable[..., Assessment]) -> None:
    """A pair of gauge 18, 350 ft, 1 A: printed 4.445 V from a rounded 1.27 V a 100 ft; 4.470 V by the wire table."""
    feet = 350 * 0.3048
    parts = [DcSupply(id="U1", set_v=50.0, limit_a=1.0), Resistor(id="R1", ohm=5.0)]
    wires = (
        Wire(id="out", start="U1.+", end="R1.1", awg=18, length_m=feet),
        Wire(id="back", start="R1.2", end="U1.-", awg=18, length_m=feet),
    )
    point = solved(parts, "", wires=wires, ambient_c=20.0).points["nominal"]
    drop = point.branches["out"].v + point.branches["back"].v
    assert drop == pytest.approx(4.470, rel=1e-3)
    assert drop == pytest.approx(4.445, rel=0.01)


def test_pin_contact(solved: Callable[..., Assessment]) -> None:
    """6.3 V at the lug, a 0.9 A tube, 0.05 to 1 ohm in the contact: volts at the heater and heat in the pin.

    The figures are for exponent 0.60. At 1 ohm ours of 0.54 takes 0.8 % more current: 0.2 % in volts and 1.8 % in heat.
    """
    rows = (
        (0.05, 6.255, 0.040),
        (0.1, 6.211, 0.080),
        (0.25, 6.080, 0.194),
        (0.5, 5.869, 0.372),
        (1.0, 5.473, 0.684),
    )
    for ohm, volts, watts in rows:
        parts = [
            Battery(id="B1", emf_v=6.3),
            Resistor(id="R1", ohm=ohm),
            Tube(id="V1", type="EL34", rated_a=0.9),
        ]
        point = solved(parts, "B1.+=R1.1 R1.2=V1.2 V1.7=B1.-").points["nominal"]
        assert point.heaters["V1"][0].v == pytest.approx(volts, rel=2e-3)
        assert point.branches["R1"].w == pytest.approx(watts, rel=0.02)


class TestSwitchingSupplyAndBoards:
    """12 V 3 A; boards of 0.52 A, hot over cold resistance 5.33: four started, the fifth did not."""

    def run(self, boards: int, solved: Callable[..., Assessment]) -> Assessment:
        tubes = [
            Tube(id=f"V{n}", type="12SN7", rated_v=12.0, rated_a=0.52, cold_ratio=5.33) for n in range(boards)
        ]
        straps = " ".join(f"U1.+=V{n}.7 V{n}.8=U1.-" for n in range(boards))
        supply = DcSupply(id="U1", set_v=12.0, limit_a=3.0, overload="hiccup")
        return solved([supply, *tubes], straps, ambient_c=20.0)

    @pytest.mark.parametrize(("boards", "cold_a", "margin"), [(4, 11.1, 1.44), (5, 13.9, 1.15)])
    def test_demand(
        self, boards: int, cold_a: float, margin: float, solved: Callable[..., Assessment]
    ) -> None:
        """Cold demand 11.1 and 13.9 A, rating over running current 1.44 and 1.15, to the figures given."""
        answer = self.run(boards, solved)
        cold = answer.points["cold"].supplies["U1"]
        assert cold.limiting
        assert cold.demand_a == pytest.approx(cold_a, abs=0.05)
        assert cold.a == pytest.approx(3.0, rel=1e-9)
        running = answer.points["nominal"].supplies["U1"]
        assert not running.limiting
        assert 3.0 / running.a == pytest.approx(margin, abs=0.005)


class TestRegulatorAtItsLimit:
    """Four 12 V heaters, 80 ohm hot and 15 ohm cold: 3.2 A cold, 0.6 A hot."""

    def run(self, limit_a: float, solved: Callable[..., Assessment]) -> Assessment:
        tubes = [
            Tube(id=f"V{n}", type="12SN7", rated_v=12.0, rated_a=0.15, cold_ratio=80 / 15) for n in range(4)
        ]
        straps = " ".join(f"U1.+=V{n}.7 V{n}.8=U1.-" for n in range(4))
        return solved([DcSupply(id="U1", set_v=12.0, limit_a=limit_a), *tubes], straps, ambient_c=20.0)

    def test_currents(self, solved: Callable[..., Assessment]) -> None:
        """Exact."""
        answer = self.run(5.0, solved)
        assert answer.points["cold"].supplies["U1"].a == pytest.approx(3.2, rel=1e-9)
        assert [h.a for (h,) in answer.points["cold"].heaters.values()] == pytest.approx([0.8] * 4, rel=1e-9)
        assert answer.points["nominal"].supplies["U1"].a == pytest.approx(0.6, rel=1e-9)

    @pytest.mark.parametrize(("limit_a", "volts", "watts"), [(2.2, 8.25, 17.1), (1.0, 3.75, 12.3)])
    def test_cold_dissipation(
        self, limit_a: float, volts: float, watts: float, solved: Callable[..., Assessment]
    ) -> None:
        """From 16 V in: 8.25 V and 17.1 W at a limit of 2.2 A, 3.75 V and 12.3 W at 1.0 A; to the figures given."""
        answer = self.run(limit_a, solved)
        supply = answer.points["cold"].supplies["U1"]
        assert supply.v == pytest.approx(volts, rel=1e-9)
        assert (16.0 - supply.v) * supply.a == pytest.approx(watts, abs=0.06)
        assert answer.points["nominal"].supplies["U1"].v == pytest.approx(12.0, rel=1e-9)
