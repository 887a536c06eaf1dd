"""What is wired already: on the chosen sockets, and on the supply that is to feed them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import NamedTuple

import msgspec

from core.catalogue import Catalogue
from core.chains.model import Caution, Feed, Load
from core.circuit import Circuit, Island, build
from core.elements.branch import GROUND, Beyond, Hot, Source
from core.relays import Answers, solve_cluster
from core.results import Condition, Unsolved, sentence
from core.rules.words import listed, percent
from core.sheet import Sheet
from core.solution import Answer, IslandPoint
from core.units import CELSIUS_TO_K

_LOST = ("not-heated", "half-heated", "wrong-strap", "heater-voltage", "heater-current", "string-balance")
_LOST_SHARE = 0.5
NOTICED = 0.01
"""Volts of other heaters that change by less than this share are not worth a word."""


class Standing(NamedTuple):
    """How a feed stands before the chain is laid, the wires that go taken away.

    ``amps`` it gives, whether anything ``is_tied`` to the chassis, ``lift_v`` (DC volts above chassis) and ``second_v``
    (volts, rms for AC) of its second terminal, the ``heaters`` it feeds, and the ``volts`` it gave before those wires
    were taken away.
    """

    amps: float = 0.0
    is_tied: bool = False
    lift_v: float = 0.0
    second_v: complex = 0.0
    heaters: tuple[str, ...] = ()
    volts: float = 0.0


def heater_wires(sheet: Sheet, loads: Iterable[Load]) -> dict[str, tuple[str, ...]]:
    """The wires and straps on the heater pins of each load that has any."""
    owner = {f"{load.id}.{pin}": load.id for load in loads for pin in load.pins}
    found: dict[str, dict[str, None]] = {}
    for wire in sheet.wires:
        for end in (wire.start, wire.end):
            if end in owner:
                found.setdefault(owner[end], {})[wire.id] = None
    return {part_id: tuple(wires) for part_id, wires in found.items()}


def without(sheet: Sheet, wire_ids: frozenset[str]) -> Sheet:
    """The sheet without some wires."""
    if not wire_ids:
        return sheet
    wires = tuple(wire for wire in sheet.wires if wire.id not in wire_ids)
    return msgspec.structs.replace(sheet, wires=wires)


def standing_of(before: Sheet, after: Sheet, catalogue: Catalogue, feed: Feed) -> Standing:
    """How a feed stands on the sheet ``after`` wires have gone; one that is not solved gives nothing yet."""
    if feed.is_new:
        return Standing()
    circuit = build(after, catalogue)
    island = _island_of(circuit, feed)
    if island is None:
        return Standing()
    is_tied = any(GROUND in (branch.u, branch.v) for branch in island.branches)
    heaters = tuple(dict.fromkeys(b.owner for b in island.branches if isinstance(b.law, Hot)))
    answer = _solved(circuit, island)
    if isinstance(answer, Unsolved):
        return Standing(is_tied=is_tied, heaters=heaters)
    amps, volts = _given(answer, feed)
    if before is not after:
        circuit = build(before, catalogue)
        old = _island_of(circuit, feed)
        answer_before = _solved(circuit, old) if old is not None else None
        if isinstance(answer_before, IslandPoint):
            volts = _given(answer_before, feed)[1]
    lift_v, second_v = answer.bias.get(feed.second, 0.0), answer.nodes.get(feed.second, 0.0)
    return Standing(amps, is_tied, lift_v, second_v, heaters, volts)


def _island_of(circuit: Circuit, feed: Feed) -> Island | None:
    return next((one for one in circuit.islands if one.branches and feed.first in one.terminals), None)


def _solved(circuit: Circuit, island: Island) -> Answer:
    cluster = next(one for one in circuit.clusters if island in one.members)
    return _answers(circuit, cluster)[cluster.members.index(island)]


def _answers(circuit: Circuit, cluster: Island) -> Answers:
    """What the members of a cluster come to at nominal mains."""
    condition = Condition("nominal", circuit.sheet.mains.nominal_v)
    return solve_cluster(cluster, (condition,), circuit.sheet.ambient_c + CELSIUS_TO_K)[0]


def _given(answer: IslandPoint, feed: Feed) -> tuple[float, float]:
    """Amperes and volts of a feed; nothing where its supply is not wired."""
    supply = answer.supplies.get(feed.part.id)
    across = abs(answer.nodes.get(feed.first, 0.0) - answer.nodes.get(feed.second, 0.0))
    return (abs(supply.a), across) if supply is not None else (0.0, across)


def disturbed(
    before: Sheet, after: Sheet, catalogue: Catalogue, chosen: frozenset[str], feed: Feed
) -> Iterator[Caution]:
    """Warnings for heaters that are not chosen: those that go cold, or get other volts, when the wires have gone."""
    gone = [wire for wire in before.wires if wire.id not in after.wire_by_id]
    if not gone:
        return
    touched = frozenset(end for wire in gone for end in (wire.start, wire.end))
    old = _heater_volts(before, catalogue, touched, frozenset())
    new = _heater_volts(after, catalogue, touched, frozenset(old))
    others = {key: v for key, v in old.items() if key[0] not in chosen and v > 0.0}
    lost = _owners(key for key, v in others.items() if new.get(key, 0.0) < _LOST_SHARE * v)
    if lost:
        says = sentence("With the wires that are taken away {ids} get no heat any more.", ids=listed(lost))
        if len(lost) == 1:
            says = sentence("With the wires that are taken away {id} gets no heat any more.", id=lost[0])
        yield Caution(_LOST, lost, says)
    island = _island_of(build(after, catalogue), feed)
    fed = frozenset() if island is None else frozenset(island.owners)
    moved = {key: new.get(key, 0.0) / v - 1 for key, v in others.items() if key[0] not in (*lost, *fed)}
    shifted = _owners(key for key, share in moved.items() if abs(share) > NOTICED)
    if shifted:
        most = max(moved.values(), key=abs)
        says = sentence(
            "With the wires that are taken away the volts of {ids} change by {off}.",
            ids=listed(shifted),
            off=percent(most * 100),
        )
        yield Caution(("heater-voltage", "heater-current"), shifted, says)


def _owners(keys: Iterable[tuple[str, str]]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(owner for owner, _ in keys))


def _heater_volts(
    sheet: Sheet, catalogue: Catalogue, terminals: frozenset[str], keys: frozenset[tuple[str, str]]
) -> dict[tuple[str, str], float]:
    """Volts of heater sections, by owner and pins, in clusters with any of these terminals or sections."""
    owners = {owner for owner, _ in keys}
    found: dict[tuple[str, str], float] = {}
    circuit = build(sheet, catalogue)
    for cluster in circuit.clusters:
        if Hot not in cluster.kinds:
            continue
        if terminals.isdisjoint(cluster.terminals) and owners.isdisjoint(cluster.owners):
            continue
        for island, answer in zip(cluster.members, _answers(circuit, cluster), strict=True):
            if isinstance(answer, IslandPoint):
                found.update({(one.owner, one.pins): one.v for one in answer.heaters})
            elif island.kinds & {Source, Beyond}:
                # what cannot be solved counts as heated
                hot = ((b.owner, b.law.pins) for b in island.branches if isinstance(b.law, Hot))
                found.update(dict.fromkeys(hot, 1.0))
    return found
