"""How drawings lie on paper, and what comes out of a printer."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QPageLayout

from app.pictures.files import picture_bytes
from app.pictures.options import PAPERS, PictureOptions
from app.pictures.pages import LARGEST, MARGIN_MM, MM_PER_UNIT, plan_pages
from app.pictures.paper import plan_of
from app.pictures.picture import Picture
from app.pictures.printing import print_on, printer_for
from app.sources import load_catalogue
from core.samples import sample_bytes, sample_names
from core.sheet import Note, Sheet
from core.storage import load
from tests.app.test_pictures import from_pdf, words_of_pdf

SIZES = st.floats(20, 5000)
PAPER = st.sampled_from(sorted(PAPERS))


@given(width=SIZES, height=SIZES, paper=PAPER, landscape=st.booleans())
def test_a_fitted_drawing_lies_inside_the_margins(
    width: float, height: float, paper, landscape: bool
) -> None:
    plan = plan_pages(width, height, PictureOptions(paper=paper, landscape=landscape))
    (page,) = plan.pages
    assert (plan.size[0] > plan.size[1]) == landscape
    assert plan.scale <= LARGEST
    for size, at, room in zip((width, height), page.at, plan.size, strict=True):
        assert at >= MARGIN_MM - 1e-6
        assert at + size * plan.scale <= room - MARGIN_MM + 1e-6


@given(width=SIZES, height=SIZES, paper=PAPER, landscape=st.booleans())
def test_tiles_cover_the_drawing_once_at_one_millimetre_a_unit(
    width: float, height: float, paper, landscape: bool
) -> None:
    plan = plan_pages(width, height, PictureOptions(paper=paper, landscape=landscape, fit=False))
    assert plan.scale == 1.0
    assert len(plan.pages) == plan.rows * plan.columns
    assert sum(page.part[2] * page.part[3] for page in plan.pages) == pytest.approx(width * height)
    for page in plan.pages:
        left, top, across, down = page.part
        assert left >= 0 and left + across <= width + 1e-6 and across > 0
        assert top >= 0 and top + down <= height + 1e-6 and down > 0
        assert page.at[0] + across <= plan.size[0] - MARGIN_MM + 1e-6
        assert page.at[1] + down <= plan.size[1] - MARGIN_MM + 1e-6


def test_paper_as_large_as_the_drawing_has_no_margin() -> None:
    plan = plan_pages(960, 480, PictureOptions())
    assert plan.size == (pytest.approx(254.0), pytest.approx(127.0))
    assert plan.scale == MM_PER_UNIT and plan.pages[0].part == (0, 0, 960, 480)


def sample() -> Picture:
    catalogue, _ = load_catalogue()
    return Picture(
        load(sample_bytes(sample_names()[0])), catalogue, PictureOptions(paper="A4", title_block=True)
    )


@pytest.mark.parametrize("paper", sorted(PAPERS))
@pytest.mark.parametrize("landscape", [False, True])
def test_pages_of_a_pdf_file_have_the_size_that_was_asked_for(qapp, paper, landscape: bool) -> None:
    catalogue, _ = load_catalogue()
    options = PictureOptions(paper=paper, landscape=landscape)
    picture = Picture(load(sample_bytes(sample_names()[0])), catalogue, options)
    (page,) = from_pdf(picture_bytes(picture, ".pdf"), scale=72 / 72)
    short, long = PAPERS[paper]
    wanted = (long, short) if landscape else (short, long)
    assert page.shape[1] * 25.4 / 72 == pytest.approx(wanted[0], abs=0.6)
    assert page.shape[0] * 25.4 / 72 == pytest.approx(wanted[1], abs=0.6)
    assert page[0, 0].min() == 1.0, "paper is left white"
    inked = (page < 0.7).any(axis=2)
    margin = int(MARGIN_MM * 72 / 25.4) - 1
    assert inked.any() and not inked[:margin].any() and not inked[:, :margin].any()


def test_a_note_leaves_no_tint_on_white_paper(qapp) -> None:
    catalogue, _ = load_catalogue()
    sheet = Sheet(parts=(Note(id="N1", text="Mains off first", width=200.0),))
    picture = Picture(sheet, catalogue, PictureOptions(paper="A4"))
    (page,) = from_pdf(picture_bytes(picture, ".pdf"), scale=1.0)
    colours = page[..., :3].reshape(-1, 3)
    assert (colours < 0.5).any(), "the note is there"
    assert not (colours[:, 0] > colours[:, 2] + 0.01).any(), "the sheet is warmer than paper, the ink colder"


def test_tiles_of_a_pdf_file_are_numbered(qapp) -> None:
    catalogue, _ = load_catalogue()
    options = PictureOptions(paper="A4", fit=False)
    picture = Picture(load(sample_bytes(sample_names()[0])), catalogue, options)
    every, plan = plan_pages(picture.width, picture.height, options), plan_of(picture)
    data = picture_bytes(picture, ".pdf")
    assert len(from_pdf(data, scale=0.2)) == len(plan.pages) > 4
    words = words_of_pdf(data)
    for page in plan.pages:
        assert f"row {page.row} of {plan.rows}, column {page.column} of {plan.columns}" in words
    left_out = [page for page in every.pages if page not in plan.pages]
    assert left_out, "some of this sheet is empty"
    for page in left_out:
        assert f"row {page.row} of {plan.rows}, column {page.column} of" not in words


def test_a_print_is_the_pdf_on_the_paper_of_the_printer(qapp, tmp_path: Path) -> None:
    picture = sample()
    printer = printer_for(picture.options)
    target = tmp_path / "print.pdf"
    printer.setOutputFormat(printer.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(target))
    assert printer.pageLayout().orientation() == QPageLayout.Orientation.Landscape
    print_on(printer, picture)
    (printed,), (drawn,) = from_pdf(target.read_bytes(), 1.0), from_pdf(picture_bytes(picture, ".pdf"), 1.0)
    height, width = (min(printed.shape[axis], drawn.shape[axis]) for axis in (0, 1))
    assert abs(printed[:height, :width] - drawn[:height, :width]).mean() < 0.004
    assert "Rehearsal amplifier" in words_of_pdf(target.read_bytes())
