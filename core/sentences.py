"""Sentences of the model: a template with named values, so that a screen may show it in another language.

The text of a sentence in English is ``str(sentence)``. Templates are whole literals where ``sentence`` is called,
never put together: that is where the tool that gathers what is to be translated finds them.
"""

from __future__ import annotations

from typing import Any

import msgspec


class Sentence(msgspec.Struct, frozen=True, gc=False):
    """A sentence or a part of one; its values are texts that are the same everywhere, or sentences themselves."""

    template: str
    values: tuple[tuple[str, str | Sentence], ...] = ()

    def __str__(self) -> str:
        return self.template.format(**dict(self.values)) if self.values else self.template


Text = str | Sentence
"""A figure, a name or a text of the user's, which stands as it is, or words, which are translated."""


def sentence(template: str, **values: Any) -> Sentence:
    """Build a sentence; values that are no sentences are turned into text now."""
    return Sentence(
        template,
        tuple(
            [
                (key, value if type(value) is str or type(value) is Sentence else str(value))
                for key, value in values.items()
            ]
        ),
    )
