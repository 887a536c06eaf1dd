"""Heaters of given constants in given electrical networks, integrated in time by the program's own method."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
from scipy.integrate import quad

from core.elements.tungsten import Array
from core.warmup.bodies import Bodies
from core.warmup.capacity import bisect
from core.warmup.ports import Ports
from core.warmup.rosenbrock import Step
from core.warmup.system import System, steps

RTOL, ATOL_K = 1e-9, 1e-7


@dataclass(frozen=True)
class PowerCurve:
    """R over R(ambient) as a power of T."""

    exponent: float
    ambient_k: float

    def ratio(self, kelvin: Array) -> tuple[Array, Array]:
        value = (kelvin / self.ambient_k) ** self.exponent
        return value, self.exponent * value / kelvin

    def temperature(self, ratio: Array) -> Array:
        return self.ambient_k * np.asarray(ratio) ** (1 / self.exponent)


@dataclass(frozen=True)
class Course:
    """A run to its end, read at any time; ``n`` bodies, the ports in their order."""

    bodies: Bodies
    ports: Ports
    path: tuple[Step, ...]

    def kelvin(self, t_s: float) -> Array:
        """Temperatures of all bodies."""
        return next((step for step in self.path if t_s <= step.t0 + step.h), self.path[-1]).at(t_s)

    def volts(self, t_s: float) -> Array:
        """Volts of the ports."""
        return self.ports.volts(self.bodies.siemens(self.kelvin(t_s)))[:, 0]

    def amps(self, t_s: float) -> Array:
        """Amperes of the ports."""
        return self.volts(t_s) * self.bodies.siemens(self.kelvin(t_s))

    def when(self, above: Callable[[float], float], end_s: float) -> float:
        """When a rising quantity reaches zero."""
        return bisect(above, 0.0, end_s)

    def integral(self, of: Callable[[float], float], end_s: float) -> float:
        """Of a quantity from switching on to ``end_s``."""
        edges = [step.t0 for step in self.path if step.t0 < end_s] + [end_s]
        return float(sum(quad(of, a, b)[0] for a, b in pairwise(edges)))


def course(bodies: Bodies, ports: Ports, seconds: float) -> Course:
    """Run bodies that are as cold as the room."""
    path = []
    for step in steps(System(bodies, ports), bodies.start(), RTOL, ATOL_K):
        path.append(step)
        if step.t0 + step.h >= seconds:
            break
    return Course(bodies, ports, tuple(path))


def behind(volts: float, ohm: float, count: int = 1) -> Ports:
    """Each heater behind a resistance of its own."""
    return Ports(ohm * np.eye(count), np.full((count, 1), volts), np.zeros(count))


def with_capacities(bodies: Bodies, heater_c: Sequence[float], cathode_c: Sequence[float]) -> Bodies:
    """The same bodies with other heat capacities, J/K."""
    return replace(bodies, heater_c=np.array(heater_c), cathode_c=np.array(cathode_c))
