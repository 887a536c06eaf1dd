"""Dots where wires join and part, hops where they only cross, weight by conductor."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QPainterPath

from app.canvas.items import WireItem, line_weight
from app.canvas.layout import Layout
from app.canvas.meetings import RADIUS, Hop, Meetings, nets_of
from app.canvas.pairs import AMPLITUDE
from app.theme import LIGHT, load_fonts
from core.edits import add_wire, change_between, in_turn, move_parts, remove, set_wire
from core.edits.pairs import twist
from core.sheet import Joint, Sheet
from tests.app.canvas_rig import CATALOGUE, make_rig, rows_sheet, wire


@pytest.fixture(autouse=True)
def fonts(qapp) -> None:
    load_fonts()


def cross() -> Sheet:
    """A level and an upright wire that cross at 0, 0."""
    return Sheet(
        parts=tuple(
            Joint(id=f"J{number}", at=at)
            for number, at in enumerate(((-100, 0), (100, 0), (0, -100), (0, 100)), 1)
        ),
        wires=(wire("w1", "J1.j", "J2.j"), wire("w2", "J3.j", "J4.j")),
    )


def met(sheet: Sheet) -> Meetings:
    layout = Layout(sheet, CATALOGUE, LIGHT)
    meetings = Meetings(layout)
    meetings.follow(sheet, sheet.wire_by_id)
    return meetings


def test_level_hops_over_upright():
    meetings = met(cross())
    assert meetings.hops("w1") == (Hop((0.0, 0.0), True, RADIUS),)
    assert meetings.hops("w2") == ()
    assert meetings.partings() == set()


def kept(lines, trunks=(None, None)) -> Meetings:
    """Two wires of different nets that lie where they are put."""
    sheet = cross()
    layout = Layout(sheet, CATALOGUE, LIGHT)
    for name, line, trunk in zip(("w1", "w2"), lines, trunks, strict=True):
        layout.board.keep(name, line, trunk)
    meetings = Meetings(layout)
    meetings.follow(sheet, sheet.wire_by_id)
    return meetings


def test_near_a_corner_the_other_wire_has_a_gap_instead_of_a_hop():
    upright = ((0.0, -100.0), (0.0, 100.0))
    for corner in (4.0, 12.0):
        meetings = kept((((-100.0, 0.0), (corner, 0.0), (corner, 50.0)), upright))
        assert meetings.hops("w1") == ()
        assert meetings.hops("w2") == (Hop((0.0, 0.0), False, RADIUS, True),)
    assert kept((((-100.0, 0.0), (13.0, 0.0), (13.0, 50.0)), upright)).hops("w1")


def test_where_two_pairs_cross_the_upright_one_has_a_gap_in_its_waves():
    level, upright = ((-100.0, 0.0), (100.0, 0.0)), ((0.0, -100.0), (0.0, 100.0))
    meetings = kept((level, upright), (level, upright))
    assert meetings.hops("w1") == ()
    (gap,) = meetings.hops("w2")
    assert gap.is_gap
    item = WireItem(wire("w2", "J3.j", "J4.j"), LIGHT)
    item.show_route(item.wire, upright, upright, (1, 1), (gap,))
    drawn = [item._path.elementAt(at) for at in range(item._path.elementCount())]
    lines = [one.y for one in drawn if one.isLineTo()]
    assert lines
    assert min(map(abs, lines)) >= gap.radius > AMPLITUDE


def test_wires_of_one_net_cross_without_a_hop():
    joined = add_wire("J2.j", "J4.j")(cross())
    assert met(joined).hops("w1") == ()


def test_what_crosses_a_level_pair_hops_over_it():
    tubes = rows_sheet(4).parts[:2]
    joints = Joint(id="J5", at=(250, -160)), Joint(id="J6", at=(250, 60))
    sheet = Sheet(
        parts=(*tubes, *joints),
        wires=(wire("w1", "V0.4", "V1.4"), wire("w2", "V0.5", "V1.5"), wire("w3", "J5.j", "J6.j")),
    )
    meetings = met(in_turn(move_parts(("V1",), 300.0, 0.0), twist("w1", "w2"))(sheet))
    (hop,) = meetings.hops("w3")
    assert not hop.is_level
    assert hop.radius > RADIUS


def test_a_dot_stands_where_wires_from_one_terminal_part(qtbot):
    sheet = Sheet(
        parts=(Joint(id="J1", at=(0, 0)), Joint(id="J2", at=(200, 0)), Joint(id="J3", at=(200, 100))),
        wires=(
            wire("w1", "J1.j", "J2.j"),
            wire("w2", "J1.j", "J3.j", via=((120.0, 0.0),)),
        ),
    )
    assert met(sheet).partings() == {(120.0, 0.0)}
    rig = make_rig(qtbot, sheet)
    assert [(dot.pos().x(), dot.pos().y()) for dot in rig.scene.dots.values()] == [(120.0, 0.0)]
    rig.document.apply("Delete", remove(("w2",)))
    assert rig.scene.dots == {}
    rig.document.undo_stack.undo()
    assert len(rig.scene.dots) == 1


def test_hops_follow_what_crosses(qtbot):
    rig = make_rig(qtbot, cross())

    def height() -> float:
        path: QPainterPath = rig.scene.wire_items["w1"]._path
        return path.boundingRect().height()

    assert height() == pytest.approx(RADIUS)
    rig.scene.preview_move(("J3", "J4"), 300.0, 0.0)
    assert height() == pytest.approx(0.0)
    rig.scene.end_preview(("J3", "J4"))
    assert height() == pytest.approx(RADIUS)
    rig.document.apply("Delete", remove(("w2",)))
    assert height() == pytest.approx(0.0)


def test_meetings_that_followed_edits_are_those_of_the_sheet(qapp):
    sheet = rows_sheet(9)
    layout = Layout(sheet, CATALOGUE, LIGHT)
    meetings = Meetings(layout)
    meetings.follow(sheet, sheet.wire_by_id)
    for edit in (
        add_wire("V0.4", "V8.5", id="x1"),
        add_wire("V2.5", "V6.4", id="x2"),
        move_parts(("V4",), 40.0, 60.0),
        add_wire("V0.4", "V8.4", id="x3"),
        set_wire("x1", via=((100.0, 300.0),)),
        remove(("x2",)),
        remove(("V8",)),
    ):
        after = edit(sheet)
        meetings.follow(after, layout.update(after, CATALOGUE, change_between(sheet, after)))
        sheet = after
        fresh = met(sheet)
        assert meetings.partings() == fresh.partings()
        assert {one: meetings.hops(one) for one in sheet.wire_by_id} == {
            one: fresh.hops(one) for one in sheet.wire_by_id
        }


def test_nets_are_named_by_their_first_wire():
    sheet = in_turn(add_wire("J2.j", "J3.j", id="w3"))(cross())
    assert nets_of(sheet) == {"w1": "w1", "w2": "w1", "w3": "w1"}
    assert nets_of(cross()) == {"w1": "w1", "w2": "w2"}


def test_thick_wires_are_drawn_a_little_heavier():
    thin, plain, thick, strap = (
        wire("w", "J1.j", "J2.j", awg=None, **fields)
        for fields in ({"area_mm2": 0.2}, {"area_mm2": 0.5}, {"area_mm2": 2.5}, {"length_m": None})
    )
    weights = [line_weight(each, LIGHT) for each in (thin, plain, thick)]
    assert weights == sorted(weights)
    assert weights[1] == LIGHT.line_width
    assert weights[2] < 1.5 * LIGHT.line_width
    assert line_weight(strap, LIGHT) == LIGHT.heavy_width
