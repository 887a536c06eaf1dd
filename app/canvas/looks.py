"""From answers to looks: what each part and wire says at one operating point. Pure functions, no painting."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from app.canvas.look import PartLook, State
from core.catalogue import Catalogue
from core.overloads import is_blown, is_overloaded, is_too_hot
from core.results import Assessment, BranchPoint, HeaterPoint, OperatingPoint, SupplyPoint
from core.sheet import REMARK_KINDS, AnyPart, Fuse, Lamp, Resistor, Sheet, Tube, Wire
from core.units import THIN_SPACE, format_number, format_percent

_AGREE = 0.01  # sections whose volts differ by less than this share are shown as one
_GAP = "  "
_STALE = PartLook(state="stale")
SILENT = frozenset({"chassis", "joint", "elevation", *REMARK_KINDS})


def volts_text(volts: float) -> str:
    """Volts for the screen: ``6.29 V``."""
    return f"{format_number(volts, 2 if abs(volts) < 100 else 1)}{THIN_SPACE}V"


def amps_text(amps: float) -> str:
    """Amperes for the screen, three significant digits: ``0.300 A``, ``1.06 A``."""
    return f"{format_number(amps, _decimals(amps, 3))}{THIN_SPACE}A"


def watts_text(watts: float) -> str:
    """Watts for the screen: ``0.050 W``, ``12.3 W``."""
    return f"{format_number(watts, _decimals(watts, 3))}{THIN_SPACE}W"


def _decimals(value: float, most: int) -> int:
    size = abs(value)
    if size < 1:
        return most
    if size < 10:
        return 2
    return 1 if size < 100 else 0


def wire_text(wire: Wire) -> str:
    """Gauge and length of a wire: ``20 AWG 0.30 m``, ``0.5 mm² 0.15 m``; empty for a strap."""
    if wire.is_strap or wire.length_m is None:
        return ""
    if wire.awg is not None:
        gauge = f"{wire.awg}{THIN_SPACE}AWG"
    else:
        gauge = f"{format_number(wire.area_mm2 or 0.0, 2).rstrip('0').rstrip('.')}{THIN_SPACE}mm²"
    return f"{gauge} {format_number(wire.length_m, 2)}{THIN_SPACE}m"


def part_looks(
    sheet: Sheet, catalogue: Catalogue, assessment: Assessment | None, point: OperatingPoint | None
) -> dict[str, PartLook]:
    """The look of every part at an operating point.

    Without answers for this very sheet (``assessment`` or ``point`` None) every look is stale and shows no
    number at all.
    """
    if assessment is None or point is None:
        return {part.id: PartLook() if part.kind in SILENT else _STALE for part in sheet.parts}
    pins: dict[str, dict[str, str]] = {}
    for terminal, volts in point.nodes.items():
        part_id, _, name = terminal.rpartition(".")
        pins.setdefault(part_id, {})[name] = volts_text(abs(volts) if isinstance(volts, complex) else volts)
    looks = {}
    for part in sheet.parts:
        look = _look(part, catalogue, assessment, point)
        looks[part.id] = PartLook(look.state, look.values, look.kelvin, pins.get(part.id, {}), look.pulled_in)
    return looks


def _look(part: AnyPart, catalogue: Catalogue, assessment: Assessment, point: OperatingPoint) -> PartLook:
    if isinstance(part, Tube | Lamp):
        return _heater_look(part, catalogue, assessment, point)
    supply = point.supplies.get(part.id)
    if supply is not None:
        return _supply_look(supply, point.condition.cold)
    branch = point.branches.get(part.id)
    if branch is None or part.kind in SILENT:
        return PartLook()
    return _branch_look(part, branch, point.condition.cold)


def _heater_look(
    part: Tube | Lamp, catalogue: Catalogue, assessment: Assessment, point: OperatingPoint
) -> PartLook:
    heaters = point.heaters.get(part.id, ())
    if not heaters:
        return PartLook("cold", _why_no_heater(part, catalogue))
    kelvin = {heater.pins: heater.heater_k for heater in heaters}
    states = ["cold" if point.condition.cold else assessment.state_of(heater) for heater in heaters]
    return PartLook(_worst(states), _heater_values(heaters, assessment), kelvin)


def _why_no_heater(part: Tube | Lamp, catalogue: Catalogue) -> str:
    translate = QCoreApplication.translate
    if isinstance(part, Tube) and part.pulled:
        return translate("canvas", "pulled")
    if isinstance(part, Tube) and catalogue.tube(part.type) is None:
        return translate("canvas", "type not known")
    return translate("canvas", "not solved")


def _worst(states: Sequence[State]) -> State:
    order: tuple[State, ...] = ("over", "cold", "under", "ok")
    return next((state for state in order if state in states), "none")


def _heater_values(heaters: Sequence[HeaterPoint], assessment: Assessment) -> str:
    """Volts, per cent of rating and amperes of a whole tube.

    Sections in series add their volts, sections in parallel their currents; sections that differ are listed.
    """
    first = heaters[0]
    if len(heaters) == 1:
        return _line(first.v, first.deviation_pct, first.a)
    highest = max(heater.v for heater in heaters)
    if highest - min(heater.v for heater in heaters) > _AGREE * max(heater.rated_v for heater in heaters):
        volts = " / ".join(format_number(heater.v, 2) for heater in heaters)
        amps = " / ".join(format_number(heater.a, 3) for heater in heaters)
        return f"{volts}{THIN_SPACE}V{_GAP}{amps}{THIN_SPACE}A"
    keys = {heater.key for heater in heaters}
    if any(keys <= set(string) for string in assessment.strings):
        whole, rated = sum(heater.v for heater in heaters), sum(heater.rated_v for heater in heaters)
        return _line(whole, (whole / rated - 1) * 100, first.a)
    return _line(first.v, first.deviation_pct, sum(heater.a for heater in heaters))


def _line(volts: float, deviation_pct: float, amps: float) -> str:
    return _GAP.join((volts_text(volts), format_percent(deviation_pct), amps_text(amps)))


def _supply_look(supply: SupplyPoint, is_cold: bool) -> PartLook:
    """The rush into cold heaters is over before it harms a supply that does not limit."""
    values = [volts_text(supply.v), amps_text(supply.a)]
    load = supply.load_pct
    if load is not None:
        values.append(f"{format_number(load, 0)}{THIN_SPACE}%")
    over = supply.limiting or (not is_cold and is_overloaded(supply))
    return PartLook("over" if over else "ok", _GAP.join(values))


def _branch_look(part: AnyPart, branch: BranchPoint, is_cold: bool) -> PartLook:
    """The short rush into cold heaters neither heats a resistor nor blows a slow fuse: it is not judged."""
    over = not is_cold and (
        (isinstance(part, Resistor) and is_too_hot(part, branch))
        or (isinstance(part, Fuse) and is_blown(part, branch))
    )
    state: State = "over" if over else "none"
    second = (
        amps_text(branch.a) if part.kind in ("fuse", "switch", "diode", "capacitor") else watts_text(branch.w)
    )
    return PartLook(state, _GAP.join((volts_text(branch.v), second)), pulled_in=bool(branch.pulled_in))
