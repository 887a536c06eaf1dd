"""The right-hand column: findings, properties or the parts list above, the tables below."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QSplitter, QStackedWidget, QVBoxLayout, QWidget

from app.document import Document
from app.panes.controls import FlatTabs
from app.panes.findings_pane import FindingsPane
from app.panes.parts_list import PartsList
from app.panes.properties import PropertiesPane
from app.panes.tables import TablesPane
from app.selection import Selection
from app.theme import Theme
from app.viewpoint import Viewpoint

FINDINGS, PROPERTIES, ADD = range(3)
WIDTH = 440
LEAST_WIDTH = 340


class SideColumn(QWidget):
    """Holds the panes. Selecting on the drawing or in a table brings the properties forward.

    Choosing a finding does not, so that the list can be gone through; when nothing is selected any more the
    findings come back, if the properties had come forward by themselves.
    """

    def __init__(
        self,
        document: Document,
        selection: Selection,
        viewpoint: Viewpoint,
        theme: Theme,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setObjectName("Pane")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._document = document
        self._selection = selection
        self._came_by_itself = False
        self._catalogue = document.catalogue
        words = (self.tr("Findings"), self.tr("Properties"), self.tr("Add parts"))
        self.tabs = FlatTabs(words, self.tr("Side pane"), theme, self)
        self.findings = FindingsPane(document, selection, theme, self)
        self.properties = PropertiesPane(document, selection, theme, self)
        self.parts_list = PartsList(document.catalogue, theme, self)
        self.tables = TablesPane(document, selection, viewpoint, theme, self)
        self._arrange()
        self.tabs.currentChanged.connect(self.stack.setCurrentIndex)
        self.tabs.tabBarClicked.connect(self._on_tab_clicked)
        self.findings.count_changed.connect(self._show_count)
        selection.changed.connect(self._on_selection)
        document.changed.connect(self._on_catalogue)
        document.replaced.connect(self._on_catalogue)
        self.findings.refresh()

    def _arrange(self) -> None:
        self.stack = QStackedWidget(self)
        for pane in (self.findings, self.properties, self.parts_list):
            self.stack.addWidget(pane)
        above = QWidget(self)
        layout = QVBoxLayout(above)
        layout.setContentsMargins(0, 0, 0, 4)
        layout.setSpacing(6)
        layout.addWidget(self.tabs)
        layout.addWidget(self.stack, 1)
        self.splitter = QSplitter(Qt.Orientation.Vertical, self)
        self.splitter.setChildrenCollapsible(False)
        self.splitter.addWidget(above)
        self.splitter.addWidget(self.tables)
        self.splitter.setStretchFactor(0, 3)
        self.splitter.setStretchFactor(1, 2)
        self.splitter.setHandleWidth(7)
        above.setMinimumHeight(150)
        self.tables.setMinimumHeight(120)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(10, 4, 8, 8)
        outer.addWidget(self.splitter)
        self.setMinimumWidth(LEAST_WIDTH)

    def sizeHint(self) -> QSize:
        """Wide enough for the heater table, narrow enough to leave the drawing its room."""
        return QSize(WIDTH, 660)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.tabs.set_theme(theme)
        self.findings.set_theme(theme)
        self.properties.set_theme(theme)
        self.parts_list.set_theme(theme)
        self.tables.set_theme(theme)

    def show_pane(self, number: int) -> None:
        """Bring findings, properties or the parts list forward, as if its tab had been clicked."""
        self._came_by_itself = False
        self.tabs.setCurrentIndex(number)

    def show_findings(self) -> None:
        """Bring the findings forward."""
        self.show_pane(FINDINGS)

    def show_properties(self) -> None:
        """Bring the properties forward, ready to type."""
        self.show_pane(PROPERTIES)
        self.properties.focus_first()

    def show_parts(self) -> None:
        """Bring the parts list forward, ready to type."""
        self.show_pane(ADD)
        self.parts_list.focus_filter()

    def _on_tab_clicked(self, _number: int) -> None:
        self._came_by_itself = False

    def _show_count(self, count: int) -> None:
        word = self.tr("Findings")
        self.tabs.setTabText(FINDINGS, f"{word} {count}" if count else word)

    def _on_selection(self, ids: frozenset[str]) -> None:
        current = self.tabs.currentIndex()
        if ids and current == FINDINGS and not self.findings.showing:
            self.tabs.setCurrentIndex(PROPERTIES)
            self._came_by_itself = True
        elif not ids and current == PROPERTIES and self._came_by_itself:
            self.tabs.setCurrentIndex(FINDINGS)
            self._came_by_itself = False

    def _on_catalogue(self) -> None:
        """The parts list offers a sheet's own types as well."""
        if self._document.catalogue is not self._catalogue:
            self._catalogue = self._document.catalogue
            self.parts_list.set_catalogue(self._catalogue)
