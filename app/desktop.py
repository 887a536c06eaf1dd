"""The desktop program: the application object, its window, and plain sentences where it cannot start."""

from __future__ import annotations

import gc
import os
import sys
from typing import TYPE_CHECKING

# the model is loaded before the binding is: what is imported afterwards has its source searched by the binding
import core.catalogue.wire
import core.edits.pairs
import core.edits.splicing
import core.overloads
import core.own_types
import core.results
import core.units  # noqa: F401
from app.early import EarlyAnswer
from app.screen import need_libraries, need_screen
from core.errors import HeaterloomError
from core.samples import sample_names

if TYPE_CHECKING:
    from app.start import Opened

UNUSABLE = 2


def run(name: str | None) -> int:
    """Open the window on a sheet, or on the first built-in sample; returns the exit status."""
    try:
        opened = launch(name)
    except HeaterloomError as error:
        print(f"heaterloom: {error}", file=sys.stderr)
        return UNUSABLE
    return opened.application.exec()


def launch(name: str | None) -> Opened:
    """Open the window and return it with its application object; keep both.

    Raises
    ------
    core.errors.HeaterloomError
        When the sheet cannot be used, or there is no screen or library to show it with.
    """
    need_screen(os.environ, sys.platform)
    # nothing made while starting becomes garbage: the collector begins once the window is up
    gc.disable()
    early = EarlyAnswer(name or sample_names()[0])
    need_libraries(os.environ)
    from app.start import open_first  # noqa: PLC0415 - only once the libraries are known to be there

    opened = open_first(name, early)
    # what is there now stays: the collector need not walk it again
    gc.freeze()
    return opened
