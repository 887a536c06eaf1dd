"""A part taken in the parts list by a click and placed by a second one."""

from __future__ import annotations

import json

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas.operations import MIME
from app.canvas.preview import PartGhost
from app.panes.side import ADD
from app.window import MainWindow
from core.sheet import Tube
from tests.app.canvas_rig import ALT, SHIFT, Rig, make_rig, small_sheet
from tests.app.panes_sample import SHEET

ECC83 = {"kind": "tube", "type": "ECC83"}
RIGHT = Qt.MouseButton.RightButton


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(qtbot, small_sheet())


def _ghosts(rig: Rig) -> list[PartGhost]:
    return [item for item in rig.scene.items() if isinstance(item, PartGhost)]


def _hover(rig: Rig, x: float, y: float, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    rig.move(x, y, modifiers, Qt.MouseButton.NoButton)


def test_a_part_in_hand_follows_the_pointer_and_is_placed_by_a_click(rig):
    rig.view.placing.take(ECC83)
    assert _ghosts(rig) == []
    _hover(rig, 133, 208)
    (ghost,) = _ghosts(rig)
    assert ghost.pos().toTuple() == (140, 200)
    rig.click(133, 208)
    assert rig.sheet.part_by_id["V3"] == Tube(id="V3", type="ECC83", at=(140, 200))
    assert rig.selection.ids == {"V3"}
    assert rig.undo_names == ["Add ECC83"]
    assert _ghosts(rig) == []
    assert not rig.view.placing.is_active
    rig.click(-133, -208)
    assert rig.undo_names == ["Add ECC83"]


def test_with_shift_it_stays_in_hand_and_with_alt_it_leaves_the_grid(rig):
    rig.view.placing.take(ECC83)
    rig.click(133, 208, SHIFT)
    rig.click(-133, -208, ALT)
    assert [part.at for part in rig.sheet.parts[-2:]] == [(140, 200), (-133, -208)]
    assert not rig.view.placing.is_active


def test_escape_and_the_right_button_put_it_down(rig):
    rig.view.placing.take(ECC83)
    _hover(rig, 0, 200)
    rig.key(Qt.Key.Key_Escape)
    assert _ghosts(rig) == []
    assert not rig.view.placing.is_active
    rig.view.placing.take(ECC83)
    _hover(rig, 0, 200)
    rig.press(0, 200, button=RIGHT)
    rig.release(0, 200, button=RIGHT)
    assert not rig.view.placing.is_active
    assert rig.undo_names == []


def test_it_is_placed_over_a_pin_as_well(rig):
    rig.view.placing.take(ECC83)
    x, y = rig.pin("V1.4")
    rig.drag((x, y), (x + 100, y))
    assert rig.undo_names == ["Add ECC83"]


def test_leaving_the_sheet_hides_it_and_coming_back_shows_it(rig):
    rig.view.placing.take(ECC83)
    _hover(rig, 0, 200)
    rig.view.placing.hide()
    assert _ghosts(rig) == []
    _hover(rig, 0, 240)
    assert len(_ghosts(rig)) == 1


def test_another_edit_puts_it_down(rig):
    rig.view.placing.take(ECC83)
    _hover(rig, 0, 200)
    rig.view.editor.add(ECC83)
    assert not rig.view.placing.is_active
    assert _ghosts(rig) == []


def test_a_part_that_is_dragged_in_takes_the_place_of_the_one_in_hand(rig):
    rig.view.placing.take(ECC83)
    _hover(rig, 0, 200)
    data = QMimeData()
    data.setData(MIME, json.dumps({"kind": "chassis"}).encode())
    at = QPointF(rig.on_screen(200, 200))
    held = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    for event in (
        QDragEnterEvent(at.toPoint(), Qt.DropAction.CopyAction, data, *held),
        QDropEvent(at, Qt.DropAction.CopyAction, data, *held),
    ):
        QApplication.sendEvent(rig.view.viewport(), event)
    assert rig.undo_names == ["Add Chassis"]
    assert not rig.view.placing.is_active


def _click_offer(window: MainWindow, row: int, double: bool = False) -> None:
    view = window.side.parts_list.view
    index = view.model().index(row, 0, view.model().index(0, 0))
    place = view.visualRect(index).center()
    QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)
    if double:
        QTest.mouseDClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)


def test_in_the_window_a_click_takes_and_a_second_places(open_window):
    window = open_window(SHEET)
    window.side.show_pane(ADD)
    _click_offer(window, 0)
    assert window.view.placing.is_active
    assert window.document.sheet == SHEET
    QTest.mouseMove(window.view.viewport(), QPoint(300, 480))
    QTest.mouseClick(window.view.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(300, 480))
    assert window.document.sheet.parts[-1].kind == "winding"
    assert window.view.hasFocus()
    _click_offer(window, 1)
    QTest.keyClick(window.side.parts_list.view, Qt.Key.Key_Escape)
    assert not window.view.placing.is_active


def test_a_double_click_adds_and_leaves_nothing_in_hand(open_window):
    window = open_window(SHEET)
    window.side.show_pane(ADD)
    _click_offer(window, 0, double=True)
    assert len(window.document.sheet.parts) == len(SHEET.parts) + 1
    assert not window.view.placing.is_active
