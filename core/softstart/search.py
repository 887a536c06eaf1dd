"""What every search for a way to start softly works with: the line, what is wanted of it, and its runs."""

from __future__ import annotations

from dataclasses import dataclass, field

from msgspec.structs import replace

from core.catalogue.types import ThermistorType
from core.edits import PREFIXES, fresh_id
from core.errors import EditError
from core.mending import edit_of
from core.remedy import InSeries, Remedy, SetFields, Step, Value
from core.sentences import Sentence
from core.sheet import DcSupply, Sheet
from core.softstart.line import Line, Warm, warm_of
from core.softstart.results import Figures, Goal, Shown
from core.softstart.sizes import first_a, trimmed_v
from core.softstart.trial import Trials

CLOSE = 1e-5
"""A supply at its limit is found to give it as exactly as this."""


@dataclass(frozen=True)
class Search:
    """One line and its goal; ``limit_a`` is infinite where only the heaters' volts matter.

    ``calm`` gathers the thermistors with which a start went well.
    """

    line: Line
    goal: Goal
    limit_a: float
    trials: Trials
    calm: list[ThermistorType] = field(default_factory=list)

    def part_id(self, kind: str) -> str:
        """The id that a new part of a kind will have."""
        return fresh_id(self.line.sheet, PREFIXES[kind])

    def in_series(self, kind: str, fields: tuple[tuple[str, Value], ...]) -> InSeries:
        """A new part between the supply and the wires of its line."""
        return InSeries(self.line.terminal, self.line.wires, kind, fields, self.part_id(kind))

    def done(self, remedy: Remedy) -> Sheet | None:
        """The sheet after a remedy; None where it cannot be carried out."""
        try:
            return edit_of(remedy)(self.line.sheet)
        except EditError:
            return None

    def is_good(self, shown: Shown) -> bool:
        """Whether a run started as was wanted: no heater above the most volts, and never at a limit.

        A supply that holds at its limit may come to it on the way.
        """
        supply = self.line.supply
        holds = isinstance(supply, DcSupply) and supply.overload == "constant-current"
        within = shown.peak_a <= self.limit_a * (1 + CLOSE)
        calm = self.goal.peak_ratio is None or shown.peak_ratio <= self.goal.peak_ratio
        return shown.starts and (holds or shown.limited_s is None) and within and calm


@dataclass(frozen=True)
class Fitted:
    """A part in series tried in the steady state: the remedy, the sheet, what is lost, and the volts it is set to."""

    remedy: Remedy
    sheet: Sheet
    part_id: str
    warm: Warm
    loss_v: float
    loss_w: float
    open_v: float
    set_v: float | None = None


def fitted(
    search: Search, title: Sentence, part: InSeries, set_v: float | None = None, *more: Step
) -> Fitted | None:
    """Put a part in series, the supply set to other volts if wanted, and solve the sheet; None where that fails."""
    line = search.line
    trim = () if set_v is None else (SetFields(line.supply.id, (("set_v", set_v),)),)
    remedy = Remedy(title, (*trim, part, *more))
    sheet = search.done(remedy)
    warm = None if sheet is None else warm_of(line, sheet, part.id)
    if sheet is None or warm is None:
        return None
    return Fitted(
        remedy, sheet, part.id, warm, warm.part_v, warm.part_w, line.open_v if set_v is None else set_v, set_v
    )


def figures_of(search: Search, warm: Warm, open_v: float, least_ohm: float, **more: float | None) -> Figures:
    """The figures of a line as it works in the end, and of its first current behind so many ohms in series."""
    common = Figures(
        first_a=first_a(open_v, search.line.cold_ohm, least_ohm),
        limit_a=search.limit_a,
        warm_a=warm.a,
        heater=warm.heater.owner,
        heater_v=warm.heater.v,
        off_pct=warm.off_pct,
        limit_pct=warm.limit_pct,
    )
    return replace(common, **more)


def trim_for(search: Search, loss_v: float) -> float | None:
    """What the supply may be set to so that the heaters get what they had; None where it cannot be set at all."""
    supply = search.line.supply
    if not isinstance(supply, DcSupply):
        return None
    wanted = trimmed_v(supply.set_v, supply.set_v + loss_v)
    return wanted if wanted > supply.set_v else None
