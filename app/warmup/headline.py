"""How a warm-up ends, in one line with the mark of its state."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from app.speech import spoken
from core.warmup.results import READY_SHARE, WarmupSummary
from core.warmup_report import remarks, verdict


def headline(summary: WarmupSummary, end_s: float) -> str:
    """Whether the amplifier starts, and what else is to be known about the run."""
    return " ".join([spoken(verdict(summary, end_s)), *map(spoken, remarks(summary))])


def state_of(summary: WarmupSummary) -> str:
    """The state that the mark shows: within, over, or under where it has only not got there yet."""
    if any(not one.starts for one in summary.supplies.values()):
        slow = all(one.starts or one.outcome == "slow" for one in summary.supplies.values())
        return "under" if slow else "over"
    return "ok"


def explained(summary: WarmupSummary) -> str:
    """What ready means, and which warm-up times are estimates."""
    translate = QCoreApplication.translate
    ready = translate(
        "Warmup", "Ready: the cathode has made {share} % of its rise from the room to its rated temperature."
    ).format(share=round(100 * READY_SHARE))
    guessed = [owner for owner, sections in summary.heaters.items() if any(one.estimated for one in sections)]
    if not guessed:
        return ready
    estimate = translate("Warmup", "The warm-up times of {ids} are estimates by class.")
    return f"{ready} {estimate.format(ids=', '.join(guessed))}"
