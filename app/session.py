"""The file side of the open sheet: new, open, save, recent, and never losing anything on the way."""

from __future__ import annotations

from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QObject, Signal

from app.document import Document
from app.files import with_ending, write_atomically
from app.settings import Settings
from app.sources import Found, open_sheet
from app.speech import spoken, told
from core.errors import HeaterloomError, NewerVersionError
from core.samples import sample_bytes
from core.sheet import Sheet
from core.storage import dump, load

SUFFIX = ".heaterloom"
SAVE, DISCARD, CANCEL = "save", "discard", "cancel"


class Asker(Protocol):
    """Whoever asks the user; a window with dialogs, or a test."""

    def ask_unsaved(self, title: str) -> str:
        """What to do with unsaved changes: ``save``, ``discard`` or ``cancel``."""

    def ask_open_path(self, folder: str) -> str:
        """A file to open; empty when the user thought better of it."""

    def ask_save_path(self, suggestion: str) -> str:
        """Where to save; empty when the user thought better of it."""

    def ask_overwrite(self, name: str) -> bool:
        """Whether a file that is there may be replaced."""

    def tell(self, headline: str, text: str) -> None:
        """Show what went wrong."""


class Session(QObject):
    """Knows which file the sheet belongs to. ``moved`` comes when that, or the list of recent files, changes."""

    moved = Signal()

    def __init__(
        self, document: Document, settings: Settings, asker: Asker, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._settings = settings
        self._asker = asker
        self.path: Path | None = None

    @property
    def is_dirty(self) -> bool:
        """Whether there are changes that no file holds."""
        return not self._document.undo_stack.isClean()

    @property
    def name(self) -> str:
        """What the window's title calls the sheet."""
        title = self._title
        return f"{title} ({self.path.name})" if self.path else title

    @property
    def _title(self) -> str:
        return self._document.sheet.title.strip() or self.tr("Untitled")

    def may_leave(self) -> bool:
        """Ask about unsaved changes; True when the open sheet may go."""
        if not self.is_dirty:
            return True
        answer = self._asker.ask_unsaved(self._title)
        return answer == DISCARD or (answer == SAVE and self.save())

    def new(self) -> None:
        """Start an empty sheet."""
        if self.may_leave():
            self.show(Found(Sheet(), None))

    def open(self, name: str = "") -> bool:
        """Open a file; without a name, ask for one. A file that cannot be used leaves everything as it is."""
        if not self.may_leave():
            return False
        chosen = name or self._asker.ask_open_path(str(self.path.parent) if self.path else "")
        if not chosen:
            return False
        try:
            opened = open_sheet(chosen)
        except HeaterloomError as error:
            self._asker.tell(self.tr("{name} was not opened.").format(name=Path(chosen).name), _said(error))
            return False
        self.show(opened)
        return True

    def open_sample(self, name: str) -> None:
        """Open a built-in sheet; saving it asks for a file."""
        if self.may_leave():
            self.show(Found(load(sample_bytes(name), name), None))

    def show(self, opened: Found) -> None:
        """Make an opened sheet the document's."""
        self._document.open(opened.sheet)
        self.belong(opened)

    def belong(self, opened: Found) -> None:
        """Take note of the file that the document's sheet came from."""
        self.path = opened.path
        if opened.path is not None:
            self._settings.add_recent(opened.path)
        self.moved.emit()

    def save(self) -> bool:
        """Save to the sheet's file, or ask where; True when it is saved."""
        return self._write(self.path) if self.path else self.save_as()

    def save_as(self) -> bool:
        """Ask for a file and save there."""
        title = "".join(c if c.isalnum() or c in " -_" else "-" for c in self._document.sheet.title).strip()
        folder = self.path.parent if self.path else Path.home()
        suggestion = folder / f"{title or 'sheet'}{SUFFIX}"
        chosen = self._asker.ask_save_path(str(suggestion))
        if not chosen:
            return False
        path = with_ending(Path(chosen), (SUFFIX,))
        # the dialog asked about the name as it was typed
        if path != Path(chosen) and path.exists() and not self._asker.ask_overwrite(path.name):
            return False
        return self._write(path)

    def _write(self, path: Path) -> bool:
        try:
            write_atomically(path, dump(self._document.to_save()))
        except HeaterloomError as error:
            self._asker.tell(self.tr("The sheet is not saved."), told(error))
            return False
        self.path = path
        self._document.undo_stack.setClean()
        self._settings.add_recent(path)
        self.moved.emit()
        return True


def _said(error: HeaterloomError) -> str:
    """What an error says to someone who does not look into the file: of a newer version no place in it."""
    return spoken(error.problems[0].said) if isinstance(error, NewerVersionError) else told(error)
