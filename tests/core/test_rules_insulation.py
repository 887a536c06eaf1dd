"""Stress between heater and cathode, and rectifiers that need a winding of their own."""

from __future__ import annotations

import math

import pytest

from core.catalogue.types import TubeType
from core.rules.mends import lift_window
from core.sheet import Chassis, Elevation, Mains, Relay, Sheet, Tube
from tests.core.rule_sheets import findings, on_dc, rules, sheet, tube_type, winding

E1 = Chassis(id="E1")


def limited(peak: float | None = 180.0, **more: float) -> TubeType:
    return tube_type(hk_positive_peak_v=peak, hk_negative_peak_v=peak, **more)


def on_ac(*cathodes: float, kind: TubeType, lift: float | None = None, tap: bool = True) -> Sheet:
    """Tubes on a centre-tapped winding; the tap is on the chassis or lifted."""
    tubes = tuple(Tube(id=f"V{n}", type="X1", cathode_v=v) for n, v in enumerate(cathodes, 1))
    wires = ", ".join(f"T1.a {tube.id}.4, T1.b {tube.id}.5" for tube in tubes)
    foot = E1 if lift is None else Elevation(id="E1", volts=lift)
    return sheet(winding(centre_tap=tap), *tubes, foot, wires=f"{wires}, T1.ct E1.e", types=(kind,))


def test_the_window_of_lifts_of_two_cathodes() -> None:
    window = lift_window([(2 - 180, 2 + 180), (200 - 180, 200 + 180)])
    assert window == (20, 182)
    assert sum(window or ()) / 2 == 101
    assert lift_window([(2 - 90, 2 + 90), (200 - 90, 200 + 90)]) is None


def test_a_high_cathode_gets_a_lift() -> None:
    found = findings(on_ac(2.0, 200.0, kind=limited()), "heater-cathode-voltage")
    assert {f.where for f in found} == {("V2",)}
    mend = str(found[0].mend)
    assert "between 24.5\u2009V and 178\u2009V" in mend and "101\u2009V is best" in mend
    assert found[0].value == pytest.approx(200 + math.sqrt(2) * 3.15, rel=1e-4)
    assert found[0].limit == 180.0


def test_a_hair_over_the_limit_shows_and_nothing_is_a_peak_on_dc() -> None:
    tube = Tube(id="V1", type="X1", cathode_v=180.1)
    found = findings(
        on_dc(6.3, tube, wires="P1.+ V1.4, P1.- V1.5", types=(limited(),)), "heater-cathode-voltage"
    )
    assert "is 180.1\u2009V below its cathode" in str(found[0].says)


def test_the_best_lift_mends_it() -> None:
    assert rules(on_ac(2.0, 200.0, kind=limited(), lift=101.0)) == set()


def test_a_line_that_is_solved_at_low_mains_only_is_judged_there() -> None:
    """The relay chatters at nominal and high mains, and stays off at low mains."""
    relay = Relay(id="K1", coil_v=6.0, coil_ohm=100.0, pull_in_v=6.0, drop_out_v=3.0)
    wires = "T1.a K1.com, K1.nc K1.c1, K1.c2 T1.b, T1.a V1.4, T1.b V1.5, T1.b E1.e"
    tube = Tube(id="V1", type="X1", cathode_v=300.0)
    given = sheet(
        winding(regulation_pct=0.0),
        tube,
        relay,
        E1,
        wires=wires,
        mains=Mains(),
        types=(limited(),),
    )
    assert "not-solved" in rules(given)
    found = findings(given, "heater-cathode-voltage")
    assert [f.condition for f in found] == ["low mains"]
    assert "Lift the heater line" in str(found[0].mend)


def test_no_lift_means_two_supplies() -> None:
    found = findings(on_ac(2.0, 200.0, kind=limited(90.0)), "heater-cathode-voltage")
    assert "two supplies" in str(found[0].mend) and "V2" in str(found[0].mend)


def test_the_peak_counts_and_a_limit_exactly_met_is_met() -> None:
    for cathode, fires in ((174.0, False), (179.0, True)):
        assert bool(findings(on_ac(cathode, kind=limited()), "heater-cathode-voltage")) is fires
    on_line = on_dc(
        6.3, Tube(id="V1", type="X1", cathode_v=180.0), wires="P1.+ V1.4, P1.- V1.5", types=(limited(),)
    )
    assert rules(on_line) == set()


def test_the_dc_part_has_a_limit_of_its_own() -> None:
    kind = tube_type(hk_positive_peak_v=200.0, hk_positive_dc_v=100.0, hk_negative_peak_v=200.0)
    assert rules(on_ac(0.0, kind=kind, lift=100.0)) == set()
    found = findings(on_ac(0.0, kind=kind, lift=120.0), "heater-cathode-voltage")
    assert found[0].limit == 100.0 and "120\u2009V DC above" in str(found[0].says)


@pytest.mark.parametrize(("cathode", "fires"), [(719.8, True), (439.8, False), (483.8, True)])
def test_a_rectifier_with_its_cathodes_at_the_ends_of_the_high_tension(cathode: float, fires: bool) -> None:
    # 311 V rms on a 280 V lift; as the heater stands: grounded, tied to the lift, tied at mains 10 % high
    tube = Tube(id="V1", type="6X5GT", cathode_v=cathode)
    one = on_dc(6.3, tube, wires="P1.+ V1.2, P1.- V1.7")
    assert bool([f for f in findings(one, "heater-cathode-voltage") if f.severity == "fault"]) is fires


def test_without_a_published_limit_90_volts_is_a_caution() -> None:
    kind = tube_type()
    for cathode, fires in ((90.0, False), (95.0, True)):
        one = on_dc(
            6.3, Tube(id="V1", type="X1", cathode_v=cathode), wires="P1.+ V1.4, P1.- V1.5", types=(kind,)
        )
        found = findings(one, "heater-cathode-voltage")
        assert {f.severity for f in found} == ({"caution"} if fires else set())
        assert all("no limit is published" in str(f.says) for f in found)


def test_an_unknown_cathode_and_a_floating_heater_are_not_judged() -> None:
    kind = limited()
    assert rules(on_dc(6.3, Tube(id="V1", type="X1"), wires="P1.+ V1.4, P1.- V1.5", types=(kind,))) == set()
    floating = sheet(
        winding(), Tube(id="V1", type="X1", cathode_v=400.0), wires="T1.a V1.4, T1.b V1.5", types=(kind,)
    )
    assert rules(floating) == {"no-chassis-reference"}


RECTIFIER = tube_type("R1", description="full-wave rectifier", cathode_joined=True)
OWN = "T1.a V1.4, T1.b V1.5"


def test_a_joined_rectifier_on_its_own_winding_must_float() -> None:
    assert rules(sheet(winding(), Tube(id="V1", type="R1"), wires=OWN, types=(RECTIFIER,))) == set()


@pytest.mark.parametrize(
    "kind",
    [RECTIFIER, tube_type("R1", description="full-wave rectifier", heating="direct")],
)
def test_a_joined_rectifier_shares_with_nobody(kind: TubeType) -> None:
    tubes = (Tube(id="V1", type="R1"), Tube(id="V2", type="EL84"))
    shared = sheet(winding(), *tubes, E1, wires=f"{OWN}, T1.a V2.4, T1.b V2.5, T1.b E1.e", types=(kind,))
    found = findings(shared, "shared-rectifier")
    assert [(f.severity, f.where) for f in found] == [("fault", ("V1",))]
    assert "V2" in str(found[0].says)
    tied = sheet(winding(), tubes[0], E1, wires=f"{OWN}, T1.b E1.e", types=(kind,))
    assert "shorts the high tension" in str(findings(tied, "shared-rectifier")[0].says)


def test_a_rectifier_with_a_cathode_of_its_own_may_share() -> None:
    kind = tube_type("R1", description="full-wave rectifier")
    tubes = (Tube(id="V1", type="R1"), Tube(id="V2", type="EL84"))
    assert (
        rules(sheet(winding(), *tubes, E1, wires=f"{OWN}, T1.a V2.4, T1.b V2.5, T1.b E1.e", types=(kind,)))
        == set()
    )
