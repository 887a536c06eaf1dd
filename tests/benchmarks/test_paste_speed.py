"""How long pasting two hundred sockets with their wires takes, the canvas shown.

The limit is a multiple of laying out the same sheet anew in the same run, so that it holds on any machine; the
milliseconds are printed. On the machine it was written on, laying anew takes 0.08 s and pasting must stay below 0.3 s.
"""

from __future__ import annotations

import time

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from app.canvas.layout import Layout
from app.theme import LIGHT
from tests.app.canvas_rig import CATALOGUE, Rig, make_rig, rows_sheet

SOCKETS = 200
MOST = 3.9  # times laying the sheet of the same sockets anew


@pytest.fixture
def rig(qtbot) -> Rig:
    rig = make_rig(qtbot, rows_sheet(SOCKETS))
    rig.view.resize(1400, 900)
    rig.view.fit()
    QApplication.processEvents()
    return rig


def quickest(job, rounds: int = 5) -> float:
    """The least of several times, as other work on the machine only ever adds."""
    taken = []
    for _ in range(rounds):
        began = time.perf_counter()
        job()
        taken.append(time.perf_counter() - began)
    return min(taken)


def test_paste_two_hundred_sockets(benchmark, rig, capsys):
    sheet = rig.sheet
    reference = quickest(lambda: Layout(sheet, CATALOGUE, LIGHT))
    rig.selection.set(sheet.part_by_id)
    rig.key(Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text()

    def take_back() -> None:
        while rig.document.undo_stack.canUndo():
            rig.document.undo_stack.undo()
        rig.view.centerOn(2000, 6000)
        QApplication.processEvents()

    def paste() -> None:
        rig.view.tools.pasting.paste((1400.0, 5600.0))
        QApplication.processEvents()

    benchmark.pedantic(paste, setup=take_back, rounds=5, warmup_rounds=1)
    assert len(rig.sheet.parts) == 2 * SOCKETS
    assert len(rig.sheet.wires) == 2 * len(sheet.wires)
    taken = benchmark.stats.stats.min
    with capsys.disabled():
        print(f"\npaste {taken * 1000:.0f} ms, laying anew {reference * 1000:.0f} ms")
    assert taken < MOST * reference
