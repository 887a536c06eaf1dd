"""Places on a sheet, which has an end."""

from __future__ import annotations

from core.checks import FARTHEST
from core.errors import EditError
from core.sentences import Sentence, Text, sentence
from core.sheet import Wire

Point = tuple[float, float]
Box = tuple[float, float, float, float]


def on_sheet(at: Point, what: Text) -> Point:
    """The place itself; raises EditError for one beyond the sheet, naming ``what`` would lie there."""
    if max(abs(at[0]), abs(at[1])) > FARTHEST:
        raise EditError(
            sentence(
                "{what} would lie beyond the sheet: places go to ±{most}.", what=what, most=f"{FARTHEST:g}"
            )
        )
    return at


def corner_of(wire: Wire) -> Sentence:
    """What a corner that was set for a wire is called at the beginning of a sentence."""
    return sentence("A corner of {id}", id=wire.id)
