"""A sheet made ready to be painted, into a file, onto paper or into a preview."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from app.canvas.look import PartLook
from app.canvas.scene import SheetScene
from app.document import Document
from app.pictures.options import PictureOptions
from app.pictures.title_block import HEIGHT, WIDTH, paint_title_block, title_block
from app.selection import Selection
from app.theme import DARK, LIGHT, PRINT, load_fonts
from app.viewpoint import Instant, Viewpoint
from core.assess import assess
from core.catalogue import Catalogue
from core.results import Assessment, Condition
from core.sheet import Sheet

MARGIN = 30.0
_GAP = 20.0
_EMPTY = (0.0, 0.0, 100.0, 100.0)


class Picture:
    """The drawing of a sheet at one condition, in its own units: one is a pixel of the screen at actual size.

    An ``instant`` of a warm-up of this very sheet is shown instead. ``area`` limits it to a rectangle of the sheet,
    ``only`` to the surroundings of some parts and wires. ``answers`` save the solving where they are for this very
    sheet and condition.
    """

    def __init__(
        self,
        sheet: Sheet,
        catalogue: Catalogue,
        options: PictureOptions,
        condition: Condition | None = None,
        *,
        answers: Assessment | None = None,
        instant: Instant | None = None,
        area: QRectF | None = None,
        only: Iterable[str] = (),
    ) -> None:
        load_fonts()
        pale = PRINT if options.has_paper else LIGHT
        self.theme = DARK if options.dark else pale
        self.options = options
        self.title = sheet.title
        document = Document(sheet, catalogue)
        viewpoint = Viewpoint(sheet.mains.nominal_v)
        if condition is not None:
            viewpoint.set_mains(condition.mains_v)
            viewpoint.set_cold(condition.cold)
        if instant is not None:
            viewpoint.show_instant(instant)
        self.scene = SheetScene(document, Selection(), viewpoint, self.theme)
        if options.values:
            if answers is None or answers.sheet is not sheet or viewpoint.point(answers) is None:
                answers = assess(sheet, document.catalogue, viewpoint.condition)
            document.take_assessment(answers)
        self._leave_out()
        self.area = self._around(only) or area or self._whole()
        self._block = title_block(sheet, viewpoint.condition if options.values else None, viewpoint.instant)

    def _leave_out(self) -> None:
        for part in self.scene.part_items.values():
            # the volts at the pins are for the pointer: on paper they would lie across wires
            part.look = replace(part.look, pin_values={}) if self.options.values else PartLook()
        if not self.options.lengths:
            for wire in self.scene.wire_items.values():
                wire.show_text("", None)

    def _whole(self) -> QRectF:
        left, top, right, bottom = self.scene.layout_.bounds() or _EMPTY
        return QRectF(left, top, right - left, bottom - top).adjusted(-MARGIN, -MARGIN, MARGIN, MARGIN)

    def _around(self, only: Iterable[str]) -> QRectF | None:
        area = QRectF()
        for item_id in only:
            item = self.scene.item_of(item_id)
            if item is not None:
                area = area.united(item.sceneBoundingRect())
        return None if area.isEmpty() else area

    @property
    def width(self) -> float:
        """Units from left to right."""
        return max(self.area.width(), WIDTH + 2 * _GAP) if self.options.title_block else self.area.width()

    @property
    def height(self) -> float:
        """Units from top to bottom, the title block included."""
        return self.area.height() + (HEIGHT + _GAP if self.options.title_block else 0.0)

    @property
    def _left(self) -> float:
        """Where the drawing begins: in the middle where the title block is wider."""
        return (self.width - self.area.width()) / 2

    @property
    def _block_corner(self) -> tuple[float, float]:
        return self.width - WIDTH - _GAP, self.area.height()

    def has_ink(self, part: QRectF) -> bool:
        """Whether there is anything to see in a part of the picture, its corner at the origin."""
        block = QRectF(*self._block_corner, WIDTH, HEIGHT)
        if self.options.title_block and block.intersects(part):
            return True
        seen = part.intersected(QRectF(self._left, 0, self.area.width(), self.area.height()))
        return bool(self.scene.items(seen.translated(self.area.left() - self._left, self.area.top())))

    def paint(self, painter: QPainter, tinted: bool = True) -> None:
        """Paint it with its corner at the painter's origin, a unit of the painter for each.

        The drawing shows what the screen shows at actual size, so a painter for another size has a viewport
        for it and no scale of its own. ``tinted`` lays the colour of the sheet below.
        """
        painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
        if tinted:
            painter.fillRect(QRectF(0, 0, self.width, self.height), self.theme.brush("paper"))
        target = QRectF(self._left, 0, self.area.width(), self.area.height())
        self.scene.render(painter, target, self.area)
        if self.options.title_block:
            paint_title_block(painter, self._block, self._block_corner, self.theme)

    def close(self) -> None:
        """Let the drawing go."""
        self.scene.deleteLater()
