"""Small controls in the look of the sheet: text buttons, a switch, flat tabs. All work by keyboard."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QFontMetrics, QKeyEvent, QPainter, QPaintEvent, QPolygonF, QWheelEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QButtonGroup,
    QComboBox,
    QHBoxLayout,
    QSizePolicy,
    QTabBar,
    QWidget,
)

from app.guard import guarded
from app.theme import Theme

_KEYBOARD = (
    Qt.FocusReason.TabFocusReason,
    Qt.FocusReason.BacktabFocusReason,
    Qt.FocusReason.ShortcutFocusReason,
)

# the usual signs for playing, as polygons around the middle
TRANSPORT: dict[str, tuple[tuple[tuple[float, float], ...], ...]] = {
    "play": (((-3.5, -5.5), (5.5, 0), (-3.5, 5.5)),),
    "pause": (((-4.5, -5), (-2.5, -5), (-2.5, 5), (-4.5, 5)), ((2.5, -5), (4.5, -5), (4.5, 5), (2.5, 5))),
    "previous": (((4.5, -4.5), (-2.5, 0), (4.5, 4.5)), ((-5, -4.5), (-4, -4.5), (-4, 4.5), (-5, 4.5))),
    "next": (((-4.5, -4.5), (2.5, 0), (-4.5, 4.5)), ((4, -4.5), (5, -4.5), (5, 4.5), (4, 4.5))),
}


def paint_focus_ring(painter: QPainter, rect: QRectF, theme: Theme, radius: float = 4) -> None:
    """The ring around what the keyboard acts on."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(theme.pen("accent", 1.5))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(rect.adjusted(1, 1, -1, -1), radius, radius)


def ground_style(widget: str, theme: Theme) -> str:
    """A style sheet that gives a kind of view the ground of the panes.

    A palette would not do: a style sheet in force keeps the one it has seen first in a view's viewport.
    """
    return f"{widget} {{ background: {theme.chrome}; color: {theme.ink}; border: none; }}"


def scroll_bar_style(theme: Theme) -> str:
    """A style sheet for slim scroll bars that keep out of the way of what they scroll."""
    return f"""
    QScrollBar:vertical {{ background: transparent; width: 10px; margin: 0; border: none; }}
    QScrollBar:horizontal {{ background: transparent; height: 10px; margin: 0; border: none; }}
    QScrollBar::handle {{ background: {theme.edge}; border-radius: 3px; }}
    QScrollBar::handle:vertical {{ min-height: 24px; margin: 1px 2px; }}
    QScrollBar::handle:horizontal {{ min-width: 24px; margin: 2px 1px; }}
    QScrollBar::handle:hover {{ background: {theme.soft}; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; border: none; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    QAbstractScrollArea::corner {{ background: transparent; border: none; }}
    """


@guarded
class _Themed(QAbstractButton):
    """A button that paints itself and shows its focus ring only to those who use the keyboard."""

    def __init__(self, text: str, theme: Theme, px: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.theme = theme
        self.px = px
        self._ring = False
        self.setText(text)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.theme = theme
        self.update()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show the ring when the focus came by keyboard."""
        self._ring = event.reason() in _KEYBOARD
        super().focusInEvent(event)
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return works like the space bar."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
            return
        super().keyPressEvent(event)

    @property
    def shows_ring(self) -> bool:
        """Whether the focus ring is to be painted."""
        return self._ring and self.hasFocus()


@guarded
class TextButton(_Themed):
    """A button that is only its text, underlined under the pointer; checked, it is in ink and bold."""

    def __init__(self, text: str, theme: Theme, px: int = 11, parent: QWidget | None = None) -> None:
        super().__init__(text, theme, px, parent)
        self.setCheckable(True)

    def sizeHint(self) -> QSize:
        """Room for the text at its boldest, and the ring."""
        metrics = QFontMetrics(self.theme.font(self.px, bold=True))
        return QSize(metrics.horizontalAdvance(self.text()) + 8, metrics.height() + 4)

    def nextCheckState(self) -> None:
        """A click does not toggle; whoever listens decides which button is the current one."""

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the text, and the ring where the keyboard is."""
        painter = QPainter(self)
        font = self.theme.font(self.px, bold=self.isChecked())
        font.setUnderline(self.underMouse() and not self.isChecked())
        painter.setFont(font)
        role = "ink" if self.isChecked() or self.underMouse() else "soft"
        painter.setPen(self.theme.colour(role if self.isEnabled() else "edge"))
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self.text())
        if self.shows_ring:
            paint_focus_ring(painter, QRectF(self.rect()), self.theme)
        painter.end()


@guarded
class SignButton(_Themed):
    """A small button that is only a sign: ``dots`` for a menu, ``cross`` to close, or one of ``TRANSPORT``."""

    def __init__(self, sign: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__("", theme, 12, parent)
        self._sign = sign

    @property
    def sign(self) -> str:
        """What the button shows."""
        return self._sign

    def set_sign(self, sign: str) -> None:
        """Show another sign."""
        self._sign = sign
        self.update()

    def sizeHint(self) -> QSize:
        """A square to hit."""
        return QSize(22, 22)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the sign, and the ring where the keyboard is."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        role, middle = "ink" if self.underMouse() else "soft", QRectF(self.rect()).center()
        role = role if self.isEnabled() else "faint"
        painter.setPen(self.theme.pen(role, 1.5))
        if self._sign == "cross":
            for x, y in ((4, 4), (4, -4)):
                painter.drawLine(middle - QPointF(x, y), middle + QPointF(x, y))
        elif self._sign in TRANSPORT:
            painter.setBrush(self.theme.brush(role))
            for shape in TRANSPORT[self._sign]:
                painter.drawPolygon(QPolygonF([middle + QPointF(x, y) for x, y in shape]))
        else:
            painter.setBrush(self.theme.brush(role))
            for x in (-5, 0, 5):
                painter.drawEllipse(middle + QPointF(x, 0), 0.6, 0.6)
        if self.shows_ring:
            paint_focus_ring(painter, QRectF(self.rect()), self.theme)
        painter.end()


@guarded
class _Segment(_Themed):
    def __init__(self, text: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(text, theme, 12, parent)
        self.setCheckable(True)

    def sizeHint(self) -> QSize:
        metrics = QFontMetrics(self.theme.font(self.px))
        return QSize(metrics.horizontalAdvance(self.text()) + 30, 28)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        rect = QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5)
        chosen = self.isChecked()
        painter.setPen(self.theme.pen("ink" if chosen else "edge", 1))
        painter.setBrush(self.theme.brush("ink" if chosen else "chrome"))
        painter.drawRoundedRect(rect, rect.height() / 2, rect.height() / 2)
        painter.setFont(self.theme.font(self.px, bold=chosen))
        painter.setPen(self.theme.colour("chrome" if chosen else "ink"))
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self.text())
        if self.shows_ring:
            ring = QRectF(self.rect()).adjusted(0, 0, 0, 0)
            inner = ring.adjusted(3.5, 3.5, -3.5, -3.5) if chosen else ring
            paint_focus_ring(painter, inner, self.theme, inner.height() / 2 - 1)
        painter.end()


class Switch(QWidget):
    """Two or more choices side by side, one of them chosen. ``chosen`` carries its number."""

    chosen = Signal(int)

    def __init__(
        self, words: tuple[str, ...], name: str, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._group = QButtonGroup(self)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        self.buttons: list[_Segment] = []
        for number, word in enumerate(words):
            button = _Segment(word, theme, self)
            button.setAccessibleName(f"{name}: {word}")
            self._group.addButton(button, number)
            self.buttons.append(button)
            layout.addWidget(button)
        self.buttons[0].setChecked(True)
        self._group.idClicked.connect(self.chosen)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def set_chosen(self, number: int | None) -> None:
        """Show another choice, or that none holds, without announcing it."""
        if number is not None:
            self.buttons[number].setChecked(True)
            return
        self._group.setExclusive(False)  # an exclusive group would keep one checked
        for button in self.buttons:
            button.setChecked(False)
        self._group.setExclusive(True)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        for button in self.buttons:
            button.set_theme(theme)


@guarded
class FlatCombo(QComboBox):
    """A choice in the look of the fields: a plain frame, the text, and a small arrow."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.setFont(theme.font(12))
        self.update()

    def sizeHint(self) -> QSize:
        """Room for the longest choice and the arrow."""
        metrics = QFontMetrics(self._theme.font(12))
        texts = [self.itemText(number) for number in range(self.count())]
        longest = max((metrics.horizontalAdvance(text) for text in texts), default=60)
        return QSize(longest + 34, 26)

    def minimumSizeHint(self) -> QSize:
        """Choices are never cut."""
        return self.sizeHint()

    def showPopup(self) -> None:
        """Open the list of choices, which is called as the choice itself."""
        self.view().setAccessibleName(self.accessibleName())
        super().showPopup()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """The wheel scrolls what is around; it does not change a choice that it passes over."""
        event.ignore()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the frame, the chosen text and the arrow."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme, rect = self._theme, QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5)
        painter.setPen(theme.pen("edge" if self.isEnabled() else "line", 1))
        painter.setBrush(theme.brush("surface" if self.isEnabled() else "chrome"))
        painter.drawRoundedRect(rect, 4, 4)
        painter.setFont(theme.font(12))
        painter.setPen(theme.colour("ink" if self.isEnabled() else "edge"))
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(rect.adjusted(7, 0, -20, 0), flags, self.currentText())
        tip = QPointF(rect.right() - 12, rect.center().y() + 2)
        painter.setPen(theme.pen("soft" if self.isEnabled() else "edge", 1.5))
        painter.drawPolyline([tip + QPointF(-4, -4), tip, tip + QPointF(4, -4)])
        if self.hasFocus():
            paint_focus_ring(painter, QRectF(self.rect()), theme)
        painter.end()


@guarded
class FlatTabs(QTabBar):
    """Tabs that are words over a line; the current one is bold and carries a stroke of accent."""

    def __init__(
        self, words: tuple[str, ...], name: str, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._ring = False
        self.setAccessibleName(name)
        self.setDrawBase(False)
        self.setExpanding(False)
        self.setUsesScrollButtons(True)  # only where a pane is too narrow for its words
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        for word in words:
            self.addTab(word)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.updateGeometry()
        self.update()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show the ring when the focus came by keyboard."""
        self._ring = event.reason() in _KEYBOARD
        super().focusInEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Moving by keyboard shows where it is."""
        self._ring = True
        super().keyPressEvent(event)

    def tabSizeHint(self, index: int) -> QSize:
        """Room for the word at its boldest."""
        metrics = QFontMetrics(self._theme.font(13, bold=True))
        return QSize(metrics.horizontalAdvance(self.tabText(index)) + 16, 32)

    def minimumTabSizeHint(self, index: int) -> QSize:
        """Words are never cut."""
        return self.tabSizeHint(index)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the words and the stroke under the current one."""
        painter = QPainter(self)
        theme = self._theme
        for index in range(self.count()):
            rect = QRectF(self.tabRect(index))
            current = index == self.currentIndex()
            painter.setFont(theme.font(13, bold=current))
            painter.setPen(theme.colour("ink" if current else "soft"))
            painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, self.tabText(index))
            if current:
                painter.setPen(theme.pen("accent", 2))
                low = rect.bottom() - 1
                if self.count() > 1:
                    painter.drawLine(QPointF(rect.left() + 7, low), QPointF(rect.right() - 7, low))
                if self._ring and self.hasFocus():
                    paint_focus_ring(painter, rect.adjusted(1, 2, -1, -4), theme)
        painter.end()
