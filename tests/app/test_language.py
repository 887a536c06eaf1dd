"""Choosing the language of the screen, and hearing it."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QCoreApplication, QLocale, QTranslator
from PySide6.QtWidgets import QApplication, QMenu

from app.actions import with_free_letter
from app.canvas.adding import offers
from app.language import ENGLISH, LANGUAGES, SYSTEM, language_for, speak
from app.menus import SAMPLES
from app.panes.finding_cards import cards, conditions_text, counts_text
from app.settings import Settings
from app.sources import load_catalogue, open_sheet
from app.speech import spoken, told
from core.assess import assess
from core.dimension import Dimension
from core.errors import QuantityError
from core.samples import sample_names, sample_title
from core.sentences import sentence
from core.units import parse


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    speak(qapp, "de")
    yield
    speak(qapp, ENGLISH)


def entry(menu: QMenu, text: str):
    return next(action for action in menu.actions() if action.text() == text)


def test_english_loads_nothing(qapp: QApplication) -> None:
    before = len(qapp.findChildren(QTranslator))
    speak(qapp, ENGLISH)
    assert len(qapp.findChildren(QTranslator)) == before


def test_a_language_is_heard_and_given_up(qapp: QApplication, german: None) -> None:
    assert QCoreApplication.translate("Menus", "&File") == "&Datei"
    speak(qapp, ENGLISH)
    assert QCoreApplication.translate("Menus", "&File") == "&File"


@pytest.mark.parametrize("language", [one for one in LANGUAGES if one != ENGLISH])
def test_the_toolkit_speaks_the_language_too(qapp: QApplication, language: str) -> None:
    speak(qapp, language)
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") != "Cancel"
    speak(qapp, ENGLISH)


def test_the_setting_is_kept_and_nonsense_is_the_system(settings: Settings) -> None:
    assert settings.language == SYSTEM
    settings.language = "de"
    assert settings.language == "de"
    settings.language = "klingon"
    assert settings.language == SYSTEM


@pytest.mark.parametrize(
    ("wanted", "offered", "language"),
    [
        ("de", ["fr-FR"], "de"),
        (SYSTEM, ["de-AT", "en-GB"], "de"),
        (SYSTEM, ["ja-JP", "de_CH"], "de"),
        (SYSTEM, ["C"], ENGLISH),
        (SYSTEM, ["ja"], ENGLISH),
        (SYSTEM, ["en-US", "de-DE"], ENGLISH),
    ],
)
def test_the_system_language_counts_where_there_is_one(
    monkeypatch: pytest.MonkeyPatch, wanted: str, offered: list[str], language: str
) -> None:
    monkeypatch.setattr(QLocale, "uiLanguages", lambda self: offered)
    assert language_for(wanted) == language


def test_choosing_a_language_in_the_menu_is_remembered_and_told(open_window, settings: Settings) -> None:
    window = open_window()
    menu = next(one for one in window.findChildren(QMenu) if one.title() == "&Language")
    assert [action.text() for action in menu.actions()] == ["As the &system", *LANGUAGES.values()]
    assert entry(menu, "As the &system").isChecked()
    entry(menu, "Deutsch").trigger()
    assert settings.language == "de"
    assert window.banner.label.text() == "Heaterloom speaks Deutsch from its next start on."


def test_sentences_within_sentences_are_translated(german: None) -> None:
    pins = sentence("pins {pins}", pins=sentence("{items} and {last}", items="4", last="5"))
    text = sentence("Take out the wire that joins {pins}.", pins=pins)
    assert spoken(text) == "Den Draht herausnehmen, der Stift 4 und 5 verbindet."
    assert str(text) == "Take out the wire that joins pins 4 and 5."
    assert spoken("V1") == "V1"


def test_a_translation_with_a_wrong_name_in_braces_falls_back_to_english(qapp: QApplication) -> None:
    class Wrong(QTranslator):
        def translate(self, context, source, disambiguation=None, n=-1) -> str:
            return "{nothing}" if context == "model" else source

    wrong = Wrong(qapp)
    qapp.installTranslator(wrong)
    assert spoken(sentence("{id} is not heated", id="V1")) == "V1 is not heated"
    qapp.removeTranslator(wrong)


def test_errors_are_told_in_the_language(german: None) -> None:
    with pytest.raises(QuantityError) as caught:
        parse("5 A", Dimension.VOLTS)
    assert told(caught.value) == "'5 A' ist in Ampere angegeben; erwartet werden Volt, etwa 6.3 V."
    assert str(caught.value) == "'5 A' is amperes; volts are expected here, such as 6.3 V."


def test_findings_are_german_from_head_to_foot(german: None) -> None:
    sheet = open_sheet("five-mistakes").sheet
    findings = assess(sheet, load_catalogue()[0]).findings
    text = " ".join(f"{card.title} {card.says} {card.mend}" for card in cards(findings))
    assert not {"the", "is", "pins", "and", "mains", "wire", "heater"}.intersection(text.split())
    assert counts_text(findings) == "4 Fehler · 1 Warnung"
    assert conditions_text(["nominal", "high mains"]) == "bei Netznenn- und -überspannung"
    assert conditions_text(["low mains", "cold"]) == "bei Netzunterspannung und Einschalten"


@pytest.mark.parametrize(
    ("text", "taken", "given"),
    [
        ("&Save", "", "&Save"),
        ("&Save", "s", "S&ave"),
        ("Save &as", "a", "&Save as"),
        ("&Bild && Ton", "b", "B&ild && Ton"),
        ("Ton && &Bild", "b", "Ton && B&ild"),
        ("&Turn right\tR", "t", "Turn &right\tR"),
        ("&An", "an", "An"),
        ("Sample", "", "Sample"),
        ("", "", ""),
    ],
)
def test_a_menu_text_takes_a_free_letter(text: str, taken: str, given: str) -> None:
    assert with_free_letter(text, set(taken))[0] == given


@pytest.mark.parametrize("language", list(LANGUAGES))
def test_no_two_entries_of_a_menu_share_a_key(qapp: QApplication, open_window, language: str) -> None:
    speak(qapp, language)
    window = open_window(open_sheet("five-mistakes").sheet)
    shared = []
    for menu in [window.menuBar(), *window.findChildren(QMenu)]:
        texts = [action.text().replace("&&", "").partition("\t")[0] for action in menu.actions()]
        keys = [text[text.index("&") + 1].lower() for text in texts if "&" in text]
        shared += [texts for key in set(keys) if keys.count(key) > 1]
    speak(qapp, ENGLISH)
    assert not shared


def test_the_titles_of_all_samples_are_gathered() -> None:
    assert {sample_title(name) for name in sample_names()} == set(SAMPLES)


def test_the_add_field_knows_words_of_both_languages(german: None) -> None:
    catalogue = load_catalogue()[0]
    for text, kind in (
        ("Relais 12 V", "relay"),
        ("relay 12 V", "relay"),
        ("Röhre EL84", "tube"),
        ("Wick", "winding"),
    ):
        assert offers(text, catalogue)[0].part_template["kind"] == kind
