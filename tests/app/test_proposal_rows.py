"""What a considered edit would do to the findings is told beside the drawing, in the findings pane and in the strip."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt

from app.panes.proposal_rows import MOST, Line, outlook_of
from app.proposal import Proposed
from app.theme import DARK, LIGHT
from core.assess import assess
from core.catalogue import load_builtin
from core.edits import Change, add_wire, remove
from core.sheet import Sheet
from tests.app.canvas_rig import small_sheet
from tests.app.panes_sample import finding

GRAVE, MILD = finding("short-circuit", "fault", ("T1",)), finding("supply-margin", "caution", ("T1",))


def proposed(new=(), gone=()) -> Proposed:
    sheet = Sheet()
    return Proposed("Wire A to B", sheet, Change(), assess(sheet, load_builtin()), tuple(new), tuple(gone))


def test_nothing_to_say_is_nothing():
    assert outlook_of(None) is None
    assert outlook_of(proposed()) is None


def test_new_ones_come_before_gone_ones():
    found = outlook_of(proposed([MILD, GRAVE], [finding("open-end", "note", ("w1",))]))
    assert [(line.sign, line.severity) for line in found.lines] == [
        ("new", "fault"),
        ("new", "caution"),
        ("gone", "note"),
    ]
    assert (found.new, found.gone) == (2, 1)
    assert found.heading == "Wire A to B"


@pytest.mark.parametrize(
    ("new", "gone", "signs"), [(9, 9, "nng"), (9, 0, "nnn"), (0, 9, "ggg"), (1, 9, "ngg")]
)
def test_of_many_the_gravest_are_shown_and_all_counted(new, gone, signs):
    found = outlook_of(
        proposed(
            [finding("open-end", "note", (f"w{n}",)) for n in range(new)],
            [finding("open-end", "note", (f"x{n}",)) for n in range(gone)],
        )
    )
    assert "".join(line.sign[0] for line in found.lines) == signs
    assert len(found.lines) <= MOST
    assert (found.new, found.gone) == (new, gone)
    assert str(max(new, gone)) in found.text


def test_one_finding_under_three_conditions_is_one_line():
    group = [
        finding("heater-voltage", "fault", ("V1",), condition, 7.1, 6.9)
        for condition in ("nominal", "low mains", "high mains")
    ]
    found = outlook_of(proposed(group))
    assert found.lines == (Line("new", "fault", "heater-voltage 7.1"),)


@pytest.fixture
def window(open_window):
    made = open_window(small_sheet())
    made.begin()
    return made


def test_everything_tells_it_and_takes_it_back(window):
    proposal, card = window.scene.proposal, window.side.findings.outlook
    before = window.strip.summary.text()
    proposal.consider("Strap V1.4 to V1.5", add_wire("V1.4", "V1.5"))
    beside = window.view.outlook.card
    assert beside.isVisible()
    assert card.isVisible()
    assert beside.outlook == card.outlook
    assert beside.outlook.lines[0].sign == "new"
    assert beside.outlook.lines[0].title in beside.accessibleDescription()
    assert "as it would be" in window.strip.summary.text()
    assert window.strip.summary.text() != before
    proposal.withdraw()
    assert not beside.isVisible()
    assert not card.isVisible()
    assert window.strip.summary.text() == before
    assert window.document.undo_stack.count() == 0


def test_what_would_vanish_is_told(window):
    window.scene.proposal.consider("Delete", remove(("V1", "V2")))
    assert any(line.sign == "gone" for line in window.view.outlook.card.outlook.lines)


class Cursor:
    """The pointer where a test says it is; the screen of the tests has none that can be moved."""

    at = QPoint(0, 0)

    @classmethod
    def pos(cls) -> QPoint:
        return cls.at


def test_the_card_takes_no_clicks_and_keeps_off_the_pointer(window, monkeypatch):
    monkeypatch.setattr("app.panes.proposal_rows.QCursor", Cursor)
    view = window.view
    window.scene.proposal.consider("Strap", add_wire("V1.4", "V1.5"))
    card = view.outlook.card
    assert card.testAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
    assert view.rect().contains(card.geometry())
    assert not card.geometry().intersects(view.add_field.geometry())
    Cursor.at = view.mapToGlobal(card.geometry().center())
    window.scene.proposal.consider("Delete", remove(("V1",)))
    assert card.geometry().bottom() > view.height() - 40
    Cursor.at = view.mapToGlobal(QPoint(5, 5))
    window.scene.proposal.consider("Strap", add_wire("V1.4", "V1.5"))
    assert card.geometry().top() < 40


def test_the_list_of_findings_does_not_move(window):
    cards = window.side.findings.list
    before = cards.geometry()
    window.scene.proposal.consider("Strap", add_wire("V1.4", "V1.5"))
    assert cards.geometry() == before


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
def test_the_card_is_painted_in_either_theme(window, theme):
    window.scene.proposal.consider("Strap", add_wire("V1.4", "V1.5"))
    window.set_theme_name(theme.name)
    image = window.side.findings.outlook.grab().toImage()
    colours = {image.pixelColor(x, y).name() for x in range(image.width()) for y in range(image.height())}
    assert {theme.surface, theme.ink, theme.accent, theme.over} <= colours
