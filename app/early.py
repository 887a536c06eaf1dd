"""Solving the first sheet in a second process while this one is still loading Qt.

Loading numpy and solving take about as long as loading Qt, and a machine has more than one core. The second
process reads the same sheet, solves it and hands the answers over a pipe; they count only if its sheet equals
the one on the screen. Whatever goes wrong there, the sheet is solved here as any other.
"""

from __future__ import annotations

import os
import sys

from core.errors import HeaterloomError

_CODE = "import sys; from app.early import serve; serve(sys.argv[1])"
PATIENCE_S = 5.0


class EarlyAnswer:
    """A second process at work on a sheet by name; none where the system has no quick way to start one."""

    def __init__(self, name: str) -> None:
        self._pid = 0
        # a bundled program has no interpreter of its own to start
        if getattr(sys, "frozen", False) or not hasattr(os, "posix_spawn"):
            return
        self._pipe, end = os.pipe()
        paths = os.pathsep.join(path or os.curdir for path in sys.path)
        nothing = os.open(os.devnull, os.O_RDWR)
        try:
            self._pid = os.posix_spawn(
                sys.executable,
                [sys.executable, "-c", _CODE, name],
                {**os.environ, "PYTHONPATH": paths},
                file_actions=[
                    (os.POSIX_SPAWN_DUP2, nothing, 0),
                    (os.POSIX_SPAWN_DUP2, end, 1),
                    (os.POSIX_SPAWN_DUP2, nothing, 2),
                ],
            )
        except OSError:
            os.close(self._pipe)
        finally:
            os.close(end)
            os.close(nothing)

    def take(self) -> object:
        """The answers, an :class:`core.results.Assessment`, or None. Ends the second process."""
        if not self._pid:
            return None
        import pickle  # noqa: PLC0415
        import signal  # noqa: PLC0415

        data = self._read()
        os.close(self._pipe)
        os.kill(self._pid, signal.SIGKILL)
        os.waitpid(self._pid, 0)
        self._pid = 0
        try:
            # only our own code, started by us above, has written into this pipe
            return pickle.loads(data)
        except (pickle.UnpicklingError, EOFError, AttributeError, ImportError):
            return None

    def _read(self) -> bytes:
        """Everything that comes through the pipe, for as long as patience lasts between two pieces."""
        import select  # noqa: PLC0415

        pieces = []
        while select.select([self._pipe], [], [], PATIENCE_S)[0]:
            piece = os.read(self._pipe, 1 << 20)
            if not piece:
                break
            pieces.append(piece)
        return b"".join(pieces)


def serve(name: str) -> None:
    """The second process: solve a sheet and write the answers to standard output."""
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    import pickle  # noqa: PLC0415

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
