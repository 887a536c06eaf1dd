"""Sheets whose pins are wrongly wired or not at all: by what is wrong, the rule and the title of the remedy."""

from __future__ import annotations

from core.sheet import (
    Capacitor,
    Diode,
    Lamp,
    Relay,
    Sheet,
    Switch,
)
from tests.core.mending_parts import DC, E1, FED, T1, T12, dc, tube, wired

PINS: dict[str, tuple[str, str, Sheet]] = {
    "strap on half": (
        "wrong-strap",
        "Strap 4 to 5, feed pin 9",
        wired(dc(), tube("ECC83"), E1, wires=DC, awg=20, length_m=0.1),
    ),
    "strap on double": (
        "wrong-strap",
        "Feed pins 4 and 5, open pin 9",
        wired(dc(12.6), tube("ECC83"), E1, wires="P1.- E1.e, P1.+ V1.4, P1.- V1.9, V1.4 V1.5"),
    ),
    "strap that shorts": (
        "wrong-strap",
        "Take out w5",
        wired(
            T12,
            tube("EL84"),
            tube("EL84", "V2", 640),
            E1,
            wires="T1.a V1.4, T1.b E1.e, V1.5 V2.4, V2.5 T1.b, V1.4 V1.5",
        ),
    ),
    "half heated": (
        "half-heated",
        "Strap 4 to 5",
        wired(dc(), tube("ECC83"), E1, wires="P1.- E1.e, P1.+ V1.4, P1.- V1.9"),
    ),
    "half heated at twice the volts": (
        "half-heated",
        "Move pin 9 to pin 5",
        wired(dc(12.6), tube("ECC83"), E1, wires="P1.- E1.e, P1.+ V1.4, P1.- V1.9"),
    ),
    "half shorted": (
        "half-heated",
        "Take out w4",
        wired(dc(12.6), tube("ECC83"), E1, wires="P1.- E1.e, P1.+ V1.4, P1.- V1.5, V1.9 V1.5"),
    ),
    "no wire": (
        "not-heated",
        "Wire pin 4 to T1.a and pin 5 to T1.b",
        wired(T1, tube("EL84"), E1, wires="T1.b E1.e"),
    ),
    "no wire on halves": (
        "not-heated",
        "Strap 4 to 5, wire pin 4 to T1.a and pin 9 to T1.b",
        wired(T1, tube("ECC83"), E1, wires="T1.b E1.e"),
    ),
    "one wire": (
        "not-heated",
        "Wire pin 5 to V1.5",
        wired(T1, tube("EL84"), tube("EL84", "V2", 480), E1, wires=f"{FED}, V1.4 V2.4"),
    ),
    "one wire of a lamp": (
        "not-heated",
        "Wire pin 2 to T1.b",
        wired(T1, Lamp(id="H1", rated_v=6.3, rated_a=0.15, at=(160, 0)), E1, wires="T1.a H1.1, T1.b E1.e"),
    ),
    "open switch": (
        "not-heated",
        "Close S1",
        wired(
            T1,
            tube("EL84"),
            Switch(id="S1", closed=False, at=(160, 0)),
            E1,
            wires="T1.a S1.1, S1.2 V1.4, T1.b V1.5, T1.b E1.e",
        ),
    ),
    "switch across the heater": (
        "not-heated",
        "Open S1",
        wired(
            T12,
            tube("EL84"),
            tube("EL84", "V2", 640),
            Switch(id="S1", at=(160, 200)),
            E1,
            wires="T1.a V1.4, V1.5 V2.4, V2.5 T1.b, T1.b E1.e, V1.4 S1.1, V1.5 S1.2",
        ),
    ),
    "pulled": (
        "not-heated",
        "Put V2 back",
        wired(
            dc(12.6),
            tube("EL84"),
            tube("EL84", "V2", 640, pulled=True),
            E1,
            wires="P1.- E1.e, P1.+ V1.4, V1.5 V2.4, V2.5 P1.-",
        ),
    ),
    "diode the wrong way": (
        "not-heated",
        "Turn D1 round",
        wired(
            dc(7.0),
            tube("EL84"),
            Diode(id="D1", at=(160, 0)),
            E1,
            wires="P1.- E1.e, P1.+ D1.k, D1.a V1.4, V1.5 P1.-",
        ),
    ),
    "capacitor in the loop": (
        "not-heated",
        "Bridge C1",
        wired(
            dc(),
            tube("EL84"),
            Capacitor(id="C1", farad=1e-6, at=(160, 0)),
            E1,
            wires="P1.- E1.e, P1.+ C1.1, C1.2 V1.4, V1.5 P1.-",
        ),
    ),
    "the other contact": (
        "not-heated",
        "Move K1.nc to K1.no",
        wired(
            dc(),
            tube("EL84"),
            Relay(id="K1", coil_v=6.0, coil_ohm=100.0, at=(160, 0)),
            E1,
            wires="P1.- E1.e, P1.+ K1.com, K1.nc V1.4, V1.5 P1.-, P1.+ K1.c1, P1.- K1.c2",
        ),
    ),
    "pin nearby": (
        "pin-not-heater",
        "Move pin 3 to pin 4",
        wired(T1, tube("EL84"), E1, wires="T1.a V1.3, T1.b V1.5, T1.b E1.e"),
    ),
    "mirrored pins": (
        "pin-not-heater",
        "Move pin 6 to pin 4",
        wired(T1, tube("EL84"), E1, wires="T1.a V1.6, T1.b V1.5, T1.b E1.e"),
    ),
    "wire on pin 9": (
        "pin-not-heater",
        "Take out w4",
        wired(T1, tube("EL84"), E1, wires=f"{FED}, T1.b V1.9"),
    ),
}
