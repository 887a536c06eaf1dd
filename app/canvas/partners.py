"""Which terminal belongs to which, where two wires are laid as a pair."""

from __future__ import annotations

from collections import Counter

from core.catalogue import Catalogue
from core.catalogue.types import TubeType
from core.sheet import Sheet, Tube, split_terminal

_TWO_ENDED = {
    "lamp": ("1", "2"),
    "winding": ("a", "b"),
    "dc_supply": ("+", "-"),
    "battery": ("+", "-"),
    "mains_feed": ("L", "N"),
    "rectified_supply": ("+", "-"),
}


def partner_of(sheet: Sheet, catalogue: Catalogue, terminal: str) -> str | None:
    """The other end of the heater or supply that a terminal belongs to; None where it has none.

    A tapped heater has its two outer pins as ends; once these are strapped together, the strap and the tap.
    """
    part_id, name = split_terminal(terminal)
    part = sheet.part_by_id.get(part_id)
    if isinstance(part, Tube):
        kind = catalogue.tube(part.type)
        other = None if kind is None else _other_pin(sheet, part_id, kind, name)
    elif part is not None and name in _TWO_ENDED.get(part.kind, ()):
        first, second = _TWO_ENDED[part.kind]
        other = second if name == first else first
    else:
        other = None
    return None if other is None else f"{part_id}.{other}"


def _other_pin(sheet: Sheet, part_id: str, kind: TubeType, name: str) -> str | None:
    uses = Counter(pin for section in kind.sections for pin in section.pins)
    outer = [pin for pin, count in uses.items() if count == 1]
    taps = [pin for pin, count in uses.items() if count > 1]
    if not taps:
        pair = next((section.pins for section in kind.sections if name in section.pins), None)
        return None if pair is None else pair[pair[0] == name]
    if len(outer) != 2 or len(taps) != 1:
        return None
    if _is_strapped(sheet, f"{part_id}.{outer[0]}", f"{part_id}.{outer[1]}"):
        return outer[0] if name == taps[0] else taps[0] if name in outer else None
    return outer[outer[0] == name] if name in outer else None


def _is_strapped(sheet: Sheet, first: str, second: str) -> bool:
    return any({wire.start, wire.end} == {first, second} for wire in sheet.wires)
