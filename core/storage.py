"""The sheet file: bytes to sheet and back.

The file is JSON in UTF-8 with ``format`` and ``version`` first and one part or wire a line. Reading lists
every problem it can find, each at its place; writing gives the same bytes for equal sheets.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator, Mapping
from functools import cache
from typing import Any

import msgspec

from core.checks import find_problems
from core.errors import NewerVersionError, Problem, SheetError
from core.migrations import MIGRATIONS, Migration, Tree, migrate
from core.sentences import Sentence, Text, sentence
from core.sheet import FORMAT, VERSION, Sheet
from core.structure import find_structure_problems
from core.wording import shown

LARGEST_FILE = 50_000_000
"""Bytes; a sheet of 20,000 parts takes about three million."""

_BOM = b"\xef\xbb\xbf"
_HALF_PAIR = re.compile(r"\\u[dD][89a-fA-F]")


def load(data: bytes, name: str = "", *, migrations: Mapping[int, Migration] = MIGRATIONS) -> Sheet:
    """Read a sheet file; ``name`` is what messages call the file.

    Raises NewerVersionError for a file of a newer version, and SheetError with every problem found for
    anything else that cannot be used.
    """
    title: Text = f"'{name}'" if name else sentence("The file")
    tree = _envelope(_parse(data, title), title)
    version = tree["version"]
    tree = migrate(tree, version, migrations)
    content = {key: value for key, value in tree.items() if key not in {"format", "version"}}
    try:
        sheet = msgspec.convert(content, Sheet)
    except (msgspec.MsgspecError, RecursionError) as error:
        raise SheetError(find_structure_problems(content, str(error))) from error
    problems = find_problems(sheet)
    if problems:
        raise SheetError(problems)
    return sheet


def _parse(data: bytes, title: Text) -> Any:
    """Decode JSON; refuses what is no text, no JSON, too large, or says a key twice."""
    if len(data) > LARGEST_FILE:
        raise _unusable(
            sentence(
                "{title} is larger than {most} MB and is not read",
                title=title,
                most=LARGEST_FILE // 1_000_000,
            )
        )
    doubled: list[tuple[Any, str]] = []

    def build(pairs: list[tuple[str, Any]]) -> Tree:
        made = dict(pairs)
        if len(made) != len(pairs):
            keys = [key for key, _ in pairs]
            doubled.append((made, next(key for key in keys if keys.count(key) > 1)))
        return made

    try:
        text = data.removeprefix(_BOM).decode()
        tree = json.loads(text, object_pairs_hook=build)
    except UnicodeDecodeError as error:
        raise _unusable(
            sentence("{title} is not text in UTF-8 (byte {at})", title=title, at=error.start)
        ) from error
    except json.JSONDecodeError as error:
        raise _malformed(error, title) from error
    except RecursionError as error:
        raise _unusable(sentence("{title} is nested too deeply to be a sheet", title=title)) from error
    except ValueError as error:
        raise _unusable(sentence("{title} holds a number with too many digits", title=title)) from error
    if doubled:
        raise SheetError(tuple(_doubled_problems(tree, doubled)))
    if _HALF_PAIR.search(text):
        _refuse_half_pairs(tree)
    return tree


def _unusable(message: Sentence, place: Text = "") -> SheetError:
    return SheetError((Problem(place, message),))


def _malformed(error: json.JSONDecodeError, title: Text) -> SheetError:
    place = sentence("line {line}, column {column}", line=error.lineno, column=error.colno)
    if not error.doc.strip():
        return _unusable(sentence("{title} is empty", title=title))
    if error.pos >= len(error.doc.rstrip()) or error.msg.startswith("Unterminated string"):
        return _unusable(sentence("{title} breaks off here; it is not complete", title=title), place)
    return _unusable(
        sentence("{title} is not a sheet: this is not JSON ({why})", title=title, why=error.msg), place
    )


def _doubled_problems(tree: Any, doubled: list[tuple[Any, str]]) -> Iterator[Problem]:
    places = {id(value): place for place, value in _walk(tree) if isinstance(value, dict)}
    for node, key in doubled:
        place = places.get(id(node), "")
        yield Problem(
            f"{place}.{shown(key)}".lstrip("."), sentence("the key '{key}' stands here twice", key=shown(key))
        )


def _refuse_half_pairs(tree: Any) -> None:
    problems = [
        Problem(place, sentence("this text holds half of a character pair"))
        for place, value in _walk(tree)
        if isinstance(value, str) and not _is_encodable(value)
    ]
    if problems:
        raise SheetError(tuple(problems))


def _is_encodable(text: str) -> bool:
    try:
        text.encode()
    except UnicodeEncodeError:
        return False
    return True


def _walk(tree: Any) -> Iterator[tuple[str, Any]]:
    """Every value of a decoded file with its place; keys count as values of the place they stand in."""
    waiting: list[tuple[str, Any]] = [("", tree)]
    while waiting:
        place, value = waiting.pop()
        yield place, value
        if isinstance(value, dict):
            waiting.extend((place, key) for key in value)
            waiting.extend((f"{place}.{shown(key)}".lstrip("."), item) for key, item in value.items())
        elif isinstance(value, list):
            waiting.extend((f"{place}[{index}]", item) for index, item in enumerate(value))


def _envelope(tree: Any, title: Text) -> Tree:
    """The decoded file, once its format and version are known to be ours."""
    if not isinstance(tree, dict) or "format" not in tree:
        raise _unusable(
            sentence("{title} is not a sheet: it has no format '{format}'", title=title, format=FORMAT)
        )
    if tree["format"] != FORMAT:
        raise _unusable(
            sentence("{title} is not a sheet: its format must be '{format}'", title=title, format=FORMAT),
            "format",
        )
    version = tree.get("version")
    if not isinstance(version, int) or isinstance(version, bool) or version < 0:
        raise _unusable(sentence("a whole number is expected here, such as 1"), "version")
    if version > VERSION:
        message = sentence(
            "{title} was made by a newer version of the program (sheet version {version}; "
            "this one reads up to {most}). Update the program to open it.",
            title=title,
            version=shown(str(version)),
            most=VERSION,
        )
        raise NewerVersionError((Problem("version", message),))
    return tree


def dump(sheet: Sheet) -> bytes:
    """Write a sheet file: the same bytes for equal sheets, defaults left out, one part or wire a line.

    Raises SheetError for a sheet that ``load`` would refuse.
    """
    problems = find_problems(sheet)
    if problems:
        raise SheetError(problems)
    try:
        entries = [
            f'"format": {_line(FORMAT)}, "version": {VERSION}',
            f'"title": {_line(sheet.title)}',
            f'"mains": {_line(_every_field(sheet.mains))}',
            f'"ambient_c": {_line(_plain(sheet.ambient_c))}',
            *(_rows(key, items) for key, items in _lists(sheet) if items),
        ]
    except UnicodeEncodeError as error:
        raise _unusable(sentence("the sheet holds half of a character pair in its text")) from error
    body = ",\n".join(f"  {entry}" for entry in entries)
    return f"{{\n{body}\n}}\n".encode()


def _lists(sheet: Sheet) -> tuple[tuple[str, tuple[msgspec.Struct, ...]], ...]:
    return (("types", sheet.types), ("parts", sheet.parts), ("wires", sheet.wires))


def _rows(key: str, items: Iterable[msgspec.Struct]) -> str:
    rows = ",\n".join(f"    {_line(_plain(item))}" for item in items)
    return f'"{key}": [\n{rows}\n  ]'


def _line(value: Any) -> str:
    return msgspec.json.format(msgspec.json.encode(value), indent=0).decode()


def _plain(value: Any) -> Any:
    """A value for the encoder: defaults left out, and whole numbers without a point."""
    if isinstance(value, msgspec.Struct):
        return _fields_of(value)
    if isinstance(value, tuple | list):
        return [_plain(item) for item in value]
    if isinstance(value, float) and value.is_integer() and abs(value) < 1e15:
        return int(value)
    return value


def _fields_of(struct: msgspec.Struct) -> Tree:
    """The fields of a struct that differ from their defaults, in the order of the file."""
    made: Tree = {}
    tag = struct.__struct_config__.tag
    for name, key, default in _file_order(type(struct)):
        value = getattr(struct, name)
        if value != default:
            made[key] = _plain(value)
        if key == "id" and tag is not None:
            made["kind"] = tag
    return made


def _every_field(struct: msgspec.Struct) -> Tree:
    return {key: _plain(getattr(struct, name)) for name, key, _ in _file_order(type(struct))}


@cache
def _file_order(struct: type[msgspec.Struct]) -> tuple[tuple[str, str, Any], ...]:
    """Attribute, key and default of each field; where the part lies on the sheet comes last."""
    fields = msgspec.structs.fields(struct)
    ordered = sorted(fields, key=lambda field: field.name in {"at", "turn", "mirror", "via"})
    return tuple((field.name, field.encode_name, field.default) for field in ordered)
