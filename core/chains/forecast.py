"""What the heaters of a chain will get at nominal, low and high mains, by the plain arithmetic of the bench.

Currents follow a power of the volts (see :mod:`core.rules.mends`); the solver says it exactly once the chain is laid.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import NamedTuple

import msgspec

from core.chains.existing import NOTICED, Standing
from core.chains.layouts import Hung
from core.chains.model import Caution, Feed, Load
from core.rules.mends import EXPONENT
from core.rules.words import amps, band, listed, mains_words, percent
from core.sentences import Sentence, Text, sentence
from core.sheet import Mains

MARGIN_PCT, SHUNT_MARGIN_PCT, SUPPLY_MARGIN_PCT = 0.5, 2.0, 2.0
"""Closer than this to a limit the arithmetic warns although it comes out within: it may be wrong by as much.

More where resistors lie across heaters, and for supplies, where nothing is lost by saying so early.
"""
_STEPS = 48
_OFF = ("heater-voltage", "heater-current", "wrong-strap", "half-heated", "not-heated")


class Line(NamedTuple):
    """A chain at work: the groups in series that hang side by side on it (one for a string), its feed, and resistors.

    ``dropper_ohm`` lies before the groups, ``bleed_ohm`` across the feed (a pair of reference resistors).
    """

    feed: Feed
    groups: tuple[tuple[Hung, ...], ...]
    dropper_ohm: float = 0.0
    bleed_ohm: float | None = None

    @property
    def hung(self) -> tuple[Hung, ...]:
        """Everything that hangs on it, in order."""
        return tuple(one for group in self.groups for one in group)

    @property
    def has_series(self) -> bool:
        """Whether any heaters stand in series."""
        return any(len(group) > 1 for group in self.groups)


class Off(NamedTuple):
    """One heater at one condition: per cent off the rating that counts, and the limits of that."""

    load: Load
    condition: str
    pct: float
    low_pct: float
    high_pct: float
    by_current: bool
    margin_pct: float = MARGIN_PCT


def volts_at(line: Line, standing: Standing, emf_share: float) -> float:
    """Volts at the beginning of a chain, behind the dropper, when the mains stand at a share of nominal."""
    feed = line.feed
    emf = feed.emf_v * (emf_share if feed.is_ac else 1.0)

    def left(v: float) -> float:
        a = current(line, v)
        taken = standing.amps + (v / line.bleed_ohm if line.bleed_ohm else 0.0)
        return emf - feed.ohm * (a + taken) - line.dropper_ohm * a - v

    v = _root(left, 0.0, max(emf, 1e-9))
    if not feed.has_limit or feed.rated_a is None:
        return v
    spare_a = max(feed.rated_a - standing.amps, 0.0)
    return v if current(line, v) <= spare_a else _root(lambda v: spare_a - current(line, v), 0.0, v)


def _root(falling: Callable[[float], float], low: float, high: float) -> float:
    """Where a falling function passes zero, by halving."""
    for _ in range(_STEPS):
        middle = (low + high) / 2
        if falling(middle) > 0:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def current(line: Line, v: float) -> float:
    """The current that a chain takes at so many volts; one with a single tube that is pulled takes none there."""
    return sum(
        _group_a(group, v) for group in line.groups if not (len(group) == 1 and group[0].load.is_pulled)
    )


def _group_a(group: tuple[Hung, ...], v: float) -> float:
    """The current in a group that hangs on a line of ``v`` volts."""
    across = max(v - group[0].drop_v, 0.0)
    if len(group) == 1:
        return _current_of(group[0], across)
    if all(one.shunt_ohm is None for one in group):
        # the volts of all of them together follow the same power of the current
        share = sum(one.way.rated_v * one.way.rated_a ** (-1 / EXPONENT) for one in group)
        return float((across / share) ** EXPONENT)
    most = 2 * max(_current_of(one, one.way.rated_v) for one in group)
    most *= max(across / sum(one.way.rated_v for one in group), 1.0)
    return _root(lambda a: across - sum(_volts_of(one, a) for one in group), 0.0, most)


def _current_of(one: Hung, v: float) -> float:
    """What a heater and the resistor across it take at ``v`` volts."""
    own = one.way.rated_a * (v / one.way.rated_v) ** EXPONENT
    return float(own) + (v / one.shunt_ohm if one.shunt_ohm else 0.0)


def _volts_of(one: Hung, a: float) -> float:
    """What a heater and the resistor across it drop at ``a`` amperes."""
    if one.shunt_ohm is None:
        return float(one.way.rated_v * (a / one.way.rated_a) ** (1 / EXPONENT))
    return _root(lambda v: a - _current_of(one, v), 0.0, a * one.shunt_ohm)


def heaters_off(line: Line, standing: Standing, mains: Mains) -> Iterator[Off]:
    """How far each heater will be off its rating at nominal, low and high mains."""
    conditions = {"nominal": mains.nominal_v}
    if line.feed.is_ac:
        conditions |= {"low mains": mains.low_v, "high mains": mains.high_v}
    for condition, mains_v in conditions.items():
        v = volts_at(line, standing, mains_v / mains.nominal_v)
        for group in line.groups:
            a = _group_a(group, v)
            strung = [one for one in group if one.shunt_ohm is None]
            for one in group:
                by_current = len(strung) > 1 and one in strung and one.load.tolerance_a_pct is not None
                off = _off(one, condition, _volts_of(one, a), by_current)
                yield off if len(strung) == len(group) else off._replace(margin_pct=SHUNT_MARGIN_PCT)


def _off(one: Hung, condition: str, v: float, by_current: bool) -> Off:
    """The deviation that counts: in a string the current of types that are rated by it, else the volts."""
    load, share = one.load, max(v, 0.0) / one.way.rated_v
    if by_current and load.tolerance_a_pct is not None:
        pct = (share**EXPONENT - 1) * 100
        return Off(load, condition, pct, -load.tolerance_a_pct, load.tolerance_a_pct, True)
    return Off(load, condition, (share - 1) * 100, load.low_pct, load.high_pct, False)


def heater_cautions(line: Line, standing: Standing, mains: Mains) -> Iterator[Caution]:
    """Warnings of heaters that will be near or beyond their limits, one for each condition and side."""
    groups: dict[tuple[str, bool, bool], list[Off]] = {}
    for off in heaters_off(line, standing, mains):
        if off.pct > off.high_pct - off.margin_pct:
            groups.setdefault((off.condition, True, off.by_current), []).append(off)
        elif off.pct < off.low_pct + off.margin_pct and not off.load.is_lamp:
            groups.setdefault((off.condition, False, off.by_current), []).append(off)
    for (condition, _, by_current), found in groups.items():
        worst = max(found, key=lambda off: abs(off.pct))
        ids = tuple(off.load.id for off in found)
        values = {
            "ids": listed(ids),
            "condition": mains_words(condition),
            "off": percent(worst.pct),
            "band": band(worst.low_pct, worst.high_pct),
        }
        yield Caution(_OFF, ids, _says(values, by_current, len(ids) == 1))


def _says(values: dict[str, Text], by_current: bool, is_one: bool) -> Sentence:
    if by_current and is_one:
        return sentence(
            "At {condition} {ids} is about {off} off its rated current; {band} is allowed.", **values
        )
    if by_current:
        return sentence(
            "At {condition} {ids} are about {off} off their rated current; {band} is allowed.", **values
        )
    if is_one:
        return sentence(
            "At {condition} {ids} is about {off} off its rated volts; {band} is allowed.", **values
        )
    return sentence(
        "At {condition} {ids} are about {off} off their rated volts; {band} is allowed.", **values
    )


def supply_cautions(line: Line, standing: Standing, mains: Mains) -> Iterator[Caution]:
    """Warnings of a supply that is asked for too much, and of what that does to what it feeds already."""
    feed = line.feed
    if feed.rated_a is not None:
        share = mains.high_v / mains.nominal_v if feed.is_ac else 1.0
        free = Line(msgspec.structs.replace(feed, has_limit=False), *line[1:])
        v = volts_at(free, standing, share)
        asked = current(line, v) + standing.amps + (v / line.bleed_ohm if line.bleed_ohm else 0.0)
        if asked > feed.rated_a * (1 - SUPPLY_MARGIN_PCT / 100):
            says = sentence(
                "{id} may give {rated}; with this chain it is asked for {asked}.",
                id=feed.part.id,
                rated=amps(feed.rated_a),
                asked=amps(asked),
            )
            yield Caution(
                ("supply-overload", *_OFF) if feed.has_limit else ("supply-overload",),
                (feed.part.id,),
                says,
            )
    yield from _shifts(line, standing)


def _shifts(line: Line, standing: Standing) -> Iterator[Caution]:
    """A warning of what other volts the supply gives to those that it feeds already."""
    feed = line.feed
    if not standing.heaters or standing.volts <= 0.0:
        return
    v = volts_at(line, standing, 1.0)
    v += current(line, v) * line.dropper_ohm
    change = v / standing.volts - 1
    if abs(change) > NOTICED:
        says = sentence(
            "{id} feeds {others} already; its volts change by {off}.",
            id=feed.part.id,
            others=listed(standing.heaters),
            off=percent(change * 100),
        )
        yield Caution(_OFF, standing.heaters, says)
