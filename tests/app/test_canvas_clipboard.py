"""Cut, copy, paste and duplicate by real keys, through the system's clipboard."""

from __future__ import annotations

import subprocess
import sys

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit

from app import clipboard
from core.catalogue.types import Section, TubeType
from core.checks import find_problems
from core.edits.copying import extract
from core.sheet import Frame, Sheet, Tube, Wire
from core.storage import dump, load
from tests.app.canvas_rig import Rig, make_rig, small_sheet, told_by

CTRL = Qt.KeyboardModifier.ControlModifier
K = Qt.Key
OWN = TubeType(designation="OWN1", base="B9A", sections=(Section(("4", "5"), 6.3, 0.3),))


@pytest.fixture
def rig(qtbot) -> Rig:
    QGuiApplication.clipboard().clear()
    return make_rig(qtbot, small_sheet())


def put_text(text: str) -> None:
    QGuiApplication.clipboard().setText(text)


def test_copy_lays_the_text_of_a_sheet_file_on_the_clipboard(rig):
    rig.selection.set(("T1", "V1"))
    rig.key(K.Key_C, CTRL)
    mime = QGuiApplication.clipboard().mimeData()
    laid = load(bytes(mime.data(clipboard.MIME).data()))
    wanted = extract(small_sheet(), ("T1", "V1"))
    assert (laid.parts, laid.wires) == (wanted.parts, wanted.wires)
    assert mime.text().encode() == dump(laid)
    assert [wire.id for wire in wanted.wires] == ["w1", "w2"]
    assert rig.sheet == small_sheet()


def test_paste_beside_the_copied_and_step_on(rig):
    rig.selection.set(("V1", "V2"))
    rig.key(K.Key_C, CTRL)
    rig.key(K.Key_V, CTRL)
    assert rig.selection.ids == {"V3", "V4"}
    assert rig.sheet.part_by_id["V3"].at == (20, 20)
    assert rig.sheet.part_by_id["V4"].at == (240, 20)
    rig.key(K.Key_V, CTRL)
    assert rig.sheet.part_by_id["V5"].at == (40, 40)
    assert rig.undo_names == ["Paste 2 parts", "Paste 2 parts"]
    rig.document.undo_stack.undo()
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()


def test_paste_at_the_pointer(rig):
    rig.selection.set(("V1", "V2"))
    rig.key(K.Key_C, CTRL)
    rig.move(113, -200, button=Qt.MouseButton.NoButton)
    rig.key(K.Key_V, CTRL)
    assert rig.sheet.part_by_id["V3"].at == (0, -200)
    assert rig.sheet.part_by_id["V4"].at == (220, -200)
    rig.key(K.Key_V, CTRL)
    assert rig.sheet.part_by_id["V5"].at == (20, -180)
    rig.move(113, 256, button=Qt.MouseButton.NoButton)
    rig.key(K.Key_V, CTRL)
    assert rig.sheet.part_by_id["V7"].at == (0, 260)


def test_pasted_wires_are_between_the_pasted_parts(rig):
    rig.selection.set(("T1", "V1"))
    rig.key(K.Key_C, CTRL)
    rig.key(K.Key_V, CTRL)
    new = [wire for wire in rig.sheet.wires if wire.id not in small_sheet().wire_by_id]
    assert [(wire.start, wire.end) for wire in new] == [("T2.a", "V3.4"), ("T2.b", "V3.5")]
    assert rig.scene.layout_.board.routes[new[0].id][0] == rig.pin("T2.a")


def test_cut_and_paste_brings_everything_between_back(rig):
    rig.selection.set(("T1", "V1"))
    rig.key(K.Key_X, CTRL)
    assert rig.undo_names == ["Cut 2 parts"]
    assert "T1" not in rig.sheet.part_by_id
    rig.key(K.Key_V, CTRL)
    assert {"T1", "V1"} <= rig.sheet.part_by_id.keys()
    assert not find_problems(rig.sheet)
    rig.document.undo_stack.undo()
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()


def test_duplicate_steps_on_and_leaves_the_clipboard(rig):
    put_text("something else")
    rig.selection.set(("V1",))
    rig.key(K.Key_D, CTRL)
    assert rig.sheet.part_by_id["V3"].at == (20, 20)
    rig.key(K.Key_D, CTRL)
    assert rig.sheet.part_by_id["V4"].at == (40, 40)
    assert rig.undo_names == ["Duplicate V1", "Duplicate V3"]
    assert QGuiApplication.clipboard().text() == "something else"


def test_a_frame_is_copied_with_what_is_in_it(qtbot):
    frame = Frame(id="FR1", at=(-60, -60), width=120, height=120)
    rig = make_rig(qtbot, Sheet(parts=(frame, Tube(id="V1", type="EL84"))))
    rig.selection.set(("FR1",))
    rig.key(K.Key_D, CTRL)
    assert {part.id for part in rig.sheet.parts} == {"FR1", "V1", "FR2", "V2"}


def test_wires_alone_are_not_copied(rig):
    told = told_by(rig)
    rig.selection.set(("w1",))
    rig.key(K.Key_X, CTRL)
    assert rig.sheet == small_sheet()
    assert told == ["Wires are copied together with the parts at both ends: choose the parts as well."]
    rig.key(K.Key_D, CTRL)
    assert rig.sheet == small_sheet()


def test_text_from_anywhere_is_pasted_if_it_is_a_sheet(rig):
    put_text("\n" + dump(Sheet(parts=(Tube(id="V1", type="EL84", at=(60, 40)),))).decode() + "\n\n")
    rig.key(K.Key_V, CTRL)
    assert rig.sheet.part_by_id["V3"].at == (80, 60)


BROKEN = dump(small_sheet()).decode().replace('"rated_v": 6.3', '"rated_v": -6.3')
NEWER = dump(small_sheet()).decode().replace('"version": 1', '"version": 99')


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("", "There is nothing on the clipboard that could be pasted."),
        ("shopping list", "The text on the clipboard is no part of a sheet. Copy parts of a drawing."),
        ("{", "The text on the clipboard cannot be pasted: "),
        (BROKEN, "The text on the clipboard cannot be pasted: parts[0].rated_v: "),
        (
            NEWER,
            "The text on the clipboard cannot be pasted: version: 'clipboard' was made by a newer version",
        ),
        (dump(Sheet()).decode(), "There are no parts on the clipboard."),
        ("{" + " " * clipboard.LARGEST + "x", "What is on the clipboard is too large for a sheet."),
        ("\ud800", "The"),
    ],
    ids=["nothing", "words", "broken off", "bad value", "newer", "empty", "huge", "half a pair"],
)
def test_anything_else_is_refused_with_a_sentence(rig, text, sentence):
    told = told_by(rig)
    put_text(text)
    rig.key(K.Key_V, CTRL)
    assert rig.sheet == small_sheet()
    assert len(told) == 1
    assert told[0].startswith(sentence)
    assert rig.document.undo_stack.count() == 0


def test_nothing_is_pasted_beyond_the_sheet(rig):
    told = told_by(rig)
    put_text(dump(Sheet(parts=(Tube(id="V1", type="EL84", at=(1e6, 0)),))).decode())
    rig.key(K.Key_V, CTRL)
    assert rig.sheet == small_sheet()
    assert told == ["What is pasted would lie beyond the sheet: places go to ±1e+06."]


def test_own_types_travel_and_known_names_keep_their_meaning(qtbot):
    sheet = Sheet(parts=(Tube(id="V1", type="OWN1"),), types=(OWN,))
    source = make_rig(qtbot, sheet)
    source.selection.set(("V1",))
    source.key(K.Key_C, CTRL)
    other = make_rig(qtbot, small_sheet())
    other.key(K.Key_V, CTRL)
    assert other.sheet.types == (OWN,)
    own_el84 = TubeType(designation="EL84", base="octal", sections=OWN.sections)
    put_text(dump(Sheet(parts=(Tube(id="V1", type="EL84"),), types=(own_el84,))).decode())
    other.key(K.Key_V, CTRL)
    assert other.sheet.types == (OWN,)
    assert other.document.catalogue.tube("EL84").base == "B9A"


def test_in_a_text_field_the_keys_keep_their_meaning(open_window):
    window = open_window(small_sheet())
    window.selection.set(("V1",))
    field = window.view.add_field
    field.enter()
    QTest.keyClicks(field, "10R")
    QTest.keyClick(field, K.Key_A, CTRL)
    QTest.keyClick(field, K.Key_X, CTRL)
    assert QGuiApplication.clipboard().text() == "10R"
    QTest.keyClick(field, K.Key_V, CTRL)
    QTest.keyClick(field, K.Key_D, CTRL)
    assert field.text() == "10R"
    assert window.document.sheet == small_sheet()


def test_in_a_cell_of_a_table_the_keys_keep_their_meaning(open_window):
    window = open_window(small_sheet())
    window.side.show_tables()
    window.side.tables.tabs.setCurrentIndex(3)
    table = window.side.tables.views[3]
    index = next(
        table.model().index(0, column)
        for column in range(table.model().columnCount())
        if table.model().flags(table.model().index(0, column)) & Qt.ItemFlag.ItemIsEditable
    )
    table.setCurrentIndex(index)
    table.edit(index)
    editor = next(each for each in table.findChildren(QLineEdit) if each.isVisible())
    QTest.keyClick(editor, K.Key_A, CTRL)
    QTest.keyClick(editor, K.Key_C, CTRL)
    assert QGuiApplication.clipboard().text() == editor.text() != ""
    QTest.keyClick(editor, K.Key_X, CTRL)
    assert editor.text() == ""
    QTest.keyClick(editor, K.Key_V, CTRL)
    QTest.keyClick(editor, K.Key_D, CTRL)
    assert editor.text() == QGuiApplication.clipboard().text()
    assert window.document.sheet == small_sheet()


def test_what_cannot_be_pasted_is_told_in_the_window(open_window):
    window = open_window(small_sheet())
    put_text("words")
    window.view.setFocus()
    QTest.keyClick(window.view, K.Key_V, CTRL)
    assert window.banner.isVisible()
    assert "no part of a sheet" in window.banner.label.text()


def test_from_one_window_to_another(open_window):
    one, other = open_window(small_sheet()), open_window(Sheet())
    one.selection.set(("T1", "V1"))
    QTest.keyClick(one.view, K.Key_C, CTRL)
    QTest.keyClick(other.view, K.Key_V, CTRL)
    assert {part.id for part in other.document.sheet.parts} == {"T1", "V1"}
    assert len(other.document.sheet.wires) == 2


def test_a_twisted_pair_is_pasted_as_its_own_pair(qtbot):
    sheet = small_sheet()
    wires = tuple(
        Wire(id=wire.id, start=wire.start, end=wire.end, awg=20, length_m=0.3, twist="p1" if n < 2 else None)
        for n, wire in enumerate(sheet.wires)
    )
    rig = make_rig(qtbot, Sheet(parts=sheet.parts, wires=wires))
    rig.selection.set(("T1", "V1"))
    rig.key(K.Key_D, CTRL)
    assert [wire.twist for wire in rig.sheet.wires] == ["p1", "p1", None, "p2", "p2"]


def test_a_copy_on_the_clipboard_does_no_harm_at_the_end_of_the_program():
    program = """
from PySide6.QtWidgets import QApplication
from app import clipboard
from core.sheet import Sheet, Tube
application = QApplication([])
clipboard.put(Sheet(parts=(Tube(id="V1", type="EL84"),)))
print(len(clipboard.take().parts))
"""
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout.strip()) == (0, "1"), done.stderr
