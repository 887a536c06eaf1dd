"""Every gesture, driven by real events: what it does, what the undo menu calls it, and what Escape leaves."""

from __future__ import annotations

import json

import pytest
from PySide6.QtCore import QByteArray, QMimeData, QPoint, QPointF, Qt
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas.operations import MIME
from core.edits import remove, set_wire
from core.sheet import Joint, Sheet, Tube
from tests.app.canvas_rig import ALT, NONE, SHIFT, Rig, make_rig, rows_sheet, small_sheet, wire

CTRL = Qt.KeyboardModifier.ControlModifier
K = Qt.Key


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(qtbot, small_sheet())


def type_in_field(rig: Rig, text: str, end=K.Key_Return) -> None:
    QTest.keyClicks(rig.view.add_field, text)
    QTest.keyClick(rig.view.add_field, end)


def mime(data: bytes) -> QMimeData:
    result = QMimeData()
    result.setData(MIME, QByteArray(data))
    return result


def drop(rig: Rig, data: QMimeData, x: float, y: float) -> bool:
    at = QPointF(rig.on_screen(x, y))
    viewport = rig.view.viewport()
    action = Qt.DropAction.CopyAction
    enter = QDragEnterEvent(at.toPoint(), action, data, Qt.MouseButton.LeftButton, NONE)
    QApplication.sendEvent(viewport, enter)
    if not enter.isAccepted():
        return False
    QApplication.sendEvent(
        viewport, QDragMoveEvent(at.toPoint(), action, data, Qt.MouseButton.LeftButton, NONE)
    )
    event = QDropEvent(at, action, data, Qt.MouseButton.LeftButton, NONE)
    QApplication.sendEvent(viewport, event)
    return event.isAccepted()


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


# adding


def test_typing_adds_a_tube_at_a_free_place_and_selects_it(rig):
    rig.key(K.Key_Slash)
    assert rig.view.add_field.hasFocus()
    type_in_field(rig, "EL84")
    added = rig.sheet.part_by_id["V3"]
    assert added.type == "EL84"
    assert rig.undo_names == ["Add EL84"]
    assert rig.selection.ids == {"V3"}
    assert rig.view.add_field.text() == ""
    assert rig.view.add_field.list.isHidden()
    place = rig.scene.layout_.places["V3"]
    for other in ("T1", "V1", "V2", "E1"):
        body = rig.scene.layout_.places[other].body
        assert (
            place.body[0] >= body[2]
            or place.body[2] <= body[0]
            or place.body[1] >= body[3]
            or place.body[3] <= body[1]
        )
    assert added.at[0] % 20 == 0
    assert added.at[1] % 20 == 0


def test_down_walks_the_offers(rig):
    rig.key(K.Key_K, CTRL)
    QTest.keyClicks(rig.view.add_field, "6.3 V 3 A")
    field = rig.view.add_field
    kinds = [offer.part_template["kind"] for offer in field.offered()]
    assert kinds[:2] == ["winding", "dc_supply"]
    assert not field.list.isHidden()
    QTest.keyClick(field, K.Key_Down)
    QTest.keyClick(field, K.Key_Return)
    assert rig.sheet.parts[-1].kind == "dc_supply"
    assert rig.undo_names == ["Add DC supply"]


def test_up_from_the_first_offer_is_the_last(rig):
    QTest.keyClicks(rig.view.add_field, "6.3 V 3 A")
    QTest.keyClick(rig.view.add_field, K.Key_Up)
    assert rig.view.add_field.list.currentRow() == len(rig.view.add_field.offered()) - 1


def test_a_click_takes_an_offer(rig):
    field = rig.view.add_field
    field.enter()
    QTest.keyClicks(field, "ECC")
    rect = field.list.visualItemRect(field.list.item(0))
    QTest.mouseClick(field.list.viewport(), Qt.MouseButton.LeftButton, NONE, rect.center())
    assert rig.sheet.parts[-1].type == "ECC83"


def test_escape_leaves_the_field(rig):
    rig.view.add_field.enter()
    QTest.keyClicks(rig.view.add_field, "EL84")
    QTest.keyClick(rig.view.add_field, K.Key_Escape)
    assert rig.view.hasFocus()
    assert rig.view.add_field.list.isHidden()
    assert rig.sheet == small_sheet()


def test_a_text_that_means_nothing_adds_nothing(rig):
    type_in_field(rig, "qqqq")
    assert rig.sheet == small_sheet()
    assert rig.view.add_field.text() == "qqqq"


def test_many_additions_never_overlap(rig):
    for _ in range(12):
        type_in_field(rig, "EL84")
    bodies = [place.body for place in rig.scene.layout_.places.values()]
    for number, a in enumerate(bodies):
        for b in bodies[number + 1 :]:
            assert a[0] >= b[2] or a[2] <= b[0] or a[1] >= b[3] or a[3] <= b[1]


def test_a_dropped_part_lands_on_the_grid(rig):
    assert drop(rig, mime(json.dumps({"kind": "tube", "type": "ECC83"}).encode()), 107, 251)
    added = rig.sheet.part_by_id["V3"]
    assert (added.type, added.at) == ("ECC83", (100, 260))
    assert rig.undo_names == ["Add ECC83"]
    assert rig.selection.ids == {"V3"}


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"no",
        b"\xff\xfe",
        b"[]",
        b"{}",
        b'{"kind": "tube"}',
        b'{"kind": "what"}',
        b'{"kind": "resistor", "ohm": -5}',
        b"[" * 9000,
        b"{" + b" " * 30000,
    ],
)
def test_a_drop_that_is_no_part_is_refused(rig, data):
    assert not drop(rig, mime(data), 100, 250)
    assert rig.sheet == small_sheet()


def test_other_drops_are_refused(rig):
    text = QMimeData()
    text.setText("EL84")
    assert not drop(rig, text, 100, 250)


def test_a_drag_that_leaves_takes_its_part_along(rig):
    items = len(rig.scene.items())
    at = rig.on_screen(100, 250)
    data = mime(b'{"kind": "chassis"}')
    enter = QDragEnterEvent(at, Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton, NONE)
    QApplication.sendEvent(rig.view.viewport(), enter)
    assert len(rig.scene.items()) == items + 1
    QApplication.sendEvent(rig.view.viewport(), QDragLeaveEvent())
    assert len(rig.scene.items()) == items
    assert rig.sheet == small_sheet()


# looking around


def wheel(rig: Rig, x: float, y: float, turned: int, modifiers=NONE) -> None:
    at = QPointF(rig.on_screen(x, y))
    viewport = rig.view.viewport()
    event = QWheelEvent(
        at,
        QPointF(viewport.mapToGlobal(at.toPoint())),
        QPoint(),
        QPoint(0, turned),
        Qt.MouseButton.NoButton,
        modifiers,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(viewport, event)


def test_control_wheel_zooms_about_the_pointer(rig):
    at = rig.on_screen(220, 100)
    wheel(rig, 220, 100, 240, CTRL)
    assert rig.view.scale_ > 1.2
    assert (rig.on_screen(220, 100) - at).manhattanLength() <= 2


def test_wheel_scrolls(rig):
    at = rig.on_screen(0, 0)
    wheel(rig, 0, 0, -120)
    assert rig.on_screen(0, 0).y() < at.y()
    assert rig.view.scale_ == 1.0


def test_zoom_stays_within_its_limits(rig):
    for _ in range(40):
        rig.key(K.Key_Plus)
    assert rig.view.scale_ == pytest.approx(6.0)
    for _ in range(60):
        rig.key(K.Key_Minus)
    assert rig.view.scale_ == pytest.approx(0.1)
    rig.key(K.Key_0)
    assert rig.view.scale_ == pytest.approx(1.0)


@pytest.mark.parametrize("with_space", [True, False])
def test_pan_with_space_or_middle_button(rig, with_space):
    at = rig.on_screen(0, 0)
    button = Qt.MouseButton.LeftButton if with_space else Qt.MouseButton.MiddleButton
    if with_space:
        QTest.keyPress(rig.view, K.Key_Space)
    start, end = (0.0, 20.0), (60.0, 50.0)
    rig.press(*start, button=button)
    rig.move(*end, button=button)
    rig.release(*end, button=button)
    if with_space:
        QTest.keyRelease(rig.view, K.Key_Space)
    assert rig.on_screen(0, 0) - at == QPoint(60, 30)
    assert rig.sheet == small_sheet()
    rig.click(0, 20)
    assert rig.selection.ids == {"V1"}


def test_fit_shows_the_whole_sheet(rig):
    rig.view.zoom_by(4.0, QPoint(10, 10))
    rig.key(K.Key_F)
    left, top, right, bottom = rig.scene.layout_.bounds()
    seen = rig.view.mapToScene(rig.view.viewport().rect()).boundingRect()
    assert seen.contains(left, top)
    assert seen.contains(right, bottom)
    assert rig.view.scale_ <= 1.25


def test_reveal_brings_a_far_part_into_view(rig):
    rig.document.apply(
        "far", lambda sheet: Sheet(parts=(*sheet.parts, Tube(id="V9", type="EL84", at=(4000, 3000))))
    )
    rig.selection.show(("V9",))
    assert rig.view.mapToScene(rig.view.viewport().rect()).boundingRect().contains(4000, 3000)


def test_a_pin_under_the_pointer_is_ringed(rig):
    items = len(rig.scene.items())
    x, y = rig.pin("V1.5")
    rig.move(x, y, button=Qt.MouseButton.NoButton)
    assert len(rig.scene.items()) == items + 1
    rig.move(400, 300, button=Qt.MouseButton.NoButton)
    assert len(rig.scene.items()) == items


def test_wires_can_be_drawn_between_twisted_sockets(qtbot):
    sheet = small_sheet()
    twisted = tuple(
        wire(w.id, w.start, w.end, twist="p1") if w.id in ("w1", "w2") else w for w in sheet.wires
    )
    rig = make_rig(qtbot, Sheet(parts=sheet.parts, wires=twisted))
    assert set(rig.scene.layout_.board.trunks) == {"w1", "w2"}
    rig.selection.set(("w2",))
    rig.key(K.Key_Delete)
    assert rig.scene.layout_.board.trunks == {}
    rig.document.undo_stack.undo()
    assert set(rig.scene.layout_.board.trunks) == {"w1", "w2"}
