"""The first sheet solved in a second process: the same answers, and none where anything goes wrong."""

from __future__ import annotations

import subprocess
import sys

import pytest

from app.early import EarlyAnswer
from app.sources import load_catalogue, open_sheet
from core.assess import assess
from core.samples import sample_names


def test_the_answers_are_those_of_this_process() -> None:
    early = EarlyAnswer(sample_names()[0])
    sheet = open_sheet(sample_names()[0]).sheet
    catalogue, _ = load_catalogue()
    assert early.take() == assess(sheet, catalogue.with_types(sheet.types))
    assert early.take() is None


def test_a_sheet_that_cannot_be_used_has_no_answers() -> None:
    assert EarlyAnswer("no such sheet").take() is None


def test_an_interpreter_that_does_not_start_has_no_answers(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "executable", "/nowhere/python")
    assert EarlyAnswer(sample_names()[0]).take() is None


def test_a_process_that_dies_on_the_way_has_no_answers(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("app.early._CODE", "import sys; sys.stdout.write('half an ans')")
    assert EarlyAnswer(sample_names()[0]).take() is None


def test_the_window_is_made_without_numerics() -> None:
    """They take as long to load as Qt does; the second process has them, this one when the first edit comes."""
    heavy = ("numpy", "scipy", "networkx", "pyqtgraph")
    code = f"import sys, app.start; print([name for name in {heavy} if name in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
