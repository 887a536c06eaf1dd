"""Parts put in series and bypassed: any part of two terminals, and a relay about it."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.checks import find_problems
from core.edits import PREFIXES, change_between, set_wire
from core.errors import EditError
from core.mending import edit_of
from core.placing import half_of
from core.remedy import Bypass, InSeries, Remedy, Step, Value
from core.sentences import sentence
from core.sheet import Chassis, Relay, Sheet, Thermistor, split_terminal
from core.storage import dump, load
from core.terminals import terminal_names
from tests.core.conftest import random_sheets
from tests.core.rule_sheets import assessed
from tests.core.softstart_sheets import PLACED

FIELDS: dict[str, tuple[tuple[str, Value], ...]] = {
    "resistor": (("ohm", 2.2), ("rated_w", 5.0)),
    "thermistor": (("type", "S237 5 ohm"),),
    "fuse": (("rated_a", 2.0),),
    "switch": (("closed", True),),
    "lamp": (("rated_v", 6.3), ("rated_a", 0.3)),
    "capacitor": (("farad", 1e-6),),
    "diode": (("forward_v", 0.7),),
}
RELAY: tuple[tuple[str, Value], ...] = (("coil_v", 12.0), ("coil_ohm", 720.0), ("pull_in_v", 9.0))


def done(sheet: Sheet, *steps: Step) -> Sheet:
    return edit_of(Remedy(sentence("Try it"), steps))(sheet)


def in_series(
    kind: str, terminal: str = "P1.+", wires: tuple[str, ...] = ("w2",), name: str = ""
) -> InSeries:
    return InSeries(terminal, wires, kind, FIELDS[kind], name)


def softened(sheet: Sheet, wires: tuple[str, ...] = ("w2",)) -> Sheet:
    step = in_series("thermistor", wires=wires, name="RT1")
    return done(sheet, step, Bypass("RT1", ("RT1.2", "P1.-"), RELAY))


def late(sheet: Sheet) -> Sheet:
    """A bypassed thermistor with a resistor in the coil lead of its relay."""
    after = softened(sheet)
    ends = {"K1.c1", "K1.c2"}
    lead = next(w for w in after.wires if "P1.-" in (w.start, w.end) and ends & {w.start, w.end})
    (end,) = ends & {lead.start, lead.end}
    return done(after, in_series("resistor", end, (lead.id,)))


@pytest.mark.parametrize("kind", FIELDS)
def test_any_part_of_two_terminals_goes_in_series(kind: str) -> None:
    one = PLACED["to the right"]
    after = done(one, in_series(kind))
    assert not find_problems(after)
    (new,) = (part for part in after.parts if part.id not in one.part_by_id)
    assert new.id == f"{PREFIXES[kind]}1"
    for name, value in FIELDS[kind]:
        assert getattr(new, name) == value
    first, second = (f"{new.id}.{name}" for name in terminal_names(new) or ())
    # the supply's side is the first terminal, the heaters' the second; the way is as long as it was
    assert {wire.end for wire in after.wires if wire.start == "P1.+"} == {first}
    assert after.wire_by_id["w2"].start == second
    assert sum(wire.length_m or 0 for wire in after.wires) == pytest.approx(
        sum(wire.length_m or 0 for wire in one.wires)
    )
    assert after.wire_by_id["w1"] is one.wire_by_id["w1"]


@pytest.mark.parametrize("kind", ["relay", "tube", "joint", "balance", "nonsense", "resistor"])
def test_other_parts_and_wrong_fields_are_refused(kind: str) -> None:
    fields = {"tube": (("type", "ECC83"),), "relay": RELAY, "balance": (("ohm", 100.0),)}.get(kind, ())
    with pytest.raises(EditError):
        done(PLACED["to the right"], InSeries("P1.+", ("w2",), kind, fields))


def test_a_taken_id_and_a_missing_wire_are_refused() -> None:
    one = PLACED["to the right"]
    after = softened(one)
    with pytest.raises(EditError, match="already in use"):
        done(after, in_series("thermistor", wires=("w4",), terminal="V1.4", name="RT1"))
    with pytest.raises(EditError, match="no wire"):
        done(one, in_series("thermistor", wires=("w99",)))
    with pytest.raises(EditError, match="no part"):
        done(one, Bypass("RT1", ("V1.4", "P1.-"), RELAY))
    with pytest.raises(EditError, match="two terminals"):
        done(one, Bypass("E1", ("V1.4", "P1.-"), RELAY))


@pytest.mark.parametrize("name", PLACED)
def test_the_contact_bridges_the_part_and_the_coil_is_across_the_line(name: str) -> None:
    one = PLACED[name]
    before = dump(one)
    after = softened(one)
    assert dump(one) == before
    assert not find_problems(after)
    assert load(dump(after), "softened") == after
    relay = after.part_by_id["K1"]
    assert isinstance(relay, Relay) and (relay.coil_v, relay.pull_in_v) == (12.0, 9.0)
    on = {terminal: set[str]() for terminal in ("com", "no", "c1", "c2")}
    for wire in after.wires:
        ends = [wire.start, wire.end]
        for end, other in (ends, ends[::-1]):
            part_id, terminal = split_terminal(end)
            if part_id == "K1":
                on[terminal].add(other)
    assert on["com"] | on["no"] == {"RT1.1", "RT1.2"}
    assert on["c1"] | on["c2"] == {"RT1.2", "P1.-"}
    # hot, the relay has pulled in and the thermistor carries nothing
    point = assessed(after).points["nominal"]
    assert not point.unsolved
    assert point.branches["K1"].pulled_in
    assert point.branches["RT1"].a < 0.01 * point.supplies["P1"].a
    assert point.heaters["V1"][0].deviation_pct > -1
    # at the cold instant it has not
    cold = assessed(after).points["cold"]
    assert cold.branches["RT1"].a == pytest.approx(cold.supplies["P1"].a, rel=0.05)


@pytest.mark.parametrize("name", PLACED)
def test_new_parts_cover_nothing_and_stand_on_the_grid(name: str) -> None:
    after = softened(PLACED[name])
    parts = [part for part in after.parts if part.id in ("RT1", "K1")]
    for part in parts:
        assert part.at[0] % 20 == part.at[1] % 20 == 0
        for other in after.parts:
            if other.id != part.id and not isinstance(other, Chassis):
                room = [sum(pair) for pair in zip(half_of(part.kind), half_of(other.kind), strict=True)]
                assert any(abs(part.at[n] - other.at[n]) >= room[n] for n in (0, 1)), (part, other)


@st.composite
def joined(draw: st.DrawFn) -> tuple[Sheet, str]:
    """A random sheet and one of its terminals on which a wire ends."""
    sheet = draw(random_sheets().filter(lambda one: bool(one.wires)))
    wire = draw(st.sampled_from(sheet.wires))
    return sheet, draw(st.sampled_from((wire.start, wire.end)))


@settings(deadline=None)
@given(joined(), st.sampled_from(sorted(FIELDS)))
def test_on_any_sheet_the_result_is_valid_and_the_way_back_exact(drawn: tuple[Sheet, str], kind: str) -> None:
    sheet, terminal = drawn
    wires = tuple(wire.id for wire in sheet.wires if terminal in (wire.start, wire.end))
    before = dump(sheet)
    name = "X-new"
    step = in_series(kind, terminal, wires, name)
    if name in sheet.part_by_id or name in sheet.wire_by_id:
        return
    far = f"{name}.{'k' if kind == 'diode' else '2'}"
    after = done(sheet, step, Bypass(name, (far, terminal), RELAY))
    assert not find_problems(after)
    assert load(dump(after), "softened") == after
    assert dump(sheet) == before
    change = change_between(sheet, after)
    assert not change.sheet
    # nothing but what is new and what was named differs
    new = {part.id for part in after.parts} - sheet.part_by_id.keys()
    assert change.parts == new
    assert change.wires <= {*wires} | (after.wire_by_id.keys() - sheet.wire_by_id.keys())


def test_corners_of_a_wire_that_begins_elsewhere_are_given_up() -> None:
    one = PLACED["to the right"]
    bent = set_wire("w2", via=((100.0, -200.0),))(one)
    after = done(bent, in_series("thermistor"))
    assert after.wire_by_id["w2"].via == ()
    assert isinstance(after.part_by_id["RT1"], Thermistor)
