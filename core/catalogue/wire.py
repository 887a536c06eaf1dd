"""Copper wire: size to ohms per metre, by AWG number or by metric cross-section.

AWG diameters follow the formula of ASTM B258; resistivity is that of annealed copper, IACS, 1/58 Ω·mm²/m at
20 °C (IEC 60028). Metric sizes are flexible conductors, IEC 60228 class 5 plain, with the small sizes of
DIN VDE 0295; those figures are the highest permitted resistance.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from functools import cache, lru_cache

from core.catalogue.rows import Field, Number, Reader
from resources import read_bytes

COPPER_ALPHA = 0.00393
"""Temperature coefficient of the resistance of annealed copper at 20 °C, 1/K (IEC 60028)."""

IACS_OHM_MM2_PER_M = 1.0 / 58.0
"""Resistivity of annealed copper at 20 °C, Ω·mm²/m (IEC 60028)."""

AWG_FIELDS: dict[str, Field] = {
    "ohm_per_kft": Number("ohm/1000 ft", 1e-3, 1e4),
    "chassis_a": Number("A", 1e-3, 1e3),
    "transmission_a": Number("A", 1e-3, 1e3),
}
IEC60228_FIELDS: dict[str, Field] = {
    name: Number("ohm/km", 1e-3, 1e4)
    for name in ("class2_plain", "class2_tinned", "class5_plain", "class5_tinned")
}


def awg_diameter_mm(awg: float) -> float:
    """Diameter of the solid conductor of gauge ``awg``: 0.127 mm · 92^((36 − awg)/39). ASTM B258."""
    return 0.127 * math.exp(math.log(92.0) * (36.0 - awg) / 39.0)


@lru_cache(maxsize=256)
def awg_area_mm2(awg: float) -> float:
    """Cross-section of gauge ``awg``, mm²."""
    return math.pi / 4.0 * awg_diameter_mm(awg) ** 2


def awg_ohm_per_m(awg: float) -> float:
    """Resistance of gauge ``awg`` at 20 °C, Ω/m, annealed copper (17.241 Ω·mm²/km)."""
    return IACS_OHM_MM2_PER_M / awg_area_mm2(awg)


def iec60228_ohm_per_m(area_mm2: float) -> float:
    """Highest resistance of a flexible conductor of ``area_mm2`` at 20 °C, Ω/m.

    A tabulated size gives the figure of the table. Between sizes the logarithms are taken as a straight line;
    outside the table the product of resistance and cross-section stays that of the nearest size.
    Raises ``ValueError`` unless ``area_mm2`` is positive.
    """
    sizes = _class5()
    _check_positive(area_mm2)
    smallest, largest = min(sizes), max(sizes)
    if not smallest <= area_mm2 <= largest:
        nearest = smallest if area_mm2 < smallest else largest
        return sizes[nearest] * nearest / area_mm2
    return _log_log(sizes, area_mm2)


def ohm_per_m(awg: float | None = None, area_mm2: float | None = None, temp_c: float = 20.0) -> float:
    """Resistance of a copper wire at ``temp_c`` °C, Ω/m, its size by ``awg`` or by ``area_mm2``.

    Raises ``ValueError`` unless exactly one size is given.
    """
    if (awg is None) == (area_mm2 is None):
        raise ValueError("give either awg or area_mm2")
    cold = awg_ohm_per_m(awg) if awg is not None else iec60228_ohm_per_m(area_mm2 or 0.0)
    return cold * (1.0 + COPPER_ALPHA * (temp_c - 20.0))


def chassis_limit_a(awg: float | None = None, area_mm2: float | None = None) -> float:
    """Current that a single wire in free air may carry, A: a rule of thumb for wiring inside a chassis.

    From the chassis-wiring column of the Handbook of Electronic Tables and Formulas; between and beyond its
    sizes the logarithms of current and cross-section are taken as straight lines. Not for bundles.
    Raises ``ValueError`` unless exactly one size is given.
    """
    if (awg is None) == (area_mm2 is None):
        raise ValueError("give either awg or area_mm2")
    area = awg_area_mm2(awg) if awg is not None else area_mm2 or 0.0
    _check_positive(area)
    return _log_log(_chassis(), area)


def table_sizes() -> tuple[tuple[int, ...], tuple[float, ...]]:
    """The sizes that the tables hold: gauge numbers and cross-sections in mm², each from the thickest."""
    awgs = _column("wire_awg.csv", AWG_FIELDS, "chassis_a")
    return tuple(sorted(round(awg) for awg in awgs)), tuple(sorted(_class5(), reverse=True))


def _check_positive(area_mm2: float) -> None:
    if not (math.isfinite(area_mm2) and area_mm2 > 0.0):
        raise ValueError(f"a wire has a cross-section above zero, not {area_mm2:g} mm²")


def _log_log(table: Mapping[float, float], x: float) -> float:
    """The value at ``x`` on straight lines through the logarithms; the last line goes on outside."""
    if x in table:
        return table[x]
    xs = sorted(table)
    above = next((index for index, size in enumerate(xs) if size > x), len(xs) - 1)
    low, high = xs[max(above, 1) - 1], xs[max(above, 1)]
    share = math.log(x / low) / math.log(high / low)
    return float(table[low] * (table[high] / table[low]) ** share)


@cache
def _class5() -> dict[float, float]:
    """Ω/m by mm²."""
    column = _column("wire_iec60228.csv", IEC60228_FIELDS, "class5_plain")
    return {size: ohm_per_km / 1000.0 for size, ohm_per_km in column.items()}


@cache
def _chassis() -> dict[float, float]:
    """A by mm²."""
    column = _column("wire_awg.csv", AWG_FIELDS, "chassis_a")
    return {awg_area_mm2(awg): amps for awg, amps in column.items()}


def _column(name: str, fields: Mapping[str, Field], wanted: str) -> dict[float, float]:
    """One column of a wire table by size, the size being its designation. Raises ``CatalogueError``."""
    text = read_bytes("catalogue", name).decode()
    reader = Reader(name)
    groups = reader.entries(text, fields)
    reader.finish()
    return {
        float(size): float(entry.value)
        for size, entries in groups.items()
        for entry in entries
        if entry.field == wanted
    }
