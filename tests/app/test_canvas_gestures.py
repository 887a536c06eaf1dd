"""Every gesture, driven by real events: what it does, what the undo menu calls it, and what Escape leaves."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest

from core.edits import remove, set_wire
from core.sheet import Joint, Sheet
from tests.app.canvas_rig import ALT, NONE, SHIFT, Rig, make_rig, rows_sheet, small_sheet

CTRL = Qt.KeyboardModifier.ControlModifier
K = Qt.Key

pytestmark = pytest.mark.collected


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(qtbot, small_sheet())


# moving


def test_drag_moves_a_part_along_the_grid(rig):
    rig.drag((0, 20), (63, 86))
    assert rig.sheet.part_by_id["V1"].at == (60, 60)
    assert rig.undo_names == ["Move V1"]
    assert rig.selection.ids == {"V1"}
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()
    rig.document.undo_stack.redo()
    assert rig.sheet.part_by_id["V1"].at == (60, 60)


def test_alt_moves_by_whole_units(rig):
    rig.drag((0, 20), (13, 27), ALT)
    assert rig.sheet.part_by_id["V1"].at == (13, 7)


def test_drag_moves_the_whole_selection(rig):
    rig.selection.set(("V1", "V2", "w1"))
    rig.drag((0, 20), (40, 20))
    assert rig.sheet.part_by_id["V1"].at == (40, 0)
    assert rig.sheet.part_by_id["V2"].at == (260, 0)
    assert rig.undo_names == ["Move 2 parts"]


def test_wires_follow_while_a_part_is_dragged_and_the_sheet_does_not(rig):
    board = rig.scene.layout_.board
    before = dict(board.routes)
    rig.press(0, 20)
    rig.move(0, 130)
    assert rig.sheet == small_sheet()
    assert board.routes["w1"] != before["w1"]
    assert board.routes["w1"][-1] == rig.pin("V1.4")
    assert board.routes["w3"] == before["w3"]
    assert rig.scene.part_items["V1"].pos() == QPointF(0, 120)
    rig.release(0, 130)
    assert rig.sheet.part_by_id["V1"].at == (0, 120)
    assert board.routes["w3"] == before["w3"]


def test_escape_in_a_move_leaves_everything(rig):
    before = dict(rig.scene.layout_.board.routes)
    rig.press(0, 20)
    rig.move(100, 120)
    rig.key(K.Key_Escape)
    assert rig.sheet == small_sheet()
    assert rig.document.undo_stack.count() == 0
    assert rig.scene.layout_.board.routes == before
    assert rig.scene.part_items["V1"].pos() == QPointF(0, 0)
    assert rig.selection.ids == frozenset()
    rig.release(100, 120)
    assert rig.sheet == small_sheet()


def test_a_drag_that_comes_back_is_no_step(rig):
    rig.press(0, 20)
    rig.move(100, 120)
    rig.move(1, 20)
    rig.release(1, 20)
    assert rig.document.undo_stack.count() == 0


def test_a_change_from_elsewhere_ends_the_gesture(rig):
    rig.press(0, 20)
    rig.move(100, 120)
    rig.document.apply("Delete V2", remove(("V2",)))
    assert not rig.view.is_busy
    rig.move(150, 120)
    rig.release(150, 120)
    assert rig.undo_names == ["Delete V2"]
    assert rig.scene.part_items["V1"].pos() == QPointF(0, 0)
    assert rig.sheet.part_by_id["V1"].at == (0, 0)


def test_very_many_parts_move_as_one_outline(qtbot):
    rig = make_rig(qtbot, rows_sheet(225))
    rig.view.centerOn(0, 0)
    rig.selection.set(rig.sheet.part_by_id)
    rig.drag((0, 20), (40, 60))
    assert rig.sheet.part_by_id["V0"].at == (40, 40)
    assert rig.sheet.part_by_id["V224"].at == (2840, 2840)
    assert rig.undo_names == ["Move 225 parts"]


# wiring


def test_drag_from_pin_to_pin_makes_a_wire(rig):
    rig.drag(rig.pin("V1.4"), rig.pin("V2.4"))
    made = rig.sheet.wires[-1]
    assert (made.start, made.end, made.awg) == ("V1.4", "V2.4", 20)
    assert 0.2 <= made.length_m <= 0.6
    assert rig.undo_names == ["Wire V1.4 to V2.4"]
    assert rig.selection.ids == {made.id}
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()


def test_the_wire_snaps_to_the_nearest_terminal(rig):
    x, y = rig.pin("V2.4")
    rig.drag(rig.pin("V1.4"), (x - 6, y - 10))
    assert rig.sheet.wires[-1].end == "V2.4"


def test_the_wire_shows_its_way_and_target_while_it_is_drawn(rig):
    items = len(rig.scene.items())
    rig.press(*rig.pin("V1.4"))
    rig.move(60, -80)
    rig.move(*rig.pin("V2.4"))
    shown = [item for item in rig.scene.items() if item.zValue() == 10 and item.isVisible()]
    assert len(shown) == 3
    rig.key(K.Key_Escape)
    assert len(rig.scene.items()) == items
    rig.release(*rig.pin("V2.4"))
    assert rig.sheet == small_sheet()
    assert rig.document.undo_stack.count() == 0


def test_two_pins_of_one_socket_get_a_strap(rig):
    rig.drag(rig.pin("V2.4"), rig.pin("V2.5"))
    made = rig.sheet.wires[-1]
    assert made.is_strap
    assert (made.awg, made.length_m) == (None, None)
    assert rig.undo_names == ["Strap V2.4 to V2.5"]


def test_a_wire_to_its_own_pin_is_refused(rig):
    x, y = rig.pin("V1.4")
    rig.drag((x, y), (x + 5, y - 4))
    assert rig.sheet == small_sheet()


def test_a_wire_into_the_open_is_dropped_but_with_shift_makes_a_joint(rig):
    rig.drag(rig.pin("V1.4"), (90, -150))
    assert rig.sheet == small_sheet()
    assert rig.document.undo_stack.count() == 0
    rig.drag(rig.pin("V1.4"), (91, -149), SHIFT)
    joint = rig.sheet.part_by_id["J1"]
    assert joint.at == (100, -140)
    assert rig.sheet.wires[-1].end == "J1.j"
    assert rig.undo_names == ["Wire V1.4 to J1.j"]
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()


def test_new_wires_take_the_gauge_used_last(rig):
    rig.document.apply("Set size", set_wire("w1", area_mm2=0.75))
    rig.drag(rig.pin("V1.4"), rig.pin("V2.4"))
    made = rig.sheet.wires[-1]
    assert (made.awg, made.area_mm2) == (None, 0.75)


def test_a_click_on_a_pin_selects_the_part(rig):
    rig.click(*rig.pin("V1.4"))
    assert rig.selection.ids == {"V1"}
    assert rig.document.undo_stack.count() == 0


def test_a_selected_joint_is_moved_and_an_unselected_one_is_wired(qtbot):
    sheet = Sheet(parts=(Joint(id="J1", at=(0, 0)), Joint(id="J2", at=(100, 0))))
    rig = make_rig(qtbot, sheet)
    rig.drag((0, 0), (100, 0))
    assert rig.sheet.wires[0].end == "J2.j"
    rig.click(0, 0)
    rig.drag((0, 0), (0, 60))
    assert rig.sheet.part_by_id["J1"].at == (0, 60)


# selecting


def test_click_selects_and_shift_toggles(rig):
    rig.click(0, 20)
    assert rig.selection.ids == {"V1"}
    rig.click(220, 20, SHIFT)
    assert rig.selection.ids == {"V1", "V2"}
    rig.click(0, 20, SHIFT)
    assert rig.selection.ids == {"V2"}
    rig.click(400, 300)
    assert rig.selection.ids == frozenset()


def test_click_on_a_wire_selects_it(rig):
    (ax, ay), (bx, by) = rig.scene.layout_.board.routes["w3"][1:3]
    rig.click((ax + bx) / 2, (ay + by) / 2)
    assert rig.selection.ids == {"w3"}


def test_rubber_band_selects_and_shift_adds(rig):
    rig.drag((150, -90), (300, 90))
    assert rig.selection.ids == {"V2"}
    rig.drag((-60, 90), (60, -90), SHIFT)
    assert {"V1", "V2"} <= rig.selection.ids
    assert "T1" not in rig.selection.ids
    assert rig.document.undo_stack.count() == 0


def test_escape_in_a_rubber_band_brings_the_selection_back(rig):
    rig.selection.set(("E1",))
    items = len(rig.scene.items())
    rig.press(150, -90)
    rig.move(300, 90)
    assert rig.selection.ids == {"V2"}
    rig.key(K.Key_Escape)
    assert rig.selection.ids == {"E1"}
    assert len(rig.scene.items()) == items


def test_double_click_asks_for_properties(rig, qtbot):
    with qtbot.waitSignal(rig.view.edit_requested) as asked:
        QTest.mouseDClick(rig.view.viewport(), Qt.MouseButton.LeftButton, NONE, rig.on_screen(0, 20))
    assert asked.args == ["V1"]


# keys


def test_delete_removes_parts_with_their_wires(rig):
    rig.selection.set(("V1", "V2", "E1"))
    rig.key(K.Key_Delete)
    assert set(rig.sheet.part_by_id) == {"T1"}
    assert rig.sheet.wires == ()
    assert rig.undo_names == ["Delete 3 parts"]
    assert rig.selection.ids == frozenset()
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()
    assert set(rig.scene.part_items) == {"T1", "V1", "V2", "E1"}


@pytest.mark.parametrize(
    ("ids", "text"),
    [
        (("V1",), "Delete V1"),
        (("w1",), "Delete w1"),
        (("w1", "w2"), "Delete 2 wires"),
        (("V2", "w1"), "Delete 1 part and 1 wire"),
    ],
)
def test_delete_says_what(rig, ids, text):
    rig.selection.set(ids)
    rig.key(K.Key_Backspace)
    assert rig.undo_names == [text]


def test_r_turns_clockwise_and_shift_r_back(rig):
    rig.selection.set(("V2",))
    rig.key(K.Key_R)
    assert rig.sheet.part_by_id["V2"].turn == 90
    rig.key(K.Key_R, SHIFT)
    assert rig.sheet.part_by_id["V2"].turn == 0
    assert rig.undo_names == ["Turn V2", "Turn V2"]


def test_arrows_nudge_and_a_burst_is_one_step(rig):
    rig.selection.set(("V1",))
    for key in (K.Key_Right, K.Key_Right, K.Key_Down):
        rig.key(key)
    rig.key(K.Key_Left, ALT)
    assert rig.sheet.part_by_id["V1"].at == (39, 20)
    assert rig.undo_names == ["Move V1"]
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()


def test_control_a_selects_all_and_escape_nothing(rig):
    rig.key(K.Key_A, CTRL)
    assert rig.selection.ids == {"T1", "V1", "V2", "E1", "w1", "w2", "w3"}
    rig.key(K.Key_Escape)
    assert rig.selection.ids == frozenset()


def test_tab_walks_the_parts_and_leaves_after_the_last(rig):
    seen = []
    for _ in range(4):
        rig.key(K.Key_Tab)
        seen.append(set(rig.selection.ids))
    assert seen == [{"T1"}, {"V1"}, {"V2"}, {"E1"}]
    assert rig.view.hasFocus()
    QTest.keyClick(rig.view, K.Key_Backtab, SHIFT)
    assert rig.selection.ids == {"V2"}
    rig.selection.set(("E1",))
    rig.key(K.Key_Tab)
    assert rig.selection.ids == {"E1"}
    assert not rig.view.hasFocus()


def test_enter_asks_for_properties(rig, qtbot):
    rig.selection.set(("w2",))
    with qtbot.waitSignal(rig.view.edit_requested) as asked:
        rig.key(K.Key_Return)
    assert asked.args == ["w2"]
