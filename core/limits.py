"""What each heater is judged by, decided once for the rules, the drawing and the tables."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal, NamedTuple

from core.catalogue import Catalogue
from core.catalogue.types import TubeType
from core.results import HeaterPoint
from core.sheet import Lamp, Sheet, Tube
from core.strings import Topology

HeaterState = Literal["ok", "over", "under", "cold"]

# An exactly met limit is met: figures are compared with this much room for rounding in the last digits.
ROUNDING = 1e-9
# A heater with less than this share of its rated volts counts as cold: it does not even glow.
COLD_SHARE = 0.05

DEFAULT_V_PCT = 10.0
STRING_TOLERANCE_PCT = 6.0


class Limits(NamedTuple):
    """The window of one heater section: per cent off its rated amperes in a string, else off its rated volts.

    ``low_pct`` is None where too little does no harm: a lamp, or a lamp's share of a tapped heater.
    """

    by_current: bool = False
    low_pct: float | None = -DEFAULT_V_PCT
    high_pct: float = DEFAULT_V_PCT

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
        return "under" if self.low_pct is not None and off < self.low_pct - slack else "ok"


def volt_limits(kind: TubeType) -> tuple[float, float]:
    """Lowest and highest working volts of a type, in per cent off its rating."""
    low = -DEFAULT_V_PCT if kind.low_v_pct is None else kind.low_v_pct
    high = DEFAULT_V_PCT if kind.high_v_pct is None else kind.high_v_pct
    return low, high


def current_tolerance(kind: TubeType) -> float:
    """By how many per cent the current of a string heater may be off."""
    return STRING_TOLERANCE_PCT if kind.tolerance_a_pct is None else kind.tolerance_a_pct


def limits_of(sheet: Sheet, catalogue: Catalogue, topology: Topology) -> dict[str, Limits]:
    """The limits of every heater section and lamp on a sheet by its key ``V1:4-9``.

    A heater in series with that of another part is judged by its current, if its type is rated by current at
    all; every other one by its volts. Tubes that are pulled or of unknown type have none.
    """
    strung, lit = strung_keys(topology), lit_keys(sheet, catalogue, topology)
    found: dict[str, Limits] = {}
    types: dict[str, TubeType | None] = {}
    for part in sheet.parts:
        if isinstance(part, Lamp):
            found[f"{part.id}:1-2"] = Limits(low_pct=None)
        elif isinstance(part, Tube) and not part.pulled:
            if part.type not in types:
                types[part.type] = catalogue.tube(part.type)
            kind = types[part.type]
            for section in kind.sections if kind else ():
                key = f"{part.id}:{section.name}"
                if kind is not None:
                    found[key] = _limits(kind, key in strung, key in lit)
    return found


def _limits(kind: TubeType, is_strung: bool, is_lit: bool) -> Limits:
    if is_strung and kind.rating_class != "voltage":
        tolerance = current_tolerance(kind)
        return Limits(True, -tolerance, tolerance)
    low, high = volt_limits(kind)
    return Limits(False, None if is_lit else low, high)


def owner_of(key: str) -> str:
    """The part of a section by the section's key ``V1:4-9``."""
    return key.rpartition(":")[0]


def strung_keys(topology: Topology) -> frozenset[str]:
    """Sections in series with the heater of another part."""
    return frozenset(
        key for group in topology.series if len({owner_of(key) for key in group}) > 1 for key in group
    )


def lit_keys(sheet: Sheet, catalogue: Catalogue, topology: Topology) -> frozenset[str]:
    """Sections of lamp-tapped heaters that have a lamp across them."""
    lamps = {part.id for part in sheet.parts if isinstance(part, Lamp)}
    if not lamps:
        return frozenset()
    lit = [group for group in topology.parallel if any(owner_of(key) in lamps for key in group)]
    return frozenset(key for group in lit for key in group if _has_lamp_tap(key, sheet, catalogue))


def _has_lamp_tap(key: str, sheet: Sheet, catalogue: Catalogue) -> bool:
    part = sheet.part_by_id[owner_of(key)]
    kind = catalogue.tube(part.type) if isinstance(part, Tube) else None
    return kind is not None and kind.tap_role == "lamp"


def state_of(heater: HeaterPoint, limits: Mapping[str, Limits]) -> HeaterState:
    """The state of a section by the limits of its sheet."""
    return limits.get(heater.key, Limits()).state(heater)
