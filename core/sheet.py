"""The sheet: frozen structs that are the document and the file format in one.

Parts are tagged by ``kind``; a terminal is written ``V1.4``. Units stand in the field names. Fields with a
default may be left out of a file. Solving never writes anything back here.
"""

from __future__ import annotations

from functools import cached_property
from typing import Literal

import msgspec

from core.catalogue.types import TubeType

FORMAT = "heaterloom-sheet"
VERSION = 1

Turn = Literal[0, 90, 180, 270]
Overload = Literal["constant-current", "hiccup", "foldback", "latch-off"]


class Part(
    msgspec.Struct,
    frozen=True,
    kw_only=True,
    tag_field="kind",
    forbid_unknown_fields=True,
    omit_defaults=True,
):
    """What every part has: an id, a place on the sheet, a turn clockwise in degrees, and whether it is mirrored.

    Places are in sheet units (millimetres), y down. A mirrored symbol is flipped left to right before it is turned.
    """

    id: str
    at: tuple[float, float] = (0.0, 0.0)
    turn: Turn = 0
    mirror: bool = False

    @property
    def kind(self) -> str:
        """The tag of the part's kind as it stands in the file."""
        return str(self.__struct_config__.tag)


class Tube(Part, frozen=True, kw_only=True, tag="tube"):
    """A tube in its socket; terminals are pin numbers. The four last fields override the type."""

    type: str
    pulled: bool = False
    cathode_v: float | None = None
    rated_v: float | None = None
    rated_a: float | None = None
    cold_ratio: float | None = None
    warmup_s: float | None = None


class Lamp(Part, frozen=True, kw_only=True, tag="lamp"):
    """A panel lamp, by catalogue type or by its rating."""

    type: str | None = None
    rated_v: float | None = None
    rated_a: float | None = None


class Winding(Part, frozen=True, kw_only=True, tag="winding"):
    """A transformer winding: ``rated_v`` rms at ``rated_a``. ``rated_mains_v`` None means the sheet's nominal."""

    rated_v: float
    rated_a: float
    regulation_pct: float = 10.0
    rated_mains_v: float | None = None
    centre_tap: bool = False


class DcSupply(Part, frozen=True, kw_only=True, tag="dc_supply"):
    """A regulated DC supply with a current limit and an overload behaviour.

    At its limit it holds for ``trip_s`` before it cuts out and stays off for ``retry_s``. ``input_v`` are the DC
    volts before a linear regulator, which turns what is left of them into heat; a switching supply has none.
    """

    set_v: float
    limit_a: float
    overload: Overload = "constant-current"
    trip_s: float = 0.05
    retry_s: float = 1.0
    min_load_a: float = 0.0
    foldback_a: float | None = None
    input_v: float | None = None


class Battery(Part, frozen=True, kw_only=True, tag="battery"):
    """A battery: EMF behind its internal resistance."""

    emf_v: float
    internal_ohm: float = 0.0


class MainsFeed(Part, frozen=True, kw_only=True, tag="mains_feed"):
    """The mains itself, for sets that run a string straight from it."""


class RectifiedSupply(Part, frozen=True, kw_only=True, tag="rectified_supply"):
    """A winding, rectifier and reservoir, with or without a regulator."""

    rated_v: float
    rated_a: float
    regulation_pct: float = 10.0
    rated_mains_v: float | None = None
    centre_tap: bool = False
    rectifier: Literal["bridge", "centre-tap"] = "bridge"
    diode_v: float = 0.9
    reservoir_f: float = 0.01
    regulator_v: float | None = None
    dropout_v: float = 2.0


class Resistor(Part, frozen=True, kw_only=True, tag="resistor"):
    """A resistor, dropper or shunt."""

    ohm: float
    rated_w: float | None = None
    tolerance_pct: float = 5.0


class Thermistor(Part, frozen=True, kw_only=True, tag="thermistor"):
    """An NTC thermistor, by catalogue type or by its figures; ``max_farad`` is the most that it may charge."""

    type: str | None = None
    r25_ohm: float | None = None
    beta_k: float | None = None
    dissipation_w_per_k: float | None = None
    tau_s: float | None = None
    max_a: float | None = None
    max_farad: float | None = None


class Relay(Part, frozen=True, kw_only=True, tag="relay"):
    """A relay: coil ``c1`` ``c2``, change-over contact ``com`` ``no`` ``nc``.

    Pull-in defaults to 75 % and drop-out to 10 % of the coil volts. ``travel_s`` is how long the contact is on its
    way, closed on neither side; ``contact_a`` the rating of the contact.
    """

    coil_v: float
    coil_ohm: float
    pull_in_v: float | None = None
    drop_out_v: float | None = None
    travel_s: float = 0.01
    contact_a: float | None = None


class Fuse(Part, frozen=True, kw_only=True, tag="fuse"):
    """A fuse link; resistance and melting I²t from the catalogue where not given."""

    rated_a: float
    cold_ohm: float | None = None
    melting_i2t_a2s: float | None = None
    speed: str = "time-lag"


class Capacitor(Part, frozen=True, kw_only=True, tag="capacitor"):
    """A capacitor."""

    farad: float


class Diode(Part, frozen=True, kw_only=True, tag="diode"):
    """A diode from anode ``a`` to cathode ``k``."""

    forward_v: float = 0.7


class Switch(Part, frozen=True, kw_only=True, tag="switch"):
    """A switch."""

    closed: bool = True


class Balance(Part, frozen=True, kw_only=True, tag="balance"):
    """A hum-balance control: ``ohm`` between ``1`` and ``2``, wiper ``w`` at 0 (end 1) to 1 (end 2)."""

    ohm: float
    wiper: float = 0.5


class Elevation(Part, frozen=True, kw_only=True, tag="elevation"):
    """A DC bias of the heater circuit: ``volts`` above chassis behind ``source_ohm``."""

    volts: float
    source_ohm: float = 10_000.0


class Chassis(Part, frozen=True, kw_only=True, tag="chassis"):
    """The reference: every chassis symbol is the same node."""


class Joint(Part, frozen=True, kw_only=True, tag="joint"):
    """A tag or splice."""


class Note(Part, frozen=True, kw_only=True, tag="note"):
    """Words on the sheet; ``at`` is their top left corner, ``width`` where lines are broken."""

    text: str
    width: float = 180.0


class Frame(Part, frozen=True, kw_only=True, tag="frame"):
    """A titled frame around a part of the drawing; ``at`` is its top left corner."""

    title: str = ""
    width: float = 400.0
    height: float = 240.0


AnyPart = (
    Tube
    | Lamp
    | Winding
    | DcSupply
    | Battery
    | MainsFeed
    | RectifiedSupply
    | Resistor
    | Thermistor
    | Relay
    | Fuse
    | Capacitor
    | Diode
    | Switch
    | Balance
    | Elevation
    | Chassis
    | Joint
    | Note
    | Frame
)


REMARK_KINDS = ("note", "frame")
"""Kinds that are for the reader only: no terminals, no turn, nothing that the circuit knows of."""

SUPPLY_KINDS = ("winding", "dc_supply", "battery", "mains_feed", "rectified_supply")


class Wire(
    msgspec.Struct,
    frozen=True,
    kw_only=True,
    forbid_unknown_fields=True,
    omit_defaults=True,
    rename={"start": "from", "end": "to"},
):
    """A wire between two terminals; without gauge or length it is an ideal strap.

    ``via`` are the corners that the user has set, from ``start`` to ``end``; the rest of the route is found.
    """

    id: str
    start: str
    end: str
    awg: int | None = None
    area_mm2: float | None = None
    length_m: float | None = None
    colour: str | None = None
    twist: str | None = None
    via: tuple[tuple[float, float], ...] = ()

    @property
    def is_strap(self) -> bool:
        """Whether the wire counts as an ideal strap."""
        return self.length_m is None or (self.awg is None and self.area_mm2 is None)


class Mains(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """The mains the sheet is designed for: nominal rms volts, its band in per cent, and frequency."""

    nominal_v: float = 230.0
    low_pct: float = -10.0
    high_pct: float = 10.0
    hz: float = 50.0

    @property
    def low_v(self) -> float:
        """Volts at the low end of the band."""
        return self.nominal_v * (100 + self.low_pct) / 100

    @property
    def high_v(self) -> float:
        """Volts at the high end of the band."""
        return self.nominal_v * (100 + self.high_pct) / 100


class Sheet(
    msgspec.Struct,
    frozen=True,
    kw_only=True,
    forbid_unknown_fields=True,
    omit_defaults=True,
    dict=True,
    eq=True,
):
    """The whole drawing. ``types`` are the user's own tube types that travel with it."""

    title: str = "Untitled"
    mains: Mains = Mains()
    ambient_c: float = 25.0
    parts: tuple[AnyPart, ...] = ()
    wires: tuple[Wire, ...] = ()
    types: tuple[TubeType, ...] = ()

    @cached_property
    def part_by_id(self) -> dict[str, AnyPart]:
        """Parts by id."""
        return {part.id: part for part in self.parts}

    @cached_property
    def wire_by_id(self) -> dict[str, Wire]:
        """Wires by id."""
        return {wire.id: wire for wire in self.wires}


def split_terminal(terminal: str) -> tuple[str, str]:
    """Part id and terminal name of ``V1.4``; the name is what follows the last dot."""
    part_id, _, name = terminal.rpartition(".")
    return part_id, name
