"""Quantities as people type them and as the screen shows them; nothing is ever read wrongly."""

from __future__ import annotations

import math
import types
from typing import Any, Union, get_args, get_origin

import msgspec
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.catalogue.types import Section, TubeType
from core.errors import QuantityError
from core.sheet import AnyPart, Mains, Sheet, Wire
from core.units import (
    FIELD_DIMENSIONS,
    FIELD_LABELS,
    Dimension,
    field_label,
    format_number,
    format_percent,
    format_quantity,
    parse,
)

D = Dimension


@pytest.mark.parametrize(
    ("text", "dimension", "value"),
    [
        # a letter in place of the decimal point
        ("4k7", D.OHMS, 4700.0),
        ("4K7", D.OHMS, 4700.0),
        ("1M5", D.OHMS, 1.5e6),
        ("4R7", D.OHMS, 4.7),
        ("4r7", D.OHMS, 4.7),
        ("0R1", D.OHMS, 0.1),
        ("0R5", D.OHMS, 0.5),
        ("R5", D.OHMS, 0.5),
        ("R047", D.OHMS, 0.047),
        ("4k7Ω", D.OHMS, 4700.0),
        ("4k7 ohm", D.OHMS, 4700.0),
        ("1n5", D.FARADS, 1.5e-9),
        ("4u7", D.FARADS, 4.7e-6),
        ("4\u00b57 F", D.FARADS, 4.7e-6),
        ("6V3", D.VOLTS, 6.3),
        ("-6V3", D.VOLTS, -6.3),
        ("1A5", D.AMPS, 1.5),
        # a comma as the decimal point, and digits in groups
        ("6,3 V", D.VOLTS, 6.3),
        ("0,150", D.AMPS, 0.15),
        ("0,5", D.MM2, 0.5),
        ("1234,567", D.OHMS, 1234.567),
        ("6,3000", D.VOLTS, 6.3),
        ("1,5e3", D.OHMS, 1500.0),
        ("1 000", D.OHMS, 1000.0),
        ("1\u2009000\u2009Ω", D.OHMS, 1000.0),
        ("12 000,5", D.OHMS, 12000.5),
        ("12 345 678", D.OHMS, 12345678.0),
        # units and prefixes
        ("10R", D.OHMS, 10.0),
        ("10 \u2126", D.OHMS, 10.0),
        ("10 \u03a9", D.OHMS, 10.0),
        ("10 Ohms", D.OHMS, 10.0),
        ("4.7k", D.OHMS, 4700.0),
        ("4.7K", D.OHMS, 4700.0),
        ("4.7 kΩ", D.OHMS, 4700.0),
        ("4 kohm", D.OHMS, 4000.0),
        ("4M", D.OHMS, 4e6),
        ("4m", D.OHMS, 0.004),
        ("3 MV", D.VOLTS, 3e6),
        ("3 mV", D.VOLTS, 0.003),
        ("3m", D.VOLTS, 0.003),
        ("3m", D.METRES, 3.0),
        ("300 mA", D.AMPS, 0.3),
        ("300 ma", D.AMPS, 0.3),
        ("150mA", D.AMPS, 0.15),
        ("0.15 A", D.AMPS, 0.15),
        ("0.15 amps", D.AMPS, 0.15),
        ("300 MA", D.AMPS, 3e8),
        ("6.3 v", D.VOLTS, 6.3),
        ("12 kv", D.VOLTS, 12000.0),
        ("10 \u00b5F", D.FARADS, 1e-5),
        ("10 \u03bcF", D.FARADS, 1e-5),
        ("10 uF", D.FARADS, 1e-5),
        ("10 uf", D.FARADS, 1e-5),
        ("30 cm", D.METRES, 0.3),
        ("30cm", D.METRES, 0.3),
        ("300 mm", D.METRES, 0.3),
        ("0.3 metres", D.METRES, 0.3),
        ("0.5 mm²", D.MM2, 0.5),
        ("0.5mm2", D.MM2, 0.5),
        ("0.5 mm^2", D.MM2, 0.5),
        ("11 s", D.SECONDS, 11.0),
        ("50 ms", D.SECONDS, 0.05),
        ("50 Hz", D.HERTZ, 50.0),
        ("50 hz", D.HERTZ, 50.0),
        ("25 °C", D.CELSIUS, 25.0),
        ("25 C", D.CELSIUS, 25.0),
        ("\u22125 °C", D.CELSIUS, -5.0),
        ("3950 K", D.KELVIN, 3950.0),
        ("10 %", D.PERCENT, 10.0),
        ("+10", D.PERCENT, 10.0),
        ("\u221210\u2009%", D.PERCENT, -10.0),
        ("17 mW/K", D.W_PER_K, 0.017),
        ("40 K/W", D.KELVIN_PER_W, 40.0),
        ("4 A²s", D.A2S, 4.0),
        ("4A2s", D.A2S, 4.0),
        ("0.5", D.NUMBER, 0.5),
        # spaces, signs and exponents
        ("6.3\u00a0V", D.VOLTS, 6.3),
        ("6.3\u202fV", D.VOLTS, 6.3),
        ("  6.3  ", D.VOLTS, 6.3),
        ("\u2212 6.3 V", D.VOLTS, -6.3),
        ("1e-3", D.FARADS, 0.001),
        ("1E3", D.OHMS, 1000.0),
        ("1e5", D.OHMS, 100000.0),
        ("1e3 mA", D.AMPS, 1.0),
        (".5", D.OHMS, 0.5),
        ("5.", D.OHMS, 5.0),
        ("-0", D.VOLTS, 0.0),
        ("0", D.VOLTS, 0.0),
    ],
)
def test_reads(text: str, dimension: Dimension, value: float) -> None:
    read = parse(text, dimension)
    assert read == value
    assert math.copysign(1, read) == math.copysign(1, value)


@pytest.mark.parametrize(
    ("text", "dimension", "says"),
    [
        ("", D.VOLTS, "Nothing is entered; volts are expected here, such as 6.3 V."),
        ("   ", D.VOLTS, "Nothing is entered"),
        ("6.3 A", D.VOLTS, "'6.3 A' is amperes; volts are expected here, such as 6.3 V."),
        ("10R", D.VOLTS, "'10R' is ohms; volts"),
        ("4k7 A", D.OHMS, "'4k7 A' is amperes; ohms"),
        ("5 W", D.W_PER_K, "'5 W' is watts; watts per kelvin"),
        ("30 cm", D.MM2, "'30 cm' is metres; square millimetres"),
        ("0.5 mm²", D.METRES, "is square millimetres; metres"),
        ("3 m", D.VOLTS, "'3 m' is metres; volts"),
        ("4 K", D.OHMS, "'4 K' is kelvins; ohms"),
        ("25 °C", D.KELVIN, "is degrees Celsius; kelvins"),
        ("5 %", D.NUMBER, "is per cent; a plain number is expected here, such as 0.5."),
        ("1,000", D.OHMS, "'1,000' has two readings: write 1000 for thousands, or 1.000 with a dot"),
        ("12,345 V", D.VOLTS, "write 12345 for thousands, or 12.345 with a dot"),
        ("1,000,000", D.OHMS, "is not understood"),
        ("1,234.5", D.OHMS, "is not understood"),
        ("1.234,5", D.OHMS, "is not understood"),
        (",5", D.OHMS, "is not understood"),
        ("5,", D.OHMS, "is not understood"),
        ("1.5.2", D.VOLTS, "is not understood"),
        ("1 00", D.OHMS, "is not understood"),
        ("0 150", D.OHMS, "is not understood"),
        ("1 0000", D.OHMS, "is not understood"),
        ("6 3", D.VOLTS, "is not understood"),
        ("nan", D.VOLTS, "is not understood"),
        ("inf", D.VOLTS, "is not understood"),
        ("-inf", D.VOLTS, "is not understood"),
        ("Infinity", D.VOLTS, "is not understood"),
        ("1e400", D.VOLTS, "too large to be meant"),
        ("1e-400", D.VOLTS, "too small to be meant"),
        ("1e305 MV", D.VOLTS, "too large to be meant"),
        ("V", D.VOLTS, "is not understood"),
        ("-", D.VOLTS, "is not understood"),
        ("--5", D.VOLTS, "is not understood"),
        ("5 + 3", D.VOLTS, "is not understood"),
        ("1e", D.OHMS, "The unit 'e'"),
        ("1e3.5", D.OHMS, "is not understood"),
        ("0x10", D.OHMS, "The unit 'x10'"),
        ("6.3 V rms", D.VOLTS, "The unit 'V rms' in '6.3 V rms' is not known; volts"),
        ("5 bananas", D.AMPS, "The unit 'bananas'"),
        ("1_000", D.OHMS, "The unit '_000'"),
        ("٤ V", D.VOLTS, "is not understood"),
        ("²", D.VOLTS, "is not understood"),
        ("1k5k", D.OHMS, "The unit 'k'"),
        ("4k7", D.NUMBER, "The unit 'k7'"),
        ("1m5", D.METRES, "The unit 'm5'"),
        ("3m", D.SECONDS, "is metres; seconds"),
        ("30 M", D.METRES, "is not known"),
        ("300 k", D.KELVIN, "The unit 'k'"),
        ("5 S", D.SECONDS, "The unit 'S'"),
        ("3 mA²s", D.A2S, "is not known"),
        ("1" * 61, D.OHMS, "too long for a number"),
    ],
)
def test_refuses(text: str, dimension: Dimension, says: str) -> None:
    with pytest.raises(QuantityError) as caught:
        parse(text, dimension)
    assert says in str(caught.value)
    assert str(caught.value).endswith(f"{dimension.expectation}.")


@pytest.mark.parametrize("dimension", list(Dimension))
def test_every_example_reads(dimension: Dimension) -> None:
    for example in str(dimension.example).split(" or "):
        assert parse(example, dimension) > 0


@pytest.mark.parametrize(
    ("value", "dimension", "text"),
    [
        (0.0, D.VOLTS, "0 V"),
        (-0.0, D.VOLTS, "0 V"),
        (6.3, D.VOLTS, "6.30 V"),
        (-6.3, D.VOLTS, "−6.30 V"),
        (0.15, D.AMPS, "150 mA"),
        (0.9996, D.AMPS, "1.00 A"),
        (0.9994, D.AMPS, "999 mA"),
        (999.6, D.OHMS, "1.00 kΩ"),
        (4700.0, D.OHMS, "4.70 kΩ"),
        (1e-5, D.FARADS, "10.0 \u00b5F"),
        (1e-13, D.FARADS, "0.100 pF"),
        (2.5e12, D.OHMS, "2500 GΩ"),
        (0.3, D.METRES, "300 mm"),
        (5432.1, D.METRES, "5432 m"),
        (11.0, D.SECONDS, "11.0 s"),
        (0.05, D.SECONDS, "50.0 ms"),
        (0.5, D.MM2, "0.500 mm²"),
        (1438.9, D.KELVIN, "1439 K"),
        (999.6, D.KELVIN, "1000 K"),
        (25.0, D.CELSIUS, "25.0 °C"),
        (50.0, D.HERTZ, "50.0 Hz"),
        (0.5, D.HERTZ, "0.500 Hz"),
        (0.017, D.W_PER_K, "17.0 mW/K"),
        (1e-20, D.VOLTS, "1.00e−20 V"),
        (1e200, D.MM2, "1.00e200 mm²"),
        (math.inf, D.OHMS, "∞ Ω"),
        (-math.inf, D.VOLTS, "−∞ V"),
        (math.nan, D.VOLTS, "— V"),
    ],
)
def test_writes(value: float, dimension: Dimension, text: str) -> None:
    assert format_quantity(value, dimension) == text.replace(" ", "\u2009")


def test_a_plain_number_has_no_space_after_it() -> None:
    assert format_quantity(0.5, D.NUMBER) == "0.500"


@pytest.mark.parametrize(("digits", "text"), [(1, "1 A"), (2, "1.2 A"), (3, "1.23 A"), (4, "1.235 A")])
def test_writes_as_many_digits_as_asked(digits: int, text: str) -> None:
    assert format_quantity(1.2346, D.AMPS, digits) == text.replace(" ", "\u2009")


def test_numbers_and_per_cent() -> None:
    assert format_number(-1.25, 1) == "\u22121.2"
    assert format_number(-0.001, 2) == "0.00"
    assert format_number(12.0, 0) == "12"
    assert format_percent(9.54) == "+9.5\u2009%"
    assert format_percent(-3) == "\u22123.0\u2009%"
    assert format_percent(0.01) == "0.0\u2009%"
    assert format_percent(-0.01) == "0.0\u2009%"
    assert format_percent(math.nan) == "—\u2009%"


@given(value=st.floats(allow_nan=False, allow_infinity=False), digits=st.integers(1, 17))
@pytest.mark.parametrize("dimension", list(Dimension))
def test_what_is_written_reads_back(dimension: Dimension, value: float, digits: int) -> None:
    assume(value == 0 or 1e-300 < abs(value) < 1e300)
    assume(len(format_quantity(value, dimension, digits)) <= 60)
    read = parse(format_quantity(value, dimension, digits), dimension)
    assert math.isclose(read, value, rel_tol=0.5 * 10 ** (1 - digits) + 1e-15)


@given(text=st.text(st.sampled_from("0123456789.,-+eEkKmMuRVAΩF% ²/\u2212\u2009nainf"), max_size=8))
@pytest.mark.parametrize("dimension", list(Dimension))
def test_any_text_is_read_or_refused(dimension: Dimension, text: str) -> None:
    try:
        value = parse(text, dimension)
    except QuantityError:
        return
    assert math.isfinite(value)


@given(text=st.text(max_size=20))
def test_even_rubbish_is_refused_politely(text: str) -> None:
    try:
        assert math.isfinite(parse(text, D.OHMS))
    except QuantityError as error:
        assert "expected here" in str(error)


def numeric_fields(struct: type[msgspec.Struct]) -> set[str]:
    def is_numeric(declared: Any) -> bool:
        options = get_args(declared) if get_origin(declared) in (Union, types.UnionType) else (declared,)
        return float in options or int in options

    return {field.name for field in msgspec.structs.fields(struct) if is_numeric(field.type)}


def test_every_numeric_field_has_a_dimension_and_no_other_has() -> None:
    structs = (*get_args(AnyPart), Wire, Mains, Sheet, TubeType, Section)
    assert set().union(*map(numeric_fields, structs)) == set(FIELD_DIMENSIONS)


def test_every_field_of_a_part_has_a_label_of_its_own() -> None:
    structs = (*get_args(AnyPart), Wire, Mains, Sheet)
    assert set().union(*map(numeric_fields, structs)) <= set(FIELD_LABELS)


def test_labels() -> None:
    assert field_label("rated_v") == "rated volts"
    assert field_label("regulation_pct") == "regulation"
    assert field_label("hk_max_ohm") == "hk max"
    assert field_label("spread_low_a") == "spread low"
    assert field_label("colour") == "colour"
