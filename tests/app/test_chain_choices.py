"""What can be chosen in the chain builder: arrangement, supply, tie, wire, order, shunts."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from core.sheet import Chassis, DcSupply, Mains, MainsFeed, Sheet, Tube, Winding
from tests.app.chain_rig import (
    ALT,
    LEFT,
    K,
    amplifier,
    choose,
    click,
    click_radio,
    faults,
    key,
    open_chain,
    undo_names,
)


@pytest.fixture
def window(open_window):
    return open_window(amplifier())


def test_each_arrangement_by_mouse(window) -> None:
    pane = open_chain(window, "V1", "V2", "V3", "V4")
    words = [button.text() for button in pane.offers.buttons if button.isVisible()]
    assert words == [
        "Parallel chain at 6.30\u2009V",
        "Parallel chain at 12.6\u2009V",
        "Pairs in series on 12.6\u2009V",
        "Series string",
    ]
    assert "3.60" in pane.summary.text()
    click_radio(pane, 1)
    assert set(pane.plan.order) == {"V1", "V2"}
    assert any("V3 (EL34) is made for 6.30\u2009V" in text for _, text in pane.messages.lines)
    click_radio(pane, 2)
    assert pane.plan.order == ("V3", "V4", "V2", "V1") or set(pane.plan.order) == {"V1", "V2", "V3", "V4"}
    assert pane.plan.volts == 12.6
    click_radio(pane, 3)
    assert pane.plan.volts == pytest.approx(25.2)
    click(pane.build_button)
    assert undo_names(window) == ["Wire a string of 2"]


def test_each_arrangement_by_key(window) -> None:
    pane = open_chain(window, "V3", "V4")
    assert pane.offers.buttons[0].hasFocus()
    assert not pane.offers.buttons[1].isEnabled()
    assert pane.offers.reasons[1].text() == "None of them is made for 12.6\u2009V."
    key(K.Key_Down)
    assert pane.settled.offer.arrangement == "pairs"
    key(K.Key_Down)
    assert pane.settled.offer.arrangement == "series"
    key(K.Key_Return)
    assert undo_names(window) == ["Wire a string of 2"]
    assert faults(window) == {"not-heated"}


def test_supplies_of_the_sheet_are_offered_and_the_fitting_one_is_taken(open_window) -> None:
    window = open_window(
        amplifier(
            DcSupply(id="U1", set_v=12.6, limit_a=2.0, at=(0.0, 200.0)),
            Winding(id="T1", rated_v=6.3, rated_a=5.0, regulation_pct=5, centre_tap=True, at=(0.0, 0.0)),
            Chassis(id="E1", at=(80.0, 100.0)),
        )
    )
    pane = open_chain(window, "V1", "V2", "V3", "V4")
    assert pane.supply.combo.currentText().startswith("T1.a-b")
    assert pane.reference.combo.currentText() == "centre tap to the chassis"
    assert not pane.plan.parts, "it has everything it needs"
    click_radio(pane, 1)
    assert pane.supply.combo.currentText().startswith("U1.+--")
    choose(pane.supply, "T1.a-b")
    assert pane.messages.lines[0] == ("fault", "T1 gives 6.30\u2009V; this chain is for 12.6\u2009V.")
    assert not pane.build_button.isEnabled()
    assert window.scene.proposal.current is None
    key(K.Key_Return)
    assert undo_names(window) == []
    choose(pane.supply, "a new DC supply")
    choose(pane.reference, "nothing")
    key(K.Key_Return)
    assert undo_names(window) == ["Wire a chain of 2"]
    assert window.document.sheet.part_by_id["U2"].set_v == 12.6


def test_what_is_tied_already_has_no_tie_to_choose(window) -> None:
    open_chain(window, "V3")
    key(K.Key_Return)
    pane = open_chain(window, "V4")
    assert pane.supply.combo.currentText().startswith("T1.a-b")
    assert pane.reference.combo.currentText() == "tied already"
    assert not pane.reference.combo.isEnabled()
    choose(pane.supply, "a new winding")
    assert pane.reference.combo.isEnabled()
    assert pane.reference.combo.currentText() == "centre tap to the chassis"


def test_the_summary_tells_the_load_as_it_is_solved(window) -> None:
    pane = open_chain(window, "V3", "V4")
    supply = window.scene.proposal.current.assessment.points["nominal"].supplies["T1"]
    assert (
        pane.summary.text()
        == f"6.30\u2009V · 3.00\u2009A · T1 {supply.load_pct:.1f}\u2009% · 1.40\u2009m of wire"
    )


def test_the_tie_to_the_chassis_is_chosen(window) -> None:
    pane = open_chain(window, "V3")
    choose(pane.reference, "two equal resistors")
    assert [part.kind for part in pane.plan.parts].count("resistor") == 2
    choose(pane.supply, "a new DC supply")
    words = [pane.reference.combo.itemText(n) for n in range(pane.reference.combo.count())]
    assert words == ["one side to the chassis", "nothing"]


def test_the_wire_is_chosen_and_kept_for_the_next_chain(window) -> None:
    pane = open_chain(window, "V3")
    choose(pane.wire_size, "AWG 16")
    assert {wire.awg for wire in pane.plan.wires} == {16}
    choose(pane.wire_size, "by the current, AWG")
    assert {wire.awg for wire in pane.plan.wires} == {20}
    key(K.Key_Escape)
    pane = open_chain(window, "V4")
    assert {wire.awg for wire in pane.plan.wires} == {20}


def test_the_spare_length_is_typed_and_refused_in_place(window) -> None:
    pane = open_chain(window, "V3")
    editor = pane.allowance.editor
    before = pane.plan.length_m
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, "a lot")
    key(K.Key_Return)
    assert pane.allowance.is_refused
    assert "metres are expected" in pane.allowance.sentence.text()
    assert pane.plan.length_m == before
    assert undo_names(window) == [], "nothing is built with something else than what stands there"
    editor.selectAll()
    QTest.keyClicks(editor, "30 m")
    key(K.Key_Tab)
    assert "from 0 to 5" in pane.allowance.sentence.text()
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, "14 cm")
    key(K.Key_Tab)
    assert not pane.allowance.is_refused
    assert pane.plan.length_m == pytest.approx(before + 0.1 * sum(not w.is_strap for w in pane.plan.wires))


def test_the_order_is_moved_by_key_and_by_mouse(window) -> None:
    pane = open_chain(window, "V1", "V2", "V3", "V4")
    assert pane.list.ids() == ("V3", "V4", "V2", "V1")
    pane.list.setFocus()
    key(K.Key_Down)
    key(K.Key_Down, ALT)
    assert pane.list.ids() == ("V3", "V2", "V4", "V1")
    assert pane.plan.order == ("V3", "V2", "V4", "V1")
    assert pane.order.combo.currentText() == "my own order"
    first, last = (pane.list.visualItemRect(pane.list.item(row)).center() for row in (0, 3))
    viewport = pane.list.viewport()
    QTest.mousePress(viewport, LEFT, Qt.KeyboardModifier.NoModifier, first)
    for share in (0.5, 1.0):
        QTest.mouseMove(viewport, first + (last - first) * share)
    QTest.mouseRelease(viewport, LEFT, Qt.KeyboardModifier.NoModifier, last)
    assert pane.plan.order == ("V2", "V4", "V1", "V3")
    choose(pane.order, "by their numbers")
    assert pane.plan.order == ("V1", "V2", "V3", "V4")
    choose(pane.order, "the nearest first")
    assert pane.plan.order == ("V1", "V2", "V3", "V4")
    key(K.Key_Return)
    assert window.document.sheet.wires[0].end.startswith("V1.")


def test_a_socket_that_is_left_out_says_why(open_window) -> None:
    sheet = amplifier(
        Tube(id="V9", type="PL84", at=(0.0, 300.0)), Tube(id="V8", type="no such", at=(0.0, 500.0))
    )
    window = open_window(sheet)
    pane = open_chain(window, "V1", "V2", "V8", "V9")
    click_radio(pane, 0)
    texts = {pane.list.item(row).text() for row in range(pane.list.count())}
    assert "V9  PL84 – not wired" in texts
    assert "V8 – not wired" in texts
    row = pane.list.ids().index("V9")
    assert "made for 15.0" in pane.list.item(row).toolTip()


def test_wired_sockets_are_laid_anew_only_when_that_is_ticked(window) -> None:
    open_chain(window, "V3", "V4")
    key(K.Key_Return)
    wires = set(window.document.sheet.wire_by_id)
    pane = open_chain(window, "V2", "V3")
    assert not pane.replace.isChecked()
    assert pane.plan.order == ("V2",)
    click(pane.replace, QPoint(8, 8))
    assert pane.plan.order == ("V3", "V2")
    assert set(pane.plan.removed) < wires
    key(K.Key_Escape)
    pane = open_chain(window, "V3", "V4")
    assert pane.replace.isChecked(), "there is nothing else to do for them"
    key(K.Key_Return)
    assert undo_names(window) == ["Wire a chain of 2", "Wire a chain of 2"]
    assert not wires & {wire.id for wire in window.document.sheet.wires if not wire.start.startswith("T1.ct")}


def test_shunts_are_for_unequal_heaters_in_series(open_window) -> None:
    parts = (Tube(id="V1", type="EL84", at=(0, 0)), Tube(id="V2", type="6V6GT", at=(200, 0)))
    window = open_window(Sheet(parts=parts, mains=Mains(low_pct=-3, high_pct=3)))
    pane = open_chain(window, "V1", "V2")
    assert not pane.shunts.isEnabled()
    assert pane.offers.reasons[3].text().startswith("Only with a resistor across")
    click_radio(pane, 3)
    assert pane.shunts.isChecked()
    assert set(pane.plan.order) == {"V1", "V2"}
    assert any("shunt of 20.0" in text for _, text in pane.messages.lines)
    key(K.Key_Return)
    assert not faults(window)


def test_a_string_from_the_mains_warns(open_window) -> None:
    tubes = tuple(Tube(id=f"V{n}", type="50L6GT", at=(200.0 * n, 0.0)) for n in (1, 2))
    sheet = Sheet(parts=(MainsFeed(id="M1"), *tubes), mains=Mains(nominal_v=117, low_pct=-5, high_pct=5))
    window = open_window(sheet)
    pane = open_chain(window, "V1", "V2")
    assert pane.settled.offer.arrangement == "series"
    assert pane.supply.combo.currentText().startswith("M1.L-N")
    assert any("isolating transformer" in text for _, text in pane.messages.lines)
    assert pane.reference.combo.currentText() == "nothing"
