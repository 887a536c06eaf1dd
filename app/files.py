"""Writing files so that there is always the old file or the new one, never another."""

from __future__ import annotations

import contextlib
import os
import tempfile
from collections.abc import Sequence
from pathlib import Path

from core.errors import HeaterloomError
from core.sentences import sentence


class WriteError(HeaterloomError):
    """A file that could not be written; the message is a plain sentence with the remedy."""


def with_ending(path: Path, endings: Sequence[str]) -> Path:
    """The path, its name ending in one of these; the first is added where none is there.

    A dot in a name begins no ending of its own: "amp 6.3 V" stays whole.
    """
    if path.suffix.lower() in endings:
        return path
    return path.with_name(path.name + endings[0])


def write_atomically(path: Path, data: bytes) -> None:
    """Write ``data`` to ``path``: into a temporary file beside it, flushed, then put in its place.

    A symbolic link stays one, the mode of an existing file is kept, and the bytes are read back before the
    file counts as written.

    Raises
    ------
    WriteError
        When the folder or the disk does not allow it; the old file is then untouched.
    """
    target = path.resolve()
    try:
        _replace(target, data)
    except PermissionError as error:
        raise WriteError(
            sentence(
                "{folder} does not allow writing. Save under another name or folder.", folder=target.parent
            )
        ) from error
    except FileNotFoundError as error:
        raise WriteError(
            sentence("The folder {folder} does not exist. Save into another folder.", folder=target.parent)
        ) from error
    except OSError as error:
        reason = error.strerror or (error.args[0] if error.args else "")
        raise WriteError(
            sentence(
                "{name} could not be written: {why}. The old file is untouched.", name=target.name, why=reason
            )
        ) from error


def _replace(target: Path, data: bytes) -> None:
    mode = target.stat().st_mode & 0o7777 if target.exists() else 0o666 & ~_umask()
    if target.exists() and not os.access(target, os.W_OK):
        raise OSError(sentence("{name} is write-protected", name=target.name))
    handle, name = tempfile.mkstemp(prefix=f".{target.name}.tmp-", dir=target.parent)
    temporary = Path(name)
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.write(data)
            stream.flush()
            os.fsync(stream.fileno())
        temporary.chmod(mode)
        if temporary.read_bytes() != data:
            raise OSError(sentence("what was written does not read back the same"))
        temporary.replace(target)
    except BaseException:
        with contextlib.suppress(OSError):
            temporary.unlink()
        raise
    _flush_folder(target.parent)


def _umask() -> int:
    current = os.umask(0)
    os.umask(current)
    return current


def _flush_folder(folder: Path) -> None:
    """Make the renaming itself durable where the system can."""
    if not hasattr(os, "O_DIRECTORY"):
        return
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_DIRECTORY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
