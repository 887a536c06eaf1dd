"""The chain builder by mouse and by keys: choosing shows it, Return builds it, Escape costs nothing."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from app.canvas import context_menu
from app.theme import DARK
from core.sheet import Sheet, Tube
from tests.app.chain_rig import (
    LEFT,
    K,
    amplifier,
    click,
    faults,
    key,
    open_chain,
    undo_names,
)


@pytest.fixture
def window(open_window):
    return open_window(amplifier())


def test_keys_alone_wire_a_whole_amplifier_as_one_step(window) -> None:
    before = window.document.sheet
    window.activateWindow()
    assert QTest.qWaitForWindowActive(window)
    window.view.setFocus()
    key(K.Key_C)
    key(K.Key_Return)
    assert undo_names(window) == ["Wire a chain of 4"]
    assert not faults(window)
    assert QApplication.focusWidget() is window.view
    assert window.side._builder.pane.isHidden()
    window.document.undo_stack.undo()
    assert window.document.sheet == before
    window.document.undo_stack.redo()
    assert not faults(window)


def test_what_is_chosen_is_considered_and_escape_costs_nothing(window) -> None:
    before = window.document.sheet
    pane = open_chain(window, "V3", "V4")
    proposed = window.scene.proposal.current
    assert proposed is not None
    assert {"T1", "E1"} <= proposed.change.parts
    assert not any(one.rule == "not-heated" and one.where == ("V3",) for one in proposed.assessment.findings)
    key(K.Key_Escape)
    assert window.scene.proposal.current is None
    assert window.document.sheet is before
    assert window.document.undo_stack.count() == 0
    assert not pane.isVisible()
    assert QApplication.focusWidget() is window.view
    assert window.side.findings.isVisible()


def test_without_a_selection_it_takes_what_is_not_wired(window) -> None:
    open_chain(window, "V3")
    key(K.Key_Return)
    window.selection.clear()
    pane = open_chain(window)
    assert window.selection.ids == {"V1", "V2", "V4"}
    assert set(pane.plan.order) == {"V1", "V2", "V4"}


def test_tab_walks_everything_in_the_order_in_which_it_stands(window) -> None:
    pane = open_chain(window, "V1", "V3", "V4")
    walked = []
    for _ in range(10):
        walked.append(QApplication.focusWidget())
        key(K.Key_Tab)
    assert walked == [
        pane.offers.buttons[0],
        pane.supply.combo,
        pane.reference.combo,
        pane.wire_size.combo,
        pane.allowance.editor,
        pane.replace,
        pane.order.combo,
        pane.list,
        pane.build_button,
        pane.close_button,
    ]
    pane.close_button.setFocus()
    key(K.Key_Space)
    assert not pane.isVisible()


def test_it_follows_the_selection_and_the_sheet(window, qtbot) -> None:
    pane = open_chain(window, "V3")
    window.selection.set(("V3", "V4"))
    assert pane.plan.order == ("V3", "V4")
    window.selection.clear()
    assert pane.messages.lines == (("fault", "Select the sockets that the chain is to heat."),)
    assert not pane.build_button.isEnabled()
    window.selection.set(("V3", "V4"))
    window.document.apply("Move", lambda sheet: sheet_with(sheet, V3=(900.0, 0.0)))
    qtbot.waitUntil(lambda: pane.plan.order == ("V4", "V3"))
    assert window.scene.proposal.current is not None


def sheet_with(sheet: Sheet, **places) -> Sheet:
    parts = tuple(
        Tube(id=part.id, type=part.type, at=places.get(part.id, part.at)) if part.kind == "tube" else part
        for part in sheet.parts
    )
    return Sheet(title=sheet.title, mains=sheet.mains, parts=parts, wires=sheet.wires)


def test_a_gesture_that_is_given_up_leaves_the_chain_on_show(window, qtbot) -> None:
    open_chain(window, "V3", "V4")
    window.scene.proposal.consider("Move", lambda sheet: sheet_with(sheet, V1=(0.0, 400.0)))
    window.scene.proposal.withdraw()
    qtbot.waitUntil(lambda: window.scene.proposal.current is not None)
    assert window.scene.proposal.current.text == "Wire a chain of 2"


def test_the_cross_closes_it_and_takes_back_what_was_shown(window, qtbot) -> None:
    tables = window.side.panes["tables"]
    before = tables.height()
    open_chain(window, "V3")
    QApplication.processEvents()
    builder = window.side._builder
    assert tables.height() < before
    click(builder.pane.title.close_button)
    assert window.scene.proposal.current is None
    qtbot.waitUntil(lambda: tables.height() == before)


def test_a_supply_that_is_added_out_of_sight_is_shown(window) -> None:
    window.view.fit()
    open_chain(window, "V1", "V3")
    assert window.view.mapFromScene(0.0, 0.0).x() < 0, "where the new winding will stand"
    key(K.Key_Return)
    left, top, right, bottom = window.scene.layout_.places["T1"].body
    seen = window.view.mapToScene(window.view.viewport().rect()).boundingRect()
    assert seen.contains(left, top) and seen.contains(right, bottom)


def test_the_menu_opens_it_too(window) -> None:
    window.selection.set(("V3",))
    action = next(each for each in window.menus.edit.actions() if each.text().startswith("&Wire a chain"))
    assert action.text().endswith("C")
    action.trigger()
    assert window.side._builder.content.isVisible()


def test_the_menu_of_sockets_offers_it(window) -> None:
    window.selection.set(("V3", "V4"))
    names = [None if row is None else row.text for row in context_menu.rows_for(window.view)]
    assert names[0] == "&Wire a chain…"
    window.selection.set(("V3",))
    assert "&Wire a chain…" in [
        None if row is None else row.text for row in context_menu.rows_for(window.view)
    ]
    window.view.setFocus()
    window.activateWindow()
    assert QTest.qWaitForWindowActive(window)
    key(K.Key_Menu)
    (menu,) = [each for each in window.view.findChildren(QMenu) if each.isVisible()]
    action = next(each for each in menu.actions() if each.text().startswith("&Wire a chain"))
    QTest.mouseClick(menu, LEFT, Qt.KeyboardModifier.NoModifier, menu.actionGeometry(action).center())
    assert window.side._builder.content.plan.order == ("V3",)


def test_it_takes_another_look(window) -> None:
    pane = open_chain(window, "V3")
    window.set_theme_name("dark")
    assert pane.list.styleSheet().count(DARK.surface)
    lines = pane.messages.lines
    window.set_theme_name("light")
    assert pane.messages.lines == lines


def test_an_empty_sheet_has_nothing_to_wire(open_window) -> None:
    window = open_window(Sheet())
    pane = open_chain(window)
    assert not pane.build_button.isEnabled()
    key(K.Key_Escape)
    assert window.document.undo_stack.count() == 0
