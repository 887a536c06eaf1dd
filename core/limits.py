"""What each heater is judged by, decided once for the rules, the drawing and the tables."""

from __future__ import annotations

from core.catalogue import Catalogue
from core.catalogue.types import TubeType
from core.results import DEFAULT_V_PCT, Limits
from core.sheet import Lamp, Sheet, Tube
from core.strings import Topology

STRING_TOLERANCE_PCT = 6.0


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
            found[f"{part.id}:1-2"] = Limits(low_is_harmless=True)
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
    return Limits(False, low, high, low_is_harmless=is_lit)


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
