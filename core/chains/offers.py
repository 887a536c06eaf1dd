"""Which arrangements can be had for some sockets, and why or why not."""

from __future__ import annotations

from collections import Counter
from typing import NamedTuple

from core.catalogue import Catalogue
from core.chains.groups import sort_loads
from core.chains.loads import loads_of, way_for_volts
from core.chains.model import Arrangement, Load, Options
from core.results import Sentence, sentence
from core.rules.words import amps, volts
from core.sheet import Sheet

SIX, TWELVE = 6.3, 12.6


class ChainOffer(NamedTuple):
    """One arrangement at its volts: how many sockets it takes, and in a line what it does or why it cannot."""

    arrangement: Arrangement
    volts: float
    taken: int
    says: Sentence

    @property
    def is_possible(self) -> bool:
        """Whether it takes any socket."""
        return self.taken > 0


def chain_offers(sheet: Sheet, catalogue: Catalogue, ids: tuple[str, ...]) -> tuple[ChainOffer, ...]:
    """Every arrangement that is usual in the trade, and lines of other volts that some of the sockets want."""
    loads, _ = loads_of(sheet, catalogue, ids)
    offers = [_parallel(loads, SIX), _parallel(loads, TWELVE)]
    offers += [_parallel(loads, one) for one in _other_volts(loads)]
    return (*offers, _pairs(loads), _series(loads))


def usual_offer(offers: tuple[ChainOffer, ...]) -> ChainOffer:
    """The one that takes most sockets; of equals the first, as parallel lines are the most usual."""
    return max(offers, key=lambda offer: offer.taken)


def _other_volts(loads: list[Load]) -> list[float]:
    """Rated volts of the sockets that suit neither 6.3 nor 12.6 V, the most wanted first, three at most."""
    misfits = [load for load in loads if not any(way_for_volts(load, v) for v in (SIX, TWELVE))]
    wanted = Counter(way.rated_v for load in misfits for way in load.ways)
    return [v for v, _ in sorted(wanted.items(), key=lambda pair: (-pair[1], pair[0]))[:2]]


def _parallel(loads: list[Load], line_v: float) -> ChainOffer:
    taken = _taken(loads, Options(arrangement="parallel", volts=line_v))
    if not taken:
        says = sentence("None of them is made for {v}.", v=volts(line_v))
    elif taken < len(loads):
        says = sentence(
            "A pair from socket to socket; {n} of {all} suit {v}.", n=taken, all=len(loads), v=volts(line_v)
        )
    else:
        says = sentence("A twisted pair from socket to socket, every heater at {v}.", v=volts(line_v))
    return ChainOffer("parallel", line_v, taken, says)


def _pairs(loads: list[Load]) -> ChainOffer:
    sorted_ = sort_loads(loads, Options(arrangement="pairs", volts=TWELVE))
    taken = sum(len(group.members) for group in sorted_.groups)
    if not any(len(group.members) == 2 for group in sorted_.groups):
        return ChainOffer("pairs", TWELVE, 0, sentence("Needs two heaters of half of {v}.", v=volts(TWELVE)))
    says = sentence("Two heaters of half the volts in series, pair beside pair on {v}.", v=volts(TWELVE))
    return ChainOffer("pairs", TWELVE, taken, says)


def _series(loads: list[Load]) -> ChainOffer:
    sorted_ = sort_loads(loads, Options(arrangement="series"))
    members = [member for group in sorted_.groups for member in group.members]
    if len(members) < 2:
        return ChainOffer("series", 0.0, 0, sentence("Needs two heaters or more."))
    total = sum(way.rated_v for _, way in members)
    says = sentence("One current through all: {v} at {a}.", v=volts(total), a=amps(sorted_.amps))
    return ChainOffer("series", total, len(members), says)


def _taken(loads: list[Load], options: Options) -> int:
    return len(sort_loads(loads, options).groups)
