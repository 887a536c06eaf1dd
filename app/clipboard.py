"""Pieces of a sheet on the system's clipboard: the sheet file's own text, readable anywhere."""

from __future__ import annotations

import atexit
from functools import cache

from PySide6.QtCore import QCoreApplication, QMimeData
from PySide6.QtGui import QGuiApplication

from app.speech import told
from core.errors import HeaterloomError, SheetError
from core.sheet import Sheet
from core.storage import dump, load

MIME = "application/x-heaterloom-sheet+json"
LARGEST = 10_000_000  # bytes; twenty thousand parts take three million


class ClipboardError(HeaterloomError):
    """What lies on the clipboard cannot be put on a sheet; the message is a plain sentence."""


def tr(text: str) -> str:
    """Translate a literal text."""
    return QCoreApplication.translate("clipboard", text)


def put(sheet: Sheet) -> None:
    """Lay a piece of a sheet on the clipboard; raises ClipboardError for one that is too large."""
    data = dump(sheet)
    if len(data) > LARGEST:
        raise ClipboardError(tr("This is too much to be copied at once."))
    mime = QMimeData()
    mime.setData(MIME, data)
    mime.setText(data.decode())
    QGuiApplication.clipboard().setMimeData(mime)
    _leave_text_at_exit()


@cache
def _leave_text_at_exit() -> None:
    """See to it that only Qt's own text is left on the clipboard when the program ends.

    Data made here would be destroyed after the interpreter, which ends the process with a fault.
    """
    atexit.register(_leave_text)


def _leave_text() -> None:
    if QGuiApplication.instance() is not None:
        clipboard = QGuiApplication.clipboard()
        held = clipboard.mimeData()
        # not every platform says whose data it is
        if held is not None and held.hasFormat(MIME):
            clipboard.setText(held.text())


def take() -> Sheet:
    """The piece of a sheet that lies on the clipboard.

    Raises
    ------
    ClipboardError
        When nothing lies there that could be put on a sheet.
    """
    sheet = read(QGuiApplication.clipboard().mimeData())
    if not sheet.parts:
        raise ClipboardError(tr("There are no parts on the clipboard."))
    return sheet


def read(mime: QMimeData | None) -> Sheet:
    """A sheet from its own form or from plain text; raises ClipboardError for anything else."""
    data = b""
    if mime is not None and mime.hasFormat(MIME):
        data = bytes(mime.data(MIME).data())
    elif mime is not None and mime.hasText():
        data = mime.text().strip().encode(errors="replace")
    if not data:
        raise ClipboardError(tr("There is nothing on the clipboard that could be pasted."))
    if len(data) > LARGEST:
        raise ClipboardError(tr("What is on the clipboard is too large for a sheet."))
    if not data.startswith(b"{"):
        raise ClipboardError(tr("The text on the clipboard is no part of a sheet. Copy parts of a drawing."))
    try:
        return load(data, tr("clipboard"))
    except SheetError as error:
        sentence = tr("The text on the clipboard cannot be pasted: {why}")
        raise ClipboardError(sentence.format(why=told(error).splitlines()[0])) from error
