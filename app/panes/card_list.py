"""The list of finding cards: walked with the arrow keys, its mends chosen with the pointer or with keys."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QPointF, QRect, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QListView, QWidget

from app.guard import guarded
from app.panes.card_delegate import CardDelegate
from app.panes.finding_cards import Card
from app.panes.findings_model import CARD_ROLE
from app.theme import Theme

_RETURN = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)
_SIDEWAYS = {Qt.Key.Key_Right: 1, Qt.Key.Key_Left: -1}


@guarded
class CardList(QListView):
    """The list of cards. ``chosen`` comes for a click, Return, or a move with the arrow keys.

    ``considered`` carries a card and the number of the mend that the pointer is on, or that the keys have come to;
    ``left`` says that it no longer is; ``taken`` that it is to be done.
    """

    chosen = Signal(QModelIndex)
    considered = Signal(QModelIndex, int)
    left = Signal()
    taken = Signal(QModelIndex, int)

    def __init__(self, theme: Theme, delegate: CardDelegate, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._delegate = delegate
        self._pressed: tuple[int, int] | None = None
        self.setItemDelegate(delegate)
        self.empty_text = ""
        self.theme = theme
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setMouseTracking(True)
        self.verticalScrollBar().setSingleStep(24)
        self.clicked.connect(self.chosen)

    # mends

    @property
    def hot(self) -> tuple[int, int] | None:
        """The row and number of the mend that is being considered."""
        return self._delegate.hot

    def _consider(self, hot: tuple[int, int] | None) -> None:
        """Turn to another mend, or to none."""
        before = self._delegate.hot
        if hot == before:
            return
        self._delegate.hot = hot
        for row in {one[0] for one in (before, hot) if one is not None}:
            self.update(self.model().index(row, 0))
        if hot is None:
            self.left.emit()
        else:
            self.considered.emit(self.model().index(hot[0], 0), hot[1])

    def _mend_at(self, event: QMouseEvent) -> tuple[int, int] | None:
        """The mend under the pointer."""
        index = self.indexAt(event.position().toPoint())
        card = index.data(CARD_ROLE)
        if not isinstance(card, Card):
            return None
        corner = self.visualRect(index).topLeft()
        number = self._delegate.chip_at(card, self.viewport().width(), event.position() - QPointF(corner))
        return None if number is None else (index.row(), number)

    def mend_rect(self, index: QModelIndex, number: int) -> QRect:
        """Where a mend of a card stands in the viewport."""
        card = index.data(CARD_ROLE)
        rect = self._delegate.chip_rect(card, self.viewport().width(), number)
        return rect.translated(QPointF(self.visualRect(index).topLeft())).toAlignedRect()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Consider the mend under the pointer."""
        at = self._mend_at(event)
        if event.buttons() == Qt.MouseButton.NoButton:
            self._consider(at)
        shape = Qt.CursorShape.ArrowCursor if at is None else Qt.CursorShape.PointingHandCursor
        self.viewport().setCursor(shape)
        if self._pressed is None:
            super().mouseMoveEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A press on a mend is for it alone."""
        self._pressed = self._mend_at(event) if event.button() == Qt.MouseButton.LeftButton else None
        if self._pressed is None:
            super().mousePressEvent(event)
        else:
            event.accept()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Released where it was pressed, a mend is done."""
        pressed, self._pressed = self._pressed, None
        if pressed is None:
            super().mouseReleaseEvent(event)
        elif self._mend_at(event) == pressed:
            self._take(pressed)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """The second press of a double click is a press as any other."""
        self.mousePressEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """The pointer has left the list."""
        self._consider(None)
        super().leaveEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """So have the keys."""
        self._consider(None)
        super().focusOutEvent(event)

    def reset(self) -> None:
        """Other cards: nothing on them is being considered."""
        self._pressed = None
        if self._delegate.hot is not None:
            self._delegate.hot = None
            self.left.emit()
        super().reset()

    def _take(self, mend: tuple[int, int]) -> None:
        index = self.model().index(mend[0], 0)
        self._delegate.hot = None
        self.taken.emit(index, mend[1])

    # keys

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Moving to another card chooses it, as does Return; Right and Left go through its mends, Return does one."""
        before, key = self.currentIndex(), Qt.Key(event.key())
        if key in _RETURN:
            if self.hot is not None:
                self._take(self.hot)
            elif before.isValid():
                self.chosen.emit(before)
        elif key in _SIDEWAYS and before.isValid():
            self._step(before, _SIDEWAYS[key])
        elif key == Qt.Key.Key_Escape and self.hot is not None:
            self._consider(None)
        else:
            super().keyPressEvent(event)
            if self.currentIndex() != before and self.currentIndex().isValid():
                self._consider(None)
                self.chosen.emit(self.currentIndex())
            return
        event.accept()

    def _step(self, index: QModelIndex, step: int) -> None:
        """Go to the next mend of a card; before the first one is none."""
        card = index.data(CARD_ROLE)
        count = len(card.mends) if isinstance(card, Card) else 0
        hot = self.hot
        number = (hot[1] if hot is not None and hot[0] == index.row() else -1) + step
        if 0 <= number < count:
            self._consider((index.row(), number))
            self.scrollTo(index)
        elif number < 0:
            self._consider(None)

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
