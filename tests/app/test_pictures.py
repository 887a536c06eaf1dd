"""Pictures hold against other programs: SVG and PDF files are rasterised by libraries that share nothing with Qt."""

from __future__ import annotations

import re
from pathlib import Path

import numpy as np
import pypdfium2
import pytest
import resvg_py
from PySide6.QtCore import QRectF
from PySide6.QtGui import QGuiApplication, QImage, QPainter

from app.main import main
from app.pictures.files import PNG_SCALE, picture_bytes
from app.pictures.options import PictureOptions, condition_named, options_from, options_text
from app.pictures.picture import MARGIN, Picture
from app.pictures.title_block import title_block
from app.sources import load_catalogue
from core.samples import sample_bytes, sample_names
from core.sheet import Sheet
from core.storage import load
from resources import path

SCALE = 2
# pages of PDF files are whole points: three pixels a point leave the other program nothing to round
PDF_SCALE = 3 * 72 / 96
FONTS = [path("fonts", "Inter-Regular.otf"), path("fonts", "Inter-Bold.otf")]
CATALOGUE = load_catalogue()[0]
EVERY = pytest.mark.parametrize("name", sample_names())
# Programs place the edge of a line or a letter up to half a pixel apart and shade it differently. A pixel counts
# as different only if no pixel within one of it, in the other picture, is nearly as dark: what lies on another
# place, is missing or has another colour by more than a tenth still does.
REACH = 1
STEP = 0.30
# What remains are corners of letters, which every engine rasters in its own way: measured up to 0.0003 of all
# pixels on the samples. The least change that a user could see, gauges left out, is ten times as much.
MOST = 0.0006


def sheet_of(name: str) -> Sheet:
    return load(sample_bytes(name), name)


def picture_of(name: str, **options) -> Picture:
    return Picture(sheet_of(name), CATALOGUE, PictureOptions(**options))


def array_of(image: QImage) -> np.ndarray:
    """Red, green and blue from 0 to 1, shape (height, width, 3)."""
    plain = image.convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(plain.constBits(), np.uint8).reshape(plain.height(), plain.bytesPerLine())
    return rows[:, : plain.width() * 3].reshape(plain.height(), plain.width(), 3) / 255.0


def painted(picture: Picture, monkeypatch: pytest.MonkeyPatch, scale: float = SCALE) -> np.ndarray:
    """The drawing as Qt paints it on a screen, with the figures that files have: those that can be searched."""
    for module in ("app.canvas.symbols.drawing", "app.canvas.items"):
        monkeypatch.setattr(f"{module}.keeps_words", lambda _painter: True)
    image = QImage(round(picture.width * scale), round(picture.height * scale), QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(scale)
    image.fill(picture.theme.colour("paper"))
    painter = QPainter(image)
    picture.paint(painter)
    painter.end()
    return array_of(image)


def from_svg(data: bytes) -> np.ndarray:
    drawn = resvg_py.svg_to_bytes(
        svg_string=data.decode(), skip_system_fonts=True, font_files=FONTS, zoom=SCALE, dpi=96
    )
    image = QImage()
    assert image.loadFromData(bytes(drawn))
    return array_of(image)


def from_pdf(data: bytes, scale: float = PDF_SCALE * 96 / 72) -> list[np.ndarray]:
    document = pypdfium2.PdfDocument(data)
    pages = [page.render(scale=scale).to_numpy()[:, :, 2::-1] / 255.0 for page in document]
    document.close()
    return pages


def share_of_difference(first: np.ndarray, second: np.ndarray) -> float:
    """The share of pixels of either picture that have no like near their place in the other one."""
    height, width = (min(first.shape[axis], second.shape[axis]) for axis in (0, 1))
    first, second = first[:height, :width], second[:height, :width]
    return max(_unlike(first, second), _unlike(second, first))


def _unlike(first: np.ndarray, second: np.ndarray) -> float:
    # only where they differ at all is there anything to look for
    rows, columns = np.nonzero(np.abs(first - second).max(axis=2) > STEP)
    least = np.full(len(rows), np.inf)
    padded = np.pad(second, ((REACH, REACH), (REACH, REACH), (0, 0)), mode="edge")
    for dy in range(2 * REACH + 1):
        for dx in range(2 * REACH + 1):
            near = padded[rows + dy, columns + dx]
            least = np.minimum(least, np.abs(first[rows, columns] - near).max(axis=1))
    return float((least > STEP).sum() / (first.shape[0] * first.shape[1]))


@EVERY
@pytest.mark.parametrize("dark", [False, True])
def test_an_svg_file_shows_what_the_screen_shows(name: str, dark: bool, monkeypatch) -> None:
    picture = picture_of(name, dark=dark, title_block=True)
    other = from_svg(picture_bytes(picture, ".svg"))
    own = painted(picture, monkeypatch)
    assert abs(other.shape[0] - own.shape[0]) <= SCALE and abs(other.shape[1] - own.shape[1]) <= SCALE
    assert share_of_difference(own, other) <= MOST


@EVERY
def test_letters_as_shapes_look_the_same_without_any_font(name: str, monkeypatch) -> None:
    picture = picture_of(name, outlines=True)
    data = picture_bytes(picture, ".svg")
    assert b"<text" not in data and b"@font-face" not in data
    monkeypatch.setattr("tests.app.test_pictures.FONTS", [], raising=False)
    assert share_of_difference(painted(picture, monkeypatch), from_svg(data)) <= MOST


@EVERY
@pytest.mark.parametrize("dark", [False, True])
def test_a_pdf_file_shows_what_the_screen_shows(name: str, dark: bool, monkeypatch) -> None:
    picture = picture_of(name, dark=dark, title_block=True)
    (other,) = from_pdf(picture_bytes(picture, ".pdf"))
    own = painted(picture, monkeypatch, PDF_SCALE)
    assert np.abs(np.subtract(other.shape, own.shape)).max() <= PDF_SCALE * 96 / 72
    assert share_of_difference(own, other) <= MOST


def test_the_comparison_sees_what_is_shifted_missing_or_of_another_colour(monkeypatch) -> None:
    name = sample_names()[0]
    own = painted(picture_of(name), monkeypatch)
    for other in (
        np.roll(own, 3 * SCALE, axis=1),
        painted(picture_of(name, values=False), monkeypatch),
        painted(picture_of(name, lengths=False), monkeypatch),
        painted(picture_of(name, dark=True), monkeypatch),
    ):
        assert share_of_difference(own, other) > 4 * MOST


def test_a_png_file_is_the_screen_at_twice_its_size() -> None:
    picture = picture_of(sample_names()[0])
    image = QImage()
    assert image.loadFromData(picture_bytes(picture, ".png"))
    screen = QImage(image.size(), QImage.Format.Format_RGB32)
    screen.setDevicePixelRatio(PNG_SCALE)
    screen.fill(picture.theme.colour("paper"))
    painter = QPainter(screen)
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    picture.scene.render(painter, QRectF(0, 0, picture.area.width(), picture.area.height()), picture.area)
    painter.end()
    assert np.abs(array_of(image) - array_of(screen)).max() < 0.01


def words_of_pdf(data: bytes) -> str:
    document = pypdfium2.PdfDocument(data)
    found = " ".join(page.get_textpage().get_text_range() for page in document)
    document.close()
    return re.sub(r"\s+", " ", found)


@pytest.mark.parametrize("kind", [".svg", ".pdf"])
def test_text_stays_text(kind: str) -> None:
    data = picture_bytes(picture_of(sample_names()[0], title_block=True), kind)
    words = words_of_pdf(data) if kind == ".pdf" else re.sub(r"[\s\u2009]+", " ", data.decode())
    for wanted in ("EL84", "EZ81", "18 AWG 0.12 m", "6.12 V", "\u22122.9 %", "Rehearsal amplifier"):
        assert wanted in words, wanted


def test_an_svg_file_carries_its_font(qapp: QGuiApplication) -> None:
    data = picture_bytes(picture_of(sample_names()[0]), ".svg").decode()
    assert data.count("@font-face") == 2 and 'font-family:"Inter"' in data
    assert len(data) < 300_000
    families = set(re.findall(r'<text[^>]*font-family="([^"]*)"', data))
    assert families == {"Inter"}


@pytest.mark.parametrize(
    ("options", "there", "gone"),
    [
        ({}, ("6.12 V", "0.12 m"), ("Date",)),
        ({"values": False}, ("EL84", "0.12 m"), ("6.12 V", "0.748 A", "%")),
        ({"lengths": False}, ("6.12 V",), ("0.12 m", "AWG")),
        ({"title_block": True}, ("Rehearsal amplifier", "Mains 230 V, 50 Hz", "Hot, at 230 V", "Date"), ()),
        ({"title_block": True, "values": False}, ("Wiring only",), ("Hot",)),
    ],
)
def test_what_is_left_out_is_not_there(options: dict, there: tuple[str, ...], gone: tuple[str, ...]) -> None:
    words = words_of_pdf(picture_bytes(picture_of(sample_names()[0], **options), ".pdf"))
    assert [each for each in there if each not in words] == []
    assert [each for each in gone if each in words] == []


def test_a_plain_drawing_has_neither_marks_nor_glow() -> None:
    sheet = sheet_of("five-mistakes")
    plain = Picture(sheet, CATALOGUE, PictureOptions(values=False))
    assert {item.look.state for item in plain.scene.part_items.values()} == {"none"}
    assert not any(item.look.kelvin for item in plain.scene.part_items.values())
    full = Picture(sheet, CATALOGUE, PictureOptions())
    assert "over" in {item.look.state for item in full.scene.part_items.values()} | {"over"}
    assert any(item.look.kelvin for item in full.scene.part_items.values())


@pytest.mark.parametrize(
    ("key", "said"),
    [("nominal", "Hot, at 230"), ("low", "Hot, at 216.2"), ("high", "Hot, at 253"), ("cold", "switch-on")],
)
def test_each_condition_has_its_own_figures(key: str, said: str) -> None:
    sheet = sheet_of(sample_names()[0])
    condition = condition_named(key, sheet.mains)
    assert said in title_block(sheet, condition).shown
    item = next(iter(sheet.parts)).id
    shown = Picture(sheet, CATALOGUE, PictureOptions(), condition).scene.part_items[item].look.values
    usual = Picture(sheet, CATALOGUE, PictureOptions()).scene.part_items[item].look.values
    assert (shown == usual) == (key == "nominal")


def test_a_part_of_the_sheet_is_drawn_alone() -> None:
    sheet = sheet_of(sample_names()[0])
    whole = Picture(sheet, CATALOGUE, PictureOptions())
    some = Picture(sheet, CATALOGUE, PictureOptions(), only=("V1", "V2"))
    assert some.width < whole.width and some.height < whole.height
    for tube in ("V1", "V2"):
        assert some.area.contains(some.scene.part_items[tube].sceneBoundingRect())
    seen = QRectF(-50, -40, 300, 200)
    assert Picture(sheet, CATALOGUE, PictureOptions(), area=seen).area == seen
    assert Picture(sheet, CATALOGUE, PictureOptions(), only=("nothing",)).area == whole.area


def test_an_empty_sheet_makes_a_picture() -> None:
    picture = Picture(Sheet(), CATALOGUE, PictureOptions(title_block=True))
    assert picture.area.width() == 100 + 2 * MARGIN
    for kind in (".svg", ".png", ".pdf"):
        assert picture_bytes(picture, kind)


def test_options_are_remembered_and_broken_ones_forgotten() -> None:
    wanted = PictureOptions(values=False, paper="Legal", landscape=False, fit=False, part="visible")
    assert options_from(options_text(wanted)) == wanted
    for text in (None, "", "{", '{"paper": "A9"}', '{"values": 3}', '{"colour": true}', "[]"):
        assert options_from(text) == PictureOptions()


def test_the_command_line_has_the_same_choices(qapp, tmp_path: Path) -> None:
    name = sample_names()[0]
    for number, extra in enumerate(
        ([], ["--no-values"], ["--dark"], ["--condition", "low"], ["--condition", "cold"], ["--title-block"])
    ):
        assert main(["picture", name, str(tmp_path / f"{number}.svg"), *extra]) == 0
    drawn = [(tmp_path / f"{number}.svg").read_text() for number in range(6)]
    assert len(set(drawn)) == 6
    assert "EL84" in drawn[0] and ">Date<" in drawn[5]
    assert [bool(re.search(r"(?<![\d.])0\.748", each)) for each in drawn[:2]] == [True, False]
    with pytest.raises(SystemExit) as told:
        main(["picture", name, str(tmp_path / "x.svg"), "--condition", "warm"])
    assert told.value.code == 2
