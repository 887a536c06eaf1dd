"""Painting of symbols: every kind at every scale, heat and states as they are seen."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QSize
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtSvg import QSvgGenerator

from app.canvas import symbols
from app.canvas.look import PartLook
from app.canvas.symbols import passives
from app.canvas.symbols.glow import glow
from app.canvas.symbols.labels import paint_mark
from app.theme import DARK, LIGHT, Theme, load_fonts
from core import sheet
from tests.app.symbol_parts import KINDS, SHELF, Shelf, part_of

THIN = "\u2009"


@pytest.fixture(autouse=True)
def _fonts(qapp):
    load_fonts()


def image_of(paint, theme: Theme, scale: float = 1.0, side: int = 400) -> QImage:
    image = QImage(side, side, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(theme.colour("paper"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(side / 2, side / 2)
    painter.scale(scale, scale)
    try:
        paint(painter)
    finally:
        painter.end()
    return image


def changed_pixels(image: QImage, ground: QColor) -> int:
    wanted = ground.rgb()
    return sum(image.pixel(x, y) != wanted for x in range(image.width()) for y in range(image.height()))


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
@pytest.mark.parametrize("scale", [0.2, 1.0, 3.0])
@pytest.mark.parametrize("kind", sorted(KINDS))
def test_every_kind_paints_something(kind: str, scale: float, theme: Theme):
    part = part_of(kind, turn=90)
    look = PartLook(
        state="over",
        values=f"6.94{THIN}V",
        kelvin={"4-9": 1440.0, "9-5": 900.0, "1-2": 2300.0},
        pin_values={"4": f"6.3{THIN}V", "1": "0"},
        pulled_in=True,
    )
    image = image_of(lambda p: symbols.paint_part(p, part, SHELF, look, theme, scale), theme, scale)
    assert changed_pixels(image, theme.colour("paper")) > (2 if scale < 0.35 else 20)


@pytest.mark.parametrize("name", [*Shelf.types, "no such tube"])
@pytest.mark.parametrize("pulled", [False, True])
def test_every_sort_of_socket_paints(name: str, pulled: bool):
    part = sheet.Tube(id="V1", type=name, pulled=pulled)
    image = image_of(lambda p: symbols.paint_part(p, part, SHELF, PartLook(), LIGHT, 2.0), LIGHT, 2.0)
    assert changed_pixels(image, LIGHT.colour("paper")) > 1000


def glowing_pixels(part, look: PartLook, scale: float = 3.0) -> int:
    image = image_of(lambda p: symbols.paint_part(p, part, SHELF, look, LIGHT, scale), LIGHT, scale)
    wanted = glow(1440.0, LIGHT).rgb()
    return sum(image.pixel(x, y) == wanted for x in range(image.width()) for y in range(image.height()))


def test_a_hot_heater_glows_and_a_pulled_tube_has_none():
    hot = PartLook(kelvin={"4-5": 1440.0})
    assert glowing_pixels(sheet.Tube(id="V1", type="EL84"), hot) > 200
    assert glowing_pixels(sheet.Tube(id="V1", type="EL84", pulled=True), hot) == 0
    assert glowing_pixels(sheet.Tube(id="V1", type="EL84"), PartLook(kelvin={"4-5": 298.0})) == 0


def test_each_section_of_a_tapped_heater_has_its_own_heat():
    part = sheet.Tube(id="V1", type="ECC83")
    both = glowing_pixels(part, PartLook(kelvin={"4-9": 1440.0, "9-5": 1440.0}))
    one = glowing_pixels(part, PartLook(kelvin={"4-9": 1440.0, "9-5": 298.0}))
    assert 0.3 * both < one < 0.7 * both


def test_a_relay_shows_where_its_blade_lies():
    part = part_of("relay")
    pictures = [
        image_of(
            lambda p, pulled=pulled: symbols.paint_part(
                p, part, SHELF, PartLook(pulled_in=pulled), LIGHT, 1.0
            ),
            LIGHT,
        )
        for pulled in (False, True)
    ]
    assert pictures[0] != pictures[1]


def test_an_open_switch_differs_from_a_closed_one():
    assert passives.switch(part_of("switch")).lines != passives.switch(part_of("switch", closed=False)).lines


def test_a_wiper_moves_from_end_one_to_end_two():
    tips = []
    for wiper in (0.0, 0.5, 1.0):
        lines = passives.balance(part_of("balance", wiper=wiper)).lines
        points = [lines.elementAt(index) for index in range(lines.elementCount())]
        # the shaft ends just above the resistor, its arrow head a unit lower
        tips.append(next(point.x for point in points if point.y == -10))
    assert tips == [-18, 0, 18]


def test_a_kind_without_a_symbol_is_an_honest_box():
    drawing = passives.labelled_box("gyrator", ("p", "q"))
    assert [end.name for end in drawing.terminals] == ["p", "q"]
    assert any(text.text == "gyrator" for text in drawing.texts)


def test_painting_leaves_the_painter_as_it_was():
    def paint(painter: QPainter) -> None:
        before = painter.transform(), painter.pen(), painter.font()
        symbols.paint_part(painter, part_of("tube", turn=90), SHELF, PartLook(state="ok"), LIGHT, 1.0)
        assert (painter.transform(), painter.pen(), painter.font()) == before

    image_of(paint, LIGHT)


def test_text_in_an_svg_file_stays_text(tmp_path):
    generator = QSvgGenerator()
    generator.setFileName(str(tmp_path / "x.svg"))
    generator.setSize(QSize(300, 200))
    painter = QPainter(generator)
    symbols.paint_part(painter, part_of("tube"), SHELF, PartLook(state="ok", values="6.94 V"), LIGHT, 1.0)
    painter.end()
    text = (tmp_path / "x.svg").read_text(encoding="utf-8")
    assert all(word in text for word in ("X1", "ECC83", "6.94 V", 'font-family="Inter"'))


@pytest.mark.parametrize("state", ["ok", "over", "under", "cold", "stale"])
def test_marks_differ_in_shape_not_only_in_colour(state: str):
    def mask(which: str) -> set[tuple[int, int]]:
        image = image_of(lambda p: paint_mark(p, which, (0.0, 0.0), LIGHT), LIGHT, 4.0, side=60)
        ground = LIGHT.colour("paper")
        return {(x, y) for x in range(60) for y in range(60) if image.pixelColor(QPoint(x, y)) != ground}

    own = mask(state)
    assert own
    for other in {"ok", "over", "under", "cold", "stale"} - {state}:
        theirs = mask(other)
        assert len(own ^ theirs) > 0.15 * len(own | theirs), other


def test_nothing_to_say_has_no_mark():
    image = image_of(lambda p: paint_mark(p, "none", (0.0, 0.0), LIGHT), LIGHT, side=40)
    assert changed_pixels(image, LIGHT.colour("paper")) == 0
