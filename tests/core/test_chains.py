"""The chain builder lays what a careful hand would lay, and says what it leaves out."""

from __future__ import annotations

import pytest

from core.chains import Options, Size, chain_offers, edit_of, feeds_of, plan, references_for, usual_offer
from core.errors import EditError
from core.sheet import (
    Battery,
    Chassis,
    DcSupply,
    Lamp,
    Mains,
    MainsFeed,
    RectifiedSupply,
    Resistor,
    Sheet,
    Tube,
    Winding,
    Wire,
)
from tests.core.chain_sheets import CATALOGUE, built, ends, faults, planned, sockets, solved, unwarned

WINDING = Winding(id="T1", rated_v=6.3, rated_a=5.0, regulation_pct=5.0, centre_tap=True, at=(-200.0, 0.0))


def says(items) -> str:
    return " ".join(str(one.says) for one in items)


def test_tapped_heaters_at_six_volts_are_strapped_and_fed_at_the_tap() -> None:
    made = planned(sockets("ECC83", "EL84", extra=(WINDING,)), feed="T1.a-b")
    assert made.order == ("V2", "V1")
    assert ends(made) == ["T1.a V2.4", "T1.b V2.5", "V2.4 V1.4", "V2.5 V1.9", "V1.4 V1.5"]
    assert made.wires[4].is_strap


def test_tapped_heaters_at_twelve_volts_leave_the_tap_open() -> None:
    sheet = sockets("ECC83", "12AU6")
    made = planned(sheet, volts=12.6)
    assert not any("V1.9" in one for one in ends(made))
    heaters = solved(built(sheet, made)).points["nominal"].heaters
    assert [one.v for one in heaters["V1"]] == pytest.approx([6.3, 6.3], rel=0.05)


def test_both_wires_of_a_stretch_are_one_twisted_pair() -> None:
    made = planned(sockets("EL84", "EL84", "EF86"))
    twists = [wire.twist for wire in made.wires]
    assert twists == ["p1", "p1", "p2", "p2", "p3", "p3"]
    taken = Wire(id="w1", start="V1.1", end="V2.1", twist="p1")
    assert planned(sockets("EL84", "EL84", wires=(taken,))).wires[0].twist == "p2"


def test_the_heaviest_come_first_and_get_the_thickest_wire() -> None:
    made = planned(sockets("ECC83", "EL34", "EL34", "EL34"), size=None)
    assert made.order == ("V2", "V3", "V4", "V1")
    areas = [wire.area_mm2 for wire in made.wires if not wire.is_strap][::2]
    assert areas == sorted(areas, reverse=True)
    assert areas[0] > areas[-1] == 0.5
    gauges = [wire.awg for wire in planned(sockets("EL34", "ECC83"), system="awg").wires if not wire.is_strap]
    assert gauges == sorted(gauges)
    assert gauges[-1] == 20


def test_a_size_that_was_chosen_is_kept() -> None:
    made = planned(sockets("EL34", "EL34"), size=Size(awg=22))
    assert {wire.awg for wire in made.wires} == {22}


def test_wires_too_thin_by_choice_are_warned_of() -> None:
    made = planned(sockets("EL34", "EL34", "EL34"), size=Size(awg=30))
    assert any("wire-current" in one.rules for one in made.cautions)


def test_lengths_follow_the_places_along_the_axes_with_the_allowance() -> None:
    sheet = sockets("EL84", "EL84", extra=(WINDING,))
    made = planned(sheet, feed="T1.a-b", allowance_m=0.05)
    assert [wire.length_m for wire in made.wires] == [0.45, 0.45, 0.25, 0.25]
    assert made.length_m == pytest.approx(1.4)
    diagonal = Sheet(parts=(WINDING, Tube(id="V1", type="EL84", at=(100.0, 300.0))))
    assert planned(diagonal, feed="T1.a-b", allowance_m=0.0).wires[0].length_m == 0.6


def test_leads_go_to_the_nearer_pin_where_places_are_known() -> None:
    sheet = sockets("EL84", extra=(WINDING,))
    places = {"T1.a": (0.0, 0.0), "T1.b": (0.0, 50.0), "V1.4": (200.0, 50.0), "V1.5": (200.0, 0.0)}
    made = plan(sheet, CATALOGUE, ("V1",), Options(feed="T1.a-b"), places.get)
    assert ends(made) == ["T1.a V1.5", "T1.b V1.4"]


def test_a_new_supply_has_the_volts_and_a_quarter_in_hand() -> None:
    made = planned(sockets("EL34", "ECC83"))
    (supply,) = made.parts
    assert isinstance(supply, Winding)
    assert (supply.rated_v, supply.rated_a) == (6.3, 2.5)
    assert supply.at[0] < 200.0
    assert made.load_pct == pytest.approx(72.0)
    (steady,) = planned(sockets("EL34"), new_supply="dc_supply").parts
    assert isinstance(steady, DcSupply)
    assert (steady.set_v, steady.limit_a) == (6.3, 2.0)


def test_sockets_for_other_volts_are_named_and_left_out() -> None:
    made = planned(sockets("EL84", "PL84", "GZ34", "nonsense"), ("V4", "V3", "V2", "V1"))
    assert made.order == ("V1",)
    assert {one.id for one in made.left_out} == {"V2", "V3", "V4"}
    assert "V2 (PL84) is made for 15.0\u2009V, not for 6.30\u2009V." in says(made.left_out)
    assert "nonsense of V4 is not known" in says(made.left_out)
    assert "needs a supply of its own" in says(made.left_out)


def test_nothing_to_wire_is_a_problem_that_cannot_be_built() -> None:
    sheet = sockets("PL84")
    made = planned(sheet)
    assert made.problem is not None
    assert not made.wires
    with pytest.raises(EditError):
        edit_of(made)(sheet)
    assert planned(Sheet(), ()).problem is not None


def test_equal_tubes_are_paired_in_series() -> None:
    sheet = sockets("EL84", "6V6GT", "EL84", "6V6GT", "ECC83")
    made = planned(sheet, arrangement="pairs", volts=12.6)
    assert made.order == ("V1", "V3", "V2", "V4", "V5")
    assert made.amps == pytest.approx(0.76 + 0.45 + 0.15)
    assert not faults(solved(built(sheet, made)))
    strings = {frozenset(key.partition(":")[0] for key in one) for one in solved(built(sheet, made)).strings}
    assert {frozenset({"V1", "V3"}), frozenset({"V2", "V4"})} <= strings


def test_one_without_a_partner_is_left_out_or_gets_a_shunt() -> None:
    sheet = sockets("EL84", "6V6GT")
    assert planned(sheet, arrangement="pairs", volts=12.6).problem is not None
    made = planned(sheet, arrangement="pairs", volts=12.6, shunts=True)
    (shunt,) = [part for part in made.parts if isinstance(part, Resistor)]
    assert shunt.ohm == 20.0
    assert shunt.rated_w == 5.0
    assert not faults(solved(built(sheet, made)))
    assert "20.0\u2009Ω carries what V2 does not take" in " ".join(map(str, made.notes))


def test_a_string_has_one_current_and_shows_its_volts() -> None:
    sheet = sockets("PCF82", "PL84", "PCC88", "ECC83", "EL84")
    made = planned(sheet, arrangement="series")
    assert made.amps == 0.3
    assert made.volts == pytest.approx(9.5 + 15 + 7 + 6.3)
    assert [one.id for one in made.left_out] == ["V5"]
    assert "wants 760\u2009mA; the string carries 300\u2009mA" in says(made.left_out)
    assert "V4.4 V4.5" in ends(made), "side by side it takes the 300 mA"
    assert not [one for one in faults(solved(built(sheet, made))) if one.where != ("V5",)]


def test_a_string_ends_at_the_chassis_with_the_lowest_cathode() -> None:
    parts = (
        Tube(id="V1", type="12SQ7", cathode_v=1.0, at=(200, 0)),
        Tube(id="V2", type="35L6GT", cathode_v=7.0, at=(400, 0)),
        Tube(id="V3", type="12SK7", cathode_v=2.0, at=(600, 0)),
        Tube(id="V4", type="35Z5GT", at=(800, 0)),
        MainsFeed(id="M1", at=(-200, 0)),
    )
    sheet = Sheet(parts=parts, mains=Mains(nominal_v=117, low_pct=-5, high_pct=5, hz=60))
    made = planned(sheet, arrangement="series", feed="M1.L-N", reference="side")
    assert made.order == ("V4", "V2", "V3", "V1")
    assert ends(made)[-1].endswith("M1.N")
    (dropper,) = made.parts
    assert isinstance(dropper, Resistor)
    assert (dropper.ohm, dropper.rated_w) == (150.0, 7.0)
    assert "isolating transformer" in says(made.cautions)
    assert not faults(solved(built(sheet, made)))


def test_volts_that_no_resistor_fits_are_refused() -> None:
    winding = Winding(id="T1", rated_v=1_285_649.0, rated_a=1.0, at=(-200.0, 0.0))
    made = planned(sockets("ECC83", extra=(winding,)), arrangement="series", feed="T1.a-b", reference="pair")
    assert str(made.problem) == "The volts of T1 are out of all reason for heaters."


def test_only_a_string_hangs_on_the_mains_and_never_on_the_chassis() -> None:
    sheet = sockets("EL84", extra=(MainsFeed(id="M1"), Chassis(id="E1")))
    assert "only a string" in str(planned(sheet, feed="M1.L-N").problem)
    made = planned(
        sockets("50L6GT", "50L6GT", extra=sheet.parts[:2]),
        arrangement="series",
        feed="M1.L-N",
        reference="side",
    )
    assert not any("E1" in one for one in ends(made))


def test_a_supply_of_other_volts_is_refused_with_both_figures() -> None:
    sheet = sockets("EL84", "EL84", extra=(WINDING,))
    made = planned(sheet, arrangement="pairs", volts=12.6, feed="T1.a-b")
    assert str(made.problem) == "T1 gives 6.30\u2009V; this chain is for 12.6\u2009V."
    made = planned(sheet, arrangement="series", feed="T1.a-b")
    assert str(made.problem) == "T1 gives 6.30\u2009V; the string needs 12.6\u2009V."
    assert planned(sheet, feed="gone").problem is not None


def test_half_of_a_tapped_winding_feeds_a_line_of_half_its_volts() -> None:
    winding = Winding(
        id="T1", rated_v=12.6, rated_a=2.0, regulation_pct=5.0, centre_tap=True, at=(-200.0, 0.0)
    )
    sheet = sockets("EL84", "EL84", extra=(winding,))
    assert [feed.key for feed in feeds_of(sheet)] == ["T1.a-b", "T1.a-ct"]
    made = planned(sheet, feed="T1.a-ct", reference="side")
    assert ends(made)[:2] == ["T1.a V1.4", "T1.ct V1.5"]
    assert not faults(solved(built(sheet, made)))


@pytest.mark.parametrize(
    ("supply", "wanted"),
    [
        (WINDING, ("tap", "pair", "side", "none")),
        (Winding(id="T1", rated_v=6.3, rated_a=1.0), ("pair", "side", "none")),
        (DcSupply(id="T1", set_v=6.3, limit_a=1.0), ("side", "none")),
        (Battery(id="T1", emf_v=6.3), ("side", "none")),
        (RectifiedSupply(id="T1", rated_v=9.0, rated_a=1.0, regulator_v=6.3), ("side", "none")),
        (MainsFeed(id="T1"), ("none",)),
    ],
)
def test_what_a_supply_can_be_tied_by(supply, wanted) -> None:
    assert references_for(feeds_of(Sheet(parts=(supply,)))[0]) == wanted


@pytest.mark.parametrize("reference", ["tap", "pair", "side"])
def test_the_line_is_tied_once(reference: str) -> None:
    sheet = sockets("EL84", "ECC83", extra=(WINDING,))
    made = planned(sheet, feed="T1.a-b", reference=reference)
    rules = {one.rule for one in solved(built(sheet, made)).findings}
    assert not rules & {"no-chassis-reference", "second-reference", "resistor-power"}


@pytest.mark.parametrize("reference", ["pair", "side"])
def test_a_chassis_that_waits_for_its_wire_is_used_wherever_it_stands(reference: str) -> None:
    sheet = sockets("EL84", "ECC83", extra=(WINDING, Chassis(id="E1", at=(900.0, 900.0))))
    made = planned(sheet, feed="T1.a-b", reference=reference)
    assert not any(part.kind == "chassis" for part in made.parts)
    assert any("E1.e" in one for one in ends(made))


def test_a_chassis_far_away_that_serves_others_is_left_alone() -> None:
    others = (
        Chassis(id="E1", at=(900.0, 900.0)),
        Winding(id="T9", rated_v=6.3, rated_a=1.0, at=(900.0, 700.0)),
    )
    tie = Wire(id="w1", start="T9.b", end="E1.e")
    sheet = sockets("EL84", "ECC83", extra=(WINDING, *others), wires=(tie,))
    made = planned(sheet, feed="T1.a-b", reference="side")
    assert [part.kind for part in made.parts] == ["chassis"]


def test_the_chassis_of_a_pair_stands_below_it_and_covers_nothing() -> None:
    below = Tube(id="V9", type="ECC83", at=(WINDING.at[0], WINDING.at[1] + 200.0))
    made = planned(sockets("EL84", extra=(WINDING, below)), feed="T1.a-b", reference="pair")
    first, second, chassis = made.parts
    assert chassis.kind == "chassis"
    assert chassis.at[1] > max(first.at[1], second.at[1])
    assert max(abs(chassis.at[0] - below.at[0]) - 90.0, abs(chassis.at[1] - below.at[1]) - 110.0) >= 0


def test_a_supply_that_gives_nothing_has_nothing_told_of_others() -> None:
    made = planned(sockets("EL84", extra=(WINDING,)), feed="T1.a-b", reference="pair")
    assert "to others already" not in " ".join(map(str, made.notes))


def test_what_is_tied_already_is_not_tied_again() -> None:
    sheet = sockets(
        "EL84", extra=(WINDING, Chassis(id="E1")), wires=(Wire(id="w1", start="T1.ct", end="E1.e"),)
    )
    made = planned(sheet, feed="T1.a-b", reference="pair")
    assert not made.parts
    assert "tied to the chassis already" in " ".join(map(str, made.notes))


def test_reference_resistors_of_a_high_string_are_no_heaters() -> None:
    made = planned(sockets("50L6GT", "50L6GT"), arrangement="series", reference="pair")
    pair = [part for part in made.parts if isinstance(part, Resistor)]
    assert len(pair) == 2
    assert all(part.ohm > 1000 and part.rated_w == 1.0 for part in pair)


def test_wired_sockets_are_left_alone_unless_they_are_to_be_laid_anew() -> None:
    sheet = sockets("EL84", "EL84", "EL84", extra=(WINDING,))
    first = built(sheet, planned(sheet, ("V1", "V2"), feed="T1.a-b", reference="tap"))
    made = planned(first, ("V2", "V3"), feed="T1.a-b")
    assert made.order == ("V3",)
    assert "V2 is wired already (w3 and w4)." in says(made.left_out)
    again = planned(first, ("V2", "V3"), feed="T1.a-b", replace=True)
    assert again.order == ("V2", "V3")
    assert again.removed == ("w3", "w4")
    assert "no heat" not in says(again.cautions)
    assert not faults(solved(built(first, again)))
    assert not {wire.id for wire in again.wires} & {wire.id for wire in first.wires}


def test_sockets_that_lose_their_feed_are_named() -> None:
    sheet = sockets("EL84", "EL84", "EL84", extra=(WINDING,))
    first = built(sheet, planned(sheet, ("V1", "V2", "V3"), feed="T1.a-b", reference="tap"))
    made = planned(first, ("V1",), feed="T1.a-b", replace=True)
    assert "V2 and V3 get no heat any more" in says(made.cautions)
    assert not unwarned(first, made)


def test_what_stays_behind_on_the_old_supply_gets_other_volts() -> None:
    sheet = sockets("EL34", "EL34", "EL34", extra=(WINDING,))
    first = built(sheet, planned(sheet, ("V1", "V2", "V3"), feed="T1.a-b", reference="tap"))
    made = planned(first, ("V2", "V3"), replace=True)
    assert "the volts of V1 change by +" in says(made.cautions)
    assert not unwarned(first, made)


def test_what_the_supply_gives_already_counts() -> None:
    sheet = sockets("EL34", "EL34", "EL34", "EL34", extra=(WINDING,))
    first = built(sheet, planned(sheet, ("V1", "V2"), feed="T1.a-b", reference="tap"))
    made = planned(first, ("V3", "V4"), feed="T1.a-b")
    assert made.total_a == pytest.approx(6.0, rel=0.02)
    assert made.load_pct == pytest.approx(120, rel=0.02)
    assert any("supply-overload" in one.rules for one in made.cautions)
    assert "T1 feeds V1 and V2 already; its volts change by −" in says(made.cautions)


def test_mains_far_off_are_warned_of_with_the_volts_that_follow() -> None:
    made = planned(sockets("EL84", "EL84", band=12.0))
    assert "At high mains V1 and V2 are about +1" in says(made.cautions)
    assert not planned(sockets("EL84", "EL84", band=5.0)).cautions


def test_a_cathode_too_far_from_its_heater_is_warned_of() -> None:
    sheet = Sheet(parts=(Tube(id="V1", type="ECC83", cathode_v=230.0, at=(0, 0)), WINDING))
    made = planned(sheet, feed="T1.a-b", reference="tap")
    assert "as far from its cathode as that of V1" in says(made.cautions)
    assert "cathode" not in says(planned(sheet, feed="T1.a-b", reference="none").cautions)


def test_a_pulled_tube_breaks_its_string() -> None:
    sheet = Sheet(
        parts=(Tube(id="V1", type="EL84", pulled=True, at=(0, 0)), Tube(id="V2", type="EL84", at=(200, 0)))
    )
    made = planned(sheet, arrangement="series")
    assert "stays cold" in says(made.cautions)
    assert not unwarned(sheet, made)
    assert "stays cold" not in says(planned(sheet).cautions)


def test_a_lamp_hangs_on_the_line_as_well() -> None:
    sheet = sockets("EL84", extra=(Lamp(id="H1", type="#47", at=(100, 200)), WINDING))
    made = planned(sheet, feed="T1.a-b", reference="tap")
    assert made.order == ("V1", "H1")
    assert not faults(solved(built(sheet, made)))


def test_a_rectifier_of_its_own_stays_afloat() -> None:
    made = planned(sockets("GZ34"), volts=5.0, reference="side")
    assert made.order == ("V1",)
    assert not any(part.kind == "chassis" for part in made.parts)
    assert not faults(solved(built(sockets("GZ34"), made)))


def test_an_edit_is_refused_on_a_sheet_that_has_changed_meanwhile() -> None:
    sheet = sockets("EL84", "EL84")
    made = planned(sheet)
    after = built(sheet, made)
    with pytest.raises(EditError, match="already in use"):
        edit_of(made)(after)


def offers_for(*types: str):
    sheet = sockets(*types)
    return chain_offers(sheet, CATALOGUE, tuple(part.id for part in sheet.parts))


def test_offers_say_what_is_possible_and_why_not() -> None:
    six, twelve, pairs, series = offers_for("EL84", "EL84", "ECC83")
    assert (six.taken, twelve.taken, pairs.taken, series.taken) == (3, 1, 3, 2)
    assert "1 of 3 suit" in str(twelve.says)
    assert usual_offer((six, twelve, pairs, series)) is six
    _, twelve, pairs, series = offers_for("EL84")
    assert not twelve.is_possible
    assert str(pairs.says).startswith("Needs two heaters")
    assert str(series.says).startswith("Needs two heaters")
    _, _, pairs, series = offers_for("EL84", "6V6GT")
    assert pairs.needs_shunts and series.needs_shunts
    assert usual_offer(offers_for("50L6GT", "50L6GT")).arrangement == "series"


def test_the_offer_that_a_supply_of_the_sheet_suits_comes_first() -> None:
    supply = DcSupply(id="U1", set_v=12.6, limit_a=2.0)
    sheet = sockets("ECC83", "ECC83", extra=(supply,))
    offers = chain_offers(sheet, CATALOGUE, ("V1", "V2"))
    assert usual_offer(offers).volts == 6.3
    assert usual_offer(offers, feeds_of(sheet)).volts == 12.6


def test_lines_of_other_volts_are_offered_where_they_are_wanted() -> None:
    offers = offers_for("GZ34")
    assert [(one.arrangement, one.volts, one.taken) for one in offers if one.is_possible] == [
        ("parallel", 5.0, 1)
    ]
    assert usual_offer(offers_for("PL84", "PCF82", "PCC88")).arrangement == "series"
    assert usual_offer(offers_for()).taken == 0
