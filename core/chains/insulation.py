"""How far the heaters of a chain will stand from their cathodes."""

from __future__ import annotations

import math
from collections.abc import Iterator

from core.chains.existing import Standing
from core.chains.forecast import Line, volts_at
from core.chains.layouts import Hung
from core.chains.model import Caution, Reference
from core.results import sentence
from core.rules.words import listed
from core.sheet import Mains

_MARGIN = 0.98
_ROOT_TWO = math.sqrt(2)


def cathode_cautions(line: Line, standing: Standing, reference: Reference, mains: Mains) -> Iterator[Caution]:
    """A warning for tubes whose cathode is too far from the heater where the line stands against the chassis."""
    if reference == "none" and not standing.is_tied:
        return
    share = max(mains.high_v / mains.nominal_v, 1.0) if line.feed.is_ac else 1.0
    whole = line.feed.emf_v * share
    top = volts_at(line, standing, share)
    far = [one for one in line.hung if _is_far(one, _ends(one, line, standing, reference, whole, top))]
    if far:
        ids = [one.load.id for one in far]
        says = sentence(
            "No heater may be as far from its cathode as those of {ids} would be.", ids=listed(ids)
        )
        if len(ids) == 1:
            says = sentence("No heater may be as far from its cathode as that of {id} would be.", id=ids[0])
        yield Caution(("heater-cathode-voltage",), tuple(ids), says)


def _ends(
    one: Hung, line: Line, standing: Standing, reference: Reference, whole: float, top: float
) -> tuple[tuple[float, float], ...]:
    """DC volts above chassis and AC peak of the two ends of a heater.

    ``whole`` are the volts of the feed, ``top`` those at the beginning of the chain behind a dropper.
    """
    if standing.is_tied:
        second, lift = standing.second_v, standing.lift_v
    else:
        second = -whole / 2 if reference in ("tap", "pair") else 0.0
        lift = 0.0 if line.feed.is_ac else second
    if line.feed.is_ac:
        return tuple((lift, _ROOT_TWO * abs(second + top * share)) for share in (one.high, one.low))
    return tuple((lift + top * share, 0.0) for share in (one.high, one.low))


def _is_far(one: Hung, ends: tuple[tuple[float, float], ...]) -> bool:
    load = one.load
    if load.cathode_v is None or load.above_v is None or load.below_v is None:
        return False
    for dc, peak in ends:
        off = dc - load.cathode_v
        above, below = (off + peak, off), (peak - off, -off)
        limits = (*load.above_v, *load.below_v)
        if any(v > limit * _MARGIN for v, limit in zip((*above, *below), limits, strict=True)):
            return True
    return False
