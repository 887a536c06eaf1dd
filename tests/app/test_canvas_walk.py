"""Walking the drawing and wiring it by keys alone."""

from __future__ import annotations

import itertools

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtTest import QTest

from app.canvas import telling
from app.canvas.paths import named_pin, nearest, next_in, pins_in_turn, reading_order
from app.canvas.places import place_of
from app.theme import DARK, LIGHT, contrast
from core.sheet import Balance, Relay, Resistor, Sheet, Tube, Winding
from tests.app.canvas_rig import CATALOGUE, NONE, SHIFT, Rig, make_rig, small_sheet

K = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(qtbot, small_sheet())


def _places(*ats: tuple[float, float]):
    parts = [Tube(id=f"V{number}", type="EL84", at=at) for number, at in enumerate(ats)]
    return {part.id: place_of(part, CATALOGUE, LIGHT) for part in parts}


def test_parts_are_read_row_by_row():
    places = _places((200, 10), (0, 0), (100, 300), (0, 310), (400, -10))
    assert reading_order(places) == ["V1", "V0", "V4", "V3", "V2"]


@given(st.lists(st.tuples(st.integers(-500, 500), st.integers(-500, 500)), max_size=12))
@settings(deadline=None)
def test_reading_order_holds_every_part_once(ats):
    places = _places(*ats)
    order = reading_order(places)
    assert sorted(order) == sorted(places)
    tops = [places[each].part.at[1] for each in order]
    assert all(after > before - 80 for before, after in itertools.pairwise(tops))


def test_the_next_stops_at_the_ends():
    order = ["T1", "V1", "E1"]
    assert next_in(order, (), 1) == "T1"
    assert next_in(order, (), -1) == "E1"
    assert next_in(order, {"V1"}, 1) == "E1"
    assert next_in(order, {"E1"}, 1) is None
    assert next_in(order, {"T1"}, -1) is None
    assert next_in([], (), 1) is None


def test_nearest_looks_along_the_direction_first():
    places = _places((0, 0), (200, 10), (150, 140), (0, 300))
    assert nearest(places, "V0", (1, 0)) == "V1"
    assert nearest(places, "V0", (0, 1)) == "V3"
    assert nearest(places, "V0", (-1, 0)) is None


def test_pins_are_walked_by_number_and_terminals_as_they_lie():
    tube = place_of(Tube(id="V1", type="ECC83"), CATALOGUE, LIGHT)
    assert pins_in_turn(tube) == [str(pin) for pin in range(1, 10)]
    tapped = place_of(Winding(id="T1", rated_v=6.3, rated_a=3, centre_tap=True), CATALOGUE, LIGHT)
    assert pins_in_turn(tapped) == ["a", "ct", "b"]


def test_a_typed_letter_goes_round_the_terminals_that_begin_with_it():
    relay = place_of(Relay(id="K1", coil_v=6, coil_ohm=60), CATALOGUE, LIGHT)
    assert named_pin(relay, "com", "n") in ("nc", "no")
    first = named_pin(relay, "com", "c")
    assert first is not None
    assert named_pin(relay, first, "c") != first
    balance = place_of(Balance(id="RV1", ohm=100), CATALOGUE, LIGHT)
    assert named_pin(balance, "1", "W") == "w"
    assert named_pin(balance, "1", "x") is None
    assert named_pin(balance, "1", "") is None


def test_a_wire_is_laid_by_keys_and_the_next_begins_where_it_ended(rig):
    before = len(rig.sheet.wires)
    for key in (K.Key_Tab, K.Key_Tab, K.Key_P):
        rig.key(key)
    assert rig.view.walk.pin == "V1.4"
    rig.key(K.Key_Return)
    rig.key(K.Key_Tab)
    assert rig.view.walk.pin == "V2.4"  # a like pin is the likely one
    assert rig.sheet.wires[before:] == ()
    rig.key(K.Key_Return)
    assert [(w.start, w.end) for w in rig.sheet.wires[before:]] == [("V1.4", "V2.4")]
    assert rig.view.walk.pin == "V2.4"
    assert rig.selection.ids == {"V2"}
    rig.key(K.Key_Return)
    rig.key(K.Key_5)
    rig.key(K.Key_Return)
    assert (rig.sheet.wires[-1].start, rig.sheet.wires[-1].end) == ("V2.4", "V2.5")
    assert rig.sheet.wires[-1].is_strap
    assert rig.undo_names == ["Wire V1.4 to V2.4", "Strap V2.4 to V2.5"]


def test_the_wire_under_way_is_shown_and_considered_but_not_there(rig):
    rig.selection.set({"V1"})
    rig.key(K.Key_P)
    rig.key(K.Key_Return)
    assert rig.scene.proposal.current is None
    rig.key(K.Key_Tab)
    proposed = rig.scene.proposal.current
    assert proposed is not None
    assert proposed.text == "Wire V1.4 to V2.4"
    assert rig.undo_names == []
    rig.key(K.Key_Escape)
    assert rig.scene.proposal.current is None
    assert rig.view.walk.pin == "V1.4"
    assert rig.undo_names == []
    rig.key(K.Key_Escape)
    assert rig.view.walk.pin == ""
    assert rig.selection.ids == {"V1"}
    rig.key(K.Key_Escape)
    assert rig.selection.ids == frozenset()


def test_a_laid_wire_is_just_what_was_considered(rig):
    rig.selection.set({"V1"})
    for key in (K.Key_P, K.Key_5, K.Key_Return, K.Key_Tab):
        rig.key(key)
    assert rig.scene.proposal.current is not None
    sheet = rig.scene.proposal.current.sheet
    rig.key(K.Key_Return)
    assert rig.sheet == sheet


def test_leaving_the_drawing_gives_the_wire_up(rig):
    rig.selection.set({"V1"})
    for key in (K.Key_P, K.Key_Return, K.Key_Tab):
        rig.key(key)
    rig.view.add_field.setFocus()
    assert rig.view.walk.start == ""
    assert rig.scene.proposal.current is None
    assert rig.undo_names == []


def test_a_wire_to_its_own_pin_is_not_laid(rig):
    rig.selection.set({"V1"})
    for key in (K.Key_P, K.Key_Return, K.Key_Return):
        rig.key(key)
    assert rig.undo_names == []
    assert rig.view.walk.start == "V1.4"


def test_the_other_end_can_be_typed(rig):
    rig.selection.set({"V1"})
    for key in (K.Key_P, K.Key_Return, K.Key_Slash):
        rig.key(key)
    field = rig.view.add_field
    assert field.text() == "V1.4 "
    QTest.keyClicks(field, "v2.9")
    QTest.keyClick(field, K.Key_Return)
    assert (rig.sheet.wires[-1].start, rig.sheet.wires[-1].end) == ("V1.4", "V2.9")


def test_tab_comes_round_while_a_wire_is_under_way_and_leaves_the_drawing_otherwise(rig):
    rig.selection.set({"E1"})
    rig.key(K.Key_P)
    rig.key(K.Key_Return)
    rig.key(K.Key_Tab)
    assert rig.view.walk.pin.startswith("T1.")
    rig.key(K.Key_Escape)
    rig.key(K.Key_Escape)
    rig.key(K.Key_Tab)
    assert not rig.view.hasFocus()


def test_arrows_go_round_the_pins_and_move_the_part_outside_them(rig):
    rig.selection.set({"V1"})
    rig.key(K.Key_P)
    for key, pin in (
        (K.Key_Right, "5"),
        (K.Key_Down, "6"),
        (K.Key_Left, "5"),
        (K.Key_1, "1"),
        (K.Key_Up, "9"),
    ):
        rig.key(key)
        assert rig.view.walk.pin == f"V1.{pin}"
    assert rig.undo_names == []
    rig.key(K.Key_P)
    rig.key(K.Key_Right)
    assert rig.undo_names == ["Move V1"]


def test_wires_are_walked_from_a_part_and_from_a_pin(rig):
    rig.selection.set({"T1"})
    seen = []
    for _ in range(4):
        rig.key(K.Key_W)
        seen.append(rig.selection.ids)
    assert seen == [{"w1"}, {"w2"}, {"w3"}, {"w1"}]
    rig.key(K.Key_W, SHIFT)
    assert rig.selection.ids == {"w3"}
    rig.key(K.Key_Escape)
    assert rig.selection.ids == {"T1"}
    for key in (K.Key_P, K.Key_B, K.Key_W):
        rig.key(key)
    assert rig.selection.ids == {"w2"}
    rig.key(K.Key_Delete)
    assert "w2" not in rig.sheet.wire_by_id
    rig.key(K.Key_Z, CTRL)  # a window's shortcut: not the drawing's own
    assert "w2" not in rig.sheet.wire_by_id


def test_a_twisted_pair_is_one_step_of_the_walk_as_it_is_one_click(qtbot):
    sheet = small_sheet()
    first, second, *rest = sheet.wires
    pair = tuple(msgspec.structs.replace(wire, twist="p1") for wire in (first, second))
    rig = make_rig(qtbot, msgspec.structs.replace(sheet, wires=(*pair, *rest)))
    rig.view.activateWindow()
    rig.view.setFocus()
    qtbot.waitUntil(rig.view.hasFocus)
    rig.selection.set({"T1"})
    seen = []
    for _ in range(3):
        rig.key(K.Key_W)
        seen.append(rig.selection.ids)
    assert seen == [{"w1", "w2"}, {"w3"}, {"w1", "w2"}]
    assert rig.view.walk.focus == "w1" and rig.view.walk.ring is not None
    rig.key(K.Key_Escape)
    assert rig.selection.ids == {"T1"}
    rig.key(K.Key_W)
    with qtbot.waitSignal(rig.view.edit_requested) as asked:
        rig.key(K.Key_Return)
    assert asked.args == ["w1"]
    rig.key(K.Key_T, SHIFT)
    assert not any(wire.twist for wire in rig.sheet.wires)


def test_enter_on_a_wire_asks_for_its_properties(rig, qtbot):
    rig.selection.set({"V1"})
    rig.key(K.Key_W)
    with qtbot.waitSignal(rig.view.edit_requested) as asked:
        rig.key(K.Key_Return)
    assert asked.args == ["w1"]


def test_a_part_without_wires_has_none_to_walk(rig):
    rig.selection.set({"V2"})
    rig.key(K.Key_W)
    assert rig.selection.ids == {"V2"}


def test_tab_from_a_wire_goes_on_from_its_part(rig):
    rig.selection.set({"V1"})
    rig.key(K.Key_W)
    rig.key(K.Key_Tab)
    assert rig.selection.ids == {"V2"}


def test_ctrl_and_arrows_go_to_the_nearest_part(rig):
    rig.selection.set({"V1"})
    rig.key(K.Key_Right, CTRL)
    assert rig.selection.ids == {"V2"}
    rig.key(K.Key_Left, CTRL)
    rig.key(K.Key_Left, CTRL)
    assert rig.selection.ids == {"T1"}
    rig.key(K.Key_Down, CTRL)
    assert rig.selection.ids == {"E1"}
    assert rig.undo_names == []


def test_the_ring_shows_where_the_keyboard_is_and_hides_from_the_pointer(rig):
    assert rig.view.walk.ring is None
    rig.key(K.Key_Tab)
    ring = rig.view.walk.ring
    assert ring is not None
    assert ring.sceneBoundingRect().contains(*rig.sheet.part_by_id["T1"].at)
    rig.key(K.Key_P)
    pin = rig.view.walk.ring
    assert pin is not None
    assert pin.boundingRect().center().toTuple() == pytest.approx(rig.pin(rig.view.walk.pin))
    rig.click(0, 0, NONE)
    assert rig.view.walk.ring is None
    assert rig.view.walk.pin == ""


def test_the_ring_goes_with_its_part_and_vanishes_with_it(rig):
    rig.key(K.Key_Tab)
    before = rig.view.walk.ring.boundingRect()
    rig.key(K.Key_Down)
    assert rig.view.walk.ring.boundingRect() == before.translated(0, 20)
    rig.key(K.Key_P)
    rig.key(K.Key_Delete)
    assert rig.view.walk.pin == ""
    assert rig.view.walk.ring is None


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
def test_the_ring_stands_out_from_the_paper(theme):
    assert contrast(theme.accent, theme.paper) >= 3


def test_a_screen_reader_is_told_where_the_keyboard_goes(rig, monkeypatch):
    said: list[str] = []

    def hear(event) -> None:
        assert isinstance(event, QAccessibleAnnouncementEvent)
        assert event.object() is rig.view
        said.append(event.message())

    monkeypatch.setattr(telling, "QAccessible", type("Heard", (QAccessible,), {"updateAccessibility": hear}))
    rig.selection.set({"V1"})
    for key in (K.Key_P, K.Key_Return, K.Key_Tab):
        rig.key(key)
    assert said[0].startswith("V1.4, heater")
    assert "wires: w1" in said[0]
    assert said[1] == "Wire from V1.4: go to where it ends."
    assert said[2].startswith("Wire from V1.4 to V2.4, heater")
    assert rig.view.accessibleDescription() == said[2]


def test_opening_another_sheet_leaves_the_pins(rig):
    rig.selection.set({"V1"})
    rig.key(K.Key_P)
    rig.document.open(Sheet(parts=(Resistor(id="R1", ohm=1),)))
    assert rig.view.walk.pin == ""
    assert rig.view.walk.ring is None


def test_ctrl_and_enter_lay_a_twisted_pair(rig):
    rig.selection.set({"V1"})
    for key in (K.Key_P, K.Key_Return, K.Key_Tab):
        rig.key(key)
    rig.key(K.Key_Return, CTRL)
    first, second = rig.sheet.wires[-2:]
    assert [(wire.start, wire.end) for wire in (first, second)] == [("V1.4", "V2.4"), ("V1.5", "V2.5")]
    assert first.twist
    assert first.twist == second.twist
    assert rig.undo_names == ["Wire a pair from V1.4 to V2.4"]
    assert rig.view.walk.pin == "V2.4"


def test_while_wires_are_drawn_in_pairs_enter_lays_one_and_drags_do(rig):
    rig.key(K.Key_P, SHIFT)
    rig.selection.set({"V1"})
    for key in (K.Key_P, K.Key_Return, K.Key_Tab):
        rig.key(key)
    proposed = rig.scene.proposal.current
    assert proposed is not None
    assert len(proposed.sheet.wires) == len(rig.sheet.wires) + 2
    rig.key(K.Key_Return)
    assert rig.sheet == proposed.sheet
    rig.document.undo_stack.undo()
    rig.drag(rig.pin("V1.4"), rig.pin("V2.4"))
    assert rig.sheet == proposed.sheet
    rig.document.undo_stack.undo()
    rig.drag(rig.pin("V1.4"), rig.pin("V2.4"), CTRL)
    assert len(rig.sheet.wires) == 4, "Ctrl draws the other way round"
    rig.key(K.Key_P, SHIFT)
    assert not rig.view.wires.in_pairs
