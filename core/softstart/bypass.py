"""A thermistor that a relay bypasses once the line has risen: after that nothing is lost in it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from core.catalogue.types import RelayType, ThermistorType
from core.preferred import next_wattage
from core.remedy import Bypass, InSeries, Remedy, Value
from core.results import sentence
from core.softstart import words
from core.softstart.line import closing_a
from core.softstart.results import Figures, Shown, Variant
from core.softstart.search import CLOSE, Fitted, Search, figures_of, fitted
from core.softstart.series import kinds_of, without_thermistor
from core.softstart.sizes import coil_ohm, cold_thermistor_ohm, is_slower, pull_in_v, relays

MOST_THERMISTORS = 4


class _Pair(NamedTuple):
    """A thermistor and a relay, ohms before its coil, and about what the supply gives when the contact closes."""

    thermistor: ThermistorType
    relay: RelayType
    coil_ohm: float | None
    closing_a: float

    @property
    def pull_in_v(self) -> float:
        """Volts of the line at which the relay pulls in."""
        return pull_in_v(self.relay, self.coil_ohm)


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
        if shown is None:
            continue
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
    """Each thermistor with the relay that pulls in latest, first by itself, then with a resistor before its coil."""
    line = search.line
    for kind in kinds:
        behind = _behind_v(search, kind)
        fit = relays(line.catalogue, line.open_v, behind, line.warm_a)
        for relay in fit[:1]:
            for ohm in dict.fromkeys((None, coil_ohm(relay, behind))):
                closing = closing_a(line, pull_in_v(relay, ohm))
                if closing <= min(search.limit_a, relay.contact_a or 0.0):
                    yield _Pair(kind, relay, ohm, closing)


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
    if pair.coil_ohm is None:
        return fitted(search, title, part, None, across)
    before = _before_coil(search, Remedy(title, (part, across)), pair)
    return None if before is None else fitted(search, title, part, None, across, before)


def _before_coil(search: Search, remedy: Remedy, pair: _Pair) -> InSeries | None:
    """The resistor in the lead from the coil of the relay that a remedy fits back to the supply."""
    sheet = search.done(remedy)
    ends = tuple(f"{search.part_id('relay')}.{name}" for name in ("c1", "c2"))
    back = search.line.back
    leads = (wire for wire in sheet.wires if back in (wire.start, wire.end)) if sheet else ()
    lead = next((wire for wire in leads if wire.start in ends or wire.end in ends), None)
    if lead is None or pair.coil_ohm is None:
        return None
    coil_a = search.line.open_v / (pair.relay.coil_ohm + pair.coil_ohm)
    fields = (("ohm", pair.coil_ohm), ("rated_w", next_wattage(2 * coil_a**2 * pair.coil_ohm)))
    end = lead.start if lead.start in ends else lead.end
    return InSeries(end, (lead.id,), "resistor", fields, search.part_id("resistor"))


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
        pull_in_v=pair.pull_in_v,
        closing_a=pair.closing_a,
        contact_a=pair.relay.contact_a,
    )
    closes = shown.pulls_in_s is not None
    bears = (shown.contact_peak_a or 0.0) <= (pair.relay.contact_a or 0.0) * (1 + CLOSE)
    most = search.goal.peak_ratio
    reason = words.together(
        words.bypassed(pair.thermistor.designation, pair.relay, pair.coil_ohm, figures),
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
