"""The add field at the top left of the drawing: type what to add, Enter puts it on the sheet."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QPoint, QRect, QSize, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from app.canvas.adding import Offer, offers
from app.theme import Theme
from core.catalogue import Catalogue

_WIDTH, _HEIGHT, _LIST_WIDTH, _ROW = 230, 30, 380, 26
_PLACE = QPoint(16, 14)
_OFFER = Qt.ItemDataRole.UserRole


class AddField(QLineEdit):
    """Offers what a text may mean in a list below; ``chosen`` carries the offer that Enter took."""

    chosen = Signal(object)
    left = Signal()

    def __init__(self, parent: QWidget, theme: Theme, catalogue: Callable[[], Catalogue]) -> None:
        super().__init__(parent)
        self._catalogue = catalogue
        translate = QCoreApplication.translate
        self.setPlaceholderText(translate("adding", "add: ECC83, 10R, relay…"))
        self.setAccessibleName(translate("adding", "Add a part"))
        self.setToolTip(
            translate("adding", "Type a tube, a value or a word, then Enter. The key / brings you here.")
        )
        self.setMaxLength(60)
        self.list = QListWidget(parent)
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setAccessibleName(translate("adding", "What can be added"))
        self._delegate = _OfferDelegate(theme, self.list)
        self.list.setItemDelegate(self._delegate)
        self.list.hide()
        self.list.itemClicked.connect(self._on_clicked)
        self.textEdited.connect(self._on_edited)
        self.returnPressed.connect(self._take)
        self.setGeometry(QRect(_PLACE, QSize(_WIDTH, _HEIGHT)))
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Show the field in another theme."""
        self._delegate.theme = theme
        self.setFont(theme.font(13))
        self.list.setFont(theme.font(12))
        self.setStyleSheet(
            f"QLineEdit {{ background: {theme.surface}; color: {theme.ink}; border: 1px solid {theme.edge};"
            f" border-radius: 5px; padding: 3px 9px; selection-background-color: {theme.selection};"
            f" selection-color: {theme.ink}; }}"
            f"QLineEdit:focus {{ border: 2px solid {theme.accent}; padding: 2px 8px; }}"
        )
        self.list.setStyleSheet(
            f"QListWidget {{ background: {theme.surface}; color: {theme.ink}; border: 1px solid {theme.edge};"
            " border-radius: 5px; padding: 3px; outline: none; }"
        )

    def enter(self) -> None:
        """Take the keyboard."""
        self.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.selectAll()

    def offered(self) -> list[Offer]:
        """What the list shows."""
        return [self.list.item(row).data(_OFFER) for row in range(self.list.count())]

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Down and Up walk the offers, Escape goes back to the drawing."""
        key = event.key()
        if key == Qt.Key.Key_Escape:
            self._close()
            self.clear()
            self.left.emit()
        elif key in (Qt.Key.Key_Down, Qt.Key.Key_Up) and self.list.count():
            step = 1 if key == Qt.Key.Key_Down else -1
            self.list.setCurrentRow((self.list.currentRow() + step) % self.list.count())
        else:
            super().keyPressEvent(event)

    def event(self, event: QEvent) -> bool:
        """Closes the list when the field loses the keyboard."""
        if event.type() == QEvent.Type.FocusOut and not self.list.underMouse():
            self.list.hide()
        elif event.type() == QEvent.Type.FocusIn and self.text():
            self._on_edited(self.text())
        elif event.type() == QEvent.Type.ShortcutOverride:
            # while the field has the keyboard, keys are for it and not for the window's actions
            event.accept()
        return super().event(event)

    def _on_edited(self, text: str) -> None:
        found = offers(text, self._catalogue())
        self.list.clear()
        for offer in found:
            item = QListWidgetItem(f"{offer.label}  {offer.detail}")
            item.setData(_OFFER, offer)
            self.list.addItem(item)
        if not found:
            self.list.hide()
            return
        self.list.setCurrentRow(0)
        height = _ROW * len(found) + 8
        parent = self.parentWidget()
        room = (parent.height() if parent is not None else 0) - self.geometry().bottom() - 12
        self.list.setGeometry(
            _PLACE.x(), self.geometry().bottom() + 4, _LIST_WIDTH, max(min(height, room), _ROW + 8)
        )
        self.list.raise_()
        self.list.show()

    def _room(self) -> int:
        parent = self.parentWidget()
        return self.height() if parent is None else parent.height()

    def _on_clicked(self, item: QListWidgetItem) -> None:
        self._choose(item.data(_OFFER))

    def _take(self) -> None:
        if self.list.isHidden() and self.text():
            self._on_edited(self.text())
        item = self.list.currentItem()
        if item is not None and self.text():
            self._choose(item.data(_OFFER))

    def _choose(self, offer: Offer) -> None:
        self._close()
        self.clear()
        self.chosen.emit(offer)

    def _close(self) -> None:
        self.list.clear()
        self.list.hide()


class _OfferDelegate(QStyledItemDelegate):
    """Paints an offer: its name in bold, then a line about it in the softer ink."""

    def __init__(self, theme: Theme, parent: QObject) -> None:
        super().__init__(parent)
        self.theme = theme

    def sizeHint(self, _option: QStyleOptionViewItem, _index: object) -> QSize:
        """One row."""
        return QSize(_LIST_WIDTH - 20, _ROW)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: object) -> None:
        """Paint one row."""
        offer: Offer = index.data(_OFFER)  # type: ignore[attr-defined]
        rect: QRect = option.rect
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
