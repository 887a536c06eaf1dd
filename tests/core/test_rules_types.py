"""What is not known of the types on a sheet."""

from __future__ import annotations

import pytest

from core.catalogue.types import Provenance
from core.sheet import Lamp, Thermistor, Tube
from tests.core.rule_sheets import findings, on_dc, rules, sheet, tube_type

FED = "P1.+ V1.4, P1.- V1.5"


def test_a_rating_from_memory_is_noted_once_for_all_its_tubes() -> None:
    tubes = (Tube(id="V1", type="X1"), Tube(id="V2", type="X1"))
    one = on_dc(6.3, *tubes, wires=f"{FED}, V1.4 V2.4, V1.5 V2.5", types=(tube_type(),))
    found = findings(one)
    assert [(f.rule, f.severity, f.where) for f in found] == [("rating-unverified", "note", ("V1", "V2"))]
    assert "not checked against a data sheet" in str(found[0].says)


@pytest.mark.parametrize(("status", "noted"), [("seen", False), ("second-hand", True), ("disputed", True)])
def test_the_gravest_status_is_shown_with_its_source(status: str, noted: bool) -> None:
    provenance = tuple(
        Provenance(field, "a page", status)  # type: ignore[arg-type]
        for field in ("4-5 volts", "4-5 amps")
    )
    found = findings(
        on_dc(6.3, Tube(id="V1", type="X1"), wires=FED, types=(tube_type(provenance=provenance),))
    )
    assert bool(found) is noted
    assert all(f.source == "a page" and "a page" in str(f.says) for f in found)


def test_a_rating_of_ones_own_needs_no_verifying() -> None:
    own = Tube(id="V1", type="X1", rated_v=6.3, rated_a=0.3)
    assert findings(on_dc(6.3, own, wires=FED, types=(tube_type(),))) == []


def test_an_unknown_tube_is_a_fault_with_a_suggestion() -> None:
    found = findings(on_dc(6.3, Tube(id="V1", type="ECC83x"), Tube(id="V2", type="EL84"),
                           wires="P1.+ V2.4, P1.- V2.5"))  # fmt: skip
    assert [(f.rule, f.severity, f.where) for f in found] == [("type-unknown", "fault", ("V1",))]
    assert "ECC83" in str(found[0].mend)


def test_a_name_like_nothing_has_no_suggestion() -> None:
    found = findings(sheet(Tube(id="V1", type="~")))
    assert "Choose a type" in str(found[0].mend)


def test_unknown_lamps_and_thermistors_are_cautions() -> None:
    one = sheet(Lamp(id="L1", type="no such"), Thermistor(id="N1", type="no such"))
    assert [(f.rule, f.severity, f.where) for f in findings(one)] == [
        ("type-unknown", "caution", ("L1",)),
        ("type-unknown", "caution", ("N1",)),
    ]


def test_strange_names_are_shown_escaped_and_short() -> None:
    found = findings(sheet(Tube(id="V1", type="a\nb" + "c" * 100)))
    assert "\n" not in str(found[0].says) and len(str(found[0].says)) < 200


def test_a_rating_given_for_a_tapped_heater_is_not_used() -> None:
    tube = Tube(id="V1", type="ECC83", rated_v=12.6)
    assert rules(on_dc(12.6, tube, wires=FED)) == {"override-unused"}
    single = Tube(id="V1", type="EL84", rated_a=0.8)
    assert rules(on_dc(6.3, single, wires=FED)) == set()
