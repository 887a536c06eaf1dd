"""The dimension and the plain label of every numeric field of the sheet and of a tube type."""

from __future__ import annotations

from core.dimension import Dimension

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
        "spread_low_a",
        "spread_high_a",
    ),
    Dimension.OHMS: ("ohm", "internal_ohm", "r25_ohm", "coil_ohm", "cold_ohm", "source_ohm", "hk_max_ohm"),
    Dimension.WATTS: ("rated_w",),
    Dimension.FARADS: ("farad", "reservoir_f"),
    Dimension.METRES: ("length_m",),
    Dimension.MM2: ("area_mm2",),
    Dimension.SECONDS: ("warmup_s", "trip_s", "retry_s", "tau_s"),
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

FIELD_LABELS: dict[str, str] = {
    "rated_v": "rated volts",
    "rated_a": "rated amperes",
    "rated_w": "rated watts",
    "rated_mains_v": "rated mains volts",
    "cathode_v": "cathode volts above chassis",
    "cold_ratio": "hot to cold ratio",
    "warmup_s": "warm-up time",
    "regulation_pct": "regulation",
    "centre_tap": "centre tap",
    "set_v": "set volts",
    "limit_a": "current limit",
    "overload": "in overload",
    "trip_s": "time to cut-out",
    "retry_s": "time to retry",
    "min_load_a": "minimum load",
    "foldback_a": "foldback current",
    "emf_v": "EMF",
    "internal_ohm": "internal resistance",
    "diode_v": "volts across a diode",
    "reservoir_f": "reservoir",
    "regulator_v": "regulated volts",
    "dropout_v": "dropout",
    "ohm": "resistance",
    "tolerance_pct": "tolerance",
    "r25_ohm": "resistance at 25 °C",
    "beta_k": "beta",
    "dissipation_w_per_k": "dissipation factor",
    "tau_s": "time constant",
    "max_a": "largest current",
    "coil_v": "coil volts",
    "coil_ohm": "coil resistance",
    "pull_in_v": "pull-in volts",
    "drop_out_v": "drop-out volts",
    "cold_ohm": "cold resistance",
    "melting_i2t_a2s": "melting I²t",
    "farad": "capacitance",
    "forward_v": "forward volts",
    "wiper": "wiper position",
    "volts": "volts above chassis",
    "source_ohm": "source resistance",
    "awg": "wire gauge",
    "area_mm2": "wire area",
    "length_m": "length",
    "nominal_v": "nominal mains volts",
    "low_pct": "low mains",
    "high_pct": "high mains",
    "hz": "mains frequency",
    "ambient_c": "ambient temperature",
    "at": "place on the sheet",
    "mirror": "mirrored",
    "width": "width on the sheet",
    "height": "height on the sheet",
}

_UNIT_ENDINGS = frozenset(("v", "a", "w", "ohm", "f", "m", "mm2", "s", "hz", "c", "k", "pct", "a2s"))


def field_label(name: str) -> str:
    """A field's label on screen; a field without one of its own is its name without the unit."""
    if name in FIELD_LABELS:
        return FIELD_LABELS[name]
    words = name.split("_")
    return " ".join(words[:-1] if len(words) > 1 and words[-1] in _UNIT_ENDINGS else words)
