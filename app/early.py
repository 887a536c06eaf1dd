"""Solving the first sheet in a second process while this one is still loading Qt.

Loading numpy and solving take about as long as loading Qt, and a machine has more than one core. The second
process reads the same sheet, solves it and hands the answers over a pipe; they count only if its sheet equals
the one on the screen. Whatever goes wrong there, the sheet is solved here as any other.
"""

from __future__ import annotations

import os
import pickle
import subprocess
import sys
from contextlib import suppress

from core.errors import HeaterloomError

_CODE = "import sys; from app.early import serve; serve(sys.argv[1])"
PATIENCE_S = 5.0


class EarlyAnswer:
    """A second process at work on a sheet by name."""

    def __init__(self, name: str) -> None:
        self._process: subprocess.Popen[bytes] | None = None
        if getattr(sys, "frozen", False):
            return  # a bundled program has no interpreter of its own to start
        with suppress(OSError):
            self._process = subprocess.Popen(
                [sys.executable, "-c", _CODE, name],
                env={**os.environ, "PYTHONPATH": os.pathsep.join(path or os.curdir for path in sys.path)},
                stdin=subprocess.DEVNULL,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
            )

    def take(self) -> object:
        """The answers, an :class:`core.results.Assessment`, or None. Ends the second process."""
        process, self._process = self._process, None
        if process is None:
            return None
        try:
            data = process.communicate(timeout=PATIENCE_S)[0]
            # only our own code, started by us above, has written into this pipe
            return pickle.loads(data) if process.returncode == 0 else None
        except (subprocess.TimeoutExpired, pickle.UnpicklingError, EOFError, AttributeError, ImportError):
            return None
        finally:
            process.kill()
            process.wait()


def serve(name: str) -> None:
    """The second process: solve a sheet and write the answers to standard output."""
    from app.sources import load_catalogue, open_sheet  # noqa: PLC0415
    from core.assess import assess  # noqa: PLC0415

    try:
        sheet = open_sheet(name).sheet
        catalogue, _ = load_catalogue()
        answer = assess(sheet, catalogue.with_types(sheet.types))
    except HeaterloomError:
        sys.exit(1)
    sys.stdout.buffer.write(pickle.dumps(answer, pickle.HIGHEST_PROTOCOL))
    sys.stdout.buffer.flush()
    os._exit(0)
