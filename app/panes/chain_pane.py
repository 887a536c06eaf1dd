"""The chain builder: choose how the selected sockets are wired, see it on the drawing, and build it as one step."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QHideEvent, QKeyEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QHBoxLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.canvas.scene import SheetScene
from app.guard import guarded
from app.panes.about import plain_label, plain_tip
from app.panes.chain_choices import (
    Choices,
    Settled,
    are_all_wired,
    heated_ids,
    offer_key,
    settle,
    with_own_order,
)
from app.panes.chain_order import OrderList, OrderRow
from app.panes.chain_rows import (
    ChoiceRow,
    FittedArea,
    Line,
    MarkedLines,
    OfferList,
    PlainArea,
)
from app.panes.chain_words import (
    ORDERS,
    order_words,
    reference_word,
    size_choices,
    supply_choices,
    tr,
    undo_word,
)
from app.panes.controls import scroll_bar_style
from app.panes.field_rows import FieldRow
from app.panes.fields import Field
from app.panes.figures import exact_text
from app.proposal import Proposed
from app.speech import spoken, told
from app.theme import Theme
from core.chains import ChainPlan, edit_of, plan
from core.errors import HeaterloomError, QuantityError
from core.rules.words import amps, share, volts
from core.sentences import sentence
from core.units import Dimension, format_quantity, parse

LONGEST_ALLOWANCE_M = 5.0
_LABEL_ROOM = 4


@guarded
class ChainPane(QWidget):
    """Follows the selection while it is shown.

    ``left`` comes when it is done with: built, or given up; ``built`` carries the ids of the parts that came with it.
    """

    left = Signal()
    built = Signal(object)

    def __init__(self, scene: SheetScene, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._scene = scene
        self._document = scene.document
        self._theme = theme
        self.choices = Choices()
        self.settled: Settled | None = None
        self.plan = ChainPlan()
        self._word = ""  # what the step of the history is called
        self._is_showing = False  # whether what is told of the proposal comes from here
        self._soon = QTimer(self, singleShot=True, interval=0)
        self._soon.timeout.connect(self._follow)
        self._make()
        self._arrange()
        self._connect()
        self.set_theme(theme)

    # making

    def _make(self) -> None:
        theme = self._theme
        self.offers = OfferList(theme, self)
        self.supply = ChoiceRow(self.tr("Supply"), theme, self)
        self.reference = ChoiceRow(self.tr("Chassis"), theme, self)
        self.wire_size = ChoiceRow(self.tr("Wire"), theme, self)
        self.allowance = FieldRow(self._allowance_field(), theme, self)
        self.replace = QCheckBox(self.tr("Replace wiring"), self)
        self.shunts = QCheckBox(self.tr("Shunts where unequal"), self)
        self.replace.setToolTip(
            plain_tip(self.tr("Sockets that are wired already lose their heater wires first"))
        )
        self.shunts.setToolTip(
            plain_tip(self.tr("Resistors across heaters that want less than their string carries"))
        )
        self.order = ChoiceRow(self.tr("Order"), theme, self)
        self.list = OrderList(theme, self)
        self.list.setAccessibleName(self.tr("Order of the chain"))
        self.list.setToolTip(self.tr("Drag, or Alt with the arrows, to change the order"))
        self.summary = plain_label("", "heading", self)
        self.messages = MarkedLines(theme, self)
        self.build_button = QPushButton(self.tr("Build"), self)
        self.close_button = QPushButton(self.tr("Close"), self)
        self._sizes = size_choices()
        self.wire_size.show_words([each.word for each in self._sizes], 0)

    def _allowance_field(self) -> Field:
        text = exact_text(self.choices.allowance_m, Dimension.METRES)
        return Field(
            "allowance_m", self.tr("Spare length"), "number", text, dimension=Dimension.METRES, required=True
        )

    def _arrange(self) -> None:
        body = QWidget(self)
        body.setAutoFillBackground(False)
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 0, 10, 4)
        column.setSpacing(3)
        for row in (self.offers, self.supply, self.reference, self.wire_size, self.allowance):
            column.addWidget(row)
        for box in (self.replace, self.shunts):
            column.addWidget(box)
        column.addWidget(self.order)
        column.addWidget(self.list)
        column.addStretch(1)
        self.area = PlainArea(body, self)
        self.told = FittedArea(self.messages, self)
        buttons = QHBoxLayout()
        buttons.addWidget(self.summary, 1)
        buttons.addWidget(self.build_button)
        buttons.addWidget(self.close_button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(4, 2, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(self.area, 1)
        layout.addWidget(self.told)
        layout.addLayout(buttons)

    def _connect(self) -> None:
        self.offers.chosen.connect(self._on_offer)
        self.supply.chosen.connect(self._on_supply)
        self.reference.chosen.connect(self._on_reference)
        self.wire_size.chosen.connect(self._on_size)
        self.allowance.committed.connect(self._on_allowance)
        self.replace.clicked.connect(lambda ticked: self._choose(replace=ticked))
        self.shunts.clicked.connect(lambda ticked: self._choose(shunts=ticked))
        self.order.chosen.connect(self._on_order)
        self.list.reordered.connect(self._on_reordered)
        self.build_button.clicked.connect(self.build)
        self.close_button.clicked.connect(self.left)
        self._scene.selection.changed.connect(self._follow)
        self._document.changed.connect(self._soon.start)
        self._document.replaced.connect(self._soon.start)
        self._scene.proposal.changed.connect(self._on_proposal)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        rows = (self.offers, self.supply, self.reference, self.wire_size, self.allowance, self.order)
        for row in (*rows, self.list, self.messages):
            row.set_theme(theme)
        labels = [
            row.label for row in (self.supply, self.reference, self.wire_size, self.allowance, self.order)
        ]
        metrics = QFontMetrics(theme.font(12))
        widest = max(metrics.horizontalAdvance(label.text()) for label in labels)
        for label in labels:
            label.setFixedWidth(widest + _LABEL_ROOM)
        for widget in (self.replace, self.shunts, self.build_button, self.close_button):
            widget.setFont(theme.font(12))
        self.summary.setFont(theme.font(12, bold=True))
        for area in (self.area, self.told):
            area.verticalScrollBar().setStyleSheet(scroll_bar_style(theme))

    # opening and leaving

    def begin(self) -> None:
        """Take up the selection with the usual choices; wire and spare length stay as they were last."""
        kept = self.choices
        self.choices = Choices(
            size=kept.size,
            system=kept.system,
            allowance_m=kept.allowance_m,
            replace=are_all_wired(self._document.sheet, self._document.catalogue, self._ids()),
        )
        self.refresh()
        self.focus_first()

    def focus_first(self) -> None:
        """Put the keyboard on the arrangement that is chosen."""
        number = self.settled.offers.index(self.settled.offer) if self.settled is not None else 0
        self.offers.buttons[number].setFocus(Qt.FocusReason.ShortcutFocusReason)

    def build(self) -> None:
        """Build what is shown, as one step of the history; what cannot be built stays, and says why."""
        self.allowance.commit()
        if self.plan.problem is not None or self.settled is None or self.allowance.is_refused:
            return
        made = self.plan
        try:
            self._document.apply(self._word, edit_of(made))
        except HeaterloomError as error:
            self.messages.show_lines([("fault", told(error))])
            self.told.fit()
            return
        self.left.emit()
        self.built.emit(frozenset(part.id for part in made.parts))

    def _on_proposal(self, proposed: object) -> None:
        """A large sheet is solved later; and when a gesture has given up what it showed, the chain is shown again."""
        if self._is_showing or not self.isVisible():
            return
        if proposed is None:
            self._soon.start()
        elif isinstance(proposed, Proposed) and proposed.text == self._word:
            self.summary.setText(summary_of(self.plan, proposed))

    def hideEvent(self, event: QHideEvent) -> None:
        """What is not seen is not considered either."""
        self._scene.proposal.withdraw()
        super().hideEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return builds, Escape leaves; whatever has the keyboard inside has had the key first."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.build()
        elif event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    # choosing

    def _choose(self, **fields: Any) -> None:
        self.choices = replace(self.choices, **fields)
        self.refresh()

    def _on_offer(self, number: int) -> None:
        if self.settled is not None:
            # another line wants other volts, a string another order: the usual ones again
            self._choose(offer=offer_key(self.settled.offers[number]), feed=None, order=None)

    def _on_supply(self, number: int) -> None:
        if self.settled is not None:
            choice = supply_choices(self.settled.feeds)[number]
            self._choose(feed=choice.feed, new_supply=choice.new_supply)

    def _on_reference(self, number: int) -> None:
        if self.settled is not None:
            self._choose(reference=self.settled.references[number])

    def _on_size(self, number: int) -> None:
        choice = self._sizes[number]
        self._choose(size=choice.size, system=choice.system)

    def _on_allowance(self, _name: str, given: object) -> None:
        """Take a length, or say in place what was expected and keep the one before."""
        try:
            metres = parse(str(given), Dimension.METRES)
            if not 0 <= metres <= LONGEST_ALLOWANCE_M:
                most = format_quantity(LONGEST_ALLOWANCE_M, Dimension.METRES)
                raise QuantityError(sentence("A length from 0 to {most} is expected.", most=most))
        except HeaterloomError as error:
            self.allowance.refuse(told(error))
            return
        self.choices = replace(self.choices, allowance_m=metres)
        self.allowance.show_field(self._allowance_field())
        self.allowance.restore()
        self.refresh()

    def _on_order(self, number: int) -> None:
        order = ORDERS[number]
        if order == "own":
            self.choices = with_own_order(self.choices, self.list.ids())
            self.refresh()
        else:
            self._choose(order=order)

    def _on_reordered(self) -> None:
        self.choices = with_own_order(self.choices, self.list.ids())
        self.refresh()

    # showing

    def _ids(self) -> tuple[str, ...]:
        return heated_ids(self._document.sheet, self._scene.selection.ids)

    def _follow(self) -> None:
        if self.isVisible():
            self.refresh()

    def refresh(self) -> None:
        """Plan anew, show the choices and what follows from them, and let the drawing show the chain."""
        sheet, catalogue = self._document.sheet, self._document.catalogue
        settled = self.settled = settle(sheet, catalogue, self._ids(), self.choices)
        layout = self._scene.layout_
        self.plan = plan(sheet, catalogue, settled.ids, settled.options, layout.terminal_point)
        self._show_choices(settled)
        self._show_order(settled)
        self.summary.setText(summary_of(self.plan, self._propose(settled)))
        self.messages.show_lines(lines_of(self.plan))
        self.told.fit()
        self.build_button.setEnabled(self.plan.problem is None)

    def _propose(self, settled: Settled) -> Proposed | None:
        """Let the drawing show the chain, while it is open to the eye."""
        self._is_showing = True
        try:
            if self.plan.problem is not None or not self.isVisible():
                self._scene.proposal.withdraw()
                return None
            self._word = undo_word(settled.options.arrangement, len(self.plan.order))
            return self._scene.proposal.consider(self._word, edit_of(self.plan))
        finally:
            self._is_showing = False

    def _show_choices(self, settled: Settled) -> None:
        options = settled.options
        self.offers.show_offers(settled.offers, settled.offers.index(settled.offer))
        supplies = supply_choices(settled.feeds)
        current = next(
            number
            for number, each in enumerate(supplies)
            if each.feed == options.feed and (options.feed or each.new_supply == options.new_supply)
        )
        self.supply.show_words([each.word for each in supplies], current)
        words = [reference_word(each, settled.feed) for each in settled.references]
        current = settled.references.index(options.reference)
        if self.plan.is_tied:
            words, current = [self.tr("tied already")], 0
        self.reference.show_words(words, current)
        self.reference.combo.setEnabled(not self.plan.is_tied)
        self.replace.setChecked(options.replace)
        self.shunts.setChecked(options.shunts)
        self.shunts.setEnabled(options.arrangement != "parallel" and not settled.offer.needs_shunts)

    def _show_order(self, settled: Settled) -> None:
        words = order_words()
        self.order.show_words([words[each] for each in ORDERS], ORDERS.index(settled.order))
        left_out = {one.id: spoken(one.says) for one in self.plan.left_out}
        types = {load.id: f"{load.id}  {load.type}" for load in settled.loads}
        rows = []
        for one in settled.ids:
            text = types.get(one, one)
            if one in left_out:
                text = self.tr("{socket} – not wired").format(socket=text)
            rows.append(OrderRow(one, text, left_out.get(one, "")))
        self.list.show_rows(rows)


def summary_of(made: ChainPlan, proposed: Proposed | None) -> str:
    """The plan in a line: volts, amperes, load of the supply, length of wire; figures as solved where they are."""
    if made.problem is not None:
        return ""
    words = [volts(made.volts), amps(made.amps)]
    point = None if proposed is None else proposed.assessment.points["nominal"].supplies.get(made.supply)
    load = made.load_pct if point is None else point.load_pct
    if load is not None:
        words.append(f"{made.supply} {share(load)}")
    length = format_quantity(made.length_m, Dimension.METRES)
    return " · ".join((*words, tr("{length} of wire").format(length=length)))


def lines_of(made: ChainPlan) -> list[Line]:
    """What the plan has to say: why it cannot be built, what it leaves out, what it warns of, what it adds."""
    lines: list[Line] = [] if made.problem is None else [("fault", spoken(made.problem))]
    lines += [("caution", spoken(one.says)) for one in made.left_out]
    lines += [("caution", spoken(one.says)) for one in made.cautions]
    return [*lines, *(("note", spoken(one)) for one in made.notes)]
