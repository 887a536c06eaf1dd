"""The ways to let one supply start softly, each sized, tried and told with its figures."""

from __future__ import annotations

import math
from collections.abc import Callable

from core.catalogue import Catalogue
from core.sheet import DcSupply, Sheet
from core.softstart.bypass import by_bypass
from core.softstart.feeding import by_supply
from core.softstart.line import line_of
from core.softstart.results import Goal, Variant
from core.softstart.search import Search
from core.softstart.series import by_resistor, by_thermistor
from core.softstart.trial import Trials

_WAYS = (by_resistor, by_thermistor, by_bypass, by_supply)


def variants(
    sheet: Sheet,
    catalogue: Catalogue,
    supply_id: str,
    goal: Goal = Goal(),  # noqa: B008 - a frozen value
    progress: Callable[[float], bool] | None = None,
) -> tuple[Variant, ...]:
    """Up to four ways to start a supply softly, in the order of what they cost; ``catalogue`` has the sheet's types.

    None where nothing is to be done: the supply gives the first current as it is, it has no limit and the goal sets
    none, or its line is not of a kind that :func:`core.softstart.line.line_of` knows. ``progress`` is told the share
    done and answers whether to go on.

    Raises
    ------
    core.errors.Cancelled
        When ``progress`` has answered that nothing more is wanted.
    """
    line = line_of(sheet, catalogue, supply_id)
    if line is None:
        return ()
    own = line.supply.limit_a if isinstance(line.supply, DcSupply) else math.inf
    limit_a = own if goal.limit_a is None else min(own, goal.limit_a)
    if line.cold_a <= limit_a and goal.peak_ratio is None:
        return ()
    search = Search(line, goal, limit_a, Trials(line, progress))
    return tuple(made for way in _WAYS if (made := way(search)) is not None)
