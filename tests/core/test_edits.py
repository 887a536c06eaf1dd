"""Edits: what each does, what it refuses, and that the sheet before it is never touched."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.checks import find_problems
from core.edits import (
    PREFIXES,
    Change,
    Edit,
    add_part,
    add_wire,
    change_between,
    fresh_id,
    in_turn,
    move_parts,
    remove,
    rename,
    replace_type,
    set_part,
    set_sheet,
    set_wire,
    turn_parts,
)
from core.errors import EditError
from core.sheet import Chassis, Mains, Resistor, Sheet, Tube, Winding, Wire
from core.storage import dump
from core.structure import KINDS


def sheet() -> Sheet:
    parts = (
        Winding(id="T1", rated_v=6.3, rated_a=2.0, at=(0.0, 0.0)),
        Tube(id="V1", type="ECC83", at=(160.0, 0.0), turn=90),
        Tube(id="V2", type="EL84", at=(320.0, 0.0), rated_a=0.8, cold_ratio=6.0),
        Chassis(id="E1"),
    )
    wires = (
        Wire(id="w1", start="T1.a", end="V2.4", awg=20, length_m=0.3),
        Wire(id="w2", start="V2.4", end="V1.4", area_mm2=0.5, length_m=0.15),
        Wire(id="w3", start="V1.4", end="V1.5"),
        Wire(id="w4", start="T1.b", end="E1.e"),
    )
    return Sheet(title="Two tubes", parts=parts, wires=wires)


def test_add_part() -> None:
    after = add_part(Resistor(id="R1", ohm=100.0))(sheet())
    assert after.parts[-1] == Resistor(id="R1", ohm=100.0)
    assert change_between(sheet(), after) == Change(parts=frozenset({"R1"}))


@pytest.mark.parametrize("taken", ["V1", "w1"])
def test_an_id_is_used_once(taken: str) -> None:
    for edit in (
        add_part(Chassis(id=taken)),
        add_wire("T1.a", "V1.9", id=taken),
        rename("T1", taken),
        rename("w4", taken),
    ):
        with pytest.raises(EditError, match=taken):
            edit(sheet())


def test_add_wire() -> None:
    after = add_wire("T1.a", "V1.9", awg=20, length_m=0.2)(sheet())
    assert after.wires[-1] == Wire(id="w5", start="T1.a", end="V1.9", awg=20, length_m=0.2)
    assert add_wire("T1.a", "V1.9", id="red")(sheet()).wires[-1].id == "red"


@pytest.mark.parametrize(
    ("start", "end"),
    [("T1.a", "T1.a"), ("T1.a", "V9.4"), ("T1.ct", "V1.4"), ("T1.a", "V1.99"), ("T1", "V1.4")],
)
def test_a_wire_needs_two_terminals_that_exist(start: str, end: str) -> None:
    with pytest.raises(EditError):
        add_wire(start, end)(sheet())


def test_removing_a_part_takes_its_wires() -> None:
    after = remove(["V2"])(sheet())
    assert [part.id for part in after.parts] == ["T1", "V1", "E1"]
    assert [wire.id for wire in after.wires] == ["w3", "w4"]
    assert change_between(sheet(), after) == Change(frozenset({"V2"}), frozenset({"w1", "w2"}))


def test_removing_a_wire_and_what_is_not_there() -> None:
    assert [wire.id for wire in remove(["w2"])(sheet()).wires] == ["w1", "w3", "w4"]
    assert change_between(sheet(), remove(["nothing"])(sheet())).is_empty


def test_move() -> None:
    after = move_parts(["V1", "V2"], 10.0, -20.0)(sheet())
    assert [part.at for part in after.parts] == [(0.0, 0.0), (170.0, -20.0), (330.0, -20.0), (0.0, 0.0)]
    assert move_parts(["V1", "V2"], -10.0, 20.0)(after) == sheet()


def test_corners_go_along_where_both_ends_move_and_stay_where_one_does() -> None:
    bent = set_wire("w2", via=((200.0, -80.0), (240.0, -80.0)))(sheet())
    both = move_parts(["V1", "V2"], 10.0, -20.0)(bent)
    assert both.wire_by_id["w2"].via == ((210.0, -100.0), (250.0, -100.0))
    assert both.wire_by_id["w1"] is bent.wire_by_id["w1"]
    assert move_parts(["V1", "V2"], -10.0, 20.0)(both) == bent
    one = move_parts(["V2"], 10.0, -20.0)(bent)
    assert one.wire_by_id["w2"].via == bent.wire_by_id["w2"].via


def test_corners_may_not_leave_the_sheet() -> None:
    bent = set_wire("w2", via=((999_990.0, 0.0),))(sheet())
    with pytest.raises(EditError, match="A corner of w2 would lie beyond the sheet"):
        move_parts(["V1", "V2"], 20.0, 0.0)(bent)


def test_turn() -> None:
    after = turn_parts(["T1", "V1"], 270)(sheet())
    assert [part.turn for part in after.parts] == [270, 0, 0, 0]
    assert in_turn(*[turn_parts(["V1", "V2"])] * 4)(sheet()) == sheet()


def test_set_part_and_wire() -> None:
    after = in_turn(set_part("V1", cathode_v=1.5), set_wire("w1", colour="red"))(sheet())
    assert after.part_by_id["V1"].cathode_v == 1.5  # type: ignore[union-attr]
    assert after.wire_by_id["w1"].colour == "red"
    assert change_between(sheet(), after) == Change(frozenset({"V1"}), frozenset({"w1"}))


def test_one_kind_of_size_clears_the_other() -> None:
    metric = set_wire("w1", area_mm2=0.75)(sheet()).wire_by_id["w1"]
    assert (metric.awg, metric.area_mm2) == (None, 0.75)
    gauge = set_wire("w2", awg=22)(sheet()).wire_by_id["w2"]
    assert (gauge.awg, gauge.area_mm2) == (22, None)


def test_set_sheet() -> None:
    after = set_sheet(title="Other", mains=Mains(nominal_v=120.0, hz=60.0), ambient_c=40.0)(sheet())
    assert (after.title, after.mains.nominal_v, after.ambient_c) == ("Other", 120.0, 40.0)
    assert change_between(sheet(), after) == Change(sheet=True)
    assert set_sheet()(sheet()) == sheet()


def test_rename_a_part() -> None:
    """Its wires follow; nothing else changes."""
    after = rename("V1", "V9")(sheet())
    assert [part.id for part in after.parts] == ["T1", "V9", "V2", "E1"]
    assert [(wire.start, wire.end) for wire in after.wires] == [
        ("T1.a", "V2.4"),
        ("V2.4", "V9.4"),
        ("V9.4", "V9.5"),
        ("T1.b", "E1.e"),
    ]
    assert rename("V9", "V1")(after) == sheet()
    assert rename("V1", "V1")(sheet()) == sheet()


def test_rename_a_wire() -> None:
    after = rename("w1", "red")(sheet())
    assert after.wires[0].id == "red"
    assert rename("red", "w1")(after) == sheet()


@pytest.mark.parametrize("new", ["", "two words", "a.b", "x" * 41, "tab\t", "nel\x85"])
def test_what_cannot_be_an_id(new: str) -> None:
    with pytest.raises(EditError):
        rename("V1", new)(sheet())


def test_replace_type() -> None:
    """Another tube in the socket: overrides of the old one go, the cathode's volts stay with the stage."""
    lifted = set_part("V2", cathode_v=7.5)(sheet())
    after = replace_type("V2", "6V6")(lifted).part_by_id["V2"]
    assert after == Tube(id="V2", type="6V6", at=(320.0, 0.0), cathode_v=7.5)


@pytest.mark.parametrize(
    "edit",
    [
        set_part("X1", at=(0.0, 0.0)),
        set_wire("x1", awg=20),
        rename("X1", "X2"),
        replace_type("T1", "EL84"),
        replace_type("X1", "EL84"),
    ],
)
def test_what_is_not_there_is_refused(edit: Edit) -> None:
    with pytest.raises(EditError):
        edit(sheet())


def test_fresh_ids() -> None:
    assert fresh_id(sheet(), "V") == "V3"
    assert fresh_id(sheet(), "R") == "R1"
    assert fresh_id(sheet(), "V", taken=["V3", "V4"]) == "V5"


def test_every_kind_has_a_prefix() -> None:
    assert PREFIXES.keys() == set(KINDS)
    assert len(set(PREFIXES.values())) == len(PREFIXES)


def test_change_between_reports_what_differs_only() -> None:
    assert change_between(sheet(), sheet()).is_empty
    one = sheet()
    assert change_between(one, one).is_empty
    both = in_turn(set_part("V1", cathode_v=2.0), set_part("V1", cathode_v=None))(one)
    assert change_between(one, both).is_empty


# --- any sheet, any edit ---


def an_edit(draw: Callable[..., object], before: Sheet) -> Edit:
    """Some edit that may or may not suit the sheet."""
    ids = [part.id for part in before.parts] or ["none"]
    wires = [wire.id for wire in before.wires] or ["none"]
    part, wire = draw(st.sampled_from(ids)), draw(st.sampled_from(wires))
    number = draw(st.integers(-100, 100))
    choices: list[Edit] = [
        remove([part, wire]),
        move_parts([part], number, -number),
        turn_parts([part], 90),
        set_part(str(part), at=(float(str(number)), 0.0)),
        set_wire(str(wire), colour="red"),
        rename(str(part), "new"),
        rename(str(wire), "new"),
        add_part(Chassis(id="new")),
        set_sheet(title="new", ambient_c=30.0),
        replace_type(str(part), "EL84"),
    ]
    return draw(st.sampled_from(choices))  # type: ignore[return-value]


@given(data=st.data())
def test_edits_leave_the_sheet_before_them_alone(
    data: st.DataObject, sheets: st.SearchStrategy[Sheet]
) -> None:
    """So that undo is the sheet before, byte for byte; and an edit of a sound sheet gives a sound one, twice alike."""
    before = data.draw(sheets)
    written = dump(before)
    edit = an_edit(data.draw, before)
    try:
        after = edit(before)
    except EditError:
        assert dump(before) == written
        return
    assert dump(before) == written
    assert edit(before) == after
    assert not find_problems(after)
    change = change_between(before, after)
    assert change == change_between(after, before)
    assert change.is_empty == (dump(before) == dump(after))


@given(data=st.data())
def test_there_and_back(data: st.DataObject, sheets: st.SearchStrategy[Sheet]) -> None:
    """Renaming, turning and adding have inverses that give the sheet back byte for byte."""
    before = data.draw(sheets)
    ids = [part.id for part in before.parts] + [wire.id for wire in before.wires]
    for one in ids:
        assert dump(in_turn(rename(one, "elsewhere-new"), rename("elsewhere-new", one))(before)) == dump(
            before
        )
    assert dump(in_turn(*[turn_parts(ids)] * 4)(before)) == dump(before)
    added = Chassis(id="elsewhere-new")
    assert dump(in_turn(add_part(added), remove([added.id]))(before)) == dump(before)
