"""Wires and straps by typing two terminals."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.canvas.wiring import why_no_offer, wire_offer
from core.sheet import Sheet, Tube, Winding
from tests.app.canvas_rig import make_rig

SHEET = Sheet(
    parts=(
        Winding(id="T1", rated_v=6.3, rated_a=3, at=(0, 0)),
        Tube(id="V1", type="ECC83", at=(200, 0)),
        Tube(id="V2", type="EL84", at=(400, 0)),
    )
)


@pytest.mark.parametrize(
    ("text", "ends"),
    [
        ("T1.a V1.4", ["T1.a", "V1.4"]),
        ("t1.A to v2.5", ["T1.a", "V2.5"]),
        ("wire T1.b - V1.9", ["T1.b", "V1.9"]),
        ("V1.4-5", ["V1.4", "V1.5"]),
        ("strap V1.4 V1.5", ["V1.4", "V1.5"]),
        ("V1.4 5", ["V1.4", "V1.5"]),
    ],
)
def test_two_terminals_are_a_wire(text: str, ends: list[str]) -> None:
    offer = wire_offer(text, SHEET)
    assert offer is not None
    assert offer.part_template["ends"] == ends


@pytest.mark.parametrize(
    "text", ["", "ECC83", "6.3 V 3 A", "T1.a", "T1.a V9.4", "T1.x V1.4", "V1.04 V1.5", "V1.4 V1.4"]
)
def test_anything_else_is_none(text: str) -> None:
    assert wire_offer(text, SHEET) is None


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("no such thing", "Nothing is called that."),
        ("1.5 nonsense", "Nothing is called that."),
        ("V1.44 V2.4", "V1 has no terminal 44."),
        ("v1.4-44", "V1 has no terminal 44."),
        ("T1.a V2.x", "V2 has no terminal x."),
        ("X9.1 V1.4", "There is no part X9."),
        ("T1.a X9.4", "There is no part X9."),
        ("V1.4 V1.4", "A wire needs two different terminals."),
        ("t1.a", "Type the terminal where the wire from T1.a ends."),
        ("T1.a to", "Type the terminal where the wire from T1.a ends."),
        ("T1.a V2", "Type the terminal where the wire from T1.a ends."),
        ("T1.a - V2.", "Type the terminal where the wire from T1.a ends."),
        ("T1.z", "T1 has no terminal z."),
    ],
)
def test_a_text_that_offers_nothing_says_why(text: str, says: str) -> None:
    assert why_no_offer(text, SHEET) == says


def test_the_reason_cannot_be_chosen(qtbot) -> None:
    rig = make_rig(qtbot, SHEET)
    field = rig.view.add_field
    QTest.keyClicks(field, "T1.a X9.4")
    assert field.list.isVisible()
    assert field.list.item(0).text() == "There is no part X9."
    assert field.list.count() == 1
    assert not field.offered()
    assert not field.list.grab().toImage().isNull()
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Return):
        QTest.keyClick(field, key)
    spot = field.list.visualItemRect(field.list.item(0)).center()
    QTest.mouseClick(field.list.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    assert rig.sheet is SHEET
    assert field.text() == "T1.a X9.4", "what was typed stays to be mended"
    assert field.list.isVisible()


def test_an_amplifier_is_wired_without_the_pointer(qtbot) -> None:
    rig = make_rig(qtbot, SHEET)
    for text in ("T1.a V1.4", "V1.4-5", "T1.b V1.9", "V1.4 V2.4", "V1.9 V2.5"):
        QTest.keyClick(rig.view, Qt.Key.Key_Slash)
        QTest.keyClicks(rig.view.add_field, text)
        QTest.keyClick(rig.view.add_field, Qt.Key.Key_Return)
    assert [(wire.start, wire.end) for wire in rig.sheet.wires] == [
        ("T1.a", "V1.4"),
        ("V1.4", "V1.5"),
        ("T1.b", "V1.9"),
        ("V1.4", "V2.4"),
        ("V1.9", "V2.5"),
    ]
    assert [wire.is_strap for wire in rig.sheet.wires] == [False, True, False, False, False]
    assert rig.document.undo_stack.undoText() == "Wire V1.9 to V2.5"
