"""Which condition is on show: the mains volts, and heaters hot or cold."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from core.results import Assessment, Condition, OperatingPoint
from core.sheet import Mains

CHOSEN = "chosen"


class Viewpoint(QObject):
    """The condition that canvas and tables show. ``changed`` comes whenever it is another one."""

    changed = Signal()

    def __init__(self, mains_v: float, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._condition = Condition(CHOSEN, mains_v, cold=False)

    @property
    def condition(self) -> Condition:
        """The condition on show, named ``chosen``."""
        return self._condition

    def set_mains(self, mains_v: float) -> None:
        """Show the sheet at other mains volts."""
        self._set(Condition(CHOSEN, mains_v, self._condition.cold))

    def set_cold(self, cold: bool) -> None:
        """Show the instant of switch-on, or the steady state."""
        self._set(Condition(CHOSEN, self._condition.mains_v, cold))

    def keep_inside(self, mains: Mains) -> None:
        """Bring the mains back into the band of another sheet."""
        self.set_mains(min(max(self._condition.mains_v, mains.low_v), mains.high_v))

    def _set(self, condition: Condition) -> None:
        if condition != self._condition:
            self._condition = condition
            self.changed.emit()

    def point(self, assessment: Assessment | None) -> OperatingPoint | None:
        """The operating point of an assessment that matches, or None while it is not solved yet."""
        if assessment is None:
            return None
        for point in assessment.points.values():
            same_mains = abs(point.condition.mains_v - self._condition.mains_v) < 1e-9
            if same_mains and point.condition.cold == self._condition.cold:
                return point
        return None
