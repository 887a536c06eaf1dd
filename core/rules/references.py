"""How heater lines stand against the chassis: no reference, more than one, and a live chassis."""

from __future__ import annotations

from collections.abc import Iterator

from core.elements.branch import GROUND, Coil, Hot, Ntc, Resistive
from core.preferred import next_wattage
from core.remedy import Across, Remedy, TakeOut, TieToChassis
from core.results import Finding, sentence
from core.rules.basis import Case, Line, Mend, is_lift
from core.rules.mends import REFERENCE_OHM, reference_pair_w
from core.rules.nets import Nets
from core.rules.offers import take_out
from core.rules.words import listed, ohms, rating, volts, watts
from core.sentences import Text
from core.sheet import Battery, DcSupply, MainsFeed, Resistor, Winding
from core.terminals import terminal_names


def is_joined_rectifier(case: Case, part_id: str) -> bool:
    """Whether a part is a rectifier whose cathode is its heater or joined to it."""
    kind = case.tube_types.get(part_id)
    if kind is None or not (kind.cathode_joined or kind.heating == "direct"):
        return False
    return "rectifier" in kind.description


def no_chassis_reference(case: Case) -> Iterator[Finding]:
    """Heater lines that float."""
    for line in case.lines:
        if not line.supplies or line.has_mains or case.is_grounded(line):
            continue
        tubes = [one for one in line.heaters if one in case.tube_types]
        if not tubes or all(is_joined_rectifier(case, one) for one in tubes):
            continue  # a rectifier whose heater is its cathode must float
        mend = _reference_mend(case, line)
        yield Finding(
            rule="no-chassis-reference",
            severity="caution",
            where=line.supplies,
            title=sentence("The heater line of {ids} floats", ids=listed(line.supplies)),
            says=sentence(
                "Nothing ties the heater line of {ids} to the chassis: it drifts to any voltage, hums, and"
                " strains the insulation between heater and cathode.",
                ids=listed(line.supplies),
            ),
            mend=mend.says,
            source=sentence("common practice: every heater line has one reference"),
            remedies=mend.remedies,
        )


def _reference_mend(case: Case, line: Line) -> Mend:
    supply = line.supplies[0]
    part = case.sheet.part_by_id[supply]
    if isinstance(part, Winding) and part.centre_tap:
        tap = f"{supply}.ct"
        return Mend(
            sentence("Wire the centre tap {tap} to the chassis, or to a DC lift.", tap=tap), _tie_of(tap)
        )
    if isinstance(part, DcSupply | Battery):
        minus = f"{supply}.-"
        return Mend(sentence("Wire {minus} to the chassis, or to a DC lift.", minus=minus), _tie_of(minus))
    point = case.nominal.supplies.get(supply)
    v = point.v if point is not None and point.v > 0 else case.supply_volts[supply]
    heat = reference_pair_w(v, REFERENCE_OHM)
    rated_w = next_wattage(2 * heat) or heat * 2
    values: dict[str, Text] = {"ohm": ohms(REFERENCE_OHM), "rated": rating(rated_w)}
    says = sentence(
        "Two resistors of {ohm}, one from each side to the chassis, make the middle of it: each turns {w}"
        " into heat, so fit {rated}.",
        w=watts(heat),
        **values,
    )
    names = terminal_names(part) or ()
    sides = [Across(f"{supply}.{name}", "", REFERENCE_OHM, rated_w) for name in names[:2]]
    return Mend(says, (Remedy(sentence("Fit 2 × {ohm} {rated} to the chassis", **values), tuple(sides)),))


def _tie_of(terminal: str) -> tuple[Remedy, ...]:
    title = sentence("Wire {terminal} to the chassis", terminal=terminal)
    return (Remedy(title, (TieToChassis(terminal),)),)


def second_reference(case: Case) -> Iterator[Finding]:
    """Heater lines tied to the chassis at more than one point."""
    for line in case.lines:
        if len(line.ground) < 2 or line.has_mains or not line.supplies:
            continue
        hard, soft = ties(case, line)
        if len(hard) + bool(soft) > 1:
            where = (*hard, *soft)
            yield Finding(
                rule="second-reference",
                severity="caution",
                where=where,
                title=sentence("More than one chassis tie on {ids}", ids=listed(line.supplies)),
                says=sentence(
                    "The heater line of {ids} reaches the chassis by {ties}: a loop, so heater current shares"
                    " the chassis with the signal and hums.",
                    ids=listed(line.supplies),
                    ties=listed(where),
                ),
                mend=sentence("Keep one of them and take out the others."),
                value=float(len(hard) + bool(soft)),
                limit=1.0,
                source=sentence("common practice: every heater line has one reference"),
                remedies=_one_tie(case, hard, soft),
            )


def _one_tie(case: Case, hard: list[str], soft: list[str]) -> tuple[Remedy, ...]:
    """One remedy a tie that may go where there are two, else one a tie that may stay; resistors go together."""
    groups = [*((one,) for one in hard), *((tuple(soft),) if soft else ())]
    if len(groups) == 2:
        return tuple(take_out(_with_resistors(case, group)) for group in groups)
    return tuple(
        Remedy(
            sentence("Keep {ids} only", ids=listed(kept)),
            (TakeOut(tuple(o for g in groups if g != kept for o in _with_resistors(case, g))),),
        )
        for kept in groups
    )


def _with_resistors(case: Case, wires: tuple[str, ...]) -> tuple[str, ...]:
    """Ties that go, each with the resistor that would hang on it alone."""
    found = []
    for one in wires:
        wire = case.sheet.wire_by_id.get(one)
        ends = () if wire is None else (wire.start, wire.end)
        hung = [
            part.id
            for end in ends
            if isinstance(part := case.sheet.part_by_id[end.rpartition(".")[0]], Resistor)
            and len(case.circuit.wires_at[end]) == 1
        ]
        found.append(hung[0] if hung else one)
    return tuple(found)


def ties(case: Case, line: Line) -> tuple[list[str], list[str]]:
    """Ids of what ties a line to the chassis: directly, and through resistors."""
    at_chassis = {branch.key for branch in line.ground}
    inside = [branch for branch in line.island.branches if branch.key not in at_chassis]
    wires = case.sheet.wire_by_id
    nets = Nets(branch for branch in inside if branch.owner in wires)
    firm: set[str] = set()
    loose: set[str] = set()
    for branch in inside:
        if branch.owner in line.supplies or isinstance(branch.law, Hot):
            firm.update((nets.net(branch.u), nets.net(branch.v)))
        elif isinstance(branch.law, Resistive | Coil | Ntc) and branch.owner not in wires:
            loose.update((nets.net(branch.u), nets.net(branch.v)))
    hard, soft = [], []
    for branch in line.ground:
        net = nets.net(branch.u if branch.v == GROUND else branch.v)
        if is_lift(branch) or net in firm:
            hard.append(branch.owner)
        elif net in loose:
            soft.append(branch.owner)
    return hard, soft


def live_chassis(case: Case) -> Iterator[Finding]:
    """Heater strings fed straight from the mains."""
    for part in case.kinds.get(MainsFeed, ()):
        line = case.line_of[part.id]
        live = case.is_grounded(line)
        mains = volts(case.sheet.mains.nominal_v)
        if live:
            says = sentence(
                "{id} feeds this sheet from the mains ({mains}) and the line reaches the chassis: the chassis"
                " is live, whichever way round the plug is.",
                id=part.id,
                mains=mains,
            )
            mend = sentence(
                "Take the chassis off the line, or feed the set through an isolating transformer; local codes"
                " and licensed practice come first."
            )
        else:
            says = sentence(
                "{id} feeds this sheet straight from the mains ({mains}): every heater pin can be live, and so"
                " can the chassis of such a set.",
                id=part.id,
                mains=mains,
            )
            mend = sentence(
                "Work on it only behind an isolating transformer, unplugged and with its capacitors discharged;"
                " local codes and licensed practice come first."
            )
        yield Finding(
            rule="live-chassis",
            severity="fault" if live else "caution",
            where=(part.id,),
            title=sentence("The chassis is live" if live else "Fed from the mains"),
            says=says,
            mend=mend,
            source=sentence("usual caution for sets without a mains transformer"),
            remedies=_off_the_chassis(case, line) if live else (),
        )


def _off_the_chassis(case: Case, line: Line) -> tuple[Remedy, ...]:
    """The wires that make the chassis live taken out; whether the heaters need them is another matter."""
    tied = [branch.owner for branch in line.ground]
    if any(one not in case.sheet.wire_by_id for one in tied):
        return ()
    return (Remedy(sentence("Take {ids} off the chassis", ids=listed(tied)), (TakeOut(tuple(tied)),)),)
