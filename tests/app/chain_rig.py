"""The chain builder in a window, opened and worked by mouse and by keys, for its tests."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.panes.chain_pane import ChainPane
from core.results import SEVERITIES
from core.sheet import Mains, Sheet, Tube

K = Qt.Key
ALT = Qt.KeyboardModifier.AltModifier
LEFT = Qt.MouseButton.LeftButton


def amplifier(*more) -> Sheet:
    types = ("ECC83", "ECC83", "EL34", "EL34")
    tubes = [Tube(id=f"V{n}", type=each, at=(200.0 * n, 0.0)) for n, each in enumerate(types, 1)]
    return Sheet(parts=(*more, *tubes), mains=Mains(low_pct=-5, high_pct=5))


def key(code, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    """A key for whatever has the keyboard."""
    focused = QApplication.focusWidget()
    assert focused is not None
    QTest.keyClick(focused, code, modifiers)


def open_chain(window, *ids: str) -> ChainPane:
    window.activateWindow()
    assert QTest.qWaitForWindowActive(window)
    window.view.setFocus()
    window.selection.set(ids)
    key(K.Key_C)
    pane = window.side._builder.content
    assert pane.isVisible()
    QApplication.processEvents()
    assert all(button.height() > 12 for button in pane.offers.buttons if button.isVisible())
    return pane


def click(widget, at: QPoint | None = None) -> None:
    QTest.mouseClick(widget, LEFT, Qt.KeyboardModifier.NoModifier, at or widget.rect().center())


def click_radio(pane: ChainPane, number: int) -> None:
    click(pane.offers.buttons[number], QPoint(8, 8))


def choose(row, text: str) -> None:
    """Take a choice with the arrow keys."""
    row.combo.setFocus()
    texts = [row.combo.itemText(number) for number in range(row.combo.count())]
    wanted = next(number for number, each in enumerate(texts) if text in each)
    step = K.Key_Down if wanted > row.combo.currentIndex() else K.Key_Up
    while row.combo.currentIndex() != wanted:
        key(step)


def undo_names(window) -> list[str]:
    stack = window.document.undo_stack
    return [stack.text(number) for number in range(stack.count())]


def faults(window) -> set[str]:
    assert SEVERITIES[0] == "fault"
    return {one.rule for one in window.document.assessment.findings if one.severity == "fault"}
