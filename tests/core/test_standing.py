"""How a heater is judged at an instant of the warm-up."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.assess import assess
from core.catalogue import load_builtin
from core.results import COLD, NOMINAL, HeaterPoint, Limits
from core.sheet import Battery, Lamp, Sheet, Tube, Wire
from core.warmup.standing import FAR_OVER, is_settled, standing

ROOM_K = 293.15
READY_K = ROOM_K + 0.9 * (1050.0 - ROOM_K)


def tube(v: float, heater_k: float, cathode_k: float, a: float = 0.3) -> HeaterPoint:
    return HeaterPoint("V1", "4-5", v, a, v * a, 6.3, 0.3, heater_k, cathode_k)


def lamp(v: float, a: float, kelvin: float) -> HeaterPoint:
    return HeaterPoint("L1", "1-2", v, a, v * a, 6.3, 0.15, kelvin, kelvin)


@pytest.mark.parametrize(
    ("heater", "expected"),
    [
        (tube(0.0, ROOM_K, ROOM_K, 0.0), "no volts"),
        (tube(4.0, 500.0, 310.0), "cold"),
        (tube(4.0, 799.9, 400.0), "cold"),
        (tube(4.0, 800.0, 400.0), "warming"),
        (tube(8.0, 1300.0, 600.0), "warming"),
        (tube(6.3 * FAR_OVER, 1300.0, 600.0), "warming"),
        (tube(6.3 * FAR_OVER + 0.01, 1300.0, 600.0), "far over"),
        (tube(6.3 * FAR_OVER + 0.01, 500.0, 300.0), "far over"),
        (tube(6.3, 1400.0, READY_K - 0.1), "warming"),
        (tube(6.3, 1400.0, READY_K + 0.1), "ok"),
        (tube(7.2, 1450.0, 1060.0), "over"),
        (tube(6.3 * FAR_OVER + 0.01, 1700.0, 1200.0, 0.38), "over"),
        (tube(5.4, 1300.0, 1000.0), "under"),
        (tube(2.0, 1000.0, 760.0, 0.16), "under"),
        (tube(0.1, 1200.0, 1000.0), "no volts"),
    ],
)
def test_a_tube_on_its_way(heater: HeaterPoint, expected: str) -> None:
    assert standing(heater, Limits(), ROOM_K) == expected


def test_the_window_of_a_ready_heater_is_its_own() -> None:
    heater = tube(6.7, 1420.0, 1055.0)
    assert standing(heater, Limits(), ROOM_K) == "ok"
    assert standing(heater, Limits(low_pct=-5, high_pct=5), ROOM_K) == "over"


def test_a_lamp_settles_by_its_resistance() -> None:
    assert not is_settled(lamp(3.0, 0.6, 700.0), ROOM_K)
    assert is_settled(lamp(6.2, 0.149, 2400.0), ROOM_K)
    assert not is_settled(lamp(0.0, 0.0, 2400.0), ROOM_K)


def test_a_hot_room_makes_no_cold_tube_ready() -> None:
    assert not is_settled(tube(6.3, 400.0, 380.0), 373.0)
    assert is_settled(tube(6.3, 1400.0, 990.0), 373.0)


@given(st.floats(0.3, 1.3))
def test_every_steady_heater_has_settled(share: float) -> None:
    """Of a tube and of a lamp, at any volts that heat them."""
    sheet = Sheet(
        parts=(
            Battery(id="B1", emf_v=6.3 * share, internal_ohm=1e-6),
            Tube(id="V1", type="EL84"),
            Lamp(id="L1", rated_v=6.3, rated_a=0.15),
        ),
        wires=(
            Wire(id="w1", start="B1.+", end="V1.4"),
            Wire(id="w2", start="B1.-", end="V1.5"),
            Wire(id="w3", start="B1.+", end="L1.1"),
            Wire(id="w4", start="B1.-", end="L1.2"),
        ),
    )
    answers = assess(sheet, load_builtin())
    for owner in ("V1", "L1"):
        for heater in answers.points[NOMINAL].heaters[owner]:
            assert is_settled(heater, ROOM_K + 5.0)
            assert standing(heater, Limits(), ROOM_K + 5.0) == answers.state_of(heater)
        for heater in answers.points[COLD].heaters[owner]:
            assert not is_settled(heater, ROOM_K + 5.0)
