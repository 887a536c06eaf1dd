"""A grid of cells that finds what lies near a rectangle without looking at the whole sheet."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator

from app.canvas.routing import Rect

_SIZE = 160.0


def touching(a: Rect, b: Rect) -> bool:
    """Whether two rectangles share any area."""
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


class Cells:
    """Names with the rectangles they cover; one name may cover several."""

    def __init__(self) -> None:
        self._rects: dict[str, tuple[Rect, ...]] = {}
        self._names: defaultdict[tuple[int, int], set[str]] = defaultdict(set)

    def put(self, name: str, rects: Iterable[Rect]) -> None:
        """Set what a name covers."""
        self.drop(name)
        self._rects[name] = tuple(rects)
        for cell in self._cells_of(name):
            self._names[cell].add(name)

    def drop(self, name: str) -> None:
        """Forget a name; unknown names are ignored."""
        if name not in self._rects:
            return
        for cell in self._cells_of(name):
            self._names[cell].discard(name)
        del self._rects[name]

    def near(self, rect: Rect) -> list[str]:
        """Names with a rectangle that shares area with ``rect``, in order of name."""
        names: set[str] = set()
        for cell in _cells(rect):
            names |= self._names.get(cell, set())
        return sorted(name for name in names if any(touching(own, rect) for own in self._rects[name]))

    def rects(self, name: str) -> tuple[Rect, ...]:
        """What a name covers; empty if it is not known."""
        return self._rects.get(name, ())

    def all(self) -> list[Rect]:
        """Every rectangle that is covered."""
        return [rect for rects in self._rects.values() for rect in rects]

    def _cells_of(self, name: str) -> set[tuple[int, int]]:
        return {cell for rect in self._rects[name] for cell in _cells(rect)}


def _cells(rect: Rect) -> Iterator[tuple[int, int]]:
    for x in range(int(rect[0] // _SIZE), int(rect[2] // _SIZE) + 1):
        for y in range(int(rect[1] // _SIZE), int(rect[3] // _SIZE) + 1):
            yield x, y
