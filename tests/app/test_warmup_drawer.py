"""The warm-up drawer in its window, with runs that are truly solved and real events."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.crash import Watch
from app.settings import Settings
from app.sources import open_sheet
from app.start import make_window
from app.window import MainWindow
from core import edits


@pytest.fixture
def window(
    qtbot: QtBot, qapp: QApplication, tmp_path: Path, request: pytest.FixtureRequest
) -> Iterator[MainWindow]:
    settings = Settings(tmp_path / "settings.ini")
    made = make_window(
        open_sheet(getattr(request, "param", "cold-start-relay")), settings, Watch(tmp_path / "state")
    )
    made.session.may_leave = lambda: True  # nothing asks while tests close it
    qtbot.addWidget(made)
    made.resize(1280, 720)
    made.show()
    made.complete()
    yield made
    if made._drawer is not None:
        made.drawer.close_up()
        made.drawer.runner.finish()


def opened(qtbot: QtBot, window: MainWindow) -> None:
    QTest.keyClick(window, Qt.Key.Key_F5)
    qtbot.waitUntil(lambda: window.document.switched is not None, timeout=20_000)


def test_a_key_opens_it_and_says_whether_it_starts(qtbot: QtBot, window: MainWindow) -> None:
    opened(qtbot, window)
    drawer = window.drawer
    assert drawer.isVisible()
    assert drawer.headline.text().startswith("It starts; the last tube is ready after")
    assert [curve.name for curve in drawer.plot._chart.curves] == ["U1"]
    QTest.keyClick(window, Qt.Key.Key_F5)
    assert not drawer.isVisible()


@pytest.mark.parametrize("window", ["cold-start"], indirect=True)
def test_what_does_not_start_is_found_and_soft_starts_are_offered(qtbot: QtBot, window: MainWindow) -> None:
    opened(qtbot, window)
    drawer = window.drawer
    assert "does not start" in drawer.headline.text()
    assert [card.title for card in window.side.findings.model.cards] == ["U1 does not start"]
    assert "1 fault" in window.strip.summary.text()
    qtbot.waitUntil(lambda: bool(drawer.runner.variants), timeout=30_000)
    mends = window.side.findings.model.cards[0].mends
    assert mends
    QTest.mouseClick(drawer.compare, Qt.MouseButton.LeftButton)
    assert len(drawer.plot._chart.curves) == 1 + len(drawer.runner.variants)
    # what is taken lands on the sheet in one step, and the sheet is switched on again by itself
    fitting = next(one for one in drawer.runner.variants if one.variant.fits)
    before = window.document.sheet
    button = next(button for button, one in drawer.soft_starts._offers.items() if one is fitting)
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    assert window.document.undo_stack.count() == 1
    qtbot.waitUntil(lambda: window.document.switched is not None, timeout=20_000)
    assert drawer.headline.text().startswith("It starts")
    window.document.undo_stack.undo()
    assert window.document.sheet == before


def test_an_edit_takes_the_answer_away_and_brings_another(qtbot: QtBot, window: MainWindow) -> None:
    opened(qtbot, window)
    window.document.apply("Set", edits.set_part("U1", limit_a=2.0))
    assert window.document.switched is None
    qtbot.waitUntil(lambda: window.document.switched is not None, timeout=20_000)
    assert "does not start" in window.drawer.headline.text()


def test_calling_off_leaves_no_answer(qtbot: QtBot, window: MainWindow) -> None:
    QTest.keyClick(window, Qt.Key.Key_F5)
    assert window.drawer.runner.is_running
    QTest.mouseClick(window.drawer.cancel, Qt.MouseButton.LeftButton)
    assert not window.drawer.runner.is_running
    QTest.qWait(300)
    assert window.document.switched is None


def test_every_quantity_can_be_shown(qtbot: QtBot, window: MainWindow) -> None:
    opened(qtbot, window)
    drawer = window.drawer
    counts = {}
    for row in range(drawer.quantity.count()):
        drawer.quantity.setCurrentIndex(row)
        drawer.quantity.activated.emit(row)
        counts[drawer.quantity.currentData()] = drawer.legend.count()
    assert counts == {
        "amps": 1, "volts": 1, "heaters": 8, "cathodes": 8, "hot": 8, "thermistors": 1, "ohms": 1, "relays": 1,
    }  # fmt: skip


def test_the_legend_and_the_drawing_share_their_selection(qtbot: QtBot, window: MainWindow) -> None:
    opened(qtbot, window)
    drawer = window.drawer
    drawer.quantity.setCurrentIndex(2)
    drawer.quantity.activated.emit(2)
    window.selection.set({"V3"})
    assert [item.text().split()[0] for item in drawer.legend.selectedItems()] == ["V3"]
    rect = drawer.legend.visualItemRect(drawer.legend.item(5))
    QTest.mouseClick(drawer.legend.viewport(), Qt.MouseButton.LeftButton, pos=rect.center())
    assert window.selection.ids == {drawer.legend.item(5).text().split()[0]}


def test_a_press_on_the_plot_shows_that_instant(qtbot: QtBot, window: MainWindow) -> None:
    opened(qtbot, window)
    drawer = window.drawer
    middle = QPoint(drawer.plot.width() // 2, drawer.plot.height() // 2)
    QTest.mouseClick(drawer.plot.viewport(), Qt.MouseButton.LeftButton, pos=middle)
    assert drawer.playhead.t_s is not None
    assert 20 < drawer.playhead.t_s < 40
    assert window.viewpoint.instant is not None
    assert "A" in drawer.legend.item(0).text()
    was = drawer.playhead.t_s
    QTest.keyClick(drawer.plot, Qt.Key.Key_Right)
    assert drawer.playhead.t_s == pytest.approx(was + 0.6)
    QTest.keyClick(drawer.plot, Qt.Key.Key_Escape)
    assert drawer.playhead.t_s is None
    assert window.viewpoint.instant is None


def test_both_themes(qtbot: QtBot, window: MainWindow) -> None:
    opened(qtbot, window)
    for name in ("dark", "light"):
        window.set_theme_name(name)
        assert window.drawer.plot.backgroundBrush().color() == window.theme.colour("paper")
