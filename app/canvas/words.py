"""The words of the canvas: names of undo steps, tooltips, and what a screen reader is told."""

from __future__ import annotations

import html
from collections.abc import Collection

from PySide6.QtCore import QCoreApplication

from app.canvas import symbols
from app.canvas.look import PartLook
from app.kinds import kind_title
from core.catalogue import Catalogue
from core.sheet import AnyPart, Sheet, Wire, split_terminal

_LISTED = 6


def tr(text: str) -> str:
    """Translate a literal text of the canvas."""
    return QCoreApplication.translate("canvas", text)


def counted(ids: Collection[str], sheet: Sheet) -> str:
    """The things by name if it is one, else by number: ``V1``, ``3 parts``, ``2 parts and 1 wire``."""
    if len(ids) == 1:
        return next(iter(ids))
    parts = sum(item_id in sheet.part_by_id for item_id in ids)
    wires = sum(item_id in sheet.wire_by_id for item_id in ids)
    words = []
    if parts:
        words.append(tr("1 part") if parts == 1 else tr("{count} parts").format(count=parts))
    if wires:
        words.append(tr("1 wire") if wires == 1 else tr("{count} wires").format(count=wires))
    return tr(" and ").join(words)


def joined(ids: Collection[str], sheet: Sheet) -> str:
    """Two things by name, others as :func:`counted` says: ``V1 and V2``, ``3 parts``."""
    return tr(" and ").join(ids) if len(ids) == 2 else counted(ids, sheet)


def move_text(ids: Collection[str], sheet: Sheet) -> str:
    """Name of a move: ``Move V1``."""
    return tr("Move {what}").format(what=counted(ids, sheet))


def turn_text(ids: Collection[str], sheet: Sheet) -> str:
    """Name of a turn: ``Turn V2``."""
    return tr("Turn {what}").format(what=counted(ids, sheet))


def delete_text(ids: Collection[str], sheet: Sheet) -> str:
    """Name of a deletion: ``Delete 3 parts``."""
    return tr("Delete {what}").format(what=counted(ids, sheet))


def add_text(part: AnyPart) -> str:
    """Name of an addition: ``Add EL84``, ``Add resistor``."""
    name = getattr(part, "type", None) or kind_title(part.kind)
    return tr("Add {what}").format(what=name)


def wire_text(start: str, end: str) -> str:
    """Name of a new wire: ``Wire V1.4 to V2.4``, ``Strap V1.4 to V1.5`` on one part."""
    same = split_terminal(start)[0] == split_terminal(end)[0]
    text = tr("Strap {start} to {end}") if same else tr("Wire {start} to {end}")
    return text.format(start=start, end=end)


def describe_part(part: AnyPart, catalogue: Catalogue, look: PartLook) -> str:
    """One part in a line: id, rating, figures, and how it stands."""
    states = {
        "over": tr("over"),
        "under": tr("under"),
        "cold": tr("not heated"),
        "stale": tr("not yet solved"),
        "ok": tr("within tolerance") if part.kind in ("tube", "lamp") else "",
    }
    head = " ".join(filter(None, (part.id, symbols.rating_text(part, catalogue))))
    return ", ".join(filter(None, (head, look.values, look.remark or states.get(look.state, ""))))


def describe_wire(wire: Wire, text: str, current: str) -> str:
    """One wire in a line: id, ends, gauge, length and current."""
    ends = tr("{start} to {end}").format(start=wire.start, end=wire.end)
    return ", ".join(filter(None, (f"{wire.id} {ends}", text or tr("strap"), current)))


def listed(lines: list[str]) -> str:
    """Several lines as one text; the tail of a long list only counted."""
    shown = lines[:_LISTED]
    if len(lines) > _LISTED:
        shown.append(tr("and {count} more").format(count=len(lines) - _LISTED))
    return "; ".join(shown)


def tooltip(lines: list[str]) -> str:
    """Lines as a tooltip in which no text of the sheet can act as markup."""
    return "<qt>" + "<br>".join(html.escape(line).replace(" ", "&nbsp;") for line in lines) + "</qt>"
