"""Wires under the pointer and by keys: corners, pairs, joints. Every one with real events."""

from __future__ import annotations

import itertools

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.canvas.partners import partner_of
from core.edits import add_wire, in_turn, set_wire
from core.edits.pairs import twin_of, twist
from core.edits.splicing import split_wire
from core.sheet import Joint, Lamp, Sheet, Tube, Winding
from tests.app.canvas_rig import ALT, CATALOGUE, LEFT, NONE, SHIFT, Rig, make_rig, small_sheet, wire

CTRL = Qt.KeyboardModifier.ControlModifier
K = Qt.Key

pytestmark = pytest.mark.collected


def two_tubes() -> Sheet:
    """A winding and two tubes far apart, wired by one wire that has a long way."""
    return Sheet(
        parts=(
            Winding(id="T1", rated_v=6.3, rated_a=2.0, at=(-260, 0)),
            Tube(id="V1", type="EL84", at=(0, 0)),
            Tube(id="V2", type="EL84", at=(260, 0)),
        ),
        wires=(wire("w1", "V1.4", "V2.4"),),
    )


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(qtbot, two_tubes())


def paired(qtbot) -> Rig:
    sheet = in_turn(add_wire("V1.5", "V2.5", id="w2", awg=20, length_m=0.3), twist("w1", "w2"))(two_tubes())
    return make_rig(qtbot, sheet)


def route(rig: Rig, wire_id: str = "w1"):
    return rig.scene.layout_.board.routes[wire_id]


def lies_on(point, line) -> bool:
    return any(
        min(a[0], b[0]) <= point[0] <= max(a[0], b[0]) and min(a[1], b[1]) <= point[1] <= max(a[1], b[1])
        for a, b in itertools.pairwise(line)
    )


def long_piece(rig: Rig):
    """The longest piece of the wire that shows handles."""
    return max(rig.view.handles.pieces, key=lambda piece: abs(piece.end[0] - piece.start[0]))


def double_click(rig: Rig, x: float, y: float, modifiers=NONE) -> None:
    QTest.mouseDClick(rig.view.viewport(), LEFT, modifiers, rig.on_screen(x, y))


# corners


def test_only_a_selected_wire_shows_handles(rig):
    items = len(rig.scene.items())
    assert not rig.view.handles.pieces
    rig.selection.set(("w1",))
    assert rig.view.handles.pieces
    assert len(rig.scene.items()) == items + 1
    rig.selection.set(("w1", "V1"))
    assert len(rig.scene.items()) == items


def test_dragging_a_piece_moves_it_along_the_grid(rig):
    rig.selection.set(("w1",))
    x, y = long_piece(rig).middle
    rig.drag((x, y), (x + 3, y - 62))
    line = route(rig)
    assert rig.undo_names == ["Lead w1 another way"]
    via = rig.sheet.wire_by_id["w1"].via
    assert len(via) == 2
    assert via[0][1] == via[1][1] == round((y - 62) / 10) * 10
    assert set(via) <= set(line)
    assert (line[0], line[-1]) == (rig.pin("V1.4"), rig.pin("V2.4"))
    rig.document.undo_stack.undo()
    assert rig.sheet == two_tubes()
    assert route(rig) != line


def test_with_alt_a_piece_lies_off_the_grid(rig):
    rig.selection.set(("w1",))
    x, y = long_piece(rig).middle
    rig.drag((x, y), (x, y - 37), ALT)
    assert {round(at) for _, at in rig.sheet.wire_by_id["w1"].via} == {round(y - 37)}


def test_a_wire_follows_while_its_piece_is_dragged_and_escape_puts_it_back(rig):
    before = route(rig)
    rig.selection.set(("w1",))
    items = len(rig.scene.items())
    x, y = long_piece(rig).middle
    rig.press(x, y)
    rig.move(x, y - 80)
    assert route(rig) != before
    assert rig.sheet == two_tubes()
    rig.key(K.Key_Escape)
    assert route(rig) == before
    assert len(rig.scene.items()) == items
    rig.release(x, y - 80)
    assert rig.document.undo_stack.count() == 0


def test_dragging_a_corner_sets_it(rig):
    rig.selection.set(("w1",))
    x, y = rig.view.handles.corners[0]
    rig.drag((x, y), (x - 40, y - 60))
    (corner,) = rig.sheet.wire_by_id["w1"].via
    assert corner == (round((x - 40) / 10) * 10, round((y - 60) / 10) * 10)
    assert corner in route(rig)
    assert len(route(rig)) == 6


def test_a_second_piece_is_moved_without_losing_the_first(rig):
    rig.selection.set(("w1",))
    x, y = long_piece(rig).middle
    rig.drag((x, y), (x, y - 60))
    first = rig.sheet.wire_by_id["w1"].via
    upright = next(piece for piece in rig.view.handles.pieces if not piece.is_level)
    rig.drag(upright.middle, (upright.middle[0] - 40, upright.middle[1]))
    via = rig.sheet.wire_by_id["w1"].via
    assert len(via) >= 3
    assert first[1] in via
    assert set(via) <= set(route(rig))


def test_a_straight_wire_can_be_bent_too(qtbot):
    sheet = Sheet(
        parts=(Joint(id="J1", at=(-100, 0)), Joint(id="J2", at=(100, 0))), wires=(wire("w1", "J1.j", "J2.j"),)
    )
    rig = make_rig(qtbot, sheet)
    assert route(rig) == ((-100, 0), (100, 0))
    rig.selection.set(("w1",))
    (piece,) = rig.view.handles.pieces
    rig.drag(piece.middle, (0, -50))
    assert {y for _, y in rig.sheet.wire_by_id["w1"].via} == {-50}
    assert route(rig) == ((-100, 0), (-100, -50), (100, -50), (100, 0))


def test_double_click_on_a_handle_lets_the_route_find_its_way(rig):
    before = route(rig)
    rig.selection.set(("w1",))
    x, y = long_piece(rig).middle
    rig.drag((x, y), (x, y - 60))
    double_click(rig, *long_piece(rig).middle)
    assert rig.sheet.wire_by_id["w1"].via == ()
    assert route(rig) == before
    assert rig.undo_names == ["Lead w1 another way", "Let w1 find its way"]


def test_moving_one_part_keeps_the_corners_and_moving_both_takes_them_along(rig):
    via = ((60.0, -160.0), (180.0, -160.0))
    rig.document.apply("Bend", set_wire("w1", via=via))
    rig.drag((0, 20), (0, 80))
    assert rig.sheet.wire_by_id["w1"].via == via
    assert all(lies_on(corner, route(rig)) for corner in via)
    rig.selection.set(("V1", "V2"))
    rig.drag((260, 20), (300, 60))
    moved = tuple((x + 40, y + 40) for x, y in via)
    assert rig.sheet.wire_by_id["w1"].via == moved
    assert all(lies_on(corner, route(rig)) for corner in moved)


def test_corners_go_along_while_both_parts_are_dragged(rig):
    rig.document.apply("Bend", set_wire("w1", via=((60.0, -160.0), (180.0, -160.0))))
    rig.selection.set(("V1", "V2"))
    rig.press(0, 20)
    rig.move(40, 60)
    assert all(lies_on(corner, route(rig)) for corner in ((100.0, -120.0), (220.0, -120.0)))
    rig.key(K.Key_Escape)
    assert all(lies_on(corner, route(rig)) for corner in ((60.0, -160.0), (180.0, -160.0)))


def test_pieces_are_stepped_through_and_moved_by_keys(rig):
    rig.selection.set(("w1",))
    count = len(rig.view.handles.pieces)
    seen = []
    for _ in range(count + 1):
        rig.key(K.Key_B)
        seen.append(rig.view.handles.current)
    assert seen == [*range(count), 0]
    rig.key(K.Key_B, SHIFT)
    assert rig.view.handles.current == count - 1
    number = rig.view.handles.pieces.index(long_piece(rig))
    rig.view.handles.current = number
    for _ in range(3):
        rig.key(K.Key_Up)
    assert rig.undo_names == ["Lead w1 another way"]
    assert rig.view.handles.current is not None
    y = rig.sheet.wire_by_id["w1"].via[0][1]
    rig.key(K.Key_Down, ALT)
    assert rig.sheet.wire_by_id["w1"].via[0][1] == y + 1
    rig.key(K.Key_Escape)
    assert rig.view.handles.current is None
    assert rig.selection.ids == {"w1"}
    rig.key(K.Key_B, CTRL)
    assert rig.sheet.wire_by_id["w1"].via == ()


def test_arrows_across_a_piece_only(rig):
    rig.selection.set(("w1",))
    rig.view.handles.current = rig.view.handles.pieces.index(long_piece(rig))
    rig.key(K.Key_Left)
    assert rig.sheet == two_tubes()


# pairs


def test_a_click_on_one_wire_of_a_pair_selects_both_and_with_alt_one(qtbot):
    rig = paired(qtbot)
    trunk = rig.scene.layout_.board.trunks["w1"]
    x, y = (trunk[0][0] + trunk[-1][0]) / 2, trunk[0][1]
    rig.click(x, y)
    assert rig.selection.ids == {"w1", "w2"}
    rig.click(x + 20, y, ALT)
    assert len(rig.selection.ids) == 1
    rig.selection.clear()
    rig.click(x, y, SHIFT)
    assert rig.selection.ids == {"w1", "w2"}
    rig.key(K.Key_Delete)
    assert rig.sheet.wires == ()
    assert rig.undo_names == ["Delete 2 wires"]


def test_the_corners_of_a_pair_are_moved_as_one(qtbot):
    rig = paired(qtbot)
    rig.selection.set(("w1", "w2"))
    x, y = long_piece(rig).middle
    rig.drag((x, y), (x, y - 60))
    trunks = rig.scene.layout_.board.trunks
    assert trunks["w1"] == trunks["w2"]
    assert min(point[1] for point in trunks["w1"]) == round((y - 60) / 10) * 10
    assert len(rig.undo_names) == 1


def test_twist_and_untwist_by_key(qtbot):
    sheet = add_wire("V2.5", "V1.5", id="w2", awg=20, length_m=0.3)(two_tubes())
    rig = make_rig(qtbot, sheet)
    rig.selection.set(("w1", "w2"))
    rig.key(K.Key_T)
    assert twin_of(rig.sheet, "w1") == "w2"
    assert rig.scene.layout_.board.trunks.keys() == {"w1", "w2"}
    rig.key(K.Key_T)
    rig.key(K.Key_T, SHIFT)
    assert rig.sheet == sheet
    rig.key(K.Key_T, SHIFT)
    assert rig.undo_names == ["Twist w1 and w2", "Untwist 2 wires"]


def test_control_drag_lays_a_pair_at_once(rig):
    rig.press(*rig.pin("T1.a"), CTRL)
    rig.move(-60, -60, CTRL)
    assert rig.view.hint.text() == "Twisted pair from T1.a and T1.b"
    assert rig.view.hint.isVisible()
    rig.move(*rig.pin("V1.4"), CTRL)
    assert rig.view.hint.text() == "Twisted pair from T1.a and T1.b to V1.4 and V1.5"
    rig.release(*rig.pin("V1.4"), CTRL)
    made = rig.sheet.wires[1:]
    assert [(one.start, one.end, one.twist) for one in made] == [
        ("T1.a", "V1.4", "p1"),
        ("T1.b", "V1.5", "p1"),
    ]
    assert made[0].length_m == made[1].length_m
    assert rig.undo_names == ["Wire a pair from T1.a to V1.4"]
    assert rig.selection.ids == {one.id for one in made}
    assert not rig.view.hint.isVisible()


def test_control_drag_to_what_has_no_second_end_draws_one_wire(qtbot):
    sheet = Sheet(parts=(*two_tubes().parts, Joint(id="J1", at=(-60, 160))))
    rig = make_rig(qtbot, sheet)
    items = len(rig.scene.items())
    rig.press(*rig.pin("T1.a"), CTRL)
    rig.move(-60, 100, CTRL)
    rig.move(-60, 160, CTRL)
    assert rig.view.hint.text() == "J1.j has no second end: one wire is drawn."
    rig.key(K.Key_Escape)
    assert len(rig.scene.items()) == items
    assert not rig.view.hint.isVisible()
    rig.release(-60, 160, CTRL)
    rig.drag(rig.pin("T1.a"), (-60, 160), CTRL)
    assert [(one.end, one.twist) for one in rig.sheet.wires] == [("J1.j", None)]


def test_partners_are_the_two_ends_of_a_heater_or_a_supply():
    sheet = Sheet(
        parts=(
            Winding(id="T1", rated_v=6.3, rated_a=2.0),
            Tube(id="V1", type="EL84"),
            Tube(id="V2", type="ECC83"),
            Tube(id="V3", type="nothing"),
            Lamp(id="H1", type="#47"),
        )
    )
    strapped = add_wire("V2.5", "V2.4")(sheet)

    def partner(terminal: str, of: Sheet = sheet) -> str | None:
        return partner_of(of, CATALOGUE, terminal)

    assert (partner("T1.a"), partner("T1.b"), partner("H1.2")) == ("T1.b", "T1.a", "H1.1")
    assert (partner("V1.4"), partner("V1.5"), partner("V1.9")) == ("V1.5", "V1.4", None)
    assert (partner("V2.4"), partner("V2.5"), partner("V2.9")) == ("V2.5", "V2.4", None)
    assert [partner(f"V2.{pin}", strapped) for pin in (4, 5, 9)] == ["V2.9", "V2.9", "V2.4"]
    assert (partner("V3.4"), partner("V9.4")) == (None, None)


# joints


def test_a_wire_is_split_by_key_and_mended_again(rig):
    rig.selection.set(("w1",))
    rig.key(K.Key_J)
    assert rig.selection.ids == {"J1"}
    joint = rig.sheet.part_by_id["J1"]
    assert len(rig.sheet.wires) == 2
    assert sum(each.length_m for each in rig.sheet.wires) == pytest.approx(0.3)
    assert rig.undo_names == ["Split w1"]
    assert joint.at == route(rig)[-1]
    rig.key(K.Key_J, SHIFT)
    assert rig.undo_names == ["Split w1", "Take J1 out"]
    assert "J1" not in rig.sheet.part_by_id
    assert [(one.start, one.end) for one in rig.sheet.wires] == [("V1.4", "V2.4")]


def test_control_double_click_splits_a_wire_where_it_is(rig):
    line = route(rig)
    (ax, ay), (bx, _) = line[1], line[2]
    x = ax + (bx - ax) * 0.25
    double_click(rig, x, ay, CTRL)
    at = rig.sheet.part_by_id["J1"].at
    assert at[1] == pytest.approx(ay)
    assert abs(at[0] - x) <= 5
    assert len(rig.sheet.wires) == 2


def test_a_wire_drawn_onto_another_joins_it(qtbot):
    rig = make_rig(qtbot, small_sheet())
    (ax, ay), (bx, by) = route(rig, "w3")[1:3]
    to = (ax + bx) / 2, (ay + by) / 2
    rig.drag(rig.pin("V2.4"), to)
    assert rig.undo_names == ["Wire V2.4 to J1.j"]
    ends = {frozenset((one.start, one.end)) for one in rig.sheet.wires}
    assert {frozenset(("T1.b", "J1.j")), frozenset(("J1.j", "E1.e")), frozenset(("V2.4", "J1.j"))} <= ends
    assert rig.selection.ids == {"J1"}
    rig.document.undo_stack.undo()
    assert rig.sheet == small_sheet()


def test_a_wire_of_a_pair_is_split_with_its_twin_and_stays_twisted(qtbot):
    rig = paired(qtbot)
    rig.selection.set(("w1", "w2"))
    rig.key(K.Key_J)
    assert rig.selection.ids == {"J1", "J2"}
    assert len({one.twist for one in rig.sheet.wires}) == 2
    assert len(rig.scene.layout_.order.seconds) == 2
    rig.key(K.Key_J, SHIFT)
    assert len(rig.sheet.wires) == 2
    assert twin_of(rig.sheet, "w1") == "w2"


def test_the_corners_that_are_set_stay_on_their_side_of_a_joint(rig):
    via = ((40.0, -160.0), (220.0, -160.0))
    rig.document.apply("Bend", set_wire("w1", via=via))
    double_click(rig, 130, -160, CTRL)
    assert [one.via for one in rig.sheet.wires] == [via[:1], via[1:]]
    assert rig.sheet.part_by_id["J1"].at == (130, -160)


def test_entries_know_when_they_are_possible(qtbot):
    rig = make_rig(qtbot, split_wire("w1", (130.0, -80.0))(two_tubes()))
    entries = rig.view.entries
    assert not any(
        entries[name].is_possible
        for name in ("next piece", "find way", "twist", "untwist", "split", "take out")
    )
    rig.selection.set(("J1",))
    assert entries["take out"].is_possible
    rig.selection.set(("w1",))
    assert entries["next piece"].is_possible
    assert entries["split"].is_possible
