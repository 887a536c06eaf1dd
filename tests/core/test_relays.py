"""Relays whose coil and contact are in different lines: they settle together, and each line keeps its own figures."""

from __future__ import annotations

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.assess import Memory, assess
from core.catalogue import load_builtin
from core.chains.existing import disturbed, standing_of
from core.chains.feeds import feeds_of_part
from core.circuit import build
from core.edits import in_turn, rename, set_part
from core.nearby import around
from core.results import Assessment, OperatingPoint
from core.samples import sample_bytes, sample_names
from core.sheet import (
    AnyPart,
    Battery,
    Chassis,
    DcSupply,
    Diode,
    MainsFeed,
    RectifiedSupply,
    Relay,
    Resistor,
    Sheet,
    Thermistor,
    Winding,
)
from core.storage import load
from core.warmup import Start, WarmupRun, warm_up
from tests.core.circuits import el84, wired

CATALOGUE = load_builtin()
AUXILIARY = "U1.+=K1.c1 U1.-=K1.c2"
AC_LINE = "T1.a=R1.1 R1.2=V1.4 V1.5=T1.b T1.b=E1.e U1.-=E1.e"
BRIDGE = "K1.com=R1.1 K1.no=R1.2"


def relay(part_id: str = "K1", **fields: float) -> Relay:
    return Relay(id=part_id, coil_v=12.0, coil_ohm=300.0, **fields)


def softly_started(source: AnyPart | None = None, dropper: AnyPart | None = None) -> list[AnyPart]:
    """A heater behind a dropper, and a 12 V supply for the relay that bridges it."""
    return [
        DcSupply(id="U1", set_v=12.0, limit_a=0.2),
        relay(),
        source or Winding(id="T1", rated_v=6.3, rated_a=1.0, regulation_pct=8.0),
        dropper or Resistor(id="R1", ohm=3.0),
        el84(),
        Chassis(id="E1"),
    ]


def check(sheet: Sheet) -> Assessment:
    return assess(sheet, CATALOGUE)


def nominal(sheet: Sheet) -> OperatingPoint:
    return check(sheet).points["nominal"]


def assert_same(found: OperatingPoint, wanted: OperatingPoint) -> None:
    """The same volts and amperes of all heaters and supplies."""
    assert found.heaters.keys() == wanted.heaters.keys()
    for owner, sections in wanted.heaters.items():
        for one, other in zip(found.heaters[owner], sections, strict=True):
            assert (one.v, one.a) == (pytest.approx(other.v, rel=1e-12), pytest.approx(other.a, rel=1e-12))
    for owner, supply in wanted.supplies.items():
        assert found.supplies[owner].v == pytest.approx(supply.v, rel=1e-12)
        assert found.supplies[owner].a == pytest.approx(supply.a, rel=1e-12)


class TestClusters:
    def test_an_ordinary_sheet_has_its_islands(self) -> None:
        """The very same objects: what is remembered of them stays."""
        for name in sample_names():
            circuit = build(load(sample_bytes(name)), CATALOGUE)
            assert circuit.clusters is circuit.islands
            assert all(island.members == (island,) for island in circuit.islands)

    def test_a_relay_inside_one_line_joins_nothing_but_its_contact(self) -> None:
        straps = "U1.+=K1.c1 U1.-=K1.c2 U1.+=K1.com K1.no=R1.1 R1.2=U1.-"
        circuit = build(wired([softly_started()[0], relay(), Resistor(id="R1", ohm=60.0)], straps), CATALOGUE)
        assert circuit.clusters is circuit.islands

    def test_coil_and_contact_in_two_lines_make_one(self) -> None:
        """All branches in the order of the sheet, all terminals; other lines stay as they are."""
        parts = [*softly_started(), Battery(id="B1", emf_v=6.3), el84("V2")]
        circuit = build(wired(parts, f"{AUXILIARY} {AC_LINE} {BRIDGE} B1.+=V2.4 B1.-=V2.5"), CATALOGUE)
        first, other = circuit.clusters
        assert first.members == circuit.islands[:2]
        assert other is circuit.islands[2]
        keys = [key for key, branch in circuit.branches.items() if branch not in other.branches]
        assert [branch.key for branch in first.branches] == keys
        assert set(first.terminals) == {*circuit.islands[0].terminals, *circuit.islands[1].terminals}

    def test_relays_join_lines_in_a_chain(self) -> None:
        parts = [Battery(id="B1", emf_v=12.0), Battery(id="B2", emf_v=12.0), Battery(id="B3", emf_v=12.0)]
        straps = "B1.+=K1.c1 B1.-=K1.c2 B2.+=K1.com K1.no=K2.c1 B2.-=K2.c2 B3.+=K2.com"
        (cluster,) = build(wired([*parts, relay(), relay("K2")], straps), CATALOGUE).clusters
        assert len(cluster.members) == 3
        assert [member.relays for member in cluster.members] == [{"K1"}, {"K1", "K2"}, {"K2"}]


class TestAcrossLines:
    @pytest.mark.parametrize(
        "source",
        [
            Winding(id="T1", rated_v=6.3, rated_a=1.0, regulation_pct=8.0),
            Battery(id="T1", emf_v=6.3, internal_ohm=0.3),
            DcSupply(id="T1", set_v=6.3, limit_a=1.0),
        ],
    )
    def test_bridges_a_resistor(self, source: AnyPart) -> None:
        """Once hot the line works as with a strap in place of the contact; at the cold instant as without."""
        line = (
            AC_LINE
            if isinstance(source, Winding)
            else AC_LINE.replace("T1.a", "T1.+").replace("T1.b", "T1.-")
        )
        answer = check(wired(softly_started(source), f"{AUXILIARY} {line} {BRIDGE}"))
        strapped = check(wired(softly_started(source), f"{AUXILIARY} {line} R1.1=R1.2"))
        open_line = check(wired(softly_started(source), f"{AUXILIARY} {line}"))
        for name in ("nominal", "low mains", "high mains"):
            assert answer.points[name].branches["K1"].pulled_in
            assert_same(answer.points[name], strapped.points[name])
            contact = answer.points[name].branches["K1:com-no"]
            assert contact.a == pytest.approx(answer.points[name].heaters["V1"][0].a)
            assert answer.points[name].branches["R1"].a == pytest.approx(0.0, abs=1e-12)
        assert not answer.points["cold"].branches["K1"].pulled_in
        assert_same(answer.points["cold"], open_line.points["cold"])
        assert not answer.points["nominal"].unsolved
        assert answer.points["nominal"].residual_a < 1e-9

    def test_bridges_a_thermistor(self) -> None:
        ntc = Thermistor(id="R1", r25_ohm=5.0, beta_k=2900.0, dissipation_w_per_k=0.02, tau_s=60.0, max_a=4.0)
        point = nominal(wired(softly_started(dropper=ntc), f"{AUXILIARY} {AC_LINE} {BRIDGE}"))
        strapped = nominal(wired(softly_started(dropper=ntc), f"{AUXILIARY} {AC_LINE} R1.1=R1.2"))
        assert_same(point, strapped)
        assert point.branches["R1"].kelvin == pytest.approx(298.15)

    def test_released_while_its_coil_gets_too_little(self) -> None:
        parts = [Battery(id="U1", emf_v=8.0), *softly_started()[1:]]
        point = nominal(wired(parts, f"{AUXILIARY} {AC_LINE} {BRIDGE}"))
        assert not point.branches["K1"].pulled_in
        assert_same(point, nominal(wired(parts, f"{AUXILIARY} {AC_LINE}")))

    def test_a_coil_on_the_mains_side_follows_the_mains(self) -> None:
        """A coil across a winding that pulls in at nominal mains and not at low mains, working a DC line."""
        parts = [
            Winding(id="U1", rated_v=9.2, rated_a=1.0, regulation_pct=0.0, rated_mains_v=230.0),
            *softly_started(Battery(id="T1", emf_v=6.3))[1:],
        ]
        straps = "U1.a=K1.c1 U1.b=K1.c2 T1.+=R1.1 R1.2=V1.4 V1.5=T1.- K1.com=R1.1 K1.no=R1.2"
        points = check(wired(parts, straps)).points
        assert [points[name].branches["K1"].pulled_in for name in ("nominal", "low mains", "high mains")] == [
            True, False, True,
        ]  # fmt: skip
        assert points["nominal"].heaters["V1"][0].v == pytest.approx(6.3)
        assert points["low mains"].heaters["V1"][0].v < 5.0

    def test_a_diode_in_the_line_of_the_coil(self) -> None:
        """Allowed in a DC line, whatever else is on the sheet, and so beside an AC line that the relay works in."""
        parts = [*softly_started(), Diode(id="D1", forward_v=0.7)]
        point = nominal(wired(parts, f"U1.+=D1.a D1.k=K1.c1 U1.-=K1.c2 {AC_LINE} {BRIDGE}"))
        assert not point.unsolved
        assert point.branches["K1"].v == pytest.approx(11.3, abs=0.01)
        assert point.heaters["V1"][0].v > 6.0

    def test_a_chain_of_relays_longer_than_the_tries(self) -> None:
        """Each works the next, each on its own battery."""
        parts: list[AnyPart] = []
        straps = []
        for n in range(1, 31):
            parts += [Battery(id=f"B{n}", emf_v=12.0), relay(f"K{n}")]
            straps.append(f"B{n}.-=K{n}.c2")
            straps.append(f"B{n}.+=K1.c1" if n == 1 else f"B{n}.+=K{n - 1}.com K{n - 1}.no=K{n}.c1")
        point = nominal(wired(parts, " ".join(straps)))
        assert not point.unsolved
        assert all(point.branches[f"K{n}"].pulled_in for n in range(1, 31))

    def test_findings_see_the_contact(self) -> None:
        """A heater that only the contact feeds is heated and in series with what the contact lies in."""
        straps = f"{AUXILIARY} T1.a=K1.com K1.no=V1.4 V1.5=V2.4 V2.5=T1.b T1.b=E1.e U1.-=E1.e"
        parts = [*softly_started(Winding(id="T1", rated_v=12.6, rated_a=1.0)), el84("V2")]
        answer = check(wired(parts, straps))
        assert "not-heated" not in {one.rule for one in answer.findings}
        assert answer.strings == (("V1:4-5", "V2:4-5"),)
        weak = [Battery(id="U1", emf_v=5.0), *parts[1:]]
        cold = [one for one in check(wired(weak, straps)).findings if one.rule == "not-heated"]
        assert "pulls in at 9.00" in str(cold[0].says)

    def test_what_a_change_is_tried_on_includes_the_other_line(self) -> None:
        """A remedy is assessed on what it touches; the supply of the coil belongs to that."""
        sheet = wired([*softly_started(), Battery(id="B1", emf_v=6.3)], f"{AUXILIARY} {AC_LINE} {BRIDGE}")
        assert set(around(sheet, ["V1"]).part_by_id) == {"U1", "K1", "T1", "R1", "V1", "E1"}

    def test_a_chain_is_planned_with_the_contact_as_it_stands(self) -> None:
        sheet = wired(softly_started(), f"{AUXILIARY} {AC_LINE} {BRIDGE}")
        feed = feeds_of_part(sheet.part_by_id["T1"], sheet)[0]
        standing = standing_of(sheet, sheet, CATALOGUE, feed)
        assert standing.amps == pytest.approx(nominal(sheet).supplies["T1"].a, rel=1e-12)
        assert standing.heaters == ("V1",)

    def test_wires_taken_from_the_coil_are_felt_at_the_contact(self) -> None:
        """V2 gets the full volts of its line only while the relay is pulled in by the line of V1."""
        parts = [
            Battery(id="U1", emf_v=12.6), relay(), el84(), el84("V3"),
            Battery(id="T1", emf_v=6.3), Resistor(id="R1", ohm=3.0), el84("V2"),
        ]  # fmt: skip
        line = "T1.+=R1.1 R1.2=V2.4 V2.5=T1.- K1.com=R1.1 K1.no=R1.2"
        sheet = wired(parts, f"U1.+=V1.4 V1.5=V3.4 V3.5=U1.- V1.4=K1.c1 V3.5=K1.c2 {line}")
        feed = feeds_of_part(sheet.part_by_id["U1"], sheet)[0]
        gone = Sheet(parts=sheet.parts, wires=sheet.wires[:3] + sheet.wires[4:])
        (caution,) = disturbed(sheet, gone, CATALOGUE, frozenset(), feed)
        assert caution.where == ("V2",)
        assert "the volts of V2 change by" in str(caution.says)


class TestWhatHasNoAnswer:
    def crosswise(self, **contacts: str) -> Sheet:
        """Each of two relays feeds the coil of the other, through the contact named."""
        parts = [
            Battery(id="B1", emf_v=12.0), Battery(id="B2", emf_v=12.0), relay(), relay("K2"),
            el84(), Battery(id="B3", emf_v=6.3),
        ]  # fmt: skip
        one, two = contacts["k1"], contacts["k2"]
        straps = f"B1.+=K2.com K2.{two}=K1.c1 K1.c2=B1.- B2.+=K1.com K1.{one}=K2.c1 K2.c2=B2.-"
        return wired(parts, f"{straps} B3.+=V1.4 B3.-=V1.5")

    def test_crosswise_on_the_closing_contacts_nothing_moves(self) -> None:
        point = nominal(self.crosswise(k1="no", k2="no"))
        assert not point.unsolved
        assert [point.branches[one].pulled_in for one in ("K1", "K2")] == [False, False]

    def test_crosswise_one_of_each_chatters(self) -> None:
        """K1 released feeds K2, which feeds K1, which takes away K2. Both lines have no answer; the third has."""
        sheet = self.crosswise(k1="nc", k2="no")
        point = nominal(sheet)
        assert [miss.ids for miss in point.unsolved] == [("K1", "K2"), ("K1", "K2")]
        assert "chatter" in str(point.unsolved[0].reason)
        assert point.heaters["V1"][0].v == pytest.approx(6.3)
        assert {t for miss in point.unsolved for t in miss.island}.isdisjoint(point.nodes)
        assert check(sheet).points["cold"].unsolved == ()

    def test_chatter_leaves_alone_what_does_not_feel_it(self) -> None:
        """K3 bridges a dropper from a line of its own; that its cluster holds a chattering relay is nothing to it."""
        chatter = self.crosswise(k1="nc", k2="no")
        more = [relay("K3"), Battery(id="B4", emf_v=12.0)]
        # the contact of K3 is in the line of K1, its coil on the battery B4
        straps = "B4.+=K3.c1 B4.-=K3.c2 K3.com=B1.- "
        wires = wired([], straps).wires
        renamed = [w.__class__(id=f"x{w.id}", start=w.start, end=w.end) for w in wires]
        sheet = Sheet(parts=(*chatter.parts, *more), wires=(*chatter.wires, *renamed))
        circuit = build(sheet, CATALOGUE)
        assert max(len(one.members) for one in circuit.clusters) == 3
        point = nominal(sheet)
        assert [miss.ids for miss in point.unsolved] == [("K1", "K2"), ("K1", "K2")]
        assert point.branches["K3"].pulled_in
        assert point.supplies["B4"].a == pytest.approx(12.0 / 300.0)

    def test_the_line_of_the_coil_is_not_solved(self) -> None:
        """Its relay counts as released, the other line keeps its figures, and both findings say so."""
        parts = [MainsFeed(id="U1"), Diode(id="D1"), *softly_started()[1:]]
        line = AC_LINE.replace("U1.-=E1.e", "").replace("R1.2=V1.4", "R1.2=K1.com K1.no=V1.4")
        answer = check(wired(parts, f"U1.L=D1.a D1.k=K1.c1 U1.N=K1.c2 {line}"))
        point = answer.points["nominal"]
        assert [miss.ids for miss in point.unsolved] == [("D1",)]
        assert "V1.4" not in point.unsolved[0].island
        assert point.heaters["V1"][0].v == pytest.approx(0.0, abs=1e-9)
        cold = next(one for one in answer.findings if one.rule == "not-heated")
        assert "the line of its coil is not solved" in str(cold.says)

    def test_the_line_of_the_contact_is_not_solved(self) -> None:
        """The contact shorts a battery without resistance: the line of the coil has its figures all the same."""
        parts = [*softly_started(Battery(id="T1", emf_v=6.3))]
        point = nominal(wired(parts, f"{AUXILIARY} T1.+=V1.4 T1.-=V1.5 K1.com=T1.+ K1.no=T1.-"))
        assert [miss.ids for miss in point.unsolved] == [("T1",)]
        assert point.branches["K1"].pulled_in
        assert point.supplies["U1"].v == pytest.approx(12.0)

    def test_is_tied_to_the_chassis_although_its_cluster_has_a_fault(self) -> None:
        """No word about a missing tie of the line whose own figures are missing, nor of the other."""
        parts = [*softly_started(Battery(id="T1", emf_v=6.3))]
        straps = f"{AUXILIARY} U1.-=E1.e T1.+=V1.4 T1.-=V1.5 T1.-=E1.e K1.com=T1.+ K1.no=T1.-"
        assert "no-chassis-reference" not in {one.rule for one in check(wired(parts, straps)).findings}


class TestWarmUp:
    """The lines of a cluster run as one network in time, and end where the steady state has them."""

    def run(self, sheet: Sheet) -> WarmupRun:
        return warm_up(sheet, CATALOGUE, Start(mains_v=230.0, seconds=300.0))

    def test_a_diode_beside_an_alternating_line(self) -> None:
        """The diode across a coil blocks for ever; one in series with it takes its volts from the DC alone."""
        parts = [*softly_started(), Diode(id="D1", forward_v=0.7), Diode(id="D2", forward_v=0.7)]
        coil = "U1.+=D1.a D1.k=K1.c1 U1.-=K1.c2 D2.k=K1.c1 D2.a=K1.c2"
        sheet = wired(parts, f"{coil} {AC_LINE} {BRIDGE}")
        run = self.run(sheet)
        assert run.summary.unsolved == ()
        end, steady = run.at(run.end_s), nominal(sheet)
        assert end.branches["K1"].v == pytest.approx(steady.branches["K1"].v, rel=1e-9)
        assert end.branches["D1"].v == pytest.approx(0.7, abs=1e-3)
        assert end.branches["D2"].a == pytest.approx(0.0, abs=1e-6)
        assert end.heaters["V1"][0].v == pytest.approx(steady.heaters["V1"][0].v, rel=1e-4)

    def test_a_line_that_is_not_computed_leaves_the_others(self) -> None:
        """The relay of that line stays released, as in the steady state."""
        parts = [RectifiedSupply(id="U1", rated_v=12.0, rated_a=1.0), *softly_started()[1:]]
        sheet = wired(parts, f"{AUXILIARY} {AC_LINE} {BRIDGE}")
        run, steady = self.run(sheet), nominal(sheet)
        assert (
            [miss.ids for miss in run.summary.unsolved] == [miss.ids for miss in steady.unsolved] == [("U1",)]
        )
        assert "K1.c1" in run.summary.unsolved[0].island
        assert run.summary.events == ()
        assert run.at(run.end_s).heaters["V1"][0].v == pytest.approx(steady.heaters["V1"][0].v, rel=1e-4)
        assert steady.heaters["V1"][0].v < 5.0


class TestMemory:
    def test_an_edit_of_another_line_solves_no_cluster(self) -> None:
        parts = [*softly_started(), Battery(id="B1", emf_v=6.3), el84("V2")]
        sheet = wired(parts, f"{AUXILIARY} {AC_LINE} {BRIDGE} B1.+=V2.4 B1.-=V2.5")
        memory = Memory()
        first = assess(sheet, CATALOGUE, memory=memory)
        assert memory.solved == 2
        edited = set_part("V2", rated_a=0.8)(sheet)
        assert (
            assess(edited, CATALOGUE, memory=memory).points["nominal"].heaters["V1"]
            == (first.points["nominal"].heaters["V1"])
        )
        assert memory.solved == 1

    def test_an_edit_of_the_auxiliary_supply_moves_the_contact(self) -> None:
        sheet = wired(softly_started(), f"{AUXILIARY} {AC_LINE} {BRIDGE}")
        memory = Memory()
        assess(sheet, CATALOGUE, memory=memory)
        weak = set_part("U1", set_v=5.0)(sheet)
        again = assess(weak, CATALOGUE, memory=memory)
        assert again.points == check(weak).points
        assert again.points["nominal"].heaters["V1"][0].v < 5.0


@given(seed=st.integers(0, 10**6), names=st.permutations(["K1", "T1", "U1", "V1", "R1"]))
def test_order_and_names_change_nothing(seed: int, names: list[str]) -> None:
    sheet = wired(softly_started(), f"{AUXILIARY} {AC_LINE} {BRIDGE}")
    wanted = nominal(sheet)
    shuffle = random.Random(seed)
    parts = tuple(shuffle.sample(sheet.parts, len(sheet.parts)))
    wires = tuple(shuffle.sample(sheet.wires, len(sheet.wires)))
    new = dict(zip(["K1", "T1", "U1", "V1", "R1"], [f"{name}9" for name in names], strict=True))
    found = nominal(in_turn(*(rename(old, one) for old, one in new.items()))(Sheet(parts=parts, wires=wires)))
    heater, other = found.heaters[new["V1"]][0], wanted.heaters["V1"][0]
    assert (heater.v, heater.a) == (pytest.approx(other.v, rel=1e-10), pytest.approx(other.a, rel=1e-10))
    assert found.branches[new["K1"]].pulled_in
    assert found.supplies[new["U1"]].a == pytest.approx(wanted.supplies["U1"].a, rel=1e-10)
