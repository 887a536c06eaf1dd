"""What a window remembers from one session to the next, beside its theme and its files."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.canvas.operations import Gauge
from app.panes.gauge import parse_gauge
from app.panes.own_columns import columns_text, restore_columns
from core.checks import find_problems
from core.errors import QuantityError
from core.sheet import Battery, Sheet, Wire

if TYPE_CHECKING:
    from app.settings import Settings
    from app.window import MainWindow


def recall(window: MainWindow) -> None:
    """Give a window what it had when it was closed; what is broken stays as it usually is."""
    settings = window.settings
    window.view.editor.gauge = recalled_gauge(settings) or window.view.editor.gauge
    restore_columns(window.side.tables.views_by_name, settings.text_of("columns"))


def remember(window: MainWindow) -> None:
    """Keep what a window is to have again."""
    settings = window.settings
    settings.keep_text("gauge", gauge_text(window.view.editor.gauge))
    settings.keep_text("columns", columns_text(window.side.tables.views_by_name))
    settings.keep_bytes("panes", window.ground.state())
    settings.keep_margins("room", window.ground.room)


def gauge_text(gauge: Gauge) -> str:
    """A gauge as it is typed: ``20 AWG``, ``0.5 mm²``."""
    return f"{gauge.awg} AWG" if gauge.awg is not None else f"{gauge.area_mm2} mm²"


def recalled_gauge(settings: Settings) -> Gauge | None:
    """The gauge of the last wire, or None where none that there is was kept."""
    try:
        size = parse_gauge(settings.text_of("gauge") or "")
    except QuantityError:
        return None
    ends = (Battery(id="A", emf_v=1.0), Battery(id="B", emf_v=1.0))
    wire = Wire(id="w", start="A.+", end="B.+", length_m=1.0, **size)
    if wire.is_strap or find_problems(Sheet(parts=ends, wires=(wire,))):
        return None
    return Gauge.of(wire)
