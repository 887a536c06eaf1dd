"""The list of finding cards as a Qt model."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from app.guard import guarded
from app.panes.finding_cards import Card, spoken_card

CARD_ROLE = Qt.ItemDataRole.UserRole + 1
AnyIndex = QModelIndex | QPersistentModelIndex


@guarded
class FindingsModel(QAbstractListModel):
    """One row a card; everything a screen reader needs stands in the accessible roles."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._cards: tuple[Card, ...] = ()

    @property
    def cards(self) -> tuple[Card, ...]:
        """The cards on show, in order."""
        return self._cards

    def set_cards(self, cards: tuple[Card, ...]) -> None:
        """Show other cards; nothing happens when they are the same. More mends on the same cards move nothing."""
        if cards == self._cards:
            return
        if [card.text for card in cards] == [card.text for card in self._cards]:
            self.layoutAboutToBeChanged.emit()
            self._cards = cards
            self.layoutChanged.emit()
        else:
            self.beginResetModel()
            self._cards = cards
            self.endResetModel()

    def rowCount(self, parent: AnyIndex = QModelIndex()) -> int:  # noqa: B008
        """How many cards there are."""
        return 0 if parent.isValid() else len(self._cards)

    def data(self, index: AnyIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """The card, its title, or its whole text in words."""
        if not index.isValid() or index.row() >= len(self._cards):
            return None
        card = self._cards[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return card.title
        if role == CARD_ROLE:
            return card
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return spoken_card(card)
        if role == Qt.ItemDataRole.AccessibleDescriptionRole:
            return card.footer
        return None
