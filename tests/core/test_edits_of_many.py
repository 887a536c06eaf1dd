"""Edits of many parts at once: copying, mirroring, turning as a body, lining up, numbering, swapping, reaching."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.catalogue.types import Section, TubeType
from core.checks import find_problems
from core.edits.arranging import align, distribute, shift, snap
from core.edits.bodily import mirror, rotate
from core.edits.copying import extract, paste
from core.edits.numbering import chain_order, natural, rename_all, renumber, tube_names
from core.edits.reaching import connected, same_string
from core.edits.swapping import swap_places, swap_tubes
from core.errors import EditError
from core.sheet import (
    Chassis,
    Frame,
    Joint,
    Note,
    Resistor,
    Sheet,
    Tube,
    Winding,
    Wire,
    split_terminal,
)
from core.storage import dump, load
from tests.core.drawn_sheets import boxes_of, drawn_sheets, places

OWN = TubeType(designation="OWN1", equivalents=("OWN2",), sections=(Section(("4", "5"), 6.3, 0.3),))
ORIGIN = (0.0, 0.0)


def chain() -> Sheet:
    """A winding that heats V7, then V3 through a resistor; V1 hangs on V7; V9 stands by itself."""
    return Sheet(
        parts=(
            Tube(id="V9", type="EL84", at=(0, 400)),
            Tube(id="V3", type="ECC83", at=(600, 0)),
            Tube(id="V1", type="EL84", at=(400, 100)),
            Tube(id="V7", type="EL84", at=(200, 0), rated_a=0.8, turn=90),
            Winding(id="T1", rated_v=6.3, rated_a=3.0),
            Resistor(id="R1", ohm=1.0, at=(400, 0)),
            Chassis(id="E1", at=(0, 200)),
        ),
        wires=(
            Wire(id="w1", start="T1.a", end="V7.4", twist="p1", via=((100.0, 20.0),)),
            Wire(id="w2", start="T1.b", end="V7.5", twist="p1"),
            Wire(id="w3", start="V7.4", end="R1.1"),
            Wire(id="w4", start="R1.2", end="V3.4"),
            Wire(id="w5", start="V7.5", end="V1.5"),
            Wire(id="w6", start="T1.b", end="E1.e"),
            Wire(id="w7", start="E1.e", end="V9.5"),
        ),
    )


# copying


def test_what_is_copied() -> None:
    sheet = Sheet(
        parts=(*chain().parts, Tube(id="V2", type="own 2")), wires=chain().wires, types=(OWN, _other())
    )
    piece = extract(sheet, ("T1", "V7", "w3"))
    assert [part.id for part in piece.parts] == ["V7", "T1"]
    assert [wire.id for wire in piece.wires] == ["w1", "w2"]
    assert piece.types == ()
    assert extract(sheet, ("V2",)).types == (OWN,)


def _other() -> TubeType:
    return TubeType(designation="OWN3", sections=OWN.sections)


def test_paste_takes_the_lowest_free_ids_in_order() -> None:
    piece = extract(chain(), ("V9", "V3", "V7", "T1"))
    after = paste(piece, 40.0, 20.0)(chain())
    assert [part.id for part in after.parts[7:]] == ["V5", "V2", "V4", "T2"]
    assert after.part_by_id["V4"].at == (240, 20)
    assert after.part_by_id["V4"].rated_a == 0.8
    new = after.wires[7:]
    assert [(wire.id, wire.start, wire.end) for wire in new] == [
        ("w8", "T2.a", "V4.4"),
        ("w9", "T2.b", "V4.5"),
    ]
    assert {wire.twist for wire in new} == {"p2"}
    assert new[0].via == ((140.0, 40.0),)


def test_one_wire_of_a_pair_is_pasted_as_a_single_wire() -> None:
    sheet = Sheet(
        parts=(Joint(id="J1"), Joint(id="J2"), Joint(id="J3")),
        wires=(
            Wire(id="w1", start="J1.j", end="J2.j", twist="p1"),
            Wire(id="w2", start="J1.j", end="J3.j", twist="p1"),
        ),
    )
    after = paste(extract(sheet, ("J1", "J2")), 0.0, 0.0)(sheet)
    assert after.wire_by_id["w3"].twist is None


def test_own_types_come_along_once() -> None:
    piece = Sheet(parts=(Tube(id="V1", type="OWN1"),), types=(OWN,))
    once = paste(piece, 0.0, 0.0)(Sheet())
    assert once.types == (OWN,)
    assert paste(piece, 0.0, 0.0)(once).types == (OWN,)


def test_nothing_is_pasted_beyond_the_sheet() -> None:
    with pytest.raises(EditError, match="beyond the sheet"):
        paste(chain(), 1e6, 0.0)(Sheet())


@given(drawn_sheets(), st.data())
def test_a_pasted_piece_is_the_piece_and_leaves_the_rest(sheet: Sheet, data: st.DataObject) -> None:
    ids = data.draw(st.sets(st.sampled_from([part.id for part in sheet.parts])))
    piece = extract(sheet, ids)
    assert not find_problems(piece)
    assert load(dump(piece)) == piece
    after = paste(piece, 20.0, -40.0)(sheet)
    assert not find_problems(after)
    assert after.parts[: len(sheet.parts)] == sheet.parts
    assert after.wires[: len(sheet.wires)] == sheet.wires
    pasted = extract(after, after.part_by_id.keys() - sheet.part_by_id.keys())
    assert len(pasted.parts) == len(piece.parts)
    assert len(pasted.wires) == len(piece.wires)
    assert not {wire.twist for wire in sheet.wires if wire.twist} & {wire.twist for wire in pasted.wires}
    again = paste(pasted, -20.0, 40.0)(Sheet())
    assert again == paste(piece, 0.0, 0.0)(Sheet()) or _unlike_twists(piece)


def _unlike_twists(sheet: Sheet) -> bool:
    """Whether a twist of the piece has one wire only, which pasting makes a single wire."""
    return any(
        sum(other.twist == wire.twist for other in sheet.wires) == 1 for wire in sheet.wires if wire.twist
    )


# as a body


def test_mirror_flips_symbols_and_only_moves_sockets() -> None:
    sheet = chain()
    after = mirror(sheet.part_by_id, (300.0, 0.0), boxes_of(sheet))(sheet)
    assert after.part_by_id["V7"].at == (400, 0)
    assert after.part_by_id["V7"].turn == 90
    assert not after.part_by_id["V7"].mirror
    assert after.part_by_id["T1"].mirror
    assert after.part_by_id["T1"].at == (600, 0)
    assert after.wire_by_id["w1"].via == ((500.0, 20.0),)


def test_mirror_upside_down_is_mirror_and_half_a_turn() -> None:
    sheet = Sheet(parts=(Resistor(id="R1", ohm=1.0, turn=90, at=(20, 60)),))
    after = mirror(("R1",), ORIGIN, {}, upright=True)(sheet).part_by_id["R1"]
    assert (after.at, after.turn, after.mirror) == ((20, -60), 90, True)


def test_a_frame_and_a_note_are_mirrored_as_boxes() -> None:
    sheet = Sheet(parts=(Frame(id="FR1", at=(20, 0), width=100.0), Note(id="N1", text="x", at=(40, 20))))
    after = mirror(("FR1", "N1"), ORIGIN, boxes_of(sheet))(sheet)
    assert after.part_by_id["FR1"].at == (-120, 0)
    assert after.part_by_id["N1"].at == (-220, 20)
    assert not after.part_by_id["FR1"].mirror


def test_rotate_as_a_body() -> None:
    sheet = chain()
    after = rotate(("T1", "V7"), (100.0, 0.0), boxes_of(sheet))(sheet)
    assert after.part_by_id["T1"].at == (100, -100)
    assert after.part_by_id["T1"].turn == 90
    assert after.part_by_id["V7"].at == (100, 100)
    assert after.part_by_id["V7"].turn == 180
    assert after.wire_by_id["w1"].via == ((80.0, 0.0),)


@given(drawn_sheets(), places, st.booleans())
def test_mirroring_twice_is_nothing(sheet: Sheet, middle: tuple[float, float], upright: bool) -> None:
    ids = sheet.part_by_id
    once = mirror(ids, middle, boxes_of(sheet), upright=upright)(sheet)
    assert not find_problems(once)
    assert mirror(ids, middle, boxes_of(once), upright=upright)(once) == sheet


@given(drawn_sheets(), places)
def test_four_quarters_are_nothing(sheet: Sheet, middle: tuple[float, float]) -> None:
    after = sheet
    for _ in range(4):
        after = rotate(sheet.part_by_id, middle, boxes_of(after))(after)
        assert not find_problems(after)
    assert after == sheet


@given(drawn_sheets(), places)
def test_both_mirrors_are_half_a_turn(sheet: Sheet, middle: tuple[float, float]) -> None:
    """Sockets apart, which keep their turn in a mirror."""
    ids = [part.id for part in sheet.parts if part.kind != "tube"]
    one = mirror(ids, middle, boxes_of(sheet))(sheet)
    both = mirror(ids, middle, boxes_of(one), upright=True)(one)
    assert both == rotate(ids, middle, boxes_of(sheet), 180)(sheet)


# lining up


@pytest.mark.parametrize(
    ("side", "expected"),
    [
        ("left", {"R1": (0, 0), "R2": (0, 60)}),
        ("right", {"R1": (100, 0), "R2": (100, 60)}),
        ("centre", {"R1": (50, 0), "R2": (50, 60)}),
        ("top", {"R1": (0, 0), "R2": (100, 0)}),
        ("bottom", {"R1": (0, 60), "R2": (100, 60)}),
        ("middle", {"R1": (0, 30), "R2": (100, 30)}),
    ],
)
def test_align(side, expected) -> None:
    sheet = Sheet(parts=(Resistor(id="R1", ohm=1.0), Resistor(id="R2", ohm=1.0, at=(100, 60))))
    after = align(boxes_of(sheet), side)(sheet)
    assert {part.id: part.at for part in after.parts} == expected


def test_distribute_evens_the_gaps_and_keeps_the_outermost() -> None:
    at = (0.0, 60.0, 90.0, 300.0)
    sheet = Sheet(parts=tuple(Resistor(id=f"R{n}", ohm=1.0, at=(x, n)) for n, x in enumerate(at)))
    after = distribute(boxes_of(sheet), "across")(sheet)
    assert [part.at[0] for part in after.parts] == pytest.approx([0, 100, 200, 300])
    assert [part.at[1] for part in after.parts] == [0, 1, 2, 3]


def test_snap_and_shift_take_corners_along() -> None:
    sheet = Sheet(
        parts=(Joint(id="J1", at=(3, 4)), Joint(id="J2", at=(103, 4))),
        wires=(Wire(id="w1", start="J1.j", end="J2.j", via=((53, 44),)),),
    )
    after = snap(("J1", "J2"), 20.0)(sheet)
    assert [part.at for part in after.parts] == [(0, 0), (100, 0)]
    assert after.wires[0].via == ((50, 40),)
    assert shift({"J1": (20.0, 0.0)})(sheet).wires == sheet.wires


@given(drawn_sheets(), st.sampled_from(("left", "centre", "right", "top", "middle", "bottom")))
def test_aligned_is_aligned(sheet: Sheet, side) -> None:
    once = align(boxes_of(sheet), side)(sheet)
    assert not find_problems(once)
    assert align(boxes_of(once), side)(once) == once


@given(drawn_sheets(), st.sampled_from(("across", "down")))
def test_distributed_gaps_are_equal(sheet: Sheet, way) -> None:
    after = distribute(boxes_of(sheet), way)(sheet)
    assert not find_problems(after)
    axis = 0 if way == "across" else 1
    boxes = sorted(boxes_of(after).values(), key=lambda box: box[axis] + box[axis + 2])
    if len(boxes) > 2:
        gaps = [after[axis] - before[axis + 2] for before, after in pairwise(boxes)]
        assert max(gaps) - min(gaps) < 1e-6


# numbering


def test_natural_order() -> None:
    assert sorted(["V10", "V2", "a", "V1b", "V1"], key=natural) == ["V1", "V1b", "V2", "V10", "a"]


def test_tubes_are_numbered_along_the_chain() -> None:
    sheet = chain()
    assert tube_names(sheet) == {"V7": "V1", "V1": "V2", "V3": "V3", "V9": "V4"}
    after = renumber()(sheet)
    assert [part.id for part in after.parts if part.kind == "tube"] == ["V4", "V3", "V2", "V1"]
    assert after.wire_by_id["w5"].start == "V1.5"
    assert after.wire_by_id["w5"].end == "V2.5"
    assert renumber()(after) == after


def test_only_the_chosen_are_numbered() -> None:
    assert tube_names(chain(), ("V7", "V9")) == {"V7": "V2", "V9": "V4"}


def test_the_chassis_is_no_way_along() -> None:
    assert chain_order(chain())[-1] == "V9"


@pytest.mark.parametrize("names", [{"V1": "V3"}, {"V1": "w1"}, {"V1": "no id"}, {"X": "V8"}])
def test_names_that_cannot_be_given(names) -> None:
    with pytest.raises(EditError):
        rename_all(names)(chain())


@given(drawn_sheets())
def test_renumbering_changes_names_only(sheet: Sheet) -> None:
    names = tube_names(sheet)
    after = renumber()(sheet)
    assert not find_problems(after)
    assert sorted(names.values(), key=natural) == sorted(names.values(), key=lambda name: int(name[1:]))
    assert rename_all({new: old for old, new in names.items()})(after) == sheet


# swapping


def test_swap_tubes_leaves_wires_and_places() -> None:
    sheet = chain()
    after = swap_tubes("V7", "V3")(sheet)
    one, other = after.part_by_id["V7"], after.part_by_id["V3"]
    assert (one.type, one.rated_a, one.at, one.turn) == ("ECC83", None, (200, 0), 90)
    assert (other.type, other.rated_a, other.at, other.turn) == ("EL84", 0.8, (600, 0), 0)
    assert after.wires == sheet.wires
    assert swap_tubes("V3", "V7")(after) == sheet


def test_swap_places_takes_the_wires_along() -> None:
    sheet = chain()
    after = swap_places("V7", "R1")(sheet)
    assert after.part_by_id["V7"].at == (400, 0)
    assert after.part_by_id["R1"].at == (200, 0)
    assert after.wires == sheet.wires


@pytest.mark.parametrize("edit", [swap_tubes("V7", "R1"), swap_tubes("V7", "V8"), swap_places("V7", "N1")])
def test_what_cannot_be_swapped(edit) -> None:
    with pytest.raises(EditError):
        edit(Sheet(parts=(*chain().parts, Note(id="N1", text="x")), wires=chain().wires))


# reaching


def test_connected() -> None:
    sheet = Sheet(
        parts=(*chain().parts, Joint(id="J1"), Joint(id="J2")),
        wires=(*chain().wires, Wire(id="x1", start="J1.j", end="J2.j")),
    )
    assert connected(sheet, ("J1",)) == {"J1", "J2", "x1"}
    assert connected(sheet, ("x1",)) == {"J1", "J2", "x1"}
    assert connected(sheet, ("R1",)) == {*chain().part_by_id, *chain().wire_by_id}
    assert connected(sheet, ()) == frozenset()


@given(drawn_sheets())
def test_what_is_connected_is_closed(sheet: Sheet) -> None:
    found = connected(sheet, (sheet.parts[0].id,))
    assert sheet.parts[0].id in found
    for wire in sheet.wires:
        ends = {split_terminal(wire.start)[0], split_terminal(wire.end)[0]}
        assert (wire.id in found) == bool(ends & found) == (ends <= found)


def test_same_string() -> None:
    strings = (("V1:4-5", "V2:4-5"), ("V3:4-9", "V3:9-5"))
    assert same_string(("V2",), strings) == {"V1", "V2"}
    assert same_string(("V9",), strings) == {"V9"}
