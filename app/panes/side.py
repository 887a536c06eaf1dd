"""The panes around the drawing: findings, properties, what can be added, and the tables."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QObject, Qt

from app.document import Document
from app.panes.findings_pane import FindingsPane
from app.panes.ground import USUAL_WIDTH, Area, Ground
from app.panes.pane import Pane
from app.panes.parts_list import PartsList
from app.panes.properties import PropertiesPane
from app.panes.tables import TablesPane
from app.proposal import Proposal
from app.selection import Selection
from app.theme import Theme
from app.viewpoint import Viewpoint

if TYPE_CHECKING:
    from app.canvas.view import SheetView
    from app.panes.chain_builder import ChainBuilder

FINDINGS, PROPERTIES, ADD, TABLES = "findings", "properties", "parts", "tables"


class SidePanes(QObject):
    """Holds the panes. Selecting on the drawing or in a table brings the properties before the findings.

    Choosing a finding does not, so that the list can be gone through; when nothing is selected any more the
    findings come back, if the properties had come forward by themselves.
    """

    def __init__(
        self,
        document: Document,
        selection: Selection,
        viewpoint: Viewpoint,
        theme: Theme,
        ground: Ground,
    ) -> None:
        super().__init__(ground)
        self.ground = ground
        self._document = document
        self._selection = selection
        self._came_by_itself = False
        self._catalogue = document.catalogue
        self._theme = theme
        self._builder: ChainBuilder | None = None
        self.findings = FindingsPane(document, selection, theme, ground)
        self.properties = PropertiesPane(document, selection, theme, ground)
        self.properties.follow(viewpoint)
        self.parts_list = PartsList(document.catalogue, theme, ground)
        self.tables = TablesPane(document, selection, viewpoint, theme, ground)
        self.panes = {
            FINDINGS: Pane(FINDINGS, self.tr("Findings"), self.findings, theme, ground),
            PROPERTIES: Pane(PROPERTIES, self.tr("Properties"), self.properties, theme, ground),
            ADD: Pane(ADD, self.tr("Add parts"), self.parts_list, theme, ground),
            TABLES: Pane(TABLES, self.tr("Tables"), self.tables, theme, ground, self.tables.tabs),
        }
        self.findings.setMinimumHeight(110)
        self.tables.setMinimumHeight(90)
        self.restore_usual()
        for pane in self.panes.values():
            pane.picked.connect(self._on_picked)
        ground.rearranged.connect(self._show_groups)
        self.findings.count_changed.connect(self.panes[FINDINGS].set_count)
        selection.changed.connect(self._on_selection)
        document.changed.connect(self._on_catalogue)
        document.replaced.connect(self._on_catalogue)
        self.findings.refresh()
        self._show_groups()

    def follow(self, proposal: Proposal) -> None:
        """Show what is considered, and have considered what a value is dragged to."""
        self.findings.follow(proposal)
        self.properties.proposal = proposal

    # places

    def restore_usual(self) -> None:
        """Findings, properties and what can be added in one place to the right, the tables below them."""
        closed = [] if self._builder is None else [self._builder.pane]
        for pane in closed:
            pane.close()
        self.ground.rearranged.emit()  # whoever had taken room from others gives it back first
        for pane in (*self.panes.values(), *closed):
            pane.setFloating(False)
            self.ground.removeDockWidget(pane)
        first, *others, tables = self.panes.values()
        self.ground.addDockWidget(Area.RightDockWidgetArea, first)
        self.ground.splitDockWidget(first, tables, Qt.Orientation.Vertical)
        together = (first, *others, *closed)
        for before, pane in pairwise(together):
            self.ground.tabifyDockWidget(before, pane)
        for pane in self.panes.values():
            pane.show()
        for pane in closed:
            pane.hide()
        self.ground.resizeDocks([first, tables], [USUAL_WIDTH, USUAL_WIDTH], Qt.Orientation.Horizontal)
        self.ground.resizeDocks([first, tables], [3, 2], Qt.Orientation.Vertical)
        first.raise_()
        self._came_by_itself = False

    def restore(self, state: QByteArray | None) -> None:
        """Put the panes where they were; without a usable state they stay in their usual places."""
        if state is not None:
            # out of the usual places first: panes in both would need more room for a moment, and the window grow
            for pane in self.panes.values():
                pane.hide()
            if not self.ground.restore(state):
                self.restore_usual()
            # a pane in a window of its own would take the keyboard as the last one that opened
            self.ground.window().activateWindow()
        self._show_groups()

    def _show_groups(self) -> None:
        for pane in self.panes.values():
            pane.show_group()
        if self._builder is not None:
            self._builder.pane.show_group()

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        if self._builder is not None:
            self._builder.set_theme(theme)
        for pane in self.panes.values():
            pane.title.set_theme(theme)
        self.findings.set_theme(theme)
        self.properties.set_theme(theme)
        self.parts_list.set_theme(theme)
        self.tables.set_theme(theme)

    # opening, closing, going there

    def is_open(self, key: str) -> bool:
        """Whether a pane is open, be it behind another one."""
        return not self.panes[key].isHidden()

    def is_in_front(self, key: str) -> bool:
        """Whether a pane can be seen."""
        return self.panes[key].is_in_front

    def toggle(self, key: str) -> None:
        """Close a pane, or bring it back."""
        if self.is_open(key):
            self.panes[key].close()
        else:
            self.show_pane(key)

    def show_pane(self, key: str) -> None:
        """Open a pane and bring it forward, as if its name had been clicked."""
        self._came_by_itself = False
        self.panes[key].bring_forward()

    def show_findings(self) -> None:
        """Bring the findings forward, ready to be walked through."""
        self.show_pane(FINDINGS)
        self.findings.list.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def show_properties(self) -> None:
        """Bring the properties forward, ready to type."""
        self.show_pane(PROPERTIES)
        self.properties.focus_first()

    def show_parts(self) -> None:
        """Bring the parts list forward, ready to type."""
        self.show_pane(ADD)
        self.parts_list.focus_filter()

    def show_chain(self, view: SheetView) -> None:
        """Open the chain builder, which is made when it is first asked for."""
        if self._builder is None:
            from app.panes.chain_builder import ChainBuilder  # noqa: PLC0415 - numerics come with it

            self._builder = ChainBuilder(view, self.panes[FINDINGS], self._theme, self.ground)
        self._came_by_itself = False
        self._builder.open()

    def show_tables(self) -> None:
        """Bring the tables forward, the keyboard in the one on show."""
        self.show_pane(TABLES)
        self.tables.views[self.tables.tabs.currentIndex()].setFocus(Qt.FocusReason.ShortcutFocusReason)

    # following

    def _on_picked(self, _pane: object) -> None:
        self._came_by_itself = False

    def _on_selection(self, ids: frozenset[str]) -> None:
        findings, properties = self.panes[FINDINGS], self.panes[PROPERTIES]
        if properties not in self.ground.group_of(findings):
            return
        if ids and findings.is_in_front and not self.findings.showing:
            properties.bring_forward()
            self._came_by_itself = True
        elif not ids and properties.is_in_front and self._came_by_itself:
            findings.bring_forward()
            self._came_by_itself = False

    def _on_catalogue(self) -> None:
        """The parts list offers a sheet's own types as well."""
        if self._document.catalogue is not self._catalogue:
            self._catalogue = self._document.catalogue
            self.parts_list.set_catalogue(self._catalogue)
