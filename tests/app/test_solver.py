"""Small sheets are solved at once, large ones in a worker; only the newest question of each asker is answered."""

from __future__ import annotations

import pytest

from app.document import Document
from app.live import Live
from app.proposal import Proposal
from app.solver import Solver
from app.viewpoint import Viewpoint
from core import edits
from core.assess import assess
from core.catalogue import load_builtin
from core.sheet import Chassis, Sheet, Tube, Winding, Wire

SHEET = Sheet(
    parts=(
        Winding(id="T1", rated_v=6.3, rated_a=1.0),
        Tube(id="V1", type="EL84"),
        Chassis(id="E1"),
    ),
    wires=(Wire(id="w1", start="T1.a", end="V1.4"), Wire(id="w2", start="T1.b", end="V1.5")),
)
TIE = edits.add_wire("T1.b", "E1.e")


class Desk:
    """A document with what solves it; ``small`` 0 makes every sheet a large one."""

    def __init__(self, small: int) -> None:
        self.document = Document(SHEET, load_builtin())
        self.viewpoint = Viewpoint(230.0)
        self.solver = Solver(small)
        self.proposal = Proposal(self.document, self.viewpoint, self.solver)
        self.live = Live(self.document, self.viewpoint, self.solver)
        self.told: list[object] = []
        self.proposal.changed.connect(self.told.append)

    def settle(self, qtbot) -> None:
        qtbot.waitUntil(lambda: self.solver.is_idle)


@pytest.fixture
def large(qtbot):
    desk = Desk(small=0)
    desk.live.refresh()
    desk.settle(qtbot)
    yield desk
    desk.settle(qtbot)
    desk.solver.finish()


def answers(desk):
    return [None if one is None else one.text for one in desk.told]


def test_a_large_sheet_is_answered_later(large, qtbot):
    assert large.proposal.consider("Tie", TIE) is None
    assert large.proposal.current is None
    large.settle(qtbot)
    found = large.proposal.current
    assert found.text == "Tie"
    assert {one.rule for one in found.gone} >= {"no-chassis-reference"}
    assert large.proposal.consider("Tie", lambda _sheet: found.sheet) is found


def test_only_the_newest_of_many_considered_edits_is_solved(large, qtbot):
    for ohms in range(1, 8):
        large.proposal.consider(f"{ohms}", edits.set_part("T1", regulation_pct=float(ohms)))
    large.settle(qtbot)
    assert answers(large) == ["7"]


def test_the_answer_to_what_was_withdrawn_is_dropped(large, qtbot):
    large.proposal.consider("Tie", TIE)
    large.proposal.withdraw()
    large.settle(qtbot)
    assert large.told == []
    assert large.proposal.current is None


def test_the_sheet_itself_is_solved_although_edits_are_considered(large, qtbot):
    large.proposal.consider("Tie", TIE)
    large.document.apply("Set", edits.set_part("T1", regulation_pct=3.0))
    for pct in (4.0, 5.0, 6.0):
        large.proposal.consider("More", edits.set_part("T1", regulation_pct=pct))
    large.settle(qtbot)
    assert large.document.assessment is not None
    assert answers(large) == ["More"]


def test_what_was_considered_is_not_solved_again_when_it_is_made(large, qtbot):
    large.proposal.consider("Tie", TIE)
    large.settle(qtbot)
    found = large.proposal.current.assessment
    large.document.apply("Tie", TIE)
    # at once, although the sheet counts as large
    assert large.document.assessment.findings == found.findings
    assert large.document.assessment.sheet is large.document.sheet
    assert large.told[-1] is None


def test_answers_for_another_condition_are_not_taken(large, qtbot):
    large.proposal.consider("Tie", TIE)
    large.settle(qtbot)
    large.document.apply("Turn", edits.turn_parts(("V1",)))
    large.viewpoint.set_mains(219.0)
    large.settle(qtbot)
    large.document.undo_stack.undo()
    large.document.apply("Tie", TIE)
    assert large.document.assessment is None
    large.settle(qtbot)
    assert large.viewpoint.point(large.document.assessment) is not None


def test_another_condition_is_solved_for_what_is_considered(qtbot):
    desk = Desk(small=150)
    desk.live.refresh()
    desk.proposal.consider("Tie", TIE)
    desk.viewpoint.set_mains(219.0)
    point = desk.viewpoint.point(desk.proposal.current.assessment)
    assert point is not None
    assert point.condition.mains_v == 219.0


def test_late_answers_for_the_present_sheet_complete_the_comparison(qtbot):
    desk = Desk(small=150)
    desk.proposal.consider("Tie", TIE)
    assert desk.proposal.current.gone == ()
    desk.live.refresh()
    assert {one.rule for one in desk.proposal.current.gone} >= {"no-chassis-reference"}


def test_many_trials_leave_the_present_islands_in_memory(qtbot):
    desk = Desk(small=150)
    desk.live.refresh()
    for pct in range(1, 12):
        desk.proposal.consider("Set", edits.set_part("T1", regulation_pct=float(pct)))
    desk.proposal.withdraw()
    desk.document.apply("Turn", edits.turn_parts(("V1",)))
    assert desk.solver.memory.solved == 0


def test_the_figures_are_those_of_the_sheet_when_it_is_made(qtbot):
    desk = Desk(small=150)
    desk.live.refresh()
    desk.proposal.consider("Tie", TIE)
    desk.document.apply("Tie", TIE)
    made = desk.document.sheet
    fresh = assess(made, desk.document.catalogue, desk.viewpoint.condition)
    assert desk.document.assessment.points == fresh.points
    assert desk.document.assessment.findings == fresh.findings


def test_what_goes_wrong_in_the_worker_is_told_and_the_next_question_answered(qtbot):
    solver = Solver(small=0)
    found = []

    def fail(_memory):
        raise ZeroDivisionError("no")

    with qtbot.captureExceptions() as caught:
        solver.ask("one", 1, fail, found.append)
        solver.ask("two", 1, lambda memory: memory, found.append)
        qtbot.waitUntil(lambda: solver.is_idle)
    assert [kind for kind, _, _ in caught] == [ZeroDivisionError]
    assert len(found) == 1
