"""Sheets that show a finding whose remedy is exact: by rule, with the title of the remedy that is tried."""

from __future__ import annotations

from core.catalogue.types import TubeType
from core.sheet import (
    AnyPart,
    Balance,
    Battery,
    Capacitor,
    Chassis,
    DcSupply,
    Diode,
    Elevation,
    Fuse,
    Joint,
    Lamp,
    Mains,
    MainsFeed,
    Relay,
    Resistor,
    Sheet,
    Switch,
    Thermistor,
    Tube,
    Winding,
    Wire,
)
from tests.core.rule_sheets import sheet, tube_type

E1 = Chassis(id="E1", at=(0, 160))
T1 = Winding(id="T1", rated_v=6.3, rated_a=2.0, regulation_pct=0.001)
T12 = Winding(id="T1", rated_v=12.6, rated_a=2.0, regulation_pct=0.001)
FED = "T1.a V1.4, T1.b V1.5, T1.b E1.e"
THREE_TIES = f"{FED}, V1.5 E1.e, V2.5 E1.e, V1.4 V2.4, V1.5 V2.5"
DC = "P1.- E1.e, P1.+ V1.4, P1.- V1.5"


def dc(v: float = 6.3, limit_a: float = 10.0, **more: object) -> DcSupply:
    return DcSupply(id="P1", set_v=v, limit_a=limit_a, **more)  # type: ignore[arg-type]


def tube(name: str, part_id: str = "V1", x: float = 320.0, **more: object) -> Tube:
    return Tube(id=part_id, type=name, at=(x, 0.0), **more)  # type: ignore[arg-type]


def wired(
    *parts: AnyPart, wires: str, types: tuple[TubeType, ...] = (), mains: Mains | None = None, **size: float
) -> Sheet:
    """A sheet with straps, or with wires of one size."""
    made = tuple(
        Wire(id=f"w{number}", start=pair.split()[0], end=pair.split()[1], **size)  # type: ignore[arg-type]
        for number, pair in enumerate(wires.split(","), 1)
    )
    return sheet(*parts, wires=made, types=types, **({} if mains is None else {"mains": mains}))


_LOW_HK = tube_type("XHK", "4-5", 6.3, 0.3, hk_negative_peak_v=50.0, hk_positive_peak_v=50.0)
_JOINED = tube_type("XREC", "4-5", 5.0, 1.0, heating="direct", description="rectifier")

SHEETS: dict[str, tuple[str, str, Sheet]] = {
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
        wired(T1, tube("XHK", cathode_v=100.0), E1, wires=FED, types=(_LOW_HK,)),
    ),
    "lift too low": (
        "heater-cathode-voltage",
        "Lift it to 100 V",
        wired(
            T1,
            tube("XHK", cathode_v=100.0),
            Elevation(id="EL1", volts=20.0, at=(0, 160)),
            wires="T1.a V1.4, T1.b V1.5, T1.b EL1.e",
            types=(_LOW_HK,),
        ),
    ),
    "rectifier on a shared line": (
        "shared-rectifier",
        "Fit a winding of 5.00 V, 1.50 A",
        wired(
            Winding(id="T1", rated_v=5.0, rated_a=5.0, regulation_pct=0.001),
            tube("XREC"),
            tube("XFIVE", "V2", 640),
            E1,
            wires="T1.a V2.4, T1.b V2.5, T1.b E1.e, V2.4 V1.4, V2.5 V1.5",
            types=(_JOINED, tube_type("XFIVE", "4-5", 5.0, 0.3)),
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
