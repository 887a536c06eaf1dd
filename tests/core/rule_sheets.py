"""Small sheets for the tests of the rules, and what the rules say about them."""

from __future__ import annotations

from functools import cache

from core.assess import Assessment, assess
from core.catalogue import Catalogue, load_builtin
from core.catalogue.types import Section, TubeType
from core.results import Finding
from core.sheet import AnyPart, Chassis, DcSupply, Mains, Sheet, Tube, Winding, Wire

STEADY = Mains(nominal_v=230, low_pct=0, high_pct=0)


def straps(text: str, **size: float) -> tuple[Wire, ...]:
    """Wires ``w1``, ``w2`` ... from ``T1.a V1.4, T1.b V1.5``; ideal straps unless a size is given."""
    pairs = [pair.split() for pair in text.split(",") if pair.strip()]
    return tuple(
        Wire(id=f"w{number}", start=start, end=end, **size) for number, (start, end) in enumerate(pairs, 1)
    )


def sheet(
    *parts: AnyPart,
    wires: str | tuple[Wire, ...] = "",
    mains: Mains = STEADY,
    types: tuple[TubeType, ...] = (),
) -> Sheet:
    """A sheet of these parts, joined by straps unless the wires are given as such."""
    made = straps(wires) if isinstance(wires, str) else wires
    return Sheet(parts=parts, wires=made, mains=mains, types=types)


@cache
def builtin() -> Catalogue:
    return load_builtin()


def assessed(one: Sheet) -> Assessment:
    return assess(one, builtin().with_types(one.types))


def findings(one: Sheet, rule: str = "") -> list[Finding]:
    """What the rules find on a sheet; only those of one rule where it is named."""
    return [finding for finding in assessed(one).findings if rule in ("", finding.rule)]


def rules(one: Sheet) -> set[str]:
    """Rules that found something, but for notes on the certainty of ratings."""
    return {finding.rule for finding in findings(one)} - {"rating-unverified"}


def tube_type(
    designation: str = "X1", sections: str = "4-5", v: float = 6.3, a: float = 0.3, **more: object
) -> TubeType:
    """A type with equal heater sections between the given pins."""
    made = []
    for pins in sections.split():
        one, other = pins.split("-")
        made.append(Section((one, other), v, a))
    return TubeType(designation=designation, sections=tuple(made), **{"base": "B9A", **more})  # type: ignore[arg-type]


def on_dc(
    v: float, *tubes: Tube, wires: str, limit_a: float = 10.0, types: tuple[TubeType, ...] = ()
) -> Sheet:
    """Tubes on a stiff DC supply ``P1``, its negative side on the chassis ``E1``."""
    supply = DcSupply(id="P1", set_v=v, limit_a=limit_a)
    return sheet(supply, *tubes, Chassis(id="E1"), wires=f"P1.- E1.e, {wires}", types=types)


def winding(
    rated_v: float = 6.3, rated_a: float = 2.0, regulation_pct: float = 0.001, **more: bool
) -> Winding:
    """A winding ``T1``, almost stiff unless said otherwise."""
    return Winding(id="T1", rated_v=rated_v, rated_a=rated_a, regulation_pct=regulation_pct, **more)
