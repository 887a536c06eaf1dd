"""Names as people type them: one key for every way of writing a designation."""

from __future__ import annotations

import re
from functools import lru_cache

_IGNORED = re.compile(r"[^\w.]|_")


@lru_cache(maxsize=4096)
def key(name: str) -> str:
    """The form in which names are compared: capitals, without spaces, dashes, slashes or ``#``.

    The decimal point stays, so that ``2.5`` and ``25`` remain two names.
    """
    return _IGNORED.sub("", name).upper()
