"""What is not known of the types on the sheet."""

from __future__ import annotations

from collections.abc import Iterator

from core.catalogue.types import Status, TubeType, source_words
from core.elements.passive import thermistor_law
from core.results import Finding, Sentence, sentence
from core.rules.basis import Case, Mend
from core.rules.offers import set_fields
from core.rules.words import listed
from core.sentences import Text
from core.sheet import Thermistor, Tube
from core.wording import shown

_STATUS_WORDS: dict[Status, Sentence] = {
    "seen": sentence("read in the source"),
    "second-hand": sentence("taken at second hand"),
    "disputed": sentence("disputed between sources"),
    "memory": sentence("not checked against a data sheet"),
}
_STATUS_NAMES: dict[Status, Sentence] = {
    "seen": sentence("seen"),
    "second-hand": sentence("second-hand"),
    "disputed": sentence("disputed"),
    "memory": sentence("memory"),
}
_GRAVEST: tuple[Status, ...] = ("memory", "disputed", "second-hand")
_LEAST_LETTERS = 2


def rating_unverified(case: Case) -> Iterator[Finding]:
    """Types whose heater rating was not read in a good source."""
    users: dict[str, list[Tube]] = {}
    kinds: dict[str, TubeType] = {}
    for tube, kind in case.tubes:
        if tube.rated_v is None or tube.rated_a is None or len(kind.sections) != 1:
            users.setdefault(kind.designation, []).append(tube)
            kinds[kind.designation] = kind
    for designation, tubes in users.items():
        doubtful = _doubtful(kinds[designation])
        if doubtful is not None:
            # the name on the sheet may be an equivalent: that is the one its reader knows
            yield _unverified(tubes[0].type, tuple(tube.id for tube in tubes), *doubtful)


def _doubtful(kind: TubeType) -> tuple[Status, str, str] | None:
    """The least certain value of the rating: its status, which it is, and where it comes from."""
    known = {entry.field: entry for entry in kind.provenance}
    found: list[tuple[int, Status, str, str]] = []
    for section in kind.sections:
        for word in ("volts", "amps"):
            entry = known.get(f"{section.name} {word}")
            status: Status = entry.status if entry is not None else "memory"
            if status != "seen":
                source = entry.source if entry is not None else ""
                found.append((_GRAVEST.index(status), status, word, source))
    return min(found, key=lambda one: one[0])[1:] if found else None


def _unverified(name: str, ids: tuple[str, ...], status: Status, word: str, source: str) -> Finding:
    return Finding(
        rule="rating-unverified",
        severity="note",
        where=ids,
        title=sentence("Rating of {type} is unverified", type=name),
        says=sentence(
            "The heater volts of {type} are {status} ({source}); this concerns {ids}."
            if word == "volts"
            else "The heater amps of {type} are {status} ({source}); this concerns {ids}.",
            type=name,
            status=_STATUS_WORDS[status],
            source=source_words(source) or sentence("no source is given"),
            ids=listed(ids),
        ),
        mend=sentence("Compare with the maker's data sheet before you build."),
        source=source_words(source) or _STATUS_NAMES[status],
    )


def type_unknown(case: Case) -> Iterator[Finding]:
    """Parts whose type the catalogue does not know."""
    for part in case.kinds.get(Tube, ()):
        if isinstance(part, Tube) and case.type_of[part.type] is None:
            yield _unknown(part.id, part.type, sentence("tube"), "fault", _suggestion(case, part))
    for lamp in case.lamps:
        if f"{lamp.id}:1-2" not in case.circuit.branches:
            mend = Mend(sentence("Choose a type that the catalogue has, or give its volts and amperes."))
            yield _unknown(lamp.id, lamp.type or "", sentence("lamp"), "caution", mend)
    for part in case.kinds.get(Thermistor, ()):
        if isinstance(part, Thermistor) and thermistor_law(part, case.circuit.context) is None:
            mend = Mend(sentence("Choose a type that the catalogue has, or give its figures."))
            yield _unknown(part.id, part.type or "", sentence("thermistor"), "caution", mend)


def _unknown(part_id: str, name: str, noun: Sentence, severity: str, mend: Mend) -> Finding:
    return Finding(
        rule="type-unknown",
        severity="fault" if severity == "fault" else "caution",
        where=(part_id,),
        title=sentence("Type of {id} is unknown", id=part_id),
        says=sentence(
            "The catalogue knows no {noun} '{type}', so {id} carries nothing and is not judged.",
            noun=noun,
            type=shown(name),
            id=part_id,
        ),
        mend=mend.says,
        source=sentence("the catalogue"),
        remedies=mend.remedies,
    )


def _suggestion(case: Case, tube: Tube) -> Mend:
    """The nearest names of the catalogue: those that share the longest beginning."""
    text = tube.type.strip()
    while len(text) >= _LEAST_LETTERS:
        near = [hit.name for hit in case.catalogue.search(text, 6) if hit.kind == "tube"]
        if near:
            return Mend(
                sentence("Did you mean {near}? Or add the type to the sheet.", near=_either(near[:3])),
                tuple(
                    set_fields(sentence("Make it {type}", type=name), tube.id, type=name) for name in near[:3]
                ),
            )
        text = text[:-1]
    return Mend(sentence("Choose a type that the catalogue has, or add the type to the sheet."))


def _either(names: list[str]) -> Text:
    found: Text = names[0]
    for name in names[1:]:
        found = sentence("{one} or {other}", one=found, other=name)
    return found


def override_unused(case: Case) -> Iterator[Finding]:
    """Ratings given for a tube with more than one heater section, which cannot be used."""
    for tube, kind in case.tubes:
        if len(kind.sections) > 1 and (tube.rated_v is not None or tube.rated_a is not None):
            yield Finding(
                rule="override-unused",
                severity="note",
                where=(tube.id,),
                title=sentence("Rating given for {id} is not used", id=tube.id),
                says=sentence(
                    "{id} ({type}) has {count} heater sections, so a rating of its own cannot be assigned"
                    " to one of them: the type's rating is used.",
                    id=tube.id,
                    type=tube.type,
                    count=len(kind.sections),
                ),
                mend=sentence("Take the rating off, or add a type of your own with these sections."),
                source=sentence("ratings of one's own hold for heaters of one section"),
                remedies=(set_fields(sentence("Take the rating off"), tube.id, rated_v=None, rated_a=None),),
            )
