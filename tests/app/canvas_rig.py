"""A canvas on a small sheet with real pointer events, for the tests of the canvas."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas.scene import SheetScene
from app.canvas.view import SheetView
from app.document import Document
from app.selection import Selection
from app.theme import LIGHT, Theme, load_fonts
from app.viewpoint import Viewpoint
from core.catalogue import Catalogue
from core.catalogue.types import LampType, Section, TubeType
from core.sheet import Chassis, Sheet, Tube, Winding, Wire

NONE = Qt.KeyboardModifier.NoModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier
ALT = Qt.KeyboardModifier.AltModifier
LEFT = Qt.MouseButton.LeftButton

CATALOGUE = Catalogue(
    tubes={
        "EL84": TubeType(designation="EL84", base="B9A", sections=(Section(("4", "5"), 6.3, 0.76),)),
        "ECC83": TubeType(
            designation="ECC83",
            base="B9A",
            equivalents=("12AX7",),
            sections=(Section(("4", "9"), 6.3, 0.15), Section(("9", "5"), 6.3, 0.15)),
        ),
        "PL500": TubeType(
            designation="PL500",
            base="magnoval",
            rating_class="current",
            sections=(Section(("4", "5"), 27, 0.3),),
        ),
    },
    lamps={"#47": LampType(designation="#47", rated_v=6.3, rated_a=0.15)},
)


def wire(wire_id: str, start: str, end: str, **fields) -> Wire:
    return Wire(id=wire_id, start=start, end=end, **({"awg": 20, "length_m": 0.3} | fields))


def small_sheet() -> Sheet:
    """A winding, two tubes that it heats, and a chassis."""
    return Sheet(
        title="small",
        parts=(
            Winding(id="T1", rated_v=6.3, rated_a=2.0, at=(-200, 0)),
            Tube(id="V1", type="EL84", at=(0, 0)),
            Tube(id="V2", type="ECC83", at=(220, 0)),
            Chassis(id="E1", at=(-100, 160)),
        ),
        wires=(
            wire("w1", "T1.a", "V1.4"),
            wire("w2", "T1.b", "V1.5"),
            wire("w3", "T1.b", "E1.e"),
        ),
    )


def rows_sheet(count: int) -> Sheet:
    """Many sockets in rows, each heated from the one before it."""
    columns = max(round(count**0.5), 1)
    parts = tuple(
        Tube(id=f"V{i}", type="EL84", at=(200.0 * (i % columns), 200.0 * (i // columns)))
        for i in range(count)
    )
    wires = tuple(
        wire(f"w{i}p{pin}", f"V{i}.{pin}", f"V{i + 1}.{pin}", length_m=0.2)
        for i in range(count - 1)
        for pin in (4, 5)
        if (i + 1) % columns
    )
    return Sheet(title="rows", parts=parts, wires=wires)


@dataclass
class Rig:
    """Everything a test of the canvas touches, and the pointer in units of the sheet."""

    document: Document
    selection: Selection
    viewpoint: Viewpoint
    scene: SheetScene
    view: SheetView

    @property
    def sheet(self) -> Sheet:
        return self.document.sheet

    @property
    def undo_names(self) -> list[str]:
        stack = self.document.undo_stack
        return [stack.text(i) for i in range(stack.count())]

    def on_screen(self, x: float, y: float) -> QPoint:
        return self.view.mapFromScene(QPointF(x, y))

    def pin(self, terminal: str) -> tuple[float, float]:
        point = self.scene.layout_.terminal_point(terminal)
        assert point is not None
        return point

    def send(self, kind: QEvent.Type, x: float, y: float, button, held, modifiers=NONE) -> None:
        at = QPointF(self.on_screen(x, y))
        viewport = self.view.viewport()
        event = QMouseEvent(kind, at, QPointF(viewport.mapToGlobal(at.toPoint())), button, held, modifiers)
        QApplication.sendEvent(viewport, event)

    def press(self, x: float, y: float, modifiers=NONE, button=LEFT) -> None:
        self.send(QEvent.Type.MouseButtonPress, x, y, button, button, modifiers)

    def move(self, x: float, y: float, modifiers=NONE, button=LEFT) -> None:
        self.send(QEvent.Type.MouseMove, x, y, Qt.MouseButton.NoButton, button, modifiers)

    def release(self, x: float, y: float, modifiers=NONE, button=LEFT) -> None:
        self.send(QEvent.Type.MouseButtonRelease, x, y, button, Qt.MouseButton.NoButton, modifiers)

    def drag(self, start: tuple[float, float], end: tuple[float, float], modifiers=NONE, button=LEFT) -> None:
        self.press(*start, modifiers, button)
        for share in (0.2, 0.6, 1.0):
            x = start[0] + (end[0] - start[0]) * share
            y = start[1] + (end[1] - start[1]) * share
            self.move(x, y, modifiers, button)
        self.release(*end, modifiers, button)

    def click(self, x: float, y: float, modifiers=NONE) -> None:
        self.press(x, y, modifiers)
        self.release(x, y, modifiers)

    def key(self, key, modifiers=NONE) -> None:
        QTest.keyClick(self.view, key, modifiers)


def told_by(rig: Rig) -> list[str]:
    """What the canvas tells its user from now on."""
    said: list[str] = []
    rig.view.told.connect(said.append)
    return said


def make_rig(qtbot, sheet: Sheet, catalogue: Catalogue = CATALOGUE, theme: Theme = LIGHT) -> Rig:
    """A visible canvas at one to one, 1000 by 700, the origin in its middle."""
    load_fonts()
    document = Document(sheet, catalogue)
    selection = Selection(document)
    viewpoint = Viewpoint(sheet.mains.nominal_v, document)
    scene = SheetScene(document, selection, viewpoint, theme, document)
    view = SheetView(scene)
    view.document_owner = document  # the document lives as long as the view
    qtbot.addWidget(view)
    view.resize(1000, 700)
    view.show()
    qtbot.waitExposed(view)
    view.zoom_reset()
    view.centerOn(0.0, 0.0)
    view.setFocus()
    return Rig(document, selection, viewpoint, scene, view)


Maker = Callable[..., Rig]
