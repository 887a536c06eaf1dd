"""Heater strings of mains receivers, each run as a sheet through the whole program.

RCA Receiving Tube Manual RC-11 to RC-15, "Filament and Heater Power Supply" (rules and examples as remembered); a
restorers' page on ballast tubes (6v6.co.uk); cool386.com on dropper resistors, parts 1 and 5; vintage-radio.com on
droppers; frihu.com on bench supplies; a Wireless World item on the 35Z5GT (r-type.org).
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest

from core.assess import Assessment
from core.sheet import AnyPart, Battery, DcSupply, Lamp, Mains, MainsFeed, Resistor, Tube

US_MAINS = Mains(nominal_v=117.0, low_pct=(105 / 117 - 1) * 100, high_pct=(129 / 117 - 1) * 100, hz=60.0)
FIVE_TUBES = (
    ("6SA7", "2", "7"),
    ("6SK7", "2", "7"),
    ("6SQ7", "7", "8"),
    ("25L6GT", "2", "7"),
    ("25Z6GT", "2", "7"),
)


def five_tube_set(ohm: float) -> tuple[list[AnyPart], str]:
    """Dropper and heaters in a row across the mains."""
    tubes = [Tube(id=f"V{n}", type=name) for n, (name, _, _) in enumerate(FIVE_TUBES)]
    ends = [("R1.1", "R1.2"), *((f"V{n}.{a}", f"V{n}.{b}") for n, (_, a, b) in enumerate(FIVE_TUBES))]
    straps = [f"M1.L={ends[0][0]}", *(f"{one[1]}={two[0]}" for one, two in pairwise(ends))]
    return [MainsFeed(id="M1"), Resistor(id="R1", ohm=ohm), *tubes], " ".join(
        [*straps, f"{ends[-1][1]}=M1.N"]
    )


def string_volts(answer: Assessment, condition: str) -> float:
    return sum(heater.v for sections in answer.points[condition].heaters.values() for heater in sections)


def test_dropper_of_a_five_tube_set(solved: Callable[..., Assessment]) -> None:
    """(117 - 68.9) V / 0.3 A = 160.3 ohm, 14.43 W; the heaters stand at their ratings exactly."""
    ohm = (117.0 - 68.9) / 0.3
    assert ohm == pytest.approx(160.3, abs=0.05)
    parts, straps = five_tube_set(ohm)
    answer = solved(parts, straps, mains=US_MAINS)
    point = answer.points["nominal"]
    assert string_volts(answer, "nominal") == pytest.approx(68.9, rel=1e-12)
    assert point.branches["R1"].v == pytest.approx(48.1, rel=1e-12)
    assert point.branches["R1"].w == pytest.approx(14.43, rel=1e-9)
    assert point.supplies["M1"].a == pytest.approx(0.3, rel=1e-12)
    assert answer.strings == (("V0:2-7", "V1:2-7", "V2:7-8", "V3:2-7", "V4:2-7"),)


def test_the_printed_160_ohm(solved: Callable[..., Assessment]) -> None:
    """RCA prints 160 ohm and 14.4 W for the same set: rounded, hence 0.3 %."""
    parts, straps = five_tube_set(160.0)
    point = solved(parts, straps, mains=US_MAINS).points["nominal"]
    assert point.branches["R1"].w == pytest.approx(14.4, rel=3e-3)
    assert point.supplies["M1"].a == pytest.approx(0.3, rel=1.5e-3)


@pytest.mark.parametrize(
    ("condition", "line_v", "steep_v", "flat_v"),
    [("low mains", 105, 60.301, 60.507), ("high mains", 129, 77.416, 77.636)],
)
def test_the_string_on_a_varying_line(
    condition: str, line_v: float, steep_v: float, flat_v: float, solved: Callable[..., Assessment]
) -> None:
    """Power laws with exponents 0.55 and 0.60 give the two figures; ours of 0.54 lies just outside the former.

    0.1 V is half the distance between the two, for an exponent that is off by a fifth as much.
    """
    parts, straps = five_tube_set((117.0 - 68.9) / 0.3)
    answer = solved(parts, straps, mains=US_MAINS)
    assert answer.points[condition].condition.mains_v == pytest.approx(line_v)
    at_055 = steep_v if condition == "low mains" else flat_v
    assert string_volts(answer, condition) == pytest.approx(at_055, abs=0.1)
    share = string_volts(answer, condition) / 68.9 - 1
    assert abs(share) > abs(line_v / 117.0 - 1), "a string on a resistor sees more change than the line"


def test_battery_set_on_three_volts(solved: Callable[..., Assessment]) -> None:
    """RCA RC-11: three 32s, two 30s and two 31s (2 V) from 3 V: 0.56 A, so 1 V / 0.56 A = 1.8 ohm, 0.56 W."""
    filaments = [Lamp(id=f"H{n}", rated_v=2.0, rated_a=a) for n, a in enumerate([0.06] * 5 + [0.13] * 2)]
    straps = "B1.+=R1.1 " + " ".join(f"R1.2=H{n}.1 H{n}.2=B1.-" for n in range(7))
    parts = [Battery(id="B1", emf_v=3.0), Resistor(id="R1", ohm=1 / 0.56), *filaments]
    point = solved(parts, straps).points["nominal"]
    assert point.branches["R1"].a == pytest.approx(0.56, rel=1e-12)
    assert point.branches["R1"].w == pytest.approx(0.56, rel=1e-12)
    assert [heater.v for (heater,) in point.heaters.values()] == pytest.approx([2.0] * 7, rel=1e-12)
    assert point.branches["R1"].v / point.branches["R1"].a == pytest.approx(1.8, abs=0.05)


def test_shunt_across_a_small_tube(solved: Callable[..., Assessment]) -> None:
    """RCA: 6.3 V / (0.3 - 0.15) A = 42 ohm, 0.945 W, beside a 0.15 A tube in a 0.3 A string."""
    parts = [
        Battery(id="B1", emf_v=12.6),
        Tube(id="V1", type="6SK7"),
        Tube(id="V2", type="6SK7", rated_a=0.15),
        Resistor(id="R1", ohm=42.0),
    ]
    answer = solved(parts, "B1.+=V1.2 V1.7=V2.2 V2.7=B1.- R1.1=V2.2 R1.2=V2.7")
    point = answer.points["nominal"]
    assert point.branches["R1"].w == pytest.approx(0.945, rel=1e-9)
    assert point.heaters["V1"][0].a == pytest.approx(0.3, rel=1e-12)
    assert point.heaters["V2"][0].a == pytest.approx(0.15, rel=1e-12)
    assert answer.strings == (), "the shunted tube does not carry the current of the string"


@pytest.mark.parametrize(
    ("mains_v", "string_v", "string_a", "ohm", "watts"),
    [(240.0, 116.6, 0.1, 1234.0, 12.3), (240.0, 117.0, 0.1, 1230.0, 12.3), (200.0, 54.0, 0.3, 486.7, 43.8)],
)
def test_droppers_for_european_mains(
    mains_v: float,
    string_v: float,
    string_a: float,
    ohm: float,
    watts: float,
    solved: Callable[..., Assessment],
) -> None:
    """vintage-radio.com prints 1230 ohm for 116.6 V, cool386.com 1230 ohm for 117 V, frihu.com 486.7 ohm, 44 W
    for two 27 V tubes; the exact resistance to four figures, the power to three."""
    needed = (mains_v - string_v) / string_a
    assert needed == pytest.approx(ohm, rel=2e-4)
    parts = [
        MainsFeed(id="M1"),
        Resistor(id="R1", ohm=needed),
        Tube(id="V1", type="PL500", rated_v=string_v / 2, rated_a=string_a),
        Tube(id="V2", type="PL500", rated_v=string_v / 2, rated_a=string_a),
    ]
    mains = Mains(nominal_v=mains_v)
    point = solved(parts, "M1.L=R1.1 R1.2=V1.4 V1.5=V2.4 V2.5=M1.N", mains=mains).points["nominal"]
    assert point.branches["R1"].w == pytest.approx(watts, rel=5e-3)
    assert point.heaters["V1"][0].v == pytest.approx(string_v / 2, rel=1e-12)


@pytest.mark.parametrize(("shunt_ohm", "lamp_v"), [(126.0, 6.30), (39.0, 4.05)])
def test_dial_lamp_in_a_chain(shunt_ohm: float, lamp_v: float, solved: Callable[..., Assessment]) -> None:
    """cool386.com part 5: a 300 mA chain of 45.1 V with a 6.3 V 250 mA lamp: 126 ohm by Ohm's law, at most 39 in
    practice. Running volts on 117 V by a lamp exponent of 0.55; within 3 %, as lamps differ by that."""
    parts = [
        MainsFeed(id="M1"),
        Resistor(id="R1", ohm=(117.0 - 45.1 - 6.3) / 0.3),
        Tube(id="V1", type="25L6GT", rated_v=45.1, rated_a=0.3),
        Lamp(id="H1", rated_v=6.3, rated_a=0.25),
        Resistor(id="R2", ohm=shunt_ohm),
    ]
    straps = "M1.L=R1.1 R1.2=V1.2 V1.7=H1.1 H1.2=M1.N R2.1=H1.1 R2.2=H1.2"
    point = solved(parts, straps, mains=US_MAINS).points["nominal"]
    assert point.heaters["H1"][0].v == pytest.approx(lamp_v, rel=0.03)


class TestTappedRectifier:
    """35Z5GT: 35 V, 0.15 A, of which 7.5 V between pin 2 and the tap, pin 3; a #47 lamp across that section."""

    def test_without_lamp(self, solved: Callable[..., Assessment]) -> None:
        """150 mA in both sections, 50.0 and 183.3 ohm: exact."""
        parts = [Battery(id="B1", emf_v=35.0), Tube(id="V1", type="35Z5GT")]
        answer = solved(parts, "B1.+=V1.2 V1.7=B1.-")
        short, long = answer.points["nominal"].heaters["V1"]
        assert (short.a, long.a) == pytest.approx((0.15, 0.15), rel=1e-12)
        assert (short.v / short.a, long.v / long.a) == pytest.approx((50.0, 27.5 / 0.15), rel=1e-12)
        assert answer.strings == (("V1:2-3", "V1:3-7"),)

    def test_heater_current_alone(self, solved: Callable[..., Assessment]) -> None:
        """150 mA divide; the printed 110 and 90 mA also carry about 50 mA of plate current, so this is less."""
        parts = [
            DcSupply(id="U1", set_v=40.0, limit_a=0.15),
            Tube(id="V1", type="35Z5GT"),
            Lamp(id="H1", type="#47"),
        ]
        answer = solved(parts, "U1.+=V1.2 V1.7=U1.- H1.1=V1.2 H1.2=V1.3")
        point = answer.points["nominal"]
        section, lamp = point.heaters["V1"][0], point.heaters["H1"][0]
        assert section.a + lamp.a == pytest.approx(0.15, rel=1e-9)
        assert section.a < 0.09
        assert lamp.a < 0.110
        assert answer.strings == ()

    def test_with_plate_current(self, solved: Callable[..., Assessment]) -> None:
        """200 mA through lamp and section together: about 110 and 90 mA.

        Within 8 %: "about" in print, and the plate current is pulses in truth, not the DC fed here.
        """
        parts = [
            DcSupply(id="U1", set_v=40.0, limit_a=0.2),
            Tube(id="V1", type="35Z5GT"),
            Lamp(id="H1", type="#47"),
        ]
        point = solved(parts, "U1.+=V1.2 V1.3=U1.- H1.1=V1.2 H1.2=V1.3").points["nominal"]
        section, lamp = point.heaters["V1"][0], point.heaters["H1"][0]
        assert lamp.a == pytest.approx(0.110, rel=0.08)
        assert section.a == pytest.approx(0.090, rel=0.08)
        assert lamp.a / 0.15 == pytest.approx(2 / 3, rel=0.08), (
            "the lamp runs at about two thirds of its rating"
        )

    def test_burnt_out_lamp(self, solved: Callable[..., Assessment]) -> None:
        """The section alone then carries everything: about double what it had (Nuts & Volts, on the 35W4)."""
        parts = [DcSupply(id="U1", set_v=40.0, limit_a=0.2), Tube(id="V1", type="35W4")]
        section = solved(parts, "U1.+=V1.4 V1.6=U1.-").points["nominal"].heaters["V1"][0]
        assert section.a / 0.090 == pytest.approx(2.0, rel=0.15)
        assert section.deviation_pct > 50
