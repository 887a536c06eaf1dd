"""Inrush thermistors in time: EPCOS data sheets 05/02, series S235, S237 and S238.

    C_th dT/dt = I^2 R(T) - delta (T - Ta)        R = R25 exp(B (1/T - 1/298.15 K))        C_th = delta tau

Reference B is an independent integration of the first line (S237 5 ohm behind 2 ohm on 12 V). Each row of the sheets
must come by itself to the resistance of its own fit R = k I^-n, which B, delta and tau say nothing of.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from core.catalogue import Catalogue
from core.sheet import Battery, DcSupply, Resistor, Sheet, Thermistor
from core.warmup import WarmupRun, warm_up
from core.warmup.results import Start

# series and R25, ohm; highest current, A; B, K; delta, mW/K; tau, s; C_th, mJ/K; k; n
ROWS = (
    ("S235 5", 5.0, 4.2, 2800, 9, 60, 540, 0.710, 1.30), ("S235 6", 6.0, 4.0, 2800, 9, 60, 540, 0.757, 1.30),
    ("S235 10", 10.0, 3.0, 2900, 9, 60, 540, 0.879, 1.32), ("S237 1", 1.0, 9.0, 2700, 17, 90, 1530, 0.622, 1.27),
    ("S237 2.5", 2.5, 6.5, 2800, 17, 90, 1530, 0.843, 1.30), ("S237 5", 5.0, 5.0, 2900, 17, 90, 1530, 1.05, 1.32),
    ("S237 7", 7.0, 4.2, 3060, 17, 90, 1530, 1.16, 1.33), ("S237 10", 10.0, 3.7, 3060, 17, 90, 1530, 1.29, 1.34),
    ("S237 22", 22.0, 2.8, 3300, 17, 90, 1530, 1.57, 1.37), ("S238 2.5", 2.5, 8.4, 2800, 20, 80, 1600, 0.98, 1.36),
    ("S238 5", 5.0, 6.4, 2965, 20, 80, 1600, 1.23, 1.37),
)  # fmt: skip
Row = tuple[str, float, float, float, float, float, float, float, float]


def thermistor(row: Row) -> Thermistor:
    _, r25, _, beta, milliwatts, tau_s, *_ = row
    return Thermistor(
        id="N1", r25_ohm=r25, beta_k=beta, dissipation_w_per_k=milliwatts / 1000, tau_s=float(tau_s)
    )


@pytest.fixture(scope="module")
def reference(wired: Callable[..., Sheet], catalogue: Catalogue) -> WarmupRun:
    """S237 5 ohm behind 2 ohm on 12 V, five minutes."""
    parts = [Battery(id="B1", emf_v=12.0), Resistor(id="R1", ohm=2.0), thermistor(ROWS[5])]
    sheet = wired(parts, "B1.+=R1.1 R1.2=N1.1 N1.2=B1.-")
    return warm_up(sheet, catalogue, Start(mains_v=230.0, seconds=300.0))


@pytest.mark.parametrize(
    ("t_s", "amps", "celsius", "ohm"),
    [
        (0.0, 1.71429, 25.00, 5.00000), (1.0, 2.13185, 35.16, 3.62892), (2.0, 2.59634, 46.19, 2.62190),
        (5.0, 3.85333, 79.42, 1.11419), (10.0, 4.84422, 119.95, 0.47718), (20.0, 5.37436, 162.30, 0.23282),
        (30.0, 5.53046, 183.97, 0.16980), (60.0, 5.66101, 210.59, 0.11976), (120.0, 5.70038, 221.34, 0.10512),
        (300.0, 5.70528, 222.81, 0.10332),
    ],
)  # fmt: skip
def test_reference_in_time(t_s: float, amps: float, celsius: float, ohm: float, reference: WarmupRun) -> None:
    """Within 0.02 %: five digits are given, the hundredth of a degree alone is worth as much of the ohms.

    Asked for are 0.1 %.
    """
    body = reference.at(t_s).branches["N1"]
    assert body.a == pytest.approx(amps, rel=2e-4)
    assert body.kelvin == pytest.approx(celsius + 273.15, rel=2e-4)
    assert body.v / body.a == pytest.approx(ohm, rel=2e-4)


def test_reference_is_above_its_highest_current(reference: WarmupRun) -> None:
    """5.7 A through a part for 5 A; its body stays below the 250 °C that the sheet knows of."""
    found = reference.summary.thermistors["N1"]
    assert found.peak_a == pytest.approx(5.70528, rel=1e-4)
    assert found.peak_a > ROWS[5][2]
    assert found.peak_k < 250 + 273.15
    assert found.first_ohm == pytest.approx(5.0, rel=1e-9)


@pytest.mark.parametrize("load", [1.0, 0.75, 0.5, 0.3])
@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_where_it_comes_to_rest(
    row: Row, load: float, wired: Callable[..., Sheet], catalogue: Catalogue
) -> None:
    """Fed with a share of its highest current for twenty time constants: R = k I^-n within 6 %, as good as the fit."""
    k, n = row[7:]
    amps = row[2] * load
    sheet = wired([DcSupply(id="U1", set_v=300.0, limit_a=amps), thermistor(row)], "U1.+=N1.1 N1.2=U1.-")
    run = warm_up(sheet, catalogue, Start(mains_v=230.0, seconds=20.0 * row[5]))
    body = run.at(run.end_s).branches["N1"]
    assert body.a == pytest.approx(amps, rel=1e-6)
    assert body.v / body.a == pytest.approx(k * amps**-n, rel=0.06)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_cooling(row: Row, wired: Callable[..., Sheet], catalogue: Catalogue) -> None:
    """With the mains off the rise falls by e in its time constant: the sheet's definition of it, here to 1e-4.

    The same row gives the heat capacity of the first seconds, which must be delta tau: within the rounding of the
    sheet's three digits (0.5 %).
    """
    tau_s, capacity = float(row[5]), row[6] / 1000
    parts = [DcSupply(id="U1", set_v=300.0, limit_a=row[2] / 2), thermistor(row)]
    sheet = wired(parts, "U1.+=N1.1 N1.2=U1.-")
    start = Start(mains_v=230.0, seconds=3 * tau_s + 1, off_at_s=tau_s, off_for_s=2 * tau_s)
    run = warm_up(sheet, catalogue, start)
    kelvin = run.traces(np.array([0.0, 1e-3, tau_s + 1e-6, 2 * tau_s + 1e-6])).branches["N1"].kelvin
    assert kelvin is not None
    rise = kelvin - 298.15
    assert rise[3] / rise[2] == pytest.approx(np.exp(-1), rel=1e-4)
    assert rise[1] * capacity / 1e-3 == pytest.approx((row[2] / 2) ** 2 * row[1], rel=5e-3)
