"""Laws that hold for every circuit: Kirchhoff, energy, superposition, and that names and order do not matter."""

from __future__ import annotations

import os
from collections.abc import Callable
from typing import Any

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.assess import Assessment, assess
from core.catalogue import load_builtin
from core.sheet import AnyPart, Battery, Chassis, Joint, Lamp, Resistor, Sheet, Tube, Wire

EXAMPLES = settings(max_examples=int(os.environ.get("HEATERLOOM_EXAMPLES", "200")))

# an element: kind, two nodes, and figures of its own
Element = tuple[str, int, int, tuple[Any, ...]]

TUBES = ("EL84", "ECC83", "300B", "6SN7GT", "35W4", "12BH7A")
PINS = {"EL84": "45", "ECC83": "45", "300B": "14", "6SN7GT": "78", "35W4": "43", "12BH7A": "49"}


def logarithmic(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high).map(lambda power: round(10**power, 6))


FIGURES: dict[str, st.SearchStrategy[tuple[Any, ...]]] = {
    "battery": st.tuples(st.floats(0.5, 60.0), logarithmic(-2, 2)),
    "resistor": st.tuples(logarithmic(-1, 3)),
    "tube": st.tuples(st.sampled_from(TUBES)),
    "lamp": st.tuples(st.floats(1.0, 30.0), logarithmic(-1.5, 0.5)),
}


@st.composite
def elements(draw: st.DrawFn, *kinds: str) -> list[Element]:
    """A connected set of two to twenty elements on up to seven nodes, a battery first."""
    nodes = draw(st.integers(2, 7))
    found: list[Element] = []
    for n in range(draw(st.integers(nodes, 20))):
        kind = "battery" if n == 0 else draw(st.sampled_from(kinds))
        if 0 < n < nodes:
            u, v = n, draw(st.integers(0, n - 1))
        else:
            u = draw(st.integers(0, nodes - 1))
            v = (u + draw(st.integers(1, nodes - 1))) % nodes
        if draw(st.booleans()):
            u, v = v, u
        found.append((kind, u, v, draw(FIGURES[kind])))
    return found


def part_of(kind: str, part_id: str, figures: tuple[Any, ...]) -> tuple[AnyPart, str]:
    """The part of an element, and the names of its two terminals."""
    if kind == "battery":
        return Battery(id=part_id, emf_v=figures[0], internal_ohm=figures[1]), "+-"
    if kind == "resistor":
        return Resistor(id=part_id, ohm=figures[0]), "12"
    if kind == "lamp":
        return Lamp(id=part_id, rated_v=figures[0], rated_a=figures[1]), "12"
    return Tube(id=part_id, type=figures[0]), PINS[figures[0]]


def sheet_of(found: list[Element], *, grounded: bool = False) -> Sheet:
    """Elements on joints: every third connection a real wire, the others straps."""
    parts: list[AnyPart] = [Joint(id=f"J{n}") for n in range(1 + max(max(e[1], e[2]) for e in found))]
    wires: list[Wire] = []
    for n, (kind, u, v, figures) in enumerate(found):
        part, ends = part_of(kind, f"P{n}", figures)
        parts.append(part)
        for end, node in zip(ends, (u, v), strict=True):
            size = {"awg": 20, "length_m": 0.3} if len(wires) % 3 == 0 else {}
            wires.append(Wire(id=f"w{len(wires)}", start=f"P{n}.{end}", end=f"J{node}.j", **size))
    if grounded:
        parts.append(Chassis(id="E1"))
        wires.append(Wire(id="earth", start="J0.j", end="E1.e"))
    return Sheet(parts=tuple(parts), wires=tuple(wires))


def run(sheet: Sheet) -> Assessment:
    answer = assess(sheet, load_builtin())
    assert not any(point.unsolved for point in answer.points.values())
    return answer


MIXED = elements("battery", "resistor", "tube", "tube", "lamp")


@EXAMPLES
@given(MIXED, st.booleans())
def test_kirchhoff_and_energy(found: list[Element], grounded: bool) -> None:
    """What flows in flows out to 1e-9 of the largest current, and what supplies give is what the rest takes.

    10 mA stands in where nothing flows but rounding, and 10 mA through the largest source for the watts: two
    sources that oppose each other leave the rounding of their volts in what flows.
    """
    largest_v = max([1.0] + [float(e[3][0]) for e in found if e[0] == "battery"])
    for point in run(sheet_of(found, grounded=grounded)).points.values():
        amps = [b.a for b in point.branches.values()] + [s.a for s in point.supplies.values()]
        amps += [h.a for sections in point.heaters.values() for h in sections]
        assert point.residual_a < 1e-9 * max(*amps, 0.01)
        assert point.power_in_w == pytest.approx(point.power_out_w, rel=1e-9, abs=1e-9 * 0.01 * largest_v)


@EXAMPLES
@given(MIXED)
def test_heaters_obey_their_own_law(found: list[Element]) -> None:
    """Volts times amperes is the power; hotter than the room; more than rated volts is more than rated current."""
    for name, point in run(sheet_of(found)).points.items():
        for heater in (h for sections in point.heaters.values() for h in sections):
            assert heater.w == pytest.approx(heater.v * heater.a, rel=1e-9, abs=1e-15)
            assert heater.heater_k >= 298.15 - 1e-9
            if name != "cold" and abs(heater.deviation_pct) > 1e-6:
                assert (heater.v > heater.rated_v) == (heater.a > heater.rated_a)


def figures(
    answer: Assessment, rename: Callable[[str], str]
) -> dict[tuple[str, str, str], tuple[float, ...]]:
    """Volts, amperes and temperatures of every section at every condition, under other names."""
    return {
        (name, rename(heater.owner), heater.pins): (heater.v, heater.a, heater.heater_k, heater.cathode_k)
        for name, point in answer.points.items()
        for sections in point.heaters.values()
        for heater in sections
    }


def renamed(sheet: Sheet, names: dict[str, str]) -> Sheet:
    def follow(terminal: str) -> str:
        part_id, _, end = terminal.rpartition(".")
        return f"{names[part_id]}.{end}"

    parts = tuple(msgspec.structs.replace(part, id=names[part.id]) for part in sheet.parts)
    wires = tuple(
        msgspec.structs.replace(wire, id=names[wire.id], start=follow(wire.start), end=follow(wire.end))
        for wire in sheet.wires
    )
    return msgspec.structs.replace(sheet, parts=parts, wires=wires)


def new_names(sheet: Sheet, numbers: list[int]) -> dict[str, str]:
    ids = [part.id for part in sheet.parts] + [wire.id for wire in sheet.wires]
    return {old: f"n{number}" for old, number in zip(ids, numbers, strict=False)}


def groups(strings: tuple[tuple[str, ...], ...], rename: Callable[[str], str]) -> set[frozenset[str]]:
    split = ((key.partition(":") for key in group) for group in strings)
    return {frozenset(f"{rename(owner)}:{pins}" for owner, _, pins in group) for group in split}


@EXAMPLES
@given(MIXED, st.permutations(range(90)))
def test_names_do_not_matter(found: list[Element], numbers: list[int]) -> None:
    """Other ids, the same figures (bit for bit) and the same strings."""
    sheet = sheet_of(found)
    names = new_names(sheet, numbers)
    before, after = run(sheet), run(renamed(sheet, names))
    assert figures(before, names.__getitem__) == figures(after, str)
    assert groups(before.strings, names.__getitem__) == groups(after.strings, str)


@EXAMPLES
@given(MIXED, st.randoms(use_true_random=False))
def test_order_does_not_matter(found: list[Element], random: Any) -> None:
    """Parts and wires in another order: the same figures, to the rounding of another elimination order."""
    sheet = sheet_of(found, grounded=True)
    parts, wires = list(sheet.parts), list(sheet.wires)
    random.shuffle(parts)
    random.shuffle(wires)
    before = run(sheet)
    after = run(msgspec.structs.replace(sheet, parts=tuple(parts), wires=tuple(wires)))
    ours, theirs = figures(before, str), figures(after, str)
    assert ours.keys() == theirs.keys()
    for key, values in ours.items():
        assert values == pytest.approx(theirs[key], rel=1e-7, abs=1e-8), key
    assert groups(before.strings, str) == groups(after.strings, str)


@EXAMPLES
@given(elements("battery", "resistor", "resistor"))
def test_superposition(found: list[Element]) -> None:
    """Resistors only: node volts are the sums of what each battery does with the others at nought."""
    sheet = sheet_of(found, grounded=True)
    whole = run(sheet).points["nominal"].nodes
    batteries = [part for part in sheet.parts if isinstance(part, Battery)]
    sums = dict.fromkeys(whole, 0.0)
    for alone in batteries:
        parts = tuple(
            msgspec.structs.replace(part, emf_v=0.0) if part in batteries and part is not alone else part
            for part in sheet.parts
        )
        for node, volts in run(msgspec.structs.replace(sheet, parts=parts)).points["nominal"].nodes.items():
            sums[node] += float(volts.real)
    emf = sum(battery.emf_v for battery in batteries)
    for node, volts in whole.items():
        assert sums[node] == pytest.approx(volts, abs=1e-9 * emf), node


@EXAMPLES
@given(MIXED, st.floats(1.01, 3.0))
def test_scaling_resistors_and_sources(found: list[Element], factor: float) -> None:
    """Cold circuits are linear: all EMFs times a factor is all currents times it."""
    scaled = [
        (kind, u, v, (figures_[0] * factor, *figures_[1:]) if kind == "battery" else figures_)
        for kind, u, v, figures_ in found
    ]
    one, other = (run(sheet_of(which)).points["cold"] for which in (found, scaled))
    largest = max(
        [h.a for s in one.heaters.values() for h in s] + [s.a for s in one.supplies.values()] + [0.01]
    )
    for owner, sections in one.heaters.items():
        for before, after in zip(sections, other.heaters[owner], strict=True):
            assert after.a == pytest.approx(before.a * factor, abs=1e-9 * largest * factor)
