"""Pairs and joints: twisting, untwisting, cutting a wire and mending it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.checks import find_problems
from core.edits import add_wire, in_turn, set_wire
from core.edits.pairs import fresh_twist, set_wires, twin_of, twist, untwist, with_twins
from core.edits.splicing import can_take_out, joint_ids, split_wire, take_out_joint
from core.errors import EditError
from core.sheet import Chassis, Joint, Sheet, Tube, Winding, Wire


def sheet() -> Sheet:
    return Sheet(
        parts=(
            Winding(id="T1", rated_v=6.3, rated_a=2.0),
            Tube(id="V1", type="EL84", at=(200.0, 0.0)),
            Chassis(id="E1", at=(0.0, 200.0)),
        ),
        wires=(
            Wire(id="w1", start="T1.a", end="V1.4", awg=18, length_m=0.4, colour="red"),
            Wire(id="w2", start="V1.5", end="T1.b", awg=18, length_m=0.4),
            Wire(id="w3", start="T1.b", end="E1.e"),
        ),
    )


def paired() -> Sheet:
    return twist("w2", "w1")(sheet())


def test_two_wires_between_the_same_parts_become_a_pair() -> None:
    after = paired()
    assert [wire.twist for wire in after.wires] == ["p1", "p1", None]
    assert twin_of(after, "w1") == "w2"
    assert with_twins(after, ("w2", "V1")) == {"w1", "w2", "V1"}
    assert fresh_twist(after) == "p2"
    assert twist("w1", "w2")(after) is after


def test_a_pair_follows_the_corners_of_its_first_wire() -> None:
    bent = set_wires(("w1", "w2"), via=((10.0, 20.0),))(sheet())
    after = twist("w2", "w1")(bent)
    assert after.wire_by_id["w1"].via == ((10.0, 20.0),)
    assert after.wire_by_id["w2"].via == ()


@pytest.mark.parametrize(
    ("ids", "said"),
    [
        (("w1", "w3"), "w1 and w3 do not run between the same two parts."),
        (("w1", "w9"), "A pair is twisted of two wires."),
        (("w1", "w1"), "A pair is twisted of two wires."),
    ],
)
def test_what_cannot_be_a_pair_is_refused(ids: tuple[str, str], said: str) -> None:
    with pytest.raises(EditError) as refused:
        twist(*ids)(sheet())
    assert str(refused.value) == said


def test_a_wire_that_is_twisted_again_leaves_its_old_pair() -> None:
    more = add_wire("T1.a", "V1.5", id="w4")(paired())
    after = twist("w1", "w4")(more)
    assert twin_of(after, "w1") == "w4"
    assert after.wire_by_id["w2"].twist is None


def test_untwisting_one_wire_loosens_both() -> None:
    assert untwist(("w2",))(paired()) == sheet()
    assert untwist(("w3",))(sheet()) == sheet()


def test_three_wires_that_share_a_twist_are_no_pair() -> None:
    assert twin_of(set_wire("w3", twist="p1")(paired()), "w1") is None


def test_a_wire_is_cut_into_two_that_share_its_length() -> None:
    bent = set_wire("w1", via=((50.0, -40.0), (150.0, -40.0)))(sheet())
    after = split_wire("w1", (100.0, -40.0), 0.25, 1)(bent)
    first, second = after.wires[:2]
    assert (first.start, first.end, second.start, second.end) == ("T1.a", "J1.j", "J1.j", "V1.4")
    assert (first.length_m, second.length_m) == (pytest.approx(0.1), pytest.approx(0.3))
    assert (second.awg, second.colour) == (18, "red")
    assert (first.via, second.via) == (((50.0, -40.0),), ((150.0, -40.0),))
    assert after.part_by_id["J1"] == Joint(id="J1", at=(100.0, -40.0))
    assert not find_problems(after)


def test_the_twin_is_cut_too_and_there_are_two_pairs() -> None:
    before = paired()
    assert joint_ids(before, "w1") == ("J1", "J2")
    after = split_wire("w1", (100.0, 0.0), 0.25, 0, (100.0, 20.0))(before)
    assert after.part_by_id["J2"].at == (100.0, 20.0)
    by_end = {frozenset((wire.start, wire.end)): wire for wire in after.wires}
    near = by_end[frozenset(("T1.a", "J1.j"))], by_end[frozenset(("T1.b", "J2.j"))]
    far = by_end[frozenset(("V1.4", "J1.j"))], by_end[frozenset(("V1.5", "J2.j"))]
    assert [wire.twist for wire in (*near, *far)] == ["p1", "p1", "p2", "p2"]
    assert [wire.length_m for wire in (*near, *far)] == pytest.approx([0.1, 0.1, 0.3, 0.3])


def test_there_must_be_such_a_wire() -> None:
    with pytest.raises(EditError, match="There is no wire w9"):
        split_wire("w9", (0.0, 0.0))(sheet())


@pytest.mark.parametrize("make", [sheet, paired])
@given(share=st.sampled_from([0.25, 0.5, 0.75]), cut=st.sampled_from(["w1", "w2"]), first=st.booleans())
def test_taking_the_joint_out_is_the_way_back(make, share: float, cut: str, first: bool) -> None:
    before = make()
    after = split_wire(cut, (100.0, 0.0), share)(before)
    joint = joint_ids(before, cut)[0 if first else -1]
    back = take_out_joint(joint)(after)
    assert back.parts == before.parts
    for wire in before.wires:
        again = back.wire_by_id[wire.id]
        assert again.length_m == (None if wire.length_m is None else pytest.approx(wire.length_m))
        for name in ("start", "end", "awg", "colour", "via"):
            assert getattr(again, name) == getattr(wire, name)
        assert twin_of(back, wire.id) == twin_of(before, wire.id)


def test_corners_are_joined_in_the_order_of_the_way() -> None:
    cut = split_wire("w1", (100.0, 0.0))(sheet())
    second = next(wire.id for wire in cut.wires if wire.start == "J1.j")
    bent = in_turn(
        set_wire("w1", via=((1.0, 0.0), (2.0, 0.0))),
        set_wire(second, start="V1.4", end="J1.j", via=((4.0, 0.0), (3.0, 0.0))),
    )(cut)
    merged = take_out_joint("J1")(bent).wire_by_id["w1"]
    assert merged.via == ((1.0, 0.0), (2.0, 0.0), (3.0, 0.0), (4.0, 0.0))
    assert (merged.start, merged.end) == ("T1.a", "V1.4")


def test_what_cannot_become_one_wire_is_refused() -> None:
    cut = split_wire("w1", (100.0, 0.0))(sheet())
    assert can_take_out(cut, "J1")
    second = next(wire.id for wire in cut.wires if wire.start == "J1.j")
    thick = set_wire(second, awg=14)(cut)
    tapped = add_wire("J1.j", "E1.e")(cut)
    both = set_wire(second, end="T1.a")(cut)
    for spoilt, said in (
        (thick, "differ in gauge"),
        (tapped, "3 end on it"),
        (both, "go to the same terminal"),
    ):
        assert not can_take_out(spoilt, "J1")
        with pytest.raises(EditError, match=said):
            take_out_joint("J1")(spoilt)
    with pytest.raises(EditError, match="V1 is not a joint"):
        take_out_joint("V1")(cut)


def test_a_joint_in_one_wire_of_a_pair_alone_loosens_the_pair() -> None:
    cut = split_wire("w1", (100.0, 0.0))(paired())
    tapped = add_wire("J2.j", "E1.e")(cut)
    after = take_out_joint("J1")(tapped)
    assert [wire.twist for wire in after.wires] == [None] * len(after.wires)
    assert "J2" in after.part_by_id
