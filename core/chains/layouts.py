"""How each arrangement is laid: from terminal to terminal, in the order of the chain."""

from __future__ import annotations

from typing import NamedTuple

from core.chains.draft import Draft
from core.chains.model import Feed, Load, Way
from core.rules.mends import Fitted, resistor_for, shunt_for
from core.sheet import Resistor


class Hung(NamedTuple):
    """One load as it hangs on the line.

    ``high`` and ``low`` are the shares of the line's volts at its two ends, ``drop_v`` what the wires up to its group
    take, ``shunt_ohm`` what lies across it.
    """

    load: Load
    way: Way
    high: float
    low: float
    drop_v: float = 0.0
    shunt_ohm: float | None = None


class Group(NamedTuple):
    """What stands between the two sides of a line: one load, or two in series."""

    members: tuple[tuple[Load, Way], ...]

    @property
    def amps(self) -> float:
        """What it takes: one current through both of two."""
        return max(way.rated_a for _, way in self.members)


def lay_groups(draft: Draft, feed: Feed, groups: list[Group], volts: float) -> list[tuple[Hung, ...]]:
    """Lay a line from group to group; the nearest to the supply comes first."""
    hung: list[tuple[Hung, ...]] = []
    first, second = feed.first, feed.second
    carried = sum(group.amps for group in groups)
    drop_v = 0.0
    for group in groups:
        ends = _ends(draft, group, first, second)
        drop_v += carried * draft.stretch((first, ends[0]), (second, ends[-1]), carried, volts)
        hung.append(_hang(draft, group, ends, drop_v, volts))
        first, second = ends[0], ends[-1]
        carried -= group.amps
    return hung


def _ends(draft: Draft, group: Group, first: str, second: str) -> tuple[str, ...]:
    """The terminals of a group from one side of the line to the other: two for one load, four for a pair."""
    if len(group.members) == 1:
        return draft.orient(*group.members[0], first, second)
    (upper, upper_way), (lower, lower_way) = group.members
    a, b = draft.orient(upper, upper_way, first, f"{lower.id}.{lower_way.feeds[0][0]}")
    c, d = draft.orient(lower, lower_way, b, second)
    return a, b, c, d


def _hang(draft: Draft, group: Group, ends: tuple[str, ...], drop_v: float, volts: float) -> tuple[Hung, ...]:
    for load, way in group.members:
        for strap in way.straps:
            draft.strap(load.id, strap)
    if len(group.members) == 1:
        return (Hung(*group.members[0], 1.0, 0.0, drop_v),)
    draft.wire(ends[1], ends[2], group.amps, volts)
    shunts = [
        _shunt(draft, load, way, ends[2 * at : 2 * at + 2], group.amps, volts)
        for at, (load, way) in enumerate(group.members)
    ]
    upper, lower = group.members
    return Hung(*upper, 1.0, 0.5, drop_v, shunts[0]), Hung(*lower, 0.5, 0.0, drop_v, shunts[1])


def _shunt(
    draft: Draft, load: Load, way: Way, ends: tuple[str, ...], amps: float, volts: float
) -> float | None:
    """The resistor across a heater that wants less than the string carries; None where it needs none."""
    if not needs_shunt(way.rated_a, amps):
        return None
    fitted = shunt_for(way.rated_v, amps, way.rated_a)
    if fitted is None:
        return None
    part_id = draft.part_id("resistor")
    at = draft.free_place(load.at[0], load.at[1] + 120, (0.0, 20.0))
    draft.parts.append(_resistor(part_id, fitted, at))
    for number, end in zip("12", ends, strict=True):
        draft.wire(f"{part_id}.{number}", end, amps - way.rated_a, volts)
    return fitted.ohm


def needs_shunt(own_a: float, string_a: float) -> bool:
    """Whether a heater takes so little of a string's current that the rest must go round it."""
    return own_a < string_a * (1 - SAME_PCT / 100)


SAME_PCT = 3.0
"""Heaters whose currents differ by less than this stand in one string as they are: half of what a string bears."""


def _resistor(part_id: str, fitted: Fitted, at: tuple[float, float]) -> Resistor:
    return Resistor(id=part_id, ohm=fitted.ohm, rated_w=fitted.rated_w, at=at)


def lay_string(
    draft: Draft, feed: Feed, members: list[tuple[Load, Way]], amps: float, dropper: Fitted | None
) -> tuple[tuple[Hung, ...], float]:
    """Lay one wire from heater to heater and back, with a dropper at the supply's end where one is wanted.

    Answers what hangs on it, and the ohms of its wires.
    """
    total = sum(way.rated_v for _, way in members)
    at = feed.first
    if dropper is not None:
        at = _lay_dropper(draft, feed, members[0][0], amps, dropper, total)
    hung: list[Hung] = []
    left, ohm = total, 0.0
    for load, way in members:
        enter, leave = draft.orient(load, way, at, feed.second)
        ohm += draft.wire(at, enter, amps, total)
        for strap in way.straps:
            draft.strap(load.id, strap)
        shunt = _shunt(draft, load, way, (enter, leave), amps, total)
        hung.append(Hung(load, way, left / total, (left - way.rated_v) / total, 0.0, shunt))
        left -= way.rated_v
        at = leave
    ohm += draft.wire(at, feed.second, amps, total)
    return tuple(hung), ohm


def _lay_dropper(draft: Draft, feed: Feed, first: Load, amps: float, dropper: Fitted, volts: float) -> str:
    x, y = draft.part_at(feed.first)
    part_id = draft.part_id("resistor")
    at = draft.free_place((x + first.at[0]) / 2, min(y, first.at[1]) - 60, (0.0, -20.0))
    draft.parts.append(_resistor(part_id, dropper, at))
    draft.wire(feed.first, f"{part_id}.1", amps, volts)
    return f"{part_id}.2"


def dropper_for(feed: Feed, volts: float, amps: float, taken_a: float) -> Fitted | None:
    """The resistor that takes what a feed gives beyond ``volts`` at ``amps``; None where it is not worth one.

    ``taken_a`` is what the feed gives to others already.
    """
    spare = feed.emf_v - feed.ohm * (amps + taken_a) - volts
    return resistor_for(spare / amps, amps) if spare > volts * WORTH_SHARE else None


WORTH_SHARE = 0.03
"""Volts beyond this share of a string's are taken by a dropper: they would be half of its tolerance of current."""


def with_reference(feed: Feed, reference: str) -> str:
    """What a feed's reference can be: a tap only where it has one, a pair only where it has two like sides."""
    if feed.is_mains or (reference == "tap" and feed.tap is None):
        return "none"
    return reference
