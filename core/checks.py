"""What a well-typed sheet may still get wrong: ids, terminals, and numbers out of range.

Every problem is found in one pass, each at its place in the file, such as ``parts[3].rated_v``.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from functools import cache
from typing import Any, NamedTuple, get_args, get_origin

import msgspec

from core.catalogue.types import TubeType
from core.errors import Problem
from core.fields import label_of
from core.sentences import Sentence, Text, sentence
from core.sheet import (
    AnyPart,
    DcSupply,
    Lamp,
    Mains,
    Note,
    Part,
    Relay,
    Sheet,
    Thermistor,
    Tube,
    Wire,
    split_terminal,
)
from core.terminals import LARGEST_PIN, has_terminal, is_id, is_pin, terminal_names
from core.wording import shown

LARGEST = 1e12
SMALLEST = 1e-15
FARTHEST = 1e6
MOST_CORNERS = 100
LONGEST_NOTE = 10_000


class Range(NamedTuple):
    """Limits of a number; ``above`` says that the lower limit itself is out."""

    low: float = -LARGEST
    high: float = LARGEST
    above: bool = False

    def admits(self, value: float) -> bool:
        """Whether a value lies within the limits; never so for what is not a finite number."""
        if value == 0:
            return self.low <= 0 <= self.high and not (self.above and self.low == 0)
        inside = (self.low < value if self.above else self.low <= value) and value <= self.high
        return inside and not -SMALLEST < value < SMALLEST

    @property
    def words(self) -> Sentence:
        """The limits as they stand after *must be*."""
        low, high = f"{self.low:g}", f"{self.high:g}"
        if self.high < LARGEST:
            return sentence(
                "above {low} and at most {high}" if self.above else "from {low} to {high}", low=low, high=high
            )
        if self.low == 0:
            return sentence("greater than 0" if self.above else "0 or greater")
        return sentence("between {low} and {high}", low=low, high=high)


_ANY = Range()
_POSITIVE = Range(0, above=True)
_NOT_NEGATIVE = Range(0)

RANGES: Mapping[str, Range] = {
    **dict.fromkeys(("rated_v", "rated_a", "rated_w", "rated_mains_v", "warmup_s"), _POSITIVE),
    **dict.fromkeys(("set_v", "limit_a", "emf_v", "regulator_v", "reservoir_f", "farad"), _POSITIVE),
    **dict.fromkeys(("r25_ohm", "beta_k", "dissipation_w_per_k", "tau_s", "max_a"), _POSITIVE),
    **dict.fromkeys(("max_farad", "contact_a", "input_v"), _POSITIVE),
    **dict.fromkeys(
        ("coil_v", "coil_ohm", "pull_in_v", "melting_i2t_a2s", "area_mm2", "nominal_v"), _POSITIVE
    ),
    **dict.fromkeys(("ohm", "internal_ohm", "cold_ohm", "source_ohm", "hk_max_ohm"), _NOT_NEGATIVE),
    **dict.fromkeys(("trip_s", "retry_s", "travel_s", "min_load_a", "foldback_a", "length_m"), _NOT_NEGATIVE),
    **dict.fromkeys(("diode_v", "dropout_v", "drop_out_v", "forward_v"), _NOT_NEGATIVE),
    **dict.fromkeys(("spread_low_a", "spread_high_a", "tolerance_a_pct"), _NOT_NEGATIVE),
    "cold_ratio": Range(1, 15, above=True),
    "regulation_pct": Range(0, 100),
    "tolerance_pct": Range(0, 99),
    "wiper": Range(0, 1),
    "awg": Range(0, 40),
    "low_pct": Range(-50, 50),
    "high_pct": Range(-50, 100),
    "hz": Range(0, 1000),
    "width": Range(20, 100_000),
    "height": Range(20, 100_000),
    "ambient_c": Range(-100, 300),
}
"""Limits by field name; a numeric field not named here may be any finite number up to 1e12 in size."""


def find_problems(sheet: Sheet, known: Sheet | None = None) -> tuple[Problem, ...]:
    """Everything wrong with a sheet's values; empty for a sheet that can be written and read back.

    What it shares with ``known``, a sheet that has been found right, is not looked at again.
    """
    return tuple(_all_problems(sheet, Sheet() if known is None else known))


def _all_problems(sheet: Sheet, known: Sheet) -> Iterator[Problem]:
    yield from _text_problems(sheet.title, "title", sentence("the title"))
    yield from _mains_problems(sheet.mains)
    if not RANGES["ambient_c"].admits(sheet.ambient_c):
        yield _number_problem(sheet.ambient_c, "ambient_c", "ambient_c", sentence("the sheet"))
    places: dict[str, str] = {}
    for index, part in enumerate(sheet.parts):
        place = f"parts[{index}]"
        yield from _id_problems(part.id, place, places)
        if known.part_by_id.get(part.id) is not part:
            yield from _struct_problems(part, place, shown(part.id))
            yield from _part_problems(part, place)
    replaced = {one for one, part in known.part_by_id.items() if sheet.part_by_id.get(one) is not part}
    for index, wire in enumerate(sheet.wires):
        place = f"wires[{index}]"
        yield from _id_problems(wire.id, place, places)
        if known.wire_by_id.get(wire.id) is not wire or not replaced.isdisjoint(_parts_of(wire)):
            yield from _struct_problems(wire, place, shown(wire.id))
            yield from _wire_problems(wire, place, sheet.part_by_id)
    yield from _types_problems(sheet.types)


def _parts_of(wire: Wire) -> tuple[str, str]:
    return split_terminal(wire.start)[0], split_terminal(wire.end)[0]


def _mains_problems(mains: Mains) -> Iterator[Problem]:
    yield from _struct_problems(mains, "mains", sentence("the sheet"))
    if mains.low_pct > mains.high_pct:
        yield Problem("mains.low_pct", sentence("low mains must not lie above high mains"))


def _id_problems(given: str, place: str, places: dict[str, str]) -> Iterator[Problem]:
    if not is_id(given):
        yield Problem(
            f"{place}.id",
            sentence(
                "'{id}' cannot be an id: use 1 to 40 characters without spaces or dots, such as V1",
                id=shown(given),
            ),
        )
    if given in places:
        yield Problem(
            f"{place}.id",
            sentence("the id {id} is already used by {place}", id=shown(given), place=places[given]),
        )
    places.setdefault(given, place)


def _struct_problems(struct: msgspec.Struct, place: str, owner: Text) -> Iterator[Problem]:
    """Numbers out of range and unusable text in one struct."""
    for name, key, limits in _checked_fields(type(struct)):
        value = getattr(struct, name)
        # the good value is by far the commonest, and a sheet may hold a hundred thousand of them
        if (
            value is None
            or (limits is None and value.isascii())
            or (limits is not None and limits.admits(value))
        ):
            continue
        if limits is None:
            yield from _text_problems(
                value, f"{place}.{key}", sentence("{label} of {owner}", label=key, owner=owner)
            )
        else:
            yield _number_problem(value, f"{place}.{key}", name, owner)


@cache
def _checked_fields(struct: type[msgspec.Struct]) -> tuple[tuple[str, str, Range | None], ...]:
    """Attribute, file key and limits of the fields that hold a number; limits are None for text."""
    checked: list[tuple[str, str, Range | None]] = []
    for field in msgspec.structs.fields(struct):
        if get_origin(field.type) is tuple:
            continue
        plain = set(get_args(field.type) or (field.type,)) - {type(None)}
        if plain <= {int, float} and field.name != "turn":
            checked.append((field.name, field.encode_name, RANGES.get(field.name, _ANY)))
        elif plain == {str} and field.name != "id":
            checked.append((field.name, field.encode_name, None))
    return tuple(checked)


def _number_problem(value: float, place: str, name: str, owner: Text) -> Problem:
    label = sentence("{label} of {owner}", label=label_of(name), owner=owner)
    if isinstance(value, float) and not math.isfinite(value):
        return Problem(place, sentence("{what} must be a finite number", what=label))
    if abs(value) > LARGEST:
        return Problem(place, sentence("{what} is too large to be meant", what=label))
    if value != 0 and abs(value) < SMALLEST:
        return Problem(place, sentence("{what} is too small to be meant", what=label))
    return Problem(
        place,
        sentence(
            "{what} must be {range}, not {value}",
            what=label,
            range=RANGES.get(name, _ANY).words,
            value=f"{value:g}",
        ),
    )


def _position_problems(at: tuple[float, ...], place: str, owner: Text) -> Iterator[Problem]:
    for index, value in enumerate(at):
        if not abs(value) <= FARTHEST:
            yield Problem(
                f"{place}[{index}]",
                sentence("place of {owner} must be within ±{most}", owner=owner, most=f"{FARTHEST:g}"),
            )


def _text_problems(text: str, place: str, what: Text) -> Iterator[Problem]:
    if not text.isascii() and any("\ud800" <= letter <= "\udfff" for letter in text):
        yield Problem(place, sentence("{what} holds half of a character pair", what=what))


def _part_problems(part: AnyPart, place: str) -> Iterator[Problem]:
    yield from _position_problems(part.at, f"{place}.at", shown(part.id))
    if part.mirror and isinstance(part, Tube):
        yield Problem(
            f"{place}.mirror",
            sentence(
                "{id} cannot be mirrored: pins are counted as the socket is seen from below", id=part.id
            ),
        )
    check = _CROSS_CHECKS.get(type(part))
    if check is not None:
        yield from check(part, place)


def _note_problems(note: Note, place: str) -> Iterator[Problem]:
    if len(note.text) > LONGEST_NOTE:
        yield Problem(
            f"{place}.text",
            sentence("{id} is longer than {most} characters", id=note.id, most=LONGEST_NOTE),
        )


def _lamp_problems(lamp: Lamp, place: str) -> Iterator[Problem]:
    if not lamp.type and (lamp.rated_v is None or lamp.rated_a is None):
        yield Problem(place, sentence("{id} needs a type, or both rated_v and rated_a", id=lamp.id))


def _thermistor_problems(part: Thermistor, place: str) -> Iterator[Problem]:
    if not part.type and None in (part.r25_ohm, part.beta_k, part.dissipation_w_per_k):
        yield Problem(
            place,
            sentence("{id} needs a type, or all of r25_ohm, beta_k and dissipation_w_per_k", id=part.id),
        )


def _dc_supply_problems(supply: DcSupply, place: str) -> Iterator[Problem]:
    if supply.foldback_a is not None and supply.foldback_a > supply.limit_a:
        yield Problem(
            f"{place}.foldback_a",
            sentence("foldback current of {id} must not exceed its current limit", id=supply.id),
        )


def _relay_problems(relay: Relay, place: str) -> Iterator[Problem]:
    if relay.pull_in_v is not None and relay.drop_out_v is not None and relay.drop_out_v > relay.pull_in_v:
        yield Problem(
            f"{place}.drop_out_v",
            sentence("drop-out volts of {id} must not exceed its pull-in volts", id=relay.id),
        )


_CROSS_CHECKS: Mapping[type[Part], Callable[[Any, str], Iterator[Problem]]] = {
    Note: _note_problems,
    Lamp: _lamp_problems,
    Thermistor: _thermistor_problems,
    DcSupply: _dc_supply_problems,
    Relay: _relay_problems,
}


def _wire_problems(wire: Wire, place: str, parts: Mapping[str, AnyPart]) -> Iterator[Problem]:
    name = shown(wire.id)
    yield from _end_problems(name, True, wire.start, f"{place}.from", parts)
    yield from _end_problems(name, False, wire.end, f"{place}.to", parts)
    if wire.start == wire.end:
        yield Problem(
            f"{place}.to", sentence("{id} starts and ends at the same terminal; it needs two", id=name)
        )
    if wire.awg is not None and wire.area_mm2 is not None:
        yield Problem(
            f"{place}.area_mm2", sentence("{id} has both awg and area_mm2; give one of them", id=name)
        )
    if len(wire.via) > MOST_CORNERS:
        yield Problem(
            f"{place}.via",
            sentence(
                "{id} has {count} corners; {most} are the most",
                id=name,
                count=len(wire.via),
                most=MOST_CORNERS,
            ),
        )
    for index, corner in enumerate(wire.via):
        yield from _position_problems(corner, f"{place}.via[{index}]", sentence("a corner of {id}", id=name))


def _end_problems(
    wire: str, is_start: bool, terminal: str, place: str, parts: Mapping[str, AnyPart]
) -> Iterator[Problem]:
    part_id, name = split_terminal(terminal)
    part = parts.get(part_id)
    if part is not None and has_terminal(part, name):
        return
    said = sentence(
        "{id} starts at {terminal}" if is_start else "{id} ends at {terminal}",
        id=wire,
        terminal=shown(terminal),
    )
    if part is not None:
        names = terminal_names(part)
        known = (
            sentence("pins are numbered 1 to {most}", most=LARGEST_PIN)
            if names is None
            else sentence("it has {names}", names=", ".join(names))
        )
        yield Problem(
            place,
            sentence(
                "{end}, but {id} has no terminal '{name}'; {known}",
                end=said,
                id=part_id,
                name=shown(name),
                known=known,
            ),
        )
    elif part_id:
        yield Problem(place, sentence("{end}, but there is no part {id}", end=said, id=shown(part_id)))
    else:
        yield Problem(
            place,
            sentence(
                "{end}, which is no terminal: write part and terminal with a dot, such as V1.4", end=said
            ),
        )


def _types_problems(types: tuple[TubeType, ...]) -> Iterator[Problem]:
    seen: set[str] = set()
    for index, tube_type in enumerate(types):
        place = f"types[{index}]"
        name = shown(tube_type.designation)
        yield from _struct_problems(tube_type, place, name)
        if not tube_type.designation.strip():
            yield Problem(f"{place}.designation", sentence("a tube type needs a designation"))
        if tube_type.designation in seen:
            yield Problem(
                f"{place}.designation", sentence("the tube type {type} stands here twice", type=name)
            )
        seen.add(tube_type.designation)
        yield from _section_problems(tube_type, place)


def _section_problems(tube_type: TubeType, place: str) -> Iterator[Problem]:
    name = shown(tube_type.designation)
    if not tube_type.sections:
        yield Problem(f"{place}.sections", sentence("{type} has no heater section", type=name))
    for index, section in enumerate(tube_type.sections):
        here = f"{place}.sections[{index}]"
        yield from _struct_problems(section, here, name)
        if section.pins[0] == section.pins[1] or not all(map(is_pin, section.pins)):
            yield Problem(
                f"{here}.pins",
                sentence(
                    "a section of {type} needs two different pins from 1 to {most}",
                    type=name,
                    most=LARGEST_PIN,
                ),
            )
