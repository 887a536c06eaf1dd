"""The add field at the top left of the drawing: type what to add, Enter puts it on the sheet."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QEvent, QPoint, QRect, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from app.canvas.adding import Offer
from app.guard import guarded
from app.theme import Theme

if TYPE_CHECKING:
    from app.canvas.offer_list import OfferList

_WIDTH, _HEIGHT, _PADDING = 230, 30, 26
_PLACE = QPoint(16, 14)


@guarded
class AddField(QLineEdit):
    """Offers what a text may mean in a list below; ``chosen`` carries the offer that Enter took.

    ``explain`` says why there is no offer for a text. ``considered`` carries an offer that is walked to, or a wire
    whose ends have been typed, and None when that is over.
    """

    chosen = Signal(object)
    considered = Signal(object)
    left = Signal()

    def __init__(
        self,
        parent: QWidget,
        theme: Theme,
        offers: Callable[[str], list[Offer]],
        explain: Callable[[str], str],
    ) -> None:
        super().__init__(parent)
        self._offers = offers
        self._explain = explain
        translate = QCoreApplication.translate
        self.setPlaceholderText(translate("adding", "add: ECC83, 10R, relay…"))
        self.setAccessibleName(translate("adding", "Add a part"))
        self.setToolTip(
            translate("adding", "Type a tube, a value or a word, then Enter. The key / brings you here.")
        )
        self.setMaxLength(200)  # a note may be typed here
        self._theme = theme
        self._list: OfferList | None = None
        self.textEdited.connect(self._on_edited)
        self.set_theme(theme)
        self.setGeometry(QRect(_PLACE, QSize(max(_WIDTH, self._needed_width()), _HEIGHT)))

    def _needed_width(self) -> int:
        """Room for what the empty field says."""
        return self.fontMetrics().horizontalAdvance(self.placeholderText()) + _PADDING

    @property
    def list(self) -> OfferList:
        """The list of offers, made when something is typed for the first time."""
        if self._list is None:
            from app.canvas.offer_list import OfferList  # noqa: PLC0415 - most starts need no list

            self._list = OfferList(self.parentWidget(), self._theme)
            self._list.itemClicked.connect(lambda item: self._choose(self.list.offer_of(item)))
        return self._list

    def set_theme(self, theme: Theme) -> None:
        """Show the field in another theme."""
        self._theme = theme
        if self._list is not None:
            self._list.set_theme(theme)
        self.setFont(theme.font(13))
        self.setStyleSheet(
            f"QLineEdit {{ background: {theme.surface}; color: {theme.ink}; border: 1px solid {theme.edge};"
            f" border-radius: 5px; padding: 3px 9px; selection-background-color: {theme.selection};"
            f" selection-color: {theme.ink}; }}"
            f"QLineEdit:focus {{ border: 2px solid {theme.accent}; padding: 2px 8px; }}"
        )

    def enter(self) -> None:
        """Take the keyboard."""
        self.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.selectAll()

    def begin_with(self, text: str) -> None:
        """Stand ready to type on after a text."""
        self.setText(text)
        self._on_edited(text)

    def offered(self) -> Sequence[Offer]:
        """What the list shows."""
        return self.list.offered()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Down and Up walk the offers, Escape goes back to the drawing."""
        key = event.key()
        if key == Qt.Key.Key_Escape:
            self._close()
            self.clear()
            self.left.emit()
        elif key in (Qt.Key.Key_Down, Qt.Key.Key_Up):
            self.list.step(1 if key == Qt.Key.Key_Down else -1)
            self.considered.emit(self.list.offer_of(self.list.currentItem()))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            # a line edit would pass the key on, and the drawing would take it for a wish to edit
            self._take()
        else:
            super().keyPressEvent(event)
            event.accept()  # what means nothing here must not mean something to the drawing below

    def event(self, event: QEvent) -> bool:
        """Closes the list when the field loses the keyboard."""
        if event.type() == QEvent.Type.FocusOut:
            self.considered.emit(None)
            if self._list is not None and not self._list.underMouse():
                self._list.hide()
        elif event.type() == QEvent.Type.FocusIn and self.text():
            self._on_edited(self.text())
        elif event.type() == QEvent.Type.ShortcutOverride:
            # while the field has the keyboard, keys are for it and not for the window's actions
            event.accept()
        return super().event(event)

    def _on_edited(self, text: str) -> None:
        found = self._offers(text)
        is_wire = bool(found) and found[0].part_template["kind"] == "wire"
        self.considered.emit(found[0] if is_wire else None)
        hint = self._explain(text) if text.strip() and not found else ""
        if not found and not hint and self._list is None:
            return
        self.list.show_offers(found, hint)
        parent = self.parentWidget()
        room = (parent.height() if parent is not None else 0) - self.geometry().bottom() - 12
        self.list.fit(QPoint(_PLACE.x(), self.geometry().bottom() + 4), room)

    def _take(self) -> None:
        if self.list.isHidden() and self.text():
            self._on_edited(self.text())
        if self.text():
            self._choose(self.list.offer_of(self.list.currentItem()))

    def _choose(self, offer: Offer | None) -> None:
        if offer is not None:
            self._close()
            self.clear()
            self.left.emit()
            self.chosen.emit(offer)

    def _close(self) -> None:
        self.considered.emit(None)
        if self._list is not None:
            self._list.show_offers([])
