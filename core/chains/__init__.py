"""The chain builder: sockets and a few choices to wires, straps, taps and what else a heater line needs."""

from core.chains.existing import heater_wires
from core.chains.feeds import feeds_of, start_of, suits, usual_feed
from core.chains.loads import loads_of
from core.chains.model import ChainPlan, Feed, LeftOut, Load, Options, Size
from core.chains.offers import ChainOffer, chain_offers, usual_offer
from core.chains.orders import by_cathode, by_number, heaviest_first, nearest_first, usual_order
from core.chains.planning import edit_of, plan
from core.chains.reference import references_for

__all__ = [
    "ChainOffer",
    "ChainPlan",
    "Feed",
    "LeftOut",
    "Load",
    "Options",
    "Size",
    "by_cathode",
    "by_number",
    "chain_offers",
    "edit_of",
    "feeds_of",
    "heater_wires",
    "heaviest_first",
    "loads_of",
    "nearest_first",
    "plan",
    "references_for",
    "start_of",
    "suits",
    "usual_feed",
    "usual_offer",
    "usual_order",
]
