from __future__ import annotations

import msgspec
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QCheckBox, QComboBox, QLabel, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from app.panes.about import plain_tip
from app.panes.completing import Completer
from app.panes.field_rows import FieldRow
from app.panes.fields import form_of
from app.panes.properties import PropertiesPane
from app.theme import DARK, LIGHT
from core import sheet as kinds
from core.catalogue import load_builtin
from core.sheet import Resistor, Sheet, Tube
from tests.app.panes_sample import SHEET, Desk, desk

Bench = tuple[PropertiesPane, Desk]


@pytest.fixture
def bench(qtbot: QtBot) -> Bench:
    made = desk()
    pane = PropertiesPane(made.document, made.selection, LIGHT)
    qtbot.addWidget(pane)
    pane.resize(400, 480)
    pane.show()
    qtbot.waitExposed(pane)
    return pane, made


def _line(pane: PropertiesPane, name: str) -> QLineEdit:
    editor = pane.rows[name].editor
    assert isinstance(editor, QLineEdit)
    return editor


def _enter(pane: PropertiesPane, name: str, text: str, key: Qt.Key = Qt.Key.Key_Return) -> FieldRow:
    line = _line(pane, name)
    line.setFocus()
    line.selectAll()
    if text.isascii():
        QTest.keyClicks(line, text)
    else:
        line.insert(text)  # the test library has no keys for letters such as Ω
    QTest.keyClick(line, key)
    return pane.rows[name]


def _resistor(made: Desk) -> Resistor:
    part = made.document.sheet.part_by_id["R1"]
    assert isinstance(part, Resistor)
    return part


def test_a_good_value_is_one_undo_step(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    row = _enter(pane, "ohm", "4k7")
    assert _resistor(made).ohm == 4700
    assert made.undo_text == "Set R1 resistance"
    assert made.document.undo_stack.count() == 1
    assert row.text == "4.7\u2009kΩ"
    made.document.undo_stack.undo()
    assert _line(pane, "ohm").text() == "82\u2009mΩ"


def test_leaving_the_field_commits_once(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    _enter(pane, "ohm", "10", Qt.Key.Key_Tab)
    assert _resistor(made).ohm == 10
    assert made.document.undo_stack.count() == 1


@pytest.mark.parametrize(("typed", "value"), [("0,47", 0.47), ("1,5 kΩ", 1500.0), ("2R2", 2.2)])
def test_decimal_commas_and_letters(bench: Bench, typed: str, value: float) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    _enter(pane, "ohm", typed)
    assert _resistor(made).ohm == pytest.approx(value)


@pytest.mark.parametrize(
    ("name", "typed", "words"),
    [
        ("ohm", "6.3 V", "ohms are expected here"),
        ("ohm", "1,500", "two readings"),
        ("ohm", "abc", "not understood"),
        ("ohm", "-5", "0 or greater"),
        ("ohm", "", "cannot be left out"),
        ("tolerance_pct", "120 %", "from 0 to 99"),
        ("id", "V1", "already in use"),
        ("id", "V 1", "cannot be an id"),
        ("at", "12", "Two numbers"),
    ],
)
def test_a_bad_value_changes_nothing_and_says_why(bench: Bench, name: str, typed: str, words: str) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    line = _line(pane, name)
    line.setFocus()
    line.clear()
    row = _enter(pane, name, typed)
    assert made.document.sheet is SHEET
    assert made.document.undo_stack.count() == 0
    assert row.is_refused
    assert row.sentence.isVisible()
    assert words in row.sentence.text()
    assert row.text == typed, "what was typed stays to be mended"
    row = _enter(pane, name, {"id": "R9", "at": "20; 40"}.get(name, "7"))
    assert not pane.rows[name].is_refused
    assert not pane.rows[name].sentence.isVisible()
    assert made.document.undo_stack.count() == 1


def test_a_refused_field_is_marked_by_a_shape(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    row = pane.rows["ohm"]
    before = row.height()
    _enter(pane, "ohm", "6.3 V")
    QTest.qWait(0)
    assert row.height() > before
    image = row._mark.grab().toImage()
    ink = LIGHT.colour("over")
    count = sum(image.pixelColor(x, y) == ink for x in range(image.width()) for y in range(image.height()))
    assert count > 20, "the triangle is painted"


def test_sentences_are_never_cut(bench: Bench) -> None:
    pane, made = bench
    pane.resize(340, 480)
    made.selection.set(["R1"])
    row = _enter(pane, "ohm", "1,500")
    QTest.qWait(0)
    label = row.sentence
    assert label.height() >= label.heightForWidth(label.width())


def test_escape_restores(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    line = _line(pane, "ohm")
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, "99")
    QTest.keyClick(line, Qt.Key.Key_Escape)
    assert line.text() == "82\u2009mΩ"
    _enter(pane, "ohm", "nonsense")
    QTest.keyClick(line, Qt.Key.Key_Escape)
    assert line.text() == "82\u2009mΩ"
    assert not pane.rows["ohm"].is_refused
    assert made.document.sheet is SHEET


def test_defaults_are_shown_as_defaults(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["T1"])
    assert _line(pane, "regulation_pct").text() == ""
    assert _line(pane, "regulation_pct").placeholderText() == "10\u2009% (default)"
    assert _line(pane, "rated_mains_v").placeholderText() == "230\u2009V (nominal mains)"
    _enter(pane, "regulation_pct", "5")
    assert made.document.sheet.part_by_id["T1"].regulation_pct == 5  # type: ignore[union-attr]
    line = _line(pane, "regulation_pct")
    line.setFocus()
    line.clear()
    QTest.keyClick(line, Qt.Key.Key_Return)
    assert made.document.sheet.part_by_id["T1"] == SHEET.part_by_id["T1"], "empty is the default again"


def test_catalogue_values_stand_in(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["V1"])
    assert _line(pane, "rated_v").placeholderText() == "6.3\u2009V (catalogue)"
    assert _line(pane, "rated_a").placeholderText() == "760\u2009mA (catalogue)"
    fuse = kinds.Fuse(id="F1", rated_a=2.0)
    form = form_of(Sheet(parts=(fuse,)), load_builtin(), "F1")
    assert form is not None
    assert {field.name: field.placeholder for field in form.fields}["cold_ohm"].endswith("Ω (catalogue)")
    made.selection.set(["V10"])
    assert "rated_v" not in pane.rows, "one rating cannot stand for two sections"


def test_tick_boxes_and_choices(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["T1"])
    box = pane.rows["centre_tap"].editor
    assert isinstance(box, QCheckBox)
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Space)
    assert made.document.sheet.part_by_id["T1"].centre_tap is True  # type: ignore[union-attr]
    turn = pane.rows["turn"].editor
    assert isinstance(turn, QComboBox)
    turn.setFocus()
    QTest.keyClick(turn, Qt.Key.Key_Down)
    assert made.document.sheet.part_by_id["T1"].turn == 90
    made.document.undo_stack.undo()
    assert turn.currentText() == "0"


def test_tube_types_are_completed_from_the_catalogue(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["V1"])
    line = _line(pane, "type")
    completer = line.completer()
    assert isinstance(completer, Completer)
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, "ecc8")
    assert "ECC83" in completer.offered()
    completer.popup().hide()
    _enter(pane, "type", "ECC83")
    part = made.document.sheet.part_by_id["V1"]
    assert isinstance(part, Tube)
    assert part.type == "ECC83"
    assert "rated_v" not in pane.rows


def test_renaming_keeps_the_selection(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["V1"])
    _enter(pane, "id", "V7")
    assert made.selection.ids == {"V7"}
    assert pane.heading.text() == "Tube V7"
    assert made.document.sheet.wire_by_id["w1"].end == "V7.4"


def test_a_wire(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["w1"])
    assert pane.heading.text() == "Wire w1"
    assert list(pane.rows) == ["id", "start", "end", "gauge", "length_m", "colour", "twist"]
    _enter(pane, "gauge", "0.75 mm²")
    assert made.document.sheet.wire_by_id["w1"].area_mm2 == 0.75
    assert made.document.sheet.wire_by_id["w1"].awg is None
    row = _enter(pane, "end", "V9.4")
    assert row.is_refused
    assert "no part V9" in row.sentence.text()
    _enter(pane, "twist", "t1")
    assert made.document.sheet.wire_by_id["w1"].twist == "t1"


def test_nothing_selected_shows_the_sheet(bench: Bench) -> None:
    pane, made = bench
    assert pane.heading.text() == "The sheet"
    _enter(pane, "nominal_v", "120 V")
    _enter(pane, "ambient_c", "40")
    _enter(pane, "title", "Bench")
    sheet = made.document.sheet
    assert (sheet.mains.nominal_v, sheet.ambient_c, sheet.title) == (120.0, 40.0, "Bench")
    row = _enter(pane, "low_pct", "+20 %")
    assert row.is_refused
    assert "low mains must not lie above high mains" in row.sentence.text().lower()


def test_several_selected_have_common_actions(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["V1", "V2", "w3"])
    assert pane.heading.text() == "3 selected"
    texts = [label.text() for label in pane.area.widget().findChildren(QLabel)]
    assert texts == ["2 parts and 1 wire", "V1, V2, w3"]
    turn, delete = pane.area.widget().findChildren(QPushButton)
    QTest.mouseClick(turn, Qt.MouseButton.LeftButton)
    assert made.document.sheet.part_by_id["V1"].turn == 90
    QTest.mouseClick(delete, Qt.MouseButton.LeftButton)
    assert made.document.sheet.part_by_id.keys() == {"T1", "V10", "R1", "E1"}
    assert made.document.undo_stack.count() == 2
    assert made.undo_text == "Delete 2 parts and 1 wire"


def test_what_is_typed_goes_to_the_part_it_was_typed_for(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    line = _line(pane, "ohm")
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, "33")
    made.selection.set(["V1"])
    assert _resistor(made).ohm == 33


def test_an_edit_elsewhere_leaves_typing_alone(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    line = _line(pane, "ohm")
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, "33")
    made.solve()
    made.document.apply("Rename", lambda sheet: msgspec.structs.replace(sheet, title="x"))
    assert line.text() == "33"


def test_findings_of_the_part_are_listed(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["V1"])
    made.solve()
    texts = [label.text() for label in pane.area.widget().findChildren(QLabel)]
    assert "heater-voltage 7.1" in texts
    assert "supply-margin 90.0" not in texts


def test_sources_in_tips_are_plain_text(bench: Bench) -> None:
    assert plain_tip("<b>a & b</b>") == "<qt>&lt;b&gt;a &amp; b&lt;/b&gt;</qt>"
    pane, made = bench
    made.selection.set(["V1"])
    assert pane.about is not None
    assert pane.about.facts
    tips = {label.toolTip() for label in pane.about.findChildren(QLabel) if label.toolTip()}
    assert len(tips) >= 1


def test_an_unknown_type_is_said_to_be_unknown(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["V1"])
    _enter(pane, "type", "QQ99")
    texts = [label.text() for label in pane.area.widget().findChildren(QLabel)]
    assert "The catalogue does not know QQ99." in texts


def test_theme_can_change(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["V1"])
    before = pane.grab().toImage()
    pane.set_theme(DARK)
    assert pane.grab().toImage() != before


def test_the_keyboard_gets_into_the_form(bench: Bench) -> None:
    pane, made = bench
    made.selection.set(["R1"])
    pane.focus_first()
    assert _line(pane, "ohm").hasFocus()
    assert _line(pane, "ohm").selectedText() == "82\u2009mΩ"
