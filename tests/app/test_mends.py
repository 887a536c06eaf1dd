"""Mends on the cards of findings: seen, hovered, chosen by keys, done, undone; and those of a part's menu."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.canvas import context_menu
from app.document import Document
from app.live import Live
from app.mends import mend_entries
from app.panes.finding_cards import Card
from app.panes.findings_model import CARD_ROLE
from app.panes.findings_pane import FindingsPane
from app.proposal import Proposal
from app.selection import Selection
from app.solver import Solver
from app.theme import DARK, LIGHT
from app.viewpoint import Viewpoint
from core.assess import assess
from core.catalogue import load_builtin
from core.edits import set_sheet
from core.results import Finding, sentence
from core.samples import sample_bytes
from core.sheet import Sheet
from core.storage import load
from tests.app.canvas_rig import make_rig
from tests.app.panes_sample import load_fonts


def sample(name: str = "five-mistakes") -> Sheet:
    return load(sample_bytes(name), name)


class Bench:
    """The findings pane on a sheet with five mistakes."""

    def __init__(self, sheet: Sheet) -> None:
        load_fonts()
        self.document = Document(sheet, load_builtin())
        self.viewpoint = Viewpoint(sheet.mains.nominal_v)
        self.solver = Solver()
        self.live = Live(self.document, self.viewpoint, self.solver)
        self.proposal = Proposal(self.document, self.viewpoint, self.solver)
        self.selection = Selection()
        self.pane = FindingsPane(self.document, self.selection, LIGHT)
        self.pane.follow(self.proposal)
        self.live.refresh()
        self.pane.mends.settle()

    def row(self, rule: str) -> int:
        return next(at for at, card in enumerate(self.pane.model.cards) if card.rule == rule)

    def card(self, rule: str) -> Card:
        found = self.pane.model.index(self.row(rule), 0).data(CARD_ROLE)
        assert isinstance(found, Card)
        return found

    def middle(self, rule: str, number: int = 0) -> QPoint:
        """The middle of a mend, brought into view."""
        index = self.pane.model.index(self.row(rule), 0)
        self.pane.list.scrollTo(index)
        return self.pane.list.mend_rect(index, number).center()

    def go_to(self, rule: str) -> None:
        self.pane.list.setFocus()
        self.pane.list.setCurrentIndex(self.pane.model.index(self.row(rule), 0))

    def key(self, key: Qt.Key) -> None:
        QTest.keyClick(self.pane.list, key)


@pytest.fixture
def bench(qtbot: QtBot) -> Iterator[Bench]:
    made = Bench(sample())
    qtbot.addWidget(made.pane)
    made.pane.resize(340, 600)
    made.pane.show()
    qtbot.waitExposed(made.pane)
    yield made
    made.solver.finish()


def leave(bench: Bench) -> None:
    QApplication.sendEvent(bench.pane.list, QEvent(QEvent.Type.Leave))


def test_cards_carry_what_was_found_to_mend_them(bench: Bench) -> None:
    assert [offer.label for offer in bench.card("half-heated").mends] == ["Strap 4 to 5"]
    assert [offer.label for offer in bench.card("second-reference").mends] == ["Take out w13", "Take out w14"]


def test_mends_come_by_themselves_and_move_nothing(bench: Bench, qtbot: QtBot) -> None:
    bench.document.open(sample())
    assert bench.pane.model.cards and not any(card.mends for card in bench.pane.model.cards)
    bench.go_to("supply-overload")
    qtbot.waitUntil(lambda: bench.pane.mends.is_settled and bool(bench.card("half-heated").mends))
    current = bench.pane.list.currentIndex().data(CARD_ROLE)
    assert current.rule == "supply-overload" and current.mends


def test_another_edit_stops_the_trying(bench: Bench, qtbot: QtBot) -> None:
    bench.document.open(sample())
    bench.document.changed.disconnect(bench.live.refresh)
    bench.document.apply("Rename sheet", set_sheet(title="Another"))
    qtbot.waitUntil(lambda: bench.pane.mends.is_settled)
    bench.live.refresh()
    qtbot.waitUntil(lambda: bench.pane.mends.is_settled)
    assert bench.card("half-heated").mends


def test_the_pointer_considers_a_mend_and_leaves_it(bench: Bench) -> None:
    QTest.mouseMove(bench.pane.list.viewport(), bench.middle("half-heated"))
    current = bench.proposal.current
    assert current is not None and current.text == "Strap 4 to 5"
    assert [finding.rule for finding in current.gone] == ["half-heated"]
    assert bench.document.undo_stack.count() == 0
    assert bench.pane.list.viewport().cursor().shape() == Qt.CursorShape.PointingHandCursor
    QTest.mouseMove(bench.pane.list.viewport(), QPoint(5, 5))
    assert bench.proposal.current is None
    QTest.mouseMove(bench.pane.list.viewport(), bench.middle("half-heated"))
    leave(bench)
    assert bench.proposal.current is None


def test_a_click_does_it_as_one_named_step(bench: Bench) -> None:
    before = bench.document.sheet
    bench.selection.clear()
    QTest.mouseClick(bench.pane.list.viewport(), Qt.MouseButton.LeftButton, pos=bench.middle("half-heated"))
    assert bench.document.undo_stack.undoText() == "Strap 4 to 5"
    assert bench.document.undo_stack.count() == 1
    assert bench.selection.ids == frozenset()
    assert "half-heated" not in {card.rule for card in bench.pane.model.cards}
    assert bench.proposal.current is None and bench.pane.list.hot is None
    bench.document.undo_stack.undo()
    assert bench.document.sheet == before
    bench.pane.mends.settle()
    assert bench.card("half-heated").mends


def test_a_considered_mend_is_not_told_over_its_own_card(bench: Bench) -> None:
    QTest.mouseMove(bench.pane.list.viewport(), QPoint(5, 5))
    QTest.mouseMove(bench.pane.list.viewport(), bench.middle("half-heated"))
    assert bench.proposal.current is not None and bench.pane.outlook.isHidden()
    QTest.mouseMove(bench.pane.list.viewport(), QPoint(5, 5))
    offer = bench.card("half-heated").mends[0]
    bench.proposal.consider(offer.title, offer.edit)
    assert bench.pane.outlook.isVisible(), "what is considered elsewhere is told here"
    bench.proposal.withdraw()
    assert bench.pane.outlook.isHidden()


def test_a_press_that_slips_off_does_nothing(bench: Bench) -> None:
    view = bench.pane.list.viewport()
    QTest.mousePress(view, Qt.MouseButton.LeftButton, pos=bench.middle("half-heated"))
    QTest.mouseRelease(view, Qt.MouseButton.LeftButton, pos=QPoint(20, 20))
    assert bench.document.undo_stack.count() == 0


def test_keys_choose_and_do(bench: Bench) -> None:
    bench.go_to("second-reference")
    bench.key(Qt.Key.Key_Right)
    assert bench.proposal.current is not None and bench.proposal.current.text == "Take out w13"
    bench.key(Qt.Key.Key_Right)
    assert bench.proposal.current.text == "Take out w14"
    bench.key(Qt.Key.Key_Right)
    assert bench.proposal.current.text == "Take out w14", "there is none after the last"
    bench.key(Qt.Key.Key_Left)
    assert bench.proposal.current.text == "Take out w13"
    bench.key(Qt.Key.Key_Left)
    assert bench.proposal.current is None, "before the first is none"
    bench.key(Qt.Key.Key_Right)
    bench.key(Qt.Key.Key_Escape)
    assert bench.proposal.current is None and bench.document.undo_stack.count() == 0
    bench.key(Qt.Key.Key_Right)
    bench.key(Qt.Key.Key_Return)
    assert bench.document.undo_stack.undoText() == "Take out w13"
    assert "w13" not in bench.document.sheet.wire_by_id


def test_going_to_another_card_withdraws(bench: Bench) -> None:
    bench.go_to("half-heated")
    bench.key(Qt.Key.Key_Right)
    assert bench.proposal.current is not None
    bench.key(Qt.Key.Key_Down)
    assert bench.proposal.current is None
    bench.key(Qt.Key.Key_Return)
    assert bench.document.undo_stack.count() == 0, "Return without a chosen mend chooses the card"


def test_losing_the_keyboard_withdraws(bench: Bench) -> None:
    bench.go_to("half-heated")
    bench.key(Qt.Key.Key_Right)
    bench.pane.filter.setFocus()
    assert bench.proposal.current is None


def test_a_screen_reader_hears_the_mends(bench: Bench) -> None:
    said = bench.pane.model.index(bench.row("second-reference"), 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert said.endswith("To choose from: Take out w13; Take out w14.")


def test_the_filter_keeps_the_mends(bench: Bench) -> None:
    bench.pane.filter.setFocus()
    QTest.keyClicks(bench.pane.filter, "high")
    assert bench.pane.condition == "high mains"
    assert bench.card("supply-overload").mends


@pytest.mark.parametrize("width", [240, 340, 700])
def test_mends_stay_within_their_card(bench: Bench, width: int) -> None:
    bench.pane.resize(width, 600)
    bench.pane.list.doItemsLayout()
    view = bench.pane.list
    for row, card in enumerate(bench.pane.model.cards):
        index = bench.pane.model.index(row, 0)
        rects = [view.mend_rect(index, number) for number in range(len(card.mends))]
        assert all(view.visualRect(index).contains(rect) for rect in rects)
        assert not any(one.intersects(other) for at, one in enumerate(rects) for other in rects[at + 1 :])


def test_the_mend_under_the_pointer_is_filled_in_both_themes(bench: Bench) -> None:
    for theme in (LIGHT, DARK):
        bench.pane.set_theme(theme)
        leave(bench)
        middle = bench.middle("half-heated")
        corner = bench.pane.list.mend_rect(bench.pane.model.index(bench.row("half-heated"), 0), 0).topLeft()
        spot = corner + QPoint(4, 4)
        plain = bench.pane.list.viewport().grab().toImage().pixelColor(spot).name()
        QTest.mouseMove(bench.pane.list.viewport(), middle + QPoint(1, 0))
        QTest.mouseMove(bench.pane.list.viewport(), middle)
        filled = bench.pane.list.viewport().grab().toImage().pixelColor(spot).name()
        assert (plain, filled) == (theme.surface, theme.accent)


def test_a_step_says_that_it_only_helps(qtbot: QtBot) -> None:
    text = (
        '{"format": "heaterloom-sheet", "version": 1, "title": "x", "parts": ['
        '{"id": "T1", "kind": "winding", "rated_v": 6.9, "rated_a": 2.0, "regulation_pct": 10},'
        '{"id": "V1", "kind": "tube", "type": "EL84", "at": [320, 0]}, {"id": "E1", "kind": "chassis"}],'
        '"wires": [{"id": "w1", "from": "T1.a", "to": "V1.4"}, {"id": "w2", "from": "T1.b", "to": "V1.5"},'
        '{"id": "w3", "from": "T1.b", "to": "E1.e"}]}'
    )
    made = Bench(load(text.encode(), "x"))
    qtbot.addWidget(made.pane)
    labels = [offer.label for offer in made.card("heater-voltage").mends]
    assert labels and all(label.endswith("(helps)") for label in labels)
    assert "(helps)" not in made.card("heater-voltage").mends[0].title


def test_the_menu_of_a_part_offers_its_mends(bench: Bench) -> None:
    entries = mend_entries(bench.document, "V5")
    assert [entry.text for entry in entries] == ["Mend: Strap 4 to 5"]
    assert [entry.text for entry in mend_entries(bench.document, "w13")] == [
        "Mend: Take out w13",
        "Mend: Take out w14",
    ]
    assert mend_entries(bench.document, "V1") == ()
    entries[0].action()
    assert bench.document.undo_stack.undoText() == "Strap 4 to 5"


def test_no_mends_without_answers() -> None:
    assert mend_entries(Document(sample(), load_builtin()), "V5") == ()


def test_what_cannot_be_done_is_not_offered(bench: Bench) -> None:
    assessment = bench.document.assessment
    assert assessment is not None
    stray = Finding("x", "fault", ("V1",), *(sentence("x"),) * 3, remedies=assessment.findings[0].remedies)
    assert bench.pane.mends.of(stray) == ()


def test_the_menu_on_the_drawing_begins_with_them(qtbot: QtBot) -> None:
    rig = make_rig(qtbot, sample())
    rig.document.take_assessment(assess(rig.sheet, load_builtin()))
    rig.selection.set(("V5",))
    first, second, *_ = context_menu.rows_for(rig.view)
    assert first is not None and first.text == "Mend: Strap 4 to 5" and second is None
    first.action()
    assert rig.undo_names == ["Strap 4 to 5"]
    rig.selection.set(("V1",))
    texts = [row.text for row in context_menu.rows_for(rig.view) if row is not None]
    assert not any(text.startswith("Mend") for text in texts)
