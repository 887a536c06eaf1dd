"""What the catalogue knows of a tube, lamp, wire, thermistor, relay or fuse type.

Volts are rms or DC volts, amperes likewise; every value's source and certainty is kept beside it.
"""

from __future__ import annotations

from typing import Literal

import msgspec

from core.sentences import Text, sentence

Status = Literal["seen", "second-hand", "disputed", "memory"]
RatingClass = Literal["voltage", "current", "both"]
Heating = Literal["indirect", "direct"]


_NO_SHEET = sentence("general knowledge, no sheet at hand")


def source_words(source: str) -> Text:
    """A source as it is cited; where there is none, that in words that can be translated."""
    return _NO_SHEET if source == _NO_SHEET.template else source


class Provenance(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """Where one value comes from, and how sure it is. ``field`` is as in the CSV, e.g. ``4-9 volts``."""

    field: str
    source: str
    status: Status
    note: str = ""


class Section(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """One heater section between two pins, rated ``rated_v`` volts at ``rated_a`` amperes."""

    pins: tuple[str, str]
    rated_v: float
    rated_a: float

    @property
    def name(self) -> str:
        """The section's name, its two pins: ``4-9``."""
        return f"{self.pins[0]}-{self.pins[1]}"


class TubeType(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True, omit_defaults=True):
    """A tube type as far as its heater goes.

    Optional numbers are None where nothing is published. Heater-cathode limits are four figures: peak and DC
    part, for the heater positive and the heater negative of the cathode. ``low_v_pct`` is zero or negative,
    ``high_v_pct`` zero or positive: the limits of the working volts as deviations from the rating.
    """

    designation: str
    sections: tuple[Section, ...]
    equivalents: tuple[str, ...] = ()
    description: str = ""
    base: str = "generic"
    heating: Heating = "indirect"
    cathode_joined: bool = False
    rating_class: RatingClass = "voltage"
    low_v_pct: float | None = None
    high_v_pct: float | None = None
    tolerance_a_pct: float | None = None
    spread_low_a: float | None = None
    spread_high_a: float | None = None
    hk_positive_peak_v: float | None = None
    hk_positive_dc_v: float | None = None
    hk_negative_peak_v: float | None = None
    hk_negative_dc_v: float | None = None
    hk_max_ohm: float | None = None
    warmup_s: float | None = None
    controlled_warmup: bool = False
    cold_ratio: float | None = None
    tap_role: Literal["centre", "lamp", ""] = ""
    provenance: tuple[Provenance, ...] = ()

    @property
    def heater_pins(self) -> tuple[str, ...]:
        """Every pin that is an end or tap of the heater, in the order of the sections."""
        return tuple(dict.fromkeys(pin for section in self.sections for pin in section.pins))

    def status_of(self, field: str) -> Status:
        """How sure the value of ``field`` is; ``memory`` where the catalogue does not say."""
        for entry in self.provenance:
            if entry.field == field:
                return entry.status
        return "memory"

    def source_of(self, field: str) -> Text:
        """The source of the value of ``field``, and that it is unverified if so; empty where there is none."""
        for entry in self.provenance:
            if entry.field == field:
                source = source_words(entry.source)
                return (
                    sentence("{source} (unverified)", source=source) if entry.status == "memory" else source
                )
        return ""


class LampType(msgspec.Struct, frozen=True, kw_only=True):
    """A panel lamp: ``rated_a`` at ``rated_v``; ``cold_ratio`` is hot over cold resistance."""

    designation: str
    rated_v: float
    rated_a: float
    base: str = ""
    equivalents: tuple[str, ...] = ()
    provenance: tuple[Provenance, ...] = ()


class ThermistorType(msgspec.Struct, frozen=True, kw_only=True):
    """An inrush-limiting NTC thermistor: beta law with self-heating."""

    designation: str
    r25_ohm: float
    beta_k: float
    dissipation_w_per_k: float
    tau_s: float
    max_a: float
    provenance: tuple[Provenance, ...] = ()


class RelayType(msgspec.Struct, frozen=True, kw_only=True):
    """A small relay: coil volts and ohms, guaranteed pull-in and drop-out volts, contact rating."""

    designation: str
    coil_v: float
    coil_ohm: float
    pull_in_v: float
    drop_out_v: float
    max_v: float | None = None
    contact_a: float | None = None
    provenance: tuple[Provenance, ...] = ()


class FuseType(msgspec.Struct, frozen=True, kw_only=True):
    """A fuse link: cold resistance and melting I²t by rated current."""

    designation: str
    rated_a: float
    cold_ohm: float
    melting_i2t_a2s: float
    speed: str
    provenance: tuple[Provenance, ...] = ()
