"""Sheets whose heaters get wrong volts or currents: by what is wrong, the rule and the title of the remedy."""

from __future__ import annotations

from core.sheet import (
    Battery,
    Elevation,
    MainsFeed,
    Resistor,
    Sheet,
    Winding,
)
from tests.core.mending_parts import DC, E1, FED, LOW_HK, T1, dc, tube, wired
from tests.core.rule_sheets import tube_type

VOLTS: dict[str, tuple[str, str, Sheet]] = {
    "unbalanced": (
        "string-balance",
        "Shunt V1 by 82.0 Ω 5 W",
        wired(
            dc(25.2),
            tube("XA"),
            tube("XB", "V2", 640),
            E1,
            wires="P1.- E1.e, P1.+ V1.4, V1.5 V2.4, V2.5 P1.-",
            types=(tube_type("XA", "4-5", 12.6, 0.15), tube_type("XB", "4-5", 12.6, 0.3)),
        ),
    ),
    "three currents": (
        "string-balance",
        "Fit shunts across V1 and V2",
        wired(
            dc(37.8),
            tube("XA"),
            tube("XB", "V2", 640),
            tube("XC", "V3", 960),
            E1,
            wires="P1.- E1.e, P1.+ V1.4, V1.5 V2.4, V2.5 V3.4, V3.5 P1.-",
            types=(
                tube_type("XA", "4-5", 12.6, 0.15),
                tube_type("XB", "4-5", 12.6, 0.2),
                tube_type("XC", "4-5", 12.6, 0.3),
            ),
        ),
    ),
    "volts of a DC supply": (
        "heater-voltage",
        "Set P1 to 6.30 V",
        wired(dc(9.0), tube("EL84"), E1, wires=DC),
    ),
    "more volts from a DC supply": (
        "heater-voltage",
        "Set P1 to 6.30 V",
        wired(dc(5.0), tube("EL84"), E1, wires=DC),
    ),
    "resistor in each leg": (
        "heater-voltage",
        "Fit 1.10 Ω 2 W in each leg",
        wired(
            Winding(id="T1", rated_v=8.0, rated_a=2.0, regulation_pct=0.001),
            tube("EL84"),
            E1,
            wires=FED,
            awg=20,
            length_m=0.1,
        ),
    ),
    "resistor in one leg": (
        "heater-voltage",
        "Fit 2.20 Ω 3 W at T1.a",
        wired(
            Winding(id="T1", rated_v=16.0, rated_a=2.0, regulation_pct=0.001, centre_tap=True),
            tube("EL84"),
            E1,
            wires="T1.a V1.4, T1.ct V1.5, T1.ct E1.e",
        ),
    ),
    "resistor at a battery": (
        "heater-voltage",
        "Fit 2.20 Ω 3 W at P1.+",
        wired(Battery(id="P1", emf_v=8.0, internal_ohm=0.01), tube("EL84"), E1, wires=DC),
    ),
    "resistor of one heater": (
        "heater-voltage",
        "Fit 43.0 Ω 10 W at V2.4",
        wired(
            dc(19.0),
            tube("XA"),
            tube("XB", "V2", 640),
            E1,
            wires="P1.- E1.e, P1.+ V1.4, P1.- V1.5, V1.4 V2.4, V1.5 V2.5",
            types=(tube_type("XA", "4-5", 19.0, 0.3), tube_type("XB", "4-5", 6.3, 0.3)),
        ),
    ),
    "too much in series": (
        "heater-voltage",
        "Make R1 13.0 Ω 50 W",
        wired(
            dc(19.0),
            tube("XA"),
            tube("XB", "V2", 640),
            Resistor(id="R1", ohm=24.0, rated_w=50.0, at=(480, 200)),
            E1,
            wires="P1.- E1.e, P1.+ V1.4, P1.- V1.5, V1.4 R1.1, R1.2 V2.4, V1.5 V2.5",
            types=(tube_type("XA", "4-5", 19.0, 0.3), tube_type("XB", "4-5", 6.3, 1.0)),
        ),
    ),
    "wires that lose": (
        "heater-voltage",
        "AWG 16 throughout",
        wired(dc(), tube("EL84"), E1, wires=DC, awg=28, length_m=2.5),
    ),
    "dropper of a mains string": (
        "heater-voltage",
        "Make R1 1.60 kΩ 50 W",
        wired(
            MainsFeed(id="M1"),
            Resistor(id="R1", ohm=2200.0, rated_w=50.0, at=(160, 0)),
            tube("XLONG"),
            wires="M1.L R1.1, R1.2 V1.4, V1.5 M1.N",
            types=(tube_type("XLONG", "4-5", 63.0, 0.1),),
        ),
    ),
    "string current": (
        "heater-current",
        "Make R1 62.0 Ω 15 W",
        wired(
            dc(63.0),
            tube("XA"),
            tube("XB", "V2", 640),
            Resistor(id="R1", ohm=30.0, rated_w=50.0, at=(160, 0)),
            E1,
            wires="P1.- E1.e, P1.+ R1.1, R1.2 V1.4, V1.5 V2.4, V2.5 P1.-",
            types=(
                tube_type("XA", "4-5", 12.6, 0.3, rating_class="current"),
                tube_type("XB", "4-5", 32.0, 0.3, rating_class="current"),
            ),
        ),
    ),
    "cathode far above": (
        "heater-cathode-voltage",
        "Lift it to 100 V",
        wired(T1, tube("XHK", cathode_v=100.0), E1, wires=FED, types=(LOW_HK,)),
    ),
    "lift too low": (
        "heater-cathode-voltage",
        "Lift it to 100 V",
        wired(
            T1,
            tube("XHK", cathode_v=100.0),
            Elevation(id="EL1", volts=20.0, at=(0, 160)),
            wires="T1.a V1.4, T1.b V1.5, T1.b EL1.e",
            types=(LOW_HK,),
        ),
    ),
}
