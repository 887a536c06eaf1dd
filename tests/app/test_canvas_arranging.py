"""Arranging what is selected, by real keys and from the menus' entries; undo gives the very sheet back."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import Qt

from core.checks import find_problems
from core.edits import set_part
from core.sheet import Frame, Note, Resistor, Sheet, Tube
from tests.app.canvas_rig import ALT, SHIFT, Rig, make_rig, small_sheet, told_by, wire
from tests.core.drawn_sheets import drawn_sheets

CTRL = Qt.KeyboardModifier.ControlModifier
K = Qt.Key


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(qtbot, small_sheet())


def do(rig: Rig, name: str) -> None:
    entry = rig.view.entries[name]
    assert entry.is_possible
    entry.action()


def taken_back(rig: Rig, sheet: Sheet) -> bool:
    rig.document.undo_stack.undo()
    return rig.sheet == sheet


def test_mirror_by_key(rig):
    rig.selection.set(("T1", "V1"))
    rig.key(K.Key_M)
    assert rig.undo_names == ["Mirror T1 and V1"]
    winding, tube = rig.sheet.part_by_id["T1"], rig.sheet.part_by_id["V1"]
    assert winding.mirror
    assert not tube.mirror
    assert winding.at[0] > tube.at[0]
    assert rig.pin("T1.a")[0] < winding.at[0]
    assert rig.scene.layout_.board.routes["w1"][0] == rig.pin("T1.a")
    assert taken_back(rig, small_sheet())


def test_mirror_upside_down_by_key(rig):
    rig.selection.set(("E1",))
    rig.key(K.Key_M, SHIFT)
    chassis = rig.sheet.part_by_id["E1"]
    assert (chassis.turn, chassis.mirror) == (180, True)
    assert taken_back(rig, small_sheet())


def test_a_socket_alone_has_no_other_side(rig):
    rig.selection.set(("V1",))
    assert not rig.view.entries["mirror"].is_possible
    rig.key(K.Key_M)
    assert rig.sheet == small_sheet()


def test_four_turns_as_one_lead_back(rig):
    rig.selection.set(("T1", "V1", "E1"))
    for count in range(4):
        rig.key(K.Key_R, CTRL)
        assert (rig.sheet == small_sheet()) == (count == 3)
        assert all(x % 20 == 0 == y % 20 for x, y in (part.at for part in rig.sheet.parts))
    assert rig.undo_names[0] == "Turn 3 parts as one"
    rig.key(K.Key_R, CTRL | SHIFT)
    rig.key(K.Key_R, CTRL)
    assert rig.sheet == small_sheet()


def test_align_and_distribute(rig):
    rig.selection.set(("T1", "V1", "V2"))
    rig.document.apply("x", set_part("V1", at=(-40, 60)))
    before = rig.sheet
    rig.key(K.Key_Up, CTRL | SHIFT)
    places = rig.scene.layout_.places
    assert len({places[part_id].body[1] for part_id in ("T1", "V1", "V2")}) == 1
    assert rig.undo_names[-1] == "Align 3 parts"
    assert taken_back(rig, before)
    do(rig, "distribute across")
    places = rig.scene.layout_.places
    gap_1 = places["V1"].body[0] - places["T1"].body[2]
    gap_2 = places["V2"].body[0] - places["V1"].body[2]
    assert gap_1 == pytest.approx(gap_2)
    assert taken_back(rig, before)
    do(rig, "align middle")
    assert taken_back(rig, before)


def test_put_on_the_grid(rig):
    rig.document.apply("x", set_part("V1", at=(3, 58)))
    rig.selection.set(("V1",))
    do(rig, "put on grid")
    assert rig.sheet.part_by_id["V1"].at == (0, 60)


def test_what_needs_several_parts_is_not_offered_for_one(rig):
    rig.selection.set(("V1",))
    for name in ("turn as one", "align left", "distribute down", "swap tubes", "swap places"):
        assert not rig.view.entries[name].is_possible
    rig.selection.set(("V1", "V2"))
    for name in ("turn as one", "align left", "swap tubes", "swap places"):
        assert rig.view.entries[name].is_possible


def test_number_the_tubes_and_keep_them_selected(rig):
    rig.document.apply(
        "x", lambda sheet: sheet.__class__(parts=sheet.parts, wires=(wire("w1", "T1.a", "V2.4"),))
    )
    rig.selection.set(("V2", "T1"))
    do(rig, "number tubes")
    assert rig.undo_names[-1] == "Number the tubes"
    assert rig.selection.ids == {"V1", "T1"}
    assert rig.sheet.part_by_id["V1"].type == "ECC83"
    assert rig.sheet.wire_by_id["w1"].end == "V1.4"
    assert rig.scene.part_items["V1"].place.part.type == "ECC83"
    do(rig, "number selected")
    assert rig.undo_names[-1] == "Number the tubes"


def test_swap_tubes_tells_what_the_pins_need(rig):
    told = told_by(rig)
    rig.selection.set(("V1", "V2"))
    do(rig, "swap tubes")
    assert rig.undo_names == ["Swap the tubes of V1 and V2"]
    assert rig.sheet.part_by_id["V1"].type == "ECC83"
    assert rig.sheet.part_by_id["V2"].type == "EL84"
    assert rig.sheet.wires == small_sheet().wires
    assert len(told) == 1
    assert told[0].startswith("V1: ")
    assert "pin 5" in told[0]
    assert taken_back(rig, small_sheet())


def test_swap_tubes_with_the_same_pins_tells_nothing(rig):
    told = told_by(rig)
    rig.document.apply("x", set_part("V2", type="EL84", cathode_v=7.0))
    rig.selection.set(("V1", "V2"))
    do(rig, "swap tubes")
    assert rig.sheet.part_by_id["V1"].cathode_v == 7.0
    assert told == []


def test_swap_places(rig):
    rig.selection.set(("T1", "V1"))
    do(rig, "swap places")
    assert rig.sheet.part_by_id["T1"].at == (0, 0)
    assert rig.sheet.part_by_id["V1"].at == (-200, 0)
    assert taken_back(rig, small_sheet())


def test_select_connected(rig):
    rig.selection.set(("E1",))
    do(rig, "select connected")
    assert rig.selection.ids == {"T1", "V1", "E1", "w1", "w2", "w3"}


def test_shift_and_arrow_go_five_steps(rig):
    rig.selection.set(("V2",))
    rig.key(K.Key_Down, SHIFT)
    assert rig.sheet.part_by_id["V2"].at == (220, 100)
    rig.key(K.Key_Left, ALT)
    assert rig.sheet.part_by_id["V2"].at == (219, 100)


def test_the_grid_can_be_hidden_and_left(rig):
    shown = rig.view.grab().toImage()
    rig.key(K.Key_G)
    assert not rig.view.paper.shows_grid
    assert rig.view.grab().toImage() != shown
    rig.key(K.Key_G, SHIFT)
    rig.drag((220, 20), (233, 27))
    assert rig.sheet.part_by_id["V2"].at == (233, 7)
    rig.drag((0, 20), (27, 20), ALT)
    assert rig.sheet.part_by_id["V1"].at == (20, 0)


def test_the_switches_of_the_grid_are_remembered(open_window, settings):
    window = open_window(small_sheet())
    window.view.entries["show grid"].action()
    window.view.entries["snap to grid"].action()
    assert (settings.is_on("grid"), settings.is_on("snap")) == (False, False)
    other = open_window(small_sheet())
    assert (other.view.paper.shows_grid, other.view.paper.snaps) == (False, False)
    assert not other.view.entries["show grid"].checked()


def test_an_aligned_frame_takes_along_what_is_in_it(qtbot):
    parts = (
        Frame(id="FR1", at=(40, 0), width=200, height=120),
        Tube(id="V1", type="EL84", at=(100, 60)),
        Note(id="N1", text="x", at=(0, 200)),
    )
    rig = make_rig(qtbot, Sheet(parts=parts))
    rig.selection.set(("FR1", "N1"))
    do(rig, "align left")
    assert rig.sheet.part_by_id["FR1"].at == (0, 0)
    assert rig.sheet.part_by_id["V1"].at == (60, 60)


def test_no_two_entries_share_a_key(rig):
    seen: dict[str, str] = {}
    for name, entry in rig.view.entries.items():
        for key in entry.keys:
            assert key not in seen, (name, seen[key])
            seen[key] = name


NAMES = (
    "mirror",
    "mirror upright",
    "turn as one",
    "turn left as one",
    "align left",
    "align centre",
    "align bottom",
    "distribute across",
    "distribute down",
    "put on grid",
    "number tubes",
    "number selected",
    "swap tubes",
    "swap places",
    "duplicate",
    "select connected",
)


@settings(
    max_examples=25,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(sheet=drawn_sheets(6), names=st.lists(st.sampled_from(NAMES), max_size=4), data=st.data())
def test_whatever_is_arranged_stays_a_sheet_and_can_be_undone(qtbot, rig, sheet, names, data):
    rig.document.open(sheet)
    for name in names:
        rig.selection.set(data.draw(st.sets(st.sampled_from(sorted(rig.sheet.part_by_id)), max_size=4)))
        entry = rig.view.entries[name]
        if entry.is_possible:
            entry.action()
        assert not find_problems(rig.sheet)
        assert rig.scene.part_items.keys() == rig.sheet.part_by_id.keys()
        assert rig.scene.wire_items.keys() == rig.sheet.wire_by_id.keys()
    after = rig.sheet
    while rig.document.undo_stack.canUndo():
        rig.document.undo_stack.undo()
    assert rig.sheet is sheet
    while rig.document.undo_stack.canRedo():
        rig.document.undo_stack.redo()
    assert rig.sheet is after


def test_nothing_is_put_beyond_the_sheet(qtbot):
    parts = (Resistor(id="R1", ohm=1.0, at=(1e6, 0)), Resistor(id="R2", ohm=1.0, at=(1e6 - 40, 400)))
    rig = make_rig(qtbot, Sheet(parts=parts))
    said = told_by(rig)
    rig.selection.set(("R1", "R2"))
    do(rig, "turn as one")
    assert said == [] or "beyond the sheet" in said[0]
    assert not find_problems(rig.sheet)
