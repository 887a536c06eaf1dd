"""Batches of linear systems from stamped entries: dense up to 200 unknowns, sparse LU above.

At 200 unknowns dense and sparse take the same time (measured with numpy 2.4 and scipy 1.17).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.elements.tungsten import Array

DENSE_LIMIT = 200

Indices = NDArray[np.intp]


def scatter(index: Indices, values: Array, width: int) -> Array:
    """Add ``values`` ``(b, k, c)`` at ``index`` ``(k,)`` into zeros of shape ``(b, width, c)``."""
    items, count, parts = values.shape
    if not count:
        return np.zeros((items, width, parts))
    if parts == 1:
        flat = (index + width * np.arange(items)[:, None]).ravel()
        sums: Array = np.bincount(flat, values.ravel(), items * width).astype(float, copy=False)
        return sums.reshape(items, width, 1)
    return np.concatenate([scatter(index, values[..., [part]], width) for part in range(parts)], axis=-1)


def stamp(u: Indices, v: Indices, width: int) -> tuple[Indices, Array]:
    """Flat places and signs of a conductance between ``u`` and ``v``: four entries for each branch."""
    places = np.concatenate((u * width + u, v * width + v, u * width + v, v * width + u))
    signs = np.repeat(np.array([1.0, 1.0, -1.0, -1.0]), len(u))
    return places, signs


@dataclass
class LinearSystem:
    """Equations of ``width - 1`` unknowns; the last row and column belong to the reference and are left out.

    ``constant_places`` with ``constant_values`` never change: ``(k,)`` where they are those of all ``items`` of the
    batch, ``(b, k)`` where each has its own. ``varying_places`` get new values at every :meth:`solve`. Places are
    flat indices into a square of side ``width``.
    """

    width: int
    items: int
    constant_places: Indices
    constant_values: Array
    varying_places: Indices

    def __post_init__(self) -> None:
        self.is_dense = self.width - 1 <= DENSE_LIMIT
        if self.is_dense:
            square = self.width**2
            self._constant = np.zeros((*self.constant_values.shape[:-1], square))
            np.add.at(self._constant.T, self.constant_places, self.constant_values.T)
            self._varying = (self.varying_places + square * np.arange(self.items)[:, None]).ravel()

    def solve(self, varying: Array, right: Array) -> Array:
        """Solve for right sides ``(b, width, c)``; the answer has zero for the reference.

        Raises
        ------
        numpy.linalg.LinAlgError
            When a system is singular.
        """
        answer = np.zeros(right.shape)
        if self.width == 1:
            return answer
        if self.is_dense:
            added = np.bincount(self._varying, varying.ravel(), self.items * self.width**2)
            matrix = added.reshape(self.items, -1) + self._constant
            square = matrix.reshape(self.items, self.width, self.width)[:, :-1, :-1]
            answer[:, :-1] = np.linalg.solve(square, right[:, :-1])
        else:
            constant = np.broadcast_to(self.constant_values, (self.items, len(self.constant_places)))
            for item in range(self.items):
                values = np.concatenate((constant[item], varying[item]))
                answer[item, :-1] = self._solve_sparse(values, right[item, :-1])
        if not np.isfinite(answer).all():
            raise np.linalg.LinAlgError("the system is singular")
        return answer

    def _solve_sparse(self, values: Array, right: Array) -> Array:
        # imported late: a window with a small sheet is up before scipy is needed at all
        from scipy.sparse import csc_matrix  # noqa: PLC0415
        from scipy.sparse.linalg import splu  # noqa: PLC0415

        places = np.concatenate((self.constant_places, self.varying_places))
        row, column = places // self.width, places % self.width
        keep = (row < self.width - 1) & (column < self.width - 1)
        side = self.width - 1
        matrix = csc_matrix((values[keep], (row[keep], column[keep])), shape=(side, side))
        try:
            return np.asarray(splu(matrix).solve(right))
        except RuntimeError as error:
            raise np.linalg.LinAlgError(str(error)) from error
