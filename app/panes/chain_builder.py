"""Where the chain builder stands: a pane beside the findings, open for as long as a chain is being chosen."""

from __future__ import annotations

from PySide6.QtCore import QObject, QPointF, QRectF, Qt
from PySide6.QtWidgets import QDockWidget

from app.canvas.view import SheetView
from app.panes.chain_choices import heated_ids, not_wired
from app.panes.chain_pane import ChainPane
from app.panes.ground import Ground
from app.panes.pane import Pane
from app.theme import Theme

CHAIN = "chain"
_HIGH = 600  # pixels that the pane would like


class ChainBuilder(QObject):
    """Opens the pane over the findings, and gives the keyboard back to the drawing when it is left."""

    def __init__(self, view: SheetView, beside: Pane, theme: Theme, ground: Ground) -> None:
        super().__init__(ground)
        self._view = view
        self._beside = beside
        self._ground = ground
        self._heights: dict[QDockWidget, int] = {}
        self.content = ChainPane(view.sheet_scene, theme, ground)
        self.pane = Pane(CHAIN, self.tr("Chain"), self.content, theme, ground)
        ground.tabifyDockWidget(beside, self.pane)
        self.content.left.connect(self.close)
        self.content.built.connect(self._show_whole)
        ground.rearranged.connect(self._on_rearranged)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.pane.title.set_theme(theme)
        self.content.set_theme(theme)

    def open(self) -> None:
        """Show the pane for the selected sockets; with none selected, for those that are not wired yet."""
        document, selection = self._view.document, self._view.selection
        if not heated_ids(document.sheet, selection.ids):
            selection.set(not_wired(document.sheet, document.catalogue))
        self.pane.bring_forward()
        self._take_room()
        self.content.begin()

    def close(self) -> None:
        """Close the pane; what was beside it comes forward."""
        self.pane.close()
        self._beside.bring_forward()
        self._view.setFocus()

    def _show_whole(self, part_ids: frozenset[str]) -> None:
        """Show the whole sheet where a part that was added lies out of sight."""
        view = self._view
        seen = view.mapToScene(view.viewport().rect()).boundingRect()
        bodies = [view.sheet_scene.layout_.places[part_id].body for part_id in part_ids]
        if not all(seen.contains(QRectF(QPointF(*body[:2]), QPointF(*body[2:]))) for body in bodies):
            view.fit()

    def _take_room(self) -> None:
        """While the pane is open, what stands below its place gives way."""
        ground, area = self._ground, self._ground.dockWidgetArea(self._beside)
        column = [
            dock
            for dock in ground.docks
            if ground.is_in_front(dock) and not dock.isFloating() and ground.dockWidgetArea(dock) == area
        ]
        group = (self._beside, *ground.tabifiedDockWidgets(self._beside))
        place = next((dock for dock in column if dock in group), None)
        if place is None or self.pane not in group or self._heights or place.height() >= _HIGH:
            return
        self._heights = {self._beside if dock is place else dock: dock.height() for dock in column}
        heights = [_HIGH if dock is place else 1 for dock in column]
        ground.resizeDocks(column, heights, Qt.Orientation.Vertical)

    def _on_rearranged(self) -> None:
        """The pane has been closed, however that was done: every place gets its height back."""
        if self._heights and self.pane.isHidden():
            docks, heights = list(self._heights), list(self._heights.values())
            self._heights = {}
            self._ground.resizeDocks(docks, heights, Qt.Orientation.Vertical)
