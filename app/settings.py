"""What the program remembers between sessions."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QByteArray, QMargins, QSettings

from app.language import LANGUAGES, SYSTEM
from app.places import config_folder

MAX_RECENT = 8
MOST_ROOM = 4000
SCALES = ("1", "1.25", "1.5", "2", "3")
THEMES = ("system", "light", "dark")


class Settings:
    """Theme, language, window and recent files, in one small file. An unwritable folder only means forgetting."""

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
    def language(self) -> str:
        """``system`` or one of the languages there are."""
        value = str(self._store.value("language", SYSTEM))
        return value if value in LANGUAGES else SYSTEM

    @language.setter
    def language(self, name: str) -> None:
        self._store.setValue("language", name)

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

    def is_on(self, key: str, default: bool = True) -> bool:
        """A remembered switch."""
        value = self._store.value(key, default)
        return value if isinstance(value, bool) else str(value).lower() != "false"

    def keep_switch(self, key: str, on: bool) -> None:
        """Remember a switch."""
        self._store.setValue(key, on)

    def bytes_of(self, key: str) -> QByteArray | None:
        """A remembered window geometry or state."""
        value = self._store.value(key)
        return value if isinstance(value, QByteArray) else None

    def keep_bytes(self, key: str, value: QByteArray) -> None:
        """Remember a window geometry or state."""
        self._store.setValue(key, value)

    def margins_of(self, key: str) -> QMargins | None:
        """Remembered widths at the four sides of something; None where they are no such thing."""
        value = self._store.value(key)
        if not isinstance(value, list) or len(value) != 4:
            return None
        sides = [int(each) for each in value if str(each).isdecimal() and int(each) <= MOST_ROOM]
        return QMargins(*sides) if len(sides) == 4 else None

    def keep_margins(self, key: str, value: QMargins) -> None:
        """Remember widths at the four sides of something."""
        self._store.setValue(key, [value.left(), value.top(), value.right(), value.bottom()])

    @property
    def scale(self) -> str:
        """How large everything is shown, as a factor for the size that the system asks for."""
        value = str(self._store.value("scale", SCALES[0]))
        return value if value in SCALES else SCALES[0]

    @scale.setter
    def scale(self, factor: str) -> None:
        self._store.setValue("scale", factor)

    def text_of(self, key: str) -> str | None:
        """A remembered text."""
        value = self._store.value(key)
        return value if isinstance(value, str) else None

    def keep_text(self, key: str, value: str) -> None:
        """Remember a text."""
        self._store.setValue(key, value)
