"""The façade: conditions, what every point holds, and what is remembered from one assessment to the next."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.assess import CHOSEN, COLD, HIGH, LOW, NOMINAL, Assessment, Memory, assess, conditions_of, look_at
from core.catalogue import load_builtin
from core.catalogue.types import Section, TubeType
from core.edits import add_wire, in_turn, move_parts, remove, rename, set_part
from core.results import Condition
from core.sheet import (
    Battery,
    Chassis,
    Lamp,
    Mains,
    RectifiedSupply,
    Resistor,
    Sheet,
    Tube,
    Winding,
)
from tests.core.circuits import wired


def amplifier() -> Sheet:
    """Two windings, each with its tubes, both tied to the chassis."""
    parts = [
        Winding(id="T1", rated_v=6.3, rated_a=2.0, rated_mains_v=230.0),
        Winding(id="T2", rated_v=5.0, rated_a=2.0, rated_mains_v=230.0),
        Tube(id="V1", type="ECC83"),
        Tube(id="V2", type="EL84", cathode_v=7.5),
        Tube(id="V3", type="300B"),
        Chassis(id="E1"),
    ]
    straps = "T1.a=V1.4 V1.4=V1.5 T1.b=V1.9 T1.a=V2.4 T1.b=V2.5 T1.b=E1.e T2.a=V3.1 T2.b=V3.4 T2.b=E1.e"
    return wired(parts, straps)


def check(sheet: Sheet, **more: Any) -> Assessment:
    return assess(sheet, load_builtin(), **more)


class TestConditions:
    def test_the_usual_four(self) -> None:
        found = conditions_of(Mains(nominal_v=240.0, low_pct=-6.0, high_pct=10.0))
        assert [(c.name, c.mains_v, c.cold) for c in found] == [
            (NOMINAL, 240.0, False), (LOW, pytest.approx(225.6), False), (HIGH, pytest.approx(264.0), False),
            (COLD, 240.0, True),
        ]  # fmt: skip

    def test_a_chosen_one_is_added_only_if_it_differs(self) -> None:
        mains = Mains()
        assert [c.name for c in conditions_of(mains, Condition("strip", 221.0))][-1] == CHOSEN
        assert len(conditions_of(mains, Condition("strip", 221.0, cold=True))) == 5
        assert len(conditions_of(mains, Condition("strip", 230.0))) == 4
        assert len(conditions_of(mains, Condition("strip", 230.0, cold=True))) == 4

    def test_chosen_point(self) -> None:
        answer = check(amplifier(), chosen=Condition("strip", 253.0 - 1e-3))
        assert [c.name for c in answer.conditions()] == [NOMINAL, LOW, HIGH, COLD, CHOSEN]
        chosen, high = (answer.points[name].heaters["V2"][0].v for name in (CHOSEN, HIGH))
        assert chosen == pytest.approx(high, rel=1e-5)
        assert chosen != high

    def test_more_mains_more_volts(self) -> None:
        points = check(amplifier()).points
        low, middle, high = (points[name].heaters["V2"][0] for name in (LOW, NOMINAL, HIGH))
        assert low.v < middle.v < high.v
        assert low.a < middle.a < high.a
        assert low.heater_k < middle.heater_k < high.heater_k
        assert low.cathode_k < middle.cathode_k < high.cathode_k

    def test_cold(self) -> None:
        point = check(amplifier()).points[COLD]
        for sections in point.heaters.values():
            for heater in sections:
                assert heater.heater_k == heater.cathode_k == pytest.approx(298.15)
                assert heater.a > 4 * heater.rated_a


class TestPoints:
    def test_every_socket_and_lamp_has_an_entry(self) -> None:
        parts = [
            Tube(id="V1", type="EL84", pulled=True),
            Tube(id="V2", type="no such type"),
            Lamp(id="H1", type="no such lamp"),
            Lamp(id="H2", type="#47"),
        ]
        heaters = check(wired(parts)).points[NOMINAL].heaters
        assert heaters["V1"] == heaters["V2"] == ()
        assert "H1" not in heaters
        assert heaters["H2"][0].pins == "1-2"

    def test_deviation_and_keys(self) -> None:
        answer = check(
            wired([Battery(id="B1", emf_v=6.615), Tube(id="V1", type="EL84")], "B1.+=V1.4 B1.-=V1.5")
        )
        heater = answer.points[NOMINAL].heaters["V1"][0]
        assert heater.deviation_pct == pytest.approx(5.0)
        assert heater.deviation_a_pct == pytest.approx(2.7, abs=0.1)
        assert (heater.key, heater.owner, heater.pins) == ("V1:4-5", "V1", "4-5")
        assert heater.w == pytest.approx(heater.v * heater.a)

    def test_nodes_branches_and_power(self) -> None:
        point = check(amplifier()).points[NOMINAL]
        assert point.nodes["E1.e"] == point.nodes["T1.b"] == 0.0
        assert point.nodes["V2.4"] == pytest.approx(point.supplies["T1"].v)
        assert {f"w{n}" for n in range(9)} <= point.branches.keys()
        assert point.power_in_w == pytest.approx(point.power_out_w, rel=1e-9)
        assert point.residual_a < 1e-9
        heat = sum(h.w for sections in point.heaters.values() for h in sections)
        assert sum(s.w for s in point.supplies.values()) == pytest.approx(heat, rel=1e-9)

    def test_strings(self) -> None:
        tubes = [Tube(id="V1", type="ECC83"), Tube(id="V2", type="ECC83")]
        answer = check(wired([Battery(id="B1", emf_v=25.2), *tubes], "B1.+=V1.4 V1.5=V2.4 V2.5=B1.-"))
        assert answer.strings == (("V1:4-9", "V1:9-5", "V2:4-9", "V2:9-5"),)

    def test_own_types(self) -> None:
        """A type that travels with the sheet is laid over the catalogue by the caller."""
        own = TubeType(designation="X99", sections=(Section(("1", "2"), 4.0, 1.0),))
        sheet = wired(
            [Battery(id="B1", emf_v=4.0), Tube(id="V1", type="X99")], "B1.+=V1.1 B1.-=V1.2", types=(own,)
        )
        assert check(sheet).points[NOMINAL].heaters["V1"] == ()
        answer = assess(sheet, load_builtin().with_types(sheet.types))
        assert answer.points[NOMINAL].heaters["V1"][0].a == pytest.approx(1.0)

    def test_what_is_not_solved_is_said(self) -> None:
        sheet = amplifier()
        parts = (*sheet.parts, RectifiedSupply(id="G1", rated_v=6.3, rated_a=1.0))
        answer = check(Sheet(parts=parts, wires=sheet.wires))
        for point in answer.points.values():
            assert [(miss.ids, miss.island) for miss in point.unsolved] == [(("G1",), ("G1.+", "G1.-"))]
            assert point.heaters["V2"][0].v > 5.0

    def test_an_empty_sheet(self) -> None:
        answer = check(Sheet())
        assert answer.strings == ()
        assert answer.points[NOMINAL].nodes == {}


class TestMemory:
    def test_nothing_is_solved_twice(self) -> None:
        memory = Memory()
        first = check(amplifier(), memory=memory)
        assert memory.solved == 2
        again = check(amplifier(), memory=memory)
        assert memory.solved == 0
        assert again.points == first.points

    def test_an_edit_solves_only_its_island(self) -> None:
        memory = Memory()
        check(amplifier(), memory=memory)
        edited = set_part("V2", rated_a=0.8)(amplifier())
        answer = check(edited, memory=memory)
        assert memory.solved == 1
        fresh = check(edited)
        assert answer.points == fresh.points

    def test_moving_solves_nothing(self) -> None:
        memory = Memory()
        check(amplifier(), memory=memory)
        check(move_parts(["V1", "T2"], 30.0, 40.0)(amplifier()), memory=memory)
        assert memory.solved == 0

    def test_undo_solves_nothing(self) -> None:
        memory = Memory()
        first = check(amplifier(), memory=memory)
        check(remove(["V2"])(amplifier()), memory=memory)
        again = check(amplifier(), memory=memory)
        assert memory.solved == 0
        assert again.points == first.points

    def test_joining_two_islands_solves_the_one_they_make(self) -> None:
        memory = Memory()
        check(amplifier(), memory=memory)
        check(add_wire("T1.b", "T2.b")(amplifier()), memory=memory)
        assert memory.solved == 1

    def test_renaming_and_mains_do_count(self) -> None:
        memory = Memory()
        check(amplifier(), memory=memory)
        renamed = check(rename("V1", "V9")(amplifier()), memory=memory)
        assert memory.solved == 1
        assert "V9" in renamed.points[NOMINAL].heaters
        check(
            Sheet(parts=amplifier().parts, wires=amplifier().wires, mains=Mains(nominal_v=225.0)),
            memory=memory,
        )
        assert memory.solved == 2

    def test_ambient_does_count(self) -> None:
        memory = Memory()
        check(amplifier(), memory=memory)
        check(Sheet(parts=amplifier().parts, wires=amplifier().wires, ambient_c=40.0), memory=memory)
        assert memory.solved == 2

    def test_looking_at_another_condition(self) -> None:
        """Only that condition is solved, the findings stay; going back to a usual one drops it."""
        memory = Memory()
        before = check(amplifier(), memory=memory)
        looked = look_at(before, load_builtin(), Condition("strip", 221.0), memory)
        assert looked.points[CHOSEN].condition.mains_v == 221.0
        assert looked.points[NOMINAL] is before.points[NOMINAL]
        assert looked.findings is before.findings
        expected = check(amplifier(), chosen=Condition("strip", 221.0)).points[CHOSEN].heaters["V2"][0].v
        assert looked.points[CHOSEN].heaters["V2"][0].v == pytest.approx(expected, rel=1e-9)
        back = look_at(looked, load_builtin(), Condition("strip", 230.0), memory)
        assert CHOSEN not in back.points


def test_several_edits_at_once() -> None:
    """A tube swapped and a dropper put in: the assessment follows the sheet, not its history."""
    edit = in_turn(
        remove(["w0"]),
        lambda sheet: Sheet(parts=(*sheet.parts, Resistor(id="R1", ohm=1.0)), wires=sheet.wires),
        add_wire("T1.a", "R1.1"),
        add_wire("R1.2", "V1.4"),
    )
    after = check(edit(amplifier())).points[NOMINAL]
    assert after.heaters["V1"][0].v == pytest.approx(
        after.heaters["V2"][0].v - after.branches["R1"].v, rel=1e-9
    )


@given(data=st.data())
def test_any_sheet_is_assessed(data: st.DataObject, sheets: st.SearchStrategy[Sheet]) -> None:
    """Whatever a file may hold, there is an answer: each island is solved or said not to be."""
    sheet = data.draw(sheets)
    answer = assess(sheet, load_builtin().with_types(sheet.types))
    for point in answer.points.values():
        given_up = {terminal for miss in point.unsolved for terminal in miss.island}
        for tube in (part for part in sheet.parts if isinstance(part, Tube)):
            assert tube.id in point.heaters
        assert not given_up & point.nodes.keys()
