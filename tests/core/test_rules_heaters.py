"""Heaters by volts and by current."""

from __future__ import annotations

import re

import pytest

from core.sheet import Chassis, Lamp, Mains, Resistor, Sheet, Tube, Wire
from tests.core.rule_sheets import assessed, findings, on_dc, sheet, tube_type, winding

EL84 = Tube(id="V1", type="EL84")
ONE = "P1.+ V1.4, P1.- V1.5"


def test_rated_volts_raise_nothing() -> None:
    assert findings(on_dc(6.3, EL84, wires=ONE)) == []


@pytest.mark.parametrize("volts", [6.3 * 1.1, 6.3 * 0.9])
def test_a_limit_exactly_met_is_met(volts: float) -> None:
    assert findings(on_dc(volts, EL84, wires=ONE), "heater-voltage") == []


@pytest.mark.parametrize(
    ("volts", "limit", "side"), [(6.94, 6.93, "above +10\u2009%"), (5.66, 5.67, "below −10\u2009%")]
)
def test_volts_outside_the_limits_are_a_fault_at_every_condition(
    volts: float, limit: float, side: str
) -> None:
    found = findings(on_dc(volts, EL84, wires=ONE), "heater-voltage")
    assert [one.condition for one in found] == ["nominal", "low mains", "high mains"]
    first = found[0]
    assert first.severity == "fault"
    assert first.where == ("V1",)
    assert first.value == pytest.approx(volts)
    assert first.limit == pytest.approx(limit)
    assert first.unit == "V"
    assert str(first.title) == f"V1 {side}"
    assert "±10\u2009%" in str(first.says)
    assert first.source


def test_the_limits_of_the_type_win() -> None:
    narrow = tube_type(low_v_pct=-5.0, high_v_pct=5.0)
    tube = Tube(id="V1", type="X1")
    assert findings(on_dc(6.3 * 1.05, tube, wires=ONE, types=(narrow,)), "heater-voltage") == []
    found = findings(on_dc(6.7, tube, wires=ONE, types=(narrow,)), "heater-voltage")
    assert found[0].limit == pytest.approx(6.3 * 1.05)


def test_a_centre_tapped_tube_in_series_with_itself_is_judged_by_volts() -> None:
    # 11.3 V is −10.3 % by volts, but the current is within 6 % of its rating
    one = on_dc(11.3, Tube(id="V1", type="12AX7"), wires=ONE)
    assert {finding.rule for finding in findings(one)} == {"heater-voltage"}


def test_a_string_of_current_rated_tubes_is_judged_by_current() -> None:
    tubes = tuple(Tube(id=f"V{n}", type="12BA6") for n in (1, 2))
    wires = "P1.+ V1.3, V1.4 V2.3, V2.4 P1.-"
    within = on_dc(25.2 * 1.1, *tubes, wires=wires)
    assert {f.rule for f in findings(within)} == {"rating-unverified"}
    found = findings(on_dc(25.2 * 1.14, *tubes, wires=wires), "heater-current")
    assert {finding.where for finding in found} == {("V1",), ("V2",)}
    assert found[0].limit == pytest.approx(0.159)
    assert found[0].value is not None and found[0].value > 0.159
    assert "RCA 12AX7-A" in str(found[0].source)


def test_a_voltage_rated_tube_in_a_string_is_judged_by_volts() -> None:
    tubes = tuple(Tube(id=f"V{n}", type="EL84") for n in (1, 2))
    one = on_dc(12.6 * 1.12, *tubes, wires="P1.+ V1.4, V1.5 V2.4, V2.5 P1.-")
    assert {finding.rule for finding in findings(one)} == {"heater-voltage"}


def test_the_current_tolerance_exactly_met_is_met() -> None:
    kind = tube_type(rating_class="current", tolerance_a_pct=6.0)
    tubes = tuple(Tube(id=f"V{n}", type="X1") for n in (1, 2))

    def string(limit_a: float) -> Sheet:
        wires = "P1.+ V1.4, V1.5 V2.4, V2.5 P1.-"
        return on_dc(40.0, *tubes, wires=wires, limit_a=limit_a, types=(kind,))

    assert findings(string(0.3 * 1.06), "heater-current") == []
    assert len(findings(string(0.3 * 1.061), "heater-current")) == 6


def test_a_lamp_tap_is_not_too_cold_with_its_lamp() -> None:
    parts = (Tube(id="V1", type="35Z5GT"), Tube(id="V2", type="35L6GT"), Lamp(id="L1", type="#47"))
    one = on_dc(65.0, *parts[:2], wires="P1.+ V1.2, V1.7 V2.2, V2.7 P1.-")
    lit = with_lamp(one, parts[2], "L1.1 V1.2, L1.2 V1.3")
    assert {finding.severity for finding in findings(lit)} <= {"note"}
    done = assessed(lit)
    tapped = done.points["nominal"].heaters["V1"][0]
    assert tapped.deviation_pct < -20
    assert done.state_of(tapped) == "under"


def with_lamp(one: Sheet, part: Lamp, wires: str) -> Sheet:
    more = tuple(
        Wire(id=f"x{n}", start=a, end=b) for n, (a, b) in enumerate(p.split() for p in wires.split(", "))
    )
    return Sheet(mains=one.mains, parts=(*one.parts, part), wires=(*one.wires, *more))


def test_a_lamp_far_over_is_a_caution_and_one_under_is_nothing() -> None:
    lamp = Lamp(id="L1", rated_v=6.3, rated_a=0.15)
    at = {
        v: sheet(*on_dc(v, wires="").parts, lamp, wires="P1.- E1.e, P1.+ L1.1, P1.- L1.2")
        for v in (4, 6.93, 8)
    }
    assert findings(at[4]) == []
    done = assessed(at[4])
    assert done.state_of(done.points["nominal"].heaters["L1"][0]) == "under"
    assert findings(at[6.93]) == []
    found = findings(at[8.0])
    assert {(one.rule, one.severity) for one in found} == {("heater-voltage", "caution")}


def leg_figures(text: str) -> tuple[float, float]:
    match = re.search(r"([\d.]+)\u2009Ω ([\d.]+)\u2009W in each leg", text)
    assert match is not None, text
    return float(match[1]), float(match[2])


def test_resistors_in_each_leg_bring_rated_volts() -> None:
    supply = winding(6.3, 5.0, 20.0)
    tubes = tuple(Tube(id=f"V{n}", type="EL84") for n in range(1, 3))
    wires = "T1.a V1.4, T1.b V1.5, V1.4 V2.4, V1.5 V2.5, T1.b E1.e"
    over = sheet(supply, *tubes, Chassis(id="E1"), wires=wires, mains=Mains(low_pct=0, high_pct=0))
    mend = str(findings(over, "heater-voltage")[0].mend)
    ohm, watts = leg_figures(mend)
    legs = (Resistor(id="R1", ohm=ohm, rated_w=watts), Resistor(id="R2", ohm=ohm, rated_w=watts))
    mended = sheet(
        supply, *tubes, Chassis(id="E1"), *legs, mains=over.mains,
        wires="T1.a R1.1, R1.2 V1.4, T1.b R2.1, R2.2 V1.5, V1.4 V2.4, V1.5 V2.5, T1.b E1.e",
    )  # fmt: skip
    point = assessed(mended).points["nominal"]
    # E24 steps are 10 % apart and the resistors take a tenth of the volts
    assert point.heaters["V1"][0].deviation_pct == pytest.approx(0, abs=1.0)
    assert findings(mended, "resistor-power") == []


def test_over_only_at_high_mains_asks_for_steadier_mains() -> None:
    over = sheet(
        winding(6.3, 1.0, 0.001), EL84, Chassis(id="E1"), wires="T1.a V1.4, T1.b V1.5, T1.b E1.e",
        mains=Mains(low_pct=0, high_pct=12),
    )  # fmt: skip
    found = findings(over, "heater-voltage")
    assert [one.condition for one in found] == ["high mains"]
    assert "mains held to +10\u2009%" in str(found[0].mend)


def test_thin_wire_is_named_where_it_takes_the_volts() -> None:
    thin = tuple(
        Wire(id=f"w{n}", start=start, end=end, awg=28, length_m=2.5)
        for n, (start, end) in enumerate([("P1.+", "V1.4"), ("P1.-", "V1.5")])
    )
    base = on_dc(6.3, EL84, wires="")
    found = findings(sheet(*base.parts, wires=(*base.wires, *thin)), "heater-voltage")
    assert "heavier" in str(found[0].mend)


def test_a_dc_supply_is_told_its_volts() -> None:
    found = findings(on_dc(7.5, EL84, wires=ONE), "heater-voltage")
    assert str(found[0].mend) == "Set P1 to 6.30\u2009V."


def test_findings_are_frozen_values() -> None:
    found = findings(on_dc(7.5, EL84, wires=ONE))[0]
    with pytest.raises(AttributeError):
        found.rule = "other"  # type: ignore[misc]


def test_a_string_dropper_brings_rated_current() -> None:
    tubes = tuple(Tube(id=f"V{n}", type="12BA6") for n in (1, 2))
    over = on_dc(36.0, *tubes, wires="P1.+ V1.3, V1.4 V2.3, V2.4 P1.-")
    mend = str(findings(over, "heater-current")[0].mend)
    match = re.search(r"([\d.]+)\u2009Ω ([\d.]+)\u2009W more in series", mend)
    assert match is not None
    dropper = Resistor(id="R1", ohm=float(match[1]), rated_w=float(match[2]))
    mended = sheet(*over.parts, dropper, wires="P1.- E1.e, P1.+ R1.1, R1.2 V1.3, V1.4 V2.3, V2.4 P1.-")
    # the nearest E24 value is within 5 %, of a resistor that takes a third of the volts
    assert assessed(mended).points["nominal"].heaters["V1"][0].deviation_a_pct == pytest.approx(0, abs=1.0)


def test_one_tube_of_fewer_volts_gets_a_resistor_of_its_own() -> None:
    five, six = tube_type("FIVE", v=5.0, a=1.0), tube_type("SIX")
    tubes = (Tube(id="V1", type="FIVE"), Tube(id="V2", type="SIX"))
    fed = "V2.4 P1.+, V2.5 P1.-, V1.5 P1.-"
    over = on_dc(6.3, *tubes, wires=f"{fed}, V1.4 P1.+", types=(five, six))
    mend = str(findings(over, "heater-voltage")[0].mend)
    assert mend.startswith("1.30\u2009Ω 3\u2009W in series with V1 alone")
    resistor = Resistor(id="R1", ohm=1.3, rated_w=3.0)
    mended = sheet(*over.parts, resistor, types=over.types, wires=f"P1.- E1.e, {fed}, R1.1 P1.+, R1.2 V1.4")
    assert {finding.rule for finding in findings(mended)} == {"rating-unverified"}


def test_all_heaters_of_a_line_get_one_answer() -> None:
    tubes = tuple(Tube(id=f"V{n}", type="EL84") for n in range(1, 4))
    wires = "P1.+ V1.4, P1.- V1.5, V1.4 V2.4, V1.5 V2.5, V2.4 V3.4, V2.5 V3.5"
    found = findings(on_dc(7.2, *tubes, wires=wires), "heater-voltage")
    assert len(found) == 9 and len({finding.mend for finding in found}) == 1
