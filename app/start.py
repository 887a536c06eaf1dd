"""Putting the desktop program together: settings, catalogue, document, window, event loop."""

from __future__ import annotations

import sys

from PySide6.QtWidgets import QApplication

from app.crash import Watch
from app.document import Document
from app.early import EarlyAnswer
from app.settings import Settings
from app.sources import Opened, load_catalogue, open_sheet
from app.theme import load_fonts
from app.window import MainWindow
from core.errors import HeaterloomError
from core.samples import sample_names

UNUSABLE = 2


def make_application() -> QApplication:
    """The application object with its name, style and font files."""
    application = QApplication.instance()
    if not isinstance(application, QApplication):
        application = QApplication(["heaterloom"])
    application.setApplicationName("heaterloom")
    application.setApplicationDisplayName("Heaterloom")
    application.setStyle("Fusion")
    load_fonts()
    return application


def make_window(
    opened: Opened, settings: Settings, watch: Watch, early: EarlyAnswer | None = None
) -> MainWindow:
    """The main window on a sheet, with the user's own types if they are usable."""
    catalogue, problems = load_catalogue()
    window = MainWindow(Document(opened.sheet, catalogue), settings)
    window.session.belong(opened)
    window.begin(early.take() if early else None)
    watch.happened.connect(window.show_trouble)
    if problems:
        window.banner.show_message(
            "\n".join(
                [window.tr("Your own tube types are not used until this is mended:"), *map(str, problems)]
            )
        )
    return window


def open_first(name: str | None, early: EarlyAnswer | None = None) -> tuple[QApplication, MainWindow]:
    """Open the window on a sheet, or on the first built-in sample. Keep both of what is returned.

    ``early`` is a second process that is already solving the same sheet.

    Raises
    ------
    core.errors.HeaterloomError
        When a named sheet cannot be used.
    """
    opened = open_sheet(name or sample_names()[0])
    application = make_application()
    watch = Watch(parent=application)
    watch.install()
    window = make_window(opened, Settings(), watch, early)
    window.show()
    return application, window


def start(name: str | None, early: EarlyAnswer | None = None) -> int:
    """Run the desktop program until its window closes; returns the exit status."""
    try:
        application, window = open_first(name, early)
    except HeaterloomError as error:
        print(f"heaterloom: {error}", file=sys.stderr)
        return UNUSABLE
    status = application.exec()
    del window
    return status
