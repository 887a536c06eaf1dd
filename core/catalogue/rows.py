"""The one form of all catalogue files: a CSV with one value a row, each with unit, source and certainty."""

from __future__ import annotations

import csv
import io
import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import NamedTuple, get_args

from core.catalogue.types import Provenance, Status
from core.errors import CatalogueError, Problem
from core.sentences import Sentence, sentence

COLUMNS = ("designation", "pins", "field", "value", "unit", "source", "status", "note")
STATUSES: tuple[Status, ...] = get_args(Status)


@dataclass(frozen=True)
class Number:
    """A field that holds a number in ``unit``, between ``low`` and ``high`` inclusive."""

    unit: str
    low: float
    high: float
    per_section: bool = False


@dataclass(frozen=True)
class Choice:
    """A field that holds one of a few words."""

    words: tuple[str, ...]
    unit: str = ""
    per_section: bool = False


@dataclass(frozen=True)
class Text:
    """A field that holds any text but none."""

    unit: str = ""
    per_section: bool = False


Field = Number | Choice | Text
Value = float | str


class Entry(NamedTuple):
    """One row that was read: its line, what it belongs to, and the value with its provenance."""

    line: int
    pins: str
    field: str
    value: Value
    provenance: Provenance


class Reader:
    """Reads one file, collecting every mistake. ``problems`` grows; ``finish`` raises them all at once."""

    def __init__(self, name: str) -> None:
        self.name = name
        self.problems: list[Problem] = []

    def report(self, line: int, column: str, message: Sentence) -> None:
        """Note a mistake in ``column`` of ``line``."""
        self.problems.append(
            Problem(
                sentence("{file} line {line}, column '{column}'", file=self.name, line=line, column=column),
                message,
            )
        )

    def finish(self) -> None:
        """Raise ``CatalogueError`` with everything noted so far, if anything was."""
        if self.problems:
            raise CatalogueError(tuple(self.problems))

    def entries(self, text: str, fields: Mapping[str, Field]) -> dict[str, list[Entry]]:
        """The rows of ``text`` by designation, in the order of the file. Wrong rows are noted, left out."""
        found: dict[str, list[Entry]] = {}
        table = csv.reader(io.StringIO(text.removeprefix("\ufeff")), strict=True)
        try:
            if not self._header_is_right(next(table, [])):
                return found
            current = ""
            seen: set[tuple[str, str]] = set()
            for cells in table:
                line = table.line_num
                if not any(cells):
                    continue
                if len(cells) != len(COLUMNS):
                    self.report(
                        line,
                        "designation",
                        sentence(
                            "has {count} cells, expected {wanted}", count=len(cells), wanted=len(COLUMNS)
                        ),
                    )
                    continue
                designation = cells[0].strip()
                if designation != current:
                    if designation in found:
                        self.report(
                            line,
                            "designation",
                            sentence("'{name}' is already in this file", name=designation),
                        )
                    current, seen = designation, set()
                    found.setdefault(designation, [])
                entry = self._entry(line, cells, fields, seen)
                if entry is not None:
                    found[designation].append(entry)
        except csv.Error as error:
            self.report(table.line_num, "designation", sentence("is not CSV: {why}", why=error))
        return found

    def _header_is_right(self, header: list[str]) -> bool:
        names = [cell.strip() for cell in header]
        for name in names:
            if name not in COLUMNS:
                self.report(
                    1, name, sentence("unknown column, expected {columns}", columns=", ".join(COLUMNS))
                )
        for name in COLUMNS:
            if name not in names:
                self.report(1, name, sentence("this column is missing"))
        if not self.problems and tuple(names) != COLUMNS:
            self.report(
                1, names[0], sentence("columns must come in the order {columns}", columns=", ".join(COLUMNS))
            )
        return not self.problems

    def _entry(
        self, line: int, cells: list[str], fields: Mapping[str, Field], seen: set[tuple[str, str]]
    ) -> Entry | None:
        designation, pins, name, value, unit, source, status, note = map(str.strip, cells)
        if not designation:
            self.report(line, "designation", sentence("is empty"))
        field = fields.get(name)
        if field is None:
            self.report(
                line,
                "field",
                sentence(
                    "unknown field '{name}', expected one of {fields}", name=name, fields=", ".join(fields)
                ),
            )
            return None
        if (pins, name) in seen:
            self.report(
                line,
                "field",
                sentence(
                    "'{name}' is given twice for {owner}", name=name, owner=f"{designation} {pins}".rstrip()
                ),
            )
        seen.add((pins, name))
        if field.per_section != bool(pins):
            self.report(
                line, "pins", sentence("needs two pins such as 4-5" if field.per_section else "must be empty")
            )
        if unit != field.unit:
            self.report(
                line,
                "unit",
                sentence(
                    "'{given}' should be '{wanted}'" if unit else "should be '{wanted}'",
                    given=unit,
                    wanted=field.unit,
                ),
            )
        if status not in STATUSES:
            self.report(
                line,
                "status",
                sentence("'{given}' is not one of {choices}", given=status, choices=", ".join(STATUSES)),
            )
            return None
        if not source and status != "memory":
            self.report(line, "source", sentence("is empty, but the status is '{status}'", status=status))
        parsed = self._value(line, value, field)
        if parsed is None:
            return None
        label = f"{pins} {name}" if pins else name
        return Entry(line, pins, name, parsed, Provenance(label, source, status, note))

    def _value(self, line: int, text: str, field: Field) -> Value | None:
        if not text:
            self.report(line, "value", sentence("is empty"))
            return None
        if isinstance(field, Text):
            return text
        if isinstance(field, Choice):
            if text in field.words:
                return text
            self.report(
                line,
                "value",
                sentence("'{given}' is not one of {choices}", given=text, choices=", ".join(field.words)),
            )
            return None
        return self._number(line, text, field)

    def _number(self, line: int, text: str, field: Number) -> float | None:
        try:
            number = float(text)
        except ValueError:
            self.report(line, "value", sentence("'{given}' is not a number", given=text))
            return None
        if not math.isfinite(number):
            self.report(line, "value", sentence("'{given}' is not a finite number", given=text))
            return None
        if not field.low <= number <= field.high:
            self.report(
                line,
                "value",
                sentence(
                    "{given} is not between {low} and {high} {unit}",
                    given=text,
                    low=f"{field.low:g}",
                    high=f"{field.high:g}",
                    unit=field.unit,
                ),
            )
            return None
        return number
