"""The dialog for pictures and prints: what is shown, on what, and how it will look."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import QRectF, Qt, QTimer
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.files import with_ending, write_atomically
from app.panes.controls import FlatCombo
from app.panes.mains_slider import volts_text
from app.pictures.files import PNG_SCALE, picture_bytes
from app.pictures.options import (
    AS_DRAWN,
    CONDITIONS,
    KINDS,
    PAPERS,
    SELECTED,
    VISIBLE,
    WHOLE,
    PictureOptions,
    condition_named,
    options_from,
    options_text,
)
from app.pictures.pages import Plan
from app.pictures.paper import plan_of
from app.pictures.picture import Picture
from app.pictures.preview import PagesPreview
from app.session import SUFFIX
from app.speech import told
from app.warmup.moments import after_switching_on
from core.errors import HeaterloomError
from core.results import Condition

if TYPE_CHECKING:
    from app.window import MainWindow

AS_SHOWN = "shown"
_SIZE = (980, 600)
_COLUMN = 330


class PictureDialog(QDialog):
    """Asks what a picture or a print of a window's sheet is to show, and makes it."""

    def __init__(self, window: MainWindow, printing: bool) -> None:
        super().__init__(window)
        self._window = window
        self._instant = window.viewpoint.instant  # the one on show now, though the time may go on meanwhile
        self.printing = printing
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Print the sheet") if printing else self.tr("Save a picture"))
        self.setFont(window.theme.font(12))
        self.picture: Picture | None = None
        self.plan: Plan | None = None
        self._refreshing = QTimer(self, singleShot=True, interval=0)
        self._refreshing.timeout.connect(self.refresh)
        self._make_fields()
        self.preview = PagesPreview(window.theme, self)
        self.size_label = QLabel(self)
        self.size_label.setProperty("role", "soft")
        self.size_label.setWordWrap(True)
        self._arrange()
        self._show_options(options_from(window.settings.text_of(self._key)))
        self._connect()
        self.finished.connect(self._on_finished)
        self.resize(*_SIZE)
        self.refresh()

    @property
    def _key(self) -> str:
        return "print" if self.printing else "picture"

    # fields

    def _combo(self, name: str, choices: dict[str, str]) -> FlatCombo:
        combo = FlatCombo(self._window.theme, self)
        combo.setAccessibleName(name)
        for key, word in choices.items():
            combo.addItem(word, key)
        return combo

    def _make_fields(self) -> None:
        ids = self._window.selection.ids
        parts = {WHOLE: self.tr("the whole sheet"), VISIBLE: self.tr("what is in view")}
        if ids:
            parts[SELECTED] = self.tr("what is selected")
        self.part = self._combo(self.tr("Show"), parts)
        self.condition = self._combo(self.tr("Condition"), self._conditions())
        self.values = QCheckBox(self.tr("Figures, marks and glow"), self)
        self.lengths = QCheckBox(self.tr("Gauges and lengths"), self)
        self.title_block = QCheckBox(self.tr("Title block"), self)
        self.dark = QCheckBox(self.tr("Dark, as on a dark screen"), self)
        papers = {} if self.printing else {AS_DRAWN: self.tr("as large as the drawing")}
        self.paper = self._combo(self.tr("Paper"), papers | {name: name for name in PAPERS})
        self.landscape = self._combo(self.tr("Held"), {"1": self.tr("landscape"), "0": self.tr("upright")})
        self.fit = self._combo(
            self.tr("Scale"), {"1": self.tr("fit to one page"), "0": self.tr("a unit is 1 mm, in tiles")}
        )
        kinds = {
            ".svg": self.tr("SVG drawing"),
            ".png": self.tr("PNG image"),
            ".pdf": self.tr("PDF document"),
        }
        self.kind = self._combo(self.tr("File"), kinds)
        self.outlines = QCheckBox(self.tr("Letters as shapes"), self)
        self.outlines.setToolTip(
            self.tr("For programs that do not read fonts in SVG files. Shapes cannot be searched or copied.")
        )

    def _conditions(self) -> dict[str, str]:
        shown, instant = self._window.viewpoint.condition, self._instant
        state = self.tr("cold") if shown.cold else self.tr("hot")
        if instant is not None:
            state = after_switching_on(instant.t_s)
        words = {
            "nominal": self.tr("nominal mains"),
            "low": self.tr("low mains"),
            "high": self.tr("high mains"),
            "cold": self.tr("at switch-on"),
        }
        as_shown = self.tr("as in the window: {volts}, {state}").format(
            volts=volts_text(shown.mains_v if instant is None else instant.mains_v), state=state
        )
        return {AS_SHOWN: as_shown, **{key: words[key] for key in CONDITIONS}}

    def _arrange(self) -> None:
        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setVerticalSpacing(9)
        form.addRow(self.tr("Show"), self.part)
        form.addRow(self.tr("Condition"), self.condition)
        for box in (self.values, self.lengths, self.title_block, self.dark):
            form.addRow("", box)
        if not self.printing:
            form.addRow(self.tr("File"), self.kind)
            form.addRow("", self.outlines)
        self.outlines.setVisible(not self.printing)
        self.kind.setVisible(not self.printing)
        form.addRow(self.tr("Paper"), self.paper)
        form.addRow(self.tr("Held"), self.landscape)
        form.addRow(self.tr("Scale"), self.fit)
        side = QWidget(self)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(form)
        column.addSpacing(6)
        column.addWidget(self.size_label)
        column.addStretch(1)
        self.buttons = QDialogButtonBox(self)
        self.go = QPushButton(self.tr("Print\u2026") if self.printing else self.tr("Save\u2026"), self)
        self.go.setDefault(True)
        self.buttons.addButton(self.go, QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.addButton(self.tr("Cancel"), QDialogButtonBox.ButtonRole.RejectRole)
        column.addWidget(self.buttons)
        side.setFixedWidth(max(_COLUMN, side.sizeHint().width()))  # in some languages the words are longer
        row = QHBoxLayout(self)
        row.setSpacing(16)
        row.addWidget(side)
        row.addWidget(self.preview, 1)

    def _connect(self) -> None:
        for combo in (self.part, self.condition, self.paper, self.landscape, self.fit, self.kind):
            combo.currentIndexChanged.connect(self._refresh_soon)
        for box in (self.values, self.lengths, self.title_block, self.dark, self.outlines):
            box.toggled.connect(self._refresh_soon)
        self.buttons.accepted.connect(self._on_go)
        self.buttons.rejected.connect(self.reject)

    def _show_options(self, options: PictureOptions) -> None:
        for combo, wanted in (
            (self.part, options.part),
            (self.paper, options.paper),
            (self.landscape, "1" if options.landscape else "0"),
            (self.fit, "1" if options.fit else "0"),
            (self.kind, self._window.settings.text_of("picture kind")),
        ):
            combo.setCurrentIndex(max(combo.findData(wanted), 0))
        self.values.setChecked(options.values)
        self.lengths.setChecked(options.lengths)
        self.title_block.setChecked(options.title_block)
        self.dark.setChecked(options.dark)
        self.outlines.setChecked(options.outlines)

    def options(self) -> PictureOptions:
        """What is chosen."""
        return PictureOptions(
            values=self.values.isChecked(),
            lengths=self.lengths.isChecked(),
            title_block=self.title_block.isChecked(),
            dark=self.dark.isChecked(),
            outlines=self.outlines.isChecked(),
            part=self.part.currentData(),
            paper=self.paper.currentData(),
            landscape=self.landscape.currentData() == "1",
            fit=self.fit.currentData() == "1",
        )

    @property
    def _has_pages(self) -> bool:
        return self.printing or self.kind.currentData() == ".pdf"

    # the picture

    def _refresh_soon(self) -> None:
        self._refreshing.start()

    def refresh(self) -> None:
        """Draw the picture as it is chosen."""
        options = self.options()
        for field in (self.landscape, self.fit):
            field.setEnabled(self._has_pages and options.has_paper)
        self.paper.setEnabled(self._has_pages)
        self.outlines.setEnabled(self.kind.currentData() == ".svg")
        self.condition.setEnabled(options.values)
        shown = options if self._has_pages else replace(options, paper=AS_DRAWN)
        window, document = self._window, self._window.document
        old = self.picture
        self.picture = Picture(
            document.sheet,
            document.catalogue,
            shown,
            self._condition(),
            answers=document.assessment,
            instant=self._instant if self.condition.currentData() == AS_SHOWN else None,
            area=self._area(options),
            only=window.selection.ids if options.part == SELECTED else (),
        )
        self.plan = plan_of(self.picture)
        self.preview.show_picture(self.picture, self.plan)
        self.size_label.setText(self._size_text())
        if old is not None:
            old.close()

    def _condition(self) -> Condition:
        key = self.condition.currentData()
        if key == AS_SHOWN:
            return self._window.viewpoint.condition
        return condition_named(key, self._window.document.sheet.mains)

    def _area(self, options: PictureOptions) -> QRectF | None:
        view = self._window.view
        seen = view.mapToScene(view.viewport().rect()).boundingRect()
        return seen if options.part == VISIBLE else None

    def _size_text(self) -> str:
        assert self.picture is not None and self.plan is not None
        if not self._has_pages and self.kind.currentData() == ".png":
            return self.tr("{width} \u00d7 {height} pixels").format(
                width=round(self.picture.width * PNG_SCALE), height=round(self.picture.height * PNG_SCALE)
            )
        width, height = (round(each) for each in self.plan.size)
        pages = len(self.plan.pages)
        if pages == 1:
            return self.tr("One page, {width} \u00d7 {height} mm").format(width=width, height=height)
        return self.tr(
            "{pages} pages, {width} \u00d7 {height} mm each, to be joined at their corner marks"
        ).format(pages=pages, width=width, height=height)

    # doing it

    def _on_go(self) -> None:
        self.refresh()
        self._window.settings.keep_text(self._key, options_text(self.options()))
        if self.printing:
            self._print()
        elif self.save(self.kind.currentData()):
            self._window.settings.keep_text("picture kind", self.kind.currentData())
            self.accept()

    def _print(self) -> None:
        from app.pictures.printing import is_printer_there, print_picture  # noqa: PLC0415 - loaded when first needed

        assert self.picture is not None
        if is_printer_there():
            if print_picture(self.picture, self):
                self.accept()
        elif self._window.dialogs.ask_pdf_instead() and self.save(".pdf"):
            self.accept()

    def save(self, kind: str) -> bool:
        """Ask for a file and write the picture into it; True when it is written."""
        assert self.picture is not None
        dialogs = self._window.dialogs
        base = self._window.session.path or Path.home() / f"sheet{SUFFIX}"
        suggestion = base.with_name(f"{base.name.removesuffix(SUFFIX)}{kind}")
        chosen = dialogs.ask_picture_path(str(suggestion))
        if not chosen:
            return False
        target = with_ending(Path(chosen), (kind, *KINDS))
        # the file dialog asked about the name as it was typed
        if target != Path(chosen) and target.exists() and not dialogs.ask_overwrite(target.name):
            return False
        try:
            write_atomically(target, picture_bytes(self.picture, target.suffix.lower()))
        except HeaterloomError as error:
            dialogs.tell(self.tr("The picture is not saved."), told(error))
            return False
        return True

    def _on_finished(self) -> None:
        self.preview.show_picture(None, None)
        if self.picture is not None:
            self.picture.close()
            self.picture = None
