"""Linear systems from stamped entries, and the three ways to solve them."""

from __future__ import annotations

import numpy as np
import pytest

import core.linear
from core.assess import assess
from core.catalogue import load_builtin
from core.circuit import build
from core.circuit.network import compile_island
from core.linear import LinearSystem, band_of, scatter, stamp
from core.samples import sample_bytes, sample_names
from core.sheet import (
    Battery,
    DcSupply,
    Diode,
    Thermistor,
    Tube,
    Winding,
)
from core.steady import solve
from core.storage import load
from tests.core.circuits import ladder, wired

# name, DENSE_LIMIT, BAND_FROM
WAYS = (("dense", 10**6, 10**6), ("sparse", 0, 10**6), ("banded", 0, 1))


def test_sparse_banded_and_dense_agree(monkeypatch: pytest.MonkeyPatch) -> None:
    """240 sockets on real wires are about 480 nodes: all ways of solving give the same volts to 1e-10."""
    network = compile_island(build(ladder(240), load_builtin()).islands[0], frozenset(), 298.15)
    assert network.size > 400
    mains, cold = np.array([207.0, 230.0, 253.0, 230.0]), np.array([False, False, False, True])
    found = {}
    for name, limit, band_from in WAYS:
        monkeypatch.setattr(core.linear, "DENSE_LIMIT", limit)
        monkeypatch.setattr(core.linear, "BAND_FROM", band_from)
        found[name] = solve(network, mains, cold)
        assert found[name].residual_a.max() < 1e-9
    for name in ("sparse", "banded"):
        np.testing.assert_allclose(found[name].potentials, found["dense"].potentials, rtol=1e-10, atol=1e-10)


@pytest.mark.parametrize("name", sample_names())
def test_every_way_of_solving_gives_the_same_sample(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Supplies with a limit, centre taps and lifts bring rows of their own; a band of any width is taken."""
    sheet, catalogue = load(sample_bytes(name), name), load_builtin()
    monkeypatch.setattr(core.linear, "BAND_SHARE", 0)
    found = []
    for _, limit, band_from in WAYS:
        monkeypatch.setattr(core.linear, "DENSE_LIMIT", limit)
        monkeypatch.setattr(core.linear, "BAND_FROM", band_from)
        found.append(assess(sheet, catalogue))
    for other in found[1:]:
        for condition, point in found[0].points.items():
            assert not point.unsolved
            assert other.points[condition].nodes == pytest.approx(point.nodes, rel=1e-9, abs=1e-9)


def test_a_band_is_taken_only_where_it_is_narrow() -> None:
    chain = np.arange(99)
    line = band_of(np.concatenate((chain, chain + 1)), np.concatenate((chain + 1, chain)), 100)
    assert line is not None
    assert line.reach == 1
    row, column = np.divmod(np.arange(100 * 100), 100)
    assert band_of(row, column, 100) is None


def test_a_singular_band_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """A line of conductances that reaches no reference has no one solution."""
    monkeypatch.setattr(core.linear, "BAND_FROM", 1)
    monkeypatch.setattr(core.linear, "BAND_SHARE", 0)
    chain = np.arange(9)
    places, signs = stamp(chain, chain + 1, 11)
    system = LinearSystem(11, 1, places, signs, np.array([], dtype=np.intp))
    assert system.band is not None
    with pytest.raises(np.linalg.LinAlgError):
        system.solve(np.zeros((1, 0)), np.ones((1, 11, 1)))


def test_small_networks_agree_too(monkeypatch: pytest.MonkeyPatch) -> None:
    """Among them branches with a current of their own, and AC with DC."""
    parts = [
        *(
            Winding(id="T1", rated_v=6.3, rated_a=1.0),
            Battery(id="B1", emf_v=3.0),
            Tube(id="V1", type="EL84"),
        ),
        DcSupply(id="U1", set_v=12.0, limit_a=0.3),
        *(Thermistor(id="N1", type="S237 5 ohm"), Diode(id="D1"), Tube(id="V2", type="EL84")),
    ]
    sheet = wired(parts, "T1.a=V1.4 V1.5=B1.+ B1.-=T1.b U1.+=D1.a D1.k=N1.1 N1.2=V2.4 V2.5=U1.-")
    dense = assess(sheet, load_builtin()).points["nominal"]
    monkeypatch.setattr(core.linear, "DENSE_LIMIT", 0)
    sparse = assess(sheet, load_builtin()).points["nominal"]
    for key in ("V1", "V2"):
        assert dense.heaters[key][0].v == pytest.approx(sparse.heaters[key][0].v, rel=1e-9)


class TestLinear:
    def test_scatter_adds(self) -> None:
        values = np.array([[[1.0, 10.0], [2.0, 20.0], [4.0, 40.0]]])
        found = scatter(np.array([2, 0, 2]), values, 4)
        np.testing.assert_array_equal(found[0], [[2.0, 20.0], [0.0, 0.0], [5.0, 50.0], [0.0, 0.0]])
        assert scatter(np.array([], dtype=np.intp), np.zeros((2, 0, 1)), 3).shape == (2, 3, 1)

    @pytest.mark.parametrize("limit", [0, 200])
    def test_solves(self, limit: int, monkeypatch: pytest.MonkeyPatch) -> None:
        """Two conductances in a row to the reference, one of them changing."""
        monkeypatch.setattr(core.linear, "DENSE_LIMIT", limit)
        constant, signs = stamp(np.array([0]), np.array([1]), 3)
        varying, more = stamp(np.array([1]), np.array([2]), 3)
        system = LinearSystem(3, 2, constant, 2.0 * signs, varying)
        right = np.zeros((2, 3, 1))
        right[:, 0, 0] = 1.0
        found = system.solve(np.stack((1.0 * more, 4.0 * more)), right)
        np.testing.assert_allclose(found[..., 0], [[1.5, 1.0, 0.0], [0.75, 0.25, 0.0]])

    @pytest.mark.parametrize("limit", [0, 200])
    def test_singular(self, limit: int, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(core.linear, "DENSE_LIMIT", limit)
        places, signs = stamp(np.array([0]), np.array([1]), 3)
        system = LinearSystem(3, 1, places, 1.0 * signs, np.array([], dtype=np.intp))
        with pytest.raises(np.linalg.LinAlgError):
            system.solve(np.zeros((1, 0)), np.ones((1, 3, 1)))
