"""Reaching the tool that gathers translations, and speaking a language for the length of a test."""

from __future__ import annotations

import importlib.util
import math
import string
from pathlib import Path
from types import ModuleType

from PySide6.QtCore import QTranslator
from PySide6.QtWidgets import QApplication

ROOT = Path(__file__).resolve().parents[2]


def translation_tool() -> ModuleType:
    """The module ``.ci/translations.py``."""
    spec = importlib.util.spec_from_file_location("translations", ROOT / ".ci" / "translations.py")
    assert spec is not None and spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


ACCENTS = str.maketrans("aeiounAEOU", "åéîöüñÅÉÖÜ")
GROWTH = 0.4


def stretched(text: str) -> str:
    """A text 40 % longer, with accents and in brackets; names in braces and the letter of a menu stay."""
    label, tab, hint = text.partition("\t")
    pieces = []
    for plain, name, _, _ in string.Formatter().parse(label):
        pieces.append(plain.translate(ACCENTS))
        if name is not None:
            pieces.append(f"{{{name}}}")
    size = len(label.replace("&", ""))
    more = max(math.ceil(GROWTH * size) - 2, 0)
    padding = "".join(" " if place % 7 == 6 else "o" for place in range(more)).rstrip()
    padding += "o" * (more - len(padding))
    return f"[{''.join(pieces)}{padding}]{tab}{hint}"


def stretched_language(folder: Path) -> Path:
    """A file of the stretched language, in a folder."""
    tool = translation_tool()
    messages = tool.gather()
    source, target = folder / "stretched.ts", folder / "stretched.qm"
    tool.write(source, "en", messages, {message: stretched(message[1]) for message in messages})
    tool.release(source, target)
    return target


def speak_file(application: QApplication, path: Path) -> QTranslator:
    """Let the program speak the language of a file; take the translator out again afterwards."""
    translator = QTranslator(application)
    assert translator.load(str(path))
    application.installTranslator(translator)
    return translator
