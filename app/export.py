"""The sheet as a picture: the same painting as on the screen, into SVG, PNG or PDF."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QRectF, QSize, QSizeF
from PySide6.QtGui import QImage, QImageWriter, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QApplication

from app.canvas.scene import SheetScene
from app.document import Document
from app.files import write_atomically
from app.selection import Selection
from app.theme import LIGHT, Theme, load_fonts
from app.viewpoint import Viewpoint
from core.assess import assess
from core.catalogue import Catalogue
from core.results import Condition
from core.sheet import Sheet

MARGIN = 30.0
PNG_SCALE = 2.0
KINDS = (".svg", ".png", ".pdf")
_DPI = 96


def write_picture(
    sheet: Sheet, catalogue: Catalogue, target: Path, condition: Condition | None = None, theme: Theme = LIGHT
) -> None:
    """Solve and draw a sheet into a file, at nominal mains or another condition; its ending decides the kind.

    Raises
    ------
    app.files.WriteError
        When the file cannot be written.
    """
    write_atomically(target, picture_bytes(sheet, catalogue, target.suffix.lower(), condition, theme))


def picture_bytes(
    sheet: Sheet, catalogue: Catalogue, kind: str, condition: Condition | None = None, theme: Theme = LIGHT
) -> bytes:
    """The drawing as the bytes of a ``.svg``, ``.png`` or ``.pdf`` file."""
    # a name keeps the application object alive while there is anything to paint
    application = QApplication.instance() or QApplication(["heaterloom"])
    load_fonts()
    document = Document(sheet, catalogue)
    viewpoint = Viewpoint(sheet.mains.nominal_v)
    if condition is not None:
        viewpoint.set_mains(condition.mains_v)
        viewpoint.set_cold(condition.cold)
    scene = SheetScene(document, Selection(), viewpoint, theme)
    document.take_assessment(assess(sheet, document.catalogue, viewpoint.condition))
    left, top, right, bottom = scene.layout_.bounds() or (0.0, 0.0, 100.0, 100.0)
    area = QRectF(left, top, right - left, bottom - top).adjusted(-MARGIN, -MARGIN, MARGIN, MARGIN)
    drawn = {".svg": _svg, ".png": _png, ".pdf": _pdf}[kind](scene, theme, area)
    scene.deleteLater()
    del application
    return drawn


def _paint(scene: SheetScene, theme: Theme, area: QRectF, painter: QPainter, target: QRectF) -> None:
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(target, theme.brush("paper"))
    scene.render(painter, target, area)


def _svg(scene: SheetScene, theme: Theme, area: QRectF) -> bytes:
    data = QByteArray()
    buffer = QBuffer(data)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setSize(area.size().toSize())
    generator.setViewBox(QRectF(0, 0, area.width(), area.height()))
    generator.setTitle(scene.document.sheet.title)
    generator.setResolution(_DPI)
    painter = QPainter(generator)
    _paint(scene, theme, area, painter, QRectF(0, 0, area.width(), area.height()))
    painter.end()
    return bytes(data.data())


def _png(scene: SheetScene, theme: Theme, area: QRectF) -> bytes:
    size = QSize(round(area.width() * PNG_SCALE), round(area.height() * PNG_SCALE))
    image = QImage(size, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(theme.colour("paper"))
    painter = QPainter(image)
    _paint(scene, theme, area, painter, QRectF(0, 0, size.width(), size.height()))
    painter.end()
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    QImageWriter(buffer, QByteArray(b"png")).write(image)
    return bytes(data.data())


def _pdf(scene: SheetScene, theme: Theme, area: QRectF) -> bytes:
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setTitle(scene.document.sheet.title)
    writer.setCreator("Heaterloom")
    writer.setResolution(_DPI)
    points = QSizeF(area.width() * 72 / _DPI, area.height() * 72 / _DPI)
    layout = QPageLayout(
        QPageSize(points, QPageSize.Unit.Point), QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0)
    )
    writer.setPageLayout(layout)
    painter = QPainter(writer)
    _paint(scene, theme, area, painter, QRectF(0, 0, area.width(), area.height()))
    painter.end()
    buffer.close()
    return bytes(data.data())
