"""How long the canvas takes with a thousand sockets: dragging one, panning, seeing all, finding one route.

Limits are in seconds for the lower quartile, as other work on the machine only ever adds: a drag must keep up with a
60 Hz screen, panning with 30 Hz.
"""

from __future__ import annotations

import itertools

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication

from tests.app.canvas_rig import Rig, make_rig, rows_sheet

DRAG_LIMIT, PAN_LIMIT, ROUTE_LIMIT = 0.016, 0.033, 0.010


@pytest.fixture
def crowd(qtbot) -> Rig:
    rig = make_rig(qtbot, rows_sheet(1000))
    rig.view.resize(1400, 900)
    rig.view.centerOn(3000, 3000)
    QApplication.processEvents()
    return rig


def typical(benchmark) -> float:
    return benchmark.stats.stats.q1


def test_drag_one_of_a_thousand_sockets(benchmark, crowd):
    part_id = crowd.scene.part_at(3000, 3000) or "V480"
    x, y = crowd.scene.layout_.places[part_id].part.at
    crowd.view.centerOn(x, y)
    crowd.press(x, y + 12)
    crowd.move(x + 10, y + 12)
    steps = itertools.cycle(range(-60, 61, 20))

    def drag() -> None:
        step = next(steps)
        crowd.move(x + step, y + 12 + step)
        QApplication.processEvents()

    benchmark.pedantic(drag, rounds=60, warmup_rounds=5)
    assert crowd.view.is_busy
    assert typical(benchmark) < DRAG_LIMIT


def test_pan_over_a_thousand_sockets(benchmark, crowd):
    steps = itertools.cycle((QPoint(37, 11), QPoint(-37, -11), QPoint(-90, 60), QPoint(90, -60)))

    def pan() -> None:
        crowd.view.scroll_by(next(steps))
        QApplication.processEvents()

    benchmark.pedantic(pan, rounds=60, warmup_rounds=5)
    assert typical(benchmark) < PAN_LIMIT


def test_pan_with_the_whole_sheet_in_view(benchmark, crowd):
    crowd.view.fit()
    QApplication.processEvents()
    steps = itertools.cycle((QPoint(5, 3), QPoint(-5, -3)))

    def pan() -> None:
        crowd.view.scroll_by(next(steps))
        QApplication.processEvents()

    benchmark.pedantic(pan, rounds=30, warmup_rounds=3)
    assert typical(benchmark) < PAN_LIMIT


def test_one_route_among_two_hundred_sockets(benchmark, qtbot):
    rig = make_rig(qtbot, rows_sheet(200))
    layout = rig.scene.layout_

    def find() -> None:
        layout.board.find(layout.port("V3.4"), layout.port("V34.5"))

    benchmark(find)
    assert typical(benchmark) < ROUTE_LIMIT


def test_open_a_thousand_sockets(benchmark, crowd):
    benchmark.pedantic(crowd.scene.rebuild, rounds=3, warmup_rounds=1)
    assert len(crowd.scene.part_items) == 1000
