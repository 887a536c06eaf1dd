"""Sheets on which a supply is to be started softly, laid out in several ways."""

from __future__ import annotations

from core.sheet import AnyPart, Chassis, DcSupply, Overload, Sheet, Tube, Wire
from tests.core.rule_sheets import tube_type


def row(
    at: tuple[float, float],
    *places: tuple[float, float],
    size: bool = True,
    overload: Overload = "hiccup",
    limit_a: float = 1.0,
) -> Sheet:
    """ECC83s at some places, side by side on 12.6 V from a supply ``P1`` at ``at``."""
    parts: list[AnyPart] = [
        DcSupply(id="P1", set_v=12.6, limit_a=limit_a, overload=overload, at=at),
        Chassis(id="E1", at=(at[0] + 80, at[1] + 140)),
    ]
    wires = [Wire(id="w1", start="P1.-", end="E1.e")]
    before = ("P1.+", "P1.-")
    for number, place in enumerate(places, 1):
        parts.append(Tube(id=f"V{number}", type="ECC83", at=place))
        for pin, start in zip("45", before, strict=True):
            fields = {"awg": 20, "length_m": 0.2} if size else {}
            wires.append(Wire(id=f"w{len(wires) + 1}", start=start, end=f"V{number}.{pin}", **fields))
        before = (f"V{number}.4", f"V{number}.5")
    return Sheet(parts=tuple(parts), wires=tuple(wires))


PLACED: dict[str, Sheet] = {
    "to the right": row((0, 0), (320, 0), (520, 0), (720, 0)),
    "close by": row((0, 0), (160, 0), (320, 0)),
    "to the left": row((600, 0), (240, 0), (40, 0)),
    "far away": row((0, 0), (900, 60), (1100, 60)),
    "ideal connections": row((0, 0), (320, 0), (520, 0), size=False),
    "above": row((0, 400), (60, 0), (260, 0)),
    "below": row((0, 0), (0, 340), (200, 340)),
}

BOARD = tube_type("XBOARD", "4-5", 12.0, 0.52, cold_ratio=5.33)
"""A board of tubes as one heater: 12 V 0.52 A, cold ratio 5.33."""


def boards(count: int, limit_a: float = 3.0, overload: Overload = "hiccup", set_v: float = 12.0) -> Sheet:
    """Boards side by side on one supply ``P1``, straps for wires."""
    parts: list[AnyPart] = [
        DcSupply(id="P1", set_v=set_v, limit_a=limit_a, overload=overload),
        Chassis(id="E1", at=(80, 140)),
    ]
    wires = [Wire(id="e", start="P1.-", end="E1.e")]
    for number in range(1, count + 1):
        parts.append(Tube(id=f"V{number}", type="XBOARD", at=(320.0 + 200 * (number - 1), 0.0)))
        for pin, terminal in (("4", "+"), ("5", "-")):
            wires.append(Wire(id=f"w{number}{pin}", start=f"P1.{terminal}", end=f"V{number}.{pin}"))
    return Sheet(parts=tuple(parts), wires=tuple(wires), types=(BOARD,))


__all__ = ["BOARD", "PLACED", "boards", "row"]
