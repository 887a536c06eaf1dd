"""Sheets whose supplies, small parts or ties are wrong: by what is wrong, the rule and the title of the remedy."""

from __future__ import annotations

from core.sheet import (
    Balance,
    Fuse,
    Joint,
    MainsFeed,
    Relay,
    Resistor,
    Sheet,
    Thermistor,
    Winding,
)
from tests.core.mending_parts import DC, E1, FED, JOINED, T1, THREE_TIES, dc, tube, wired
from tests.core.rule_sheets import tube_type

SUPPLIES: dict[str, tuple[str, str, Sheet]] = {
    "rectifier on a shared line": (
        "shared-rectifier",
        "Fit a winding of 5.00 V, 1.50 A",
        wired(
            Winding(id="T1", rated_v=5.0, rated_a=5.0, regulation_pct=0.001),
            tube("XREC"),
            tube("XFIVE", "V2", 640),
            E1,
            wires="T1.a V2.4, T1.b V2.5, T1.b E1.e, V2.4 V1.4, V2.5 V1.5",
            types=(JOINED, tube_type("XFIVE", "4-5", 5.0, 0.3)),
        ),
    ),
    "overloaded winding": (
        "supply-overload",
        "Take a 1.00 A winding",
        wired(Winding(id="T1", rated_v=6.3, rated_a=0.5, regulation_pct=0.001), tube("EL84"), E1, wires=FED),
    ),
    "overloaded DC supply": (
        "supply-overload",
        "Take a 1.00 A supply",
        wired(dc(limit_a=0.6), tube("EL84"), E1, wires=DC),
    ),
    "stuck at its foldback": (
        "supply-overload",
        "Let it hold at its limit",
        wired(dc(limit_a=1.0, overload="foldback", foldback_a=0.02), tube("EL84"), E1, wires=DC),
    ),
    "little in hand": (
        "supply-margin",
        "Take a 1.00 A winding",
        wired(Winding(id="T1", rated_v=6.3, rated_a=0.85, regulation_pct=0.001), tube("EL84"), E1, wires=FED),
    ),
    "lightly loaded": (
        "supply-light-load",
        "Take a 1.00 A winding",
        wired(
            Winding(id="T1", rated_v=6.3, rated_a=5.0, regulation_pct=7.0),
            tube("EL84"),
            E1,
            wires=FED,
        ),
    ),
    "below the minimum load": (
        "supply-light-load",
        "Fit 24.0 Ω 5 W across P1",
        wired(dc(min_load_a=1.0), tube("EL84"), E1, wires=DC),
    ),
    "fuse too small": (
        "fuse-overload",
        "Fit 1.00 A",
        wired(
            dc(),
            tube("EL84"),
            Fuse(id="F1", rated_a=0.5, cold_ohm=0.01, at=(160, 0)),
            E1,
            wires="P1.- E1.e, P1.+ F1.1, F1.2 V1.4, V1.5 P1.-",
        ),
    ),
    "thermistor too small": (
        "thermistor-rating",
        "Take one for 1.00 A",
        wired(
            dc(6.9),
            tube("EL84"),
            Thermistor(
                id="RT1", r25_ohm=5.0, beta_k=3000.0, dissipation_w_per_k=0.02, max_a=0.5, at=(160, 0)
            ),
            E1,
            wires="P1.- E1.e, P1.+ RT1.1, RT1.2 V1.4, V1.5 P1.-",
        ),
    ),
    "wire too thin": (
        "wire-current",
        "Make w1 AWG 30",
        wired(T1, tube("EL84"), E1, wires=FED, awg=32, length_m=0.02),
    ),
    "wire too long": (
        "wire-drop",
        "Make w1 AWG 20",
        wired(dc(7.0), tube("EL84"), E1, wires="P1.+ V1.4, P1.- V1.5, P1.- E1.e", awg=28, length_m=2.5),
    ),
    "resistor too small": (
        "resistor-power",
        "Fit 3 W",
        wired(
            dc(8.0),
            tube("EL84"),
            Resistor(id="R1", ohm=2.2, rated_w=1.0, at=(160, 0)),
            E1,
            wires="P1.- E1.e, P1.+ R1.1, R1.2 V1.4, V1.5 P1.-",
        ),
    ),
    "balance control too small": (
        "resistor-power",
        "Take 47.0 Ω",
        wired(
            T1,
            tube("EL84"),
            Balance(id="RV1", ohm=20.0, at=(160, 0)),
            E1,
            wires="T1.a V1.4, T1.b V1.5, T1.a RV1.1, T1.b RV1.2, RV1.w E1.e",
        ),
    ),
    "coil for more volts": (
        "relay-never-pulls-in",
        "Take DG05 6 V",
        wired(
            dc(),
            tube("EL84"),
            Relay(id="K1", coil_v=12.0, coil_ohm=300.0, at=(160, 0)),
            E1,
            wires=f"{DC}, P1.+ K1.c1, P1.- K1.c2, P1.+ K1.com, K1.no V1.4",
        ),
    ),
    "live chassis": (
        "live-chassis",
        "Take w4 off the chassis",
        wired(
            MainsFeed(id="M1"),
            Resistor(id="R1", ohm=294.0, rated_w=1000.0, at=(160, 0)),
            tube("EL84"),
            E1,
            wires="M1.L R1.1, R1.2 V1.4, V1.5 M1.N, M1.N E1.e",
        ),
    ),
    "floating winding": (
        "no-chassis-reference",
        "Fit 2 × 100 Ω 0.25 W to the chassis",
        wired(T1, tube("EL84"), wires="T1.a V1.4, T1.b V1.5", awg=20, length_m=0.1),
    ),
    "floating tap": (
        "no-chassis-reference",
        "Wire T1.ct to the chassis",
        wired(
            Winding(id="T1", rated_v=6.3, rated_a=2.0, regulation_pct=0.001, centre_tap=True),
            tube("EL84"),
            E1,
            wires="T1.a V1.4, T1.b V1.5",
        ),
    ),
    "floating DC": (
        "no-chassis-reference",
        "Wire P1.- to the chassis",
        wired(dc(), tube("EL84"), wires="P1.+ V1.4, P1.- V1.5"),
    ),
    "two ties": (
        "second-reference",
        "Take out w4",
        wired(T1, tube("EL84"), E1, wires=f"{FED}, V1.5 E1.e"),
    ),
    "two ties, one through resistors": (
        "second-reference",
        "Take out w3",
        wired(
            T1,
            tube("EL84"),
            E1,
            Resistor(id="R1", ohm=100.0, rated_w=0.5, at=(160, 100)),
            Resistor(id="R2", ohm=100.0, rated_w=0.5, at=(160, 200)),
            wires=f"{FED}, T1.a R1.1, R1.2 E1.e, T1.b R2.1, R2.2 E1.e",
        ),
    ),
    "three ties": (
        "second-reference",
        "Keep w3 only",
        wired(
            T1,
            tube("EL84"),
            tube("EL84", "V2", 640),
            E1,
            wires=THREE_TIES,
        ),
    ),
    "rating that cannot be used": (
        "override-unused",
        "Take the rating off",
        wired(dc(12.6), tube("ECC83", rated_a=0.2), E1, wires=DC),
    ),
    "open end": (
        "open-end",
        "Take out w4",
        wired(T1, tube("EL84"), Joint(id="J1", at=(480, 0)), E1, wires=f"{FED}, V1.4 J1.j"),
    ),
    "resistor not wired": (
        "open-end",
        "Take out R1",
        wired(T1, tube("EL84"), Resistor(id="R1", ohm=10.0, at=(480, 0)), E1, wires=FED),
    ),
    "unknown type": (
        "type-unknown",
        "Make it ECC83",
        wired(dc(12.6), tube("ECC83x"), E1, wires=DC),
    ),
    "short circuit": (
        "short-circuit",
        "Take out w4",
        wired(T1, tube("EL84"), E1, wires=f"{FED}, V1.4 V1.5"),
    ),
}
