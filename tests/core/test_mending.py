"""Remedies: each carried out on a sheet that shows its finding, which is then gone, and nothing else is wrong."""

from __future__ import annotations

import pytest

from core.checks import find_problems
from core.errors import EditError
from core.mending import edit_of
from core.proof import Proof
from core.remedy import Remedy
from core.results import Finding, alike, worst_of
from core.rules import RULES
from core.sheet import Sheet
from core.storage import dump, load
from tests.core.mending_sheets import SHEETS
from tests.core.rule_sheets import assessed, builtin

WITHOUT = {"not_solved", "rating_unverified"}
"""Rules for which nobody but the user can say what to do."""
HEATERS = {"heater-voltage", "heater-current"}


def shown(one: Sheet, rule: str, title: str) -> tuple[Finding, Remedy]:
    """The finding of a rule that offers a remedy of this title."""
    groups = alike(finding for finding in assessed(one).findings if finding.rule == rule)
    offered = [(worst_of(group), remedy) for group in groups for remedy in worst_of(group).remedies]
    titles = [str(remedy.title).replace("\u2009", " ") for _, remedy in offered]
    assert title in titles, titles
    return offered[titles.index(title)]


def faults(one: Sheet) -> set[tuple[object, ...]]:
    return {
        ("heater" if f.rule in HEATERS else f.rule, f.where[0], f.condition)
        for f in assessed(one).findings
        if f.severity == "fault"
    }


@pytest.mark.parametrize(("rule", "title", "one"), SHEETS.values(), ids=SHEETS)
def test_the_finding_is_gone_and_no_fault_is_new(rule: str, title: str, one: Sheet) -> None:
    assert not find_problems(one)
    finding, remedy = shown(one, rule, title)
    before = dump(one)
    after = edit_of(remedy)(one)
    assert dump(one) == before  # the sheet itself is as it was: that is what undo shows again
    assert not find_problems(after)
    left = [f for f in assessed(after).findings if f.rule == rule and f.where[:1] == finding.where[:1]]
    if rule == "live-chassis":
        left = [f for f in left if f.severity == "fault"]  # the caution of mains-fed strings stays
    assert not left
    assert faults(after) <= faults(one)
    reopened = load(dump(after), "mended")
    assert reopened == after
    assert assessed(reopened).findings == assessed(after).findings


@pytest.mark.parametrize(("rule", "title", "one"), SHEETS.values(), ids=SHEETS)
def test_the_proof_agrees(rule: str, title: str, one: Sheet) -> None:
    finding, remedy = shown(one, rule, title)
    catalogue = builtin().with_types(one.types)
    assert Proof(assessed(one), catalogue).effect(finding, remedy) == "mends"


def test_every_rule_is_tried() -> None:
    tried = {rule.replace("-", "_") for rule, _, _ in SHEETS.values()}
    # the power of balance controls is reported as that of resistors
    assert {rule.__name__ for rule in RULES} - tried == WITHOUT | {"balance_power"}


@pytest.mark.parametrize(("rule", "title", "one"), SHEETS.values(), ids=SHEETS)
def test_new_parts_are_on_the_grid_and_on_nobody(rule: str, title: str, one: Sheet) -> None:
    after = edit_of(shown(one, rule, title)[1])(one)
    for part in after.parts:
        if part.id in one.part_by_id:
            continue
        assert part.at[0] % 20 == 0 and part.at[1] % 20 == 0
        for other in after.parts:
            if other.id != part.id:
                apart = max(abs(part.at[0] - other.at[0]), abs(part.at[1] - other.at[1]))
                assert apart >= 60, (part, other)


def test_a_remedy_for_another_sheet_is_refused() -> None:
    rule, title, one = SHEETS["two ties"]
    remedy = shown(one, *(rule, title))[1]
    after = edit_of(remedy)(one)
    assert edit_of(remedy)(after) == after  # what is gone cannot go again
    rule, title, one = SHEETS["mirrored pins"]
    moved = edit_of(shown(one, rule, title)[1])
    with pytest.raises(EditError):
        moved(moved(one))


def test_a_resistor_in_a_leg_shares_the_way_of_its_wires() -> None:
    rule, title, one = SHEETS["resistor in each leg"]
    after = edit_of(shown(one, rule, title)[1])(one)
    assert sum(wire.length_m or 0 for wire in after.wires) == pytest.approx(
        sum(wire.length_m or 0 for wire in one.wires)
    )
    assert {wire.awg for wire in after.wires} == {20}
    # the tie to the chassis carries nothing and stays where it was
    assert after.wire_by_id["w3"] == one.wire_by_id["w3"]


def test_a_lift_takes_the_place_of_a_chassis_that_nothing_else_uses() -> None:
    rule, title, one = SHEETS["cathode far above"]
    after = edit_of(shown(one, rule, title)[1])(one)
    assert "E1" not in after.part_by_id
    assert after.part_by_id["EL1"].at == one.part_by_id["E1"].at
