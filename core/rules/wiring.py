"""Wires that are too thin, resistors that are too small, and ends that lead nowhere."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from core.catalogue.wire import chassis_limit_a
from core.elements.branch import Branch, Contact, Hot
from core.overloads import is_too_hot
from core.preferred import next_wattage
from core.remedy import Remedy
from core.results import ROUNDING, BranchPoint, Finding, OperatingPoint, Sentence, sentence
from core.rules.basis import Case, Mend
from core.rules.mends import size_for_current, size_for_drop
from core.rules.nets import Nets
from core.rules.offers import set_fields, take_out
from core.rules.words import amps, apart, listed, mains_words, rating, share, volts, watts, wire_size
from core.sheet import Joint, Lamp, Relay, Resistor, Switch, Tube, Wire
from core.units import Dimension

WIRE_SOURCE = sentence("rule of thumb: Handbook of Electronic Tables and Formulas, chassis wiring")
DROP_PCT = 2.0
GOOD_DROP_PCT = 1.0
UNRATED_W = 0.125
_CONTACTS = ("com", "no", "nc")

Size = tuple[int | None, float | None]


def wire_current(case: Case) -> Iterator[Finding]:
    """Wires that carry more than their size should."""
    limits: dict[tuple[int | None, float | None], float] = {}
    for wire in case.sheet.wires:
        if wire.awg is None and wire.area_mm2 is None:
            continue
        size = (wire.awg, wire.area_mm2)
        limit = limits.get(size)
        if limit is None:
            limit = limits[size] = chassis_limit_a(*size)
        carried = [(point, point.branches[wire.id].a) for point in case.points if wire.id in point.branches]
        over = [(point, a) for point, a in carried if a > limit * (1 + ROUNDING)]
        size = size_for_current(wire, max(a for _, a in over)) if over else (None, None)
        for point, a in over:
            yield _hot_wire(wire, point, a, limit, size)


def _hot_wire(wire: Wire, point: OperatingPoint, a: float, limit: float, size: Size) -> Finding:
    return Finding(
        rule="wire-current",
        severity="fault",
        where=(wire.id,),
        title=sentence("{id} is too thin for its current", id=wire.id),
        says=sentence(
            "{id} ({size}) carries {a} at {condition}; {limit} is what such a wire should.",
            id=wire.id,
            size=wire_size(wire.awg, wire.area_mm2),
            a=apart(a, limit, Dimension.AMPS)[0],
            condition=mains_words(point.condition.name),
            limit=amps(limit),
        ),
        mend=_thicker(size) or sentence("{size} carries it.", size=wire_size(*size)),
        condition=point.condition.name,
        value=a,
        limit=limit,
        unit="A",
        source=WIRE_SOURCE,
        remedies=_of_size(wire, size),
    )


def _of_size(wire: Wire, size: Size) -> tuple[Remedy, ...]:
    """The wire made of another size, where there is one."""
    if size == (None, None):
        return ()
    title = sentence("Make {id} {size}", id=wire.id, size=wire_size(*size))
    return (set_fields(title, wire.id, awg=size[0], area_mm2=size[1]),)


def _thicker(size: Size) -> Sentence | None:
    """What to do where no wire is thick enough."""
    return sentence("Run two wires side by side, or shorten the way.") if size == (None, None) else None


def wire_drop(case: Case) -> Iterator[Finding]:
    """Wires that lose too many of their supply's volts."""
    if not case.supply_volts:
        return
    least = min(case.supply_volts.values()) * DROP_PCT / 100
    for wire in case.sheet.wires:
        at_work = case.nominal.branches.get(wire.id)
        if at_work is None or wire.is_strap or at_work.v <= least * (1 + ROUNDING):
            continue
        rated = _rated_volts(case, wire)
        if rated and at_work.v > rated * DROP_PCT / 100 * (1 + ROUNDING):
            yield _dropping(case, wire, at_work, rated)


def _rated_volts(case: Case, wire: Wire) -> float | None:
    """Rated volts of the line of a wire: of its supplies in series where they are, else of the largest."""
    line = case.line_with[wire.id]
    rated = [case.supply_volts[one] for one in line.supplies]
    if len(rated) < 2:
        return rated[0] if rated else None
    ends = [
        end for branch in line.island.branches if isinstance(branch.law, Hot) for end in (branch.u, branch.v)
    ]
    ends += [end for source in line.island.sources for end in (source.u, source.v)]
    found = [case.nominal.nodes[end] for end in ends if end in case.nominal.nodes]
    across = max(one.real for one in found) - min(one.real for one in found) if found else 0.0
    return max(*rated, min(across, sum(rated)))


def _dropping(case: Case, wire: Wire, at_work: BranchPoint, rated: float) -> Finding:
    size = size_for_drop(wire, at_work.a, rated * GOOD_DROP_PCT / 100, case.sheet.ambient_c)
    limit = rated * DROP_PCT / 100
    return Finding(
        rule="wire-drop",
        severity="caution",
        where=(wire.id,),
        title=sentence("{id} loses {share} of the volts", id=wire.id, share=share(at_work.v / rated * 100)),
        says=sentence(
            "{id} ({size}, {length} m) drops {v} at {a}; more than {limit} is too much for one wire.",
            id=wire.id,
            size=wire_size(wire.awg, wire.area_mm2),
            length=f"{wire.length_m:g}",
            v=volts(at_work.v),
            a=amps(at_work.a),
            limit=volts(limit),
        ),
        mend=_thicker(size) or sentence("{size} would lose less than 1 %.", size=wire_size(*size)),
        condition=case.nominal.condition.name,
        value=at_work.v,
        limit=limit,
        unit="V",
        source=sentence("common practice: 2 % a wire"),
        remedies=_of_size(wire, size),
    )


def resistor_power(case: Case) -> Iterator[Finding]:
    """Resistors that get too hot, run close to their rating, or have none."""
    for part in case.kinds.get(Resistor, ()):
        if not isinstance(part, Resistor):
            continue
        at_work = [(point, point.branches[part.id]) for point in case.points if part.id in point.branches]
        if not at_work:
            continue
        found = [(point, branch.w) for point, branch in at_work]
        mend = _fit_mend(part, max(w for _, w in found))
        if part.rated_w is None:
            point, most = max(found, key=lambda pair: pair[1])
            if most > UNRATED_W * (1 + ROUNDING):
                yield _unrated(part, point, most, mend)
            continue
        over = [(point, branch.w) for point, branch in at_work if is_too_hot(part, branch)]
        for point, w in over:
            yield _power(part, point, w, part.rated_w, mend)
        if not over and found[0][1] > part.rated_w / 2 * (1 + ROUNDING):
            yield _power(part, *found[0], part.rated_w / 2, mend, is_fault=False)


def _fit_mend(part: Resistor, w: float) -> Mend:
    """What a resistor should be rated for that turns up to ``w`` watts into heat."""
    fit = next_wattage(2 * w)
    if fit is None:
        return Mend(
            sentence("Share the {w} among several resistors, each rated at twice its part.", w=watts(w))
        )
    says = sentence("Fit {fit}: twice the {w} that it turns into heat.", fit=rating(fit), w=watts(w))
    return Mend(says, (set_fields(sentence("Fit {fit}", fit=rating(fit)), part.id, rated_w=fit),))


def _power(
    part: Resistor, point: OperatingPoint, w: float, limit: float, mend: Mend, is_fault: bool = True
) -> Finding:
    return Finding(
        rule="resistor-power",
        severity="fault" if is_fault else "caution",
        where=(part.id,),
        title=sentence("{id} is rated too low" if is_fault else "{id} runs hot", id=part.id),
        says=sentence(
            "{id} turns {w} into heat at {condition}, more than the {rated} it is rated for."
            if is_fault
            else "{id} turns {w} into heat, more than half of its {rated}: it will run very hot.",
            id=part.id,
            w=apart(w, limit, Dimension.WATTS)[0],
            rated=rating(part.rated_w or 0.0),
            condition=mains_words(point.condition.name),
        ),
        mend=mend.says,
        condition=point.condition.name,
        value=w,
        limit=limit,
        unit="W",
        source=sentence(
            "the rating of the resistor" if is_fault else "common practice: twice the dissipation"
        ),
        remedies=mend.remedies,
    )


def _unrated(part: Resistor, point: OperatingPoint, w: float, mend: Mend) -> Finding:
    return Finding(
        rule="resistor-power",
        severity="note",
        where=(part.id,),
        title=sentence("{id} has no rating", id=part.id),
        says=sentence(
            "{id} turns up to {w} into heat ({condition}), and no wattage is given for it.",
            id=part.id,
            w=watts(w),
            condition=mains_words(point.condition.name),
        ),
        mend=mend.says,
        condition=point.condition.name,
        value=w,
        limit=UNRATED_W,
        unit="W",
        source=sentence("common practice: twice the dissipation"),
        remedies=mend.remedies,
    )


def open_end(case: Case) -> Iterator[Finding]:
    """Wires and parts that lead nowhere."""
    dead = _dead_branches(case)
    if not dead:
        return
    nets = Nets(dead.values())
    groups: dict[str, dict[str, None]] = {}
    for branch in dead.values():
        groups.setdefault(nets.net(branch.u), {})[branch.owner] = None
    by_owner = case.circuit.branches_by_owner
    held = _held_owners(case, dead)
    for owners in groups.values():
        whole = tuple(one for one in owners if all(b.key in dead for b in by_owner[one]))
        if whole:
            yield _open(whole, any(one in held for one in owners))


def _open(owners: tuple[str, ...], is_held: bool) -> Finding:
    """The finding for what ends blind; ``is_held`` where the other end is wired to something."""
    return Finding(
        rule="open-end",
        severity="note",
        where=owners,
        title=sentence("Open end at {ids}" if is_held else "{ids} not wired in", ids=listed(owners)),
        says=sentence(
            "Nothing flows in {ids}: one end leads nowhere."
            if is_held
            else "Nothing flows in {ids}: neither end leads anywhere.",
            ids=listed(owners),
        ),
        mend=sentence(
            "Wire the open end, or take {ids} out." if is_held else "Wire both ends, or take {ids} out.",
            ids=listed(owners),
        ),
        source=sentence("the circuit itself"),
        remedies=(take_out(owners),),
    )


def _held_owners(case: Case, dead: Mapping[str, Branch]) -> frozenset[str]:
    """Owners of blind branches with an end at something that is not blind."""
    live = {
        end
        for branch in case.circuit.branches.values()
        if branch.key not in dead
        for end in (branch.u, branch.v)
    }
    return frozenset(
        branch.owner
        for branch in dead.values()
        if any(end in live or not _may_be_blind(case, end) for end in (branch.u, branch.v))
    )


def _dead_branches(case: Case) -> dict[str, Branch]:
    """Branches that end blind once other blind ones are cut away; heaters and contacts are never blind."""
    ends: dict[str, int] = {}
    for branch in case.circuit.branches.values():
        ends[branch.u] = ends.get(branch.u, 0) + 1
        ends[branch.v] = ends.get(branch.v, 0) + 1
    leaves = [terminal for terminal, count in ends.items() if count == 1 and _may_be_blind(case, terminal)]
    if not leaves:
        return {}
    at: dict[str, list[Branch]] = {}
    for branch in case.circuit.branches.values():
        at.setdefault(branch.u, []).append(branch)
        at.setdefault(branch.v, []).append(branch)
    dead: dict[str, Branch] = {}
    for leaf in leaves:  # grows while it is walked
        left = [branch for branch in at[leaf] if branch.key not in dead]
        if not left or isinstance(left[0].law, Hot | Contact):
            continue
        dead[left[0].key] = left[0]
        far = left[0].v if left[0].u == leaf else left[0].u
        ends[far] -= 1
        if ends[far] == 1 and _may_be_blind(case, far):
            leaves.append(far)
    return dead


def _may_be_blind(case: Case, terminal: str) -> bool:
    """Whether a wire that ends here leads nowhere: not at the chassis, a socket, a lamp or a contact."""
    part_id, _, name = terminal.rpartition(".")
    part = case.sheet.part_by_id.get(part_id)
    if part is None or isinstance(part, Tube | Lamp | Switch):
        return False
    if part_id not in case.circuit.branches_by_owner and not isinstance(part, Joint):
        return False  # a part of unknown type has its own finding
    return not (isinstance(part, Relay) and name in _CONTACTS)
