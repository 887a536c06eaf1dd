"""What is on show: a condition, or one instant of a warm-up."""

from __future__ import annotations

import pytest

from app.viewpoint import Instant, Viewpoint
from core.results import COLD, INSTANT, NOMINAL, Assessment, Condition, OperatingPoint
from core.sheet import Sheet

SHEET = Sheet(title="one")
ANSWERS = Assessment(
    SHEET,
    {
        NOMINAL: OperatingPoint(Condition(NOMINAL, 230.0)),
        COLD: OperatingPoint(Condition(COLD, 230.0, cold=True)),
    },
    (),
    (),
)
INSTANT_POINT = OperatingPoint(Condition(INSTANT, 207.0))


class Heard:
    """How often each signal of a viewpoint came."""

    def __init__(self, viewpoint: Viewpoint) -> None:
        self.changed = self.conditions = 0
        viewpoint.changed.connect(self._on_changed)
        viewpoint.condition_changed.connect(self._on_condition)

    def _on_changed(self) -> None:
        self.changed += 1

    def _on_condition(self) -> None:
        self.conditions += 1


@pytest.fixture
def viewpoint(qapp) -> Viewpoint:
    return Viewpoint(230.0)


def an_instant(t_s: float = 3.0) -> Instant:
    return Instant(t_s, 207.0, SHEET, INSTANT_POINT)


def test_an_instant_is_on_show_without_another_condition(viewpoint) -> None:
    heard = Heard(viewpoint)
    viewpoint.show_instant(an_instant())
    assert viewpoint.point(ANSWERS) is INSTANT_POINT
    assert viewpoint.condition.mains_v == 230.0
    assert viewpoint.mains_v == 207.0
    assert (heard.changed, heard.conditions) == (1, 0)


def test_leaving_goes_back_to_the_condition_before(viewpoint) -> None:
    viewpoint.set_cold(True)
    viewpoint.show_instant(an_instant())
    heard = Heard(viewpoint)
    viewpoint.leave_instant()
    viewpoint.leave_instant()
    assert viewpoint.point(ANSWERS) is ANSWERS.points[COLD]
    assert (heard.changed, heard.conditions) == (1, 0)


@pytest.mark.parametrize("volts", [230.0, 240.0])
def test_choosing_a_condition_leaves_the_instant(viewpoint, volts: float) -> None:
    viewpoint.show_instant(an_instant())
    heard = Heard(viewpoint)
    viewpoint.set_mains(volts)
    assert viewpoint.instant is None
    assert viewpoint.mains_v == volts
    assert (heard.changed, heard.conditions) == (1, int(volts != 230.0))


def test_choosing_hot_leaves_the_instant(viewpoint) -> None:
    viewpoint.show_instant(an_instant())
    viewpoint.set_cold(False)
    assert viewpoint.instant is None
    assert viewpoint.point(ANSWERS) is ANSWERS.points[NOMINAL]


def test_an_instant_of_another_sheet_is_not_shown(viewpoint) -> None:
    viewpoint.show_instant(an_instant())
    other = Assessment(Sheet(title="two"), ANSWERS.points, (), ())
    assert viewpoint.point(other) is ANSWERS.points[NOMINAL]
    assert viewpoint.point(None) is None
