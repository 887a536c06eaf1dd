"""From answers to what each part and wire says."""

from __future__ import annotations

import pytest

from app.canvas.looks import part_looks, wire_text
from core.results import (
    INSTANT,
    Assessment,
    BranchPoint,
    Condition,
    HeaterPoint,
    Limits,
    OperatingPoint,
    SupplyPoint,
)
from core.sheet import Chassis, Fuse, Lamp, Relay, Resistor, Sheet, Thermistor, Tube, Winding, Wire
from tests.app.canvas_rig import CATALOGUE

HOT = Condition("nominal", 230.0)


def heater(
    owner: str, pins: str, v: float, a: float, rated_v: float = 6.3, rated_a: float = 0.15
) -> HeaterPoint:
    return HeaterPoint(owner, pins, v, a, v * a, rated_v, rated_a, 1400.0, 1040.0)


def look_of(part, point: OperatingPoint, strings=(), limits=None):
    sheet = Sheet(parts=(part,))
    assessment = Assessment(sheet, {"nominal": point}, strings, (), limits or {})
    return part_looks(sheet, CATALOGUE, assessment, point)[part.id]


def tube_look(*heaters: HeaterPoint, kind: str = "ECC83", strings=(), condition=HOT, limits=None):
    point = OperatingPoint(condition, heaters={"V1": heaters})
    return look_of(Tube(id="V1", type=kind), point, strings, limits)


def figures(text: str) -> str:
    return text.replace("\u2009", " ").replace("\u2212", "-")


def test_one_section():
    look = tube_look(heater("V1", "4-5", 6.29, 0.759, rated_a=0.76), kind="EL84")
    assert figures(look.values) == "6.29 V  -0.2 %  0.759 A"
    assert look.state == "ok"
    assert look.kelvin == {"4-5": 1400.0}


def test_parallel_sections_add_their_currents():
    look = tube_look(heater("V1", "4-9", 6.29, 0.15), heater("V1", "9-5", 6.29, 0.15))
    assert figures(look.values) == "6.29 V  -0.2 %  0.300 A"


def test_sections_in_series_add_their_volts():
    both = heater("V1", "4-9", 6.29, 0.15), heater("V1", "9-5", 6.29, 0.15)
    look = tube_look(*both, strings=(("V1:4-9", "V1:9-5"),))
    assert figures(look.values) == "12.58 V  -0.2 %  0.150 A"


def test_sections_that_differ_are_listed_and_the_worse_state_counts():
    look = tube_look(heater("V1", "4-9", 6.3, 0.15), heater("V1", "9-5", 0.0, 0.0))
    assert figures(look.values) == "6.30 / 0.00 V  0.150 / 0.000 A"
    assert look.state == "cold"


@pytest.mark.parametrize(
    ("volts", "state"),
    [(6.3 * 1.1, "ok"), (6.94, "over"), (6.3 * 0.9, "ok"), (5.66, "under"), (0.32, "under"), (0.31, "cold")],
)
def test_state_by_tolerance(volts, state):
    assert tube_look(heater("V1", "4-5", volts, 0.15), kind="EL84").state == state


def test_the_limits_of_the_assessment_decide():
    by_current = {"V1:4-5": Limits(True, -6.0, 6.0)}
    hot = heater("V1", "4-5", 27.0, 0.32, rated_v=27, rated_a=0.3)
    assert tube_look(hot, kind="PL500", limits=by_current).state == "over"
    assert tube_look(hot, kind="PL500").state == "ok"


def test_at_the_cold_instant_every_heater_is_cold():
    look = tube_look(
        heater("V1", "4-5", 6.3, 4.0), kind="EL84", condition=Condition("cold", 230.0, cold=True)
    )
    assert look.state == "cold"


@pytest.mark.parametrize(
    ("part", "words"),
    [
        (Tube(id="V1", type="EL84", pulled=True), "pulled"),
        (Tube(id="V1", type="nothing"), "type not known"),
        (Tube(id="V1", type="EL84"), "not solved"),
        (Lamp(id="H1", type="#47"), "not solved"),
    ],
)
def test_a_heater_without_answer_says_why(part, words):
    look = look_of(part, OperatingPoint(HOT))
    assert look.state == "cold"
    assert look.values == words


def test_supply_with_and_without_rating():
    part = Winding(id="T1", rated_v=6.3, rated_a=2)
    look = look_of(part, OperatingPoint(HOT, supplies={"T1": SupplyPoint(6.45, 1.06, 6.8, 2.0)}))
    assert figures(look.values) == "6.45 V  1.06 A  53 %"
    assert look.state == "ok"
    look = look_of(part, OperatingPoint(HOT, supplies={"T1": SupplyPoint(6.45, 2.06, 6.8, 2.0)}))
    assert look.state == "over"
    look = look_of(part, OperatingPoint(HOT, supplies={"T1": SupplyPoint(6.45, 1.0, 6.45, None)}))
    assert figures(look.values) == "6.45 V  1.00 A"
    look = look_of(
        part, OperatingPoint(HOT, supplies={"T1": SupplyPoint(2.0, 1.0, 2.0, None, limiting=True)})
    )
    assert look.state == "over"


def test_other_parts():
    point = OperatingPoint(
        HOT,
        branches={
            "R1": BranchPoint(0.22, 0.22, 0.0484),
            "R2": BranchPoint(2.2, 2.2, 4.84),
            "F1": BranchPoint(0.05, 1.5, 0.075),
            "K1": BranchPoint(5.9, 0.07, 0.41, pulled_in=True),
        },
    )
    look = look_of(Resistor(id="R1", ohm=1), point)
    assert (figures(look.values), look.state) == ("0.22 V  0.048 W", "none")
    assert look_of(Resistor(id="R2", ohm=1, rated_w=3), point).state == "over"
    look = look_of(Fuse(id="F1", rated_a=1), point)
    assert (figures(look.values), look.state) == ("0.05 V  1.50 A", "over")
    assert look_of(Relay(id="K1", coil_v=6, coil_ohm=80), point).pulled_in
    assert look_of(Chassis(id="E1"), point).values == ""


def test_the_rush_into_cold_heaters_marks_neither_resistors_nor_supplies():
    cold = OperatingPoint(
        Condition("cold", 230.0, cold=True),
        supplies={
            "T1": SupplyPoint(5.0, 9.0, 45.0, 2.0),
            "T2": SupplyPoint(5.0, 2.0, 10.0, 2.0, limiting=True),
        },
        branches={"R2": BranchPoint(2.2, 2.2, 4.84)},
    )
    assert look_of(Resistor(id="R2", ohm=1, rated_w=3), cold).state == "none"
    assert look_of(Winding(id="T1", rated_v=6.3, rated_a=2), cold).state == "ok"
    assert look_of(Winding(id="T2", rated_v=6.3, rated_a=2), cold).state == "over"


def test_pins_carry_their_volts():
    point = OperatingPoint(HOT, nodes={"V1.4": 6.3, "V1.5": complex(3.0, 4.0), "V1.9": -1.5})
    values = look_of(Tube(id="V1", type="ECC83"), point).pin_values
    assert {name: figures(text) for name, text in values.items()} == {
        "4": "6.30 V",
        "5": "5.00 V",
        "9": "-1.50 V",
    }


def test_without_answers_no_part_shows_a_number():
    sheet = Sheet(
        parts=(Tube(id="V1", type="EL84"), Winding(id="T1", rated_v=6.3, rated_a=1), Chassis(id="E1"))
    )
    looks = part_looks(sheet, CATALOGUE, None, None)
    assert [look.values for look in looks.values()] == ["", "", ""]
    assert [look.state for look in looks.values()] == ["stale", "stale", "none"]
    assert looks["V1"].kelvin == {}
    assessment = Assessment(sheet, {}, (), ())
    assert part_looks(sheet, CATALOGUE, assessment, None)["V1"].state == "stale"


@pytest.mark.parametrize(
    ("fields", "text"),
    [
        ({"awg": 20, "length_m": 0.3}, "20 AWG 0.30 m"),
        ({"area_mm2": 0.5, "length_m": 0.15}, "0.5 mm² 0.15 m"),
        ({"area_mm2": 0.75, "length_m": 1.0}, "0.75 mm² 1.00 m"),
        ({"area_mm2": 10.0, "length_m": 1.0}, "10 mm² 1.00 m"),
        ({}, ""),
        ({"awg": 20}, ""),
        ({"length_m": 0.3}, ""),
    ],
)
def test_wire_text(fields, text):
    assert figures(wire_text(Wire(id="w1", start="V1.4", end="V2.4", **fields))) == text


NOW = Condition(INSTANT, 230.0)
ROOM_K = 298.15


def warming(v: float, heater_k: float, cathode_k: float, a: float = 0.3) -> HeaterPoint:
    return HeaterPoint("V1", "4-5", v, a, v * a, 6.3, 0.3, heater_k, cathode_k)


@pytest.mark.parametrize(
    ("heater", "state", "words"),
    [
        (warming(2.0, ROOM_K, ROOM_K, 1.0), "cold", "no glow yet"),
        (warming(4.0, 900.0, 500.0), "none", "warming up"),
        (warming(9.6, 1500.0, 700.0), "over", "more than 1.5 times"),
        (warming(6.3, 1439.0, 1049.0), "ok", "ready, within tolerance"),
        (warming(7.2, 1500.0, 1090.0), "over", "over"),
        (warming(0.0, 1100.0, 990.0, 0.0), "cold", "no volts"),
    ],
)
def test_a_heater_at_an_instant(heater: HeaterPoint, state: str, words: str) -> None:
    look = tube_look(heater, kind="EL84", condition=NOW)
    assert look.state == state
    assert words in look.remark
    assert figures(f"heater {heater.heater_k:.0f} K") in figures(look.remark)
    assert look.values, "figures are shown however cold it is"


def test_a_tube_at_an_instant_has_the_mark_of_its_worst_section() -> None:
    warm = HeaterPoint("V1", "4-9", 4.0, 0.12, 0.48, 6.3, 0.15, 1000.0, 600.0)
    cold = HeaterPoint("V1", "9-5", 4.0, 0.3, 1.2, 6.3, 0.15, 500.0, 310.0)
    look = tube_look(warm, cold, condition=NOW)
    assert look.state == "cold"
    assert look.kelvin == {"4-9": 1000.0, "9-5": 500.0}


@pytest.mark.parametrize(
    ("did", "supply", "state", "word"),
    [
        (None, SupplyPoint(6.3, 3.0, 18.9, 5.0), "ok", "60 %"),
        (None, SupplyPoint(6.3, 9.0, 56.7, 5.0), "none", "180 %"),
        ("at its limit", SupplyPoint(2.0, 5.0, 10.0, 5.0, limiting=True, demand_a=20.0), "over", "at limit"),
        ("cuts out", SupplyPoint(0.0, 0.0, 0.0, 5.0), "over", "cut out"),
        ("latches off", SupplyPoint(0.0, 0.0, 0.0, 5.0), "over", "latched"),
        ("tries again", SupplyPoint(6.3, 3.0, 18.9, 5.0), "ok", "60 %"),
    ],
)
def test_a_supply_at_an_instant(did, supply: SupplyPoint, state: str, word: str) -> None:
    part = Winding(id="T1", rated_v=6.3, rated_a=5.0)
    sheet, point = Sheet(parts=(part,)), OperatingPoint(NOW, supplies={"T1": supply})
    answers = Assessment(sheet, {}, (), ())
    doing = {} if did is None else {"T1": did}
    look = part_looks(sheet, CATALOGUE, answers, point, doing)["T1"]
    assert look.state == state
    assert figures(look.values).endswith(word)
    gone = part_looks(sheet, CATALOGUE, answers, point, {"": "mains off"})["T1"]
    assert (gone.state, gone.values.rpartition("  ")[2]) == ("none", "mains off")


def test_parts_in_the_line_at_an_instant() -> None:
    def at_instant(part, branch: BranchPoint):
        return look_of(part, OperatingPoint(NOW, branches={part.id: branch}))

    hot = at_instant(Resistor(id="R1", ohm=10, rated_w=5), BranchPoint(10.0, 1.0, 10.0))
    assert hot.state == "none"
    assert "above its rating" in hot.remark
    relay = Relay(id="K1", coil_v=12, coil_ohm=400, pull_in_v=9, drop_out_v=2)
    assert at_instant(relay, BranchPoint(12.0, 0.03, 0.36, None, True)).remark == "pulled in"
    released = at_instant(relay, BranchPoint(3.0, 0.01, 0.02, None, False))
    assert (released.remark, released.pulled_in) == ("released", False)
    warm = at_instant(Thermistor(id="N1", r25_ohm=5.0), BranchPoint(2.0, 1.0, 2.0, 373.15))
    assert figures(warm.values).endswith("100 °C")
    assert figures(warm.remark) == "2.00 W"


def test_a_thermistor_and_a_relay_say_how_they_stand_in_the_steady_state_too() -> None:
    warm = look_of(
        Thermistor(id="N1", r25_ohm=5.0),
        OperatingPoint(HOT, branches={"N1": BranchPoint(2.0, 1.0, 2.0, 373.15)}),
    )
    assert figures(warm.values) == "2.00 V  2.00 W"
    assert figures(warm.remark) == "100 °C"
