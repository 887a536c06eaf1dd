"""What the program remembers between sessions."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings

from app.places import config_folder

MAX_RECENT = 8
THEMES = ("system", "light", "dark")


class Settings:
    """Theme, window and recent files, in one small file. An unwritable folder only means forgetting."""

    def __init__(self, path: Path | None = None) -> None:
        where = path or config_folder() / "settings.ini"
        self._store = QSettings(str(where), QSettings.Format.IniFormat)

    @property
    def theme(self) -> str:
        """``system``, ``light`` or ``dark``."""
        value = str(self._store.value("theme", "system"))
        return value if value in THEMES else "system"

    @theme.setter
    def theme(self, name: str) -> None:
        self._store.setValue("theme", name)

    @property
    def recent(self) -> list[str]:
        """Files opened or saved lately, the newest first."""
        value = self._store.value("recent", [])
        found = [value] if isinstance(value, str) else value
        return [str(item) for item in found][:MAX_RECENT] if isinstance(found, list) else []

    def add_recent(self, path: Path) -> None:
        """Put a file at the head of the recent ones."""
        name = str(path.resolve())
        self._store.setValue("recent", [name, *(item for item in self.recent if item != name)][:MAX_RECENT])

    def bytes_of(self, key: str) -> QByteArray | None:
        """A remembered window geometry or state."""
        value = self._store.value(key)
        return value if isinstance(value, QByteArray) else None

    def keep_bytes(self, key: str, value: QByteArray) -> None:
        """Remember a window geometry or state."""
        self._store.setValue(key, value)
