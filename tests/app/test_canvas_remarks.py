"""Notes and frames by pointer and keys: added, written, moved, resized, picked."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.canvas.note_editor import NoteEditor
from core.sheet import Frame, Note, Sheet, Tube
from tests.app.canvas_rig import ALT, SHIFT, Rig, make_rig, small_sheet

CTRL = Qt.KeyboardModifier.ControlModifier
K = Qt.Key
FRAME = Frame(id="FR1", title="Left", at=(-160, -100), width=320, height=200)
NOTE = Note(id="N1", text="Heaters first", at=(-100, 140))


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(
        qtbot, Sheet(parts=(FRAME, Tube(id="V1", type="EL84"), NOTE, Tube(id="V2", type="EL84", at=(300, 0))))
    )


def editor_of(rig: Rig) -> NoteEditor:
    (found,) = [each for each in rig.view.viewport().findChildren(NoteEditor) if each.isVisible()]
    return found


def add(rig: Rig, text: str) -> None:
    rig.view.add_field.enter()
    QTest.keyClicks(rig.view.add_field, text)
    QTest.keyClick(rig.view.add_field, K.Key_Return)


# adding


def test_a_note_is_typed_in_the_add_field(qtbot):
    rig = make_rig(qtbot, small_sheet())
    add(rig, "note Twist the first pair")
    note = rig.sheet.part_by_id["N1"]
    assert note.text == "Twist the first pair"
    assert rig.selection.ids == {"N1"}
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()


def test_a_note_without_words_is_written_where_it_stands(qtbot):
    rig = make_rig(qtbot, small_sheet())
    add(rig, "note")
    QTest.keyClicks(editor_of(rig), "warm")
    QTest.keyClick(editor_of(rig), K.Key_Return, CTRL)
    assert rig.sheet.part_by_id["N1"].text == "warm"


def test_a_frame_is_put_around_what_is_selected(qtbot):
    rig = make_rig(qtbot, small_sheet())
    rig.selection.set(("V1", "V2"))
    add(rig, "frame Output stage")
    frame = rig.sheet.part_by_id["FR1"]
    assert frame.title == "Output stage"
    left, top = frame.at
    for part_id in ("V1", "V2"):
        body = rig.scene.layout_.places[part_id].body
        assert left < body[0] and top < body[1]
        assert body[2] < left + frame.width and body[3] < top + frame.height
    assert not rig.scene.layout_.places["T1"].body[0] > left


def test_a_frame_by_itself(qtbot):
    rig = make_rig(qtbot, small_sheet())
    add(rig, "frame")
    assert rig.sheet.part_by_id["FR1"] == Frame(id="FR1", at=rig.sheet.part_by_id["FR1"].at)


# writing


@pytest.mark.parametrize("way", ["double click", "enter"])
def test_a_note_is_written_in_place(rig, way):
    if way == "enter":
        rig.selection.set(("N1",))
        rig.key(K.Key_Return)
    else:
        QTest.mouseDClick(rig.view.viewport(), Qt.MouseButton.LeftButton, pos=rig.on_screen(-80, 148))
    editor = editor_of(rig)
    assert editor.toPlainText() == "Heaters first"
    QTest.keyClicks(editor, "one")
    QTest.keyClick(editor, K.Key_Return)
    QTest.keyClicks(editor, "two")
    QTest.keyClick(editor, K.Key_Return, CTRL)
    assert rig.sheet.part_by_id["N1"].text == "one\ntwo"
    assert rig.undo_names == ["Write N1"]
    assert rig.view.hasFocus()
    assert rig.scene.layout_.places["N1"].body[3] > 160


def test_escape_keeps_the_old_words(rig):
    before = rig.sheet
    rig.selection.set(("N1",))
    rig.key(K.Key_Return)
    QTest.keyClicks(editor_of(rig), "never mind")
    QTest.keyClick(editor_of(rig), K.Key_Escape)
    assert rig.sheet is before
    assert rig.view.hasFocus()


def test_leaving_the_note_keeps_what_is_written(rig):
    rig.selection.set(("N1",))
    rig.key(K.Key_Return)
    QTest.keyClicks(editor_of(rig), "kept")
    rig.view.add_field.setFocus()
    assert rig.sheet.part_by_id["N1"].text == "kept"


def test_a_note_left_without_words_is_taken_away(rig):
    rig.selection.set(("N1",))
    rig.key(K.Key_Return)
    QTest.keyClick(editor_of(rig), K.Key_Delete)
    QTest.keyClick(editor_of(rig), K.Key_Return, CTRL)
    assert "N1" not in rig.sheet.part_by_id
    rig.document.undo_stack.undo()
    assert rig.sheet.part_by_id["N1"] == NOTE


def test_keys_in_a_note_are_no_keys_of_the_drawing(rig):
    rig.selection.set(("N1",))
    rig.key(K.Key_Return)
    editor = editor_of(rig)
    for key, held in ((K.Key_R, None), (K.Key_D, CTRL), (K.Key_M, None), (K.Key_Up, None)):
        QTest.keyClick(editor, key, held or Qt.KeyboardModifier.NoModifier)
    QTest.keyClick(editor, K.Key_Escape)
    assert rig.document.undo_stack.count() == 0


# picking


def test_a_frame_is_picked_by_edge_and_title_only(rig):
    rig.click(0, 60)
    assert rig.selection.ids == frozenset()
    rig.click(-160, 50)
    assert rig.selection.ids == {"FR1"}
    rig.click(0, 80)
    rig.click(-130, -100)
    assert rig.selection.ids == {"FR1"}


def test_what_stands_in_a_frame_is_picked_before_it(rig):
    rig.click(0, 20)
    assert rig.selection.ids == {"V1"}


def test_a_band_takes_a_frame_only_whole(rig):
    rig.drag((-150, -70), (100, 90))
    assert rig.selection.ids == {"V1"}
    rig.drag((-200, -140), (180, 125))
    assert rig.selection.ids == {"V1", "FR1"}


def test_a_note_is_picked_anywhere(rig):
    rig.click(-60, 148)
    assert rig.selection.ids == {"N1"}


# moving


def test_a_frame_moves_what_is_in_it(rig):
    rig.drag((-130, -100), (-90, -60))
    assert rig.sheet.part_by_id["FR1"].at == (-120, -60)
    assert rig.sheet.part_by_id["V1"].at == (40, 40)
    assert rig.sheet.part_by_id["V2"].at == (300, 0)
    assert rig.sheet.part_by_id["N1"].at == (-100, 140)
    assert rig.undo_names == ["Move 2 parts"]


def test_with_alt_a_frame_moves_alone(rig):
    rig.drag((-130, -100), (-97, -100), ALT)
    assert rig.sheet.part_by_id["FR1"].at == (-127, -100)
    assert rig.sheet.part_by_id["V1"].at == (0, 0)


def test_a_frame_by_keys(rig):
    rig.selection.set(("FR1",))
    rig.key(K.Key_Right)
    assert rig.sheet.part_by_id["V1"].at == (20, 0)
    rig.key(K.Key_Right, SHIFT)
    assert rig.sheet.part_by_id["V1"].at == (120, 0)
    rig.key(K.Key_Left, ALT)
    assert rig.sheet.part_by_id["FR1"].at == (-41, -100)
    assert rig.sheet.part_by_id["V1"].at == (120, 0)


# resizing


@pytest.mark.parametrize(
    ("start", "end", "at", "size"),
    [
        ((160, 30), (201, 60), (-160, -100), (360, 200)),
        ((-160, 30), (-201, 60), (-200, -100), (360, 200)),
        ((0, 100), (30, 141), (-160, -100), (320, 240)),
        ((100, -100), (30, -141), (-160, -140), (320, 240)),
        ((160, 100), (201, 141), (-160, -100), (360, 240)),
        ((-160, -100), (-201, -141), (-200, -140), (360, 240)),
        ((160, 30), (-400, 30), (-160, -100), (20, 200)),
    ],
    ids=["right", "left", "bottom", "top", "corner", "other corner", "no smaller"],
)
def test_edges_and_corners_resize_a_frame(rig, start, end, at, size):
    before = rig.sheet
    rig.drag(start, end)
    frame = rig.sheet.part_by_id["FR1"]
    assert frame.at == at
    assert (frame.width, frame.height) == size
    assert rig.undo_names == ["Resize FR1"]
    rig.document.undo_stack.undo()
    assert rig.sheet is before


def test_escape_in_resizing_leaves_everything(rig):
    before = rig.sheet
    rig.press(160, 30)
    rig.move(260, 30)
    rig.key(K.Key_Escape)
    rig.release(260, 30)
    assert rig.sheet is before
    assert rig.selection.ids == frozenset()


def test_the_width_of_a_selected_note_is_dragged(rig):
    rig.selection.set(("N1",))
    rig.drag((80, 148), (22, 148))
    note = rig.sheet.part_by_id["N1"]
    assert (note.at, note.width) == ((-100, 140), 120)


def test_the_pointer_shows_what_can_be_dragged(rig):
    shape = lambda: rig.view.viewport().cursor().shape()  # noqa: E731
    none = Qt.MouseButton.NoButton
    rig.move(160, 30, button=none)
    assert shape() == Qt.CursorShape.SizeHorCursor
    rig.move(160, 100, button=none)
    assert shape() == Qt.CursorShape.SizeFDiagCursor
    rig.move(0, 60, button=none)
    assert shape() == Qt.CursorShape.ArrowCursor


def test_properties_of_a_frame_resize_it_too(open_window):
    window = open_window(Sheet(parts=(FRAME,)))
    window.selection.set(("FR1",))
    window.view.setFocus()
    QTest.keyClick(window.view, K.Key_Return)
    field = window.side.properties.rows["width"].editor
    field.setText("500")
    QTest.keyClick(field, K.Key_Return)
    assert window.document.sheet.part_by_id["FR1"].width == 500
