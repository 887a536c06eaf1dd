"""Panes that are moved, closed and brought back, by mouse and by keys, and that come back as they were left."""

from __future__ import annotations

import random

import pytest
from PySide6.QtCore import QByteArray, QPoint, Qt
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from app.panes.ground import Area
from app.panes.side import ADD, FINDINGS, PROPERTIES, TABLES
from app.settings import Settings
from core.samples import sample_bytes, sample_names
from core.storage import load

FIRST = load(sample_bytes(sample_names()[0]))
WITHIN_THE_SCREEN = (
    780,
    580,
)  # of the platform without a screen; larger windows are not restored as they were
LEFT = Qt.MouseButton.LeftButton


def settle() -> None:
    for _ in range(3):
        QApplication.processEvents()


def action_of(menu: QMenu, text: str) -> QAction:
    return next(action for action in menu.actions() if action.text().replace("&", "").startswith(text))


def press(window, action: QAction) -> None:
    """Press the keys of a menu entry, as the system hands them to the window in front."""
    settle()
    QTest.keySequence(window, action.shortcut())
    settle()


def panes_menu(window) -> QMenu:
    window.menus.panes.aboutToShow.emit()
    return window.menus.panes


def layout_of(window) -> dict[str, tuple[object, ...]]:
    """Where each pane is, as far as a user can tell."""
    found = {}
    for key, pane in window.side.panes.items():
        seen = pane.is_in_front
        place = pane.geometry().getRect() if seen else None
        found[key] = (not pane.isHidden(), seen, pane.isFloating(), window.ground.dockWidgetArea(pane), place)
    return found


@pytest.mark.parametrize("key", [FINDINGS, PROPERTIES, ADD, TABLES])
def test_each_pane_is_closed_and_brought_back_by_menu_and_key(open_window, key: str) -> None:
    window = open_window(FIRST)
    side = window.side
    entry = action_of(panes_menu(window), side.panes[key].word)
    assert entry.isChecked()
    entry.trigger()
    assert not side.is_open(key)
    assert not action_of(panes_menu(window), side.panes[key].word).isChecked()
    press(window, entry)
    assert side.is_open(key) and side.is_in_front(key)


def test_going_to_a_pane_by_key_opens_it_and_takes_the_keyboard_there(open_window) -> None:
    window = open_window(FIRST)
    window.activateWindow()
    side = window.side
    for pane in side.panes.values():
        pane.close()
    settle()
    assert window.view.width() == window.width(), "the drawing takes the room of what is closed"
    for text, key in (
        ("To the findings", FINDINGS),
        ("To the properties", PROPERTIES),
        ("To the parts to add", ADD),
        ("To the tables", TABLES),
    ):
        press(window, action_of(window.menus.view, text))
        settle()
        assert side.is_in_front(key), text
        assert side.panes[key].isAncestorOf(window.focusWidget()), text
    press(window, action_of(window.menus.view, "To the drawing"))
    assert window.focusWidget() is window.view


def test_a_title_line_has_a_cross_and_a_menu_by_keyboard(open_window) -> None:
    window = open_window(FIRST)
    pane = window.side.panes[TABLES]
    pane.title.menu_button.setFocus()
    QTest.keyClick(pane.title.menu_button, Qt.Key.Key_Return)
    menu = pane.findChild(QMenu)
    assert [action.text().replace("&", "") for action in menu.actions() if action.text()] == [
        "To the left",
        "To the right",
        "Below the drawing",
        "Share the place of Findings",
        "Share the place of Properties",
        "Share the place of Add parts",
        "In a window of its own",
        "Close",
    ]
    menu.close()
    QTest.mouseClick(pane.title.close_button, LEFT)
    assert not window.side.is_open(TABLES)


@pytest.mark.parametrize(
    "area", [Area.LeftDockWidgetArea, Area.RightDockWidgetArea, Area.BottomDockWidgetArea]
)
def test_a_pane_goes_to_each_side_and_the_drawing_makes_room(open_window, area: Area) -> None:
    window = open_window(FIRST)
    window.side.panes[TABLES].move_to(area)
    settle()
    pane, canvas = window.side.panes[TABLES].geometry(), window.view.geometry()
    assert window.ground.dockWidgetArea(window.side.panes[TABLES]) == area
    assert not pane.intersects(canvas)
    assert {
        Area.LeftDockWidgetArea: pane.right() < canvas.left(),
        Area.RightDockWidgetArea: pane.left() > canvas.right(),
        Area.BottomDockWidgetArea: pane.top() > canvas.bottom(),
    }[area]


def test_a_pane_is_torn_off_by_its_title_and_put_back(open_window) -> None:
    window = open_window(FIRST)
    pane = window.side.panes[FINDINGS]
    tabs = pane.title.tabs
    QTest.mouseDClick(tabs, LEFT, pos=tabs.tabRect(0).center())
    settle()
    assert pane.isFloating() and window.side.is_in_front(FINDINGS)
    assert window.side.is_in_front(PROPERTIES) or window.side.is_in_front(ADD)
    assert tabs.count() == 1
    QTest.mouseDClick(tabs, LEFT, pos=tabs.tabRect(0).center())
    settle()
    assert not pane.isFloating()


def test_dragging_a_title_moves_its_pane(open_window) -> None:
    window = open_window(FIRST)
    pane = window.side.panes[TABLES]
    start = QPoint(pane.title.width() - 80, pane.title.height() // 2)
    QTest.mousePress(pane.title, LEFT, pos=start)
    for step in range(1, 9):
        QTest.mouseMove(pane.title, start - QPoint(40 * step, 20 * step))
    settle()
    assert pane.isFloating()
    QTest.mouseRelease(pane, LEFT, pos=start)
    settle()


def rearrange(window) -> None:
    """A layout that differs from the usual in every way a user can choose."""
    side = window.side
    side.panes[ADD].close()
    side.panes[TABLES].move_to(Area.BottomDockWidgetArea)
    side.panes[FINDINGS].setFloating(True)
    side.panes[FINDINGS].setGeometry(200, 150, 380, 300)
    side.panes[PROPERTIES].move_to(Area.LeftDockWidgetArea)
    settle()


def test_panes_come_back_as_they_were_left(open_window) -> None:
    window = open_window(FIRST)
    window.resize(*WITHIN_THE_SCREEN)
    rearrange(window)
    left = layout_of(window)
    window.close()
    again = open_window(FIRST)
    settle()
    assert layout_of(again) == left
    assert left[FINDINGS][2] and not left[ADD][0]


def test_the_drawing_has_its_room_from_the_first_moment(open_window, monkeypatch) -> None:
    window = open_window(FIRST)
    window.resize(*WITHIN_THE_SCREEN)
    rearrange(window)
    room = window.view.geometry()
    window.close()
    monkeypatch.setattr("app.window.MainWindow.complete", lambda _self: None)
    again = open_window(FIRST)
    assert again.view.geometry() == room


def test_the_usual_panes_come_back(open_window) -> None:
    window = open_window(FIRST)
    settle()
    usual = layout_of(window)
    rearrange(window)
    assert layout_of(window) != usual
    action_of(panes_menu(window), "Restore the usual panes").trigger()
    settle()
    assert layout_of(window) == usual
    names = window.side.panes[FINDINGS].title.tabs
    assert names.count() == 3 and names.currentIndex() == 0


def test_a_broken_or_foreign_state_is_ignored(open_window, settings: Settings) -> None:
    window = open_window(FIRST)
    settle()
    usual = layout_of(window)
    rearrange(window)
    good = bytes(window.ground.state().data())
    foreign = bytes(window.saveState().data())
    window.side.restore_usual()
    dice = random.Random(7)
    bad = [b"", b"abc", foreign, good[:-9], good[:40], good + b"x"]
    for _ in range(60):
        place = dice.randrange(len(good))
        bad.append(good[:place] + bytes([good[place] ^ (1 + dice.randrange(255))]) + good[place + 1 :])
    for state in bad:
        assert not window.ground.restore(QByteArray(state))
    settle()
    assert layout_of(window) == usual
    assert window.ground.restore(QByteArray(good))


def test_rooms_that_are_no_rooms_are_ignored(settings: Settings) -> None:
    for value in ("x", ["1", "2"], ["1", "2", "3", "-4"], ["1", "2", "3", "99999"], 7, ["a", "b", "c", "d"]):
        settings._store.setValue("room", value)
        assert settings.margins_of("room") is None, value
    settings._store.setValue("room", ["1", "2", "3", "4"])
    assert settings.margins_of("room").right() == 3


def test_resizing_the_window_keeps_the_users_share(open_window) -> None:
    window = open_window(FIRST)
    pane = window.side.panes[FINDINGS]
    window.ground.resizeDocks([pane], [500], Qt.Orientation.Horizontal)
    settle()
    share = window.view.width() / window.width()
    assert share < 0.62
    window.resize(1700, 900)
    settle()
    assert window.view.width() / window.width() == pytest.approx(share, abs=0.01)
    window.resize(1280, 720)
    settle()
    assert window.view.width() / window.width() == pytest.approx(share, abs=0.01)


def test_a_broken_state_opens_the_usual_panes(open_window, settings: Settings) -> None:
    settings.keep_bytes("panes", QByteArray(b"no state of panes"))
    window = open_window(FIRST)
    assert all(window.side.is_open(key) for key in (FINDINGS, PROPERTIES, ADD, TABLES))
    assert window.side.is_in_front(FINDINGS) and window.side.is_in_front(TABLES)
    assert window.view.width() >= 0.6 * window.width()


@pytest.mark.parametrize("area", [None, Area.LeftDockWidgetArea])
def test_the_usual_panes_close_what_was_opened_for_one_job(open_window, area: Area | None) -> None:
    window = open_window(FIRST)
    settle()
    usual = layout_of(window)
    window.side.show_chain(window.view)
    settle()
    chain = next(dock for dock in window.ground.docks if dock not in window.side.panes.values())
    assert window.ground.is_in_front(chain)
    if area is not None:
        chain.move_to(area)
        settle()
    action_of(panes_menu(window), "Restore the usual panes").trigger()
    settle()
    assert chain.isHidden() and layout_of(window) == usual
    window.side.show_chain(window.view)
    settle()
    assert window.ground.is_in_front(chain) and window.side.panes[FINDINGS] in window.ground.group_of(chain)
