"""The tables below the findings: heaters, supplies, parts and wires. They share the drawing's selection."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QSizePolicy, QStackedWidget, QVBoxLayout, QWidget

from app.canvas.adding import offers
from app.canvas.wiring import why_no_offer, wire_offer
from app.canvas.words import delete_text
from app.document import Document
from app.panes import offering
from app.panes.add_line import AddLine
from app.panes.cell_edits import CellEdits
from app.panes.columns import (
    heater_columns,
    part_columns,
    pin_columns,
    supply_columns,
    wire_columns,
)
from app.panes.controls import FlatTabs
from app.panes.models import Column, Row, RowsModel
from app.panes.row_view import RowView
from app.panes.rows import heater_rows, part_rows, pin_rows, supply_rows, wire_rows
from app.selection import Selection
from app.theme import Theme
from app.viewpoint import Viewpoint
from core import edits
from core.sheet import Sheet

HEATERS, SUPPLIES, PINS, PARTS, WIRES = range(5)


class TablesPane(QWidget):
    """The tables behind flat tabs, at the condition on show; numbers are blank while they are not solved.

    Parts and wires can be changed, deleted and added here. ``part_wanted`` carries a part without id and place,
    ``wire_wanted`` the two terminals of a wire.
    """

    part_wanted = Signal(object)
    wire_wanted = Signal(str, str)

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
        words = (self.tr("Heaters"), self.tr("Supplies"), self.tr("Pins"), self.tr("Parts"), self.tr("Wires"))
        self.tabs = FlatTabs(words, self.tr("Tables"), theme, self)
        self.stack = QStackedWidget(self)
        self._behind: set[int] = set()  # tables out of sight that do not show the present sheet yet
        cells = CellEdits(document, selection)
        columns = (
            heater_columns(),
            supply_columns(),
            pin_columns(),
            part_columns(cells),
            wire_columns(cells),
        )
        self.views = tuple(self._view(each, word, theme) for each, word in zip(columns, words, strict=True))
        self.add_lines = self._make_add_lines(theme)
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

    def _make_add_lines(self, theme: Theme) -> dict[int, AddLine]:
        document = self._document
        part = AddLine(
            self.tr("Add a part to the table"),
            self.tr("add: ECC83, 47R 5 W, relay…"),
            lambda text: offering.things_to_add(document.catalogue, text),
            theme,
            self,
        )
        wire = AddLine(
            self.tr("Add a wire to the table"),
            self.tr("add: T1.a V1.4, or V1.4-5 for a strap"),
            lambda text: offering.wires_to_add(document.sheet, document.catalogue, text),
            theme,
            self,
        )
        return {PARTS: part, WIRES: wire}

    def _arrange(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        layout.addWidget(self.tabs)
        layout.addWidget(self.stack, 1)
        for line in self.add_lines.values():
            layout.addWidget(line)
            line.hide()
        layout.addWidget(self.complaint)

    def _connect(self) -> None:
        self.tabs.currentChanged.connect(self._on_tab)
        for view in self.views:
            view.picked.connect(self._on_picked)
            view.activated_ids.connect(self._selection.show)
            view.rows.refused.connect(self._complain)
            view.rows.accepted.connect(self.complaint.hide)
            view.released.connect(self.complaint.hide)
        for number, line in self.add_lines.items():
            self.views[number].add_wanted.connect(line.setFocus)
            self.views[number].delete_wanted.connect(self._delete)
            line.left.connect(self.complaint.hide)
            line.left.connect(self.views[number].setFocus)
        self.add_lines[PARTS].wanted.connect(self._add_part)
        self.add_lines[WIRES].wanted.connect(self._add_wire)
        for signal in (self._document.changed, self._document.replaced, self._document.assessed):
            signal.connect(self.refresh)
        self._viewpoint.changed.connect(self.refresh)
        self._selection.changed.connect(self._on_selection)

    @property
    def views_by_name(self) -> dict[str, RowView]:
        """The tables by the names that their columns are remembered by."""
        return dict(zip(("heaters", "supplies", "pins", "parts", "wires"), self.views, strict=True))

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.tabs.set_theme(theme)
        for view in self.views:
            view.set_theme(theme)
        for line in self.add_lines.values():
            line.set_theme(theme)
        self.complaint.setFont(theme.font(12))
        self.complaint.setStyleSheet(f"color: {theme.over}; padding: 2px 4px;")

    def refresh(self) -> None:
        """Show the sheet as it is, with the numbers of this very sheet or none."""
        sheet = self._document.sheet
        assessment = self._document.assessment
        point = self._viewpoint.point(assessment)
        makers: tuple[Callable[[], tuple[Row, ...]], ...] = (
            lambda: heater_rows(sheet, self._document.catalogue, point, assessment),
            lambda: supply_rows(sheet, point),
            lambda: pin_rows(sheet, point),
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
        if view.show_rows(rows):
            view.follow(self._selection.ids)

    def _on_tab(self, number: int) -> None:
        view = self.views[number]
        if number in self._behind:
            self._behind.discard(number)
            self._fill(view, self._makers[number]())
        self.stack.setCurrentIndex(number)
        self.complaint.hide()
        for place, line in self.add_lines.items():
            line.setVisible(place == number)
        view.fit_columns()

    def _on_picked(self, ids: frozenset[str]) -> None:
        self._selection.set(ids)

    def _on_selection(self, ids: frozenset[str]) -> None:
        for view in self.views:
            if view.ids() != ids:
                view.follow(ids)

    def _delete(self, ids: frozenset[str]) -> None:
        """Delete parts or wires; the keyboard stays at the row where they were."""
        view = self.views[self.tabs.currentIndex()]
        row = min(index.row() for index in view.selectionModel().selectedRows())
        self._document.apply(delete_text(ids, self._document.sheet), edits.remove(ids))
        view.go_to_row(row)

    def _add_part(self, text: str) -> None:
        line = self.add_lines[PARTS]
        found = offers(text, self._document.catalogue)
        if not found:
            self._refuse_line(line, why_no_offer(text, Sheet()))
            return
        line.take()
        self.complaint.hide()
        self.part_wanted.emit(found[0].part_template)

    def _add_wire(self, text: str) -> None:
        line, sheet = self.add_lines[WIRES], self._document.sheet
        found = wire_offer(text, sheet)
        if found is None:
            self._refuse_line(line, why_no_offer(text, sheet))
            return
        line.take()
        self.complaint.hide()
        self.wire_wanted.emit(*found.part_template["ends"])

    def _refuse_line(self, line: AddLine, sentence: str) -> None:
        line.refuse(sentence)
        self._complain(sentence)

    def _complain(self, sentence: str) -> None:
        self.complaint.setText(f"▲ {sentence}")
        self.complaint.show()
