"""Routes: orthogonal, clear of bodies, in their own lanes, stable and quick enough in what they look at."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.canvas.board import STRAP_CLEAR, Board, port_at
from app.canvas.cells import Cells
from app.canvas.lanes import in_lanes, overlap
from app.canvas.legs import plain_route
from app.canvas.pairs import AMPLITUDE, parted, sides_of, trunk_of, waves
from app.canvas.routing import (
    CLEAR,
    LANE,
    Port,
    Surroundings,
    Track,
    crosses,
    grown,
    length_of,
    route,
    simplified,
    tracks_of,
)

HALF = 52.0
UP, DOWN, WEST, EAST = (0.0, -1.0), (0.0, 1.0), (-1.0, 0.0), (1.0, 0.0)


def socket(x: float, y: float):
    return (x - HALF, y - HALF, x + HALF, y + HALF)


def board_with(*centres: tuple[float, float]) -> Board:
    board = Board()
    for number, (x, y) in enumerate(centres):
        board.place(f"V{number}", socket(x, y), (x - 60, y + HALF + 4, x + 60, y + HALF + 34))
    return board


def pin(x: float, y: float, dx: float, way) -> Port:
    """A pin 28 above the middle of a socket at x, y."""
    return port_at(x + dx, y - 28, way, socket(x, y))


def is_orthogonal(line) -> bool:
    return all(a[0] == b[0] or a[1] == b[1] for a, b in itertools.pairwise(line))


def runs_clear(line, bodies) -> bool:
    """Whether the pieces between the two at the terminals stay out of all bodies."""
    return not any(crosses(track, body) for track in tracks_of(line)[1:-1] for body in bodies)


def test_neighbours_are_joined_by_three_pieces_over_the_top():
    board = board_with((0, 0), (200, 0))
    line = board.lay("w", pin(0, 0, 0, UP), pin(200, 0, 0, UP))
    top = -HALF - CLEAR
    assert line == ((0, -28), (0, top), (200, top), (200, -28))


def test_the_second_wire_takes_the_next_lane():
    board = board_with((0, 0), (200, 0))
    first = board.lay("a", pin(0, 0, -17, UP), pin(200, 0, -17, UP))
    second = board.lay("b", pin(0, 0, 0, UP), pin(200, 0, 0, UP))
    assert abs(second[1][1] - first[1][1]) == LANE
    assert overlap(tracks_of(second)[1], tracks_of(first)) == 0


def test_a_socket_in_between_is_gone_round():
    board = board_with((0, 0), (200, 0), (400, 0))
    line = board.lay("w", pin(0, 0, 28, EAST), pin(400, 0, -28, WEST))
    assert runs_clear(line, [grown(socket(200, 0), CLEAR - 1)])


def test_labels_are_avoided_where_there_is_another_way():
    board = board_with((0, 0), (0, 300))
    line = board.lay("w", port_at(28, 10, EAST, socket(0, 0)), port_at(28, 310, EAST, socket(0, 300)))
    label = (-60, HALF + 4, 60, HALF + 34)
    assert not any(crosses(track, label) for track in tracks_of(line))


def test_laying_one_wire_leaves_the_others_where_they_are():
    board = board_with((0, 0), (200, 0), (400, 0))
    kept = board.lay("a", pin(0, 0, 0, UP), pin(200, 0, 0, UP))
    board.lay("b", pin(200, 0, 0, UP), pin(400, 0, 0, UP))
    board.lay("b", pin(200, 0, -17, UP), pin(400, 0, 0, UP))
    assert board.routes["a"] == kept


def test_the_same_board_gives_the_same_routes():
    def routes():
        board = board_with((0, 0), (200, 0), (0, 200), (200, 200))
        ends = [((0, 0), (200, 0)), ((0, 0), (200, 200)), ((0, 200), (200, 0)), ((0, 200), (200, 200))]
        return [board.lay(f"w{i}", pin(*a, 0, UP), pin(*b, 0, UP)) for i, (a, b) in enumerate(ends)]

    assert routes() == routes()


def test_a_strap_is_a_bracket_just_outside_its_socket():
    board = board_with((0, 0))
    body = socket(0, 0)
    start = port_at(-17, -23, UP, body, STRAP_CLEAR)
    end = port_at(0, -28, UP, body, STRAP_CLEAR)
    line = board.lay("s", start, end, STRAP_CLEAR)
    assert line == ((-17, -23), (-17, -HALF - STRAP_CLEAR), (0, -HALF - STRAP_CLEAR), (0, -28))


def test_a_strap_to_the_far_side_goes_round_its_own_socket():
    board = board_with((0, 0))
    body = socket(0, 0)
    start = port_at(0, -28, UP, body, STRAP_CLEAR)
    end = port_at(17, 23, EAST, body, STRAP_CLEAR)
    line = board.lay("s", start, end, STRAP_CLEAR)
    assert runs_clear(line, [body])


def test_parts_on_top_of_each_other_still_get_a_route():
    board = board_with((0, 0), (10, 10))
    line = board.lay("w", pin(0, 0, 0, UP), pin(10, 10, 0, UP))
    assert line[0] == (0, -28)
    assert line[-1] == (10, -18)
    assert is_orthogonal(line)


def test_a_walled_in_terminal_gets_the_plain_route():
    start, end = Port(0, 0, 0, -1), Port(500, 0, 0, -1)
    walls = [(-40, -60, 40, -30), (-60, -60, -30, 60), (30, -60, 60, 60), (-60, 20, 60, 60)]
    around = Surroundings(bodies=walls)
    assert route(start, end, around) is None
    assert plain_route(start, end) == ((0, 0), (0, -10), (500, -10), (500, 0))


def test_wires_through_a_rectangle_are_found():
    board = board_with((0, 0), (400, 0))
    board.lay("w", pin(0, 0, 0, UP), pin(400, 0, 0, UP))
    assert board.through((150, -100, 250, 0)) == {"w"}
    assert board.through((150, 100, 250, 200)) == set()
    board.lift("w")
    assert board.through((150, -100, 250, 0)) == set()


def test_a_text_stands_beside_the_longest_piece_and_covers_nothing():
    board = board_with((0, 0), (300, 0))
    board.lay("w", pin(0, 0, 0, UP), pin(300, 0, 0, UP))
    x, y = board.text_spot("w", 80, 14)
    assert y + 14 <= -HALF - CLEAR
    assert 0 < x < 220
    board.place("V9", (100, -120, 200, -64), (0, 0, 1, 1))
    board.place("V8", (0, -61, 300, -40), (0, 0, 1, 1))
    assert board.text_spot("w", 80, 14) is None


def test_a_text_longer_than_its_wire_is_left_out():
    board = board_with((0, 0), (130, 0))
    board.lay("w", pin(0, 0, 0, UP), pin(130, 0, 0, UP))
    assert board.text_spot("w", 200, 14) is None


def test_inner_pieces_move_off_other_wires_and_end_pieces_do_not():
    line = ((0, 0), (0, -50), (100, -50), (100, 0))
    around = Surroundings(tracks=[Track(True, -50, 20, 80)])
    moved = in_lanes(line, around)
    assert moved[0] == line[0]
    assert moved[-1] == line[-1]
    assert abs(moved[1][1] + 50) == LANE


def test_simplified_drops_repeats_and_middles():
    assert simplified([(0, 0), (0, 0), (5, 0), (9, 0), (9, 4)]) == ((0, 0), (9, 0), (9, 4))


def test_a_twisted_pair_shares_its_trunk_and_its_conductors_never_meet_at_the_ends():
    board = board_with((0, 0), (400, 200))
    board.lay("a", pin(0, 0, -17, UP), pin(400, 200, -17, UP))
    follower = board.lay_pair("b", "a", pin(0, 0, 0, UP), pin(400, 200, 0, UP))
    trunk = board.trunks["a"]
    assert board.trunks["b"] == trunk
    first, last = sides_of(follower, trunk)
    one, other = waves(trunk, (first, last)), waves(trunk, (-first, -last))
    for end in (0, -1):
        assert math.dist(one[end], other[end]) == pytest.approx(2 * AMPLITUDE)
        assert math.dist(one[end], trunk[end]) == pytest.approx(AMPLITUDE)
    # every point of a conductor is the mirror image of the other's about the trunk's line
    for a, b in zip(one, other, strict=True):
        assert math.dist(a, b) <= 2 * AMPLITUDE * math.sqrt(2) + 1e-9


@pytest.mark.parametrize("sides", [(1, 1), (1, -1), (-1, 1), (-1, -1)])
def test_a_conductor_begins_and_ends_on_the_sides_asked_for(sides):
    trunk = ((0.0, 0.0), (100.0, 0.0), (100.0, 90.0))
    points = waves(trunk, sides)
    assert points[0] == pytest.approx((0.0, sides[0] * AMPLITUDE))
    assert points[-1] == pytest.approx((100.0 - sides[1] * AMPLITUDE, 90.0))


def test_a_lead_that_runs_along_the_trunk_shortens_it():
    trunk = ((0.0, 0.0), (100.0, 0.0), (100.0, 90.0))
    lead = ((40.0, 60.0), (40.0, 0.0), (0.0, 0.0))
    assert parted(lead, trunk) == (((40.0, 60.0), (40.0, 0.0)), ((40.0, 0.0), (100.0, 0.0), (100.0, 90.0)))
    across = ((0.0, 60.0), (0.0, 0.0))
    assert parted(across, trunk) == (across, trunk)


def test_the_second_wire_of_a_pair_touches_the_trunk_at_its_ends_only():
    board = board_with((0, 0), (400, 0))
    board.lay("a", pin(0, 0, -17, UP), pin(400, 0, -17, UP))
    follower = board.lay_pair("b", "a", pin(0, 0, 28, DOWN), pin(400, 0, 28, DOWN))
    trunk = board.trunks["b"]
    for line, end in ((follower, trunk[0]), (tuple(reversed(follower)), trunk[-1])):
        lead = line[: line.index(end) + 1]
        along = trunk[1] if end == trunk[0] else trunk[-2]
        assert (lead[-2][0] - end[0]) * (along[0] - end[0]) + (lead[-2][1] - end[1]) * (
            along[1] - end[1]
        ) <= 1e-6


def test_a_short_wire_has_no_trunk():
    assert trunk_of(((0, 0), (100, 0)), 20, 20) is None


def test_cells_find_what_is_near_and_forget_what_is_dropped():
    cells = Cells()
    cells.put("a", [(0, 0, 500, 10)])
    cells.put("b", [(900, 900, 910, 910)])
    assert cells.near((400, -5, 410, 5)) == ["a"]
    cells.put("a", [(0, 100, 10, 110)])
    assert cells.near((400, -5, 410, 5)) == []
    cells.drop("b")
    assert cells.near((0, 0, 1000, 1000)) == ["a"]


places = st.tuples(st.integers(-3, 3), st.integers(-3, 3))
ways = st.sampled_from((UP, DOWN, WEST, EAST))


@given(st.lists(places, min_size=2, max_size=8, unique=True), ways, ways)
def test_routes_between_spaced_sockets_are_orthogonal_and_clear(centres, first, last):
    centres = [(200.0 * x, 200.0 * y) for x, y in centres]
    board = board_with(*centres)
    start = port_at(*centres[0], first, socket(*centres[0]))
    end = port_at(*centres[-1], last, socket(*centres[-1]))
    line = board.lay("w", start, end)
    assert line[0] == start.point
    assert line[-1] == end.point
    assert is_orthogonal(line)
    assert runs_clear(line, [socket(*centre) for centre in centres])
    straight = abs(start.x - end.x) + abs(start.y - end.y)
    assert length_of(line) <= straight + 1200
    assert len(line) <= 8


@given(st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), min_size=2, max_size=6))
def test_routes_between_crowded_parts_end_where_they_should(centres):
    centres = [(10.0 * x, 10.0 * y) for x, y in centres]
    board = board_with(*centres)
    start, end = pin(*centres[0], 0, UP), pin(*centres[-1], -17, UP)
    line = board.lay("w", start, end)
    assert line[0] == start.point
    assert line[-1] == end.point
    assert is_orthogonal(line)
