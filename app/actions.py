"""What can be done, as values: a menu, the drawing's keys and the page of keys are all made from the same entries."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable
from dataclasses import dataclass

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget


@dataclass(frozen=True)
class Entry:
    """One thing that can be done.

    ``keys`` are portable shortcut texts. Those of an entry that is ``heard`` reach only the drawing, so that a
    letter can still be typed elsewhere; the menu shows them as a hint. ``enabled`` and ``checked`` are asked each
    time the entry is about to be seen. ``status`` explains in a few words.
    """

    text: str
    action: Callable[[], object]
    keys: tuple[str, ...] = ()
    status: str = ""
    heard: bool = False
    enabled: Callable[[], bool] | None = None
    checked: Callable[[], bool] | None = None

    @property
    def is_possible(self) -> bool:
        """Whether it can be done now."""
        return self.enabled is None or self.enabled()


SEPARATOR = None


def fill(menu: QMenu, entries: Iterable[Entry | None]) -> list[QAction]:
    """Add entries to a menu; None is a separator."""
    made = []
    for entry in entries:
        if entry is SEPARATOR:
            menu.addSeparator()
            continue
        action = make_action(menu, entry)
        menu.addAction(action)
        made.append(action)
        _follow(menu, action, entry)
    set_apart(menu.actions())
    return made


def set_apart(actions: Iterable[QAction]) -> None:
    """Give every entry of one menu a letter of its own, in whatever language; the first to name one keeps it."""
    taken: set[str] = set()
    for action in actions:
        text, letter = with_free_letter(action.text(), taken)
        taken.add(letter)
        if text != action.text():
            action.setText(text)


def with_free_letter(text: str, taken: Collection[str]) -> tuple[str, str]:
    """A menu text with its letter marked, and the letter: its own, else another that is not taken, else none.

    Beginnings of words come before other letters. A text that marks none stays without.
    """
    label, tab, hint = text.partition("\t")
    parts = label.split("&&")
    at = next((number for number, part in enumerate(parts) if "&" in part), None)
    if at is None:
        return text, ""
    head, tail = parts[at].split("&", 1)
    plain = head + tail
    starts = [place for place in range(len(plain)) if place == 0 or plain[place - 1] == " "]
    for place in (len(head), *starts, *range(len(plain))):
        letter = plain[place : place + 1].lower()
        if letter.isalnum() and letter not in taken:
            parts[at] = f"{plain[:place]}&{plain[place:]}"
            return "&&".join(parts) + tab + hint, letter
    parts[at] = plain
    return "&&".join(parts) + tab + hint, ""


def make_action(parent: QObject, entry: Entry) -> QAction:
    """An action from its entry."""
    action = QAction(hinted(entry) if entry.heard else entry.text, parent)
    if not entry.heard:
        action.setShortcuts([QKeySequence(key) for key in entry.keys])
    action.setStatusTip(entry.status)
    action.setToolTip(entry.status)
    call = entry.action
    action.triggered.connect(lambda _checked=False: call())
    return action


def _follow(menu: QMenu, action: QAction, entry: Entry) -> None:
    """Ask an entry how it stands whenever the menu opens; closed, its shortcut works and the entry decides."""
    enabled, checked = entry.enabled, entry.checked
    if checked is not None:
        action.setCheckable(True)
        menu.aboutToShow.connect(lambda: action.setChecked(checked()))
    if enabled is not None:
        menu.aboutToShow.connect(lambda: action.setEnabled(enabled()))
        menu.aboutToHide.connect(lambda: action.setEnabled(True))


def hinted(entry: Entry) -> str:
    """A menu text with the key that the drawing listens to; a real shortcut would take it from text fields."""
    return f"{entry.text}\t{key_text(entry.keys[0])}" if entry.keys else entry.text


def key_text(key: str) -> str:
    """A shortcut as this system writes it."""
    return QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText)


def by_key(entries: Iterable[Entry]) -> dict[int, Entry]:
    """Entries by the combined key and modifiers of their shortcuts."""
    return {QKeySequence(key)[0].toCombined(): entry for entry in entries for key in entry.keys}  # type: ignore[index]


def named_menu(bar: QWidget, title: str) -> QMenu:
    """A menu with a title, owned by the bar."""
    menu = QMenu(title, bar)
    menu.setToolTipsVisible(True)
    return menu
