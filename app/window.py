"""The main window. It only puts things together; every job is done elsewhere."""

from __future__ import annotations

import gc
from typing import TYPE_CHECKING, Any

from msgspec.structs import replace
from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QCloseEvent, QGuiApplication, QShowEvent
from PySide6.QtWidgets import QApplication, QMainWindow, QVBoxLayout, QWidget

from app.banner import Banner
from app.canvas.scene import SheetScene
from app.canvas.view import SheetView
from app.canvas.wiring import lay_wire
from app.dialogs import Dialogs
from app.document import Document
from app.guard import guarded
from app.live import Live
from app.menus import Menus
from app.panes.conditions_strip import ConditionsStrip
from app.panes.ground import Ground
from app.selection import Selection
from app.session import Session
from app.settings import Settings
from app.solver import Solver
from app.theme import DARK, LIGHT, Theme, icon, palette, stylesheet
from app.viewpoint import Viewpoint
from core.results import Assessment

if TYPE_CHECKING:
    from app.panes.side import SidePanes
    from app.warmup.drawer import Drawer
    from app.warmup.playback import Playback

SIZE = (1280, 720)


@guarded
class MainWindow(QMainWindow):
    """Canvas in the middle, the conditions strip above it, the panes around it."""

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
        self.solver = Solver(parent=self)
        self.scene = SheetScene(document, self.selection, self.viewpoint, self.theme, self, self.solver)
        self.view = SheetView(self.scene, self)
        self._side: SidePanes | None = None
        self._drawer: Drawer | None = None
        self._is_complete = False
        self._wants_style_sheet = False
        self.live = Live(document, self.viewpoint, self.solver, parent=self)
        self._arrange()
        self._dress()
        self.menus = Menus(self)
        self._connect()
        self.resize(*SIZE)
        self._restore()

    def _arrange(self) -> None:
        self.ground = Ground(self.view, self)
        body = QWidget(self)
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for widget in (self.banner, self.strip):
            column.addWidget(widget)
        column.addWidget(self.ground, 1)
        self._column = column
        self.setCentralWidget(body)

    def _connect(self) -> None:
        self.document.replaced.connect(self._on_replaced)
        self.document.changed.connect(self._show_name)
        self.document.undo_stack.cleanChanged.connect(self._show_name)
        self.session.moved.connect(self._show_name)
        self.view.edit_requested.connect(self._on_edit_requested)
        self.view.chain_requested.connect(self._on_chain_requested)
        self.view.seen.connect(self.complete)
        self.view.told.connect(self.banner.show_message)
        self.view.paper.changed.connect(self._keep_paper)
        self.scene.proposal.changed.connect(self.strip.show_proposal)
        self.banner.acted.connect(self.session.save_as)
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self._on_scheme)

    @property
    def side(self) -> SidePanes:
        """The panes around the drawing. They are made right after it has been painted for the first time."""
        if self._side is None:
            from app.panes.side import SidePanes  # noqa: PLC0415 - the drawing comes first

            self._wants_style_sheet = True
            self._dress()
            self.ground.give_room()
            made = SidePanes(self.document, self.selection, self.viewpoint, self.theme, self.ground)
            self._side = made
            made.restore(self.settings.bytes_of("panes"))
            made.follow(self.scene.proposal)
            made.parts_list.add_requested.connect(self._on_add_requested)
            made.parts_list.picked.connect(self.view.placing.take)
            made.parts_list.put_back.connect(self.view.placing.end)
            made.tables.part_wanted.connect(self._on_add_requested)
            made.tables.wire_wanted.connect(self._on_wire_wanted)
        return self._side

    @property
    def drawer(self) -> Drawer:
        """The warm-up drawer, made when it is first asked for."""
        if self._drawer is None:
            from app.warmup.opening import make_drawer  # noqa: PLC0415 - it loads the plots

            self._drawer = make_drawer(self)
            self._column.addWidget(self._drawer)
        return self._drawer

    @property
    def is_warmup_open(self) -> bool:
        """Whether the warm-up drawer is open."""
        return self._drawer is not None and self._drawer.isVisible()

    def toggle_warmup(self) -> None:
        """Open the warm-up drawer and switch the sheet on, or close it."""
        if self.is_warmup_open:
            self.drawer.close_up()
        else:
            self.drawer.open_up()
            QTimer.singleShot(0, self.view, self.view.fit)

    def playback(self) -> Playback | None:
        """What plays the warm-up, while the drawer is open."""
        return self.drawer.playback if self.is_warmup_open else None

    def complete(self) -> None:
        """Make what the first look at the drawing does not need; a second call does nothing."""
        if self._is_complete:
            return
        self._is_complete = True
        self.menus.fill(self.side)
        from app.remembering import recall  # noqa: PLC0415 - the drawing comes first

        recall(self)
        # numerics are loaded before the first edit asks for them
        import core.assess  # noqa: F401, PLC0415

        gc.enable()

    def begin(self, answer: object = None) -> None:
        """Show the answers for the first sheet: those found beforehand if they are for it, else solve it."""
        sheet = self.document.sheet
        if isinstance(answer, Assessment) and answer.sheet == sheet:
            self.document.take_assessment(replace(answer, sheet=sheet))
        else:
            self.live.refresh()

    def _restore(self) -> None:
        geometry = self.settings.bytes_of("geometry")
        if geometry is not None:
            self.restoreGeometry(geometry)
        self.view.paper.set(shows_grid=self.settings.is_on("grid"), snaps=self.settings.is_on("snap"))
        self.ground.keep_room(self.settings.margins_of("room"))

    def _keep_paper(self) -> None:
        self.settings.keep_switch("grid", self.view.paper.shows_grid)
        self.settings.keep_switch("snap", self.view.paper.snaps)

    def _on_replaced(self) -> None:
        self.selection.clear()
        mains = self.document.sheet.mains
        self.viewpoint.set_mains(mains.nominal_v)
        self.viewpoint.set_cold(False)
        self.view.fit()

    def _on_edit_requested(self, item_id: str) -> None:
        if item_id not in self.selection.ids:  # of a pair the whole stays selected
            self.selection.set([item_id])
        self.side.show_properties()

    def _on_chain_requested(self) -> None:
        self.view.cancel_gesture()
        self.side.show_chain(self.view)

    def _on_add_requested(self, template: dict[str, Any]) -> None:
        self.view.editor.add(template)

    def _on_wire_wanted(self, start: str, end: str) -> None:
        lay_wire(self.view, start, end)

    def _on_scheme(self, _scheme: object) -> None:
        if self.settings.theme == "system":
            self.set_theme_name("system")

    def set_theme_name(self, name: str) -> None:
        """Dress the window as ``system``, ``light`` or ``dark``, and remember it."""
        self.settings.theme = name
        self.theme = wanted_theme(name)
        self._dress()
        for part in (self.strip, self.view, self._side, self._drawer, self.menus.key_page):
            if part is not None:
                part.set_theme(self.theme)

    def set_scale(self, factor: str) -> None:
        """Remember how large everything is to be; Qt takes it up when the program starts."""
        self.settings.scale = factor
        self.banner.show_message(self.tr("The new size is used when Heaterloom is started again."))

    def _dress(self) -> None:
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.setPalette(palette(self.theme))
            application.setFont(self.theme.font(12))
            # the application's font reaches widgets later than a style sheet, which would keep the one before it
            self.setFont(self.theme.font(12))
            self.menuBar().setFont(self.theme.font(12))
            if self._wants_style_sheet:
                application.setStyleSheet(stylesheet(self.theme))
                self.setWindowIcon(icon("heaterloom", self.theme))

    def _show_name(self) -> None:
        self.setWindowTitle(f"{self.session.name}[*] \u2013 Heaterloom")
        self.setWindowModified(self.session.is_dirty)

    def show_trouble(self, sentence: str) -> None:
        """One banner for something unexpected, with a way to keep the work."""
        self.banner.show_message(sentence, self.tr("Save a copy\u2026"))

    def save_picture(self) -> None:
        """Ask what a picture is to show and where it goes."""
        from app.pictures.dialog import PictureDialog  # noqa: PLC0415 - loaded when first needed

        PictureDialog(self, printing=False).open()

    def print_sheet(self) -> None:
        """Ask what a print is to show and print it."""
        from app.pictures.dialog import PictureDialog  # noqa: PLC0415 - loaded when first needed

        PictureDialog(self, printing=True).open()

    def showEvent(self, event: QShowEvent) -> None:
        """Fit the sheet into the canvas the first time it is seen."""
        super().showEvent(event)
        if not event.spontaneous():
            self.view.fit()
            self.view.setFocus()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Close only with the user's leave when there are unsaved changes."""
        if not self.session.may_leave():
            event.ignore()
            return
        self.settings.keep_bytes("geometry", self.saveGeometry())
        if self._is_complete:
            from app.remembering import remember  # noqa: PLC0415

            remember(self)
        self.solver.finish()
        if self._drawer is not None:
            self._drawer.runner.finish()
        event.accept()


def wanted_theme(name: str) -> Theme:
    """The theme for a setting; the system's own choice where it says one."""
    if name == "system":
        dark = QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark
        return DARK if dark else LIGHT
    return DARK if name == "dark" else LIGHT
