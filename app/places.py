"""Where the program keeps things: the user's data folder and its state folder, without asking Qt.

The command line needs them and must stay light. Follows the XDG base directory specification on Linux and each
system's own custom elsewhere.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

_NAME = "heaterloom"


def _folder(variable: str, linux: str, mac: str, windows: str) -> Path:
    if sys.platform == "win32":
        return Path(os.environ.get(windows, str(Path.home()))) / _NAME
    if sys.platform == "darwin":
        return Path.home() / mac / _NAME
    given = os.environ.get(variable, "")
    base = Path(given) if given and Path(given).is_absolute() else Path.home() / linux
    return base / _NAME


def data_folder() -> Path:
    """The user's own tube types live here, in ``tubes.csv``."""
    return _folder("XDG_DATA_HOME", ".local/share", "Library/Application Support", "APPDATA")


def state_folder() -> Path:
    """The log lives here."""
    return _folder("XDG_STATE_HOME", ".local/state", "Library/Logs", "LOCALAPPDATA")


def config_folder() -> Path:
    """The settings live here."""
    return _folder("XDG_CONFIG_HOME", ".config", "Library/Preferences", "APPDATA")
