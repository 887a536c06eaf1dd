"""Wires and straps by typing two terminals."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.canvas.wiring import wire_offer
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


@pytest.mark.parametrize("text", ["", "ECC83", "6.3 V 3 A", "T1.a", "T1.a V9.4", "T1.x V1.4", "V1.4 V1.4"])
def test_anything_else_is_none(text: str) -> None:
    assert wire_offer(text, SHEET) is None


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
