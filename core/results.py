"""What an assessment says: operating points by condition, and findings. Frozen values, no behaviour."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal, NamedTuple

import msgspec

from core.remedy import Remedy
from core.sentences import Sentence, Text, sentence
from core.sheet import Sheet

__all__ = [
    "CHOSEN",
    "COLD",
    "COLD_SHARE",
    "DEFAULT_V_PCT",
    "GLOWS_FROM_K",
    "HIGH",
    "INSTANT",
    "LOW",
    "NOMINAL",
    "ROUNDING",
    "SEVERITIES",
    "Assessment",
    "BranchPoint",
    "Condition",
    "Finding",
    "HeaterPoint",
    "HeaterState",
    "Limits",
    "OperatingPoint",
    "Sentence",
    "Severity",
    "SupplyPoint",
    "Unsolved",
    "Volts",
    "alike",
    "sentence",
    "side_of",
    "worst_of",
]

HeaterState = Literal["ok", "over", "under", "cold"]

# An exactly met limit is met: figures are compared with this much room for rounding in the last digits.
ROUNDING = 1e-9
# A heater with less than this share of its rated volts counts as cold: it does not even glow.
COLD_SHARE = 0.05
# Below it a heater shows no glow by room light.
GLOWS_FROM_K = 800.0

DEFAULT_V_PCT = 10.0

# the names of the conditions, as they stand in reports
NOMINAL = "nominal"
LOW = "low mains"
HIGH = "high mains"
COLD = "cold"
CHOSEN = "chosen"
# the name under which one instant of a warm-up is on show
INSTANT = "instant"

Severity = Literal["fault", "caution", "note"]
SEVERITIES: tuple[Severity, ...] = ("fault", "caution", "note")
Volts = float | complex


class Condition(msgspec.Struct, frozen=True):
    """The circumstances of one solution: mains volts, and whether the heaters are still cold."""

    name: str
    mains_v: float
    cold: bool = False


class HeaterPoint(msgspec.Struct, frozen=True, gc=False):
    """One heater section or lamp at work; volts, amperes and watts are rms or DC, temperatures kelvin."""

    owner: str
    pins: str
    v: float
    a: float
    w: float
    rated_v: float
    rated_a: float
    heater_k: float
    cathode_k: float

    @property
    def key(self) -> str:
        """The section's key as it stands in strings: ``V1:4-9``."""
        return f"{self.owner}:{self.pins}"

    @property
    def deviation_pct(self) -> float:
        """Per cent by which the volts are off the rating."""
        return (self.v / self.rated_v - 1) * 100

    @property
    def deviation_a_pct(self) -> float:
        """Per cent by which the current is off the rating."""
        return (self.a / self.rated_a - 1) * 100


class Limits(NamedTuple):
    """The window of one heater section: per cent off its rated amperes in a string, else off its rated volts.

    ``low_is_harmless`` where too little does no damage: a lamp, or a lamp's share of a tapped heater. Such a
    section counts as under all the same, but no rule reports it.
    """

    by_current: bool = False
    low_pct: float = -DEFAULT_V_PCT
    high_pct: float = DEFAULT_V_PCT
    low_is_harmless: bool = False

    def deviation_pct(self, heater: HeaterPoint) -> float:
        """Per cent off the rating that counts."""
        return heater.deviation_a_pct if self.by_current else heater.deviation_pct

    def state(self, heater: HeaterPoint) -> HeaterState:
        """Within the window, over, under, or cold."""
        if heater.v < COLD_SHARE * heater.rated_v:
            return "cold"
        off = self.deviation_pct(heater)
        slack = 100 * ROUNDING
        if off > self.high_pct + slack:
            return "over"
        return "under" if off < self.low_pct - slack else "ok"

    def is_harmful(self, heater: HeaterPoint) -> bool:
        """Whether the section is outside its window on a side that does it harm."""
        state = self.state(heater)
        return state == "over" or (state == "under" and not self.low_is_harmless)


class SupplyPoint(msgspec.Struct, frozen=True, gc=False):
    """One supply at work: terminal volts, amperes, watts delivered, amperes it may give (None if unrated).

    ``limiting`` says that it gives no more than its limit; ``demand_a`` is then what the circuit would take
    from a supply without one (infinite for a short circuit). ``driven_back`` says that other sources hold it
    above its volts, turn its volts round, or make it take power: it is then not limiting.
    """

    v: float
    a: float
    w: float
    rated_a: float | None
    limiting: bool = False
    demand_a: float | None = None
    driven_back: bool = False

    @property
    def load_pct(self) -> float | None:
        """Load in per cent of the rating; what is asked of it, where that is more than it gives."""
        asked = self.a if self.demand_a is None else self.demand_a
        return None if self.rated_a is None else asked / self.rated_a * 100


class BranchPoint(msgspec.Struct, frozen=True, gc=False):
    """One wire or passive part at work; ``kelvin`` for thermistors, ``pulled_in`` for relays."""

    v: float
    a: float
    w: float
    kelvin: float | None = None
    pulled_in: bool | None = None


class Unsolved(msgspec.Struct, frozen=True):
    """A part of the circuit that has no answer, with the reason and the ids to blame."""

    reason: Sentence
    ids: tuple[str, ...]
    island: tuple[str, ...] = ()


class OperatingPoint(msgspec.Struct, frozen=True):
    """The whole sheet at one condition.

    ``nodes`` are volts above the reference (rms for AC), ``bias`` the DC volts above chassis of each terminal.
    ``residual_a`` is the largest Kirchhoff error, ``power_in_w`` what all supplies give, ``power_out_w`` what
    all else takes.
    """

    condition: Condition
    nodes: dict[str, Volts] = msgspec.field(default_factory=dict)
    bias: dict[str, float] = msgspec.field(default_factory=dict)
    heaters: dict[str, tuple[HeaterPoint, ...]] = msgspec.field(default_factory=dict)
    supplies: dict[str, SupplyPoint] = msgspec.field(default_factory=dict)
    branches: dict[str, BranchPoint] = msgspec.field(default_factory=dict)
    unsolved: tuple[Unsolved, ...] = ()
    residual_a: float = 0.0
    power_in_w: float = 0.0
    power_out_w: float = 0.0


class Finding(msgspec.Struct, frozen=True, gc=False):
    """One thing the rules report: what, where, by how much, against which limit, and what would mend it.

    ``where`` are ids of parts and wires; ``condition`` the condition's name, or None where it holds always.
    ``remedies`` are what would be done for the mend, where it is known what exactly.
    """

    rule: str
    severity: Severity
    where: tuple[str, ...]
    title: Sentence
    says: Sentence
    mend: Sentence
    condition: str | None = None
    value: float | None = None
    limit: float | None = None
    unit: str = ""
    source: Text = ""
    remedies: tuple[Remedy, ...] = ()


def side_of(finding: Finding) -> int:
    """1 where the value is over the limit, -1 where it is under, 0 where there is none to compare."""
    if finding.value is None or finding.limit is None:
        return 0
    return 1 if finding.value >= finding.limit else -1


def alike(findings: Iterable[Finding]) -> list[list[Finding]]:
    """Findings of one rule at one place on the same side of the limit together: they differ by condition."""
    groups: dict[tuple[str, tuple[str, ...], int], list[Finding]] = {}
    for finding in findings:
        groups.setdefault((finding.rule, finding.where, side_of(finding)), []).append(finding)
    return list(groups.values())


def worst_of(group: list[Finding]) -> Finding:
    """The gravest of findings that are alike, and of equally grave ones that furthest beyond its limit."""
    return min(group, key=lambda finding: (SEVERITIES.index(finding.severity), -_excess(finding)))


def _excess(finding: Finding) -> float:
    return 0.0 if finding.value is None or finding.limit is None else abs(finding.value - finding.limit)


class Assessment(msgspec.Struct, frozen=True):
    """The answers for one sheet. ``points`` are by condition name.

    ``strings`` are the groups of two or more heater sections in series, each by its key ``V1:4-9``; ``limits``
    is what each section is judged by.
    """

    sheet: Sheet
    points: dict[str, OperatingPoint]
    strings: tuple[tuple[str, ...], ...]
    findings: tuple[Finding, ...]
    limits: dict[str, Limits] = msgspec.field(default_factory=dict)

    def state_of(self, heater: HeaterPoint) -> HeaterState:
        """Whether a heater section is within the limits it is judged by."""
        return self.limits.get(heater.key, Limits()).state(heater)

    def conditions(self) -> tuple[Condition, ...]:
        """The conditions that were solved, in order."""
        return tuple(point.condition for point in self.points.values())
