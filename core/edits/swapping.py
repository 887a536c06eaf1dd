"""Two parts change places, or two sockets change tubes."""

from __future__ import annotations

import msgspec

from core.edits.basic import Edit
from core.errors import EditError
from core.sentences import sentence
from core.sheet import REMARK_KINDS, AnyPart, Sheet, Tube

_OF_SOCKET = ("id", "at", "turn", "mirror")


def swap_tubes(first: str, second: str) -> Edit:
    """Put each of two tubes, with everything that was set for it, into the other's socket; the wires stay."""

    def into(socket: Tube, tube: Tube) -> Tube:
        return msgspec.structs.replace(tube, **{name: getattr(socket, name) for name in _OF_SOCKET})

    def edit(sheet: Sheet) -> Sheet:
        one, other = (_part(sheet, part_id) for part_id in (first, second))
        if not isinstance(one, Tube) or not isinstance(other, Tube):
            wrong = other.id if isinstance(one, Tube) else one.id
            raise EditError(sentence("{id} is not a tube.", id=wrong))
        return _exchanged(sheet, into(one, other), into(other, one))

    return edit


def swap_places(first: str, second: str) -> Edit:
    """Let two parts change places on the sheet; their wires follow them."""

    def edit(sheet: Sheet) -> Sheet:
        one, other = (_part(sheet, part_id) for part_id in (first, second))
        for part in (one, other):
            if part.kind in REMARK_KINDS:
                raise EditError(sentence("{id} is no part of the wiring.", id=part.id))
        return _exchanged(
            sheet, msgspec.structs.replace(one, at=other.at), msgspec.structs.replace(other, at=one.at)
        )

    return edit


def _part(sheet: Sheet, part_id: str) -> AnyPart:
    part = sheet.part_by_id.get(part_id)
    if part is None:
        raise EditError(sentence("There is no part {id}.", id=part_id))
    return part


def _exchanged(sheet: Sheet, *new: AnyPart) -> Sheet:
    by_id = {part.id: part for part in new}
    return msgspec.structs.replace(sheet, parts=tuple(by_id.get(part.id, part) for part in sheet.parts))
