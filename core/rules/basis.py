"""What every rule is given: the sheet, its circuit, and the operating points of the hot conditions."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import combinations
from typing import NamedTuple

from core.catalogue import Catalogue
from core.catalogue.types import TubeType
from core.circuit import Circuit, Island
from core.circuit.build import is_ideal, is_open
from core.elements.branch import GROUND, Branch, Contact, Hot, Ntc, Rectifying, Resistive, Source
from core.limits import strung_keys
from core.remedy import Remedy
from core.results import Finding, HeaterPoint, Limits, OperatingPoint, Sentence, sentence
from core.rules.nets import Nets, Ways, ways
from core.sheet import (
    AnyPart,
    Battery,
    DcSupply,
    Fuse,
    Lamp,
    MainsFeed,
    RectifiedSupply,
    Resistor,
    Sheet,
    Switch,
    Tube,
    Winding,
)
from core.strings import Topology
from core.terminals import terminal_names

STRING_SOURCE = sentence("RCA 12AX7-A data sheet, 10-60: ±6 % for series operation")


class Mend(NamedTuple):
    """A sentence, and the remedies that carry it out; none where nobody but the user can say how."""

    says: Sentence
    remedies: tuple[Remedy, ...] = ()


@dataclass(frozen=True, eq=False)
class Line:
    """A heater line: one island with its supplies, heaters and ties to the chassis.

    ``heaters`` are the ids of its tubes and lamps, ``ground`` the branches that end on the chassis;
    ``has_resistors`` says that something else than wires and straps carries its current.
    """

    island: Island
    supplies: tuple[str, ...]
    heaters: tuple[str, ...]
    ground: tuple[Branch, ...]
    has_mains: bool
    has_ac: bool
    has_resistors: bool


@dataclass(frozen=True)
class Case:
    """One sheet before the rules.

    ``points`` are the hot conditions: nominal, low mains, high mains. ``limits`` are by section key.
    """

    sheet: Sheet
    catalogue: Catalogue
    circuit: Circuit
    topology: Topology
    points: tuple[OperatingPoint, ...]
    limits: dict[str, Limits]

    @property
    def nominal(self) -> OperatingPoint:
        """The operating point at nominal mains."""
        return self.points[0]

    @cached_property
    def kinds(self) -> dict[type[AnyPart], list[AnyPart]]:
        """Parts by their class."""
        found: dict[type[AnyPart], list[AnyPart]] = {}
        for part in self.sheet.parts:
            found.setdefault(type(part), []).append(part)
        return found

    @cached_property
    def lamps(self) -> tuple[Lamp, ...]:
        """Every panel lamp."""
        return tuple(part for part in self.kinds.get(Lamp, ()) if isinstance(part, Lamp))

    @cached_property
    def type_of(self) -> dict[str, TubeType | None]:
        """The tube type by the name that a part gives; None for unknown ones."""
        names = {part.type for part in self.kinds.get(Tube, ()) if isinstance(part, Tube)}
        return {name: self.catalogue.tube(name) for name in names}

    @cached_property
    def tubes(self) -> tuple[tuple[Tube, TubeType], ...]:
        """Tubes in their sockets whose type is known."""
        types = self.type_of
        return tuple(
            (part, kind)
            for part in self.kinds.get(Tube, ())
            if isinstance(part, Tube) and not part.pulled and (kind := types[part.type]) is not None
        )

    @cached_property
    def tube_types(self) -> dict[str, TubeType]:
        """Type of each known tube by id."""
        return {tube.id: kind for tube, kind in self.tubes}

    @cached_property
    def lines(self) -> tuple[Line, ...]:
        """The islands that hold anything."""
        return tuple(self._line(island) for island in self.circuit.islands if island.branches)

    def _line(self, island: Island) -> Line:
        supplies: dict[str, None] = {}
        heaters: dict[str, None] = {}
        ground = []
        has_ac = has_resistors = False
        wires = self.sheet.wire_by_id
        for branch in island.branches:
            law = branch.law
            if isinstance(law, Hot):
                heaters[branch.owner] = None
            elif branch.owner in self.supply_volts:
                supplies[branch.owner] = None
                has_ac = has_ac or (isinstance(law, Source) and law.ac_per_mains != 0.0)
            elif isinstance(law, Resistive | Ntc | Rectifying) and branch.owner not in wires:
                has_resistors = True
            if GROUND in (branch.u, branch.v):
                ground.append(branch)
        part_by_id = self.sheet.part_by_id
        has_mains = any(isinstance(part_by_id[one], MainsFeed) for one in supplies)
        return Line(island, tuple(supplies), tuple(heaters), tuple(ground), has_mains, has_ac, has_resistors)

    @cached_property
    def line_of(self) -> dict[str, Line]:
        """The line of each tube, lamp and supply by its id."""
        return {one: line for line in self.lines for one in (*line.heaters, *line.supplies)}

    @cached_property
    def line_with(self) -> dict[str, Line]:
        """The line of every part and wire; that of one of its branches where it has several."""
        return {branch.owner: line for line in self.lines for branch in line.island.branches}

    @cached_property
    def loop_ways(self) -> dict[str, list[tuple[str, str, bool, bool]]]:
        """What leads from each piece of metal, filled when the first cold heater is asked about."""
        return {}

    @cached_property
    def line_mends(self) -> dict[Line, tuple[float, float, Mend]]:
        """Least and most volts over rated volts on a line and what would mend it, filled as they are asked."""
        return {}

    @cached_property
    def supply_volts(self) -> dict[str, float]:
        """Rated volts of each supply by id."""
        return {
            part.id: volts
            for part in self.sheet.parts
            if (volts := _rated_volts(part, self.sheet)) is not None
        }

    def is_grounded(self, line: Line) -> bool:
        """Whether the supply of a line reaches the chassis; where nothing is solved, whether anything does."""
        if not line.ground:
            return False
        if any(miss.island == line.island.terminals for miss in self.nominal.unsolved):
            return True
        return any(source.u in self.nominal.bias for source in line.island.sources if not is_lift(source))

    @cached_property
    def sections(self) -> dict[str, HeaterPoint]:
        """Every heater section at nominal mains by its key."""
        return {one.key: one for sections in self.nominal.heaters.values() for one in sections}

    @cached_property
    def strung(self) -> frozenset[str]:
        """Keys of the heater sections in series with the heater of another part."""
        return strung_keys(self.topology)

    @cached_property
    def wire_branches(self) -> tuple[Branch, ...]:
        """The wires as branches; every chassis symbol is one node."""
        branches = self.circuit.branches
        return tuple(branches[wire.id] for wire in self.sheet.wires)

    @cached_property
    def wire_nets(self) -> Nets:
        """Terminals joined by wires, and by the chassis between them."""
        return Nets(self.wire_branches)

    @cached_property
    def wire_ways(self) -> Ways:
        """Where the wires lead from each terminal."""
        return ways(self.wire_branches)

    @cached_property
    def conductors(self) -> tuple[Branch, ...]:
        """Wires, fuses, closed switches and relay contacts, and resistors of no resistance."""
        more = [
            branch
            for kind in (Fuse, Switch)
            for part in self.kinds.get(kind, ())
            for branch in self.circuit.branches_by_owner.get(part.id, ())
        ]
        pulled = frozenset(key for key, branch in self.nominal.branches.items() if branch.pulled_in)
        contacts = [b for b in self.circuit.branches.values() if isinstance(b.law, Contact)]
        none = [b for b in self.ideal_connections if isinstance(self.sheet.part_by_id.get(b.owner), Resistor)]
        return (*self.wire_branches, *more, *(b for b in contacts if not is_open(b, pulled)), *none)

    @cached_property
    def ideal_connections(self) -> tuple[Branch, ...]:
        """Wires, closed switches and contacts, and fuses and resistors without resistance."""
        more = (
            b for b in self.circuit.branches.values() if is_ideal(b) and b.owner not in self.sheet.wire_by_id
        )
        pulled = frozenset(key for key, branch in self.nominal.branches.items() if branch.pulled_in)
        return (*self.wire_branches, *(b for b in more if not is_open(b, pulled)))

    @cached_property
    def metal_nets(self) -> Nets:
        """Terminals joined by wires and by what connects without resistance, or by fuses."""
        conductors = self.conductors
        return self.wire_nets if len(conductors) == len(self.sheet.wires) else Nets(conductors)

    @cached_property
    def shorted(self) -> dict[str, tuple[str, str]]:
        """Supplies with two terminals that conductors join, and the first such pair of each."""
        return shorted_supplies(self, self.metal_nets)

    @cached_property
    def ideal_nets(self) -> Nets:
        """Terminals joined by wires and by what connects without resistance."""
        return Nets(self.ideal_connections)

    @cached_property
    def ideal_ways(self) -> Ways:
        """Where wires and what connects without resistance lead from each terminal."""
        return ways(self.ideal_connections)

    @cached_property
    def wired_pins(self) -> dict[str, tuple[str, ...]]:
        """The terminals of each part that a wire ends on."""
        found: dict[str, dict[str, None]] = {}
        for wire in self.sheet.wires:
            for terminal in (wire.start, wire.end):
                part_id, _, name = terminal.rpartition(".")
                found.setdefault(part_id, {})[name] = None
        return {part_id: tuple(names) for part_id, names in found.items()}


def _rated_volts(part: AnyPart, sheet: Sheet) -> float | None:
    if isinstance(part, DcSupply):
        return part.set_v
    if isinstance(part, Battery):
        return part.emf_v
    if isinstance(part, MainsFeed):
        return sheet.mains.nominal_v
    if isinstance(part, RectifiedSupply):
        return part.regulator_v or part.rated_v
    return part.rated_v if isinstance(part, Winding) else None


def shorted_supplies(case: Case, nets: Nets) -> dict[str, tuple[str, str]]:
    """Supplies with two terminals of one net, and the first such pair of each."""
    found = {}
    for supply in case.supply_volts:
        names = terminal_names(case.sheet.part_by_id[supply]) or ()
        ends = [f"{supply}.{name}" for name in names]
        pair = next((pair for pair in combinations(ends, 2) if nets.joined(*pair)), None)
        if pair is not None:
            found[supply] = pair
    return found


def is_lift(branch: Branch) -> bool:
    """Whether a branch is a DC lift above the chassis."""
    return isinstance(branch.law, Source) and branch.law.bias


Rule = Callable[[Case], Iterable[Finding] | Iterator[Finding]]
