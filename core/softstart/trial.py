"""What a run of the warm-up shows of a proposal; only the line of its supply is run.

A supply that cuts out or latches off is run as one that holds at its limit, and it is looked how long it is there: up
to the time that it holds on, both are the same. That is exact for a start that succeeds at the first try, which is
what a soft start is for, and takes a fraction of following every further try.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from msgspec.structs import replace

from core.nearby import around
from core.sheet import DcSupply, Sheet
from core.softstart.line import Line, with_supply
from core.softstart.results import Shown
from core.warmup import Start, warm_up
from core.warmup.results import Outcome, SupplyWarmup, WarmupSummary

SECONDS = 120.0
"""How long a start is followed; a supply that holds at its limit may take a minute and more."""

MOST_RUNS = 30

_GIVES_UP: dict[str, Outcome] = {"hiccup": "retries", "latch-off": "latched"}


@dataclass
class Trials:
    """Runs of one search, counted; ``tell`` is told the share done and answers whether to go on."""

    line: Line
    tell: Callable[[float], bool] | None = None
    runs: int = 0

    def of(self, sheet: Sheet, relay: str = "") -> Shown | None:
        """The run of a sheet that came of the line's own; None where it cannot be computed.

        Raises
        ------
        core.errors.Cancelled
            When ``tell`` has answered that nothing more is wanted.
        """
        part = around(sheet, (self.line.supply.id,))
        supply = part.part_by_id[self.line.supply.id]
        gives_up = isinstance(supply, DcSupply) and supply.overload in _GIVES_UP
        if gives_up:
            part = with_supply(part, replace(supply, overload="constant-current"))
        start = Start(sheet.mains.nominal_v, seconds=SECONDS)
        done, self.runs = self.runs, self.runs + 1

        def told(share: float) -> bool:
            return self.tell is None or self.tell(min(1.0, (done + share) / MOST_RUNS))

        shown = _shown(warm_up(part, self.line.catalogue, start, told).summary, self.line, relay)
        if shown and isinstance(supply, DcSupply) and gives_up and shown.held_s > supply.trip_s:
            return replace(shown, outcome=_GIVES_UP[supply.overload], ready_s=None)
        return shown


def _shown(summary: WarmupSummary, line: Line, relay: str) -> Shown | None:
    supply = summary.supplies.get(line.supply.id)
    if supply is None:
        return None
    coil = summary.relays.get(relay)
    heaters = [one for sections in summary.heaters.values() for one in sections]
    first, longest = _at_limit(summary, supply, line.supply.id)
    return Shown(
        outcome=supply.outcome,
        limited_s=first,
        held_s=longest,
        peak_a=supply.peak_a,
        peak_ratio=max((one.peak_v_ratio for one in heaters), default=0.0),
        ready_s=summary.ready_s,
        pulls_in_s=coil.pulls_in_s if coil else None,
        contact_peak_a=coil.contact_peak_a if coil else None,
    )


def _at_limit(summary: WarmupSummary, supply: SupplyWarmup, supply_id: str) -> tuple[float | None, float]:
    """When a supply came to its limit first, and how long it was there at a stretch; for ever is infinite."""
    since = 0.0 if supply.limit_a is not None and supply.asked_a > supply.limit_a else None
    first, longest = since, 0.0
    for event in summary.events:
        if event.part != supply_id:
            continue
        if event.what == "at its limit" and since is None:
            since = event.t_s
            first = since if first is None else first
        elif event.what == "regulates" and since is not None:
            longest, since = max(longest, event.t_s - since), None
    return first, math.inf if since is not None else longest
