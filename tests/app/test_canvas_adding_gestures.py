"""Adding by typing and by dropping, zooming and panning, driven by real events."""

from __future__ import annotations

import json

import pytest
from PySide6.QtCore import QByteArray, QMimeData, QPoint, QPointF, Qt
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas.operations import MIME
from core.sheet import Sheet, Tube
from tests.app.canvas_rig import NONE, Rig, make_rig, small_sheet, wire

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
