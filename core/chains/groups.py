"""Which sockets a chain can take, and how they stand in it."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from core.chains.layouts import SAME_PCT, Group
from core.chains.loads import way_for_amps, way_for_volts
from core.chains.model import LeftOut, Load, Options, Way
from core.rules.words import amps, volts
from core.sentences import Sentence, Text, sentence


class Sorted(NamedTuple):
    """The groups of a line in order, or the members of a string with its current; and what is left out."""

    groups: list[Group]
    left_out: list[LeftOut]
    amps: float = 0.0

    @property
    def loads(self) -> list[Load]:
        """What is wired, in order."""
        return [load for group in self.groups for load, _ in group.members]


def sort_loads(loads: list[Load], options: Options) -> Sorted:
    """What each load of a chain becomes."""
    fit, left_out = _without_rectifiers(loads)
    sort: dict[str, Callable[[list[Load], Options], Sorted]] = {
        "parallel": _parallel,
        "pairs": _pairs,
        "series": _series,
    }
    found = sort[options.arrangement](fit, options)
    return found._replace(left_out=[*left_out, *found.left_out])


def _without_rectifiers(loads: list[Load]) -> tuple[list[Load], list[LeftOut]]:
    """A rectifier whose heater stands at the high tension shares its line with nothing."""
    if len(loads) == 1:
        return loads, []
    out = [LeftOut(load.id, alone(load)) for load in loads if load.owns_cathode]
    return [load for load in loads if not load.owns_cathode], out


def alone(load: Load) -> Sentence:
    """Why a rectifier is left out."""
    return sentence(
        "The cathode of {id} ({type}) is its heater or joined to it: it needs a supply of its own.",
        id=load.id,
        type=load.type,
    )


def _parallel(loads: list[Load], options: Options) -> Sorted:
    found = Sorted([], [])
    for load in loads:
        way = way_for_volts(load, options.volts)
        if way is None:
            found.left_out.append(LeftOut(load.id, _misfit(load, options.volts)))
        else:
            found.groups.append(Group(((load, way),)))
    return found


def _misfit(load: Load, line_v: float) -> Sentence:
    return sentence(
        "{id} ({type}) is made for {rated}, not for {line}.",
        id=load.id,
        type=load.type,
        rated=either([volts(way.rated_v) for way in reversed(load.ways)]),
        line=volts(line_v),
    )


def either(items: list[str]) -> Text:
    """``6.30 V``, ``6.30 V or 12.6 V``."""
    if len(items) == 1:
        return items[0]
    return sentence("{items} or {last}", items=", ".join(items[:-1]), last=items[-1])


def _pairs(loads: list[Load], options: Options) -> Sorted:
    """Heaters for the whole line stand alone; the others two by two, equal ones first, in the order given."""
    alone_by_id: dict[str, Group] = {}
    halves: list[tuple[Load, Way]] = []
    left_out: list[LeftOut] = []
    for load in loads:
        whole, half = way_for_volts(load, options.volts), way_for_volts(load, options.volts / 2)
        if whole is not None:
            alone_by_id[load.id] = Group(((load, whole),))
        elif half is not None:
            halves.append((load, half))
        else:
            left_out.append(LeftOut(load.id, _misfit_half(load, options.volts)))
    paired, single = _match(halves, options.shunts)
    left_out += [LeftOut(load.id, _no_partner(load, way)) for load, way in single]
    by_first = alone_by_id | {group.members[0][0].id: group for group in paired}
    groups = [by_first[load.id] for load in loads if load.id in by_first]
    return Sorted(groups, left_out)


def _match(halves: list[tuple[Load, Way]], shunts: bool) -> tuple[list[Group], list[tuple[Load, Way]]]:
    """Pairs of equal current in the order given; what is left over in pairs with a shunt, if that is wanted."""
    groups: list[Group] = []
    left: list[tuple[Load, Way]] = []
    for member in halves:
        partner = next((one for one in left if _alike(one[1], member[1])), None)
        if partner is None:
            left.append(member)
        else:
            left.remove(partner)
            groups.append(Group((partner, member)))
    while shunts and len(left) > 1:
        groups.append(Group((left[0], left[1])))
        left = left[2:]
    return groups, left


def _alike(one: Way, other: Way) -> bool:
    low, high = sorted((one.rated_a, other.rated_a))
    return low >= high * (1 - SAME_PCT / 100)


def _misfit_half(load: Load, line_v: float) -> Sentence:
    return sentence(
        "{id} ({type}) is made for {rated}: neither {line} nor half of it.",
        id=load.id,
        type=load.type,
        rated=either([volts(way.rated_v) for way in reversed(load.ways)]),
        line=volts(line_v),
    )


def _no_partner(load: Load, way: Way) -> Sentence:
    return sentence(
        "{id} ({type}, {a}) finds no partner of the same current.",
        id=load.id,
        type=load.type,
        a=amps(way.rated_a),
    )


def _series(loads: list[Load], options: Options) -> Sorted:
    """One current for all: that which leaves out the fewest; with shunts the largest that is needed."""
    current = string_current(loads, options.shunts)
    groups: list[Group] = []
    left_out: list[LeftOut] = []
    for load in loads:
        way = way_for_amps(load, current, SAME_PCT)
        if way is None and options.shunts:
            way = max((one for one in load.ways if one.rated_a < current), key=lambda one: one.rated_a)
        if way is None:
            left_out.append(LeftOut(load.id, _other_current(load, current)))
        else:
            groups.append(Group(((load, way),)))
    return Sorted(groups, left_out, current)


def string_current(loads: list[Load], shunts: bool) -> float:
    """The current of a string of these heaters; 0 without any.

    With shunts, the least current that none exceeds; else the one that most of them are made for, of those the
    smallest.
    """
    if not loads:
        return 0.0
    currents = {way.rated_a for load in loads for way in load.ways}
    if shunts:
        least = max(min(way.rated_a for way in load.ways) for load in loads)
        currents = {a for a in currents if a >= least}
    return min(currents, key=lambda a: (-_takers(loads, a), a))


def _takers(loads: list[Load], current: float) -> int:
    return sum(way_for_amps(load, current, SAME_PCT) is not None for load in loads)


def _other_current(load: Load, current: float) -> Sentence:
    return sentence(
        "{id} ({type}) wants {own}; the string carries {a}.",
        id=load.id,
        type=load.type,
        own=either([amps(way.rated_a) for way in load.ways]),
        a=amps(current),
    )
