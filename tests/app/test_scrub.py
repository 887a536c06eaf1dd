"""Numbers are tuned by dragging their names or by keys: seen while it lasts, one step at its end, none if given up."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.panes.scrub import PIXELS
from app.panes.steps import STEPS, Even, Preferred
from core.checks import RANGES
from core.preferred import nearest
from core.sheet import Resistor, Sheet
from tests.app.canvas_rig import small_sheet, wire

K = Qt.Key
ALT = Qt.KeyboardModifier.AltModifier
LEFT = Qt.MouseButton.LeftButton


def sheet() -> Sheet:
    """A heater behind a dropper."""
    small = small_sheet()
    kept = tuple(one for one in small.wires if one.id != "w1")
    return Sheet(
        title=small.title,
        parts=(*small.parts, Resistor(id="R1", ohm=1.0, rated_w=5.0, at=(0.0, 250.0))),
        wires=(*kept, wire("w4", "T1.a", "R1.1"), wire("w5", "R1.2", "V1.4")),
    )


@pytest.fixture
def window(open_window):
    made = open_window(sheet())
    made.begin()
    made.selection.set(("R1",))
    made.side.show_properties()
    return made


class Name:
    """The name of a field, under the pointer."""

    def __init__(self, window, field: str) -> None:
        self.window = window
        self.row = window.side.properties.rows[field]
        self._held = Qt.MouseButton.NoButton

    def _send(self, kind: QEvent.Type, button, steps: float) -> None:
        at = QPointF(20 + steps * PIXELS, 8)
        globally = QPointF(self.row.label.mapToGlobal(at))
        event = QMouseEvent(kind, at, globally, button, self._held, Qt.KeyboardModifier.NoModifier)
        QApplication.sendEvent(self.row.label, event)

    def press(self) -> None:
        self._held = LEFT
        self._send(QEvent.Type.MouseButtonPress, LEFT, 0)

    def move(self, steps: float) -> None:
        self._send(QEvent.Type.MouseMove, Qt.MouseButton.NoButton, steps)

    def release(self, steps: float) -> None:
        self._held = Qt.MouseButton.NoButton
        self._send(QEvent.Type.MouseButtonRelease, LEFT, steps)


def considered(window):
    return window.scene.proposal.current


def test_a_drag_is_seen_and_is_one_step(window):
    stack, name = window.document.undo_stack, Name(window, "ohm")
    name.press()
    for steps, ohm in ((1, 1.1), (2, 1.2), (5, 1.6), (3, 1.3)):
        name.move(steps)
        assert considered(window).sheet.part_by_id["R1"].ohm == ohm
    assert window.scene.ghosts.part_ids >= {"R1", "V1"}
    assert "as it would be" in window.strip.summary.text()
    assert window.document.sheet.part_by_id["R1"].ohm == 1.0
    assert stack.count() == 0
    name.release(3)
    assert window.document.sheet.part_by_id["R1"].ohm == 1.3
    assert [stack.text(n) for n in range(stack.count())] == ["Set R1 resistance"]
    assert considered(window) is None
    assert not window.scene.ghosts.part_ids
    stack.undo()
    assert window.document.sheet == sheet()
    assert name.row.text.startswith("1\u2009")


@pytest.mark.parametrize("end", ["escape", "focus", "back"])
def test_giving_up_a_drag_costs_nothing(window, end):
    name = Name(window, "ohm")
    text = name.row.text
    name.press()
    name.move(4)
    assert considered(window) is not None
    if end == "back":
        name.move(0)
    else:
        if end == "escape":
            QTest.keyClick(name.row.editor, K.Key_Escape)
        else:
            window.view.setFocus()
        name.move(6)
    assert considered(window) is None
    name.release(6)
    assert name.row.text == text
    assert window.document.undo_stack.count() == 0
    assert window.document.sheet == sheet()


def test_a_click_on_the_name_goes_to_the_field(window):
    name = Name(window, "ohm")
    name.press()
    name.release(0)
    assert name.row.editor.hasFocus()
    assert window.document.undo_stack.count() == 0


@pytest.mark.parametrize(
    ("key", "held", "ohm"),
    [
        (K.Key_Up, ALT, 1.1),
        (K.Key_Down, ALT, 0.91),
        (K.Key_PageUp, Qt.KeyboardModifier.NoModifier, 1.6),
        (K.Key_PageDown, Qt.KeyboardModifier.NoModifier, 0.62),
    ],
)
def test_keys_step_and_enter_makes_one_step_of_them(window, key, held, ohm):
    editor = window.side.properties.rows["ohm"].editor
    editor.setFocus()
    QTest.keyClick(editor, key, held)
    assert considered(window).sheet.part_by_id["R1"].ohm == ohm
    QTest.keyClick(editor, K.Key_Up, ALT)
    QTest.keyClick(editor, K.Key_Down, ALT)
    assert window.document.undo_stack.count() == 0
    QTest.keyClick(editor, K.Key_Return)
    assert window.document.undo_stack.count() == 1
    assert window.document.sheet.part_by_id["R1"].ohm == pytest.approx(ohm)
    assert considered(window) is None


def test_escape_after_keys_puts_the_sheets_value_back(window):
    row = window.side.properties.rows["ohm"]
    row.editor.setFocus()
    text = row.text
    QTest.keyClick(row.editor, K.Key_Up, ALT)
    assert row.text != text
    QTest.keyClick(row.editor, K.Key_Escape)
    assert row.text == text
    assert considered(window) is None
    assert window.document.undo_stack.count() == 0


def test_typing_on_takes_back_what_was_tried(window):
    editor = window.side.properties.rows["ohm"].editor
    editor.setFocus()
    QTest.keyClick(editor, K.Key_Up, ALT)
    assert considered(window) is not None
    QTest.keyClicks(editor, "7")
    assert considered(window) is None


def test_only_what_is_in_the_table_can_be_dragged(window):
    shapes = {
        name: row.label.cursor().shape() == Qt.CursorShape.SizeHorCursor
        for name, row in window.side.properties.rows.items()
    }
    assert shapes["ohm"]
    assert not shapes["rated_w"]
    assert not shapes["id"]


def test_the_mains_band_of_the_sheet_is_tuned_too(window):
    window.selection.clear()
    name = Name(window, "high_pct")
    name.press()
    name.move(3)
    assert considered(window).sheet.mains.high_pct == window.document.sheet.mains.high_pct + 3
    name.release(3)
    assert window.document.undo_stack.count() == 1


def test_a_wires_length_is_tuned(window):
    window.selection.set(("w2",))
    name = Name(window, "length_m")
    name.press()
    name.move(-500)
    assert considered(window).sheet.wire_by_id["w2"].length_m == 0.01
    name.move(2)
    name.release(2)
    assert window.document.sheet.wire_by_id["w2"].length_m == 0.32
    assert window.document.undo_stack.count() == 1


# steps


@given(st.floats(1e-3, 1e8), st.integers(-40, 40))
def test_preferred_values_stay_preferred(value: float, count: int) -> None:
    moved = Preferred().moved(value, count)
    if count:
        assert nearest(moved) == pytest.approx(moved)
        assert 0.01 <= moved <= 1e7
    if count > 0 and value < 1e7:
        assert moved > value
    if count < 0 and value > 0.01:
        assert moved < value


@given(st.sampled_from(sorted(STEPS)), st.floats(-60, 60), st.integers(-200, 200))
def test_no_step_leaves_what_a_field_may_hold(key: tuple[str, str], value: float, count: int) -> None:
    field = key[1]
    if count and (field not in RANGES or RANGES[field].admits(value)):
        moved = STEPS[key].moved(value, count)
        assert field not in RANGES or RANGES[field].admits(moved)


@given(st.integers(-1000, 1000), st.integers(-50, 50))
def test_even_steps_go_back_the_way_they_came(start: int, count: int) -> None:
    steps = Even(0.1)
    value = round(start * 0.1, 9)
    assert steps.moved(steps.moved(value, count), -count) == pytest.approx(value)


def test_a_value_between_two_steps_goes_to_the_next_one_first() -> None:
    assert Even(0.1).moved(6.33, 1) == 6.4
    assert Even(0.1).moved(6.33, -1) == 6.3
    assert Preferred().moved(5.0, 1) == 5.1
    assert Preferred().moved(5.0, -1) == 4.7
    assert Preferred().moved(0.0, 1) > 0


# the mains slider


def test_escape_puts_a_dragged_mains_handle_back(window):
    slider = window.strip.mains.slider

    def at(volts):
        return QPointF(slider.x_of(volts), 25).toPoint()

    slider.setFocus()
    QTest.mousePress(slider, LEFT, pos=at(230.0))
    QTest.mouseMove(slider, at(245.0))
    assert window.viewpoint.condition.mains_v == 245.0
    QTest.keyClick(slider, K.Key_Escape)
    assert window.viewpoint.condition.mains_v == 230.0
    QTest.mouseMove(slider, at(220.0))
    QTest.mouseRelease(slider, LEFT, pos=at(220.0))
    assert window.viewpoint.condition.mains_v == 230.0
    assert window.document.undo_stack.count() == 0


def test_the_old_place_of_the_mains_handle_is_shown_while_it_is_dragged(window):
    slider = window.strip.mains.slider
    QTest.mousePress(slider, LEFT, pos=QPointF(slider.x_of(230.0), 25).toPoint())
    QTest.mouseMove(slider, QPointF(slider.x_of(245.0), 25).toPoint())
    dragged = slider.grab().toImage()
    QTest.mouseRelease(slider, LEFT, pos=QPointF(slider.x_of(245.0), 25).toPoint())
    assert slider.grab().toImage() != dragged
    assert window.viewpoint.condition.mains_v == 245.0
