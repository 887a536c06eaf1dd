"""Layouts on a sheet: references and lifts, islands, pulled tubes, shorts, loose parts; and what they come to."""

from __future__ import annotations

import pytest

from core.assess import assess
from core.catalogue import load_builtin
from core.sheet import (
    Balance,
    Battery,
    Capacitor,
    Chassis,
    Diode,
    Elevation,
    Joint,
    MainsFeed,
    Relay,
    Resistor,
    Switch,
    Thermistor,
    Tube,
    Winding,
    Wire,
)
from tests.core.circuits import el84, run, wired


class TestReference:
    """Volts above the chassis."""

    def test_floating_circuit_has_no_bias(self) -> None:
        point = run([Winding(id="T1", rated_v=6.3, rated_a=1.0), el84()], "T1.a=V1.4 T1.b=V1.5")
        assert not {"V1.4", "V1.5", "T1.a"} & point.bias.keys()
        assert point.nodes["T1.b"] == 0.0

    def test_chassis_and_its_symbols_are_at_nought(self) -> None:
        point = run([Winding(id="T1", rated_v=6.3, rated_a=1.0), Chassis(id="E1")], "T1.b=E1.e")
        assert (point.nodes["E1.e"], point.bias["E1.e"], point.bias["T1.a"]) == (0.0, 0.0, 0.0)

    @pytest.mark.parametrize("volts", [40.0, -25.0])
    def test_elevation_lifts_a_floating_winding(self, volts: float) -> None:
        """Nothing flows, so that its 10 kohm drop nothing."""
        parts = [Winding(id="T1", rated_v=6.3, rated_a=1.0), el84(), Elevation(id="L1", volts=volts)]
        point = run(parts, "T1.a=V1.4 T1.b=V1.5 T1.b=L1.e")
        assert point.bias["V1.4"] == pytest.approx(volts, abs=1e-7)
        assert point.bias["V1.5"] == pytest.approx(volts, abs=1e-7)
        assert abs(point.nodes["V1.4"] - point.nodes["V1.5"]) == pytest.approx(point.heaters["V1"][0].v)

    def test_elevation_of_a_grounded_winding_is_shorted(self) -> None:
        parts = [Winding(id="T1", rated_v=6.3, rated_a=1.0), Elevation(id="L1", volts=40.0), Chassis(id="E1")]
        point = run(parts, "T1.b=L1.e T1.b=E1.e")
        assert point.bias["T1.a"] == pytest.approx(0.0, abs=1e-9)
        assert point.branches["L1"].a == pytest.approx(40.0 / 10_000.0)

    def test_direct_supply_lifted(self) -> None:
        parts = [Battery(id="B1", emf_v=12.6), Tube(id="V1", type="ECC83"), Elevation(id="L1", volts=50.0)]
        point = run(parts, "B1.+=V1.4 V1.5=B1.- B1.-=L1.e")
        assert [point.bias[f"V1.{pin}"] for pin in (4, 9, 5)] == pytest.approx([62.6, 56.3, 50.0])

    @pytest.mark.parametrize("wiper", [0.0, 0.25, 0.5, 1.0])
    def test_balance_divides(self, wiper: float) -> None:
        parts = [Battery(id="B1", emf_v=6.0), Balance(id="P1", ohm=100.0, wiper=wiper), Chassis(id="E1")]
        point = run(parts, "B1.+=P1.1 B1.-=P1.2 P1.w=E1.e")
        assert point.bias["B1.+"] == pytest.approx(6.0 * wiper, abs=1e-12)
        assert point.bias["B1.-"] == pytest.approx(-6.0 * (1 - wiper), abs=1e-12)


class TestLayout:
    """What is wired how; the volts follow."""

    def test_parallel_wires_halve_the_drop(self) -> None:
        parts = [Battery(id="B1", emf_v=6.3), Resistor(id="R1", ohm=6.0)]
        back = Wire(id="back", start="R1.2", end="B1.-")
        one = [Wire(id="x1", start="B1.+", end="R1.1", awg=30, length_m=1.0)]
        two = [*one, Wire(id="x2", start="B1.+", end="R1.1", awg=30, length_m=1.0)]
        single = run(parts, wires=(*one, back), ambient_c=20.0).branches
        double = run(parts, wires=(*two, back), ambient_c=20.0).branches
        assert double["x1"].a == pytest.approx(double["x2"].a)
        assert double["x1"].a + double["x2"].a == pytest.approx(double["R1"].a)
        assert double["x1"].v / double["R1"].a == pytest.approx(single["x1"].v / single["R1"].a / 2)

    def test_several_supplies_in_one_sheet(self) -> None:
        parts = [Winding(id="T1", rated_v=6.3, rated_a=0.76, regulation_pct=10.0), el84("V1"),
                 Battery(id="B1", emf_v=12.6), Tube(id="V2", type="ECC83"), Chassis(id="E1")]  # fmt: skip
        point = run(parts, "T1.a=V1.4 T1.b=V1.5 T1.b=E1.e B1.+=V2.4 B1.-=V2.5 B1.-=E1.e")
        assert point.heaters["V1"][0].v == pytest.approx(6.3, rel=1e-9)
        assert [h.v for h in point.heaters["V2"]] == pytest.approx([6.3, 6.3])
        assert point.power_in_w == pytest.approx(6.3 * 1.1 * 0.76 + 1.89)

    def test_a_pulled_tube_darkens_its_string(self) -> None:
        parts = [Battery(id="B1", emf_v=12.6), el84("V1", pulled=True), el84("V2")]
        point = run(parts, "B1.+=V1.4 V1.5=V2.4 V2.5=B1.-")
        assert point.heaters["V1"] == ()
        assert point.heaters["V2"][0].a == pytest.approx(0.0, abs=1e-12)

    def test_a_pulled_tube_leaves_its_neighbours_alone(self) -> None:
        parts = [Battery(id="B1", emf_v=6.3), el84("V1", pulled=True), el84("V2")]
        point = run(parts, "B1.+=V1.4 V1.5=B1.- V1.4=V2.4 V1.5=V2.5")
        assert point.heaters["V2"][0].a == pytest.approx(0.76)

    def test_unconnected_parts(self) -> None:
        parts = [el84(), Resistor(id="R1", ohm=1.0), Battery(id="B1", emf_v=6.3), Joint(id="J1"), Chassis(id="E1"),
                 Relay(id="K1", coil_v=6.0, coil_ohm=80.0), Thermistor(id="N1", type="S237 5 ohm"), MainsFeed(id="M1"),
                 Capacitor(id="C1", farad=1e-6), Diode(id="D1"), Switch(id="S1")]  # fmt: skip
        point = run(parts)
        assert point.heaters["V1"][0].v == 0.0
        assert point.supplies["B1"].v == pytest.approx(6.3)
        assert point.supplies["B1"].a == 0.0
        assert point.power_in_w == pytest.approx(0.0, abs=1e-12)

    @pytest.mark.parametrize(("closed", "amps"), [(True, 0.76), (False, 0.0)])
    def test_switch(self, closed: bool, amps: float) -> None:
        parts = [Battery(id="B1", emf_v=6.3), el84(), Switch(id="S1", closed=closed)]
        point = run(parts, "B1.+=S1.1 S1.2=V1.4 V1.5=B1.-")
        assert point.heaters["V1"][0].a == pytest.approx(amps, abs=1e-12)

    def test_a_shorted_ideal_supply_leaves_the_rest_solved(self) -> None:
        parts = [
            Battery(id="B1", emf_v=6.0),
            el84("V1"),
            Winding(id="T1", rated_v=6.3, rated_a=0.76),
            el84("V2"),
        ]
        answer = assess(wired(parts, "B1.+=B1.- B1.+=V1.4 T1.a=V2.4 T1.b=V2.5"), load_builtin())
        for point in answer.points.values():
            assert [miss.ids for miss in point.unsolved] == [("B1",)]
            assert "short" in str(point.unsolved[0].reason)
            assert "V1.4" in point.unsolved[0].island
            assert point.heaters["V1"] == ()
        assert answer.points["nominal"].heaters["V2"][0].v == pytest.approx(6.3, rel=1e-9)

    def test_a_shorted_winding_is_solved(self) -> None:
        """It has resistance: 6.93 V over 0.63 ohm, 11 times its rating."""
        point = run([Winding(id="T1", rated_v=6.3, rated_a=1.0)], "T1.a=T1.b").supplies["T1"]
        assert (point.v, point.a) == (pytest.approx(0.0, abs=1e-9), pytest.approx(11.0))
        assert point.load_pct == pytest.approx(1100.0)

    def test_a_hot_chain_of_different_currents(self) -> None:
        """0.15 and 0.3 A in series on 12.6 V: the smaller gets far more than half."""
        parts = [Battery(id="B1", emf_v=12.6), el84("V1", rated_a=0.15), el84("V2", rated_a=0.3)]
        point = run(parts, "B1.+=V1.4 V1.5=V2.4 V2.5=B1.-")
        small, large = point.heaters["V1"][0], point.heaters["V2"][0]
        assert small.a == pytest.approx(large.a, rel=1e-12)
        assert small.v > 9.5
        assert small.v + large.v == pytest.approx(12.6)

    def test_a_backwards_island_is_the_same(self) -> None:
        """Reversing every heater changes no figure."""
        parts = [Battery(id="B1", emf_v=12.6, internal_ohm=2.0), el84("V1"), el84("V2", rated_a=0.3)]
        forward = run(parts, "B1.+=V1.4 V1.5=V2.4 V2.5=B1.-").heaters
        backward = run(parts, "B1.+=V1.5 V1.4=V2.5 V2.4=B1.-").heaters
        assert [h.v for (h,) in forward.values()] == pytest.approx(
            [h.v for (h,) in backward.values()], rel=1e-12
        )
