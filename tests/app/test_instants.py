"""The instant of the playhead on the drawing, in the tables and in the strip."""

from __future__ import annotations

import random
from dataclasses import dataclass

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas.looks import amps_text, volts_text
from app.canvas.telling import tooltip
from app.panes.words import unbroken
from app.pictures.dialog import PictureDialog
from app.pictures.title_block import title_block
from app.sources import open_sheet
from app.theme import DARK
from app.warmup.instants import Instants
from app.warmup.moments import after_switching_on
from app.warmup.playhead import Playhead
from app.window import MainWindow
from core import edits
from core.results import LOW
from core.samples import sample_names
from core.warmup.results import Event
from tests.app.made_up_run import MadeUpRun, made_up_run

EVENTS = (Event(0.05, "T1", "cuts out"), Event(1.05, "T1", "tries again"))


@dataclass
class Desk:
    """A window with a run of its sheet."""

    window: MainWindow
    playhead: Playhead
    instants: Instants
    run: MadeUpRun

    def values(self, part_id: str) -> str:
        return self.window.scene.part_items[part_id].look.values

    def rows(self) -> list[list[str]]:
        table = self.window.side.tables.views[0]
        return [[cell.text for cell in row.cells] for row in table.rows.rows]


@pytest.fixture
def desk(open_window) -> Desk:
    window = open_window(open_sheet(sample_names()[0]).sheet)
    document = window.document
    run = made_up_run(document.sheet, document.catalogue, EVENTS)
    playhead = Playhead(window)
    instants = Instants(document, window.viewpoint, playhead, window)
    instants.show_run(run)
    return Desk(window, playhead, instants, run)


def test_the_playhead_puts_its_instant_everywhere(desk) -> None:
    steady, rows = desk.values("V2"), desk.rows()
    desk.playhead.set(3.0)
    assert desk.values("V2") != steady
    assert desk.rows() != rows
    assert desk.window.strip.note.label.text() == after_switching_on(3.0)
    assert desk.window.strip.note.isVisible()
    assert not any(button.isChecked() for button in desk.window.strip.switch.buttons)
    heater = desk.run.at(3.0).heaters["V2"][0]
    look = desk.window.scene.part_items["V2"].look
    assert look.kelvin == {heater.pins: pytest.approx(heater.heater_k)}
    assert "warming up" in look.remark


def test_leaving_brings_everything_back(desk) -> None:
    steady, rows = desk.values("V2"), desk.rows()
    desk.playhead.set(3.0)
    QTest.mouseClick(desk.window.strip.note.leave_button, Qt.MouseButton.LeftButton)
    assert desk.playhead.t_s is None
    assert (desk.values("V2"), desk.rows()) == (steady, rows)
    assert not desk.window.strip.note.isVisible()
    assert desk.window.strip.switch.buttons[1].isChecked()


def test_each_instant_is_looked_at_once_and_nothing_is_solved(desk, monkeypatch) -> None:
    asked: list[str] = []
    monkeypatch.setattr(desk.window.solver, "ask", lambda asker, *_: asked.append(asker))
    for t_s in (0.0, 0.5, 7.0, None):
        desk.playhead.set(t_s)
        QApplication.processEvents()
    assert desk.run.asked == [0.0, 0.5, 7.0]
    assert asked == []


def test_an_edit_leaves_the_instant(desk) -> None:
    desk.playhead.set(3.0)
    desk.window.document.apply("Pull V2", edits.set_part("V2", pulled=True))
    assert desk.playhead.t_s is None
    assert desk.window.viewpoint.instant is None
    assert desk.values("V2") == "pulled"
    desk.playhead.set(4.0)
    assert desk.playhead.t_s is None, "the run is of another sheet"
    desk.window.document.undo_stack.undo()
    desk.playhead.set(4.0)
    assert desk.window.viewpoint.instant is not None, "the run is of this sheet again"


def test_another_sheet_leaves_the_instant(desk) -> None:
    desk.playhead.set(3.0)
    desk.window.document.open(open_sheet(sample_names()[1]).sheet)
    assert desk.window.viewpoint.instant is None
    assert desk.playhead.t_s is None


def test_mains_and_hot_or_cold_leave_the_instant(desk) -> None:
    window = desk.window
    for leave in (
        lambda: QTest.mouseClick(window.strip.mains.buttons[1], Qt.MouseButton.LeftButton),
        lambda: QTest.mouseClick(window.strip.switch.buttons[1], Qt.MouseButton.LeftButton),
        lambda: QTest.keyClick(window.strip.mains.slider, Qt.Key.Key_Right),
    ):
        desk.playhead.set(3.0)
        leave()
        assert window.viewpoint.instant is None
        assert desk.playhead.t_s is None


def test_escape_on_the_drawing_first_lets_the_selection_go(desk) -> None:
    window = desk.window
    desk.playhead.set(3.0)
    window.selection.set(["V2"])
    window.view.setFocus()
    QTest.keyClick(window.view, Qt.Key.Key_Escape)
    assert not window.selection.ids
    assert desk.playhead.t_s == 3.0
    QTest.keyClick(window.view, Qt.Key.Key_Escape)
    assert desk.playhead.t_s is None


def test_the_strip_shows_the_mains_of_the_run(desk) -> None:
    document = desk.window.document
    desk.instants.show_run(made_up_run(document.sheet, document.catalogue, name=LOW))
    desk.playhead.set(3.0)
    slider = desk.window.strip.mains.slider
    assert slider.volts == pytest.approx(document.sheet.mains.low_v)
    desk.instants.leave()
    assert slider.volts == document.sheet.mains.nominal_v


def test_another_run_is_shown_at_the_same_instant(desk) -> None:
    document = desk.window.document
    desk.playhead.set(30.0)
    other = made_up_run(document.sheet, document.catalogue)
    other.end_s = 20.0
    desk.instants.show_run(other)
    assert desk.playhead.t_s == 20.0
    assert other.asked == [20.0]
    desk.instants.show_run(None)
    assert desk.playhead.t_s is None


def test_a_supply_says_that_it_cut_out(desk) -> None:
    desk.playhead.set(0.5)
    look = desk.window.scene.part_items["T1"].look
    assert look.state == "over"
    assert look.values.endswith("cut out")
    desk.playhead.set(1.05)
    assert not desk.values("T1").endswith("cut out")


def test_what_is_considered_has_no_figures_at_an_instant(desk) -> None:
    scene = desk.window.scene
    desk.playhead.set(3.0)
    scene.proposal.consider("Pull V2", edits.set_part("V2", pulled=True))
    assert scene.proposal.current is not None
    assert not scene.ghosts.part_ids
    desk.instants.leave()
    assert "V2" in scene.ghosts.part_ids


def test_the_properties_show_the_figures_of_the_instant(desk) -> None:
    window = desk.window
    window.selection.set(["V2"])
    pane = window.side.properties
    assert pane.figures is None
    desk.playhead.set(3.0)
    heater = desk.run.at(3.0).heaters["V2"][0]
    assert pane.figures is not None
    assert pane.figures.isVisible()
    assert pane.figures.title.text() == after_switching_on(3.0)
    said = pane.figures.body.text()
    assert unbroken(volts_text(heater.v)) in said
    assert unbroken(amps_text(heater.a)) in said
    assert "warming up" in said
    desk.playhead.set(0.0)
    assert "still cold" in pane.figures.body.text()
    desk.instants.leave()
    assert not pane.figures.isVisible()


def test_the_properties_tell_each_kind_of_part(desk) -> None:
    window, pane = desk.window, desk.window.side.properties
    desk.playhead.set(0.5)
    sheet = window.document.sheet
    expected = {"T1": "cut out", "V4": "4-9:", sheet.wires[0].id: "A"}
    for subject, words in expected.items():
        window.selection.set([subject])
        assert words in pane.figures.body.text()
        assert pane.figures.isVisible()
    for nothing in ([], ["E1"], ["V1", "V2"]):
        window.selection.set(nothing)
        assert not pane.figures.isVisible()


def test_another_look_reaches_what_tells_of_the_instant(desk) -> None:
    window = desk.window
    window.selection.set(["V2"])
    desk.playhead.set(3.0)
    window.set_theme_name("dark")
    assert DARK.accent_text in window.side.properties.figures.title.styleSheet()
    assert DARK.accent_text in window.strip.note.label.styleSheet()


def test_a_tooltip_tells_the_instant(desk) -> None:
    desk.playhead.set(3.0)
    scene = desk.window.scene
    said = tooltip(scene, "V2", None)
    assert "warming" in said
    assert "cathode" in said
    wire = desk.window.document.sheet.wires[0]
    branch = desk.run.at(3.0).branches[wire.id]
    assert amps_text(branch.a) in tooltip(scene, wire.id, None)


def test_a_picture_of_the_instant(desk) -> None:
    desk.playhead.set(3.0)
    dialog = PictureDialog(desk.window, printing=False)
    assert dialog.picture is not None
    drawn = dialog.picture.scene.part_items["V2"].look
    assert drawn.values == desk.values("V2")
    assert drawn.kelvin == desk.window.scene.part_items["V2"].look.kelvin
    assert after_switching_on(3.0) in dialog.condition.currentText()
    desk.playhead.set(9.0)
    dialog.refresh()
    assert dialog.picture.scene.part_items["V2"].look.values == drawn.values, "the one that was on show"
    dialog.condition.setCurrentIndex(dialog.condition.findData("nominal"))
    dialog.refresh()
    desk.instants.leave()
    assert dialog.picture.scene.part_items["V2"].look.values == desk.values("V2")
    dialog.close()


def test_the_title_block_names_the_instant(desk) -> None:
    desk.playhead.set(3.0)
    viewpoint = desk.window.viewpoint
    shown = title_block(desk.window.document.sheet, viewpoint.condition, viewpoint.instant).shown
    assert shown.startswith(after_switching_on(3.0))
    assert "230" in shown


@pytest.mark.parametrize("seed", range(4))
def test_whatever_is_done_drawing_and_playhead_agree(desk, seed: int) -> None:
    """Instants, edits, undo, selections, mains, hot and cold in any order: no figure is ever of something else."""
    chance, window = random.Random(seed), desk.window
    document, viewpoint, strip = window.document, window.viewpoint, window.strip
    actions = (
        lambda: desk.playhead.set(round(chance.uniform(0.0, 60.0), 1)),
        lambda: desk.playhead.set(None),
        lambda: document.apply("Pull V2", edits.set_part("V2", pulled=chance.random() < 0.5)),
        document.undo_stack.undo,
        document.undo_stack.redo,
        lambda: window.selection.set([chance.choice(["V1", "V2", "T1"])]),
        lambda: viewpoint.set_mains(chance.choice([215.0, 230.0, 245.0])),
        lambda: viewpoint.set_cold(chance.random() < 0.5),
        lambda: window.scene.proposal.consider("Pull V3", edits.set_part("V3", pulled=True)),
        window.scene.proposal.withdraw,
        lambda: QTest.keyClick(window.view, Qt.Key.Key_Escape),
    )
    for _ in range(60):
        chance.choice(actions)()
        QApplication.processEvents()
        instant = viewpoint.instant
        assert (instant is None) == (desk.playhead.t_s is None)
        assert instant is None or instant.sheet is document.sheet
        point = viewpoint.point(document.assessment)
        assert point is not None
        for owner, heaters in point.heaters.items():
            look = window.scene.part_items[owner].look
            assert look.kelvin == {heater.pins: heater.heater_k for heater in heaters}
        assert strip.mains.slider.volts == pytest.approx(viewpoint.mains_v)
