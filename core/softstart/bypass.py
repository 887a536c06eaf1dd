"""A thermistor that a relay bypasses once the line has risen: after that nothing is lost in it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from core.catalogue.types import RelayType, ThermistorType
from core.remedy import Bypass, InSeries, Value
from core.results import sentence
from core.softstart import words
from core.softstart.line import closing_a
from core.softstart.results import Figures, Shown, Variant
from core.softstart.search import CLOSE, Fitted, Search, figures_of, fitted
from core.softstart.series import kinds_of, without_thermistor
from core.softstart.sizes import cold_thermistor_ohm, is_slower, relays

MOST_THERMISTORS = 4
MOST_RELAYS = 2


class _Pair(NamedTuple):
    """A thermistor and a relay, and about what the supply gives when the contact closes."""

    thermistor: ThermistorType
    relay: RelayType
    closing_a: float


def by_bypass(search: Search) -> Variant | None:
    """The first thermistor and relay with which the line starts; None where no direct current flows."""
    line = search.line
    if not line.is_dc:
        return None  # the coils of the catalogue are for direct current
    kinds = _kinds(search)
    if not kinds:
        return without_thermistor(search, "bypassed")
    best: Variant | None = None
    for pair in _pairs(search, kinds):
        fit = _fit(search, pair)
        if fit is None:
            continue
        relay_id = search.part_id("relay")
        shown = search.trials.of(fit.sheet, relay_id)
        made = _variant(search, pair, fit, shown)
        if made.fits:
            return made
        best = best or made
    return best or _without_relay(search, kinds[0])


def _kinds(search: Search) -> tuple[ThermistorType, ...]:
    """The thermistors to try: that with which the start went well alone, and those that are slower than it."""
    kinds = kinds_of(search)
    calm = search.calm[0] if search.calm else None
    if calm is None:
        return kinds[-MOST_THERMISTORS:]
    slower = [kind for kind in kinds if is_slower(kind, calm) and not is_slower(calm, kind)]
    return (calm, *slower[: MOST_THERMISTORS - 1])


def _pairs(search: Search, kinds: tuple[ThermistorType, ...]) -> Iterator[_Pair]:
    line = search.line
    for kind in kinds:
        behind = _behind_v(search, kind)
        fit = relays(line.catalogue, line.open_v, behind, line.warm_a)
        tried = 0
        for relay in fit:
            closing = closing_a(line, relay.pull_in_v)
            if closing <= min(search.limit_a, relay.contact_a or 0.0) and tried < MOST_RELAYS:
                tried += 1
                yield _Pair(kind, relay, closing)


def _behind_v(search: Search, kind: ThermistorType) -> float:
    """Volts of the line behind a warm thermistor."""
    part = search.in_series("thermistor", (("type", kind.designation),))
    fit = fitted(search, sentence("Fit {type}", type=kind.designation), part)
    return 0.0 if fit is None else fit.warm.v - fit.loss_v


def _fields(relay: RelayType) -> tuple[tuple[str, Value], ...]:
    return (
        ("coil_v", relay.coil_v),
        ("coil_ohm", relay.coil_ohm),
        ("pull_in_v", relay.pull_in_v),
        ("drop_out_v", relay.drop_out_v),
        ("contact_a", relay.contact_a),
    )


def _fit(search: Search, pair: _Pair) -> Fitted | None:
    part: InSeries = search.in_series("thermistor", (("type", pair.thermistor.designation),))
    far = f"{part.id}.2"
    title = sentence(
        "Fit {type} and {relay} at {terminal}",
        type=pair.thermistor.designation,
        relay=pair.relay.designation,
        terminal=search.line.terminal,
    )
    across = Bypass(part.id, (far, search.line.back), _fields(pair.relay))
    return fitted(search, title, part, None, across)


def _variant(search: Search, pair: _Pair, fit: Fitted, shown: Shown) -> Variant:
    warm = fit.warm
    cold = cold_thermistor_ohm(pair.thermistor, search.line.sheet.ambient_c)
    figures = figures_of(
        search,
        warm,
        fit.open_v,
        cold,
        ohm=pair.thermistor.r25_ohm,
        loss_v=fit.loss_v,
        loss_w=fit.loss_w,
        pull_in_v=pair.relay.pull_in_v,
        closing_a=pair.closing_a,
        contact_a=pair.relay.contact_a,
    )
    closes = shown.pulls_in_s is not None
    bears = (shown.contact_peak_a or 0.0) <= (pair.relay.contact_a or 0.0) * (1 + CLOSE)
    most = search.goal.peak_ratio
    reason = words.together(
        words.bypassed(pair.thermistor.designation, pair.relay, figures),
        None if warm.is_fit else words.short_of(figures, False),
        words.closes(shown),
        words.ended(shown),
        None if most is None else words.peak(shown, most),
    )
    fits = warm.is_fit and closes and bears and search.is_good(shown)
    return Variant("bypassed", words.NAMES["bypassed"], reason, fit.remedy, fits, figures, shown)


def _without_relay(search: Search, kind: ThermistorType) -> Variant:
    line = search.line
    reason = words.no_relay(line.open_v, _behind_v(search, kind), line.warm_a)
    figures = Figures(line.cold_a, search.limit_a, line.warm_a)
    return Variant("bypassed", words.NAMES["bypassed"], reason, None, False, figures)
