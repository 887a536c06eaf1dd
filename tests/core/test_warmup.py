"""The warm-up as a whole: energy, where it ends, when things switch, and that names and order do not matter."""

from __future__ import annotations

import os
from typing import Any

import msgspec
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.assess import assess
from core.catalogue import load_builtin
from core.elements.branch import Hot, Ntc, Source
from core.sheet import (
    AnyPart,
    Battery,
    DcSupply,
    Lamp,
    Overload,
    Relay,
    Resistor,
    Sheet,
    Thermistor,
    Tube,
    Winding,
)
from core.warmup import WarmupRun, warm_up
from core.warmup.results import Start
from core.warmup.sampling import Sampled
from tests.core.circuits import el84, wired

EXAMPLES = settings(max_examples=int(os.environ.get("HEATERLOOM_EXAMPLES", "200")) // 20, deadline=None)
CATALOGUE = load_builtin()


def run(sheet: Sheet, seconds: float = 40.0, **fields: Any) -> WarmupRun:
    found = warm_up(sheet, CATALOGUE, Start(mains_v=230.0, seconds=seconds, **fields))
    assert not found.summary.unsolved
    return found


def events(found: WarmupRun, part: str) -> list[tuple[float, str]]:
    return [(event.t_s, event.what) for event in found.summary.events if event.part == part]


@st.composite
def mixed(draw: st.DrawFn) -> tuple[list[AnyPart], str]:
    """Tubes, a filament and a lamp across 6.3 V, each perhaps behind something, on any supply."""
    overload: Overload = draw(st.sampled_from(["constant-current", "foldback", "hiccup", "latch-off"]))
    supply: AnyPart = draw(
        st.sampled_from(
            [
                Battery(id="U1", emf_v=6.3),
                DcSupply(id="U1", set_v=6.3, limit_a=3.0, overload=overload),
                DcSupply(id="U1", set_v=6.3, limit_a=20.0, overload=overload),
            ]
        )
    )
    hot: list[AnyPart] = [el84("V0"), el84("V1", warmup_s=4.0), Lamp(id="V2", rated_v=6.3, rated_a=0.15)]
    hot.append(Tube(id="V3", type="300B", rated_v=6.3))
    # one that tries again is followed for hundreds of tries; with many unlike parts that takes seconds
    tries = isinstance(supply, DcSupply) and supply.overload == "hiccup"
    hot = hot[: draw(st.integers(1, 2 if tries else 4))]
    parts: list[AnyPart] = [supply]
    straps = []
    for n, part in enumerate(hot):
        first, second = {0: "45", 1: "45", 2: "12", 3: "14"}[n]
        before = draw(st.sampled_from([None, "resistor", "thermistor"]))
        if before is None:
            straps.append(f"U1.+=V{n}.{first}")
        else:
            ohm = draw(st.floats(0.2, 5.0))
            front: AnyPart = (
                Resistor(id=f"R{n}", ohm=ohm)
                if before == "resistor"
                else Thermistor(id=f"R{n}", r25_ohm=ohm, beta_k=2900.0, dissipation_w_per_k=0.01, tau_s=30.0)
            )
            parts.append(front)
            straps.append(f"U1.+=R{n}.1 R{n}.2=V{n}.{first}")
        straps.append(f"V{n}.{second}=U1.-")
        parts.append(part)
    return parts, " ".join(straps)


def _balance(line: Sampled) -> tuple[float, float, float, float]:
    """Joules from the supplies, into what gets warm, stored there at the end, and given off by it on the way."""
    samples, bodies = line.own, line.run.bodies
    branches = line.run.island.branches
    joules = samples.weights @ samples.watts
    given = -float(sum(joules[at] for at, one in enumerate(branches) if isinstance(one.law, Source)))
    into = float(sum(joules[at] for at, one in enumerate(branches) if isinstance(one.law, Hot | Ntc)))
    y = np.concatenate((samples.heater_k, samples.cathode_k[:, bodies.own], samples.ntc_k), axis=1)
    heater_w, cathode_w, ntc_w = bodies.lost_w(y)
    bare = np.setdiff1d(np.arange(heater_w.shape[1]), bodies.own)
    lost = heater_w[:, bare].sum(axis=1) + cathode_w.sum(axis=1) + ntc_w.sum(axis=1)
    return given, into, float(bodies.stored_j(y[-1])), float(samples.weights @ lost)


class TestEnergy:
    @given(circuit=mixed())
    @EXAMPLES
    def test_what_goes_in_is_stored_or_lost(self, circuit: tuple[list[AnyPart], str]) -> None:
        """Within 1e-4: what Simpson's rule over the run's own steps of 1e-6 leaves."""
        parts, straps = circuit
        found = run(wired(parts, straps), 30.0)
        (line,) = found.lines
        given_j, into, stored, lost = _balance(line)
        assert stored + lost == pytest.approx(into, rel=1e-4)
        resistors = sum(one.energy_j for one in found.summary.resistors.values())
        assert into + resistors == pytest.approx(given_j, rel=1e-6)
        assert found.summary.supplies["U1"].energy_j == pytest.approx(given_j, rel=1e-9)


PAIR = [el84("V1"), el84("V2", rated_a=0.6)]
BOTH = "V1.5={0} V2.5={0} {1}=V1.4 {1}=V2.4"
SOFT = [Resistor(id="R1", ohm=1.0), Relay(id="K1", coil_v=6.0, coil_ohm=200.0)]
SLOW_NTC = Thermistor(id="N1", type="S237 5 ohm")
ENDS: dict[str, tuple[list[AnyPart], str, float]] = {
    "winding": (
        [Winding(id="T1", rated_v=6.3, rated_a=1.5), *PAIR],
        BOTH.format("T1.b", "T1.a"),
        300.0,
    ),
    "string on a winding": (
        [Winding(id="T1", rated_v=12.6, rated_a=1.0, regulation_pct=20.0), el84("V1"), el84("V2")],
        "T1.a=V1.4 V1.5=V2.4 V2.5=T1.b",
        300.0,
    ),
    "supply at its limit for ever": (
        [DcSupply(id="U1", set_v=6.3, limit_a=1.0), *PAIR],
        BOTH.format("U1.-", "U1.+"),
        600.0,
    ),
    "supply that leaves its limit": (
        [DcSupply(id="U1", set_v=6.3, limit_a=2.0), *PAIR],
        BOTH.format("U1.-", "U1.+"),
        300.0,
    ),
    "foldback": (
        [DcSupply(id="U1", set_v=6.3, limit_a=3.0, overload="foldback", foldback_a=1.0), *PAIR],
        BOTH.format("U1.-", "U1.+"),
        600.0,
    ),
    "thermistor": (
        [Winding(id="T1", rated_v=7.0, rated_a=1.5), SLOW_NTC, *PAIR],
        BOTH.format("T1.b", "N1.2") + " T1.a=N1.1",
        2500.0,
    ),
    "relay that bridges a resistor": (
        [Winding(id="T1", rated_v=6.3, rated_a=2.0), *SOFT, *PAIR],
        BOTH.format("T1.b", "R1.2") + " T1.a=R1.1 R1.1=K1.com R1.2=K1.no R1.2=K1.c1 K1.c2=T1.b",
        300.0,
    ),
}


@pytest.mark.parametrize("name", ENDS)
def test_it_ends_where_the_steady_state_is(name: str) -> None:
    """Volts and amperes within 1e-4: the two are computed by methods that share only the laws of the parts."""
    parts, straps, seconds = ENDS[name]
    sheet = wired(parts, straps)
    found = run(sheet, seconds)
    end, steady = found.at(found.end_s), assess(sheet, CATALOGUE).points["nominal"]
    for owner, sections in steady.heaters.items():
        for ours, theirs in zip(end.heaters[owner], sections, strict=True):
            assert (ours.v, ours.a) == pytest.approx((theirs.v, theirs.a), rel=1e-4)
            assert ours.cathode_k == pytest.approx(theirs.cathode_k, rel=1e-4)
    for owner, supply in steady.supplies.items():
        assert end.supplies[owner].v == pytest.approx(supply.v, rel=1e-4)
        assert end.supplies[owner].a == pytest.approx(supply.a, rel=1e-4)


class TestInstants:
    @pytest.mark.parametrize(("trip_s", "retry_s"), [(0.05, 1.0), (0.2, 0.3), (0.001, 2.0)])
    def test_a_supply_that_tries_again(self, trip_s: float, retry_s: float) -> None:
        supply = DcSupply(id="U1", set_v=6.3, limit_a=1.0, overload="hiccup", trip_s=trip_s, retry_s=retry_s)
        told = events(run(wired([supply, *PAIR], BOTH.format("U1.-", "U1.+")), 10.0), "U1")
        period = trip_s + retry_s
        cut = [t for t, what in told if what == "cuts out"]
        again = [t for t, what in told if what == "tries again"]
        assert cut == pytest.approx([n * period + trip_s for n in range(len(cut))], rel=1e-9)
        assert again == pytest.approx([(n + 1) * period for n in range(len(again))], rel=1e-9)
        assert len(again) == int(10.0 / period * (1 + 1e-12))

    def test_a_supply_that_latches(self) -> None:
        supply = DcSupply(id="U1", set_v=6.3, limit_a=1.0, overload="latch-off", trip_s=0.07)
        found = run(wired([supply, *PAIR], BOTH.format("U1.-", "U1.+")), 10.0)
        assert events(found, "U1")[-1] == (pytest.approx(0.07, rel=1e-12), "latches off")
        assert found.at(1.0).heaters["V1"][0].a == 0.0

    def test_a_relay_pulls_in_at_its_volts_and_its_contact_follows(self) -> None:
        parts, straps, _ = ENDS["relay that bridges a resistor"]
        found = run(wired(parts, straps))
        told = {what: t for t, what in events(found, "K1")}
        assert told["closes"] - told["pulls in"] == pytest.approx(0.01, rel=1e-9)
        relay = found.summary.relays["K1"]
        assert (relay.pulls_in_s, relay.closes_s, relay.moves) == (told["pulls in"], told["closes"], 1)
        # 75 % of 6 V; the coil has exactly that when it moves, and less before
        coil = found.traces(told["pulls in"] + np.array([-0.5, 0.0])).branches["K1"].v
        assert coil[1] == pytest.approx(4.5, rel=1e-6)
        assert coil[0] < coil[1]

    def test_a_limit_is_left_when_the_demand_is_down_to_it(self) -> None:
        parts, straps, _ = ENDS["supply that leaves its limit"]
        found = run(wired(parts, straps))
        ((at, what),) = events(found, "U1")
        assert what == "regulates"
        before, after = found.at(at - 1e-3).supplies["U1"], found.at(at).supplies["U1"]
        assert (before.a, after.v) == pytest.approx((2.0, 6.3), rel=1e-9)
        assert before.v < 6.3
        assert after.a == pytest.approx(2.0, rel=1e-5)
        assert found.at(at + 1.0).supplies["U1"].a < 2.0

    def test_the_mains_goes_and_comes(self) -> None:
        parts, straps, _ = ENDS["winding"]
        found = run(wired(parts, straps), 30.0, off_at_s=12.5, off_for_s=3.25)
        assert events(found, "") == [(12.5, "mains off"), (15.75, "mains on")]
        assert found.at(13.0).heaters["V1"][0].v == 0.0
        assert found.at(15.75).heaters["V1"][0].v > 3.0


class TestNothingDependsOnNames:
    @given(
        circuit=mixed(),
        order=st.randoms(use_true_random=False),
        names=st.permutations(["A", "B", "C", "D", "E"]),
    )
    @EXAMPLES
    def test_renamed_and_reordered(
        self, circuit: tuple[list[AnyPart], str], order: Any, names: list[str]
    ) -> None:
        """Within 1e-5: rounding differs with the order, and with it the lengths of steps of 1e-6."""
        parts, straps = circuit
        plain = run(wired(parts, straps), 20.0)
        new = {"U1": "Q9", **{f"V{n}": f"{names[n]}7" for n in range(4)}}
        new |= {f"R{n}": f"X{names[n]}" for n in range(4)}
        moved = [_renamed(part, new[part.id]) for part in parts]
        order.shuffle(moved)
        pairs = [
            "=".join(f"{new[end.split('.')[0]]}.{end.split('.')[1]}" for end in strap.split("="))
            for strap in straps.split()
        ]
        order.shuffle(pairs)
        other = run(wired(moved, " ".join(pairs)), 20.0)
        for t in (0.0, 0.3, 2.2, 20.0):
            ours, theirs = plain.at(t).heaters, other.at(t).heaters
            for owner, sections in ours.items():
                expected = (sections[0].heater_k, sections[0].cathode_k)
                again = theirs[new[owner]][0]
                assert (again.heater_k, again.cathode_k) == pytest.approx(expected, rel=1e-5)
        assert [what for _, what in events(plain, "U1")] == [what for _, what in events(other, "Q9")]


def _renamed(part: AnyPart, name: str) -> AnyPart:
    return msgspec.structs.replace(part, id=name)


@given(circuit=mixed())
@EXAMPLES
def test_an_instant_is_what_the_traces_show(circuit: tuple[list[AnyPart], str]) -> None:
    """At any time, and after everything that switches at it; the same solution, so to rounding."""
    parts, straps = circuit
    found = run(wired(parts, straps), 8.0)
    times = np.array([0.0, 0.02, 0.4, 1.7, 8.0])
    traces = found.traces(times)
    for at, t in enumerate(times.tolist()):
        point = found.at(t)
        for key, trace in traces.heaters.items():
            section = point.heaters[key.split(":")[0]][0]
            assert (trace.v[at], trace.a[at]) == pytest.approx((section.v, section.a), rel=1e-9, abs=1e-12)
            assert trace.heater_k[at] == pytest.approx(section.heater_k, rel=1e-12)
        supply = point.supplies["U1"]
        given_v, given_a = traces.supplies["U1"].v[at], traces.supplies["U1"].a[at]
        assert (given_v, given_a) == pytest.approx((supply.v, supply.a), rel=1e-9, abs=1e-12)


class TestNonsenseEnds:
    """What nobody would build still gives an answer or a reason, and soon."""

    def test_a_relay_without_travel(self) -> None:
        parts, straps, _ = ENDS["relay that bridges a resistor"]
        quick = [_quick(part) for part in parts]
        told = {what: t for t, what in events(run(wired(quick, straps)), "K1")}
        assert told["closes"] == told["pulls in"]

    def test_a_supply_that_tries_again_at_once(self) -> None:
        supply = DcSupply(id="U1", set_v=6.3, limit_a=1.0, overload="hiccup", trip_s=0.0, retry_s=0.0)
        found = run(wired([supply, *PAIR], BOTH.format("U1.-", "U1.+")))
        (bound,) = found.summary.bounds
        assert bound.ids == ("U1",)
        assert found.end_s == bound.t_s < 40.0
        assert not found.summary.supplies["U1"].starts

    def test_a_heater_that_is_warm_at_once(self) -> None:
        parts = [Battery(id="U1", emf_v=6.3), el84(warmup_s=1e-3)]
        found = run(wired(parts, "U1.+=V1.4 V1.5=U1.-"))
        section = found.at(1.0).heaters["V1"][0]
        assert section.a == pytest.approx(section.rated_a, rel=1e-6)
        (one,) = found.summary.heaters["V1"]
        assert one.ready_s is not None
        assert one.ready_s < 0.01

    def test_two_supplies_in_parallel(self) -> None:
        """Ideal ones have no answer, in time as in the steady state, and both are named."""
        parts: list[AnyPart] = [DcSupply(id=name, set_v=6.3, limit_a=1.0) for name in ("U1", "U2")]
        sheet = wired([*parts, *PAIR], BOTH.format("U1.-", "U1.+") + " U2.+=U1.+ U2.-=U1.-")
        found = warm_up(sheet, CATALOGUE, Start(mains_v=230.0))
        (unsolved,) = found.summary.unsolved
        assert unsolved.ids == ("U1", "U2")

    @pytest.mark.parametrize("second_v", [6.3, 6.0])
    def test_two_supplies_that_share(self, second_v: float) -> None:
        """Behind a tenth of an ohm each they have: both at their limit at first, and the steady state in the end."""
        parts: list[AnyPart] = [
            DcSupply(id="U1", set_v=6.3, limit_a=1.0),
            DcSupply(id="U2", set_v=second_v, limit_a=1.0),
            Resistor(id="R1", ohm=0.1),
            Resistor(id="R2", ohm=0.1),
            *PAIR,
        ]
        straps = " U1.+=R1.1 U2.+=R2.1 R1.2=R2.2 U2.-=U1.-"
        sheet = wired(parts, BOTH.format("U1.-", "R1.2") + straps)
        found = run(sheet, 300.0)
        first = found.at(0.0).supplies
        assert (first["U1"].a, first["U2"].a) == pytest.approx((1.0, 1.0), rel=1e-9)
        end, steady = found.at(found.end_s).supplies, assess(sheet, CATALOGUE).points["nominal"].supplies
        for owner in ("U1", "U2"):
            assert (end[owner].v, end[owner].a) == pytest.approx((steady[owner].v, steady[owner].a), rel=1e-4)


def _quick(part: AnyPart) -> AnyPart:
    return msgspec.structs.replace(part, travel_s=0.0) if isinstance(part, Relay) else part
