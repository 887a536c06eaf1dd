"""What has to be wired anew when another tube type goes into a socket, and the edit that does it where it is plain.

It is plain where every heater pin of the old type has one pin of the same role on the new one: both ends of one
heater, both ends and the tap of a tapped one, or a tapped heater that is wired in series or side by side and a plain
one for the same volts. Everything else is said in words and left to the user.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

import msgspec

from core.catalogue.bases import BASES
from core.catalogue.types import TubeType
from core.circuit.merging import Merging
from core.edits import Edit, fresh_id, replace_type
from core.results import DEFAULT_V_PCT
from core.sentences import Sentence, sentence
from core.sheet import Sheet, Tube, Wire, split_terminal
from core.units import Dimension, format_quantity

_SAME = 1e-9


@dataclass(frozen=True)
class Rewiring:
    """What another type means for the wires on its socket.

    ``moves`` says to which pin the wires of each pin go, or is None where that must be decided by hand; ``strap`` are
    two pins of the new type that must be joined. ``says`` are the consequences, ``by_hand`` why they are not plain.
    """

    tube_id: str
    designation: str
    moves: Mapping[str, str] | None
    strap: tuple[str, str] | None = None
    says: tuple[Sentence, ...] = ()
    by_hand: tuple[Sentence, ...] = ()

    @property
    def is_plain(self) -> bool:
        """Whether the wires can be moved without asking."""
        return self.moves is not None

    @property
    def sentences(self) -> tuple[Sentence, ...]:
        """Everything there is to say."""
        return (*self.says, *self.by_hand)


@dataclass(frozen=True)
class _Plan:
    """Which old pin becomes which new pin, how the heater then works, and what is added."""

    moves: dict[str, str] = field(default_factory=dict)
    strap: tuple[str, str] | None = None
    side_by_side: tuple[bool, bool] = (False, False)


@dataclass(frozen=True)
class _Socket:
    """How a socket is wired: the pins that carry wires, and which of them are joined by wires."""

    used: frozenset[str]
    nets: Mapping[str, str]

    def joined(self, one: str, other: str) -> bool:
        """Whether two pins are on one net of wires."""
        return {one, other} <= self.used and self.nets[one] == self.nets[other]


def rewiring_for(
    sheet: Sheet, tube: Tube, old: TubeType | None, new: TubeType | None, designation: str
) -> Rewiring:
    """What it takes to put ``new``, written ``designation``, into the socket of ``tube``, which holds ``old``."""
    if new is None:
        unknown = sentence("{type} is not in the catalogue; its heater pins are not known.", type=designation)
        return Rewiring(tube.id, designation, None, by_hand=(unknown,))
    socket = _socket(sheet, tube.id)
    if old is None:
        if not socket.used:
            return Rewiring(tube.id, designation, {})
        unknown = sentence("The heater pins of {type} are not known.", type=tube.type)
        return Rewiring(tube.id, designation, None, by_hand=(unknown, _check_each(tube.id)))
    strays = tuple(_strays(socket, old, new))
    plan = _plan(socket, old, new)
    says = tuple(_changes(old, new, plan))
    if strays or isinstance(plan, Sentence):
        reasons = (*((plan,) if isinstance(plan, Sentence) else ()), *strays, _check_each(tube.id))
        return Rewiring(tube.id, designation, None, says=says, by_hand=reasons)
    return Rewiring(
        tube.id, designation, plan.moves, plan.strap, (*says, *_moves_in_words(socket, old, plan))
    )


def replace_and_rewire(rewiring: Rewiring) -> Edit:
    """Put the type into its socket and move the wires; where that is not plain, the wires stay where they are."""

    def edit(sheet: Sheet) -> Sheet:
        after = replace_type(rewiring.tube_id, rewiring.designation)(sheet)
        moves = rewiring.moves or {}

        def follow(terminal: str) -> str:
            part_id, pin = split_terminal(terminal)
            return f"{part_id}.{moves.get(pin, pin)}" if part_id == rewiring.tube_id else terminal

        moved = (
            msgspec.structs.replace(wire, start=follow(wire.start), end=follow(wire.end))
            for wire in sheet.wires
        )
        wires = [wire for wire in moved if wire.start != wire.end]
        if rewiring.strap is not None:
            start, end = (f"{rewiring.tube_id}.{pin}" for pin in rewiring.strap)
            wires.append(Wire(id=fresh_id(sheet, "w"), start=start, end=end))
        return msgspec.structs.replace(after, wires=tuple(wires))

    return edit


def _socket(sheet: Sheet, tube_id: str) -> _Socket:
    joined: Merging[str] = Merging()
    used = set()
    for wire in sheet.wires:
        joined.join(wire.start, wire.end)
        used |= {pin for part_id, pin in map(split_terminal, (wire.start, wire.end)) if part_id == tube_id}
    return _Socket(frozenset(used), {pin: joined.find(f"{tube_id}.{pin}") for pin in used})


def _strays(socket: _Socket, old: TubeType, new: TubeType) -> Iterator[Sentence]:
    """Wires on pins that are no heater pins of the old type, where the new one has something else there."""
    base = BASES.get(new.base)
    for pin in sorted(socket.used - set(old.heater_pins), key=int):
        if pin in new.heater_pins:
            yield sentence("Pin {pin} carries a wire and would become a heater pin.", pin=pin)
        elif base is not None and not base.has(pin):
            yield sentence("Pin {pin} carries a wire; {base} has no such pin.", pin=pin, base=base.title)


def _plan(socket: _Socket, old: TubeType, new: TubeType) -> _Plan | Sentence:
    """Old pins to new pins, or why that cannot be said without asking."""
    alike = (_shape(old), old.tap_role) == (_shape(new), new.tap_role)
    unwired = not socket.used & set(old.heater_pins)
    if unwired or (alike and old.heater_pins == new.heater_pins):
        return _Plan({pin: pin for pin in old.heater_pins if not unwired})
    match _shape(old), _shape(new):
        case "plain", "plain":
            return _Plan(_paired(old.sections[0].pins, new.sections[0].pins))
        case "tapped", "tapped":
            return _tapped_to_tapped(old, new)
        case "tapped", "plain":
            return _tapped_to_plain(socket, old, new)
        case "plain", "tapped":
            return _plain_to_tapped(old, new)
    return sentence("The two heaters are not divided alike.")


def _shape(kind: TubeType) -> str:
    """One section, two that share a pin, or anything else."""
    if len(kind.sections) == 1:
        return "plain"
    return "tapped" if len(kind.sections) == 2 and len(kind.heater_pins) == 3 else "other"


def _ends_and_tap(kind: TubeType) -> tuple[tuple[str, str], str]:
    first, second = (section.pins for section in kind.sections)
    tap = next(pin for pin in first if pin in second)
    one, other = (pin for pin in (*first, *second) if pin != tap)
    return (one, other), tap


def _paired(old: tuple[str, str], new: tuple[str, str]) -> dict[str, str]:
    """Two ends to two ends; a pin that both types have keeps its wires."""
    crossed = old[0] == new[1] or old[1] == new[0]
    return dict(zip(old, reversed(new) if crossed else new, strict=True))


def _tapped_to_tapped(old: TubeType, new: TubeType) -> _Plan | Sentence:
    if old.tap_role != new.tap_role:
        return sentence("The taps of the two heaters do not serve the same purpose.")
    (ends, tap), (new_ends, new_tap) = _ends_and_tap(old), _ends_and_tap(new)
    return _Plan({**_paired(ends, new_ends), tap: new_tap})


def _tapped_to_plain(socket: _Socket, old: TubeType, new: TubeType) -> _Plan | Sentence:
    ends, tap = _ends_and_tap(old)
    to = new.sections[0].pins
    if socket.joined(*ends) and tap in socket.used and not socket.joined(ends[0], tap):
        if not _fits(_volts(old, side_by_side=True), new):
            return _other_volts(_volts(old, side_by_side=True), new)
        kept = _paired((ends[0], tap), to)
        return _Plan({**kept, ends[1]: kept[ends[0]]}, side_by_side=(True, False))
    if tap not in socket.used and set(ends) <= socket.used and not socket.joined(*ends):
        if not _fits(_volts(old), new):
            return _other_volts(_volts(old), new)
        return _Plan(_paired(ends, to))
    return sentence("The tapped heater is wired neither in series nor with its halves side by side.")


def _plain_to_tapped(old: TubeType, new: TubeType) -> _Plan | Sentence:
    ends, tap = _ends_and_tap(new)
    own = old.sections[0].pins
    if _fits(_volts(old), new):
        return _Plan(_paired(own, ends))
    if _has_halves(new) and _fits(_volts(old), new, side_by_side=True):
        return _Plan(_paired(own, (ends[0], tap)), strap=ends, side_by_side=(False, True))
    return _other_volts(_volts(old), new)


def _has_halves(kind: TubeType) -> bool:
    return kind.tap_role != "lamp" and len({section.rated_v for section in kind.sections}) == 1


def _volts(kind: TubeType, side_by_side: bool = False) -> float:
    """Rated volts of the whole heater, its sections in series or side by side."""
    volts = [section.rated_v for section in kind.sections]
    return max(volts) if side_by_side else sum(volts)


def _amps(kind: TubeType, side_by_side: bool = False) -> float:
    amps = [section.rated_a for section in kind.sections]
    return sum(amps) if side_by_side else max(amps)


def _fits(volts: float, kind: TubeType, side_by_side: bool = False) -> bool:
    rated = _volts(kind, side_by_side)
    return abs(volts / rated - 1) * 100 <= DEFAULT_V_PCT


def _other_volts(volts: float, new: TubeType) -> Sentence:
    return sentence(
        "It is wired for {volts}; {type} needs other volts.",
        volts=format_quantity(volts, Dimension.VOLTS),
        type=new.designation,
    )


def _check_each(tube_id: str) -> Sentence:
    return sentence("The wires of {id} stay where they are: move them by hand.", id=tube_id)


def _changes(old: TubeType, new: TubeType, plan: _Plan | Sentence) -> Iterator[Sentence]:
    """Base, volts and amperes, where they change."""
    titles = [BASES[kind.base].title if kind.base in BASES else kind.base for kind in (old, new)]
    if titles[0] != titles[1]:
        yield sentence("The base changes from {old} to {new}: another socket.", old=titles[0], new=titles[1])
    before, after = plan.side_by_side if isinstance(plan, _Plan) else (False, False)
    was_v, will_v = _volts(old, before), _volts(new, after)
    if abs(was_v - will_v) > _SAME:
        volts = [format_quantity(value, Dimension.VOLTS) for value in (was_v, will_v)]
        yield sentence("The heater needs {new} instead of {old}.", old=volts[0], new=volts[1])
    was_a, will_a = _amps(old, before), _amps(new, after)
    if abs(was_a - will_a) > _SAME:
        amps = [format_quantity(value, Dimension.AMPS) for value in (was_a, will_a)]
        yield sentence("The heater takes {new} instead of {old}.", old=amps[0], new=amps[1])


def _moves_in_words(socket: _Socket, old: TubeType, plan: _Plan) -> Iterator[Sentence]:
    moved = {pin: to for pin, to in plan.moves.items() if pin != to and pin in socket.used}
    for pin, to in moved.items():
        yield sentence("The wires on pin {old} go to pin {new}.", old=pin, new=to)
    if plan.side_by_side[0]:
        ends, _ = _ends_and_tap(old)
        yield sentence("Pins {one} and {other} become one pin.", one=ends[0], other=ends[1])
    if plan.strap is not None:
        yield sentence("A strap joins pins {one} and {other}.", one=plan.strap[0], other=plan.strap[1])
    if not moved and plan.strap is None:
        yield sentence("The heater pins stay as they are.")
