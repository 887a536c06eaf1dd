from __future__ import annotations

import json

import msgspec
import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QDrag
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication, QTabBar, QWidget
from pytestqt.qtbot import QtBot

from app.panes.ground import Ground
from app.panes.pane import LEAST_WIDTH
from app.panes.parts_list import MIME_TYPE, PartsList, StockModel
from app.panes.side import ADD, FINDINGS, PROPERTIES, TABLES, SidePanes
from app.panes.stock import shelves
from app.theme import DARK, LIGHT, stylesheet
from core.catalogue import load_builtin
from core.checks import find_problems
from core.sheet import AnyPart, Sheet
from tests.app.panes_sample import SHEET, Desk, desk


@pytest.fixture
def column(qtbot: QtBot, qapp: QApplication) -> tuple[SidePanes, Desk]:
    made = desk()
    qapp.setStyleSheet(stylesheet(LIGHT))
    canvas = QWidget()
    canvas.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    canvas.setMinimumSize(320, 240)
    ground = Ground(canvas)
    qtbot.addWidget(ground)
    side = SidePanes(made.document, made.selection, made.viewpoint, LIGHT, ground)
    ground.resize(1280, 640)
    ground.show()
    qtbot.waitExposed(ground)
    QApplication.processEvents()
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
    column: tuple[SidePanes, Desk],
) -> None:
    side, made = column
    made.selection.set(["V1"])
    assert side.is_in_front(PROPERTIES) and not side.is_in_front(FINDINGS)
    assert side.properties.heading.text() == "Tube V1"
    made.selection.clear()
    assert side.is_in_front(FINDINGS)


def test_choosing_a_finding_stays_with_the_findings(column: tuple[SidePanes, Desk]) -> None:
    side, made = column
    made.solve()
    view = side.findings.list
    place = view.visualRect(side.findings.model.index(0, 0)).center()
    QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert made.selection.ids == {"V10"}
    assert side.is_in_front(FINDINGS)


def _title_click(side: SidePanes, key: str, number: int) -> None:
    """Click a name in a pane's title line."""
    tabs = side.panes[key].title.tabs
    QTest.mouseClick(tabs, Qt.MouseButton.LeftButton, pos=tabs.tabRect(number).center())


def test_a_pane_chosen_by_hand_stays(column: tuple[SidePanes, Desk]) -> None:
    side, made = column
    _title_click(side, FINDINGS, 1)
    made.selection.set(["V1"])
    made.selection.clear()
    assert side.is_in_front(PROPERTIES)
    assert side.properties.heading.text() == "The sheet"
    side.show_pane(ADD)
    made.selection.set(["V1"])
    assert side.is_in_front(ADD), "adding parts is not interrupted"


def test_properties_elsewhere_leave_the_findings_in_front(column: tuple[SidePanes, Desk]) -> None:
    side, made = column
    side.panes[PROPERTIES].move_to(Qt.DockWidgetArea.LeftDockWidgetArea)
    made.selection.set(["V1"])
    assert side.is_in_front(FINDINGS) and side.is_in_front(PROPERTIES)
    side.panes[PROPERTIES].close()
    made.selection.clear()
    made.selection.set(["V2"])
    assert side.is_in_front(FINDINGS) and not side.is_open(PROPERTIES), "what was closed stays closed"


def test_the_title_counts_findings(column: tuple[SidePanes, Desk], qtbot: QtBot) -> None:
    side, made = column
    tabs = side.panes[FINDINGS].title.tabs
    made.solve()
    qtbot.waitUntil(lambda: tabs.tabText(0) == "Findings 4")
    made.solve(())
    qtbot.waitUntil(lambda: tabs.tabText(0) == "Findings")


def test_tabs_work_by_keyboard(column: tuple[SidePanes, Desk]) -> None:
    side, _ = column
    first = side.panes[FINDINGS].title.tabs
    assert [first.tabText(number) for number in range(first.count())] == [
        "Findings",
        "Properties",
        "Add parts",
    ]
    first.setFocus()
    QTest.keyClick(first, Qt.Key.Key_Right)
    assert side.is_in_front(PROPERTIES)
    second = QApplication.focusWidget()
    assert second is side.panes[PROPERTIES].title.tabs
    QTest.keyClick(second, Qt.Key.Key_Right)
    assert side.is_in_front(ADD)
    side.tables.tabs.setFocus()
    QTest.keyClick(side.tables.tabs, Qt.Key.Key_Right)
    assert side.tables.stack.currentIndex() == 1


def test_leaves_the_drawing_its_room(column: tuple[SidePanes, Desk]) -> None:
    side, _ = column
    assert side.ground.room.right() <= 0.4 * 1280
    assert min(pane.width() for pane in side.panes.values() if pane.is_in_front) >= LEAST_WIDTH
    side.ground.resize(900, 600)
    QApplication.processEvents()
    assert side.ground.room.right() <= 0.4 * 900


def test_tabs_that_nobody_sees_take_no_keyboard(column: tuple[SidePanes, Desk], qtbot: QtBot) -> None:
    side, _ = column
    hidden = side.ground.findChildren(QTabBar, options=Qt.FindChildOption.FindDirectChildrenOnly)
    assert hidden and all(bar.height() == 0 for bar in hidden)
    qtbot.waitUntil(lambda: all(bar.focusPolicy() == Qt.FocusPolicy.NoFocus for bar in hidden))


def test_tables_show_their_own_tabs_in_the_title_while_they_stand_alone(
    column: tuple[SidePanes, Desk], qtbot: QtBot
) -> None:
    side, _ = column
    pane = side.panes[TABLES]
    assert side.tables.tabs.parentWidget() is pane.title and not pane.title.tabs.isVisible()
    pane.join(side.panes[FINDINGS])
    qtbot.waitUntil(pane.title.tabs.isVisible)
    assert side.tables.tabs.parentWidget() is side.tables and side.tables.tabs.isVisible()
    assert pane.title.tabs.count() == 4
    pane.move_to(Qt.DockWidgetArea.BottomDockWidgetArea)
    qtbot.waitUntil(lambda: side.tables.tabs.parentWidget() is pane.title)
    assert side.tables.tabs.isVisible()


def test_opening_another_sheet_shows_it(column: tuple[SidePanes, Desk]) -> None:
    side, made = column
    made.solve()
    made.document.open(Sheet(title="Other", parts=SHEET.parts[:2]))
    made.selection.clear()
    assert side.findings.model.rowCount() == 0
    assert side.tables.views[0].proxy.rowCount() == 1


def test_theme_can_change(column: tuple[SidePanes, Desk]) -> None:
    side, _ = column
    before = side.ground.grab().toImage()
    side.set_theme(DARK)
    assert side.ground.grab().toImage() != before


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
