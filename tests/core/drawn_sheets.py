"""Random drawings for the properties of edits: parts of all kinds on the grid, wires with corners and twists."""

from __future__ import annotations

from hypothesis import strategies as st

from core.sheet import (
    AnyPart,
    Chassis,
    DcSupply,
    Frame,
    Joint,
    Note,
    Relay,
    Resistor,
    Sheet,
    Tube,
    Winding,
    Wire,
)
from core.terminals import terminal_names

_TYPES = ("EL84", "ECC83", "6SN7GT", "300B")
_grid = st.integers(-40, 40).map(lambda step: step * 20.0)
places = st.tuples(_grid, _grid)
turns = st.sampled_from((0, 90, 180, 270))


@st.composite
def drawn_sheets(draw: st.DrawFn, most: int = 10) -> Sheet:
    """Up to ``most`` parts and twice as many wires between them."""
    parts: list[AnyPart] = []
    for number in range(draw(st.integers(1, most))):
        parts.append(_part(draw, number))
    ends = [f"{part.id}.{name}" for part in parts for name in _names(part)]
    wires: list[Wire] = []
    if len(ends) > 1:
        for number in range(draw(st.integers(0, 2 * most))):
            start, end = draw(st.lists(st.sampled_from(ends), min_size=2, max_size=2, unique=True))
            wires.append(
                Wire(
                    id=f"w{number + 3}",
                    start=start,
                    end=end,
                    via=tuple(draw(st.lists(places, max_size=2))),
                    twist=draw(st.sampled_from((None, None, "p1", "p2"))),
                )
            )
    return Sheet(parts=tuple(parts), wires=tuple(wires))


def _names(part: AnyPart) -> tuple[str, ...]:
    return ("4", "5", "9") if isinstance(part, Tube) else terminal_names(part) or ()


def _part(draw: st.DrawFn, number: int) -> AnyPart:
    at, turn, mirror = draw(places), draw(turns), draw(st.booleans())
    kind = draw(st.sampled_from("VVVTURJEKNF"))
    fields = {"id": f"{kind}{number * 2 + 1}", "at": at}
    if kind == "N":
        return Note(text="words", **fields)
    if kind == "F":
        return Frame(width=200.0, height=120.0, **fields)
    if kind == "V":
        return Tube(type=draw(st.sampled_from(_TYPES)), turn=turn, **fields)
    fields |= {"turn": turn, "mirror": mirror}
    made: dict[str, AnyPart] = {
        "T": Winding(rated_v=6.3, rated_a=3.0, centre_tap=True, **fields),
        "U": DcSupply(set_v=6.3, limit_a=3.0, **fields),
        "R": Resistor(ohm=10.0, **fields),
        "J": Joint(**fields),
        "E": Chassis(**fields),
        "K": Relay(coil_v=6.0, coil_ohm=100.0, **fields),
    }
    return made[kind]


def boxes_of(sheet: Sheet) -> dict[str, tuple[float, float, float, float]]:
    """A box for every part, as wide as frames and notes say and 40 by 40 about the place of all others."""
    boxes = {}
    for part in sheet.parts:
        x, y = part.at
        if isinstance(part, Frame):
            boxes[part.id] = (x, y, x + part.width, y + part.height)
        elif isinstance(part, Note):
            boxes[part.id] = (x, y, x + part.width, y + 40.0)
        else:
            boxes[part.id] = (x - 20.0, y - 20.0, x + 20.0, y + 20.0)
    return boxes
