"""Mirrored symbols, notes and frames: where they lie, what they look like, and what wires make of them."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QFontMetricsF, QImage, QPainter, qGray

from app.canvas import symbols
from app.canvas.layout import Layout
from app.canvas.look import PartLook
from app.canvas.symbols import _drawing, remarks
from app.canvas.symbols.drawing import paint_drawing
from app.theme import DARK, LIGHT, Theme, load_fonts
from core.sheet import Frame, Joint, Note, Sheet, Wire
from tests.app.canvas_rig import CATALOGUE
from tests.app.symbol_parts import KINDS, SHELF, part_of

DRAWN = sorted(set(KINDS) - {"tube", "note", "frame"})


@pytest.fixture(autouse=True)
def _fonts(qapp):
    load_fonts()


def picture(paint, theme: Theme = LIGHT) -> QImage:
    image = QImage(400, 400, QImage.Format.Format_RGB32)
    image.fill(theme.colour("paper"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(QPointF(200, 200))
    paint(painter)
    painter.end()
    return image


@pytest.mark.parametrize("turn", [0, 90, 180, 270])
@pytest.mark.parametrize("kind", DRAWN)
def test_a_mirrored_symbol_has_its_terminals_on_the_other_side(kind: str, turn: int):
    """Flipped before it is turned: lying down it is flipped from left to right, standing upside down."""
    plain = {end.name: end for end in symbols.terminals(part_of(kind, turn=turn), SHELF)}
    sx, sy = (-1, 1) if turn in (0, 180) else (1, -1)
    for end in symbols.terminals(part_of(kind, turn=turn, mirror=True), SHELF):
        was = plain[end.name]
        assert (end.x, end.y, end.dx, end.dy) == (sx * was.x, sy * was.y, sx * was.dx, sy * was.dy)
    box = symbols.body(part_of(kind, turn=turn), SHELF)
    flipped = symbols.body(part_of(kind, turn=turn, mirror=True), SHELF)
    assert (flipped.width, flipped.height) == (box.width, box.height)


@pytest.mark.parametrize("kind", DRAWN)
def test_lines_are_mirrored(kind: str):
    def lines(painter: QPainter, mirror: bool) -> None:
        painter.translate(0.5, 0.5)
        paint_drawing(painter, _drawing(part_of(kind)), 0, LIGHT, letters=False, mirror=mirror)

    plain = picture(lambda painter: lines(painter, False))
    flipped = picture(lambda painter: lines(painter, True))
    # the middle of the picture is the left edge of a pixel, so the mirrored one is moved by a pixel
    wanted = plain.flipped(Qt.Orientation.Horizontal).copy(0, 0, 399, 400)
    assert apart(flipped.copy(1, 0, 399, 400), wanted) <= 10  # dashes begin elsewhere
    if kind in ("diode", "winding", "dc_supply", "rectified_supply", "relay"):
        assert apart(flipped, plain) > 50


def apart(one: QImage, other: QImage) -> int:
    """How many points are dark in one picture and light in the other, beyond rounding at the edges."""
    return sum(
        abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y))) > 60
        for x in range(130, 270)
        for y in range(130, 270)
    )


@pytest.mark.parametrize("kind", ["winding", "dc_supply", "thermistor", "relay"])
def test_letters_are_not_mirrored(kind: str):
    """Each text of a mirrored symbol is the upright text at the mirrored place."""
    drawn = _drawing(part_of(kind))
    assert drawn.texts

    def letters(painter: QPainter) -> None:
        for text in drawn.texts:
            at = (-text.x, text.y)
            symbols.drawing.draw_text(painter, LIGHT, at, text.text, text.px, role=text.role, bold=text.bold)

    def whole(painter: QPainter) -> None:
        paint_drawing(painter, drawn, 0, LIGHT, letters=True, mirror=True)

    def both(painter: QPainter) -> None:
        paint_drawing(painter, drawn, 0, LIGHT, letters=False, mirror=True)
        letters(painter)

    assert picture(whole) == picture(both)


def test_a_note_is_as_high_as_its_lines():
    note = Note(id="N1", text="first line\n\nthird", width=180)
    assert remarks.lines_of(note.text, note.width) == ("first line", "", "third")
    assert symbols.body(note, SHELF).height == 3 * symbols.body(Note(id="N2", text=""), SHELF).height


@pytest.mark.parametrize(
    "text", ["a few words that are broken", "unbreakablewordofmanyletters", "🔥🔥 hot 🔥🔥🔥🔥"]
)
def test_lines_fit_their_width_and_lose_no_letter(text: str):
    lines = remarks.lines_of(text, 60.0)
    metrics = QFontMetricsF(LIGHT.font(remarks.TEXT_PX))
    assert len(lines) > 1
    assert all(metrics.horizontalAdvance(line) <= 60.5 for line in lines)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")


def test_remarks_have_no_terminals_and_no_label():
    for part in (Note(id="N1", text="x"), Frame(id="FR1")):
        assert symbols.terminals(part, SHELF) == ()
        assert symbols.label_box(part, SHELF, PartLook(), LIGHT).width == 0


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
@pytest.mark.parametrize("scale", [0.2, 1.0])
def test_remarks_paint(theme: Theme, scale: float):
    for part in (
        Note(id="N1", text="warm words"),
        Note(id="N2", text=""),
        Frame(id="FR1", width=120, height=80),
    ):
        image = picture(
            lambda painter, part=part: symbols.paint_part(painter, part, SHELF, PartLook(), theme, scale),
            theme,
        )
        assert image != picture(lambda _: None, theme) or (not getattr(part, "text", "x") and scale < 1)


def test_a_frame_says_its_title_or_its_id():
    assert remarks.title_of(Frame(id="FR1", title="Left channel")) == "Left channel"
    assert remarks.title_of(Frame(id="FR1")) == "FR1"
    narrow = remarks.title_box(Frame(id="FR1", title="a title far too long for it", width=60))
    assert narrow.right <= 60


def line(between) -> tuple:
    sheet = Sheet(
        parts=(Joint(id="J1", at=(-200, 0)), Joint(id="J2", at=(200, 0)), *between),
        wires=(Wire(id="w1", start="J1.j", end="J2.j"),),
    )
    return Layout(sheet, CATALOGUE, LIGHT).board.routes["w1"]


def test_a_wire_goes_through_a_frame_and_round_a_note():
    free = line(())
    assert len(free) == 2
    assert line((Frame(id="FR1", at=(-60, -60), width=120, height=120),)) == free
    note = Note(id="N1", text="in the way", at=(-40, -10), width=80)
    route = line((note,))
    body = symbols.body(note, CATALOGUE)
    assert route != free
    assert all(y <= -10 or y >= -10 + body.height or abs(x) > 40 for x, y in route)


def test_nothing_is_free_where_a_note_stands_but_within_a_frame():
    sheet = Sheet(parts=(Frame(id="FR1", width=400, height=300), Note(id="N1", text="words", at=(20, 20))))
    layout = Layout(sheet, CATALOGUE, LIGHT)
    assert layout.is_free((200, 100, 300, 200))
    assert not layout.is_free((30, 22, 60, 30))
    assert layout.bounds() == (0, 0, 400, 300)
