"""The few questions that are worth stopping for."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from app.session import CANCEL, DISCARD, SAVE, SUFFIX


def _tr(text: str) -> str:
    return QCoreApplication.translate("Dialogs", text)


class Dialogs:
    """Asks the user with dialogs over a window."""

    def __init__(self, window: QWidget) -> None:
        self._window = window

    def ask_unsaved(self, title: str) -> str:
        """Save, discard or cancel."""
        box = self._box(QMessageBox.Icon.Question, _tr("Save the changes?"))
        box.setText(_tr("{title} has changes that are not saved.").format(title=title))
        buttons = QMessageBox.StandardButton
        box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
        box.setDefaultButton(buttons.Save)
        answer = box.exec()
        return {buttons.Save.value: SAVE, buttons.Discard.value: DISCARD}.get(answer, CANCEL)

    def ask_open_path(self, folder: str) -> str:
        """A file to open."""
        kinds = f"{_tr('Sheets')} (*{SUFFIX});;{_tr('All files')} (*)"
        return QFileDialog.getOpenFileName(self._window, _tr("Open a sheet"), folder, kinds)[0]

    def ask_save_path(self, suggestion: str) -> str:
        """A file to save to."""
        kinds = f"{_tr('Sheets')} (*{SUFFIX})"
        return QFileDialog.getSaveFileName(self._window, _tr("Save the sheet"), suggestion, kinds)[0]

    def ask_picture_path(self, suggestion: str) -> str:
        """A file for a picture."""
        kinds = f"{_tr('Pictures')} (*.svg *.png *.pdf)"
        return QFileDialog.getSaveFileName(self._window, _tr("Save a picture"), suggestion, kinds)[0]

    def tell(self, headline: str, text: str) -> None:
        """Say what went wrong; long lists stay readable."""
        lines = text.splitlines()
        box = self._box(QMessageBox.Icon.Warning, _tr("Heaterloom"))
        box.setText(headline)
        box.setInformativeText("\n".join(lines[:6]))
        if len(lines) > 6:
            box.setDetailedText(text)
        box.exec()

    def _box(self, icon: QMessageBox.Icon, title: str) -> QMessageBox:
        box = QMessageBox(icon, title, "", QMessageBox.StandardButton.Ok, self._window)
        box.setTextFormat(Qt.TextFormat.PlainText)
        return box
