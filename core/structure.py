"""Why a decoded sheet file does not have the shape of a sheet, in sentences with places.

The decoder stops at the first thing it cannot take; here each part, wire and type is tried by itself, so that
every one of them is named.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any, get_args, get_type_hints

import msgspec

from core.catalogue.types import TubeType
from core.errors import Problem
from core.sentences import Sentence, Text, sentence
from core.sheet import AnyPart, Mains, Sheet, Wire
from core.wording import shown

_AT = re.compile(r"(?P<what>.*) - at `(?P<place>\$.*)`", re.DOTALL)
_EXPECTED = re.compile(
    r"Expected `(?P<wanted>[^`]*)`(?: of length (?P<length>\d+))?(?:, got `?(?P<got>[^`]*)`?)?"
)
_MISSING = re.compile(r"Object missing required field `(?P<key>[^`]*)`")
_UNKNOWN = re.compile(r"Object contains unknown field `(?P<key>.*)`", re.DOTALL)
_CHOICE = re.compile(r"Invalid enum value (?P<value>.*)", re.DOTALL)
_KIND = re.compile(r"Invalid value (?P<value>.*)", re.DOTALL)

_KIND_STRUCTS: dict[str, type[msgspec.Struct]] = {
    str(struct.__struct_config__.tag): struct for struct in get_args(AnyPart)
}
KINDS = tuple(_KIND_STRUCTS)
"""Every kind of part, as it stands in the file."""

_ITEM_TYPES: dict[str, Any] = {"parts": AnyPart, "wires": Wire, "types": TubeType}
_PLAIN_TYPES: dict[str, Any] = {"title": str, "mains": Mains, "ambient_c": float}

_WORDS: dict[str, Text] = {
    "float": sentence("a number"),
    "int": sentence("a whole number"),
    "str": sentence("text"),
    "bool": sentence("true or false"),
    "array": sentence("a list"),
    "list": sentence("a list"),
    "object": sentence("an object in braces"),
    "dict": sentence("an object in braces"),
    "null": "null",
    "NoneType": "null",
}


def find_structure_problems(content: dict[str, Any], message: str) -> tuple[Problem, ...]:
    """Problems of a decoded file, without ``format`` and ``version``, that is no sheet by its shape.

    ``message`` is the decoder's own, used where trying piece by piece finds nothing.
    """
    return tuple(_all_problems(content)) or (_explain(message, "", content),)


def _all_problems(content: dict[str, Any]) -> Iterator[Problem]:
    known = {field.encode_name for field in msgspec.structs.fields(Sheet)}
    for key, value in content.items():
        if key not in known:
            yield Problem(shown(key), _unknown_key(key))
        elif key in _PLAIN_TYPES:
            yield from _try(value, _PLAIN_TYPES[key], key)
        elif not isinstance(value, list):
            yield Problem(
                key,
                sentence(
                    "a list is expected here, not {got}",
                    got=_WORDS.get(type(value).__name__, sentence("this")),
                ),
            )
        else:
            for index, item in enumerate(value):
                yield from _try(item, _ITEM_TYPES[key], f"{key}[{index}]")


def _try(value: Any, wanted: Any, place: str) -> Iterator[Problem]:
    try:
        msgspec.convert(value, wanted)
    except (msgspec.MsgspecError, RecursionError) as error:
        yield _explain(str(error), place, value)


def _explain(message: str, place: str, value: Any) -> Problem:
    """The decoder's message as a sentence, its place joined to the place of the piece."""
    match = _AT.fullmatch(message)
    what, inner = (match["what"], match["place"][1:]) if match else (message, "")
    here = f"{place}{inner}".lstrip(".")
    owner = _owner(value)
    if missing := _MISSING.fullmatch(what):
        key = missing["key"]
        said = _with_kinds(key, sentence("'{key}' is missing", key=key))
        return Problem(f"{here}.{key}".lstrip("."), _led(owner, said))
    if unknown := _UNKNOWN.fullmatch(what):
        key = shown(unknown["key"])
        return Problem(f"{here}.{key}".lstrip("."), _led(owner, _unknown_key(key)))
    return Problem(here, _led(owner, _said(what, inner.rpartition(".")[2], value)))


def _said(what: str, field: str, value: Any) -> Text:
    if choice := _CHOICE.fullmatch(what):
        return sentence(
            "{value} is not possible here; use one of {choices}",
            value=shown(choice["value"]),
            choices=_choices(field, value),
        )
    if kind := _KIND.fullmatch(what):
        return _with_kinds(field, sentence("{value} is not a kind of part", value=shown(kind["value"])))
    if expected := _EXPECTED.fullmatch(what):
        wanted = _WORDS.get(expected["wanted"].split(" | ")[0], expected["wanted"])
        if expected["length"]:
            return sentence("{what} of {length} is expected here", what=wanted, length=expected["length"])
        got = _WORDS.get(expected["got"] or "", sentence("this"))
        return sentence("{what} is expected here, not {got}", what=wanted, got=got)
    return shown(what[:1].lower() + what[1:])


def _unknown_key(key: str) -> Sentence:
    return sentence("the key '{key}' is not known here", key=shown(key))


def _with_kinds(key: str, said: Sentence) -> Sentence:
    if key != "kind":
        return said
    return sentence("{problem}; the kinds are {kinds}", problem=said, kinds=", ".join(KINDS))


def _led(owner: str, said: Text) -> Text:
    return sentence("in {owner}, {problem}", owner=owner, problem=said) if owner else said


def _owner(value: Any) -> str:
    """The id or designation of the piece, where it has a usable one."""
    if not isinstance(value, dict):
        return ""
    named = value.get("id", value.get("designation"))
    return named if isinstance(named, str) and named.isprintable() and len(named) <= 40 else ""


def _choices(field: str, value: Any) -> Text:
    """The values a field may take, from the declaration of its struct."""
    kind = value.get("kind") if isinstance(value, dict) else None
    struct = _KIND_STRUCTS.get(kind, TubeType) if isinstance(kind, str) else TubeType
    allowed = get_args(get_type_hints(struct).get(field))
    return ", ".join(str(choice) or "''" for choice in allowed) or sentence("those of the file format")
