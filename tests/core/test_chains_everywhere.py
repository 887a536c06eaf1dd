"""Whatever is selected: a valid sheet, undone without a trace, and no fault that the plan did not warn of."""

from __future__ import annotations

import os
import random
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.assess import assess
from core.chains import ChainPlan, Options, Size, chain_offers, edit_of, feeds_of, loads_of, plan, usual_order
from core.checks import find_problems
from core.edits import change_between
from core.sheet import (
    AnyPart,
    Battery,
    Chassis,
    DcSupply,
    Lamp,
    Mains,
    MainsFeed,
    RectifiedSupply,
    Sheet,
    Tube,
    Winding,
)
from tests.core.chain_sheets import CATALOGUE, built, solved, unwarned

EXAMPLES = settings(max_examples=int(os.environ.get("HEATERLOOM_EXAMPLES", "200")), deadline=None)
AMPLIFIER = ("ECC83", "EL84", "EF86", "12AX7", "EL34", "6V6GT", "6SN7GT", "EZ81", "6CG7", "ECC88")
RADIO = ("12SK7", "12SA7", "12SQ7", "35L6GT", "35Z5GT", "50L6GT", "12AV6")
SETS = ("PCF82", "PCC88", "PCL86", "PL84", "EF80", "ECC83", "PL500", "EB91")
LINE_V = {"parallel": (6.3, 6.3, 12.6), "pairs": (12.6,), "series": (12.6, 25.2, 50.0, 110.0)}


def supply(rnd: random.Random, line_v: float) -> list[AnyPart]:
    """One supply that may suit a line, or none; a chassis symbol now and then."""
    rated_a = rnd.choice((0.5, 1.0, 3.0, 5.0, 10.0))
    regulation = rnd.choice((0.0, 5.0, 10.0, 20.0))
    at = (-800.0, 0.0)
    kinds: list[AnyPart | None] = [
        None,
        Winding(id="T1", rated_v=line_v, rated_a=rated_a, regulation_pct=regulation, at=at),
        Winding(id="T1", rated_v=line_v, rated_a=rated_a, rated_mains_v=240, centre_tap=True, at=at),
        Winding(id="T1", rated_v=2 * line_v, rated_a=rated_a, centre_tap=True, at=at),
        DcSupply(id="U1", set_v=rnd.choice((line_v, 12.0)), limit_a=rated_a, at=at),
        Battery(id="B1", emf_v=line_v, internal_ohm=rnd.choice((0.0, 0.05, 0.2)), at=at),
        MainsFeed(id="M1", at=at),
        RectifiedSupply(id="G1", rated_v=line_v * 1.4, rated_a=rated_a, regulator_v=line_v, at=at),
    ]
    chosen = rnd.choice(kinds)
    found: list[AnyPart] = [] if chosen is None else [chosen]
    return [*found, Chassis(id="E1", at=(-700.0, 0.0))] if rnd.random() < 0.3 else found


def random_case(rnd: random.Random, pool: tuple[str, ...]) -> tuple[Sheet, Options]:
    """Sockets with cathodes here and there, a supply, and choices."""
    arrangement = rnd.choice(("parallel", "parallel", "pairs", "series"))
    line_v = rnd.choice(LINE_V[arrangement])
    parts = supply(rnd, line_v)
    for number in range(1, rnd.randint(2, 8)):
        at = (rnd.randint(-30, 30) * 20.0, rnd.randint(-30, 30) * 20.0)
        cathode = rnd.choice((None, 1.5, 60.0, 230.0))
        parts.append(Tube(id=f"V{number}", type=rnd.choice(pool), cathode_v=cathode, at=at))
    if rnd.random() < 0.3:
        parts.append(Lamp(id="H1", type="#47", at=(100.0, 400.0)))
    band = rnd.choice((0.0, 5.0, 10.0))
    mains = Mains(nominal_v=rnd.choice((117.0, 230.0)), low_pct=-band, high_pct=band)
    sheet = Sheet(parts=tuple(parts), mains=mains)
    feeds = feeds_of(sheet)
    options = Options(
        arrangement=arrangement,
        volts=line_v,
        feed=rnd.choice(feeds).key if feeds and rnd.random() < 0.75 else "",
        new_supply=rnd.choice(("winding", "dc_supply")),
        reference=rnd.choice(("none", "tap", "pair", "side")),
        replace=rnd.random() < 0.6,
        shunts=rnd.random() < 0.3,
        system=rnd.choice(("awg", "mm2")),
    )
    return sheet, options


def plan_for(sheet: Sheet, ids: tuple[str, ...], options: Options) -> ChainPlan:
    loads, _ = loads_of(sheet, CATALOGUE, ids)
    return plan(sheet, CATALOGUE, usual_order(options.arrangement, loads, (0.0, 0.0)), options)


POOLS = {"amplifier": AMPLIFIER, "radio": RADIO, "sets": SETS, "anything": tuple(CATALOGUE.tubes)}


@pytest.mark.parametrize("pool", POOLS)
def test_no_fault_that_was_not_warned_of(pool: str) -> None:
    rnd = random.Random(pool)
    built_count = 0
    for _ in range(90):
        sheet, options = random_case(rnd, POOLS[pool])
        ids = tuple(part.id for part in sheet.parts if part.kind in ("tube", "lamp"))
        made = plan_for(sheet, ids, options)
        if made.problem is None:
            built_count += 1
            assert unwarned(sheet, made) == []
    assert built_count > 25


@pytest.mark.parametrize("pool", ["amplifier", "sets"])
def test_no_fault_that_was_not_warned_of_where_something_is_wired_already(pool: str) -> None:
    rnd = random.Random(pool)
    built_count = 0
    for _ in range(90):
        sheet, options = random_case(rnd, POOLS[pool])
        ids = tuple(part.id for part in sheet.parts if part.kind in ("tube", "lamp"))
        first = plan_for(sheet, ids[: len(ids) // 2 + 1], options)
        if first.problem is not None:
            continue
        wired = built(sheet, first)
        chosen = tuple(rnd.sample(ids, rnd.randint(1, len(ids))))
        feeds = feeds_of(wired)
        again = plan_for(wired, chosen, _with(options, feed=rnd.choice(["", *(one.key for one in feeds)])))
        if again.problem is None:
            built_count += 1
            assert unwarned(wired, again) == []
    assert built_count > 15


def _with(options: Options, **fields: Any) -> Options:
    return Options(**{name: getattr(options, name) for name in options.__struct_fields__} | fields)


@pytest.mark.parametrize("arrangement", ["parallel", "pairs", "series"])
def test_two_of_every_type_are_heated_within_tolerance_or_left_out(arrangement: str) -> None:
    heated = 0
    for designation in CATALOGUE.tubes:
        parts = tuple(Tube(id=f"V{n}", type=designation, at=(200.0 * n, 0.0)) for n in (1, 2))
        sheet = Sheet(parts=parts, mains=Mains(low_pct=0, high_pct=0))
        for offer in chain_offers(sheet, CATALOGUE, ("V1", "V2")):
            if offer.arrangement != arrangement or not offer.is_possible:
                continue
            options = Options(arrangement=offer.arrangement, volts=offer.volts, reference="pair")
            made = plan(sheet, CATALOGUE, ("V1", "V2"), options)
            assert len(made.order) == offer.taken
            heated += made.problem is None
            assessment = solved(built(sheet, made))
            for section in (one for part in made.order for one in assessment.points["nominal"].heaters[part]):
                window = assessment.limits[section.key]
                assert window.low_pct <= window.deviation_pct(section) <= window.high_pct, designation
    assert heated > 90


CHOICES = st.builds(
    Options,
    arrangement=st.sampled_from(["parallel", "pairs", "series"]),
    volts=st.sampled_from([1.4, 5.0, 6.3, 12.6, 26.5]),
    new_supply=st.sampled_from(["winding", "dc_supply"]),
    reference=st.sampled_from(["none", "tap", "pair", "side"]),
    replace=st.booleans(),
    shunts=st.booleans(),
    size=st.sampled_from([None, Size(awg=18), Size(area_mm2=0.75)]),
    system=st.sampled_from(["mm2", "awg"]),
    allowance_m=st.floats(0.0, 1.0),
)


@EXAMPLES
@given(st.data())
def test_any_selection_gives_a_valid_sheet_and_undo_leaves_no_trace(sheets, data) -> None:
    before = data.draw(sheets)
    tubes = st.builds(
        Tube,
        id=st.sampled_from(["V91", "V92", "V93", "V94"]),
        type=st.sampled_from([*AMPLIFIER, *RADIO, "no such type"]),
        at=st.tuples(st.floats(-1e6, 1e6), st.floats(-1e6, 1e6)),
        pulled=st.booleans(),
    )
    more = data.draw(st.lists(tubes, max_size=4, unique_by=lambda tube: tube.id))
    taken = before.part_by_id.keys() | before.wire_by_id.keys()
    parts = (*before.parts, *(tube for tube in more if tube.id not in taken))
    sheet = Sheet(mains=before.mains, ambient_c=before.ambient_c, parts=parts, wires=before.wires)
    ids = tuple(data.draw(st.permutations([*sheet.part_by_id, "gone"])))
    feeds = ["", *(feed.key for feed in feeds_of(sheet))]
    options = _with(data.draw(CHOICES), feed=data.draw(st.sampled_from(feeds)))
    made = plan(sheet, CATALOGUE.with_types(sheet.types), ids, options)
    if made.problem is not None:
        assert str(made.problem)
        return
    after = edit_of(made)(sheet)
    assert find_problems(after) == ()
    change = change_between(sheet, after)
    assert change.parts == {part.id for part in made.parts}
    assert change.wires == {wire.id for wire in made.wires} | set(made.removed)
    undone = Sheet(
        mains=after.mains,
        ambient_c=after.ambient_c,
        parts=after.parts[: len(sheet.parts)],
        wires=tuple(wire for wire in sheet.wires if wire.id in after.wire_by_id or wire.id in made.removed),
    )
    assert undone == sheet
    assert set(made.order) <= set(ids)
    assert not set(made.order) & {one.id for one in made.left_out}


def test_a_long_chain_is_planned_at_once() -> None:
    parts = tuple(Tube(id=f"V{n}", type="ECC83", at=(100.0 * n, 0.0)) for n in range(1, 101))
    sheet = Sheet(parts=parts)
    made = plan_for(sheet, tuple(part.id for part in parts), Options())
    assert len(made.order) == 100
    assert len(made.wires) == 300
    assert assess(edit_of(made)(sheet), CATALOGUE).points["nominal"].supplies["T1"].a > 20
