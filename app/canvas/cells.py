"""A grid of cells that finds what lies near a rectangle without looking at the whole sheet."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator

from app.canvas.routing import Rect

_SIZE = 160.0
_NOTHING: dict[str, list[Rect]] = {}


def touching(a: Rect, b: Rect) -> bool:
    """Whether two rectangles share any area."""
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


class Cells:
    """Names with the rectangles they cover; one name may cover several."""

    def __init__(self) -> None:
        self._rects: dict[str, tuple[Rect, ...]] = {}
        self._here: defaultdict[tuple[int, int], dict[str, list[Rect]]] = defaultdict(dict)

    def put(self, name: str, rects: Iterable[Rect]) -> None:
        """Set what a name covers."""
        self.drop(name)
        self._rects[name] = tuple(rects)
        for rect in self._rects[name]:
            for cell in _cells(rect):
                self._here[cell].setdefault(name, []).append(rect)

    def drop(self, name: str) -> None:
        """Forget a name; unknown names are ignored."""
        for rect in self._rects.pop(name, ()):
            for cell in _cells(rect):
                self._here[cell].pop(name, None)

    def near(self, rect: Rect) -> list[str]:
        """Names with a rectangle that shares area with ``rect``, in order of name."""
        left, top, right, bottom = rect
        names: set[str] = set()
        for cell in _cells(rect):
            for name, covered in self._here.get(cell, _NOTHING).items():
                if name not in names:
                    for own in covered:
                        # as in ``touching``, which is asked too often here to be called
                        if own[0] < right and left < own[2] and own[1] < bottom and top < own[3]:
                            names.add(name)
                            break
        return sorted(names)

    def rects(self, name: str) -> tuple[Rect, ...]:
        """What a name covers; empty if it is not known."""
        return self._rects.get(name, ())

    def all(self) -> list[Rect]:
        """Every rectangle that is covered."""
        return [rect for rects in self._rects.values() for rect in rects]


def _cells(rect: Rect) -> Iterator[tuple[int, int]]:
    for x in range(int(rect[0] // _SIZE), int(rect[2] // _SIZE) + 1):
        for y in range(int(rect[1] // _SIZE), int(rect[3] // _SIZE) + 1):
            yield x, y
