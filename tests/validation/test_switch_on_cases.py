"""Switching on: published cases and what is common practice in the trade, each run as a sheet in time.

A lamp in a chain: cool386.com on dropper resistors, part 5. A limiter's heat: a 7812 with four heaters, in Tech's
Files of a studio magazine (mixonline.com). Boards on a switching supply: a builder's blog, April 2013. Two 50CA10: an
article at audiosharing.com. I2t of one heater: reference case A, an independent integration. The rest is common
practice in the trade and said to be so.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest

from core.catalogue import Catalogue
from core.sheet import (
    AnyPart,
    Battery,
    DcSupply,
    Fuse,
    Lamp,
    Mains,
    MainsFeed,
    Overload,
    Relay,
    Resistor,
    Sheet,
    Tube,
)
from core.warmup import WarmupRun, warm_up
from core.warmup.results import Start

Run = Callable[..., WarmupRun]


@pytest.fixture(scope="module")
def switched_on(wired: Callable[..., Sheet], catalogue: Catalogue) -> Run:
    """The run of a sheet from parts and straps."""

    def run(parts: list[AnyPart], straps: str, seconds: float = 60.0, **fields: object) -> WarmupRun:
        sheet = wired(parts, straps, **fields)
        found = warm_up(sheet, catalogue, Start(mains_v=sheet.mains.nominal_v, seconds=seconds))
        assert not found.summary.unsolved
        return found

    return run


def across(count: int) -> str:
    return " ".join(f"U1.+=V{n}.4 V{n}.5=U1.-" for n in range(count))


def chain(names: list[str], first: str, last: str) -> str:
    ends = [first, *(f"{name}.{pin}" for name in names for pin in ("4", "5")), last]
    return " ".join(f"{a}={b}" for a, b in zip(ends[::2], ends[1::2], strict=True))


class TestLampInAChain:
    """cool386.com, part 5: 45.1 V of heaters at 0.3 A, a lamp of 6.3 V 0.25 A; 126 ohm by Ohm's law, 39 at most.

    Worked out by hand for 117 V, heaters that have six times their cold resistance hot, and a lamp that is hot at
    once: with 126 ohm the lamp runs at 6.30 V and gets 11.3 V at first; with 39 ohm 4.05 V and 6.87 V. Within 3 %: a
    ratio of 5 or 7 moves these figures by as much.
    """

    @pytest.mark.parametrize(("shunt_ohm", "running_v", "first_v"), [(126.0, 6.30, 11.3), (39.0, 4.05, 6.87)])
    def test_shunt(self, shunt_ohm: float, running_v: float, first_v: float, switched_on: Run) -> None:
        names = [f"V{n}" for n in range(7)]
        tubes = [Tube(id=name, type="EL84", rated_v=45.1 / 7, rated_a=0.3, cold_ratio=6.0) for name in names]
        # the dropper of the set with 126 ohm in place: lamp and shunt together take the 0.3 A of the chain
        ohm = (117.0 - 45.1 - 6.3) / 0.3
        parts = [MainsFeed(id="M1"), Resistor(id="R1", ohm=ohm), Lamp(id="H1", rated_v=6.3, rated_a=0.25)]
        straps = "M1.L=R1.1 R1.2=H1.1 H1.1=R2.1 H1.2=R2.2 " + chain(names, "H1.2", "M1.N")
        found = switched_on(
            [*parts, Resistor(id="R2", ohm=shunt_ohm), *tubes], straps, mains=Mains(nominal_v=117.0)
        )
        assert found.at(60.0).heaters["H1"][0].v == pytest.approx(running_v, rel=0.03)
        (lamp,) = found.summary.heaters["H1"]
        assert lamp.peak_v == pytest.approx(first_v, rel=0.03)
        assert lamp.peak_at_s < 1.5  # while all the rest is cold


class TestLimiter:
    """mixonline.com, Tech's Files: four heaters on 12 V from a regulator, 15 ohm cold and 80 ohm hot each, measured.

    Its 16 V input is ours. Exact, as 12 V over these resistances: 3.2 A would be taken cold, 0.6 A hot: 2.4 W. A
    limit of 2.2 A leaves 8.25 V: 17.05 W; 1.0 A 3.75 V: 12.25 W.
    """

    @pytest.mark.parametrize(("limit_a", "volts", "watts"), [(2.2, 8.25, 17.05), (1.0, 3.75, 12.25)])
    def test_heat(self, limit_a: float, volts: float, watts: float, switched_on: Run) -> None:
        # a room of 20 °C, which is where the program has the cold resistance of a type
        tubes = [
            Tube(id=f"V{n}", type="EL84", rated_v=12.0, rated_a=0.15, cold_ratio=80 / 15) for n in range(4)
        ]
        supply = DcSupply(id="U1", set_v=12.0, limit_a=limit_a, input_v=16.0)
        found = switched_on([supply, *tubes], across(4), 120.0, ambient_c=20.0)
        first = found.at(0.0).supplies["U1"]
        assert (first.v, first.a) == pytest.approx((volts, limit_a), rel=1e-6)
        figures = found.summary.supplies["U1"]
        assert figures.asked_a == pytest.approx(3.2, rel=1e-6)
        assert figures.peak_loss_w is not None
        assert figures.end_loss_w == pytest.approx(2.4, rel=1e-3)
        # the printed watts are those of the first instant; the heat is most then or a little later, never less
        assert (16.0 - first.v) * first.a == pytest.approx(watts, rel=1e-6)
        assert figures.peak_loss_w >= watts * (1 - 1e-6)


class TestBoards:
    """A builder's blog, April 2013: a 12 V 3 A switching supply; boards of 0.52 A, 5.33 times their cold resistance.

    Asked for when cold are 11.1 A by four boards and 13.9 A by five: to the three digits given. Four started and five
    did not; how long that supply holds before it cuts out is not known, so only five are held here to a hiccup one.
    """

    def boards(self, count: int, overload: Overload, switched_on: Run) -> WarmupRun:
        tubes = [
            Tube(id=f"V{n}", type="EL84", rated_v=12.0, rated_a=0.52, cold_ratio=5.33) for n in range(count)
        ]
        supply = DcSupply(id="U1", set_v=12.0, limit_a=3.0, overload=overload)
        return switched_on([supply, *tubes], across(count), ambient_c=20.0)

    @pytest.mark.parametrize(("count", "asked_a"), [(4, 11.1), (5, 13.9)])
    def test_cold_demand(self, count: int, asked_a: float, switched_on: Run) -> None:
        found = self.boards(count, "constant-current", switched_on).summary.supplies["U1"]
        assert found.asked_a == pytest.approx(asked_a, abs=0.05)

    def test_five_on_one_that_tries_again(self, switched_on: Run) -> None:
        found = self.boards(5, "hiccup", switched_on).summary.supplies["U1"]
        assert (found.outcome, found.decided) == ("retries", True)
        assert found.end_v < 1.0

    def test_one_that_holds_its_current_starts_both_five_later(self, switched_on: Run) -> None:
        found = [
            self.boards(n, "constant-current", switched_on).summary.supplies["U1"].regulates_s for n in (4, 5)
        ]
        four, five = found
        assert four is not None
        assert five is not None
        assert 1.0 < four < five < 60.0


class TestCommonPractice:
    def test_half_an_ohm_in_a_chain(self, switched_on: Run) -> None:
        """Half an ohm to take the edge off a chain of 1 A drops half a volt and takes half a watt; 1 %.

        Beside 25 ohm of heaters, 3.6 ohm cold, it takes only about an eighth off the surge.
        """
        names = [f"V{n}" for n in range(4)]
        tubes = [Tube(id=name, type="EL84", rated_v=6.3, rated_a=1.0) for name in names]
        parts = [Battery(id="U1", emf_v=25.7), Resistor(id="R1", ohm=0.5), *tubes]
        found = switched_on(parts, "U1.+=R1.1 " + chain(names, "R1.2", "U1.-"))
        body = found.at(found.end_s).branches["R1"]
        assert (body.a, body.v, body.w) == pytest.approx((1.0, 0.5, 0.5), rel=0.01)
        with_it = found.summary.supplies["U1"].peak_a
        bare = switched_on([Battery(id="U1", emf_v=25.2), *tubes], chain(names, "U1.+", "U1.-"))
        assert 0.8 < with_it / bare.summary.supplies["U1"].peak_a < 0.95

    def test_a_relay_for_twelve_volts(self, switched_on: Run) -> None:
        """It pulls in at 9 to 10 V (common practice); its coil volts are read as it does so."""
        tube = Tube(id="V1", type="EL84", rated_v=12.6, rated_a=0.6)
        relay = Relay(id="K1", coil_v=12.0, coil_ohm=400.0)
        parts = [DcSupply(id="U1", set_v=12.6, limit_a=1.0), tube, relay]
        found = switched_on(parts, "U1.+=V1.4 V1.5=U1.- U1.+=K1.c1 K1.c2=U1.-")
        pulls_in_s = found.summary.relays["K1"].pulls_in_s
        assert pulls_in_s is not None
        assert pulls_in_s > 0.1
        assert 9.0 - 1e-3 <= found.at(pulls_in_s).supplies["U1"].v <= 10.0

    def test_supplies_try_again_about_each_second(self, switched_on: Run) -> None:
        """Switching supplies that cut out come back about once a second: 0.8 to 1.3 s as the sheet has them."""
        tubes = [Tube(id=f"V{n}", type="EL84") for n in range(4)]
        supply = DcSupply(id="U1", set_v=6.3, limit_a=3.5, overload="hiccup")
        found = switched_on([supply, *tubes], across(4), 20.0)
        tries = [event.t_s for event in found.summary.events if event.what == "tries again"]
        assert found.summary.supplies["U1"].outcome == "retries"
        assert len(tries) > 10
        assert all(0.8 < b - a < 1.3 for a, b in pairwise(tries))

    def test_ten_times_the_steady_current_starts_every_type(
        self, switched_on: Run, catalogue: Catalogue
    ) -> None:
        """Whatever is in the catalogue, bare thoriated filaments (10.3 times) too: none keeps such a supply waiting."""
        for kind in catalogue.tubes.values():
            section = kind.sections[0]
            supply = DcSupply(id="U1", set_v=section.rated_v, limit_a=10 * section.rated_a, overload="hiccup")
            first, second = section.pins[:2]
            tube = Tube(id="V1", type=kind.designation)
            found = switched_on([supply, tube], f"U1.+=V1.{first} V1.{second}=U1.-", 3.0)
            figures = found.summary.supplies["U1"]
            assert figures.starts, kind.designation
            assert figures.restarts == 0, kind.designation

    @pytest.mark.parametrize("overload", ["constant-current", "hiccup", "foldback", "latch-off"])
    @pytest.mark.parametrize("name", ["EL84", "6SN7GT", "ECC83", "12AX7", "EL34", "PL504", "50CA10"])
    def test_ten_times_the_steady_current_is_never_asked_for(
        self, name: str, overload: Overload, switched_on: Run, catalogue: Catalogue
    ) -> None:
        """Heaters take five to eight times their hot current when cold, so such a supply is never at its limit."""
        kind = catalogue.tube(name)
        assert kind is not None
        section = kind.sections[0]
        limit_a = 10 * section.rated_a
        supply = DcSupply(id="U1", set_v=section.rated_v, limit_a=limit_a, overload=overload)
        first, second = section.pins[:2]
        found = switched_on([supply, Tube(id="V1", type=name)], f"U1.+=V1.{first} V1.{second}=U1.-", 30.0)
        figures = found.summary.supplies["U1"]
        assert figures.starts
        assert not found.summary.events
        assert figures.peak_a < 0.9 * limit_a


class TestTwo50CA10:
    """audiosharing.com, an article on the 50CA10: 286 ohm hot, about 40 ohm cold; two in series on 100 V.

    100 V over 80 ohm is 1.25 A. Within 3 %: "about 40" has one or two digits, and the room is 5 K warmer here.
    """

    def test_surge(self, switched_on: Run, catalogue: Catalogue) -> None:
        kind = catalogue.tube("50CA10")
        assert kind is not None
        assert kind.cold_ratio == pytest.approx(286 / 40, rel=0.02)
        first, second = kind.sections[0].pins
        parts = [MainsFeed(id="M1"), Tube(id="V1", type="50CA10"), Tube(id="V2", type="50CA10")]
        straps = f"M1.L=V1.{first} V1.{second}=V2.{first} V2.{second}=M1.N"
        found = switched_on(parts, straps, mains=Mains(nominal_v=100.0))
        assert found.summary.supplies["M1"].peak_a == pytest.approx(1.25, rel=0.03)
        assert found.summary.supplies["M1"].end_a == pytest.approx(0.175, rel=1e-3)
        hot, cold = (found.at(t).heaters["V1"][0] for t in (60.0, 0.0))
        assert (hot.v / hot.a) / (cold.v / cold.a) == pytest.approx(7.1, rel=0.03)


class TestFuse:
    """Reference case A (6.3 V 0.3 A, 11 s): the I2t above that of the final current tends to about 1.2 A2s a tube.

    n tubes side by side take n^2 times that. Within 20 %: case A has its resistance as a power of the temperature,
    and takes 10.3 s where this tube takes 11 s. The square of the number is exact, bar the fuse's own resistance.
    """

    def excess(self, count: int, switched_on: Run) -> float:
        tubes = [
            Tube(id=f"V{n}", type="EL84", rated_v=6.3, rated_a=0.3, cold_ratio=6.77, warmup_s=10.26)
            for n in range(count)
        ]
        fuse = Fuse(id="F1", rated_a=5.0, cold_ohm=1e-6)
        straps = "U1.+=F1.1 " + " ".join(f"F1.2=V{n}.4 V{n}.5=U1.-" for n in range(count))
        found = switched_on([Battery(id="U1", emf_v=6.3), fuse, *tubes], straps)
        return found.summary.fuses["F1"].excess_i2t

    def test_one_tube(self, switched_on: Run) -> None:
        assert self.excess(1, switched_on) == pytest.approx(1.18, rel=0.2)

    @pytest.mark.parametrize("count", [2, 5])
    def test_the_square_of_their_number(self, count: int, switched_on: Run) -> None:
        assert self.excess(count, switched_on) == pytest.approx(
            count**2 * self.excess(1, switched_on), rel=1e-4
        )
