"""Union-find: which things have been joined to which."""

from __future__ import annotations

from typing import Generic, TypeVar

T = TypeVar("T", str, int)


class Merging(Generic[T]):
    """Things that are joined two by two; each group is known by one of its members."""

    def __init__(self) -> None:
        self._parent: dict[T, T] = {}

    def find(self, item: T) -> T:
        """The member by which the group of ``item`` is known."""
        parent = self._parent
        root = item
        while (above := parent.get(root, root)) != root:
            root = above
        while item != root:
            parent[item], item = root, parent[item]
        return root

    def join(self, one: T, other: T) -> bool:
        """Join two groups; says whether they were two."""
        a, b = self.find(one), self.find(other)
        if a == b:
            return False
        self._parent[a] = b
        return True
