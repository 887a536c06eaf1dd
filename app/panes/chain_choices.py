"""What is chosen in the chain builder: values only, so that a pane may show them and a plan be made of them."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from core.catalogue import Catalogue
from core.chains import (
    ChainOffer,
    Feed,
    Load,
    Options,
    Size,
    by_cathode,
    by_number,
    chain_offers,
    feeds_of,
    heater_wires,
    heaviest_first,
    loads_of,
    nearest_first,
    references_for,
    start_of,
    usual_feed,
    usual_offer,
)
from core.chains.model import NewSupply, Reference, SizeSystem
from core.sheet import Sheet

Point = tuple[float, float]
_ORDERS: dict[str, Callable[[Iterable[Load], Point], tuple[str, ...]]] = {
    "heaviest": heaviest_first,
    "nearest": nearest_first,
    "number": lambda loads, _start: by_number(loads),
    "cathode": lambda loads, _start: by_cathode(loads),
}


@dataclass(frozen=True)
class Choices:
    """What the user has chosen; None where the usual choice is taken.

    ``offer`` is an arrangement and its volts, ``feed`` a feed's key or empty for a new supply, ``own`` the user's own
    order.
    """

    offer: tuple[str, float] | None = None
    feed: str | None = None
    new_supply: NewSupply = "winding"
    reference: Reference | None = None
    size: Size | None = None
    system: SizeSystem = "mm2"
    allowance_m: float = 0.04
    replace: bool = False
    shunts: bool = False
    order: str | None = None
    own: tuple[str, ...] = ()


@dataclass(frozen=True)
class Settled:
    """Choices with everything that follows from them for a selection: ready to be shown and planned."""

    offers: tuple[ChainOffer, ...]
    offer: ChainOffer
    feeds: tuple[Feed, ...]
    feed: Feed | None
    references: tuple[Reference, ...]
    order: str
    ids: tuple[str, ...]
    loads: tuple[Load, ...]
    options: Options


def heated_ids(sheet: Sheet, chosen: Iterable[str]) -> tuple[str, ...]:
    """The sockets and lamps among what is selected, in the order of the sheet."""
    wanted = set(chosen)
    return tuple(part.id for part in sheet.parts if part.id in wanted and part.kind in ("tube", "lamp"))


def settle(sheet: Sheet, catalogue: Catalogue, ids: tuple[str, ...], choices: Choices) -> Settled:
    """Fill in what was not chosen with what is usual."""
    loads, _ = loads_of(sheet, catalogue, ids)
    offers = chain_offers(sheet, catalogue, ids, choices.shunts)
    feeds = feeds_of(sheet)
    offer = _offer(offers, choices, feeds)
    feed = _feed(feeds, offer, choices)
    references = _references(feed, choices.new_supply)
    reference = choices.reference if choices.reference in references else references[0]
    order = choices.order or ("cathode" if offer.arrangement == "series" else "heaviest")
    options = Options(
        arrangement=offer.arrangement,
        volts=offer.volts,
        feed="" if feed is None else feed.key,
        new_supply=choices.new_supply,
        reference=reference or "none",
        replace=choices.replace,
        shunts=choices.shunts or offer.needs_shunts,
        size=choices.size,
        system=choices.system,
        allowance_m=choices.allowance_m,
    )
    in_order = _in_order(ids, loads, order, choices.own, start_of(feed, [load.at for load in loads]))
    return Settled(offers, offer, feeds, feed, references, order, in_order, tuple(loads), options)


def _offer(offers: tuple[ChainOffer, ...], choices: Choices, feeds: tuple[Feed, ...]) -> ChainOffer:
    """The arrangement that was chosen, while it is possible; a string's volts are not chosen."""
    for offer in offers:
        if offer.is_possible and offer_key(offer) == choices.offer:
            return offer
    return usual_offer(offers, feeds)


def offer_key(offer: ChainOffer) -> tuple[str, float]:
    """What :class:`Choices` remembers of an arrangement."""
    return offer.arrangement, 0.0 if offer.arrangement == "series" else offer.volts


def _feed(feeds: tuple[Feed, ...], offer: ChainOffer, choices: Choices) -> Feed | None:
    if choices.feed is not None:
        return next((feed for feed in feeds if feed.key == choices.feed), None)
    return usual_feed(feeds, offer.arrangement, offer.volts)


def _references(feed: Feed | None, new_supply: NewSupply) -> tuple[Reference, ...]:
    if feed is not None:
        return references_for(feed)
    return ("tap", "pair", "side", "none") if new_supply == "winding" else ("side", "none")


def _in_order(
    ids: tuple[str, ...], loads: list[Load], order: str, own: tuple[str, ...], start: Point
) -> tuple[str, ...]:
    """Every id once: those whose type is known in the order wanted, the rest after them."""
    first = own if order == "own" else _ORDERS[order](loads, start)
    known = tuple(one for one in first if one in ids)
    return (*known, *(one for one in ids if one not in known))


def with_own_order(choices: Choices, ids: tuple[str, ...]) -> Choices:
    """The choices with an order of the user's own."""
    return replace(choices, order="own", own=ids)


def are_all_wired(sheet: Sheet, catalogue: Catalogue, ids: tuple[str, ...]) -> bool:
    """Whether every one of these sockets has wires on its heater pins already."""
    loads, _ = loads_of(sheet, catalogue, ids)
    return bool(loads) and len(heater_wires(sheet, loads)) == len(loads)


def not_wired(sheet: Sheet, catalogue: Catalogue) -> tuple[str, ...]:
    """The sockets and lamps without a wire on their heater pins; all of them where every one has some."""
    every = heated_ids(sheet, sheet.part_by_id)
    loads, _ = loads_of(sheet, catalogue, every)
    wired = heater_wires(sheet, loads)
    return tuple(load.id for load in loads if load.id not in wired) or every
