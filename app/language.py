"""The language of the screen. English is what the texts are written in: nothing is loaded for it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

import resources

ENGLISH = "en"
SYSTEM = "system"
LANGUAGES = {ENGLISH: "English", "de": "Deutsch", "fr": "Français"}
"""The languages there are, each by its own name."""
_NAME = "heaterloom_language"


def language_for(wanted: str) -> str:
    """The language that a setting stands for; the system's first one that there is, else English."""
    if wanted in LANGUAGES:
        return wanted
    for name in QLocale.system().uiLanguages():
        language = name.replace("_", "-").partition("-")[0]
        if language in LANGUAGES:
            return language
    return ENGLISH


def speak(application: QCoreApplication, language: str) -> None:
    """Let everything that is made from now on speak a language, and Qt's own dialogs with it."""
    for old in application.findChildren(QTranslator, _NAME):
        application.removeTranslator(old)
        old.deleteLater()
    if language == ENGLISH:
        return
    # of two that know a text the one installed last is asked first
    own = QTranslator(application)
    of_qt = QTranslator(application)
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    if of_qt.load(f"qtbase_{language}", folder):
        _install(application, of_qt)
    # from a file: of bytes handed over Qt keeps no copy
    if own.load(resources.path("languages", f"heaterloom_{language}.qm")):
        _install(application, own)


def _install(application: QCoreApplication, translator: QTranslator) -> None:
    translator.setObjectName(_NAME)
    application.installTranslator(translator)
