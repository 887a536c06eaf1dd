"""The list below the add field: what the typed text may mean."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject, QPoint, QRect, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter
from PySide6.QtWidgets import (
    QListWidget,
    QListWidgetItem,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from app.canvas.adding import Offer
from app.guard import guarded
from app.theme import Theme

WIDTH, ROW = 380, 26
_OFFER = Qt.ItemDataRole.UserRole


class OfferList(QListWidget):
    """Shows offers; never takes the keyboard, which stays with the field."""

    def __init__(self, parent: QWidget | None, theme: Theme) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(QCoreApplication.translate("adding", "What can be added"))
        self._delegate = _OfferDelegate(theme, self)
        self.setItemDelegate(self._delegate)
        self.hide()
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Show the list in another theme."""
        self._delegate.theme = theme
        self.setFont(theme.font(12))
        self.setStyleSheet(
            f"QListWidget {{ background: {theme.surface}; color: {theme.ink}; border: 1px solid {theme.edge};"
            " border-radius: 5px; padding: 3px; outline: none; }"
        )

    def show_offers(self, found: list[Offer], hint: str = "") -> None:
        """Fill the list and choose the first; without offers show the hint, or hide where there is none."""
        self.clear()
        if hint:
            row = QListWidgetItem(hint)
            row.setFlags(Qt.ItemFlag.NoItemFlags)
            self.addItem(row)
        for offer in found:
            item = QListWidgetItem(f"{offer.label}  {offer.detail}")
            item.setData(_OFFER, offer)
            self.addItem(item)
        self.setVisible(self.count() > 0)
        self.raise_()
        if found:
            self.setCurrentRow(0)

    def fit(self, corner: QPoint, room: float) -> None:
        """Take the place below the field: as high as the offers are, or as the room allows."""
        height = max(min(ROW * self.count() + 8, round(room)), ROW + 8)
        self.setGeometry(QRect(corner, QSize(WIDTH, height)))

    def offered(self) -> list[Offer]:
        """What the list offers."""
        rows = [self.item(row).data(_OFFER) for row in range(self.count())]
        return [offer for offer in rows if offer is not None]

    def offer_of(self, item: QListWidgetItem | None) -> Offer | None:
        """The offer of a row; a hint has none."""
        return None if item is None else item.data(_OFFER)

    def step(self, by: int) -> None:
        """Walk up or down, round the ends."""
        if self.offered():
            self.setCurrentRow((self.currentRow() + by) % self.count())


@guarded
class _OfferDelegate(QStyledItemDelegate):
    """Paints an offer: its name in bold, then a line about it in the softer ink."""

    def __init__(self, theme: Theme, parent: QObject) -> None:
        super().__init__(parent)
        self.theme = theme

    def sizeHint(self, _option: QStyleOptionViewItem, _index: object) -> QSize:
        """One row."""
        return QSize(WIDTH - 20, ROW)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: object) -> None:
        """Paint one row."""
        offer: Offer | None = index.data(_OFFER)  # type: ignore[attr-defined]
        rect: QRect = option.rect
        if offer is None:
            self._paint_hint(painter, rect, index.data())  # type: ignore[attr-defined]
            return
        state: QStyle.StateFlag = option.state
        painter.save()
        if state & QStyle.StateFlag.State_Selected:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(self.theme.brush("selection"))
            painter.drawRoundedRect(rect, 3, 3)
        bold, plain = self.theme.font(12, bold=True), self.theme.font(12)
        inner = rect.adjusted(8, 0, -8, 0)
        painter.setPen(self.theme.colour("ink"))
        painter.setFont(bold)
        painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter, offer.label)
        inner.setLeft(inner.left() + round(QFontMetricsF(bold).horizontalAdvance(offer.label)) + 10)
        detail = offer.detail.removeprefix(f"{offer.label} · ")
        painter.setPen(self.theme.colour("ink" if state & QStyle.StateFlag.State_Selected else "soft"))
        painter.setFont(plain)
        elided = QFontMetricsF(plain).elidedText(detail, Qt.TextElideMode.ElideRight, inner.width())
        painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter, elided)
        painter.restore()

    def _paint_hint(self, painter: QPainter, rect: QRect, text: str) -> None:
        font, inner = self.theme.font(12), rect.adjusted(8, 0, -8, 0)
        painter.save()
        painter.setPen(self.theme.colour("soft"))
        painter.setFont(font)
        elided = QFontMetricsF(font).elidedText(text, Qt.TextElideMode.ElideRight, inner.width())
        painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter, elided)
        painter.restore()
