"""All rules together: order, names, and that neither ids nor order change what is found."""

from __future__ import annotations

import msgspec
import pytest

from core.results import Finding
from core.rules import RULES
from core.samples import sample_bytes, sample_names
from core.sheet import Sheet
from core.storage import load
from tests.core.rule_sheets import findings

GRAVITY = {"fault": 0, "caution": 1, "note": 2}


def renamed(sheet: Sheet) -> tuple[Sheet, dict[str, str]]:
    """The sheet with other ids, and the old ids by the new."""
    new = {part.id: f"q{n}" for n, part in enumerate(sheet.parts)}
    new.update({wire.id: f"z{n}" for n, wire in enumerate(sheet.wires)})

    def end(terminal: str) -> str:
        part_id, _, name = terminal.rpartition(".")
        return f"{new[part_id]}.{name}"

    wires = tuple(
        msgspec.structs.replace(w, id=new[w.id], start=end(w.start), end=end(w.end)) for w in sheet.wires
    )
    parts = tuple(msgspec.structs.replace(part, id=new[part.id]) for part in sheet.parts)
    return msgspec.structs.replace(sheet, parts=parts, wires=wires), {b: a for a, b in new.items()}


def essence(found: list[Finding], old: dict[str, str] | None = None) -> set[tuple[object, ...]]:
    """What is found, but for words, order and rounding."""
    names = old or {}
    return {
        (
            one.rule,
            one.severity,
            frozenset(names.get(item, item) for item in one.where),
            one.condition,
            None if one.value is None else float(f"{one.value:.6g}"),
            None if one.limit is None else float(f"{one.limit:.6g}"),
        )
        for one in found
    }


@pytest.mark.parametrize("name", sample_names())
def test_renaming_changes_names_only(name: str) -> None:
    sheet = load(sample_bytes(name))
    other, old = renamed(sheet)
    assert essence(findings(other), old) == essence(findings(sheet))


@pytest.mark.parametrize("name", sample_names())
def test_the_order_of_parts_and_wires_changes_nothing(name: str) -> None:
    sheet = load(sample_bytes(name))
    turned = msgspec.structs.replace(sheet, parts=sheet.parts[::-1], wires=sheet.wires[::-1])
    assert essence(findings(turned)) == essence(findings(sheet))


@pytest.mark.parametrize("name", sample_names())
def test_every_finding_is_complete(name: str) -> None:
    sheet = load(sample_bytes(name))
    known = {*sheet.part_by_id, *sheet.wire_by_id}
    found = findings(sheet)
    assert [GRAVITY[one.severity] for one in found] == sorted(GRAVITY[one.severity] for one in found)
    for one in found:
        texts = (str(one.title), str(one.says), str(one.mend))
        assert all(text and "{" not in text for text in texts)
        assert one.where and set(one.where) <= known
        assert one.source
        assert (one.value is None) or one.limit is not None


def test_an_empty_sheet_raises_nothing() -> None:
    assert findings(Sheet()) == []


def test_every_rule_is_there_once() -> None:
    assert len({rule.__name__ for rule in RULES}) == len(RULES) == 28
