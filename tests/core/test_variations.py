"""A batch of variations takes the same code as one sheet, and gives the same answers as one at a time."""

from __future__ import annotations

import msgspec
import numpy as np
import pytest

from core.assess import assess
from core.catalogue import load_builtin
from core.circuit import build
from core.circuit.network import compile_island, varied
from core.sheet import Battery, Resistor, Sheet, Tube, Winding, Wire
from core.steady import solve

CATALOGUE = load_builtin()
AMBIENT_K = 298.15


def chain(count: int) -> Sheet:
    """A winding, a resistor in one leg, and tubes along a pair of real wires."""
    parts = [Winding(id="T1", rated_v=6.3, rated_a=0.8 * count), Resistor(id="R1", ohm=0.05)]
    wires = [Wire(id="w0", start="T1.a", end="R1.1")]
    near = ("R1.2", "T1.b")
    for number in range(count):
        tube = f"V{number}"
        parts.append(Tube(id=tube, type="EL84", rated_v=6.3, rated_a=0.76))
        wires += [
            Wire(id=f"{tube}{pin}", start=end, end=f"{tube}.{pin}", awg=18, length_m=0.1)
            for end, pin in zip(near, ("4", "5"), strict=True)
        ]
        near = (f"{tube}.4", f"{tube}.5")
    return Sheet(parts=tuple(parts), wires=tuple(wires))


@pytest.mark.parametrize("count", [3, 120], ids=["dense", "sparse"])
def test_variations_together_are_variations_one_by_one(count: int) -> None:
    sheet = chain(count)
    island = build(sheet, CATALOGUE).islands[0]
    network = compile_island(island, frozenset(), AMBIENT_K)
    items = 5
    random = np.random.default_rng(4)
    heater_factor = random.uniform(0.9, 1.1, (items, count))
    ohm_factor = np.ones((items, len(network.linear)))
    resistor = [network.branches[at].key for at in network.linear.at].index("R1")
    ohm_factor[:, resistor] = random.uniform(0.5, 2.0, items)
    together = solve(
        varied(network, ohm_factor, heater_factor), np.full(items, 230.0), np.zeros(items, dtype=bool)
    )
    for item in range(items):
        parts = tuple(
            msgspec.structs.replace(part, rated_a=0.76 * heater_factor[item, int(part.id[1:])])
            if isinstance(part, Tube)
            else msgspec.structs.replace(part, ohm=0.05 * ohm_factor[item, resistor])
            if isinstance(part, Resistor)
            else part
            for part in sheet.parts
        )
        point = assess(msgspec.structs.replace(sheet, parts=parts), CATALOGUE).points["nominal"]
        found = np.abs(together.currents[item, network.hot.at, 0])
        expected = [point.heaters[f"V{number}"][0].a for number in range(count)]
        assert found == pytest.approx(expected, rel=1e-9)


def test_thousands_of_variations_keep_kirchhoffs_law() -> None:
    sheet = Sheet(
        parts=(Battery(id="B1", emf_v=12.6), Tube(id="V1", type="6V6GT"), Tube(id="V2", type="6V6GT")),
        wires=(
            Wire(id="w1", start="B1.+", end="V1.2"),
            Wire(id="w2", start="V1.7", end="V2.2"),
            Wire(id="w3", start="V2.7", end="B1.-"),
        ),
    )
    network = compile_island(build(sheet, CATALOGUE).islands[0], frozenset(), AMBIENT_K)
    items = 3000
    factor = np.random.default_rng(5).normal(1.0, 0.05, (items, 2))
    solved = solve(varied(network, heater_factor=factor), np.full(items, 230.0), np.zeros(items, dtype=bool))
    volts = np.abs(solved.potentials[:, network.hot.u] - solved.potentials[:, network.hot.v])[..., 0]
    assert solved.residual_a.max() < 1e-10
    assert volts.sum(axis=1) == pytest.approx(12.6)
    # the heater that takes less current at its rating gets more of the volts
    assert np.array_equal(volts[:, 0] > volts[:, 1], factor[:, 0] < factor[:, 1])
