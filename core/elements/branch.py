"""Branches: what a part is to the circuit. A part becomes a few of these, each with a law."""

from __future__ import annotations

from typing import NamedTuple

import msgspec

from core.catalogue import Catalogue
from core.sentences import Sentence
from core.sheet import Mains, Overload

GROUND = "chassis"


class Resistive(msgspec.Struct, frozen=True, tag=True, gc=False):
    """A resistance in ohms; zero is an ideal connection."""

    ohm: float


class Source(msgspec.Struct, frozen=True, tag=True, gc=False):
    """An EMF behind a resistance, raising ``u`` above ``v``.

    ``ac_per_mains`` is rms volts per volt of mains, ``dc_v`` steady volts. With ``limit_a`` the source gives
    no more than that and takes nothing; ``overload`` is what it does at its limit, ``foldback_a`` what is left
    of it at a short where it folds back. It holds at its limit for ``trip_s`` before it cuts out, and a hiccup one
    is off for ``retry_s`` then. ``rated_a`` is what it may give for ever; ``bias`` marks a source that only lifts,
    ``on_mains`` one that goes with the mains.
    """

    ac_per_mains: float = 0.0
    dc_v: float = 0.0
    ohm: float = 0.0
    limit_a: float | None = None
    overload: Overload = "constant-current"
    foldback_a: float = 0.0
    trip_s: float = 0.0
    retry_s: float = 1.0
    rated_a: float | None = None
    bias: bool = False
    on_mains: bool = False


class Hot(msgspec.Struct, frozen=True, tag=True, gc=False):
    """A heater, filament or lamp by its rating; see :mod:`core.elements.heater`.

    ``warmup_s`` is the warm-up time in the standard test circuit; see :mod:`core.elements.warming`.
    """

    rated_v: float
    rated_a: float
    cold_ratio: float
    has_cathode: bool
    pins: str
    warmup_s: float


class Ntc(msgspec.Struct, frozen=True, tag=True, gc=False):
    """A self-heated thermistor; see :mod:`core.elements.ntc`. ``tau_s`` is its time constant of cooling."""

    r25_ohm: float
    beta_k: float
    dissipation_w_per_k: float
    tau_s: float


class Coil(msgspec.Struct, frozen=True, tag=True, gc=False):
    """A relay coil with pull-in and drop-out volts; the contact is on its way for ``travel_s``."""

    ohm: float
    pull_in_v: float
    drop_out_v: float
    travel_s: float


class Contact(msgspec.Struct, frozen=True, tag=True, gc=False):
    """A relay contact: closed while its relay is pulled in, or while it is released."""

    relay: str
    closed_when_pulled: bool


class Rectifying(msgspec.Struct, frozen=True, tag=True, gc=False):
    """A diode that conducts from ``u`` to ``v`` at ``forward_v``."""

    forward_v: float


class Reactive(msgspec.Struct, frozen=True, tag=True, gc=False):
    """A capacitor: open to DC."""

    farad: float


class Beyond(msgspec.Struct, frozen=True, tag=True, gc=False):
    """Something whose steady state this solver does not compute; its island is reported as such."""

    reason: Sentence


Law = Resistive | Source | Hot | Ntc | Coil | Contact | Rectifying | Reactive | Beyond


class Branch(msgspec.Struct, frozen=True, gc=False):
    """One edge of the circuit between terminals ``u`` and ``v``, owned by a part or wire."""

    key: str
    owner: str
    u: str
    v: str
    law: Law


class Context(NamedTuple):
    """What turning a part into branches may depend on besides the part."""

    mains: Mains
    ambient_c: float
    catalogue: Catalogue
