"""Currents in ideal connections: Kirchhoff's law at every terminal, and equal sharing in loops."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from core.assess import assess
from core.catalogue import load_builtin
from core.circuit import build
from core.circuit.network import compile_island
from core.circuit.straps import strap_currents
from core.elements.branch import GROUND
from core.results import BranchPoint
from core.sheet import AnyPart, Battery, Chassis, Joint, Resistor, Sheet, Tube, Winding, Wire
from core.steady import solve


def wired(parts: list[AnyPart], straps: str = "", **fields: Any) -> Sheet:
    """A sheet with straps written ``B1.+=V1.4 V1.5=B1.-``."""
    ends = [pair.split("=") for pair in straps.split()]
    wires = tuple(Wire(id=f"w{n}", start=a, end=b) for n, (a, b) in enumerate(ends))
    return Sheet(parts=tuple(parts), wires=wires + fields.pop("wires", ()), **fields)


def branches(parts: list[AnyPart], straps: str) -> dict[str, BranchPoint]:
    point = assess(wired(parts, straps), load_builtin()).points["nominal"]
    assert not point.unsolved
    return point.branches


def battery_and_load() -> list[AnyPart]:
    return [Battery(id="B1", emf_v=6.0), Resistor(id="R1", ohm=6.0), Resistor(id="R2", ohm=3.0)]


def test_daisy_chain() -> None:
    """Each strap carries what lies beyond it: 1 + 2 A, then 2 A."""
    found = branches(battery_and_load(), "B1.+=R1.1 R1.1=R2.1 B1.-=R1.2 R1.2=R2.2")
    assert [found[f"w{n}"].a for n in range(4)] == pytest.approx([3.0, 2.0, 3.0, 2.0])


def test_star_through_a_joint() -> None:
    parts = [*battery_and_load(), Joint(id="J1")]
    found = branches(parts, "B1.+=J1.j J1.j=R1.1 J1.j=R2.1 B1.-=R1.2 B1.-=R2.2")
    assert [found[f"w{n}"].a for n in range(5)] == pytest.approx([3.0, 1.0, 2.0, 1.0, 2.0])


def test_two_straps_side_by_side_share() -> None:
    found = branches(battery_and_load(), "B1.+=R1.1 B1.+=R1.1 B1.-=R1.2")
    assert [found[f"w{n}"].a for n in range(3)] == pytest.approx([0.5, 0.5, 1.0])


def test_a_triangle_of_straps() -> None:
    """Equal straps: 2/3 straight, 1/3 round the corner."""
    parts = [Battery(id="B1", emf_v=6.0), Resistor(id="R1", ohm=6.0), Joint(id="J1")]
    found = branches(parts, "B1.+=R1.1 B1.+=J1.j J1.j=R1.1 B1.-=R1.2")
    assert [found[f"w{n}"].a for n in range(4)] == pytest.approx([2 / 3, 1 / 3, 1 / 3, 1.0])


def test_a_dangling_strap_carries_nothing() -> None:
    parts = [*battery_and_load(), Joint(id="J1")]
    found = branches(parts, "B1.+=R1.1 B1.-=R1.2 B1.+=J1.j")
    assert found["w2"].a == pytest.approx(0.0, abs=1e-12)
    assert found["w2"].v == 0.0


def test_a_single_tie_to_the_chassis_carries_nothing() -> None:
    parts = [Winding(id="T1", rated_v=6.3, rated_a=1.0), Tube(id="V1", type="EL84"), Chassis(id="E1")]
    found = branches(parts, "T1.a=V1.4 T1.b=V1.5 T1.b=E1.e")
    assert found["w2"].a == pytest.approx(0.0, abs=1e-9)


def test_the_chassis_as_a_conductor() -> None:
    """One-wire heating: the whole current returns through both ties."""
    parts = [
        Winding(id="T1", rated_v=6.3, rated_a=1.0),
        Tube(id="V1", type="EL84"),
        Chassis(id="E1"),
        Chassis(id="E2"),
    ]
    found = branches(parts, "T1.a=V1.4 V1.5=E1.e T1.b=E2.e")
    assert found["w1"].a == pytest.approx(found["w0"].a, rel=1e-9)
    assert found["w2"].a == pytest.approx(found["w0"].a, rel=1e-9)
    assert found["w0"].a > 0.7


def test_a_shorted_heater_passes_its_current_on() -> None:
    """A strap from pin to pin: the heater is dark and the strap carries the string's current."""
    parts = [Battery(id="B1", emf_v=6.3), Tube(id="V1", type="EL84"), Tube(id="V2", type="EL84")]
    point = assess(wired(parts, "B1.+=V1.4 V1.4=V1.5 V1.5=V2.4 V2.5=B1.-"), load_builtin()).points["nominal"]
    assert (point.heaters["V1"][0].v, point.heaters["V1"][0].a) == (0.0, 0.0)
    assert point.heaters["V2"][0].v == pytest.approx(6.3)
    assert point.branches["w1"].a == pytest.approx(0.76)


def random_sheet(rng: np.random.Generator, strap: float | None) -> Sheet:
    """Resistors on joints, joints tied by many straps (or by resistors of ``strap`` ohms in their place)."""
    count = int(rng.integers(4, 14))
    parts: list[AnyPart] = [Joint(id=f"J{n}") for n in range(count)]
    parts += [Battery(id="B1", emf_v=12.0, internal_ohm=0.5), Chassis(id="E1")]
    wires = []
    ends = [("B1.+", "J0.j"), ("B1.-", f"J{count - 1}.j"), ("J1.j", "E1.e")]
    ends += [
        (f"J{a}.j", f"J{b}.j") for a, b in (rng.choice(count, 2, replace=False) for _ in range(count // 2))
    ]
    for n, (a, b) in enumerate(ends):
        if strap is None:
            wires.append(Wire(id=f"s{n}", start=a, end=b))
        else:
            parts.append(Resistor(id=f"s{n}", ohm=strap))
            wires += [Wire(id=f"s{n}a", start=a, end=f"s{n}.1"), Wire(id=f"s{n}b", start=b, end=f"s{n}.2")]
    for n in range(count):
        a, b = rng.choice(count, 2, replace=False)
        parts.append(Resistor(id=f"R{n}", ohm=float(rng.uniform(1, 100))))
        wires += [
            Wire(id=f"R{n}a", start=f"R{n}.1", end=f"J{a}.j"),
            Wire(id=f"R{n}b", start=f"R{n}.2", end=f"J{b}.j"),
        ]
    return Sheet(parts=tuple(parts), wires=tuple(wires))


def shorts_the_battery(sheet: Sheet) -> bool:
    network = compile_island(build(sheet, load_builtin()).islands[0], frozenset(), 298.15)
    return network.terminals["B1.+"] == network.terminals["B1.-"]


@pytest.mark.parametrize("seed", range(40))
def test_kirchhoff_at_every_terminal(seed: int) -> None:
    """Not only at the merged nodes: what the straps bring to each terminal leaves it again."""
    sheet = random_sheet(np.random.default_rng(seed), None)
    for island in build(sheet, load_builtin()).islands:
        if not island.branches:
            continue
        network = compile_island(island, frozenset(), 298.15)
        solution = solve(network, np.array([230.0]), np.array([False]))
        currents = np.moveaxis(solution.currents, 1, 0).copy()
        places = [at for at, _, _ in network.ideal]
        currents[places] = strap_currents(network, currents)
        sums = dict.fromkeys((*island.terminals, GROUND), 0.0)
        for branch, amps in zip(network.branches, currents[:, 0, 0], strict=True):
            sums[branch.u] += amps
            sums[branch.v] -= amps
        assert np.abs(list(sums.values())).max() < 1e-9 * max(np.abs(currents).max(), 1.0)


@pytest.mark.parametrize("seed", range(40))
def test_loops_share_as_equal_small_resistors_do(seed: int) -> None:
    """The same sheet with 1 microohm in place of each strap; 1e-4 of the largest current is what those change."""
    draws = (1000 * seed + n for n in range(1000))
    chosen = next(n for n in draws if not shorts_the_battery(random_sheet(np.random.default_rng(n), None)))
    ideal, real = (random_sheet(np.random.default_rng(chosen), strap) for strap in (None, 1e-6))
    one = assess(ideal, load_builtin()).points["nominal"].branches
    other = assess(real, load_builtin()).points["nominal"].branches
    keys = [wire.id for wire in ideal.wires if wire.id.startswith("s")]
    largest = max(branch.a for branch in one.values())
    assert [one[key].a for key in keys] == pytest.approx(
        [other[key].a for key in keys], abs=1e-4 * largest + 1e-6
    )
