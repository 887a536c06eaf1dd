"""The few questions that are worth stopping for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt

from app.session import CANCEL, DISCARD, SAVE, SUFFIX

if TYPE_CHECKING:
    from PySide6.QtWidgets import QMessageBox, QWidget


def _tr(text: str) -> str:
    return QCoreApplication.translate("Dialogs", text)


class Dialogs:
    """Asks the user with dialogs over a window. Qt's dialogs are loaded when there is something to ask."""

    def __init__(self, window: QWidget) -> None:
        self._window = window

    def ask_unsaved(self, title: str) -> str:
        """Save, discard or cancel."""
        box = self._box(_tr("Save the changes?"))
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

    def tell(self, headline: str, text: str) -> None:
        """Say what went wrong; long lists stay readable."""
        lines = text.splitlines()
        box = self._box(_tr("Heaterloom"))
        box.setText(headline)
        box.setInformativeText("\n".join(lines[:6]))
        if len(lines) > 6:
            box.setDetailedText(text)
        box.exec()

    def _box(self, title: str) -> QMessageBox:
        from PySide6.QtWidgets import QMessageBox  # noqa: PLC0415

        box = QMessageBox(self._window)
        box.setWindowTitle(title)
        box.setTextFormat(Qt.TextFormat.PlainText)
        return box
