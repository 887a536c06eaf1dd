"""The areas of the window, which F6 walks: the drawing, the strip above it, and the panes that are in front."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QApplication, QDockWidget, QWidget

from app.actions import Entry

if TYPE_CHECKING:
    from app.window import MainWindow


class Areas:
    """Goes from area to area of one window; each remembers where in it the keyboard was."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def present(self) -> list[QWidget]:
        """The areas that can be seen, from the drawing on."""
        window = self._window
        panes = [pane for pane in window.side.panes.values() if pane.is_in_front]
        return [area for area in (window.view, window.strip, window.banner, *panes) if area.isVisible()]

    def current(self) -> int | None:
        """The number of the area that has the keyboard; None where none has it."""
        focused = QApplication.focusWidget() or self._window.focusWidget()
        for number, area in enumerate(self.present()):
            if focused is not None and (focused is area or area.isAncestorOf(focused)):
                return number
        return None

    def step(self, by: int) -> None:
        """Go to the next or the previous area, round and round."""
        present, at = self.present(), self.current()
        number = (0 if by > 0 else -1) if at is None else at + by
        for ahead in range(len(present)):
            target = entrance(present[(number + ahead * by) % len(present)])
            if target is not None:
                target.window().activateWindow()
                target.setFocus(Qt.FocusReason.ShortcutFocusReason)
                return


def entrance(area: QWidget) -> QWidget | None:
    """The widget of an area that takes the keyboard: where it was last, else the first that can."""
    if area.focusPolicy() & Qt.FocusPolicy.TabFocus:
        return area
    last = area.focusWidget()
    if last is not None and last.isVisible() and last.isEnabled() and area.isAncestorOf(last):
        return last
    inner = (
        area.widget() if isinstance(area, QDockWidget) else area
    )  # what a pane holds comes before its title
    for each in (inner, area):
        found = None if each is None else _first_in(each)
        if found is not None:
            return found
    return None


def _first_in(area: QWidget) -> QWidget | None:
    following = area.nextInFocusChain()
    while following is not None and following is not area:
        if area.isAncestorOf(following) and _can_take(following):
            return following
        following = following.nextInFocusChain()
    return None


def _can_take(widget: QWidget) -> bool:
    return widget.isVisible() and widget.isEnabled() and bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)


def area_entries(window: MainWindow) -> tuple[Entry, Entry]:
    """Going to the next area and to the previous one."""
    areas, translate = Areas(window), QCoreApplication.translate
    return (
        Entry(translate("areas", "Ne&xt area"), lambda: areas.step(1), ("F6",)),
        Entry(translate("areas", "Pre&vious area"), lambda: areas.step(-1), ("Shift+F6",)),
    )
