"""Older versions of the sheet file, proven on a version 0 that never was."""

from __future__ import annotations

import json
from typing import Any

import pytest

from core.errors import SheetError
from core.migrations import migrate
from core.sheet import Wire
from core.storage import load


def from_0_to_1(tree: dict[str, Any]) -> dict[str, Any]:
    """A made-up version 0 that called the parts ``pieces`` and gave lengths in millimetres."""
    wires = [{**wire, "length_m": wire["length_mm"] / 1000} for wire in tree["wires"]]
    for wire in wires:
        del wire["length_mm"]
    kept = {key: value for key, value in tree.items() if key not in {"pieces", "wires"}}
    return {**kept, "parts": tree["pieces"], "wires": wires}


OLD = {
    "format": "heaterloom-sheet",
    "version": 0,
    "pieces": [{"id": "J1", "kind": "joint"}, {"id": "J2", "kind": "joint"}],
    "wires": [{"id": "w1", "from": "J1.j", "to": "J2.j", "length_mm": 300}],
}


def test_an_older_file_is_brought_up_to_date() -> None:
    sheet = load(json.dumps(OLD).encode(), migrations={0: from_0_to_1})
    assert [part.id for part in sheet.parts] == ["J1", "J2"]
    assert sheet.wires == (Wire(id="w1", start="J1.j", end="J2.j", length_m=0.3),)


def test_an_older_file_that_is_broken_is_refused() -> None:
    with pytest.raises(SheetError, match="no sheet of version 0"):
        load(json.dumps({**OLD, "wires": 3}).encode(), migrations={0: from_0_to_1})


def test_steps_follow_each_other_and_leave_the_old_alone() -> None:
    steps = {
        version: lambda tree: {**tree, "steps": [*tree["steps"], tree["version"]]} for version in range(4)
    }
    before = {"version": 1, "steps": []}
    assert migrate(before, 1, steps, target=4) == {"version": 4, "steps": [1, 2, 3]}
    assert before == {"version": 1, "steps": []}


def test_a_version_without_a_step_is_refused() -> None:
    with pytest.raises(SheetError, match="version 2 of the sheet file is not known"):
        migrate({"version": 1}, 1, {1: lambda tree: tree}, target=3)
