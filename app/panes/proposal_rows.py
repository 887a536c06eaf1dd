"""What a considered edit would do to the findings: a small card that floats where the pointer is not."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QCoreApplication, QPoint, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QCursor, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from app.guard import guarded
from app.panes.finding_cards import Card, cards
from app.panes.marks import paint_severity
from app.proposal import Proposed
from app.theme import Theme
from core.results import Severity

MOST = 3
_ROW, _EDGE, _WIDTH = 19, 8, 300
_SIGN, _MARK = 13, 17  # room for plus or minus, and for the mark of the severity

Sign = Literal["new", "gone"]


@dataclass(frozen=True)
class Line:
    """One finding that would appear or vanish."""

    sign: Sign
    severity: Severity
    title: str


@dataclass(frozen=True)
class Outlook:
    """What the card says: the edit's name, how many findings would appear and vanish, and the gravest of them."""

    heading: str
    new: int
    gone: int
    lines: tuple[Line, ...]

    @property
    def text(self) -> str:
        """All of it as one text, for those who hear it."""
        said = QCoreApplication.translate("findings", "{count} would appear, {gone} would vanish")
        return "\n".join(
            (self.heading, said.format(count=self.new, gone=self.gone), *(line.title for line in self.lines))
        )


def outlook_of(proposed: Proposed | None) -> Outlook | None:
    """What is to be said about a proposal; None where no finding would appear or vanish."""
    if proposed is None:
        return None
    new, gone = cards(proposed.new), cards(proposed.gone)
    if not new and not gone:
        return None
    # of both there is one at least
    fewer = min(len(gone), max(1, MOST - len(new))) if gone else 0
    lines = (*_lines("new", new[: MOST - fewer]), *_lines("gone", gone[:fewer]))
    return Outlook(proposed.text, len(new), len(gone), lines)


def _lines(sign: Sign, made: tuple[Card, ...]) -> tuple[Line, ...]:
    return tuple(Line(sign, card.severity, card.title) for card in made)


@guarded
class ProposalCard(QWidget):
    """Floats over its host: at the top right, or as wide as the host; at the bottom where the pointer is in the way.

    It takes no room and no clicks from what lies below. ``corner`` is the distance from the host's edges.
    """

    def __init__(self, theme: Theme, host: QWidget, corner: QPoint, is_wide: bool = False) -> None:
        super().__init__(host)
        self._theme = theme
        self._corner = corner
        self._is_wide = is_wide
        self.outlook: Outlook | None = None
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(QCoreApplication.translate("findings", "What would change"))
        self.hide()

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.update()

    def show_proposal(self, proposed: Proposed | None) -> None:
        """Say what a proposal would do to the findings, or hide."""
        outlook = outlook_of(proposed)
        if outlook != self.outlook:
            self.outlook = outlook
            self.setAccessibleDescription("" if outlook is None else outlook.text)
            self.update()
        if outlook is None:
            self.hide()
            return
        self.setGeometry(self._place())
        self.show()
        self.raise_()

    def sizeHint(self) -> QSize:
        """Room for the heading and the lines."""
        rows = 1 + (0 if self.outlook is None else len(self.outlook.lines))
        return QSize(_WIDTH, rows * _ROW + 2 * _EDGE)

    def _place(self) -> QRect:
        above, corner = self.parentWidget(), self._corner
        assert above is not None
        host = above.rect()
        width = host.width() - 2 * corner.x()
        size = QSize(width if self._is_wide else min(_WIDTH, width), self.sizeHint().height())
        left = host.width() - corner.x() - size.width()
        upper = QRect(QPoint(left, corner.y()), size)
        if not upper.contains(above.mapFromGlobal(QCursor.pos())):
            return upper
        return QRect(QPoint(left, host.height() - corner.y() - size.height()), size)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the frame, the heading with its two counts, and the lines."""
        outlook, theme = self.outlook, self._theme
        if outlook is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(theme.pen("accent", 1.0, (3.0, 2.0)))
        painter.setBrush(theme.brush("surface"))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        row = QRectF(self.rect()).adjusted(_EDGE + 2, _EDGE, -_EDGE - 2, 0)
        row.setHeight(_ROW)
        self._paint_heading(painter, row, outlook)
        for line in outlook.lines:
            row.moveTop(row.top() + _ROW)
            self._paint_line(painter, row, line)
        painter.end()

    def _paint_heading(self, painter: QPainter, row: QRectF, outlook: Outlook) -> None:
        theme, font = self._theme, self._theme.font(12, bold=True)
        counts = [f"+{outlook.new}" if outlook.new else "", f"−{outlook.gone}" if outlook.gone else ""]
        right = "  ".join(text for text in counts if text)
        painter.setFont(font)
        painter.setPen(theme.colour("accent_text"))
        painter.drawText(row, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight, right)
        metrics = QFontMetricsF(font)
        room = row.width() - metrics.horizontalAdvance(right) - 10
        text = metrics.elidedText(outlook.heading, Qt.TextElideMode.ElideRight, room)
        painter.setPen(theme.colour("ink"))
        painter.drawText(row, Qt.AlignmentFlag.AlignVCenter, text)

    def _paint_line(self, painter: QPainter, row: QRectF, line: Line) -> None:
        theme, y = self._theme, row.center().y()
        painter.setPen(theme.pen("accent", 2.0))
        x = row.left() + 5
        painter.drawLine(QPointF(x - 4, y), QPointF(x + 4, y))
        if line.sign == "new":
            painter.drawLine(QPointF(x, y - 4), QPointF(x, y + 4))
        paint_severity(painter, QPointF(row.left() + _SIGN + 7, y), 10, line.severity, theme)
        font = theme.font(12)
        inner = row.adjusted(_SIGN + _MARK, 0, 0, 0)
        painter.setFont(font)
        painter.setPen(theme.colour("ink" if line.sign == "new" else "soft"))
        text = QFontMetricsF(font).elidedText(line.title, Qt.TextElideMode.ElideRight, inner.width())
        painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter, text)
