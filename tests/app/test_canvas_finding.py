"""The find line, replacing a type with its pin check, and the menu under the right button."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from app.canvas import context_menu
from app.canvas.find_line import FindLine
from app.canvas.finding import matches
from app.canvas.replace_line import ReplaceLine
from app.sources import open_sheet
from core.catalogue import load_builtin
from core.sheet import Frame, Note, Resistor, Sheet, Tube
from tests.app.canvas_rig import CATALOGUE, NONE, SHIFT, Rig, make_rig, small_sheet, wire

CTRL = Qt.KeyboardModifier.ControlModifier
K = Qt.Key

RICH = Sheet(
    parts=(
        *small_sheet().parts,
        Tube(id="V10", type="EL84", at=(0, 300)),
        Resistor(id="R1", ohm=0.22, rated_w=2.0, at=(220, 300)),
        Note(id="N1", text="Leave room\nfor the choke", at=(-300, 200)),
        Frame(id="FR1", title="Output stage", at=(-400, -200), width=900, height=600),
    ),
    wires=(*small_sheet().wires, wire("w9", "V1.4", "V10.4", awg=16, colour="brown")),
)


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("", []),
        ("V1", ["V1", "V10"]),
        ("el84", ["V1", "V10"]),
        ("12AX7", ["V2"]),
        ("0.22", ["R1"]),
        ("6.3V", ["T1"]),
        ("6.3 v winding", ["T1"]),
        ("choke", ["N1"]),
        ("output", ["FR1"]),
        ("16 awg", ["w9"]),
        ("brown", ["w9"]),
        ("w3", ["w3"]),
        ("resistor", ["R1"]),
        ("nothing of it", []),
    ],
)
def test_what_is_found(qapp, text, found):
    assert matches(RICH, CATALOGUE, text) == found


# the find line


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(qtbot, RICH)


def line_of(rig: Rig) -> FindLine:
    return rig.view.tools.find_line


def find(rig: Rig, text: str) -> FindLine:
    rig.view.entries["find"].action()
    line = line_of(rig)
    QTest.keyClicks(line.field, text)
    return line


def test_find_counts_and_walks(rig):
    line = find(rig, "el84")
    assert line.isVisible()
    assert rig.selection.ids == {"V1"}
    assert line.answer.text() == "1 of 2"
    QTest.keyClick(line.field, K.Key_Return)
    assert rig.selection.ids == {"V10"}
    assert line.answer.text() == "2 of 2"
    QTest.keyClick(line.field, K.Key_Return)
    assert rig.selection.ids == {"V1"}
    QTest.keyClick(line.field, K.Key_Return, SHIFT)
    assert rig.selection.ids == {"V10"}
    QTest.keyClick(line.field, K.Key_Escape)
    assert not line.isVisible()
    assert rig.view.hasFocus()
    assert rig.selection.ids == {"V10"}


def test_what_is_found_is_brought_into_view(rig):
    rig.view.centerOn(4000, 4000)
    find(rig, "choke")
    item = rig.scene.part_items["N1"]
    assert rig.view.mapToScene(rig.view.viewport().rect()).boundingRect().intersects(item.sceneBoundingRect())


def test_nothing_found(rig):
    rig.selection.set(("V2",))
    line = find(rig, "zzz")
    assert line.answer.text() == "nothing"
    QTest.keyClick(line.field, K.Key_Return)
    assert rig.selection.ids == {"V2"}
    line.field.clear()
    assert line.answer.text() == ""


def test_find_by_its_key_in_the_window(open_window):
    window = open_window(RICH)
    window.view.setFocus()
    QTest.keyClick(window.view, K.Key_F, CTRL)
    line = window.view.tools.find_line
    assert line.isVisible()
    assert window.focusWidget() is line.field
    before = window.document.sheet
    QTest.keyClicks(line.field, "rmg/")
    QTest.keyClick(line.field, K.Key_D, CTRL)
    QTest.keyClick(line.field, K.Key_Delete)
    assert window.document.sheet is before


def test_the_count_follows_the_sheet(rig):
    line = find(rig, "el84")
    rig.selection.set(("V10",))
    rig.view.editor.delete()
    assert line.answer.text() == "1 of 1"


# replacing a type


@pytest.fixture
def real(qtbot) -> Rig:
    return make_rig(qtbot, small_sheet(), load_builtin())


def replace(rig: Rig, *ids: str) -> ReplaceLine:
    rig.selection.set(ids)
    rig.view.entries["replace type"].action()
    return rig.view.tools.replace_line


def test_the_pins_are_checked_before_it_is_done(real):
    line = replace(real, "V1")
    assert line.question.text() == "Replace V1 by"
    QTest.keyClicks(line.field, "6V6GT")
    assert real.sheet == small_sheet()
    said = line.answer.text()
    assert "another socket" in said
    assert "The wires on pin 4 go to pin 2." in said
    proposed = real.scene.proposal.current
    assert proposed is not None
    assert proposed.sheet.part_by_id["V1"].type == "6V6GT"
    assert proposed.sheet.wire_by_id["w1"].end == "V1.2"
    QTest.keyClick(line.field, K.Key_Return)
    assert real.undo_names == ["Replace V1 by 6V6GT"]
    assert real.sheet == proposed.sheet
    assert real.scene.proposal.current is None
    assert not line.isVisible()
    assert real.view.hasFocus()
    real.document.undo_stack.undo()
    assert real.sheet == small_sheet()


def test_the_tube_is_not_hidden_by_what_is_asked_of_it(real):
    real.view.centerOn(300, 200)
    line = replace(real, "V1")
    body = real.scene.part_items["V1"].sceneBoundingRect()
    assert not real.view.mapFromScene(body).boundingRect().intersects(line.geometry())


def test_escape_replaces_nothing(real):
    line = replace(real, "V1")
    QTest.keyClicks(line.field, "ECC83")
    assert real.scene.proposal.current is not None
    QTest.keyClick(line.field, K.Key_Escape)
    assert real.scene.proposal.current is None
    assert real.sheet == small_sheet()
    assert not line.offers.isVisible()


def test_the_offers_are_walked_and_each_is_considered(real):
    line = replace(real, "V1")
    QTest.keyClicks(line.field, "EL8")
    first = line.chosen()
    QTest.keyClick(line.field, K.Key_Down)
    assert line.chosen() not in (None, first)
    proposed = real.scene.proposal.current
    assert proposed is not None
    assert proposed.sheet.part_by_id["V1"].type == line.chosen()


def test_a_type_that_is_not_known_is_refused(real):
    line = replace(real, "V1")
    QTest.keyClicks(line.field, "nonsense")
    assert line.answer.text() == "No tube type is called that."
    QTest.keyClick(line.field, K.Key_Return)
    assert real.sheet == small_sheet()
    assert line.isVisible()


def test_several_tubes_at_once(real):
    line = replace(real, "V1", "V2")
    QTest.keyClicks(line.field, "EL84")
    QTest.keyClick(line.field, K.Key_Return)
    assert [real.sheet.part_by_id[name].type for name in ("V1", "V2")] == ["EL84", "EL84"]
    assert real.undo_names == ["Replace 2 parts by EL84"]


def test_nothing_to_replace_without_a_tube(real):
    real.selection.set(("T1",))
    assert not real.view.entries["replace type"].is_possible
    real.view.tools.replace_type()
    assert not real.view.tools.replace_line.isVisible()


# the menu


def texts(rows) -> list[str]:
    return [row.text.replace("&", "") for row in rows if row is not None]


def open_menu(rig: Rig, at: QPoint, reason=QContextMenuEvent.Reason.Mouse) -> QMenu:
    viewport = rig.view.viewport()
    target = rig.view if reason is QContextMenuEvent.Reason.Keyboard else viewport
    QApplication.sendEvent(target, QContextMenuEvent(reason, at, viewport.mapToGlobal(at)))
    menus = [each for each in rig.view.findChildren(QMenu) if each.isVisible()]
    assert len(menus) == 1
    return menus[0]


def shown(menu: QMenu) -> list[str]:
    return [each.text().partition("\t")[0].replace("&", "") for each in menu.actions() if each.text()]


def test_right_click_on_a_part(rig):
    rig.press(220, 20, button=Qt.MouseButton.RightButton)
    menu = open_menu(rig, rig.on_screen(220, 20))
    assert rig.selection.ids == {"V2"}
    assert shown(menu)[0] == "Properties"
    assert "Replace the type…" in shown(menu)
    assert "Cut" in shown(menu)
    menu.close()


def test_right_click_on_the_paper_pastes_there(rig):
    rig.selection.set(("V2",))
    rig.key(K.Key_C, CTRL)
    rig.press(100, -260, button=Qt.MouseButton.RightButton)
    menu = open_menu(rig, rig.on_screen(101, -259))
    assert "Add a part" in shown(menu)
    assert "Delete" not in shown(menu)
    paste = next(each for each in menu.actions() if each.text().startswith("&Paste"))
    paste.trigger()
    assert rig.sheet.part_by_id["V3"].at == (100, -260)
    menu.close()


def test_the_menu_of_a_wire_of_several_and_of_a_note(rig):
    rig.selection.set(("w1",))
    assert texts(context_menu.rows_for(rig.view)) == [
        "Properties",
        "Split the wire with a joint",
        "Delete",
        "Select what is connected",
    ]
    rig.selection.set(("V1", "V2"))
    assert "Swap the tubes of two sockets" in texts(context_menu.rows_for(rig.view))
    rig.selection.set(("V1", "R1", "w1"))
    rows = texts(context_menu.rows_for(rig.view))
    assert "Swap the tubes of two sockets" not in rows
    assert "Turn right as one" in rows
    rig.selection.set(("N1",))
    assert texts(context_menu.rows_for(rig.view)) == ["Properties", "Cut", "Copy", "Duplicate", "Delete"]


def test_the_menu_key_opens_the_menu_of_the_selection(rig):
    rig.selection.set(("V1",))
    menu = open_menu(rig, QPoint(0, 0), QContextMenuEvent.Reason.Keyboard)
    assert "Replace the type…" in shown(menu)
    menu.close()
    rig.selection.clear()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    menu = open_menu(rig, QPoint(0, 0), QContextMenuEvent.Reason.Keyboard)
    assert "Select all" in shown(menu)
    menu.close()


@pytest.mark.parametrize(("key", "held"), [(K.Key_Menu, NONE), (K.Key_F10, SHIFT)])
def test_the_menu_by_its_keys(rig, key, held):
    rig.selection.set(("w1",))
    rig.key(key, held)
    (menu,) = [each for each in rig.view.findChildren(QMenu) if each.isVisible()]
    assert shown(menu)[0] == "Properties"
    rig.key(key, held)
    assert [each for each in rig.view.findChildren(QMenu) if each.isVisible()] == [menu]
    menu.close()


def test_what_is_not_possible_is_grey_and_several_can_be_lined_up(rig):
    rig.selection.set(("V1",))
    menu = open_menu(rig, rig.on_screen(0, 20))
    mirror = next(each for each in menu.actions() if each.text().startswith("&Mirror"))
    assert not mirror.isEnabled()
    menu.close()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    rig.selection.set(("V1", "V2"))
    menu = open_menu(rig, rig.on_screen(0, 20))
    assert "Line up" in shown(menu)
    menu.close()


def test_every_entry_of_arranging_stands_in_a_menu(open_window):
    window = open_window(RICH)
    said = [
        action.text().partition("\t")[0]
        for menu in window.menuBar().findChildren(QMenu)
        for action in menu.actions()
    ]
    for name in ("cut", "find", "select string", "mirror", "align centre", "number selected", "snap to grid"):
        assert window.view.entries[name].text in said


def test_a_part_in_hand_is_put_down_without_a_menu(rig):
    rig.view.placing.take({"kind": "chassis"})
    rig.press(100, -260, button=Qt.MouseButton.RightButton)
    at = rig.on_screen(100, -260)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, rig.view.viewport().mapToGlobal(at))
    QApplication.sendEvent(rig.view.viewport(), event)
    assert not [each for each in rig.view.findChildren(QMenu) if each.isVisible()]
    assert rig.sheet == RICH


def test_select_the_same_string(open_window):
    window = open_window(open_sheet("mains-string-radio").sheet)
    window.live.refresh()
    strings = window.document.assessment.strings
    longest = {section.partition(":")[0] for section in max(strings, key=len)}
    window.selection.set((sorted(longest)[0],))
    assert window.view.entries["select string"].is_possible
    window.view.entries["select string"].action()
    assert len(longest) > 2
    assert window.selection.ids == longest
    window.selection.clear()
    assert not window.view.entries["select string"].is_possible
