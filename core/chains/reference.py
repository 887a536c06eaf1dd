"""Tying a heater line to the chassis: by the centre tap, by two equal resistors, or by one side."""

from __future__ import annotations

from msgspec.structs import replace

from core.chains.draft import Draft
from core.chains.model import Feed, Point, Reference
from core.placing import free_place
from core.preferred import nearest, next_wattage
from core.rules.mends import REFERENCE_OHM, reference_pair_w
from core.sheet import Chassis, Resistor

_NEAR = 260.0
_BESIDE, _BELOW_PAIR = (80.0, 100.0), 100.0
_MOST_W = 0.5
_LEAST_W = 0.5  # half-watt resistors: common practice at 6.3 V, where each turns a tenth of a watt into heat


def references_for(feed: Feed) -> tuple[Reference, ...]:
    """What a feed can be tied by, the usual one first; the mains are never tied."""
    if feed.is_mains:
        return ("none",)
    if feed.tap is not None:
        return ("tap", "pair", "side", "none")
    if feed.is_ac:
        return ("pair", "side", "none")
    return ("side", "none")


def tie(draft: Draft, feed: Feed, reference: Reference) -> float | None:
    """Tie a line to a chassis symbol near its supply; answers the ohms that lie across the feed for it, if any."""
    if reference == "none":
        return None
    if reference == "pair":
        return 2 * _pair(draft, feed)
    chassis = _chassis_near(draft, feed, _BESIDE)
    end = feed.tap if reference == "tap" and feed.tap is not None else feed.second
    draft.wire(end, chassis, 0.0, feed.rated_v)
    return None


def pair_ohm(volts: float) -> float:
    """Each resistor of a reference pair: 100 Ω, more where that would turn more than half a watt into heat."""
    if reference_pair_w(volts, REFERENCE_OHM) <= _MOST_W:
        return REFERENCE_OHM
    return nearest(volts * volts / 4 / _MOST_W, side="up")


def _pair(draft: Draft, feed: Feed) -> float:
    """Two equal resistors below the supply, and the chassis below them."""
    ohm = pair_ohm(feed.emf_v)
    heat = reference_pair_w(feed.emf_v, ohm)
    rated_w = max(next_wattage(2 * heat) or 2 * heat, _LEAST_W)
    x, y = draft.part_at(feed.first)
    amps = feed.emf_v / ohm / 2
    made = []
    for dx in (80.0, -80.0):
        at = draft.free_place(x + dx, y + 160, (0.0, 20.0))
        made.append(Resistor(id=draft.part_id("resistor"), ohm=ohm, rated_w=rated_w, at=at, turn=90))
        draft.parts.append(made[-1])
    chassis = _chassis_near(draft, feed, (0.0, max(part.at[1] for part in made) - y + _BELOW_PAIR))
    for end, part in zip((feed.first, feed.second), made, strict=True):
        draft.wire(end, f"{part.id}.1", amps, feed.rated_v)
        draft.wire(f"{part.id}.2", chassis, amps, feed.rated_v)
    return ohm


def _chassis_near(draft: Draft, feed: Feed, beside: Point) -> str:
    """The terminal of a chassis symbol near the supply, or of one anywhere that waits for its wire; else a new one.

    A new one goes so far ``beside`` the supply, or to the nearest place where it covers nothing.
    """
    x, y = draft.part_at(feed.first)
    parts = (*draft.sheet.parts, *draft.parts)
    wired = {end for wire in (*draft.sheet.wires, *draft.wires) for end in (wire.start, wire.end)}
    found = [
        (abs(part.at[0] - x) + abs(part.at[1] - y), part.id) for part in parts if isinstance(part, Chassis)
    ]
    fit = [one for one in found if one[0] <= _NEAR or f"{one[1]}.e" not in wired]
    if fit:
        return f"{min(fit)[1]}.e"
    part_id = draft.part_id("chassis")
    at = free_place(replace(draft.sheet, parts=parts), (x + beside[0], y + beside[1]), "chassis")
    draft.parts.append(Chassis(id=part_id, at=at))
    return f"{part_id}.e"
