"""Resistors, fuses, switches, relays and the like as branches, and wires."""

from __future__ import annotations

from core.catalogue import Catalogue
from core.catalogue.wire import ohm_per_m
from core.elements.branch import Branch, Coil, Contact, Context, Law, Ntc, Reactive, Rectifying, Resistive
from core.sheet import Balance, Capacitor, Diode, Fuse, Relay, Resistor, Switch, Thermistor, Wire

PULL_IN_SHARE = 0.75  # common practice, and every relay data sheet in the catalogue within 58 to 80 %
DROP_OUT_SHARE = 0.10
DEFAULT_TAU_S = 60.0  # EPCOS S235, S237 and S238 lie between 60 and 90 s; used where the part does not say


def _two_terminal(part_id: str, law: Law) -> tuple[Branch, ...]:
    return (Branch(part_id, part_id, f"{part_id}.1", f"{part_id}.2", law),)


def resistor_branches(part: Resistor, _context: Context) -> tuple[Branch, ...]:
    """A resistor at its nominal value."""
    return _two_terminal(part.id, Resistive(part.ohm))


# Beyond its ends the fuse table (Littelfuse 213, 0.2 to 3.15 A) is continued with the cold drop at rated current
# of its first and last link: an estimate.
SMALL_FUSE_V, LARGE_FUSE_V = 0.32, 0.073
SMALL_FUSE_A = 0.2


def fuse_ohm(part: Fuse, context: Context) -> float:
    """Cold resistance of a fuse in ohms: as given, the catalogue's for its rating, or an estimate beyond it."""
    if part.cold_ohm is not None:
        return part.cold_ohm
    catalogue = context.catalogue
    fuse_type = catalogue.fuse(part.rated_a, part.speed) or catalogue.fuse(part.rated_a)
    if fuse_type is not None:
        return fuse_type.cold_ohm
    return (SMALL_FUSE_V if part.rated_a < SMALL_FUSE_A else LARGE_FUSE_V) / part.rated_a


def fuse_melting_i2t(part: Fuse, catalogue: Catalogue) -> float | None:
    """Melting I²t of a fuse in A²s: as given, or the catalogue's for its rating and speed; None where neither says."""
    if part.melting_i2t_a2s is not None:
        return part.melting_i2t_a2s
    fuse_type = catalogue.fuse(part.rated_a, part.speed)
    return fuse_type.melting_i2t_a2s if fuse_type else None


def fuse_branches(part: Fuse, context: Context) -> tuple[Branch, ...]:
    """A fuse is its cold resistance."""
    return _two_terminal(part.id, Resistive(fuse_ohm(part, context)))


def switch_branches(part: Switch, _context: Context) -> tuple[Branch, ...]:
    """A closed switch connects; an open one is nothing."""
    return _two_terminal(part.id, Resistive(0.0)) if part.closed else ()


def thermistor_law(part: Thermistor, context: Context) -> Ntc | None:
    """The figures of a thermistor from the part or its type, or None if neither gives them."""
    known = context.catalogue.thermistor(part.type) if part.type else None
    names = ("r25_ohm", "beta_k", "dissipation_w_per_k")
    r25, beta, dissipation = (
        getattr(part, name) or (getattr(known, name) if known else None) for name in names
    )
    tau = part.tau_s or (known.tau_s if known else DEFAULT_TAU_S)
    return Ntc(r25, beta, dissipation, tau) if r25 and beta and dissipation else None


def thermistor_branches(part: Thermistor, context: Context) -> tuple[Branch, ...]:
    """A thermistor; nothing if its type is not known."""
    law = thermistor_law(part, context)
    return _two_terminal(part.id, law) if law else ()


def relay_branches(part: Relay, _context: Context) -> tuple[Branch, ...]:
    """Coil and change-over contact."""
    pull_in = part.pull_in_v if part.pull_in_v is not None else PULL_IN_SHARE * part.coil_v
    drop_out = part.drop_out_v if part.drop_out_v is not None else DROP_OUT_SHARE * part.coil_v
    c1, c2, com, no, nc = (f"{part.id}.{name}" for name in ("c1", "c2", "com", "no", "nc"))
    return (
        Branch(part.id, part.id, c1, c2, Coil(part.coil_ohm, pull_in, drop_out, part.travel_s)),
        Branch(f"{part.id}:com-no", part.id, com, no, Contact(part.id, True)),
        Branch(f"{part.id}:com-nc", part.id, com, nc, Contact(part.id, False)),
    )


def capacitor_branches(part: Capacitor, _context: Context) -> tuple[Branch, ...]:
    """A capacitor."""
    return _two_terminal(part.id, Reactive(part.farad))


def diode_branches(part: Diode, _context: Context) -> tuple[Branch, ...]:
    """A diode from anode to cathode."""
    return (Branch(part.id, part.id, f"{part.id}.a", f"{part.id}.k", Rectifying(part.forward_v)),)


def balance_branches(part: Balance, _context: Context) -> tuple[Branch, ...]:
    """A hum-balance control is two resistances that meet at the wiper."""
    one, two, wiper = (f"{part.id}.{name}" for name in ("1", "2", "w"))
    return (
        Branch(f"{part.id}:1-w", part.id, one, wiper, Resistive(part.ohm * part.wiper)),
        Branch(f"{part.id}:w-2", part.id, wiper, two, Resistive(part.ohm * (1 - part.wiper))),
    )


def wire_ohm(wire: Wire, ambient_c: float) -> float:
    """Resistance of a wire in ohms, at the ambient temperature; zero for a strap."""
    if wire.length_m is None or wire.is_strap:
        return 0.0
    return ohm_per_m(awg=wire.awg, area_mm2=wire.area_mm2, temp_c=ambient_c) * wire.length_m
