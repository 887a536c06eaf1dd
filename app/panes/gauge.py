"""Reading a wire's size as people write it: ``20 AWG`` or ``0.5 mm²``."""

from __future__ import annotations

import re
from typing import TypedDict

from core.errors import QuantityError
from core.sentences import sentence
from core.units import Dimension, parse

_AWG = re.compile(r"awg\s*(?P<first>-?\d{1,3})|(?P<last>-?\d{1,3})\s*awg", re.IGNORECASE)
_EXPECTED = sentence("a wire size is expected here, such as 20 AWG or 0.5 mm²")


class Size(TypedDict):
    """The two fields of a wire that say its size; at most one is set."""

    awg: int | None
    area_mm2: float | None


def parse_gauge(text: str) -> Size:
    """Read a wire size; an empty text is an ideal strap.

    Raises QuantityError where the text is neither a gauge nor an area, or a bare number that could be both.
    """
    plain = re.sub(r"[\s\u2009\u202f\u00a0]+", " ", text.replace("\u2212", "-")).strip()
    if not plain:
        return Size(awg=None, area_mm2=None)
    match = _AWG.fullmatch(plain)
    if match is not None:
        return Size(awg=int(match["first"] or match["last"]), area_mm2=None)
    if re.fullmatch(r"[\d.,]+", plain):
        raise QuantityError(
            sentence("'{text}' could be a gauge or an area; {expected}.", text=plain, expected=_EXPECTED)
        )
    try:
        return Size(awg=None, area_mm2=parse(plain, Dimension.MM2))
    except QuantityError as error:
        raise QuantityError(
            sentence("'{text}' is not understood; {expected}.", text=plain, expected=_EXPECTED)
        ) from error
