from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QAbstractItemModelTester, QTest
from pytestqt.qtbot import QtBot

from app.panes.card_delegate import CardDelegate, _wrapped
from app.panes.finding_cards import cards, conditions_text, counts_text
from app.panes.findings_model import CARD_ROLE, FindingsModel
from app.panes.findings_pane import FindingsPane
from app.theme import DARK, LIGHT
from core.edits import set_sheet
from core.results import Assessment, Finding, sentence
from core.sheet import Sheet
from tests.app.panes_sample import FINDINGS, Desk, desk, finding


@pytest.fixture
def bench(qtbot: QtBot) -> tuple[FindingsPane, Desk]:
    made = desk()
    pane = FindingsPane(made.document, made.selection, LIGHT)
    qtbot.addWidget(pane)
    pane.resize(400, 500)
    pane.show()
    qtbot.waitExposed(pane)
    return pane, made


def _click(pane: FindingsPane, row: int) -> None:
    index = pane.model.index(row, 0)
    pane.list.scrollTo(index)
    middle = pane.list.visualRect(index).center()
    QTest.mouseClick(pane.list.viewport(), Qt.MouseButton.LeftButton, pos=middle)


def test_one_card_for_one_rule_at_one_place() -> None:
    made = cards(FINDINGS)
    assert [(card.rule, card.severity) for card in made] == [
        ("half-heated", "fault"),
        ("heater-voltage", "fault"),
        ("supply-margin", "caution"),
        ("rating-unverified", "note"),
    ]
    voltage = made[1]
    assert voltage.conditions == ("nominal", "high mains")
    assert voltage.title == "heater-voltage 7.1", "the worst value is the one shown"
    assert voltage.footer == "at nominal and high mains · a book"


def test_over_and_under_stay_two_cards() -> None:
    both = (
        finding("heater-voltage", "fault", ("V1",), "high mains", 7.0, 6.93),
        finding("heater-voltage", "fault", ("V1",), "low mains", 5.5, 5.67),
    )
    assert len(cards(both)) == 2


def test_worst_severity_wins_over_larger_excess() -> None:
    both = (
        finding("supply-margin", "caution", ("T1",), "nominal", 99.0, 80.0),
        finding("supply-margin", "fault", ("T1",), "high mains", 81.0, 80.0),
    )
    assert [card.severity for card in cards(both)] == ["fault"]


@pytest.mark.parametrize(
    ("names", "text"),
    [
        ((), ""),
        (("nominal",), "at nominal mains"),
        (("high mains", "nominal"), "at nominal and high mains"),
        (("nominal", "high mains", "low mains"), "at low, nominal and high mains"),
        (("cold", "low mains"), "at low mains and switch-on"),
    ],
)
def test_conditions_in_words(names: tuple[str, ...], text: str) -> None:
    assert conditions_text(names) == text


def test_counts_in_words() -> None:
    assert counts_text(FINDINGS) == "2 faults · 1 caution · 1 note"
    assert counts_text(()) == "no findings"


def test_model_keeps_the_rules_of_models() -> None:
    model = FindingsModel()
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    model.set_cards(cards(FINDINGS))
    model.set_cards(cards(FINDINGS, "high mains"))
    assert model.rowCount() == 2
    spoken = model.index(0, 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert spoken == "Fault: heater-voltage 6.96. It is so at V1, V2. Mend V1."
    assert tester.model() is model


def test_says_whether_it_is_solved(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    assert pane.list.empty_text == "Not solved for this drawing yet"
    made.solve(())
    assert pane.list.empty_text == "Nothing to report: every heater is within its tolerance."
    made.solve()
    assert pane.model.rowCount() == 4
    made.document.apply("Rename sheet", set_sheet(title="Another"))
    assert pane.model.rowCount() == 0, "findings of an older drawing are not shown"
    assert pane.list.empty_text == "Not solved for this drawing yet"


def test_filter_by_condition(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    made.solve()
    offered = [pane.filter.itemText(number) for number in range(pane.filter.count())]
    assert offered == ["all conditions", "nominal", "low mains", "high mains"]
    pane.filter.setFocus()
    QTest.keyClicks(pane.filter, "low")
    assert pane.condition == "low mains"
    shown = [pane.model.index(row, 0).data(CARD_ROLE).rule for row in range(pane.model.rowCount())]
    assert shown == ["half-heated", "rating-unverified"]
    made.document.take_assessment(made.document.assessment)
    assert pane.condition == "low mains", "new answers do not move the filter"


def test_a_click_selects_and_reveals(bench: tuple[FindingsPane, Desk], qtbot: QtBot) -> None:
    pane, made = bench
    made.solve()
    with qtbot.waitSignal(made.selection.reveal) as revealed:
        _click(pane, 1)
    assert made.selection.ids == {"V1", "V2"}
    assert revealed.args == [frozenset({"V1", "V2"})]


def test_keys_choose_too(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    made.solve()
    pane.list.setFocus()
    pane.list.setCurrentIndex(pane.model.index(0, 0))
    QTest.keyClick(pane.list, Qt.Key.Key_Down)
    assert made.selection.ids == {"V1", "V2"}
    QTest.keyClick(pane.list, Qt.Key.Key_Down)
    assert made.selection.ids == {"T1"}
    made.selection.clear()
    QTest.keyClick(pane.list, Qt.Key.Key_Return)
    assert made.selection.ids == {"T1"}


def test_parts_that_are_gone_are_not_selected(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    made.solve((finding("open-end", "caution", ("V1", "gone")),))
    _click(pane, 0)
    assert made.selection.ids == {"V1"}


def test_long_text_wraps_and_is_never_cut(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    long = Finding(
        "x", "fault", ("V1",), sentence("word " * 40), sentence("m" * 300), sentence("mend " * 30), None
    )
    made.solve((long,))
    narrow = _height(pane, 300)
    wide = _height(pane, 700)
    assert narrow > wide > 100


def test_a_figure_stays_with_its_unit(qapp) -> None:
    text = "word 6.30\u2009V " * 20
    for width in range(200, 400, 7):
        layout, _ = _wrapped(text, LIGHT.font(12), width)
        written = layout.text()
        for number in range(layout.lineCount()):
            assert not written[layout.lineAt(number).textStart() :].startswith("V")
            assert layout.lineAt(number).naturalTextWidth() <= width


def _height(pane: FindingsPane, width: int) -> int:
    pane.resize(width, 500)
    pane.list.doItemsLayout()
    rect = pane.list.visualRect(pane.model.index(0, 0))
    assert rect.width() <= pane.list.viewport().width()
    return rect.height()


def test_markup_in_ids_is_shown_as_it_is(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    made.solve((finding("<b>rule</b>", "note", ("<img src=x>",)),))
    card = pane.model.index(0, 0).data(CARD_ROLE)
    assert card.title == "<b>rule</b> None"
    assert "<img src=x>" in card.says


def test_cards_differ_in_shape_not_only_in_colour(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    made.solve()
    marks = []
    for row in (0, 2, 3):
        index = pane.model.index(row, 0)
        pane.list.scrollTo(index)
        corner = pane.list.visualRect(index).topLeft()
        image = pane.list.viewport().grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
        ratio = image.devicePixelRatio()
        area = image.copy(int((corner.x() + 10) * ratio), int((corner.y() + 10) * ratio), 16, 18)
        ground = area.pixelColor(0, 0).lightness()
        marks.append(
            [[abs(area.pixelColor(x, y).lightness() - ground) > 60 for x in range(16)] for y in range(18)]
        )
    filled = [sum(map(sum, mark)) for mark in marks]
    assert all(count > 8 for count in filled)
    assert marks[0] != marks[1] != marks[2]
    centres = [mark[9][8] for mark in marks]
    assert centres == [True, False, False], "only the fault is filled"


def test_theme_can_change(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    made.solve()
    light = pane.grab().toImage().pixelColor(QPoint(200, 100)).lightness()
    pane.set_theme(DARK)
    dark = pane.grab().toImage().pixelColor(QPoint(200, 100)).lightness()
    assert light > 150 > 80 > dark
    assert isinstance(pane.list.itemDelegate(), CardDelegate)


def test_an_empty_sheet_says_how_to_begin(bench: tuple[FindingsPane, Desk]) -> None:
    pane, made = bench
    made.document.open(Sheet())
    made.document.take_assessment(Assessment(made.document.sheet, {}, (), ()))
    assert pane.list.empty_text == "The sheet is empty. Type a part into the add field."
    assert pane.summary.text() == ""
