"""Heaters in one string that want different currents."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from core.elements.branch import Hot
from core.limits import STRING_TOLERANCE_PCT, owner_of
from core.remedy import Across, Remedy
from core.results import ROUNDING, Finding, Sentence, sentence
from core.rules.basis import STRING_SOURCE, Case, Mend
from core.rules.mends import Fitted, shunt_for
from core.rules.words import amps, listed, ohms, rating, tube_name, volts
from core.sentences import Text
from core.sheet import Tube


def string_balance(case: Case) -> Iterator[Finding]:
    """Series groups whose rated currents differ by more than the tolerance of a string."""
    for group in case.topology.series:
        rated = {key: law.rated_a for key in group if isinstance(law := case.circuit.branches[key].law, Hot)}
        if is_unbalanced(rated.values()):
            yield _finding(case, group, rated, min(rated.values()), max(rated.values()))


def is_unbalanced(rated_a: Iterable[float]) -> bool:
    """Whether rated currents differ by more than a string bears."""
    amounts = tuple(rated_a)
    return max(amounts) > min(amounts) * (1 + STRING_TOLERANCE_PCT / 100) * (1 + ROUNDING)


def _finding(case: Case, group: tuple[str, ...], rated: dict[str, float], low: float, high: float) -> Finding:
    owners = tuple(dict.fromkeys(owner_of(key) for key in group))
    limit = low * (1 + STRING_TOLERANCE_PCT / 100)
    wanting = {owner: min(rated[key] for key in group if owner_of(key) == owner) for owner in owners}
    mend = _mend(case, group, {one: a for one, a in wanting.items() if is_unbalanced((a, high))}, high)
    starved = list(dict.fromkeys(owner_of(key) for key in group if rated[key] == high))
    flooded = list(dict.fromkeys(owner_of(key) for key in group if rated[key] <= low * (1 + ROUNDING)))
    return Finding(
        rule="string-balance",
        severity="fault",
        where=owners,
        title=sentence("{owners} in one string want different currents", owners=listed(owners)),
        says=_says(case, flooded, starved, low, high),
        mend=mend.says,
        value=high,
        limit=limit,
        unit="A",
        source=STRING_SOURCE,
        remedies=mend.remedies,
    )


def _says(case: Case, flooded: list[str], starved: list[str], low: float, high: float) -> Sentence:
    over = _volts_of(case, flooded[0])
    under = _volts_of(case, starved[0])
    values: dict[str, Text] = {
        "low_ids": _named(case, flooded),
        "low": amps(low),
        "high_ids": _named(case, starved),
        "high": amps(high),
        "one": flooded[0],
        "other": starved[0],
    }
    if over is None or under is None:
        return sentence(
            "One current flows in all of them, but {low} is wanted by {low_ids} and {high} by {high_ids}.",
            **values,
        )
    return sentence(
        "One current flows in all of them, but {low} is wanted by {low_ids} and {high} by {high_ids}: {one} gets {over}"
        " of {over_rated}, {other} {under} of {under_rated}.",
        over=volts(over[0]),
        over_rated=volts(over[1]),
        under=volts(under[0]),
        under_rated=volts(under[1]),
        **values,
    )


def _named(case: Case, owners: list[str]) -> Text:
    parts = case.sheet.part_by_id
    return listed([tube_name(part) if isinstance(part := parts[one], Tube) else one for one in owners])


def _volts_of(case: Case, owner: str) -> tuple[float, float] | None:
    """Volts and rated volts of the sections of a heater that stand in the string."""
    series = case.topology.series_of
    sections = [one for one in case.nominal.heaters.get(owner, ()) if one.key in series]
    if not sections:
        return None
    return sum(one.v for one in sections), sum(one.rated_v for one in sections)


def _mend(case: Case, group: tuple[str, ...], wanting: dict[str, float], high: float) -> Mend:
    """A shunt across each heater that wants less than ``high``, by the amperes that it wants."""
    fitted: dict[str, Fitted] = {}
    for owner, a in wanting.items():
        laws = [case.circuit.branches[key].law for key in group if owner_of(key) == owner]
        shunt = shunt_for(sum(law.rated_v for law in laws if isinstance(law, Hot)), high, a)
        if shunt is None or shunt.rated_w is None:
            return Mend(sentence("Put only heaters of one current in a string."))
        fitted[owner] = shunt
    first = min(fitted, key=lambda owner: wanting[owner])
    others = [owner for owner in fitted if owner != first]
    values: dict[str, Text] = {**_figures(fitted[first]), "id": first, "spare": amps(high - wanting[first])}
    steps = [_shunt(group, owner, one) for owner, one in fitted.items()]
    remedies = (Remedy(_title(first, fitted), tuple(steps)),)
    if not others:
        return Mend(
            sentence("A shunt of {ohm} {w} across {id} carries the other {spare}.", **values), remedies
        )
    if all(fitted[owner] == fitted[first] for owner in others):
        says = sentence(
            "A shunt of {ohm} {w} across {id} carries the other {spare}; so does one like it across {others}.",
            others=listed(others),
            **values,
        )
    else:
        says = sentence(
            "A shunt of {ohm} {w} across {id} carries the other {spare}; also {more}.",
            more=listed(
                [sentence("{ohm} {w} across {id}", id=owner, **_figures(fitted[owner])) for owner in others]
            ),
            **values,
        )
    return Mend(says, remedies)


def _figures(fitted: Fitted) -> dict[str, Text]:
    return {"ohm": ohms(fitted.ohm), "w": rating(fitted.rated_w or 0.0)}


def _title(first: str, fitted: dict[str, Fitted]) -> Sentence:
    if len(set(fitted.values())) == 1:
        return sentence("Shunt {ids} by {ohm} {w}", ids=listed(list(fitted)), **_figures(fitted[first]))
    return sentence("Fit shunts across {ids}", ids=listed(list(fitted)))


def _shunt(group: tuple[str, ...], owner: str, fitted: Fitted) -> Across:
    """The shunt across that part of a heater that stands in the string, from its one end to its other."""
    pins = [pin for key in group if owner_of(key) == owner for pin in key.rpartition(":")[2].split("-")]
    ends = [pin for pin in pins if pins.count(pin) == 1]
    return Across(f"{owner}.{ends[0]}", f"{owner}.{ends[-1]}", fitted.ohm, fitted.rated_w or 0.0)
