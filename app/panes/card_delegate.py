"""Paints a finding as a card: mark, title, what is wrong, what mends it, source, and its mends as buttons.

All text is plain text, wrapped to the width of the list and never cut.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QFont, QPainter, QTextLayout, QTextOption
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.guard import guarded
from app.panes.controls import paint_focus_ring
from app.panes.finding_cards import Card
from app.panes.findings_model import CARD_ROLE
from app.panes.marks import paint_severity
from app.panes.words import unbroken
from app.theme import Theme

_GAP = 6  # between cards
_PAD = 10
_TEXT_LEFT = 34
_BETWEEN = 3  # between paragraphs
_MOST_LAYOUTS = 2000
_CHIPS = "chips"  # where the mends stand among the paragraphs
_CHIP_GAP = 6.0
_CHIP_PAD = 8.0
_CHIP_DROP = 3.0


@dataclass(frozen=True)
class _Paragraph:
    layout: QTextLayout
    top: float
    colour: QColor


@dataclass(frozen=True)
class _Chip:
    """A mend as a button; its place is within the card."""

    layout: QTextLayout
    rect: QRectF


@dataclass(frozen=True)
class _Laid:
    paragraphs: tuple[_Paragraph, ...]
    chips: tuple[_Chip, ...]
    height: int


@guarded
class CardDelegate(QStyledItemDelegate):
    """Lays cards out once for each width, and paints them."""

    def __init__(self, theme: Theme, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._laid: dict[tuple[Card, int], _Laid] = {}
        self.hot: tuple[int, int] | None = None
        """The row and number of the mend that is being considered."""

    def chip_at(self, card: Card, width: int, point: QPointF) -> int | None:
        """The number of the mend at a point within a card; None where there is none."""
        chips = enumerate(self._layout(card, width).chips)
        return next((number for number, chip in chips if chip.rect.contains(point)), None)

    def chip_rect(self, card: Card, width: int, number: int) -> QRectF:
        """Where a mend stands within its card."""
        return QRectF(self._layout(card, width).chips[number].rect)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self._laid.clear()

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        """As wide as the list, as high as the text needs."""
        card = index.data(CARD_ROLE)
        width = _list_width(option)
        if not isinstance(card, Card):
            return super().sizeHint(option, index)
        return QSize(width, self._layout(card, width).height + _GAP)

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """Paint one card."""
        card = index.data(CARD_ROLE)
        if not isinstance(card, Card):
            return
        rect = QRectF(option.rect).adjusted(0, 0, 0, -_GAP)
        state: QStyle.StateFlag = option.state
        laid = self._layout(card, int(rect.width()))
        painter.save()
        self._paint_ground(painter, rect, state)
        mark = rect.topLeft() + QPointF(18, _PAD + 8.5)
        paint_severity(painter, mark, 12, card.severity, self._theme)
        for paragraph in laid.paragraphs:
            painter.setPen(paragraph.colour)
            paragraph.layout.draw(painter, rect.topLeft() + QPointF(_TEXT_LEFT, paragraph.top))
        for number, chip in enumerate(laid.chips):
            self._paint_chip(painter, rect.topLeft(), chip, is_hot=self.hot == (index.row(), number))
        painter.restore()

    def _paint_chip(self, painter: QPainter, corner: QPointF, chip: _Chip, is_hot: bool) -> None:
        """A mend: an outline, filled while it is being considered."""
        theme = self._theme
        rect = chip.rect.translated(corner)
        painter.setPen(theme.pen("accent", 1))
        painter.setBrush(theme.brush("accent" if is_hot else "surface"))
        painter.drawRoundedRect(rect.adjusted(0.5, 0.5, -0.5, -0.5), 4, 4)
        painter.setPen(theme.colour("chrome" if is_hot else "accent_text"))
        chip.layout.draw(painter, rect.topLeft() + QPointF(_CHIP_PAD, _CHIP_DROP))

    def _paint_ground(self, painter: QPainter, rect: QRectF, state: QStyle.StateFlag) -> None:
        theme = self._theme
        chosen = bool(state & QStyle.StateFlag.State_Selected)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(theme.pen("halo" if chosen else "line", 1))
        painter.setBrush(theme.brush("selection" if chosen else "surface"))
        painter.drawRoundedRect(rect.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5)
        if state & QStyle.StateFlag.State_HasFocus and state & QStyle.StateFlag.State_KeyboardFocusChange:
            paint_focus_ring(painter, rect.adjusted(1, 1, -1, -1), theme, 5)

    def _layout(self, card: Card, width: int) -> _Laid:
        key = (card, width)
        found = self._laid.get(key)
        if found is None:
            if len(self._laid) >= _MOST_LAYOUTS:
                self._laid.clear()
            found = self._laid[key] = self._lay_out(card, width)
        return found

    def _lay_out(self, card: Card, width: int) -> _Laid:
        theme, line = self._theme, max(width - _TEXT_LEFT - _PAD, 60)
        texts = (
            (card.title, theme.font(13, bold=True), "ink"),
            (card.says, theme.font(12), "soft"),
            (card.mend, theme.font(12, bold=True), "accent_text"),
            ("", theme.font(12), _CHIPS),
            (card.footer, theme.font(11), "soft"),
        )
        paragraphs: list[_Paragraph] = []
        chips: tuple[_Chip, ...] = ()
        top = float(_PAD)
        for text, font, role in texts:
            if role == _CHIPS:
                chips, top = self._lay_chips(card, top, line)
            elif text:
                layout, height = _wrapped(text, font, line)
                paragraphs.append(_Paragraph(layout, top, theme.colour(role)))
                top += height + _BETWEEN
        return _Laid(tuple(paragraphs), chips, round(top - _BETWEEN + _PAD))

    def _lay_chips(self, card: Card, top: float, line: float) -> tuple[tuple[_Chip, ...], float]:
        """The mends side by side as far as the line reaches, and where what follows begins."""
        chips: list[_Chip] = []
        x, row = 0.0, 0.0
        top += _CHIP_DROP if card.mends else 0.0
        for offer in card.mends:
            layout, height = _wrapped(offer.label, self._theme.font(12), line - 2 * _CHIP_PAD)
            width = min(line, math.ceil(_natural_width(layout)) + 2 * _CHIP_PAD)
            if x and x + width > line:
                x, top = 0.0, top + row + _CHIP_GAP
                row = 0.0
            size = height + 2 * _CHIP_DROP
            chips.append(_Chip(layout, QRectF(_TEXT_LEFT + x, top, width, size)))
            x, row = x + width + _CHIP_GAP, max(row, size)
        return tuple(chips), top + row + (_CHIP_GAP if chips else 0.0)


def _natural_width(layout: QTextLayout) -> float:
    """The width of the widest line of a text that is laid out."""
    return max((layout.lineAt(at).naturalTextWidth() for at in range(layout.lineCount())), default=0.0)


def _wrapped(text: str, font: QFont, width: float) -> tuple[QTextLayout, float]:
    """A text broken into lines of at most ``width`` pixels, inside words where there is no other place."""
    layout = QTextLayout(unbroken(text), font)
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    layout.setTextOption(option)
    layout.setCacheEnabled(True)
    height = 0.0
    layout.beginLayout()
    while True:
        line = layout.createLine()
        if not line.isValid():
            break
        line.setLineWidth(width)
        line.setPosition(QPointF(0, height))
        height += line.height() + 1
    layout.endLayout()
    return layout, height


def _list_width(option: QStyleOptionViewItem) -> int:
    widget: QWidget | None = option.widget
    viewport = getattr(widget, "viewport", None)
    if viewport is not None:
        return int(viewport().width())
    return int(option.rect.width())
