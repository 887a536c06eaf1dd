"""Menus and shortcuts: a table of what can be done, built into actions in one place."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget


@dataclass(frozen=True)
class Entry:
    """One line of a menu. ``keys`` are portable shortcut texts; ``status`` explains in a few words."""

    text: str
    action: Callable[[], object]
    keys: tuple[str, ...] = ()
    status: str = ""


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
    return made


def make_action(parent: QObject, entry: Entry) -> QAction:
    """An action from its entry."""
    action = QAction(entry.text, parent)
    action.setShortcuts([QKeySequence(key) for key in entry.keys])
    action.setStatusTip(entry.status)
    call = entry.action
    action.triggered.connect(lambda _checked=False: call())
    return action


def named_menu(bar: QWidget, title: str) -> QMenu:
    """A menu with a title, owned by the bar."""
    menu = QMenu(title, bar)
    menu.setToolTipsVisible(True)
    return menu
