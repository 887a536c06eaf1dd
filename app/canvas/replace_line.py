"""Another type for the selected tubes, with what that means for their wires before it is done."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPoint, QRect

from app.canvas import words
from app.canvas.adding import Offer
from app.canvas.offer_list import OfferList
from app.canvas.panel import Panel
from app.guard import guarded
from app.speech import spoken
from core.edits import Edit, in_turn
from core.rewiring import Rewiring, replace_and_rewire, rewiring_for
from core.sheet import Tube

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_WIDTH = 380
_COVERED = 240  # how far down the panel and its first offers may reach
_APART = 20
_MOST = 12
_TOLD = 8


@guarded
class ReplaceLine(Panel):
    """Type a tube type, walk the offers with Down and Up, read what changes, and press Enter.

    What is on offer is considered: the drawing and the findings show it, and nothing is done before Enter.
    """

    def __init__(self, view: SheetView) -> None:
        super().__init__(view, _WIDTH, below=True)
        self._tubes: list[str] = []
        self.offers = OfferList(view, view.sheet_scene.theme)
        self.offers.currentRowChanged.connect(self._on_row)
        self.offers.itemClicked.connect(lambda _: self.take(False))
        self.field.setAccessibleName(words.tr("New type"))
        self.field.textEdited.connect(self._on_edited)

    def enter(self) -> None:
        """Ask for the type of the selected tubes."""
        self._tubes = self.view.tools.arranger.tubes()
        if not self._tubes:
            return
        what = words.counted(self._tubes, self.view.document.sheet)
        self.question.setText(words.tr("Replace {what} by").format(what=what))
        self.field.clear()
        self.answer.setText(words.tr("Type a tube type; Enter puts it into the socket."))
        self.offers.set_theme(self.view.sheet_scene.theme)
        super().enter()
        self._uncover()

    def _uncover(self) -> None:
        """Scroll what lies under the panel and its offers out from below them."""
        items = [self.view.sheet_scene.item_of(part_id) for part_id in self._tubes]
        rects = [item.sceneBoundingRect() for item in items if item is not None]
        shown = [self.view.mapFromScene(rect).boundingRect() for rect in rects]
        covered = QRect(0, 0, self.geometry().right(), self.geometry().top() + _COVERED)
        under = [rect.left() for rect in shown if rect.intersects(covered)]
        if under:
            self.view.scroll_by(QPoint(min(under) - covered.right() - _APART, 0))

    def _on_edited(self, text: str) -> None:
        catalogue = self.view.document.catalogue
        hits = (
            [hit for hit in catalogue.search(text, 4 * _MOST) if hit.kind == "tube"] if text.strip() else []
        )
        found = [
            Offer(hit.name, spoken(hit.summary), {"kind": "tube", "type": hit.name}) for hit in hits[:_MOST]
        ]
        self.offers.show_offers(found)
        if not found:
            self._consider(None)
            self.answer.setText(words.tr("No tube type is called that.") if text.strip() else "")
        self._fit_all()

    def _on_row(self) -> None:
        self._consider(self.chosen())
        self._fit_all()

    def _fit_all(self) -> None:
        self.fit()
        corner = QPoint(self.geometry().left(), self.geometry().bottom() + 4)
        self.offers.fit(corner, self.view.height() - corner.y() - 12)

    def chosen(self) -> str | None:
        """The type that Enter would take."""
        offer = self.offers.offer_of(self.offers.currentItem())
        return None if offer is None else str(offer.part_template["type"])

    def checks(self, designation: str) -> list[Rewiring]:
        """What the type means for each of the tubes."""
        sheet, known = self.view.document.sheet, self.view.document.catalogue.tube
        tubes = [sheet.part_by_id[part_id] for part_id in self._tubes if part_id in sheet.part_by_id]
        return [
            rewiring_for(sheet, tube, known(tube.type), known(designation), designation)
            for tube in tubes
            if isinstance(tube, Tube)
        ]

    def _consider(self, designation: str | None) -> None:
        proposal = self.view.sheet_scene.proposal
        if designation is None:
            proposal.withdraw()
            return
        checks = self.checks(designation)
        self.answer.setText("\n".join(_lines(checks)))
        self.field.setAccessibleDescription(self.answer.text())
        proposal.consider(self._text(designation), _edit_of(checks))

    def _text(self, designation: str) -> str:
        what = words.counted(self._tubes, self.view.document.sheet)
        return words.tr("Replace {what} by {type}").format(what=what, type=designation)

    def take(self, backwards: bool) -> None:
        """Put the chosen type into the sockets."""
        designation = self.chosen()
        if designation is not None and not backwards:
            edit = _edit_of(self.checks(designation))
            text = self._text(designation)
            self.leave()
            self.view.document.apply(text, edit)

    def step(self, by: int) -> None:
        """Walk the offers."""
        self.offers.step(by)

    def leave(self) -> None:
        """Back to the drawing with nothing done."""
        self._close()
        super().leave()

    def _close(self) -> None:
        self.offers.show_offers([])
        self.view.sheet_scene.proposal.withdraw()

    def hideEvent(self, event: QEvent) -> None:
        """Nothing is considered any more."""
        self._close()
        super().hideEvent(event)  # type: ignore[arg-type]


def _edit_of(checks: list[Rewiring]) -> Edit:
    return in_turn(*(replace_and_rewire(check) for check in checks))


def _lines(checks: list[Rewiring]) -> list[str]:
    """What is said of each tube; of several tubes each line once, with the tubes it is said of."""
    if len(checks) == 1:
        return [spoken(line) for line in checks[0].sentences]
    said: dict[str, list[str]] = {}
    for check in checks:
        for line in check.sentences:
            said.setdefault(spoken(line), []).append(check.tube_id)
    lines = [line if len(ids) == len(checks) else f"{', '.join(ids)}: {line}" for line, ids in said.items()]
    rest = len(lines) - _TOLD
    return lines if rest <= 0 else [*lines[:_TOLD], words.tr("and {count} more").format(count=rest)]
