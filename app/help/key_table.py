"""The table of all keys: made from the entries of the drawing and of every menu, so that it cannot fall behind."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QMenu

from app.actions import Entry, key_text
from app.help import gestures

if TYPE_CHECKING:
    from app.window import MainWindow


@dataclass(frozen=True)
class Line:
    """What is pressed or done, what comes of it, and a few words more."""

    pressed: tuple[str, ...]
    does: str
    about: str = ""

    def holds(self, words: Iterable[str]) -> bool:
        """Whether every word, in small letters, stands somewhere in the line."""
        text = " ".join((*self.pressed, self.does, self.about)).casefold()
        return all(word in text for word in words)


@dataclass(frozen=True)
class Section:
    """Lines under a heading."""

    title: str
    lines: tuple[Line, ...]


def all_sections(window: MainWindow) -> tuple[Section, ...]:
    """Everything that keys and pointer do in a window."""
    translate = QCoreApplication.translate
    drawing = entry_lines(window.view.entries.values())
    known = {line.does for line in drawing}
    undo = window.document.undo_stack.undoText(), window.document.undo_stack.redoText()
    menus = [
        Section(plain(menu.title()), tuple(line for line in menu_lines(menu, undo) if line.does not in known))
        for menu in window.menus.all
    ]
    done = [
        Section(title, tuple(Line((pressed,), comes) for pressed, comes in found))
        for title, found in gestures.sections()
    ]
    here = Section(translate("help", "While the drawing has the keyboard"), drawing)
    return tuple(section for section in (here, *done, *menus) if section.lines)


def plain(text: str) -> str:
    """A menu text without its mnemonic, its dots and its key."""
    said = text.partition("\t")[0].replace("&&", "\0").replace("&", "").replace("\0", "&")
    return said.removesuffix("\u2026")


def entry_lines(entries: Iterable[Entry]) -> tuple[Line, ...]:
    """One line for what entries of the same name do, with all their keys."""
    found: dict[str, Line] = {}
    for entry in entries:
        if not entry.keys:
            continue
        does = plain(entry.text)
        before = found.get(does, Line((), does, entry.status))
        keys = (*before.pressed, *(key_text(key) for key in entry.keys))
        found[does] = Line(tuple(dict.fromkeys(keys)), does, before.about or entry.status)
    return tuple(found.values())


def menu_lines(menu: QMenu, undone: Iterable[str] = (), before: str = "") -> Iterator[Line]:
    """The entries of a menu and its submenus that have a key; ``undone`` are names of steps that undo and redo add."""
    for action in menu.actions():
        inner = action.menu()
        if isinstance(inner, QMenu):
            yield from menu_lines(inner, undone, f"{before}{plain(inner.title())}: ")
        elif action.shortcuts():
            text = plain(action.text())
            for step in undone:
                text = text.removesuffix(step).strip() if step else text
            keys = tuple(key.toString(QKeySequence.SequenceFormat.NativeText) for key in action.shortcuts())
            yield Line(keys, before + text, action.statusTip())


def filtered(sections: Iterable[Section], text: str) -> tuple[Section, ...]:
    """The sections with only the lines that hold every word of a text; a heading that holds them keeps all of its."""
    words = text.casefold().split()
    found = []
    for section in sections:
        if all(word in section.title.casefold() for word in words):
            found.append(section)
            continue
        lines = tuple(line for line in section.lines if line.holds(words))
        if lines:
            found.append(Section(section.title, lines))
    return tuple(found)
