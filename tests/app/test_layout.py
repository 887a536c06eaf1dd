"""The layout follows from the sheet alone, and what lies elsewhere stays where it is."""

from __future__ import annotations

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.canvas.layout import Layout
from app.theme import LIGHT, load_fonts
from core.catalogue import load_builtin
from core.edits import (
    Edit,
    add_part,
    add_wire,
    change_between,
    in_turn,
    move_parts,
    remove,
    set_wire,
    turn_parts,
)
from core.edits.splicing import split_wire
from core.errors import EditError
from core.samples import sample_bytes, sample_names
from core.sheet import Resistor, Sheet, Tube
from core.storage import load
from tests.app.canvas_rig import CATALOGUE, rows_sheet, small_sheet, wire


@pytest.fixture(autouse=True)
def fonts(qapp) -> None:
    load_fonts()


def lies(layout: Layout) -> dict[str, object]:
    board = layout.board
    return {
        "routes": board.routes,
        "trunks": board.trunks,
        "followers": layout.followers,
        "labels": {part_id: place.label for part_id, place in layout.places.items()},
    }


def follow(layout: Layout, sheet: Sheet, edit: Edit) -> Sheet:
    after = edit(sheet)
    layout.update(after, CATALOGUE, change_between(sheet, after))
    return after


def paired_sheet() -> Sheet:
    sheet = rows_sheet(6)
    return in_turn(
        *(set_wire(each.id, twist=each.id.split("p")[0]) for each in sheet.wires),
        add_wire("V0.9", "V0.4"),
        split_wire("w0p4", (100.0, -40.0), 0.5, 0, (100.0, -20.0)),
    )(sheet)


steps = st.one_of(
    st.builds(
        lambda part, x, y: move_parts((part,), 20.0 * x, 20.0 * y),
        st.sampled_from(["V0", "V1", "V2", "V4"]),
        st.integers(-12, 12),
        st.integers(-12, 12),
    ),
    st.builds(lambda x, y: move_parts(("J2",), 20.0 * x, 20.0 * y), st.integers(-8, 8), st.integers(-8, 8)),
    st.builds(lambda part: turn_parts((part,), 90), st.sampled_from(["V0", "V3"])),
    st.builds(lambda one: remove((one,)), st.sampled_from(["V5", "w0p4", "w3p5"])),
    st.builds(
        lambda number, x: add_part(Resistor(id=f"R{number}", ohm=10.0, at=(20.0 * x, 100.0))),
        st.integers(1, 3),
        st.integers(-5, 25),
    ),
    st.builds(add_wire, st.just("V0.5"), st.sampled_from(["V2.4", "V4.5", "V0.3"])),
    st.builds(
        lambda one, x, y: set_wire(one, via=((20.0 * x, 20.0 * y),)),
        st.sampled_from(["w0p4", "w1p5", "w3p4"]),
        st.integers(-5, 20),
        st.integers(-5, 15),
    ),
    st.builds(lambda one: set_wire(one, twist=None), st.sampled_from(["w0p4", "w1p5"])),
)


@given(st.lists(steps, min_size=1, max_size=6))
@settings(max_examples=40)
def test_a_layout_that_followed_edits_is_that_of_the_sheet_opened_afresh(edits):
    sheets = [paired_sheet()]
    layout = Layout(sheets[0], CATALOGUE, LIGHT)
    for edit in edits:
        try:
            sheets.append(follow(layout, sheets[-1], edit))
        except EditError:
            continue
        assert lies(layout) == lies(Layout(sheets[-1], CATALOGUE, LIGHT))
    for after, before in zip(reversed(sheets), reversed(sheets[:-1]), strict=False):
        layout.update(before, CATALOGUE, change_between(after, before))
    assert lies(layout) == lies(Layout(sheets[0], CATALOGUE, LIGHT))


@given(st.integers(-20, 20), st.integers(-20, 20))
@settings(max_examples=20)
def test_a_move_on_trial_looks_as_it_will_and_leaves_no_trace(x, y):
    sheet = paired_sheet()
    layout = Layout(sheet, CATALOGUE, LIGHT)
    layout.preview(("V0", "V1", "J1"), 20.0, 240.0)
    layout.preview(("V0", "V1", "J1"), 20.0 * x, 20.0 * y)
    moved = move_parts(("V0", "V1", "J1"), 20.0 * x, 20.0 * y)(sheet)
    assert lies(layout) == lies(Layout(moved, CATALOGUE, LIGHT))
    layout.end_preview()
    assert lies(layout) == lies(Layout(sheet, CATALOGUE, LIGHT))


def test_wires_that_change_places_in_the_sheet_are_laid_afresh():
    sheet = paired_sheet()
    layout = Layout(sheet, CATALOGUE, LIGHT)
    turned = Sheet(parts=sheet.parts, wires=(*reversed(sheet.wires), wire("w99", "V0.5", "V5.5")))
    layout.update(turned, CATALOGUE, change_between(sheet, turned))
    assert lies(layout) == lies(Layout(turned, CATALOGUE, LIGHT))


@pytest.mark.parametrize("name", sample_names())
def test_what_happens_elsewhere_moves_no_wire_of_a_sample(name):
    sheet, catalogue = load(sample_bytes(name), name), load_builtin()
    layout = Layout(sheet, catalogue, LIGHT)
    before = dict(layout.board.routes)
    left, top, _, _ = layout.bounds() or (0.0, 0.0, 0.0, 0.0)
    far = (round(left / 20) * 20 - 800.0, round(top / 20) * 20 - 800.0)
    for edit in (
        add_part(Tube(id="V90", type="EL84", at=far)),
        add_part(Tube(id="V91", type="EL84", at=(far[0] + 200, far[1]))),
        add_wire("V90.4", "V91.4"),
        add_wire("V90.4", "V90.5"),
        move_parts(("V90",), 20.0, 60.0),
        turn_parts(("V91",)),
        remove(("V90",)),
        remove(("V91",)),
    ):
        after = edit(sheet)
        laid = layout.update(after, catalogue, change_between(sheet, after))
        assert not laid & before.keys()
        sheet = after
    assert layout.board.routes == before


def test_moving_a_part_lays_again_its_own_wires_and_those_it_now_covers():
    sheet = small_sheet()
    layout = Layout(sheet, CATALOGUE, LIGHT)
    w3 = layout.board.routes["w3"]
    follow(layout, sheet, move_parts(("V2",), 60.0, 40.0))
    assert layout.board.routes["w3"] == w3
    assert layout.board.routes["w1"][-1] == layout.terminal_point("V1.4")


def test_corners_that_are_set_are_gone_through_in_their_order():
    sheet = set_wire("w1", via=((-80.0, -140.0), (-40.0, -140.0)))(small_sheet())
    layout = Layout(sheet, CATALOGUE, LIGHT)
    line = layout.board.routes["w1"]
    assert line[0] == layout.terminal_point("T1.a")
    assert line[-1] == layout.terminal_point("V1.4")
    assert (-80.0, -140.0) in line
    assert any(
        a[1] == b[1] == -140.0 and a[0] <= -80.0 and b[0] >= -40.0 for a, b in itertools.pairwise(line)
    )
    assert all(a[0] == b[0] or a[1] == b[1] for a, b in itertools.pairwise(line))
