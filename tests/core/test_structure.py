"""Files that are JSON but have not the shape of a sheet: every misfit is named."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from core.structure import KINDS

FileWith = Callable[..., bytes]
ProblemsOf = Callable[[bytes], dict[str, str]]
ProblemsOfContent = Callable[..., dict[str, str]]


@pytest.mark.parametrize(
    ("content", "place", "says"),
    [
        ({"parts": {}}, "parts", "a list is expected here, not an object in braces"),
        ({"parts": [5]}, "parts[0]", "an object in braces is expected here, not a whole number"),
        ({"colour": 1}, "colour", "the key 'colour' is not known here"),
        ({"title": None}, "title", "text is expected here, not null"),
        ({"ambient_c": True}, "ambient_c", "a number is expected here, not true or false"),
        ({"mains": {"hz": "50"}}, "mains.hz", "a number is expected here, not text"),
        ({"mains": {"volts": 5}}, "mains.volts", "the key 'volts' is not known here"),
        (
            {"parts": [{"id": "J1", "kind": "joint", "at": [1]}]},
            "parts[0].at",
            "in J1, a list of 2 is expected",
        ),
        (
            {"parts": [{"id": "J1", "kind": "joint", "at": [1, "2"]}]},
            "parts[0].at[1]",
            "a number is expected",
        ),
        ({"parts": [{"id": "J1", "kind": "joint", "turn": 45}]}, "parts[0].turn", "one of 0, 90, 180, 270"),
        ({"wires": [{"id": "w1", "from": "a.1"}]}, "wires[0].to", "in w1, 'to' is missing"),
        (
            {"wires": [{"id": "w1", "from": "a.1", "to": "b.1", "awg": 20.5}]},
            "wires[0].awg",
            "in w1, a whole number is expected here, not a number",
        ),
        ({"types": [{"designation": "X", "sections": [{}]}]}, "types[0].sections[0].pins", "in X, 'pins' is"),
    ],
)
def test_wrong_shapes(
    file_with: FileWith, problems_of: ProblemsOf, content: dict[str, Any], place: str, says: str
) -> None:
    assert says in problems_of(file_with(**content))[place]


@pytest.mark.parametrize("fields", [{"kind": "valve"}, {}])
def test_a_missing_or_unknown_kind_lists_the_kinds(
    problems_of_part: ProblemsOfContent, fields: dict[str, Any]
) -> None:
    message = problems_of_part(**fields)["parts[0].kind"]
    assert all(kind in message for kind in KINDS)


def test_the_choices_of_an_overload_are_listed(problems_of_part: ProblemsOfContent) -> None:
    message = problems_of_part(kind="dc_supply", set_v=6, limit_a=1, overload="melts")["parts[0].overload"]
    assert "constant-current, hiccup, foldback, latch-off" in message
