"""No text is cut, nothing lies on something else, and nothing stays in English, in whatever language.

The stretched language makes every text 40 % longer and puts it in brackets.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QApplication, QLabel, QMenu, QMessageBox, QWidget

from app.canvas.telling import tooltip
from app.language import ENGLISH, LANGUAGES, speak
from app.pictures.dialog import PictureDialog
from app.sources import open_sheet
from app.warmup.instants import Instants
from app.warmup.playback import Playback
from app.warmup.playhead import Playhead
from app.window import MainWindow
from core.catalogue import load_builtin
from core.sheet import Sheet, Wire
from core.warmup.results import Event
from tests.app.clipping import WORD, clipped, overlapping, untranslated, words_of
from tests.app.languages import speak_file, stretched, stretched_language
from tests.app.made_up_run import made_up_run
from tests.app.symbol_parts import KINDS, REQUIRED

STRETCHED = "stretched"
SPOKEN = [STRETCHED, *(one for one in LANGUAGES if one != ENGLISH)]


@pytest.fixture(scope="module")
def stretched_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return stretched_language(tmp_path_factory.mktemp("languages"))


@pytest.fixture(params=SPOKEN)
def language(request: pytest.FixtureRequest, qapp: QApplication, stretched_file: Path) -> Iterator[str]:
    if request.param == STRETCHED:
        translator = speak_file(qapp, stretched_file)
        yield STRETCHED
        qapp.removeTranslator(translator)
    else:
        speak(qapp, request.param)
        yield request.param
        speak(qapp, ENGLISH)


def everything() -> Sheet:
    """A sheet with a part of every kind and a wire."""
    parts = tuple(
        struct(id=f"X{number}", at=(200.0 * (number % 6), 200.0 * (number // 6)), **REQUIRED.get(kind, {}))
        for number, (kind, struct) in enumerate(KINDS.items())
    )
    tube = next(part.id for part in parts if part.kind == "tube")
    return Sheet(title="X", parts=parts, wires=(Wire(id="w1", start=f"{tube}.4", end=f"{tube}.5"),))


class Looker:
    """Looks at widgets and keeps what is wrong with them."""

    def __init__(self, language: str, known: set[str]) -> None:
        self.language = language
        self.known = known
        self.wrong: dict[str, None] = {}

    def look(self, root: QWidget, place: str) -> None:
        for _ in range(3):
            QApplication.processEvents()
        found = [*clipped(root), *overlapping(root)]
        if self.language == STRETCHED:
            found += untranslated(words_of(root), self.known)
        self.wrong.update(dict.fromkeys(f"{place}: {one}" for one in found))

    def look_at_menus(self, window: QWidget) -> None:
        for menu in window.findChildren(QMenu):
            menu.aboutToShow.emit()
            texts = [action.text().partition("\t")[0] for action in menu.actions()]
            texts += [action.statusTip() for action in menu.actions()]
            if self.language == STRETCHED:
                cleaned = [text.replace("&", "") for text in texts]
                self.wrong.update(dict.fromkeys(f"menu: {one}" for one in untranslated(cleaned, self.known)))


def known_words(sheet: Sheet) -> set[str]:
    """Names, types and signs, which are the same in every language."""
    catalogue = load_builtin()
    types = " ".join(
        name
        for found in (*catalogue.tubes.values(), *catalogue.lamps.values(), *catalogue.thermistors.values())
        for name in (found.designation, *getattr(found, "equivalents", ()), getattr(found, "base", ""))
    )
    sources = " ".join(
        entry.source for found in catalogue.tubes.values() for entry in found.provenance if entry.source
    )
    relays = " ".join(catalogue.relays)
    text = f"{types} {sources} {relays} {sheet.title} " + " ".join(
        str(getattr(part, "text", "")) for part in sheet.parts
    )
    letters = "".join(letter if letter.isalpha() else " " for letter in text)
    of_the_toolkit = ("Cancel", "Discard", "Save", "Yes")
    names = ("Heaterloom", "AWG", "Ctrl", "Shift", "Alt", "Letter", "Legal")
    return {*letters.split(), *names, *of_the_toolkit, *WORD.findall(" ".join(LANGUAGES.values()))}


def open_on(open_window: Callable[..., MainWindow], sheet: Sheet) -> MainWindow:
    window = open_window(sheet)
    window.resize(1280, 720)
    return window


def test_the_window_and_its_panes(open_window, language: str) -> None:
    sheet = open_sheet("five-mistakes").sheet
    window = open_on(open_window, sheet)
    looker = Looker(language, known_words(sheet))
    side = window.side
    looker.look(window, "first look")
    for key, pane in side.panes.items():
        side.show_pane(key)
        pane.bring_forward()
        looker.look(window, f"the pane {key}")
    side.panes["parts"].content.view.expandAll()
    looker.look(side.panes["parts"], "the parts, opened")
    for tabs in window.findChildren(QWidget, "TablesTabs") or [side.panes["tables"].content.tabs]:
        for number in range(tabs.count()):
            tabs.setCurrentIndex(number)
            looker.look(side.panes["tables"], f"table {number}")
    looker.look_at_menus(window)
    window.show_trouble(QCoreApplication.translate("PictureDialog", "The picture is not saved."))
    looker.look(window, "with the banner")
    assert not looker.wrong, "\n".join(looker.wrong)


def test_what_the_drawing_opens(open_window, language: str) -> None:
    """The chain builder, the line to find, the line to replace a type, and the menu of what is selected."""
    sheet = open_sheet("rehearsal-amplifier").sheet
    window = open_on(open_window, sheet)
    looker = Looker(language, known_words(sheet))
    tubes = [part.id for part in sheet.parts if part.kind == "tube"]
    window.selection.set(tubes)
    for name in ("chain", "find", "replace type"):
        window.view.entries[name].action()
        looker.look(window, name)
        window.selection.set(tubes[:1])
    looker.look_at_menus(window)
    assert not looker.wrong, "\n".join(looker.wrong)


def test_the_forms_of_every_kind(open_window, language: str) -> None:
    sheet = everything()
    window = open_on(open_window, sheet)
    window.side.show_properties()
    looker = Looker(language, known_words(sheet))
    pane = window.side.panes["properties"]
    for ids in ([], ["w1"], *([part.id] for part in sheet.parts), ["X1", "X2"], ["X1", "w1"]):
        window.selection.set(ids)
        looker.look(pane, f"properties of {' '.join(ids) or 'the sheet'}")
    assert not looker.wrong, "\n".join(looker.wrong)


def test_an_instant_of_a_warm_up(open_window, language: str) -> None:
    """In the strip, in the properties of each kind of part that has figures, and on the strip that plays."""
    sheet = open_sheet("rehearsal-amplifier").sheet
    window = open_on(open_window, sheet)
    run = made_up_run(sheet, window.document.catalogue, (Event(0.3, "T1", "cuts out"),))
    playhead = Playhead(window)
    instants = Instants(window.document, window.viewpoint, playhead, window)
    instants.show_run(run)
    strip = Playback(playhead, window.theme, window)
    strip.show_run(run)
    body = window.centralWidget()
    assert body is not None
    body.layout().addWidget(strip)
    looker = Looker(language, known_words(sheet))
    window.side.show_properties()
    for t_s in (0.0, 0.5, 8.0, 60.0):
        playhead.set(t_s)
        for subject in ("V2", "V4", "T1", "L1", sheet.wires[0].id):
            window.selection.set([subject])
            looker.look(window, f"{subject} at {t_s} s")
    if language == STRETCHED:
        tips = [
            strip.slider.tip_at(strip.slider.x_of(0.3)),
            tooltip(window.scene, "V4", None).replace("&nbsp;", " "),
        ]
        looker.wrong.update(dict.fromkeys(untranslated(tips, looker.known)))
    assert not looker.wrong, "\n".join(looker.wrong)


def test_the_messages(open_window, language: str, monkeypatch: pytest.MonkeyPatch) -> None:
    sheet = open_sheet("five-mistakes").sheet
    window = open_on(open_window, sheet)
    looker = Looker(language, known_words(sheet))

    def show(box: QMessageBox) -> int:
        box.show()
        looker.look(box, box.text())
        box.close()
        return 0

    monkeypatch.setattr(QMessageBox, "exec", show)
    monkeypatch.setattr(QMessageBox, "open", show)
    dialogs = window.dialogs
    dialogs.ask_unsaved("X")
    dialogs.ask_overwrite("X")
    dialogs.tell(
        QCoreApplication.translate("PictureDialog", "The picture is not saved."), "\n".join(["V1"] * 30)
    )
    before = set(QApplication.topLevelWidgets())
    for action in window.menus.help.actions():
        action.trigger()
    for opened in set(QApplication.topLevelWidgets()) - before:
        if not isinstance(opened, QMenu) and opened.isVisible():
            looker.look(opened, opened.windowTitle())
            opened.close()
    assert not looker.wrong, "\n".join(looker.wrong)


@pytest.mark.parametrize("printing", [False, True])
def test_the_dialog_of_pictures_and_prints(open_window, language: str, printing: bool) -> None:
    sheet = open_sheet("five-mistakes").sheet
    window = open_on(open_window, sheet)
    window.selection.set(["V1"])
    dialog = PictureDialog(window, printing)
    dialog.show()
    looker = Looker(language, known_words(sheet))
    looker.look(dialog, dialog.windowTitle())
    for number in range(dialog.kind.count()):
        dialog.kind.setCurrentIndex(number)
        looker.look(dialog, f"{dialog.windowTitle()} {number}")
    dialog.close()
    assert not looker.wrong, "\n".join(looker.wrong)


def test_the_stretched_language_is_as_long_as_it_says() -> None:
    assert stretched("&Save {name}\tDel") == "[&Såvé {name}ooo]\tDel"
    for text in ("Close", "All files", "{count} selected", "Nothing to report under this condition."):
        assert len(stretched(text)) >= 1.4 * len(text)


def test_the_check_sees_what_is_cut(qapp: QApplication) -> None:
    parent = QWidget()
    one = QLabel("A text that is too long", parent)
    one.setGeometry(0, 0, 40, 20)
    two = QLabel("A text that is wrapped into more lines than there are", parent)
    two.setWordWrap(True)
    two.setGeometry(0, 20, 120, 16)
    parent.resize(200, 60)
    parent.show()
    found = clipped(parent)
    parent.close()
    assert len(found) == 2 and "too long" in found[0] and "(height)" in found[1]
    assert untranslated(["[Ñö]", "[Ñö] left here", "V1 [ö [é] ö]"], ["left"]) == ["'[Ñö] left here': here"]
