"""A stiffly accurate Rosenbrock method of order 4(3) with dense output, for systems without explicit time.

Coefficients: RODAS of Hairer & Wanner, Solving Ordinary Differential Equations II (2nd ed. 1996), section IV.7. One
step costs six evaluations and one factored Jacobian; lamps and tiny heat capacities, which make the equations stiff,
cost no more than others.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from core.elements.tungsten import Array

_GAMMA = 0.25
_A = np.array(
    (
        (1.544, 0.0, 0.0, 0.0),
        (0.9466785280815826, 0.2557011698983284, 0.0, 0.0),
        (3.314825187068521, 2.896124015972201, 0.9986419139977817, 0.0),
        (1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950),
    )
)
_C = np.array(
    (
        (-5.6688, 0.0, 0.0, 0.0, 0.0),
        (-2.430093356833875, -0.2063599157091915, 0.0, 0.0, 0.0),
        (-0.1073529058151375, -9.594562251023355, -20.47028614809616, 0.0, 0.0),
        (7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160, 0.0),
        (8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054),
    )
)
_D = np.array(
    (
        (10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662, 0.0),
        (-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872, 0.0),
    )
)  # fmt: skip

RTOL = 1e-6
ATOL_K = 1e-4
_SAFETY, _LEAST, _MOST = 0.9, 0.2, 6.0

Rates = Callable[[Array], Array]
Jacobian = Callable[[Array], tuple[Array, Array]]


@dataclass(frozen=True)
class Step:
    """One step from ``t0`` to ``t0 + h``; ``start``, ``end`` and the two dense rows are ``(n,)``."""

    t0: float
    h: float
    start: Array
    end: Array
    dense: Array  # (2, n)

    def at(self, t_s: float) -> Array:
        """The state within the step."""
        s = (t_s - self.t0) / self.h
        r = 1 - s
        return np.asarray(self.start * r + s * (self.end + r * (self.dense[0] + s * self.dense[1])))


def error_norm(error: Array, start: Array, end: Array, rtol: float, atol: float) -> float:
    """Root mean square of the error in units of the tolerance."""
    scale = atol + rtol * np.maximum(np.abs(start), np.abs(end))
    return float(np.sqrt(np.mean((error / scale) ** 2))) if len(start) else 0.0


class Rosenbrock:
    """Takes steps of ``dy/dt = rates(y)``; ``jacobian(y)`` gives the rates and their matrix ``(n, n)`` at once."""

    def __init__(self, rates: Rates, jacobian: Jacobian, rtol: float = RTOL, atol: float = ATOL_K) -> None:
        # loaded with the first run: a window with a small sheet is up before scipy is needed at all
        from scipy.linalg.lapack import dgetrf, dgetrs  # noqa: PLC0415

        self._factor, self._solve = dgetrf, dgetrs
        self._rates = rates
        self._jacobian = jacobian
        self.rtol, self.atol = rtol, atol

    def first_h(self, rates: Array, y: Array) -> float:
        """A cautious first step: the fastest state moves by about a thousandth of itself."""
        fastest = float(np.max(np.abs(rates) / (1.0 + np.abs(y)), initial=0.0))
        return 1e-3 / fastest if fastest > 0 else 1.0

    def linearise(self, y: Array) -> tuple[Array, Array]:
        """Rates and their matrix at a state, to be used for all tries of a step from there."""
        return self._jacobian(y)

    def step(self, t0: float, h: float, y: Array, linear: tuple[Array, Array]) -> tuple[Step, float]:
        """Try one step; returns it and its error in units of the tolerance."""
        rates, matrix = linear
        n = len(y)
        left = -matrix
        left.flat[:: n + 1] += 1 / (h * _GAMMA)
        lu, pivots, failed = self._factor(left, overwrite_a=1)
        k = np.empty((6, n))
        k[0], _ = self._solve(lu, pivots, rates)
        for stage in range(1, 5):
            inner = y + _A[stage - 1, :stage] @ k[:stage]
            right = self._rates(inner) + (_C[stage - 1, :stage] / h) @ k[:stage]
            k[stage], _ = self._solve(lu, pivots, right)
        inner += k[4]
        right = self._rates(inner) + (_C[4] / h) @ k[:5]
        k[5], _ = self._solve(lu, pivots, right)
        end = inner + k[5]
        error = error_norm(k[5], y, end, self.rtol, self.atol) if not failed else np.inf
        if not np.isfinite(error):
            error = np.inf
        return Step(t0, h, y, end, _D @ k), error


def next_h(h: float, error: float) -> float:
    """The length of the next try after one of a given error."""
    if error == 0.0:
        return h * _MOST
    return float(h * min(_MOST, max(_LEAST, _SAFETY * error**-0.25)))
