"""Keeping what is laid in order in step with what it depends on.

Things are laid one after another, each minding only those before it, so that the whole follows from the sheet alone.
When something changes, only what looked at the changed places is laid again, in the same order, and what that changes
in turn. The outcome is the same as laying everything afresh.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable, Mapping

from app.canvas.routing import Rect


def settle(
    stale: Iterable[str],
    ranks: Mapping[str, int],
    redo: Callable[[str], Iterable[Rect]],
    near: Callable[[Rect], Iterable[str]],
) -> set[str]:
    """Lay again what is stale and what depends on it; answers what lies elsewhere now.

    ``redo`` lays one and answers the places it left and took, none if it stayed; ``near`` says what looked at a
    place. Each is laid once at the most, as only later ones are stirred.
    """
    queued = set(stale)
    queue = [(ranks[name], name) for name in queued]
    heapq.heapify(queue)
    changed: set[str] = set()
    while queue:
        rank, name = heapq.heappop(queue)
        for rect in redo(name):
            changed.add(name)
            for other in near(rect):
                if ranks[other] > rank and other not in queued:
                    queued.add(other)
                    heapq.heappush(queue, (ranks[other], other))
    return changed
