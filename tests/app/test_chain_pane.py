"""The chain builder by mouse and by keys: choosing shows it, Return builds it, Escape costs nothing."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from app.canvas import context_menu
from app.panes.chain_pane import ChainPane
from app.theme import DARK
from core.results import SEVERITIES
from core.sheet import Chassis, DcSupply, Mains, MainsFeed, Sheet, Tube, Winding

K = Qt.Key
ALT = Qt.KeyboardModifier.AltModifier
LEFT = Qt.MouseButton.LeftButton


def amplifier(*more) -> Sheet:
    types = ("ECC83", "ECC83", "EL34", "EL34")
    tubes = [Tube(id=f"V{n}", type=each, at=(200.0 * n, 0.0)) for n, each in enumerate(types, 1)]
    return Sheet(parts=(*more, *tubes), mains=Mains(low_pct=-5, high_pct=5))


@pytest.fixture
def window(open_window):
    return open_window(amplifier())


def key(code, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    """A key for whatever has the keyboard."""
    focused = QApplication.focusWidget()
    assert focused is not None
    QTest.keyClick(focused, code, modifiers)


def open_chain(window, *ids: str) -> ChainPane:
    window.activateWindow()
    assert QTest.qWaitForWindowActive(window)
    window.view.setFocus()
    window.selection.set(ids)
    key(K.Key_C)
    pane = window.side._builder.content
    assert pane.isVisible()
    QApplication.processEvents()
    assert all(button.height() > 12 for button in pane.offers.buttons if button.isVisible())
    return pane


def click(widget, at: QPoint | None = None) -> None:
    QTest.mouseClick(widget, LEFT, Qt.KeyboardModifier.NoModifier, at or widget.rect().center())


def click_radio(pane: ChainPane, number: int) -> None:
    click(pane.offers.buttons[number], QPoint(8, 8))


def choose(row, text: str) -> None:
    """Take a choice with the arrow keys."""
    row.combo.setFocus()
    texts = [row.combo.itemText(number) for number in range(row.combo.count())]
    wanted = next(number for number, each in enumerate(texts) if text in each)
    step = K.Key_Down if wanted > row.combo.currentIndex() else K.Key_Up
    while row.combo.currentIndex() != wanted:
        key(step)


def undo_names(window) -> list[str]:
    stack = window.document.undo_stack
    return [stack.text(number) for number in range(stack.count())]


def faults(window) -> set[str]:
    assert SEVERITIES[0] == "fault"
    return {one.rule for one in window.document.assessment.findings if one.severity == "fault"}


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


def test_each_arrangement_by_mouse(window) -> None:
    pane = open_chain(window, "V1", "V2", "V3", "V4")
    words = [button.text() for button in pane.offers.buttons if button.isVisible()]
    assert words == [
        "Parallel chain at 6.30\u2009V",
        "Parallel chain at 12.6\u2009V",
        "Pairs in series on 12.6\u2009V",
        "Series string",
    ]
    assert "3.60" in pane.summary.text()
    click_radio(pane, 1)
    assert set(pane.plan.order) == {"V1", "V2"}
    assert any("V3 (EL34) is made for 6.30\u2009V" in text for _, text in pane.messages.lines)
    click_radio(pane, 2)
    assert pane.plan.order == ("V3", "V4", "V2", "V1") or set(pane.plan.order) == {"V1", "V2", "V3", "V4"}
    assert pane.plan.volts == 12.6
    click_radio(pane, 3)
    assert pane.plan.volts == pytest.approx(25.2)
    click(pane.build_button)
    assert undo_names(window) == ["Wire a string of 2"]


def test_each_arrangement_by_key(window) -> None:
    pane = open_chain(window, "V3", "V4")
    assert pane.offers.buttons[0].hasFocus()
    assert not pane.offers.buttons[1].isEnabled()
    assert pane.offers.reasons[1].text() == "None of them is made for 12.6\u2009V."
    key(K.Key_Down)
    assert pane.settled.offer.arrangement == "pairs"
    key(K.Key_Down)
    assert pane.settled.offer.arrangement == "series"
    key(K.Key_Return)
    assert undo_names(window) == ["Wire a string of 2"]
    assert faults(window) == {"not-heated"}


def test_supplies_of_the_sheet_are_offered_and_the_fitting_one_is_taken(open_window) -> None:
    window = open_window(
        amplifier(
            DcSupply(id="U1", set_v=12.6, limit_a=2.0, at=(0.0, 200.0)),
            Winding(id="T1", rated_v=6.3, rated_a=5.0, regulation_pct=5, centre_tap=True, at=(0.0, 0.0)),
            Chassis(id="E1", at=(80.0, 100.0)),
        )
    )
    pane = open_chain(window, "V1", "V2", "V3", "V4")
    assert pane.supply.combo.currentText().startswith("T1.a-b")
    assert pane.reference.combo.currentText() == "centre tap to the chassis"
    assert not pane.plan.parts, "it has everything it needs"
    click_radio(pane, 1)
    assert pane.supply.combo.currentText().startswith("U1.+--")
    choose(pane.supply, "T1.a-b")
    assert pane.messages.lines[0] == ("fault", "T1 gives 6.30\u2009V; this chain is for 12.6\u2009V.")
    assert not pane.build_button.isEnabled()
    assert window.scene.proposal.current is None
    key(K.Key_Return)
    assert undo_names(window) == []
    choose(pane.supply, "a new DC supply")
    choose(pane.reference, "nothing")
    key(K.Key_Return)
    assert undo_names(window) == ["Wire a chain of 2"]
    assert window.document.sheet.part_by_id["U2"].set_v == 12.6


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


def test_what_is_tied_already_has_no_tie_to_choose(window) -> None:
    open_chain(window, "V3")
    key(K.Key_Return)
    pane = open_chain(window, "V4")
    assert pane.supply.combo.currentText().startswith("T1.a-b")
    assert pane.reference.combo.currentText() == "tied already"
    assert not pane.reference.combo.isEnabled()
    choose(pane.supply, "a new winding")
    assert pane.reference.combo.isEnabled()
    assert pane.reference.combo.currentText() == "centre tap to the chassis"


def test_the_summary_tells_the_load_as_it_is_solved(window) -> None:
    pane = open_chain(window, "V3", "V4")
    supply = window.scene.proposal.current.assessment.points["nominal"].supplies["T1"]
    assert (
        pane.summary.text()
        == f"6.30\u2009V · 3.00\u2009A · T1 {supply.load_pct:.1f}\u2009% · 1.38\u2009m of wire"
    )


def test_the_tie_to_the_chassis_is_chosen(window) -> None:
    pane = open_chain(window, "V3")
    choose(pane.reference, "two equal resistors")
    assert [part.kind for part in pane.plan.parts].count("resistor") == 2
    choose(pane.supply, "a new DC supply")
    words = [pane.reference.combo.itemText(n) for n in range(pane.reference.combo.count())]
    assert words == ["one side to the chassis", "nothing"]


def test_the_wire_is_chosen_and_kept_for_the_next_chain(window) -> None:
    pane = open_chain(window, "V3")
    choose(pane.wire_size, "AWG 16")
    assert {wire.awg for wire in pane.plan.wires} == {16}
    choose(pane.wire_size, "by the current, AWG")
    assert {wire.awg for wire in pane.plan.wires} == {20}
    key(K.Key_Escape)
    pane = open_chain(window, "V4")
    assert {wire.awg for wire in pane.plan.wires} == {20}


def test_the_spare_length_is_typed_and_refused_in_place(window) -> None:
    pane = open_chain(window, "V3")
    editor = pane.allowance.editor
    before = pane.plan.length_m
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, "a lot")
    key(K.Key_Return)
    assert pane.allowance.is_refused
    assert "metres are expected" in pane.allowance.sentence.text()
    assert pane.plan.length_m == before
    assert undo_names(window) == [], "nothing is built with something else than what stands there"
    editor.selectAll()
    QTest.keyClicks(editor, "30 m")
    key(K.Key_Tab)
    assert "from 0 to 5" in pane.allowance.sentence.text()
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, "14 cm")
    key(K.Key_Tab)
    assert not pane.allowance.is_refused
    assert pane.plan.length_m == pytest.approx(before + 0.1 * sum(not w.is_strap for w in pane.plan.wires))


def test_the_order_is_moved_by_key_and_by_mouse(window) -> None:
    pane = open_chain(window, "V1", "V2", "V3", "V4")
    assert pane.list.ids() == ("V3", "V4", "V2", "V1")
    pane.list.setFocus()
    key(K.Key_Down)
    key(K.Key_Down, ALT)
    assert pane.list.ids() == ("V3", "V2", "V4", "V1")
    assert pane.plan.order == ("V3", "V2", "V4", "V1")
    assert pane.order.combo.currentText() == "my own order"
    first, last = (pane.list.visualItemRect(pane.list.item(row)).center() for row in (0, 3))
    viewport = pane.list.viewport()
    QTest.mousePress(viewport, LEFT, Qt.KeyboardModifier.NoModifier, first)
    for share in (0.5, 1.0):
        QTest.mouseMove(viewport, first + (last - first) * share)
    QTest.mouseRelease(viewport, LEFT, Qt.KeyboardModifier.NoModifier, last)
    assert pane.plan.order == ("V2", "V4", "V1", "V3")
    choose(pane.order, "by their numbers")
    assert pane.plan.order == ("V1", "V2", "V3", "V4")
    choose(pane.order, "the nearest first")
    assert pane.plan.order == ("V1", "V2", "V3", "V4")
    key(K.Key_Return)
    assert window.document.sheet.wires[0].end.startswith("V1.")


def test_a_socket_that_is_left_out_says_why(open_window) -> None:
    sheet = amplifier(
        Tube(id="V9", type="PL84", at=(0.0, 300.0)), Tube(id="V8", type="no such", at=(0.0, 500.0))
    )
    window = open_window(sheet)
    pane = open_chain(window, "V1", "V2", "V8", "V9")
    click_radio(pane, 0)
    texts = {pane.list.item(row).text() for row in range(pane.list.count())}
    assert "V9  PL84 – not wired" in texts
    assert "V8 – not wired" in texts
    row = pane.list.ids().index("V9")
    assert "made for 15.0" in pane.list.item(row).toolTip()


def test_wired_sockets_are_laid_anew_only_when_that_is_ticked(window) -> None:
    open_chain(window, "V3", "V4")
    key(K.Key_Return)
    wires = set(window.document.sheet.wire_by_id)
    pane = open_chain(window, "V2", "V3")
    assert not pane.replace.isChecked()
    assert pane.plan.order == ("V2",)
    click(pane.replace, QPoint(8, 8))
    assert pane.plan.order == ("V3", "V2")
    assert set(pane.plan.removed) < wires
    key(K.Key_Escape)
    pane = open_chain(window, "V3", "V4")
    assert pane.replace.isChecked(), "there is nothing else to do for them"
    key(K.Key_Return)
    assert undo_names(window) == ["Wire a chain of 2", "Wire a chain of 2"]
    assert not wires & {wire.id for wire in window.document.sheet.wires if not wire.start.startswith("T1.ct")}


def test_shunts_are_for_unequal_heaters_in_series(open_window) -> None:
    parts = (Tube(id="V1", type="EL84", at=(0, 0)), Tube(id="V2", type="6V6GT", at=(200, 0)))
    window = open_window(Sheet(parts=parts, mains=Mains(low_pct=-3, high_pct=3)))
    pane = open_chain(window, "V1", "V2")
    assert not pane.shunts.isEnabled()
    assert pane.offers.reasons[3].text().startswith("Only with a resistor across")
    click_radio(pane, 3)
    assert pane.shunts.isChecked()
    assert set(pane.plan.order) == {"V1", "V2"}
    assert any("shunt of 20.0" in text for _, text in pane.messages.lines)
    key(K.Key_Return)
    assert not faults(window)


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


def test_a_string_from_the_mains_warns(open_window) -> None:
    tubes = tuple(Tube(id=f"V{n}", type="50L6GT", at=(200.0 * n, 0.0)) for n in (1, 2))
    sheet = Sheet(parts=(MainsFeed(id="M1"), *tubes), mains=Mains(nominal_v=117, low_pct=-5, high_pct=5))
    window = open_window(sheet)
    pane = open_chain(window, "V1", "V2")
    assert pane.settled.offer.arrangement == "series"
    assert pane.supply.combo.currentText().startswith("M1.L-N")
    assert any("isolating transformer" in text for _, text in pane.messages.lines)
    assert pane.reference.combo.currentText() == "nothing"


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
