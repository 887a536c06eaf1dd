"""Whether a remedy really mends its finding: it is carried out on a sheet that nobody sees, and that is assessed.

Only the heater lines that the remedy touches are assessed, as others do not feel it.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable
from typing import Literal

from msgspec.structs import replace

from core.assess import Memory, assess
from core.catalogue import Catalogue
from core.checks import find_problems
from core.edits import change_between
from core.errors import EditError
from core.mending import edit_of
from core.remedy import Remedy
from core.results import SEVERITIES, Assessment, Finding
from core.sheet import Chassis, Sheet, split_terminal

Effect = Literal["mends", "helps", "none"]

HELPS_SHARE = 0.5
"""What is left of the excess of heaters must be less than this for a remedy to count as a help."""
_HEATERS = frozenset(("heater-voltage", "heater-current"))
# what was wrong with such a part could not be seen before
_UNJUDGED = frozenset(("type-unknown",))


def effect_of(
    assessment: Assessment, finding: Finding, remedy: Remedy, catalogue: Catalogue, memory: Memory
) -> Effect:
    """What a remedy does for its finding.

    It mends where the finding is gone under every condition and no fault has appeared. It helps where heaters stay
    outside their limits, but by less than half of what it was in all, and nothing else has gone wrong.
    ``catalogue`` has the sheet's own types.
    """
    try:
        whole = edit_of(remedy)(assessment.sheet)
    except EditError:
        return "none"
    change = change_between(assessment.sheet, whole)
    if change.is_empty or find_problems(whole):
        return "none"
    touched = {*finding.where, *change.parts, *change.wires}
    before = _around(assessment.sheet, touched)
    after = _around(whole, {*touched, *_ids(before)})
    was, now = (assess(one, catalogue, memory=memory).findings for one in (before, after))
    known = {_key(one) for one in (*was, *assessment.findings) if one.severity == "fault"}
    new = [one for one in now if one.severity == "fault" and _key(one) not in known]
    if finding.rule in _UNJUDGED:
        new = [one for one in new if one.where[:1] != finding.where[:1]]
    if not new and not any(is_same(one, finding) for one in now):
        return "mends"
    is_about_heaters = finding.rule in _HEATERS and all(one.rule in _HEATERS for one in new)
    return "helps" if is_about_heaters and _excess(now) < HELPS_SHARE * _excess(was) else "none"


def is_same(one: Finding, finding: Finding) -> bool:
    """Whether a finding is what another was: the same rule at the same place, and no less grave."""
    return (
        one.rule == finding.rule
        and one.where[:1] == finding.where[:1]
        and SEVERITIES.index(one.severity) <= SEVERITIES.index(finding.severity)
    )


def _key(finding: Finding) -> tuple[object, ...]:
    """What makes a fault one that was there before; a heater's volts and its current are one matter."""
    rule = "heater" if finding.rule in _HEATERS else finding.rule
    return rule, finding.where[:1], finding.condition


def _excess(findings: Iterable[Finding]) -> float:
    """By what share of their limits all heaters together are outside them."""
    return sum(
        abs(one.value / one.limit - 1)
        for one in findings
        if one.rule in _HEATERS and one.value is not None and one.limit
    )


def _ids(sheet: Sheet) -> set[str]:
    return {part.id for part in sheet.parts}


def _around(sheet: Sheet, ids: set[str]) -> Sheet:
    """The part of a sheet that hangs together with some parts and wires otherwise than through the chassis."""
    at: dict[str, list[tuple[str, str]]] = {}
    for wire in sheet.wires:
        one, other = (split_terminal(end)[0] for end in (wire.start, wire.end))
        at.setdefault(one, []).append((wire.id, other))
        at.setdefault(other, []).append((wire.id, one))
        if wire.id in ids:
            ids = {*ids, one, other}
    chassis = {part.id for part in sheet.parts if isinstance(part, Chassis)}
    parts = {part.id for part in sheet.parts if part.id in ids} | chassis
    wires: set[str] = set()
    walk = deque(parts - chassis)
    while walk:
        for wire_id, far in at.get(walk.popleft(), ()):
            wires.add(wire_id)
            if far not in parts:
                parts.add(far)
                walk.append(far)
    return replace(
        sheet,
        parts=tuple(part for part in sheet.parts if part.id in parts),
        wires=tuple(wire for wire in sheet.wires if wire.id in wires),
    )
