"""What a chain may begin at: the supplies of a sheet by their terminals, and a new one of the right size."""

from __future__ import annotations

from collections.abc import Iterable

import msgspec

from core.chains.model import Arrangement, Feed, Point
from core.rules.mends import supply_rating_a
from core.sheet import AnyPart, Battery, DcSupply, MainsFeed, RectifiedSupply, Sheet, Winding


def feeds_of(sheet: Sheet) -> tuple[Feed, ...]:
    """Every feed on the sheet, in the order of its parts; a centre-tapped winding has one more, half of it."""
    return tuple(feed for part in sheet.parts for feed in feeds_of_part(part, sheet))


def feeds_of_part(part: AnyPart, sheet: Sheet) -> tuple[Feed, ...]:
    """The feeds of one part; none where it is no supply, or one whose volts are not known."""
    if isinstance(part, Winding):
        return _winding_feeds(part, sheet)
    if isinstance(part, MainsFeed):
        volts = sheet.mains.nominal_v
        ends = (f"{part.id}.L", f"{part.id}.N")
        return (
            Feed(
                part=part,
                first=ends[0],
                second=ends[1],
                rated_v=volts,
                emf_v=volts,
                is_ac=True,
                is_mains=True,
            ),
        )
    if isinstance(part, DcSupply):
        return (_steady(part, part.set_v, part.limit_a, has_limit=True),)
    if isinstance(part, Battery):
        return (_steady(part, part.emf_v, None, ohm=part.internal_ohm),)
    if isinstance(part, RectifiedSupply) and part.regulator_v:
        return (_steady(part, part.regulator_v, part.rated_a, is_solved=False),)
    return ()


def _steady(
    part: AnyPart,
    volts: float,
    amps: float | None,
    ohm: float = 0.0,
    has_limit: bool = False,
    is_solved: bool = True,
) -> Feed:
    return Feed(
        part=part,
        first=f"{part.id}.+",
        second=f"{part.id}.-",
        rated_v=volts,
        emf_v=volts,
        ohm=ohm,
        rated_a=amps,
        has_limit=has_limit,
        is_solved=is_solved,
    )


def _winding_feeds(part: Winding, sheet: Sheet) -> tuple[Feed, ...]:
    regulation = part.regulation_pct / 100
    mains = sheet.mains.nominal_v / (part.rated_mains_v or sheet.mains.nominal_v)
    a, ct, b = (f"{part.id}.{name}" for name in ("a", "ct", "b"))

    def feed(first: str, second: str, share: float, tap: str | None) -> Feed:
        volts = part.rated_v * share
        return Feed(
            part=part,
            first=first,
            second=second,
            rated_v=volts,
            emf_v=volts * (1 + regulation) * mains,
            ohm=regulation * volts / part.rated_a,
            rated_a=part.rated_a,
            tap=tap,
            is_ac=True,
        )

    if not part.centre_tap:
        return (feed(a, b, 1.0, None),)
    return feed(a, b, 1.0, ct), feed(a, ct, 0.5, None)


def new_feed(
    part: Winding | DcSupply, volts: float, amps: float, is_made_to_measure: bool, sheet: Sheet
) -> Feed:
    """A feed from a new supply, with a usual rating that leaves a quarter in hand.

    One ``is_made_to_measure`` gives its volts at this very load, as a string wants them; a winding for a parallel line
    has the usual volts.
    """
    rated_a = supply_rating_a(amps)
    made_part: AnyPart
    if isinstance(part, Winding):
        rise = 1 + part.regulation_pct / 100 * (1 - amps / rated_a) if is_made_to_measure else 1.0
        made_part = msgspec.structs.replace(part, rated_v=_plain(volts / rise), rated_a=rated_a)
    else:
        made_part = msgspec.structs.replace(part, set_v=_plain(volts), limit_a=rated_a)
    made = feeds_of_part(made_part, sheet)[0]
    return msgspec.structs.replace(made, is_new=True)


def _plain(volts: float) -> float:
    """Volts as one would write them: four figures."""
    return float(f"{volts:.4g}")


SHORT_PCT, FAR_PCT = 5.0, 10.0
"""How far the volts of a supply may be below those of a string, and either way off those of a line: common practice."""

_BESIDE = 200.0  # how far from the sockets a new supply is put


def suits(feed: Feed, arrangement: Arrangement, volts: float) -> bool:
    """Whether a feed's volts are those of a line, or enough for a string; the mains feed strings only."""
    if arrangement == "series":
        return feed.rated_v >= volts * (1 - SHORT_PCT / 100)
    return not feed.is_mains and abs(feed.rated_v / volts - 1) * 100 <= FAR_PCT


def usual_feed(feeds: Iterable[Feed], arrangement: Arrangement, volts: float) -> Feed | None:
    """The feed of the sheet that is offered first: of those that suit the one whose volts are nearest, if any."""
    suited = [feed for feed in feeds if suits(feed, arrangement, volts)]
    return min(suited, key=lambda feed: abs(feed.rated_v - volts), default=None)


def start_of(feed: Feed | None, places: Iterable[Point]) -> Point:
    """Where a chain over sockets at these places begins: at its supply, or where a new one would stand."""
    if feed is not None:
        return feed.part.at
    left, top = min(places, default=(0.0, 0.0))
    return left - _BESIDE, top
