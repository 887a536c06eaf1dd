"""The catalogue against what type designations say about the heater.

American receiving types (figures, letters, figure: 12AX7) begin with the heater volts as a whole number,
rounded to the nearest or cut off (12.6 V is 12, 4.7 V is 5). European ones (ECC83) begin with a letter for
the volts or the current of the heater. Both are common practice, stated in tube manuals. Other names (5751,
KT88, 300B) say nothing about the heater and are left out. Exceptions are listed with their reasons.
"""

from __future__ import annotations

import math
import re

from core.catalogue import load_builtin
from core.catalogue.summary import parallel_rating, whole_rating
from core.catalogue.types import TubeType

AMERICAN = re.compile(r"(\d+)[A-Z]{1,2}\d{1,2}[A-Z]{0,3}")
EUROPEAN = re.compile(r"([DEGHLPUXY])[ABCFHKLMYZ]{1,4}\d{1,3}S?|(E)\d{2,3}CC")

LOCTAL = "loctal types count the highest volts of a car battery on charge: 7 for 6.3 V, 14 for 12.6 V"
AMERICAN_EXCEPTIONS = {
    "7N7": LOCTAL,
    "7C5": LOCTAL,
    "7C5LT": LOCTAL,
    "7F7": LOCTAL,
    "14N7": LOCTAL,
    "2B46": "a transmitting type number, where the first figure is a power class",
    "8D5": "a British maker's code, no American type number",
}
VOLTS_BY_LETTER = {"D": 1.4, "E": 6.3, "G": 5.0}
AMPS_BY_LETTER = {"H": 0.15, "L": 0.45, "P": 0.3, "U": 0.1, "X": 0.6, "Y": 0.45}


def named() -> list[tuple[str, TubeType]]:
    """Every name of the built-in catalogue with its type."""
    return [
        (name, tube)
        for tube in load_builtin().tubes.values()
        for name in (tube.designation, *tube.equivalents)
    ]


def ways(tube: TubeType) -> list[tuple[float, float]]:
    """Volts and amperes of the heater in every way it is meant to be connected."""
    halves = parallel_rating(tube)
    return [whole_rating(tube), halves] if halves is not None else [whole_rating(tube)]


def test_the_first_figure_of_an_american_type_is_about_its_heater_volts() -> None:
    checked = 0
    broken = set()
    for name, tube in named():
        match = AMERICAN.fullmatch(name)
        if match is None:
            continue
        checked += 1
        whole = [number for volts, _ in ways(tube) for number in (math.floor(volts), math.floor(volts + 0.5))]
        if int(match[1]) not in whole:
            broken.add(name)
    assert broken == set(AMERICAN_EXCEPTIONS)
    assert checked > 250


def test_the_first_letter_of_a_european_type_is_its_heater() -> None:
    """No exception in the whole catalogue."""
    checked = 0
    for name, tube in named():
        match = EUROPEAN.fullmatch(name)
        if match is None:
            continue
        checked += 1
        letter = match[1] or match[2]
        if letter in VOLTS_BY_LETTER:
            assert VOLTS_BY_LETTER[letter] in [volts for volts, _ in ways(tube)], name
        else:
            assert whole_rating(tube)[1] == AMPS_BY_LETTER[letter], name
    assert checked > 110


def test_a_leading_e_means_6_3_volts() -> None:
    names = [(name, tube) for name, tube in named() if re.match(r"E[A-Z]*\d", name)]
    assert len(names) > 40
    for name, tube in names:
        assert 6.3 in [volts for volts, _ in ways(tube)], name


def test_variants_for_other_strings_keep_the_heater_power() -> None:
    """Variants of one tube for other strings keep about its heater power; 15 % covers rounded ratings."""
    tubes = load_builtin().tubes
    for first, others in (
        ("EL84", ("PL84", "UL84", "8BQ5", "10BQ5")),
        ("ECL82", ("PCL82", "UCL82", "LCL82")),
        ("EF80", ("UF80",)),
        ("EL500", ("PL500", "LL500", "XL500")),
        ("6DQ6B", ("12DQ6A", "17DQ6A")),
        ("6CG7", ("8CG7",)),
        ("6SN7GTB", ("8SN7GTB", "12SN7GT", "25SN7GT")),
    ):
        volts, amps = whole_rating(tubes[first])
        for other in others:
            other_volts, other_amps = whole_rating(tubes[other])
            assert abs(other_volts * other_amps / (volts * amps) - 1) < 0.15, other
