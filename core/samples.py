"""The sheets that come with the program."""

from __future__ import annotations

from functools import cache

from core.storage import load
from resources import names, read_bytes

_FOLDER = "samples"
_SUFFIX = ".heaterloom"
_ORDER = (
    "rehearsal-amplifier",
    "twelve-volt-bench",
    "mains-string-radio",
    "five-mistakes",
    "cold-start",
    "cold-start-thermistor",
    "cold-start-relay",
)


@cache
def sample_names() -> tuple[str, ...]:
    """Names of the built-in sheets; the first is the one to begin with."""
    found = {one.removesuffix(_SUFFIX) for one in names(_FOLDER) if one.endswith(_SUFFIX)}
    known = [name for name in _ORDER if name in found]
    return (*known, *sorted(found.difference(_ORDER)))


def sample_bytes(name: str) -> bytes:
    """The file of a built-in sheet. Raises KeyError for a name that is none."""
    if name not in sample_names():
        raise KeyError(name)
    return read_bytes(_FOLDER, name + _SUFFIX)


@cache
def sample_title(name: str) -> str:
    """The title of a built-in sheet. Raises KeyError for a name that is none."""
    return load(sample_bytes(name), name).title
