"""What is said of each way to start softly: figures first, then what a run of the warm-up showed."""

from __future__ import annotations

import math

from core.catalogue.types import RelayType
from core.results import sentence
from core.rules.words import amps, ohms, percent, seconds, share, volts, watts
from core.sentences import Sentence, Text
from core.softstart.results import Figures, Shown

NAMES: dict[str, Sentence] = {
    "resistor": sentence("Series resistor"),
    "thermistor": sentence("Thermistor"),
    "bypassed": sentence("Thermistor bypassed by a relay"),
    "supply": sentence("Another supply"),
}

ENDS: dict[str, Sentence] = {
    "retries": sentence("and cuts out: it does not start at the first try"),
    "latched": sentence("and latches off: it does not start"),
    "limits": sentence("and stays there: it does not start"),
    "slow": sentence("and is still there when the run ends"),
}

BEHAVIOURS: dict[str, Sentence] = {
    "hiccup": sentence("that cuts out and tries again"),
    "foldback": sentence("that folds back"),
    "latch-off": sentence("that latches off"),
    "constant-current": sentence("that holds at its limit"),
}


def together(*parts: Sentence | None) -> Sentence:
    """Sentences one after the other."""
    there = [part for part in parts if part is not None]
    found = there[0]
    for part in there[1:]:
        found = sentence("{first} {second}", first=found, second=part)
    return found


def ended(shown: Shown) -> Sentence:
    """How a run of the warm-up ended."""
    if not shown.starts:
        at = sentence("at once") if not shown.limited_s else sentence("after {s}", s=seconds(shown.limited_s))
        return sentence("The supply comes to its limit {at} {end}.", at=at, end=ENDS[shown.outcome])
    if shown.ready_s is None:
        return sentence("It starts, but not every tube gets ready.")
    if shown.limited_s is not None:
        return sentence(
            "It starts, though the supply is at its limit on the way; the last tube is ready after {s}.",
            s=seconds(shown.ready_s),
        )
    return sentence("It starts, and the last tube is ready after {s}.", s=seconds(shown.ready_s))


def in_series(what: Text, supply: str, figures: Figures) -> Sentence:
    """What a part in series does to the first current, and what it costs in the end."""
    values: dict[str, Text] = {
        "part": what,
        "a": amps(figures.first_a),
        "limit": amps(figures.limit_a),
        "v": volts(figures.loss_v or 0.0),
        "w": watts(figures.loss_w or 0.0),
        "id": figures.heater,
        "hot": volts(figures.heater_v or 0.0),
        "off": percent(figures.off_pct or 0.0),
    }
    keeps = (
        sentence("{part} keeps the first current to {a} of {limit}", **values)
        if math.isfinite(figures.limit_a)
        else sentence("{part} keeps the first current to {a}", **values)
    )
    costs = sentence(
        "{keeps}; warm, it takes {v} and {w}, and {id} gets {hot} ({off}).", keeps=keeps, **values
    )
    if figures.set_v is None:
        return costs
    return sentence(
        "With {supply} set to {set}, {costs}", supply=supply, set=volts(figures.set_v), costs=costs
    )


def short_of(figures: Figures, is_resistor: bool) -> Sentence | None:
    """By how much the heater that is worst off is outside its limits; None where it is inside."""
    off, limit = figures.off_pct or 0.0, figures.limit_pct or 0.0
    values = {"limit": percent(limit), "by": share(abs(off - limit))}
    if limit >= 0:
        return sentence("That is {by} above its limit of {limit}.", **values)
    return sentence(
        "That is {by} below its limit of {limit}: a resistor alone is no good here."
        if is_resistor
        else "That is {by} below its limit of {limit}.",
        **values,
    )


def over_rating(figures: Figures) -> Sentence:
    """That no usual resistor bears the heat."""
    return sentence(
        "No single resistor bears the {w} that it takes when warm.", w=watts(figures.loss_w or 0.0)
    )


def no_thermistor(ohm: float, warm_a: float) -> Sentence:
    """That the catalogue has no thermistor large enough."""
    return sentence(
        "No thermistor of the catalogue has {ohm} or more when cold and bears {a}.",
        ohm=ohms(ohm),
        a=amps(warm_a),
    )


def no_relay(line_v: float, behind_v: float, contact_a: float) -> Sentence:
    """That the catalogue has no relay for the line."""
    return sentence(
        "No relay of the catalogue pulls in for sure at the {behind} behind the thermistor,"
        " bears {v} and switches {a}.",
        behind=volts(behind_v),
        v=volts(line_v),
        a=amps(contact_a),
    )


def bypassed(what: str, relay: RelayType, coil_ohm: float | None, figures: Figures) -> Sentence:
    """What a thermistor and its relay do together."""
    name: Text = relay.designation
    if coil_ohm is not None:
        name = sentence("{relay} behind {ohm}", relay=name, ohm=ohms(coil_ohm))
    return sentence(
        "{part} keeps the first current to {a} of {limit}; {relay} pulls in at {pull} and bridges it,"
        " when the supply gives about {closing}, and {id} gets {hot} ({off}).",
        part=what,
        a=amps(figures.first_a),
        limit=amps(figures.limit_a),
        relay=name,
        pull=volts(figures.pull_in_v or 0.0),
        closing=amps(figures.closing_a or 0.0),
        id=figures.heater,
        hot=volts(figures.heater_v or 0.0),
        off=percent(figures.off_pct or 0.0),
    )


def closes(shown: Shown) -> Sentence | None:
    """When the relay pulled in and what its contact carried at most."""
    if shown.pulls_in_s is None:
        return sentence("The relay never pulls in.")
    return sentence(
        "The relay pulls in after {s}, and its contact carries {a} at most.",
        s=seconds(shown.pulls_in_s),
        a=amps(shown.contact_peak_a or 0.0),
    )


def peak(shown: Shown, most: float) -> Sentence | None:
    """That a heater gets more at switch-on than was wanted."""
    if shown.peak_ratio <= most:
        return None
    return sentence(
        "On the way a heater gets {share} of its rated volts.", share=share(100 * shown.peak_ratio)
    )


def another(figures: Figures, own: str, needed_a: float | None) -> Sentence:
    """That a supply of the same rating that holds at its limit does it, and what one like the present would take."""
    values: dict[str, Text] = {"limit": amps(figures.limit_a), "kind": BEHAVIOURS[own]}
    if needed_a is None:
        return sentence(
            "A supply of {limit} that holds at its limit is enough; none up to the cold current {kind} is.",
            **values,
        )
    return sentence(
        "A supply of {limit} that holds at its limit is enough; one {kind} would have to give {needed}.",
        needed=amps(needed_a),
        **values,
    )


def bigger(figures: Figures, own: str) -> Sentence:
    """That a bigger supply does it, by what it is asked for."""
    return sentence(
        "Cold, the heaters ask for {cold}, and {warm} when warm: a supply of {a} {kind} is enough.",
        cold=amps(figures.first_a),
        warm=amps(figures.warm_a),
        a=amps(figures.supply_a or 0.0),
        kind=BEHAVIOURS[own],
    )
