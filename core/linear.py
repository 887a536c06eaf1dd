"""Batches of linear systems from stamped entries: dense, banded where the wiring is a long line, sparse LU above.

At 200 unknowns dense and sparse take the same time; a band of a few places beats both from 64 unknowns on, where
loading scipy is worth it (measured with numpy 2.4 and scipy 1.17).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from core.elements.tungsten import Array

DENSE_LIMIT = 200
BAND_FROM = 64
BAND_SHARE = 4  # a band is stored three times as wide as it reaches

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


class Band(NamedTuple):
    """Unknowns in an order that brings all entries near the diagonal, and how far from it the furthest is."""

    order: Indices
    reach: int

    def places(self, row: Indices, column: Indices) -> Indices:
        """Flat places of entries in the storage of LAPACK's gbsv, ``(3 reach + 1, side)``."""
        rank = np.argsort(self.order)
        i, j = rank[row], rank[column]
        return np.asarray((2 * self.reach + i - j) * len(self.order) + j)


def band_of(row: Indices, column: Indices, side: int) -> Band | None:
    """The band of a symmetric pattern, reverse Cuthill-McKee; None where it is too wide to gain anything."""
    # imported late: a window with a small sheet is up before scipy is needed at all
    from scipy.sparse import csr_matrix  # noqa: PLC0415
    from scipy.sparse.csgraph import reverse_cuthill_mckee  # noqa: PLC0415

    pattern = csr_matrix((np.ones(len(row)), (row, column)), shape=(side, side))
    order = reverse_cuthill_mckee(pattern, symmetric_mode=True).astype(np.intp)
    rank = np.argsort(order)
    reach = int(np.abs(rank[row] - rank[column]).max(initial=0))
    return Band(order, reach) if BAND_SHARE * (3 * reach + 1) < side else None


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
        self.side = self.width - 1
        self.band = band_of(*self._inside()[:2], self.side) if self.side >= BAND_FROM else None
        self.is_dense = self.side <= DENSE_LIMIT and self.band is None
        if self.band is not None:
            row, column, keep = self._inside()
            fixed = len(self.constant_places)
            places, self._kept = self.band.places(row, column), keep[fixed:]
            count = int(keep[:fixed].sum())
            self._gather(
                (3 * self.band.reach + 1) * self.side,
                places[:count],
                self.constant_values[..., keep[:fixed]],
                places[count:],
            )
        elif self.is_dense:
            self._gather(self.width**2, self.constant_places, self.constant_values, self.varying_places)

    def _inside(self) -> tuple[Indices, Indices, NDArray[np.bool_]]:
        """Rows and columns of the entries that do not belong to the reference, and which those are."""
        places = np.concatenate((self.constant_places, self.varying_places))
        row, column = places // self.width, places % self.width
        keep = (row < self.side) & (column < self.side)
        return row[keep], column[keep], keep

    def _gather(self, size: int, constant_places: Indices, constant_values: Array, varying: Indices) -> None:
        """Add up what never changes, and lay out where the rest goes, in stores of ``size`` places."""
        self._constant = np.zeros((*constant_values.shape[:-1], size))
        np.add.at(self._constant.T, constant_places, constant_values.T)
        self._varying = (varying + size * np.arange(self.items)[:, None]).ravel()

    def _filled(self, varying: Array) -> Array:
        size = self._constant.shape[-1]
        added = np.bincount(self._varying, varying.ravel(), self.items * size)
        return np.asarray(added.reshape(self.items, size) + self._constant)

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
        if self.band is not None:
            answer[:, :-1] = self._solve_banded(self.band, varying[:, self._kept], right[:, :-1])
        elif self.is_dense:
            square = self._filled(varying).reshape(self.items, self.width, self.width)[:, :-1, :-1]
            answer[:, :-1] = np.linalg.solve(square, right[:, :-1])
        else:
            constant = np.broadcast_to(self.constant_values, (self.items, len(self.constant_places)))
            for item in range(self.items):
                values = np.concatenate((constant[item], varying[item]))
                answer[item, :-1] = self._solve_sparse(values, right[item, :-1])
        if not np.isfinite(answer).all():
            raise np.linalg.LinAlgError("the system is singular")
        return answer

    def _solve_banded(self, band: Band, varying: Array, right: Array) -> Array:
        from scipy.linalg.lapack import dgbsv  # noqa: PLC0415

        stores = self._filled(varying).reshape(self.items, -1, self.side)
        answer = np.empty(right.shape)
        for item, store in enumerate(stores):
            *_, found, failed = dgbsv(band.reach, band.reach, store, right[item, band.order])
            if failed:
                raise np.linalg.LinAlgError("the system is singular")
            answer[item, band.order] = found
        return answer

    def _solve_sparse(self, values: Array, right: Array) -> Array:
        from scipy.sparse import csc_matrix  # noqa: PLC0415
        from scipy.sparse.linalg import splu  # noqa: PLC0415

        row, column, keep = self._inside()
        matrix = csc_matrix((values[keep], (row, column)), shape=(self.side, self.side))
        try:
            return np.asarray(splu(matrix).solve(right))
        except RuntimeError as error:
            raise np.linalg.LinAlgError(str(error)) from error
