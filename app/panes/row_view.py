"""A table of rows: quiet lines, marks as shapes, figures to the right, and a selection that is shared."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import (
    QItemSelection,
    QItemSelectionModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QFontMetrics, QKeyEvent, QPainter, QPaintEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QFrame,
    QHeaderView,
    QLineEdit,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from app.canvas.telling import announce
from app.guard import guarded
from app.panes.completing import Completer
from app.panes.controls import ground_style, scroll_bar_style
from app.panes.marks import paint_state
from app.panes.models import (
    CELL_ROLE,
    OFFERING_ROLE,
    OWNER_ROLE,
    SAMPLE_ROLE,
    Cell,
    Row,
    RowsModel,
    RowsProxy,
)
from app.theme import Theme, palette

_ROW_HEIGHT = 24
_PAD = 3
_NARROWEST = 18
_MARK_WIDTH = 20
_TO_THE_LEFT = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
_TO_THE_RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
AnyIndex = QModelIndex | QPersistentModelIndex


@lru_cache(maxsize=8192)
def _text_width(text: str, theme: Theme) -> int:
    """Pixels of a text in a cell; kept, as the same figures come again and again."""
    return QFontMetrics(theme.font(12)).horizontalAdvance(text)


def _cell_width(cell: Cell, theme: Theme) -> int:
    """Room for a mark, or for the text with a little air at both sides."""
    return _MARK_WIDTH if cell.state is not None else _text_width(cell.text, theme) + 2 * _PAD


@guarded
class RowDelegate(QStyledItemDelegate):
    """Paints one cell; where a cell has a state it is a shape. Columns that are ``numeric`` stand to the right."""

    def __init__(self, theme: Theme, numeric: frozenset[int], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.theme = theme
        self.numeric = numeric

    def sizeHint(self, _option: QStyleOptionViewItem, index: AnyIndex) -> QSize:
        """Room for what a cell shows."""
        return QSize(_cell_width(index.data(CELL_ROLE), self.theme), _ROW_HEIGHT)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: AnyIndex) -> None:
        """Paint the ground of a selected row, then the mark or the text."""
        theme, rect = self.theme, QRectF(option.rect)
        painter.save()
        if option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(rect, theme.brush("selection"))
        cell: Cell = index.data(CELL_ROLE)
        if cell.state is not None:
            paint_state(painter, rect.center(), 11, cell.state, theme)
        else:
            self._paint_text(painter, rect, cell.text, index.column() in self.numeric)
        focused = QStyle.StateFlag.State_HasFocus | QStyle.StateFlag.State_KeyboardFocusChange
        if option.state & focused == focused:
            painter.setPen(theme.pen("accent", 1))
            painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5))
        painter.restore()

    def _paint_text(self, painter: QPainter, rect: QRectF, text: str, is_numeric: bool) -> None:
        font = self.theme.font(12)
        painter.setFont(font)
        painter.setPen(self.theme.colour("ink"))
        rect = rect.adjusted(_PAD, 0, -_PAD, 0)
        if _text_width(text, self.theme) > int(rect.width()) + 1:
            text = QFontMetrics(font).elidedText(text, Qt.TextElideMode.ElideRight, int(rect.width()) + 1)
        painter.drawText(rect, _TO_THE_RIGHT if is_numeric else _TO_THE_LEFT, text)

    def createEditor(self, parent: QWidget, _option: QStyleOptionViewItem, index: AnyIndex) -> QWidget:
        """A line to type in, with offers below it where the column has any."""
        editor = QLineEdit(parent)
        editor.setFont(self.theme.font(12))
        editor.setFrame(False)
        editor.setAccessibleName(str(index.data(Qt.ItemDataRole.AccessibleTextRole)))
        offering = index.data(OFFERING_ROLE)
        if offering is not None:
            Completer(offering, editor)
        return editor

    def mark_refused(self, editor: QWidget, sentence: str) -> None:
        """Show that a text cannot be used; a screen reader says why."""
        line = self.theme.over
        editor.setStyleSheet(f"QLineEdit {{ border: 1px solid {line}; background: {self.theme.surface}; }}")
        editor.setAccessibleDescription(sentence)
        announce(editor, sentence)


@guarded
class RowView(QTableView):
    """Shows a table of rows.

    ``picked`` carries the ids of the rows that the user selects, ``activated_ids`` those of Return or of a double
    click where nothing can be edited; ``delete_wanted`` those to be deleted. ``add_wanted`` comes for Insert,
    ``released`` when a refused text was given up. A text that is refused stays in its editor, which stays open.
    """

    activated_ids = Signal(object)
    picked = Signal(object)
    delete_wanted = Signal(object)
    add_wanted = Signal()
    released = Signal()

    def __init__(self, model: RowsModel, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows = model
        self.empty_text = ""
        self.own_widths: dict[int, int] = {}  # pixels of the columns that the user has drawn to a width
        self._is_fitting = False
        self._following = False
        self._refusal = ""
        numeric = frozenset(number for number, column in enumerate(model.columns) if column.numeric)
        self.delegate = RowDelegate(theme, numeric, self)
        self.proxy = RowsProxy(self)
        self.proxy.setSourceModel(model)
        self.setModel(self.proxy)
        self.setItemDelegate(self.delegate)
        self._set_up()
        self.set_theme(theme)
        self.selectionModel().selectionChanged.connect(self._on_selected)
        self.doubleClicked.connect(self._on_double_click)
        self.horizontalHeader().sectionResized.connect(self._on_resized)
        self.horizontalHeader().sectionHandleDoubleClicked.connect(self._forget_width)
        model.refused.connect(self._on_refused)

    def _set_up(self) -> None:
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setSortingEnabled(True)
        self.proxy.sort(-1)
        self.setWordWrap(False)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.EditKeyPressed | QAbstractItemView.EditTrigger.DoubleClicked
        )
        self.setTabKeyNavigation(False)
        rows = self.verticalHeader()
        rows.hide()
        rows.setMinimumSectionSize(_ROW_HEIGHT)
        rows.setDefaultSectionSize(_ROW_HEIGHT)
        rows.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        head = self.horizontalHeader()
        head.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        head.setSortIndicatorClearable(True)
        head.setHighlightSections(False)
        head.setMinimumSectionSize(_NARROWEST)
        head.setStretchLastSection(True)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.delegate.theme = theme
        colours = palette(theme)
        colours.setColor(QPalette.ColorRole.Base, theme.colour("chrome"))
        self.setFont(theme.font(12))
        self.setStyleSheet(ground_style("QTableView", theme) + scroll_bar_style(theme))
        # after the style sheet, which would bring back the palette it has seen first
        self.setPalette(colours)
        self.horizontalHeader().setFont(theme.font(11))
        self.horizontalHeader().setStyleSheet(
            f"QHeaderView {{ background: {theme.chrome}; }}"
            f"QHeaderView::section {{ background: {theme.chrome}; color: {theme.soft}; border: none;"
            f" border-bottom: 1px solid {theme.line}; padding: 3px {_PAD}px; }}"
            "QHeaderView::up-arrow, QHeaderView::down-arrow { width: 0; height: 0; }"
        )
        self.fit_columns()

    def fit_columns(self) -> None:
        """Make each column as wide as what stands in it; what is left over goes between them.

        Without rows the headings share the width that there is.
        """
        head, count = self.horizontalHeader(), self.proxy.columnCount()
        if not count:
            return
        metrics = QFontMetrics(self.delegate.theme.font(11))
        cells = QFontMetrics(self.delegate.theme.font(12))
        widths: list[int] = []
        for column in range(count):
            heading = metrics.horizontalAdvance(self._heading(column, Qt.ItemDataRole.DisplayRole))
            sample = cells.horizontalAdvance(self._heading(column, SAMPLE_ROLE))
            content = max(self._content_width(column), sample + 2 * _PAD) if self._has_rows else 0
            widths.append(max(content, heading + 2 * _PAD, _NARROWEST))
        if not self._has_rows:
            widths = _squeezed(widths, self.viewport().width())
        self._is_fitting = True
        for column, share in enumerate(self._shares(sum(widths), count)):
            head.resizeSection(column, self.own_widths.get(column, widths[column] + share))
        self._is_fitting = False

    def _on_resized(self, column: int, _before: int, width: int) -> None:
        """Note a width that the user draws; the last column takes what is left, whatever the user does."""
        if not self._is_fitting and column < self.proxy.columnCount() - 1:
            self.own_widths[column] = width

    def _forget_width(self, column: int) -> None:
        """A double click on its border fits a column to what stands in it again."""
        self.own_widths.pop(column, None)
        self.fit_columns()

    @property
    def _has_rows(self) -> bool:
        return self.proxy.rowCount() > 0

    def _heading(self, column: int, role: int) -> str:
        return str(self.proxy.headerData(column, Qt.Orientation.Horizontal, role) or "")

    def _shares(self, total: int, count: int) -> list[int]:
        """What each column takes of the width that is left over."""
        texts = [self._heading(column, Qt.ItemDataRole.DisplayRole) != "" for column in range(count)]
        share = min(max(self.viewport().width() - total, 0) // max(sum(texts), 1), 28)
        return [share if text else 0 for text in texts]

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the width out anew."""
        super().resizeEvent(event)
        self.fit_columns()

    def show_rows(self, rows: tuple[Row, ...]) -> bool:
        """Show other rows; columns are fitted anew where one is too narrow for them.

        Answers whether they are other ones, and not only the same with other cells: then none is selected any more.
        """
        before, had_rows = self.rows.rows, self._has_rows
        self._following = True
        try:
            self.rows.set_rows(rows)
        finally:
            self._following = False
        if self._has_rows != had_rows or self._is_too_narrow(before, rows):
            self.fit_columns()
        return [row.key for row in rows] != [row.key for row in before]

    def _content_width(self, column: int) -> int:
        """Pixels of the widest cell of a column."""
        theme = self.delegate.theme
        return max((_cell_width(row.cells[column], theme) for row in self.rows.rows), default=0)

    def _is_too_narrow(self, before: tuple[Row, ...], rows: tuple[Row, ...]) -> bool:
        """Whether a text that was not there before has no room in its column."""
        head, theme = self.horizontalHeader(), self.delegate.theme
        for column in range(head.count()):
            if column in self.own_widths:
                continue
            new = {row.cells[column].text for row in rows} - {row.cells[column].text for row in before}
            if any(_text_width(text, theme) + 2 * _PAD > head.sectionSize(column) for text in new):
                return True
        return False

    def follow(self, ids: frozenset[str]) -> None:
        """Select the rows of these parts and wires, without announcing it."""
        self._following = True
        try:
            chosen = QItemSelection()
            last = self.proxy.columnCount() - 1
            first: QModelIndex | None = None
            for row in range(self.proxy.rowCount()):
                index = self.proxy.index(row, 0)
                if index.data(OWNER_ROLE) in ids:
                    chosen.select(index, self.proxy.index(row, last))
                    first = first or index
            self.selectionModel().select(chosen, QItemSelectionModel.SelectionFlag.ClearAndSelect)
            if first is not None and not self.hasFocus():
                self.scrollTo(first)
        finally:
            self._following = False

    def ids(self) -> frozenset[str]:
        """The parts or wires of the selected rows."""
        return frozenset(index.data(OWNER_ROLE) for index in self.selectionModel().selectedRows())

    def _on_selected(self) -> None:
        if not self._following:
            self.picked.emit(self.ids())

    def _on_double_click(self, index: QModelIndex) -> None:
        if not index.flags() & Qt.ItemFlag.ItemIsEditable:
            self.activated_ids.emit(frozenset((index.data(OWNER_ROLE),)))

    def _on_refused(self, sentence: str) -> None:
        self._refusal = sentence

    def commitData(self, editor: QWidget) -> None:
        """Hand on what was typed; where it is refused the editor says so."""
        self._refusal = ""
        super().commitData(editor)
        if self._refusal:
            self.delegate.mark_refused(editor, self._refusal)

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        """Close an editor unless its text was refused; Escape always closes it and keeps the old value."""
        if hint == QAbstractItemDelegate.EndEditHint.RevertModelCache:
            self._refusal = ""
            self.released.emit()
        if self._refusal:
            return
        super().closeEditor(editor, hint)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return reveals what is selected on the drawing, Delete deletes it, Insert adds; F2 edits."""
        key = event.key()
        is_editing = self.state() == QAbstractItemView.State.EditingState
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if not is_editing and self.ids():
                self.activated_ids.emit(self.ids())
        elif key == Qt.Key.Key_Delete and not is_editing:
            if self.ids():
                self.delete_wanted.emit(self.ids())
        elif key == Qt.Key.Key_Insert and not is_editing:
            self.add_wanted.emit()
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def go_to_row(self, row: int) -> None:
        """Put the keyboard into a row, or the last one there is, and select it."""
        count = self.proxy.rowCount()
        if count:
            self.setCurrentIndex(self.proxy.index(min(row, count - 1), max(self.currentIndex().column(), 0)))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the rows, or the sentence that says why there are none."""
        super().paintEvent(event)
        if self.empty_text and self.proxy.rowCount() == 0:
            painter = QPainter(self.viewport())
            painter.setFont(self.delegate.theme.font(12))
            painter.setPen(self.delegate.theme.colour("soft"))
            flags = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
            painter.drawText(self.viewport().rect().adjusted(24, 20, -24, -8), int(flags), self.empty_text)
            painter.end()


def _squeezed(widths: list[int], room: int) -> list[int]:
    """Widths that fit into the room, each giving up its share of what it has above the least."""
    spare = [width - _NARROWEST for width in widths]
    left = max(room - _NARROWEST * len(widths), 0)
    total = sum(spare)
    return widths if total <= left else [_NARROWEST + each * left // total for each in spare]
