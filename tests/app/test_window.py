"""The whole window: what a user meets from the first moment to closing it."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMessageBox

from app.dialogs import Dialogs
from app.panes.pane import LEAST_WIDTH
from app.session import DISCARD
from app.theme import DARK
from core import edits
from core.samples import sample_bytes, sample_names
from core.sheet import Battery, Chassis, Sheet, Tube, Wire
from core.storage import load

FIRST = load(sample_bytes(sample_names()[0]))


def first_tube(sheet: Sheet) -> str:
    return next(part.id for part in sheet.parts if isinstance(part, Tube))


def test_the_first_sample_is_solved_and_fits_when_the_window_is_up(open_window) -> None:
    window = open_window(FIRST)
    assert window.document.assessment is not None
    shown = window.view.mapToScene(window.view.viewport().rect()).boundingRect()
    left, top, right, bottom = window.scene.layout_.bounds()
    assert shown.left() <= left and shown.right() >= right
    assert shown.top() <= top and shown.bottom() >= bottom
    assert window.scene.part_items[first_tube(FIRST)].look.values


def test_the_add_field_lies_over_the_drawing(open_window) -> None:
    window = open_window(FIRST)
    field = window.view.add_field
    assert window.view.childAt(field.geometry().center()) is field


@pytest.mark.parametrize("size", [(900, 600), (1280, 720), (1920, 1080)])
def test_the_canvas_keeps_its_share(open_window, size: tuple[int, int]) -> None:
    window = open_window(FIRST)
    window.resize(*size)
    QApplication.processEvents()
    assert window.width() == size[0]
    assert window.view.width() >= 0.6 * window.width()
    panes = [pane for pane in window.side.panes.values() if pane.is_in_front]
    assert len(panes) == 2 and min(pane.width() for pane in panes) >= LEAST_WIDTH


def test_an_empty_title_reads_untitled(open_window) -> None:
    window = open_window(Sheet(title=""))
    assert window.windowTitle().startswith("Untitled")
    assert window.strip.title.shown == "Untitled"
    assert window.document.sheet.title == ""


def test_keys_of_the_drawing_stand_in_the_menu_and_are_left_to_text_fields(open_window) -> None:
    window = open_window(FIRST)
    hints = {
        text.replace("&", ""): (key, action.shortcuts())
        for action in window.menus.edit.actions()
        for text, _, key in [action.text().partition("\t")]
        if key
    }
    wanted = {
        "Delete": "Del",
        "Copy": "Ctrl+C",
        "Paste": "Ctrl+V",
        "Duplicate": "Ctrl+D",
        "Wire a chain…": "C",
    }
    assert {text: hints.get(text) for text in wanted} == {text: (key, []) for text, key in wanted.items()}
    before = window.document.sheet
    window.selection.set([first_tube(FIRST)])
    window.view.add_field.enter()
    QTest.keyClicks(window.view.add_field, "Rr")
    QTest.keyClick(window.view.add_field, Qt.Key.Key_Delete)
    assert window.view.add_field.text() == "Rr"
    assert window.document.sheet is before


def test_typing_a_tube_and_wiring_it_by_mouse_from_an_empty_sheet(qtbot, open_window) -> None:
    window = open_window(
        Sheet(parts=(Battery(id="B1", emf_v=6.3, at=(-200, 0)), Chassis(id="E1", at=(-200, 160))))
    )
    view = window.view
    QTest.keyClick(view, Qt.Key.Key_Slash)
    QTest.keyClicks(view.add_field, "EL84")
    QTest.keyClick(view.add_field, Qt.Key.Key_Return)
    tube = window.document.sheet.parts[-1]
    assert isinstance(tube, Tube)
    assert window.document.undo_stack.undoText() == "Add EL84"
    assert window.focusWidget() is view, "Enter ends with the field"
    drag(window, "B1.+", f"{tube.id}.4")
    drag(window, "B1.-", f"{tube.id}.5")
    assert {(w.start, w.end) for w in window.document.sheet.wires} == {
        ("B1.+", f"{tube.id}.4"),
        ("B1.-", f"{tube.id}.5"),
    }
    heater = window.document.assessment.points["nominal"].heaters[tube.id][0]
    assert heater.v == pytest.approx(6.3, abs=0.1)
    assert heater.a == pytest.approx(0.76, abs=0.01)


def drag(window, start: str, end: str) -> None:
    """Drag from terminal to terminal with real mouse events."""
    points = []
    for terminal in (start, end):
        part_id, name = terminal.split(".")
        points.append(window.view.mapFromScene(*window.scene.layout_.places[part_id].point(name)))
    port = window.view.viewport()
    left = Qt.MouseButton.LeftButton
    QTest.mousePress(port, left, Qt.KeyboardModifier.NoModifier, points[0])
    middle = QPoint((points[0].x() + points[1].x()) // 2, (points[0].y() + points[1].y()) // 2)
    QTest.mouseMove(port, middle)
    QTest.mouseMove(port, points[1])
    QTest.mouseRelease(port, left, Qt.KeyboardModifier.NoModifier, points[1])


def test_title_and_dirty_mark_follow_the_file(open_window, tmp_path: Path, monkeypatch) -> None:
    window = open_window(FIRST)
    assert FIRST.title in window.windowTitle()
    assert not window.isWindowModified()
    window.document.apply("Rename sheet", edits.set_sheet(title="Bench test"))
    assert window.isWindowModified()
    assert "Bench test" in window.windowTitle()
    target = tmp_path / "bench.heaterloom"
    monkeypatch.setattr(Dialogs, "ask_save_path", lambda _self, _suggestion: str(target))
    assert window.session.save()
    assert not window.isWindowModified()
    assert "bench.heaterloom" in window.windowTitle()
    window.document.undo_stack.undo()
    assert window.isWindowModified()


def test_closing_with_changes_asks_and_stays_when_cancelled(open_window, monkeypatch) -> None:
    window = open_window(FIRST)
    window.document.apply("Rename sheet", edits.set_sheet(title="Changed"))
    asked: list[str] = []

    def press(button: QMessageBox.StandardButton):
        def answer(box: QMessageBox) -> int:
            asked.append(box.text())
            return button.value

        return answer

    monkeypatch.setattr(QMessageBox, "exec", press(QMessageBox.StandardButton.Cancel))
    assert not window.close()
    assert window.isVisible()
    monkeypatch.setattr(QMessageBox, "exec", press(QMessageBox.StandardButton.Discard))
    assert window.close()
    assert asked == ["Changed has changes that are not saved."] * 2


def test_undo_names_the_action_in_the_menu(open_window) -> None:
    window = open_window(FIRST)
    tube = first_tube(FIRST)
    window.document.apply(f"Turn {tube}", edits.turn_parts([tube]))
    texts = [action.text() for action in window.menus.edit.actions()]
    assert any(f"Turn {tube}" in text for text in texts)
    window.document.undo_stack.undo()
    assert window.document.sheet is FIRST


def test_both_themes_dress_everything_and_are_remembered(open_window, settings) -> None:
    window = open_window(FIRST)
    light = window.grab().toImage()
    window.set_theme_name("dark")
    dark = window.grab().toImage()
    assert window.scene.theme is DARK
    assert settings.theme == "dark"
    for x, y in ((30, 300), (1100, 400), (600, 60)):
        assert light.pixelColor(x, y).lightness() > 150
        assert dark.pixelColor(x, y).lightness() < 90


def test_a_corrupt_file_leaves_the_open_sheet(open_window, tmp_path: Path, monkeypatch) -> None:
    window = open_window(FIRST)
    bad = tmp_path / "bad.heaterloom"
    bad.write_bytes(sample_bytes(sample_names()[0])[:-40])
    told: list[str] = []
    monkeypatch.setattr(Dialogs, "tell", lambda _self, headline, text: told.append(f"{headline} {text}"))
    assert not window.session.open(str(bad))
    assert window.document.sheet is FIRST
    assert "bad.heaterloom was not opened" in told[0]


def test_opening_another_sheet_starts_afresh(open_window, monkeypatch) -> None:
    window = open_window(FIRST)
    window.document.apply("Rename sheet", edits.set_sheet(title="Changed"))
    monkeypatch.setattr(Dialogs, "ask_unsaved", lambda _self, _title: DISCARD)
    window.viewpoint.set_cold(True)
    window.session.open_sample("five-mistakes")
    assert window.document.sheet.title == load(sample_bytes("five-mistakes")).title
    assert not window.viewpoint.condition.cold
    assert window.document.undo_stack.count() == 0
    assert window.document.assessment is not None
    assert window.document.assessment.findings


def test_choosing_a_finding_selects_and_shows_its_parts(qtbot, open_window) -> None:
    window = open_window(load(sample_bytes("five-mistakes")))
    finding = window.document.assessment.findings[0]
    window.side.findings.list.setFocus()
    index = window.side.findings.model.index(0, 0)
    spot = window.side.findings.list.visualRect(index).center()
    QTest.mouseClick(
        window.side.findings.list.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, spot
    )
    assert window.selection.ids == frozenset(finding.where)


def test_the_mains_slider_and_cold_change_what_is_shown(open_window) -> None:
    window = open_window(FIRST)
    item = window.scene.part_items[first_tube(FIRST)]
    nominal = item.look.values
    window.viewpoint.set_mains(FIRST.mains.low_v)
    low = item.look.values
    window.viewpoint.set_mains(FIRST.mains.nominal_v * 1.003)
    between = item.look.values
    window.viewpoint.set_cold(True)
    cold = item.look.values
    assert len({nominal, low, between, cold}) == 4


def test_large_sheets_are_solved_in_a_worker_and_never_show_old_figures(qtbot, open_window) -> None:
    parts = [Battery(id="B1", emf_v=6.3, at=(0, 0))]
    wires = []
    for number in range(100):
        parts.append(Tube(id=f"V{number}", type="EL84", at=(200 + 200 * (number % 10), 200 * (number // 10))))
        wires.append(Wire(id=f"p{number}", start="B1.+", end=f"V{number}.4"))
        wires.append(Wire(id=f"n{number}", start="B1.-", end=f"V{number}.5"))
    window = open_window(Sheet(parts=tuple(parts), wires=tuple(wires)))
    qtbot.waitUntil(lambda: window.document.assessment is not None, timeout=20_000)
    window.document.apply("Set B1 volts", edits.set_part("B1", emf_v=5.0))
    assert window.document.assessment is None
    assert not any(character.isdigit() for character in window.scene.part_items["V5"].look.values)
    qtbot.waitUntil(lambda: window.document.assessment is not None, timeout=20_000)
    assert window.document.assessment.points["nominal"].heaters["V5"][0].v == pytest.approx(5.0)
