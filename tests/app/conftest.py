"""The program's fixtures: folders of its own, a window on a sheet, and a look for leftovers."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication

from app.crash import Watch
from app.settings import Settings
from app.sources import Found
from app.start import make_window
from app.theme import load_fonts
from app.window import MainWindow
from core.sheet import Sheet


@pytest.fixture(autouse=True)
def own_folders(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Keep the user's own folders out of the tests."""
    for name in ("XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME"):
        monkeypatch.setenv(name, str(tmp_path / name.lower()))
    return tmp_path


@pytest.fixture(autouse=True)
def fonts(qapp: QApplication) -> Iterator[None]:
    """The bundled font before a test; afterwards no window, no widget on its way out, no style sheet."""
    qapp.setStyle("Fusion")
    load_fonts()
    yield
    for widget in qapp.topLevelWidgets():
        widget.close()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    if qapp.styleSheet():
        qapp.setStyleSheet("")


@pytest.fixture
def settings(tmp_path: Path) -> Settings:
    """Settings in a file of their own."""
    found = Settings(tmp_path / "settings.ini")
    found.theme = "light"
    return found


@pytest.fixture
def open_window(qtbot, settings: Settings, tmp_path: Path) -> Iterator[Callable[..., MainWindow]]:
    """Open a shown main window on a sheet."""
    opened: list[MainWindow] = []

    def make(sheet: Sheet | None = None, path: Path | None = None) -> MainWindow:
        watch = Watch(tmp_path / "state")
        window = make_window(Found(sheet or Sheet(), path), settings, watch)
        opened.append(window)
        window.show()
        qtbot.waitExposed(window)
        window.complete()
        return window

    yield make
    for window in opened:
        window.document.undo_stack.setClean()
        window.close()
        window.deleteLater()


@pytest.hookimpl(trylast=True)
def pytest_runtest_teardown(item: pytest.Item) -> None:
    """Collect garbage after tests that say so, documents and views in it: none may be taken apart in a wrong order."""
    if item.get_closest_marker("collected"):
        gc.collect()
