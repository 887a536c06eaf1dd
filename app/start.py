"""Putting the desktop program together: settings, catalogue, document, window, event loop."""

from __future__ import annotations

import sys

from core.samples import sample_names
from PySide6.QtWidgets import QApplication

from app.crash import Watch
from app.document import Document
from app.settings import Settings
from app.sources import Opened, load_catalogue, open_sheet
from app.theme import load_fonts
from app.window import MainWindow
from core.errors import HeaterloomError

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


def first_sheet(name: str | None) -> Opened:
    """The sheet to begin with.

    Raises
    ------
    core.errors.HeaterloomError
        When a named sheet cannot be used.
    """
    return open_sheet(name or sample_names()[0])


def make_window(opened: Opened, settings: Settings, watch: Watch) -> MainWindow:
    """The main window on a sheet, with the user's own types if they are usable."""
    catalogue, problems = load_catalogue()
    window = MainWindow(Document(opened.sheet, catalogue), settings)
    window.session.show(opened)
    watch.happened.connect(window.show_trouble)
    if problems:
        window.banner.show_message(
            "\n".join(
                [window.tr("Your own tube types are not used until this is mended:"), *map(str, problems)]
            )
        )
    return window


def start(name: str | None) -> int:
    """Run the desktop program until its window closes; returns the exit status."""
    try:
        opened = first_sheet(name)
    except HeaterloomError as error:
        print(f"heaterloom: {error}", file=sys.stderr)
        return UNUSABLE
    application = make_application()
    watch = Watch(parent=application)
    watch.install()
    window = make_window(opened, Settings(), watch)
    window.show()
    return application.exec()
