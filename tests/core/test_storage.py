"""The sheet file: what is read, what is written, and what is said about files that cannot be used."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import msgspec
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core.catalogue.types import Provenance, Section, TubeType
from core.errors import NewerVersionError, SheetError
from core.sheet import Chassis, Mains, Resistor, Sheet, Tube, Winding, Wire
from core.storage import LARGEST_FILE, dump, load

DATA = Path(__file__).parents[1] / "data"
SAMPLE = DATA / "sheet_v1.heaterloom"
SECTION = Section(("4", "5"), 6.3, 0.3)

FileWith = Callable[..., bytes]
ProblemsOf = Callable[[bytes], dict[str, str]]


def test_the_sample_reads_as_drawn() -> None:
    sheet = load(SAMPLE.read_bytes())
    assert sheet.title == "Two-valve line amplifier"
    assert sheet.mains == Mains(nominal_v=230.0, low_pct=-10.0, high_pct=10.0, hz=50.0)
    assert sheet.part_by_id["T1"] == Winding(id="T1", rated_v=6.3, rated_a=2.0, rated_mains_v=230.0)
    assert sheet.part_by_id["V2"] == Tube(id="V2", type="EL84", cathode_v=7.5, at=(320.0, 0.0))
    assert sheet.part_by_id["E1"] == Chassis(id="E1", at=(0.0, 120.0))
    assert [wire.id for wire in sheet.wires] == ["w1", "w2", "w3", "w4", "w5", "w6"]
    assert sheet.wire_by_id["w3"] == Wire(id="w3", start="V2.4", end="V1.4", area_mm2=0.5, length_m=0.15)


def test_an_empty_sheet_is_a_sheet(file_with: FileWith) -> None:
    assert load(file_with()) == Sheet()


def test_a_byte_order_mark_is_tolerated() -> None:
    assert load(b"\xef\xbb\xbf" + SAMPLE.read_bytes()) == load(SAMPLE.read_bytes())


def test_an_unknown_tube_type_does_not_matter_here(file_with: FileWith) -> None:
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
def test_bad_files_name_every_place(problems_of: ProblemsOf, name: str, places: list[str]) -> None:
    assert list(problems_of((DATA / "bad" / f"{name}.heaterloom").read_bytes())) == places


def test_every_bad_file_is_tested() -> None:
    parametrised = test_bad_files_name_every_place.pytestmark[0].args[1]
    assert {name for name, _ in parametrised} == {path.stem for path in (DATA / "bad").iterdir()}


def test_messages_name_the_part(problems_of: ProblemsOf) -> None:
    assert problems_of((DATA / "bad" / "two_errors.heaterloom").read_bytes()) == {
        "parts[0].rated_v": "rated volts of T1 must be greater than 0, not -6.3",
        "wires[5].to": "w6 ends at E2.e, but there is no part E2",
    }


def test_a_newer_version_is_told_before_any_field() -> None:
    with pytest.raises(NewerVersionError, match=r"'amp' was made by a newer version .* \(sheet version 7;"):
        load(json.dumps({"format": "heaterloom-sheet", "version": 7, "parts": 3}).encode(), "amp")


@pytest.mark.parametrize("version", [None, "1", 1.5, True, -1, 0])
def test_versions_that_never_were(file_with: FileWith, problems_of: ProblemsOf, version: Any) -> None:
    assert list(problems_of(file_with(version=version))) == ["version"]


@pytest.mark.parametrize("data", [b"[]", b"3", b"null", b"{}", b'"sheet"'])
def test_json_that_is_no_sheet(problems_of: ProblemsOf, data: bytes) -> None:
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
def test_files_that_cannot_be_read(problems_of: ProblemsOf, data: bytes, says: str) -> None:
    assert says in problems_of(data)[""]


def test_half_a_character_pair_is_refused(file_with: FileWith, problems_of: ProblemsOf) -> None:
    data = file_with(parts=[{"id": "J1", "kind": "joint"}, {"id": "V1", "kind": "tube", "type": "\ud800x"}])
    assert list(problems_of(data)) == ["parts[1].type"]


def test_a_whole_character_pair_is_read() -> None:
    assert load(b'{"format":"heaterloom-sheet","version":1,"title":"\\ud83d\\udca1"}').title == "\U0001f4a1"


def test_repeated_keys_are_found_at_the_top_and_within(problems_of: ProblemsOf) -> None:
    data = (
        b'{"format": "heaterloom-sheet", "version": 1, "title": "a", "title": "b", '
        b'"mains": {"hz": 50, "hz": 60}, "parts": [{"id": "J1", "kind": "joint", "id": "J2"}]}'
    )
    assert set(problems_of(data)) == {"title", "mains.hz", "parts[0].id"}


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
    known = TubeType(
        designation="MINE",
        sections=(SECTION,),
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
        Sheet(types=(TubeType(designation="MINE", sections=(SECTION,), equivalents=("\udfff",)),)),
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
