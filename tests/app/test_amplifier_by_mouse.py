"""From an empty sheet to the same amplifier without ever touching a key."""

from __future__ import annotations

from core.sheet import Sheet
from tests.app.amplifier import PAIRS, build_by_keys, build_by_mouse, wires_wanted

STROKES_A_SECOND = 2.0
LONGEST_S = 180.0


def test_an_amplifier_of_five_tubes_by_the_pointer_alone(open_window, qtbot) -> None:
    by_mouse = open_window(Sheet())
    by_mouse.activateWindow()
    qtbot.waitUntil(by_mouse.isActiveWindow)
    strokes = build_by_mouse(by_mouse)
    sheet = by_mouse.document.sheet
    print(f"{strokes} strokes of the pointer, {strokes / STROKES_A_SECOND:.0f} s")
    assert strokes / STROKES_A_SECOND < LONGEST_S
    assert [(wire.start, wire.end) for wire in sheet.wires] == wires_wanted()
    assert len({wire.twist for wire in sheet.wires if wire.twist}) == len(PAIRS)
    by_keys = open_window(Sheet())
    by_keys.activateWindow()
    qtbot.waitUntil(by_keys.isActiveWindow)
    by_keys.view.setFocus()
    build_by_keys(by_keys)
    assert by_keys.document.sheet == sheet, "parts, places, ids, wires and lengths: all the same"
