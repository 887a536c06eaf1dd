"""Edits: pure functions from a sheet to a new sheet.

An edit is ``Sheet -> Sheet``; ``change_between`` says what it touched. Nothing here mutates anything. The everyday
edits are here; those of many parts at once are in their own modules, loaded when first asked for.
"""

from core.edits.basic import (
    PREFIXES,
    Change,
    Edit,
    add_part,
    add_wire,
    change_between,
    fresh_id,
    in_turn,
    move_parts,
    remove,
    rename,
    replace_type,
    set_part,
    set_sheet,
    set_wire,
    turn_parts,
)

__all__ = [
    "PREFIXES",
    "Change",
    "Edit",
    "add_part",
    "add_wire",
    "change_between",
    "fresh_id",
    "in_turn",
    "move_parts",
    "remove",
    "rename",
    "replace_type",
    "set_part",
    "set_sheet",
    "set_wire",
    "turn_parts",
]
