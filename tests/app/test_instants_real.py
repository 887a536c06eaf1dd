"""Instants of runs that are truly solved: what the drawing says of supplies, thermistor and relay as they switch."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication

from app.theme import LIGHT
from app.warmup.instants import Instants
from app.warmup.playback import Playback
from app.warmup.playhead import Playhead
from app.window import MainWindow
from core.sheet import DcSupply, Relay, Sheet, Thermistor, Tube, Wire
from core.warmup import Start, WarmupRun, warm_up


def wire(number: int, start: str, end: str) -> Wire:
    return Wire(id=f"w{number}", start=start, end=end)


def on_a_supply(overload: str, limit_a: float = 4.0) -> Sheet:
    """Four output tubes on a supply that by itself is large enough for them hot, not cold."""
    tubes = [Tube(id=f"V{n}", type="EL84", at=(200.0 * n, 0.0)) for n in range(1, 5)]
    wires = [wire(2 * n + i, f"P1.{s}", f"V{n}.{4 + i}") for n in range(1, 5) for i, s in enumerate("+-")]
    supply = DcSupply(id="P1", set_v=6.3, limit_a=limit_a, overload=overload, at=(-200.0, 0.0))
    return Sheet(parts=(supply, *tubes), wires=tuple(wires))


def soft_started() -> Sheet:
    """One tube behind a thermistor that a relay bypasses."""
    parts = (
        DcSupply(id="P1", set_v=6.3, limit_a=20.0, at=(-300.0, 0.0)),
        Thermistor(
            id="N1",
            r25_ohm=4.0,
            beta_k=2800,
            dissipation_w_per_k=0.02,
            tau_s=40.0,
            max_a=5.0,
            at=(-100.0, -100.0),
        ),
        Relay(id="K1", coil_v=6.0, coil_ohm=400.0, pull_in_v=4.5, drop_out_v=1.0, at=(100.0, -200.0)),
        Tube(id="V1", type="EL84", at=(200.0, 0.0)),
    )
    ends = (
        ("P1.+", "N1.1"),
        ("N1.2", "V1.4"),
        ("P1.-", "V1.5"),
        ("K1.c1", "V1.4"),
        ("K1.c2", "V1.5"),
        ("K1.com", "N1.1"),
        ("K1.no", "N1.2"),
    )
    return Sheet(parts=parts, wires=tuple(wire(n, *pair) for n, pair in enumerate(ends)))


class Desk:
    """A window on a sheet, with a run of it that is solved."""

    def __init__(self, window: MainWindow) -> None:
        self.window = window
        document = window.document
        mains = document.sheet.mains.nominal_v
        self.run: WarmupRun = warm_up(document.sheet, document.catalogue, Start(mains, seconds=30.0))
        self.playhead = Playhead(window)
        self.instants = Instants(document, window.viewpoint, self.playhead, window)
        self.instants.show_run(self.run)

    def look(self, part_id: str, t_s: float):
        self.playhead.set(t_s)
        QApplication.processEvents()
        return self.window.scene.part_items[part_id].look


@pytest.mark.parametrize(("overload", "word"), [("hiccup", "cut out"), ("latch-off", "latched")])
def test_a_supply_that_gives_up(open_window, overload: str, word: str) -> None:
    desk = Desk(open_window(on_a_supply(overload)))
    first = desk.run.summary.events[0]
    off = next(event.t_s for event in desk.run.summary.events if event.what in ("cuts out", "latches off"))
    before = desk.look("P1", off / 2)
    assert before.values.endswith("at limit"), first
    after = desk.look("P1", off)
    assert after.values.endswith(word)
    assert after.values.startswith("0.00")
    assert after.state == "over"
    assert "no volts" in desk.look("V1", off).remark


def test_a_supply_that_tries_again(open_window) -> None:
    desk = Desk(open_window(on_a_supply("hiccup")))
    again = next(event.t_s for event in desk.run.summary.events if event.what == "tries again")
    assert not desk.look("P1", again).values.startswith("0.00")


def test_from_cold_to_ready(open_window) -> None:
    desk = Desk(open_window(on_a_supply("constant-current", 40.0)))
    marks = [desk.look("V1", t_s).state for t_s in (0.0, 4.0, 30.0)]
    assert marks == ["cold", "none", "ok"]
    assert "ready" in desk.look("V1", 30.0).remark
    steady = desk.window.scene.part_items["V1"]
    at_the_end = steady.look
    desk.instants.leave()
    assert at_the_end.state == steady.look.state


def test_a_thermistor_warms_and_a_relay_pulls_in(open_window) -> None:
    desk = Desk(open_window(soft_started()))
    closes = next(event.t_s for event in desk.run.summary.events if event.what == "closes")
    first, later = desk.look("N1", 0.0), desk.look("N1", closes * 0.9)
    assert first.values.endswith("25\u2009°C")
    assert later.values != first.values
    before, after = desk.look("K1", closes * 0.9), desk.look("K1", closes)
    assert (before.pulled_in, before.remark) == (False, "released")
    assert (after.pulled_in, after.remark) == (True, "pulled in")


def test_playing_a_solved_run_from_event_to_event(open_window, qtbot) -> None:
    desk = Desk(open_window(on_a_supply("hiccup")))
    strip = Playback(desk.playhead, LIGHT)
    qtbot.addWidget(strip)
    strip.show_run(desk.run)
    reached = []
    for _ in desk.run.summary.events[:6]:
        strip.step_on()
        reached.append(desk.playhead.t_s)
        assert desk.window.viewpoint.instant is not None
    assert reached == sorted(set(reached))
    assert set(reached) <= {0.0, *(event.t_s for event in desk.run.summary.events)}
