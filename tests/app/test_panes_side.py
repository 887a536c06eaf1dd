from __future__ import annotations

import json

import msgspec
import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QDrag
from PySide6.QtTest import QAbstractItemModelTester, QTest
from pytestqt.qtbot import QtBot

from app.panes.parts_list import MIME_TYPE, PartsList, StockModel
from app.panes.side import ADD, FINDINGS, PROPERTIES, SideColumn
from app.panes.stock import shelves
from app.theme import DARK, LIGHT
from core.catalogue import load_builtin
from core.checks import find_problems
from core.sheet import AnyPart, Sheet
from tests.app.panes_sample import SHEET, Desk, desk


@pytest.fixture
def column(qtbot: QtBot) -> tuple[SideColumn, Desk]:
    made = desk()
    side = SideColumn(made.document, made.selection, made.viewpoint, LIGHT)
    qtbot.addWidget(side)
    side.resize(400, 660)
    side.show()
    qtbot.waitExposed(side)
    return side, made


@pytest.fixture
def stock(qtbot: QtBot) -> PartsList:
    pane = PartsList(load_builtin(), LIGHT)
    qtbot.addWidget(pane)
    pane.resize(400, 400)
    pane.show()
    qtbot.waitExposed(pane)
    return pane


def _found(pane: PartsList) -> list[str]:
    proxy = pane.proxy
    return [
        proxy.index(row, 0, proxy.index(shelf, 0)).data()
        for shelf in range(proxy.rowCount())
        for row in range(proxy.rowCount(proxy.index(shelf, 0)))
    ]


def test_every_offer_is_a_part_that_can_be_added() -> None:
    names = set()
    for shelf in shelves(load_builtin()):
        for offer in shelf.offers:
            part = msgspec.convert({**offer.part, "id": "P1"}, AnyPart)
            assert find_problems(Sheet(parts=(part,))) == (), offer.name
            names.add(part.kind)
    assert len(names) == 18, "every kind is on offer"


def test_model_keeps_the_rules_of_models() -> None:
    model = StockModel(load_builtin())
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    assert tester.model() is model
    assert model.rowCount() == 7


def test_an_offer_is_dragged_as_json(stock: PartsList) -> None:
    QTest.keyClicks(stock.filter, "el84")
    shelf = stock.proxy.index(0, 0)
    offer = stock.proxy.index(0, 0, shelf)
    assert stock.proxy.flags(offer) & Qt.ItemFlag.ItemIsDragEnabled
    assert not stock.proxy.flags(shelf) & Qt.ItemFlag.ItemIsDragEnabled
    assert stock.proxy.mimeTypes() == [MIME_TYPE]
    data = stock.proxy.mimeData([offer])
    assert json.loads(bytes(data.data(MIME_TYPE).data())) == {"kind": "tube", "type": "EL84"}


def test_the_filter_finds_other_names_and_words(stock: PartsList) -> None:
    assert "ECC83" not in _found(stock), "other names are offered only to those who look for them"
    QTest.keyClicks(stock.filter, "ecc83")
    assert _found(stock) == ["ECC83", "ECC832"]
    stock.filter.clear()
    QTest.keyClicks(stock.filter, "winding tap")
    assert _found(stock) == ["Winding, centre tap"]
    stock.filter.clear()
    QTest.keyClicks(stock.filter, "no such thing")
    assert stock.proxy.rowCount() == 0


def test_return_and_double_click_add(stock: PartsList, qtbot: QtBot) -> None:
    QTest.keyClicks(stock.filter, "el84")
    with qtbot.waitSignal(stock.add_requested) as asked:
        QTest.keyClick(stock.filter, Qt.Key.Key_Return)
    assert asked.args == [{"kind": "tube", "type": "EL84"}]
    offer = stock.proxy.index(0, 0, stock.proxy.index(0, 0))
    with qtbot.waitSignal(stock.add_requested) as asked:
        _double_click(stock, offer)
    assert asked.args == [{"kind": "tube", "type": "EL84"}]
    stock.view.setFocus()
    stock.view.setCurrentIndex(offer)
    with qtbot.waitSignal(stock.add_requested) as asked:
        QTest.keyClick(stock.view, Qt.Key.Key_Return)
    assert asked.args == [{"kind": "tube", "type": "EL84"}]


def _double_click(stock: PartsList, index: QModelIndex) -> None:
    place = stock.view.visualRect(index).center()
    QTest.mouseClick(stock.view.viewport(), Qt.MouseButton.LeftButton, pos=place)
    QTest.mouseDClick(stock.view.viewport(), Qt.MouseButton.LeftButton, pos=place)


def test_return_on_a_shelf_opens_it(stock: PartsList, qtbot: QtBot) -> None:
    shelf = stock.proxy.index(3, 0)
    assert not stock.view.isExpanded(shelf)
    stock.view.setCurrentIndex(shelf)
    with qtbot.assertNotEmitted(stock.add_requested):
        QTest.keyClick(stock.view, Qt.Key.Key_Return)
    assert stock.view.isExpanded(shelf)


def test_selecting_brings_the_properties_and_nothing_brings_the_findings(
    column: tuple[SideColumn, Desk],
) -> None:
    side, made = column
    made.selection.set(["V1"])
    assert side.stack.currentIndex() == PROPERTIES
    assert side.properties.heading.text() == "Tube V1"
    made.selection.clear()
    assert side.stack.currentIndex() == FINDINGS


def test_choosing_a_finding_stays_with_the_findings(column: tuple[SideColumn, Desk]) -> None:
    side, made = column
    made.solve()
    view = side.findings.list
    place = view.visualRect(side.findings.model.index(0, 0)).center()
    QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert made.selection.ids == {"V10"}
    assert side.stack.currentIndex() == FINDINGS


def test_a_pane_chosen_by_hand_stays(column: tuple[SideColumn, Desk]) -> None:
    side, made = column
    place = side.tabs.tabRect(PROPERTIES).center()
    QTest.mouseClick(side.tabs, Qt.MouseButton.LeftButton, pos=place)
    made.selection.set(["V1"])
    made.selection.clear()
    assert side.stack.currentIndex() == PROPERTIES
    assert side.properties.heading.text() == "The sheet"
    side.show_pane(ADD)
    made.selection.set(["V1"])
    assert side.stack.currentIndex() == ADD, "adding parts is not interrupted"


def test_the_tab_counts_findings(column: tuple[SideColumn, Desk]) -> None:
    side, made = column
    assert side.tabs.tabText(FINDINGS) == "Findings"
    made.solve()
    assert side.tabs.tabText(FINDINGS) == "Findings 4"
    made.solve(())
    assert side.tabs.tabText(FINDINGS) == "Findings"


def test_tabs_work_by_keyboard(column: tuple[SideColumn, Desk]) -> None:
    side, _ = column
    side.tabs.setFocus()
    QTest.keyClick(side.tabs, Qt.Key.Key_Right)
    assert side.stack.currentIndex() == PROPERTIES
    side.tables.tabs.setFocus()
    QTest.keyClick(side.tables.tabs, Qt.Key.Key_Right)
    assert side.tables.stack.currentIndex() == 1


def test_leaves_the_drawing_its_room(column: tuple[SideColumn, Desk]) -> None:
    side, _ = column
    assert side.sizeHint().width() <= 0.4 * 1280
    assert side.minimumSizeHint().width() <= 400
    assert side.width() == 400


def test_opening_another_sheet_shows_it(column: tuple[SideColumn, Desk]) -> None:
    side, made = column
    made.solve()
    made.document.open(Sheet(title="Other", parts=SHEET.parts[:2]))
    made.selection.clear()
    assert side.findings.model.rowCount() == 0
    assert side.tables.views[0].proxy.rowCount() == 1


def test_theme_can_change(column: tuple[SideColumn, Desk]) -> None:
    side, _ = column
    before = side.grab().toImage()
    side.set_theme(DARK)
    assert side.grab().toImage() != before


def test_a_dragged_offer_carries_no_picture_of_its_row(
    stock: PartsList, monkeypatch: pytest.MonkeyPatch
) -> None:
    started: list[tuple[bytes, int]] = []

    def run(drag: QDrag, *_actions: object) -> Qt.DropAction:
        started.append((bytes(drag.mimeData().data(MIME_TYPE).data()), drag.pixmap().width()))
        assert drag.pixmap().toImage().pixelColor(0, 0).alpha() == 0
        return Qt.DropAction.IgnoreAction

    monkeypatch.setattr(QDrag, "exec", run)
    shelf = stock.proxy.index(0, 0)
    stock.view.setCurrentIndex(stock.proxy.index(0, 0, shelf))
    stock.view.startDrag(Qt.DropAction.CopyAction)
    stock.view.setCurrentIndex(shelf)
    stock.view.startDrag(Qt.DropAction.CopyAction)
    assert [(json.loads(data)["kind"], width) for data, width in started] == [("winding", 1)]
