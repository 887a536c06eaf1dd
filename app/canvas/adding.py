"""What the add field offers for a text: types of the catalogue, and other parts by words and values."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

from app.kinds import kind_title, kind_word
from app.speech import spoken
from core.catalogue import Catalogue, SearchHit
from core.errors import QuantityError
from core.fields import FIELD_DIMENSIONS
from core.units import Dimension, format_quantity, parse

Template = dict[str, Any]
Values = Mapping[Dimension, float]

_V, _A, _W, _OHM, _F = Dimension.VOLTS, Dimension.AMPS, Dimension.WATTS, Dimension.OHMS, Dimension.FARADS
_MOST = 12
_UNITS = (
    (_V, re.compile(r"[pnuµmkM]?V|volts?", re.IGNORECASE)),
    (_A, re.compile(r"[pnuµmk]?A|amps?|amperes?", re.IGNORECASE)),
    (_W, re.compile(r"[mk]?W|watts?", re.IGNORECASE)),
    (_F, re.compile(r"[pnuµm]F?|farads?", re.IGNORECASE)),
    (_OHM, re.compile(r"[mkMG]?(?:R|Ω|Ω|ohms?)|k|K|M", re.IGNORECASE)),
)
_PLAIN = re.compile(r"[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+")
_WITH_UNIT = re.compile(r"(?:[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)(?P<unit>[^0-9.,]+)")
_LETTER_POINT = re.compile(r"[0-9]*(?P<unit>[VARrΩkKMmuµnp])[0-9]+")


@dataclass(frozen=True)
class Offer:
    """One thing that can be added: its name, a line about it, and the part's fields without id and place."""

    label: str
    detail: str
    part_template: Template


@dataclass(frozen=True)
class _Kind:
    """A kind that is offered by words, or by the values that say enough without a word."""

    kind: str
    words: tuple[str, ...]
    build: Callable[[Values], Template | None]
    says_enough: tuple[frozenset[Dimension], ...] = ()
    takes: frozenset[Dimension] = field(default_factory=frozenset)


def _sets(*groups: Iterable[Dimension]) -> tuple[frozenset[Dimension], ...]:
    return tuple(frozenset(group) for group in groups)


def _resistor(values: Values) -> Template:
    watts = {"rated_w": values[_W]} if _W in values else {}
    return {"ohm": values.get(_OHM, 1.0), **watts}


def _relay(values: Values) -> Template:
    volts = values.get(_V, 6.0)
    return {"coil_v": volts, "coil_ohm": values.get(_OHM, round(volts**2 / 0.4, 1))}


def _lamp(values: Values) -> Template:
    if _V in values:
        return {"rated_v": values[_V], "rated_a": values.get(_A, 0.15)}
    return {"type": "#47"}


def _thermistor(values: Values) -> Template | None:
    """By its resistance; without one the catalogue's types are the better answer."""
    if _OHM not in values:
        return None
    return {
        "r25_ohm": values[_OHM],
        "beta_k": 3000.0,
        "dissipation_w_per_k": 0.017,
        "tau_s": 60.0,
        "max_a": values.get(_A, 3.0),
    }


_KINDS: tuple[_Kind, ...] = (
    _Kind(
        "winding",
        ("winding", "transformer", "ac"),
        lambda v: {"rated_v": v.get(_V, 6.3), "rated_a": v.get(_A, 3.0)},
        _sets((_V, _A), (_V,)),
        frozenset((_V, _A)),
    ),
    _Kind(
        "winding",
        ("ct", "tapped", "centre-tapped", "winding", "transformer"),
        lambda v: {"rated_v": v.get(_V, 6.3), "rated_a": v.get(_A, 3.0), "centre_tap": True},
        takes=frozenset((_V, _A)),
    ),
    _Kind(
        "dc_supply",
        ("dc", "supply", "regulated"),
        lambda v: {"set_v": v.get(_V, 6.3), "limit_a": v.get(_A, 3.0)},
        _sets((_V, _A), (_V,)),
        frozenset((_V, _A)),
    ),
    _Kind(
        "rectified_supply",
        ("rectified", "supply", "rectifier", "dc"),
        lambda v: {"rated_v": v.get(_V, 6.3), "rated_a": v.get(_A, 3.0)},
        takes=frozenset((_V, _A)),
    ),
    _Kind(
        "battery",
        ("battery", "accumulator", "cell"),
        lambda v: {"emf_v": v.get(_V, 6.0), "internal_ohm": v.get(_OHM, 0.0)},
        _sets((_V,)),
        frozenset((_V, _OHM)),
    ),
    _Kind("lamp", ("lamp", "bulb", "pilot", "dial"), _lamp, _sets((_V, _A)), frozenset((_V, _A))),
    _Kind(
        "resistor",
        ("resistor", "dropper", "shunt", "ballast"),
        _resistor,
        _sets((_OHM,), (_OHM, _W)),
        frozenset((_OHM, _W)),
    ),
    _Kind("thermistor", ("thermistor", "ntc", "inrush"), _thermistor, takes=frozenset((_OHM, _A))),
    _Kind("relay", ("relay", "contact"), _relay, takes=frozenset((_V, _OHM))),
    _Kind("fuse", ("fuse", "link"), lambda v: {"rated_a": v.get(_A, 1.0)}, _sets((_A,)), frozenset((_A,))),
    _Kind(
        "capacitor",
        ("capacitor", "condenser"),
        lambda v: {"farad": v.get(_F, 4.7e-6)},
        _sets((_F,)),
        frozenset((_F,)),
    ),
    _Kind(
        "diode",
        ("diode",),
        lambda v: {"forward_v": v[_V]} if _V in v else {},
        takes=frozenset((_V,)),
    ),
    _Kind("switch", ("switch",), lambda _: {}),
    _Kind(
        "balance",
        ("balance", "hum", "potentiometer"),
        lambda v: {"ohm": v.get(_OHM, 100.0)},
        takes=frozenset((_OHM,)),
    ),
    _Kind(
        "elevation",
        ("elevation", "bias"),
        lambda v: {"volts": v.get(_V, 40.0), **({"source_ohm": v[_OHM]} if _OHM in v else {})},
        takes=frozenset((_V, _OHM)),
    ),
    _Kind("chassis", ("chassis", "earth", "ground"), lambda _: {}),
    _Kind("joint", ("joint", "tag", "splice", "junction"), lambda _: {}),
    _Kind("mains_feed", ("mains", "feed", "live"), lambda _: {}),
)


def offers(text: str, catalogue: Catalogue) -> list[Offer]:
    """What may be meant by a text, the likeliest first; empty for an empty text or one that says nothing.

    A catalogue name that is typed in full wins over a reading as a value (``6V6`` is a tube, not 6.6 V).
    """
    tokens = text.split()
    if not tokens:
        return []
    remark = _remark(text)
    if remark is not None:
        return [remark]
    values, words = values_of(tokens)
    named = _catalogue_offers(text, catalogue)
    by_kind = _kind_offers(values, words)
    exact = [offer for offer in named if _plain(offer.label) == _plain(text)]
    rest = [offer for offer in named if offer not in exact]
    order = [*exact, *by_kind, *_within_kind(words, tokens, catalogue), *rest]
    unique = {offer.label + offer.detail: offer for offer in reversed(order)}
    return list(reversed(unique.values()))[:_MOST]


def _remark(text: str) -> Offer | None:
    """The note or frame that ``note …`` or ``frame …`` asks for, with everything after the word."""
    word, _, rest = text.strip().partition(" ")
    if word.lower() == "note":
        return Offer(kind_title("note"), rest.strip(), {"kind": "note", "text": rest.strip()})
    if word.lower() == "frame":
        return Offer(kind_title("frame"), rest.strip(), {"kind": "frame", "title": rest.strip()})
    return None


def _plain(name: str) -> str:
    return re.sub(r"[\s#/-]", "", name).upper()


def _catalogue_offers(text: str, catalogue: Catalogue) -> list[Offer]:
    hits = catalogue.search(text, _MOST)
    return [Offer(hit.name, spoken(hit.summary), _template_of(hit, catalogue)) for hit in hits]


def _template_of(hit: SearchHit, catalogue: Catalogue) -> Template:
    """A tube keeps the name that was asked for; a relay, having no type field, gets its figures."""
    if hit.kind != "relay":
        return {"kind": hit.kind, "type": hit.name if hit.kind == "tube" else hit.designation}
    relay = catalogue.relay(hit.designation)
    if relay is None:
        return {"kind": hit.kind, **_relay({})}
    return {
        "kind": hit.kind,
        "coil_v": relay.coil_v,
        "coil_ohm": relay.coil_ohm,
        "pull_in_v": relay.pull_in_v,
        "drop_out_v": relay.drop_out_v,
    }


def _within_kind(words: list[str], tokens: list[str], catalogue: Catalogue) -> list[Offer]:
    """Catalogue types of a kind that one word names: ``lamp #47``, ``thermistor 10``, ``tube EL84``."""
    kinds = {"lamp": "lamp", "bulb": "lamp", "tube": "tube", "thermistor": "thermistor", "relay": "relay"}
    kinds |= {kind_word(kind).lower(): kind for kind in set(kinds.values())}
    kind = next((kinds[word.lower()] for word in words if word.lower() in kinds), None)
    rest = " ".join(token for token in tokens if token.lower() not in kinds)
    if kind is None or not rest:
        return []
    return [offer for offer in _catalogue_offers(rest, catalogue) if offer.part_template["kind"] == kind]


def _kind_offers(values: Values, words: list[str]) -> list[Offer]:
    given = frozenset(values)
    found = []
    for kind in _KINDS:
        if words:
            fits = all(_is_word_of(word, kind) for word in words) and given <= kind.takes
        else:
            fits = given in kind.says_enough
        fields = kind.build(values) if fits else None
        if fields is not None:
            template = {"kind": kind.kind, **fields}
            title = kind_title("tapped winding" if "centre_tap" in fields else kind.kind)
            found.append(Offer(title, _detail(template), template))
    return found


def _is_word_of(word: str, kind: _Kind) -> bool:
    begun = word.lower()
    of_screen = kind_word(kind.kind).lower().split()
    return len(word) >= 2 and any(name.startswith(begun) for name in (*kind.words, *of_screen))


def _detail(template: Template) -> str:
    parts = []
    for name, value in template.items():
        if isinstance(value, float) and value and name in FIELD_DIMENSIONS:
            parts.append(_short(format_quantity(value, FIELD_DIMENSIONS[name])))
        elif name == "type":
            parts.append(str(value))
    return "  ".join(parts[:2])


def _short(text: str) -> str:
    """A figure without the zeros that say nothing: ``6.30 V`` becomes ``6.3 V``."""
    return re.sub(r"(\.[0-9]*?)0+(?=\D|$)", r"\1", text).replace(".\u2009", "\u2009")


def values_of(tokens: list[str]) -> tuple[dict[Dimension, float], list[str]]:
    """Split tokens into values by dimension and the words that are left."""
    values: dict[Dimension, float] = {}
    words: list[str] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        following = tokens[at + 1] if at + 1 < len(tokens) else ""
        found = None
        if _PLAIN.fullmatch(token) and following:
            found = _value(f"{token} {following}", following)
            at += found is not None
        if found is None:
            match = _WITH_UNIT.fullmatch(token) or _LETTER_POINT.fullmatch(token)
            found = _value(token, match["unit"]) if match else None
        if found is None:
            words.append(token)
        else:
            values.setdefault(*found)
        at += 1
    return values, words


def _value(text: str, unit: str) -> tuple[Dimension, float] | None:
    for dimension, pattern in _UNITS:
        if pattern.fullmatch(unit.strip()):
            try:
                value = parse(text, dimension)
            except QuantityError:
                continue
            if value > 0:
                return dimension, value
    return None
