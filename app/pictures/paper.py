"""Painting a picture onto pages: a file's, a printer's or a preview's."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QCoreApplication, QPointF, QRect, QRectF
from PySide6.QtGui import QPainter

from app.canvas.symbols.drawing import draw_text
from app.pictures.pages import MARGIN_MM, Page, Plan, plan_pages
from app.pictures.picture import Picture

_MARK = 6.0  # units: the length of the marks at a tile's corners


def plan_of(picture: Picture) -> Plan:
    """The pages of a picture on the paper of its options."""
    return inked(plan_pages(picture.width, picture.height, picture.options), picture)


def inked(plan: Plan, picture: Picture) -> Plan:
    """A plan without the tiles on which there is nothing to see."""
    pages = tuple(page for page in plan.pages if picture.has_ink(QRectF(*page.part)))
    return replace(plan, pages=pages or plan.pages[:1])


def paint_pages(
    painter: QPainter, picture: Picture, plan: Plan, dots_per_mm: float, new_page: Callable[[], object]
) -> None:
    """Paint every page; ``new_page`` begins the next one. The device has its origin at the paper's corner."""
    for number, page in enumerate(plan.pages):
        if number:
            new_page()
        paint_page(painter, picture, plan, page, dots_per_mm)


def paint_page(
    painter: QPainter,
    picture: Picture,
    plan: Plan,
    page: Page,
    dots_per_mm: float,
    origin: tuple[float, float] = (0.0, 0.0),
) -> None:
    """Paint one page, its corner at a dot of the device.

    The page is reached through the painter's viewport: the drawing itself is painted in its own units, and shows
    the same details whatever the size of the paper. Pale paper of a given size is left as white as it is.
    """
    painter.save()
    left, top, width, height = page.part
    window = QRect(math.floor(left), math.floor(top), math.ceil(width), math.ceil(height))
    dots = plan.scale * dots_per_mm
    place = QRectF(
        origin[0] + (page.at[0] + (window.left() - left) * plan.scale) * dots_per_mm,
        origin[1] + (page.at[1] + (window.top() - top) * plan.scale) * dots_per_mm,
        window.width() * dots,
        window.height() * dots,
    )
    if picture.options.dark or not picture.options.has_paper:
        paper = QRectF(*origin, plan.size[0] * dots_per_mm, plan.size[1] * dots_per_mm)
        painter.fillRect(paper, picture.theme.brush("paper"))
    painter.setWindow(window)
    painter.setViewport(place.toRect())
    if len(plan.pages) > 1:
        _paint_marks(painter, picture, plan, page)
    painter.setClipRect(QRectF(left, top, width, height))
    picture.paint(painter, tinted=False)
    painter.restore()


def _paint_marks(painter: QPainter, picture: Picture, plan: Plan, page: Page) -> None:
    """Corners to cut and join the tiles by, and which one it is."""
    left, top, width, height = page.part
    painter.setPen(picture.theme.pen("soft", 0.3))
    for x, outwards in ((left, -1), (left + width, 1)):
        for y, away in ((top, -1), (top + height, 1)):
            painter.drawLine(QPointF(x + outwards, y), QPointF(x + outwards * _MARK, y))
            painter.drawLine(QPointF(x, y + away), QPointF(x, y + away * _MARK))
    said = QCoreApplication.translate("pictures", "row {row} of {rows}, column {column} of {columns}")
    text = said.format(row=page.row, rows=plan.rows, column=page.column, columns=plan.columns)
    at = (left + MARGIN_MM, top + height + MARGIN_MM / 2)
    draw_text(painter, picture.theme, at, text, 4.0, role="soft", align=0.0)
