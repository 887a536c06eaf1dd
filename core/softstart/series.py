"""A resistor or a thermistor in series: sized by arithmetic, then tried in the warm-up."""

from __future__ import annotations

from typing import NamedTuple

from core.catalogue.types import ThermistorType
from core.results import sentence
from core.rules.words import ohms, rating
from core.sentences import Text
from core.softstart import words
from core.softstart.results import Figures, Shown, Variant
from core.softstart.search import Fitted, Search, figures_of, fitted, trim_for
from core.softstart.sizes import (
    RESISTOR_TOLERANCE,
    cold_thermistor_ohm,
    first_a,
    hot_thermistor_ohm,
    is_slower,
    ohm_wanted,
    resistor_ohm,
    resistor_w,
    thermistors,
)

MOST_RESISTORS = 6
MOST_THERMISTORS = 12
LEAST_OHM = 0.1
FIRST_SHARE, STEP = 0.03, 1.7
"""Where heaters get too much at switch-on: the first size as a share of the warm line's ohms, and how sizes grow."""
NEXT = 1.02
"""More than a size by so much is the next one."""
TRIMS = 2
"""How often volts and size are sized about each other: more volts want more ohms, and these more volts."""


def by_resistor(search: Search) -> Variant | None:
    """The smallest E24 resistor that keeps the first current within the limit and starts."""
    line, is_for_volts = search.line, search.goal.peak_ratio is not None
    least = FIRST_SHARE * line.open_v / line.warm_a if is_for_volts else LEAST_OHM
    wanted = max(ohm_wanted(line.open_v, line.cold_ohm, search.limit_a), least)
    best: Variant | None = None
    for _ in range(MOST_RESISTORS):
        found = _resistor_of(search, wanted)
        if found is None:
            return best
        value, fit = found
        shown = search.trials.of(fit.sheet)
        if shown is None:
            return best
        best = _resistor_variant(search, value, fit, shown)
        if search.is_good(shown) or not fit.warm.is_fit:
            return best
        wanted = value.ohm * (STEP if is_for_volts else NEXT)
    return best


class _Value(NamedTuple):
    """Ohms and the usual rating of a resistor; None where no single one bears the heat."""

    ohm: float
    rated_w: float | None


def _resistor_of(search: Search, wanted: float) -> tuple[_Value, Fitted] | None:
    """A resistor of at least so many ohms; the supply set higher where heaters would get too little."""
    line, set_v = search.line, None
    found: tuple[_Value, Fitted] | None = None
    for _ in range(1 + TRIMS):
        open_v = line.open_v if set_v is None else set_v
        ohm = resistor_ohm(max(wanted, ohm_wanted(open_v, line.cold_ohm, search.limit_a)))
        fit = None if ohm is None else _with_resistor(search, ohm, None, set_v)
        if ohm is None or fit is None:
            return found
        rated_w = resistor_w(fit.loss_w, ohm * first_a(open_v, line.cold_ohm, ohm) ** 2)
        rated = _with_resistor(search, ohm, rated_w, set_v)
        found = _Value(ohm, rated_w), rated or fit
        more = trim_for(search, line.warm_a * ohm)
        if fit.warm.is_fit or fit.warm.limit_pct > 0 or more is None or more == set_v:
            return found
        set_v = more
    return found


def _with_resistor(search: Search, ohm: float, rated_w: float | None, set_v: float | None) -> Fitted | None:
    title = sentence("Fit {ohm} at {terminal}", ohm=ohms(ohm), terminal=search.line.terminal)
    return fitted(search, title, search.in_series("resistor", (("ohm", ohm), ("rated_w", rated_w))), set_v)


def _resistor_variant(search: Search, value: _Value, fit: Fitted, shown: Shown) -> Variant:
    figures = _figures(search, fit, value.ohm, value.ohm * (1 - RESISTOR_TOLERANCE), value.rated_w)
    ohm = ohms(value.ohm)
    what = ohm if value.rated_w is None else sentence("{ohm} {w}", ohm=ohm, w=rating(value.rated_w))
    return _variant(search, "resistor", what, figures, fit, shown)


def by_thermistor(search: Search) -> Variant:
    """The thermistor with the least loss that keeps the current within the limit all the way and starts.

    Those that did so are noted in ``search.calm``, as a relay may take over from them.
    """
    found: list[Variant] = []
    failed: list[ThermistorType] = []
    for kind in kinds_of(search):
        if len(found) == MOST_THERMISTORS:
            break
        fit = thermistor_fit(search, kind)
        if fit is None or not all(is_slower(kind, other) for other in failed):
            continue
        shown = search.trials.of(fit.sheet)
        if shown is None:
            continue
        cold = cold_thermistor_ohm(kind, search.line.sheet.ambient_c)
        figures = _figures(search, fit, kind.r25_ohm, cold)
        found.append(_variant(search, "thermistor", kind.designation, figures, fit, shown))
        if search.is_good(shown):
            search.calm.append(kind)
            return found[-1]  # the next would lose more
        failed.append(kind)
    is_for_volts = search.goal.peak_ratio is not None
    return (
        max(found, key=lambda made: _merit(made.shown, is_for_volts))
        if found
        else without_thermistor(search, "thermistor")
    )


def _merit(shown: Shown | None, is_for_volts: bool) -> tuple[bool, bool, float]:
    """What makes the one better that is not good enough: it starts, without the limit, or comes to it late."""
    if shown is None:
        return False, False, 0.0
    late = -shown.peak_ratio if is_for_volts else shown.limited_s or 0.0
    return shown.starts, shown.limited_s is None, late


def kinds_of(search: Search) -> tuple[ThermistorType, ...]:
    """The thermistors of the catalogue that are large enough for the first current, the least loss first."""
    line = search.line
    wanted = max(ohm_wanted(line.open_v, line.cold_ohm, search.limit_a), 0.0)
    return thermistors(line.catalogue, wanted, line.warm_a, line.sheet.ambient_c)


def thermistor_fit(search: Search, kind: ThermistorType) -> Fitted | None:
    """A thermistor put in series; where heaters get too little, the supply set higher if it may be."""
    line = search.line
    title = sentence("Fit {type} at {terminal}", type=kind.designation, terminal=line.terminal)
    part = search.in_series("thermistor", (("type", kind.designation),))
    fit = fitted(search, title, part)
    if fit is None or fit.warm.is_fit or fit.warm.limit_pct > 0:
        return fit
    set_v = trim_for(search, line.warm_a * hot_thermistor_ohm(kind, line.warm_a, line.sheet.ambient_c))
    cold = cold_thermistor_ohm(kind, line.sheet.ambient_c)
    if set_v is None or first_a(set_v, line.cold_ohm, cold) > search.limit_a:
        return fit
    return fitted(search, title, part, set_v) or fit


def without_thermistor(search: Search, way: str) -> Variant:
    """That no thermistor can be had."""
    line = search.line
    wanted = max(ohm_wanted(line.open_v, line.cold_ohm, search.limit_a), 0.0)
    return Variant(
        way="bypassed" if way == "bypassed" else "thermistor",
        name=words.NAMES[way],
        reason=words.no_thermistor(wanted, line.warm_a),
        remedy=None,
        fits=False,
        figures=Figures(line.cold_a, search.limit_a, line.warm_a),
    )


def _figures(
    search: Search, fit: Fitted, ohm: float, least_ohm: float, rated_w: float | None = None
) -> Figures:
    return figures_of(
        search,
        fit.warm,
        fit.open_v,
        least_ohm,
        ohm=ohm,
        rated_w=rated_w,
        warm_ohm=fit.loss_v / fit.warm.a if fit.warm.a > 0 else None,
        loss_v=fit.loss_v,
        loss_w=fit.loss_w,
        set_v=fit.set_v,
    )


def _variant(search: Search, way: str, what: Text, figures: Figures, fit: Fitted, shown: Shown) -> Variant:
    is_resistor = way == "resistor"
    bears = not is_resistor or figures.rated_w is not None
    most = search.goal.peak_ratio
    reason = words.together(
        words.in_series(what, search.line.supply.id, figures),
        None if fit.warm.is_fit else words.short_of(figures, is_resistor),
        None if bears else words.over_rating(figures),
        words.ended(shown),
        None if most is None else words.peak(shown, most),
    )
    return Variant(
        way="resistor" if is_resistor else "thermistor",
        name=words.NAMES[way],
        reason=reason,
        remedy=fit.remedy,
        fits=fit.warm.is_fit and bears and search.is_good(shown),
        figures=figures,
        shown=shown,
    )
