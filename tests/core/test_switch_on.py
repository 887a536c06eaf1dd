"""Findings of the warm-up: what fires and what stays silent, on runs that are truly solved."""

from __future__ import annotations

from typing import Any

import pytest

from core.catalogue import load_builtin
from core.errors import Cancelled
from core.results import Finding
from core.sheet import (
    AnyPart,
    Capacitor,
    DcSupply,
    Fuse,
    Lamp,
    Mains,
    MainsFeed,
    Relay,
    Resistor,
    Thermistor,
    Tube,
    Winding,
)
from core.switch_on import Wish, switch_on
from tests.core.circuits import el84, wired

FOUR: list[AnyPart] = [el84(f"V{n}") for n in range(1, 5)]


def across(high: str, low: str, count: int = 4) -> str:
    return " ".join(f"{high}=V{n}.4 V{n}.5={low}" for n in range(1, count + 1))


def supply(**fields: Any) -> DcSupply:
    return DcSupply(**{"id": "U1", "set_v": 6.3, "limit_a": 4.0} | fields)


def findings(
    parts: list[AnyPart], straps: str, wish: Wish | None = None, **fields: Any
) -> dict[str, Finding]:
    """The gravest finding of each rule."""
    answer = switch_on(wired(parts, straps, **fields), load_builtin(), wish or Wish(seconds=40.0))
    return {finding.rule: finding for finding in reversed(answer.findings)}


class TestSupplyWillNotStart:
    @pytest.mark.parametrize(
        ("overload", "words"), [("hiccup", "tries again"), ("latch-off", "switches itself off")]
    )
    def test_one_that_cuts_out(self, overload: str, words: str) -> None:
        found = findings([supply(overload=overload), *FOUR], across("U1.+", "U1.-"))["supply-will-not-start"]
        assert found.severity == "fault"
        assert words in str(found.says)
        assert found.value == pytest.approx(20.84, rel=2e-3)
        assert found.limit == 4.0

    def test_foldback_that_sits_at_a_low_point_for_ever(self) -> None:
        parts = [supply(overload="foldback", foldback_a=0.2), *FOUR]
        found = findings(parts, across("U1.+", "U1.-"))["supply-will-not-start"]
        assert found.severity == "fault"
        assert "for ever" in str(found.says)

    def test_foldback_that_takes_its_time(self) -> None:
        parts = [supply(overload="foldback", foldback_a=0.8), *FOUR]
        found = findings(parts, across("U1.+", "U1.-"))["supply-will-not-start"]
        assert found.severity == "caution"
        assert "only after" in str(found.says)

    def test_what_the_protection_may_let_pass_is_uncertain(self) -> None:
        parts = [supply(overload="hiccup", limit_a=3.6, trip_s=0.001), *FOUR[:1]]
        found = findings(parts, across("U1.+", "U1.-", 1))["supply-will-not-start"]
        assert found.severity == "caution"
        assert "not known" in str(found.says)

    def test_one_that_holds_its_current_starts(self) -> None:
        assert "supply-will-not-start" not in findings([supply(), *FOUR], across("U1.+", "U1.-"))

    def test_one_that_is_large_enough_starts(self) -> None:
        parts = [supply(overload="hiccup", limit_a=21.0), *FOUR]
        assert "supply-will-not-start" not in findings(parts, across("U1.+", "U1.-"))


class TestHeaters:
    def test_a_quick_heater_in_a_string(self) -> None:
        parts = [
            DcSupply(id="U1", set_v=18.9, limit_a=20.0),
            el84("V1", warmup_s=3.0),
            el84("V2", warmup_s=16.0),
            el84("V3", warmup_s=16.0),
        ]
        found = findings(parts, "U1.+=V1.4 V1.5=V2.4 V2.5=V3.4 V3.5=U1.-")
        assert found["warmup-overvoltage"].where == ("V1",)
        assert found["warmup-overvoltage"].limit == pytest.approx(9.45)

    def test_equal_heaters_in_a_string(self) -> None:
        parts = [DcSupply(id="U1", set_v=12.6, limit_a=20.0), *FOUR[:2]]
        assert "warmup-overvoltage" not in findings(parts, "U1.+=V1.4 V1.5=V2.4 V2.5=U1.-")

    def test_a_thermistor_of_many_ohms_is_slow(self) -> None:
        parts = [supply(set_v=7.5, limit_a=20.0), el84(), Thermistor(id="RT1", type="S237 22 ohm")]
        found = findings(parts, "U1.+=RT1.1 RT1.2=V1.4 V1.5=U1.-", Wish(seconds=600.0, dip_s=None))
        assert found["slow-warmup"].where == ("V1",)

    def test_one_at_its_volts_is_not(self) -> None:
        assert "slow-warmup" not in findings([supply(limit_a=20.0), el84()], "U1.+=V1.4 V1.5=U1.-")


class TestFuses:
    def test_one_that_may_blow(self) -> None:
        parts = [Winding(id="T1", rated_v=6.3, rated_a=4.0), *FOUR, Fuse(id="F1", rated_a=3.15)]
        found = findings(parts, "T1.a=F1.1 " + across("F1.2", "T1.b"))["fuse-inrush"]
        assert found.severity == "fault"

    def test_one_that_ages(self) -> None:
        parts = [Winding(id="T1", rated_v=6.3, rated_a=4.0), *FOUR]
        parts.append(Fuse(id="F1", rated_a=8.0, cold_ohm=0.01, melting_i2t_a2s=300.0))
        found = findings(parts, "T1.a=F1.1 " + across("F1.2", "T1.b"))["fuse-inrush"]
        assert found.severity == "caution"

    def test_one_that_does_not_mind(self) -> None:
        parts = [Winding(id="T1", rated_v=6.3, rated_a=4.0), *FOUR]
        parts.append(Fuse(id="F1", rated_a=8.0, cold_ohm=0.01, melting_i2t_a2s=3000.0))
        assert "fuse-inrush" not in findings(parts, "T1.a=F1.1 " + across("F1.2", "T1.b"))


class TestThermistors:
    STRAPS = "T1.a=RT1.1 " + across("RT1.2", "T1.b")

    HEAVY = Thermistor(
        id="RT1", r25_ohm=2.5, beta_k=2800.0, dissipation_w_per_k=0.017, tau_s=600.0, max_a=6.5
    )

    @pytest.mark.parametrize(("dip_s", "fires"), [(60.0, True), (3600.0, False)])
    def test_a_heavy_one_is_still_hot_after_a_dip(self, dip_s: float, fires: bool) -> None:
        parts = [Winding(id="T1", rated_v=6.3, rated_a=4.0, regulation_pct=3.0), *FOUR, self.HEAVY]
        found = findings(parts, self.STRAPS, Wish(seconds=1500.0, dip_s=dip_s))
        assert ("thermistor-rating" in found) == fires
        assert not fires or "still hot" in str(found["thermistor-rating"].title)

    @pytest.mark.parametrize(("farad", "fires"), [(0.02, True), (0.001, False)])
    def test_capacitance_that_it_charges(self, farad: float, fires: bool) -> None:
        parts = [supply(limit_a=30.0), el84(), Capacitor(id="C1", farad=farad)]
        parts.append(Thermistor(id="RT1", type="S237 1 ohm", max_farad=0.01))
        straps = "U1.+=RT1.1 RT1.2=V1.4 V1.5=U1.- RT1.2=C1.1 C1.2=U1.-"
        assert ("thermistor-rating" in findings(parts, straps)) == fires

    def test_capacitance_before_it_does_not_count(self) -> None:
        parts = [supply(limit_a=30.0), el84(), Capacitor(id="C1", farad=0.1)]
        parts.append(Thermistor(id="RT1", type="S237 1 ohm", max_farad=0.01))
        straps = "U1.+=RT1.1 RT1.2=V1.4 V1.5=U1.- U1.+=C1.1 C1.2=U1.-"
        assert "thermistor-rating" not in findings(parts, straps)


class TestRelays:
    """A relay that bridges a resistor in a DC line, its coil across the heaters or on a supply of its own."""

    STRAPS = "U1.+=R1.1 U1.+=K1.com R1.2=K1.no " + across("R1.2", "U1.-")

    def test_too_early(self) -> None:
        parts = [supply(overload="hiccup", limit_a=5.0), *FOUR, Resistor(id="R1", ohm=1.0, rated_w=50.0)]
        parts += [Relay(id="K1", coil_v=5.0, coil_ohm=500.0), DcSupply(id="U2", set_v=5.0, limit_a=1.0)]
        found = findings(parts, self.STRAPS + " U2.+=K1.c1 K1.c2=U2.-")
        assert found["relay-early"].where == ("K1",)

    def test_in_time(self) -> None:
        parts = [supply(overload="constant-current", limit_a=5.0), *FOUR]
        parts += [Resistor(id="R1", ohm=0.5, rated_w=50.0)]
        parts += [Relay(id="K1", coil_v=6.0, coil_ohm=500.0, pull_in_v=4.6)]
        found = findings(parts, self.STRAPS + " R1.2=K1.c1 K1.c2=U1.-")
        assert "relay-early" not in found
        assert "relay-never-pulls-in" not in found

    def test_contact_that_is_too_small(self) -> None:
        parts = [supply(limit_a=30.0), *FOUR, Resistor(id="R1", ohm=1.0, rated_w=50.0)]
        relay = Relay(id="K1", coil_v=5.0, coil_ohm=500.0, contact_a=2.0)
        parts += [relay, DcSupply(id="U2", set_v=5.0, limit_a=1.0)]
        found = findings(parts, self.STRAPS + " U2.+=K1.c1 K1.c2=U2.-")
        assert found["relay-contact"].where == ("K1",)

    def test_never(self) -> None:
        # the steady state would pull it in, but this supply never gets there
        parts = [supply(overload="hiccup"), *FOUR, Relay(id="K1", coil_v=6.0, coil_ohm=500.0)]
        found = findings(parts, across("U1.+", "U1.-") + " U1.+=K1.c1 K1.c2=U1.-")
        assert found["relay-never-pulls-in"].where == ("K1",)

    def test_chatter_is_told_and_ends(self) -> None:
        parts = [supply(limit_a=40.0), el84(), Relay(id="K1", coil_v=6.0, coil_ohm=80.0)]
        straps = "U1.+=K1.com K1.nc=K1.c1 K1.c2=U1.- U1.+=V1.4 V1.5=U1.-"
        found = findings(parts, straps)["not-solved"]
        assert found.where == ("K1",)
        assert "chatters" in str(found.says)


class TestResistors:
    @pytest.mark.parametrize(("rated_w", "fires"), [(0.3, True), (20.0, False)])
    def test_pulse_at_switch_on(self, rated_w: float, fires: bool) -> None:
        parts = [supply(limit_a=30.0), *FOUR, Resistor(id="R1", ohm=0.1, rated_w=rated_w)]
        found = findings(parts, "U1.+=R1.1 " + across("R1.2", "U1.-"))
        assert ("resistor-power" in found) == fires


class TestRegulators:
    @pytest.mark.parametrize(("input_v", "fires"), [(8.0, True), (None, False)])
    def test_heat_while_the_heaters_are_cold(self, input_v: float | None, fires: bool) -> None:
        found = findings([supply(input_v=input_v), *FOUR], across("U1.+", "U1.-"))
        assert ("regulator-heat" in found) == fires


def test_a_lamp_in_a_chain_gets_too_much() -> None:
    parts = [MainsFeed(id="M1"), Lamp(id="H1", rated_v=6.3, rated_a=0.25), Resistor(id="R1", ohm=220.0)]
    parts += [Tube(id=f"V{n}", type="EL84", rated_v=6.3, rated_a=0.3) for n in range(1, 8)]
    parts += [Resistor(id="R2", ohm=126.0)]
    chain = "M1.L=R1.1 R1.2=H1.1 H1.2=V1.4 R2.1=H1.1 R2.2=H1.2 " + " ".join(
        f"V{n}.5=V{n + 1}.4" for n in range(1, 7)
    )
    found = findings(parts, chain + " V7.5=M1.N", mains=Mains(nominal_v=117.0))
    assert found["warmup-overvoltage"].where == ("H1",)


def test_progress_rises_and_can_call_it_off() -> None:
    sheet = wired([supply(), *FOUR], across("U1.+", "U1.-"))
    told: list[float] = []
    switch_on(sheet, load_builtin(), Wish(), lambda done: told.append(done) is None)
    assert told == sorted(told)
    assert told[-1] == pytest.approx(1.0)
    with pytest.raises(Cancelled):
        switch_on(sheet, load_builtin(), Wish(), lambda done: done < 0.3)
