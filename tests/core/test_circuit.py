"""From a sheet to islands, branches and index arrays."""

from __future__ import annotations

from typing import Any

import pytest

from core.catalogue import load_builtin
from core.circuit import Circuit, build
from core.circuit.network import compile_island
from core.elements.branch import GROUND, Contact, Hot, Resistive, Source
from core.errors import UnsolvableError
from core.sheet import (
    AnyPart,
    Balance,
    Battery,
    Capacitor,
    Chassis,
    DcSupply,
    Diode,
    Elevation,
    Fuse,
    Joint,
    Lamp,
    Mains,
    MainsFeed,
    RectifiedSupply,
    Relay,
    Resistor,
    Switch,
    Thermistor,
    Tube,
    Winding,
    Wire,
)
from tests.core.circuits import wired


def circuit(parts: list[AnyPart], straps: str = "", **fields: Any) -> Circuit:
    return build(wired(parts, straps, **fields), load_builtin())


def source(made: Circuit, key: str) -> Source:
    law = made.branches[key].law
    assert isinstance(law, Source)
    return law


class TestBranches:
    def test_tube_sections(self) -> None:
        made = circuit([Tube(id="V1", type="ECC83"), Tube(id="V2", type="EL84")])
        assert list(made.branches) == ["V1:4-9", "V1:9-5", "V2:4-5"]
        assert made.branches["V1:9-5"].law == Hot(6.3, 0.15, 7.0, True, "9-5", 11.0)
        assert [b.key for b in made.branches_by_owner["V1"]] == ["V1:4-9", "V1:9-5"]

    def test_overrides_of_a_single_section(self) -> None:
        made = circuit([Tube(id="V1", type="EL84", rated_v=12.6, cold_ratio=5.0)])
        assert made.branches["V1:4-5"].law == Hot(12.6, 0.76, 5.0, True, "4-5", 18.0)

    def test_overrides_do_not_reach_a_tapped_heater(self) -> None:
        made = circuit([Tube(id="V1", type="ECC83", rated_v=12.6, cold_ratio=5.0)])
        assert made.branches["V1:4-9"].law == Hot(6.3, 0.15, 5.0, True, "4-9", 11.0)

    def test_pulled_and_unknown_tubes_have_none(self) -> None:
        made = circuit([Tube(id="V1", type="EL84", pulled=True), Tube(id="V2", type="no such type")])
        assert made.branches == {}

    def test_directly_heated(self) -> None:
        law = circuit([Tube(id="V1", type="300B")]).branches["V1:1-4"].law
        assert isinstance(law, Hot)
        assert not law.has_cathode

    def test_lamp_by_type_and_by_rating(self) -> None:
        made = circuit([Lamp(id="H1", type="#47"), Lamp(id="H2", rated_v=6.3, rated_a=0.15)])
        assert made.branches["H1:1-2"].law == made.branches["H2:1-2"].law
        assert circuit([Lamp(id="H1", type="no such lamp")]).branches == {}

    def test_winding(self) -> None:
        law = source(circuit([Winding(id="T1", rated_v=6.3, rated_a=3.0, regulation_pct=8.0)]), "T1")
        assert law.ac_per_mains * 230.0 == pytest.approx(6.804)
        assert law.ohm == pytest.approx(0.168)
        other = Winding(id="T1", rated_v=6.3, rated_a=3.0, regulation_pct=8.0, rated_mains_v=240.0)
        assert source(circuit([other]), "T1").ac_per_mains * 240.0 == pytest.approx(6.804)

    def test_centre_tapped_winding_is_two_halves(self) -> None:
        made = circuit([Winding(id="T1", rated_v=6.3, rated_a=3.0, regulation_pct=8.0, centre_tap=True)])
        assert [(b.u, b.v) for b in made.branches.values()] == [("T1.a", "T1.ct"), ("T1.ct", "T1.b")]
        assert source(made, "T1:a-ct").ohm == pytest.approx(0.084)

    def test_other_supplies(self) -> None:
        made = circuit(
            [
                DcSupply(id="U1", set_v=12.0, limit_a=3.0),
                Battery(id="B1", emf_v=6.0, internal_ohm=0.1),
                MainsFeed(id="M1"),
                Elevation(id="L1", volts=40.0),
            ]
        )
        assert (source(made, "U1").dc_v, source(made, "U1").limit_a) == (12.0, 3.0)
        assert (source(made, "B1").dc_v, source(made, "B1").ohm) == (6.0, 0.1)
        assert source(made, "M1").ac_per_mains == 1.0
        assert made.branches["L1"].v == GROUND
        assert source(made, "L1").bias

    def test_passive_parts(self) -> None:
        made = circuit(
            [
                Fuse(id="F1", rated_a=1.0, cold_ohm=0.2),
                Fuse(id="F2", rated_a=2.0),
                Switch(id="S1", closed=True),
                Switch(id="S2", closed=False),
                Balance(id="P1", ohm=100.0, wiper=0.25),
                Thermistor(id="N1", type="no such thermistor"),
            ]
        )
        assert made.branches["F1"].law == Resistive(0.2)
        assert made.branches["F2"].law == Resistive(0.0452)  # Littelfuse 213, 2 A
        assert made.branches["S1"].law == Resistive(0.0)
        assert made.branches["P1:1-w"].law == Resistive(25.0)
        assert made.branches["P1:w-2"].law == Resistive(75.0)
        assert not {"S2", "N1"} & made.branches.keys()

    def test_relay_defaults(self) -> None:
        """Pull-in at 75 %, drop-out at 10 % of the coil volts; a change-over contact."""
        made = circuit([Relay(id="K1", coil_v=6.0, coil_ohm=80.0)])
        coil = made.branches["K1"].law
        assert (coil.pull_in_v, coil.drop_out_v) == pytest.approx((4.5, 0.6))  # type: ignore[union-attr]
        assert made.branches["K1:com-no"].law == Contact("K1", True)
        assert made.branches["K1:com-nc"].law == Contact("K1", False)

    def test_wires(self) -> None:
        """Gauge 20 has 33.31 ohm/km at 20 °C; copper gains 0.393 % per kelvin; a wire without size is a strap."""
        wires = (
            Wire(id="w1", start="T1.a", end="V1.4", awg=20, length_m=2.0),
            Wire(id="w2", start="T1.a", end="V1.4", awg=20),
            Wire(id="w3", start="T1.a", end="V1.4", length_m=2.0),
            Wire(id="w4", start="T1.a", end="V1.4", area_mm2=0.5, length_m=1.0),
        )
        parts = [Winding(id="T1", rated_v=6.3, rated_a=1.0), Tube(id="V1", type="EL84")]
        at_20 = circuit(parts, wires=wires, ambient_c=20.0).branches
        assert at_20["w1"].law.ohm == pytest.approx(0.06662, rel=1e-4)  # type: ignore[union-attr]
        assert at_20["w2"].law == at_20["w3"].law == Resistive(0.0)
        assert at_20["w4"].law == Resistive(0.039)
        at_45 = circuit(parts, wires=wires, ambient_c=45.0).branches
        ratio = at_45["w1"].law.ohm / at_20["w1"].law.ohm  # type: ignore[union-attr]
        assert ratio == pytest.approx(1 + 25 * 0.00393)


class TestIslands:
    def test_chassis_does_not_join_islands(self) -> None:
        parts = [
            Winding(id="T1", rated_v=6.3, rated_a=1.0),
            Winding(id="T2", rated_v=5.0, rated_a=1.0),
            Chassis(id="E1"),
            Chassis(id="E2"),
        ]
        made = circuit(parts, "T1.b=E1.e T2.b=E2.e")
        assert [island.owners for island in made.islands] == [("T1", "w0"), ("T2", "w1")]

    def test_a_wire_joins_them(self) -> None:
        parts = [Winding(id="T1", rated_v=6.3, rated_a=1.0), Winding(id="T2", rated_v=5.0, rated_a=1.0)]
        assert len(circuit(parts).islands) == 2
        assert len(circuit(parts, "T1.b=T2.a").islands) == 1

    def test_every_terminal_is_in_exactly_one(self) -> None:
        parts = [Tube(id="V1", type="ECC83"), Joint(id="J1"), Joint(id="J2"), Resistor(id="R1", ohm=1.0)]
        made = circuit(parts, "V1.4=J1.j V1.7=J2.j")
        terminals = [t for island in made.islands for t in island.terminals]
        assert sorted(terminals) == ["J1.j", "J2.j", "R1.1", "R1.2", "V1.4", "V1.5", "V1.7", "V1.9"]

    def test_coil_and_contact_of_a_relay_are_separate_until_wired(self) -> None:
        assert len(circuit([Relay(id="K1", coil_v=6.0, coil_ohm=80.0)]).islands) == 2

    def test_equal_islands_have_equal_hashes(self) -> None:
        """What makes them a key to remembered solutions; another value makes another island."""
        parts = [Battery(id="B1", emf_v=6.3), Tube(id="V1", type="EL84")]
        straps = "B1.+=V1.4 V1.5=B1.-"
        one, same = (circuit(parts, straps).islands[0] for _ in range(2))
        assert one == same
        assert hash(one) == hash(same)
        assert one != circuit([Battery(id="B1", emf_v=6.0), parts[1]], straps).islands[0]
        moved = [Battery(id="B1", emf_v=6.3, at=(40.0, 0.0)), parts[1]]
        assert one == circuit(moved, straps).islands[0], "moving a part changes no circuit"

    def test_graph_keeps_parallel_wires_apart(self) -> None:
        made = circuit(
            [Battery(id="B1", emf_v=6.3), Resistor(id="R1", ohm=1.0)], "B1.+=R1.1 B1.+=R1.1 R1.2=B1.-"
        )
        assert made.graph.number_of_edges("B1.+", "R1.1") == 2
        assert made.graph.number_of_edges() == len(made.branches) == 5

    def test_wires_at_a_terminal(self) -> None:
        made = circuit(
            [Battery(id="B1", emf_v=6.3), Resistor(id="R1", ohm=1.0)], "B1.+=R1.1 B1.+=R1.1 R1.2=B1.-"
        )
        assert made.wires_at["B1.+"] == ("w0", "w1")
        assert made.wires_at["B1.-"] == ("w2",)

    def test_chassis_terminals_are_one_node(self) -> None:
        made = circuit([Chassis(id="E1"), Chassis(id="E2"), Joint(id="J1")])
        assert made.node("E1.e") == made.node("E2.e") == GROUND
        assert made.node("J1.j") == "J1.j"


class TestNetwork:
    def test_straps_merge_nodes(self) -> None:
        made = circuit([Battery(id="B1", emf_v=6.3), Tube(id="V1", type="EL84")], "B1.+=V1.4 V1.5=B1.-")
        network = compile_island(made.islands[0], frozenset(), 298.15)
        assert network.terminals["B1.+"] == network.terminals["V1.4"]
        assert network.terminals["B1.-"] == network.terminals["V1.5"] == -1, "the lower end is the reference"
        assert len(network.ideal) == 2

    def test_contacts_follow_the_relay(self) -> None:
        parts = [
            Relay(id="K1", coil_v=6.0, coil_ohm=80.0),
            Resistor(id="R1", ohm=1.0),
            Resistor(id="R2", ohm=1.0),
        ]
        island = circuit(parts, "K1.no=R1.1 K1.nc=R2.1").islands[1]
        released = compile_island(island, frozenset(), 298.15)
        pulled = compile_island(island, frozenset({"K1"}), 298.15)
        assert ("K1.com", "K1.nc") in {(u, v) for _, u, v in released.ideal}
        assert ("K1.com", "K1.no") in {(u, v) for _, u, v in pulled.ideal}
        assert len(released.ideal) == len(pulled.ideal) == 3, "one of the two contacts, and two straps"

    @pytest.mark.parametrize(
        ("parts", "straps", "ids"),
        [
            ([Battery(id="B1", emf_v=6.0)], "B1.+=B1.-", ("B1",)),
            ([Battery(id="B1", emf_v=6.0), Battery(id="B2", emf_v=6.0)], "B1.+=B2.+ B1.-=B2.-", ("B1", "B2")),
            ([MainsFeed(id="M1"), Capacitor(id="C1", farad=1e-6)], "M1.L=C1.1", ("C1",)),
            ([MainsFeed(id="M1"), Diode(id="D1")], "M1.L=D1.a", ("D1",)),
            ([RectifiedSupply(id="G1", rated_v=6.3, rated_a=1.0)], "", ("G1",)),
        ],
    )
    def test_what_cannot_be_solved_names_its_parts(
        self, parts: list[AnyPart], straps: str, ids: tuple[str, ...]
    ) -> None:
        with pytest.raises(UnsolvableError) as caught:
            compile_island(circuit(parts, straps).islands[0], frozenset(), 298.15)
        assert caught.value.ids == ids
        assert all(name in str(caught.value) for name in ids)

    def test_low_and_high_mains(self) -> None:
        mains = Mains(nominal_v=240.0, low_pct=-6.0, high_pct=6.0)
        assert (mains.low_v, mains.high_v) == pytest.approx((225.6, 254.4))
