from __future__ import annotations

import msgspec
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from app.panes.conditions_strip import ConditionsStrip
from app.theme import DARK, LIGHT
from core import edits
from core.sheet import Mains
from tests.app.panes_sample import SHEET, Desk, desk

Bench = tuple[ConditionsStrip, Desk]


@pytest.fixture
def bench(qtbot: QtBot) -> Bench:
    made = desk()
    strip = ConditionsStrip(made.document, made.viewpoint, LIGHT)
    qtbot.addWidget(strip)
    strip.resize(900, 60)
    strip.show()
    qtbot.waitExposed(strip)
    return strip, made


def _at(strip: ConditionsStrip, volts: float, off: int = 0) -> QPoint:
    return QPoint(round(strip.mains.slider.x_of(volts)) + off, 25)


def test_summary_follows_the_answers(bench: Bench) -> None:
    strip, made = bench
    assert strip.summary.text() == "solving…"
    made.solve()
    assert strip.summary.text() == "2 faults · 1 caution · 1 note · solved for this drawing"
    made.document.apply("Turn", edits.turn_parts(["V1"]))
    assert strip.summary.text() == "solving…"
    made.solve(())
    assert strip.summary.text() == "no findings · solved for this drawing"


def test_dragging_the_handle(bench: Bench) -> None:
    strip, made = bench
    slider = strip.mains.slider
    QTest.mousePress(slider, Qt.MouseButton.LeftButton, pos=_at(strip, 230.0))
    QTest.mouseMove(slider, _at(strip, 245.0))
    assert made.viewpoint.condition.mains_v == pytest.approx(245.0, abs=1.0)
    assert made.viewpoint.condition.mains_v == round(made.viewpoint.condition.mains_v), "whole volts"
    QTest.mouseMove(slider, QPoint(slider.width() + 400, 25))
    QTest.mouseRelease(slider, Qt.MouseButton.LeftButton, pos=QPoint(slider.width(), 25))
    assert made.viewpoint.condition.mains_v == SHEET.mains.high_v


@pytest.mark.parametrize("stop", ["low_v", "nominal_v", "high_v"])
@pytest.mark.parametrize("off", [-5, 5])
def test_the_handle_is_held_at_the_stops(bench: Bench, stop: str, off: int) -> None:
    strip, made = bench
    volts = getattr(SHEET.mains, stop)
    made.viewpoint.set_mains(220.0)
    QTest.mouseClick(strip.mains.slider, Qt.MouseButton.LeftButton, pos=_at(strip, volts, off))
    assert made.viewpoint.condition.mains_v == volts


@pytest.mark.parametrize(
    ("key", "volts"),
    [
        (Qt.Key.Key_Right, 231.0),
        (Qt.Key.Key_Up, 231.0),
        (Qt.Key.Key_Left, 229.0),
        (Qt.Key.Key_Down, 229.0),
        (Qt.Key.Key_PageUp, 235.0),
        (Qt.Key.Key_PageDown, 225.0),
        (Qt.Key.Key_Home, SHEET.mains.low_v),
        (Qt.Key.Key_End, SHEET.mains.high_v),
    ],
)
def test_keys_of_the_slider(bench: Bench, key: Qt.Key, volts: float) -> None:
    strip, made = bench
    strip.mains.slider.setFocus()
    QTest.keyClick(strip.mains.slider, key)
    assert made.viewpoint.condition.mains_v == volts
    assert strip.mains.slider.accessibleDescription() == f"{volts:.0f}\u2009V"


def test_keys_stop_at_the_ends_of_the_band(bench: Bench) -> None:
    strip, made = bench
    strip.mains.slider.setFocus()
    for _ in range(10):
        QTest.keyClick(strip.mains.slider, Qt.Key.Key_PageUp)
    assert made.viewpoint.condition.mains_v == SHEET.mains.high_v


def test_low_nominal_and_high_have_buttons(bench: Bench) -> None:
    strip, made = bench
    low, nominal, high = strip.mains.buttons
    assert [button.isChecked() for button in (low, nominal, high)] == [False, True, False]
    QTest.mouseClick(high, Qt.MouseButton.LeftButton)
    assert made.viewpoint.condition.mains_v == SHEET.mains.high_v
    assert [button.isChecked() for button in (low, nominal, high)] == [False, False, True]
    low.setFocus()
    QTest.keyClick(low, Qt.Key.Key_Return)
    assert made.viewpoint.condition.mains_v == SHEET.mains.low_v
    assert low.text() == "low 207\u2009V"
    made.viewpoint.set_mains(240.0)
    assert not any(button.isChecked() for button in (low, nominal, high))


def test_odd_bands_give_exact_stops(bench: Bench) -> None:
    strip, made = bench
    odd = Mains(nominal_v=117.3, low_pct=-7.7, high_pct=3.3)
    made.document.apply("Set mains", edits.set_sheet(mains=odd))
    assert made.viewpoint.condition.mains_v == odd.nominal_v, "nominal stays nominal"
    strip.mains.slider.setFocus()
    QTest.keyClick(strip.mains.slider, Qt.Key.Key_End)
    assert made.viewpoint.condition.mains_v == odd.high_v
    QTest.keyClick(strip.mains.slider, Qt.Key.Key_Home)
    assert made.viewpoint.condition.mains_v == odd.low_v


def test_a_free_choice_is_kept_inside_a_new_band(bench: Bench) -> None:
    _, made = bench
    made.viewpoint.set_mains(250.0)
    narrow = msgspec.structs.replace(SHEET.mains, high_pct=5.0)
    made.document.apply("Set mains", edits.set_sheet(mains=narrow))
    assert made.viewpoint.condition.mains_v == narrow.high_v


def test_hot_and_cold(bench: Bench) -> None:
    strip, made = bench
    cold, hot = strip.switch.buttons
    assert hot.isChecked()
    QTest.mouseClick(cold, Qt.MouseButton.LeftButton)
    assert made.viewpoint.condition.cold
    hot.setFocus()
    QTest.keyClick(hot, Qt.Key.Key_Space)
    assert not made.viewpoint.condition.cold
    made.viewpoint.set_cold(True)
    assert cold.isChecked()


def test_title_is_edited_in_place(bench: Bench) -> None:
    strip, made = bench
    QTest.mouseDClick(strip.title, Qt.MouseButton.LeftButton, pos=QPoint(20, 10))
    editor = strip.title.editor
    assert editor.isVisible()
    QTest.keyClicks(editor, "Line amplifier")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    assert made.document.sheet.title == "Line amplifier"
    assert made.undo_text == "Rename sheet"
    assert not editor.isVisible()
    made.document.undo_stack.undo()
    assert strip.title.title == "Rehearsal amplifier"


def test_escape_keeps_the_title(bench: Bench) -> None:
    strip, made = bench
    strip.title.setFocus()
    QTest.keyClick(strip.title, Qt.Key.Key_F2)
    QTest.keyClicks(strip.title.editor, "x")
    QTest.keyClick(strip.title.editor, Qt.Key.Key_Escape)
    assert made.document.sheet is SHEET
    assert not strip.title.editor.isVisible()
    assert strip.title.title == "Rehearsal amplifier"


@pytest.mark.parametrize("width", [900, 1280])
def test_nothing_is_cut(bench: Bench, width: int) -> None:
    strip, made = bench
    strip.resize(width, 60)
    made.viewpoint.set_mains(SHEET.mains.high_v)
    inside = strip.rect()
    for widget in (strip.title, strip.summary, strip.mains, strip.switch, *strip.switch.buttons):
        place = widget.mapTo(strip, QPoint(0, 0))
        assert inside.contains(widget.rect().translated(place)), widget
    edges = [(button.geometry().left(), button.geometry().right()) for button in strip.mains.buttons]
    assert edges[0][0] >= 0
    assert edges[0][1] < edges[1][0]
    assert edges[1][1] < edges[2][0]
    assert edges[2][1] < strip.mains.width()


def test_focus_is_painted(bench: Bench) -> None:
    strip, _ = bench
    slider = strip.mains.slider
    strip.title.setFocus()
    before = slider.grab().toImage()
    slider.setFocus()
    assert slider.grab().toImage() != before


def test_theme_can_change(bench: Bench) -> None:
    strip, _ = bench
    before = strip.grab().toImage()
    strip.set_theme(DARK)
    assert strip.grab().toImage() != before
