"""Inrush thermistors: EPCOS data sheets 05/02, series S235, S237 and S238.

Each row gives R25, B, dissipation factor and, for the steady state, R = k I^-n from 0.3 to 1 times the highest
current. B and dissipation alone must reproduce the k, n fit: two independent columns of the same sheet.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from core.assess import Assessment
from core.sheet import Battery, DcSupply, Resistor, Thermistor

# series and R25, ohm; highest current, A; B, K; dissipation, mW/K; k; n; highest power, W
ROWS = (
    ("S235 5", 5.0, 4.2, 2800, 9, 0.710, 1.30, 1.8), ("S235 6", 6.0, 4.0, 2800, 9, 0.757, 1.30, 1.8),
    ("S235 10", 10.0, 3.0, 2900, 9, 0.879, 1.32, 1.8), ("S237 1", 1.0, 9.0, 2700, 17, 0.622, 1.27, 3.1),
    ("S237 2.5", 2.5, 6.5, 2800, 17, 0.843, 1.30, 3.1), ("S237 5", 5.0, 5.0, 2900, 17, 1.05, 1.32, 3.1),
    ("S237 7", 7.0, 4.2, 3060, 17, 1.16, 1.33, 3.1), ("S237 10", 10.0, 3.7, 3060, 17, 1.29, 1.34, 3.1),
    ("S237 22", 22.0, 2.8, 3300, 17, 1.57, 1.37, 3.1), ("S238 2.5", 2.5, 8.4, 2800, 20, 0.98, 1.36, 3.9),
    ("S238 5", 5.0, 6.4, 2965, 20, 1.23, 1.37, 3.9),
)  # fmt: skip
LOADS = (1.0, 0.75, 0.5, 0.3)


def thermistor(row: tuple[str, float, float, float, float, float, float, float]) -> Thermistor:
    _, r25, _, beta, milliwatts, *_ = row
    return Thermistor(id="N1", r25_ohm=r25, beta_k=beta, dissipation_w_per_k=milliwatts / 1000)


@pytest.mark.parametrize("load", LOADS)
@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_resistance_at_a_current(
    row: tuple[str, float, float, float, float, float, float, float],
    load: float,
    solved: Callable[..., Assessment],
) -> None:
    """A supply at its limit feeds the current. Within 6 %: the sheets' own two-parameter fit is no better."""
    *_, k, n, _ = row
    amps = row[2] * load
    parts = [DcSupply(id="U1", set_v=50.0, limit_a=amps), thermistor(row)]
    body = solved(parts, "U1.+=N1.1 N1.2=U1.-").points["nominal"].branches["N1"]
    assert body.a == pytest.approx(amps, rel=1e-9)
    assert body.v / body.a == pytest.approx(k * amps**-n, rel=0.06)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_power_at_the_highest_current(
    row: tuple[str, float, float, float, float, float, float, float], solved: Callable[..., Assessment]
) -> None:
    """The highest power of the sheet: within 11 %, as the fit itself misses it, the sheet giving two figures."""
    parts = [DcSupply(id="U1", set_v=50.0, limit_a=row[2]), thermistor(row)]
    body = solved(parts, "U1.+=N1.1 N1.2=U1.-").points["nominal"].branches["N1"]
    assert body.w == pytest.approx(row[7], rel=0.11)
    assert body.kelvin == pytest.approx(298.15 + body.w / (row[4] / 1000), rel=1e-9)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
@pytest.mark.parametrize("load", [1.0, 0.4])
def test_behind_a_dropper(
    row: tuple[str, float, float, float, float, float, float, float],
    load: float,
    solved: Callable[..., Assessment],
) -> None:
    """A battery and a resistor chosen for the current; the same 6 %, read at the current that results."""
    *_, k, n, _ = row
    amps = row[2] * load
    ohm = 100 * k * amps**-n
    parts = [
        Battery(id="B1", emf_v=amps * (ohm + k * amps**-n), internal_ohm=0.1),
        Resistor(id="R1", ohm=ohm - 0.1),
        thermistor(row),
    ]
    body = solved(parts, "B1.+=R1.1 R1.2=N1.1 N1.2=B1.-").points["nominal"].branches["N1"]
    assert body.a == pytest.approx(amps, rel=0.01)
    assert body.v / body.a == pytest.approx(k * body.a**-n, rel=0.06)


@pytest.mark.parametrize(
    ("series", "amps", "ohm", "celsius"),
    [("S237 5", 5.0, 0.1242, 208.0), ("S237 5", 3.75, 0.1849, None), ("S237 5", 1.5, 0.6172, None),
     ("S235 10", 3.0, 0.2004, None), ("S237 2.5", 6.5, 0.0726, None), ("S237 10", 3.7, 0.2194, None),
     ("S237 1", 9.0, 0.0362, None), ("S238 5", 6.4, 0.0960, None)],
)  # fmt: skip
def test_hand_calculation(
    series: str, amps: float, ohm: float, celsius: float | None, solved: Callable[..., Assessment]
) -> None:
    """The balance of I2R and dissipation solved by hand, to the figures given (0.2 %)."""
    row = next(row for row in ROWS if row[0] == series)
    parts = [DcSupply(id="U1", set_v=50.0, limit_a=amps), thermistor(row)]
    body = solved(parts, "U1.+=N1.1 N1.2=U1.-").points["nominal"].branches["N1"]
    assert body.v / body.a == pytest.approx(ohm, rel=2e-3)
    if celsius is not None:
        assert body.kelvin == pytest.approx(celsius + 273.15, abs=0.5)


def test_above_its_highest_current(solved: Callable[..., Assessment]) -> None:
    """S237 5 ohm in series with 2 ohm on 12 V ends at 5.70528 A, 222.81 °C: a stiff integration in time, to 0.01 %."""
    row = ROWS[5]
    parts = [Battery(id="B1", emf_v=12.0), Resistor(id="R1", ohm=2.0), thermistor(row)]
    body = solved(parts, "B1.+=R1.1 R1.2=N1.1 N1.2=B1.-").points["nominal"].branches["N1"]
    assert body.a == pytest.approx(5.70528, rel=1e-4)
    assert body.kelvin == pytest.approx(222.81 + 273.15, rel=1e-4)
    assert body.v / body.a == pytest.approx(0.10332, rel=1e-4)
