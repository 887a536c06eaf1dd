"""The sheet file: what is read, what is written, and what is said about files that cannot be used."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import msgspec
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core.catalogue.types import Provenance, Section, TubeType
from core.checks import find_problems
from core.errors import NewerVersionError, SheetError
from core.migrations import migrate
from core.sheet import Chassis, Mains, Resistor, Sheet, Tube, Winding, Wire
from core.storage import LARGEST_FILE, dump, load
from core.structure import KINDS
from core.terminals import TERMINALS, has_terminal, terminal_names

DATA = Path(__file__).parents[1] / "data"
SAMPLE = DATA / "sheet_v1.heaterloom"


def file_with(**content: Any) -> bytes:
    return json.dumps({"format": "heaterloom-sheet", "version": 1, **content}).encode()


def problems_of(data: bytes) -> dict[str, str]:
    with pytest.raises(SheetError) as caught:
        load(data, "test.heaterloom")
    assert str(caught.value)
    return {problem.place: problem.message for problem in caught.value.problems}


def problems_of_part(**fields: Any) -> dict[str, str]:
    return problems_of(file_with(parts=[{"id": "X1", **fields}]))


def problems_of_wire(**fields: Any) -> dict[str, str]:
    parts = [
        {"id": "V1", "kind": "tube", "type": "ECC83"},
        {"id": "T1", "kind": "winding", "rated_v": 6.3, "rated_a": 1},
    ]
    return problems_of(file_with(parts=parts, wires=[{"id": "w1", "from": "V1.4", "to": "T1.a", **fields}]))


# --- reading ---


def test_the_sample_reads_as_drawn() -> None:
    sheet = load(SAMPLE.read_bytes())
    assert sheet.title == "Two-valve line amplifier"
    assert sheet.mains == Mains(nominal_v=230.0, low_pct=-10.0, high_pct=10.0, hz=50.0)
    assert sheet.part_by_id["T1"] == Winding(id="T1", rated_v=6.3, rated_a=2.0, rated_mains_v=230.0)
    assert sheet.part_by_id["V2"] == Tube(id="V2", type="EL84", cathode_v=7.5, at=(320.0, 0.0))
    assert sheet.part_by_id["E1"] == Chassis(id="E1", at=(0.0, 120.0))
    assert [wire.id for wire in sheet.wires] == ["w1", "w2", "w3", "w4", "w5", "w6"]
    assert sheet.wire_by_id["w3"] == Wire(id="w3", start="V2.4", end="V1.4", area_mm2=0.5, length_m=0.15)


def test_an_empty_sheet_is_a_sheet() -> None:
    assert load(file_with()) == Sheet()


def test_a_byte_order_mark_is_tolerated() -> None:
    assert load(b"\xef\xbb\xbf" + SAMPLE.read_bytes()) == load(SAMPLE.read_bytes())


def test_an_unknown_tube_type_does_not_matter_here() -> None:
    sheet = load(file_with(parts=[{"id": "V1", "kind": "tube", "type": "made up"}]))
    assert sheet.parts == (Tube(id="V1", type="made up"),)


@pytest.mark.parametrize(
    ("name", "places"),
    [
        ("both_wire_sizes", ["wires[0].area_mm2"]),
        ("dangling_wire", ["wires[0].to"]),
        ("duplicate_id", ["parts[2].id", "wires[0].to", "wires[1].to", "wires[2].from", "wires[4].from"]),
        ("id_shared_by_part_and_wire", ["wires[5].id"]),
        ("infinite", ["wires[2].length_m"]),
        ("missing_field", ["parts[0].rated_a"]),
        ("newer_version", ["version"]),
        ("not_a_number", ["parts[0].rated_v"]),
        ("not_json", ["line 1, column 1"]),
        ("other_format", ["format"]),
        ("repeated_key", ["parts[2].cathode_v"]),
        ("truncated", ["line 14, column 17"]),
        ("two_errors", ["parts[0].rated_v", "wires[5].to"]),
        ("two_wrong_types", ["parts[0].rated_v", "parts[2].cathode_v"]),
        ("unknown_key", ["parts[2].cathode_volts"]),
        ("unknown_kind", ["parts[3].kind"]),
        ("unknown_terminal", ["wires[0].from"]),
        ("wrong_type", ["parts[0].rated_v"]),
    ],
)
def test_bad_files_name_every_place(name: str, places: list[str]) -> None:
    assert list(problems_of((DATA / "bad" / f"{name}.heaterloom").read_bytes())) == places


def test_every_bad_file_is_tested() -> None:
    parametrised = test_bad_files_name_every_place.pytestmark[0].args[1]
    assert {name for name, _ in parametrised} == {path.stem for path in (DATA / "bad").iterdir()}


def test_messages_name_the_part() -> None:
    assert problems_of((DATA / "bad" / "two_errors.heaterloom").read_bytes()) == {
        "parts[0].rated_v": "rated volts of T1 must be greater than 0, not -6.3",
        "wires[5].to": "w6 ends at E2.e, but there is no part E2",
    }


def test_a_newer_version_is_told_before_any_field() -> None:
    with pytest.raises(NewerVersionError, match=r"'amp' was made by a newer version .* \(sheet version 7;"):
        load(json.dumps({"format": "heaterloom-sheet", "version": 7, "parts": 3}).encode(), "amp")


@pytest.mark.parametrize("version", [None, "1", 1.5, True, -1, 0])
def test_versions_that_never_were(version: Any) -> None:
    assert list(problems_of(file_with(version=version))) == ["version"]


@pytest.mark.parametrize("data", [b"[]", b"3", b"null", b"{}", b'"sheet"'])
def test_json_that_is_no_sheet(data: bytes) -> None:
    assert "'heaterloom-sheet'" in problems_of(data)[""]


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b"", "is empty"),
        (b" \n ", "is empty"),
        (b'{"format": "\xff"}', "not text in UTF-8 (byte 12)"),
        (b"\xff\xfe{\x00", "not text in UTF-8"),
        (b"[" * 200_000, "nested too deeply"),
        (b'{"a":' * 200_000, "nested too deeply"),
        (b'{"a": ' + b"9" * 5000 + b"}", "too many digits"),
        (b" " * (LARGEST_FILE + 1), "larger than 50 MB"),
    ],
)
def test_files_that_cannot_be_read(data: bytes, says: str) -> None:
    assert says in problems_of(data)[""]


def test_half_a_character_pair_is_refused() -> None:
    data = file_with(parts=[{"id": "J1", "kind": "joint"}, {"id": "V1", "kind": "tube", "type": "\ud800x"}])
    assert list(problems_of(data)) == ["parts[1].type"]


def test_a_whole_character_pair_is_read() -> None:
    assert load(b'{"format":"heaterloom-sheet","version":1,"title":"\\ud83d\\udca1"}').title == "\U0001f4a1"


def test_repeated_keys_are_found_at_the_top_and_within() -> None:
    data = (
        b'{"format": "heaterloom-sheet", "version": 1, "title": "a", "title": "b", '
        b'"mains": {"hz": 50, "hz": 60}, "parts": [{"id": "J1", "kind": "joint", "id": "J2"}]}'
    )
    assert set(problems_of(data)) == {"title", "mains.hz", "parts[0].id"}


# --- shape ---


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
def test_wrong_shapes(content: dict[str, Any], place: str, says: str) -> None:
    assert says in problems_of(file_with(**content))[place]


@pytest.mark.parametrize("fields", [{"kind": "valve"}, {}])
def test_a_missing_or_unknown_kind_lists_the_kinds(fields: dict[str, Any]) -> None:
    message = problems_of_part(**fields)["parts[0].kind"]
    assert all(kind in message for kind in KINDS)


def test_the_choices_of_an_overload_are_listed() -> None:
    message = problems_of_part(kind="dc_supply", set_v=6, limit_a=1, overload="melts")["parts[0].overload"]
    assert "constant-current, hiccup, foldback, latch-off" in message


# --- values ---


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
def test_values_out_of_range(fields: dict[str, Any], key: str) -> None:
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
def test_a_part_that_is_not_described(fields: dict[str, Any]) -> None:
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
def test_values_at_the_edge_of_what_is_right(fields: dict[str, Any]) -> None:
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
def test_mains_out_of_range(mains: dict[str, float], place: str) -> None:
    assert list(problems_of(file_with(mains=mains))) == [place]


def test_direct_current_mains_are_allowed() -> None:
    assert load(file_with(mains={"nominal_v": 110, "hz": 0})).mains.hz == 0


@pytest.mark.parametrize("bad", ["", "V.1", "V 1", "V\u00a01", "V\n1", "V\x001", "V\x851", "V" * 41])
def test_ids_that_cannot_be(bad: str) -> None:
    message = problems_of(file_with(parts=[{"id": bad, "kind": "joint"}]))["parts[0].id"]
    assert "cannot be an id" in message
    assert message.isprintable()


@pytest.mark.parametrize("good", ["V" * 40, "V1", "Röhre-1", "真空管", "V1:2"])
def test_ids_that_can_be(good: str) -> None:
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
def test_wires_that_cannot_be(fields: dict[str, Any], key: str, says: str) -> None:
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


# --- terminals ---


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


# --- writing ---


def test_what_is_written_reads_well() -> None:
    sheet = load(SAMPLE.read_bytes())
    assert dump(sheet).decode().splitlines() == [
        "{",
        '  "format": "heaterloom-sheet", "version": 1,',
        '  "title": "Two-valve line amplifier",',
        '  "mains": {"nominal_v": 230, "low_pct": -10, "high_pct": 10, "hz": 50},',
        '  "ambient_c": 25,',
        '  "parts": [',
        '    {"id": "T1", "kind": "winding", "rated_v": 6.3, "rated_a": 2, "rated_mains_v": 230},',
        '    {"id": "V1", "kind": "tube", "type": "ECC83", "at": [160, 0]},',
        '    {"id": "V2", "kind": "tube", "type": "EL84", "cathode_v": 7.5, "at": [320, 0]},',
        '    {"id": "E1", "kind": "chassis", "at": [0, 120]}',
        "  ],",
        '  "wires": [',
        '    {"id": "w1", "from": "T1.a", "to": "V2.4", "awg": 20, "length_m": 0.3},',
        '    {"id": "w2", "from": "T1.b", "to": "V2.5", "awg": 20, "length_m": 0.3},',
        '    {"id": "w3", "from": "V2.4", "to": "V1.4", "area_mm2": 0.5, "length_m": 0.15},',
        '    {"id": "w4", "from": "V1.4", "to": "V1.5"},',
        '    {"id": "w5", "from": "V2.5", "to": "V1.9", "area_mm2": 0.5, "length_m": 0.15},',
        '    {"id": "w6", "from": "T1.b", "to": "E1.e"}',
        "  ]",
        "}",
    ]
    assert dump(sheet).endswith(b"}\n")


def test_moving_one_part_changes_one_line() -> None:
    sheet = load(SAMPLE.read_bytes())
    moved = msgspec.structs.replace(sheet.parts[1], at=(200.0, 40.0))
    after = msgspec.structs.replace(sheet, parts=(sheet.parts[0], moved, *sheet.parts[2:]))
    pairs = zip(dump(sheet).splitlines(), dump(after).splitlines(), strict=True)
    assert sum(old != new for old, new in pairs) == 1


def test_equal_sheets_give_equal_bytes() -> None:
    whole = Sheet(ambient_c=20, parts=(Resistor(id="R1", ohm=47, tolerance_pct=5),))
    float_ = Sheet(ambient_c=20.0, parts=(Resistor(id="R1", ohm=47.0, tolerance_pct=float("5")),))
    assert dump(whole) == dump(float_)


def test_own_types_travel_along() -> None:
    known = tube_type(
        equivalents=("YOURS",),
        hk_positive_peak_v=90.0,
        provenance=(Provenance("4-5 volts", "a sheet", "seen"),),
    )
    sheet = Sheet(types=(known,), parts=(Tube(id="V1", type="MINE"),))
    assert load(dump(sheet)) == sheet


@pytest.mark.parametrize(
    "sheet",
    [
        Sheet(ambient_c=float("nan")),
        Sheet(title="\ud800"),
        Sheet(parts=(Resistor(id="R1", ohm=-1.0),)),
        Sheet(wires=(Wire(id="w1", start="V1.4", end="V1.5"),)),
        Sheet(types=(tube_type(equivalents=("\udfff",)),)),
    ],
)
def test_nothing_is_written_that_could_not_be_read(sheet: Sheet) -> None:
    with pytest.raises(SheetError):
        dump(sheet)


@given(data=st.data())
@settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_what_is_written_reads_back_the_same(sheets: st.SearchStrategy[Sheet], data: st.DataObject) -> None:
    sheet = data.draw(sheets)
    written = dump(sheet)
    again = load(written)
    assert again == sheet
    assert dump(again) == written


# --- older versions ---


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
