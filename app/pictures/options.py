"""What a picture shows and what it is drawn on, as one value that can be remembered."""

from __future__ import annotations

from typing import Literal

import msgspec

from core.assess import conditions_of
from core.results import Condition
from core.sheet import Mains

KINDS = (".svg", ".png", ".pdf")
WHOLE, SELECTED, VISIBLE = "whole", "selected", "visible"
AS_DRAWN = "drawing"
# millimetres, upright: ISO 216 and ANSI/ASME Y14.1
PAPERS: dict[str, tuple[float, float]] = {
    "A4": (210.0, 297.0),
    "A3": (297.0, 420.0),
    "Letter": (215.9, 279.4),
    "Legal": (215.9, 355.6),
}
CONDITIONS = {"nominal": "nominal", "low": "low mains", "high": "high mains", "cold": "cold"}


class PictureOptions(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """``values`` are figures, state marks and glow, ``lengths`` the gauges and lengths beside the wires.

    ``outlines`` draws the letters of an SVG file as shapes. ``paper`` is a name from ``PAPERS`` or ``drawing``,
    as large as the drawing; ``fit`` shrinks the drawing to one page, otherwise a unit is a millimetre and there
    are as many pages as it takes.
    """

    values: bool = True
    lengths: bool = True
    title_block: bool = False
    dark: bool = False
    outlines: bool = False
    part: Literal["whole", "selected", "visible"] = "whole"
    paper: Literal["drawing", "A4", "A3", "Letter", "Legal"] = "drawing"
    landscape: bool = True
    fit: bool = True

    @property
    def has_paper(self) -> bool:
        """Whether it goes onto paper of a given size."""
        return self.paper != AS_DRAWN


def options_text(options: PictureOptions) -> str:
    """Options as text to be remembered."""
    return msgspec.json.encode(options).decode()


def options_from(text: str | None) -> PictureOptions:
    """Remembered options; the usual ones where the text is none."""
    try:
        return msgspec.json.decode(text or "", type=PictureOptions)
    except msgspec.MsgspecError:
        return PictureOptions()


def condition_named(key: str, mains: Mains) -> Condition:
    """A condition by its key in ``CONDITIONS``; raises KeyError for another one."""
    name = CONDITIONS[key]
    return next(each for each in conditions_of(mains) if each.name == name)
