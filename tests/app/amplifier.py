"""An amplifier of five tubes, from an empty sheet: built with keys alone, or with the pointer alone.

A winding with its centre tap on the chassis, three ECC83 (12AX7) strapped for 6.3 V, two EL84, and a twisted pair from
each to the next. Both ways use nothing of the program but what reaches it from keyboard and pointer, and count it.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QModelIndex, QPoint, QPointF, Qt
from PySide6.QtGui import QAction, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu, QMenuBar, QWidget

from app.window import MainWindow

K = Qt.Key
LEFT = Qt.MouseButton.LeftButton
NONE, CTRL, SHIFT = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.ShiftModifier,
)

WINDING, ECC83, EL84, CHASSIS = "6.3 V 3 A ct", "12AX7", "EL84", "chassis"
PARTS = (WINDING, ECC83, ECC83, ECC83, EL84, EL84, CHASSIS)
STRAPS = (("V1.4", "V1.5"), ("V2.4", "V2.5"), ("V3.4", "V3.5"))
TAP = ("E1.e", "T1.ct")
PAIRS = (
    (("T1.a", "V1.9"), ("T1.b", "V1.4")),
    (("V1.9", "V2.9"), ("V1.4", "V2.4")),
    (("V2.9", "V3.9"), ("V2.4", "V3.4")),
    (("V3.9", "V4.4"), ("V3.4", "V4.5")),
    (("V4.4", "V5.4"), ("V4.5", "V5.5")),
)
PLACES = ((-260, -100), (-60, -100), (140, -100), (-260, 100), (-60, 100), (140, 100), (-260, 300))


def wires_wanted() -> list[tuple[str, str]]:
    """The ends of every wire, in the order in which they are laid."""
    return [TAP, *STRAPS, *(ends for pair in PAIRS for ends in pair)]


@dataclass
class Keyboard:
    """Keys pressed one after the other, each where the keyboard is."""

    window: MainWindow
    strokes: int = 0

    def press(self, *keys: Qt.Key, held: Qt.KeyboardModifier = NONE) -> None:
        for key in keys:
            self.strokes += 1
            QTest.keyClick(self._target, key, held)

    def write(self, text: str) -> None:
        for letter in text:
            self.strokes += 1
            QTest.keyClicks(self._target, letter)

    @property
    def _target(self) -> QWidget:
        return QApplication.focusWidget() or self.window


def build_by_keys(window: MainWindow) -> int:
    """Build the amplifier with keys alone; answers how many were pressed."""
    keys = Keyboard(window)
    for part in PARTS:
        keys.press(K.Key_Slash)
        keys.write(part)
        keys.press(K.Key_Return)
    keys.press(K.Key_P, K.Key_Return, K.Key_Tab, K.Key_C, K.Key_Return)  # from the chassis to the tap
    for _ in STRAPS:
        keys.press(K.Key_Tab, K.Key_Return, K.Key_5, K.Key_Return)
    for _ in STRAPS:
        keys.press(K.Key_Backtab, held=SHIFT)
    for _ in PAIRS:
        keys.press(K.Key_Return, K.Key_Tab)
        keys.press(K.Key_Return, held=CTRL)
    return keys.strokes


@dataclass
class Mouse:
    """A pointer that presses, moves and turns its wheel; a drag counts as one stroke, so does a notch."""

    window: MainWindow
    strokes: int = 0

    def click(self, widget: QWidget, at: QPoint) -> None:
        self.strokes += 1
        QTest.mouseMove(widget, at)
        QTest.mouseClick(widget, LEFT, NONE, at)

    def double_click(self, widget: QWidget, at: QPoint) -> None:
        self.strokes += 2
        QTest.mouseClick(widget, LEFT, NONE, at)
        QTest.mouseDClick(widget, LEFT, NONE, at)  # the press only
        QTest.mouseRelease(widget, LEFT, NONE, at)

    def drag(self, widget: QWidget, start: QPoint, end: QPoint) -> None:
        self.strokes += 1
        QTest.mouseMove(widget, start)
        QTest.mousePress(widget, LEFT, NONE, start)
        for share in (0.3, 0.7, 1.0):
            QTest.mouseMove(widget, start + (end - start) * share)
        QTest.mouseRelease(widget, LEFT, NONE, end)

    def wheel(self, widget: QWidget, notches: int) -> None:
        self.strokes += 1
        at = QPointF(widget.rect().center())
        turned = QPoint(0, 120 * notches)
        held = Qt.MouseButton.NoButton, NONE
        event = QWheelEvent(
            at, widget.mapToGlobal(at), QPoint(), turned, *held, Qt.ScrollPhase.NoScrollPhase, False
        )
        QApplication.sendEvent(widget, event)

    def choose(self, *path: str) -> None:
        """Open a menu of the bar, and the menus in it, and click the last entry of the path."""
        where: QMenuBar | QMenu = self.window.menuBar()
        kept = []  # the binding forgets a menu with the action that it was asked of
        for title in path:
            action = next(each for each in where.actions() if _plain(each) == title)
            assert where.isVisible()
            self.click(where, where.actionGeometry(action).center())
            kept.append(action)
            inner = action.menu()
            if isinstance(inner, QMenu):
                where = inner

    # on the drawing

    def place(self, x: float, y: float) -> None:
        view = self.window.view
        at = view.mapFromScene(x, y)
        assert view.viewport().rect().contains(at), f"{x}, {y} cannot be seen"
        self.click(view.viewport(), at)

    def wire(self, start: str, end: str) -> None:
        view = self.window.view
        ends = [self.window.scene.layout_.terminal_point(terminal) for terminal in (start, end)]
        first, last = (view.mapFromScene(*point) for point in ends if point is not None)
        self.drag(view.viewport(), first, last)

    # in the parts list

    def take(self, shelf: str, *words: str) -> None:
        """Find an offer in the parts list by looking, and click it."""
        view = self.window.side.parts_list.view
        model, root = view.model(), QModelIndex()
        heading = next(
            index
            for row in range(model.rowCount(root))
            if (index := model.index(row, 0, root)).data() == shelf
        )
        offer = next(
            index
            for row in range(model.rowCount(heading))
            if (index := model.index(row, 0, heading)).data() == words[0]
            and all(word in index.siblingAtColumn(1).data().replace("\u2009", " ") for word in words[1:])
        )
        if not view.isExpanded(heading):
            self._reach(heading)
            self.double_click(view.viewport(), view.visualRect(heading).center())
        self._reach(offer)
        self.click(view.viewport(), view.visualRect(offer).center())

    def _reach(self, index: QModelIndex) -> None:
        view = self.window.side.parts_list.view
        for _ in range(200):
            rect = view.visualRect(index)
            if rect.isValid() and view.viewport().rect().contains(rect):
                return
            self.wheel(view.viewport(), 1 if rect.top() < 0 else -1)
        raise AssertionError(f"{index.data()} cannot be reached")


def _plain(action: QAction) -> str:
    return action.text().partition("\t")[0].replace("&", "")


def build_by_mouse(window: MainWindow) -> int:
    """Build the amplifier with the pointer alone; answers how often it was clicked, dragged or its wheel turned."""
    mouse = Mouse(window)
    mouse.choose("View", "To the parts to add")
    stock = {
        WINDING: ("Supplies", "Winding, centre tap", "6.3 V 3 A"),
        CHASSIS: ("Reference and joints", "Chassis"),
        ECC83: ("Tubes", ECC83),
        EL84: ("Tubes", EL84),
    }
    for part, at in zip(PARTS, PLACES, strict=True):
        mouse.take(*stock[part])
        mouse.place(*at)
    for ends in (TAP, *STRAPS):
        mouse.wire(*ends)
    mouse.choose("Edit", "Wires", "Draw wires in pairs")
    for first, _second in PAIRS:
        mouse.wire(*first)
    return mouse.strokes
