"""What a picture will look like, page by page, as large as there is room."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.guard import guarded
from app.pictures.pages import Page, Plan
from app.pictures.paper import paint_page
from app.pictures.picture import Picture
from app.theme import Theme

_GAP = 10.0
_MOST_PAGES = 60  # more are counted, not drawn


@guarded
class PagesPreview(QWidget):
    """Paints the pages of a plan beside and below each other, as the tiles lie."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._picture: Picture | None = None
        self._plan: Plan | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Preview"))

    def sizeHint(self) -> QSize:
        """Large enough to judge by."""
        return QSize(560, 420)

    def minimumSizeHint(self) -> QSize:
        """Never too small to see."""
        return QSize(260, 200)

    def show_picture(self, picture: Picture | None, plan: Plan | None) -> None:
        """Show another picture; None for nothing."""
        self._picture, self._plan = picture, plan
        self.update()

    def page_rects(self) -> list[QRectF]:
        """Where each page lies in the widget."""
        plan = self._plan
        if plan is None:
            return []
        rows, columns = plan.rows, plan.columns
        room = (self.width() - _GAP * (columns + 1), self.height() - _GAP * (rows + 1))
        dots = max(min(room[0] / (plan.size[0] * columns), room[1] / (plan.size[1] * rows)), 0.01)
        width, height = plan.size[0] * dots, plan.size[1] * dots
        left = (self.width() - columns * width - (columns - 1) * _GAP) / 2
        top = (self.height() - rows * height - (rows - 1) * _GAP) / 2
        return [
            QRectF(
                left + (page.column - 1) * (width + _GAP),
                top + (page.row - 1) * (height + _GAP),
                width,
                height,
            )
            for page in plan.pages
        ]

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint paper and drawing."""
        picture, plan = self._picture, self._plan
        if picture is None or plan is None:
            return
        painter = QPainter(self)
        for page, rect in list(zip(plan.pages, self.page_rects(), strict=True))[:_MOST_PAGES]:
            self._paint_page(painter, picture, plan, page, rect)
        painter.end()

    def _paint_page(self, painter: QPainter, picture: Picture, plan: Plan, page: Page, rect: QRectF) -> None:
        painter.fillRect(rect, Qt.GlobalColor.white)
        paint_page(painter, picture, plan, page, rect.width() / plan.size[0], (rect.left(), rect.top()))
        painter.setPen(self._theme.pen("edge", 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(rect)
