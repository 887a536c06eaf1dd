"""Table models: rows are values made elsewhere, a model only shows them and hands edits on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSortFilterProxyModel,
    Qt,
    Signal,
)

from app.canvas.look import State
from app.guard import guarded
from app.speech import told
from core.errors import HeaterloomError

OWNER_ROLE = Qt.ItemDataRole.UserRole + 1
SORT_ROLE = Qt.ItemDataRole.UserRole + 2
STATE_ROLE = Qt.ItemDataRole.UserRole + 3
SAMPLE_ROLE = Qt.ItemDataRole.UserRole + 4
OFFERING_ROLE = Qt.ItemDataRole.UserRole + 5
CELL_ROLE = Qt.ItemDataRole.UserRole + 6  # the cell itself, for who paints it
AnyIndex = QModelIndex | QPersistentModelIndex
SortKey = tuple[int, float, str]


@dataclass(frozen=True)
class Cell:
    """One cell: its text, what it sorts by, and the shape it shows instead of text, if any."""

    text: str
    sort: SortKey
    state: State | None = None


@dataclass(frozen=True)
class Row:
    """One row: a key that is its own, the id of the part or wire it belongs to, and its cells."""

    key: str
    owner: str
    cells: tuple[Cell, ...]


@dataclass(frozen=True)
class Column:
    """One column: its heading, a longer name where that is short, and how its cells are edited, if at all.

    ``sample`` is a text that every cell of the column is wide enough for; ``offers`` answers what is offered for
    an owner and the text typed so far.
    """

    title: str
    long_name: str = ""
    numeric: bool = False
    sample: str = ""
    edit: Callable[[str, str], None] | None = None
    offers: Callable[[str, str], list[str]] | None = None

    @property
    def name(self) -> str:
        """The heading in full words."""
        return self.long_name or self.title


def _differs(before: tuple[Row, ...], after: tuple[Row, ...], column: int) -> bool:
    """Whether any cell of a column is another one; the rows are the same ones."""
    for old, new in zip(before, after, strict=True):
        one, other = old.cells[column], new.cells[column]
        if one is not other and one != other:
            return True
    return False


@guarded
class RowsModel(QAbstractTableModel):
    """Shows rows. Edits go to the column's ``edit(owner, text)``; one that raises leaves all as it was.

    ``refused`` carries the sentence that says why an edit was not carried out.
    """

    refused = Signal(str)
    accepted = Signal()

    def __init__(self, columns: tuple[Column, ...], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._columns = columns
        self._rows: tuple[Row, ...] = ()

    @property
    def columns(self) -> tuple[Column, ...]:
        """The columns, in order."""
        return self._columns

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows on show."""
        return self._rows

    def set_rows(self, rows: tuple[Row, ...]) -> None:
        """Show other rows; where only cells differ the view keeps its place and selection."""
        if rows == self._rows:
            return
        if [row.key for row in rows] == [row.key for row in self._rows]:
            before, self._rows = self._rows, rows
            changed = [number for number in range(len(self._columns)) if _differs(before, rows, number)]
            last = self.index(len(rows) - 1, changed[-1])
            self.dataChanged.emit(self.index(0, changed[0]), last)
            return
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def rowCount(self, parent: AnyIndex = QModelIndex()) -> int:  # noqa: B008
        """How many rows."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: AnyIndex = QModelIndex()) -> int:  # noqa: B008
        """How many columns."""
        return 0 if parent.isValid() else len(self._columns)

    def data(self, index: AnyIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Text, alignment, sort key, owner or state of one cell."""
        if not index.isValid() or index.row() >= len(self._rows):
            return None
        row = self._rows[index.row()]
        cell, column = row.cells[index.column()], self._columns[index.column()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            return cell.text
        if role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignRight if column.numeric else Qt.AlignmentFlag.AlignLeft
            return side | Qt.AlignmentFlag.AlignVCenter
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{row.owner} {column.name}: {cell.text}"
        if role == OFFERING_ROLE:
            return None if column.offers is None else partial(column.offers, row.owner)
        return {CELL_ROLE: cell, OWNER_ROLE: row.owner, SORT_ROLE: cell.sort, STATE_ROLE: cell.state}.get(
            role
        )

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """The headings; the longer name as tool tip and for screen readers."""
        if orientation != Qt.Orientation.Horizontal or not 0 <= section < len(self._columns):
            return None
        column = self._columns[section]
        if role == SAMPLE_ROLE:
            return column.sample
        if role == Qt.ItemDataRole.DisplayRole:
            return column.title
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
            return column.name
        if role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignRight if column.numeric else Qt.AlignmentFlag.AlignLeft
            return side | Qt.AlignmentFlag.AlignVCenter
        return None

    def flags(self, index: AnyIndex) -> Qt.ItemFlag:
        """Cells of columns that can be edited say so."""
        flags = super().flags(index)
        if index.isValid() and self._columns[index.column()].edit is not None:
            flags |= Qt.ItemFlag.ItemIsEditable
        return flags

    def setData(self, index: AnyIndex, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Carry an edit to the sheet; False, with the reason in ``refused``, where it cannot be done."""
        if role != Qt.ItemDataRole.EditRole or not index.isValid():
            return False
        edit, row = self._columns[index.column()].edit, self._rows[index.row()]
        text = str(value).strip()
        if edit is None or text == row.cells[index.column()].text:
            return False
        try:
            edit(row.owner, text)
        except HeaterloomError as error:
            self.refused.emit(told(error))
            return False
        self.accepted.emit()
        return True


class RowsProxy(QSortFilterProxyModel):
    """Sorts rows by their sort keys, so that numbers sort as numbers and V2 comes before V10."""

    def lessThan(self, left: AnyIndex, right: AnyIndex) -> bool:
        """Whether the left cell comes before the right one."""
        return bool(left.data(SORT_ROLE) < right.data(SORT_ROLE))
