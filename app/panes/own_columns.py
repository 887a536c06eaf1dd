"""What a user has made of a table's columns: widths that were drawn, and the order of the rows."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Annotated

import msgspec
from PySide6.QtCore import Qt

if TYPE_CHECKING:
    from app.panes.row_view import RowView

_Column = Annotated[int, msgspec.Meta(ge=-1, le=100)]
_Width = Annotated[int, msgspec.Meta(ge=10, le=2000)]


class OwnColumns(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """Widths in pixels by number of column, and the column that rows are sorted by, -1 for none."""

    widths: dict[int, _Width] = {}
    sorted_by: _Column = -1
    is_descending: bool = False


def columns_text(views: Mapping[str, RowView]) -> str:
    """The columns of several tables as text to be remembered."""
    return msgspec.json.encode({name: own_columns(view) for name, view in views.items()}).decode()


def restore_columns(views: Mapping[str, RowView], text: str | None) -> None:
    """Give tables the columns that were remembered; a broken text leaves them as they are."""
    try:
        kept = msgspec.json.decode(text or "{}", type=dict[str, OwnColumns])
    except msgspec.MsgspecError:
        return
    for name, view in views.items():
        if name in kept:
            _restore(view, kept[name])


def own_columns(view: RowView) -> OwnColumns:
    """What the user has made of one table."""
    head = view.horizontalHeader()
    descending = head.sortIndicatorOrder() == Qt.SortOrder.DescendingOrder
    return OwnColumns(dict(view.own_widths), head.sortIndicatorSection(), descending)


def _restore(view: RowView, own: OwnColumns) -> None:
    count = view.proxy.columnCount()
    view.own_widths = {column: width for column, width in own.widths.items() if 0 <= column < count}
    if own.sorted_by < count:
        order = Qt.SortOrder.DescendingOrder if own.is_descending else Qt.SortOrder.AscendingOrder
        view.horizontalHeader().setSortIndicator(own.sorted_by, order)
    view.fit_columns()
