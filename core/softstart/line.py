"""What one supply has to start: its line cold and warm, and how its heaters fare in a steady state."""

from __future__ import annotations

from dataclasses import dataclass

from msgspec.structs import replace

from core.assess import assess
from core.catalogue import Catalogue
from core.circuit import Island, build
from core.elements.branch import Hot, Source
from core.results import COLD, NOMINAL, Assessment, HeaterPoint, Limits
from core.sheet import AnyPart, Battery, Chassis, DcSupply, Elevation, Sheet, Winding, split_terminal
from core.terminals import terminal_names

ENOUGH_A = 1e6
"""Amperes that no heater line asks for: a supply of so many has no limit."""


@dataclass(frozen=True)
class Line:
    """One supply and the heaters it feeds, as they would be if the supply had no limit.

    A part in series goes to ``terminal``, between it and ``wires``; ``back`` is the supply's other terminal.
    ``open_v`` volts behind ``cold_ohm`` ohms give the first current ``cold_a``; ``warm_a`` flows at the end.
    """

    sheet: Sheet
    catalogue: Catalogue
    supply: DcSupply | Battery | Winding
    terminal: str
    back: str
    wires: tuple[str, ...]
    heaters: tuple[str, ...]
    open_v: float
    cold_a: float
    warm_a: float

    @property
    def cold_ohm(self) -> float:
        """Ohms in the way of the first current, those of the supply among them."""
        return self.open_v / self.cold_a

    @property
    def is_dc(self) -> bool:
        """Whether direct current flows."""
        return not isinstance(self.supply, Winding)


@dataclass(frozen=True)
class Warm:
    """How a line works in the end: amperes and volts of the supply, and the heater that is worst off.

    ``off_pct`` is how far that heater is off its rating, ``beyond_pct`` how far outside its limits: below zero
    where it is inside. ``part_v`` and ``part_w`` are of the part that was asked about.
    """

    a: float
    v: float
    heater: HeaterPoint
    off_pct: float
    beyond_pct: float
    limit_pct: float
    part_v: float = 0.0
    part_w: float = 0.0

    @property
    def is_fit(self) -> bool:
        """Whether every heater is inside its limits."""
        return self.beyond_pct <= 1e-6


def line_of(sheet: Sheet, catalogue: Catalogue, supply_id: str) -> Line | None:
    """The line of a supply; ``catalogue`` has the sheet's own types.

    None where there is nothing to start softly: no heater is fed, other supplies feed it too, a winding has a tap,
    a relay is there already, both sides of the supply are tied to the chassis, or the line cannot be solved.
    """
    supply = sheet.part_by_id.get(supply_id)
    if not isinstance(supply, DcSupply | Battery | Winding) or (
        isinstance(supply, Winding) and supply.centre_tap
    ):
        return None
    free = with_supply(sheet, unlimited(supply))
    island = island_of(free, catalogue, supply_id)
    if island is None or island.relays:
        return None
    side = _side_of(free, supply)
    heaters = tuple(dict.fromkeys(b.owner for b in island.branches if isinstance(b.law, Hot)))
    if side is None or not heaters:
        return None
    assessment = assess(free, catalogue)
    cold, warm = (assessment.points[name].supplies.get(supply_id) for name in (COLD, NOMINAL))
    if cold is None or warm is None or not 0 < warm.a <= cold.a:
        return None
    terminal, back, wires = side
    return Line(
        sheet, catalogue, supply, terminal, back, wires, heaters, _open_v(supply, sheet), cold.a, warm.a
    )


def warm_of(line: Line, sheet: Sheet, part_id: str = "") -> Warm | None:
    """How the line works at nominal mains once a sheet that came of its own is warm; None where it does not."""
    assessment = assess(sheet, line.catalogue)
    point = assessment.points[NOMINAL]
    given = point.supplies.get(line.supply.id)
    found = [one for part_id in line.heaters for one in point.heaters.get(part_id, ())]
    if given is None or not found:
        return None
    heater = max(found, key=lambda one: _beyond(assessment, one))
    limits = assessment.limits.get(heater.key, Limits())
    off = limits.deviation_pct(heater)
    limit = limits.high_pct if off - limits.high_pct >= limits.low_pct - off else limits.low_pct
    part = point.branches.get(part_id)
    loss = (part.v, part.w) if part else (0.0, 0.0)
    return Warm(given.a, given.v, heater, off, _beyond(assessment, heater), limit, *loss)


def closing_a(line: Line, pull_in_v: float) -> float:
    """About what the supply gives when the contact closes while ``pull_in_v`` volts are on the line, amperes.

    The heaters are taken to be as warm as those volts keep them: their resistance then takes the supply's own volts.
    A run of the warm-up says how much more it is while they are still behind.
    """
    if pull_in_v >= line.open_v or not isinstance(line.supply, DcSupply):
        return line.warm_a
    low = replace(unlimited(line.supply), set_v=pull_in_v)
    point = assess(with_supply(line.sheet, low), line.catalogue).points[NOMINAL].supplies.get(line.supply.id)
    return line.warm_a if point is None else point.a * line.open_v / pull_in_v


def _beyond(assessment: Assessment, heater: HeaterPoint) -> float:
    """Per cent by which a heater is outside its limits; below zero where it is inside."""
    limits = assessment.limits.get(heater.key, Limits())
    off = limits.deviation_pct(heater)
    low = -limits.high_pct if limits.low_is_harmless else limits.low_pct - off
    return max(off - limits.high_pct, low)


def with_supply(sheet: Sheet, supply: AnyPart) -> Sheet:
    """A sheet with another part in the place of the one of its id."""
    return replace(sheet, parts=tuple(supply if part.id == supply.id else part for part in sheet.parts))


def unlimited(supply: AnyPart) -> AnyPart:
    """A supply that gives whatever is asked of it."""
    if not isinstance(supply, DcSupply):
        return supply
    return replace(supply, limit_a=ENOUGH_A, overload="constant-current", foldback_a=None)


def _open_v(supply: DcSupply | Battery | Winding, sheet: Sheet) -> float:
    """Volts of a supply that gives nothing, at nominal mains."""
    if isinstance(supply, DcSupply):
        return supply.set_v
    if isinstance(supply, Battery):
        return supply.emf_v
    mains = sheet.mains.nominal_v / (supply.rated_mains_v or sheet.mains.nominal_v)
    return supply.rated_v * (1 + supply.regulation_pct / 100) * mains


def island_of(sheet: Sheet, catalogue: Catalogue, supply_id: str) -> Island | None:
    """The island of a supply; None where another one feeds it too."""
    for island in build(sheet, catalogue).islands:
        owners = {branch.owner for branch in island.sources if not _is_bias(branch.law)}
        if supply_id in owners:
            return island if owners == {supply_id} else None
    return None


def _is_bias(law: object) -> bool:
    return isinstance(law, Source) and law.bias


def _side_of(sheet: Sheet, supply: AnyPart) -> tuple[str, str, tuple[str, ...]] | None:
    """A terminal of a supply that is not tied to the chassis, its other terminal, and the wires on the first."""
    names = terminal_names(supply) or ()
    for name in names:
        terminal = f"{supply.id}.{name}"
        wires = [wire for wire in sheet.wires if terminal in (wire.start, wire.end)]
        far = [wire.end if wire.start == terminal else wire.start for wire in wires]
        ties = [isinstance(sheet.part_by_id.get(split_terminal(end)[0]), Chassis | Elevation) for end in far]
        if wires and not any(ties):
            back = next(f"{supply.id}.{other}" for other in names if other != name)
            return (terminal, back, tuple(wire.id for wire in wires)) if back not in far else None
    return None
