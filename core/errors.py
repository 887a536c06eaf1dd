"""The errors of the model. Every one says what is wrong, where, and what was expected."""

from __future__ import annotations

from dataclasses import dataclass

from core.sentences import Sentence, Text, sentence


class HeaterloomError(Exception):
    """Base of all errors that the program explains to its user."""


@dataclass(frozen=True)
class Problem:
    """One thing wrong with an input, at a named place such as ``parts[3].rated_v``."""

    at: Text
    said: Text

    @property
    def place(self) -> str:
        """The place in English."""
        return str(self.at)

    @property
    def message(self) -> str:
        """What is wrong, in English."""
        return str(self.said)

    def __str__(self) -> str:
        return f"{self.at}: {self.said}" if self.at else self.message


class InputError(HeaterloomError):
    """An input that cannot be used; carries every problem found, not only the first."""

    def __init__(self, problems: tuple[Problem, ...]) -> None:
        super().__init__("\n".join(str(problem) for problem in problems))
        self.problems = problems


class SheetError(InputError):
    """A sheet file that cannot be read."""


class NewerVersionError(SheetError):
    """A sheet written by a newer version of the program."""


class CatalogueError(InputError):
    """A catalogue file with mistakes; places are ``file line 12, column 'value'``."""


class QuantityError(HeaterloomError):
    """A number with a unit that is not understood; the message says what was expected."""


class EditError(HeaterloomError):
    """An edit that cannot be carried out; the sheet stays as it was."""


class UnsolvableError(HeaterloomError):
    """A part of the circuit that has no unique solution; carries the ids of the parts to blame."""

    def __init__(self, reason: Sentence, ids: tuple[str, ...]) -> None:
        super().__init__(sentence("{reason} ({ids})", reason=reason, ids=", ".join(ids)))
        self.reason = reason
        self.ids = ids


class Cancelled(HeaterloomError):  # noqa: N818 - nothing went wrong
    """A long computation that was called off by whoever asked for it."""

    def __init__(self) -> None:
        super().__init__(sentence("Called off."))
