"""What a soft start adds to a sheet is drawn fit to print, wherever supply and heaters stand."""

from __future__ import annotations

import pytest

from app.theme import DARK, LIGHT
from core.catalogue import load_builtin
from tests.app.drawing_check import faults_of
from tests.app.test_drawing import drawn
from tests.core.softstart_sheets import PLACED
from tests.core.test_softstart_steps import late, softened


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
@pytest.mark.parametrize("name", PLACED)
def test_a_bypassed_thermistor_is_drawn_without_fault(qapp, name, theme):
    for sheet in (softened(PLACED[name]), late(PLACED[name])):
        assert faults_of(drawn(sheet, load_builtin(), theme)) == []
