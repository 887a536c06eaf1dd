"""How long wires take among two hundred sockets: finding one way, letting all others make room, meetings, texts.

Printed in milliseconds, and held as a ratio to plain Python work measured in the same run, so that a slow machine does
not count as a slow program.
"""

from __future__ import annotations

import itertools
import random
import time
from collections.abc import Callable

import pytest

from app.canvas.layout import Layout
from app.canvas.meetings import Meetings
from app.theme import LIGHT, load_fonts
from core.edits import change_between, move_parts, set_wire
from tests.app.canvas_rig import CATALOGUE, rows_sheet

ROUNDS = 40


def quickest(work: Callable[[], object], rounds: int = ROUNDS) -> float:
    """Seconds of the quickest round: other work on the machine only ever adds."""
    times = []
    for _ in range(rounds):
        begun = time.perf_counter()
        work()
        times.append(time.perf_counter() - begun)
    return min(times)


def reference() -> float:
    """Seconds for sorting twenty thousand numbers, some milliseconds on any machine."""
    chance = random.Random(1)
    numbers = [chance.random() for _ in range(20_000)]
    return quickest(lambda: sorted(numbers))


@pytest.fixture
def layout(qapp) -> Layout:
    load_fonts()
    return Layout(rows_sheet(200), CATALOGUE, LIGHT)


def told(name: str, seconds: float) -> float:
    """Print a figure; answers its ratio to the reference."""
    base = reference()
    print(f"\n{name}: {seconds * 1000:.2f} ms, {seconds / base:.2f} times the reference")
    return seconds / base


def test_finding_the_way_of_one_wire(benchmark, layout):
    find = lambda: layout.board.find(layout.port("V3.4"), layout.port("V34.5"))  # noqa: E731
    benchmark.pedantic(find, rounds=ROUNDS, warmup_rounds=2)
    assert told("one way among 200 sockets", quickest(find)) < 5


def test_letting_others_make_room_for_a_moved_socket(benchmark, layout):
    sheet = rows_sheet(200)
    there = move_parts(("V90",), 20.0, 20.0)(sheet)
    states = itertools.cycle(((sheet, there), (there, sheet)))

    def settle() -> None:
        before, after = next(states)
        layout.update(after, CATALOGUE, change_between(before, after))

    benchmark.pedantic(settle, rounds=ROUNDS, warmup_rounds=2)
    assert told("a socket moved among 200", quickest(settle)) < 40


def test_dragging_the_corner_of_one_wire(benchmark, layout):
    ways = itertools.cycle((((300.0, -90.0),), ((300.0, -100.0),)))
    bend = lambda: layout.preview_bends("w1p4", next(ways))  # noqa: E731
    benchmark.pedantic(bend, rounds=ROUNDS, warmup_rounds=2)
    assert told("a corner dragged among 200", quickest(bend)) < 10


def test_seeing_where_one_wire_meets_others(benchmark, layout):
    sheet = set_wire("w1p4", via=((300.0, -90.0),))(rows_sheet(200))
    meetings = Meetings(layout)
    meetings.follow(sheet, sheet.wire_by_id)
    follow = lambda: meetings.follow(sheet, ("w1p4",))  # noqa: E731
    benchmark.pedantic(follow, rounds=ROUNDS, warmup_rounds=2)
    assert told("the meetings of one wire", quickest(follow)) < 3
