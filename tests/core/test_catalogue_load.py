"""The catalogue loader: what it reads, and that every mistake is named with its line and column."""

from __future__ import annotations

from pathlib import Path

import pytest

from core.catalogue import load_user
from core.catalogue.load import load_fuses, load_lamps, load_relays, load_thermistors, load_tubes
from core.errors import CatalogueError

HEAD = "designation,pins,field,value,unit,source,status,note\n"
GOOD = """X1,,base,B9A,,sheet,seen,
X1,,equivalents,Y1; Z-1,,,memory,
X1,4-9,volts,6.3,V,sheet,seen,
X1,4-9,amps,0.15,A,sheet,second-hand,
X1,9-5,volts,6.3,V,sheet,disputed,two sheets differ
X1,9-5,amps,0.15,A,,memory,
X1,,controlled_warmup,yes,,,memory,
X1,,cathode_joined,no,,,memory,
"""


def problems(body: str, head: str = HEAD) -> list[str]:
    """The messages for a file; a plain line ``body`` follows the header."""
    with pytest.raises(CatalogueError) as caught:
        load_tubes(head + body, "t.csv")
    return [str(problem) for problem in caught.value.problems]


def test_a_good_file_becomes_types_with_provenance() -> None:
    (tube,) = load_tubes(HEAD + GOOD, "t.csv")
    assert tube.designation == "X1"
    assert [section.name for section in tube.sections] == ["4-9", "9-5"]
    assert tube.equivalents == ("Y1", "Z-1")
    assert tube.controlled_warmup is True
    assert tube.cathode_joined is False
    assert tube.heater_pins == ("4", "9", "5")
    assert tube.status_of("4-9 amps") == "second-hand"
    assert tube.source_of("base") == "sheet"
    assert [entry.note for entry in tube.provenance if entry.field == "9-5 volts"] == ["two sheets differ"]


def test_a_byte_order_mark_blank_lines_and_carriage_returns_are_fine() -> None:
    text = "\ufeff" + (HEAD + "\n" + GOOD + ",,,,,,,\n").replace("\n", "\r\n")
    assert len(load_tubes(text, "t.csv")) == 1


def test_an_empty_file_names_the_missing_columns() -> None:
    found = problems("", head="")
    assert "t.csv line 1, column 'designation': this column is missing" in found
    assert len(found) == 8


def test_unknown_and_swapped_columns_are_named() -> None:
    assert any("column 'volts': unknown column" in one for one in problems("", head="designation,volts\n"))
    swapped = HEAD.replace("designation,pins", "pins,designation")
    assert "columns must come in the order" in problems("", head=swapped)[0]


@pytest.mark.parametrize(
    ("old", "new", "expected"),
    [
        ("4-9,volts,6.3,V", "4-9,volts,six,V", "line 4, column 'value': 'six' is not a number"),
        ("4-9,volts,6.3,V", "4-9,volts,inf,V", "line 4, column 'value': 'inf' is not a finite number"),
        ("4-9,volts,6.3,V", "4-9,volts,nan,V", "line 4, column 'value': 'nan' is not a finite number"),
        ("4-9,volts,6.3,V", "4-9,volts,-6.3,V", "line 4, column 'value': -6.3 is not between"),
        ("4-9,volts,6.3,V", "4-9,volts,6300,V", "line 4, column 'value': 6300 is not between"),
        ("4-9,volts,6.3,V", "4-9,volts,,V", "line 4, column 'value': is empty"),
        ("4-9,volts,6.3,V", "4-9,volts,6.3,mV", "line 4, column 'unit': 'mV' should be 'V'"),
        ("4-9,volts,6.3,V", "4-9,volts,6.3,", "line 4, column 'unit': should be 'V'"),
        ("4-9,volts,6.3,V", ",volts,6.3,V", "line 4, column 'pins': needs two pins"),
        ("4-9,volts", "4-9,voltage", "line 4, column 'field': unknown field 'voltage'"),
        ("X1,4-9,amps", "X1,4-9,volts", "line 5, column 'field': 'volts' is given twice for X1 4-9"),
        ("sheet,second-hand", "sheet,sure", "line 5, column 'status': 'sure' is not one of seen"),
        ("sheet,second-hand", ",second-hand", "line 5, column 'source': is empty, but the status is"),
        (",base,B9A,", ",base,B10A,", "line 2, column 'value': 'B10A' is not one of B9A"),
        (",base,B9A,,", "2-3,base,B9A,,", "line 2, column 'pins': must be empty"),
        (",base,B9A,", ",base,B7G,", "line 4, column 'pins': there is no pin 9 on base B7G"),
        ("warmup,yes", "warmup,maybe", "line 8, column 'value': 'maybe' is not one of yes, no"),
        ("Y1; Z-1", "x 1", "line 3, column 'value': 'x 1' is the designation itself"),
    ],
)
def test_a_mistake_is_named_with_line_and_column(old: str, new: str, expected: str) -> None:
    assert old in GOOD
    found = problems(GOOD.replace(old, new, 1))
    assert any(expected in one for one in found), found


def test_a_section_needs_volts_and_amps() -> None:
    assert "X1 9-5 has no amps" in problems(GOOD.replace("X1,9-5,amps,0.15,A,,memory,\n", ""))[0]
    assert "X1 has no heater section" in problems("X1,,base,B9A,,,memory,\n")[0]


@pytest.mark.parametrize("pins", ["4", "4-4", "4/5", "4-5-9"])
def test_pins_are_two_different_pins(pins: str) -> None:
    body = f"X1,{pins},volts,6.3,V,,memory,\nX1,{pins},amps,0.3,A,,memory,\n"
    assert "is not two pins such as 4-5" in problems(body)[0]


@pytest.mark.parametrize("second", [("6", "7"), ("5", "4")])
def test_sections_must_join_without_a_ring(second: tuple[str, str]) -> None:
    rows = "".join(
        f"X1,{a}-{b},volts,6.3,V,,memory,\nX1,{a}-{b},amps,0.3,A,,memory,\n" for a, b in (("4", "5"), second)
    )
    assert "do not join into one heater" in problems(rows)[0]


def test_the_pins_row_must_agree_with_its_section() -> None:
    assert "'4-5' should be '4-9'" in problems(GOOD + "X1,4-9,pins,4-5,,,memory,\n")[0]


def test_figures_that_contradict_each_other_are_named() -> None:
    spread = "X1,,spread_low_a,0.2,A,,memory,\nX1,,spread_high_a,0.1,A,,memory,\n"
    limits = "X1,,hk_positive_peak_v,90,V,,memory,\nX1,,hk_positive_dc_v,100,V,,memory,\n"
    found = problems(GOOD + spread + limits)
    assert "line 11, column 'value': is below spread_low_a" in found[0]
    assert "line 13, column 'value': is above the peak limit" in found[1]


def test_two_types_cannot_share_a_name() -> None:
    other = GOOD.replace("X1,", "X2,")
    assert "line 11, column 'value': 'Y1' is already a name of X1" in problems(GOOD + other)[0]
    renamed = other.replace("Y1; Z-1", "x-1")
    assert "'x-1' is already a name of X1" in problems(GOOD + renamed)[0]


def test_a_type_cannot_come_twice() -> None:
    other = "X2,4-5,volts,6.3,V,,memory,\nX2,4-5,amps,0.3,A,,memory,\n"
    again = "X1,,cold_ratio,7,1,,memory,\n"
    assert "line 12, column 'designation': 'X1' is already in this file" in problems(GOOD + other + again)[0]


def test_all_mistakes_come_at_once() -> None:
    body = GOOD.replace("6.3,V,sheet,seen", "six,V,sheet,seen").replace("second-hand", "sure")
    assert len(problems(body)) >= 2


def test_a_row_with_too_few_cells_and_broken_quotes_are_named() -> None:
    assert "has 2 cells, expected 8" in problems("X1,4-9\n")[0]
    assert any("is not CSV" in one for one in problems('X1,4-9,volts,"6.3\n'))


def test_other_tables_name_what_is_missing() -> None:
    for load, body in (
        (load_lamps, "L,,volts,6.3,V,,memory,\n"),
        (load_thermistors, "N,,r25_ohm,5,ohm,,memory,\n"),
        (load_relays, "R,,coil_v,6,V,,memory,\n"),
        (load_fuses, "F,,rated_a,1,A,,memory,\n"),
    ):
        with pytest.raises(CatalogueError, match=r"t\.csv line 2, column 'field': . has no "):
            load(HEAD + body, "t.csv")


def test_user_types_are_read_from_their_folder(tmp_path: Path) -> None:
    assert load_user(tmp_path) == ((), ())
    (tmp_path / "tubes.csv").write_text(HEAD + GOOD, encoding="utf-8")
    types, found = load_user(tmp_path)
    assert [tube.designation for tube in types] == ["X1"]
    assert found == ()


def test_a_user_file_with_mistakes_gives_its_problems(tmp_path: Path) -> None:
    path = tmp_path / "tubes.csv"
    path.write_text(HEAD + GOOD.replace("6.3", "six"), encoding="utf-8")
    types, found = load_user(tmp_path)
    assert types == ()
    assert found[0].place == "tubes.csv line 4, column 'value'"
    path.write_bytes(b"\xff\xfe\x00designation")
    assert load_user(tmp_path)[1][0].message == "is not UTF-8 text"
    path.unlink()
    path.mkdir()
    assert "cannot be read" in load_user(tmp_path)[1][0].message
