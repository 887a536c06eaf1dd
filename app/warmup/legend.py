"""The curves of a plot by name, with their colour and their value at an instant; tied to the selection."""

from __future__ import annotations

import math
from typing import Any

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPixmap
from PySide6.QtWidgets import QAbstractItemView, QListWidget, QListWidgetItem, QWidget

from app.panes.controls import ground_style, scroll_bar_style
from app.selection import Selection
from app.theme import Theme
from app.warmup.curves import Chart
from core.units import THIN_SPACE

_OWNER = Qt.ItemDataRole.UserRole + 1
_SWATCH = QSize(14, 10)


class Legend(QListWidget):
    """One row a curve. Choosing rows selects their parts on the drawing, and the other way round."""

    def __init__(self, selection: Selection, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shared = selection
        self._chart = Chart("", ())
        self._is_following = False
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setFrameShape(self.Shape.NoFrame)
        self.setIconSize(_SWATCH)
        self.setUniformItemSizes(True)
        self.setFixedWidth(190)
        self.setAccessibleName(self.tr("Curves"))
        self.itemSelectionChanged.connect(self._on_chosen)
        selection.changed.connect(self._follow)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.setFont(theme.font(12))
        self.setStyleSheet(ground_style("QListWidget", theme) + scroll_bar_style(theme))

    def show_curves(self, chart: Chart, colours: list[QColor]) -> None:
        """List other curves."""
        self._chart = chart
        self._is_following = True
        self.clear()
        for curve, colour in zip(chart.curves, colours, strict=True):
            item = QListWidgetItem(_swatch(colour, self.devicePixelRatioF()), curve.name)
            item.setData(_OWNER, curve.owner)
            self.addItem(item)
        self._is_following = False
        self._follow(self._shared.ids)

    def show_values(self, values: list[float] | None) -> None:
        """Put a value behind each name, or none."""
        for row, curve in enumerate(self._chart.curves):
            value: Any = None if values is None else values[row]
            text = "" if value is None else f"   {_figure(value)}{THIN_SPACE}{self._chart.unit}"
            self.item(row).setText(f"{curve.name}{text}")

    def _on_chosen(self) -> None:
        if self._is_following:
            return
        owners = {str(item.data(_OWNER)) for item in self.selectedItems()} - {""}
        if owners:
            self._shared.set(owners)

    def _follow(self, ids: frozenset[str]) -> None:
        self._is_following = True
        for row in range(self.count()):
            item = self.item(row)
            item.setSelected(item.data(_OWNER) in ids)
        self._is_following = False


def _figure(value: float) -> str:
    if math.isnan(value):
        return "–"
    return f"{value:.3g}" if 1e-3 <= abs(value) < 1000 else f"{value:.0f}"


def _swatch(colour: QColor, ratio: float) -> QIcon:
    pixmap = QPixmap(_SWATCH * ratio)
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.fillRect(0, 3, _SWATCH.width(), 3, colour)
    painter.end()
    return QIcon(pixmap)
