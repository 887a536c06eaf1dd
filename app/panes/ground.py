"""The ground of the window: the drawing in the middle, and room around it for panes that the user may move."""

from __future__ import annotations

import zlib

from PySide6.QtCore import QByteArray, QEvent, QMargins, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QDockWidget, QMainWindow, QTabBar, QWidget

from app.guard import guarded

STATE_VERSION = 1
SEPARATOR = 7  # pixels between panes, as in the style sheet
USUAL_WIDTH = 440
_CHECK_BYTES = 4

Area = Qt.DockWidgetArea


@guarded
class Ground(QMainWindow):
    """Holds the drawing and the panes. ``rearranged`` comes after panes have been moved, closed or brought back.

    Panes that share a place are shown by tabs in their own title lines, so Qt's tab bars are kept out of sight.
    """

    rearranged = Signal()

    def __init__(self, canvas: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("Ground")
        self.setWindowFlags(Qt.WindowType.Widget)
        self.setDockOptions(QMainWindow.DockOption.AllowNestedDocks | QMainWindow.DockOption.AllowTabbedDocks)
        self.setCorner(Qt.Corner.BottomLeftCorner, Area.LeftDockWidgetArea)
        self.setCorner(Qt.Corner.BottomRightCorner, Area.RightDockWidgetArea)
        self.setCentralWidget(canvas)
        self._canvas = canvas
        self.docks: list[QDockWidget] = []  # every pane, in the order in which they are named
        self._width = 0
        self._share: float | None = None  # of the width that the canvas has, once there are panes
        self._announcing = QTimer(self, singleShot=True, interval=0)
        self._announcing.timeout.connect(self._announce)
        canvas.installEventFilter(self)

    # before there are panes

    def keep_room(self, room: QMargins | None) -> None:
        """Leave the room around the drawing that panes will take: what they took last, or the usual."""
        self.setContentsMargins(room or QMargins(0, 0, USUAL_WIDTH + SEPARATOR, 0))

    def give_room(self) -> None:
        """The panes are there: they take their room themselves."""
        self.setContentsMargins(0, 0, 0, 0)

    @property
    def room(self) -> QMargins:
        """The room around the drawing."""
        canvas = self._canvas.geometry()
        right, bottom = self.width() - canvas.right() - 1, self.height() - canvas.bottom() - 1
        return QMargins(canvas.left(), canvas.top(), right, bottom)

    # panes

    def group_of(self, dock: QDockWidget) -> list[QDockWidget]:
        """The open panes that share the place of one, itself among them."""
        if dock.isFloating():
            return [dock]
        behind = self.tabifiedDockWidgets(dock)
        return [each for each in self.docks if each is dock or (each in behind and not each.isHidden())]

    def is_in_front(self, dock: QDockWidget) -> bool:
        """Whether a pane is open and not behind another one."""
        if dock.isHidden():
            return False
        # Qt keeps what is behind a tab outside the window
        place = dock.geometry()
        return dock.isFloating() or (place.right() >= 0 and place.bottom() >= 0)

    # state

    def state(self) -> QByteArray:
        """Where every pane is, to be remembered."""
        data = bytes(self.saveState(STATE_VERSION).data())
        return QByteArray(zlib.crc32(data).to_bytes(_CHECK_BYTES, "big") + data)

    def restore(self, state: QByteArray) -> bool:
        """Put the panes where they were; False, with nothing changed, where the state is broken or foreign."""
        kept = bytes(state.data())
        check, data = kept[:_CHECK_BYTES], kept[_CHECK_BYTES:]
        if check != zlib.crc32(data).to_bytes(_CHECK_BYTES, "big"):
            return False
        return bool(self.restoreState(QByteArray(data), STATE_VERSION))

    # what happens

    def announce(self) -> None:
        """Say soon, and once, that panes have been moved."""
        self._announcing.start()

    def _announce(self) -> None:
        for bar in self.findChildren(QTabBar, options=Qt.FindChildOption.FindDirectChildrenOnly):
            bar.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # it is out of sight
        self.rearranged.emit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The canvas changes its width while the window does not: the user has chosen another share."""
        if watched is self._canvas and event.type() == QEvent.Type.Resize and self.width() == self._width:
            self._share = self._canvas.width() / max(self.width(), 1)
        return super().eventFilter(watched, event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the canvas at its share of the width."""
        super().resizeEvent(event)
        self._width = -1  # what follows is no choice of the user
        if self._share is not None:
            self._widen_canvas(round(self.width() * self._share) - self._canvas.width())
        self._width = self.width()

    def _widen_canvas(self, by: int) -> None:
        """Let the panes at the sides give width to the canvas, or take some, each after its own width."""
        columns = (self._first(Area.LeftDockWidgetArea), self._first(Area.RightDockWidgetArea))
        docks = [dock for dock in columns if dock is not None]
        total = max(sum(dock.width() for dock in docks), 1)
        widths = [max(dock.width() - round(by * dock.width() / total), 1) for dock in docks]
        if docks and by:
            self.resizeDocks(docks, widths, Qt.Orientation.Horizontal)

    def _first(self, area: Area) -> QDockWidget | None:
        """A pane in front at a side."""
        return next(
            (
                dock
                for dock in self.docks
                if not dock.isFloating() and self.dockWidgetArea(dock) == area and self.is_in_front(dock)
            ),
            None,
        )
