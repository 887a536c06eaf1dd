"""Which arrangements can be had for some sockets, and why or why not."""

from __future__ import annotations

from collections import Counter
from typing import NamedTuple

from core.catalogue import Catalogue
from core.chains.feeds import usual_feed
from core.chains.groups import sort_loads
from core.chains.loads import loads_of, way_for_volts
from core.chains.model import Arrangement, Feed, Load, Options
from core.results import Sentence, sentence
from core.rules.words import amps, volts
from core.sheet import Sheet

SIX, TWELVE = 6.3, 12.6


class ChainOffer(NamedTuple):
    """One arrangement at its volts: how many sockets it takes, and in a line what it does or why it cannot.

    ``needs_shunts`` says that it can be had only with resistors across heaters of less current.
    """

    arrangement: Arrangement
    volts: float
    taken: int
    says: Sentence
    needs_shunts: bool = False

    @property
    def is_possible(self) -> bool:
        """Whether it takes any socket."""
        return self.taken > 0


def chain_offers(
    sheet: Sheet, catalogue: Catalogue, ids: tuple[str, ...], shunts: bool = False
) -> tuple[ChainOffer, ...]:
    """Every arrangement that is usual in the trade, and lines of other volts that some of the sockets want."""
    loads, _ = loads_of(sheet, catalogue, ids)
    usual = [_parallel(loads, SIX), _parallel(loads, TWELVE), _pairs(loads, shunts), _series(loads, shunts)]
    others = [_parallel(loads, one) for one in _other_volts(loads)]
    return (*usual, *(offer for offer in others if offer.is_possible))


def usual_offer(offers: tuple[ChainOffer, ...], feeds: tuple[Feed, ...] = ()) -> ChainOffer:
    """The one that takes most sockets without shunts; of equals one that a supply suits, else the first."""

    def rank(offer: ChainOffer) -> tuple[bool, int, bool]:
        has_feed = usual_feed(feeds, offer.arrangement, offer.volts) is not None
        return not offer.needs_shunts, offer.taken, has_feed and offer.is_possible

    return max(offers, key=rank)


def _other_volts(loads: list[Load]) -> list[float]:
    """Rated volts of the sockets that suit neither 6.3 nor 12.6 V, the most wanted first, two at most."""
    misfits = [load for load in loads if not any(way_for_volts(load, v) for v in (SIX, TWELVE))]
    wanted = Counter(way.rated_v for load in misfits for way in load.ways)
    return [v for v, _ in sorted(wanted.items(), key=lambda pair: (-pair[1], pair[0]))[:2]]


def _parallel(loads: list[Load], line_v: float) -> ChainOffer:
    taken = len(sort_loads(loads, Options(arrangement="parallel", volts=line_v)).groups)
    if not taken:
        says = sentence("None of them is made for {v}.", v=volts(line_v))
    elif taken < len(loads):
        says = sentence(
            "A pair from socket to socket; {n} of {all} suit {v}.", n=taken, all=len(loads), v=volts(line_v)
        )
    else:
        says = sentence("A twisted pair from socket to socket, every heater at {v}.", v=volts(line_v))
    return ChainOffer("parallel", line_v, taken, says)


def _pairs(loads: list[Load], shunts: bool) -> ChainOffer:
    groups = sort_loads(loads, Options(arrangement="pairs", volts=TWELVE, shunts=shunts)).groups
    if any(len(group.members) == 2 for group in groups):
        says = sentence("Two heaters of half the volts in series, pair beside pair on {v}.", v=volts(TWELVE))
        return ChainOffer("pairs", TWELVE, sum(len(group.members) for group in groups), says)
    with_shunts = None if shunts else _pairs(loads, True)
    if with_shunts is not None and with_shunts.is_possible:
        return with_shunts._replace(says=_shunted(), needs_shunts=True)
    return ChainOffer("pairs", TWELVE, 0, sentence("Needs two heaters of half of {v}.", v=volts(TWELVE)))


def _series(loads: list[Load], shunts: bool) -> ChainOffer:
    sorted_ = sort_loads(loads, Options(arrangement="series", shunts=shunts))
    members = [member for group in sorted_.groups for member in group.members]
    if len(members) > 1:
        total = sum(way.rated_v for _, way in members)
        says = sentence("One current through all: {v} at {a}.", v=volts(total), a=amps(sorted_.amps))
        return ChainOffer("series", total, len(members), says)
    with_shunts = None if shunts else _series(loads, True)
    if with_shunts is not None and with_shunts.is_possible:
        return with_shunts._replace(says=_shunted(), needs_shunts=True)
    return ChainOffer("series", 0.0, 0, sentence("Needs two heaters or more."))


def _shunted() -> Sentence:
    return sentence("Only with a resistor across the heater that wants less current.")
