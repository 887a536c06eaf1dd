"""Supplies as branches: an EMF behind a resistance, raising the first terminal above the second."""

from __future__ import annotations

from core.elements.branch import GROUND, Beyond, Branch, Context, Source
from core.sentences import sentence
from core.sheet import Battery, DcSupply, Elevation, MainsFeed, RectifiedSupply, Winding

FOLDBACK_SHARE = 0.2  # of the limit is left at a short, unless the sheet says otherwise: common practice


def winding_branches(part: Winding, context: Context) -> tuple[Branch, ...]:
    """No-load volts are rated volts (1 + regulation); resistance is regulation x rated volts / rated amperes.

    Regulation is (no load - full load) / full load, as most makers define it. A centre-tapped winding is two
    equal halves.
    """
    regulation = part.regulation_pct / 100
    mains_v = part.rated_mains_v or context.mains.nominal_v
    volts = part.rated_v * (1 + regulation) / mains_v
    ohm = regulation * part.rated_v / part.rated_a
    a, ct, b = (f"{part.id}.{name}" for name in ("a", "ct", "b"))
    if not part.centre_tap:
        return (Branch(part.id, part.id, a, b, Source(volts, 0.0, ohm, rated_a=part.rated_a, on_mains=True)),)
    half = Source(volts / 2, 0.0, ohm / 2, rated_a=part.rated_a, on_mains=True)
    return (Branch(f"{part.id}:a-ct", part.id, a, ct, half), Branch(f"{part.id}:ct-b", part.id, ct, b, half))


def dc_supply_branches(part: DcSupply, _context: Context) -> tuple[Branch, ...]:
    """Set volts without resistance up to the limit."""
    law = Source(
        dc_v=part.set_v,
        limit_a=part.limit_a,
        rated_a=part.limit_a,
        overload=part.overload,
        foldback_a=FOLDBACK_SHARE * part.limit_a if part.foldback_a is None else part.foldback_a,
        trip_s=part.trip_s,
        retry_s=part.retry_s,
        on_mains=True,
    )
    return (Branch(part.id, part.id, f"{part.id}.+", f"{part.id}.-", law),)


def battery_branches(part: Battery, _context: Context) -> tuple[Branch, ...]:
    """EMF behind the internal resistance."""
    law = Source(dc_v=part.emf_v, ohm=part.internal_ohm)
    return (Branch(part.id, part.id, f"{part.id}.+", f"{part.id}.-", law),)


def mains_feed_branches(part: MainsFeed, _context: Context) -> tuple[Branch, ...]:
    """The mains, taken as stiff: its impedance is below an ohm where a string takes 0.3 A at most."""
    return (
        Branch(part.id, part.id, f"{part.id}.L", f"{part.id}.N", Source(ac_per_mains=1.0, on_mains=True)),
    )


def rectified_supply_branches(part: RectifiedSupply, _context: Context) -> tuple[Branch, ...]:
    """The steady state of rectifier and reservoir is not a matter of one node equation."""
    law = Beyond(sentence("the steady state of a rectifier with reservoir is not computed yet"))
    return (Branch(part.id, part.id, f"{part.id}.+", f"{part.id}.-", law),)


def elevation_branches(part: Elevation, _context: Context) -> tuple[Branch, ...]:
    """DC volts above chassis behind a resistance."""
    law = Source(dc_v=part.volts, ohm=part.source_ohm, bias=True)
    return (Branch(part.id, part.id, f"{part.id}.e", GROUND, law),)
