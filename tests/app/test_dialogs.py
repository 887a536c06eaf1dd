"""What message boxes say, and how they are dressed."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication, QMessageBox, QWidget

from app.dialogs import Dialogs, shortened
from app.theme import LIGHT


def test_a_long_list_is_cut_and_counted() -> None:
    lines = [f"parts[{number}].ohm: is missing" for number in range(60)]
    shown = shortened("\n".join(lines)).splitlines()
    assert shown == [*lines[:6], "and 54 more"]
    assert shortened("\n".join(lines[:6])).splitlines() == lines[:6]


def test_a_single_sentence_ends_with_a_full_stop() -> None:
    assert shortened("'amp' is empty") == "'amp' is empty."
    assert shortened("There is no file.") == "There is no file."


def test_a_box_is_wide_enough_and_in_the_programs_font(qtbot, monkeypatch) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    QApplication.setFont(LIGHT.font(12))
    seen: list[tuple[str, str, bool]] = []

    def look(box: QMessageBox) -> int:
        box.show()
        QApplication.processEvents()
        seen.append((box.windowTitle(), box.font().family(), box.width() >= 520))
        box.hide()
        return QMessageBox.StandardButton.Cancel.value

    monkeypatch.setattr(QMessageBox, "exec", look)
    dialogs = Dialogs(window)
    dialogs.tell("amp was not opened.", "It is empty")
    dialogs.ask_unsaved("Bench")
    assert seen == [("Heaterloom", LIGHT.font(12).family(), True)] * 2
