"""Getting at sheets and types: a file or a built-in sample by name, and the user's own catalogue."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from app.places import data_folder
from core.catalogue import Catalogue, load_builtin, load_user
from core.errors import HeaterloomError, Problem
from core.samples import sample_bytes, sample_names
from core.sentences import sentence
from core.sheet import Sheet
from core.storage import load

MAX_BYTES = 50_000_000


class SourceError(HeaterloomError):
    """A sheet that cannot be read at all; the message is a plain sentence with the remedy."""


@dataclass(frozen=True)
class Found:
    """A sheet and the file it came from; ``path`` is None for a built-in sample."""

    sheet: Sheet
    path: Path | None


def open_sheet(name: str) -> Found:
    """Read a file, or the built-in sample of that name where there is no such file.

    Raises
    ------
    SourceError
        When the file cannot be read.
    core.errors.SheetError
        When its content cannot be used.
    """
    path = Path(name)
    if not path.exists() and name in sample_names():
        return Found(load(sample_bytes(name), name), None)
    return Found(load(read_file(path), path.name), path)


def read_file(path: Path) -> bytes:
    """The bytes of a file, with a plain sentence where that fails."""
    try:
        if path.stat().st_size > MAX_BYTES:
            raise SourceError(
                sentence(
                    "{path} is larger than {most} MB, which no sheet is.",
                    path=path,
                    most=MAX_BYTES // 1_000_000,
                )
            )
        return path.read_bytes()
    except FileNotFoundError as error:
        samples = ", ".join(sample_names())
        raise SourceError(
            sentence(
                "There is no file {path}. The built-in sheets are: {samples}.", path=path, samples=samples
            )
        ) from error
    except IsADirectoryError as error:
        raise SourceError(
            sentence("{path} is a folder; the name of a sheet file is expected.", path=path)
        ) from error
    except PermissionError as error:
        raise SourceError(
            sentence("{path} may not be read: its permissions do not allow it.", path=path)
        ) from error
    except OSError as error:
        raise SourceError(
            sentence("{path} cannot be read: {why}.", path=path, why=error.strerror or error)
        ) from error


def load_catalogue(folder: Path | None = None) -> tuple[Catalogue, tuple[Problem, ...]]:
    """The built-in catalogue with the user's own types over it, and what is wrong with those."""
    types, problems = load_user(folder or data_folder())
    return load_builtin().with_types(types), problems
