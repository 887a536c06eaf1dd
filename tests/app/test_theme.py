"""The themes: legible on every ground, the bundled font, the palette and the style sheet."""

from __future__ import annotations

import dataclasses
import re
from importlib.resources import files

import pytest
from PySide6.QtGui import QColor, QFont, QFontInfo, QFontMetricsF, QGuiApplication, QPalette, QRawFont
from PySide6.QtWidgets import QCheckBox, QStyleFactory

from app.theme import DARK, FAMILY, LIGHT, Theme, contrast, icon, load_fonts, palette, stylesheet

BOTH = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
TEXT_ROLES = ("ink", "soft", "accent_text", "over", "under", "ok", "caution")
GROUNDS = ("paper", "chrome", "surface")
SIGNS = "Ωµ²°−×±·…→+%0123456789\u2009"


def test_contrast_of_black_on_white_is_21():
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)


def test_contrast_agrees_with_a_published_value():
    # WCAG technique G18: the grey #767676 on white is just above 4.5 to 1 (4.54)
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.01)


@BOTH
@pytest.mark.parametrize("role", TEXT_ROLES)
@pytest.mark.parametrize("ground", GROUNDS)
def test_text_stands_out_from_every_ground(theme: Theme, role: str, ground: str):
    assert contrast(getattr(theme, role), getattr(theme, ground)) >= 4.5


@BOTH
@pytest.mark.parametrize("role", TEXT_ROLES)
def test_text_stands_out_from_a_selected_row(theme: Theme, role: str):
    assert contrast(getattr(theme, role), theme.selection) >= 4.5


@BOTH
def test_lines_that_carry_meaning_stand_out_from_their_ground(theme: Theme):
    # WCAG 1.4.11 asks 3 to 1 of marks and of the edges of controls
    for value in (*theme.curves, theme.accent, theme.edge):
        assert contrast(value, theme.surface) >= 3.0


@BOTH
def test_over_and_under_differ_for_every_kind_of_colour_vision(theme: Theme):
    # red-green deficiencies keep the difference of blue against the mean of red and green
    def yellow_blue(value: str) -> float:
        colour = QColor(value)
        return colour.blueF() - (colour.redF() + colour.greenF()) / 2

    assert yellow_blue(theme.under) - yellow_blue(theme.over) > 0.5


@BOTH
def test_palette_keeps_text_legible_in_every_role(theme: Theme, qapp: QGuiApplication):
    result = palette(theme)
    role = QPalette.ColorRole
    pairs = [
        (role.WindowText, role.Window),
        (role.Text, role.Base),
        (role.Text, role.AlternateBase),
        (role.ButtonText, role.Button),
        (role.HighlightedText, role.Highlight),
        (role.ToolTipText, role.ToolTipBase),
        (role.PlaceholderText, role.Base),
        (role.Link, role.Window),
    ]
    for text, ground in pairs:
        assert contrast(result.color(text).name(), result.color(ground).name()) >= 4.5, (text, ground)


@BOTH
def test_palette_shows_what_is_disabled(theme: Theme, qapp: QGuiApplication):
    result = palette(theme)
    group = QPalette.ColorGroup.Disabled
    shown = result.color(group, QPalette.ColorRole.WindowText)
    assert shown != result.color(QPalette.ColorRole.WindowText)
    assert contrast(shown.name(), theme.chrome) >= 2.5


@BOTH
def test_palette_sets_every_role(theme: Theme, qapp: QGuiApplication):
    result = palette(theme)
    for role in QPalette.ColorRole:
        if role not in (QPalette.ColorRole.NoRole, QPalette.ColorRole.NColorRoles):
            assert result.isBrushSet(QPalette.ColorGroup.Active, role), role


@BOTH
def test_an_unticked_box_is_visible(theme: Theme, qtbot):
    box = QCheckBox("pulled")
    qtbot.addWidget(box)
    box.setStyle(QStyleFactory.create("Fusion"))
    box.setPalette(palette(theme))
    box.setStyleSheet(stylesheet(theme))
    box.setAutoFillBackground(True)
    picture = box.grab().toImage()
    seen = {picture.pixelColor(x, picture.height() // 2).name() for x in range(15)}
    assert any(contrast(colour, theme.chrome) >= 2.5 for colour in seen)


def test_the_bundled_font_is_loaded_and_used(qapp: QGuiApplication):
    assert FAMILY in load_fonts()
    assert load_fonts() == load_fonts()
    assert QFontInfo(LIGHT.font(12)).family() == FAMILY


@pytest.mark.parametrize("name", ["Inter-Regular.otf", "Inter-Bold.otf"])
def test_the_font_has_the_signs_of_the_trade(name: str, qapp: QGuiApplication):
    font = QRawFont(str(files("resources").joinpath("fonts", name)), 16)
    assert [sign for sign in SIGNS if not font.supportsCharacter(ord(sign))] == []


@pytest.mark.parametrize("bold", [False, True])
def test_figures_have_one_width(bold: bool, qapp: QGuiApplication):
    load_fonts()
    metrics = QFontMetricsF(LIGHT.font(13, bold))
    widths = [metrics.horizontalAdvance(figure * 10) for figure in "0123456789"]
    # advances are rounded to 1/64 pixel, so ten figures may differ by a fraction of a pixel
    assert max(widths) - min(widths) < 0.5
    loose = QFont(FAMILY)
    loose.setPixelSize(13)
    plain = QFontMetricsF(loose)
    assert plain.horizontalAdvance("1" * 10) < plain.horizontalAdvance("0" * 10) - 5


def test_a_font_handed_out_can_be_altered_without_harm(qapp: QGuiApplication):
    LIGHT.font(12).setPixelSize(40)
    assert LIGHT.font(12).pixelSize() == 12


def test_a_pen_handed_out_can_be_altered_without_harm():
    LIGHT.pen("ink").setColor(QColor("red"))
    assert LIGHT.pen("ink").color().name() == LIGHT.ink


def test_fonts_and_licences_stand_side_by_side():
    names = {entry.name for entry in files("resources").joinpath("licences").iterdir()}
    assert {"LICENCE-MIT.txt", "LICENCE-INTER-OFL.txt"} <= names
    own = files("resources").joinpath("licences", "LICENCE-MIT.txt").read_text(encoding="utf-8")
    assert "Heaterloom maintainers" in own
    ofl = files("resources").joinpath("licences", "LICENCE-INTER-OFL.txt").read_text(encoding="utf-8")
    assert "SIL OPEN FONT LICENSE Version 1.1" in ofl


def test_the_fonts_weigh_less_than_a_megabyte():
    sizes = [len(entry.read_bytes()) for entry in files("resources").joinpath("fonts").iterdir()]
    assert sum(sizes) < 1_000_000


@BOTH
def test_every_icon_draws_in_both_themes(theme: Theme, qapp: QGuiApplication):
    names = [e.name.removesuffix(".svg") for e in files("resources").joinpath("icons").iterdir()]
    assert "heaterloom" in names
    for name in names:
        picture = icon(name, theme).pixmap(24, 24).toImage()
        drawn = [picture.pixelColor(x, y).alpha() for x in range(24) for y in range(24)]
        assert max(drawn) > 150, name


def test_an_icon_that_is_not_there_says_so(qapp: QGuiApplication):
    with pytest.raises(FileNotFoundError):
        icon("no such icon", LIGHT)


@BOTH
def test_the_style_sheet_names_only_colours_of_the_theme(theme: Theme):
    own = {value for value in dataclasses.asdict(theme).values() if isinstance(value, str)}
    assert set(re.findall(r"#[0-9a-f]{6}\b", stylesheet(theme))) <= own


@BOTH
def test_insulation_colours_show_on_the_paper(theme: Theme):
    for name in ("black", "white", "yellow", "Grey", "gray", "green-yellow"):
        colour = theme.insulation(name)
        assert colour is not None
        assert contrast(colour.name(), theme.paper) >= 3.0, name
    assert theme.insulation("tartan") is None
