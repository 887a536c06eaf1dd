"""How much an assessment costs beside the linear systems in it. Run with ``pytest tests/benchmarks --benchmark-only``.

Both limits are ratios within one run, so that they hold on any machine: what the program does is compared with the
bare solution of the very systems that it set up, each solved by itself.
"""

from __future__ import annotations

import importlib.resources
import itertools
import time
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest
import scipy.sparse
import scipy.sparse.linalg
from pytest_benchmark.fixture import BenchmarkFixture

import core.linear
from core.assess import Memory, assess
from core.catalogue import Catalogue, load_builtin
from core.edits import set_part
from core.sheet import AnyPart, Chassis, Sheet, Tube, Winding, Wire
from core.storage import load

SMALL_LIMIT = 15.0
LARGE_LIMIT = 6.0


def fastest(rounds: int, *works: Callable[[], Any]) -> list[float]:
    """The least of several times for each work, seconds; taken by turns, so that all meet the same machine."""
    least = [np.inf] * len(works)
    for _ in range(rounds):
        for at, work in enumerate(works):
            start = time.perf_counter()
            work()
            least[at] = min(least[at], time.perf_counter() - start)
    return [float(seconds) for seconds in least]


@pytest.fixture(scope="module")
def catalogue() -> Catalogue:
    return load_builtin()


@pytest.fixture(scope="module")
def amplifier() -> Sheet:
    folder = importlib.resources.files("resources").joinpath("samples")
    return load(folder.joinpath("rehearsal-amplifier.heaterloom").read_bytes(), "rehearsal-amplifier")


@pytest.fixture(scope="module")
def racks() -> Sheet:
    """1,000 sockets on 20 windings: fifty to a winding along a pair of real wires, one side on the chassis."""
    parts: list[AnyPart] = [Chassis(id="E1")]
    wires: list[Wire] = []
    for rack in range(20):
        parts.append(Winding(id=f"T{rack}", rated_v=6.6, rated_a=15.0, regulation_pct=5.0))
        wires.append(Wire(id=f"e{rack}", start=f"T{rack}.b", end="E1.e"))
        before = (f"T{rack}.a", f"T{rack}.b")
        for place in range(50):
            tube = f"V{rack}-{place}"
            parts.append(Tube(id=tube, type="6SN7", rated_a=0.3))
            after = (f"{tube}.7", f"{tube}.8")
            for side, (start, end) in enumerate(zip(before, after, strict=True)):
                wires.append(Wire(id=f"w{tube}-{side}", start=start, end=end, awg=14, length_m=0.02))
            before = after
    return Sheet(title="Racks", parts=tuple(parts), wires=tuple(wires))


def recorded(
    run: Callable[[], Any], monkeypatch: pytest.MonkeyPatch
) -> list[tuple[np.ndarray[Any, Any], np.ndarray[Any, Any]]]:
    """Every dense system that ``run`` solves, one entry a system."""
    systems: list[tuple[np.ndarray[Any, Any], np.ndarray[Any, Any]]] = []
    bare = np.linalg.solve

    def solve(matrix: Any, right: Any) -> Any:
        systems.extend(zip(np.array(matrix), np.array(right), strict=True))
        return bare(matrix, right)

    with monkeypatch.context() as patch:
        patch.setattr(np.linalg, "solve", solve)
        patch.setattr(core.linear, "BAND_FROM", np.inf)
        run()
    return systems


def test_a_small_sheet(
    amplifier: Sheet, catalogue: Catalogue, benchmark: BenchmarkFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The first sample, from sheet to findings, in at most 15 times the bare solution of its systems."""
    systems = recorded(lambda: assess(amplifier, catalogue), monkeypatch)
    assert systems

    def solve_alone() -> None:
        for matrix, right in systems:
            np.linalg.solve(matrix, right)

    bare, whole = fastest(400, solve_alone, lambda: assess(amplifier, catalogue))
    benchmark.extra_info.update(systems=len(systems), bare_s=bare, whole_s=whole, ratio=whole / bare)
    benchmark(assess, amplifier, catalogue)
    assert whole < SMALL_LIMIT * bare, f"{whole / bare:.1f} times the bare solution"


def test_a_thousand_sockets(
    racks: Sheet, catalogue: Catalogue, benchmark: BenchmarkFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    """20 windings, from sheet to findings, in at most 6 times the sparse factoring and solving of its systems."""
    systems = recorded(lambda: assess(racks, catalogue), monkeypatch)
    assert systems
    sparse = [(scipy.sparse.csc_matrix(matrix), right) for matrix, right in systems]

    def solve_alone() -> None:
        for matrix, right in sparse:
            scipy.sparse.linalg.splu(matrix).solve(right)

    bare, whole = fastest(10, solve_alone, lambda: assess(racks, catalogue))
    benchmark.extra_info.update(systems=len(systems), bare_s=bare, whole_s=whole, ratio=whole / bare)
    benchmark.pedantic(assess, args=(racks, catalogue), rounds=3)
    assert whole < LARGE_LIMIT * bare, f"{whole / bare:.1f} times the bare solution"


def test_one_edit_in_a_thousand_sockets(
    racks: Sheet, catalogue: Catalogue, benchmark: BenchmarkFixture
) -> None:
    """Only the touched island is solved again."""
    memory = Memory()
    assess(racks, catalogue, memory=memory)
    edits = (set_part("V7-20", rated_a=0.3 + n / 1000)(racks) for n in itertools.count(1))

    def edit() -> None:
        assess(next(edits), catalogue, memory=memory)
        assert memory.solved == 1

    benchmark.pedantic(edit, rounds=5)
