"""What every rule is given: the sheet, its circuit, and the operating points of the hot conditions."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property

from core.catalogue import Catalogue
from core.catalogue.types import TubeType
from core.circuit import Circuit, Island
from core.results import Finding, OperatingPoint
from core.sheet import Sheet, Tube
from core.strings import Topology

# An exactly met limit is met: figures are compared with this much room for rounding in the last digits.
ROUNDING = 1e-9


@dataclass(frozen=True)
class Case:
    """One sheet before the rules. ``points`` are the hot conditions: nominal, low mains, high mains."""

    sheet: Sheet
    catalogue: Catalogue
    circuit: Circuit
    topology: Topology
    points: tuple[OperatingPoint, ...]

    @property
    def nominal(self) -> OperatingPoint:
        """The operating point at nominal mains."""
        return self.points[0]

    @cached_property
    def tubes(self) -> tuple[tuple[Tube, TubeType], ...]:
        """Tubes in their sockets whose type is known."""
        known = ((part, self.catalogue.tube(part.type)) for part in self.sheet.parts if isinstance(part, Tube))
        return tuple((tube, kind) for tube, kind in known if kind is not None and not tube.pulled)

    @cached_property
    def tube_types(self) -> dict[str, TubeType]:
        """Type of each known tube by id."""
        return {tube.id: kind for tube, kind in self.tubes}

    @cached_property
    def island_of(self) -> dict[str, Island]:
        """The island of each terminal that is not the chassis."""
        return {terminal: island for island in self.circuit.islands for terminal in island.terminals}

    @cached_property
    def unsolved(self) -> frozenset[str]:
        """Terminals without a solution in some condition."""
        return frozenset(t for point in self.points for miss in point.unsolved for t in miss.island)

    def is_solved(self, part_id: str, pin: str) -> bool:
        """Whether a terminal has an answer in every condition."""
        return f"{part_id}.{pin}" not in self.unsolved


Rule = Callable[[Case], Iterable[Finding] | Iterator[Finding]]
