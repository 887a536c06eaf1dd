"""Properties of what is selected: every field of one part or wire, or of the sheet itself."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QPushButton, QScrollArea, QVBoxLayout, QWidget

from app.canvas.words import counted, delete_text, turn_text
from app.document import Document
from app.panes import offering
from app.panes.about import AboutPart, plain_label
from app.panes.controls import scroll_bar_style
from app.panes.field_rows import FieldRow
from app.panes.fields import SHEET, Field, Form, edit_of, form_of, pair_form, undo_text
from app.panes.offering import Offering
from app.panes.renaming import rename_kept
from app.panes.rows import natural
from app.panes.scrub import Scrub
from app.panes.steps import STEPS
from app.proposal import Proposal
from app.selection import Selection
from app.speech import told
from app.theme import Theme
from app.viewpoint import Viewpoint
from core import edits
from core.edits import Edit
from core.edits.pairs import pair_in
from core.errors import HeaterloomError

if TYPE_CHECKING:
    from app.panes.instant_figures import InstantFigures

_COMPLETED = ("tube", "lamp", "thermistor")


class PropertiesPane(QWidget):
    """A form for what is selected. Each finished input is one undoable step.

    ``heading_changed`` carries what the form is of.
    """

    heading_changed = Signal(str)

    def __init__(
        self, document: Document, selection: Selection, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._selection = selection
        self._theme = theme
        self._form: Form | None = None
        self._shape: tuple[object, ...] = ()
        self.rows: dict[str, FieldRow] = {}
        self.about: AboutPart | None = None
        self.proposal: Proposal | None = None  # where a value goes that is only tried
        self._viewpoint: Viewpoint | None = None
        self.figures: InstantFigures | None = None
        self._arrange()
        document.changed.connect(self.refresh)
        document.replaced.connect(self.refresh)
        document.assessed.connect(self._on_assessed)
        selection.changed.connect(self._on_selection)
        self.refresh()

    def _arrange(self) -> None:
        self.heading = plain_label("", "heading", self)
        self.heading.setFont(self._theme.font(13, bold=True))
        self.area = QScrollArea(self)
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setWidgetResizable(True)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.area.verticalScrollBar().setStyleSheet(scroll_bar_style(self._theme))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(4, 2, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(self.heading)
        layout.addWidget(self.area, 1)
        self._column = layout

    def follow(self, viewpoint: Viewpoint) -> None:
        """Show the figures of the instant on show, if there is one."""
        self._viewpoint = viewpoint
        viewpoint.changed.connect(self._show_instant)
        self._show_instant()

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        if self.figures is not None:
            self.figures.set_theme(theme)
        self.heading.setFont(theme.font(13, bold=True))
        self.area.verticalScrollBar().setStyleSheet(scroll_bar_style(theme))
        self._shape = ()
        self.refresh()

    def focus_first(self) -> None:
        """Put the keyboard into the first field that is not the id, its text selected."""
        names = [name for name in self.rows if name != "id"] or list(self.rows)
        if names:
            editor = self.rows[names[0]].editor
            editor.setFocus(Qt.FocusReason.ShortcutFocusReason)
            if isinstance(editor, QLineEdit):
                editor.selectAll()

    def refresh(self) -> None:
        """Show the sheet's values; rows and what is typed in them stay while the fields are the same."""
        form = self._form_for(self._selection.ids)
        shape = self._shape_of(form)
        if shape != self._shape:
            self._shape = shape
            self._form = form
            self._rebuild()
        elif form is not None:
            self._form = form
            for field in form.fields:
                self.rows[field.name].show_field(field)
        self._on_assessed()

    def _form_for(self, ids: frozenset[str]) -> Form | None:
        """The form of what is selected, a twisted pair as one; of the sheet where nothing is; None for several."""
        sheet = self._document.sheet
        pair = pair_in(sheet, ids)
        if pair is not None:
            return pair_form(sheet, pair)
        subject = next(iter(ids)) if len(ids) == 1 else SHEET
        return None if len(ids) > 1 else form_of(sheet, self._document.catalogue, subject)

    def _shape_of(self, form: Form | None) -> tuple[object, ...]:
        if form is None:
            return ("many", self._selection.ids)
        found = self._document.catalogue.tube(self._text(form, "type")) if form.kind == "tube" else None
        return (
            "one",
            len(self._selection.ids),
            form.subject,
            form.kind,
            tuple(field.name for field in form.fields),
            found,
        )

    @staticmethod
    def _text(form: Form, name: str) -> str:
        return next((field.text for field in form.fields if field.name == name), "")

    def _on_selection(self) -> None:
        """Finish what is being typed for the part it was typed for, then show the new selection."""
        for row in tuple(self.rows.values()):
            if row.is_pending and row.editor.hasFocus():
                row.commit()
        self.refresh()

    def _rebuild(self) -> None:
        for row in self.rows.values():
            row.end_considering()
        focused = next((name for name, row in self.rows.items() if row.editor.hasFocus()), None)
        self.rows = {}
        self.about = None
        content = QWidget()
        content.setAutoFillBackground(False)
        layout = QVBoxLayout(content)
        layout.setContentsMargins(0, 0, 10, 8)
        layout.setSpacing(4)
        if self._form is None:
            self._build_many(layout)
        else:
            self._build_form(self._form, layout)
        layout.addStretch(1)
        old = self.area.takeWidget()
        if old is not None:
            old.hide()
            old.deleteLater()
        self.area.setWidget(content)
        if focused in self.rows:
            self.rows[focused].editor.setFocus()
        self.heading_changed.emit(self.heading.text())

    def _build_form(self, form: Form, layout: QVBoxLayout) -> None:
        self.heading.setText(form.heading)
        for field in form.fields:
            row = FieldRow(field, self._theme)
            row.committed.connect(self._on_committed)
            row.considered.connect(self._on_considered)
            steps = STEPS.get((form.kind, field.name))
            if steps is not None:
                Scrub(row, steps, self._theme)
            offers = self._offering(form, field)
            if offers is not None:
                row.complete_from(offers)
            self.rows[field.name] = row
            layout.addWidget(row)
        if form.subject != SHEET:
            self.about = AboutPart(self._document, form.subject, self._theme)
            layout.addWidget(self.about)

    def _offering(self, form: Form, field: Field) -> Offering | None:
        """What is offered while a field is typed into; None where nothing can be."""
        document = self._document
        if field.role == "type" and form.kind in _COMPLETED:
            return lambda text: offering.types_of(document.catalogue, form.kind, text)
        if form.kind != "wire":
            return None
        terminals: Offering = lambda text: offering.terminals_of(  # noqa: E731
            document.sheet, document.catalogue, text
        )
        known: dict[str, Offering] = {
            "start": terminals,
            "end": terminals,
            "gauge": offering.gauges,
            "colour": offering.colours,
            "twist": lambda text: offering.pairs(document.sheet, text),
        }
        return known.get(field.name)

    def _build_many(self, layout: QVBoxLayout) -> None:
        sheet, ids = self._document.sheet, self._selection.ids
        parts = ids & sheet.part_by_id.keys()
        self.heading.setText(self.tr("{count} selected").format(count=len(ids)))
        names = ", ".join(sorted(ids, key=natural)[:30]) + ("…" if len(ids) > 30 else "")
        for words in (counted(ids, sheet), names):
            label = plain_label(words, "soft", self)
            label.setFont(self._theme.font(12))
            layout.addWidget(label)
        line = QHBoxLayout()
        if parts:
            turn = self._action(self.tr("Turn each"), turn_text(parts, sheet), edits.turn_parts(parts))
            line.addWidget(turn)
        line.addWidget(self._action(self.tr("Delete"), delete_text(ids, sheet), edits.remove(ids)))
        line.addStretch(1)
        layout.addLayout(line)

    def _action(self, word: str, undo: str, edit: Edit) -> QPushButton:
        button = QPushButton(word)
        button.setFont(self._theme.font(12))
        carry_out: Callable[[], object] = lambda: self._document.apply(undo, edit)  # noqa: E731
        button.clicked.connect(carry_out)
        return button

    def _on_assessed(self) -> None:
        if self.about is not None:
            self.about.refresh()
        self._show_instant()

    def _show_instant(self) -> None:
        """The figures of an instant stand above the fields; they are made for the first one."""
        instant = None if self._viewpoint is None else self._viewpoint.instant
        if instant is None or self._form is None:
            if self.figures is not None:
                self.figures.hide()
            return
        if self.figures is None:
            from app.panes.instant_figures import InstantFigures  # noqa: PLC0415 - most sessions need none

            self.figures = InstantFigures(self._theme, self)
            self._column.insertWidget(1, self.figures)
        self.figures.show_figures(self._document, instant, self._form.subject)

    def _on_considered(self, name: str, given: str | None) -> None:
        """Have the sheet solved as if a value were set."""
        form, row = self._form, self.rows.get(name)
        if self.proposal is None:
            return
        if given is None or form is None or row is None:
            self.proposal.withdraw()
        else:
            self.proposal.consider(undo_text(form, row.field), edit_of(form, row.field, given))

    def _on_committed(self, name: str, given: str | bool) -> None:
        """Carry out one input as one undoable step, or mark the field and leave the sheet as it is."""
        form, row = self._form, self.rows.get(name)
        if form is None or row is None:
            return
        field: Field = row.field
        try:
            if field.role == "id" and str(given).strip():
                rename_kept(self._document, self._selection, form.subject, str(given).strip())
            else:
                self._document.apply(undo_text(form, field), edit_of(form, field, given))
        except HeaterloomError as error:
            row.refuse(told(error))
            return
        if self.rows.get(name) is row:
            row.restore()
