"""Text that came from outside, made fit to stand in a message."""

from __future__ import annotations

_LONGEST = 60


def shown(text: str) -> str:
    """The text, cut to 60 characters, with everything unprintable written as an escape."""
    short = text if len(text) <= _LONGEST else f"{text[:_LONGEST]}…"
    return short if short.isprintable() else ascii(short)[1:-1]
