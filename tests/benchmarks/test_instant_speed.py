"""How long it takes from a move of the time slider to the instant on the screen.

That is the look into the run, the figures on drawing, table and strip, and the painting. On the samples it must fit
into a frame of a 60 Hz screen; with 200 sockets into one of 30 Hz, as many as are played in a second. Each is also
held against the bare painting of the same window in the same run.
"""

from __future__ import annotations

import itertools
import time
from dataclasses import dataclass

import numpy as np
import pytest
from PySide6.QtWidgets import QApplication

from app.crash import Watch
from app.settings import Settings
from app.sources import Found, open_sheet
from app.start import make_window
from app.warmup.instants import Instants
from app.warmup.playback import Playback
from app.warmup.playhead import Playhead
from app.window import MainWindow
from core.samples import sample_names
from core.sheet import Sheet
from core.warmup import Start, warm_up
from tests.benchmarks.test_preview_speed import quartile, racks

FRAME, LARGE_FRAME = 0.016, 0.033
RATIO = 3.0


@dataclass
class Watched:
    """A window of the usual size on a sheet, with a run of it and the time slider at its foot."""

    window: MainWindow
    playhead: Playhead
    strip: Playback

    def repaint(self) -> None:
        """Paint all that an instant alters, and nothing else."""
        window = self.window
        tables = window.side.tables
        table = tables.views[tables.tabs.currentIndex()].viewport()
        for widget in (window.view.viewport(), table, window.strip, self.strip):
            widget.update()
        QApplication.processEvents()


def watched(qtbot, tmp_path, sheet: Sheet) -> Watched:
    window = make_window(Found(sheet, None), Settings(tmp_path / "s.ini"), Watch(tmp_path / "state"))
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.show()
    window.complete()
    document, playhead = window.document, Playhead(window)
    sheet = document.sheet
    run = warm_up(sheet, document.catalogue, Start(sheet.mains.nominal_v))
    instants = Instants(document, window.viewpoint, playhead, window)
    instants.show_run(run)
    strip = Playback(playhead, window.theme, window)
    strip.show_run(run)
    body = window.centralWidget()
    assert body is not None
    body.layout().addWidget(strip)
    while document.assessment is None:
        QApplication.processEvents()
    window.view.fit()
    QApplication.processEvents()
    return Watched(window, playhead, strip)


def measured(seen: Watched) -> tuple[float, float]:
    """Seconds for a move of the slider up to its paint, and for the bare painting."""
    # every instant is another one, so that no figure on the screen stays
    times = itertools.cycle(np.linspace(0.0, 30.0, 977).tolist())

    def move() -> None:
        seen.playhead.set(next(times))
        QApplication.processEvents()

    for work in (move, seen.repaint):
        work()
    found = quartile(move), quartile(seen.repaint)
    assert seen.window.viewpoint.instant is not None
    return found


def judged(benchmark, name: str, found: tuple[float, float], limit: float) -> None:
    whole, paint = found
    benchmark.extra_info.update(whole_s=whole, paint_s=paint, ratio=whole / paint)
    benchmark.pedantic(lambda: None, rounds=1)
    print(
        f"\n{name}: instant {whole * 1000:.1f} ms, bare paint {paint * 1000:.1f} ms, ratio {whole / paint:.2f}"
    )
    assert whole / paint < RATIO
    assert whole < limit


@pytest.mark.parametrize("name", sample_names())
def test_a_sample(benchmark, qtbot, tmp_path, name: str) -> None:
    seen = watched(qtbot, tmp_path, open_sheet(name).sheet)
    judged(benchmark, name, measured(seen), FRAME)


@pytest.mark.parametrize("zoom", ["whole", "close"])
def test_two_hundred_sockets(benchmark, qtbot, tmp_path, zoom: str) -> None:
    seen = watched(qtbot, tmp_path, racks(10, 20))
    if zoom == "close":
        seen.window.view.zoom_reset()
        seen.window.view.centerOn(300.0, 150.0)
    judged(benchmark, f"200 sockets, {zoom}", measured(seen), LARGE_FRAME)


def test_a_second_of_playing_on_two_hundred_sockets(benchmark, qtbot, tmp_path) -> None:
    """However long a frame takes, playing keeps real time: it leaves frames out rather than falling behind."""
    seen = watched(qtbot, tmp_path, racks(10, 20))
    shown: list[float] = []
    seen.playhead.changed.connect(shown.append)

    def play() -> None:
        seen.playhead.set(0.0)
        start = time.monotonic()
        seen.strip.toggle()
        qtbot.waitUntil(lambda: time.monotonic() - start >= 1.0)
        seen.strip.pause()
        assert seen.playhead.t_s == pytest.approx(time.monotonic() - start, abs=0.5)

    benchmark.pedantic(play, rounds=1)
    frames = len(shown)
    print(f"\n200 sockets, playing: {frames} frames a second")
    assert 1 < frames <= 31
