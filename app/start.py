"""Putting the desktop program together: settings, catalogue, document, window, event loop."""

from __future__ import annotations

import os
from typing import NamedTuple

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QApplication

from app.crash import Watch
from app.document import Document
from app.early import EarlyAnswer
from app.language import language_for, speak
from app.settings import Settings
from app.sources import Found, load_catalogue, open_sheet
from app.speech import placed
from app.theme import load_fonts
from app.window import MainWindow
from core.samples import sample_names


def make_application(scale: str = "1") -> QApplication:
    """The application object with its name, style and font files, everything ``scale`` times as large."""
    application = QApplication.instance()
    if scale != "1":
        # the user's own environment comes first
        os.environ.setdefault("QT_SCALE_FACTOR", scale)
    if not isinstance(application, QApplication):
        # asked for here, as setStyle would bring the binding of the whole style into memory
        application = QApplication(["heaterloom", "-style", "fusion"])
    application.setApplicationName("heaterloom")
    application.setApplicationDisplayName("Heaterloom")
    load_fonts()
    return application


def make_window(
    found: Found, settings: Settings, watch: Watch, early: EarlyAnswer | None = None
) -> MainWindow:
    """The main window on a sheet, with the user's own types if they are usable."""
    catalogue, problems = load_catalogue()
    window = MainWindow(Document(found.sheet, catalogue), settings)
    window.session.belong(found)
    window.begin(early.take() if early else None)
    watch.happened.connect(window.show_trouble)
    if problems:
        window.banner.show_message(
            "\n".join(
                [
                    QCoreApplication.translate(
                        "MainWindow", "Your own tube types are not used until this is mended:"
                    ),
                    *map(placed, problems),
                ]
            )
        )
    return window


class Opened(NamedTuple):
    """The running program: keep it for as long as it runs."""

    application: QApplication
    window: MainWindow


def open_first(name: str | None, early: EarlyAnswer | None = None) -> Opened:
    """Open the window on a sheet, or on the first built-in sample.

    ``early`` is a second process that is already solving the same sheet.

    Raises
    ------
    core.errors.HeaterloomError
        When the sheet cannot be used.
    """
    found = open_sheet(name or sample_names()[0])
    settings = Settings()
    application = make_application(settings.scale)
    speak(application, language_for(settings.language))
    watch = Watch(parent=application)
    watch.install()
    window = make_window(found, settings, watch, early)
    window.show()
    return Opened(application, window)
