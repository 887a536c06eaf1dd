"""A wire becomes two with a joint between them, and back."""

from __future__ import annotations

from collections.abc import Sequence

import msgspec

from core.edits.basic import PREFIXES, Corner, Edit, fresh_id
from core.edits.pairs import fresh_twist, twin_of, untwist
from core.errors import EditError
from core.sentences import sentence
from core.sheet import Joint, Sheet, Wire, split_terminal

BESIDE = (0.0, 20.0)  # from the joint of a wire to that of its twin, where no other place is given


def joint_ids(sheet: Sheet, wire_id: str) -> tuple[str, ...]:
    """The joints that :func:`split_wire` will make: that of the wire, and that of its twin if it has one."""
    first = fresh_id(sheet, PREFIXES["joint"])
    if twin_of(sheet, wire_id) is None:
        return (first,)
    return first, fresh_id(sheet, PREFIXES["joint"], (first,))


def split_wire(
    wire_id: str, at: Corner, share: float = 0.5, corners: int = 0, twin_at: Corner | None = None
) -> Edit:
    """Cut a wire at a place ``share`` of its way along and join the two with a joint.

    Both keep gauge and colour and share the length. The first ``corners`` of those that are set stay with the first.
    The other wire of a twisted pair is cut at the same share, so that there are two pairs afterwards.

    Raises
    ------
    core.errors.EditError
        When there is no such wire.
    """

    def edit(sheet: Sheet) -> Sheet:
        wire = sheet.wire_by_id.get(wire_id)
        if wire is None:
            raise EditError(sentence("There is no wire {id}.", id=wire_id))
        within = min(max(share, 0.0), 1.0)
        joints = joint_ids(sheet, wire_id)
        twin = twin_of(sheet, wire_id)
        if twin is None:
            return _cut(sheet, wire, Joint(id=joints[0], at=at), within, corners, wire.twist)
        other = sheet.wire_by_id[twin]
        name = fresh_twist(sheet)
        is_same_way = split_terminal(wire.start)[0] == split_terminal(other.start)[0]
        place = twin_at or (at[0] + BESIDE[0], at[1] + BESIDE[1])
        after = _cut(sheet, wire, Joint(id=joints[0], at=at), within, corners, name)
        along = within if is_same_way else 1 - within
        after = _cut(after, other, Joint(id=joints[1], at=place), along, 0, name)
        return after if is_same_way else _retwisted(after, other.id, name)

    return edit


def _cut(sheet: Sheet, wire: Wire, joint: Joint, share: float, corners: int, twist: str | None) -> Sheet:
    """One wire cut; its second half carries ``twist``."""
    end = f"{joint.id}.j"
    first = msgspec.structs.replace(wire, end=end, via=wire.via[:corners], **_length(wire, share))
    second = msgspec.structs.replace(
        wire,
        id=fresh_id(sheet, "w", (joint.id,)),
        start=end,
        twist=twist,
        via=wire.via[corners:],
        **_length(wire, 1 - share),
    )
    at = next(number for number, each in enumerate(sheet.wires) if each.id == wire.id)
    wires = (*sheet.wires[:at], first, second, *sheet.wires[at + 1 :])
    return msgspec.structs.replace(sheet, parts=(*sheet.parts, joint), wires=wires)


def _length(wire: Wire, share: float) -> dict[str, float]:
    return {} if wire.length_m is None else {"length_m": wire.length_m * share}


def _retwisted(sheet: Sheet, wire_id: str, name: str) -> Sheet:
    """Exchange the twists of the halves of a wire that runs against its twin."""
    at = next(number for number, wire in enumerate(sheet.wires) if wire.id == wire_id)
    first, second = sheet.wires[at : at + 2]
    halves = (
        msgspec.structs.replace(first, twist=name),
        msgspec.structs.replace(second, twist=first.twist),
    )
    return msgspec.structs.replace(sheet, wires=(*sheet.wires[:at], *halves, *sheet.wires[at + 2 :]))


def take_out_joint(joint_id: str) -> Edit:
    """Take a joint out of the wire that it interrupts: its two wires become one, as long as both.

    Where the other wire of a pair has its joint at the same step, that one is taken out as well and the pair stays
    twisted; otherwise the wire is twisted no longer.

    Raises
    ------
    core.errors.EditError
        When it is no joint between exactly two wires of the same gauge, or both go to the same terminal.
    """

    def edit(sheet: Sheet) -> Sheet:
        first, second = _halves(sheet, joint_id)
        beside = _joint_beside(sheet, first, second)
        if beside is not None:
            after = _mended(sheet, beside, *_halves(sheet, beside), first.twist)
            return _mended(after, joint_id, first, second, first.twist)
        if not (first.twist or second.twist):
            return _mended(sheet, joint_id, first, second, None)
        alone = untwist((first.id, second.id))(sheet)
        return _mended(alone, joint_id, *_halves(alone, joint_id), None)

    return edit


def can_take_out(sheet: Sheet, joint_id: str) -> bool:
    """Whether a joint stands between exactly two wires that can become one."""
    try:
        _halves(sheet, joint_id)
    except EditError:
        return False
    return True


def _halves(sheet: Sheet, joint_id: str) -> tuple[Wire, Wire]:
    """The two wires on a joint, in the order of the sheet."""
    end = f"{joint_id}.j"
    wires = [wire for wire in sheet.wires if end in (wire.start, wire.end)]
    if not isinstance(sheet.part_by_id.get(joint_id), Joint):
        raise EditError(sentence("{id} is not a joint.", id=joint_id))
    if len(wires) != 2:
        raise EditError(
            sentence(
                "{id} does not stand between two wires: {count} end on it.", id=joint_id, count=len(wires)
            )
        )
    first, second = wires
    if _other_end(first, end) == _other_end(second, end):
        raise EditError(sentence("Both wires on {id} go to the same terminal.", id=joint_id))
    if not (first.is_strap or second.is_strap or _size(first) == _size(second)):
        raise EditError(
            sentence(
                "{first} and {second} differ in gauge; make them alike first.",
                first=first.id,
                second=second.id,
            )
        )
    return first, second


def _size(wire: Wire) -> tuple[int | None, float | None]:
    return wire.awg, wire.area_mm2


def _other_end(wire: Wire, end: str) -> str:
    return wire.end if wire.start == end else wire.start


def _joint_beside(sheet: Sheet, first: Wire, second: Wire) -> str | None:
    """The joint between the twins of two wires, if theirs can be taken out too."""
    twins = [twin for wire in (first, second) if (twin := twin_of(sheet, wire.id)) is not None]
    if len(twins) != 2:
        return None
    ends = [{sheet.wire_by_id[twin].start, sheet.wire_by_id[twin].end} for twin in twins]
    shared = [split_terminal(end)[0] for end in ends[0] & ends[1]]
    return next((one for one in shared if can_take_out(sheet, one)), None)


def _mended(sheet: Sheet, joint_id: str, first: Wire, second: Wire, twist: str | None) -> Sheet:
    """One wire instead of two, in the place and with the id of the first."""
    end = f"{joint_id}.j"
    kept = second if first.is_strap else first
    merged = msgspec.structs.replace(
        first,
        start=_other_end(first, end) if first.end == end else _other_end(second, end),
        end=_other_end(second, end) if first.end == end else _other_end(first, end),
        awg=kept.awg,
        area_mm2=kept.area_mm2,
        length_m=_sum(first.length_m, second.length_m),
        via=_joined(first, second, end),
        twist=twist,
    )
    return msgspec.structs.replace(
        sheet,
        parts=tuple(part for part in sheet.parts if part.id != joint_id),
        wires=tuple(merged if wire.id == first.id else wire for wire in sheet.wires if wire.id != second.id),
    )


def _joined(first: Wire, second: Wire, end: str) -> Sequence[Corner]:
    """The corners of both, from the start of the merged wire to its end."""
    if first.end == end:
        return first.via + (second.via if second.start == end else second.via[::-1])
    return (second.via if second.end == end else second.via[::-1]) + first.via


def _sum(first: float | None, second: float | None) -> float | None:
    return None if first is None and second is None else (first or 0.0) + (second or 0.0)
