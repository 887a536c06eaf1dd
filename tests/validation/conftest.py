"""Short ways to wire up and solve a sheet for the comparisons with published figures."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from core.assess import Assessment, assess
from core.catalogue import Catalogue, load_builtin
from core.sheet import AnyPart, Sheet, Wire


@pytest.fixture(scope="session")
def catalogue() -> Catalogue:
    return load_builtin()


@pytest.fixture(scope="session")
def wired() -> Callable[..., Sheet]:
    """A sheet from parts and straps, the straps written ``B1.+=V1.4 V1.5=B1.-``."""

    def build(parts: list[AnyPart], straps: str, **fields: Any) -> Sheet:
        ends = [pair.split("=") for pair in straps.split()]
        wires = tuple(Wire(id=f"w{n}", start=a, end=b) for n, (a, b) in enumerate(ends))
        return Sheet(parts=tuple(parts), wires=wires + fields.pop("wires", ()), **fields)

    return build


@pytest.fixture(scope="session")
def solved(wired: Callable[..., Sheet], catalogue: Catalogue) -> Callable[..., Assessment]:
    """The assessment of such a sheet, with everything in it solved."""

    def run(parts: list[AnyPart], straps: str, **fields: Any) -> Assessment:
        answer = assess(wired(parts, straps, **fields), catalogue)
        assert not any(point.unsolved for point in answer.points.values())
        return answer

    return run
