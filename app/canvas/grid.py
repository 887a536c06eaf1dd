"""The paper: its colour and the faint dots of the grid."""

from __future__ import annotations

import math

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QPainter

from app.theme import Theme

_SHOW_FROM = 0.1
_FINE_FROM = 0.5
_DOT = 1.5


def paint(painter: QPainter, rect: QRectF, theme: Theme, scale: float, dots: bool = True) -> None:
    """Paint a rectangle of paper, with or without ``dots``; ``scale`` (pixels per unit) decides how dense they are.

    A row of dots is one dashed line, which costs far less than a call for each dot.
    """
    painter.fillRect(rect, theme.brush("paper"))
    if scale < _SHOW_FROM or not dots:
        return
    step = theme.grid if scale >= _FINE_FROM else theme.grid * 5
    size = _DOT / min(max(scale, 0.2), 1.5)
    pen = theme.pen("grid_dot", size, (1.0, step / size - 1.0))
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    left = math.floor(rect.left() / step) * step - size / 2
    top = math.floor(rect.top() / step) * step
    rows = math.ceil((rect.bottom() - top) / step) + 1
    right = rect.right() + size
    painter.drawLines([QLineF(left, top + row * step, right, top + row * step) for row in range(rows)])
