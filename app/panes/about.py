"""Below the fields of a part: what the rules say of it, and what the catalogue knows of its type."""

from __future__ import annotations

import html

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from app.document import Document
from app.panes.finding_cards import Card, cards
from app.panes.marks import SeverityMark
from app.panes.tube_facts import Fact, facts_of
from app.theme import Theme
from core.sheet import Tube

_FACT_LABEL_WIDTH = 136


def plain_label(text: str, role: str, parent: QWidget | None = None) -> QLabel:
    """A label that shows its text as it is, wrapped, never as mark-up."""
    label = QLabel(text, parent)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    label.setProperty("role", role)
    return label


def plain_tip(text: str) -> str:
    """A tool tip that shows the text as it is, wrapped, whatever stands in it."""
    return f"<qt>{html.escape(text)}</qt>" if text else ""


class AboutPart(QWidget):
    """Findings that name a part or wire, kept up to date, and the facts of a tube's type."""

    def __init__(self, document: Document, subject: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._subject = subject
        self._theme = theme
        self._shown: tuple[Card, ...] | None = None
        self._findings = QWidget(self)
        self._lines = QVBoxLayout(self._findings)
        self._lines.setContentsMargins(0, 4, 0, 4)
        self._lines.setSpacing(3)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self._findings)
        self.facts: tuple[Fact, ...] = ()
        self._add_facts(layout)
        self.refresh()

    def refresh(self) -> None:
        """Show what the rules say of the part in the present drawing."""
        assessment = self._document.assessment
        findings = assessment.findings if assessment is not None else ()
        shown = tuple(card for card in cards(findings) if self._subject in card.where)
        if shown == self._shown:
            return
        self._shown = shown
        while (item := self._lines.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for card in shown:
            self._lines.addWidget(self._line(card))
        self._findings.setVisible(bool(shown))

    def _line(self, card: Card) -> QWidget:
        line = QWidget(self._findings)
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(SeverityMark(card.severity, self._theme, line), 0, Qt.AlignmentFlag.AlignTop)
        label = plain_label(card.title, "", line)
        label.setFont(self._theme.font(12))
        label.setToolTip(plain_tip(f"{card.says} {card.mend}"))
        row.addWidget(label, 1)
        return line

    def _add_facts(self, layout: QVBoxLayout) -> None:
        part = self._document.sheet.part_by_id.get(self._subject)
        if not isinstance(part, Tube):
            return
        found = self._document.catalogue.tube(part.type)
        if found is None:
            text = self.tr("The catalogue does not know {type}.").format(type=part.type)
            layout.addWidget(self._heading(text))
            return
        self.facts = facts_of(found)
        layout.addWidget(self._heading(self.tr("{type} in the catalogue").format(type=found.designation)))
        if found.equivalents:
            also = self.tr("also {names}").format(names=", ".join(found.equivalents))
            layout.addWidget(self._soft(also))
        grid = QGridLayout()
        grid.setHorizontalSpacing(8)
        grid.setVerticalSpacing(3)
        grid.setColumnStretch(2, 1)
        for number, fact in enumerate(self.facts):
            self._add_fact(grid, number, fact)
        layout.addLayout(grid)

    def _heading(self, text: str) -> QLabel:
        label = plain_label(text, "heading", self)
        label.setFont(self._theme.font(12, bold=True))
        return label

    def _soft(self, text: str) -> QLabel:
        label = plain_label(text, "soft", self)
        label.setFont(self._theme.font(12))
        return label

    def _add_fact(self, grid: QGridLayout, number: int, fact: Fact) -> None:
        label = self._soft(fact.label)
        label.setFixedWidth(_FACT_LABEL_WIDTH)
        value = plain_label(fact.value, "", self)
        value.setWordWrap(False)
        value.setFont(self._theme.font(12))
        certainty = self._soft(fact.certainty)
        certainty.setFont(self._theme.font(11))
        if fact.status == "memory":
            certainty.setStyleSheet(f"color: {self._theme.caution};")
        source = fact.source or self.tr("no source is on record")
        tip = plain_tip(f"{fact.certainty}: {source}")
        top = Qt.AlignmentFlag.AlignTop
        for column, widget in enumerate((label, value, certainty)):
            widget.setToolTip(tip)
            widget.setSizePolicy(
                QSizePolicy.Policy.Preferred if column < 2 else QSizePolicy.Policy.Ignored,
                QSizePolicy.Policy.Minimum,
            )
            grid.addWidget(widget, number, column, top)
