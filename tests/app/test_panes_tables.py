from __future__ import annotations

import pytest
from PySide6.QtCore import QItemSelectionModel, QModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from app.panes.columns import heater_columns
from app.panes.models import STATE_ROLE, RowsModel
from app.panes.row_view import RowView
from app.panes.rows import heater_rows, natural, part_rows, pin_rows, supply_rows, wire_rows
from app.panes.tables import HEATERS, PARTS, WIRES, TablesPane
from app.theme import DARK, LIGHT
from core import edits
from core.assess import assess
from core.catalogue import load_builtin
from core.samples import sample_bytes
from core.sheet import Resistor, Sheet
from core.storage import load
from tests.app.panes_sample import SHEET, Desk, assessment, desk, point

MINUS = "\u2212"


@pytest.fixture
def bench(qtbot: QtBot) -> tuple[TablesPane, Desk]:
    made = desk()
    pane = TablesPane(made.document, made.selection, made.viewpoint, LIGHT)
    qtbot.addWidget(pane)
    pane.resize(420, 260)
    pane.show()
    qtbot.waitExposed(pane)
    return pane, made


def _texts(pane: TablesPane, table: int) -> list[list[str]]:
    pane.tabs.setCurrentIndex(table)
    model = pane.views[table].proxy
    columns = range(model.columnCount())
    return [[model.index(row, column).data() for column in columns] for row in range(model.rowCount())]


def _cell(view: RowView, owner: str, column: int) -> QModelIndex:
    for row in range(view.proxy.rowCount()):
        if view.proxy.index(row, 0).data(Qt.ItemDataRole.UserRole + 1) == owner:
            return view.proxy.index(row, column)
    raise AssertionError(f"no row of {owner}")


def _click(view: RowView, index: QModelIndex) -> None:
    view.scrollTo(index)
    QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=view.visualRect(index).center())


def _type(view: RowView, index: QModelIndex, text: str) -> None:
    view.setFocus()
    view.setCurrentIndex(index)
    QTest.keyClick(view, Qt.Key.Key_F2)
    editor = next(line for line in view.viewport().findChildren(QLineEdit) if line.isVisible())
    editor.selectAll()
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)
    QApplication.processEvents()  # Qt hands the text on with the next turn of its loop


def test_rows_of_every_table() -> None:
    nominal = point("nominal", 230.0, 1.0)
    heaters = heater_rows(SHEET, load_builtin(), nominal)
    assert [[cell.text for cell in row.cells] for row in heaters][::3] == [
        ["", "V1", "EL84", "4-5", "6.30", "0.0", "0.760", "4.79", "1438", "1050"],
        ["", "V10", "ECC83", "9-5", "0.00", f"{MINUS}100", "0.000", "0.000", "1438", "1050"],
    ]
    assert [cell.text for cell in supply_rows(SHEET, nominal)[0].cells] == [
        "T1",
        "winding",
        "6.45",
        "2.71",
        "90.2",
        "17.5",
    ]
    assert [cell.text for cell in wire_rows(SHEET, nominal)[0].cells] == [
        "w1",
        "T1.a",
        "V1.4",
        "18\u2009AWG",
        "0.30\u2009m",
        "",
        "",
        "2.71",
        "17.1",
        "0.046",
    ]
    assert [cell.text for cell in part_rows(SHEET.parts)[4].cells] == [
        "R1",
        "resistor",
        "82\u2009mΩ 2\u2009W",
        "0, 0",
        "0",
        "",
    ]


def test_numbers_are_blank_until_solved(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    assert _texts(pane, HEATERS)[0][4:] == ["…"] * 6
    made.solve()
    assert _texts(pane, HEATERS)[0][4] == "6.30"
    made.document.apply("Turn", edits.turn_parts(["V1"]))
    assert _texts(pane, HEATERS)[0][4:] == ["…"] * 6, "figures of an older drawing are not current"


def test_tables_show_the_condition_on_show(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    made.solve()
    made.viewpoint.set_mains(SHEET.mains.high_v)
    assert _texts(pane, HEATERS)[0][4:6] == ["7.06", "+12.0"]
    states = [_cell(pane.views[HEATERS], owner, 0).data(STATE_ROLE) for owner in ("V1", "V10")]
    assert states == ["over", "over"]
    made.viewpoint.set_mains(SHEET.mains.low_v)
    assert _cell(pane.views[HEATERS], "V1", 0).data(STATE_ROLE) == "under"
    made.viewpoint.set_mains(231.0)
    assert _texts(pane, HEATERS)[0][4] == "…", "nothing was solved at 231 V"
    made.viewpoint.set_mains(230.0)
    made.viewpoint.set_cold(True)
    assert _cell(pane.views[HEATERS], "V1", 0).data(STATE_ROLE) == "cold"


def test_pins_of_the_first_sample_stand_about_the_chassis() -> None:
    sheet = load(sample_bytes("rehearsal-amplifier"))
    nominal = assess(sheet, load_builtin()).points["nominal"]
    rows = {row.key: [cell.text for cell in row.cells] for row in pin_rows(sheet, nominal)}
    # the centre tap is on the chassis: both ends of the winding stand equally far from it, and nothing lifts them
    assert rows["T1.a"][2].lstrip(MINUS) == rows["T1.b"][2].lstrip(MINUS)
    assert rows["T1.b"][2].startswith(MINUS)
    assert rows["T1.ct"][2:] == ["0.00", "0.00"]
    assert {row.owner for row in pin_rows(sheet, None)} == {row.owner for row in pin_rows(sheet, nominal)}
    assert all(cell.text == "\u2026" for row in pin_rows(sheet, None) for cell in row.cells[2:])


def test_models_keep_the_rules_of_models() -> None:
    model = RowsModel(heater_columns())
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    for rows in (
        heater_rows(SHEET, load_builtin(), None),
        heater_rows(SHEET, load_builtin(), point("nominal", 230.0, 1.0)),
        (),
    ):
        model.set_rows(rows)
        assert model.rowCount() == len(rows)
    assert tester.model() is model


def test_names_sort_as_people_count(bench: tuple[TablesPane, Desk]) -> None:
    assert sorted(["V10", "V2", "V1"], key=natural) == ["V1", "V2", "V10"]
    pane, _ = bench
    view = pane.views[PARTS]
    pane.tabs.setCurrentIndex(PARTS)
    view.sortByColumn(0, Qt.SortOrder.AscendingOrder)
    assert [row[0] for row in _texts(pane, PARTS)] == ["E1", "R1", "T1", "V1", "V2", "V10"]


def test_figures_sort_as_numbers(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    made.solve()
    pane.views[HEATERS].sortByColumn(4, Qt.SortOrder.DescendingOrder)
    assert [row[4] for row in _texts(pane, HEATERS)] == ["6.30", "6.29", "6.20", "0.00"]


def test_a_click_selects_on_the_drawing(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    heard: list[frozenset[str]] = []
    made.selection.changed.connect(heard.append)
    _click(pane.views[HEATERS], _cell(pane.views[HEATERS], "V2", 1))
    assert made.selection.ids == {"V2"}
    assert heard == [frozenset({"V2"})], "told once, no echo"
    assert pane.views[PARTS].ids() == {"V2"}, "the other tables follow"


def test_tables_follow_the_drawing(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    heard: list[frozenset[str]] = []
    made.selection.changed.connect(heard.append)
    made.selection.set(["V10", "w1"])
    heaters = pane.views[HEATERS].selectionModel().selectedRows()
    assert [index.siblingAtColumn(3).data() for index in heaters] == ["4-9", "9-5"]
    assert pane.views[WIRES].ids() == {"w1"}
    made.selection.clear()
    assert pane.views[HEATERS].ids() == frozenset()
    assert len(heard) == 2


def test_selection_outlives_new_answers(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    made.selection.set(["V2"])
    made.solve()
    assert pane.views[HEATERS].ids() == {"V2"}
    made.document.apply("Delete V1", edits.remove(["V1"]))
    assert pane.views[HEATERS].ids() == {"V2"}
    assert made.selection.ids == {"V2"}


def test_several_rows_by_keyboard(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    view = pane.views[HEATERS]
    view.setFocus()
    view.selectionModel().setCurrentIndex(view.proxy.index(0, 1), QItemSelectionModel.SelectionFlag.NoUpdate)
    QTest.keyClick(view, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    assert made.selection.ids == {"V1", "V2"}


def test_double_click_and_return_reveal(bench: tuple[TablesPane, Desk], qtbot: QtBot) -> None:
    pane, made = bench
    view = pane.views[HEATERS]
    index = _cell(view, "V2", 2)
    assert not index.flags() & Qt.ItemFlag.ItemIsEditable
    with qtbot.waitSignal(made.selection.reveal) as revealed:
        _click(view, index)
        place = view.visualRect(index).center()
        QTest.mouseDClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert revealed.args == [frozenset({"V2"})]
    with qtbot.waitSignal(made.selection.reveal) as revealed:
        QTest.keyClick(view, Qt.Key.Key_Return)
    assert revealed.args == [frozenset({"V2"})]


def test_rename_in_the_table(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(PARTS)
    made.selection.set(["V1"])
    view = pane.views[PARTS]
    _type(view, _cell(view, "V1", 0), "V7")
    assert "V7" in made.document.sheet.part_by_id
    assert made.document.sheet.wire_by_id["w1"].end == "V7.4"
    assert made.selection.ids == {"V7"}
    assert made.undo_text == "Rename V1"
    made.document.undo_stack.undo()
    assert made.document.sheet == SHEET


def test_a_taken_id_is_refused_with_a_sentence(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(PARTS)
    view = pane.views[PARTS]
    _type(view, _cell(view, "V1", 0), "V2")
    assert made.document.sheet is SHEET
    assert pane.complaint.isVisible()
    assert "V2 is already in use" in pane.complaint.text()
    _type(view, _cell(view, "V1", 0), "V7")
    assert not pane.complaint.isVisible()


def test_another_type_in_the_table(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(PARTS)
    view = pane.views[PARTS]
    _type(view, _cell(view, "V1", 2), "EZ81")
    assert made.document.sheet.part_by_id["V1"].type == "EZ81"  # type: ignore[union-attr]
    assert made.undo_text == "Set V1 type"
    _type(view, _cell(view, "R1", 2), "47R 5 W")
    resistor = made.document.sheet.part_by_id["R1"]
    assert isinstance(resistor, Resistor)
    assert (resistor.ohm, resistor.rated_w) == (47, 5)
    assert made.undo_text == "Set R1 rating"


@pytest.mark.parametrize(
    ("column", "typed", "field", "value"),
    [
        (3, "0.5 mm2", "area_mm2", 0.5),
        (3, "22 awg", "awg", 22),
        (4, "45 cm", "length_m", 0.45),
        (4, "0,25", "length_m", 0.25),
    ],
)
def test_wire_size_and_length(
    bench: tuple[TablesPane, Desk], column: int, typed: str, field: str, value: float
) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(WIRES)
    view = pane.views[WIRES]
    _type(view, _cell(view, "w1", column), typed)
    wire = made.document.sheet.wire_by_id["w1"]
    assert getattr(wire, field) == pytest.approx(value)
    assert wire.awg is None or wire.area_mm2 is None


@pytest.mark.parametrize(("column", "typed"), [(3, "20"), (3, "90 AWG"), (4, "5 V"), (4, "-1 m")])
def test_bad_wire_figures_change_nothing(bench: tuple[TablesPane, Desk], column: int, typed: str) -> None:
    pane, made = bench
    pane.tabs.setCurrentIndex(WIRES)
    view = pane.views[WIRES]
    _type(view, _cell(view, "w1", column), typed)
    assert made.document.sheet is SHEET
    assert pane.complaint.isVisible()


def test_whole_heater_table_fits_a_narrow_column(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    pane.resize(382, 260)
    made.solve()
    view = pane.views[HEATERS]
    assert view.horizontalHeader().length() <= view.viewport().width()
    pane.set_theme(DARK)
    assert view.horizontalHeader().length() <= view.viewport().width()


def test_hidden_tables_catch_up_when_shown(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    _texts(pane, WIRES)
    pane.tabs.setCurrentIndex(HEATERS)
    made.document.apply("Set w1 length", edits.set_wire("w1", length_m=2.0))
    made.document.take_assessment(assessment(made.document.sheet))
    assert _texts(pane, WIRES)[0][4:8] == ["2.00\u2009m", "", "", "2.71"]


def test_without_rows_every_column_fits_into_the_width(bench: tuple[TablesPane, Desk]) -> None:
    pane, made = bench
    pane.resize(326, 260)
    made.document.open(Sheet())
    for number, view in enumerate(pane.views):
        pane.tabs.setCurrentIndex(number)
        QApplication.processEvents()
        head = view.horizontalHeader()
        widths = [head.sectionSize(column) for column in range(head.count())]
        assert sum(widths) <= view.viewport().width()
        assert not view.horizontalScrollBar().isVisible()
        assert view.horizontalScrollBar().maximum() == 0
