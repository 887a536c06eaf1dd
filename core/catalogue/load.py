"""Catalogue files to types: every mistake is collected and reported with its line and column."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any, TypeVar

from core.catalogue.bases import BASES
from core.catalogue.names import key
from core.catalogue.rows import Choice, Entry, Field, Number, Reader, Text, Value
from core.catalogue.types import FuseType, LampType, RelayType, Section, ThermistorType, TubeType
from core.sentences import sentence

_YES_NO = Choice(("yes", "no"))
_HK_V = Number("V", 0.0, 20e3)

TUBE_FIELDS: dict[str, Field] = {
    "volts": Number("V", 0.1, 500.0, per_section=True),
    "amps": Number("A", 0.001, 500.0, per_section=True),
    "pins": Text(per_section=True),
    "equivalents": Text(),
    "description": Text(),
    "base": Choice(tuple(BASES)),
    "heating": Choice(("indirect", "direct")),
    "cathode_joined": _YES_NO,
    "rating_class": Choice(("voltage", "current", "both")),
    "low_v_pct": Number("%", -60.0, 0.0),
    "high_v_pct": Number("%", 0.0, 60.0),
    "tolerance_a_pct": Number("%", 0.1, 50.0),
    "spread_low_a": Number("A", 0.001, 500.0),
    "spread_high_a": Number("A", 0.001, 500.0),
    "hk_positive_peak_v": _HK_V,
    "hk_positive_dc_v": _HK_V,
    "hk_negative_peak_v": _HK_V,
    "hk_negative_dc_v": _HK_V,
    "hk_max_ohm": Number("ohm", 1.0, 1e9),
    "warmup_s": Number("s", 0.1, 300.0),
    "controlled_warmup": _YES_NO,
    "cold_ratio": Number("1", 1.5, 20.0),
    "tap_role": Choice(("centre", "lamp")),
}
LAMP_FIELDS: dict[str, Field] = {
    "volts": Number("V", 0.1, 500.0),
    "amps": Number("A", 0.001, 500.0),
    "base": Text(),
    "equivalents": Text(),
}
THERMISTOR_FIELDS: dict[str, Field] = {
    "r25_ohm": Number("ohm", 0.01, 1e5),
    "beta_k": Number("K", 500.0, 10e3),
    "dissipation_w_per_k": Number("W/K", 1e-4, 1.0),
    "tau_s": Number("s", 0.1, 1e3),
    "max_a": Number("A", 0.001, 100.0),
}
RELAY_FIELDS: dict[str, Field] = {
    "coil_v": Number("V", 0.5, 500.0),
    "coil_ohm": Number("ohm", 1.0, 1e6),
    "pull_in_v": Number("V", 0.1, 500.0),
    "drop_out_v": Number("V", 0.01, 500.0),
    "max_v": Number("V", 0.5, 1e3),
    "contact_a": Number("A", 0.01, 1e3),
}
FUSE_FIELDS: dict[str, Field] = {
    "rated_a": Number("A", 0.01, 100.0),
    "cold_ohm": Number("ohm", 1e-5, 1e3),
    "melting_i2t_a2s": Number("A²s", 1e-6, 1e6),
    "speed": Choice(("quick", "time-lag")),
}

_PINS = re.compile(r"([A-Za-z0-9]+)-([A-Za-z0-9]+)")
_SECTION_FIELDS = ("volts", "amps", "pins")
_RENAMED = {"volts": "rated_v", "amps": "rated_a"}
_Flat = TypeVar("_Flat", LampType, ThermistorType, RelayType, FuseType)


def load_tubes(text: str, name: str) -> tuple[TubeType, ...]:
    """The tube types in the CSV ``text``; ``name`` is the file's name for messages.

    Raises ``CatalogueError`` with every mistake found.
    """
    reader = Reader(name)
    groups = reader.entries(text, TUBE_FIELDS)
    _check_names(reader, groups)
    tubes = [_tube(reader, designation, entries) for designation, entries in groups.items() if entries]
    reader.finish()
    return tuple(tube for tube in tubes if tube is not None)


def load_lamps(text: str, name: str) -> tuple[LampType, ...]:
    """The panel lamps in the CSV ``text``. Raises ``CatalogueError``."""
    return _load_flat(text, name, LampType, LAMP_FIELDS, ("volts", "amps"))


def load_thermistors(text: str, name: str) -> tuple[ThermistorType, ...]:
    """The thermistors in the CSV ``text``. Raises ``CatalogueError``."""
    return _load_flat(text, name, ThermistorType, THERMISTOR_FIELDS, tuple(THERMISTOR_FIELDS))


def load_relays(text: str, name: str) -> tuple[RelayType, ...]:
    """The relays in the CSV ``text``. Raises ``CatalogueError``."""
    required = ("coil_v", "coil_ohm", "pull_in_v", "drop_out_v")
    return _load_flat(text, name, RelayType, RELAY_FIELDS, required)


def load_fuses(text: str, name: str) -> tuple[FuseType, ...]:
    """The fuse links in the CSV ``text``. Raises ``CatalogueError``."""
    return _load_flat(text, name, FuseType, FUSE_FIELDS, tuple(FUSE_FIELDS))


def _load_flat(
    text: str, name: str, kind: type[_Flat], fields: Mapping[str, Field], required: Iterable[str]
) -> tuple[_Flat, ...]:
    reader = Reader(name)
    groups = reader.entries(text, fields)
    _check_names(reader, groups)
    made: list[_Flat] = []
    for designation, entries in groups.items():
        values: dict[str, Any] = {entry.field: entry.value for entry in entries}
        missing = [field for field in required if field not in values]
        if missing and entries:
            reader.report(
                entries[0].line,
                "field",
                sentence("{owner} has no {fields}", owner=designation, fields=", ".join(missing)),
            )
        if missing:
            continue
        if "equivalents" in values:
            values["equivalents"] = _names(values["equivalents"])
        values = {_RENAMED.get(field, field): value for field, value in values.items()}
        provenance = tuple(entry.provenance for entry in entries)
        made.append(kind(designation=designation, provenance=provenance, **values))
    reader.finish()
    return tuple(made)


def _names(text: Value) -> tuple[str, ...]:
    return tuple(part.strip() for part in str(text).split(";") if part.strip())


def _check_names(reader: Reader, groups: Mapping[str, list[Entry]]) -> None:
    """Note names that two types would answer to, however they are written."""
    owner: dict[str, str] = {}
    for designation, entries in groups.items():
        named = [(designation, entries[0].line, "designation")] if entries else []
        for entry in entries:
            if entry.field == "equivalents":
                named += [(other, entry.line, "value") for other in _names(entry.value)]
        for name, line, column in named:
            first = owner.setdefault(key(name), designation)
            if first != designation:
                reader.report(
                    line, column, sentence("'{name}' is already a name of {type}", name=name, type=first)
                )
            elif column == "value" and key(name) == key(designation):
                reader.report(line, column, sentence("'{name}' is the designation itself", name=name))


def _tube(reader: Reader, designation: str, entries: list[Entry]) -> TubeType | None:
    values: dict[str, Any] = {
        entry.field: entry.value for entry in entries if entry.field not in _SECTION_FIELDS
    }
    before = len(reader.problems)
    sections = _sections(reader, designation, entries, values.get("base", "generic"))
    _check_pairs(reader, entries, values)
    if len(reader.problems) > before:
        return None
    if "equivalents" in values:
        values["equivalents"] = _names(values["equivalents"])
    for flag in ("cathode_joined", "controlled_warmup"):
        if flag in values:
            values[flag] = values[flag] == "yes"
    return TubeType(
        designation=designation,
        sections=sections,
        provenance=tuple(entry.provenance for entry in entries),
        **values,
    )


def _sections(reader: Reader, designation: str, entries: list[Entry], base: str) -> tuple[Section, ...]:
    by_pins: dict[str, dict[str, Entry]] = {}
    for entry in entries:
        if entry.pins:
            by_pins.setdefault(entry.pins, {})[entry.field] = entry
    sections: list[Section] = []
    for pins, given in by_pins.items():
        line = next(iter(given.values())).line
        ends = _ends(reader, line, pins, base)
        if "pins" in given and given["pins"].value != pins:
            reader.report(
                given["pins"].line,
                "value",
                sentence("'{given}' should be '{wanted}'", given=given["pins"].value, wanted=pins),
            )
        missing = [field for field in ("volts", "amps") if field not in given]
        if missing:
            reader.report(
                line,
                "field",
                sentence("{owner} has no {fields}", owner=f"{designation} {pins}", fields=", ".join(missing)),
            )
        elif ends is not None:
            sections.append(Section(ends, _number(given["volts"]), _number(given["amps"])))
    if not by_pins:
        reader.report(
            entries[0].line,
            "field",
            sentence("{type} has no heater section (volts and amps)", type=designation),
        )
    elif not _joined(sections):
        reader.report(
            entries[0].line,
            "pins",
            sentence("the sections of {type} do not join into one heater", type=designation),
        )
    return tuple(sections)


def _number(entry: Entry) -> float:
    assert isinstance(entry.value, float)
    return entry.value


def _ends(reader: Reader, line: int, pins: str, base: str) -> tuple[str, str] | None:
    match = _PINS.fullmatch(pins)
    if match is None or match[1] == match[2]:
        reader.report(line, "pins", sentence("'{given}' is not two pins such as 4-5", given=pins))
        return None
    for pin in match.groups():
        if not BASES[base].has(pin):
            reader.report(line, "pins", sentence("there is no pin {pin} on base {base}", pin=pin, base=base))
            return None
    return match[1], match[2]


def _joined(sections: list[Section]) -> bool:
    """Whether the sections hang together without a ring: each new one adds just one pin to the rest."""
    if not sections:
        return True
    reached = set(sections[0].pins)
    left = sections[1:]
    while left:
        following = next((one for one in left if len(reached.intersection(one.pins)) == 1), None)
        if following is None:
            return False
        reached.update(following.pins)
        left.remove(following)
    return True


def _check_pairs(reader: Reader, entries: list[Entry], values: Mapping[str, Any]) -> None:
    """Note pairs of figures that contradict each other."""
    line = {entry.field: entry.line for entry in entries}
    low, high = values.get("spread_low_a"), values.get("spread_high_a")
    if low is not None and high is not None and low > high:
        reader.report(
            line["spread_high_a"], "value", sentence("is below spread_low_a, {low} A", low=f"{low:g}")
        )
    for side in ("positive", "negative"):
        peak, steady = values.get(f"hk_{side}_peak_v"), values.get(f"hk_{side}_dc_v")
        if peak is not None and steady is not None and steady > peak:
            reader.report(
                line[f"hk_{side}_dc_v"],
                "value",
                sentence("is above the peak limit, {peak} V", peak=f"{peak:g}"),
            )
