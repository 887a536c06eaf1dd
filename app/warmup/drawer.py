"""The warm-up drawer below the drawing: whether the amplifier starts, its curves, and soft starts to compare."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QProgressBar,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from app.canvas.telling import announce
from app.document import Document
from app.guard import guarded
from app.panes.controls import FlatCombo, SignButton, TextButton
from app.panes.finding_cards import condition_word
from app.proposal import Proposal
from app.selection import Selection
from app.speech import spoken, told
from app.theme import Theme
from app.viewpoint import Viewpoint
from app.warmup.curves import Chart, chart, compared, has_curves, quantities
from app.warmup.headline import explained, headline, state_of
from app.warmup.instants import Instants
from app.warmup.legend import Legend
from app.warmup.playback import Playback
from app.warmup.playhead import Playhead
from app.warmup.plot import Plot
from app.warmup.runner import Runner, Tried
from app.warmup.soft_starts import SoftStarts
from core.errors import EditError
from core.mending import edit_of
from core.results import NOMINAL
from core.switch_on import Wish
from core.units import Dimension, format_quantity
from core.warmup import WarmupRun

SPANS_S = (15.0, 30.0, 60.0, 120.0, 300.0)
USUAL_S = 60.0
LEAST_HEIGHT, USUAL_HEIGHT, MOST_HEIGHT = 170, 262, 620
_MARKS = {"ok": "○", "over": "▲", "under": "▼", "": "·"}


@guarded
class Grip(QWidget):
    """The upper edge of the drawer, by which it is made higher or lower."""

    dragged = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.theme = theme
        self._from: QPoint | None = None
        self.setFixedHeight(6)
        self.setCursor(Qt.CursorShape.SplitVCursor)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """A line."""
        painter = QPainter(self)
        painter.setPen(self.theme.pen("line", 1.0))
        painter.drawLine(0, 0, self.width(), 0)
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of it."""
        self._from = event.globalPosition().toPoint()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Tell how far it was dragged up."""
        if self._from is not None:
            now = event.globalPosition().toPoint()
            self.dragged.emit(self._from.y() - now.y())
            self._from = now

    def mouseReleaseEvent(self, _event: QMouseEvent) -> None:
        """Let go."""
        self._from = None


@guarded
class Drawer(QWidget):
    """Shows the warm-up of the document's sheet for as long as it is open. ``closed`` comes when it is closed."""

    closed = Signal()
    tried = Signal()

    def __init__(
        self,
        document: Document,
        selection: Selection,
        viewpoint: Viewpoint,
        proposal: Proposal,
        theme: Theme,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._selection = selection
        self._proposal = proposal
        self._theme = theme
        self.playhead = Playhead(self)
        self.instants = Instants(document, viewpoint, self.playhead, self)
        self.runner = Runner(document, self)
        self._make(theme)
        self._arrange()
        self._connect()
        self.set_theme(theme)
        self.setFixedHeight(USUAL_HEIGHT)

    def _make(self, theme: Theme) -> None:
        self.grip = Grip(theme, self)
        self.mark = QLabel(self)
        self.headline = QLabel(self)
        self.headline.setTextFormat(Qt.TextFormat.PlainText)
        self.headline.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.headline.setMinimumWidth(140)
        self.progress = QProgressBar(self)
        self.progress.setRange(0, 100)
        self.progress.setFixedSize(90, 8)
        self.progress.setTextVisible(False)
        self.progress.setAccessibleName(self.tr("Progress of the warm-up"))
        self.cancel = TextButton(self.tr("Cancel"), theme, 12, self)
        self.quantity = self._combo(self.tr("What is shown"))
        for key, word in quantities().items():
            self.quantity.addItem(word, key)
        self.condition = self._combo(self.tr("Condition"))
        self.condition.addItem(condition_word(NOMINAL), NOMINAL)
        self.span = self._combo(self.tr("How long"))
        for seconds in SPANS_S:
            self.span.addItem(format_quantity(seconds, Dimension.SECONDS, 2), seconds)
        self.span.setCurrentIndex(SPANS_S.index(USUAL_S))
        self.compare = TextButton(self.tr("Compare soft starts"), theme, 12, self)
        self.cross = SignButton("cross", theme, self)
        self.cross.setAccessibleName(self.tr("Close the warm-up"))
        self.cross.setToolTip(self.tr("Close the warm-up (F5)"))
        self.plot = Plot(self.playhead, theme, self)
        self.legend = Legend(self._selection, theme, self)
        self.soft_starts = SoftStarts(theme, self)
        self.playback = Playback(self.playhead, theme, self)

    def _combo(self, name: str) -> FlatCombo:
        combo = FlatCombo(self._theme, self)
        combo.setAccessibleName(name)
        combo.setToolTip(name)
        return combo

    def _arrange(self) -> None:
        head = QHBoxLayout()
        head.setContentsMargins(14, 2, 8, 2)
        head.setSpacing(8)
        for widget, stretch in (
            (self.mark, 0), (self.headline, 1), (self.progress, 0), (self.cancel, 0), (self.compare, 0),
            (self.quantity, 0), (self.condition, 0), (self.span, 0), (self.cross, 0),
        ):  # fmt: skip
            head.addWidget(widget, stretch)
        self.side = QStackedWidget(self)
        self.side.addWidget(self.legend)
        self.side.addWidget(self.soft_starts)
        self.side.setFixedWidth(self.legend.width())
        middle = QHBoxLayout()
        middle.setSpacing(4)
        middle.addWidget(self.plot, 1)
        middle.addWidget(self.side)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 2)
        column.setSpacing(0)
        column.addWidget(self.grip)
        column.addLayout(head)
        column.addLayout(middle, 1)
        column.addWidget(self.playback)

    def _connect(self) -> None:
        self.grip.dragged.connect(self._on_dragged)
        self.cancel.clicked.connect(self.runner.cancel)
        self.cross.clicked.connect(self.close_up)
        self.compare.clicked.connect(self._on_compare)
        self.quantity.activated.connect(self._show_chart)
        self.condition.activated.connect(self._show_run)
        self.span.activated.connect(self.ask)
        self.plot.pointed.connect(self._show_values)
        self.playhead.changed.connect(lambda _t_s: self._show_values(None))
        self._selection.changed.connect(self.plot.bring_out)
        for signal in (
            self.runner.started,
            self.runner.ended,
            self._document.changed,
            self._document.replaced,
        ):
            signal.connect(self._show_state)
        self.runner.ended.connect(self._show_answer)
        self.runner.varied.connect(self._show_varied)
        self.runner.progressed.connect(lambda share: self.progress.setValue(round(100 * share)))
        self.soft_starts.taken.connect(self._take)
        self.soft_starts.considered.connect(self._consider)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.grip.theme = theme
        for widget in (
            self.cancel, self.quantity, self.condition, self.span, self.compare, self.cross,
            self.plot, self.legend, self.soft_starts, self.playback,
        ):  # fmt: skip
            widget.set_theme(theme)
        self.headline.setFont(theme.font(13, bold=True))
        self.mark.setFont(theme.font(13, bold=True))
        self._show_answer()

    # opening and closing

    def open_up(self) -> None:
        """Show it, and switch the sheet on unless that is known."""
        self.show()
        self.runner.is_watching = True
        if self.runner.answer is None:
            self.ask()
        self.plot.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def close_up(self) -> None:
        """Leave the instant, call off what runs, and hide."""
        self.runner.is_watching = False
        self.runner.cancel()
        self.playback.pause()
        self.instants.leave()
        self._proposal.withdraw()
        self.hide()
        self.closed.emit()

    def ask(self) -> None:
        """Switch the sheet on for as long as is chosen."""
        self.runner.ask(Wish(seconds=float(self.span.currentData())))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape leaves the instant, and then closes."""
        if event.key() != Qt.Key.Key_Escape:
            super().keyPressEvent(event)
        elif self.playhead.t_s is not None:
            self.instants.leave()
        else:
            self.close_up()

    def _on_dragged(self, by: int) -> None:
        self.set_height(self.height() + by)

    def set_height(self, height: int) -> None:
        """Make it higher or lower, within reason."""
        self.setFixedHeight(min(max(height, LEAST_HEIGHT), MOST_HEIGHT))

    # what is shown

    @property
    def run(self) -> WarmupRun | None:
        """The run on show: that of the chosen condition."""
        answer = self.runner.answer
        return None if answer is None else answer.runs.get(str(self.condition.currentData()))

    def _show_state(self) -> None:
        """What is on its way, or that the sheet is another one by now."""
        running = self.runner.is_running
        self.progress.setVisible(running)
        self.cancel.setVisible(running)
        if running:
            self.progress.setValue(0)
        if self.runner.answer is None:
            self._say("", self.tr("Switching on…") if running else self._why_not())
            self.playback.show_run(None)
            self.instants.show_run(None)
            self.plot.setEnabled(False)
            if self.is_comparing:
                self._on_compare()

    def _why_not(self) -> str:
        return self.runner.failure or self.tr("Not switched on for this drawing")

    def _say(self, state: str, text: str) -> None:
        self.mark.setText(_MARKS[state])
        role = self._theme.state_role(state) if state else "soft"
        self.mark.setStyleSheet(f"color: {self._theme.colour(role).name()};")
        self.headline.setText(text)
        self.headline.setToolTip(text)

    def _show_answer(self) -> None:
        answer = self.runner.answer
        if answer is None:
            self._show_state()
            return
        chosen = self.condition.currentData()
        self.condition.clear()
        for name in answer.runs:
            self.condition.addItem(condition_word(name), name)
        self.condition.setCurrentIndex(max(self.condition.findData(chosen), 0))
        self.condition.updateGeometry()
        self._show_run()

    def _show_run(self) -> None:
        run = self.run
        if run is None:
            return
        self.plot.setEnabled(True)
        text = headline(run.summary, run.end_s)
        self._say(state_of(run.summary), text)
        self.headline.setToolTip(f"{text}\n{explained(run.summary)}")
        self.playback.show_run(run)
        self.instants.show_run(run)
        announce(self.headline, text)
        self._show_chart()

    def _show_chart(self) -> None:
        run = self.run
        if run is None:
            return
        quantity = str(self.quantity.currentData())
        if not has_curves(run, quantity):
            self.quantity.setCurrentIndex(0)
            quantity = str(self.quantity.currentData())
        shown = self._compared(run, quantity) if self.is_comparing else chart(run, quantity)
        times = () if self.is_comparing else tuple(event.t_s for event in run.summary.events)
        self.plot.show_chart(shown, run.end_s, times)
        self.plot.bring_out(frozenset() if self.is_comparing else self._selection.ids)
        self.legend.show_curves(shown, [self.plot.colour(number) for number in range(len(shown.curves))])
        self._show_values(None)

    def _show_values(self, t_s: float | None) -> None:
        at = self.playhead.t_s if t_s is None else t_s
        self.legend.show_values(None if at is None or self.run is None else self.plot.values_at(at))

    # soft starts

    @property
    def is_comparing(self) -> bool:
        """Whether soft starts are compared."""
        return self.side.currentWidget() is self.soft_starts

    def _compared(self, run: WarmupRun, quantity: str) -> Chart:
        runs = [
            (self.tr("as drawn"), run),
            *((spoken(one.variant.name), one.run) for one in self.runner.variants),
        ]
        return compared(runs[:5], quantity if quantity in ("amps", "volts", "heaters") else "amps")

    def _on_compare(self) -> None:
        comparing = not self.is_comparing
        self.side.setCurrentWidget(self.soft_starts if comparing else self.legend)
        self.side.setFixedWidth(self.side.currentWidget().width())
        self.compare.setChecked(comparing)
        self._show_varied()

    def _show_varied(self) -> None:
        found = self.runner.variants
        self.soft_starts.show_tried(found, self._variant_colours(len(found)), self.runner.is_varying)
        self._show_chart()
        self.tried.emit()

    def _variant_colours(self, count: int) -> list[QColor]:
        return [self.plot.colour(number + 1) for number in range(count)]

    def _consider(self, one: Tried | None) -> None:
        if one is None or one.variant.remedy is None:
            self._proposal.withdraw()
        else:
            self._proposal.consider(spoken(one.variant.name), edit_of(one.variant.remedy))

    def _take(self, one: Tried) -> None:
        if one.variant.remedy is None:
            return
        try:
            self._document.apply(spoken(one.variant.remedy.title), edit_of(one.variant.remedy))
        except EditError as error:
            announce(self, told(error))
