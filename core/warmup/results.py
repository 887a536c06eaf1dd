"""What a run of the warm-up says. Frozen values; volts and amperes are rms or DC, temperatures kelvin."""

from __future__ import annotations

from typing import Literal, NamedTuple

import msgspec

from core.elements.tungsten import Array
from core.results import NOMINAL, Finding, Unsolved
from core.sentences import Sentence, sentence

READY_SHARE = 0.9
"""A tube is ready when its cathode has made this share of the rise from the room to its rated temperature."""

AFTER_DIP = "after a dip"

What = Literal[
    "mains off",
    "mains on",
    "at its limit",
    "regulates",
    "cuts out",
    "tries again",
    "latches off",
    "pulls in",
    "closes",
    "drops out",
    "releases",
    "stops here",
]

Outcome = Literal["starts", "slow", "limits", "retries", "latched"]
"""How a supply ends: it regulates; it is still at its limit but on its way; it stays at its limit for ever; it cuts
out and tries again for ever; it has latched off."""


class Start(msgspec.Struct, frozen=True):
    """How the amplifier is switched on: at which mains, for how many seconds, and whether there is a dip.

    The mains goes off at ``off_at_s`` for ``off_for_s``; None for a start without a dip. ``name`` is that of the
    condition: nominal, low mains, high mains or after a dip.
    """

    mains_v: float
    name: str = NOMINAL
    seconds: float = 60.0
    off_at_s: float | None = None
    off_for_s: float = 0.0


class Event(msgspec.Struct, frozen=True, gc=False):
    """Something switched: when, which part (empty for the mains), and what it did."""

    t_s: float
    part: str
    what: What


class HeaterWarmup(msgspec.Struct, frozen=True, gc=False):
    """One heater section or lamp on its way.

    ``warmup_s`` is its time in the standard test circuit, ``estimated`` where that is not published;
    ``ready_s`` None where it does not get ready in this run, ``own_ready_s`` what it takes alone at rated volts
    after being cold.
    """

    owner: str
    pins: str
    rated_v: float
    rated_a: float
    warmup_s: float
    estimated: bool
    peak_v: float
    peak_at_s: float
    ready_s: float | None
    own_ready_s: float
    has_cathode: bool

    @property
    def key(self) -> str:
        """The section's key as it stands in strings: ``V1:4-9``."""
        return f"{self.owner}:{self.pins}"

    @property
    def peak_v_ratio(self) -> float:
        """Highest volts over rated volts."""
        return self.peak_v / self.rated_v


class SupplyWarmup(msgspec.Struct, frozen=True, gc=False):
    """One supply on its way.

    ``asked_a`` is what the cold heaters would take at the first instant, ``peak_a`` the most it gave; ``limit_a``
    its limit, ``rated_a`` its rating, None without. ``decided`` is False where a longer run might end otherwise.
    ``peak_loss_w`` and ``end_loss_w`` are the heat in a linear regulator, None for other supplies.
    """

    asked_a: float
    peak_a: float
    peak_at_s: float
    limit_a: float | None
    rated_a: float | None
    restarts: int
    outcome: Outcome
    decided: bool
    energy_j: float
    regulates_s: float | None
    end_v: float
    end_a: float
    peak_loss_w: float | None = None
    end_loss_w: float | None = None

    @property
    def starts(self) -> bool:
        """Whether the amplifier starts on this supply."""
        return self.outcome == "starts"


class ThermistorWarmup(msgspec.Struct, frozen=True, gc=False):
    """One thermistor on its way: most amperes and kelvin; ohms when switched on, at the coldest of a dip's end too."""

    peak_a: float
    peak_k: float
    max_a: float | None
    first_ohm: float
    end_ohm: float
    restart_ohm: float | None = None


class RelayWarmup(msgspec.Struct, frozen=True, gc=False):
    """One relay on its way: when it pulled in and its contact closed first, how often it moved, most coil volts.

    ``contact_peak_a`` is the most through its contact, ``contact_a`` what that is rated for.
    """

    pulls_in_s: float | None
    closes_s: float | None
    moves: int
    coil_peak_v: float
    contact_peak_a: float
    contact_a: float | None


class FuseWarmup(msgspec.Struct, frozen=True, gc=False):
    """One fuse on its way. ``excess_i2t`` is what I²t at switch-on exceeds that of the final current, A²s.

    ``seconds_over`` are the longest stretches above each multiple of its rating, as pairs.
    """

    peak_a: float
    end_a: float
    i2t: float
    excess_i2t: float
    melting_i2t: float | None
    seconds_over: tuple[tuple[float, float], ...] = ()


class ResistorWarmup(msgspec.Struct, frozen=True, gc=False):
    """One resistor on its way: most watts, mean over the worst five seconds, joules in all."""

    peak_w: float
    pulse_w: float
    energy_j: float
    rated_w: float | None


class HeaterTrace(NamedTuple):
    """One heater section over time, arrays ``(n,)``: volts, amperes, kelvin."""

    v: Array
    a: Array
    heater_k: Array
    cathode_k: Array


class SupplyTrace(NamedTuple):
    """One supply over time, arrays ``(n,)``: terminal volts, amperes."""

    v: Array
    a: Array


class BranchTrace(NamedTuple):
    """One wire or passive part over time, arrays ``(n,)``; ``kelvin`` for thermistors only."""

    v: Array
    a: Array
    w: Array
    kelvin: Array | None = None


class Traces(NamedTuple):
    """Everything over time. ``t_s`` ``(n,)`` rises; where something switches a time stands twice, before and after.

    Heaters are by section key, supplies and ``relays`` (pulled in or not) by id, ``branches`` by branch key: all
    thermistors, relay coils, fuses, resistors and lamps' shunts, but no wires.
    """

    t_s: Array
    heaters: dict[str, HeaterTrace]
    supplies: dict[str, SupplyTrace]
    branches: dict[str, BranchTrace]
    relays: dict[str, Array]


class Bound(msgspec.Struct, frozen=True):
    """A line whose run was ended early: when, why, and the parts to blame."""

    t_s: float
    reason: Sentence
    ids: tuple[str, ...]


TOO_MANY = sentence("so much switched that the run was ended early")
CHATTERS = sentence("the relay chatters: pulling in takes away what pulled it in")


class WarmupSummary(msgspec.Struct, frozen=True):
    """A run in figures. Heaters are by owner, the rest by id."""

    start: Start
    heaters: dict[str, tuple[HeaterWarmup, ...]]
    supplies: dict[str, SupplyWarmup]
    thermistors: dict[str, ThermistorWarmup]
    relays: dict[str, RelayWarmup]
    fuses: dict[str, FuseWarmup]
    resistors: dict[str, ResistorWarmup]
    events: tuple[Event, ...]
    bounds: tuple[Bound, ...] = ()
    unsolved: tuple[Unsolved, ...] = ()

    @property
    def ready_s(self) -> float | None:
        """When the last tube is ready, or None if one is not."""
        times = [one.ready_s for sections in self.heaters.values() for one in sections if one.has_cathode]
        return None if not times or None in times else max(t for t in times if t is not None)

    @property
    def restarts(self) -> int:
        """How often a supply tried again."""
        return sum(one.restarts for one in self.supplies.values())


Findings = tuple[Finding, ...]
