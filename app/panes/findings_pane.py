"""The findings pane: what the rules report, as cards in order of severity."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QLabel,
    QListView,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.document import Document
from app.guard import guarded
from app.panes.card_delegate import CardDelegate
from app.panes.controls import FlatCombo, ground_style, scroll_bar_style
from app.panes.finding_cards import cards, condition_word, conditions_in, counts_text
from app.panes.findings_model import CARD_ROLE, FindingsModel
from app.selection import Selection
from app.theme import Theme, palette

_ALL = "all conditions"


@guarded
class CardList(QListView):
    """The list of cards. ``chosen`` comes for a click, Return, or a move with the arrow keys."""

    chosen = Signal(QModelIndex)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.empty_text = ""
        self.theme = theme
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setMouseTracking(False)
        self.verticalScrollBar().setSingleStep(24)
        self.clicked.connect(self.chosen)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Moving to another card chooses it, as does Return."""
        before = self.currentIndex()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            if before.isValid():
                self.chosen.emit(before)
            event.accept()
            return
        super().keyPressEvent(event)
        if self.currentIndex() != before and self.currentIndex().isValid():
            self.chosen.emit(self.currentIndex())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Wrap the text anew."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the cards, or the sentence that says why there are none."""
        super().paintEvent(event)
        model = self.model()
        if self.empty_text and (model is None or model.rowCount() == 0):
            painter = QPainter(self.viewport())
            painter.setFont(self.theme.font(12))
            painter.setPen(self.theme.colour("soft"))
            flags = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
            painter.drawText(self.viewport().rect().adjusted(24, 24, -24, -8), int(flags), self.empty_text)
            painter.end()


class FindingsPane(QWidget):
    """Cards with a filter by condition. Choosing a card selects its parts and brings them into view.

    ``count_changed`` carries how many cards there are under all conditions.
    """

    count_changed = Signal(int)

    def __init__(
        self, document: Document, selection: Selection, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._selection = selection
        self.showing = False  # while a card is being shown on the drawing
        self.model = FindingsModel(self)
        self.list = CardList(theme, self)
        self.list.setModel(self.model)
        self.list.setAccessibleName(self.tr("Findings"))
        self._delegate = CardDelegate(theme, self)
        self.list.setItemDelegate(self._delegate)
        self.summary = QLabel(self)
        self.summary.setTextFormat(Qt.TextFormat.PlainText)
        self.summary.setProperty("role", "soft")
        self.summary.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.filter = FlatCombo(theme, self)
        self.filter.setAccessibleName(self.tr("Show findings of"))
        self._arrange()
        self.filter.currentIndexChanged.connect(self._show_cards)
        self.list.chosen.connect(self._on_chosen)
        for signal in (document.changed, document.replaced, document.assessed):
            signal.connect(self.refresh)
        self.set_theme(theme)
        self.refresh()

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
        findings = assessment.findings if assessment is not None else ()
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
        assessment = self._document.assessment
        findings = assessment.findings if assessment is not None else ()
        shown = cards(findings, self.condition)
        if findings and not shown:
            self.list.empty_text = self.tr("Nothing to report under this condition.")
        current = self.list.currentIndex().data(CARD_ROLE)
        self.model.set_cards(shown)
        if current in shown:
            self.list.setCurrentIndex(self.model.index(shown.index(current), 0))
        self.list.viewport().update()

    def _on_chosen(self, index: QModelIndex) -> None:
        sheet, card = self._document.sheet, index.data(CARD_ROLE)
        known = [one for one in card.where if one in sheet.part_by_id or one in sheet.wire_by_id]
        self.showing = True
        try:
            self._selection.show(known)
        finally:
            self.showing = False
