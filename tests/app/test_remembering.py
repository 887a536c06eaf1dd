"""What is there again in the next session: gauge, columns, theme; and what broken settings do, nothing."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas.operations import Gauge
from app.panes.own_columns import restore_columns
from app.remembering import gauge_text, recalled_gauge
from app.settings import Settings
from core.samples import sample_bytes, sample_names
from core.storage import load

FIRST = load(sample_bytes(sample_names()[0]))
LEFT = Qt.MouseButton.LeftButton


@pytest.mark.parametrize("gauge", [Gauge(18), Gauge(0), Gauge(None, 0.5), Gauge(None, 2.5)])
def test_the_last_gauge_is_there_again(open_window, settings: Settings, gauge: Gauge) -> None:
    window = open_window(FIRST)
    window.view.editor.gauge = gauge
    window.close()
    assert recalled_gauge(settings) == gauge
    assert open_window(FIRST).view.editor.gauge == gauge


@pytest.mark.parametrize("text", ["", "x", "20", "-3 AWG", "99 AWG", "0 mm\u00b2", "-1 mm\u00b2", "7 V"])
def test_a_gauge_that_there_is_not_is_forgotten(open_window, settings: Settings, text: str) -> None:
    settings.keep_text("gauge", text)
    assert recalled_gauge(settings) is None
    assert open_window(FIRST).view.editor.gauge == Gauge()


def test_gauges_read_as_they_are_written() -> None:
    assert gauge_text(Gauge(18)) == "18 AWG" and gauge_text(Gauge(None, 0.75)) == "0.75 mm\u00b2"


def draw_border(view, column: int, by: int) -> None:
    """Drag the border at the right of a column's heading."""
    head = view.horizontalHeader()
    start = QPoint(head.sectionViewportPosition(column) + head.sectionSize(column) - 1, head.height() // 2)
    QTest.mousePress(head.viewport(), LEFT, pos=start)
    QTest.mouseMove(head.viewport(), start + QPoint(by // 2, 0))
    QTest.mouseMove(head.viewport(), start + QPoint(by, 0))
    QTest.mouseRelease(head.viewport(), LEFT, pos=start + QPoint(by, 0))


def test_widths_and_order_of_columns_are_there_again(open_window) -> None:
    window = open_window(FIRST)
    QApplication.processEvents()
    view = window.side.tables.views[0]
    before = view.horizontalHeader().sectionSize(2)
    draw_border(view, 2, 30)
    assert view.own_widths == {2: before + 30}
    head = view.horizontalHeader()
    QTest.mouseClick(
        head.viewport(), LEFT, pos=QPoint(head.sectionViewportPosition(4) + 10, head.height() // 2)
    )
    order = [view.proxy.index(row, 1).data() for row in range(view.proxy.rowCount())]
    sorting = head.sortIndicatorSection(), head.sortIndicatorOrder()
    assert sorting[0] == 4
    window.resize(1000, 700)
    QApplication.processEvents()
    assert head.sectionSize(2) == before + 30, "a width that was drawn stays"
    window.close()
    again = open_window(FIRST).side.tables.views[0]
    assert again.horizontalHeader().sectionSize(2) == before + 30
    assert (
        again.horizontalHeader().sortIndicatorSection(),
        again.horizontalHeader().sortIndicatorOrder(),
    ) == sorting
    assert [again.proxy.index(row, 1).data() for row in range(again.proxy.rowCount())] == order
    again._forget_width(2)
    assert again.own_widths == {} and again.horizontalHeader().sectionSize(2) < before + 30


@pytest.mark.parametrize(
    "text",
    [
        "{", "[]", '{"heaters": 3}', '{"heaters": {"widths": {"2": 99999}}}', '{"heaters": {"widths": {"2": -5}}}',
        '{"heaters": {"sorted_by": "x"}}', '{"heaters": {"sorted_by": 100000}}', '{"nothing": {}}',
        '{"heaters": {"widths": {"80": 50}, "sorted_by": 77}}',
    ],
)  # fmt: skip
def test_broken_columns_are_forgotten(open_window, text: str) -> None:
    window = open_window(FIRST)
    views = window.side.tables.views_by_name
    widths = [views["heaters"].columnWidth(column) for column in range(5)]
    restore_columns(views, text)
    assert [views["heaters"].columnWidth(column) for column in range(5)] == widths
    assert views["heaters"].own_widths == {}
    assert views["heaters"].horizontalHeader().sortIndicatorSection() == -1
