"""Random networks against independent solutions.

Resistors: exact rational arithmetic (sympy) and effective resistance from the graph's Laplacian (networkx).
Heaters: the nodal equations with the temperatures as further unknowns, coded here a second time with scipy's
interpolation and solved by scipy's hybrid method (MINPACK).
"""

from __future__ import annotations

from dataclasses import dataclass, field

import networkx as nx
import numpy as np
import pytest
import sympy
from numpy.typing import NDArray
from scipy.interpolate import PchipInterpolator
from scipy.optimize import root

from core.assess import assess
from core.catalogue import Catalogue
from core.results import OperatingPoint
from core.sheet import AnyPart, Battery, Joint, Resistor, Sheet, Tube, Wire

AMBIENT_K = 298.15
KELVIN = [293.15, *range(300, 3700, 100)]
UOHM_CM = [
    5.49, 5.65, 8.06, 10.56, 13.23, 16.09, 19.00, 21.94, 24.93, 27.94, 30.98, 34.08, 37.19, 40.36, 43.55, 46.78,
    50.05, 53.35, 56.67, 60.06, 63.48, 66.91, 70.39, 73.91, 77.49, 81.04, 84.70, 88.33, 92.04, 95.76, 99.54, 103.3,
    107.2, 111.1, 115.0,
]  # fmt: skip
CURVE = PchipInterpolator(KELVIN, np.array(UOHM_CM) / UOHM_CM[0])


@dataclass
class Net:
    """Elements between numbered nodes, as drawn at random and before any sheet is made of them."""

    nodes: int
    batteries: list[tuple[int, int, float, float]] = field(default_factory=list)
    resistors: list[tuple[int, int, float]] = field(default_factory=list)
    heaters: list[tuple[int, int, float, float, float]] = field(default_factory=list)

    def sheet(self) -> Sheet:
        """Each node is a joint; each element hangs on two of them by straps."""
        parts: list[AnyPart] = [Joint(id=f"J{n}") for n in range(self.nodes)]
        ends: list[tuple[str, int]] = []
        for n, (u, v, emf, ohm) in enumerate(self.batteries):
            parts.append(Battery(id=f"B{n}", emf_v=emf, internal_ohm=ohm))
            ends += [(f"B{n}.+", u), (f"B{n}.-", v)]
        for n, (u, v, ohm) in enumerate(self.resistors):
            parts.append(Resistor(id=f"R{n}", ohm=ohm))
            ends += [(f"R{n}.1", u), (f"R{n}.2", v)]
        for n, (u, v, volts, amps, ratio) in enumerate(self.heaters):
            parts.append(Tube(id=f"V{n}", type="EL84", rated_v=volts, rated_a=amps, cold_ratio=ratio))
            ends += [(f"V{n}.4", u), (f"V{n}.5", v)]
        wires = tuple(Wire(id=f"w{n}", start=a, end=f"J{node}.j") for n, (a, node) in enumerate(ends))
        return Sheet(parts=tuple(parts), wires=wires)


def random_edges(rng: np.random.Generator, nodes: int, extra: int) -> list[tuple[int, int]]:
    """A random tree and some more edges, parallel ones among them, in random order and direction."""
    edges = [(n, int(rng.integers(0, n))) for n in range(1, nodes)]
    for _ in range(extra):
        u, v = rng.choice(nodes, 2, replace=False)
        edges.append((int(u), int(v)))
    return [edges[at] if rng.random() < 0.5 else edges[at][::-1] for at in rng.permutation(len(edges))]


def solve(net: Net, catalogue: Catalogue) -> OperatingPoint:
    point = assess(net.sheet(), catalogue).points["nominal"]
    assert not point.unsolved
    return point


# --- resistors ---


def exact_currents(net: Net) -> list[float]:
    """Battery and resistor currents by rational arithmetic; node 0 is the reference."""
    size = net.nodes - 1
    matrix, right = sympy.zeros(size, size), sympy.zeros(size, 1)
    branches = [(u, v, sympy.Rational(ohm), sympy.Rational(emf)) for u, v, emf, ohm in net.batteries]
    branches += [(u, v, sympy.Rational(ohm), sympy.Integer(0)) for u, v, ohm in net.resistors]
    for u, v, ohm, emf in branches:
        for one, other, sign in ((u, v, 1), (v, u, -1)):
            if one:
                matrix[one - 1, one - 1] += 1 / ohm
                right[one - 1] += sign * emf / ohm
                if other:
                    matrix[one - 1, other - 1] -= 1 / ohm
    volts = [sympy.Integer(0), *matrix.LUsolve(right)]
    return [float((volts[u] - volts[v] - emf) / ohm) for u, v, ohm, emf in branches]


@pytest.mark.parametrize("seed", range(40))
def test_resistors_against_rational_arithmetic(seed: int, catalogue: Catalogue) -> None:
    """1e-9 of the largest current: rounding at ratios of 1e4 between the resistances."""
    rng = np.random.default_rng(seed)
    nodes = int(rng.integers(2, 8))
    edges = random_edges(rng, nodes, int(rng.integers(1, 2 * nodes)))
    sources = int(rng.integers(1, min(4, len(edges)) + 1))
    net = Net(nodes)
    for at, (u, v) in enumerate(edges):
        ohm = float(np.round(10 ** rng.uniform(-1, 3), 3))
        if at < sources:
            net.batteries.append((u, v, float(rng.integers(1, 250)) / 10, ohm))
        else:
            net.resistors.append((u, v, ohm))
    point = solve(net, catalogue)
    exact = exact_currents(net)
    ours = [point.supplies[f"B{n}"].a for n in range(len(net.batteries))]
    ours += [point.branches[f"R{n}"].a for n in range(len(net.resistors))]
    assert ours == pytest.approx(np.abs(exact), abs=1e-9 * max(map(abs, exact)) + 1e-12)


@pytest.mark.parametrize("seed", range(40))
def test_resistors_against_the_resistance_distance(seed: int, catalogue: Catalogue) -> None:
    """The current of one battery is its EMF over the effective resistance between its ends; 1e-9 for rounding."""
    rng = np.random.default_rng(1000 + seed)
    nodes = int(rng.integers(3, 15))
    graph = nx.MultiGraph()
    net = Net(nodes, batteries=[(0, nodes - 1, 12.6, 0.0)])
    for u, v in random_edges(rng, nodes, int(rng.integers(0, 3 * nodes))):
        ohm = float(10 ** rng.uniform(-1, 3))
        net.resistors.append((u, v, ohm))
        graph.add_edge(u, v, ohm=ohm)
    between = nx.resistance_distance(graph, 0, nodes - 1, weight="ohm", invert_weight=True)
    assert solve(net, catalogue).supplies["B0"].a == pytest.approx(12.6 / between, rel=1e-9)


# --- heaters ---


@dataclass
class Equations:
    """Kirchhoff's laws and each heater's heat balance; unknowns are volts, battery amperes, ln kelvin."""

    net: Net

    def __post_init__(self) -> None:
        table = np.array(self.net.heaters).reshape(-1, 5)
        self.hot_u, self.hot_v = table[:, 0].astype(int), table[:, 1].astype(int)
        self.volts, self.amps, self.cold_ratio = table[:, 2], table[:, 3], table[:, 4]
        inverse = PchipInterpolator(CURVE(np.linspace(300, 3600, 33001)), np.linspace(300, 3600, 33001))
        self.work_k = np.maximum(inverse(self.cold_ratio), 1060.0)
        self.rise = (self.cold_ratio - 1) / (CURVE(self.work_k) - 1)

    def unpack(self, x: NDArray[np.float64]) -> tuple[NDArray[np.float64], ...]:
        count = self.net.nodes - 1
        currents = x[count : count + len(self.net.batteries)]
        return (
            np.concatenate(([0.0], x[:count])),
            currents,
            np.exp(np.clip(x[count + len(currents) :], 5.0, 9.0)),
        )

    def ohm(self, kelvin: NDArray[np.float64]) -> NDArray[np.float64]:
        cold = self.volts / self.amps / self.cold_ratio
        return np.asarray(cold * (1 + self.rise * (CURVE(kelvin) - 1)))

    def __call__(self, x: NDArray[np.float64]) -> NDArray[np.float64]:
        node_v, battery_a, kelvin = self.unpack(x)
        leaving = np.zeros(self.net.nodes)
        loops = []
        for (u, v, emf, ohm), amps in zip(self.net.batteries, battery_a, strict=True):
            leaving[u] += amps
            leaving[v] -= amps
            loops.append(node_v[u] - node_v[v] - emf - ohm * amps)
        for u, v, ohm in self.net.resistors:
            leaving[u] += (node_v[u] - node_v[v]) / ohm
            leaving[v] -= (node_v[u] - node_v[v]) / ohm
        across = node_v[self.hot_u] - node_v[self.hot_v]
        hot_ohm = self.ohm(kelvin)
        np.add.at(leaving, self.hot_u, across / hot_ohm)
        np.add.at(leaving, self.hot_v, -across / hot_ohm)
        share = (kelvin**4 - AMBIENT_K**4) / (self.work_k**4 - AMBIENT_K**4)
        heat = across**2 / hot_ohm / (self.volts * self.amps) - share
        return np.concatenate((leaving[1:], loops, heat))

    def solve(self) -> NDArray[np.float64]:
        """From heaters as fixed resistors at a few temperatures, until one start leads to a root."""
        for kelvin in (1300.0, 700.0, 2000.0, 400.0, 320.0, 1000.0):
            temperatures = np.full(len(self.net.heaters), np.log(kelvin))
            linear = self.linear_start(np.exp(temperatures))
            found = root(self, np.concatenate((linear, temperatures)), tol=1e-13)
            if np.abs(found.fun).max() < 1e-8 and self.unpack(found.x)[2].min(initial=300) > 290:
                return np.asarray(found.x)
        raise AssertionError("scipy found no root")

    def linear_start(self, kelvin: NDArray[np.float64]) -> NDArray[np.float64]:
        count = self.net.nodes - 1 + len(self.net.batteries)

        def residual(x: NDArray[np.float64]) -> NDArray[np.float64]:
            return self(np.concatenate((x, np.log(kelvin))))[:count]

        zero = residual(np.zeros(count))
        jacobian = np.stack([residual(unit) - zero for unit in np.eye(count)], axis=1)
        return np.asarray(np.linalg.solve(jacobian, -zero))


def heater_net(rng: np.random.Generator, *, extreme: bool) -> Net:
    """Heaters, resistors and one to three batteries; stiff and soft, ratings usual or extreme."""
    nodes = int(rng.integers(2, 9))
    net = Net(nodes)
    stiff = rng.random() < 0.4
    level = 10 ** rng.uniform(-0.5, 2) if extreme else 6.3
    edges = random_edges(rng, nodes, int(rng.integers(2, 2 * nodes + 1)))
    sources = int(rng.integers(1, min(3, len(edges) - 1) + 1))
    for at, (u, v) in enumerate(edges):
        if at < sources:
            ohm = 0.0 if stiff and at == 0 else float(10 ** rng.uniform(-2, 1.5))
            net.batteries.append((u, v, float(level * rng.uniform(0.5, 2.0)), ohm))
        elif rng.random() < 0.65:
            volts = float(10 ** rng.uniform(0, 2)) if extreme else float(rng.choice([5.0, 6.3, 12.6, 35.0]))
            amps = (
                float(10 ** rng.uniform(-1.5, 0.7)) if extreme else float(rng.choice([0.15, 0.3, 0.6, 1.5]))
            )
            net.heaters.append((u, v, volts, amps, float(rng.uniform(4.0, 8.5))))
        else:
            net.resistors.append((u, v, float(10 ** rng.uniform(-1, 2.5))))
    return net


def chain_net(rng: np.random.Generator, kind: str) -> Net:
    """A pure string, a pure set of parallel heaters, or a ladder of both."""
    count = int(rng.integers(2, 7))
    ratings = [(6.3, float(rng.choice([0.15, 0.3, 0.45])), 7.0) for _ in range(count)]
    ohm = float(10 ** rng.uniform(-2, 1))
    if kind == "series":
        heaters = [(n, n + 1, *rating) for n, rating in enumerate(ratings)]
        return Net(count + 1, batteries=[(0, count, 6.3 * count, ohm)], heaters=heaters)
    if kind == "parallel":
        return Net(2, batteries=[(0, 1, 6.6, ohm)], heaters=[(0, 1, *rating) for rating in ratings])
    rungs = [(n, count + n, *rating) for n, rating in enumerate(ratings)]
    rails = [(n, n + 1, 0.3) for n in range(count - 1)] + [
        (count + n, count + n + 1, 0.3) for n in range(count - 1)
    ]
    return Net(2 * count, batteries=[(0, count, 6.6, ohm)], resistors=rails, heaters=rungs)


def compare(net: Net, catalogue: Catalogue) -> None:
    """Volts of every heater within 1e-6 of the largest EMF, and temperatures within 0.01 K.

    What is left are the two ways of interpolating below 300 K and MINPACK's own tolerance.
    """
    point = solve(net, catalogue)
    equations = Equations(net)
    node_v, battery_a, kelvin = equations.unpack(equations.solve())
    emf = max(abs(emf) for _, _, emf, _ in net.batteries)
    for n in range(len(net.heaters)):
        heater = point.heaters[f"V{n}"][0]
        across = abs(node_v[equations.hot_u[n]] - node_v[equations.hot_v[n]])
        assert heater.v == pytest.approx(across, abs=1e-6 * emf)
        assert heater.heater_k == pytest.approx(kelvin[n], abs=0.02)
    for n, amps in enumerate(battery_a):
        assert point.supplies[f"B{n}"].a == pytest.approx(abs(amps), rel=1e-6, abs=1e-6)


@pytest.mark.parametrize("seed", range(80))
def test_usual_heaters_against_scipy(seed: int, catalogue: Catalogue) -> None:
    compare(heater_net(np.random.default_rng(seed), extreme=False), catalogue)


@pytest.mark.parametrize("seed", range(60))
def test_extreme_heaters_against_scipy(seed: int, catalogue: Catalogue) -> None:
    compare(heater_net(np.random.default_rng(5000 + seed), extreme=True), catalogue)


@pytest.mark.parametrize("kind", ["series", "parallel", "ladder"])
@pytest.mark.parametrize("seed", range(10))
def test_strings_and_ladders_against_scipy(seed: int, kind: str, catalogue: Catalogue) -> None:
    compare(chain_net(np.random.default_rng(seed), kind), catalogue)


@pytest.mark.parametrize("start", range(0, 200, 20))
def test_it_always_converges(start: int, catalogue: Catalogue) -> None:
    """Far wilder ratings and resistances than any amplifier has: 0.1 to 300 V, 10 mA to 10 A, 0.1 mohm to 10 kohm."""
    for seed in range(start, start + 20):
        rng = np.random.default_rng(90_000 + seed)
        nodes = int(rng.integers(2, 14))
        net = Net(nodes)
        level = 10 ** rng.uniform(-1, 2.5)
        for at, (u, v) in enumerate(random_edges(rng, nodes, int(rng.integers(2, 2 * nodes + 1)))):
            if at < 2:
                ohm = 0.0 if at == 0 and rng.random() < 0.4 else float(10 ** rng.uniform(-3, 2))
                net.batteries.append((u, v, float(level * rng.uniform(0.3, 2.0)), ohm))
            elif rng.random() < 0.6:
                ratio = float(rng.uniform(1.05, 14.9))
                net.heaters.append(
                    (u, v, float(10 ** rng.uniform(-1, 2.5)), float(10 ** rng.uniform(-2, 1)), ratio)
                )
            else:
                net.resistors.append((u, v, float(10 ** rng.uniform(-4, 4))))
        point = solve(net, catalogue)
        amps = max((supply.a for supply in point.supplies.values()), default=0.0)
        assert point.residual_a <= 1e-7 * max(amps, 1e-3), "what rounding leaves at a ratio of 1e8"
