"""Switching on, in one call: a sheet warmed up at every mains and after a dip, and what the rules say to it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import msgspec

from core.assess import Memory, assess, case_of
from core.catalogue import Catalogue
from core.circuit import build
from core.elements.branch import Source
from core.results import HIGH, LOW, NOMINAL, Finding
from core.rules.startup import StartupCase, run_startup_rules
from core.sheet import Sheet
from core.warmup import Progress, Start, WarmupRun, warm_up
from core.warmup.results import AFTER_DIP


class Wish(msgspec.Struct, frozen=True):
    """What is to be shown: so many seconds of the warm-up, and a dip of the mains at their end.

    The dip lasts ``dip_s`` and is followed by as many seconds again; None leaves that run out.
    """

    seconds: float = 60.0
    dip_s: float | None = 5.0


@dataclass(frozen=True, eq=False)
class SwitchOn:
    """The runs by condition, nominal mains first, and the findings over all of them."""

    sheet: Sheet
    runs: dict[str, WarmupRun]
    findings: tuple[Finding, ...]


def starts_of(sheet: Sheet, wish: Wish, follows_mains: bool = True) -> tuple[Start, ...]:
    """The runs to be made: low and high mains only where a supply follows the mains."""
    mains, seconds = sheet.mains, wish.seconds
    starts = [Start(mains.nominal_v, NOMINAL, seconds)]
    if follows_mains:
        starts += [Start(mains.low_v, LOW, seconds), Start(mains.high_v, HIGH, seconds)]
    if wish.dip_s:
        whole = 2 * seconds + wish.dip_s
        starts.append(Start(mains.nominal_v, AFTER_DIP, whole, seconds, wish.dip_s))
    return tuple(starts)


def switch_on(
    sheet: Sheet,
    catalogue: Catalogue,
    wish: Wish | None = None,
    progress: Progress | None = None,
    memory: Memory | None = None,
) -> SwitchOn:
    """Warm a sheet up under every condition. The sheet's own types must already be laid over ``catalogue``.

    ``progress`` is told the share that is done, 0 to 1, and answers whether to go on.

    Raises
    ------
    core.errors.Cancelled
        When ``progress`` answers False.
    """
    circuit = build(sheet, catalogue)
    laws = [branch.law for branch in circuit.branches.values()]
    follows = any(isinstance(law, Source) and law.ac_per_mains for law in laws)
    starts = starts_of(sheet, wish or Wish(), follows)
    runs = {
        start.name: warm_up(sheet, catalogue, start, _share(progress, number, len(starts)))
        for number, start in enumerate(starts)
    }
    points = assess(sheet, catalogue, memory=memory).points
    summaries = tuple(run.summary for run in runs.values())
    findings = run_startup_rules(StartupCase(case_of(circuit, points), summaries))
    return SwitchOn(sheet, runs, findings)


def _share(progress: Progress | None, number: int, count: int) -> Callable[[float], bool] | None:
    if progress is None:
        return None
    return lambda done: progress((number + done) / count)


__all__ = ["SwitchOn", "Wish", "starts_of", "switch_on"]
