"""From an empty sheet to an amplifier of five tubes, without ever touching the pointer."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from core.checks import find_problems
from core.sheet import Sheet, Tube, Winding
from tests.app.amplifier import ECC83, EL84, PAIRS, PARTS, PLACES, build_by_keys, wires_wanted

STROKES_A_SECOND = 2.0
LONGEST_S = 180.0


def test_an_amplifier_of_five_tubes_by_keys_alone(open_window, qtbot) -> None:
    window = open_window(Sheet())
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.view.setFocus()
    strokes = build_by_keys(window)
    sheet = window.document.sheet
    print(f"{strokes} keys, {strokes / STROKES_A_SECOND:.0f} s")
    assert strokes / STROKES_A_SECOND < LONGEST_S
    assert not find_problems(sheet)
    assert [part.id for part in sheet.parts] == ["T1", "V1", "V2", "V3", "V4", "V5", "E1"]
    assert [part.at for part in sheet.parts] == list(PLACES)
    assert [part.type for part in sheet.parts if isinstance(part, Tube)] == [ECC83] * 3 + [EL84] * 2
    assert isinstance(sheet.parts[0], Winding)
    assert sheet.parts[0].centre_tap
    assert [(wire.start, wire.end) for wire in sheet.wires] == wires_wanted()
    assert len({wire.twist for wire in sheet.wires if wire.twist}) == len(PAIRS)


def test_what_was_built_is_heated_as_it_should_be(open_window, qtbot) -> None:
    window = open_window(Sheet())
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.view.setFocus()
    build_by_keys(window)
    qtbot.waitUntil(lambda: window.document.assessment is not None)
    assessment = window.document.assessment
    heaters = assessment.points["nominal"].heaters
    assert [len(heaters[f"V{number}"]) for number in range(1, 6)] == [2, 2, 2, 1, 1]
    for sections in heaters.values():
        assert all(abs(section.v / 6.3 - 1) < 0.05 for section in sections)
    faults = [finding for finding in assessment.findings if finding.severity == "fault"]
    # mains that may be 10 % off take any 6.3 V heater to the edge of its 10 %: that is for the designer
    assert {finding.rule for finding in faults} <= {"heater-voltage"}
    assert {finding.condition for finding in faults} <= {"low mains", "high mains"}


def test_every_step_can_be_taken_back(open_window, qtbot) -> None:
    window = open_window(Sheet())
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.view.setFocus()
    build_by_keys(window)
    done = window.document.undo_stack.count()
    assert done == len(PARTS) + 1 + 3 + len(PAIRS), "one step for each part, strap and pair"
    for _ in range(done):
        QTest.keyClick(window.view, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.document.sheet == Sheet()
