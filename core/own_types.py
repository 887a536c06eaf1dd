"""A user's own tube types travel in the sheets that use them."""

from __future__ import annotations

import msgspec

from core.catalogue import Catalogue
from core.catalogue.types import TubeType
from core.sheet import Sheet, Tube


def with_own_types(sheet: Sheet, catalogue: Catalogue, builtin: Catalogue) -> Sheet:
    """The sheet together with those types it uses that the built-in catalogue does not have, or has otherwise.

    ``catalogue`` is the one in force, with the user's and the sheet's own types laid over ``builtin``.
    """
    used: dict[str, TubeType] = {}
    for part in sheet.parts:
        if isinstance(part, Tube):
            found = catalogue.tube(part.type)
            if found is not None and found != builtin.tube(part.type):
                used[found.designation] = found
    carried = {own.designation: own for own in sheet.types}
    types = tuple({**carried, **used}.values())
    return sheet if types == sheet.types else msgspec.structs.replace(sheet, types=types)
