"""The symbols: pins in their true places, terminals that turn, labels that stay clear of wires."""

from __future__ import annotations

import itertools
import math

import pytest

from app.canvas import symbols
from app.canvas.look import PartLook
from app.canvas.symbols.bases import (
    BASES,
    CIRCLE,
    LARGE_RING,
    OUTLINE,
    RING,
    angle_of,
    base_named,
    socket_for,
)
from app.canvas.symbols.heater import heater_paths
from app.canvas.symbols.labels import label_of, place_label
from app.canvas.symbols.rating import rating_text
from app.canvas.symbols.socket import number_places
from app.theme import LIGHT, load_fonts
from core import sheet
from core.catalogue.bases import BASES as CATALOGUE_BASES
from core.catalogue.types import TubeType
from core.terminals import terminal_names
from tests.app.symbol_parts import KINDS, SHELF, part_of

THIN = "\u2009"
TURNS = (0, 90, 180, 270)


@pytest.fixture(autouse=True)
def _fonts(qapp):
    load_fonts()


# ---- bases

PITCH = {
    "B9A": (9, 36),
    "magnoval": (9, 36),
    "novar": (9, 36),
    "B7G": (7, 45),
    "octal": (8, 45),
    "loctal": (8, 45),
    "rimlock": (8, 45),
    "UX4": (4, 90),
    "UX6": (6, 60),
    "UX7": (7, 360 / 7),
}


@pytest.mark.parametrize("name", PITCH)
def test_pins_stand_at_the_standard_pitch(name: str):
    count, pitch = PITCH[name]
    pins = BASES[name].pins
    assert [pin.name for pin in pins] == [str(number) for number in range(1, count + 1)]
    angles = [angle_of(pin.x, pin.y) for pin in pins]
    steps = [after - before for before, after in itertools.pairwise(angles)]
    assert steps == pytest.approx([pitch] * (count - 1))
    # what is left of the circle, the gap or key, lies evenly about the bottom
    assert angles[0] == pytest.approx(360 - angles[-1])


@pytest.mark.parametrize("name", sorted(set(BASES) - {"B4"}))
def test_pins_run_clockwise_from_the_bottom(name: str):
    angles = [angle_of(pin.x, pin.y) for pin in BASES[name].pins]
    assert angles == sorted(angles)
    assert 0 < angles[0] < 180 < angles[-1] < 360


def test_b9a_as_seen_from_the_wiring_side():
    pin = {pin.name: pin for pin in BASES["B9A"].pins}
    assert (pin["5"].x, pin["5"].y) == pytest.approx((0.0, -CIRCLE))
    assert pin["1"].x < 0 < pin["1"].y
    assert pin["9"].x > 0
    assert pin["9"].y == pytest.approx(pin["1"].y)


def test_octal_heater_pins_stand_right_of_the_key():
    pin = {pin.name: pin for pin in BASES["octal"].pins}
    assert pin["8"].x == pytest.approx(CIRCLE * math.sin(math.radians(22.5)))
    assert pin["7"].x > pin["8"].x > 0
    assert pin["8"].y > pin["7"].y > 0


def test_five_pin_base_has_its_heater_pins_closest_together():
    angles = [angle_of(pin.x, pin.y) for pin in BASES["UX5"].pins]
    steps = [after - before for before, after in itertools.pairwise(angles)]
    assert sum(steps) + 60 == pytest.approx(360)
    assert min(steps) > 60


@pytest.mark.parametrize(("name", "large"), [("UX4", "14"), ("UX6", "16"), ("UX7", "17"), ("UX5", "")])
def test_large_pins_are_drawn_large(name: str, large: str):
    for pin in BASES[name].pins:
        assert pin.ring == (LARGE_RING if pin.name in large else RING)


@pytest.mark.parametrize("name", sorted(CATALOGUE_BASES))
def test_every_base_of_the_catalogue_has_a_socket(name: str):
    base = base_named(name)
    if name == "generic":
        assert base is None
        return
    assert base is not None
    assert tuple(pin.name for pin in base.pins) == CATALOGUE_BASES[name].pins


@pytest.mark.parametrize("name", sorted(CATALOGUE_BASES))
def test_pins_do_not_touch_and_lie_within_the_outline(name: str):
    base = base_named(name)
    for pin in base.pins if base else ():
        assert math.hypot(pin.x, pin.y) + 2 < OUTLINE
    for one, other in itertools.combinations(base.pins if base else (), 2):
        assert math.dist((one.x, one.y), (other.x, other.y)) > one.ring + other.ring


def test_a_base_that_lacks_a_heater_pin_gives_the_generic_circle():
    assert not socket_for("B7G", ("3", "9")).is_known
    assert socket_for("B7G", ("3", "4")).is_known


def test_second_names_of_bases():
    assert base_named("Noval") is BASES["B9A"]
    assert base_named(" b8a ") is BASES["rimlock"]
    assert base_named("leads") is None
    assert base_named("leads99") is None


# ---- terminals


@pytest.mark.parametrize("kind", sorted(set(KINDS) - {"tube"}))
def test_terminals_are_those_of_the_kind(kind: str):
    part = part_of(kind)
    ends = symbols.terminals(part, SHELF)
    assert sorted(end.name for end in ends) == sorted(terminal_names(part) or ())


def test_the_centre_tap_is_a_terminal_only_where_there_is_one():
    plain = sheet.Winding(id="T1", rated_v=6.3, rated_a=1.0)
    assert [end.name for end in symbols.terminals(plain, SHELF)] == ["a", "b"]


@pytest.mark.parametrize("kind", sorted(set(KINDS) - {"tube"}))
@pytest.mark.parametrize("turn", TURNS)
def test_terminals_turn_with_their_part(kind: str, turn: int):
    straight = symbols.terminals(part_of(kind), SHELF)
    turned = symbols.terminals(part_of(kind, turn=turn), SHELF)
    angle = math.radians(turn)
    for before, after in zip(straight, turned, strict=True):
        # y points down: a clockwise turn takes (1, 0) to (0, 1)
        x = before.x * math.cos(angle) - before.y * math.sin(angle)
        y = before.x * math.sin(angle) + before.y * math.cos(angle)
        assert (after.x, after.y) == pytest.approx((x, y), abs=1e-9)
        assert abs(after.dx) + abs(after.dy) == 1


@pytest.mark.parametrize("kind", sorted(set(KINDS) - {"tube"}))
@pytest.mark.parametrize("turn", TURNS)
def test_terminals_lie_on_the_grid_and_on_the_edge(kind: str, turn: int):
    part = part_of(kind, turn=turn)
    box = symbols.body(part, SHELF)
    for end in symbols.terminals(part, SHELF):
        assert end.x % 20 == 0
        assert end.y % 20 == 0
        assert box.contains(end.x, end.y)
        # a wire leaves the body and does not run back through it
        assert not box.contains(end.x + 60 * end.dx, end.y + 60 * end.dy)


def test_a_tube_gives_every_pin_of_its_base_and_marks_the_heater():
    ends = symbols.terminals(sheet.Tube(id="V1", type="ECC83"), SHELF)
    assert [end.name for end in ends] == list("123456789")
    assert {end.name for end in ends if end.heater} == {"4", "5", "9"}


@pytest.mark.parametrize("turn", TURNS)
def test_a_turned_socket_turns_its_pins(turn: int):
    ends = symbols.terminals(sheet.Tube(id="V1", type="EL84", turn=turn), SHELF)
    five = next(end for end in ends if end.name == "5")
    # clockwise from the top at 0: right, bottom, left
    expected = {0: (0, -CIRCLE), 90: (CIRCLE, 0), 180: (0, CIRCLE), 270: (-CIRCLE, 0)}[turn]
    assert (five.x, five.y) == pytest.approx(expected, abs=1e-9)


@pytest.mark.parametrize("turn", TURNS)
@pytest.mark.parametrize("name", ["ECC83", "6SN7", "300B"])
def test_no_wire_leaves_a_socket_into_its_label(name: str, turn: int):
    for end in symbols.terminals(sheet.Tube(id="V1", type=name, turn=turn), SHELF):
        assert end.dy <= 0
        assert abs(end.dx) + abs(end.dy) == 1
        # outward, not across the socket
        assert end.dx * end.x + end.dy * end.y > -1e-9


@pytest.mark.parametrize("turn", TURNS)
@pytest.mark.parametrize("name", ["ECC83", "EL84", "6SN7", "300B"])
def test_heater_wires_do_not_cover_pin_numbers(name: str, turn: int):
    ends = symbols.terminals(sheet.Tube(id="V1", type=name, turn=turn), SHELF)
    for x, y in number_places(ends):
        assert math.hypot(x, y) > OUTLINE + 3
        for end in ends:
            if end.heater and end.dx * x > 0:
                assert abs(y - end.y) >= 5
            if end.heater and end.dy * y > 0:
                assert abs(x - end.x) >= 5


def test_a_wire_to_a_pin_that_is_not_there_still_has_a_place():
    part = sheet.Tube(id="V1", type="EL84")
    end = symbols.terminal(part, SHELF, "14")
    assert end.name == "14"
    assert not end.heater
    assert symbols.body(part, SHELF).contains(end.x, end.y)
    assert symbols.terminal(part, SHELF, "4").heater


def test_an_unknown_type_has_pins_but_no_heater():
    ends = symbols.terminals(sheet.Tube(id="V1", type="no such tube"), SHELF)
    assert len(ends) == 9
    assert not any(end.heater for end in ends)


# ---- heater


def test_a_tapped_heater_has_a_section_each_and_one_joint():
    paths = heater_paths(BASES["B9A"], (("4", "9"), ("9", "5")), False)
    four, nine = BASES["B9A"].pin("4"), BASES["B9A"].pin("9")
    assert len(paths.sections) == 2
    start = paths.sections[0].pointAtPercent(0)
    assert (start.x(), start.y()) == pytest.approx((four.x, four.y))
    assert [path.currentPosition().toTuple() for path in paths.sections] == [
        pytest.approx(paths.joint),
        pytest.approx(paths.joint),
    ]
    assert paths.tap.currentPosition().toTuple() == pytest.approx((nine.x, nine.y))


@pytest.mark.parametrize("direct", [False, True])
@pytest.mark.parametrize("pins", [("4", "5"), ("1", "9"), ("2", "7"), ("3", "8")])
def test_a_hairpin_runs_from_pin_to_pin_within_the_socket(pins: tuple[str, str], direct: bool):
    base = BASES["B9A"]
    (line,) = heater_paths(base, (pins,), direct).sections
    first, last = base.pin(pins[0]), base.pin(pins[1])
    assert line.pointAtPercent(0).toTuple() == pytest.approx((first.x, first.y))
    assert line.currentPosition().toTuple() == pytest.approx((last.x, last.y))
    box = line.boundingRect()
    assert all(math.hypot(c.x(), c.y()) < OUTLINE * 1.2 for c in (box.topLeft(), box.bottomRight()))


# ---- labels and ratings

RATINGS = [
    (sheet.Tube(id="V1", type="EL84"), "EL84"),
    (sheet.Tube(id="V1", type="el84"), "el84"),
    (sheet.Winding(id="T1", rated_v=6.3, rated_a=3.0), f"6.3{THIN}V 3{THIN}A"),
    (sheet.RectifiedSupply(id="D1", rated_v=9.0, rated_a=2.0, regulator_v=6.3), f"6.3{THIN}V 2{THIN}A"),
    (sheet.RectifiedSupply(id="D1", rated_v=9.0, rated_a=0.5), f"9{THIN}V 500{THIN}mA"),
    (sheet.DcSupply(id="D1", set_v=12.6, limit_a=2.5), f"12.6{THIN}V 2.5{THIN}A"),
    (sheet.Battery(id="B1", emf_v=6.0), f"6{THIN}V"),
    (sheet.MainsFeed(id="M1"), "mains"),
    (sheet.Resistor(id="R1", ohm=0.22, rated_w=2.0), f"0.22{THIN}Ω 2{THIN}W"),
    (sheet.Resistor(id="R1", ohm=4700.0), f"4.7{THIN}kΩ"),
    (sheet.Resistor(id="R1", ohm=100.0), f"100{THIN}Ω"),
    (sheet.Thermistor(id="TH1", type="S235 5 ohm"), "S235 5 ohm"),
    (sheet.Thermistor(id="TH1", r25_ohm=10.0), f"10{THIN}Ω"),
    (sheet.Thermistor(id="TH1"), ""),
    (sheet.Relay(id="K1", coil_v=12.0, coil_ohm=270.0), f"12{THIN}V 270{THIN}Ω"),
    (sheet.Fuse(id="F1", rated_a=3.15), f"3.15{THIN}A"),
    (sheet.Capacitor(id="C1", farad=3.3e-6), f"3.3{THIN}µF"),
    (sheet.Balance(id="R2", ohm=100.0), f"100{THIN}Ω"),
    (sheet.Elevation(id="E2", volts=40.0), f"40{THIN}V"),
    (sheet.Lamp(id="L1", rated_v=6.3, rated_a=0.15), f"6.3{THIN}V 150{THIN}mA"),
    (sheet.Lamp(id="L1", type="#47"), "#47"),
    (sheet.Lamp(id="L1"), ""),
    (sheet.Chassis(id="E1"), ""),
    (sheet.Joint(id="J1"), ""),
]


@pytest.mark.parametrize(("part", "text"), RATINGS, ids=lambda value: getattr(value, "kind", None))
def test_rating(part, text: str):
    expected = "EL84" if text == "el84" else text
    assert rating_text(part, SHELF if text != "el84" else _AnyCase()) == expected


class _AnyCase:
    def tube(self, name: str) -> TubeType | None:
        return SHELF.tube(name.upper())


@pytest.mark.parametrize("kind", sorted(KINDS))
@pytest.mark.parametrize("turn", TURNS)
def test_no_wire_crosses_the_label(kind: str, turn: int):
    part = part_of(kind, turn=turn)
    look = PartLook(state="over", values=f"6.94{THIN}V  +10.2{THIN}%")
    box = symbols.label_box(part, SHELF, look, LIGHT)
    for end in symbols.terminals(part, SHELF):
        if end.heater:
            for step in range(0, 100, 2):
                assert not box.contains(end.x + step * end.dx, end.y + step * end.dy, slack=-0.5)


@pytest.mark.parametrize("kind", sorted(KINDS))
@pytest.mark.parametrize("turn", TURNS)
def test_the_label_stands_beside_the_body(kind: str, turn: int):
    part = part_of(kind, turn=turn)
    box = symbols.label_box(part, SHELF, PartLook(state="ok", values="x"), LIGHT)
    body = symbols.body(part, SHELF)
    apart = (
        box.left >= body.right or box.right <= body.left or box.top >= body.bottom or box.bottom <= body.top
    )
    assert apart


def test_a_longer_text_makes_a_wider_label_and_a_second_line_a_higher_one():
    part = sheet.Resistor(id="R1", ohm=0.22)
    bare = symbols.label_box(part, SHELF, PartLook(), LIGHT)
    full = symbols.label_box(part, SHELF, PartLook(state="ok", values="a line of many figures"), LIGHT)
    assert full.width > bare.width
    assert full.height > bare.height


def test_a_label_goes_left_where_every_other_side_is_taken():
    ends = [symbols.Terminal("x", 0, 0, dx, dy) for dx, dy in ((0, 1), (1, 0), (0, -1))]
    box, align = place_label(label_of("R1", "", PartLook()), symbols.Box(-20, -20, 20, 20), ends, LIGHT)
    assert box.right < -20
    assert align == 1.0
