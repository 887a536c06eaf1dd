"""Wires that are too thin, resistors that are too small, ends that lead nowhere."""

from __future__ import annotations

import pytest

from core.catalogue.wire import chassis_limit_a, ohm_per_m
from core.sheet import Chassis, Elevation, Joint, Relay, Resistor, Sheet, Switch, Tube, Wire
from tests.core.rule_sheets import findings, on_dc, rules, sheet, straps, tube_type, winding

TUBE = Tube(id="V1", type="X1")


def through(wire: Wire, a: float, v: float = 6.3) -> Sheet:
    base = on_dc(v, TUBE, wires="P1.- V1.5", types=(tube_type(a=a, v=v),), limit_a=100)
    return sheet(*base.parts, wires=(*base.wires, wire), types=base.types)


def wired(**size: float) -> Wire:
    return Wire(id="x", start="P1.+", end="V1.4", **size)  # type: ignore[arg-type]


def test_a_thin_wire_and_the_size_that_carries_it() -> None:
    limit = chassis_limit_a(awg=24)
    found = findings(through(wired(awg=24), limit * 1.5), "wire-current")
    assert [f.condition for f in found] == ["nominal", "low mains", "high mains"]
    assert (found[0].where, found[0].severity, found[0].unit) == (("x",), "fault", "A")
    assert found[0].limit == pytest.approx(limit)
    assert "AWG 22" in str(found[0].mend)
    assert chassis_limit_a(awg=22) >= limit * 1.5
    assert "Handbook of Electronic Tables" in str(found[0].source)


def test_a_wire_at_its_limit_is_right() -> None:
    limit = chassis_limit_a(area_mm2=0.5)
    assert rules(through(wired(area_mm2=0.5), limit)) == set()
    found = findings(through(wired(area_mm2=0.5), limit * 1.01), "wire-current")
    assert "0.75\u2009mm²" in str(found[0].mend)


def test_a_long_wire_and_the_size_that_loses_less() -> None:
    found = findings(through(wired(awg=24, length_m=2.0), 1.5), "wire-drop")
    assert [(f.severity, f.where, f.condition) for f in found] == [("caution", ("x",), "nominal")]
    assert found[0].limit == pytest.approx(0.126)
    assert "AWG 18" in str(found[0].mend)
    a = (found[0].value or 0) / (ohm_per_m(awg=24, temp_c=25.0) * 2.0)
    assert ohm_per_m(awg=18, temp_c=25.0) * 2.0 * a < 0.063 < ohm_per_m(awg=20, temp_c=25.0) * 2.0 * a


@pytest.mark.parametrize(("share", "fires"), [(0.02, False), (0.0201, True)])
def test_two_per_cent_exactly_met_is_met(share: float, fires: bool) -> None:
    # the tube takes rated current from a supply that gives what the wire drops on top
    ohm = share * 10 / 1.0
    length = ohm / ohm_per_m(awg=24, temp_c=25.0)
    kind = tube_type(v=10 * (1 - share), a=1.0)
    base = on_dc(10, TUBE, wires="P1.- V1.5", types=(kind,))
    one = sheet(*base.parts, wires=(*base.wires, wired(awg=24, length_m=length)), types=base.types)
    assert bool(findings(one, "wire-drop")) is fires


def dropped(w: float, rated_w: float | None) -> Sheet:
    """A resistor that turns ``w`` watts into heat at 1 A."""
    base = on_dc(6.3 + w, TUBE, wires="", types=(tube_type(a=1.0),)).parts
    return sheet(
        *base, Resistor(id="R1", ohm=w, rated_w=rated_w), types=(tube_type(a=1.0),),
        wires="P1.- E1.e, P1.+ R1.1, R1.2 V1.4, V1.5 P1.-",
    )  # fmt: skip


@pytest.mark.parametrize(
    ("w", "rated_w", "severity"),
    [(1.0, 2.0, None), (1.01, 2.0, "caution"), (2.0, 2.0, "caution"), (2.01, 2.0, "fault"), (0.125, None, None),
     (0.13, None, "note")],
)  # fmt: skip
def test_resistors_by_what_they_turn_into_heat(w: float, rated_w: float | None, severity: str | None) -> None:
    found = findings(dropped(w, rated_w), "resistor-power")
    assert {f.severity for f in found} == ({severity} if severity else set())
    assert [f.condition for f in found][:1] == (["nominal"] if severity else [])


def test_a_resistor_is_told_its_rating() -> None:
    assert "5\u2009W" in str(findings(dropped(2.4, 2.0), "resistor-power")[0].mend)
    assert "several resistors" in str(findings(dropped(90.0, 2.0), "resistor-power")[0].mend)


FED = "T1.a V1.4, T1.b V1.5, T1.b E1.e"
PARTS = (winding(), Tube(id="V1", type="EL84"), Chassis(id="E1"))


@pytest.mark.parametrize(
    ("part", "wires", "where"),
    [
        (Joint(id="J1"), "V1.4 J1.j", ("w4",)),
        (Resistor(id="R1", ohm=100), "V1.4 R1.1", ("R1", "w4")),
        (Elevation(id="L1", volts=10), "", ("L1",)),
    ],
)
def test_what_leads_nowhere(part: Resistor, wires: str, where: tuple[str, ...]) -> None:
    found = findings(sheet(*PARTS, part, wires=f"{FED}, {wires}"))
    assert [(f.rule, f.severity) for f in found] == [("open-end", "note")]
    assert set(found[0].where) == set(where)


def test_what_is_wired_at_no_end_says_so() -> None:
    loose = (Resistor(id="R1", ohm=1), Resistor(id="R2", ohm=1))
    found = findings(sheet(*PARTS, *loose, wires=f"{FED}, R1.2 R2.1"), "open-end")
    assert [str(f.says) for f in found] == ["Nothing flows in R1, R2 and w4: neither end leads anywhere."]
    held = findings(sheet(*PARTS, loose[0], wires=f"{FED}, R1.1 V1.4"), "open-end")
    assert [str(f.says) for f in held] == ["Nothing flows in R1 and w4: one end leads nowhere."]


def test_a_chain_that_leads_nowhere_is_one_finding() -> None:
    parts = (Resistor(id="R1", ohm=1), Joint(id="J1"), Joint(id="J2"))
    found = findings(sheet(*PARTS, *parts, wires=f"{FED}, V1.4 R1.1, R1.2 J1.j, J1.j J2.j"), "open-end")
    assert [set(f.where) for f in found] == [{"R1", "w4", "w5", "w6"}]


@pytest.mark.parametrize(
    ("part", "wires"),
    [
        (Tube(id="V2", type="EL84", pulled=True), "V1.4 V2.4, V1.5 V2.5"),
        (Switch(id="S1", closed=False), "V1.4 S1.1, V1.5 S1.2"),
        (Relay(id="K1", coil_v=6, coil_ohm=100), "T1.a K1.c1, T1.b K1.c2, V1.4 K1.com"),
        (Joint(id="J1"), "V1.4 J1.j, J1.j T1.a"),
    ],
)
def test_what_may_end_where_it_ends(part: Tube, wires: str) -> None:
    assert findings(sheet(*PARTS, part, wires=f"{FED}, {wires}")) == []


def test_an_unknown_tube_is_an_end_that_has_its_own_finding() -> None:
    one = sheet(*PARTS, Tube(id="V2", type="no such"), wires=f"{FED}, V1.4 V2.4, V1.5 V2.5")
    assert rules(one) == {"type-unknown"}


def test_a_winding_on_which_nothing_hangs() -> None:
    assert rules(sheet(winding(), Joint(id="J1"), wires=straps("T1.a J1.j"))) == {"open-end"}
