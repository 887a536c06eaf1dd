"""What is said of heaters and supplies at an instant of the warm-up. Loaded with the first one that is looked at.

A heater that is still cold is no fault: it has a mark only where it gets far more than its volts, where it does not
glow, and once it has settled. A supply without a limit, a resistor and a fuse are not blamed for the rush into cold
heaters.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.canvas.look import State
from core.overloads import is_overloaded
from core.results import Assessment, HeaterPoint, Limits, SupplyPoint
from core.units import THIN_SPACE, format_number
from core.warmup.standing import FAR_OVER, Standing, standing

if TYPE_CHECKING:
    from core.warmup.results import What

_MARKS: dict[Standing, State] = {
    "no volts": "cold",
    "cold": "cold",
    "warming": "none",
    "far over": "over",
    "ok": "ok",
    "over": "over",
    "under": "under",
}
_WORST: tuple[Standing, ...] = ("far over", "over", "no volts", "cold", "under", "warming", "ok")


def _tr(text: str) -> str:
    return QCoreApplication.translate("canvas", text)


def heater_state(heater: HeaterPoint, assessment: Assessment, ambient_k: float) -> State:
    """The mark of one heater section."""
    return _MARKS[_standing(heater, assessment, ambient_k)]


def heaters_said(
    heaters: Sequence[HeaterPoint], assessment: Assessment, ambient_k: float
) -> tuple[State, str]:
    """The mark of a whole tube, that of its worst section, and the same in words."""
    states = [(_standing(heater, assessment, ambient_k), heater) for heater in heaters]
    worst, heater = min(states, key=lambda each: _WORST.index(each[0]))
    return _MARKS[worst], f"{_words(worst)}, {_temperatures(heater)}"


def _standing(heater: HeaterPoint, assessment: Assessment, ambient_k: float) -> Standing:
    return standing(heater, assessment.limits.get(heater.key, Limits()), ambient_k)


def _words(one: Standing) -> str:
    if one == "far over":
        return _tr("more than {factor} times its volts").format(factor=format_number(FAR_OVER, 1))
    return {
        "no volts": _tr("no volts at this instant"),
        "cold": _tr("still cold, no glow yet"),
        "warming": _tr("warming up, not judged yet"),
        "ok": _tr("ready, within tolerance"),
        "over": _tr("over"),
        "under": _tr("under"),
    }[one]


def _temperatures(heater: HeaterPoint) -> str:
    said = _tr("heater {kelvin}").format(kelvin=_kelvin(heater.heater_k))
    if heater.cathode_k == heater.heater_k:
        return said
    return f"{said}, {_tr('cathode {kelvin}').format(kelvin=_kelvin(heater.cathode_k))}"


def _kelvin(kelvin: float) -> str:
    return f"{format_number(kelvin, 0)}{THIN_SPACE}K"


def not_judged() -> str:
    """What is said of a part that carries more than it is rated for at an instant."""
    return _tr("above its rating, which is judged once the heaters are hot")


def supply_said(part_id: str, supply: SupplyPoint, doing: Mapping[str, What]) -> tuple[State, str, str]:
    """The mark of a supply, a word that says more than its load in per cent, and how it stands in more words."""
    if doing.get("") == "mains off":
        return "none", _tr("mains off"), _tr("gives nothing while the mains is off")
    did = doing.get(part_id)
    if did == "cuts out":
        return "over", _tr("cut out"), _tr("gives nothing until it tries again by itself")
    if did == "latches off":
        return "over", _tr("latched"), _tr("gives nothing until it is switched off and on")
    if supply.limiting:
        return "over", _tr("at limit"), _tr("gives no more than its limit")
    if is_overloaded(supply):
        return "none", "", not_judged()
    return "ok", "", ""
