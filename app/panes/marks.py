"""The shapes that say how things stand. Shape comes first, colour only supports it.

Severities: fault = filled triangle, caution = open diamond, note = ring. Heater states: over = triangle up,
under = triangle down, cold = bar, within tolerance = ring.
"""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.canvas.look import State
from app.guard import guarded
from app.theme import Theme
from core.results import Severity


def paint_severity(painter: QPainter, centre: QPointF, size: float, severity: Severity, theme: Theme) -> None:
    """Paint the mark of a severity, ``size`` across, around a centre."""
    half = size / 2
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if severity == "fault":
        _triangle(painter, centre, half, up=True, role="over", theme=theme)
    elif severity == "caution":
        painter.setPen(theme.pen("caution", 1.8))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        reach = half - 0.5
        corners = ((0, -reach), (reach, 0), (0, reach), (-reach, 0))
        painter.drawPolygon(QPolygonF([centre + QPointF(x, y) for x, y in corners]))
    else:
        _ring(painter, centre, half, "soft", theme)
    painter.restore()


def paint_state(painter: QPainter, centre: QPointF, size: float, state: State, theme: Theme) -> None:
    """Paint the mark of a heater's state; nothing where there is nothing to say."""
    half = size / 2
    role = theme.state_role(state)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if state in ("over", "under"):
        _triangle(painter, centre, half, up=state == "over", role=role, theme=theme)
    elif state == "cold":
        painter.fillRect(QRectF(centre.x() - half, centre.y() - 1.5, size, 3), theme.brush(role))
    elif state == "ok":
        _ring(painter, centre, half, role, theme)
    painter.restore()


def _triangle(painter: QPainter, centre: QPointF, half: float, *, up: bool, role: str, theme: Theme) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.brush(role))
    tip = -half if up else half
    corners = ((0, tip), (half, -tip * 0.8), (-half, -tip * 0.8))
    painter.drawPolygon(QPolygonF([centre + QPointF(x, y) for x, y in corners]))


def _ring(painter: QPainter, centre: QPointF, half: float, role: str, theme: Theme) -> None:
    painter.setPen(theme.pen(role, 1.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawEllipse(centre, half - 1.2, half - 1.2)


@guarded
class SeverityMark(QWidget):
    """The mark of a severity as a small widget, to stand before a line of text."""

    def __init__(self, severity: Severity, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._severity: Severity = severity
        self._theme = theme
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Room for the mark at the height of a line."""
        return QSize(14, 16)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the mark."""
        painter = QPainter(self)
        paint_severity(painter, QPointF(7, 8), 11, self._severity, self._theme)
        painter.end()
