"""The figures of one part or wire at an instant of the warm-up, above its fields."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from app.canvas import on_the_way
from app.canvas.looks import amps_text, celsius_text, relay_word, volts_text, watts_text
from app.document import Document
from app.panes.about import plain_label
from app.panes.words import unbroken
from app.theme import Theme
from app.viewpoint import Instant
from app.warmup.moments import after_switching_on
from core.results import Assessment, BranchPoint, HeaterPoint
from core.units import CELSIUS_TO_K, THIN_SPACE, format_number, format_percent

_GAP = "  "


class InstantFigures(QWidget):
    """Says when it is, and how the part stands then."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = QLabel(self)
        self.body = plain_label("", "", self)
        self.body.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 10, 2)
        column.setSpacing(2)
        column.addWidget(self.title)
        column.addWidget(self.body)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.title.setFont(theme.font(12, bold=True))
        self.title.setStyleSheet(f"color: {theme.accent_text};")
        self.body.setFont(theme.font(12))

    def show_figures(self, document: Document, instant: Instant, subject: str) -> None:
        """Show a part or wire at an instant; hidden where it has no figures."""
        assessment = document.assessment
        lines = () if assessment is None else tuple(lines_at(document, assessment, instant, subject))
        self.title.setText(after_switching_on(instant.t_s))
        self.body.setText(unbroken("\n".join(lines)))
        self.setVisible(bool(lines))


def lines_at(document: Document, assessment: Assessment, instant: Instant, subject: str) -> Iterator[str]:
    """The figures of a part or wire at an instant: two lines a heater section, one or two for everything else."""
    point = instant.point
    heaters = point.heaters.get(subject, ())
    for heater in heaters:
        ambient_k = document.sheet.ambient_c + CELSIUS_TO_K
        yield _heater_line(heater, len(heaters) > 1)
        yield on_the_way.heaters_said((heater,), assessment, ambient_k)[1]
    supply, branch = point.supplies.get(subject), point.branches.get(subject)
    if supply is not None:
        _, word, said = on_the_way.supply_said(subject, supply, instant.doing)
        load = "" if supply.load_pct is None else f"{format_number(supply.load_pct, 0)}{THIN_SPACE}%"
        figures = volts_text(supply.v), amps_text(supply.a), watts_text(supply.w), load
        yield _GAP.join(filter(None, figures))
        yield from filter(None, (word, said))
    elif branch is not None and not heaters:
        yield from _branch_lines(branch)


def _heater_line(heater: HeaterPoint, is_one_of_several: bool) -> str:
    figures = (
        volts_text(heater.v),
        format_percent(heater.deviation_pct),
        amps_text(heater.a),
        watts_text(heater.w),
    )
    return _GAP.join((f"{heater.pins}:", *figures) if is_one_of_several else figures)


def _branch_lines(branch: BranchPoint) -> Iterator[str]:
    yield _GAP.join((volts_text(branch.v), amps_text(branch.a), watts_text(branch.w)))
    if branch.kelvin is not None:
        yield celsius_text(branch.kelvin)
    if branch.pulled_in is not None:
        yield relay_word(branch.pulled_in)
