"""Sentences of the model in the language of the screen."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from core.errors import HeaterloomError, InputError, Problem
from core.sentences import Sentence, Text


def spoken(text: Text) -> str:
    """A sentence in the language of the screen, with all sentences within it; a plain text as it is."""
    if isinstance(text, str):
        return text
    template = QCoreApplication.translate("model", text.template)
    if not text.values:
        return template
    try:
        return template.format(**{name: spoken(value) for name, value in text.values})
    except (KeyError, IndexError, ValueError):
        return str(text)


def told(error: HeaterloomError) -> str:
    """What an error says, in the language of the screen."""
    if isinstance(error, InputError):
        return "\n".join(placed(problem) for problem in error.problems)
    said = error.args[0] if error.args else ""
    return spoken(said) if isinstance(said, Sentence) else str(error)


def placed(problem: Problem) -> str:
    """A problem after the place it is at."""
    place, message = spoken(problem.at), spoken(problem.said)
    return f"{place}: {message}" if place else message


def listed(items: Sequence[str]) -> str:
    """``V1``, ``V1 and V2``, ``V1, V2 and V3``."""
    if len(items) < 2:
        return "".join(items)
    joined = QCoreApplication.translate("model", "{items} and {last}")
    return joined.format(items=", ".join(items[:-1]), last=items[-1])
