"""An unexpected exception: logged, work kept, one banner."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QTimer

from app.crash import Watch
from core import edits
from core.sheet import Tube


def break_something() -> None:
    raise ZeroDivisionError("a fault made for the test")


def test_a_fault_in_a_slot_is_logged_and_told_once(qtbot, tmp_path: Path) -> None:
    watch = Watch(tmp_path)
    told: list[str] = []
    watch.happened.connect(told.append)
    for _ in range(5):
        try:
            break_something()
        except ZeroDivisionError:
            watch.take(*sys.exc_info())
    qtbot.waitUntil(lambda: bool(told))
    qtbot.wait(20)
    assert len(told) == 1
    assert "a fault made for the test" in told[0]
    assert (tmp_path / "heaterloom.log").read_text().count("ZeroDivisionError: ") == 5


def test_an_unwritable_folder_only_loses_the_log(qtbot, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way")
    watch = Watch(tmp_path / "file")
    with qtbot.waitSignal(watch.happened) as told:
        try:
            break_something()
        except ZeroDivisionError:
            watch.take(*sys.exc_info())
    assert "Details are in" not in told.args[0]


def test_the_window_shows_one_banner_and_keeps_the_work(qtbot, open_window, monkeypatch) -> None:
    window = open_window()
    window.document.apply("Add V1", edits.add_part(Tube(id="V1", type="ECC83")))
    with qtbot.captureExceptions() as caught:
        QTimer.singleShot(0, break_something)
        qtbot.waitUntil(lambda: bool(caught))
    watch = Watch(Path(window.settings._store.fileName()).parent / "log", window)
    watch.happened.connect(window.show_trouble)
    watch.take(*caught[0])
    qtbot.waitUntil(window.banner.isVisible)
    assert "a fault made for the test" in window.banner.label.text()
    assert [part.id for part in window.document.sheet.parts] == ["V1"]
    window.banner.close_button.click()
    assert not window.banner.isVisible()
