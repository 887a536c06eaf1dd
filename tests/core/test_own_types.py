"""A user's own types travel in the sheets that use them."""

from __future__ import annotations

import msgspec

from core.assess import assess
from core.catalogue import load_builtin
from core.catalogue.types import Section, TubeType
from core.own_types import with_own_types
from core.sheet import Battery, Sheet, Tube, Wire
from core.storage import dump, load

BUILTIN = load_builtin()
OWN = TubeType(designation="HOUSE1", sections=(Section(("4", "5"), 6.3, 0.5),), base="B9A")
OTHER = TubeType(designation="HOUSE2", sections=(Section(("4", "5"), 6.3, 0.6),), base="B9A")


def sheet(*types: str) -> Sheet:
    tubes = tuple(Tube(id=f"V{number}", type=name) for number, name in enumerate(types, 1))
    wires = tuple(
        Wire(id=f"{tube.id}{pin}", start=end, end=f"{tube.id}.{pin}")
        for tube in tubes
        for end, pin in (("B1.+", "4"), ("B1.-", "5"))
    )
    return Sheet(parts=(Battery(id="B1", emf_v=6.3), *tubes), wires=wires)


def test_only_types_that_are_used_and_not_built_in_travel() -> None:
    catalogue = BUILTIN.with_types((OWN, OTHER))
    assert with_own_types(sheet("EL84", "house 1"), catalogue, BUILTIN).types == (OWN,)


def test_a_sheet_of_built_in_types_stays_the_very_same() -> None:
    plain = sheet("EL84")
    assert with_own_types(plain, BUILTIN.with_types((OWN,)), BUILTIN) is plain


def test_elsewhere_the_saved_sheet_is_solved_without_the_users_catalogue() -> None:
    saved = dump(with_own_types(sheet("HOUSE1"), BUILTIN.with_types((OWN,)), BUILTIN))
    opened = load(saved)
    answer = assess(opened, BUILTIN.with_types(opened.types))
    assert abs(answer.points["nominal"].heaters["V1"][0].a - 0.5) < 1e-9
    assert not [finding for finding in answer.findings if finding.rule == "type-unknown"]


def test_a_changed_built_in_type_travels_as_it_is_used() -> None:
    found = BUILTIN.tube("EL84")
    assert found is not None
    hotter = msgspec.structs.replace(found, sections=(Section(("4", "5"), 6.3, 0.8),))
    assert with_own_types(sheet("EL84"), BUILTIN.with_types((hotter,)), BUILTIN).types == (hotter,)
