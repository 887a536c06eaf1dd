"""What a gesture would do is shown while it lasts: figures in place, nothing moved, nothing kept before the release."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QByteArray, QMimeData, Qt
from PySide6.QtGui import QColor, QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas import symbols
from app.canvas.look import PartLook
from app.canvas.operations import MIME
from app.canvas.symbols.labels import SHOW_FROM
from app.theme import DARK, LIGHT
from core.assess import assess
from core.edits import add_part, add_wire, in_turn, remove, set_part, turn_parts
from core.sheet import Resistor, Tube
from tests.app.canvas_rig import NONE, SHIFT, Rig, make_rig, small_sheet
from tests.app.symbol_parts import SHELF, part_of
from tests.app.test_symbols_paint import image_of

K = Qt.Key


@pytest.fixture
def rig(qtbot) -> Rig:
    made = make_rig(qtbot, small_sheet())
    solve(made)
    return made


def solve(rig: Rig) -> None:
    rig.document.take_assessment(assess(rig.sheet, rig.document.catalogue))


def drag_to(rig: Rig, start: str, end: str, modifiers=NONE) -> None:
    """Press on one terminal and hold over another."""
    x, y = rig.pin(end)
    rig.press(*rig.pin(start))
    rig.move(x + 20, y + 20, modifiers)
    rig.move(x, y, modifiers)


def ghost(rig: Rig, part_id: str) -> PartLook | None:
    return rig.scene.part_items[part_id].ghost


def where_all_stands(rig: Rig) -> dict[str, tuple[object, ...]]:
    parts = {
        key: (item.pos(), item.boundingRect(), item.place.label) for key, item in rig.scene.part_items.items()
    }
    return {**parts, **{key: (line,) for key, line in rig.scene.layout_.board.routes.items()}}


# wires


def test_a_wire_under_way_shows_what_it_would_do(rig):
    before, looks = where_all_stands(rig), {key: item.look for key, item in rig.scene.part_items.items()}
    drag_to(rig, "V1.4", "V2.4")
    drag = rig.scene.proposal.current
    assert drag is not None
    assert drag.text == "Wire V1.4 to V2.4"
    assert ghost(rig, "V1") is None  # nothing flows in the new wire yet
    rig.release(*rig.pin("V2.4"))
    rig.selection.clear()
    solve(rig)
    drag_to(rig, "V1.5", "V2.5")
    assert ghost(rig, "V2").values != looks["V2"].values
    assert ghost(rig, "V2").kelvin["4-9"] > 900
    assert rig.scene.part_items["V2"].look.values == looks["V2"].values
    assert {key: value for key, value in where_all_stands(rig).items() if key in before} == before
    assert rig.undo_names == ["Wire V1.4 to V2.4"]


def test_the_release_makes_what_was_considered_in_one_step(rig):
    drag_to(rig, "V1.4", "V1.5")
    considered = rig.scene.proposal.current.sheet
    rig.release(*rig.pin("V1.5"))
    assert rig.sheet == considered
    assert rig.undo_names == ["Strap V1.4 to V1.5"]
    assert rig.scene.proposal.current is None
    assert not rig.scene.ghosts.part_ids


@pytest.mark.parametrize("end", ["escape", "focus", "paper", "theme"])
def test_giving_up_leaves_nothing(rig, end):
    items = len(rig.scene.items())
    drag_to(rig, "V1.4", "V1.5")
    assert rig.scene.ghosts.part_ids == {"T1", "V1"}
    if end == "escape":
        rig.key(K.Key_Escape)
    elif end == "focus":
        rig.view.clearFocus()
    elif end == "paper":
        rig.move(0, -250)
    else:
        rig.view.set_theme(DARK)
    assert rig.scene.proposal.current is None
    assert not rig.scene.ghosts.part_ids
    assert rig.document.undo_stack.count() == 0
    assert rig.sheet == small_sheet()
    if end != "paper":
        assert len(rig.scene.items()) == items
    rig.release(0, -250)
    assert rig.document.undo_stack.count() == 0


def test_back_over_the_start_nothing_is_considered(rig):
    drag_to(rig, "V1.4", "V1.5")
    rig.move(*rig.pin("V1.4"))
    assert rig.scene.proposal.current is None


def test_with_shift_a_joint_is_considered_and_made(rig):
    rig.press(*rig.pin("V1.4"))
    rig.move(-20, -150, SHIFT)
    rig.move(-40, -160, SHIFT)
    considered = rig.scene.proposal.current.sheet
    assert considered.part_by_id["J1"].at == (-40, -160)
    assert rig.scene.ghosts.count == 0  # the wire on the pointer is there already
    rig.release(-40, -160, SHIFT)
    assert rig.sheet == considered
    assert rig.undo_names == ["Wire V1.4 to J1.j"]
    assert rig.selection.ids == {"J1"}


def test_a_wire_joined_onto_another_is_considered_and_made(rig):
    line = rig.scene.layout_.board.routes["w1"]
    x, y = line[0][0] + 40, line[0][1]
    rig.press(*rig.pin("V2.4"))
    rig.move(x + 10, y - 30)
    rig.move(x, y)
    considered = rig.scene.proposal.current
    assert considered is not None
    assert considered.change.parts == {"J1"}
    assert rig.scene.ghosts.count == 0  # the wire on the pointer is there already, and the other one stays
    rig.release(x, y)
    assert rig.sheet == considered.sheet
    assert rig.document.undo_stack.count() == 1
    assert rig.selection.ids == {"J1"}


def test_a_move_alters_no_figure_and_considers_nothing(rig):
    rig.press(0, 20)
    rig.move(0, 130)
    assert rig.scene.proposal.current is None
    rig.release(0, 130)
    # the lengths stay as they were given: what is on the bench does not shrink with the drawing
    assert rig.sheet.wires == small_sheet().wires


# parts


def data(template: bytes = b'{"kind": "tube", "type": "EL84"}') -> QMimeData:
    made = QMimeData()
    made.setData(MIME, QByteArray(template))
    return made


def drag_in(rig: Rig, mime: QMimeData, *places: tuple[float, float]) -> None:
    left, copy = Qt.MouseButton.LeftButton, Qt.DropAction.CopyAction
    viewport = rig.view.viewport()
    QApplication.sendEvent(viewport, QDragEnterEvent(rig.on_screen(*places[0]), copy, mime, left, NONE))
    for place in places:
        QApplication.sendEvent(viewport, QDragMoveEvent(rig.on_screen(*place), copy, mime, left, NONE))


def test_a_part_dragged_in_is_considered_where_it_hangs(rig):
    items, mime = len(rig.scene.items()), data()
    drag_in(rig, mime, (100, 200), (121, 239))
    found = rig.scene.proposal.current
    assert found.sheet.part_by_id["V3"].at == (120, 240)
    assert any(one.where == ("V3",) for one in found.new)
    assert len(rig.scene.items()) == items + 1  # the part on the pointer, and no ghost of it beside
    event = QDropEvent(
        rig.on_screen(120, 240).toPointF(), Qt.DropAction.CopyAction, mime, Qt.MouseButton.LeftButton, NONE
    )
    QApplication.sendEvent(rig.view.viewport(), event)
    assert rig.sheet == found.sheet
    assert rig.undo_names == ["Add EL84"]
    assert rig.scene.proposal.current is None


def test_a_part_dragged_out_again_leaves_nothing(rig):
    items = len(rig.scene.items())
    drag_in(rig, data(), (100, 200))
    QApplication.sendEvent(rig.view.viewport(), QDragLeaveEvent())
    assert rig.scene.proposal.current is None
    assert len(rig.scene.items()) == items
    assert not rig.scene.ghosts.is_held


# the add field


def test_walking_the_offers_considers_each_and_enter_takes_it(rig):
    field = rig.view.add_field
    rig.key(K.Key_Slash)
    QTest.keyClicks(field, "EL84")
    assert rig.scene.proposal.current is None  # typing alone puts nothing on the sheet
    QTest.keyClick(field, K.Key_Down)
    QTest.keyClick(field, K.Key_Up)
    considered = rig.scene.proposal.current.sheet
    assert considered.part_by_id["V3"].type == "EL84"
    assert rig.scene.ghosts.count == 1
    assert rig.document.undo_stack.count() == 0
    QTest.keyClick(field, K.Key_Return)
    assert rig.sheet == considered
    assert rig.document.undo_stack.count() == 1
    assert rig.scene.ghosts.count == 0


@pytest.mark.parametrize("end", ["escape", "typing", "focus"])
def test_leaving_the_offers_takes_it_back(rig, end):
    field = rig.view.add_field
    rig.key(K.Key_Slash)
    QTest.keyClicks(field, "EL84")
    QTest.keyClick(field, K.Key_Down)
    assert rig.scene.proposal.current is not None
    if end == "escape":
        QTest.keyClick(field, K.Key_Escape)
    elif end == "typing":
        QTest.keyClick(field, K.Key_Backspace)
    else:
        rig.view.setFocus()
    assert rig.scene.proposal.current is None
    assert rig.scene.ghosts.count == 0
    assert rig.document.undo_stack.count() == 0


def test_a_wire_typed_out_is_considered(rig):
    rig.key(K.Key_Slash)
    QTest.keyClicks(rig.view.add_field, "V1.4 V1.5")
    assert rig.scene.proposal.current.text == "Strap V1.4 to V1.5"
    assert rig.scene.ghosts.count == 1
    QTest.keyClick(rig.view.add_field, K.Key_Escape)
    assert rig.scene.proposal.current is None


# what others consider


def test_what_would_come_is_drawn(rig):
    lamp = Resistor(id="R1", ohm=10.0, at=(100.0, -200.0))
    edit = in_turn(add_part(lamp), add_wire("V1.4", "R1.1"), add_wire("R1.2", "V1.5"))
    assert rig.scene.proposal.consider("Shunt", edit)
    assert rig.scene.ghosts.count == 2  # the part, and one path for both wires
    assert "V1" in rig.scene.ghosts.part_ids
    rig.scene.proposal.withdraw()
    assert rig.scene.ghosts.count == 0


def test_what_would_go_is_crossed(rig):
    rig.scene.proposal.consider("Delete V1", remove(("V1",)))
    assert rig.scene.ghosts.count == 1
    assert ghost(rig, "T1") is not None


def test_what_would_stand_otherwise_is_drawn_there(rig):
    rig.scene.proposal.consider("Turn", turn_parts(("V1",)))
    assert rig.scene.ghosts.count == 1
    assert rig.scene.part_items["V1"].place.part.turn == 0


def test_a_part_in_a_chain_to_be_is_reached_by_its_wires(rig):
    tube = Tube(id="V9", type="EL84", at=(0.0, 250.0))
    wires = [add_wire(f"V1.{pin}", f"V9.{pin}") for pin in ("4", "5")] * 20
    rig.scene.proposal.consider("Many", in_turn(add_part(tube), *wires))
    assert rig.scene.ghosts.count == 2


def test_the_ghost_follows_theme_and_condition(rig):
    rig.scene.proposal.consider("Set", set_part("T1", rated_v=5.0))
    at_nominal = ghost(rig, "V1").values
    rig.scene.set_theme(DARK)
    assert ghost(rig, "V1").values == at_nominal
    rig.viewpoint.set_cold(True)
    assert ghost(rig, "V1").values != at_nominal
    assert ghost(rig, "V1").state == "cold"


# painting

PRESENT = PartLook("ok", "6.30 V  0.0 %  0.300 A", {"4-9": 1440.0, "9-5": 1440.0})
WOULD = PartLook("over", "7.56 V  +20.0 %  0.331 A", {"4-9": 1440.0, "9-5": 1440.0})


def painted(look: PartLook, would: PartLook | None, kind: str, theme, scale: float = 1.0, side: int = 300):
    part = part_of(kind)
    return image_of(
        lambda p: symbols.paint_part(p, part, SHELF, look, theme, scale, would), theme, scale, side
    )


def differing_rows(one, other) -> set[int]:
    size = range(300)
    return {y for y in size if any(one.pixel(x, y) != other.pixel(x, y) for x in size)}


@pytest.mark.parametrize("kind", ["tube", "lamp", "winding", "resistor", "dc_supply"])
@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
def test_only_the_line_of_figures_changes(kind, theme):
    rows = differing_rows(painted(PRESENT, None, kind, theme), painted(PRESENT, WOULD, kind, theme))
    assert rows
    assert max(rows) - min(rows) <= 17


@pytest.mark.parametrize("kind", ["tube", "winding", "resistor", "battery"])
def test_figures_where_there_were_none_leave_the_title_in_its_place(kind):
    none = PartLook(kelvin=WOULD.kelvin)
    rows = differing_rows(painted(none, None, kind, LIGHT), painted(none, WOULD, kind, LIGHT))
    assert rows
    assert max(rows) - min(rows) <= 17


def test_would_be_figures_are_in_the_accents_colour(qapp):
    image = painted(PRESENT, WOULD, "tube", LIGHT, 2.0, side=400)
    accent = QColor(LIGHT.accent_text).rgb()
    assert sum(image.pixel(x, y) == accent for x in range(400) for y in range(400)) > 40


def test_figures_that_would_be_gone_leave_a_dash(qapp):
    assert differing_rows(
        painted(PartLook(), None, "resistor", LIGHT), painted(PRESENT, PartLook(), "resistor", LIGHT)
    )


def test_from_afar_a_ghost_glows(qapp):
    cold = PartLook("cold", "0.00 V")
    assert SHOW_FROM > 0.3
    assert differing_rows(painted(cold, None, "tube", LIGHT, 0.3), painted(cold, WOULD, "tube", LIGHT, 0.3))
