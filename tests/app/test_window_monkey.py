"""A monkey at the whole window: canvas, panes, strip and add field; undoing gives the first sheet back."""

from __future__ import annotations

import os
import random

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication, QLineEdit, QWidget

from core.samples import sample_bytes
from core.storage import dump, load

EVENTS = int(os.environ.get("HEATERLOOM_EVENTS", "1000"))
K = Qt.Key
KEYS = (
    K.Key_Delete, K.Key_R, K.Key_Left, K.Key_Right, K.Key_Up, K.Key_Down, K.Key_Escape, K.Key_Tab, K.Key_Backtab,
    K.Key_Return, K.Key_F, K.Key_Home, K.Key_End, K.Key_PageUp, K.Key_F2, K.Key_Slash, K.Key_Space, K.Key_P,
    K.Key_W, K.Key_5, K.Key_Insert, K.Key_F6,
)  # fmt: skip
TEXTS = ("EL84", "6,3 V", "4k7", "0.5", "xyz", "150 mA", "-3", "V1", "1e9", "100")
HELD = (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.AltModifier)


class WindowMonkey:
    """Sends one random event at a time to a random visible widget."""

    def __init__(self, window, seed: int) -> None:
        self.window = window
        self.random = random.Random(seed)

    def widget(self) -> QWidget:
        window = self.window
        if self.random.random() < 0.55:
            return window.view.viewport()
        places = [window.strip, *window.side.panes.values(), window.view.add_field]
        children = [
            child
            for place in places
            for child in (place, *place.findChildren(QWidget))
            if child.isVisible() and child.isEnabled()
        ]
        return self.random.choice(children)

    def point(self, widget: QWidget) -> QPoint:
        view, sheet = self.window.view, self.window.document.sheet
        if widget is view.viewport() and sheet.parts and self.random.random() < 0.6:
            part = self.random.choice(sheet.parts)
            spots = [
                (part.at[0] + t.x, part.at[1] + t.y)
                for t in self.window.scene.layout_.places[part.id].terminals.values()
            ]
            return view.mapFromScene(*self.random.choice([part.at, *spots]))
        width, height = max(widget.width(), 1), max(widget.height(), 1)
        return QPoint(self.random.randrange(width), self.random.randrange(height))

    def step(self) -> None:
        widget = self.widget()
        kind = self.random.random()
        held = self.random.choice(HELD)
        if kind < 0.35:
            QTest.mouseClick(widget, Qt.MouseButton.LeftButton, held, self.point(widget))
        elif kind < 0.5:
            QTest.mousePress(widget, Qt.MouseButton.LeftButton, held, self.point(widget))
            QTest.mouseMove(widget, self.point(widget))
            QTest.mouseMove(widget, self.point(widget))
            QTest.mouseRelease(widget, Qt.MouseButton.LeftButton, held, self.point(widget))
        elif kind < 0.55:
            QTest.mouseDClick(widget, Qt.MouseButton.LeftButton, held, self.point(widget))
        elif kind < 0.57:
            stack = self.window.document.undo_stack
            self.random.choice((stack.undo, stack.redo))()
        elif kind < 0.72 and isinstance(QApplication.focusWidget(), QLineEdit):
            field = QApplication.focusWidget()
            field.selectAll()
            QTest.keyClicks(field, self.random.choice(TEXTS))
            QTest.keyClick(field, self.random.choice((K.Key_Return, K.Key_Tab, K.Key_Escape)))
        else:
            target = QApplication.focusWidget() or self.window.view
            QTest.keyClick(target, self.random.choice(KEYS), held)
        if QApplication.activePopupWidget() is not None:
            QApplication.activePopupWidget().close()


@pytest.mark.slow
@pytest.mark.parametrize("seed", [6])
def test_random_events_leave_the_window_alive_and_undo_leads_back(open_window, seed: int) -> None:
    first = load(sample_bytes("five-mistakes"))
    window = open_window(first)
    monkey = WindowMonkey(window, seed)
    changes: list[object] = []
    window.document.changed.connect(changes.append)
    for _ in range(EVENTS):
        monkey.step()
    window.view.cancel_gesture()
    stack = window.document.undo_stack
    assert len(changes) > EVENTS // 20
    last = window.document.sheet
    assert load(dump(last)) == last
    while stack.canUndo():
        stack.undo()
    assert window.document.sheet == first
    while stack.canRedo():
        stack.redo()
    assert window.document.sheet.parts or stack.count()
    assert not any(
        isinstance(view, QAbstractItemView) and view.isWindow() for view in QApplication.topLevelWidgets()
    )
