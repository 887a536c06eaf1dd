"""What a proposal for a soft start says. Frozen values."""

from __future__ import annotations

from typing import Literal

import msgspec

from core.remedy import Remedy
from core.sentences import Sentence
from core.warmup.results import Outcome

Way = Literal["resistor", "thermistor", "bypassed", "supply"]
"""A resistor in series; a thermistor; a thermistor that a relay bypasses; another supply."""


class Goal(msgspec.Struct, frozen=True):
    """What is wanted of a start: most amperes at first, and most volts over rated volts at any heater.

    None leaves the amperes to the supply's own limit, which is never exceeded, and asks nothing of the volts.
    """

    limit_a: float | None = None
    peak_ratio: float | None = None


class Figures(msgspec.Struct, frozen=True):
    """The figures that led to a proposal; None for those that do not matter to it.

    ``first_a`` is the most that the first current can be, with the tolerance of what is in series, ``limit_a`` what
    it is held against. ``ohm`` is the resistor or the thermistor at 25 °C, ``warm_ohm`` what it has in the end, with
    ``loss_v`` and ``loss_w``. ``heater_v`` and ``off_pct`` are of the heater ``heater`` that is worst off,
    ``limit_pct`` its limit. ``closing_a`` is what the supply gives when the relay's contact closes.
    """

    first_a: float
    limit_a: float
    warm_a: float
    ohm: float | None = None
    rated_w: float | None = None
    warm_ohm: float | None = None
    loss_v: float | None = None
    loss_w: float | None = None
    set_v: float | None = None
    supply_a: float | None = None
    heater: str = ""
    heater_v: float | None = None
    off_pct: float | None = None
    limit_pct: float | None = None
    pull_in_v: float | None = None
    closing_a: float | None = None
    contact_a: float | None = None


class Shown(msgspec.Struct, frozen=True):
    """What a run of the warm-up showed of a proposal.

    The supply came to its limit first at ``limited_s``, None where it never did, and was there for ``held_s`` at the
    longest stretch. ``peak_ratio`` is the most volts over rated volts at any heater; ``pulls_in_s`` and
    ``contact_peak_a`` are of the relay. A supply that cuts out or latches off counts as starting only where it does so
    at the first try.
    """

    outcome: Outcome
    limited_s: float | None
    held_s: float
    peak_a: float
    peak_ratio: float
    ready_s: float | None
    pulls_in_s: float | None = None
    contact_peak_a: float | None = None

    @property
    def starts(self) -> bool:
        """Whether the amplifier starts."""
        return self.outcome == "starts"


class Variant(msgspec.Struct, frozen=True):
    """One way to let a supply start softly.

    ``fits`` says that it starts, that every heater is inside its limits in the end and that nothing is overloaded.
    ``remedy`` is None where nothing that can be had would do, and ``shown`` then too.
    """

    way: Way
    name: Sentence
    reason: Sentence
    remedy: Remedy | None
    fits: bool
    figures: Figures
    shown: Shown | None = None
