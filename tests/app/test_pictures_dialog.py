"""The dialog for pictures and prints, by mouse and keys."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMessageBox
from shiboken6 import isValid

from app.dialogs import Dialogs
from app.pictures.dialog import PictureDialog
from app.pictures.options import PictureOptions, options_from
from app.pictures.printing import is_printer_there
from app.settings import Settings
from core.samples import sample_bytes, sample_names
from core.storage import load

FIRST = load(sample_bytes(sample_names()[0]))


def settle() -> None:
    for _ in range(4):
        QApplication.processEvents()


def opened(window, printing: bool = False) -> PictureDialog:
    (window.print_sheet if printing else window.save_picture)()
    settle()
    return next(each for each in window.findChildren(PictureDialog) if each.isVisible())


def choose(combo, key: str) -> None:
    combo.setCurrentIndex(combo.findData(key))
    settle()


def test_the_preview_follows_every_choice(open_window) -> None:
    dialog = opened(open_window(FIRST))
    seen = [dialog.preview.grab().toImage()]
    for change in (
        dialog.values.toggle,
        dialog.lengths.toggle,
        dialog.title_block.toggle,
        dialog.dark.toggle,
        lambda: choose(dialog.kind, ".pdf"),
        lambda: choose(dialog.paper, "A4"),
        lambda: choose(dialog.landscape, "0"),
        lambda: choose(dialog.fit, "0"),
        lambda: choose(dialog.part, "visible"),
    ):
        change()
        settle()
        seen.append(dialog.preview.grab().toImage())
        assert seen[-1] != seen[-2] or change is dialog.lengths or dialog.kind.currentData() == ".pdf"
    assert len(dialog.plan.pages) > 1
    assert len(dialog.preview.page_rects()) == len(dialog.plan.pages)
    assert all(dialog.preview.rect().contains(rect.toRect()) for rect in dialog.preview.page_rects())
    dialog.reject()


def test_fields_that_do_not_matter_are_grey(open_window) -> None:
    dialog = opened(open_window(FIRST))
    assert not dialog.paper.isEnabled() and not dialog.fit.isEnabled() and dialog.outlines.isEnabled()
    choose(dialog.kind, ".pdf")
    assert dialog.paper.isEnabled() and not dialog.fit.isEnabled() and not dialog.outlines.isEnabled()
    choose(dialog.paper, "A3")
    assert dialog.fit.isEnabled() and dialog.landscape.isEnabled()
    dialog.values.setChecked(False)
    settle()
    assert not dialog.condition.isEnabled()
    choose(dialog.kind, ".png")
    assert "pixels" in dialog.size_label.text()
    dialog.reject()


@pytest.mark.parametrize("kind", [".svg", ".png", ".pdf"])
def test_a_picture_is_written_and_the_choices_are_remembered(
    open_window, settings: Settings, tmp_path: Path, monkeypatch, kind: str
) -> None:
    window = open_window(FIRST)
    dialog = opened(window)
    choose(dialog.kind, kind)
    dialog.title_block.setChecked(True)
    target = tmp_path / f"amp{kind}"
    monkeypatch.setattr(Dialogs, "ask_picture_path", lambda _self, _suggestion: str(target))
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    settle()
    assert target.read_bytes()[:4] in (b"<?xm", b"\x89PNG", b"%PDF")
    assert options_from(settings.text_of("picture")) == PictureOptions(title_block=True)
    again = opened(window)
    assert again.title_block.isChecked() and again.kind.currentData() == kind
    again.reject()


def test_a_picture_keeps_the_dots_of_its_name_and_replaces_nothing_unasked(
    open_window, tmp_path: Path, monkeypatch
) -> None:
    window = open_window(FIRST)
    asked: list[str] = []
    target = tmp_path / "amp 6.3V.svg"

    def answer(_self: Dialogs, name: str) -> bool:
        asked.append(name)
        return False

    monkeypatch.setattr(Dialogs, "ask_picture_path", lambda _self, _suggestion: str(tmp_path / "amp 6.3V"))
    monkeypatch.setattr(Dialogs, "ask_overwrite", answer)
    dialog = opened(window)
    assert dialog.save(".svg")
    assert b"<svg" in target.read_bytes()
    target.write_text("precious")
    assert not dialog.save(".svg")
    assert asked == ["amp 6.3V.svg"]
    assert target.read_text() == "precious"
    dialog.reject()


def test_a_folder_that_allows_no_writing_is_told_and_the_dialog_stays(
    open_window, tmp_path: Path, monkeypatch
) -> None:
    told: list[str] = []
    monkeypatch.setattr(Dialogs, "tell", lambda _self, headline, _text: told.append(headline))
    monkeypatch.setattr(Dialogs, "ask_picture_path", lambda _self, _s: str(tmp_path / "none" / "a.svg"))
    dialog = opened(open_window(FIRST))
    QTest.mouseClick(dialog.go, Qt.MouseButton.LeftButton)
    assert told == ["The picture is not saved."]
    assert dialog.isVisible()
    dialog.reject()


def test_what_is_selected_can_be_drawn_alone(open_window) -> None:
    window = open_window(FIRST)
    dialog = opened(window)
    assert dialog.part.findData("selected") < 0
    whole = dialog.picture.width
    dialog.reject()
    window.selection.set(["V1"])
    dialog = opened(window)
    choose(dialog.part, "selected")
    assert dialog.picture.width < whole
    dialog.reject()


def test_the_picture_is_at_the_condition_of_the_window(open_window) -> None:
    window = open_window(FIRST)
    window.viewpoint.set_mains(FIRST.mains.low_v)
    dialog = opened(window)
    shown = dialog.picture.scene.part_items["V1"].look.values
    assert shown == window.scene.part_items["V1"].look.values
    choose(dialog.condition, "high")
    assert dialog.picture.scene.part_items["V1"].look.values != shown
    dialog.reject()


def test_without_a_printer_a_pdf_is_offered(open_window, tmp_path: Path, monkeypatch) -> None:
    monkeypatch.setattr("app.pictures.printing.is_printer_there", lambda: False)
    target = tmp_path / "print.pdf"
    monkeypatch.setattr(Dialogs, "ask_picture_path", lambda _self, _suggestion: str(target))
    texts: list[str] = []

    def press_save(box: QMessageBox) -> int:
        texts.append(box.text())
        box.show()
        next(button for button in box.buttons() if "PDF" in button.text()).click()
        return 0

    monkeypatch.setattr(QMessageBox, "exec", press_save)
    dialog = opened(open_window(FIRST), printing=True)
    assert dialog.paper.currentData() == "A4", "a printer has no paper as large as the drawing"
    QTest.mouseClick(dialog.go, Qt.MouseButton.LeftButton)
    settle()
    assert texts == ["No printer is set up on this computer."]
    assert target.read_bytes().startswith(b"%PDF")


def test_with_a_printer_its_dialog_decides(open_window, tmp_path: Path, monkeypatch) -> None:
    printed: list[object] = []

    def print_it(picture, _parent) -> bool:
        printed.append(picture)
        return len(printed) > 1

    monkeypatch.setattr("app.pictures.printing.is_printer_there", lambda: True)
    monkeypatch.setattr("app.pictures.printing.print_picture", print_it)
    dialog = opened(open_window(FIRST), printing=True)
    QTest.mouseClick(dialog.go, Qt.MouseButton.LeftButton)
    assert dialog.isVisible(), "who thinks better of it is back in the dialog"
    QTest.mouseClick(dialog.go, Qt.MouseButton.LeftButton)
    settle()
    assert len(printed) == 2 and not isValid(dialog)


def test_the_system_is_asked_for_printers() -> None:
    assert is_printer_there() in (True, False)
