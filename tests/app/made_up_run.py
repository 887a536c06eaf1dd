"""A run of the warm-up that is not solved: it goes evenly from the cold instant to the steady state.

Only for tests of what is shown; its figures follow no physics.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from msgspec.structs import replace

from core.assess import assess
from core.catalogue import Catalogue
from core.results import (
    COLD,
    INSTANT,
    NOMINAL,
    BranchPoint,
    Condition,
    HeaterPoint,
    OperatingPoint,
    SupplyPoint,
)
from core.sheet import Sheet
from core.warmup.results import Event, Start, WarmupSummary

TAU_S = 6.0


@dataclass
class MadeUpRun:
    """Sixty seconds between two solved points; ``asked`` are the instants that were looked at."""

    sheet: Sheet
    cold: OperatingPoint
    hot: OperatingPoint
    start: Start
    summary: WarmupSummary
    end_s: float = 60.0
    asked: list[float] = field(default_factory=list)

    def at(self, t_s: float) -> OperatingPoint:
        self.asked.append(t_s)
        share = 1.0 if t_s >= self.end_s else 1 - math.exp(-t_s / TAU_S)

        def mix(a: float, b: float) -> float:
            return a + (b - a) * share

        def heater(a: HeaterPoint, b: HeaterPoint) -> HeaterPoint:
            # the heater is faster than its cathode
            warm = mix(a.heater_k, b.heater_k) ** 0.5 * b.heater_k**0.5 if share else a.heater_k
            return replace(
                b,
                v=mix(a.v, b.v),
                a=mix(a.a, b.a),
                w=mix(a.w, b.w),
                heater_k=warm,
                cathode_k=mix(a.cathode_k, b.cathode_k),
            )

        cold, hot = self.cold, self.hot
        return OperatingPoint(
            Condition(INSTANT, self.start.mains_v),
            nodes={key: mix(abs(cold.nodes[key]), abs(volts)) for key, volts in hot.nodes.items()},
            bias=hot.bias,
            heaters={key: tuple(map(heater, cold.heaters[key], own)) for key, own in hot.heaters.items()},
            supplies={key: _supply(cold.supplies[key], own, mix) for key, own in hot.supplies.items()},
            branches={key: _branch(cold.branches[key], own, mix) for key, own in hot.branches.items()},
        )


def _supply(a: SupplyPoint, b: SupplyPoint, mix) -> SupplyPoint:
    return replace(b, v=mix(a.v, b.v), a=mix(a.a, b.a), w=mix(a.w, b.w))


def _branch(a: BranchPoint, b: BranchPoint, mix) -> BranchPoint:
    return replace(b, v=mix(a.v, b.v), a=mix(a.a, b.a), w=mix(a.w, b.w))


def made_up_run(
    sheet: Sheet, catalogue: Catalogue, events: tuple[Event, ...] = (), name: str = NOMINAL
) -> MadeUpRun:
    """A run of a sheet, with events that did not happen."""
    solved = assess(sheet, catalogue)
    cold, hot = solved.points[COLD], solved.points[name]
    start = Start(hot.condition.mains_v, name)
    summary = WarmupSummary(start, {}, {}, {}, {}, {}, {}, events)
    return MadeUpRun(sheet, cold, hot, start, summary)
