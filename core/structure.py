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

_WORDS = {
    "float": "a number",
    "int": "a whole number",
    "str": "text",
    "bool": "true or false",
    "array": "a list",
    "list": "a list",
    "object": "an object in braces",
    "dict": "an object in braces",
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
            yield Problem(key, f"a list is expected here, not {_WORDS.get(type(value).__name__, 'this')}")
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
        return Problem(f"{here}.{key}".lstrip("."), f"{_lead(owner)}'{key}' is missing{_needs(key)}")
    if unknown := _UNKNOWN.fullmatch(what):
        key = shown(unknown["key"])
        return Problem(f"{here}.{key}".lstrip("."), _lead(owner) + _unknown_key(key))
    return Problem(here, _lead(owner) + _sentence(what, inner.rpartition(".")[2], value))


def _sentence(what: str, field: str, value: Any) -> str:
    if choice := _CHOICE.fullmatch(what):
        return f"{shown(choice['value'])} is not possible here; use one of {_choices(field, value)}"
    if kind := _KIND.fullmatch(what):
        return f"{shown(kind['value'])} is not a kind of part{_needs(field)}"
    if expected := _EXPECTED.fullmatch(what):
        wanted = _WORDS.get(expected["wanted"].split(" | ")[0], expected["wanted"])
        if expected["length"]:
            return f"{wanted} of {expected['length']} is expected here"
        got = _WORDS.get(expected["got"] or "", "this")
        return f"{wanted} is expected here, not {got}"
    return shown(what[:1].lower() + what[1:])


def _unknown_key(key: str) -> str:
    return f"the key '{shown(key)}' is not known here"


def _needs(key: str) -> str:
    return f"; the kinds are {', '.join(KINDS)}" if key == "kind" else ""


def _lead(owner: str) -> str:
    return f"in {owner}, " if owner else ""


def _owner(value: Any) -> str:
    """The id or designation of the piece, where it has a usable one."""
    if not isinstance(value, dict):
        return ""
    named = value.get("id", value.get("designation"))
    return named if isinstance(named, str) and named.isprintable() and len(named) <= 40 else ""


def _choices(field: str, value: Any) -> str:
    """The values a field may take, from the declaration of its struct."""
    kind = value.get("kind") if isinstance(value, dict) else None
    struct = _KIND_STRUCTS.get(kind, TubeType) if isinstance(kind, str) else TubeType
    allowed = get_args(get_type_hints(struct).get(field))
    return ", ".join(str(choice) or "''" for choice in allowed) or "those of the file format"
