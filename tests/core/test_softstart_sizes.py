"""Sizes for a soft start: by hand, and for any figures."""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.preferred import SERIES
from core.sheet import Battery, DcSupply, Winding
from core.softstart.line import closing_a, line_of, warm_of
from core.softstart.sizes import (
    RESISTOR_TOLERANCE,
    SURE_SHARE,
    THERMISTOR_TOLERANCE,
    TRIM,
    coil_ohm,
    cold_thermistor_ohm,
    first_a,
    hot_thermistor_ohm,
    is_slower,
    most_thermistor_a,
    ohm_wanted,
    pull_in_v,
    relays,
    resistor_ohm,
    resistor_w,
    thermistors,
    trimmed_v,
)
from tests.core.rule_sheets import builtin, sheet
from tests.core.softstart_sheets import PLACED, boards, row

S237_5, S237_22 = (builtin().thermistors[name] for name in ("S237 5 ohm", "S237 22 ohm"))


def test_ohms_for_a_first_current() -> None:
    """12 V behind 1 Ω is 12 A; 3 Ω more keep it to 3 A."""
    assert ohm_wanted(12.0, 1.0, 3.0) == pytest.approx(3.0)
    assert first_a(12.0, 1.0, 3.0) == pytest.approx(3.0)
    assert ohm_wanted(12.0, 1.0, 20.0) < 0


def test_the_next_resistor_up_with_its_tolerance_taken_off() -> None:
    """3 Ω less 5 %: 3.16 Ω at least, 3.3 Ω in E24; exactly 2.85 Ω is met by 3.0 Ω."""
    assert resistor_ohm(3.0) == 3.3
    assert resistor_ohm(2.85) == 3.0
    assert resistor_ohm(0.0) is None
    assert resistor_ohm(math.inf) is None


def test_twice_the_steady_heat_or_a_fifth_of_the_first() -> None:
    assert resistor_w(2.4, 5.0) == 5.0
    assert resistor_w(0.1, 24.0) == 5.0
    assert resistor_w(0.0, 25.1) == 7.0
    assert resistor_w(60.0, 0.0) is None


@given(st.floats(1e-2, 1e5))
def test_a_resistor_is_of_e24_and_enough(wanted: float) -> None:
    ohm = resistor_ohm(wanted)
    assert ohm is not None
    figure = ohm / 10 ** (math.floor(math.log10(ohm) + 1e-9) - 1)
    assert round(figure) in SERIES["E24"] and figure == pytest.approx(round(figure))
    assert ohm * (1 - RESISTOR_TOLERANCE) >= wanted * (1 - 1e-9)
    assert ohm * (1 - RESISTOR_TOLERANCE) <= 1.16 * wanted  # a step of E24 is 15.4 % at most, from 13 to 15


def test_a_cold_thermistor_at_its_tolerance() -> None:
    """R25 less 20 % at 25 °C; at 0 °C more by exp(B (1/273.15 - 1/298.15)), with B 2900 K 2.44 times."""
    assert cold_thermistor_ohm(S237_5, 25.0) == pytest.approx(4.0)
    more = math.exp(2900 * (1 / 273.15 - 1 / 298.15))
    assert cold_thermistor_ohm(S237_5, 0.0) == pytest.approx(4.0 * more)
    assert more == pytest.approx(2.44, abs=0.01)


def test_a_thermistor_bears_less_in_a_hot_room() -> None:
    """EPCOS: full current up to 65 °C, then a straight line to none at 170 °C."""
    assert most_thermistor_a(S237_5, 25.0) == most_thermistor_a(S237_5, 65.0) == 5.0
    assert most_thermistor_a(S237_5, 117.5) == pytest.approx(2.5)
    assert most_thermistor_a(S237_5, 170.0) == most_thermistor_a(S237_5, 200.0) == 0.0


@pytest.mark.parametrize(("amps", "ohm"), [(5.0, 0.1255), (3.75, 0.1834), (2.5, 0.3133), (1.5, 0.6148)])
def test_a_hot_thermistor_against_its_maker(amps: float, ohm: float) -> None:
    """EPCOS S237, 5 Ω: R = 1.05 I^-1.32; the beta law agrees within 6 %, as for every row of that maker."""
    assert hot_thermistor_ohm(S237_5, amps, 25.0) == pytest.approx(ohm, rel=0.06)


@given(st.floats(0.0, 30.0), st.floats(0.01, 10.0), st.floats(-20.0, 90.0))
def test_thermistors_are_large_enough_and_bear_the_current(
    wanted: float, amps: float, ambient: float
) -> None:
    found = thermistors(builtin(), wanted, amps, ambient)
    for kind in found:
        assert builtin().thermistors[kind.designation] is kind
        assert cold_thermistor_ohm(kind, ambient) >= wanted
        assert kind.max_a >= most_thermistor_a(kind, ambient) >= amps
    losses = [hot_thermistor_ohm(kind, amps, ambient) for kind in found]
    assert losses == sorted(losses)
    left = [one for one in builtin().thermistors.values() if one not in found]
    for kind in left:
        assert cold_thermistor_ohm(kind, ambient) < wanted or most_thermistor_a(kind, ambient) < amps


def test_the_slower_thermistor() -> None:
    assert is_slower(S237_22, S237_5)
    assert not is_slower(S237_5, S237_22)


@given(st.floats(4.0, 30.0), st.floats(0.5, 1.0), st.floats(0.0, 12.0))
def test_relays_pull_in_bear_and_switch(line: float, part: float, amps: float) -> None:
    behind = part * line
    found = relays(builtin(), line, behind, amps)
    for kind in found:
        assert kind.pull_in_v <= SURE_SHARE * behind
        assert kind.max_v is None or kind.max_v >= line
        assert (kind.contact_a or 0.0) >= amps
    assert [kind.pull_in_v for kind in found] == sorted((kind.pull_in_v for kind in found), reverse=True)


def test_the_relay_for_twelve_volts_is_a_twelve_volt_one() -> None:
    names = [kind.designation for kind in relays(builtin(), 12.0, 11.4, 2.0)]
    assert names[0].endswith("12 V")
    assert not any(name.startswith("TR5V") for name in names)  # their contacts bear 1 A
    assert relays(builtin(), 24.0, 23.0, 1.0) == ()  # nothing of the catalogue is for 24 V


def test_a_resistor_before_a_coil() -> None:
    """A 12 V coil of 720 Ω that pulls in at 9 V, on a line of 11.1 V: 0.95 x 11.1 / 9 - 1 is 17 % of 720 Ω, 120 Ω."""
    relay = builtin().relays["G5Q SPST 12 V"]
    assert coil_ohm(relay, 11.1) == 120.0
    assert pull_in_v(relay, 120.0) == pytest.approx(9.0 * 840 / 720)
    assert pull_in_v(relay, None) == 9.0
    assert coil_ohm(relay, 9.6) is None  # it only just pulls in as it is


@given(st.floats(1.0, 60.0), st.floats(0.0, 10.0))
def test_volts_are_set_in_steps_and_within_a_tenth(set_v: float, more: float) -> None:
    set_v = round(set_v, 1)
    found = trimmed_v(set_v, set_v + more)
    assert found <= TRIM * set_v + 1e-9
    step = 0.01 if set_v < 10 else 0.1
    assert found / step == pytest.approx(round(found / step), abs=1e-6)
    assert found >= min(set_v + more, TRIM * set_v - step) - 1e-9


def test_a_line_cold_and_warm() -> None:
    """Four boards of 12 V 0.52 A, cold ratio 5.33: 2.08 A warm, 11.1 A at 20 °C and a little less at 25 °C."""
    one = boards(4)
    line = line_of(one, builtin().with_types(one.types), "P1")
    assert line is not None
    assert line.warm_a == pytest.approx(4 * 0.52)
    assert line.cold_a == pytest.approx(4 * 0.52 * 5.33, rel=0.03)
    assert line.cold_ohm == pytest.approx(12.0 / line.cold_a)
    assert (line.terminal, line.back) == ("P1.+", "P1.-")
    assert line.wires == ("w14", "w24", "w34", "w44")
    assert line.heaters == ("V1", "V2", "V3", "V4")
    warm = warm_of(line, one)
    assert warm is not None and warm.is_fit and warm.a == pytest.approx(2.08)
    assert warm.off_pct == pytest.approx(0.0, abs=1e-6)


def test_lines_that_cannot_be_started_softly() -> None:
    one = PLACED["to the right"]
    kinds = builtin()
    assert line_of(one, kinds, "E1") is None
    assert line_of(one, kinds, "nobody") is None
    assert line_of(sheet(DcSupply(id="P1", set_v=6.3, limit_a=1.0)), kinds, "P1") is None
    tapped = Winding(id="T1", rated_v=12.6, rated_a=2.0, centre_tap=True)
    assert line_of(sheet(tapped, *one.parts[2:], wires="T1.a V1.4, T1.b V1.5"), kinds, "T1") is None
    two = sheet(
        *one.parts,
        Battery(id="B1", emf_v=12.0, internal_ohm=0.1),
        wires="P1.+ V1.4, P1.- V1.5, B1.+ V1.4, B1.- V1.5",
    )
    assert line_of(two, kinds, "P1") is None


def test_the_side_that_is_not_tied_to_the_chassis() -> None:
    one = PLACED["to the right"]
    turned = sheet(*one.parts, wires="P1.+ E1.e, P1.+ V1.4, P1.- V1.5")
    line = line_of(turned, builtin(), "P1")
    assert line is not None
    assert (line.terminal, line.back, line.wires) == ("P1.-", "P1.+", ("w3",))


def test_the_current_when_a_contact_closes() -> None:
    """At 0.75 of their volts heaters take 0.75^0.55 of their current: then 1.14 times it at full volts."""
    one = row((0, 0), (320, 0), (520, 0), size=False)
    line = line_of(one, builtin(), "P1")
    assert line is not None
    closing = closing_a(line, 0.75 * 12.6)
    assert closing / line.warm_a == pytest.approx(0.75 ** (0.55 - 1), rel=0.02)
    assert closing_a(line, 12.6) == line.warm_a


@given(st.floats(0.1, 20.0), st.floats(0.05, 5.0), st.floats(0.1, 10.0))
def test_a_first_current_is_never_above_what_it_was_sized_for(v: float, cold: float, limit: float) -> None:
    wanted = ohm_wanted(v, cold, limit)
    assume(wanted > 0.01)
    ohm = resistor_ohm(wanted)
    assert ohm is not None
    assert first_a(v, cold, ohm * (1 - RESISTOR_TOLERANCE)) <= limit * (1 + 1e-9)


def test_the_tolerance_of_thermistors_is_that_of_most() -> None:
    notes = [
        entry.note
        for kind in builtin().thermistors.values()
        for entry in kind.provenance
        if entry.field == "r25_ohm" and "±" in entry.note
    ]
    assert notes and all(int(note.strip("±% ")) <= 100 * THERMISTOR_TOLERANCE for note in notes)
