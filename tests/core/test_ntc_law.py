"""The thermistor law, and which of its states a circuit ends in when it is started from cold."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.assess import assess
from core.catalogue import load_builtin
from core.elements.ntc import NtcLaw, steady_resistance, thermistor_k
from core.results import BranchPoint
from core.sheet import AnyPart, Battery, Resistor, Sheet, Thermistor, Tube, Wire

AMBIENT_K = 298.15


def law(r25: float = 10.0, beta: float = 3000.0, dissipation: float = 0.01) -> NtcLaw:
    return NtcLaw(np.array([r25]), np.array([beta]), np.array([dissipation]), AMBIENT_K)


def wired(parts: list[AnyPart], straps: str = "", **fields: Any) -> Sheet:
    """A sheet with straps written ``B1.+=V1.4 V1.5=B1.-``."""
    ends = [pair.split("=") for pair in straps.split()]
    wires = tuple(Wire(id=f"w{n}", start=a, end=b) for n, (a, b) in enumerate(ends))
    return Sheet(parts=tuple(parts), wires=wires + fields.pop("wires", ()), **fields)


def run(parts: list[AnyPart], straps: str) -> BranchPoint:
    point = assess(wired(parts, straps), load_builtin()).points["nominal"]
    assert not point.unsolved
    return point.branches["N1"]


def test_zero_power_resistance() -> None:
    ohm, elasticity = steady_resistance(law(), np.zeros(1))
    assert ohm[0] == pytest.approx(10.0, rel=1e-12)
    assert elasticity[0] == 0.0


def test_beta_between_two_temperatures() -> None:
    """B = ln(R1/R2) / (1/T1 - 1/T2), the definition, between 25 and 100 °C."""
    one = law()
    hot = steady_resistance(one, np.array([0.75]))[0][0]  # 75 K at 10 mW/K
    assert thermistor_k(one, np.array([0.75]))[0] == pytest.approx(373.15)
    assert np.log(10.0 / hot) / (1 / 298.15 - 1 / 373.15) == pytest.approx(3000.0, rel=1e-12)


@given(st.floats(2000, 5000), st.floats(1e-4, 5.0))
def test_elasticity_is_the_logarithmic_derivative(beta: float, watts: float) -> None:
    one = law(beta=beta)
    step = 1e-6
    low, high = (steady_resistance(one, np.array([watts * np.exp(s)]))[0][0] for s in (-step, step))
    found = steady_resistance(one, np.array([watts]))[1][0]
    assert found <= 0
    assert found == pytest.approx(np.log(high / low) / (2 * step), rel=1e-5, abs=1e-7)


def test_from_cold_the_lowest_state_is_reached() -> None:
    """5.5 V behind 1 ohm and a 300 ohm disc with 20 mW/K: one state barely warm, one hot, an unstable one between.

    By scanning the heat balance over temperature: a circuit switched on cold stays at the first crossing.
    """
    emf, ohm, r25, beta, dissipation = 5.5, 1.0, 300.0, 4500.0, 0.02
    kelvin = AMBIENT_K + np.geomspace(1e-3, 3000, 200_001)
    body = r25 * np.exp(beta * (1 / kelvin - 1 / 298.15))
    surplus = emf**2 * body / (body + ohm) ** 2 - dissipation * (kelvin - AMBIENT_K)
    down = kelvin[:-1][(surplus[:-1] > 0) & (surplus[1:] <= 0)]
    assert len(down) == 2, "the example must have two stable states"
    found = run(
        [Battery(id="B1", emf_v=emf), Resistor(id="R1", ohm=ohm),
         Thermistor(id="N1", r25_ohm=r25, beta_k=beta, dissipation_w_per_k=dissipation)],
        "B1.+=R1.1 R1.2=N1.1 N1.2=B1.-",
    )  # fmt: skip
    assert found.kelvin == pytest.approx(down[0], rel=1e-4)


@pytest.mark.parametrize("seed", range(60))
def test_random_circuits_end_at_the_first_crossing(seed: int) -> None:
    """As above for random droppers and discs; the scan's own steps are 1e-4."""
    rng = np.random.default_rng(seed)
    emf, ohm = 10 ** rng.uniform(0, 2.3), 10 ** rng.uniform(0, 3)
    r25, beta, dissipation = 10 ** rng.uniform(0, 3.5), rng.uniform(2500, 4800), 10 ** rng.uniform(-2.5, -1.5)
    kelvin = AMBIENT_K + np.geomspace(1e-9, 1e6, 400_001)
    body = r25 * np.exp(beta * (1 / kelvin - 1 / 298.15))
    surplus = emf**2 * body / (body + ohm) ** 2 - dissipation * (kelvin - AMBIENT_K)
    down = kelvin[:-1][(surplus[:-1] > 0) & (surplus[1:] <= 0)]
    found = run(
        [Battery(id="B1", emf_v=emf), Resistor(id="R1", ohm=ohm),
         Thermistor(id="N1", r25_ohm=r25, beta_k=beta, dissipation_w_per_k=dissipation)],
        "B1.+=R1.1 R1.2=N1.1 N1.2=B1.-",
    )  # fmt: skip
    assert found.kelvin is not None
    assert found.kelvin - AMBIENT_K == pytest.approx(down[0] - AMBIENT_K, rel=3e-4)


def test_more_volts_bring_the_hot_state() -> None:
    """Past the turning point of its curve the same disc goes over to the hot state."""
    parts = [
        Resistor(id="R1", ohm=1.0),
        Thermistor(id="N1", r25_ohm=300.0, beta_k=4500.0, dissipation_w_per_k=0.02),
    ]
    mild, strong = (
        run([Battery(id="B1", emf_v=emf), *parts], "B1.+=R1.1 R1.2=N1.1 N1.2=B1.-") for emf in (5.5, 8.0)
    )
    assert mild.v / mild.a > 200.0
    assert strong.v / strong.a < 1.0


def test_in_a_string_it_is_hot_and_takes_few_volts() -> None:
    """4 x 6.3 V at 0.3 A with a 100 ohm disc on 30 V: the string runs, the disc keeps a few volts."""
    tubes = [Tube(id=f"V{n}", type="6SN7", rated_a=0.3) for n in range(4)]
    disc = Thermistor(id="N1", r25_ohm=100.0, beta_k=3300.0, dissipation_w_per_k=0.005)
    straps = "B1.+=N1.1 N1.2=V0.7 V0.8=V1.7 V1.8=V2.7 V2.8=V3.7 V3.8=B1.-"
    point = assess(wired([Battery(id="B1", emf_v=30.0), disc, *tubes], straps), load_builtin()).points
    hot, cold = point["nominal"], point["cold"]
    assert hot.branches["N1"].v == pytest.approx(30.0 - 4 * hot.heaters["V0"][0].v, rel=1e-9)
    assert hot.branches["N1"].kelvin == pytest.approx(AMBIENT_K + hot.branches["N1"].w / 0.005, rel=1e-9)
    assert cold.branches["N1"].v / cold.branches["N1"].a == pytest.approx(100.0, rel=1e-6)
    assert cold.branches["N1"].kelvin == pytest.approx(AMBIENT_K)
    assert cold.supplies["B1"].a < hot.supplies["B1"].a, "the disc holds the first current back"


def test_it_does_not_care_for_direction() -> None:
    parts = [Battery(id="B1", emf_v=9.0), Thermistor(id="N1", type="S237 5 ohm"), Resistor(id="R1", ohm=4.0)]
    forward = run(parts, "B1.+=N1.1 N1.2=R1.1 R1.2=B1.-")
    backward = run(parts, "B1.+=N1.2 N1.1=R1.1 R1.2=B1.-")
    assert (forward.v, forward.a) == pytest.approx((backward.v, backward.a), rel=1e-12)


def test_one_that_carries_nothing() -> None:
    found = run([Battery(id="B1", emf_v=9.0), Thermistor(id="N1", type="S237 5 ohm")], "B1.+=N1.1")
    assert found.a == pytest.approx(0.0, abs=1e-12)
    assert found.kelvin == pytest.approx(AMBIENT_K)
