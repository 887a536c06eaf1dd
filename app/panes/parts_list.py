"""The parts list: everything that can be put on the sheet, to drag there or to add with Return."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractItemModel,
    QMimeData,
    QModelIndex,
    QObject,
    QSortFilterProxyModel,
    Qt,
    Signal,
)
from PySide6.QtGui import QDrag, QKeyEvent, QPalette, QPixmap, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHeaderView,
    QLineEdit,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from app.guard import guarded
from app.panes.controls import ground_style, scroll_bar_style
from app.panes.stock import Offer, shelves
from app.theme import Theme, palette
from core.catalogue import Catalogue

_NAMES = 150
_PLAIN_SHELVES = 3  # supplies, droppers and references: kinds with figures, not types
MIME_TYPE = "application/x-heaterloom-part"
_OFFER_ROLE = Qt.ItemDataRole.UserRole + 1
_FOUND_BY_ROLE = Qt.ItemDataRole.UserRole + 2
_OTHER_NAME_ROLE = Qt.ItemDataRole.UserRole + 3


class StockModel(QStandardItemModel):
    """Shelves with offers below them; an offer can be dragged as a part in JSON."""

    def __init__(self, catalogue: Catalogue, parent: QObject | None = None) -> None:
        super().__init__(parent)
        for shelf in shelves(catalogue):
            heading = QStandardItem(shelf.name)
            heading.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            blank = QStandardItem("")
            blank.setFlags(heading.flags())
            for offer in shelf.offers:
                heading.appendRow(self._row(offer))
            self.appendRow([heading, blank])

    @staticmethod
    def _row(offer: Offer) -> list[QStandardItem]:
        flags = (
            Qt.ItemFlag.ItemIsEnabled
            | Qt.ItemFlag.ItemIsSelectable
            | Qt.ItemFlag.ItemIsDragEnabled
            | Qt.ItemFlag.ItemNeverHasChildren
        )
        items = [QStandardItem(offer.name), QStandardItem(offer.about)]
        for item in items:
            item.setFlags(flags)
            item.setData(json.dumps(offer.part), _OFFER_ROLE)
            item.setData(offer.found_by, _FOUND_BY_ROLE)
            item.setData(offer.is_other_name, _OTHER_NAME_ROLE)
        items[0].setAccessibleText(f"{offer.name}, {offer.about}")
        return items

    def mimeTypes(self) -> list[str]:
        """The one type that the drawing takes."""
        return [MIME_TYPE]

    def mimeData(self, indexes: Sequence[QModelIndex]) -> QMimeData:
        """The first dragged offer as JSON of a part without id and place."""
        data = QMimeData()
        for index in indexes:
            text = index.data(_OFFER_ROLE)
            if text:
                data.setData(MIME_TYPE, str(text).encode())
                break
        return data


class StockFilter(QSortFilterProxyModel):
    """Lets through offers that hold every typed word, and the shelves they stand on."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._words: tuple[str, ...] = ()
        self.setRecursiveFilteringEnabled(True)

    def set_text(self, text: str) -> None:
        """Look for other words."""
        words = tuple(text.casefold().split())
        if words != self._words:
            self._words = words
            self.invalidate()

    def filterAcceptsRow(self, source_row: int, source_parent: QModelIndex) -> bool:  # type: ignore[override]
        """Whether an offer holds every word; shelves pass only with what stands on them.

        A type under its other names is offered only to those who look for it.
        """
        model: QAbstractItemModel = self.sourceModel()
        index = model.index(source_row, 0, source_parent)
        found_by = index.data(_FOUND_BY_ROLE)
        if found_by is None:
            return not self._words
        if not self._words:
            return not index.data(_OTHER_NAME_ROLE)
        return all(word in found_by for word in self._words)


@guarded
class StockView(QTreeView):
    """The tree. ``taken`` comes for Return on an offer, ``left`` for Escape."""

    taken = Signal(QModelIndex)
    left = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return takes an offer and opens or closes a shelf."""
        index = self.currentIndex()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and index.isValid():
            self.taken.emit(index)
            event.accept()
            return
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        super().keyPressEvent(event)

    def startDrag(self, supported_actions: Qt.DropAction) -> None:
        """Drag without a picture of the row: the drawing shows an outline of the part under the pointer."""
        data = self.model().mimeData(self.selectedIndexes())
        if data is None or not data.hasFormat(MIME_TYPE):
            return
        picture = QPixmap(1, 1)
        picture.fill(Qt.GlobalColor.transparent)
        drag = QDrag(self)
        drag.setMimeData(data)
        drag.setPixmap(picture)
        drag.exec(supported_actions, Qt.DropAction.CopyAction)


class PartsList(QWidget):
    """A filter line above the list. ``add_requested`` carries a part of the file without id and at.

    ``picked`` carries one that was clicked, to be placed by a second click on the sheet; ``put_back`` comes when it
    is not wanted after all.
    """

    add_requested = Signal(dict)
    picked = Signal(dict)
    put_back = Signal()

    def __init__(self, catalogue: Catalogue, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.filter = QLineEdit(self)
        self.filter.setPlaceholderText(self.tr("find: ECC83, 6.3 V winding, relay…"))
        self.filter.setAccessibleName(self.tr("Find a part"))
        self.filter.setClearButtonEnabled(False)
        self.view = StockView(self)
        self.view.setAccessibleName(self.tr("Parts that can be added"))
        self.proxy = StockFilter(self)
        self.view.setModel(self.proxy)
        self._set_up_view()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 2, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(self.filter)
        layout.addWidget(self.view, 1)
        self.filter.textChanged.connect(self._on_filter)
        self.filter.returnPressed.connect(self._take_first)
        self.view.taken.connect(self._on_taken)
        self.view.clicked.connect(self._on_clicked)
        self.view.doubleClicked.connect(self._on_taken)
        self.view.left.connect(self.put_back)
        self.set_catalogue(catalogue)
        self.set_theme(theme)

    def _set_up_view(self) -> None:
        view = self.view
        view.setHeaderHidden(True)
        view.setFrameShape(QFrame.Shape.NoFrame)
        view.setUniformRowHeights(True)
        view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        view.setDragEnabled(True)
        view.setDragDropMode(QAbstractItemView.DragDropMode.DragOnly)
        view.setExpandsOnDoubleClick(False)
        view.setIndentation(16)
        view.setTextElideMode(Qt.TextElideMode.ElideRight)

    def _widest_name(self) -> int:
        """Room for the names of what has no type; those of types are short."""
        model, metrics = self.proxy.sourceModel(), self.view.fontMetrics()
        rows = [(row, model.index(row, 0)) for row in range(_PLAIN_SHELVES)]
        names = [
            str(model.index(row, 0, shelf).data())
            for _, shelf in rows
            for row in range(model.rowCount(shelf))
        ]
        widest = max((metrics.horizontalAdvance(name) for name in names), default=0)
        return widest + 2 * self.view.indentation() + 6

    def set_catalogue(self, catalogue: Catalogue) -> None:
        """Offer what another catalogue knows."""
        old = self.proxy.sourceModel()
        self.proxy.setSourceModel(StockModel(catalogue, self))
        if old is not None:
            old.deleteLater()
        header = self.view.header()
        header.setStretchLastSection(True)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Fixed)
        header.resizeSection(0, max(_NAMES, self._widest_name()))
        for row in range(self.proxy.rowCount()):
            self.view.setFirstColumnSpanned(row, QModelIndex(), True)
        self._on_filter(self.filter.text())

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        colours = palette(theme)
        colours.setColor(QPalette.ColorRole.Base, theme.colour("chrome"))
        self.view.setFont(theme.font(12))
        self.view.setStyleSheet(
            ground_style("QTreeView", theme) + "QTreeView::item { height: 22px; }" + scroll_bar_style(theme)
        )
        # after the style sheet, which would bring back the palette it has seen first
        self.view.setPalette(colours)
        self.filter.setFont(theme.font(12))
        self.filter.setStyleSheet(
            f"QLineEdit {{ background: {theme.surface}; color: {theme.ink}; border: 1px solid {theme.edge};"
            f" border-radius: 4px; padding: 4px 7px; }}"
            f"QLineEdit:focus {{ border: 2px solid {theme.accent}; padding: 3px 6px; }}"
        )

    def focus_filter(self) -> None:
        """Put the keyboard into the filter line."""
        self.filter.setFocus()
        self.filter.selectAll()

    def _on_filter(self, text: str) -> None:
        self.proxy.set_text(text)
        if text.strip():
            self.view.expandAll()
        else:
            self.view.collapseAll()
            for row in range(3):
                self.view.expand(self.proxy.index(row, 0))

    def _take_first(self) -> None:
        """Return in the filter line adds the first offer that is left."""
        for row in range(self.proxy.rowCount()):
            shelf = self.proxy.index(row, 0)
            if self.filter.text().strip() and self.proxy.rowCount(shelf):
                self._on_taken(self.proxy.index(0, 0, shelf))
                return

    def _on_clicked(self, index: QModelIndex) -> None:
        text = index.data(_OFFER_ROLE)
        if text:
            self.picked.emit(json.loads(str(text)))

    def _on_taken(self, index: QModelIndex) -> None:
        text = index.data(_OFFER_ROLE)
        if text:
            part: dict[str, Any] = json.loads(str(text))
            self.add_requested.emit(part)
        else:
            self.view.setExpanded(index, not self.view.isExpanded(index))
