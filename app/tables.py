"""Tables for spreadsheets, written into files."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from app.files import write_atomically

if TYPE_CHECKING:
    from core.switch_on import SwitchOn


def write_warmup_csv(answer: SwitchOn, condition: str, target: Path) -> None:
    """Write one condition of a warm-up as comma-separated values, a row for each time.

    Raises
    ------
    app.files.WriteError
        When the file cannot be written.
    KeyError
        For a condition that was not computed.
    """
    from core.warmup_report import warmup_csv  # noqa: PLC0415 - numerics only where they are needed

    write_atomically(target, warmup_csv(answer, condition).encode())
