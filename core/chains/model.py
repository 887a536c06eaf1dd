"""The values of the chain builder: what is to be heated, what feeds it, what was chosen, and the plan."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal, NamedTuple

import msgspec

from core.results import Sentence
from core.sheet import AnyPart, Wire

Arrangement = Literal["parallel", "pairs", "series"]
Reference = Literal["none", "tap", "pair", "side"]
NewSupply = Literal["winding", "dc_supply"]
SizeSystem = Literal["mm2", "awg"]
Point = tuple[float, float]
Places = Callable[[str], Point | None]
"""Where a terminal such as ``V1.4`` lies on the sheet; None where that is not known."""


class Way(NamedTuple):
    """One way to heat a tube: pairs of pins that may be fed, pins to strap, and its rating there."""

    feeds: tuple[tuple[str, str], ...]
    straps: tuple[tuple[str, str], ...]
    rated_v: float
    rated_a: float


class Load(msgspec.Struct, frozen=True, kw_only=True):
    """One socket or lamp to be heated; ``pins`` are all pins of its heater.

    ``low_pct`` and ``high_pct`` are the limits of its volts, ``tolerance_a_pct`` that of its current in a string, or
    None where volts count there too. ``owns_cathode`` says that a rectifier's heater is its cathode or joined to it.
    """

    id: str
    type: str
    at: Point
    pins: tuple[str, ...]
    ways: tuple[Way, ...]
    low_pct: float
    high_pct: float
    tolerance_a_pct: float | None = None
    cathode_v: float | None = None
    above_v: tuple[float, float] | None = None
    below_v: tuple[float, float] | None = None
    is_direct: bool = False
    owns_cathode: bool = False
    is_pulled: bool = False
    is_lamp: bool = False
    duty: int = 0

    @property
    def watts(self) -> float:
        """Rated watts, the same whichever way it is wired."""
        return self.ways[0].rated_v * self.ways[0].rated_a


class Feed(msgspec.Struct, frozen=True, kw_only=True):
    """Two terminals of a supply that a chain may begin at.

    ``emf_v`` at nominal mains behind ``ohm``, ``rated_v`` what it is called by, ``rated_a`` what it may give (None
    where nothing is said). ``tap`` is its centre tap, ``limit`` says that its volts give way beyond ``rated_a``.
    """

    part: AnyPart
    first: str
    second: str
    rated_v: float
    emf_v: float
    ohm: float = 0.0
    rated_a: float | None = None
    tap: str | None = None
    is_ac: bool = False
    has_limit: bool = False
    is_mains: bool = False
    is_new: bool = False
    is_solved: bool = True

    @property
    def key(self) -> str:
        """What tells this feed from every other of the sheet: ``T1.a-ct``."""
        return f"{self.first}-{self.second.rpartition('.')[2]}"


class Size(NamedTuple):
    """The size of a conductor, one of the two given."""

    awg: int | None = None
    area_mm2: float | None = None


class Options(msgspec.Struct, frozen=True, kw_only=True):
    """What was chosen.

    ``volts`` are those of the line (of the whole line for pairs; of no matter for a string, whose volts follow from
    its heaters). ``feed`` is a :attr:`Feed.key`, or empty for a new supply of kind ``new_supply``. ``size`` None takes
    the size from the current, in ``system`` and never below ``LEAST``. ``allowance_m`` is added to every wire.
    """

    arrangement: Arrangement = "parallel"
    volts: float = 6.3
    feed: str = ""
    new_supply: NewSupply = "winding"
    reference: Reference = "none"
    replace: bool = False
    shunts: bool = False
    size: Size | None = None
    system: SizeSystem = "mm2"
    allowance_m: float = 0.04


LEAST: dict[str, Size] = {"mm2": Size(area_mm2=0.5), "awg": Size(awg=20)}
"""The thinnest wire taken without being asked for: common practice, for its strength rather than its current."""


class LeftOut(NamedTuple):
    """A socket that is not wired, and why."""

    id: str
    says: Sentence


class Caution(NamedTuple):
    """What the plan warns of; ``rules`` are the findings that may follow, ``where`` the parts they are about."""

    rules: tuple[str, ...]
    where: tuple[str, ...]
    says: Sentence


class ChainPlan(msgspec.Struct, frozen=True, kw_only=True):
    """What would be laid: ids in the order of the chain, parts and wires to add, wires to take away.

    ``problem`` says why nothing can be built; then there is nothing to add. ``volts`` and ``amps`` are those of the
    chain at its rating, ``total_a`` with what its supply feeds already; ``supply`` names the supply;
    ``is_tied`` says that it is tied to the chassis already.
    """

    order: tuple[str, ...] = ()
    parts: tuple[AnyPart, ...] = ()
    wires: tuple[Wire, ...] = ()
    removed: tuple[str, ...] = ()
    left_out: tuple[LeftOut, ...] = ()
    cautions: tuple[Caution, ...] = ()
    notes: tuple[Sentence, ...] = ()
    problem: Sentence | None = None
    volts: float = 0.0
    amps: float = 0.0
    total_a: float = 0.0
    supply: str = ""
    supply_a: float | None = None
    is_tied: bool = False

    @property
    def load_pct(self) -> float | None:
        """Load of the supply in per cent of its rating; None where it has none."""
        return None if not self.supply_a else self.total_a / self.supply_a * 100

    @property
    def length_m(self) -> float:
        """Length of all wires, straps not counted."""
        return sum(wire.length_m or 0.0 for wire in self.wires)
