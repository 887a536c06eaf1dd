"""The page of keys and gestures holds everything that can be pressed, and nothing twice in one place."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from app.actions import Entry, key_text
from app.help.key_table import Line, Section, all_sections, entry_lines, filtered, plain
from app.help.page import KeyPage, page_html
from app.theme import DARK, LIGHT
from app.window import MainWindow
from core.samples import sample_bytes
from core.storage import load

K = Qt.Key


def _actions(menu: QMenu) -> Iterator[QAction]:
    for action in menu.actions():
        inner = action.menu()
        if isinstance(inner, QMenu):
            yield from _actions(inner)
        else:
            yield action


def _menu_keys(window: MainWindow) -> list[QKeySequence]:
    return [key for menu in window.menus.all for action in _actions(menu) for key in action.shortcuts()]


def test_every_key_of_the_drawing_and_of_the_menus_stands_on_the_page(open_window) -> None:
    window = open_window()
    lines = [line for section in all_sections(window) for line in section.lines]
    pressed = {key for line in lines for key in line.pressed}
    does = {line.does for line in lines}
    entries = [entry for entry in window.view.entries.values() if entry.keys]
    assert len(entries) > 15
    for entry in entries:
        assert plain(entry.text) in does
        assert {key_text(key) for key in entry.keys} <= pressed
    keys = _menu_keys(window)
    assert len(keys) > 20
    for key in keys:
        assert key.toString(QKeySequence.SequenceFormat.NativeText) in pressed


SECOND_KEYS = {
    "add by slash": "add",
    "fit by letter": "fit",
    "zoom in by sign": "zoom in",
    "zoom out by sign": "zoom out",
    "actual size by digit": "actual size",
}
"""Entries that are another key for what the menus hold already."""

NO_MENU = {"menu": "opens the context menu, and has no place in another one"}


def test_everything_that_can_be_done_to_the_drawing_stands_in_the_menu_bar(open_window) -> None:
    window = open_window()
    entries = window.view.entries
    said = {plain(action.text().partition("\t")[0]) for menu in window.menus.all for action in _actions(menu)}
    missing = {name for name, entry in entries.items() if plain(entry.text) not in said}
    assert missing <= SECOND_KEYS.keys() | NO_MENU.keys()
    for second, first in SECOND_KEYS.items():
        assert first not in missing and entries[first].text.replace("&", "") == entries[second].text


def test_the_menu_offers_what_the_selection_allows_and_keeps_a_pair_whole(open_window) -> None:
    window = open_window(load(sample_bytes("rehearsal-amplifier")))
    entries = window.view.entries
    assert not entries["delete"].is_possible and not entries["properties"].is_possible
    twisted = [wire for wire in window.document.sheet.wires if wire.twist]
    pair = {wire.id for wire in twisted if wire.twist == twisted[0].twist}
    window.selection.set(pair)
    assert len(pair) == 2 and entries["delete"].is_possible and entries["properties"].is_possible
    entries["properties"].action()
    assert window.selection.ids == pair
    window.selection.set({part.id for part in window.document.sheet.parts[:2]})
    assert entries["delete"].is_possible and not entries["properties"].is_possible


def test_no_two_entries_share_a_key_where_both_are_heard(open_window) -> None:
    window = open_window()
    drawing = [key for entry in window.view.entries.values() if entry.heard for key in entry.keys]
    heard = Counter(QKeySequence(key).toString() for key in drawing)
    heard += Counter(key.toString() for key in _menu_keys(window))
    assert [key for key, count in heard.items() if count > 1] == []
    assert "" not in heard, "a key that Qt does not know"


def test_no_line_stands_twice(open_window) -> None:
    window = open_window()
    for section in all_sections(window):
        lines = Counter((line.pressed, line.does) for line in section.lines)
        assert [line for line, count in lines.items() if count > 1] == []


def test_undo_stands_by_its_name_whatever_was_done_last(open_window) -> None:
    window = open_window()
    before = all_sections(window)
    window.view.editor.add({"kind": "tube", "type": "ECC83"})
    assert all_sections(window) == before
    window.document.undo_stack.undo()
    assert all_sections(window) == before


def test_entries_of_one_name_are_one_line() -> None:
    def nothing() -> None: ...

    entries = (
        Entry("&Fit the sheet", nothing, ("Ctrl+0",)),
        Entry("Fit the sheet\u2026", nothing, ("F",), "All of it.", heard=True),
        Entry("Save && close", nothing),
    )
    assert entry_lines(entries) == (Line((key_text("Ctrl+0"), "F"), "Fit the sheet", "All of it."),)
    assert plain("Save && &close\tX") == "Save & close"


def test_a_search_leaves_only_what_holds_every_word() -> None:
    sections = (
        Section("Wires", (Line(("W",), "next wire"), Line(("R",), "turn"))),
        Section("Others", (Line(("Del",), "delete", "parts and wires"), Line(("F",), "fit"))),
    )
    assert filtered(sections, "") == sections
    assert filtered(sections, "Delete WIRES") == (Section("Others", (sections[1].lines[0],)),)
    assert filtered(sections, "wire") == (sections[0], Section("Others", (sections[1].lines[0],)))
    assert filtered(sections, "nothing of it") == ()


def test_f1_opens_the_page_and_escape_closes_it(open_window, qtbot) -> None:
    window = open_window()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    QTest.keyClick(window.view, K.Key_F1)
    page = window.menus.key_page
    assert isinstance(page, KeyPage)
    assert page.isVisible()
    assert "Next area" in page.browser.toPlainText()
    QTest.keyClicks(page.search, "area previous")
    assert "Previous area" in page.browser.toPlainText()
    assert "Next area" not in page.browser.toPlainText()
    QTest.keyClicks(page.search, " nonsense")
    assert page.browser.toPlainText().strip() == "Nothing here holds these words."
    QTest.keyClick(page.search, K.Key_Escape)
    assert not page.isVisible()


def test_the_page_follows_the_theme_of_the_window(open_window) -> None:
    window = open_window()
    window.menus.help.actions()[0].trigger()
    page = window.menus.key_page
    assert page is not None
    for name, theme in (("dark", DARK), ("light", LIGHT)):
        window.set_theme_name(name)
        assert theme.ink in page.browser.toHtml()
    page.close()


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
def test_the_page_escapes_what_it_shows(theme) -> None:
    text = page_html((Section("<b>", (Line(("<",), "a & b", ">"),)),), theme)
    assert "&lt;b&gt;" in text
    assert "a &amp; b" in text


def test_the_page_is_printed_whole(open_window, tmp_path) -> None:
    window = open_window()
    page = KeyPage(all_sections(window), DARK, window)
    target = tmp_path / "keys.pdf"
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(target))
    page.print_to(printer)
    QApplication.processEvents()
    data = target.read_bytes()
    assert data.startswith(b"%PDF")
    assert data.count(b"/Type /Page\n") >= 2
