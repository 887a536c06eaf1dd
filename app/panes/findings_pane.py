"""The findings pane: what the rules report, as cards in order of severity."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPoint, Qt, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.canvas.telling import announce
from app.document import Document
from app.mends import Mends
from app.panes.card_delegate import CardDelegate
from app.panes.card_list import CardList
from app.panes.controls import FlatCombo, ground_style, scroll_bar_style
from app.panes.finding_cards import cards, condition_word, conditions_in, counts_text
from app.panes.findings_model import CARD_ROLE, FindingsModel
from app.panes.proposal_rows import ProposalCard
from app.proposal import Proposal, Proposed
from app.selection import Selection
from app.speech import told
from app.theme import Theme, palette
from core.errors import EditError

_ALL = "all conditions"


class FindingsPane(QWidget):
    """Cards with a filter by condition. Choosing a card selects its parts and brings them into view.

    ``count_changed`` carries how many cards there are under all conditions.
    """

    count_changed = Signal(int)

    def __init__(
        self, document: Document, selection: Selection, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._proposal: Proposal | None = None
        self.mends = Mends(document, self)
        self._document = document
        self._selection = selection
        self.outlook = ProposalCard(theme, self, QPoint(0, 0), is_wide=True)
        self.showing = False  # while a card is being shown on the drawing
        self.model = FindingsModel(self)
        self._delegate = CardDelegate(theme, self)
        self.list = CardList(theme, self._delegate, self)
        self.list.setModel(self.model)
        self.list.setAccessibleName(self.tr("Findings"))
        self.summary = QLabel(self)
        self.summary.setTextFormat(Qt.TextFormat.PlainText)
        self.summary.setProperty("role", "soft")
        self.summary.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.filter = FlatCombo(theme, self)
        self.filter.setAccessibleName(self.tr("Show findings of"))
        self._arrange()
        self.filter.currentIndexChanged.connect(self._show_cards)
        self.list.chosen.connect(self._on_chosen)
        self.list.considered.connect(self._on_considered)
        self.list.left.connect(self._on_left)
        self.list.taken.connect(self._on_taken)
        self.mends.changed.connect(self._show_cards)
        for signal in (document.changed, document.replaced, document.assessed, document.switched_on):
            signal.connect(self.refresh)
        self.set_theme(theme)
        self.refresh()

    def follow(self, proposal: Proposal) -> None:
        """Put mends that are being considered there, and tell what anything that is under way would do."""
        self._proposal = proposal
        proposal.changed.connect(self._show_proposal)

    def _show_proposal(self, proposed: Proposed | None) -> None:
        # a mend of this very list is told beside the drawing: here it would cover its own card
        self.outlook.show_proposal(None if self.list.hot is not None else proposed)

    def _arrange(self) -> None:
        head = QHBoxLayout()
        head.setContentsMargins(4, 0, 0, 0)
        head.addWidget(self.summary, 1)
        head.addWidget(self.filter)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addLayout(head)
        layout.addWidget(self.list, 1)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._delegate.set_theme(theme)
        self.outlook.set_theme(theme)
        self.list.theme = theme
        colours = palette(theme)
        colours.setColor(colours.ColorRole.Base, theme.colour("chrome"))
        self.list.setStyleSheet(ground_style("QListView", theme) + scroll_bar_style(theme))
        # after the style sheet, which would bring back the palette it has seen first
        self.list.setPalette(colours)
        self.summary.setFont(theme.font(12))
        self.filter.set_theme(theme)
        self.list.scheduleDelayedItemsLayout()

    def refresh(self) -> None:
        """Show what is known of the present drawing, and only that."""
        assessment = self._document.assessment
        findings = self._document.findings
        self._offer(conditions_in(findings))
        if assessment is None:
            self.list.empty_text = self.tr("Not solved for this drawing yet")
            self.summary.setText("")
        elif not self._document.sheet.parts:
            self.list.empty_text = self.tr("The sheet is empty. Type a part into the add field.")
            self.summary.setText("")
        else:
            self.list.empty_text = self.tr("Nothing to report: every heater is within its tolerance.")
            self.summary.setText(counts_text(findings))
        self._show_cards()
        self.count_changed.emit(len(cards(findings)))

    def _offer(self, names: tuple[str, ...]) -> None:
        """Offer the conditions that findings speak of; the chosen one stays while there is no answer."""
        chosen = self.condition
        offered: list[str | None] = [None, *names]
        if chosen not in offered:
            offered.append(chosen)
        if offered == [self.filter.itemData(number) for number in range(self.filter.count())]:
            return
        self.filter.blockSignals(True)
        self.filter.clear()
        for name in offered:
            self.filter.addItem(self.tr("all conditions") if name is None else condition_word(name), name)
        self.filter.setCurrentIndex(offered.index(chosen))
        self.filter.blockSignals(False)
        self.filter.updateGeometry()

    @property
    def condition(self) -> str | None:
        """The condition that the filter lets through; None for all of them."""
        chosen = self.filter.currentData()
        return None if chosen is None else str(chosen)

    def _show_cards(self) -> None:
        findings = self._document.findings
        shown = cards(findings, self.condition, self.mends.of)
        if findings and not shown:
            self.list.empty_text = self.tr("Nothing to report under this condition.")
        current = self.list.currentIndex().data(CARD_ROLE)
        self.model.set_cards(shown)
        texts = [card.text for card in shown]
        if current is not None and current.text in texts:
            self.list.setCurrentIndex(self.model.index(texts.index(current.text), 0))
        self.list.viewport().update()

    def _on_chosen(self, index: QModelIndex) -> None:
        sheet, card = self._document.sheet, index.data(CARD_ROLE)
        known = [one for one in card.where if one in sheet.part_by_id or one in sheet.wire_by_id]
        self.showing = True
        try:
            self._selection.show(known)
        finally:
            self.showing = False

    # mends

    def _on_considered(self, index: QModelIndex, number: int) -> None:
        """Show what a mend would do."""
        offer = index.data(CARD_ROLE).mends[number]
        announce(self.list, offer.label)
        if self._proposal is not None:
            self._proposal.consider(offer.title, offer.edit)

    def _on_left(self) -> None:
        if self._proposal is not None:
            self._proposal.withdraw()

    def _on_taken(self, index: QModelIndex, number: int) -> None:
        """Carry a mend out as one step of the history."""
        offer = index.data(CARD_ROLE).mends[number]
        try:
            self._document.apply(offer.title, offer.edit)
        except EditError as error:
            announce(self.list, told(error))
