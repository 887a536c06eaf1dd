"""Wires on pins that are no heater pins of the tube in the socket."""

from __future__ import annotations

from collections.abc import Iterator

from core.catalogue.bases import BASES
from core.catalogue.types import TubeType
from core.elements.branch import GROUND
from core.remedy import Remedy
from core.results import Finding, Sentence, sentence
from core.rules.basis import Case
from core.rules.offers import ends_at, moved, take_out
from core.rules.strapping import pin_source
from core.rules.words import listed, pin_list
from core.sentences import Text
from core.sheet import Tube


def pin_not_heater(case: Case) -> Iterator[Finding]:
    """Heater wires on pins that belong to no heater of the type."""
    wired_pins = case.wired_pins
    for tube, kind in case.tubes:
        wired = wired_pins.get(tube.id)
        if wired is None:
            continue
        pins = kind.heater_pins
        wrong = [pin for pin in wired if pin not in pins]
        screens = [pin for pin in wrong if _is_screen(case, tube, kind, pin)]
        if wrong and len(screens) == len(wrong):
            yield _screen_pins(case, tube, kind, screens)
        elif wrong:
            wrong = [pin for pin in wrong if pin not in screens]
            yield _wrong_pins(case, tube, kind, wired, wrong)


def _is_screen(case: Case, tube: Tube, kind: TubeType, pin: str) -> bool:
    """Whether a pin that the base has is wired straight to the chassis and to nothing else."""
    base = BASES.get(kind.base)
    wires = case.circuit.wires_at.get(f"{tube.id}.{pin}", ())
    ends = [case.circuit.branches[wire] for wire in wires]
    return (base is None or base.has(pin)) and all(GROUND in (one.u, one.v) for one in ends)


def _screen_pins(case: Case, tube: Tube, kind: TubeType, pins: list[str]) -> Finding:
    values: dict[str, Text] = {
        "id": tube.id,
        "type": tube.type,
        "pins": pin_list(pins),
        "heater": pin_list(kind.heater_pins),
    }
    wires = [wire_id for pin in pins for wire_id in case.circuit.wires_at.get(f"{tube.id}.{pin}", ())]
    return Finding(
        rule="pin-not-heater",
        severity="note",
        where=(tube.id, *dict.fromkeys(wires)),
        title=sentence("{id}: {pins} on the chassis", **values),
        says=sentence(
            "On {id} ({type}) {pins} is no heater pin but wired to the chassis, as a screen may be."
            if len(pins) == 1
            else "On {id} ({type}) {pins} are no heater pins but wired to the chassis, as a screen may be.",
            **values,
        ),
        mend=sentence("If the heater was meant, it is on {heater}.", **values),
        source=pin_source(kind),
    )


def _wrong_pins(case: Case, tube: Tube, kind: TubeType, wired: tuple[str, ...], wrong: list[str]) -> Finding:
    wires = [wire_id for pin in wrong for wire_id in case.circuit.wires_at.get(f"{tube.id}.{pin}", ())]
    says, mend = _pin_words(tube, kind, wired, wrong)
    return Finding(
        rule="pin-not-heater",
        severity="fault",
        where=(tube.id, *dict.fromkeys(wires)),
        title=sentence("{id}: wire on {pins}", id=tube.id, pins=pin_list(wrong)),
        says=says,
        mend=mend,
        source=pin_source(kind),
        remedies=_pin_remedies(case, tube, kind, wired, wrong),
    )


def _pin_remedies(
    case: Case, tube: Tube, kind: TubeType, wired: tuple[str, ...], wrong: list[str]
) -> tuple[Remedy, ...]:
    """Wires moved to the pins that were meant, where there is one for each, and wires taken off."""
    bare = [pin for pin in kind.heater_pins if pin not in wired]
    meant = _mirrored(kind, wired)
    if not meant and len(kind.sections) == 1 and len(wrong) == len(bare):
        meant = list(zip(wrong, bare, strict=True))
    found = []
    if meant:
        moves = [move for a, b in meant for move in ends_at(case, f"{tube.id}.{a}", f"{tube.id}.{b}")]
        title = sentence(
            "Move {moves}", moves=listed([sentence("pin {a} to pin {b}", a=a, b=b) for a, b in meant], 8)
        )
        found.append(moved(title, moves))
    wires = [one for pin in wrong for one in case.circuit.wires_at.get(f"{tube.id}.{pin}", ())]
    return (*found, take_out(tuple(dict.fromkeys(wires))))


def _pin_words(
    tube: Tube, kind: TubeType, wired: tuple[str, ...], wrong: list[str]
) -> tuple[Sentence, Sentence]:
    values: dict[str, Text] = {
        "id": tube.id,
        "type": tube.type,
        "wrong": pin_list(wrong),
        "pins": pin_list(kind.heater_pins),
    }
    base = BASES.get(kind.base)
    meant = _mirrored(kind, wired)
    if meant:
        return (
            sentence(
                "The wires of {id} ({type}) end on {wrong}, the mirror image of its heater {pins}:"
                " pins are counted clockwise seen from below.",
                **values,
            ),
            sentence(
                "Move them: {moves}.",
                moves=listed([sentence("pin {a} to pin {b}", a=a, b=b) for a, b in meant], 8),
            ),
        )
    if base is not None and not all(base.has(pin) for pin in wrong):
        return (
            sentence(
                "A wire ends on {wrong} of {id} ({type}), but its base {base} has no such pin.",
                base=base.title,
                **values,
            ),
            sentence("Its heater is on {pins}.", **values),
        )
    if wrong == ["9"] and kind.base == "B9A" and len(kind.sections) == 1:
        return (
            sentence(
                "A wire ends on pin 9 of {id} ({type}), which is no heater tap there: the heater is on {pins}.",
                **values,
            ),
            sentence(
                "Take the wire off pin 9; only tubes with a tapped heater, such as the 12AX7, are fed there."
            ),
        )
    return (
        sentence("A heater wire ends on {wrong} of {id} ({type}), whose heater is on {pins}.", **values),
        sentence("Move it to {pins}, or take it off.", **values),
    )


def _mirrored(kind: TubeType, wired: tuple[str, ...]) -> list[tuple[str, str]]:
    """Moves from wired pins to meant ones, if the wired pins are the heater pins counted from the wrong side."""
    base = BASES.get(kind.base)
    count = len(base.pins) if base else 0
    if len(wired) < 2 or not count or not all(pin.isdigit() for pin in wired):
        return []
    moves = [(pin, str(count + 1 - int(pin))) for pin in wired]
    if not all(meant in kind.heater_pins for _, meant in moves):
        return []
    return [(pin, meant) for pin, meant in moves if pin != meant]
