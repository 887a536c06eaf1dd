"""Steady states: supplies at their limit, diodes, mixtures of AC and DC, relays, and the two ways to solve."""

from __future__ import annotations

import math

import numpy as np
import pytest

from core.assess import assess
from core.catalogue import load_builtin
from core.circuit import build
from core.circuit.network import compile_island
from core.sheet import (
    Battery,
    Capacitor,
    Chassis,
    DcSupply,
    Diode,
    Relay,
    Resistor,
    Tube,
    Winding,
)
from core.steady import solve
from tests.core.circuits import el84, ladder, run, wired


class TestDcSupply:
    """12 V, limited."""

    def test_below_its_limit(self) -> None:
        supply = run(
            [DcSupply(id="U1", set_v=12.0, limit_a=2.0), Resistor(id="R1", ohm=8.0)], "U1.+=R1.1 U1.-=R1.2"
        )
        point = supply.supplies["U1"]
        assert (point.v, point.a) == pytest.approx((12.0, 1.5))
        assert not point.limiting
        assert point.demand_a is None
        assert point.load_pct == pytest.approx(75.0)

    def test_at_its_limit(self) -> None:
        point = run(
            [DcSupply(id="U1", set_v=12.0, limit_a=2.0), Resistor(id="R1", ohm=3.0)], "U1.+=R1.1 U1.-=R1.2"
        ).supplies["U1"]
        assert (point.v, point.a, point.limiting) == (pytest.approx(6.0), pytest.approx(2.0), True)
        assert point.demand_a == pytest.approx(4.0)
        assert point.load_pct == pytest.approx(200.0)
        assert point.w == pytest.approx(12.0)

    def test_shorted(self) -> None:
        point = run([DcSupply(id="U1", set_v=12.0, limit_a=2.0)], "U1.+=U1.-").supplies["U1"]
        assert (point.v, point.limiting, point.demand_a) == (pytest.approx(0.0, abs=1e-9), True, math.inf)
        assert point.a == pytest.approx(2.0, rel=1e-9)

    def test_only_while_cold(self) -> None:
        parts = [DcSupply(id="U1", set_v=6.3, limit_a=1.0), el84()]
        straps = "U1.+=V1.4 U1.-=V1.5"
        cold, hot = run(parts, straps, "cold").supplies["U1"], run(parts, straps).supplies["U1"]
        assert cold.limiting
        assert not hot.limiting
        assert cold.a == pytest.approx(1.0)
        assert hot.v == pytest.approx(6.3)

    def test_two_in_series_take_the_smaller_limit(self) -> None:
        """The other one is then below its limit and keeps its volts."""
        parts = [
            DcSupply(id="U1", set_v=6.0, limit_a=1.0),
            DcSupply(id="U2", set_v=6.0, limit_a=2.0),
            Resistor(id="R1", ohm=7.0),
        ]
        point = run(parts, "U1.-=U2.+ U1.+=R1.1 R1.2=U2.-")
        assert point.branches["R1"].a == pytest.approx(1.0, rel=1e-9)
        assert point.supplies["U1"].limiting
        assert not point.supplies["U2"].limiting
        assert point.supplies["U2"].v == pytest.approx(6.0)
        assert point.supplies["U1"].v == pytest.approx(1.0, rel=1e-9)

    def test_a_stronger_battery_feeds_back(self) -> None:
        """A battery of 14 V behind 1 ohm holds a 12 V supply up: neither gives anything."""
        point = run([DcSupply(id="U1", set_v=12.0, limit_a=3.0), Battery(id="B1", emf_v=14.0, internal_ohm=1.0)],
                    "U1.+=B1.+ U1.-=B1.-")  # fmt: skip
        supply = point.supplies["U1"]
        assert (supply.v, supply.a) == (pytest.approx(14.0), pytest.approx(0.0, abs=1e-9))
        assert (supply.driven_back, supply.limiting) == (True, False)
        assert point.supplies["B1"].w == pytest.approx(0.0, abs=1e-9)

    def test_demand_that_nothing_could_meet(self) -> None:
        """Without limits the two would fight without bound; the answer stands, with the limit as demand."""
        parts = [
            DcSupply(id="U1", set_v=12.0, limit_a=2.0),
            Resistor(id="R1", ohm=3.0),
            Diode(id="D1"),
            Diode(id="D2"),
        ]
        point = run(parts, "U1.+=R1.1 R1.2=U1.- U1.+=D1.a D1.k=D2.a D2.k=U1.-")
        assert point.supplies["U1"].limiting
        assert point.supplies["U1"].demand_a is not None
        assert point.supplies["U1"].demand_a >= 2.0


class TestDiode:
    def test_conducts(self) -> None:
        """Its forward volts and 0.1 mohm, so that parallel ones have one answer."""
        point = run([Battery(id="B1", emf_v=7.0), Diode(id="D1", forward_v=0.7), Resistor(id="R1", ohm=6.3)],
                    "B1.+=D1.a D1.k=R1.1 R1.2=B1.-")  # fmt: skip
        assert point.branches["R1"].v == pytest.approx(6.3, rel=1e-4)
        assert point.branches["D1"].v == pytest.approx(0.7, rel=1e-3)
        assert point.branches["D1"].w == pytest.approx(0.7, rel=1e-3)

    def test_blocks(self) -> None:
        """Nanoamperes per volt leak."""
        point = run([Battery(id="B1", emf_v=7.0), Diode(id="D1"), el84()], "B1.+=D1.k D1.a=V1.4 V1.5=B1.-")
        assert point.branches["D1"].a < 1e-8
        assert point.heaters["V1"][0].heater_k == pytest.approx(298.15, abs=1e-3)

    def test_the_higher_of_two_supplies_wins(self) -> None:
        parts = [
            Battery(id="B1", emf_v=12.0, internal_ohm=0.1),
            Battery(id="B2", emf_v=13.0, internal_ohm=0.1),
            Diode(id="D1", forward_v=0.3),
            Diode(id="D2", forward_v=0.3),
            Resistor(id="R1", ohm=12.0),
        ]
        point = run(parts, "B1.+=D1.a B2.+=D2.a D1.k=R1.1 D2.k=R1.1 R1.2=B1.- R1.2=B2.-")
        assert point.branches["D1"].a < 1e-8
        assert point.branches["D2"].a == pytest.approx((13.0 - 0.3) / (12.1 + 1e-4), rel=1e-6)

    def test_parallel_ones_share(self) -> None:
        parts = [Battery(id="B1", emf_v=7.0), Diode(id="D1"), Diode(id="D2"), Resistor(id="R1", ohm=6.3)]
        point = run(parts, "B1.+=D1.a B1.+=D2.a D1.k=R1.1 D2.k=R1.1 R1.2=B1.-")
        assert point.branches["D1"].a == pytest.approx(0.5, rel=1e-3)
        assert point.branches["D2"].a == pytest.approx(point.branches["D1"].a, rel=1e-6)

    @pytest.mark.parametrize("straps", ["B1.+=D1.a B1.-=D2.a", "B1.-=D1.a B1.+=D2.a"])
    def test_a_bridge_takes_either_polarity(self, straps: str) -> None:
        """Four diodes: whichever way round the battery is, the heater sees its volts less two forward drops."""
        parts = [
            Battery(id="B1", emf_v=7.7),
            *(Diode(id=f"D{n}", forward_v=0.7) for n in (1, 2, 3, 4)),
            el84(),
        ]
        bridge = " D1.k=V1.4 D2.k=V1.4 D3.k=D1.a D4.k=D2.a D3.a=V1.5 D4.a=V1.5"
        point = run(parts, straps + bridge)
        assert point.heaters["V1"][0].v == pytest.approx(6.3, rel=1e-3)


class TestRelay:
    """A relay across the second half of a series dropper, or across a heater, started from cold."""

    def coil(self, **fields: float) -> Relay:
        return Relay(id="K1", coil_v=6.0, coil_ohm=100.0, **fields)

    def test_pulls_in_and_switches(self) -> None:
        parts = [
            Battery(id="B1", emf_v=6.0),
            self.coil(),
            Resistor(id="R1", ohm=6.0),
            Resistor(id="R2", ohm=3.0),
        ]
        straps = "B1.+=K1.c1 B1.-=K1.c2 B1.+=K1.com K1.no=R1.1 K1.nc=R2.1 R1.2=B1.- R2.2=B1.-"
        point = run(parts, straps)
        assert point.branches["K1"].pulled_in
        assert point.branches["R1"].a == pytest.approx(1.0)
        assert point.branches["R2"].a == pytest.approx(0.0, abs=1e-12)
        assert point.branches["K1:com-no"].a == pytest.approx(1.0)
        cold = run(parts, straps, "cold")
        assert not cold.branches["K1"].pulled_in, "at the instant of switching on it has not moved yet"
        assert cold.branches["R2"].a == pytest.approx(2.0)

    @pytest.mark.parametrize(("volts", "pulled"), [(4.49, False), (4.51, True)])
    def test_pulls_in_at_three_quarters(self, volts: float, pulled: bool) -> None:
        point = run([Battery(id="B1", emf_v=volts), self.coil()], "B1.+=K1.c1 B1.-=K1.c2")
        assert point.branches["K1"].pulled_in is pulled

    def test_hysteresis(self) -> None:
        """Pulling in puts a load on its supply: 3 V at the coil is below pull-in but above drop-out: it holds."""
        parts = [Battery(id="B1", emf_v=6.0, internal_ohm=3.0), self.coil(), Resistor(id="R1", ohm=3.1)]
        point = run(parts, "B1.+=K1.c1 B1.-=K1.c2 B1.+=K1.com K1.no=R1.1 R1.2=B1.-")
        assert point.branches["K1"].pulled_in
        assert 0.6 < point.branches["K1"].v < 4.5

    def test_chatter_is_reported(self) -> None:
        """Its own contact shorts the coil: it pulls in, lets go, pulls in. The other island is solved all the same."""
        parts = [
            Battery(id="B1", emf_v=6.0, internal_ohm=3.0),
            self.coil(),
            Battery(id="B2", emf_v=6.3),
            el84(),
        ]
        straps = "B1.+=K1.c1 B1.-=K1.c2 B1.+=K1.com K1.no=B1.- B2.+=V1.4 B2.-=V1.5"
        point = assess(wired(parts, straps), load_builtin()).points["nominal"]
        assert [miss.ids for miss in point.unsolved] == [("K1",)]
        assert "chatter" in str(point.unsolved[0].reason)
        assert point.heaters["V1"][0].v == pytest.approx(6.3)

    def test_shorts_out_a_surge_resistor(self) -> None:
        """A coil across the heater pulls in as the heater warms and bridges the resistor in series with it."""
        parts = [Battery(id="B1", emf_v=6.3), self.coil(), el84(), Resistor(id="R1", ohm=2.0)]
        straps = "B1.+=R1.1 R1.2=V1.4 V1.5=B1.- V1.4=K1.c1 V1.5=K1.c2 R1.1=K1.com R1.2=K1.no"
        hot, cold = run(parts, straps), run(parts, straps, "cold")
        assert hot.branches["K1"].pulled_in
        assert hot.heaters["V1"][0].v == pytest.approx(6.3)
        assert cold.heaters["V1"][0].v < 3.0

    def test_on_alternating_current(self) -> None:
        point = run([Winding(id="T1", rated_v=6.3, rated_a=1.0), self.coil()], "T1.a=K1.c1 T1.b=K1.c2")
        assert point.branches["K1"].pulled_in


class TestAlternatingAndDirect:
    def test_rms_of_a_mixture_heats(self) -> None:
        """5 V rms in series with 5 V DC into a resistor: 7.07 V."""
        parts = [Winding(id="T1", rated_v=5.0, rated_a=1.0, regulation_pct=0.0), Battery(id="B1", emf_v=5.0),
                 Resistor(id="R1", ohm=10.0)]  # fmt: skip
        point = run(parts, "T1.a=R1.1 R1.2=B1.+ B1.-=T1.b")
        assert point.branches["R1"].v == pytest.approx(math.hypot(5.0, 5.0))
        assert point.branches["R1"].w == pytest.approx(5.0)

    def test_heater_on_a_mixture(self) -> None:
        """A heater cannot tell: hypot(4.8, 4.08) = 6.3 V."""
        direct = math.sqrt(6.3**2 - 4.8**2)
        parts = [
            Winding(id="T1", rated_v=4.8, rated_a=1.0, regulation_pct=0.0),
            Battery(id="B1", emf_v=direct),
            el84(),
        ]
        heater = run(parts, "T1.a=V1.4 V1.5=B1.+ B1.-=T1.b").heaters["V1"][0]
        assert (heater.v, heater.a) == (pytest.approx(6.3, rel=1e-10), pytest.approx(0.76, rel=1e-10))

    def test_a_limit_is_on_the_direct_part(self) -> None:
        """A limited supply in series with a winding: at its limit it holds the current, and so lets no AC through."""
        parts = [
            Winding(id="T1", rated_v=6.0, rated_a=1.0, regulation_pct=0.0),
            DcSupply(id="U1", set_v=12.0, limit_a=0.5),
            Resistor(id="R1", ohm=6.0),
        ]
        point = run(parts, "T1.a=R1.1 R1.2=U1.- U1.+=T1.b")
        assert point.supplies["U1"].limiting
        assert point.branches["R1"].a == pytest.approx(0.5, rel=1e-9)

    def test_windings_add_or_buck(self) -> None:
        parts = [
            Winding(id="T1", rated_v=6.3, rated_a=1.0, regulation_pct=0.0),
            Winding(id="T2", rated_v=5.0, rated_a=1.0, regulation_pct=0.0),
            Resistor(id="R1", ohm=10.0),
        ]
        assert run(parts, "T1.a=R1.1 T1.b=T2.a T2.b=R1.2").branches["R1"].v == pytest.approx(11.3)
        assert run(parts, "T1.a=R1.1 T1.b=T2.b T2.a=R1.2").branches["R1"].v == pytest.approx(1.3)

    def test_centre_tap(self) -> None:
        """Half the volts to each side; one supply on the list."""
        parts = [Winding(id="T1", rated_v=12.6, rated_a=1.0, regulation_pct=0.0, centre_tap=True), Chassis(id="E1"),
                 Tube(id="V1", type="ECC83"), Tube(id="V2", type="6SN7", rated_a=0.3)]  # fmt: skip
        point = run(parts, "T1.ct=E1.e T1.a=V1.4 V1.9=T1.ct T1.b=V1.5 T1.a=V2.7 V2.8=T1.ct")
        assert point.nodes["T1.a"] == pytest.approx(6.3)
        assert point.nodes["T1.b"] == pytest.approx(-6.3)
        assert [h.v for h in point.heaters["V1"]] == pytest.approx([6.3, 6.3])
        assert list(point.supplies) == ["T1"]
        assert point.supplies["T1"].v == pytest.approx(12.6)
        assert point.supplies["T1"].a == pytest.approx(0.45)
        assert point.supplies["T1"].w == pytest.approx(6.3 * 0.6)

    def test_capacitor_blocks_direct_current(self) -> None:
        point = run(
            [Battery(id="B1", emf_v=6.3), Capacitor(id="C1", farad=1e-3), el84()],
            "B1.+=C1.1 C1.2=V1.4 V1.5=B1.-",
        )
        assert point.heaters["V1"][0].v == pytest.approx(0.0, abs=1e-12)


def test_a_batch_gives_what_single_solutions_give() -> None:
    """Four conditions at once or one by one: the same to 1e-10."""
    network = compile_island(build(ladder(12), load_builtin()).islands[0], frozenset(), 298.15)
    mains, cold = np.array([207.0, 230.0, 253.0, 230.0]), np.array([False, False, False, True])
    together = solve(network, mains, cold)
    for at in range(4):
        alone = solve(network, mains[[at]], cold[[at]])
        np.testing.assert_allclose(together.potentials[at], alone.potentials[0], rtol=1e-10, atol=1e-12)
        np.testing.assert_allclose(together.currents[at], alone.currents[0], rtol=1e-9, atol=1e-10)
        np.testing.assert_allclose(together.heater_k[at], alone.heater_k[0], rtol=1e-10)


def test_ten_thousand_variations_take_the_same_path() -> None:
    """A sweep of the mains as one batch: volts rise with it, and the middle is the nominal point."""
    network = compile_island(build(ladder(3), load_builtin()).islands[0], frozenset(), 298.15)
    mains = np.linspace(180.0, 280.0, 10_001)
    swept = solve(network, mains, np.zeros(10_001, dtype=bool))
    across = np.abs(swept.potentials[:, network.hot.u[0], 0] - swept.potentials[:, network.hot.v[0], 0])
    assert (np.diff(across) > 0).all()
    single = solve(network, np.array([230.0]), np.array([False]))
    np.testing.assert_allclose(swept.potentials[5000], single.potentials[0], rtol=1e-10, atol=1e-12)
