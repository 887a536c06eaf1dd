"""Changing, adding and deleting parts and wires in their tables, by keys alone."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from app.panes.completing import Completer
from app.panes.row_view import RowView
from app.panes.tables import PARTS, WIRES, TablesPane
from app.theme import LIGHT
from core.sheet import Tube, Winding
from tests.app.panes_sample import SHEET, Desk, desk
from tests.app.test_panes_tables import _cell, _type

K = Qt.Key


@pytest.fixture
def bench(qtbot: QtBot) -> tuple[TablesPane, Desk]:
    made = desk()
    pane = TablesPane(made.document, made.selection, made.viewpoint, LIGHT)
    qtbot.addWidget(pane)
    pane.resize(520, 300)
    pane.show()
    qtbot.waitExposed(pane)
    return pane, made


def _editor(view: RowView) -> QLineEdit | None:
    QApplication.processEvents()
    return next((line for line in view.viewport().findChildren(QLineEdit) if line.isVisible()), None)


@pytest.mark.parametrize(
    ("owner", "column", "typed", "field", "value"),
    [
        ("T1", 2, "12.6 V 1 A ct", "rated_v", 12.6),
        ("V1", 3, "140, -20", "at", (140.0, -20.0)),
        ("R1", 4, "90", "turn", 90),
        ("V1", 5, "pulled", "pulled", True),
    ],
)
def test_a_part_is_changed_in_its_row(
    bench: tuple[TablesPane, Desk], owner: str, column: int, typed: str, field: str, value: object
) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(PARTS)
    view = pane.views[PARTS]
    _type(view, _cell(view, owner, column), typed)
    assert getattr(made.document.sheet.part_by_id[owner], field) == value
    assert _editor(view) is None
    made.document.undo_stack.undo()
    assert made.document.sheet == SHEET


@pytest.mark.parametrize(
    ("column", "typed", "field", "value"),
    [
        (1, "t1.b", "start", "T1.b"),
        (2, "v2.5", "end", "V2.5"),
        (5, "Red", "colour", "red"),
        (5, "#12ab3f", "colour", "#12ab3f"),
        (6, "p1", "twist", "p1"),
    ],
)
def test_a_wire_is_changed_in_its_row(
    bench: tuple[TablesPane, Desk], column: int, typed: str, field: str, value: str
) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(WIRES)
    view = pane.views[WIRES]
    _type(view, _cell(view, "w1", column), typed)
    assert getattr(made.document.sheet.wire_by_id["w1"], field) == value


@pytest.mark.parametrize(
    ("table", "owner", "column", "typed", "says"),
    [
        (PARTS, "V1", 0, "V 9", "cannot be an id"),
        (PARTS, "T1", 2, "5 kg", "6.3 V 2 A"),
        (PARTS, "E1", 2, "5 V", "no rating"),
        (PARTS, "V1", 3, "here", "120, 40"),
        (PARTS, "V1", 4, "45", "0, 90, 180"),
        (PARTS, "V1", 5, "perhaps", "pulled"),
        (PARTS, "R1", 5, "pulled", "Only a tube"),
        (WIRES, "w1", 1, "T9.a", "no part T9"),
        (WIRES, "w1", 2, "T1.x", "no terminal x"),
        (WIRES, "w1", 2, "V1", "such as V1.4"),
        (WIRES, "w1", 5, "mauve", "black"),
    ],
)
def test_bad_input_stays_in_its_open_editor_and_says_what_is_expected(
    bench: tuple[TablesPane, Desk], table: int, owner: str, column: int, typed: str, says: str
) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(table)
    view = pane.views[table]
    before = _cell(view, owner, column).data()
    _type(view, _cell(view, owner, column), typed)
    editor = _editor(view)
    assert editor is not None
    assert editor.text() == typed
    assert pane.complaint.isVisible()
    assert says in pane.complaint.text()
    assert says in editor.accessibleDescription()
    assert made.document.sheet is SHEET
    QTest.keyClick(editor, K.Key_Escape)
    assert _editor(view) is None
    assert not pane.complaint.isVisible()
    assert _cell(view, owner, column).data() == before


def test_a_refused_text_can_be_mended_where_it_stands(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(PARTS)
    view = pane.views[PARTS]
    _type(view, _cell(view, "T1", 2), "6.3 X")
    editor = _editor(view)
    assert editor is not None
    editor.selectAll()
    QTest.keyClicks(editor, "6.3 V 4 A")
    QTest.keyClick(editor, K.Key_Return)
    assert _editor(view) is None
    winding = made.document.sheet.part_by_id["T1"]
    assert isinstance(winding, Winding)
    assert winding.rated_a == 4
    assert not pane.complaint.isVisible()


def test_a_double_click_edits_where_something_can_be_edited(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    heard: list[object] = []
    made.selection.reveal.connect(heard.append)
    pane.tabs.setCurrentIndex(PARTS)
    view = pane.views[PARTS]
    for column, edits in ((2, True), (1, False)):
        place = view.visualRect(_cell(view, "V1", column)).center()
        QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)
        QTest.mouseDClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)
        editor = _editor(view)
        assert (editor is not None) == edits
        if editor is not None:
            QTest.keyClick(editor, K.Key_Escape)
    assert heard == [frozenset({"V1"})]


@pytest.mark.parametrize(
    ("table", "owner", "column", "typed", "offered"),
    [
        (PARTS, "V1", 2, "EL8", "EL84"),
        (WIRES, "w1", 2, "v10.", "V10.9"),
        (WIRES, "w1", 3, "20", "20 AWG"),
        (WIRES, "w1", 5, "gr", "green"),
    ],
)
def test_what_fits_is_offered(
    bench: tuple[TablesPane, Desk], table: int, owner: str, column: int, typed: str, offered: str
) -> None:
    pane, _ = bench
    pane.tabs.setCurrentIndex(table)
    view = pane.views[table]
    view.setFocus()
    view.setCurrentIndex(_cell(view, owner, column))
    QTest.keyClick(view, K.Key_F2)
    editor = _editor(view)
    assert editor is not None
    editor.selectAll()
    QTest.keyClicks(editor, typed)
    completer = editor.completer()
    assert isinstance(completer, Completer)
    assert offered in completer.offered()
    completer.popup().hide()


def test_delete_takes_rows_away_and_stays_in_the_table(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(WIRES)
    view = pane.views[WIRES]
    view.setFocus()
    view.setCurrentIndex(_cell(view, "w2", 0))
    QTest.keyClick(view, K.Key_Delete)
    assert list(made.document.sheet.wire_by_id) == ["w1", "w3"]
    assert made.undo_text == "Delete w2"
    assert made.selection.ids == {"w3"}
    QTest.keyClick(view, K.Key_Delete)
    QTest.keyClick(view, K.Key_Delete)
    assert made.document.sheet.wires == ()
    QTest.keyClick(view, K.Key_Delete)
    for _ in range(3):
        made.document.undo_stack.undo()
    assert made.document.sheet == SHEET


def test_insert_goes_to_the_line_where_a_part_is_added(bench: tuple[TablesPane, Desk], qtbot: QtBot) -> None:
    pane, _ = bench
    pane.tabs.setCurrentIndex(PARTS)
    view, line = pane.views[PARTS], pane.add_lines[PARTS]
    view.setFocus()
    QTest.keyClick(view, K.Key_Insert)
    assert line.hasFocus()
    QTest.keyClicks(line, "ECC83")
    with qtbot.waitSignal(pane.part_wanted) as wanted:
        QTest.keyClick(line, K.Key_Return)
    assert wanted.args == [{"kind": "tube", "type": "ECC83"}]
    assert line.text() == ""
    QTest.keyClicks(line, "nonsense")
    QTest.keyClick(line, K.Key_Return)
    assert line.text() == "nonsense"
    assert pane.complaint.isVisible()
    QTest.keyClick(line, K.Key_Escape)
    assert view.hasFocus()
    assert not pane.complaint.isVisible()


def test_a_wire_is_added_by_its_two_ends(bench: tuple[TablesPane, Desk], qtbot: QtBot) -> None:
    pane, _ = bench
    pane.tabs.setCurrentIndex(WIRES)
    line = pane.add_lines[WIRES]
    assert line.isVisible()
    assert not pane.add_lines[PARTS].isVisible()
    QTest.keyClicks(line, "v1.4 v2.")
    assert "v1.4 V2.4" in line.completer_.offered()
    QTest.keyClicks(line, "7x")
    QTest.keyClick(line, K.Key_Return)
    assert "V2 has no terminal 7x" in pane.complaint.text()
    for _ in range(2):
        QTest.keyClick(line, K.Key_Backspace)
    QTest.keyClicks(line, "4")
    with qtbot.waitSignal(pane.wire_wanted) as wanted:
        QTest.keyClick(line, K.Key_Return)
    assert wanted.args == ["V1.4", "V2.4"]


def test_in_the_window_a_part_and_a_wire_are_added_from_the_tables(open_window) -> None:
    window = open_window(SHEET)
    tables = window.side.tables
    window.side.show_tables()
    tables.tabs.setCurrentIndex(PARTS)
    line = tables.add_lines[PARTS]
    QTest.keyClicks(line, "EL84")
    QTest.keyClick(line, K.Key_Return)
    assert window.document.sheet.part_by_id["V3"] == Tube(
        id="V3", type="EL84", at=window.document.sheet.part_by_id["V3"].at
    )
    tables.tabs.setCurrentIndex(WIRES)
    line = tables.add_lines[WIRES]
    line.setFocus()
    QTest.keyClicks(line, "V3.4-5")
    QTest.keyClick(line, K.Key_Return)
    assert window.document.sheet.wires[-1].is_strap
    assert window.focusWidget() is line
    window.activateWindow()  # without a screen the popup of offers has taken that away
    QApplication.processEvents()
    QTest.keyClick(line, K.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert len(window.document.sheet.wires) == 3
