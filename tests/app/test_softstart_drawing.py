"""What a soft start adds to a sheet is drawn fit to print, wherever supply and heaters stand."""

from __future__ import annotations

import pytest

from app.theme import DARK, LIGHT
from core.catalogue import load_builtin
from core.mending import edit_of
from core.samples import sample_bytes
from core.softstart import variants
from core.storage import load
from tests.app.drawing_check import faults_of
from tests.app.test_drawing import drawn
from tests.core.softstart_sheets import PLACED
from tests.core.test_softstart_steps import late, softened


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
@pytest.mark.parametrize("name", PLACED)
def test_a_bypassed_thermistor_is_drawn_without_fault(qapp, name, theme):
    for sheet in (softened(PLACED[name]), late(PLACED[name])):
        assert faults_of(drawn(sheet, load_builtin(), theme)) == []


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
def test_whatever_is_proposed_for_a_sample_is_drawn_without_fault(qapp, theme):
    bench = load(sample_bytes("twelve-volt-bench"), "twelve-volt-bench")
    made = variants(bench, load_builtin(), "P1")
    assert len(made) == 4
    for one in made:
        assert one.remedy is not None
        assert faults_of(drawn(edit_of(one.remedy)(bench), load_builtin(), theme)) == [], one.way
