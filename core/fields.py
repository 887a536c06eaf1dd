"""The dimension and the plain label of every numeric field of the sheet and of a tube type."""

from __future__ import annotations

from core.dimension import Dimension
from core.sentences import Sentence, Text, sentence

_BY_DIMENSION: dict[Dimension, tuple[str, ...]] = {
    Dimension.VOLTS: (
        "rated_v",
        "cathode_v",
        "rated_mains_v",
        "set_v",
        "emf_v",
        "diode_v",
        "regulator_v",
        "dropout_v",
        "coil_v",
        "pull_in_v",
        "drop_out_v",
        "forward_v",
        "volts",
        "nominal_v",
        "input_v",
        "hk_positive_peak_v",
        "hk_positive_dc_v",
        "hk_negative_peak_v",
        "hk_negative_dc_v",
    ),
    Dimension.AMPS: (
        "rated_a",
        "limit_a",
        "min_load_a",
        "foldback_a",
        "max_a",
        "contact_a",
        "spread_low_a",
        "spread_high_a",
    ),
    Dimension.OHMS: ("ohm", "internal_ohm", "r25_ohm", "coil_ohm", "cold_ohm", "source_ohm", "hk_max_ohm"),
    Dimension.WATTS: ("rated_w",),
    Dimension.FARADS: ("farad", "reservoir_f", "max_farad"),
    Dimension.METRES: ("length_m",),
    Dimension.MM2: ("area_mm2",),
    Dimension.SECONDS: ("warmup_s", "trip_s", "retry_s", "tau_s", "travel_s"),
    Dimension.HERTZ: ("hz",),
    Dimension.CELSIUS: ("ambient_c",),
    Dimension.KELVIN: ("beta_k",),
    Dimension.PERCENT: (
        "regulation_pct",
        "tolerance_pct",
        "low_pct",
        "high_pct",
        "low_v_pct",
        "high_v_pct",
        "tolerance_a_pct",
    ),
    Dimension.W_PER_K: ("dissipation_w_per_k",),
    Dimension.A2S: ("melting_i2t_a2s",),
    Dimension.NUMBER: ("cold_ratio", "wiper", "awg", "width", "height"),
}

FIELD_DIMENSIONS: dict[str, Dimension] = {
    name: dimension for dimension, names in _BY_DIMENSION.items() for name in names
}

FIELD_LABELS: dict[str, Sentence] = {
    "type": sentence("type"),
    "pulled": sentence("pulled"),
    "closed": sentence("closed"),
    "rectifier": sentence("rectifier"),
    "speed": sentence("speed"),
    "text": sentence("text"),
    "title": sentence("title"),
    "rated_v": sentence("rated volts"),
    "rated_a": sentence("rated amperes"),
    "rated_w": sentence("rated watts"),
    "rated_mains_v": sentence("rated mains volts"),
    "cathode_v": sentence("cathode volts above chassis"),
    "cold_ratio": sentence("hot to cold ratio"),
    "warmup_s": sentence("warm-up time"),
    "regulation_pct": sentence("regulation"),
    "centre_tap": sentence("centre tap"),
    "set_v": sentence("set volts"),
    "limit_a": sentence("current limit"),
    "overload": sentence("in overload"),
    "trip_s": sentence("time to cut-out"),
    "retry_s": sentence("time to retry"),
    "min_load_a": sentence("minimum load"),
    "foldback_a": sentence("foldback current"),
    "input_v": sentence("volts before a linear regulator"),
    "emf_v": sentence("EMF"),
    "internal_ohm": sentence("internal resistance"),
    "diode_v": sentence("volts across a diode"),
    "reservoir_f": sentence("reservoir"),
    "regulator_v": sentence("regulated volts"),
    "dropout_v": sentence("dropout"),
    "ohm": sentence("resistance"),
    "tolerance_pct": sentence("tolerance"),
    "r25_ohm": sentence("resistance at 25 °C"),
    "beta_k": sentence("beta"),
    "dissipation_w_per_k": sentence("dissipation factor"),
    "tau_s": sentence("time constant"),
    "max_a": sentence("largest current"),
    "max_farad": sentence("largest capacitance"),
    "coil_v": sentence("coil volts"),
    "coil_ohm": sentence("coil resistance"),
    "pull_in_v": sentence("pull-in volts"),
    "drop_out_v": sentence("drop-out volts"),
    "travel_s": sentence("time of travel"),
    "contact_a": sentence("contact rating"),
    "cold_ohm": sentence("cold resistance"),
    "melting_i2t_a2s": sentence("melting I²t"),
    "farad": sentence("capacitance"),
    "forward_v": sentence("forward volts"),
    "wiper": sentence("wiper position"),
    "volts": sentence("volts above chassis"),
    "source_ohm": sentence("source resistance"),
    "awg": sentence("wire gauge"),
    "area_mm2": sentence("wire area"),
    "length_m": sentence("length"),
    "nominal_v": sentence("nominal mains volts"),
    "low_pct": sentence("low mains"),
    "high_pct": sentence("high mains"),
    "hz": sentence("mains frequency"),
    "ambient_c": sentence("ambient temperature"),
    "at": sentence("place on the sheet"),
    "mirror": sentence("mirrored"),
    "width": sentence("width on the sheet"),
    "height": sentence("height on the sheet"),
}

_UNIT_ENDINGS = frozenset(("v", "a", "w", "ohm", "f", "m", "mm2", "s", "hz", "c", "k", "pct", "a2s"))


def label_of(name: str) -> Text:
    """A field's label; a field without one of its own is its name without the unit."""
    if name in FIELD_LABELS:
        return FIELD_LABELS[name]
    words = name.split("_")
    return " ".join(words[:-1] if len(words) > 1 and words[-1] in _UNIT_ENDINGS else words)


def field_label(name: str) -> str:
    """A field's label in English."""
    return str(label_of(name))
