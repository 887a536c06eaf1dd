"""The tables below the findings: heaters, supplies, parts and wires. They share the drawing's selection."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QLabel, QSizePolicy, QStackedWidget, QVBoxLayout, QWidget

from app.document import Document
from app.panes.checked import apply_checked, rename_checked
from app.panes.controls import FlatTabs
from app.panes.gauge import parse_gauge
from app.panes.models import Column, Row, RowsModel
from app.panes.row_view import RowView
from app.panes.rows import heater_rows, part_rows, supply_rows, wire_rows
from app.selection import Selection
from app.theme import Theme
from app.viewpoint import Viewpoint
from core import edits
from core.errors import EditError
from core.sheet import Tube
from core.units import Dimension, parse

HEATERS, SUPPLIES, PARTS, WIRES = range(4)


translate = QCoreApplication.translate


def heater_columns() -> tuple[Column, ...]:
    """The columns of the heater table."""
    return (
        Column("", translate("tables", "state")),
        Column(translate("tables", "id"), translate("tables", "id")),
        Column(translate("tables", "type"), translate("tables", "type")),
        Column(translate("tables", "pins"), translate("tables", "section between pins")),
        Column(translate("tables", "volts"), translate("tables", "volts across the section"), numeric=True),
        Column(translate("tables", "%"), translate("tables", "volts off the rating, per cent"), numeric=True),
        Column(translate("tables", "amps"), translate("tables", "amperes"), numeric=True),
        Column(translate("tables", "watts"), translate("tables", "watts"), numeric=True),
        Column(translate("tables", "htr K"), translate("tables", "heater temperature, kelvin"), numeric=True),
        Column(
            translate("tables", "cath K"), translate("tables", "cathode temperature, kelvin"), numeric=True
        ),
    )


def supply_columns() -> tuple[Column, ...]:
    """The columns of the supply table."""
    return (
        Column(translate("tables", "id"), translate("tables", "id")),
        Column(translate("tables", "kind"), translate("tables", "kind")),
        Column(translate("tables", "volts"), translate("tables", "volts at the terminals"), numeric=True),
        Column(translate("tables", "amps"), translate("tables", "amperes"), numeric=True),
        Column(
            translate("tables", "load %"), translate("tables", "load in per cent of the rating"), numeric=True
        ),
        Column(translate("tables", "watts"), translate("tables", "watts given"), numeric=True),
    )


class CellEdits:
    """What an edit of a table cell does to the sheet; each raises where it cannot be done."""

    def __init__(self, document: Document, selection: Selection) -> None:
        self._document = document
        self._selection = selection

    def rename(self, owner: str, text: str) -> None:
        """Give a part or wire another id."""
        rename_checked(self._document, self._selection, owner, text)

    def set_type(self, owner: str, text: str) -> None:
        """Put another tube type into a socket."""
        if not isinstance(self._document.sheet.part_by_id.get(owner), Tube):
            raise EditError(
                translate("tables", "The figures of {id} are set under Properties.").format(id=owner)
            )
        if not text:
            raise EditError(translate("tables", "A tube needs a type, such as ECC83."))
        label = translate("tables", "Set {id} type").format(id=owner)
        apply_checked(self._document, label, edits.replace_type(owner, text))

    def set_gauge(self, owner: str, text: str) -> None:
        """Give a wire another size."""
        size = parse_gauge(text)
        label = translate("tables", "Set {id} gauge").format(id=owner)
        apply_checked(self._document, label, edits.set_wire(owner, **size))

    def set_length(self, owner: str, text: str) -> None:
        """Give a wire another length; an empty text makes it an ideal strap."""
        length = parse(text, Dimension.METRES) if text else None
        label = translate("tables", "Set {id} length").format(id=owner)
        apply_checked(self._document, label, edits.set_wire(owner, length_m=length))


def part_columns(cells: CellEdits) -> tuple[Column, ...]:
    """The columns of the part table."""
    return (
        Column(translate("tables", "id"), translate("tables", "id"), edit=cells.rename),
        Column(translate("tables", "kind"), translate("tables", "kind")),
        Column(
            translate("tables", "type or rating"), translate("tables", "type or rating"), edit=cells.set_type
        ),
        Column(translate("tables", "at"), translate("tables", "place on the sheet")),
    )


def wire_columns(cells: CellEdits) -> tuple[Column, ...]:
    """The columns of the wire table."""
    return (
        Column(translate("tables", "id"), translate("tables", "id"), edit=cells.rename),
        Column(translate("tables", "from"), translate("tables", "from")),
        Column(translate("tables", "to"), translate("tables", "to")),
        Column(translate("tables", "gauge"), translate("tables", "gauge"), edit=cells.set_gauge),
        Column(
            translate("tables", "length"), translate("tables", "length"), numeric=True, edit=cells.set_length
        ),
        Column(translate("tables", "amps"), translate("tables", "amperes"), numeric=True),
        Column(translate("tables", "mV"), translate("tables", "millivolts dropped"), numeric=True),
        Column(translate("tables", "watts"), translate("tables", "watts"), numeric=True),
    )


class TablesPane(QWidget):
    """Four tables behind flat tabs, at the condition on show; numbers are blank while they are not solved."""

    def __init__(
        self,
        document: Document,
        selection: Selection,
        viewpoint: Viewpoint,
        theme: Theme,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._selection = selection
        self._viewpoint = viewpoint
        words = (self.tr("Heaters"), self.tr("Supplies"), self.tr("Parts"), self.tr("Wires"))
        self.tabs = FlatTabs(words, self.tr("Tables"), theme, self)
        self.stack = QStackedWidget(self)
        self._behind: set[int] = set()  # tables out of sight that do not show the present sheet yet
        cells = CellEdits(document, selection)
        columns = (heater_columns(), supply_columns(), part_columns(cells), wire_columns(cells))
        self.views = tuple(self._view(each, word, theme) for each, word in zip(columns, words, strict=True))
        self.complaint = QLabel(self)
        self.complaint.setTextFormat(Qt.TextFormat.PlainText)
        self.complaint.setWordWrap(True)
        self.complaint.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.complaint.hide()
        self._arrange()
        self._connect()
        self.set_theme(theme)
        self.refresh()

    def _view(self, columns: tuple[Column, ...], name: str, theme: Theme) -> RowView:
        view = RowView(RowsModel(columns, self), theme, self)
        view.setAccessibleName(name)
        view.empty_text = self.tr("None on this sheet.")
        self.stack.addWidget(view)
        return view

    def _arrange(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        layout.addWidget(self.tabs)
        layout.addWidget(self.stack, 1)
        layout.addWidget(self.complaint)

    def _connect(self) -> None:
        self.tabs.currentChanged.connect(self._on_tab)
        for view in self.views:
            view.picked.connect(self._on_picked)
            view.activated_ids.connect(self._selection.show)
            view.rows.refused.connect(self._complain)
            view.rows.accepted.connect(self.complaint.hide)
        for signal in (self._document.changed, self._document.replaced, self._document.assessed):
            signal.connect(self.refresh)
        self._viewpoint.changed.connect(self.refresh)
        self._selection.changed.connect(self._on_selection)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.tabs.set_theme(theme)
        for view in self.views:
            view.set_theme(theme)
        self.complaint.setFont(theme.font(12))
        self.complaint.setStyleSheet(f"color: {theme.over}; padding: 2px 4px;")

    def refresh(self) -> None:
        """Show the sheet as it is, with the numbers of this very sheet or none."""
        sheet = self._document.sheet
        point = self._viewpoint.point(self._document.assessment)
        makers: tuple[Callable[[], tuple[Row, ...]], ...] = (
            lambda: heater_rows(sheet, self._document.catalogue, point),
            lambda: supply_rows(sheet, point),
            lambda: part_rows(sheet.parts),
            lambda: wire_rows(sheet, point),
        )
        current = self.tabs.currentIndex()
        for number, (view, make) in enumerate(zip(self.views, makers, strict=True)):
            if number == current or not view.rows.rows:
                self._fill(view, make())
                self._behind.discard(number)
            else:
                self._behind.add(number)
        self._makers = makers

    def _fill(self, view: RowView, rows: tuple[Row, ...]) -> None:
        view.show_rows(rows)
        view.follow(self._selection.ids)

    def _on_tab(self, number: int) -> None:
        view = self.views[number]
        if number in self._behind:
            self._behind.discard(number)
            self._fill(view, self._makers[number]())
        self.stack.setCurrentIndex(number)
        self.complaint.hide()
        view.fit_columns()

    def _on_picked(self, ids: frozenset[str]) -> None:
        self._selection.set(ids)

    def _on_selection(self, ids: frozenset[str]) -> None:
        for view in self.views:
            if view.ids() != ids:
                view.follow(ids)

    def _complain(self, sentence: str) -> None:
        self.complaint.setText(f"▲ {sentence}")
        self.complaint.show()
