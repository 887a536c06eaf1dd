"""Playing a run of the warm-up: the time slider, play and pause, how fast, from event to event, and back.

It moves the playhead and nothing else. While it does not play it does nothing.
"""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QFontMetrics, QHideEvent, QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from app.canvas.telling import announce
from app.guard import guarded
from app.panes.controls import FlatCombo, SignButton, TextButton
from app.theme import Theme
from app.warmup.instants import Run
from app.warmup.moments import after_switching_on, event_text, seconds_text
from app.warmup.playhead import Playhead
from app.warmup.time_slider import TimeSlider
from core.units import THIN_SPACE

SPEEDS = (1, 2, 5, 10, 60)
_FRAME_MS = 34  # at most 30 frames a second
_SAME_S = 1e-9
_NO_TIME = "–"


@guarded
class Playback(QWidget):
    """The strip that plays a run. ``clock`` answers seconds that only ever rise."""

    def __init__(
        self,
        playhead: Playhead,
        theme: Theme,
        parent: QWidget | None = None,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        super().__init__(parent)
        self._playhead = playhead
        self._theme = theme
        self._clock = clock
        self._run: Run | None = None
        self._last = 0.0  # the clock at the last frame
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.setInterval(_FRAME_MS)
        self._timer.timeout.connect(self._on_frame)
        self._make(theme)
        self._arrange()
        self._connect()
        self.set_theme(theme)
        self.show_run(None)

    def _make(self, theme: Theme) -> None:
        self.previous = self._button("previous", self.tr("Previous event"), "F7")
        self.play_button = self._button("play", self.tr("Play"), "F8")
        self.next = self._button("next", self.tr("Next event"), "F9")
        self.time_label = QLabel(_NO_TIME, self)
        self.time_label.setTextFormat(Qt.TextFormat.PlainText)
        self.time_label.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.slider = TimeSlider(theme, self)
        self.speed = FlatCombo(theme, self)
        self.speed.setAccessibleName(self.tr("How fast it plays"))
        self.speed.setToolTip(self.tr("How fast it plays"))
        for factor in SPEEDS:
            self.speed.addItem(f"{factor}{THIN_SPACE}×", factor)
        self.leave_button = TextButton(self.tr("Leave the instant"), theme, 12, self)
        self.leave_button.setToolTip(self.tr("Show the steady state again (Escape)"))

    def _button(self, sign: str, word: str, key: str) -> SignButton:
        button = SignButton(sign, self._theme, self)
        button.setAccessibleName(word)
        button.setToolTip(f"{word} ({key})")
        return button

    def _arrange(self) -> None:
        row = QHBoxLayout(self)
        row.setContentsMargins(4, 2, 4, 0)
        row.setSpacing(4)
        for button in (self.previous, self.play_button, self.next):
            row.addWidget(button)
        row.addWidget(self.time_label)
        row.addWidget(self.slider, 1)
        row.addWidget(self.speed)
        row.addSpacing(4)
        row.addWidget(self.leave_button)

    def _connect(self) -> None:
        self.previous.clicked.connect(self.step_back)
        self.play_button.clicked.connect(self.toggle)
        self.next.clicked.connect(self.step_on)
        self.slider.chosen.connect(self._playhead.set)
        self.leave_button.clicked.connect(self.leave)
        self._playhead.changed.connect(self._on_playhead)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        for button in (self.previous, self.play_button, self.next, self.leave_button):
            button.set_theme(theme)
        self.slider.set_theme(theme)
        self.speed.set_theme(theme)
        font = theme.font(13, bold=True)
        self.time_label.setFont(font)
        self.time_label.setFixedWidth(QFontMetrics(font).horizontalAdvance(seconds_text(9999.0)) + 10)
        self._show_time()

    def show_run(self, run: Run | None) -> None:
        """Play another run, or none. The playhead is not moved; see :class:`app.warmup.instants.Instants`."""
        self.pause()
        self._run = run
        if run is None:
            self.slider.show_span(0.0, ())
        else:
            self.slider.show_span(run.end_s, run.summary.events)
        self._on_playhead(self._playhead.t_s)

    @property
    def has_run(self) -> bool:
        """Whether there is anything to play."""
        return self._run is not None

    @property
    def has_instant(self) -> bool:
        """Whether an instant is on show."""
        return self._playhead.t_s is not None

    # playing

    @property
    def is_playing(self) -> bool:
        """Whether the time goes on by itself."""
        return self._timer.isActive()

    @property
    def factor(self) -> int:
        """How many times as fast as real time it plays."""
        return int(self.speed.currentData())

    def toggle(self) -> None:
        """Play, from the start where there is no instant on show or it is the last one; or pause."""
        if self.is_playing:
            self.pause()
        elif self._run is not None:
            now = self._playhead.t_s
            if now is None or now >= self._run.end_s:
                self._playhead.set(0.0)
            self._last = self._clock()
            self._timer.start()
            self._show_play()

    def pause(self) -> None:
        """Stay at the instant."""
        self._timer.stop()
        self._show_play()

    def _on_frame(self) -> None:
        clock, run, now = self._clock(), self._run, self._playhead.t_s
        passed, self._last = clock - self._last, clock
        if run is None or now is None:
            self.pause()
        elif not self.slider.isSliderDown():
            then = now + passed * self.factor
            if then >= run.end_s:
                self.pause()
            self._playhead.set(min(then, run.end_s))

    # going

    def step(self, direction: int) -> None:
        """Go to the next event, or with -1 to the previous one; beyond the last lie the ends of the run."""
        run, now = self._run, self._playhead.t_s
        if run is None:
            return
        times = sorted({0.0, run.end_s, *(event.t_s for event in run.summary.events)})
        here = -1.0 if now is None else now
        if direction > 0:
            ahead = [t_s for t_s in times if t_s > here + _SAME_S]
            target = ahead[0] if ahead else run.end_s
        else:
            behind = [t_s for t_s in times if t_s < here - _SAME_S]
            target = behind[-1] if behind else 0.0
        self.pause()
        self._playhead.set(target)
        if self.has_instant:
            announce(self.slider, self._told_here() or after_switching_on(target))

    def step_on(self) -> None:
        """Go to the next event."""
        self.step(1)

    def step_back(self) -> None:
        """Go to the previous event."""
        self.step(-1)

    def leave(self) -> None:
        """Show the steady state again."""
        self._playhead.set(None)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Space plays and pauses, Escape leaves the instant."""
        if event.key() == Qt.Key.Key_Space:
            self.toggle()
        elif event.key() == Qt.Key.Key_Escape and self._playhead.t_s is not None:
            self.leave()
        else:
            super().keyPressEvent(event)

    def hideEvent(self, event: QHideEvent) -> None:
        """Nothing plays where it cannot be stopped."""
        self.pause()
        super().hideEvent(event)

    # showing

    def _on_playhead(self, t_s: float | None) -> None:
        if t_s is None:
            self.pause()
        self.slider.show_instant(t_s)
        self._show_time()
        has_run = self._run is not None
        for control in (self.previous, self.play_button, self.next, self.slider):
            control.setEnabled(has_run)
        self.leave_button.setEnabled(t_s is not None)

    def _show_time(self) -> None:
        t_s = self._playhead.t_s
        self.time_label.setText(_NO_TIME if t_s is None else seconds_text(t_s))
        self.time_label.setToolTip(self._told_here())

    def _told_here(self) -> str:
        """What switched at this very instant, in words."""
        events = () if self._run is None else self._run.summary.events
        return "\n".join(event_text(event) for event in events if event.t_s == self._playhead.t_s)

    def _show_play(self) -> None:
        word = self.tr("Pause") if self.is_playing else self.tr("Play")
        self.play_button.set_sign("pause" if self.is_playing else "play")
        self.play_button.setAccessibleName(word)
        self.play_button.setToolTip(f"{word} (F8)")
