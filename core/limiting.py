"""Supplies with a current unknown of their own: what each does, and when it does something else.

A supply without a limit always regulates. One with a limit gives between nothing and its limit: it regulates,
holds at its limit (falling along its line where it folds back), blocks while another source holds its terminals
above its own volts, or has switched off. Switching off is for good within one solution, and only hot heaters can
cause it: at the instant of switching on, the supply still holds at its limit.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.elements.branch import Source
from core.elements.tungsten import Array

REGULATING, LIMITING, BLOCKING, TRIPPED = range(4)

LEAST_BACK_A = 1e-9  # amperes that a supply must be made to take before it blocks
_LEAK_S = 1e-12  # a supply that does not regulate is not quite stiff, so that two in series have one answer
_CLOSE = 1e-9  # share of its limit or volts by which a supply must be beyond before it changes

Flags = NDArray[np.bool_]
Modes = NDArray[np.int8]


@dataclass(frozen=True)
class StiffLaw:
    """Constants of ``k`` supplies at ``b`` conditions.

    ``emf`` is ``(b, k, c)``, the rest ``(k,)``: ohms, limit in amperes (infinite without one), amperes at a short
    (the limit itself unless the supply folds back), siemens by which the current grows with the volts in overload.
    """

    emf: Array
    ohm: Array
    limit_a: Array
    short_a: Array
    slope: Array
    one_way: Flags
    trips: Flags
    shorted: Flags

    @property
    def folds(self) -> Flags:
        """Which supplies give less the lower their volts are."""
        return self.slope > 0

    @property
    def dc_v(self) -> Array:
        """Set volts, ``(b, k)``: a limit is on the DC part."""
        return self.emf[..., -1]

    def start(self, cold: Flags) -> Modes:
        """All regulate but those that are short-circuited; ``(b, k)``."""
        modes = np.full((len(cold), len(self.ohm)), REGULATING, dtype=np.int8)
        return np.where(self.shorted, self._in_overload(cold), modes).astype(np.int8)

    def _in_overload(self, cold: Flags) -> NDArray[np.intp]:
        return np.where(self.trips & ~cold[:, None], TRIPPED, LIMITING)

    def line_a(self, volts: Array) -> Array:
        """Amperes given in overload at terminal volts, both ``(b, k)``."""
        if not self.folds.any():
            return np.broadcast_to(self.short_a, volts.shape)
        return self.short_a + self.slope * np.clip(volts, 0.0, self.dc_v)

    def rows(self, modes: Modes, line_v: Array, tangent: Flags) -> tuple[Array, Array, Array]:
        """Equations: factors of volts and of amperes ``(b, k)``, right sides ``(b, k, c)``.

        ``line_v`` are the volts found last. By tangents, a supply that folds back moves along its line; by chords
        it gives the current that belongs to those volts, which has an answer in any network.
        """
        regulating, limiting = modes == REGULATING, modes == LIMITING
        slope = np.where(tangent[:, None] & limiting & (line_v < self.dc_v), self.slope, 0.0)
        right = np.where(regulating[..., None], self.emf, -_LEAK_S * self.emf)
        right[modes == TRIPPED] = 0.0
        given = np.where(limiting, self.line_a(line_v) - slope * np.clip(line_v, 0.0, self.dc_v), 0.0)
        right[..., -1] -= np.where(limiting, given, 0.0)
        return np.where(regulating, 1.0, slope - _LEAK_S), np.where(regulating, -self.ohm, 1.0), right

    def mismatch(self, modes: Modes, given_a: Array, volts: Array) -> Array:
        """How far the currents are off the line of overload, as a share of the limit; ``(b,)``."""
        on_line = self.folds & (modes == LIMITING)
        if not on_line.any():
            return np.zeros(len(modes))
        off = given_a - _LEAK_S * (self.dc_v - volts) - self.line_a(volts)
        return np.asarray(np.max(np.where(on_line, np.abs(off), 0.0) / self.limit_a, axis=1))

    def after(self, modes: Modes, given_a: Array, volts: Array, cold: Flags) -> Modes:
        """What each supply would change to by itself at the amperes given and terminal volts, all ``(b, k)``."""
        regulating = modes == REGULATING
        over = regulating & (given_a > self.limit_a * (1 + _CLOSE))
        back = regulating & self.one_way & (given_a < -LEAST_BACK_A)
        above = (modes == LIMITING) & ~self.shorted & (volts > self.dc_v * (1 + _CLOSE))
        below = (modes == BLOCKING) & (volts < self.dc_v * (1 - _CLOSE))
        changed = np.select(
            [over, back, above | below], [self._in_overload(cold), BLOCKING, REGULATING], modes
        )
        return changed.astype(np.int8)


def stiff_law(sources: Sequence[Source], emf: Array, ohm: Array, shorted: Flags) -> StiffLaw:
    """Constants from the sources; ``emf`` ``(b, k, c)``, ``ohm`` and ``shorted`` ``(k,)``."""
    limit = np.array([np.inf if x.limit_a is None else x.limit_a for x in sources])
    folds = np.array([x.overload == "foldback" for x in sources], dtype=bool) & np.isfinite(limit)
    finite = np.where(np.isinf(limit), 0.0, limit)
    short = np.where(folds, [x.foldback_a for x in sources], finite)
    set_v = np.where(folds, [x.dc_v for x in sources], 1.0)
    return StiffLaw(
        emf=emf,
        ohm=ohm,
        limit_a=limit,
        short_a=short,
        slope=(finite - short) / set_v,
        one_way=np.array([x.limit_a is not None for x in sources], dtype=bool),
        trips=np.array([x.overload in ("hiccup", "latch-off") for x in sources], dtype=bool),
        shorted=shorted,
    )
