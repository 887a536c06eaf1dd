"""Where the warm-up drawer meets the window."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.actions import SEPARATOR, Entry
from app.warmup.playback_actions import playback_entries

if TYPE_CHECKING:
    from app.warmup.drawer import Drawer
    from app.window import MainWindow


def warmup_entries(window: MainWindow) -> tuple[Entry | None, ...]:
    """Opening the drawer, and playing what it shows."""
    switch_on = QCoreApplication.translate("warm-up", "&Switch on cold")
    status = QCoreApplication.translate("warm-up", "Follow the warm-up second by second: does it start?")
    return (
        Entry(switch_on, window.toggle_warmup, ("F5",), status, checked=lambda: window.is_warmup_open),
        SEPARATOR,
        *playback_entries(window.playback),
    )


def make_drawer(window: MainWindow) -> Drawer:
    """The drawer of a window, closed."""
    from app.warmup.drawer import Drawer  # noqa: PLC0415 - it loads the plots

    drawer = Drawer(
        window.document, window.selection, window.viewpoint, window.scene.proposal, window.theme, window
    )
    drawer.hide()
    height = window.settings.text_of("warmup height")
    if height and height.isdecimal():
        drawer.set_height(int(height))
    drawer.closed.connect(lambda: window.settings.keep_text("warmup height", str(drawer.height())))
    drawer.closed.connect(window.view.setFocus)
    drawer.tried.connect(lambda: _offer(window, drawer))
    return drawer


def _offer(window: MainWindow, drawer: Drawer) -> None:
    """Soft starts that do are mends of the finding that asks for one."""
    answer = window.document.switched
    remedies = [
        one.variant.remedy for one in drawer.runner.variants if one.variant.fits and one.variant.remedy
    ]
    wanted = [one for one in answer.findings if one.rule == "supply-will-not-start"] if answer else []
    for finding in wanted[:1] if remedies else ():
        window.side.findings.mends.offer(finding, remedies)
