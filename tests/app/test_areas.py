"""Going from area to area of the window by keyboard; every stop on the way has a name."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from app.areas import Areas, entrance
from app.panes.controls import FlatCombo
from app.panes.side import ADD, FINDINGS, PROPERTIES, TABLES
from app.theme import LIGHT
from app.window import MainWindow
from tests.app.panes_sample import SHEET

K = Qt.Key
SHIFT = Qt.KeyboardModifier.ShiftModifier


def _area(window: MainWindow) -> QWidget:
    areas = Areas(window)
    at = areas.current()
    assert at is not None
    return areas.present()[at]


def _press(window: MainWindow, modifiers=Qt.KeyboardModifier.NoModifier) -> QWidget:
    QTest.keyClick(QApplication.focusWidget() or window, K.Key_F6, modifiers)
    QApplication.processEvents()
    return _area(window)


def test_f6_walks_the_areas_and_comes_round(open_window, qtbot) -> None:
    window = open_window(SHEET)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.view.setFocus()
    panes = window.side.panes
    there = [window.strip, panes[FINDINGS], panes[TABLES], window.view]
    assert [_press(window) for _ in there] == there
    back = [panes[TABLES], panes[FINDINGS], window.strip, window.view]
    assert [_press(window, SHIFT) for _ in back] == back


def test_an_area_is_entered_where_it_was_left(open_window, qtbot) -> None:
    window = open_window(SHEET)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    table = window.side.tables.views[0]
    table.setFocus()
    _press(window)
    assert window.view.hasFocus()
    _press(window, SHIFT)
    assert table.hasFocus()


def test_a_closed_pane_and_one_behind_another_are_no_areas(open_window) -> None:
    window = open_window(SHEET)
    side = window.side
    side.show_pane(PROPERTIES)
    QApplication.processEvents()
    present = Areas(window).present()
    assert side.panes[PROPERTIES] in present
    assert side.panes[FINDINGS] not in present
    side.toggle(TABLES)
    QApplication.processEvents()
    assert side.panes[TABLES] not in Areas(window).present()


def test_every_area_has_an_entrance(open_window) -> None:
    window = open_window(SHEET)
    window.show_trouble("Something is wrong.")
    for key in (FINDINGS, PROPERTIES, ADD):
        window.side.show_pane(key)
        QApplication.processEvents()
        present = Areas(window).present()
        assert window.banner in present
        assert all(entrance(area) is not None for area in present)


def test_everything_that_takes_the_keyboard_has_a_name(open_window) -> None:
    window = open_window(SHEET)
    window.show_trouble("Something is wrong.")
    checked = 0
    for chosen in ((), ("V1",), ("R1",), ("w1",), ("V1", "w1")):
        window.selection.set(chosen)
        QApplication.processEvents()
        for widget in window.findChildren(QWidget):
            if widget.window() is window and widget.focusPolicy() != Qt.FocusPolicy.NoFocus:
                interface = QAccessible.queryAccessibleInterface(widget)
                assert interface is not None
                name = widget.accessibleName() or interface.text(QAccessible.Text.Name)
                assert name.strip(), f"{widget!r} in {widget.parentWidget()!r} has no name"
                checked += 1
    assert checked > 200


def test_the_list_of_a_choice_is_called_as_the_choice(qtbot) -> None:
    combo = FlatCombo(LIGHT)
    qtbot.addWidget(combo)
    combo.setAccessibleName("turned by")
    combo.addItems(["0", "90"])
    combo.show()
    combo.showPopup()
    assert combo.view().accessibleName() == "turned by"
    combo.hidePopup()
