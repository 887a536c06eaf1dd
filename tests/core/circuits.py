"""Small circuits for the tests of the solver, and their operating points."""

from __future__ import annotations

from typing import Any

import pytest

from core.assess import assess
from core.catalogue import load_builtin
from core.results import OperatingPoint
from core.sheet import AnyPart, Chassis, Sheet, Tube, Winding, Wire


def wired(parts: list[AnyPart], straps: str = "", **fields: Any) -> Sheet:
    """A sheet with straps written ``B1.+=V1.4 V1.5=B1.-``."""
    ends = [pair.split("=") for pair in straps.split()]
    wires = tuple(Wire(id=f"w{n}", start=a, end=b) for n, (a, b) in enumerate(ends))
    return Sheet(parts=tuple(parts), wires=wires + fields.pop("wires", ()), **fields)


def run(parts: list[AnyPart], straps: str = "", condition: str = "nominal", **fields: Any) -> OperatingPoint:
    point = assess(wired(parts, straps, **fields), load_builtin()).points[condition]
    assert not point.unsolved
    assert point.power_in_w == pytest.approx(point.power_out_w, rel=1e-9, abs=1e-9)
    return point


def el84(part_id: str = "V1", **fields: Any) -> Tube:
    return Tube(id=part_id, type="EL84", **fields)


def ladder(sockets: int) -> Sheet:
    """Sockets on a real pair of wires from one winding, fed at one end."""
    parts: list[AnyPart] = [
        Winding(id="T1", rated_v=6.6, rated_a=0.3 * sockets, regulation_pct=5.0),
        Chassis(id="E1"),
    ]
    wires = [Wire(id="e", start="T1.b", end="E1.e")]
    for n in range(sockets):
        parts.append(Tube(id=f"V{n}", type="6SN7", rated_a=0.3))
        before = ("T1.a", "T1.b") if n == 0 else (f"V{n - 1}.7", f"V{n - 1}.8")
        for end, name in zip(before, ("7", "8"), strict=True):
            wires.append(
                Wire(
                    id=f"x{n}.{name}".replace(".", "-"), start=end, end=f"V{n}.{name}", awg=14, length_m=0.005
                )
            )
    return Sheet(parts=tuple(parts), wires=tuple(wires))
