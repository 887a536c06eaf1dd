"""What editing a cell of a table does to the sheet, and what is offered while it is edited."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from app.document import Document
from app.panes import offering, reading
from app.panes.gauge import parse_gauge
from app.panes.renaming import rename_kept
from app.selection import Selection
from core import edits
from core.edits import Edit
from core.edits.pairs import set_pair
from core.errors import EditError
from core.sheet import REMARK_KINDS, Tube
from core.units import Dimension, parse

translate = QCoreApplication.translate


class CellEdits:
    """Each edit is one step of the history, and raises where it cannot be done."""

    def __init__(self, document: Document, selection: Selection) -> None:
        self._document = document
        self._selection = selection

    def _set(self, owner: str, what: str, edit: Edit) -> None:
        label = translate("tables", "Set {id} {what}").format(id=owner, what=what)
        self._document.apply(label, edit)

    def rename(self, owner: str, text: str) -> None:
        """Give a part or wire another id."""
        rename_kept(self._document, self._selection, owner, text)

    def set_rating(self, owner: str, text: str) -> None:
        """Give a part another type or other figures."""
        part = self._document.sheet.part_by_id[owner]
        what = translate("tables", "type") if isinstance(part, Tube) else translate("tables", "rating")
        self._set(owner, what, reading.rating_edit(part, text, self._document.catalogue))

    def set_place(self, owner: str, text: str) -> None:
        """Put a part elsewhere."""
        self._set(owner, translate("tables", "place"), edits.set_part(owner, at=reading.read_place(text)))

    def set_turn(self, owner: str, text: str) -> None:
        """Turn a part."""
        turn = reading.read_turn(text)
        if turn and self._document.sheet.part_by_id[owner].kind in REMARK_KINDS:
            raise EditError(translate("tables", "Notes and frames cannot be turned."))
        self._set(owner, translate("tables", "turn"), edits.set_part(owner, turn=turn))

    def set_pulled(self, owner: str, text: str) -> None:
        """Pull a tube out of its socket, or put it back."""
        is_pulled = reading.read_pulled(text)
        if not isinstance(self._document.sheet.part_by_id[owner], Tube):
            raise EditError(translate("tables", "Only a tube can be pulled."))
        self._set(owner, translate("tables", "pulled"), edits.set_part(owner, pulled=is_pulled))

    def set_start(self, owner: str, text: str) -> None:
        """Let a wire begin at another terminal."""
        terminal = reading.read_terminal(text, self._document.sheet)
        self._set(owner, translate("tables", "from"), edits.set_wire(owner, start=terminal))

    def set_end(self, owner: str, text: str) -> None:
        """Let a wire end at another terminal."""
        terminal = reading.read_terminal(text, self._document.sheet)
        self._set(owner, translate("tables", "to"), edits.set_wire(owner, end=terminal))

    def set_gauge(self, owner: str, text: str) -> None:
        """Give a wire, and its pair, another size; an empty text makes it an ideal strap."""
        self._set(owner, translate("tables", "gauge"), set_pair(owner, **parse_gauge(text)))

    def set_length(self, owner: str, text: str) -> None:
        """Give a wire, and its pair, another length; an empty text makes it an ideal strap."""
        length = parse(text, Dimension.METRES) if text else None
        self._set(owner, translate("tables", "length"), set_pair(owner, length_m=length))

    def set_colour(self, owner: str, text: str) -> None:
        """Give the insulation of a wire, and of its pair, another colour, or none."""
        colour = reading.read_colour(text)
        self._set(owner, translate("tables", "colour"), set_pair(owner, colour=colour))

    def set_pair(self, owner: str, text: str) -> None:
        """Put a wire into a twisted pair by its name, or take it out."""
        self._set(owner, translate("tables", "pair"), edits.set_wire(owner, twist=text or None))

    def ratings(self, owner: str, text: str) -> list[str]:
        """Types that fit the text."""
        part = self._document.sheet.part_by_id.get(owner)
        return [] if part is None else offering.ratings_of(self._document.catalogue, part, text)

    def terminals(self, _owner: str, text: str) -> list[str]:
        """Terminals that fit the text."""
        return offering.terminals_of(self._document.sheet, self._document.catalogue, text)

    def pairs(self, _owner: str, text: str) -> list[str]:
        """Twisted pairs of the sheet."""
        return offering.pairs(self._document.sheet, text)
