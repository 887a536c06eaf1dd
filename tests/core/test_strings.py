"""Which heaters are in series and which in parallel: known wirings, and random graphs against bridges found anew."""

from __future__ import annotations

from itertools import combinations
from typing import Any

import networkx as nx
import numpy as np
import pytest

from core.catalogue import load_builtin
from core.circuit import build
from core.sheet import (
    AnyPart,
    Battery,
    Chassis,
    Elevation,
    Fuse,
    Joint,
    Lamp,
    Relay,
    Resistor,
    Switch,
    Tube,
    Winding,
    Wire,
)
from core.strings import Topology, cycle_labels, topology
from tests.core.circuits import el84, wired


def strings(parts: list[AnyPart], straps: str = "", pulled: tuple[str, ...] = (), **fields: Any) -> Topology:
    return topology(build(wired(parts, straps, **fields), load_builtin()), frozenset(pulled))


def battery() -> Battery:
    return Battery(id="B1", emf_v=12.6)


class TestKnownWirings:
    def test_two_in_series(self) -> None:
        found = strings([battery(), el84("V1"), el84("V2")], "B1.+=V1.4 V1.5=V2.4 V2.5=B1.-")
        assert found.series == (("V1:4-5", "V2:4-5"),)
        assert found.parallel == ()
        assert found.series_of["V2:4-5"] == ("V1:4-5", "V2:4-5")

    def test_two_in_parallel(self) -> None:
        found = strings([battery(), el84("V1"), el84("V2")], "B1.+=V1.4 V1.5=B1.- V1.4=V2.5 V1.5=V2.4")
        assert found.series == ()
        assert found.parallel == (("V1:4-5", "V2:4-5"),)

    def test_a_lone_heater_is_neither(self) -> None:
        found = strings([battery(), el84("V1")], "B1.+=V1.4 V1.5=B1.-")
        assert (found.series, found.parallel) == ((), ())

    def test_sections_of_a_tapped_heater(self) -> None:
        tube = Tube(id="V1", type="ECC83")
        series = strings([battery(), tube], "B1.+=V1.4 V1.5=B1.-")
        assert series.series == (("V1:4-9", "V1:9-5"),)
        parallel = strings([battery(), tube], "B1.+=V1.4 V1.4=V1.5 V1.9=B1.-")
        assert (parallel.series, parallel.parallel) == ((), (("V1:4-9", "V1:9-5"),))

    def test_a_tap_in_use_parts_the_string(self) -> None:
        """A lamp across one section: the other two are no longer in series with it."""
        parts = [battery(), Tube(id="V1", type="35W4"), el84("V2"), Lamp(id="H1", type="#47")]
        found = strings(parts, "B1.+=V1.4 V1.3=V2.4 V2.5=B1.- H1.1=V1.4 H1.2=V1.6")
        assert found.series == (("V1:6-3", "V2:4-5"),)
        assert found.parallel == (("V1:4-6", "H1:1-2"),)

    def test_through_joints_straps_wires_fuses_and_droppers(self) -> None:
        """What else lies in the loop does not matter, nor on which side of the supply."""
        parts = [
            battery(), el84("V1"), el84("V2"), Joint(id="J1"), Joint(id="J2"), Fuse(id="F1", rated_a=1.0),
            Resistor(id="R1", ohm=1.0), Switch(id="S1"),
        ]  # fmt: skip
        straps = "B1.+=F1.1 F1.2=V1.4 V1.5=J1.j J2.j=R1.1 R1.2=S1.1 S1.2=B1.- V2.5=B1.-"
        wires = (Wire(id="x1", start="J1.j", end="J2.j", awg=20, length_m=1.0),)
        assert strings(parts, straps, wires=wires).series == ()
        straps = "B1.+=F1.1 F1.2=V1.4 V1.5=J1.j J2.j=R1.1 R1.2=S1.1 S1.2=V2.4 V2.5=B1.-"
        assert strings(parts, straps, wires=wires).series == (("V1:4-5", "V2:4-5"),)

    def test_on_both_sides_of_the_supply(self) -> None:
        found = strings([battery(), el84("V1"), el84("V2")], "B1.+=V1.4 B1.-=V2.4 V1.5=V2.5")
        assert found.series == (("V1:4-5", "V2:4-5"),)

    def test_parallel_over_real_wires(self) -> None:
        """Some millivolts apart, yet side by side."""
        parts = [battery(), el84("V1"), el84("V2")]
        wires = tuple(
            Wire(id=f"x{n}", start=a, end=b, awg=20, length_m=0.3)
            for n, (a, b) in enumerate(
                [("B1.+", "V1.4"), ("V1.5", "B1.-"), ("V1.4", "V2.4"), ("V1.5", "V2.5")]
            )
        )
        found = strings(parts, wires=wires)
        assert (found.series, found.parallel) == ((), (("V1:4-5", "V2:4-5"),))

    def test_a_shunted_tube_is_out_of_the_string(self) -> None:
        parts = [battery(), el84("V1"), el84("V2"), el84("V3"), Resistor(id="R1", ohm=42.0)]
        found = strings(parts, "B1.+=V1.4 V1.5=V2.4 V2.5=V3.4 V3.5=B1.- R1.1=V2.4 R1.2=V2.5")
        assert found.series == (("V1:4-5", "V3:4-5"),)

    def test_through_the_chassis(self) -> None:
        parts = [
            Winding(id="T1", rated_v=12.6, rated_a=1.0),
            el84("V1"),
            el84("V2"),
            Chassis(id="E1"),
            Chassis(id="E2"),
        ]
        found = strings(parts, "T1.a=V1.4 V1.5=V2.4 V2.5=E1.e T1.b=E2.e")
        assert found.series == (("V1:4-5", "V2:4-5"),)

    def test_an_elevation_does_not_part_a_string(self) -> None:
        """A single tie carries nothing."""
        parts = [battery(), el84("V1"), el84("V2"), Elevation(id="L1", volts=40.0)]
        found = strings(parts, "B1.+=V1.4 V1.5=V2.4 V2.5=B1.- V1.5=L1.e")
        assert found.series == (("V1:4-5", "V2:4-5"),)

    def test_a_second_tie_does(self) -> None:
        parts = [battery(), el84("V1"), el84("V2"), Elevation(id="L1", volts=40.0), Chassis(id="E1")]
        assert strings(parts, "B1.+=V1.4 V1.5=V2.4 V2.5=B1.- V1.5=L1.e B1.-=E1.e").series == ()

    def test_a_shorted_heater_is_no_member(self) -> None:
        parts = [battery(), el84("V1"), el84("V2"), el84("V3")]
        found = strings(parts, "B1.+=V1.4 V1.4=V1.5 V1.5=V2.4 V2.5=V3.4 V3.5=B1.-")
        assert found.series == (("V2:4-5", "V3:4-5"),)
        assert found.shorted == {"V1:4-5"}

    def test_open_ends_are_bridges(self) -> None:
        found = strings([battery(), el84("V1"), el84("V2")], "B1.+=V1.4 V1.5=V2.4")
        assert {"V1:4-5", "V2:4-5", "B1"} <= found.bridges
        assert found.series == ()

    def test_strings_of_two_supplies_are_two(self) -> None:
        parts = [
            battery(),
            Battery(id="B2", emf_v=12.6),
            *(el84(f"V{n}") for n in range(4)),
            Chassis(id="E1"),
        ]
        straps = "B1.+=V0.4 V0.5=V1.4 V1.5=B1.- B2.+=V2.4 V2.5=V3.4 V3.5=B2.- B1.-=E1.e B2.-=E1.e"
        assert strings(parts, straps).series == (("V0:4-5", "V1:4-5"), ("V2:4-5", "V3:4-5"))

    def test_a_contact_decides(self) -> None:
        """The contact bridges the second tube when it is pulled in."""
        parts = [battery(), el84("V1"), el84("V2"), Relay(id="K1", coil_v=6.0, coil_ohm=80.0)]
        straps = "B1.+=V1.4 V1.5=V2.4 V2.5=B1.- K1.com=V2.4 K1.no=V2.5"
        assert strings(parts, straps).series == (("V1:4-5", "V2:4-5"),)
        assert strings(parts, straps, ("K1",)).series == ()
        assert strings(parts, straps, ("K1",)).shorted == {"V2:4-5"}


def brute_force_series(edges: list[tuple[str, int, int]]) -> set[frozenset[str]]:
    """Pairs that are in series: neither a bridge, and each a bridge once the other is out."""
    graph = nx.MultiGraph()
    graph.add_edges_from((u, v, key) for key, u, v in edges)

    def bridges(of: nx.MultiGraph) -> set[str]:
        pieces = nx.number_connected_components(of)
        found = set()
        for u, v, key in of.edges(keys=True):
            without = of.copy()
            without.remove_edge(u, v, key)
            if nx.number_connected_components(without) > pieces:
                found.add(key)
        return found

    first = bridges(graph)
    pairs = set()
    for (one, u, v), (other, _, _) in combinations(edges, 2):
        if one not in first and other not in first:
            without = graph.copy()
            without.remove_edge(u, v, one)
            if other in bridges(without):
                pairs.add(frozenset((one, other)))
    return pairs


@pytest.mark.parametrize("seed", range(60))
def test_labels_against_brute_force(seed: int) -> None:
    rng = np.random.default_rng(seed)
    nodes = int(rng.integers(2, 8))
    edges = []
    for n in range(int(rng.integers(1, 12))):
        u, v = rng.choice(nodes, 2, replace=False)
        edges.append((f"e{n}", int(u), int(v)))
    labels = cycle_labels(edges)
    pairs = {
        frozenset((one, other))
        for one, other in combinations(labels, 2)
        if labels[one] and labels[one] == labels[other]
    }
    assert pairs == brute_force_series(edges)


def test_labels_of_loops_on_one_node() -> None:
    labels = cycle_labels([("a", 1, 1), ("b", 1, 1), ("c", 1, 2)])
    assert labels["a"]
    assert labels["b"]
    assert labels["a"] != labels["b"]
    assert labels["c"] == 0


def test_equal_currents_for_any_values() -> None:
    """What is called a string carries one current, however the ratings differ."""
    rng = np.random.default_rng(7)
    tubes = [Tube(id=f"V{n}", type="EL84", rated_a=float(rng.uniform(0.1, 2.0))) for n in range(5)]
    parts = [battery(), *tubes, Resistor(id="R1", ohm=20.0)]
    straps = "B1.+=V0.4 V0.5=V1.4 V1.5=V2.4 V2.5=V3.4 V3.5=V4.4 V4.5=B1.- R1.1=V1.5 R1.2=V3.5"
    found = strings(parts, straps)
    assert found.series == (("V0:4-5", "V1:4-5", "V4:4-5"), ("V2:4-5", "V3:4-5"))
