"""The scene follows document, selection and condition, and touches no more than it must."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.canvas import symbols
from app.canvas.items import WireItem, tint
from app.canvas.operations import spiral
from app.theme import DARK, LIGHT
from core.edits import add_part, add_wire, move_parts, remove, set_part, set_sheet, set_wire, turn_parts
from core.results import Assessment, BranchPoint, Condition, HeaterPoint, OperatingPoint, SupplyPoint
from core.sheet import Sheet, Tube
from tests.app.canvas_rig import Rig, make_rig, small_sheet, wire

pytestmark = pytest.mark.collected


@pytest.fixture
def rig(qtbot) -> Rig:
    return make_rig(qtbot, small_sheet())


def answers(sheet: Sheet, volts: float = 6.29, mains_v: float = 230.0):
    """An assessment as small as the canvas needs it."""
    point = OperatingPoint(
        Condition("nominal", mains_v),
        nodes={"V1.4": volts},
        heaters={"V1": (HeaterPoint("V1", "4-5", volts, 0.76, 4.8, 6.3, 0.76, 1400.0, 1040.0),)},
        supplies={"T1": SupplyPoint(6.45, 1.06, 6.8, 2.0)},
        branches={"w1": BranchPoint(0.01, 0.76, 0.01)},
    )
    return Assessment(sheet, {"nominal": point}, (), ())


def values(rig: Rig, part_id: str = "V1") -> str:
    return rig.scene.part_items[part_id].look.values.replace("\u2009", " ").replace("\u2212", "-")


def picture(rig: Rig, area: QRectF) -> QImage:
    image = QImage(round(area.width()), round(area.height()), QImage.Format.Format_ARGB32)
    image.fill(QColor(rig.scene.theme.paper))
    painter = QPainter(image)
    rig.scene.render(painter, QRectF(image.rect()), area)
    painter.end()
    return image


def test_items_are_made_removed_and_moved(rig):
    assert set(rig.scene.part_items) == {"T1", "V1", "V2", "E1"}
    rig.document.apply("Add", add_part(Tube(id="V3", type="EL84", at=(0, 300))))
    rig.document.apply("Wire", add_wire("V1.4", "V3.4", id="w9"))
    assert rig.scene.part_items["V3"].pos().y() == 300
    assert "w9" in rig.scene.wire_items
    rig.document.apply("Move", move_parts(("V3",), 20, 0))
    assert rig.scene.part_items["V3"].pos().x() == 20
    rig.document.apply("Delete", remove(("V3",)))
    assert "V3" not in rig.scene.part_items
    assert "w9" not in rig.scene.wire_items
    for _ in range(4):
        rig.document.undo_stack.undo()
    assert set(rig.scene.part_items) == {"T1", "V1", "V2", "E1"}
    assert set(rig.scene.wire_items) == {"w1", "w2", "w3"}


def test_an_untouched_item_is_the_same_item(rig):
    items = dict(rig.scene.part_items)
    rig.document.apply("Move", move_parts(("V1",), 20, 0))
    rig.document.apply("Set", set_part("V2", pulled=True))
    assert rig.scene.part_items == items
    assert rig.scene.part_items["V2"].place.part.pulled


def test_moving_a_part_lays_only_its_own_wires(rig):
    board = rig.scene.layout_.board
    before = dict(board.routes)
    rig.document.apply("Move", move_parts(("V1",), 0, 200))
    assert board.routes["w1"] != before["w1"]
    assert board.routes["w3"] == before["w3"]


def test_a_wire_that_a_part_is_put_upon_makes_way(qtbot):
    sheet = Sheet(
        parts=(
            Tube(id="V1", type="EL84", at=(0, 0)),
            Tube(id="V2", type="EL84", at=(400, 0)),
            Tube(id="V3", type="EL84", at=(200, 400)),
        ),
        wires=(wire("w1", "V1.4", "V2.4"),),
    )
    rig = make_rig(qtbot, sheet)
    rig.document.apply("Move", move_parts(("V3",), 0, -460))
    assert rig.scene.layout_.board.through(rig.scene.layout_.places["V3"].body) == set()


def test_wires_between_parts_moved_together_only_move_along(rig):
    board = rig.scene.layout_.board
    before = board.routes["w1"]
    rig.document.apply("Move", move_parts(("T1", "V1"), 60, 40))
    moved = [point for x, y in before for point in (x + 60, y + 40)]
    assert [value for point in board.routes["w1"] for value in point] == pytest.approx(moved)


def test_changing_a_size_or_value_lays_no_wire(rig):
    before = dict(rig.scene.layout_.board.routes)
    rig.document.apply("Set size", set_wire("w1", area_mm2=1.0))
    rig.document.apply("Pull", set_part("V1", pulled=True))
    assert rig.scene.layout_.board.routes == before
    assert rig.scene.wire_items["w1"].text.startswith("1\u2009mm²")


def test_turning_takes_the_wires_along(rig):
    rig.document.apply("Turn", turn_parts(("V1",), 90))
    assert rig.scene.layout_.board.routes["w1"][-1] == rig.pin("V1.4")


def test_figures_come_with_the_answers_and_go_with_the_next_edit(rig):
    assert values(rig) == ""
    rig.document.take_assessment(answers(rig.sheet))
    assert values(rig) == "6.29 V  -0.2 %  0.760 A"
    assert values(rig, "T1") == "6.45 V  1.06 A  53 %"
    rig.document.apply("Move", move_parts(("V1",), 20, 0))
    assert values(rig) == ""
    assert rig.scene.part_items["V1"].look.state == "stale"
    rig.document.take_assessment(answers(rig.sheet))
    assert values(rig) == "6.29 V  -0.2 %  0.760 A"


def test_another_condition_shows_no_figures_until_it_is_solved(rig):
    rig.document.take_assessment(answers(rig.sheet))
    rig.viewpoint.set_mains(240.0)
    assert values(rig) == ""
    rig.viewpoint.set_mains(230.0)
    assert values(rig) != ""


def test_selection_lights_parts_and_wires(rig):
    rig.selection.set(("V1", "w2"))
    selected = {
        key
        for items in (rig.scene.part_items, rig.scene.wire_items)
        for key, item in items.items()
        if item.is_selected
    }
    assert selected == {"V1", "w2"}
    rig.document.apply("Delete", remove(("V1",)))
    assert rig.selection.ids == frozenset()


def test_a_selected_part_wears_a_halo(rig):
    area = QRectF(-60, -60, 120, 120)
    plain = picture(rig, area)
    rig.selection.set(("V1",))
    lit = picture(rig, area)
    at = QPoint(60 + 43, 60)
    assert plain.pixelColor(at) != lit.pixelColor(at)
    assert lit.pixelColor(at).name() == LIGHT.halo


def test_dots_where_three_wires_meet(rig):
    assert rig.scene.layout_.ends["T1.b"] == 2
    assert "T1.b" not in rig.scene.dots
    rig.document.apply("Wire", add_wire("T1.b", "V2.4"))
    assert "T1.b" in rig.scene.dots
    rig.document.apply("Move", move_parts(("T1",), 20, 20))
    point = rig.scene.dots["T1.b"].pos()
    assert (point.x(), point.y()) == rig.pin("T1.b")
    rig.document.undo_stack.undo()
    rig.document.undo_stack.undo()
    assert "T1.b" not in rig.scene.dots


def test_another_sheet_replaces_everything(rig):
    rig.document.open(Sheet(parts=(Tube(id="V7", type="EL84"),)))
    assert set(rig.scene.part_items) == {"V7"}
    assert rig.scene.wire_items == {}
    rig.document.open(Sheet())
    assert rig.scene.part_items == {}
    assert rig.scene.layout_.bounds() is None


def test_a_part_far_out_is_within_the_scene(rig):
    rig.document.open(Sheet(parts=(Tube(id="V7", type="EL84", at=(50_000, -40_000)),)))
    assert rig.scene.sceneRect().contains(50_000, -40_000)


def test_the_sheets_own_types_reach_the_symbols(rig):
    rig.document.apply("Title", set_sheet(title="other"))
    assert set(rig.scene.part_items) == {"T1", "V1", "V2", "E1"}


def test_a_wire_to_a_pin_that_is_not_there_is_still_drawn(rig):
    rig.document.apply("Wire", add_wire("V1.19", "V2.4", id="w9"))
    assert len(rig.scene.layout_.board.routes["w9"]) >= 2
    assert not rig.scene.wire_items["w9"].boundingRect().isEmpty()


def test_a_symbol_that_fails_leaves_a_red_box_and_a_living_view(rig, monkeypatch, caplog):
    def fail(*_):
        raise ValueError("broken symbol")

    monkeypatch.setattr(symbols, "paint_part", fail)
    bounds = rig.scene.part_items["V2"].sceneBoundingRect()
    image = picture(rig, bounds)
    found = {image.pixelColor(x, y).name() for x in range(6) for y in range(40)}
    assert LIGHT.over in found
    assert "painting V2 failed" in caplog.text


@pytest.mark.parametrize("theme", [LIGHT, DARK])
def test_themes_repaint_paper(rig, theme):
    rig.view.set_theme(theme)
    image = rig.view.grab().toImage()
    assert image.pixelColor(image.width() - 5, 5).name() == theme.paper


@pytest.mark.parametrize(
    ("name", "is_colour"),
    [
        ("red", True),
        ("Grey", True),
        ("#ff8800", True),
        ("no colour", False),
        ("", False),
        (None, False),
        ("\x00", False),
    ],
)
def test_only_real_colours_tint_a_wire(qapp, name, is_colour):
    assert (tint(name, LIGHT) is not None) == is_colour


def test_texts_stand_clear_of_everything(rig):
    board = rig.scene.layout_.board
    rects = board.text_rects()
    assert rects
    for left, top, right, bottom in rects:
        area = QRectF(left, top, right - left, bottom - top)
        for place in rig.scene.layout_.places.values():
            for box in (place.body, place.label):
                assert not area.intersects(QRectF(box[0], box[1], box[2] - box[0], box[3] - box[1]))
        for item in rig.scene.items(area.adjusted(1, 1, -1, -1)):
            if isinstance(item, WireItem):
                points = board.routes[item.wire.id]
                assert not any(area.contains(x, y) for x, y in points)


def test_a_tooltip_is_plain_text_and_says_the_side(rig):
    rig.document.apply("Set", set_part("V1", type="<b>EL84</b>"))
    text = rig.view.tooltip_at(rig.on_screen(0, 20))
    assert "&lt;b&gt;EL84" in text
    assert "<b>" not in text
    assert "wiring&nbsp;side" in text
    rig.document.undo_stack.undo()
    rig.document.take_assessment(answers(rig.sheet))
    assert "V1.4&nbsp;6.29" in rig.view.tooltip_at(rig.on_screen(*rig.pin("V1.4")))
    (ax, ay), (bx, by) = rig.scene.layout_.board.routes["w1"][1:3]
    assert "w1" in rig.view.tooltip_at(rig.on_screen((ax + bx) / 2, (ay + by) / 2))
    assert rig.view.tooltip_at(rig.on_screen(400, 330)) == ""


def test_the_view_tells_a_screen_reader_what_is_selected(rig):
    assert rig.view.accessibleName() == "Sheet"
    assert rig.view.accessibleDescription() == "Nothing selected"
    rig.selection.set(("V1", "w1"))
    assert rig.view.accessibleDescription().startswith("V1 EL84, not yet solved; w1 T1.a to V1.4, 20")
    rig.document.take_assessment(answers(rig.sheet))
    assert "within tolerance" in rig.view.accessibleDescription()
    rig.selection.set(rig.sheet.part_by_id.keys() | rig.sheet.wire_by_id.keys())
    assert rig.view.accessibleDescription().endswith("and 1 more")


def test_spiral_begins_at_the_middle_and_goes_outwards():
    points = spiral((3.0, 4.0))
    first = [next(points) for _ in range(9)]
    assert first[0] == (0.0, 0.0)
    assert {max(abs(x), abs(y)) for x, y in first[1:]} == {40.0}
    assert len(set(first)) == 9


def test_a_twisted_pair_says_its_size_once(qtbot):
    sheet = move_parts(("V1",), 40.0, 0.0)(small_sheet())
    twisted = tuple(
        wire(name, w.start, w.end, twist="p") for name, w in zip(("w2", "w10"), sheet.wires, strict=False)
    )
    rig = make_rig(qtbot, Sheet(parts=sheet.parts, wires=twisted))
    assert rig.scene.layout_.followers == {"w10": "w2"}
    assert len(rig.scene.layout_.board.text_rects()) == 1
    rig.document.apply("Set size", set_wire("w10", awg=18))
    assert len(rig.scene.layout_.board.text_rects()) == 2
