"""From answers to looks: what each part and wire says at one operating point. Pure functions, no painting."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.canvas.look import PartLook, State
from core.catalogue import Catalogue
from core.overloads import is_blown, is_overloaded, is_too_hot
from core.results import INSTANT, Assessment, BranchPoint, HeaterPoint, OperatingPoint, SupplyPoint
from core.sheet import REMARK_KINDS, AnyPart, Fuse, Lamp, Resistor, Sheet, Tube, Wire
from core.units import CELSIUS_TO_K, THIN_SPACE, format_number, format_percent

if TYPE_CHECKING:
    from core.warmup.results import What

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
    sheet: Sheet,
    catalogue: Catalogue,
    assessment: Assessment | None,
    point: OperatingPoint | None,
    doing: Mapping[str, What] | None = None,
) -> dict[str, PartLook]:
    """The look of every part at an operating point, which may be an instant of a warm-up.

    Without answers for this very sheet (``assessment`` or ``point`` None) every look is stale and shows no
    number at all. ``doing`` is what each part that switches by itself did last before the instant.
    """
    if assessment is None or point is None:
        return {part.id: PartLook() if part.kind in SILENT else _STALE for part in sheet.parts}
    pins: dict[str, dict[str, str]] = {}
    for terminal, volts in point.nodes.items():
        part_id, _, name = terminal.rpartition(".")
        pins.setdefault(part_id, {})[name] = volts_text(abs(volts) if isinstance(volts, complex) else volts)
    looker = _Looker(sheet, catalogue, assessment, point, doing or {})
    looks = {}
    for part in sheet.parts:
        look = looker.look(part)
        values = pins.get(part.id, {})
        looks[part.id] = PartLook(look.state, look.values, look.kelvin, values, look.pulled_in, look.remark)
    return looks


def heater_state(
    heater: HeaterPoint, assessment: Assessment, point: OperatingPoint, ambient_c: float
) -> State:
    """The mark of one heater section at an operating point."""
    if point.condition.name == INSTANT:
        from app.canvas import on_the_way  # noqa: PLC0415 - loaded with the first instant

        return on_the_way.heater_state(heater, assessment, ambient_c + CELSIUS_TO_K)
    return "cold" if point.condition.cold else assessment.state_of(heater)


class _Looker:
    """Looks at the parts of one sheet at one operating point."""

    def __init__(
        self,
        sheet: Sheet,
        catalogue: Catalogue,
        assessment: Assessment,
        point: OperatingPoint,
        doing: Mapping[str, What],
    ) -> None:
        self._sheet = sheet
        self._catalogue = catalogue
        self._assessment = assessment
        self._point = point
        self._doing = doing
        self._is_instant = point.condition.name == INSTANT
        # the short rush into cold heaters is over before it does harm
        self._is_judged = not (point.condition.cold or self._is_instant)

    def look(self, part: AnyPart) -> PartLook:
        """The look of one part, without the volts of its terminals."""
        if isinstance(part, Tube | Lamp):
            return self._heaters(part)
        supply = self._point.supplies.get(part.id)
        if supply is not None:
            return self._supply(part.id, supply)
        branch = self._point.branches.get(part.id)
        if branch is None or part.kind in SILENT:
            return PartLook()
        return self._branch(part, branch)

    def _heaters(self, part: Tube | Lamp) -> PartLook:
        heaters = self._point.heaters.get(part.id, ())
        if not heaters:
            return PartLook("cold", _why_no_heater(part, self._catalogue))
        kelvin = {heater.pins: heater.heater_k for heater in heaters}
        values = _heater_values(heaters, self._assessment)
        if self._is_instant:
            from app.canvas import on_the_way  # noqa: PLC0415 - loaded with the first instant

            ambient_k = self._sheet.ambient_c + CELSIUS_TO_K
            state, said = on_the_way.heaters_said(heaters, self._assessment, ambient_k)
            return PartLook(state, values, kelvin, remark=said)
        ambient_c = self._sheet.ambient_c
        states = [heater_state(heater, self._assessment, self._point, ambient_c) for heater in heaters]
        return PartLook(_worst(states), values, kelvin)

    def _supply(self, part_id: str, supply: SupplyPoint) -> PartLook:
        load = "" if supply.load_pct is None else f"{format_number(supply.load_pct, 0)}{THIN_SPACE}%"
        over = supply.limiting or (self._is_judged and is_overloaded(supply))
        state: State = "over" if over else "ok"
        word, said = "", ""
        if self._is_instant:
            from app.canvas import on_the_way  # noqa: PLC0415 - loaded with the first instant

            state, word, said = on_the_way.supply_said(part_id, supply, self._doing)
        values = (volts_text(supply.v), amps_text(supply.a), word or load)
        return PartLook(state, _GAP.join(filter(None, values)), remark=said)

    def _branch(self, part: AnyPart, branch: BranchPoint) -> PartLook:
        is_above = (isinstance(part, Resistor) and is_too_hot(part, branch)) or (
            isinstance(part, Fuse) and is_blown(part, branch)
        )
        in_amps = part.kind in ("fuse", "switch", "diode", "capacitor")
        second = amps_text(branch.a) if in_amps else watts_text(branch.w)
        remark = "" if branch.pulled_in is None else relay_word(branch.pulled_in)
        if branch.kelvin is not None:
            remark = celsius_text(branch.kelvin)
            if self._is_instant:  # how warm a thermistor is says more of its way than its watts
                second, remark = remark, second
        if is_above and self._is_instant:
            from app.canvas import on_the_way  # noqa: PLC0415 - loaded with the first instant

            remark = on_the_way.not_judged()
        state: State = "over" if is_above and self._is_judged else "none"
        values = _GAP.join((volts_text(branch.v), second))
        return PartLook(state, values, pulled_in=bool(branch.pulled_in), remark=remark)


def celsius_text(kelvin: float) -> str:
    """A temperature of a part for the screen: ``62 °C``."""
    return f"{format_number(kelvin - CELSIUS_TO_K, 0)}{THIN_SPACE}°C"


def relay_word(pulled_in: bool) -> str:
    """How a relay stands."""
    translate = QCoreApplication.translate
    return translate("canvas", "pulled in") if pulled_in else translate("canvas", "released")


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
