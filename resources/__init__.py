"""Catalogue rows, sample sheets, fonts, icons: data only, and the functions that reach them.

The standard library's own way of reaching package data takes longer to import than the data take to read.
"""

import os

_FOLDER = os.path.dirname(__file__)  # noqa: PTH120 - pathlib would be loaded for this line alone


def read_bytes(folder: str, name: str) -> bytes:
    """The content of one bundled file. Raises FileNotFoundError for a name that is not bundled."""
    with open(os.path.join(_FOLDER, folder, name), "rb") as stream:  # noqa: PTH118, PTH123
        return stream.read()


def path(folder: str, name: str) -> str:
    """Where one bundled file lies, with forward slashes, for what wants a path rather than bytes."""
    return "/".join((_FOLDER.replace(os.sep, "/"), folder, name))


def names(folder: str) -> list[str]:
    """The names of the bundled files in a folder, in order."""
    return sorted(os.listdir(os.path.join(_FOLDER, folder)))  # noqa: PTH118, PTH208
