"""A monkey at the canvas: thousands of random events leave it alive, and undoing gives the first sheet back."""

from __future__ import annotations

import math
import os
import random

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPoint, QPointF, Qt
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas.operations import MIME
from core.sheet import Sheet, split_terminal
from tests.app.canvas_rig import ALT, NONE, SHIFT, Rig, make_rig, small_sheet

EVENTS = int(os.environ.get("HEATERLOOM_EVENTS", "1000"))
K = Qt.Key
KEYS = (
    K.Key_Delete,
    K.Key_R,
    K.Key_Left,
    K.Key_Right,
    K.Key_Up,
    K.Key_Down,
    K.Key_Escape,
    K.Key_Tab,
    K.Key_Return,
    K.Key_Plus,
    K.Key_Minus,
    K.Key_0,
    K.Key_F,
    K.Key_Space,
    K.Key_P,
    K.Key_P,
    K.Key_W,
    K.Key_4,
    K.Key_5,
    K.Key_B,
    K.Key_T,
    K.Key_J,
    K.Key_Slash,
)
BUTTONS = (
    Qt.MouseButton.LeftButton,
    Qt.MouseButton.LeftButton,
    Qt.MouseButton.MiddleButton,
    Qt.MouseButton.RightButton,
)
DROPS = (
    b'{"kind": "tube", "type": "EL84"}',
    b'{"kind": "joint"}',
    b'{"kind": "resistor", "ohm": 10}',
    b"junk",
)
TEXTS = ("EL84", "10R", "relay", "6.3 V 2 A", "fuse 1A", "zzz")


class Monkey:
    """Sends one random event at a time."""

    def __init__(self, rig: Rig, seed: int) -> None:
        self.rig = rig
        self.random = random.Random(seed)
        self.held = Qt.MouseButton.NoButton

    def place(self) -> tuple[float, float]:
        """Often a terminal or part, otherwise anywhere."""
        sheet, layout = self.rig.sheet, self.rig.scene.layout_
        if sheet.parts and self.random.random() < 0.7:
            place = layout.places[self.random.choice(sheet.parts).id]
            x, y = place.part.at
            if self.random.random() < 0.6 and place.terminals:
                terminal = self.random.choice(list(place.terminals.values()))
                return x + terminal.x, y + terminal.y
            return x + self.random.uniform(-30, 30), y + self.random.uniform(-30, 30)
        return self.random.uniform(-500, 500), self.random.uniform(-350, 350)

    def modifiers(self):
        return self.random.choice((NONE, NONE, NONE, SHIFT, ALT))

    def step(self) -> None:
        kinds = (
            self.pointer,
            self.pointer,
            self.pointer,
            self.key,
            self.wheel,
            self.drop,
            self.type,
            self.history,
        )
        weights = (30, 30, 30, 14, 2, 2, 2, 3)
        self.random.choices(kinds, weights)[0]()

    def pointer(self) -> None:
        x, y = self.place()
        if self.held == Qt.MouseButton.NoButton:
            self.held = self.random.choice(BUTTONS)
            self.rig.press(x, y, self.modifiers(), self.held)
        elif self.random.random() < 0.6:
            self.rig.move(x, y, self.modifiers(), self.held)
        else:
            button, self.held = self.held, Qt.MouseButton.NoButton
            self.rig.release(x, y, self.modifiers(), button)

    def key(self) -> None:
        QTest.keyClick(self.rig.view, self.random.choice(KEYS), self.modifiers())

    def wheel(self) -> None:
        viewport = self.rig.view.viewport()
        at = QPointF(self.random.randrange(900), self.random.randrange(600))
        control = self.random.choice((NONE, Qt.KeyboardModifier.ControlModifier))
        turned = QPoint(0, self.random.choice((-240, -120, 120, 240)))
        event = QWheelEvent(
            at, at, QPoint(), turned, Qt.MouseButton.NoButton, control, Qt.ScrollPhase.NoScrollPhase, False
        )
        QApplication.sendEvent(viewport, event)

    def drop(self) -> None:
        data = QMimeData()
        data.setData(MIME, self.random.choice(DROPS))
        at = QPointF(self.rig.on_screen(*self.place()))
        args = (Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton, self.modifiers())
        viewport = self.rig.view.viewport()
        QApplication.sendEvent(viewport, QDragEnterEvent(at.toPoint(), *args))
        QApplication.sendEvent(viewport, QDropEvent(at, *args))

    def type(self) -> None:
        field = self.rig.view.add_field
        QTest.keyClicks(field, self.random.choice(TEXTS))
        QTest.keyClick(field, self.random.choice((K.Key_Down, K.Key_Up)))
        QTest.keyClick(field, self.random.choice((K.Key_Return, K.Key_Escape)))

    def history(self) -> None:
        stack = self.rig.document.undo_stack
        self.random.choice((stack.undo, stack.undo, stack.redo))()


def check_agreement(rig: Rig) -> None:
    """Scene, layout and sheet speak of the same things, each where the sheet has it."""
    sheet, layout = rig.sheet, rig.scene.layout_
    assert set(rig.scene.part_items) == set(sheet.part_by_id) == set(layout.places)
    assert set(rig.scene.wire_items) == set(sheet.wire_by_id) == set(layout.board.routes)
    for part in sheet.parts:
        assert layout.places[part.id].part == part
        assert (rig.scene.part_items[part.id].x(), rig.scene.part_items[part.id].y()) == part.at
    for wire in sheet.wires:
        line = layout.board.routes[wire.id]
        for terminal in (wire.start, wire.end):
            if split_terminal(terminal)[1] in layout.places[split_terminal(terminal)[0]].terminals:
                point = layout.terminal_point(terminal)
                assert min(math.dist(point, line[0]), math.dist(point, line[-1])) < 1e-6
    assert rig.selection.ids <= set(sheet.part_by_id) | set(sheet.wire_by_id)


@pytest.mark.slow
@pytest.mark.parametrize("seed", [2])
def test_random_events_leave_the_canvas_alive_and_undo_leads_back(qtbot, seed):
    start: Sheet = small_sheet()
    rig = make_rig(qtbot, start)
    rig.document.undo_stack.setUndoLimit(0)
    rig.document.undo_stack.clear()
    rig.document.undo_stack.setUndoLimit(500)
    monkey = Monkey(rig, seed)
    most = 0
    for number in range(EVENTS):
        monkey.step()
        most = max(most, rig.document.undo_stack.count())
        if number % 200 == 0:
            QApplication.processEvents()
    rig.view.cancel_gesture()
    QApplication.sendEvent(rig.view.viewport(), QEvent(QEvent.Type.Leave))
    check_agreement(rig)
    assert EVENTS // 80 < most < 500
    while rig.document.undo_stack.canUndo():
        rig.document.undo_stack.undo()
    assert rig.sheet == start
    check_agreement(rig)
    assert not [item for item in rig.scene.items() if item.zValue() == 10]
