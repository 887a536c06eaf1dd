"""Moments of a warm-up in words: a time, and what switched then."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from core.units import THIN_SPACE, format_number

if TYPE_CHECKING:
    from core.warmup.results import Event, What


def _tr(text: str) -> str:
    return QCoreApplication.translate("warm-up", text)


def seconds_text(t_s: float) -> str:
    """Seconds for the screen: ``0.05 s`` below one, ``12.4 s`` below a hundred, ``240 s``."""
    decimals = 2 if t_s < 0.995 else 1 if t_s < 99.95 else 0
    return f"{format_number(t_s, decimals)}{THIN_SPACE}s"


def after_switching_on(t_s: float) -> str:
    """An instant: ``12.4 s after switch-on``."""
    return _tr("{time} after switch-on").format(time=seconds_text(t_s))


def what_text(event: Event) -> str:
    """What happened: ``U1 cuts out``, ``the mains goes off``."""
    return _sentences()[event.what].format(part=event.part)


def event_text(event: Event) -> str:
    """When and what: ``0.05 s: U1 cuts out``."""
    return _tr("{time}: {what}").format(time=seconds_text(event.t_s), what=what_text(event))


def _sentences() -> dict[What, str]:
    return {
        "mains off": _tr("the mains goes off"),
        "mains on": _tr("the mains comes on"),
        "at its limit": _tr("{part} is at its limit"),
        "regulates": _tr("{part} regulates"),
        "cuts out": _tr("{part} cuts out"),
        "tries again": _tr("{part} tries again"),
        "latches off": _tr("{part} latches off"),
        "pulls in": _tr("{part} pulls in"),
        "closes": _tr("the contact of {part} closes"),
        "drops out": _tr("{part} drops out"),
        "releases": _tr("the contact of {part} goes back"),
        "stops here": _tr("the run stops here"),
    }


def done_by(events: Iterable[Event], t_s: float) -> Mapping[str, What]:
    """What each part did last up to an instant, that instant included; events come in order of time."""
    done: dict[str, What] = {}
    for event in events:
        if event.t_s > t_s:
            break
        done[event.part] = event.what
    return done
