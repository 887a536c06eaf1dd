"""Another supply: one that holds at its limit in place of one that gives up, or a bigger one."""

from __future__ import annotations

from bisect import bisect_left

from core.remedy import Remedy, SetFields, Value
from core.results import sentence
from core.rules.mends import ratings_between
from core.rules.words import amps
from core.sentences import Sentence
from core.sheet import DcSupply
from core.softstart import words
from core.softstart.line import warm_of
from core.softstart.results import Shown, Variant
from core.softstart.search import Search, figures_of


def by_supply(search: Search) -> Variant | None:
    """The same rating as a supply that holds at its limit if that starts, else the smallest rating that does."""
    supply = search.line.supply
    if not isinstance(supply, DcSupply):
        return None
    steady = None
    if supply.overload != "constant-current" and search.line.warm_a <= supply.limit_a:
        steady = _tried(search, supply.limit_a, (("overload", "constant-current"), ("foldback_a", None)))
    enough = _smallest(search, supply)
    if steady is not None and steady[1].starts:
        title = sentence("Let {id} hold at its limit", id=supply.id)
        return _variant(search, title, steady, supply.limit_a, None if enough is None else enough[2])
    if enough is None:
        return None
    remedy, shown, rated_a = enough
    title = sentence("Take a {a} supply", a=amps(rated_a))
    return _variant(search, title, (remedy, shown), rated_a, rated_a)


def _tried(
    search: Search, limit_a: float, fields: tuple[tuple[str, Value], ...]
) -> tuple[Remedy, Shown] | None:
    remedy = Remedy(
        sentence("Take a {a} supply", a=amps(limit_a)), (SetFields(search.line.supply.id, fields),)
    )
    sheet = search.done(remedy)
    shown = None if sheet is None else search.trials.of(sheet)
    return None if shown is None else (remedy, shown)


def _smallest(search: Search, supply: DcSupply) -> tuple[Remedy, Shown, float] | None:
    """The smallest usual rating of the same behaviour that starts, found by halving."""
    ratings = ratings_between(supply.limit_a, search.line.cold_a)
    found: dict[float, tuple[Remedy, Shown]] = {}

    def starts(rated_a: float) -> bool:
        tried = _tried(search, rated_a, (("limit_a", rated_a),))
        if tried is None or not tried[1].starts:
            return False
        found[rated_a] = tried
        return True

    at = bisect_left(ratings, True, key=starts)
    if at == len(ratings) or ratings[at] not in found:
        return None
    return (*found[ratings[at]], ratings[at])


def _variant(
    search: Search, title: Sentence, tried: tuple[Remedy, Shown], rated_a: float, needed_a: float | None
) -> Variant | None:
    remedy, shown = tried
    line, supply = search.line, search.line.supply
    sheet = search.done(remedy)
    warm = None if sheet is None else warm_of(line, sheet)
    if warm is None or not isinstance(supply, DcSupply):
        return None
    figures = figures_of(search, warm, line.open_v, 0.0, limit_a=rated_a, supply_a=rated_a)
    holds = rated_a == supply.limit_a
    says = (
        words.another(figures, supply.overload, needed_a) if holds else words.bigger(figures, supply.overload)
    )
    reason = words.together(says, words.ended(shown))
    most = search.goal.peak_ratio
    calm = most is None or shown.peak_ratio <= most
    return Variant(
        "supply",
        words.NAMES["supply"],
        reason,
        Remedy(title, remedy.steps),
        warm.is_fit and shown.starts and calm,
        figures,
        shown,
    )
