"""What a well-typed sheet may still get wrong, and the terminals of each kind of part."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import msgspec
import pytest
from msgspec.structs import replace

from core.catalogue.types import Section, TubeType
from core.checks import find_problems
from core.sheet import Chassis, Sheet, Tube, Winding, Wire
from core.storage import load
from core.structure import KINDS
from core.terminals import TERMINALS, has_terminal, terminal_names

FileWith = Callable[..., bytes]
ProblemsOf = Callable[[bytes], dict[str, str]]
ProblemsOfContent = Callable[..., dict[str, str]]


@pytest.mark.parametrize(
    ("fields", "key"),
    [
        ({"kind": "resistor", "ohm": -1}, "ohm"),
        ({"kind": "resistor", "ohm": 1e13}, "ohm"),
        ({"kind": "resistor", "ohm": 1e-300}, "ohm"),
        ({"kind": "resistor", "ohm": 1, "rated_w": 0}, "rated_w"),
        ({"kind": "resistor", "ohm": 1, "tolerance_pct": -5}, "tolerance_pct"),
        ({"kind": "resistor", "ohm": 1, "tolerance_pct": 100}, "tolerance_pct"),
        ({"kind": "resistor", "ohm": float("nan")}, "ohm"),
        ({"kind": "resistor", "ohm": float("-inf")}, "ohm"),
        ({"kind": "winding", "rated_v": 0, "rated_a": 1}, "rated_v"),
        ({"kind": "winding", "rated_v": 6.3, "rated_a": 1, "regulation_pct": -1}, "regulation_pct"),
        ({"kind": "winding", "rated_v": 6.3, "rated_a": 1, "rated_mains_v": 0}, "rated_mains_v"),
        ({"kind": "tube", "type": "ECC83", "cold_ratio": 1}, "cold_ratio"),
        ({"kind": "tube", "type": "ECC83", "warmup_s": 0}, "warmup_s"),
        ({"kind": "battery", "emf_v": 6, "internal_ohm": -0.1}, "internal_ohm"),
        ({"kind": "balance", "ohm": 100, "wiper": 1.01}, "wiper"),
        ({"kind": "balance", "ohm": 100, "wiper": -0.01}, "wiper"),
        ({"kind": "capacitor", "farad": 0}, "farad"),
        ({"kind": "relay", "coil_v": 12, "coil_ohm": 0}, "coil_ohm"),
        ({"kind": "relay", "coil_v": 12, "coil_ohm": 400, "pull_in_v": 2, "drop_out_v": 3}, "drop_out_v"),
        ({"kind": "dc_supply", "set_v": 6.3, "limit_a": 1, "foldback_a": 1.5}, "foldback_a"),
        ({"kind": "dc_supply", "set_v": 6.3, "limit_a": 1, "trip_s": -1}, "trip_s"),
        ({"kind": "fuse", "rated_a": 1, "melting_i2t_a2s": 0}, "melting_i2t_a2s"),
        ({"kind": "elevation", "volts": 40, "source_ohm": -1}, "source_ohm"),
        ({"kind": "joint", "at": [0, 1e9]}, "at[1]"),
        ({"kind": "joint", "at": [float("nan"), 0]}, "at[0]"),
    ],
)
def test_values_out_of_range(problems_of_part: ProblemsOfContent, fields: dict[str, Any], key: str) -> None:
    problems = problems_of_part(**fields)
    assert list(problems) == [f"parts[0].{key}"]
    assert "X1" in problems[f"parts[0].{key}"]


@pytest.mark.parametrize(
    "fields",
    [
        {"kind": "lamp"},
        {"kind": "lamp", "rated_v": 6.3},
        {"kind": "lamp", "type": "", "rated_a": 0.15},
        {"kind": "thermistor"},
        {"kind": "thermistor", "r25_ohm": 10, "beta_k": 3000},
    ],
)
def test_a_part_that_is_not_described(problems_of_part: ProblemsOfContent, fields: dict[str, Any]) -> None:
    assert "X1 needs a type" in problems_of_part(**fields)["parts[0]"]


@pytest.mark.parametrize(
    "fields",
    [
        {"kind": "lamp", "type": "No. 47"},
        {"kind": "lamp", "rated_v": 6.3, "rated_a": 0.15},
        {"kind": "thermistor", "r25_ohm": 10, "beta_k": 3000, "dissipation_w_per_k": 0.02},
        {"kind": "resistor", "ohm": 0},
        {"kind": "balance", "ohm": 100, "wiper": 1},
        {"kind": "elevation", "volts": -40},
        {"kind": "dc_supply", "set_v": 6.3, "limit_a": 1, "foldback_a": 1},
    ],
)
def test_values_at_the_edge_of_what_is_right(file_with: FileWith, fields: dict[str, Any]) -> None:
    assert len(load(file_with(parts=[{"id": "X1", **fields}])).parts) == 1


@pytest.mark.parametrize(
    ("mains", "place"),
    [
        ({"low_pct": -51}, "mains.low_pct"),
        ({"high_pct": 101}, "mains.high_pct"),
        ({"low_pct": 5, "high_pct": 2}, "mains.low_pct"),
        ({"hz": 1001}, "mains.hz"),
        ({"hz": -1}, "mains.hz"),
        ({"nominal_v": 0}, "mains.nominal_v"),
    ],
)
def test_mains_out_of_range(
    file_with: FileWith, problems_of: ProblemsOf, mains: dict[str, float], place: str
) -> None:
    assert list(problems_of(file_with(mains=mains))) == [place]


def test_direct_current_mains_are_allowed(file_with: FileWith) -> None:
    assert load(file_with(mains={"nominal_v": 110, "hz": 0})).mains.hz == 0


@pytest.mark.parametrize("bad", ["", "V.1", "V 1", "V\u00a01", "V\n1", "V\x001", "V\x851", "V" * 41])
def test_ids_that_cannot_be(file_with: FileWith, problems_of: ProblemsOf, bad: str) -> None:
    message = problems_of(file_with(parts=[{"id": bad, "kind": "joint"}]))["parts[0].id"]
    assert "cannot be an id" in message
    assert message.isprintable()


@pytest.mark.parametrize("good", ["V" * 40, "V1", "Röhre-1", "真空管", "V1:2"])
def test_ids_that_can_be(file_with: FileWith, good: str) -> None:
    assert load(file_with(parts=[{"id": good, "kind": "joint"}])).parts[0].id == good


@pytest.mark.parametrize(
    ("fields", "key", "says"),
    [
        ({"awg": 41}, "awg", "from 0 to 40, not 41"),
        ({"awg": -1}, "awg", "from 0 to 40"),
        ({"awg": -(10**400)}, "awg", "too large"),
        ({"area_mm2": 0}, "area_mm2", "greater than 0"),
        ({"length_m": -0.1}, "length_m", "0 or greater"),
        ({"awg": 20, "area_mm2": 0.5}, "area_mm2", "both awg and area_mm2"),
        ({"to": "V1.4"}, "to", "same terminal"),
        ({"to": "T1.ct"}, "to", "T1 has no terminal 'ct'; it has a, b"),
        ({"to": "V1.21"}, "to", "pins are numbered 1 to 20"),
        ({"to": "V1.0"}, "to", "pins are numbered 1 to 20"),
        ({"to": "V1.04"}, "to", "pins are numbered 1 to 20"),
        ({"to": "V1.٤"}, "to", "pins are numbered 1 to 20"),
        ({"to": "T1."}, "to", "T1 has no terminal ''"),
        ({"to": "T1"}, "to", "write part and terminal with a dot"),
        ({"from": "T9.a"}, "from", "w1 starts at T9.a, but there is no part T9"),
    ],
)
def test_wires_that_cannot_be(
    problems_of_wire: ProblemsOfContent, fields: dict[str, Any], key: str, says: str
) -> None:
    problems = problems_of_wire(**fields)
    assert list(problems) == [f"wires[0].{key}"]
    assert says in problems[f"wires[0].{key}"]


def tube_type(designation: str = "MINE", pins: tuple[str, str] = ("4", "5"), **fields: Any) -> TubeType:
    return TubeType(designation=designation, sections=(Section(pins, 6.3, 0.3),), **fields)


@pytest.mark.parametrize(
    ("types", "place"),
    [
        ((tube_type(), tube_type()), "types[1].designation"),
        ((tube_type(" "),), "types[0].designation"),
        ((tube_type(pins=("4", "4")),), "types[0].sections[0].pins"),
        ((tube_type(pins=("4", "k")),), "types[0].sections[0].pins"),
        ((tube_type(cold_ratio=0.5),), "types[0].cold_ratio"),
        ((TubeType(designation="MINE", sections=()),), "types[0].sections"),
        (
            (TubeType(designation="MINE", sections=(Section(("1", "2"), 0, 1),)),),
            "types[0].sections[0].rated_v",
        ),
    ],
)
def test_own_types_that_cannot_be(types: tuple[TubeType, ...], place: str) -> None:
    assert [problem.place for problem in find_problems(Sheet(types=types))] == [place]


def test_every_kind_has_its_terminals() -> None:
    assert set(TERMINALS) == set(KINDS)


def test_the_tap_is_there_when_it_is_asked_for() -> None:
    plain = Winding(id="T1", rated_v=6.3, rated_a=1)
    assert terminal_names(plain) == ("a", "b")
    assert terminal_names(msgspec.structs.replace(plain, centre_tap=True)) == ("a", "b", "ct")


def test_a_tube_has_any_pin() -> None:
    tube = Tube(id="V1", type="ECC83")
    assert terminal_names(tube) is None
    assert [pin for pin in ("0", "1", "20", "21", "01", "k", "") if has_terminal(tube, pin)] == ["1", "20"]


def test_what_is_shared_with_a_sheet_found_right_is_not_looked_at_again_but_what_hangs_on_a_change_is() -> (
    None
):
    tube, winding = Tube(id="V1", type="EL84"), Winding(id="T1", rated_v=6.3, rated_a=2.0)
    wire = Wire(id="w1", start="T1.a", end="V1.4", awg=20, length_m=0.1)
    known = Sheet(parts=(tube, winding), wires=(wire,))
    assert find_problems(known) == ()
    wrong = replace(wire, length_m=-1.0)
    for after in (
        replace(known, parts=(tube,)),
        replace(known, parts=(tube, Chassis(id="T1"))),
        replace(known, parts=(tube, replace(winding, rated_v=-1.0))),
        replace(known, wires=(wrong,)),
        replace(known, wires=(wire, wire)),
        replace(known, parts=(tube, winding, Chassis(id="w1"))),
    ):
        assert find_problems(after)
        assert find_problems(after, known) == find_problems(after)
