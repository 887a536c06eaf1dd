"""Bodies and network together: how fast every temperature changes, and steps along that."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from core.elements.tungsten import Array
from core.warmup.bodies import Bodies
from core.warmup.ports import Ports
from core.warmup.rosenbrock import ATOL_K, RTOL, Rosenbrock, Step, next_h


@dataclass(frozen=True)
class System:
    """The rates of all temperatures as long as nothing switches."""

    bodies: Bodies
    ports: Ports

    def rates(self, y: Array) -> Array:
        """Kelvin per second at a state ``(n,)``."""
        siemens = self.bodies.siemens(y)
        volts = self.ports.volts(siemens)
        return self.bodies.rates(y, siemens * _squared(volts))

    def linearised(self, y: Array) -> tuple[Array, Array]:
        """The rates and their exact matrix ``(n, n)`` at a state."""
        siemens, slopes = self.bodies.siemens_and_slopes(y)
        volts, ohms = self.ports.volts_and_ohms(siemens)
        squared = _squared(volts)
        # an ampere out of port j moves the volts of all ports; a siemens more in it takes its own volts in amperes
        by_siemens = -2 * siemens[:, None] * ohms * (volts @ volts.T)
        by_siemens.flat[:: len(siemens) + 1] += squared
        matrix = np.zeros((len(y), len(y)))
        self.bodies.add_heat_slopes(matrix, y, by_siemens * slopes)
        return self.bodies.rates(y, siemens * squared), matrix


def _squared(volts: Array) -> Array:
    if volts.shape[-1] == 1:
        only = volts[..., 0]
        return np.asarray(only * only)
    return np.asarray((volts * volts).sum(axis=-1))


def steps(system: System, y: Array, rtol: float = RTOL, atol: float = ATOL_K) -> Iterator[Step]:
    """Accepted steps from time zero on, without end, as long as nothing switches."""
    method = Rosenbrock(system.rates, system.linearised, rtol, atol)
    t, linear = 0.0, system.linearised(y)
    h = method.first_h(linear[0], y)
    while True:
        step, error = method.step(t, h, y, linear)
        if error <= 1:
            yield step
            t, y = step.t0 + step.h, step.end
            linear = system.linearised(y)
        h = next_h(h, error)
