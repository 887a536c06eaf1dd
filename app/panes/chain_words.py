"""The words of the chain builder: what its choices are called."""

from __future__ import annotations

from typing import NamedTuple

from PySide6.QtCore import QCoreApplication

from app.kinds import kind_title
from core.chains import ChainOffer, Feed, Size
from core.chains.model import Arrangement, NewSupply, Reference, SizeSystem
from core.rules.words import amps, volts, wire_size


def tr(text: str) -> str:
    """Translate a literal text of the chain builder."""
    return QCoreApplication.translate("chain", text)


def offer_word(offer: ChainOffer) -> str:
    """What an arrangement is called: ``Parallel chain at 6.30 V``."""
    if offer.arrangement == "pairs":
        return tr("Pairs in series on {volts}").format(volts=volts(offer.volts))
    if offer.arrangement == "series":
        return tr("Series string")
    return tr("Parallel chain at {volts}").format(volts=volts(offer.volts))


def undo_word(arrangement: Arrangement, count: int) -> str:
    """What the step of the history is called: ``Wire a chain of 5``."""
    if arrangement == "series":
        return tr("Wire a string of {count}").format(count=count)
    if arrangement == "pairs":
        return tr("Wire {count} in pairs").format(count=count)
    return tr("Wire a chain of {count}").format(count=count)


class SupplyChoice(NamedTuple):
    """One supply to choose: what it is called, and the feed's key or the kind of a new one."""

    word: str
    feed: str = ""
    new_supply: NewSupply = "winding"


def supply_choices(feeds: tuple[Feed, ...]) -> list[SupplyChoice]:
    """Every feed of the sheet, then new ones."""
    found = [SupplyChoice(_feed_word(feed), feed.key) for feed in feeds]
    found.append(SupplyChoice(tr("a new winding"), new_supply="winding"))
    found.append(SupplyChoice(tr("a new DC supply"), new_supply="dc_supply"))
    return found


def _feed_word(feed: Feed) -> str:
    """``T1.a-b  6.30 V  5.00 A``."""
    rating = "" if feed.rated_a is None else amps(feed.rated_a)
    words = (feed.key, volts(feed.rated_v), rating or kind_title(feed.part.kind))
    return "  ".join(words)


def reference_word(reference: Reference, feed: Feed | None) -> str:
    """What a tie to the chassis is called."""
    if reference == "side":
        side = tr("one side") if feed is None else feed.second
        return tr("{side} to the chassis").format(side=side)
    return {
        "tap": tr("centre tap to the chassis"),
        "pair": tr("two equal resistors to the chassis"),
        "none": tr("nothing"),
    }[reference]


class SizeChoice(NamedTuple):
    """One choice of wire: what it is called, the size or None for the current's own, and whose sizes are meant."""

    word: str
    size: Size | None
    system: SizeSystem


_AREAS = (0.25, 0.5, 0.75, 1.0, 1.5, 2.5)
_AWGS = (24, 22, 20, 18, 16, 14)


def size_choices() -> list[SizeChoice]:
    """By the current in either system, then the usual sizes."""
    found = [
        SizeChoice(tr("by the current, mm²"), None, "mm2"),
        SizeChoice(tr("by the current, AWG"), None, "awg"),
    ]
    found += [SizeChoice(wire_size(None, area), Size(area_mm2=area), "mm2") for area in _AREAS]
    return [*found, *(SizeChoice(wire_size(awg, None), Size(awg=awg), "awg") for awg in _AWGS)]


ORDERS = ("heaviest", "nearest", "number", "cathode", "own")


def order_words() -> dict[str, str]:
    """The orders that can be chosen, by name."""
    return {
        "heaviest": tr("the heaviest first"),
        "nearest": tr("the nearest first"),
        "number": tr("by their numbers"),
        "cathode": tr("low cathodes last"),
        "own": tr("my own order"),
    }
