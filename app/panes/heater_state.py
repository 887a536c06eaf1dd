"""Which shape a heater's row carries: within tolerance, over, under, or cold."""

from __future__ import annotations

from collections.abc import Iterable

from app.canvas.look import State
from core.catalogue.types import TubeType
from core.results import HeaterPoint

STATE_ORDER: tuple[State, ...] = ("over", "under", "cold", "ok", "none", "stale")
_COLD_PCT = 5.0
_DEFAULT_V_PCT = 10.0
_DEFAULT_A_PCT = 6.0


def in_string(heater: HeaterPoint, strings: Iterable[Iterable[str]]) -> bool:
    """Whether a section is in series with a heater of another part."""
    own = f"{heater.owner}:"
    return any(heater.key in string and any(not key.startswith(own) for key in string) for string in strings)


def heater_state(heater: HeaterPoint, found: TubeType | None, series: bool = False) -> State:
    """The state of one heater section against the tolerance of its type.

    Types rated by current, and those rated both ways that are in ``series`` with another part, are judged by
    their current, all others by their volts. Where the type gives no tolerance it is 10 per cent of the volts
    or 6 per cent of the current. Below 5 per cent of the rated volts a heater counts as cold.
    """
    if heater.v < heater.rated_v * _COLD_PCT / 100:
        return "cold"
    low, high = -_DEFAULT_V_PCT, _DEFAULT_V_PCT
    deviation = heater.deviation_pct
    rating = "voltage" if found is None else found.rating_class
    if found is not None and (rating == "current" or (rating == "both" and series)):
        high = found.tolerance_a_pct or _DEFAULT_A_PCT
        low, deviation = -high, heater.deviation_a_pct
    elif found is not None:
        low = -abs(found.low_v_pct) if found.low_v_pct is not None else low
        high = found.high_v_pct if found.high_v_pct is not None else high
    slack = 1e-6
    if deviation > high + slack:
        return "over"
    return "under" if deviation < low - slack else "ok"
