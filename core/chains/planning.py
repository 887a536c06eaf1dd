"""From sockets and choices to what would be laid, with everything that is left out or warned of."""

from __future__ import annotations

from collections.abc import Iterator

import msgspec

from core.catalogue import Catalogue
from core.chains.draft import Draft
from core.chains.existing import Standing, disturbed, heater_wires, standing_of, without
from core.chains.feeds import FAR_PCT, SHORT_PCT, feeds_of, new_feed, start_of
from core.chains.forecast import Line, heater_cautions, supply_cautions
from core.chains.groups import Sorted, alone, sort_loads
from core.chains.insulation import cathode_cautions
from core.chains.layouts import dropper_for, lay_groups, lay_string
from core.chains.loads import loads_of
from core.chains.model import Caution, ChainPlan, Feed, LeftOut, Load, Options, Places, Point, Reference
from core.chains.reference import references_for, tie
from core.checks import find_problems
from core.edits import Edit
from core.errors import EditError
from core.results import Sentence, sentence
from core.rules.mends import Fitted
from core.rules.words import amps, listed, ohms, rating, volts
from core.sheet import DcSupply, Sheet, Winding


def plan(
    sheet: Sheet,
    catalogue: Catalogue,
    ids: tuple[str, ...],
    options: Options,
    places: Places | None = None,
) -> ChainPlan:
    """Plan a chain over the sockets and lamps ``ids``, in that order.

    ``places`` says where terminals lie, so that leads can be led to the nearer pin. Nothing is altered; what cannot
    be built is a plan with a ``problem``.
    """
    loads, left_out = loads_of(sheet, catalogue, ids)
    wired = heater_wires(sheet, loads)
    if not options.replace:
        left_out += [LeftOut(load.id, _wired(load, wired[load.id])) for load in loads if load.id in wired]
        loads = [load for load in loads if load.id not in wired]
    removed = dict.fromkeys(wire for wires in wired.values() for wire in wires) if options.replace else {}
    sorted_ = sort_loads(loads, options)
    left_out += sorted_.left_out
    if not sorted_.groups:
        return ChainPlan(left_out=tuple(left_out), problem=_nothing(ids))
    kept = {load.id for load in sorted_.loads}
    removed = {wire: None for wire in removed if any(wire in wired.get(one, ()) for one in kept)}
    ground = without(sheet, frozenset(removed))
    return _Builder(sheet, ground, catalogue, options, places).build(sorted_, left_out)


def edit_of(made: ChainPlan) -> Edit:
    """The plan as an edit of the sheet it was made for."""

    def edit(sheet: Sheet) -> Sheet:
        if made.problem is not None:
            raise EditError(made.problem)
        used = sheet.part_by_id.keys() | (sheet.wire_by_id.keys() - set(made.removed))
        clash = next((one.id for one in (*made.parts, *made.wires) if one.id in used), None)
        if clash is not None:
            raise EditError(sentence("The id {id} is already in use.", id=clash))
        gone = set(made.removed)
        wires = tuple(wire for wire in sheet.wires if wire.id not in gone)
        return msgspec.structs.replace(sheet, parts=(*sheet.parts, *made.parts), wires=(*wires, *made.wires))

    return edit


class _Builder:
    """Builds one plan. ``ground`` is the sheet without the wires that are taken away."""

    def __init__(
        self, sheet: Sheet, ground: Sheet, catalogue: Catalogue, options: Options, places: Places | None
    ) -> None:
        self._sheet = sheet
        self._ground = ground
        self._catalogue = catalogue
        self._options = options
        # ids of removed wires are not used again, so that a wire is never another one under its name
        self._draft = Draft(sheet, options, places)

    def build(self, sorted_: Sorted, left_out: list[LeftOut]) -> ChainPlan:
        chain_v, chain_a = self._figures(sorted_)
        first = sorted_.groups[0].members[0][0]
        feed = self._feed(chain_v, chain_a, [load.at for load in sorted_.loads])
        if feed is None:
            return ChainPlan(left_out=tuple(left_out), problem=_gone())
        standing = standing_of(self._sheet, self._ground, self._catalogue, feed)
        problem = self._problem(feed, standing, chain_v, chain_a, first)
        if problem is not None:
            return ChainPlan(left_out=tuple(left_out), problem=problem)
        dropper = None
        if self._is_string:
            dropper = dropper_for(feed, chain_v, chain_a, standing.amps)
        line = self._lay(feed, sorted_, chain_v, chain_a, dropper)
        reference = self._reference(feed, standing, first)
        line = line._replace(bleed_ohm=tie(self._draft, feed, reference))
        if find_problems(Sheet(parts=tuple(self._draft.parts))):
            return ChainPlan(left_out=tuple(left_out), problem=_beyond(feed))
        return ChainPlan(
            order=tuple(load.id for load in sorted_.loads),
            parts=tuple(self._draft.parts),
            wires=tuple(self._draft.wires),
            removed=tuple(wire.id for wire in self._sheet.wires if wire.id not in self._ground.wire_by_id),
            left_out=tuple(left_out),
            cautions=tuple(self._cautions(line, standing, reference)),
            notes=tuple(self._notes(line, standing, dropper)),
            volts=chain_v,
            amps=chain_a,
            total_a=chain_a + standing.amps,
            supply=feed.part.id,
            supply_a=feed.rated_a,
            is_tied=standing.is_tied,
        )

    @property
    def _is_string(self) -> bool:
        return self._options.arrangement == "series"

    def _figures(self, sorted_: Sorted) -> tuple[float, float]:
        """Volts and amperes of the chain at its rating."""
        if self._is_string:
            return sum(way.rated_v for group in sorted_.groups for _, way in group.members), sorted_.amps
        return self._options.volts, sum(group.amps for group in sorted_.groups)

    def _lay(
        self, feed: Feed, sorted_: Sorted, chain_v: float, chain_a: float, dropper: Fitted | None
    ) -> Line:
        if not self._is_string:
            return Line(feed, tuple(lay_groups(self._draft, feed, sorted_.groups, chain_v)))
        members = [member for group in sorted_.groups for member in group.members]
        string, lead_ohm = lay_string(self._draft, feed, members, chain_a, dropper)
        return Line(feed, (string,), lead_ohm + (dropper.ohm if dropper else 0.0))

    def _feed(self, chain_v: float, chain_a: float, places: list[Point]) -> Feed | None:
        options = self._options
        if options.feed:
            return next((feed for feed in feeds_of(self._ground) if feed.key == options.feed), None)
        at = self._draft.free_place(*start_of(None, places), (-20.0, 0.0))
        part_id = self._draft.part_id(options.new_supply)
        part: Winding | DcSupply
        if options.new_supply == "winding":
            part = Winding(id=part_id, at=at, rated_v=1.0, rated_a=1.0, centre_tap=options.reference == "tap")
        else:
            part = DcSupply(id=part_id, at=at, set_v=1.0, limit_a=1.0)
        feed = new_feed(part, chain_v, chain_a, self._is_string, self._sheet)
        self._draft.parts.append(feed.part)
        return feed

    def _problem(
        self, feed: Feed, standing: Standing, chain_v: float, chain_a: float, first: Load
    ) -> Sentence | None:
        is_string = self._is_string
        gives = feed.emf_v - feed.ohm * (chain_a + standing.amps) if is_string else feed.rated_v
        off = (gives / chain_v - 1) * 100
        values = {"id": feed.part.id, "v": volts(min(gives, feed.rated_v)), "chain": volts(chain_v)}
        if feed.is_mains and not is_string:
            return sentence("{id} is the mains: only a string can be fed from them.", **values)
        if feed.is_new:
            return None
        if is_string and off < -SHORT_PCT:
            return sentence("{id} gives {v}; the string needs {chain}.", **values)
        if not is_string and abs(off) > FAR_PCT:
            return sentence("{id} gives {v}; this chain is for {chain}.", **values)
        if first.owns_cathode and (standing.is_tied or standing.heaters):
            return alone(first)
        return None

    def _reference(self, feed: Feed, standing: Standing, first: Load) -> Reference:
        """What the line is tied by: nothing more where it is tied already, or where it must float."""
        wanted = self._options.reference
        if standing.is_tied or first.owns_cathode or feed.is_mains:
            return "none"
        possible = references_for(feed)
        return wanted if wanted in possible else possible[0]

    def _cautions(self, line: Line, standing: Standing, reference: Reference) -> Iterator[Caution]:
        mains = self._sheet.mains
        chosen = frozenset(one.load.id for one in line.hung)
        yield from disturbed(self._sheet, self._ground, self._catalogue, chosen, line.feed)
        if line.feed.is_solved:
            yield from heater_cautions(line, standing, mains)
            yield from supply_cautions(line, standing, mains)
        else:
            says = sentence("What {id} gives under load is not computed.", id=line.feed.part.id)
            yield Caution(("not-solved",), (line.feed.part.id,), says)
        yield from cathode_cautions(line, standing, reference, mains)
        yield from self._wiring_cautions(line)
        if line.feed.is_mains:
            says = sentence(
                "{id} is the mains: every heater pin can be live. Work behind an isolating transformer; local codes"
                " and licensed practice come first.",
                id=line.feed.part.id,
            )
            yield Caution(("live-chassis",), (line.feed.part.id,), says)

    def _wiring_cautions(self, line: Line) -> Iterator[Caution]:
        hot = self._draft.too_hot()
        if hot:
            says = sentence("{ids} would carry more than their size should.", ids=listed(hot))
            yield Caution(("wire-current",), hot, says)
        pulled = tuple(one.load.id for one in line.hung if one.load.is_pulled)
        if pulled and line.has_series:
            says = sentence("{ids} pulled: what stands in series with it stays cold.", ids=listed(pulled))
            yield Caution(_OPEN, tuple(one.load.id for one in line.hung), says)
        direct = tuple(one.load.id for one in line.hung if one.load.is_direct)
        if len(direct) > 1 or (direct and len(line.hung) > 1):
            says = sentence(
                "The filament of {ids} is the cathode: all on this line share it.", ids=listed(direct)
            )
            yield Caution((), direct, says)

    def _notes(self, line: Line, standing: Standing, dropper: Fitted | None) -> Iterator[Sentence]:
        if dropper is not None:
            yield sentence(
                "A dropper of {ohm} {w} takes what {id} gives too much; it turns {heat} into heat.",
                ohm=ohms(dropper.ohm),
                w=rating(dropper.rated_w or 2 * dropper.watts),
                id=line.feed.part.id,
                heat=rating(round(dropper.watts, 1)),
            )
        for one in line.hung:
            if one.shunt_ohm is not None:
                yield sentence(
                    "A shunt of {ohm} carries what {id} does not take.",
                    ohm=ohms(one.shunt_ohm),
                    id=one.load.id,
                )
        if standing.is_tied and not line.feed.is_mains:
            yield sentence("{id} is tied to the chassis already.", id=line.feed.part.id)
        if standing.amps > _LEAST_TOLD_A:
            yield sentence("{id} gives {a} to others already.", id=line.feed.part.id, a=amps(standing.amps))


_LEAST_TOLD_A = 5e-4  # what leaks through the solver's own paths is no load
_OPEN = ("not-heated", "half-heated", "heater-voltage", "heater-current")


def _wired(load: Load, wires: tuple[str, ...]) -> Sentence:
    return sentence("{id} is wired already ({wires}).", id=load.id, wires=listed(wires))


def _nothing(ids: tuple[str, ...]) -> Sentence:
    if not ids:
        return sentence("Select the sockets that the chain is to heat.")
    return sentence("None of the selected sockets can be wired so.")


def _beyond(feed: Feed) -> Sentence:
    return sentence("The volts of {id} are out of all reason for heaters.", id=feed.part.id)


def _gone() -> Sentence:
    return sentence("The supply that was chosen is no longer on the sheet.")
