"""How many tubes still start on one supply, by what the supply does when it is asked for too much.

Tubes, or whole strings of them, are pulled one by one, those with the smallest cold current first, until the warm-up
of the rest starts. What the data sheets of supplies leave open is kept apart from what is certain: the supply is run
with its own figures, and once more as one that is as willing as such supplies are.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Iterable
from typing import Literal, NamedTuple

import msgspec
from msgspec.structs import replace

from core.assess import assess
from core.catalogue import Catalogue
from core.catalogue.types import Section, TubeType
from core.circuit.merging import Merging
from core.elements.branch import Hot
from core.limits import owner_of
from core.nearby import around
from core.results import COLD, NOMINAL, ROUNDING, Assessment
from core.sentences import Sentence, Text, sentence
from core.sheet import AnyPart, DcSupply, Mains, Overload, Sheet, Tube, Wire
from core.softstart.line import island_of, unlimited, with_supply
from core.softstart.words import BEHAVIOURS
from core.warmup import Start, warm_up

WILLING_TIMES = 1.35
"""Protection of switching supplies sets in at 105 to 150 % of the rating: common practice, no two makers agree."""

WILLING_TRIP_S = 0.15
"""How long a willing supply holds at its limit before it gives up.

Cut-out times are seldom published. This is an estimate: from 0.08 s on such a supply of 12 V 3 A starts the four boards
that one was seen to start, below 0.17 s not the five that it was seen not to start.
"""

PATIENCE_S = 90.0
"""A supply that has tried for so long counts as not starting; the same for one that is at its limit for as long."""

OVERLOADS: tuple[Overload, ...] = ("constant-current", "hiccup", "foldback", "latch-off")

Verdict = Literal["starts", "uncertain", "does not start"]


class Count(msgspec.Struct, frozen=True):
    """How many start on a supply: ``certain`` with its own figures, ``possible`` with the most willing ones."""

    certain: int
    possible: int

    def verdict(self, number: int) -> Verdict:
        """What is to be expected of so many."""
        if number <= self.certain:
            return "starts"
        return "uncertain" if number <= self.possible else "does not start"


class Counts(msgspec.Struct, frozen=True):
    """How many of the units on a supply start, by its overload type, its own type first.

    ``units`` are tubes or whole strings by their ids, the heaviest cold current first, ``cold_a`` what each takes at
    first from a supply without limit.
    """

    supply: str
    units: tuple[tuple[str, ...], ...]
    cold_a: tuple[float, ...]
    by_overload: dict[Overload, Count]

    @property
    def own(self) -> Overload:
        """The overload type of the supply as it is on the sheet."""
        return next(iter(self.by_overload))


def told(counts: Counts, overload: Overload) -> Sentence:
    """How many start on a supply that does this in overload, and what is uncertain about it."""
    count = counts.by_overload[overload]
    values: dict[str, Text] = {
        "kind": BEHAVIOURS[overload],
        "all": str(len(counts.units)),
        "sure": str(count.certain),
        "more": str(count.possible),
    }
    if count.certain == count.possible:
        return sentence("On a supply {kind}, {sure} of {all} start.", **values)
    return sentence(
        "On a supply {kind}, {sure} of {all} start for certain; up to {more} may,"
        " depending on when it gives up, which is seldom published.",
        **values,
    )


def how_many_start(
    sheet: Sheet,
    catalogue: Catalogue,
    supply_id: str,
    tubes: Iterable[str] | None = None,
    progress: Callable[[float], bool] | None = None,
) -> Counts | None:
    """Count the tubes of one DC supply that start; ``catalogue`` has the sheet's own types.

    With ``tubes`` only the units that hold one of these are counted, and the rest of the line stays as it is. None
    where the supply is no DC supply, feeds no tube, or is not the only one on its line. ``progress`` is told the
    share done and answers whether to go on.

    Raises
    ------
    core.errors.Cancelled
        When ``progress`` has answered that nothing more is wanted.
    """
    supply = sheet.part_by_id.get(supply_id)
    if not isinstance(supply, DcSupply):
        return None
    line = around(sheet, (supply_id,))
    units = _units(line, catalogue, supply)
    if tubes is not None:
        wanted = frozenset(tubes)
        units = [unit for unit in units if not wanted.isdisjoint(unit.tubes)]
    if not units:
        return None
    ids = tuple(unit.tubes for unit in units)
    kinds = (supply.overload, *(one for one in OVERLOADS if one != supply.overload))
    runs = _Runs(line, catalogue, units, progress, 2 * len(kinds))
    by_overload: dict[Overload, Count] = {}
    for kind in kinds:
        own = replace(supply, overload=kind)
        certain = runs.most(own)
        by_overload[kind] = Count(certain, max(certain, runs.most(willing(own))))
    return Counts(supply_id, ids, tuple(unit.cold_a for unit in units), by_overload)


def willing(supply: DcSupply) -> DcSupply:
    """The supply as one that gives more than its rating and holds on for longer."""
    foldback = supply.foldback_a
    return replace(
        supply,
        limit_a=WILLING_TIMES * supply.limit_a,
        foldback_a=None if foldback is None else WILLING_TIMES * foldback,
        trip_s=max(supply.trip_s, WILLING_TRIP_S),
    )


class _Unit(NamedTuple):
    """A tube or the tubes of a string, and what they take cold and warm from a supply without limit."""

    tubes: tuple[str, ...]
    cold_a: float
    warm_a: float


class _Runs:
    """Runs of a line with the first of its units in place; ``searches`` are to be made in all."""

    def __init__(
        self,
        line: Sheet,
        catalogue: Catalogue,
        units: list[_Unit],
        progress: Callable[[float], bool] | None,
        searches: int,
    ) -> None:
        self._line, self._catalogue, self._units = line, catalogue, units
        self._progress = progress
        self._done, self._all = 0, searches * len(units).bit_length()

    def most(self, supply: DcSupply) -> int:
        """The largest number of units that starts, found by halving: what starts with more starts with fewer."""
        numbers = range(1, len(self._units) + 1)
        return bisect_right(numbers, False, key=lambda number: not self._starts(supply, number))

    def _starts(self, supply: DcSupply, number: int) -> bool:
        if sum(unit.warm_a for unit in self._units[:number]) > supply.limit_a * (1 + ROUNDING):
            self._done += 1
            return False  # nor would it feed them warm
        pulled = {one for unit in self._units[number:] for one in unit.tubes}
        sheet = with_supply(_without(self._line, pulled), supply)
        start = Start(sheet.mains.nominal_v, seconds=PATIENCE_S)
        run = warm_up(sheet, self._catalogue, start, self._told)
        self._done += 1
        found = run.summary.supplies.get(supply.id)
        return found is not None and found.starts

    def _told(self, share: float) -> bool:
        return self._progress is None or self._progress(min(1.0, (self._done + share) / self._all))


def _without(sheet: Sheet, pulled: set[str]) -> Sheet:
    def alter(part: AnyPart) -> AnyPart:
        return replace(part, pulled=True) if isinstance(part, Tube) and part.id in pulled else part

    return replace(sheet, parts=tuple(alter(part) for part in sheet.parts))


def _units(sheet: Sheet, catalogue: Catalogue, supply: DcSupply) -> list[_Unit]:
    """Tubes, or all tubes of a string, with the cold current of each, the heaviest first."""
    free = with_supply(sheet, unlimited(supply))
    island = island_of(free, catalogue, supply.id)
    if island is None:
        return []
    assessment = assess(free, catalogue)
    tubes = {part.id for part in sheet.parts if isinstance(part, Tube)}
    owners = dict.fromkeys(b.owner for b in island.branches if isinstance(b.law, Hot))
    joined: Merging[str] = Merging()
    for group in assessment.strings:
        for key in group[1:]:
            joined.join(owner_of(group[0]), owner_of(key))
    units: dict[str, list[str]] = {}
    for owner in owners:
        if owner in tubes:
            units.setdefault(joined.find(owner), []).append(owner)
    found = [
        _Unit(tuple(unit), *(_unit_a(assessment, unit, supply.set_v, name) for name in (COLD, NOMINAL)))
        for unit in units.values()
    ]
    return sorted(found, key=lambda unit: -unit.cold_a)


def _unit_a(assessment: Assessment, unit: Iterable[str], volts: float, condition: str) -> float:
    """What a unit takes by its share of the power: right for what hangs straight on the supply, else too little."""
    heaters = assessment.points[condition].heaters
    return sum(one.w for part_id in unit for one in heaters.get(part_id, ())) / volts


def most_that_start(
    rated_v: float,
    rated_a: float,
    cold_ratio: float,
    supply: DcSupply,
    warmup_s: float | None = None,
    most: int | None = None,
) -> Counts:
    """Count equal boards side by side on a supply, without a sheet.

    Parameters
    ----------
    rated_v, rated_a:
        Volts and amperes of one board.
    cold_ratio:
        Its resistance hot over cold.
    supply:
        The supply by its figures; set to the boards' volts, or what it is set to.
    warmup_s:
        Warm-up time of its tubes in the standard test circuit, seconds; estimated where None.
    most:
        How many boards there are; where None, one more than the supply could ever feed.
    """
    kind = TubeType(
        designation="board",
        sections=(Section(("1", "2"), rated_v, rated_a),),
        cold_ratio=cold_ratio,
        warmup_s=warmup_s,
    )
    count = int(WILLING_TIMES * supply.limit_a / rated_a) + 1 if most is None else most
    boards = tuple(Tube(id=f"board-{n}", type="board") for n in range(1, count + 1))
    wires = tuple(
        Wire(id=f"{board.id}-{pin}", start=f"{supply.id}.{terminal}", end=f"{board.id}.{pin}")
        for board in boards
        for pin, terminal in (("1", "+"), ("2", "-"))
    )
    sheet = Sheet(mains=Mains(), parts=(supply, *boards), wires=wires, types=(kind,))
    found = how_many_start(sheet, Catalogue(tubes={}).with_types(sheet.types), supply.id)
    if found is None:
        raise ValueError("boards on a supply are a line")
    return found
