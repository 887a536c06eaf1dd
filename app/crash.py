"""When something unexpected happens: write it down, keep the work, tell the user once."""

from __future__ import annotations

import contextlib
import sys
import traceback
from datetime import UTC, datetime
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QCoreApplication, QObject, Qt, Signal

from app.places import state_folder

MAX_LOG_BYTES = 1_000_000


class Watch(QObject):
    """Takes exceptions that nothing else took.

    ``happened`` carries one sentence, once for each distinct fault; it is delivered in the window's thread.
    """

    happened = Signal(str)
    _caught = Signal(str)

    def __init__(self, folder: Path | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._seen: set[str] = set()
        self._folder = folder or state_folder()
        self._caught.connect(self.happened, Qt.ConnectionType.QueuedConnection)

    def install(self) -> None:
        """Take over the interpreter's hook for uncaught exceptions."""
        sys.excepthook = self.take

    def take(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        """Log an exception; say so once for each place it comes from."""
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        text = "".join(traceback.format_exception(kind, error, trace))
        written = write_log(self._folder, text)
        print(text, file=sys.stderr)
        frames = traceback.extract_tb(trace)
        place = f"{kind.__name__} {frames[-1].filename}:{frames[-1].lineno}" if frames else kind.__name__
        if place not in self._seen:
            self._seen.add(place)
            self._caught.emit(_sentence(kind, error, written))


def write_log(folder: Path, text: str) -> Path | None:
    """Append to the log in ``folder``, which is begun anew when it grows large; None where that fails."""
    target = folder / "heaterloom.log"
    with contextlib.suppress(OSError):
        folder.mkdir(parents=True, exist_ok=True)
        if target.exists() and target.stat().st_size > MAX_LOG_BYTES:
            target.replace(folder / "heaterloom.log.1")
        with target.open("a", encoding="utf-8") as stream:
            stream.write(f"{datetime.now(UTC).isoformat(timespec='seconds')}\n{text}\n")
        return target
    return None


def _sentence(kind: type[BaseException], error: BaseException, log_file: Path | None) -> str:
    what = str(error).strip().splitlines()[0] if str(error).strip() else kind.__name__
    said = QCoreApplication.translate(
        "crash", "Something unexpected happened: {what}. Your sheet is as it was before."
    ).format(what=what)
    if log_file is None:
        return said
    return said + " " + QCoreApplication.translate("crash", "Details are in {file}.").format(file=log_file)
