"""Playing a warm-up, as entries for the menus. Their keys work wherever the keyboard is."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication

from app.actions import Entry
from app.warmup.playback import Playback


def playback_entries(find: Callable[[], Playback | None]) -> tuple[Entry, ...]:
    """Play and pause, from event to event, and back to the steady state.

    ``find`` answers what plays, or None while there is nothing to play.
    """
    translate = QCoreApplication.translate

    def on(action: Callable[[Playback], object]) -> Callable[[], object]:
        def carry_out() -> None:
            playback = find()
            if playback is not None:
                action(playback)

        return carry_out

    def has_run() -> bool:
        playback = find()
        return playback is not None and playback.has_run

    def has_instant() -> bool:
        playback = find()
        return playback is not None and playback.has_instant

    return (
        Entry(
            translate("warm-up", "&Play or pause the warm-up"),
            on(Playback.toggle),
            ("F8", "Media Play", "Toggle Media Play/Pause"),
            enabled=has_run,
        ),
        Entry(translate("warm-up", "&Next event"), on(Playback.step_on), ("F9",), enabled=has_run),
        Entry(translate("warm-up", "Pre&vious event"), on(Playback.step_back), ("F7",), enabled=has_run),
        Entry(
            translate("warm-up", "&Leave the instant"), on(Playback.leave), ("Shift+F8",), enabled=has_instant
        ),
    )
