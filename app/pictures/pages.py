"""How a drawing lies on paper: one page, or tiles over several. Plain geometry, no painting."""

from __future__ import annotations

import math
from dataclasses import dataclass

from app.pictures.options import PAPERS, PictureOptions

MM_PER_UNIT = 25.4 / 96  # of a picture as large as its drawing: a unit is a pixel of the screen
LARGEST = 1.0  # millimetres a unit: a few parts do not fill a whole page
MARGIN_MM = 10.0
_MM_PER_POINT = 25.4 / 72


@dataclass(frozen=True)
class Page:
    """A part of the picture (left, top, width, height in units) and where its corner lies on the page (mm)."""

    part: tuple[float, float, float, float]
    at: tuple[float, float]
    row: int = 1
    column: int = 1


@dataclass(frozen=True)
class Plan:
    """Pages of one size, ``size`` in mm, with a unit ``scale`` millimetres long."""

    size: tuple[float, float]
    scale: float
    pages: tuple[Page, ...]
    rows: int = 1
    columns: int = 1


def plan_pages(width: float, height: float, options: PictureOptions) -> Plan:
    """Lay a picture, its size in units, onto the paper of the options."""
    if not options.has_paper:
        # a page of a PDF file is a whole number of points
        size = (_in_points(width * MM_PER_UNIT), _in_points(height * MM_PER_UNIT))
        return Plan(size, MM_PER_UNIT, (Page((0, 0, width, height), (0, 0)),))
    short, long = PAPERS[options.paper]
    paper = (long, short) if options.landscape else (short, long)
    return plan_on(width, height, paper, MARGIN_MM, options.fit)


def plan_on(width: float, height: float, paper: tuple[float, float], margin: float, fit: bool) -> Plan:
    """Lay a picture onto paper with a margin all round, both in mm: shrunk to one page, or a unit a millimetre."""
    room = (paper[0] - 2 * margin, paper[1] - 2 * margin)
    if fit:
        scale = min(room[0] / width, room[1] / height, LARGEST)
        return Plan(paper, scale, (_centred(width, height, paper, scale),))
    # whole units, so that neighbouring pages meet exactly
    across, down = math.floor(room[0]), math.floor(room[1])
    columns, rows = math.ceil(width / across), math.ceil(height / down)
    if columns == rows == 1:
        return Plan(paper, 1.0, (_centred(width, height, paper, 1.0),))
    pages = tuple(
        Page(
            (
                column * across,
                row * down,
                min(across, width - column * across),
                min(down, height - row * down),
            ),
            (margin, margin),
            row + 1,
            column + 1,
        )
        for row in range(rows)
        for column in range(columns)
    )
    return Plan(paper, 1.0, pages, rows, columns)


def _in_points(millimetres: float) -> float:
    """A length, or a little more, that is a whole number of points."""
    return math.ceil(millimetres / _MM_PER_POINT - 1e-6) * _MM_PER_POINT


def _centred(width: float, height: float, paper: tuple[float, float], scale: float) -> Page:
    return Page((0, 0, width, height), ((paper[0] - width * scale) / 2, (paper[1] - height * scale) / 2))
