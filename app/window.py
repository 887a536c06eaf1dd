"""The main window. It only puts things together; every job is done elsewhere."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QCloseEvent, QGuiApplication, QShowEvent
from PySide6.QtWidgets import QApplication, QMainWindow, QSplitter, QVBoxLayout, QWidget

from app.banner import Banner
from app.canvas.scene import SheetScene
from app.canvas.view import SheetView
from app.dialogs import Dialogs
from app.document import Document
from app.live import Live
from app.menus import Menus
from app.panes.conditions_strip import ConditionsStrip
from app.panes.side import ADD, FINDINGS, PROPERTIES, SideColumn
from app.selection import Selection
from app.session import Session
from app.settings import Settings
from app.theme import DARK, LIGHT, Theme, icon, palette, stylesheet
from app.viewpoint import Viewpoint
from core.errors import HeaterloomError

SIZE = (1280, 720)
CANVAS_SHARE = 0.64


class MainWindow(QMainWindow):
    """Canvas in the middle, the conditions strip above it, the panes to the right."""

    def __init__(self, document: Document, settings: Settings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document = document
        self.settings = settings
        self.theme = wanted_theme(settings.theme)
        self.selection = Selection(self)
        self.viewpoint = Viewpoint(document.sheet.mains.nominal_v, self)
        self.dialogs = Dialogs(self)
        self.session = Session(document, settings, self.dialogs, self)
        self.banner = Banner(self)
        self.strip = ConditionsStrip(document, self.viewpoint, self.theme, self)
        self.scene = SheetScene(document, self.selection, self.viewpoint, self.theme, self)
        self.view = SheetView(self.scene, self)
        self.side = SideColumn(document, self.selection, self.viewpoint, self.theme, self)
        self.live = Live(document, self.viewpoint, parent=self)
        self._arrange()
        self._dress()
        self.menus = Menus(self)
        self._connect()
        self.resize(*SIZE)
        self._restore()

    def _arrange(self) -> None:
        self.splitter = QSplitter(Qt.Orientation.Horizontal, self)
        self.splitter.addWidget(self.view)
        self.splitter.addWidget(self.side)
        self.splitter.setStretchFactor(0, 1)
        self.splitter.setCollapsible(0, False)
        self.splitter.setSizes([round(SIZE[0] * CANVAS_SHARE), round(SIZE[0] * (1 - CANVAS_SHARE))])
        body = QWidget(self)
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for widget in (self.banner, self.strip):
            column.addWidget(widget)
        column.addWidget(self.splitter, 1)
        self.setCentralWidget(body)

    def _connect(self) -> None:
        self.document.replaced.connect(self._on_replaced)
        self.document.changed.connect(self._show_name)
        self.document.undo_stack.cleanChanged.connect(self._show_name)
        self.session.moved.connect(self._show_name)
        self.view.edit_requested.connect(self._on_edit_requested)
        self.side.parts_list.add_requested.connect(self._on_add_requested)
        self.banner.acted.connect(self.session.save_as)
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self._on_scheme)

    def _restore(self) -> None:
        geometry = self.settings.bytes_of("geometry")
        if geometry is not None:
            self.restoreGeometry(geometry)
        split = self.settings.bytes_of("split")
        if split is not None:
            self.splitter.restoreState(split)

    def _on_replaced(self) -> None:
        self.selection.clear()
        mains = self.document.sheet.mains
        self.viewpoint.set_mains(mains.nominal_v)
        self.viewpoint.set_cold(False)
        self.view.fit()

    def _on_edit_requested(self, item_id: str) -> None:
        self.selection.set([item_id])
        self.side.show_pane(PROPERTIES)
        self.side.properties.focus_first()

    def _on_add_requested(self, template: dict[str, Any]) -> None:
        self.view.add_template(template)

    def _on_scheme(self, _scheme: object) -> None:
        if self.settings.theme == "system":
            self.set_theme_name("system")

    def set_theme_name(self, name: str) -> None:
        """Dress the window as ``system``, ``light`` or ``dark``, and remember it."""
        self.settings.theme = name
        self.theme = wanted_theme(name)
        self._dress()
        for part in (self.strip, self.view, self.side):
            part.set_theme(self.theme)

    def _dress(self) -> None:
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.setPalette(palette(self.theme))
            application.setStyleSheet(stylesheet(self.theme))
            application.setFont(self.theme.font(12))
        self.setWindowIcon(icon("heaterloom", self.theme))

    def _show_name(self) -> None:
        self.setWindowTitle(f"{self.session.name}[*] \u2013 Heaterloom")
        self.setWindowModified(self.session.is_dirty)

    def show_trouble(self, sentence: str) -> None:
        """One banner for something unexpected, with a way to keep the work."""
        self.banner.show_message(sentence, self.tr("Save a copy\u2026"))

    def show_findings(self) -> None:
        """Bring the findings forward."""
        self.side.show_pane(FINDINGS)

    def show_parts(self) -> None:
        """Bring the parts list forward, ready to type."""
        self.side.show_pane(ADD)
        self.side.parts_list.focus_filter()

    def save_picture(self) -> None:
        """Ask for a file and draw the sheet into it."""
        base = self.session.path or Path.home() / "sheet"
        chosen = self.dialogs.ask_picture_path(str(base.with_suffix(".svg")))
        if chosen:
            self.write_picture(Path(chosen))

    def write_picture(self, target: Path) -> None:
        """Draw the sheet as it is shown into a file."""
        from app.export import KINDS, write_picture  # noqa: PLC0415 - loaded when first needed

        if target.suffix.lower() not in KINDS:
            target = target.with_suffix(".svg")
        document = self.document
        try:
            write_picture(document.sheet, document.catalogue, target, self.viewpoint.condition)
        except HeaterloomError as error:
            self.dialogs.tell(self.tr("The picture is not saved."), str(error))

    def showEvent(self, event: QShowEvent) -> None:
        """Fit the sheet into the canvas the first time it is seen."""
        super().showEvent(event)
        if not event.spontaneous():
            self.view.fit()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Close only with the user's leave when there are unsaved changes."""
        if not self.session.may_leave():
            event.ignore()
            return
        self.settings.keep_bytes("geometry", self.saveGeometry())
        self.settings.keep_bytes("split", self.splitter.saveState())
        self.live.finish()
        event.accept()


def wanted_theme(name: str) -> Theme:
    """The theme for a setting; the system's own choice where it says one."""
    if name == "system":
        dark = QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark
        return DARK if dark else LIGHT
    return DARK if name == "dark" else LIGHT
