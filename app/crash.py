"""When something unexpected happens: write it down, keep the work, tell the user once."""

from __future__ import annotations

import contextlib
import logging
import sys
import traceback
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject, Qt, Signal

from app.places import state_folder

log = logging.getLogger("heaterloom")


class Watch(QObject):
    """Takes exceptions that nothing else took.

    ``happened`` carries one sentence, once for each distinct fault; it is delivered in the window's thread.
    """

    happened = Signal(str)
    _caught = Signal(str)

    def __init__(self, folder: Path | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._seen: set[str] = set()
        self.log_file = self._start_log(folder or state_folder())
        self._caught.connect(self.happened, Qt.ConnectionType.QueuedConnection)

    @staticmethod
    def _start_log(folder: Path) -> Path | None:
        """The log file, or None where the folder does not allow one."""
        with contextlib.suppress(OSError):
            folder.mkdir(parents=True, exist_ok=True)
            target = folder / "heaterloom.log"
            handler = RotatingFileHandler(
                target, maxBytes=1_000_000, backupCount=2, encoding="utf-8", delay=True
            )
            handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
            for old in list(log.handlers):
                log.removeHandler(old)
                old.close()
            log.addHandler(handler)
            return target
        return None

    def install(self) -> None:
        """Take over the interpreter's hook for uncaught exceptions."""
        sys.excepthook = self.take

    def take(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        """Log an exception; say so once for each place it comes from."""
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        text = "".join(traceback.format_exception(kind, error, trace))
        with contextlib.suppress(OSError):
            log.error("%s", text)
        print(text, file=sys.stderr)
        frames = traceback.extract_tb(trace)
        place = f"{kind.__name__} {frames[-1].filename}:{frames[-1].lineno}" if frames else kind.__name__
        if place not in self._seen:
            self._seen.add(place)
            self._caught.emit(self._sentence(kind, error))

    def _sentence(self, kind: type[BaseException], error: BaseException) -> str:
        where = f" Details are in {self.log_file}." if self.log_file else ""
        what = str(error).strip().splitlines()[0] if str(error).strip() else kind.__name__
        return f"Something unexpected happened: {what}. Your sheet is as it was before.{where}"
