"""Whether there is a screen, and the system libraries, to show a window with: asked before Qt aborts over it."""

from __future__ import annotations

import ctypes
import os
from collections.abc import Mapping
from pathlib import Path

from core.errors import HeaterloomError

APT_LINE = (
    "sudo apt-get install libglib2.0-0 libgl1 libegl1 libfontconfig1 libxkbcommon0 libdbus-1-3 "
    "libxcb-cursor0 libxcb-icccm4 libxcb-keysyms1 libxcb-image0 libxcb-render-util0 libxcb-shape0 "
    "libxcb-randr0 libxkbcommon-x11-0"
)


class ScreenError(HeaterloomError):
    """No window can be shown, or nothing painted; the message is a plain sentence with the remedy."""


def need_screen(environment: Mapping[str, str], system: str) -> None:
    """Make sure that there is a screen that answers.

    Raises
    ------
    ScreenError
        When no screen is named in the environment, or the one named there does not answer.
    """
    if not system.startswith("linux") or environment.get("QT_QPA_PLATFORM"):
        return
    x11, wayland = environment.get("DISPLAY", ""), environment.get("WAYLAND_DISPLAY", "")
    if (wayland and _wayland_answers(environment)) or (x11 and _x11_answers(x11)):
        return
    what = f"the display {x11 or wayland} does not answer" if x11 or wayland else "there is no display"
    raise ScreenError(
        f"{what} to open a window on. Start it from a desktop session, or use "
        "'heaterloom check SHEET' and 'heaterloom picture SHEET FILE', which need none."
    )


def need_libraries(environment: Mapping[str, str]) -> None:
    """Make sure that the libraries Qt needs are there.

    Raises
    ------
    ScreenError
        When one is missing; the message names it and the packages to install.
    """
    try:
        from PySide6 import QtWidgets  # noqa: F401, PLC0415
    except ImportError as error:
        raise ScreenError(_missing(error)) from error
    if environment.get("DISPLAY") and not environment.get("QT_QPA_PLATFORM"):
        _need_window_plugin()


def _x11_answers(display: str) -> bool:
    """Connect once, as Qt will, rights included; without the library, Qt's own lack is told later."""
    try:
        xcb = ctypes.CDLL("libxcb.so.1")
    except OSError:
        return True
    xcb.xcb_connect.restype = ctypes.c_void_p
    connection = ctypes.c_void_p(xcb.xcb_connect(display.encode(), None))
    failed = bool(xcb.xcb_connection_has_error(connection))
    xcb.xcb_disconnect(connection)
    return not failed


def _wayland_answers(environment: Mapping[str, str]) -> bool:
    import socket  # noqa: PLC0415 - seldom needed, slow to import

    place = Path(environment.get("XDG_RUNTIME_DIR", ""), environment["WAYLAND_DISPLAY"])
    with socket.socket(socket.AF_UNIX) as trial:
        try:
            trial.connect(os.fspath(place))
        except OSError:
            return False
    return True


def _need_window_plugin() -> None:
    """Load Qt's window-system plug-in once by hand: Qt itself would abort and name the wrong library."""
    import PySide6  # noqa: PLC0415 - slow to import

    plugin = Path(next(iter(PySide6.__path__))) / "Qt" / "plugins" / "platforms" / "libqxcb.so"
    if not plugin.exists():
        return
    try:
        ctypes.CDLL(str(plugin))
    except OSError as error:
        raise ScreenError(_missing(error)) from error


def _missing(error: Exception) -> str:
    return f"a system library is missing ({error}). On Debian and Ubuntu: {APT_LINE}"
