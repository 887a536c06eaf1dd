"""What is on show: a condition (the mains volts, heaters hot or cold), or one instant of a warm-up."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from core.results import CHOSEN, Assessment, Condition, OperatingPoint
from core.sheet import Mains, Sheet

if TYPE_CHECKING:
    from core.warmup.results import What


@dataclass(frozen=True, eq=False)
class Instant:
    """One instant of a warm-up: seconds after switching on, the run's mains, its sheet, the figures that hold then.

    ``doing`` says what each part that switches by itself did last, by its id; the mains' is the empty text.
    """

    t_s: float
    mains_v: float
    sheet: Sheet
    point: OperatingPoint
    doing: Mapping[str, What] = field(default_factory=dict)


class Viewpoint(QObject):
    """What canvas and tables show.

    ``changed`` comes whenever that is something else, ``condition_changed`` before it where it is another condition,
    for which there may be no answers yet.
    """

    changed = Signal()
    condition_changed = Signal()

    def __init__(self, mains_v: float, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._condition = Condition(CHOSEN, mains_v, cold=False)
        self._instant: Instant | None = None

    @property
    def condition(self) -> Condition:
        """The condition on show, or that to which leaving the instant goes back; named ``chosen``."""
        return self._condition

    @property
    def instant(self) -> Instant | None:
        """The instant on show, or None where a condition is."""
        return self._instant

    @property
    def mains_v(self) -> float:
        """The mains volts of what is on show; those of the instant's run, even while they are away."""
        return self._condition.mains_v if self._instant is None else self._instant.mains_v

    def set_mains(self, mains_v: float) -> None:
        """Show the sheet at other mains volts."""
        self._set(Condition(CHOSEN, mains_v, self._condition.cold))

    def set_cold(self, cold: bool) -> None:
        """Show the instant of switch-on, or the steady state."""
        self._set(Condition(CHOSEN, self._condition.mains_v, cold))

    def keep_inside(self, mains: Mains) -> None:
        """Bring the mains back into the band of another sheet."""
        self.set_mains(min(max(self._condition.mains_v, mains.low_v), mains.high_v))

    def show_instant(self, instant: Instant) -> None:
        """Show an instant of a warm-up; nothing needs to be solved for it."""
        if instant is not self._instant:
            self._instant = instant
            self.changed.emit()

    def leave_instant(self) -> None:
        """Show the condition again that was on show before."""
        self._set(self._condition)

    def _set(self, condition: Condition) -> None:
        is_other, had_instant = condition != self._condition, self._instant is not None
        self._condition, self._instant = condition, None
        if is_other:
            self.condition_changed.emit()
        if is_other or had_instant:
            self.changed.emit()

    def point(self, assessment: Assessment | None) -> OperatingPoint | None:
        """The operating point of an assessment that is on show, or None while it is not solved yet.

        Where the assessment is of another sheet than the instant, that is its point at the condition.
        """
        if assessment is None:
            return None
        if self._instant is not None and assessment.sheet is self._instant.sheet:
            return self._instant.point
        for point in assessment.points.values():
            same_mains = abs(point.condition.mains_v - self._condition.mains_v) < 1e-9
            if same_mains and point.condition.cold == self._condition.cold:
                return point
        return None
