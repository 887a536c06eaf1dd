"""A window on a sample in a process of its own, at the scale its environment asks for; prints what it finds.

Arguments: name of the sample, ``light`` or ``dark``, and the file for a picture of the window.
"""

from __future__ import annotations

import json
import sys
import tempfile
from pathlib import Path

import numpy as np
from PySide6.QtCore import QRect, QSize
from PySide6.QtGui import QFontInfo, QImage
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QTabBar, QWidget

from app.crash import Watch
from app.settings import Settings
from app.sources import open_sheet
from app.start import make_application, make_window
from app.theme import contrast, icon

SIZE = (1280, 720)


def edge_share(image: QImage, paper: str) -> float:
    """Pixels that are half on a line and half beside it, for each that is wholly on one."""
    plain = image.convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(plain.constBits(), np.uint8).reshape(plain.height(), plain.bytesPerLine())
    pixels = rows[:, : plain.width() * 3].reshape(plain.height(), plain.width(), 3).astype(int)
    ground = np.array([int(paper[place : place + 2], 16) for place in (1, 3, 5)])
    away = np.abs(pixels - ground).max(axis=2)
    return float(((away > 25) & (away < 150)).sum() / max((away >= 150).sum(), 1))


def cut_texts(window: QWidget) -> list[str]:
    """Texts of labels, buttons and tabs that have less room than they need."""
    found = []
    for widget in window.findChildren(QWidget):
        if not widget.isVisible() or widget.visibleRegion().isEmpty():
            continue
        if isinstance(widget, QLabel) and widget.text() and not widget.wordWrap():
            needs = widget.fontMetrics().horizontalAdvance(widget.text())
            if needs > widget.width() + 1 or widget.fontMetrics().height() > widget.height() + 1:
                found.append(f"label {widget.text()}")
        elif (
            isinstance(widget, QLabel)
            and widget.wordWrap()
            and widget.heightForWidth(widget.width()) > widget.height()
        ):
            found.append(f"label {widget.text()}")
        elif isinstance(widget, QAbstractButton) and widget.text():
            if widget.sizeHint().width() > widget.width() or widget.sizeHint().height() > widget.height():
                found.append(f"button {widget.text()}")
        elif isinstance(widget, QTabBar) and widget.height() > 0:
            last = widget.tabRect(widget.count() - 1)
            if last.right() > widget.width() or widget.tabRect(0).left() < 0:
                found.append(f"tabs {widget.accessibleName()}")
    return found


def outside(window: QWidget) -> list[str]:
    """Widgets in sight that reach over the edge of what holds them."""
    found = []
    for widget in window.findChildren(QWidget):
        parent = widget.parentWidget()
        if parent is None or widget.isWindow() or not widget.isVisible() or widget.visibleRegion().isEmpty():
            continue
        if "viewport" in parent.objectName() or "scrollarea" in parent.objectName():
            continue
        if not parent.rect().adjusted(-1, -1, 1, 1).contains(widget.geometry()):
            found.append(f"{type(widget).__name__} {widget.objectName()} {widget.accessibleName()}".strip())
    return found


def families(application: QApplication) -> dict[str, str]:
    """Family and kind of widget where it is not the bundled one."""
    return {
        type(widget).__name__: QFontInfo(widget.font()).family()
        for widget in application.allWidgets()
        if QFontInfo(widget.font()).family() != "Inter"
    }


def main() -> None:
    """Open the window, look, print one JSON object."""
    name, theme, target = sys.argv[1:4]
    application = make_application()
    folder = Path(tempfile.mkdtemp())
    settings = Settings(folder / "settings.ini")
    settings.theme = theme
    window = make_window(open_sheet(name), settings, Watch(folder))
    window.resize(*SIZE)
    window.show()
    while not window.menus.view.actions():
        application.processEvents()
    for _ in range(4):
        application.processEvents()
    window.view.clearFocus()
    picture = window.grab().toImage()
    picture.save(target)
    ratio = picture.devicePixelRatio()
    place = QRect(window.view.mapTo(window, window.view.rect().topLeft()), window.view.size())
    canvas = picture.copy(QRect(place.topLeft() * ratio, place.size() * ratio))
    sign = icon("wire", window.theme).pixmap(QSize(24, 24), ratio).toImage()
    print(
        json.dumps(
            {
                "ratio": ratio,
                "size": [picture.width(), picture.height()],
                "cut": cut_texts(window),
                "outside": outside(window),
                "families": families(application),
                "edge": edge_share(canvas, window.theme.paper),
                "icon": [sign.width(), sign.height()],
                "canvas": window.view.width() / window.width(),
                "contrast": contrast(window.theme.ink, window.theme.paper),
            }
        )
    )
    window.close()


if __name__ == "__main__":
    main()
