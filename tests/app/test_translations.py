"""The files of translations: in step with the source, whole, and what the program loads says the same."""

from __future__ import annotations

import string
from functools import cache
from pathlib import Path

import pytest
from PySide6.QtCore import QTranslator

from app.language import ENGLISH, LANGUAGES
from tests.app.languages import translation_tool

tool = translation_tool()
FILES = tool.languages()


@cache
def wanted_messages() -> dict[tuple[str, str], str]:
    return tool.gather()


def placeholders(text: str) -> set[str]:
    return {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}


def accelerators(text: str) -> int:
    return text.replace("&&", "").count("&")


def test_every_text_can_be_found_without_running_the_program() -> None:
    found = wanted_messages()
    assert ("Menus", "&File") in found
    assert ("model", "{id} is not heated") in found
    assert ("canvas", "{count} wires") in found
    assert ("actions", "&Add a part") in found
    assert ("Menus", "One fuse for each winding, never a bigger one than designed.") in found


def test_a_text_that_is_put_together_is_refused(tmp_path: Path) -> None:
    for package in tool.PACKAGES:
        (tmp_path / package).mkdir()
    (tmp_path / "app" / "part.py").write_text(
        "class Pane:\n    def show(self):\n        self.tr('Good')\n        self.tr('Bad' + ' text')\n"
    )
    (tmp_path / "core" / "rule.py").write_text("def rule(x):\n    return sentence(f'{x} is bad')\n")
    with pytest.raises(tool.NotLiteralError) as caught:
        tool.gather(tmp_path)
    assert [line.split(":")[0] for line in str(caught.value).splitlines()] == [
        "app.part, line 4",
        "core.rule, line 2",
    ]


def test_there_is_a_file_for_every_language() -> None:
    assert {path.stem.rpartition("_")[2] for path in FILES} == set(LANGUAGES) - {ENGLISH}


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_nothing_is_left_to_translate(path: Path) -> None:
    known, wanted = tool.read(path), wanted_messages()
    assert not [message for message in wanted if not known.get(message)], "run .ci/translations.py extract"
    assert not [message for message in known if message not in wanted], "run .ci/translations.py extract"


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_translations_keep_the_names_in_braces_and_the_keys(path: Path) -> None:
    wrong = [
        (source, text)
        for (_, source), text in tool.read(path).items()
        if text
        and (
            placeholders(source) != placeholders(text)
            or accelerators(source) != accelerators(text)
            or source.endswith("…") != text.endswith("…")
            or source.endswith(".") != text.endswith(".")
            or (source[:1] == " ") != (text[:1] == " ")
        )
    ]
    assert not wrong


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_what_the_program_loads_is_made_from_the_present_file(path: Path) -> None:
    translator = QTranslator()
    assert translator.load(str(path.with_suffix(".qm")))
    stale = [
        source
        for (context, source), text in tool.read(path).items()
        if text and translator.translate(context, source) != text
    ]
    assert not stale, "run .ci/translations.py release"


def test_the_files_are_written_as_the_tool_writes_them(tmp_path: Path) -> None:
    """Reading and writing again changes nothing, so that an extraction changes only what is new."""
    for path in FILES:
        known = tool.read(path)
        tool.write(tmp_path / path.name, path.stem.rpartition("_")[2], known, known)
        assert (tmp_path / path.name).read_bytes() == path.read_bytes()
