"""Printing a picture on a printer of the system."""

from __future__ import annotations

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QWidget

from app.pictures.options import PictureOptions
from app.pictures.pages import MARGIN_MM, plan_on
from app.pictures.paper import inked, paint_pages
from app.pictures.picture import Picture

_MM_PER_INCH = 25.4
_SIZES = {
    "A4": QPageSize.PageSizeId.A4,
    "A3": QPageSize.PageSizeId.A3,
    "Letter": QPageSize.PageSizeId.Letter,
    "Legal": QPageSize.PageSizeId.Legal,
}


def is_printer_there() -> bool:
    """Whether the system knows a printer."""
    return bool(QPrinterInfo.availablePrinterNames())


def printer_for(options: PictureOptions) -> QPrinter:
    """A printer set to the paper of the options, with the whole sheet of paper as its ground."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    way = QPageLayout.Orientation.Landscape if options.landscape else QPageLayout.Orientation.Portrait
    printer.setPageLayout(QPageLayout(QPageSize(_SIZES[options.paper]), way, QMarginsF(0, 0, 0, 0)))
    printer.setFullPage(True)
    printer.setCreator("Heaterloom")
    return printer


def print_picture(picture: Picture, parent: QWidget) -> bool:
    """Let the user choose a printer and print; False when they think better of it."""
    printer = printer_for(picture.options)
    printer.setDocName(picture.title)
    dialog = QPrintDialog(printer, parent)
    if dialog.exec() != QPrintDialog.DialogCode.Accepted.value:
        return False
    print_on(printer, picture)
    return True


def print_on(printer: QPrinter, picture: Picture) -> None:
    """Print on the paper that the printer has been set to, which may be another than was asked for."""
    printer.setFullPage(True)
    paper = printer.pageLayout().fullRect(QPageLayout.Unit.Millimeter)
    plan = plan_on(
        picture.width, picture.height, (paper.width(), paper.height()), MARGIN_MM, picture.options.fit
    )
    painter = QPainter(printer)
    paint_pages(painter, picture, inked(plan, picture), printer.resolution() / _MM_PER_INCH, printer.newPage)
    painter.end()
