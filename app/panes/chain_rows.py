"""The pieces of the chain builder's pane: arrangements to choose from, rows with a choice, and lines with a mark."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QRadioButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.guard import guarded
from app.panes.about import plain_label
from app.panes.chain_words import offer_word
from app.panes.controls import FlatCombo
from app.panes.marks import SeverityMark
from app.panes.words import unbroken
from app.speech import spoken
from app.theme import Theme
from core.chains import ChainOffer
from core.results import Severity

_INDENT = 21
_NARROWEST = 90  # a choice is rather cut than the pane
_MOST_TOLD = 96
_MOST_OFFERS = 6  # four that are usual and two lines of other volts


class OfferList(QWidget):
    """The arrangements, each with a line of what it does or why it cannot. ``chosen`` carries a number."""

    chosen = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._group = QButtonGroup(self)
        self.buttons: list[QRadioButton] = []
        self.reasons: list[QLabel] = []
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(0)
        self._group.idClicked.connect(self.chosen)
        for _ in range(_MOST_OFFERS):  # all at once, so that the keyboard walks them in order
            self._add()

    def show_offers(self, offers: tuple[ChainOffer, ...], current: int) -> None:
        """Show these, one of them chosen, without announcing it."""
        self._group.setExclusive(False)
        for number, (button, reason) in enumerate(zip(self.buttons, self.reasons, strict=True)):
            button.setVisible(number < len(offers))
            reason.setVisible(number < len(offers))
            button.setChecked(number == current)
            if number < len(offers):
                offer = offers[number]
                says = spoken(offer.says)
                button.setText(offer_word(offer))
                button.setEnabled(offer.is_possible)
                button.setAccessibleDescription(says)
                reason.setText(says)
        self._group.setExclusive(True)

    def _add(self) -> None:
        button, reason = QRadioButton(self), plain_label("", "soft", self)
        reason.setContentsMargins(_INDENT, 0, 0, 2)
        button.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self._group.addButton(button, len(self.buttons))
        self.buttons.append(button)
        self.reasons.append(reason)
        self._layout.addWidget(button)
        self._layout.addWidget(reason)
        self._dress(button, reason)

    def _dress(self, button: QRadioButton, reason: QLabel) -> None:
        button.setFont(self._theme.font(12, bold=True))
        reason.setFont(self._theme.font(11))

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        for button, reason in zip(self.buttons, self.reasons, strict=True):
            self._dress(button, reason)


class ChoiceRow(QWidget):
    """A label and a choice beside it. ``chosen`` carries the number of what the user took."""

    chosen = Signal(int)

    def __init__(self, word: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.label = QLabel(word, self)
        self.label.setProperty("role", "soft")
        self.combo = FlatCombo(theme, self)
        self.combo.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.combo.setMinimumWidth(_NARROWEST)
        self.combo.setAccessibleName(word)
        self.label.setBuddy(self.combo)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(self.label)
        row.addWidget(self.combo, 1)
        self.combo.activated.connect(self.chosen)
        self.set_theme(theme)

    def show_words(self, words: Iterable[str], current: int) -> None:
        """Show these choices, one of them chosen, without announcing it."""
        given = list(words)
        if given != [self.combo.itemText(number) for number in range(self.combo.count())]:
            self.combo.clear()
            self.combo.addItems(given)
            self.combo.updateGeometry()
        self.combo.setCurrentIndex(current)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.label.setFont(theme.font(12))
        self.combo.set_theme(theme)


Line = tuple[Severity, str]


class MarkedLines(QWidget):
    """Sentences below each other, each after the mark of its severity."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.lines: tuple[Line, ...] = ()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 12, 0)  # the scroll bar lies over it
        self._grid.setHorizontalSpacing(6)
        self._grid.setVerticalSpacing(2)
        self._grid.setColumnStretch(1, 1)

    def show_lines(self, lines: Iterable[Line]) -> None:
        """Show these and no others."""
        given = tuple(lines)
        if given == self.lines:
            return
        self.lines = given
        while self._grid.count():
            item = self._grid.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for row, (severity, text) in enumerate(given):
            # a figure and its unit stay on one line
            label = plain_label(unbroken(text), "", self)
            label.setFont(self._theme.font(11))
            self._grid.addWidget(SeverityMark(severity, self._theme, self), row, 0, Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(label, row, 1)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        lines, self.lines = self.lines, ()
        self.show_lines(lines)


class PlainArea(QScrollArea):
    """Room in which content can be scrolled, without a frame."""

    def __init__(self, content: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(content)


@guarded
class FittedArea(PlainArea):
    """As high as its content, up to a limit; gone while there is none."""

    def fit(self) -> None:
        """Take the height of what is shown now."""
        content = self.widget()
        layout = None if content is None else content.layout()
        wanted = layout.totalHeightForWidth(self.viewport().width()) if layout is not None else 0
        self.setVisible(wanted > 0)
        self.setFixedHeight(min(max(wanted, 1), _MOST_TOLD))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lines wrap elsewhere at another width."""
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self.fit()
