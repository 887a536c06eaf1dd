"""The strip that plays a run: the time slider, play and pause, speeds, events."""

from __future__ import annotations

import gc
import weakref
from dataclasses import dataclass

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QHelpEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QToolTip, QWidget
from shiboken6 import isValid

from app.theme import DARK, LIGHT, load_fonts
from app.warmup.moments import after_switching_on, done_by, event_text, seconds_text
from app.warmup.playback import SPEEDS, Playback
from app.warmup.playback_actions import playback_entries
from app.warmup.playhead import Playhead
from app.warmup.time_slider import step_s
from core.warmup.results import Event
from tests.app.canvas_rig import CATALOGUE, small_sheet
from tests.app.made_up_run import MadeUpRun, made_up_run

EVENTS = (
    Event(0.05, "U1", "cuts out"),
    Event(1.05, "U1", "tries again"),
    Event(1.05, "K1", "pulls in"),
    Event(20.0, "U1", "regulates"),
)
THIN = "\u2009"


class Clock:
    """Seconds that go on only when they are told to."""

    def __init__(self) -> None:
        self.now = 100.0

    def __call__(self) -> float:
        return self.now


@dataclass
class Player:
    """A strip on a run of sixty seconds."""

    strip: Playback
    playhead: Playhead
    run: MadeUpRun
    clock: Clock

    def pass_time(self, seconds: float) -> None:
        """So much time goes by until the next frame."""
        self.clock.now += seconds
        self.strip._timer.timeout.emit()


@pytest.fixture
def player(qtbot) -> Player:
    load_fonts()
    clock, playhead = Clock(), Playhead()
    strip = Playback(playhead, LIGHT, clock=clock)
    strip.playhead_owner = playhead  # it lives as long as the strip
    qtbot.addWidget(strip)
    strip.resize(1000, 40)
    strip.show()
    run = made_up_run(small_sheet(), CATALOGUE, EVENTS)
    strip.show_run(run)
    return Player(strip, playhead, run, clock)


def click(widget: QWidget) -> None:
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton)


@pytest.mark.parametrize(
    ("t_s", "expected"),
    [
        (0.0, "0.00"),
        (0.05, "0.05"),
        (0.994, "0.99"),
        (1.05, "1.1"),
        (12.44, "12.4"),
        (99.96, "100"),
        (240.0, "240"),
    ],
)
def test_seconds_in_figures(t_s: float, expected: str) -> None:
    assert seconds_text(t_s) == f"{expected}{THIN}s"


@pytest.mark.parametrize(
    ("t_s", "forward", "expected"),
    [
        (0.0, True, 0.1),
        (0.05, True, 0.1),
        (0.05, False, 0.0),
        (0.3, True, 0.4),
        (0.3, False, 0.2),
        (9.9, True, 10.0),
        (10.0, True, 11.0),
        (10.0, False, 9.9),
        (12.4, False, 12.0),
        (12.4, True, 13.0),
        (0.0, False, 0.0),
    ],
)
def test_a_step_ends_on_a_round_figure(t_s: float, forward: bool, expected: float) -> None:
    assert step_s(t_s, forward) == expected


def test_what_was_done_last() -> None:
    assert done_by(EVENTS, 0.0) == {}
    assert done_by(EVENTS, 0.05) == {"U1": "cuts out"}
    assert done_by(EVENTS, 5.0) == {"U1": "tries again", "K1": "pulls in"}


def test_events_in_words() -> None:
    assert event_text(EVENTS[0]) == f"0.05{THIN}s: U1 cuts out"
    assert event_text(Event(65.0, "", "mains off")) == f"65.0{THIN}s: the mains goes off"


def test_a_press_and_a_drag_on_the_slider(player) -> None:
    slider = player.strip.slider
    at = QPoint(round(slider.x_of(30.0)), 12)
    QTest.mousePress(slider, Qt.MouseButton.LeftButton, pos=at)
    assert player.playhead.t_s == pytest.approx(30.0, abs=0.1)
    QTest.mouseMove(slider, QPoint(round(slider.x_of(45.0)), 12))
    QTest.mouseRelease(slider, Qt.MouseButton.LeftButton, pos=QPoint(round(slider.x_of(45.0)), 12))
    assert player.playhead.t_s == pytest.approx(45.0, abs=0.1)
    assert player.strip.time_label.text() == seconds_text(player.playhead.t_s)
    assert slider.accessibleDescription() == after_switching_on(player.playhead.t_s)


def test_a_press_beyond_the_ends_stays_in_the_run(player) -> None:
    slider = player.strip.slider
    for x, expected in ((0, 0.0), (slider.width() - 1, 60.0)):
        QTest.mouseClick(slider, Qt.MouseButton.LeftButton, pos=QPoint(x, 12))
        assert player.playhead.t_s == expected


def test_a_press_on_a_tick_is_exactly_its_instant(player) -> None:
    slider = player.strip.slider
    QTest.mouseClick(slider, Qt.MouseButton.LeftButton, pos=QPoint(round(slider.x_of(1.05)), 12))
    assert player.playhead.t_s == 1.05


def test_the_keys_of_the_slider(player) -> None:
    slider, head = player.strip.slider, player.playhead
    for key, expected in (
        (Qt.Key.Key_Right, 0.1),
        (Qt.Key.Key_Up, 0.2),
        (Qt.Key.Key_Left, 0.1),
        (Qt.Key.Key_PageUp, 10.1),
        (Qt.Key.Key_Right, 11.0),
        (Qt.Key.Key_PageDown, 1.0),
        (Qt.Key.Key_End, 60.0),
        (Qt.Key.Key_Right, 60.0),
        (Qt.Key.Key_Home, 0.0),
    ):
        QTest.keyClick(slider, key)
        assert head.t_s == pytest.approx(expected)


def test_the_wheel_acts_only_with_the_keyboard(player) -> None:
    slider = player.strip.slider

    def turn() -> None:
        at = QPointF(50, 10)
        nothing = Qt.MouseButton.NoButton, Qt.KeyboardModifier.NoModifier
        event = QWheelEvent(at, at, QPoint(), QPoint(0, 120), *nothing, Qt.ScrollPhase.NoScrollPhase, False)
        QApplication.sendEvent(slider, event)

    turn()
    assert player.playhead.t_s is None
    slider.setFocus()
    turn()
    assert player.playhead.t_s == 0.1


def test_ticks_say_what_happened(player) -> None:
    slider = player.strip.slider
    assert slider.tip_at(slider.x_of(20.0)) == event_text(EVENTS[3])
    assert slider.tip_at(slider.x_of(40.0)) == ""
    at = QPoint(round(slider.x_of(20.0)), 12)
    QApplication.sendEvent(slider, QHelpEvent(QEvent.Type.ToolTip, at, slider.mapToGlobal(at)))
    assert QToolTip.text() == event_text(EVENTS[3])
    QToolTip.hideText()


def test_many_ticks_in_one_place_are_counted(player) -> None:
    player.run.summary = player.run.summary.__class__(
        player.run.start, {}, {}, {}, {}, {}, {}, tuple(Event(0.01 * n, "U1", "cuts out") for n in range(7))
    )
    player.strip.show_run(player.run)
    lines = player.strip.slider.tip_at(player.strip.slider.x_of(0.0)).split("\n")
    assert len(lines) == 5
    assert lines[-1] == "and 3 more"


def test_it_plays_in_real_time_and_pauses_at_the_end(player) -> None:
    click(player.strip.play_button)
    assert player.strip.is_playing
    assert player.playhead.t_s == 0.0
    assert player.strip.play_button.sign == "pause"
    player.pass_time(0.5)
    assert player.playhead.t_s == pytest.approx(0.5)
    player.pass_time(100.0)
    assert player.playhead.t_s == 60.0
    assert not player.strip.is_playing
    assert player.strip.play_button.sign == "play"


@pytest.mark.parametrize("factor", SPEEDS)
def test_speeds(player, factor: int) -> None:
    player.strip.speed.setCurrentIndex(SPEEDS.index(factor))
    player.strip.toggle()
    player.pass_time(0.3)
    assert player.playhead.t_s == pytest.approx(0.3 * factor)


def test_a_pause_takes_no_time(player) -> None:
    player.strip.toggle()
    player.pass_time(1.0)
    player.strip.toggle()
    player.clock.now += 1000.0
    player.strip.toggle()
    player.pass_time(1.0)
    assert player.playhead.t_s == pytest.approx(2.0)


def test_after_the_end_it_plays_from_the_start(player) -> None:
    player.playhead.set(60.0)
    player.strip.toggle()
    assert player.playhead.t_s == 0.0


def test_real_frames_come_and_end(player, qtbot) -> None:
    player.strip.toggle()
    seen: list[float] = []
    player.playhead.changed.connect(seen.append)
    player.clock.now += 0.25
    qtbot.waitUntil(lambda: bool(seen))
    assert seen[0] == pytest.approx(0.25)
    player.strip.pause()
    del seen[:]
    player.clock.now += 1.0
    qtbot.wait(80)
    assert not seen


def test_it_waits_while_the_handle_is_held(player) -> None:
    slider = player.strip.slider
    player.strip.toggle()
    QTest.mousePress(slider, Qt.MouseButton.LeftButton, pos=QPoint(round(slider.x_of(30.0)), 12))
    held = player.playhead.t_s
    player.pass_time(5.0)
    assert player.playhead.t_s == held
    QTest.mouseRelease(slider, Qt.MouseButton.LeftButton, pos=QPoint(round(slider.x_of(30.0)), 12))
    player.pass_time(1.0)
    assert player.playhead.t_s == pytest.approx(held + 1.0)


def test_from_event_to_event(player) -> None:
    strip, head = player.strip, player.playhead
    reached = []
    for _ in range(6):
        click(strip.next)
        reached.append(head.t_s)
    assert reached == [0.0, 0.05, 1.05, 20.0, 60.0, 60.0]
    click(strip.previous)
    assert head.t_s == 20.0
    assert strip.time_label.toolTip() == event_text(EVENTS[3])
    for _ in range(4):
        click(strip.previous)
    assert head.t_s == 0.0


def test_a_screen_reader_is_told_of_an_event(player, monkeypatch) -> None:
    said: list[str] = []
    monkeypatch.setattr("app.warmup.playback.announce", lambda _, text: said.append(text))
    for _ in range(3):
        player.strip.step(1)
    assert said[:2] == [after_switching_on(0.0), event_text(EVENTS[0])]
    assert said[2].split("\n") == [event_text(EVENTS[1]), event_text(EVENTS[2])]


def test_space_plays_and_escape_leaves(player) -> None:
    slider = player.strip.slider
    slider.setFocus()
    QTest.keyClick(slider, Qt.Key.Key_Space)
    assert player.strip.is_playing
    QTest.keyClick(slider, Qt.Key.Key_Space)
    assert not player.strip.is_playing
    player.strip.toggle()
    QTest.keyClick(slider, Qt.Key.Key_Escape)
    assert player.playhead.t_s is None
    assert not player.strip.is_playing


def test_leaving_by_its_button(player) -> None:
    assert not player.strip.leave_button.isEnabled()
    player.playhead.set(4.0)
    click(player.strip.leave_button)
    assert player.playhead.t_s is None


def test_hidden_or_with_another_run_it_pauses(player) -> None:
    player.strip.toggle()
    player.strip.hide()
    assert not player.strip.is_playing
    player.strip.show()
    player.strip.toggle()
    player.strip.show_run(player.run)
    assert not player.strip.is_playing


def test_its_timer_ends_with_it(qtbot) -> None:
    load_fonts()
    playhead, clock = Playhead(), Clock()
    strip = Playback(playhead, LIGHT, clock=clock)
    strip.show_run(made_up_run(small_sheet(), CATALOGUE))
    strip.toggle()
    timer = strip._timer
    strip.deleteLater()
    qtbot.waitUntil(lambda: not isValid(timer))
    clock.now += 1.0
    qtbot.wait(60)
    assert playhead.t_s == 0.0


def test_it_goes_without_a_trace(qtbot) -> None:
    """Nothing that is connected inside it keeps it alive."""
    load_fonts()
    playhead = Playhead()
    strip = weakref.ref(Playback(playhead, LIGHT))
    gc.collect()
    assert strip() is None


def test_without_a_run_nothing_can_be_done(player) -> None:
    player.strip.show_run(None)
    player.strip.toggle()
    player.strip.step(1)
    assert not player.strip.is_playing
    assert player.playhead.t_s is None
    assert not player.strip.play_button.isEnabled()
    assert not player.strip.slider.isEnabled()


def test_the_entries_of_the_menu(player) -> None:
    entries = playback_entries(lambda: player.strip)
    play, following, previous, leave = entries
    assert play.is_possible
    assert not leave.is_possible
    play.action()
    assert player.strip.is_playing
    following.action()
    assert player.playhead.t_s == 0.05
    assert not player.strip.is_playing
    previous.action()
    assert player.playhead.t_s == 0.0
    assert leave.is_possible
    leave.action()
    assert player.playhead.t_s is None


def test_the_entries_do_nothing_while_there_is_nothing_to_play(qapp) -> None:
    for entry in playback_entries(lambda: None):
        assert not entry.is_possible
        entry.action()


def test_it_can_be_seen_in_both_looks(player) -> None:
    player.playhead.set(30.0)
    light = player.strip.grab().toImage()
    player.strip.set_theme(DARK)
    assert player.strip.grab().toImage() != light
