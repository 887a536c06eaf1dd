"""The desktop program: the application object, its window, and plain sentences where it cannot start."""

from __future__ import annotations

import gc
import os
import sys
from typing import TYPE_CHECKING

# the model is loaded before the binding is: what is imported afterwards has its source searched by the binding
import core.edits
import core.results
import core.units  # noqa: F401
from app.early import EarlyAnswer
from core.errors import HeaterloomError
from core.samples import sample_names

if TYPE_CHECKING:
    from app.start import Opened

APT_LINE = (
    "sudo apt-get install libglib2.0-0 libgl1 libegl1 libfontconfig1 libxkbcommon0 libdbus-1-3 "
    "libxcb-cursor0 libxcb-icccm4 libxcb-keysyms1 libxcb-image0 libxcb-render-util0 libxcb-shape0 "
    "libxcb-randr0 libxkbcommon-x11-0"
)
UNUSABLE = 2


def run(name: str | None) -> int:
    """Open the window on a sheet, or on the first built-in sample; returns the exit status."""
    try:
        opened = launch(name)
    except HeaterloomError as error:
        print(f"heaterloom: {error}", file=sys.stderr)
        return UNUSABLE
    return opened.application.exec()


def launch(name: str | None) -> Opened:
    """Open the window and return it with its application object; keep both.

    Raises
    ------
    core.errors.HeaterloomError
        When the sheet cannot be used, or there is no screen or library to show it with.
    """
    complaint = missing_screen(dict(os.environ), sys.platform)
    if complaint:
        raise HeaterloomError(complaint)
    # nothing made while starting becomes garbage: the collector begins once the window is up
    gc.disable()
    early = EarlyAnswer(name or sample_names()[0])
    complaint = missing_library()
    if complaint:
        raise HeaterloomError(complaint)
    from app.start import open_first  # noqa: PLC0415 - only once the libraries are known to be there

    opened = open_first(name, early)
    # what is there now stays: the collector need not walk it again
    gc.freeze()
    return opened


def missing_screen(environment: dict[str, str], system: str) -> str:
    """What to say when there is no display to show a window on; empty when there is one."""
    if not system.startswith("linux") or environment.get("QT_QPA_PLATFORM"):
        return ""
    if environment.get("DISPLAY") or environment.get("WAYLAND_DISPLAY"):
        return ""
    return (
        "there is no display to open a window on. Start it from a desktop session, or use "
        "'heaterloom check SHEET' and 'heaterloom picture SHEET FILE', which need none."
    )


def missing_library() -> str:
    """What to say when a system library that Qt needs is missing; empty when all are there."""
    try:
        from PySide6 import QtWidgets  # noqa: F401, PLC0415
    except ImportError as error:
        return f"a system library is missing ({error}). On Debian and Ubuntu: {APT_LINE}"
    return (
        _missing_for_window() if os.environ.get("DISPLAY") and not os.environ.get("QT_QPA_PLATFORM") else ""
    )


def _missing_for_window() -> str:
    """Load Qt's window-system plug-in once by hand: Qt itself would abort and name the wrong library."""
    import ctypes  # noqa: PLC0415
    from pathlib import Path  # noqa: PLC0415

    import PySide6  # noqa: PLC0415

    plugin = Path(next(iter(PySide6.__path__))) / "Qt" / "plugins" / "platforms" / "libqxcb.so"
    if not plugin.exists():
        return ""
    try:
        ctypes.CDLL(str(plugin))
    except OSError as error:
        return f"a system library for windows is missing ({error}). On Debian and Ubuntu: {APT_LINE}"
    return ""
