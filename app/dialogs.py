"""The few questions that are worth stopping for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt

from app.session import CANCEL, DISCARD, SAVE, SUFFIX

if TYPE_CHECKING:
    from PySide6.QtWidgets import QMessageBox, QWidget

_MOST_LINES = 6
_TEXT_WIDTH = 500


def _tr(text: str) -> str:
    return QCoreApplication.translate("Dialogs", text)


class Dialogs:
    """Asks the user with dialogs over a window. Qt's dialogs are loaded when there is something to ask."""

    def __init__(self, window: QWidget) -> None:
        self._window = window

    def ask_unsaved(self, title: str) -> str:
        """Save, discard or cancel."""
        box = self._box()
        box.setText(_tr("{title} has changes that are not saved.").format(title=title))
        buttons = type(box).StandardButton
        box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
        box.setDefaultButton(buttons.Save)
        answer = box.exec()
        return {buttons.Save.value: SAVE, buttons.Discard.value: DISCARD}.get(answer, CANCEL)

    def ask_open_path(self, folder: str) -> str:
        """A file to open."""
        from PySide6.QtWidgets import QFileDialog  # noqa: PLC0415

        kinds = f"{_tr('Sheets')} (*{SUFFIX});;{_tr('All files')} (*)"
        return QFileDialog.getOpenFileName(self._window, _tr("Open a sheet"), folder, kinds)[0]

    def ask_save_path(self, suggestion: str) -> str:
        """A file to save to."""
        from PySide6.QtWidgets import QFileDialog  # noqa: PLC0415

        kinds = f"{_tr('Sheets')} (*{SUFFIX})"
        return QFileDialog.getSaveFileName(self._window, _tr("Save the sheet"), suggestion, kinds)[0]

    def ask_picture_path(self, suggestion: str) -> str:
        """A file for a picture."""
        from PySide6.QtWidgets import QFileDialog  # noqa: PLC0415

        kinds = f"{_tr('Pictures')} (*.svg *.png *.pdf)"
        return QFileDialog.getSaveFileName(self._window, _tr("Save a picture"), suggestion, kinds)[0]

    def ask_overwrite(self, name: str) -> bool:
        """Whether a file that is there may be replaced."""
        box = self._box()
        box.setText(_tr("{name} is there already.").format(name=name))
        box.setInformativeText(_tr("Replace it?"))
        buttons = type(box).StandardButton
        box.setStandardButtons(buttons.Yes | buttons.Cancel)
        box.setDefaultButton(buttons.Cancel)
        return box.exec() == buttons.Yes.value

    def ask_pdf_instead(self) -> bool:
        """Whether a PDF document will do where there is no printer."""
        box = self._box()
        box.setText(_tr("No printer is set up on this computer."))
        box.setInformativeText(_tr("The pages can be saved as a PDF document and printed elsewhere."))
        buttons = type(box).StandardButton
        save = box.addButton(_tr("Save a PDF…"), type(box).ButtonRole.AcceptRole)
        box.addButton(buttons.Cancel)
        box.exec()
        return box.clickedButton() is save

    def tell(self, headline: str, text: str) -> None:
        """Say what went wrong; long lists stay readable."""
        box = self._box()
        box.setText(headline)
        box.setInformativeText(shortened(text))
        box.exec()

    def _box(self) -> QMessageBox:
        return message_box(self._window)


def message_box(window: QWidget) -> QMessageBox:
    """An empty message box in the program's font, wide enough to read."""
    from PySide6.QtWidgets import QApplication, QLabel, QMessageBox  # noqa: PLC0415

    box = QMessageBox(window)
    box.setWindowTitle("Heaterloom")
    box.setTextFormat(Qt.TextFormat.PlainText)
    # the platform's own font for message boxes would win over the program's
    box.setFont(QApplication.font())
    label = box.findChild(QLabel, "qt_msgbox_label")
    if label is not None:  # a message box heeds no minimum width but that of its text
        label.setMinimumWidth(_TEXT_WIDTH)
    return box


def shortened(text: str) -> str:
    """The first lines of a list of problems and how many more there are; a single one ends with a full stop."""
    lines = text.splitlines()
    if len(lines) == 1:
        return text if text.endswith((".", "!", "?", "…")) else f"{text}."
    if len(lines) <= _MOST_LINES:
        return text
    more = _tr("and {count} more").format(count=len(lines) - _MOST_LINES)
    return "\n".join((*lines[:_MOST_LINES], more))
