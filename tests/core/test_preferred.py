"""Preferred values against the tables of IEC 60063:2015."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import QuantityError
from core.preferred import SERIES, WATTAGES, nearest, next_wattage

E3 = "10 22 47"
E6 = "10 15 22 33 47 68"
E12 = "10 12 15 18 22 27 33 39 47 56 68 82"
E24 = "10 11 12 13 15 16 18 20 22 24 27 30 33 36 39 43 47 51 56 62 68 75 82 91"
E48 = (
    "100 105 110 115 121 127 133 140 147 154 162 169 178 187 196 205 215 226 237 249 261 274 287 301 "
    "316 332 348 365 383 402 422 442 464 487 511 536 562 590 619 649 681 715 750 787 825 866 909 953"
)
E96_ONLY = (
    "102 107 113 118 124 130 137 143 150 158 165 174 182 191 200 210 221 232 243 255 267 280 294 309 "
    "324 340 357 374 392 412 432 453 475 499 523 549 576 604 634 665 698 732 768 806 845 887 931 976"
)
E192_ONLY = (
    "101 104 106 109 111 114 117 120 123 126 129 132 135 138 142 145 149 152 156 160 164 167 172 176 "
    "180 184 189 193 198 203 208 213 218 223 229 234 240 246 252 258 264 271 277 284 291 298 305 312 "
    "320 328 336 344 352 361 370 379 388 397 407 417 427 437 448 459 470 481 493 505 517 530 542 556 "
    "569 583 597 612 626 642 657 673 690 706 723 741 759 777 796 816 835 856 876 898 920 942 965 988"
)


def figures(*texts: str) -> tuple[int, ...]:
    return tuple(sorted(int(word) for text in texts for word in text.split()))


@pytest.mark.parametrize(
    ("name", "table"),
    [
        ("E3", figures(E3)),
        ("E6", figures(E6)),
        ("E12", figures(E12)),
        ("E24", figures(E24)),
        ("E48", figures(E48)),
        ("E96", figures(E48, E96_ONLY)),
        ("E192", figures(E48, E96_ONLY, E192_ONLY)),
    ],
)
def test_the_series_are_those_of_the_standard(name: str, table: tuple[int, ...]) -> None:
    assert SERIES[name] == table
    assert len(table) == int(name[1:])


@pytest.mark.parametrize(
    ("value", "series", "side", "chosen"),
    [
        (4700, "E24", "any", 4700),
        (4700, "E24", "up", 4700),
        (4700, "E24", "down", 4700),
        (4900, "E24", "any", 4700),
        (4901, "E24", "any", 5100),
        (4900, "E24", "up", 5100),
        (5000, "E24", "down", 4700),
        (0.1 + 0.2, "E24", "up", 0.3),
        (3.3 * (1 - 1e-12), "E24", "down", 3.3),
        (9.6, "E24", "any", 10),
        (9.2, "E24", "up", 10),
        (9.9, "E24", "down", 9.1),
        (99, "E12", "down", 82),
        (99, "E96", "up", 100),
        (919, "E192", "any", 920),
        (0.047, "E12", "any", 0.047),
        (3.0, "E3", "any", 2.2),
        (1.0, "E6", "down", 1.0),
    ],
)
def test_nearest(value: float, series: str, side: str, chosen: float) -> None:
    assert nearest(value, series, side) == chosen


@given(value=st.floats(1e-12, 1e12), series=st.sampled_from(sorted(SERIES)))
def test_up_and_down_enclose_the_value(value: float, series: str) -> None:
    below, above = nearest(value, series, "down"), nearest(value, series, "up")
    assert below <= value * (1 + 2e-9)
    assert above >= value * (1 - 2e-9)
    assert nearest(value, series) in (below, above)
    assert nearest(below, series) == below
    assert above / below < 2.3
    step = SERIES[series]
    assert round(below / 10 ** (math.floor(math.log10(below) + 1e-9) - len(str(step[0])) + 1)) in step


@pytest.mark.parametrize("value", [0, -47, math.nan, math.inf])
def test_there_is_no_preferred_value_for_it(value: float) -> None:
    with pytest.raises(QuantityError, match="above zero"):
        nearest(value)


@pytest.mark.parametrize(
    ("watts", "rating"),
    [
        (0, 0.25),
        (0.25, 0.25),
        (0.26, 0.5),
        (0.1 + 0.2, 0.5),
        (2.5, 3),
        (6, 7),
        (26, 50),
        (100, 100),
        (101, None),
    ],
)
def test_next_wattage(watts: float, rating: float | None) -> None:
    assert next_wattage(watts) == rating


def test_wattages_ascend() -> None:
    assert list(WATTAGES) == sorted(set(WATTAGES))


@pytest.mark.parametrize("watts", [-1, math.nan])
def test_a_power_that_is_none(watts: float) -> None:
    with pytest.raises(QuantityError, match="power in watts"):
        next_wattage(watts)
