"""Whether a remedy mends a finding of the warm-up: the lines it touches are switched on."""

from __future__ import annotations

import pytest
from msgspec.structs import replace

from core.assess import assess
from core.proof import Proof
from core.remedy import InSeries, Remedy, SetFields
from core.results import Finding
from core.sentences import sentence
from core.sheet import Sheet
from core.softstart import variants
from core.switch_on import SwitchOn, Wish, switch_on
from tests.core.rule_sheets import builtin
from tests.core.softstart_sheets import boards, row

WISH = Wish(seconds=30.0, dip_s=None)


def proved(sheet: Sheet) -> tuple[Proof, Finding]:
    """The proof of a sheet that was switched on, and its finding that the supply does not start."""
    catalogue = builtin().with_types(sheet.types)
    switched = switch_on(sheet, catalogue, WISH)
    finding = next(one for one in switched.findings if one.rule == "supply-will-not-start")
    return Proof(assess(sheet, catalogue), catalogue, switched, WISH), finding


@pytest.fixture(scope="module")
def four() -> tuple[Proof, Finding]:
    return proved(boards(4))


def test_what_fits_mends_and_what_does_not_is_held_back(four: tuple[Proof, Finding]) -> None:
    proof, finding = four
    sheet = proof.assessment.sheet
    made = {one.way: one for one in variants(sheet, builtin().with_types(sheet.types), "P1")}
    effects = {way: proof.effect(finding, one.remedy) for way, one in made.items() if one.remedy}
    # with a resistor alone the supply starts, but the heaters stay too cold: that is a new fault
    assert effects == {"resistor": "none", "thermistor": "mends", "bypassed": "mends", "supply": "mends"}


def test_a_little_more_current_mends_nothing(four: tuple[Proof, Finding]) -> None:
    proof, finding = four
    little = Remedy(sentence("Take a little more"), (SetFields("P1", (("limit_a", 3.1),)),))
    assert proof.effect(finding, little) == "none"
    much = Remedy(sentence("Take much more"), (SetFields("P1", (("limit_a", 15.0),)),))
    assert proof.effect(finding, much) == "mends"


def test_a_part_that_overloads_itself_is_held_back(four: tuple[Proof, Finding]) -> None:
    proof, finding = four
    wires = tuple(f"w{number}4" for number in range(1, 5))
    fields = (("r25_ohm", 5.0), ("beta_k", 2900.0), ("dissipation_w_per_k", 0.017), ("tau_s", 90.0))

    def thermistor(max_a: float) -> Remedy:
        step = InSeries("P1.+", wires, "thermistor", (*fields, ("max_a", max_a)))
        return Remedy(sentence("Fit one for {a}", a=max_a), (step,))

    assert proof.effect(finding, thermistor(5.0)) == "mends"
    assert proof.effect(finding, thermistor(0.5)) == "none"


def test_what_cannot_be_carried_out_mends_nothing(four: tuple[Proof, Finding]) -> None:
    proof, finding = four
    assert proof.effect(finding, Remedy(sentence("x"), (SetFields("P9", (("limit_a", 9.0),)),))) == "none"
    assert proof.effect(finding, Remedy(sentence("x"), ())) == "none"


def test_without_a_run_nothing_is_known_of_the_warm_up(four: tuple[Proof, Finding]) -> None:
    proof, finding = four
    steady = Proof(proof.assessment, builtin().with_types(proof.assessment.sheet.types))
    much = Remedy(sentence("Take much more"), (SetFields("P1", (("limit_a", 15.0),)),))
    assert steady.effect(finding, much) == "none"


def test_only_the_line_that_is_touched_is_switched_on(monkeypatch: pytest.MonkeyPatch) -> None:
    import core.switch_on as module

    first = row((0, 0), (320, 0), overload="latch-off", limit_a=0.3)
    names = {part.id: f"{part.id}x" for part in first.parts}
    parts = tuple(replace(part, id=names[part.id], at=(part.at[0], part.at[1] + 600)) for part in first.parts)

    def moved(terminal: str) -> str:
        part, _, name = terminal.partition(".")
        return f"{names[part]}.{name}"

    wires = tuple(
        replace(wire, id=f"{wire.id}x", start=moved(wire.start), end=moved(wire.end)) for wire in first.wires
    )
    both = replace(first, parts=first.parts + parts, wires=first.wires + wires)
    proof, finding = proved(both)
    assert finding.where[0] in ("P1", "P1x")
    seen: list[Sheet] = []
    real = switch_on

    def watched(sheet: Sheet, *given: object, **more: object) -> SwitchOn:
        seen.append(sheet)
        return real(sheet, *given, **more)  # type: ignore[arg-type]

    monkeypatch.setattr(module, "switch_on", watched)
    supply = finding.where[0]
    remedy = Remedy(sentence("Take more"), (SetFields(supply, (("limit_a", 5.0),)),))
    assert proof.effect(finding, remedy) == "mends"
    assert proof.effect(finding, remedy) == "mends"
    (one,) = seen  # once, and the other supply is not part of it
    other = "P1x" if supply == "P1" else "P1"
    assert supply in one.part_by_id and other not in one.part_by_id
