"""What is considered, told in a corner of the drawing: what it would do to the findings."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint

from app.proposal import Proposed
from app.theme import Theme

if TYPE_CHECKING:
    from app.canvas.view import SheetView
    from app.panes.proposal_rows import ProposalCard

_FROM_CORNER = QPoint(14, 14)


class OutlookCorner:
    """The card of one view; made when something is considered for the first time."""

    def __init__(self, view: SheetView) -> None:
        self._view = view
        self.card: ProposalCard | None = None

    def show(self, proposed: Proposed | None) -> None:
        """Tell what is considered; nothing hides the card."""
        if self.card is None and proposed is not None:
            from app.panes.proposal_rows import ProposalCard  # noqa: PLC0415 - most starts need none

            self.card = ProposalCard(self._view.sheet_scene.theme, self._view, _FROM_CORNER)
        if self.card is not None:
            self.card.show_proposal(proposed)

    def set_theme(self, theme: Theme) -> None:
        """Show the card in another theme."""
        if self.card is not None:
            self.card.set_theme(theme)
