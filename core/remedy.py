"""Remedies as data: what would be done to a sheet to mend a finding, step by step.

The steps speak of ids, terminals and figures only; :mod:`core.mending` carries them out.
"""

from __future__ import annotations

import msgspec

from core.sentences import Sentence

Value = float | bool | str | None


class _Step(msgspec.Struct, frozen=True, tag=True, gc=False):
    pass


class SetFields(_Step, frozen=True, gc=False):
    """Set fields of a part or a wire."""

    id: str
    fields: tuple[tuple[str, Value], ...]


class TakeOut(_Step, frozen=True, gc=False):
    """Remove parts and wires; wires on a removed part go with it."""

    ids: tuple[str, ...]


class MoveEnds(_Step, frozen=True, gc=False):
    """Move ends of wires, all at once: wire, the terminal it ends on, the terminal it is to end on.

    A wire whose two ends would meet is taken out.
    """

    moves: tuple[tuple[str, str, str], ...]


class Join(_Step, frozen=True, gc=False):
    """Add a wire between two terminals, of the size of those that are there."""

    start: str
    end: str


class InSeries(_Step, frozen=True, gc=False):
    """Put a part of two terminals between a terminal and the wires that end on it.

    ``id`` is that of the new part, which must be free then; a fresh one where it is empty. The part's first terminal
    is towards the terminal that is named, its second towards the wires.
    """

    terminal: str
    wires: tuple[str, ...]
    kind: str
    fields: tuple[tuple[str, Value], ...]
    id: str = ""


class Bypass(_Step, frozen=True, gc=False):
    """Fit a relay whose contact joins the ends of a part once it pulls in, its coil across two terminals.

    ``part`` has two terminals. ``fields`` are those of the relay.
    """

    part: str
    coil: tuple[str, str]
    fields: tuple[tuple[str, Value], ...]


class Across(_Step, frozen=True, gc=False):
    """Put a resistor across two terminals, or between a terminal and the chassis where there is no other."""

    one: str
    other: str
    ohm: float
    rated_w: float


class TieToChassis(_Step, frozen=True, gc=False):
    """Wire a terminal to the chassis."""

    terminal: str


class Lift(_Step, frozen=True, gc=False):
    """Let wires that end on the chassis end on a DC lift of so many volts above it."""

    wires: tuple[str, ...]
    volts: float


class OwnWinding(_Step, frozen=True, gc=False):
    """Take all wires off two terminals and feed them from a new winding."""

    terminals: tuple[str, str]
    rated_v: float
    rated_a: float


Step = SetFields | TakeOut | MoveEnds | Join | InSeries | Bypass | Across | TieToChassis | Lift | OwnWinding


class Remedy(msgspec.Struct, frozen=True, gc=False):
    """One thing that would mend a finding: its name, short enough for a button, and its steps in order."""

    title: Sentence
    steps: tuple[Step, ...]
