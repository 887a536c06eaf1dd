"""A sheet into an SVG, PNG or PDF file."""

from __future__ import annotations

from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QRectF, QSize, QSizeF
from PySide6.QtGui import QImage, QImageWriter, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QApplication

from app.files import write_atomically
from app.pictures.letters import with_font, with_outlines
from app.pictures.options import PictureOptions
from app.pictures.paper import paint_pages, plan_of
from app.pictures.picture import Picture
from app.theme import Theme
from core.catalogue import Catalogue
from core.results import Condition
from core.sheet import Sheet

PNG_SCALE = 2.0
_DPI = 96
_PDF_DPI = 1200
_MM_PER_INCH = 25.4
_USUAL = PictureOptions()


def write_picture(
    sheet: Sheet,
    catalogue: Catalogue,
    target: Path,
    condition: Condition | None = None,
    options: PictureOptions = _USUAL,
) -> None:
    """Solve and draw a sheet into a file, at nominal mains or another condition; its ending decides the kind.

    Raises
    ------
    app.files.WriteError
        When the file cannot be written.
    """
    # a name keeps the application object alive while there is anything to paint
    application = QApplication.instance() or QApplication(["heaterloom"])
    picture = Picture(sheet, catalogue, options, condition)
    write_atomically(target, picture_bytes(picture, target.suffix.lower()))
    picture.close()
    del application


def picture_bytes(picture: Picture, kind: str) -> bytes:
    """A picture as the bytes of a ``.svg``, ``.png`` or ``.pdf`` file."""
    return {".svg": svg_bytes, ".png": png_bytes, ".pdf": _pdf}[kind](picture)


class Drawable(Protocol):
    """Anything that can be painted at its actual size: a sheet, or a plot."""

    title: str
    theme: Theme
    options: PictureOptions

    @property
    def width(self) -> float:
        """Units from left to right."""

    @property
    def height(self) -> float:
        """Units from top to bottom."""

    def paint(self, painter: QPainter, tinted: bool = True) -> None:
        """Paint it with its corner at the painter's origin."""


def svg_bytes(picture: Drawable) -> bytes:
    """A picture as the bytes of an SVG file."""
    data = QByteArray()
    generator = QSvgGenerator()
    buffer = QBuffer(data)
    generator.setOutputDevice(buffer)
    generator.setSize(QSizeF(picture.width, picture.height).toSize())
    generator.setViewBox(QRectF(0, 0, picture.width, picture.height))
    generator.setTitle(picture.title)
    generator.setResolution(_DPI)
    painter = QPainter(generator)
    picture.paint(painter)
    painter.end()
    text = bytes(data.data()).decode()
    return (with_outlines(text) if picture.options.outlines else with_font(text)).encode()


def png_bytes(picture: Drawable) -> bytes:
    """A picture as the bytes of a PNG file, two pixels a unit."""
    size = QSize(round(picture.width * PNG_SCALE), round(picture.height * PNG_SCALE))
    image = QImage(size, QImage.Format.Format_ARGB32_Premultiplied)
    image.setDevicePixelRatio(PNG_SCALE)
    image.fill(picture.theme.colour("paper"))
    painter = QPainter(image)
    picture.paint(painter)
    painter.end()
    image.setDotsPerMeterX(round(_DPI * PNG_SCALE / 0.0254))
    image.setDotsPerMeterY(round(_DPI * PNG_SCALE / 0.0254))
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    QImageWriter(buffer, QByteArray(b"png")).write(image)
    return bytes(data.data())


def _pdf(picture: Picture) -> bytes:
    plan = plan_of(picture)
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setTitle(picture.title)
    writer.setCreator("Heaterloom")
    writer.setResolution(_PDF_DPI)
    points = QSizeF(plan.size[0] * 72 / _MM_PER_INCH, plan.size[1] * 72 / _MM_PER_INCH)
    writer.setPageLayout(
        QPageLayout(
            QPageSize(points, QPageSize.Unit.Point, "", QPageSize.SizeMatchPolicy.ExactMatch),
            QPageLayout.Orientation.Portrait,
            QMarginsF(0, 0, 0, 0),
        )
    )
    painter = QPainter(writer)
    paint_pages(painter, picture, plan, _PDF_DPI / _MM_PER_INCH, writer.newPage)
    painter.end()
    buffer.close()
    return bytes(data.data())
