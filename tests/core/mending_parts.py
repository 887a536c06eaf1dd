"""Parts and wires that the sheets of the remedies are made from."""

from __future__ import annotations

from core.catalogue.types import TubeType
from core.sheet import (
    AnyPart,
    Chassis,
    DcSupply,
    Mains,
    Sheet,
    Tube,
    Winding,
    Wire,
)
from tests.core.rule_sheets import sheet, tube_type

E1 = Chassis(id="E1", at=(0, 160))
T1 = Winding(id="T1", rated_v=6.3, rated_a=2.0, regulation_pct=0.001)
T12 = Winding(id="T1", rated_v=12.6, rated_a=2.0, regulation_pct=0.001)
FED = "T1.a V1.4, T1.b V1.5, T1.b E1.e"
THREE_TIES = f"{FED}, V1.5 E1.e, V2.5 E1.e, V1.4 V2.4, V1.5 V2.5"
DC = "P1.- E1.e, P1.+ V1.4, P1.- V1.5"


def dc(v: float = 6.3, limit_a: float = 10.0, **more: object) -> DcSupply:
    return DcSupply(id="P1", set_v=v, limit_a=limit_a, **more)  # type: ignore[arg-type]


def tube(name: str, part_id: str = "V1", x: float = 320.0, **more: object) -> Tube:
    return Tube(id=part_id, type=name, at=(x, 0.0), **more)  # type: ignore[arg-type]


def wired(
    *parts: AnyPart, wires: str, types: tuple[TubeType, ...] = (), mains: Mains | None = None, **size: float
) -> Sheet:
    """A sheet with straps, or with wires of one size."""
    made = tuple(
        Wire(id=f"w{number}", start=pair.split()[0], end=pair.split()[1], **size)  # type: ignore[arg-type]
        for number, pair in enumerate(wires.split(","), 1)
    )
    return sheet(*parts, wires=made, types=types, **({} if mains is None else {"mains": mains}))


LOW_HK = tube_type("XHK", "4-5", 6.3, 0.3, hk_negative_peak_v=50.0, hk_positive_peak_v=50.0)
JOINED = tube_type("XREC", "4-5", 5.0, 1.0, heating="direct", description="rectifier")
