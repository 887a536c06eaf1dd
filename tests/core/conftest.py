"""Sheet files and random sheets for the tests of the model."""

from __future__ import annotations

import json
import types
from collections.abc import Callable
from typing import Any, Literal, Union, get_args, get_origin

import msgspec
import pytest
from hypothesis import strategies as st

from core.checks import FARTHEST, RANGES, SMALLEST, Range
from core.errors import SheetError
from core.sheet import AnyPart, DcSupply, Lamp, Mains, Relay, Sheet, Thermistor, Tube, Wire
from core.storage import load
from core.terminals import LARGEST_PIN, terminal_names

TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=12)
IDS = st.text(
    st.characters(exclude_categories=["Cs", "Cc", "Zs", "Zl", "Zp"], exclude_characters="."),
    min_size=1,
    max_size=8,
)
POSITIONS = st.floats(-FARTHEST, FARTHEST)


def numbers(name: str) -> st.SearchStrategy[float]:
    """Any number that the field may hold."""
    limits = RANGES.get(name, Range())
    low = max(limits.low, SMALLEST) if limits.above else limits.low
    drawn = st.floats(low, limits.high, exclude_min=limits.above)
    return drawn.filter(limits.admits)


def values(name: str, declared: Any) -> st.SearchStrategy[Any]:
    """Any value of a field by its declared type."""
    if get_origin(declared) in (Union, types.UnionType):
        return st.one_of(*(values(name, option) for option in get_args(declared)))
    if get_origin(declared) is Literal:
        return st.sampled_from(get_args(declared))
    simple = {
        str: TEXTS,
        bool: st.booleans(),
        int: st.integers(0, 40),
        type(None): st.none(),
    }
    if declared is float:
        return numbers(name)
    if name == "via":
        return st.lists(st.tuples(POSITIONS, POSITIONS), max_size=4).map(tuple)
    return st.tuples(POSITIONS, POSITIONS) if name == "at" else simple[declared]


# fields whose limits depend on each other stay at what is always right together
_TOGETHER: dict[type[msgspec.Struct], dict[str, st.SearchStrategy[Any]]] = {
    Lamp: {"type": st.text("abc", min_size=1)},
    Thermistor: {"type": st.text("abc", min_size=1)},
    DcSupply: {"foldback_a": st.none()},
    Relay: {"drop_out_v": st.none()},
    Mains: {"low_pct": st.floats(-50, -0.1), "high_pct": st.floats(0.1, 100)},
    Wire: {"area_mm2": st.none()},
    Tube: {"mirror": st.just(False)},
}


def structs(struct: type[msgspec.Struct], *given: str) -> st.SearchStrategy[dict[str, Any]]:
    """Values for the fields of a struct, some of them left to their defaults."""
    together = _TOGETHER.get(struct, {})
    required: dict[str, st.SearchStrategy[Any]] = {}
    optional: dict[str, st.SearchStrategy[Any]] = {}
    for field in msgspec.structs.fields(struct):
        if field.name not in given:
            chosen = together[field.name] if field.name in together else values(field.name, field.type)
            (required if field.required or field.name == "type" else optional)[field.name] = chosen
    return st.fixed_dictionaries(required, optional=optional)


@st.composite
def random_sheets(draw: st.DrawFn) -> Sheet:
    """A sheet that breaks no rule: any kinds, any values, wires between terminals that exist."""
    ids = draw(st.lists(IDS, unique=True, max_size=10))
    half = (len(ids) + 1) // 2
    parts = []
    for part_id in ids[:half]:
        kind = draw(st.sampled_from(get_args(AnyPart)))
        parts.append(kind(id=part_id, **draw(structs(kind, "id"))))
    pins = ("1", str(LARGEST_PIN))
    names = {part.id: pins if (known := terminal_names(part)) is None else known for part in parts}
    ends = [f"{part_id}.{name}" for part_id, each in names.items() for name in each]
    wires = []
    for wire_id in ids[half:] if len(ends) > 1 else ():
        start, end = draw(st.lists(st.sampled_from(ends), min_size=2, max_size=2, unique=True))
        wires.append(Wire(id=wire_id, start=start, end=end, **draw(structs(Wire, "id", "start", "end"))))
    return Sheet(
        title=draw(TEXTS),
        mains=Mains(**draw(structs(Mains))),
        ambient_c=draw(numbers("ambient_c")),
        parts=tuple(parts),
        wires=tuple(wires),
    )


@pytest.fixture(scope="session")
def sheets() -> st.SearchStrategy[Sheet]:
    """The strategy of random sheets, to draw from with ``data.draw``."""
    return random_sheets()


def make_file(**content: Any) -> bytes:
    """The bytes of a sheet file with this content."""
    return json.dumps({"format": "heaterloom-sheet", "version": 1, **content}).encode()


def find_refusals(data: bytes) -> dict[str, str]:
    """Message by place of a file that must be refused."""
    with pytest.raises(SheetError) as caught:
        load(data, "test.heaterloom")
    assert str(caught.value)
    return {problem.place: problem.message for problem in caught.value.problems}


@pytest.fixture(scope="session")
def file_with() -> Callable[..., bytes]:
    """Makes a sheet file of the given content."""
    return make_file


@pytest.fixture(scope="session")
def problems_of() -> Callable[[bytes], dict[str, str]]:
    """Says why a file is refused."""
    return find_refusals


@pytest.fixture(scope="session")
def problems_of_part() -> Callable[..., dict[str, str]]:
    """Says why a file is refused whose only part, X1, has the given fields."""
    return lambda **fields: find_refusals(make_file(parts=[{"id": "X1", **fields}]))


@pytest.fixture(scope="session")
def problems_of_wire() -> Callable[..., dict[str, str]]:
    """Says why a file is refused whose only wire, from V1.4 to T1.a, has the given fields."""
    parts = [
        {"id": "V1", "kind": "tube", "type": "ECC83"},
        {"id": "T1", "kind": "winding", "rated_v": 6.3, "rated_a": 1},
    ]
    wire = {"id": "w1", "from": "V1.4", "to": "T1.a"}
    return lambda **fields: find_refusals(make_file(parts=parts, wires=[{**wire, **fields}]))
