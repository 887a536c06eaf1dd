"""What can be done to the selected wires by key or menu: corners, pairs, joints. Each is one step of the history."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from app.canvas import telling, words
from app.canvas.bends import corners_before, middle_of, spot_on, with_piece_moved
from app.canvas.handles import leading_wire
from app.canvas.routing import Point
from core.edits import Edit, set_wire
from core.edits.pairs import parts_of, twin_of, twist, untwist, with_twins
from core.edits.splicing import can_take_out, joint_ids, split_wire, take_out_joint
from core.sheet import Sheet

if TYPE_CHECKING:
    from app.canvas.view import SheetView

STEP = (
    10.0  # pieces of wires lie on a grid half as wide as that of parts, which is the distance of their lanes
)
_BETWEEN_JOINTS = 20.0


class WireEditing:
    """Edits the selected wires of a view."""

    def __init__(self, view: SheetView) -> None:
        self._view = view
        self._document = view.document
        self.in_pairs = False  # whether a wire that is drawn brings its partner along as a twisted pair

    @property
    def _sheet(self) -> Sheet:
        return self._document.sheet

    @property
    def wire_id(self) -> str:
        """The wire that is selected, alone or as the first of a pair; empty for anything else."""
        return leading_wire(self._view.sheet_scene, self._view.selection.ids)

    def toggle_pairs(self) -> None:
        """Draw wires in pairs from now on, or singly again."""
        self.in_pairs = not self.in_pairs
        said = words.tr("Wires are drawn in pairs.") if self.in_pairs else words.tr("Wires are drawn singly.")
        telling.announce(self._view, said)

    # corners

    def bend(self, wire_id: str, via: tuple[Point, ...], merge_key: str = "") -> None:
        """Set the corners of a wire."""
        text = words.tr("Lead {id} another way").format(id=wire_id)
        self._document.apply(text, set_wire(wire_id, via=via), merge_key)

    def find_way(self) -> None:
        """Let the route of the selected wires find its way: forget the corners that were set."""
        self._view.cancel_gesture()
        bent = self._bent()
        if bent:
            text = words.tr("Let {what} find its way").format(what=words.counted(bent, self._sheet))
            self._document.apply(text, lambda sheet: _straightened(sheet, bent))

    def _bent(self) -> frozenset[str]:
        wires = self._sheet.wire_by_id
        ids = with_twins(self._sheet, self._view.selection.ids)
        return frozenset(one for one in ids if one in wires and wires[one].via)

    @property
    def is_bent(self) -> bool:
        """Whether corners are set for a selected wire."""
        return bool(self._bent())

    def step_piece(self, by: int) -> None:
        """Go to the next or the previous piece of the selected wire, round and round."""
        handles = self._view.handles
        count = len(handles.pieces)
        if not count:
            return
        handles.current = (
            (0 if by > 0 else count - 1) if handles.current is None else (handles.current + by) % count
        )
        handles.refresh()
        said = words.tr("Piece {number} of {count}: the arrows move it.")
        telling.announce(self._view, said.format(number=handles.current + 1, count=count))

    def move_piece(self, dx: float, dy: float) -> bool:
        """Move the current piece across its way; False where there is none. Strokes that follow are one step."""
        handles = self._view.handles
        if handles.current is None:
            return False
        piece = handles.pieces[handles.current]
        by = dy if piece.is_level else dx
        if by:
            at = piece.start[1] if piece.is_level else piece.start[0]
            to = at + by if abs(by) < STEP else round((at + by) / STEP) * STEP
            via = with_piece_moved(handles.bones, self._sheet.wire_by_id[handles.wire_id].via, piece, to - at)
            self.bend(handles.wire_id, via, merge_key=f"bend {handles.wire_id} {piece.is_level}")
            handles.hold(piece, to)
        return True

    # pairs

    def twist(self) -> None:
        """Twist the two selected wires."""
        self._view.cancel_gesture()
        if self.can_twist:
            first, second = sorted(self._view.selection.ids)
            text = words.tr("Twist {first} and {second}").format(first=first, second=second)
            self._document.apply(text, twist(first, second))

    @property
    def can_twist(self) -> bool:
        """Whether two wires between the same two parts are selected that are no pair yet."""
        wires = [self._sheet.wire_by_id.get(one) for one in self._view.selection.ids]
        if len(wires) != 2 or wires[0] is None or wires[1] is None:
            return False
        both = parts_of(wires[0])
        return (
            len(both) == 2 and both == parts_of(wires[1]) and twin_of(self._sheet, wires[0].id) != wires[1].id
        )

    def untwist(self) -> None:
        """Untwist the selected wires."""
        self._view.cancel_gesture()
        if self.can_untwist:
            pair = with_twins(self._sheet, self._twisted())
            text = words.tr("Untwist {what}").format(what=words.counted(pair, self._sheet))
            self._document.apply(text, untwist(pair))

    @property
    def can_untwist(self) -> bool:
        """Whether a selected wire is twisted."""
        return bool(self._twisted())

    def _twisted(self) -> list[str]:
        wires = self._sheet.wire_by_id
        return [one for one in self._view.selection.ids if one in wires and wires[one].twist]

    # joints

    def split(self, at: Point | None = None, fine: bool = False) -> None:
        """Cut the selected wire with a joint: near a place, or in the middle of its way."""
        self._view.cancel_gesture()
        if self.wire_id:
            joints, edit = self.splitting(self.wire_id, at, fine)
            self._document.apply(words.tr("Split {id}").format(id=self.wire_id), edit)
            self._view.selection.set(joints)

    def splitting(self, wire_id: str, at: Point | None, fine: bool = False) -> tuple[tuple[str, ...], Edit]:
        """The ids of the joints, and the edit that cuts a wire near a place; a twin's joint lies beside it."""
        line = self._view.sheet_scene.layout_.board.routes[wire_id]
        spot = spot_on(line, at or middle_of(line), 1.0 if fine else STEP)
        corners = corners_before(line, self._sheet.wire_by_id[wire_id].via, spot.share)
        x, y = spot.point
        beside = (x, y + _BETWEEN_JOINTS) if spot.is_level else (x + _BETWEEN_JOINTS, y)
        return joint_ids(self._sheet, wire_id), split_wire(wire_id, spot.point, spot.share, corners, beside)

    def take_out(self) -> None:
        """Take the selected joint out: its two wires become one."""
        self._view.cancel_gesture()
        joints = self._removable()
        if joints:
            text = words.tr("Take {what} out").format(what=words.counted(joints, self._sheet))
            self._document.apply(text, lambda sheet: _without(sheet, joints))

    @property
    def can_take_out(self) -> bool:
        """Whether a selected joint stands between two wires."""
        return bool(self._removable())

    def _removable(self) -> list[str]:
        return [one for one in sorted(self._view.selection.ids) if can_take_out(self._sheet, one)]


def _straightened(sheet: Sheet, ids: Collection[str]) -> Sheet:
    for wire_id in sorted(ids):
        sheet = set_wire(wire_id, via=())(sheet)
    return sheet


def _without(sheet: Sheet, joints: Collection[str]) -> Sheet:
    for joint_id in joints:
        if can_take_out(sheet, joint_id):
            sheet = take_out_joint(joint_id)(sheet)
    return sheet
