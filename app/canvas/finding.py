"""Finding parts and wires by what stands beside them. Pure; see :mod:`app.canvas.find_line` for the field."""

from __future__ import annotations

from collections.abc import Iterator

from app.canvas.looks import wire_text
from app.canvas.symbols import rating_text
from app.kinds import kind_word
from core.catalogue import Catalogue
from core.catalogue.names import key
from core.edits.numbering import natural
from core.sheet import AnyPart, Frame, Note, Sheet, Tube, Wire


def matches(sheet: Sheet, catalogue: Catalogue, text: str) -> list[str]:
    """Ids of what a text may mean: the very id first, then parts, then wires, each in the order of their ids.

    Every word must stand in the id, the kind, the type (or an equivalent of it), the rating, the words of a note or
    the title of a frame; of a wire in its id, gauge, length or colour.
    """
    wanted = text.casefold().split()
    if not wanted:
        return []
    parts = [part.id for part in sheet.parts if _has(wanted, _of_part(part, catalogue))]
    wires = [wire.id for wire in sheet.wires if _has(wanted, _of_wire(wire))]
    found = [*sorted(parts, key=natural), *sorted(wires, key=natural)]
    whole = text.strip().casefold()
    return sorted(found, key=lambda item_id: item_id.casefold() != whole)


def _has(wanted: list[str], texts: Iterator[str]) -> bool:
    said = "\n".join(texts).casefold().replace("\u2009", " ")
    closed = said.replace(" ", "")
    return all(word in said or word in closed for word in wanted)


def _of_part(part: AnyPart, catalogue: Catalogue) -> Iterator[str]:
    yield part.id
    yield kind_word(part.kind)
    yield rating_text(part, catalogue)
    if isinstance(part, Note):
        yield part.text
    elif isinstance(part, Frame):
        yield part.title
    elif isinstance(part, Tube):
        known = catalogue.tube(part.type)
        for name in () if known is None else (known.designation, *known.equivalents):
            yield name
            yield key(name)


def _of_wire(wire: Wire) -> Iterator[str]:
    yield wire.id
    yield wire_text(wire)
    yield wire.colour or ""
