"""The strip above the drawing: title and summary, the mains, and heaters hot or cold."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from app.document import Document
from app.guard import guarded
from app.panes.controls import Switch, TextButton
from app.panes.finding_cards import counts_text
from app.panes.mains_slider import MainsSlider, volts_text
from app.panes.title_line import TitleLine
from app.proposal import Proposed
from app.theme import Theme
from app.viewpoint import Viewpoint
from core import edits
from core.sheet import Mains

if TYPE_CHECKING:
    from app.warmup.instant_note import InstantNote

HEIGHT = 60
_COLD, _HOT = 0, 1


@guarded
class MainsControl(QWidget):
    """The slider with its three stops below as buttons: low, nominal and high mains."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.slider = MainsSlider(theme, self)
        self.buttons = tuple(TextButton("", theme, 11, self) for _ in range(3))
        for number, button in enumerate(self.buttons):
            button.clicked.connect(lambda _=False, which=number: self.slider.choose(self.slider.stops[which]))
        self.slider.valueChanged.connect(self.show_stops)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMaximumWidth(440)

    def sizeHint(self) -> QSize:
        """The slider and a row of words below it."""
        return QSize(360, HEIGHT - 4)

    def minimumSizeHint(self) -> QSize:
        """As narrow as the three words allow."""
        return QSize(270, HEIGHT - 4)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.slider.set_theme(theme)
        for button in self.buttons:
            button.set_theme(theme)
        self.show_stops()

    def show_stops(self) -> None:
        """Write the stops' volts on the buttons, mark the current one, and put each under its stop."""
        words = (self.tr("low {volts}"), self.tr("nominal {volts}"), self.tr("high {volts}"))
        names = (self.tr("Low mains"), self.tr("Nominal mains"), self.tr("High mains"))
        for button, word, name, stop in zip(self.buttons, words, names, self.slider.stops, strict=True):
            button.setText(word.format(volts=volts_text(stop)))
            button.setAccessibleName(f"{name}, {volts_text(stop)}")
            button.setChecked(abs(stop - self.slider.volts) < 1e-9)
        self._place()

    def resizeEvent(self, _event: QResizeEvent) -> None:
        """Keep the buttons under their stops."""
        self.slider.setGeometry(0, 0, self.width(), 36)
        self._place()

    def _place(self) -> None:
        sizes = [button.sizeHint() for button in self.buttons]
        centres = [self.slider.x_of(stop) for stop in self.slider.stops]
        lefts = [x - size.width() / 2 for x, size in zip(centres, sizes, strict=True)]
        lefts[0] = max(lefts[0], 0)
        lefts[2] = min(lefts[2], self.width() - sizes[2].width())
        lefts[1] = min(max(lefts[1], lefts[0] + sizes[0].width()), lefts[2] - sizes[1].width())
        for button, left, size in zip(self.buttons, lefts, sizes, strict=True):
            button.setGeometry(round(left), 35, size.width(), size.height())


@guarded
class ConditionsStrip(QWidget):
    """Shows and sets which condition is on show. What it alters is the viewpoint, and the sheet's title."""

    def __init__(
        self, document: Document, viewpoint: Viewpoint, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setObjectName("Strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._document = document
        self._viewpoint = viewpoint
        self._theme = theme
        self._band = document.sheet.mains
        self._proposed: Proposed | None = None
        self.title = TitleLine(theme, self)
        self.summary = QLabel(self)
        self.summary.setTextFormat(Qt.TextFormat.PlainText)
        self.summary.setProperty("role", "soft")
        self.summary.setContentsMargins(2, 0, 0, 0)
        self.summary.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.mains = MainsControl(theme, self)
        self._note: InstantNote | None = None
        self.switch = Switch((self.tr("cold"), self.tr("hot")), self.tr("Heaters"), theme, self)
        self._arrange()
        self._connect()
        self.set_theme(theme)
        self._on_sheet()

    def _arrange(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(1)
        left.addStretch(1)
        left.addWidget(self.title)
        left.addWidget(self.summary)
        left.addStretch(1)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(16, 2, 16, 2)
        self._row.setSpacing(20)
        self._row.addLayout(left, 3)
        self._row.addWidget(self.mains, 4)
        self._row.addWidget(self.switch, 0, Qt.AlignmentFlag.AlignVCenter)
        self.setFixedHeight(HEIGHT)

    def _connect(self) -> None:
        self.title.renamed.connect(
            lambda title: self._document.apply(self.tr("Rename sheet"), edits.set_sheet(title=title))
        )
        self.mains.slider.chosen.connect(self._viewpoint.set_mains)
        for number, button in enumerate(self.mains.buttons):
            # an instant is left by it even where the handle stands at that stop
            button.clicked.connect(
                lambda _=False, n=number: self._viewpoint.set_mains(self.mains.slider.stops[n])
            )
        self.switch.chosen.connect(lambda number: self._viewpoint.set_cold(number == _COLD))
        self._viewpoint.changed.connect(self._on_viewpoint)
        self._document.changed.connect(self._on_sheet)
        self._document.replaced.connect(self._on_sheet)
        self._document.assessed.connect(self._show_summary)
        self._document.switched_on.connect(self._show_summary)

    @property
    def note(self) -> InstantNote:
        """What says that an instant is on show; made for the first one."""
        if self._note is None:
            from app.warmup.instant_note import InstantNote  # noqa: PLC0415 - most starts need none

            self._note = InstantNote(self._theme, self)
            self._note.leave_button.clicked.connect(self._viewpoint.leave_instant)
            self._row.insertWidget(self._row.count() - 1, self._note, 0, Qt.AlignmentFlag.AlignVCenter)
        return self._note

    def edit_title(self) -> None:
        """Open the title for editing."""
        self.title.edit()

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.summary.setFont(theme.font(12))
        self.title.set_theme(theme)
        self.mains.set_theme(theme)
        if self._note is not None:
            self._note.set_theme(theme)
        self.switch.set_theme(theme)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """F2 anywhere in the strip renames the sheet."""
        if event.key() == Qt.Key.Key_F2:
            self.edit_title()
            return
        super().keyPressEvent(event)

    def _on_sheet(self) -> None:
        self.title.set_title(self._document.sheet.title)
        self._follow_mains(self._document.sheet.mains)
        self._on_viewpoint()
        self._show_summary()

    def _follow_mains(self, mains: Mains) -> None:
        """A handle that stood at a stop stays there when the band changes; any other stays in the band."""
        before, self._band = self._band, mains
        if before == mains:
            return
        volts = self._viewpoint.condition.mains_v
        pairs = (
            (before.nominal_v, mains.nominal_v),
            (before.low_v, mains.low_v),
            (before.high_v, mains.high_v),
        )
        for old, new in pairs:
            if abs(volts - old) < 1e-9:
                self._viewpoint.set_mains(new)
                return
        self._viewpoint.keep_inside(mains)

    def _on_viewpoint(self) -> None:
        mains, volts = self._document.sheet.mains, self._viewpoint.mains_v
        slider = self.mains.slider
        if (slider.mains, slider.volts) != (mains, volts):
            slider.set_mains(mains, volts)
            self.mains.show_stops()
        instant = self._viewpoint.instant
        if instant is not None:
            self.note.show_instant(instant.t_s)
            self.switch.set_chosen(None)
            return
        if self._note is not None:
            self._note.hide()
        self.switch.set_chosen(_COLD if self._viewpoint.condition.cold else _HOT)

    def show_proposal(self, proposed: Proposed | None) -> None:
        """Count the findings that there would be, or those there are again."""
        if (proposed is None) != (self._proposed is None):
            colour = "" if proposed is None else f"color: {self._theme.accent_text};"
            self.summary.setStyleSheet(colour)
        self._proposed = proposed
        self._show_summary()

    def _show_summary(self) -> None:
        assessment, proposed = self._document.assessment, self._proposed
        if proposed is not None:
            counts = counts_text(proposed.assessment.findings)
            text = f"{counts} · {self.tr('as it would be')}"
        elif assessment is None:
            text = self.tr("solving…")
        else:
            text = f"{counts_text(self._document.findings)} · {self.tr('solved for this drawing')}"
        self.summary.setText(text)
        self.summary.setToolTip(text)
