"""How many tubes of a line still start, by what the supply does in overload."""

from __future__ import annotations

import pytest

from core.edits import set_part
from core.errors import Cancelled
from core.sheet import DcSupply, Sheet, Tube, Winding, Wire
from core.starting import OVERLOADS, Count, Counts, how_many_start, most_that_start, told, willing
from tests.core.rule_sheets import builtin
from tests.core.softstart_sheets import PLACED, boards


def counted(sheet: Sheet, tubes: tuple[str, ...] | None = None) -> Counts:
    found = how_many_start(sheet, builtin().with_types(sheet.types), "P1", tubes)
    assert found is not None
    return found


def test_the_verdict_on_a_number() -> None:
    count = Count(certain=2, possible=4)
    assert [count.verdict(n) for n in range(1, 6)] == [
        "starts",
        "starts",
        "uncertain",
        "uncertain",
        "does not start",
    ]


def test_units_are_tubes_and_whole_strings_the_heaviest_first() -> None:
    """Two 6V6 in series take 0.45 A on 12.6 V, two ECC83 and an ECC83 alone 0.15 A each."""
    supply = DcSupply(id="P1", set_v=12.6, limit_a=10.0)
    parts = (
        supply,
        Tube(id="V1", type="ECC83"),
        Tube(id="V2", type="6V6GT"),
        Tube(id="V3", type="6V6GT"),
        Tube(id="V4", type="EL84", pulled=True),
    )
    ends = "P1.+ V1.4, V1.5 P1.-, P1.+ V2.2, V2.7 V3.2, V3.7 P1.-, P1.+ V4.4, V4.5 P1.-"
    wires = tuple(
        Wire(id=f"w{n}", start=pair.split()[0], end=pair.split()[1]) for n, pair in enumerate(ends.split(","))
    )
    found = counted(Sheet(parts=parts, wires=wires))
    assert found.units == (("V2", "V3"), ("V1",))
    assert found.cold_a[0] == pytest.approx(3 * found.cold_a[1], rel=0.2)
    assert found.own == "constant-current"
    assert set(found.by_overload) == set(OVERLOADS)


def test_a_supply_of_ten_times_the_current_starts_anything() -> None:
    found = counted(boards(4, limit_a=20.8))
    assert all(count == Count(4, 4) for count in found.by_overload.values())


def test_a_supply_below_the_steady_current_of_one_starts_none() -> None:
    found = counted(boards(2, limit_a=0.3))
    assert all(count == Count(0, 0) for count in found.by_overload.values())


def test_only_the_tubes_that_are_asked_about_are_counted() -> None:
    one = boards(4, limit_a=20.8)
    found = counted(one, ("V2", "V3"))
    assert sorted(unit[0] for unit in found.units) == ["V2", "V3"]
    assert found.by_overload["hiccup"] == Count(2, 2)
    assert how_many_start(one, builtin().with_types(one.types), "P1", ()) is None


def test_more_is_possible_than_certain_and_a_larger_supply_starts_no_fewer() -> None:
    small, large = (counted(boards(3, limit_a=limit)).by_overload for limit in (1.7, 3.4))
    for kind in OVERLOADS:
        assert small[kind].certain <= small[kind].possible
        assert small[kind].certain <= large[kind].certain
        assert small[kind].possible <= large[kind].possible


def test_the_own_type_comes_first_and_counts_what_the_warm_up_shows() -> None:
    one = set_part("P1", overload="latch-off")(PLACED["close by"])
    found = counted(one)
    assert found.own == "latch-off"
    assert list(found.by_overload)[1:] == [kind for kind in OVERLOADS if kind != "latch-off"]


def test_no_count_where_there_is_nothing_to_count() -> None:
    catalogue = builtin()
    lone = Sheet(
        parts=(DcSupply(id="P1", set_v=6.3, limit_a=1.0), Winding(id="T1", rated_v=6.3, rated_a=1.0))
    )
    assert how_many_start(lone, catalogue, "P1") is None
    assert how_many_start(lone, catalogue, "T1") is None
    assert how_many_start(lone, catalogue, "nobody") is None


def test_what_is_said_of_a_count() -> None:
    counts = Counts(
        "P1",
        (("V1",), ("V2",), ("V3",)),
        (1.0, 1.0, 1.0),
        {"hiccup": Count(1, 2), "constant-current": Count(3, 3)},
    )
    assert str(told(counts, "constant-current")) == "On a supply that holds at its limit, 3 of 3 start."
    assert "1 of 3 start for certain; up to 2 may" in str(told(counts, "hiccup"))


def test_a_willing_supply() -> None:
    supply = DcSupply(id="P1", set_v=12.0, limit_a=2.0, overload="foldback", foldback_a=0.4, trip_s=30.0)
    more = willing(supply)
    assert (more.limit_a, more.foldback_a, more.trip_s) == (pytest.approx(2.7), pytest.approx(0.54), 30.0)
    assert willing(DcSupply(id="P1", set_v=12.0, limit_a=2.0)).foldback_a is None


def test_a_count_can_be_given_up_and_tells_how_far_it_is() -> None:
    one = boards(3)
    catalogue = builtin().with_types(one.types)
    with pytest.raises(Cancelled):
        how_many_start(one, catalogue, "P1", progress=lambda share: share < 0.1)
    told: list[float] = []

    def listen(share: float) -> bool:
        told.append(share)
        return True

    how_many_start(one, catalogue, "P1", progress=listen)
    assert told == sorted(told) and told[0] >= 0 and told[-1] <= 1


def test_boards_without_a_sheet_are_counted_as_those_on_one() -> None:
    supply = DcSupply(id="P1", set_v=12.0, limit_a=1.0, overload="hiccup")
    plain = most_that_start(12.0, 0.52, 5.33, supply)
    on_sheet = counted(boards(len(plain.units), limit_a=1.0))
    assert len(plain.units) == 3
    assert plain.by_overload == on_sheet.by_overload
