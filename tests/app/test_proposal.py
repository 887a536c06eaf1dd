"""What is being considered is solved and told, and leaves the document alone."""

from __future__ import annotations

import pytest

from app.document import Document
from app.proposal import Proposal
from app.viewpoint import Viewpoint
from core import edits
from core.assess import assess
from core.catalogue import load_builtin
from core.errors import EditError
from core.sheet import Chassis, Sheet, Tube, Winding, Wire

SHEET = Sheet(
    parts=(
        Winding(id="T1", rated_v=6.3, rated_a=1.0),
        Tube(id="V1", type="EL84"),
        Chassis(id="E1"),
    ),
    wires=(Wire(id="w1", start="T1.a", end="V1.4"), Wire(id="w2", start="T1.b", end="V1.5")),
)


@pytest.fixture
def document(qapp):
    made = Document(SHEET, load_builtin())
    made.take_assessment(assess(SHEET, made.catalogue))
    return made


@pytest.fixture
def proposal(document):
    return Proposal(document, Viewpoint(230.0))


def rules(findings):
    return {finding.rule for finding in findings}


def test_an_edit_is_solved_as_it_would_be(document, proposal) -> None:
    told = []
    proposal.changed.connect(told.append)
    found = proposal.consider("Wire", edits.add_wire("T1.b", "E1.e"))
    assert told == [found]
    assert "no-chassis-reference" in rules(found.gone)
    assert not found.new
    assert document.sheet is SHEET
    assert document.undo_stack.isClean()


def test_what_would_go_wrong_is_told(proposal) -> None:
    found = proposal.consider("Strap", edits.add_wire("V1.4", "V1.5"))
    assert "short-circuit" in rules(found.new)


def test_withdrawing_tells_once(proposal) -> None:
    proposal.consider("Wire", edits.add_wire("T1.b", "E1.e"))
    told = []
    proposal.changed.connect(told.append)
    proposal.withdraw()
    proposal.withdraw()
    assert told == [None]
    assert proposal.current is None


def test_an_impossible_edit_withdraws(proposal) -> None:
    proposal.consider("Wire", edits.add_wire("T1.b", "E1.e"))

    def refuse(_sheet):
        raise EditError("no")

    assert proposal.consider("Nothing", refuse) is None
    assert proposal.current is None


def test_a_change_of_the_document_withdraws(document, proposal) -> None:
    proposal.consider("Wire", edits.add_wire("T1.b", "E1.e"))
    document.apply("Turn", edits.turn_parts(("V1",)))
    assert proposal.current is None
